import { kindWords, type LabelledKind, labelledKinds } from '../../../sheets/labels/labelled-cable';

export interface KindChoiceProps {
  readonly kinds: ReadonlySet<LabelledKind>;
  readonly onKinds: (kinds: ReadonlySet<LabelledKind>) => void;
}

/** Which cables get labels. */
export function KindChoice({ kinds, onKinds }: KindChoiceProps) {
  function toggle(kind: LabelledKind): void {
    const next = new Set(kinds);
    if (!next.delete(kind)) next.add(kind);
    onKinds(next);
  }
  return (
    <fieldset className="label-kinds">
      <legend>Labels for</legend>
      {labelledKinds.map((kind) => (
        <label key={kind}>
          <input type="checkbox" checked={kinds.has(kind)} onChange={() => toggle(kind)} />
          {kindWords[kind].title}
        </label>
      ))}
    </fieldset>
  );
}
