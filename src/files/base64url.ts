const signs = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const values = new Map([...signs].map((sign, value) => [sign.charCodeAt(0), value]));

/** Bytes as text that stands in an address without escapes (RFC 4648, section 5, without padding). */
export function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const three = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const count = Math.min(bytes.length - i, 3) + 1;
    for (let place = 0; place < count; place++) text += signs[(three >> (18 - 6 * place)) & 63]!;
  }
  return text;
}

/**
 * The bytes of such a text; null where a sign belongs to none. `isWhole` is false where the text ends inside a byte, or in
 * bits that no byte has: it was cut, or its last sign changed.
 */
export function fromBase64Url(text: string): { readonly bytes: Uint8Array; readonly isWhole: boolean } | null {
  const bytes = new Uint8Array(Math.floor((text.length * 6) / 8));
  let bits = 0;
  let held = 0;
  let at = 0;
  for (let i = 0; i < text.length; i++) {
    const value = values.get(text.charCodeAt(i));
    if (value === undefined) return null;
    bits = ((bits << 6) | value) & 0xffff;
    held += 6;
    if (held >= 8) {
      held -= 8;
      bytes[at++] = bits >> held;
    }
  }
  return { bytes, isWhole: text.length % 4 !== 1 && (bits & ((1 << held) - 1)) === 0 };
}
