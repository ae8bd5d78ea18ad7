export interface GivenLinkProps {
  readonly label: string;
  /** The value as it is read. */
  readonly value: string;
  /** Title of the page that owns it. */
  readonly owner: string;
  readonly href: string;
}

/** A given that another page owns: shown here, changed there. */
export function GivenLink({ label, value, owner, href }: GivenLinkProps) {
  return (
    <div className="field">
      <span>{label}</span>
      <a className="given-link" href={href}>
        {value} ({owner})
      </a>
    </div>
  );
}
