import { deflateSync, inflateSync } from 'fflate';
import { fromBase64Url, toBase64Url } from './base64url';
import { crc32 } from './crc32';

/** How a text is packed; neither ever changes for a form that was once given out. */
export interface PackedForm {
  /** 1 to 255; a later form has a greater number. */
  readonly form: number;
  /** Text that the packer may point back into. */
  readonly dictionary: Uint8Array;
}

/** Why signs give no text: a part of them is missing, they are not those that were sent, a later program made them. */
export type SignsRefusal = 'cut' | 'damaged' | 'newer-form' | 'too-large';

export type UnpackedSigns = { readonly text: string } | { readonly refused: SignsRefusal; readonly sentence: string };

const headBytes = 9;
const sumBytes = 4;
/** Longest text that signs are opened to, so that a few of them cannot fill the memory. */
const mostTextBytes = 16 * 1024 * 1024;

/**
 * A text as signs for an address. The bytes behind them: the number of the form; length of the text and of what is packed, 4
 * bytes each; the text in UTF-8, packed (RFC 1951) against the dictionary of the form; CRC-32 of all before, 4 bytes.
 * Numbers begin with their greatest byte. The same text gives the same signs.
 */
export function packSigns(text: string, { form, dictionary }: PackedForm): string {
  const plain = new TextEncoder().encode(text);
  const packed = deflateSync(plain, { level: 9, mem: 12, dictionary });
  const bytes = new Uint8Array(headBytes + packed.length + sumBytes);
  const head = new DataView(bytes.buffer);
  head.setUint8(0, form);
  head.setUint32(1, plain.length);
  head.setUint32(5, packed.length);
  bytes.set(packed, headBytes);
  head.setUint32(headBytes + packed.length, crc32(bytes.subarray(0, -sumBytes)));
  return toBase64Url(bytes);
}

/** The text behind signs, or a named reason. Never throws. */
export function unpackSigns(signs: string, { form, dictionary }: PackedForm): UnpackedSigns {
  const read = fromBase64Url(signs);
  if (read === null) return damaged;
  const { bytes, isWhole } = read;
  const found = bytes[0];
  if (found === undefined) return cut;
  if (found > form) return newerForm;
  if (found < form) return damaged;
  if (bytes.length < headBytes) return cut;
  const head = new DataView(bytes.buffer);
  const [textLength, packedLength] = [head.getUint32(1), head.getUint32(5)];
  const end = headBytes + packedLength;
  if (bytes.length < end + sumBytes) return cut;
  const isSound = isWhole && bytes.length === end + sumBytes && crc32(bytes.subarray(0, end)) === head.getUint32(end);
  if (!isSound) return damaged;
  if (textLength > mostTextBytes) return tooLarge;
  const text = unpack(bytes.subarray(headBytes, end), textLength, dictionary);
  return text === null ? damaged : { text };
}

/** Text of exactly `length` bytes of UTF-8; null where something else comes out. */
function unpack(packed: Uint8Array, length: number, dictionary: Uint8Array): string | null {
  try {
    // One byte more than is stated: a packer that has more to give would else be cut off without a word.
    const text = inflateSync(packed, { dictionary, out: new Uint8Array(length + 1) });
    return text.length === length ? new TextDecoder('utf-8', { fatal: true }).decode(text) : null;
  } catch {
    return null;
  }
}

const cut = {
  refused: 'cut',
  sentence: 'This link ends in the middle: a part of it is missing.',
} as const satisfies UnpackedSigns;

const damaged = {
  refused: 'damaged',
  sentence: 'The signs of this link are not those that were sent.',
} as const satisfies UnpackedSigns;

const newerForm = {
  refused: 'newer-form',
  sentence: 'This link was made by a newer version of the program.',
} as const satisfies UnpackedSigns;

const tooLarge = {
  refused: 'too-large',
  sentence: 'This link holds more than any link of this program does.',
} as const satisfies UnpackedSigns;
