import { useMemo } from 'react';
import type { Culprit } from '../../../calc/faults/culprit';
import { culpritName, lookFirst, whereIs } from '../../../calc/faults/culprit-words';
import type { FaultModel } from '../../../calc/faults/fault-model';
import { rankSuspects, type Suspects } from '../../../calc/faults/rank-suspects';
import { useActions, useBench } from '../../state/use-bench';
import { EmptyState } from '../../widgets/EmptyState';
import { useFormat } from '../../widgets/use-format';

/** The likeliest single culprits of the panels marked as dark, the likeliest first. */
export function SuspectList({ model }: { readonly model: FaultModel }) {
  const dark = useBench((state) => state.faults.dark);
  const suspects = useMemo(() => rankSuspects(model, dark), [model, dark]);
  if (dark.length === 0) {
    return (
      <EmptyState title="Mark the panels that are dark.">
        What most likely did it stands here, the likeliest first.
      </EmptyState>
    );
  }
  if (suspects.length === 0) return <EmptyState title="No single part darkens any of these panels." />;
  return (
    <ol className="suspects" aria-label="Likeliest culprits">
      {suspects.map((group) => (
        <SuspectGroup
          key={group.culprits.map(({ kind, index }) => `${kind} ${index}`).join()}
          model={model}
          group={group}
          dark={dark.length}
        />
      ))}
    </ol>
  );
}

interface SuspectGroupProps {
  readonly model: FaultModel;
  readonly group: Suspects;
  /** Panels that are marked. */
  readonly dark: number;
}

/** Parts that darken the same panels: which of them it was, the panels cannot tell. */
function SuspectGroup({ model, group: { culprits, match, darkens, hits }, dark }: SuspectGroupProps) {
  const format = useFormat();
  const fits =
    match === 1
      ? 'darkens just these panels'
      : `${format(match, 'share')}: darkens ${darkens}, ${hits} of the ${dark} marked`;
  return (
    <li>
      <p className="suspect-fit">{culprits.length > 1 && match === 1 ? 'each darkens just these panels' : fits}</p>
      <ul>
        {culprits.map((culprit) => (
          <SuspectLine key={`${culprit.kind} ${culprit.index}`} model={model} culprit={culprit} />
        ))}
      </ul>
    </li>
  );
}

function SuspectLine({ model, culprit }: { readonly model: FaultModel; readonly culprit: Culprit }) {
  const { seek } = useActions();
  const name = culpritName(model, culprit);
  return (
    <li>
      <button type="button" className="place" onClick={() => seek(name)}>
        {name}
      </button>{' '}
      <span>{whereIs(model, culprit)}.</span> <span className="quiet">{lookFirst[culprit.kind]}</span>
    </li>
  );
}
