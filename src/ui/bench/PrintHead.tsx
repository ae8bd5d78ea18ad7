import { useMemo } from 'react';
import { cautions } from '../../calc/cautions';
import { revisionOnPaper } from '../../plan/revision-on-paper';
import { useEvaluation } from '../state/use-evaluation';
import { usePlan } from '../state/use-plan';

/** Title block of a printed page: plan, revision, date, and how many checks stop it. Not seen on the screen. */
export function PrintHead() {
  const plan = usePlan((all) => all);
  const { name } = plan;
  const revision = useMemo(() => revisionOnPaper(plan), [plan]);
  const stops = useEvaluation((evaluation) => evaluation.checks.filter((check) => check.severity === 'stop').length);
  const date = new Date().toLocaleDateString(undefined, { year: 'numeric', month: 'long', day: 'numeric' });
  return (
    <header className="print-head">
      <table>
        <tbody>
          <tr>
            <td>
              <small>Plan</small> {name}
            </td>
            <td>
              <small>Revision</small> {revision}
            </td>
            <td>
              <small>Printed</small> {date}
            </td>
            <td>
              <small>Checks that stop it</small> {stops}
            </td>
          </tr>
        </tbody>
      </table>
      <p>{cautions.general}</p>
    </header>
  );
}
