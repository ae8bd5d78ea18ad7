import type { WayStation } from './panel-way';

export interface StationsProps {
  readonly of: readonly WayStation[];
  readonly onPick: (name: string) => void;
}

/** The stations of a way in their order; those with something to pick are buttons. */
export function Stations({ of, onPick }: StationsProps) {
  if (of.length === 0) return null;
  return (
    <ol className="chain">
      {of.map(({ title, detail, picks }) => (
        <li key={title}>
          {picks === null ? (
            <div>
              <b>{title}</b>
              <span>{detail}</span>
            </div>
          ) : (
            <button type="button" onClick={() => onPick(picks)}>
              <b>{title}</b>
              <span>{detail}</span>
            </button>
          )}
        </li>
      ))}
    </ol>
  );
}
