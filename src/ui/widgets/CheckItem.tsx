import { Button } from './Button';
import { type Status, StatusGlyph } from './StatusGlyph';

export interface CheckPlace {
  readonly name: string;
  readonly onGo: () => void;
}

export interface CheckItemProps {
  readonly status: Status;
  readonly sentence: string;
  /** Measured beside limit, already written out; null where there is nothing to set side by side. */
  readonly figures: string | null;
  readonly places: readonly CheckPlace[];
  /** Places that are not listed any more. */
  readonly morePlaces?: number;
  readonly fix?: { readonly label: string; readonly onApply: () => void };
}

const placesShown = 6;

/** One check: its mark, what it says, its figures, where it concerns, and the repair where there is one. */
export function CheckItem({ status, sentence, figures, places, morePlaces = 0, fix }: CheckItemProps) {
  const shown = places.slice(0, placesShown);
  const left = places.length - shown.length + morePlaces;
  return (
    <li className="check" data-status={status}>
      <StatusGlyph status={status} />
      <div>{sentence}</div>
      <div className="check-figures">{figures}</div>
      {(shown.length > 0 || fix) && (
        <div className="check-more">
          {shown.map((place) => (
            <button key={place.name} type="button" className="place" onClick={place.onGo}>
              {place.name}
            </button>
          ))}
          {left > 0 && <span>and {left} more</span>}
          {fix && (
            <Button small onClick={fix.onApply}>
              {fix.label}
            </Button>
          )}
        </div>
      )}
    </li>
  );
}
