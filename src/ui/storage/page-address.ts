/** An address of a page as somebody types it, without its '#' part; null where it is none. */
export function readPageAddress(text: string): string | null {
  let url: URL;
  try {
    url = new URL(text.trim());
  } catch {
    return null;
  }
  if (url.protocol !== 'https:' && url.protocol !== 'http:') return null;
  url.hash = '';
  return url.href;
}

/** What keeps others from using links with this address, in a sentence; null where nothing does. */
export function addressCaution(address: string): string | null {
  if (isOwnMachine(address)) return 'This address leads everybody to their own machine.';
  return address.startsWith('https:') ? null : 'Over http browsers keep no page for use offline: https does.';
}

/** Whether an address leads everybody to their own machine, so that nobody else gets here by it. */
function isOwnMachine(address: string): boolean {
  const { hostname, protocol } = new URL(address);
  return protocol === 'file:' || /^(localhost|127(\.\d+){3}|\[::1\])$/.test(hostname);
}
