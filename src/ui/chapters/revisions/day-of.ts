/** The day of a moment on the calendar of the machine that it is read on: '2026-11-25'. */
export function dayOf(moment: Date): string {
  const two = (figure: number) => `${figure}`.padStart(2, '0');
  return `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}
