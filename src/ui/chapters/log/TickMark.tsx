/** A box, with a tick where the step is done: reads without colour. */
export function TickMark({ done }: { readonly done: boolean }) {
  return (
    <svg className="tick-mark" viewBox="0 0 24 24" aria-hidden="true">
      <rect x="2" y="2" width="20" height="20" rx="3" />
      {done && <path d="M6.5 12.5 10.5 17 18 7.5" />}
    </svg>
  );
}
