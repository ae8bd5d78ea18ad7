import type { Check, Place, Severity } from '../../calc/chapter';
import { formatSentence } from '../../units/format-sentence';
import { goToPlace } from '../state/go-to-place';
import { useBenchStore } from '../state/use-bench';
import { CheckItem } from '../widgets/CheckItem';
import { useDisplayOptions } from '../widgets/display-context';
import { EmptyState } from '../widgets/EmptyState';
import { StatusGlyph } from '../widgets/StatusGlyph';
import { type Format, useFormat } from '../widgets/use-format';
import { fieldWords } from './field-words';
import { useSay } from './notice-context';

const order: Readonly<Record<Severity, number>> = { stop: 0, watch: 1, offer: 2, pass: 3 };

/** Passed checks that stand open beside what is marked; more of them fold. */
const passesOpen = 6;

function placeWords({ kind, name }: Place): string {
  return kind === 'field' ? fieldWords(name) : name;
}

/** Figures beside a sentence that does not say them itself. */
function figuresOf({ sentence, measured, limit, unit }: Check, format: Format): string | null {
  if (sentence.includes('{measured}') || (!measured && !limit)) return null;
  return sentence.includes('{limit}')
    ? format(measured, unit)
    : `${format(measured, unit)} / ${format(limit, unit, 'not stated')}`;
}

/** Checks, worst first, each with its places as links and its repair as a button. */
export function CheckList({ checks }: { readonly checks: readonly Check[] }) {
  const format = useFormat();
  const options = useDisplayOptions();
  const { store, actions } = useBenchStore();
  const say = useSay();
  const sorted = checks.toSorted((one, other) => order[one.severity] - order[other.severity]);
  const marked = sorted.filter((check) => check.severity !== 'pass');
  const passed = sorted.filter((check) => check.severity === 'pass');

  function item(check: Check) {
    const { fix } = check;
    const onApply = () => {
      const outcome = fix && actions.dispatch(fix.command);
      if (outcome && 'refused' in outcome) say(outcome.refused);
    };
    const go = (place: Place) => goToPlace(place, store.getState(), actions);
    return (
      <CheckItem
        key={check.id}
        status={check.severity}
        sentence={formatSentence(check, options)}
        figures={figuresOf(check, format)}
        places={check.where.map((place) => ({ name: placeWords(place), onGo: () => go(place) }))}
        {...(fix ? { fix: { label: fix.label, onApply } } : {})}
      />
    );
  }

  if (sorted.length === 0) return <EmptyState title="Nothing to check yet." />;
  return (
    <>
      <ul className="checks">{marked.map(item)}</ul>
      {passed.length > 0 &&
        (passed.length <= passesOpen ? (
          <ul className="checks">{passed.map(item)}</ul>
        ) : (
          <details className="passed">
            <summary>
              <StatusGlyph status="pass" silent />
              {passed.length} checks pass
            </summary>
            <ul className="checks">{passed.map(item)}</ul>
          </details>
        ))}
    </>
  );
}
