export type Status = 'pass' | 'offer' | 'watch' | 'stop';

/** Shapes differ so that the status reads without colour: tick, lozenge, triangle, cross. */
const shapes: Readonly<Record<Status, string>> = {
  pass: 'M2 7.5 5.5 11 12 3.5',
  offer: 'M7 1.5 12.5 7 7 12.5 1.5 7Z',
  watch: 'M7 2 13 12.5H1Z',
  stop: 'M2.5 2.5 11.5 11.5M11.5 2.5 2.5 11.5',
};

/** What a status is called where its shape is not seen. */
export const statusWords: Readonly<Record<Status, string>> = {
  pass: 'passes',
  offer: 'offer',
  watch: 'watch',
  stop: 'stop',
};

/** The mark of a status; silent where the words stand beside it anyway. */
export function StatusGlyph({ status, silent = false }: { readonly status: Status; readonly silent?: boolean }) {
  return (
    <>
      <svg className={`glyph is-${status}`} viewBox="0 0 14 14" aria-hidden="true">
        <path d={shapes[status]} />
      </svg>
      {!silent && <span className="unseen">{statusWords[status]}</span>}
    </>
  );
}
