/** Hands bytes or text to the browser as a file of this name. */
export function downloadBytes(content: Uint8Array | string, name: string, type: string): void {
  const part = typeof content === 'string' ? content : new Uint8Array(content);
  const url = URL.createObjectURL(new Blob([part], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name.replace(/[\\/:*?"<>|]/g, ' ').trim();
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
