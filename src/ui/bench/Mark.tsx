/** The mark: an arch of wedge-shaped stones with its keystone. */
export function Mark() {
  return (
    <svg className="mark" width="22" height="22" viewBox="0 0 22 22" aria-hidden="true">
      <path d="M2 19 4.2 9 9 11.6 8 19ZM4.2 9 11 3 17.8 9 13 11.6 11 10.4 9 11.6ZM20 19 17.8 9 13 11.6 14 19Z" />
    </svg>
  );
}
