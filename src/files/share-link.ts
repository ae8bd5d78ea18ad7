import { deflateSync, inflateSync } from 'fflate';
import { emptyBuildLog } from '../plan/build-log';
import { type ParsedPlan, parsePlan, type Refusal } from '../plan/parse-plan';
import type { Plan } from '../plan/plan';
import { serialisePlan } from '../plan/serialise-plan';
import { fromBase64Url, toBase64Url } from './base64url';
import { crc32 } from './crc32';
import { shareDictionary1 } from './share-dictionary-1';

/** Why a link gives no plan: a part of it is missing, its signs are not those that were sent, a later program made it. */
export type ShareRefusal = Refusal | 'cut' | 'damaged' | 'newer-form';

export type SharedPlan =
  | { readonly plan: Plan }
  | { readonly refused: ShareRefusal; readonly path?: string; readonly sentence: string };

/**
 * The form of a link's bytes: this number; length of the text and of what is packed, 4 bytes each; the text in UTF-8, packed
 * (RFC 1951) against the dictionary of the form; CRC-32 of all before, 4 bytes. Numbers begin with their greatest byte.
 */
const form = 1;
const headBytes = 9;
const sumBytes = 4;
/** Longest text that a link is opened to, so that a few packed signs cannot fill the memory. */
const mostTextBytes = 16 * 1024 * 1024;

const dictionary = new TextEncoder().encode(shareDictionary1);

/** The plan as signs for an address, without the content of its revisions and without its log. The same plan gives the same signs. */
export function encodeShare(plan: Plan): string {
  const text = new TextEncoder().encode(sharedText(plan));
  const packed = deflateSync(text, { level: 9, mem: 12, dictionary });
  const bytes = new Uint8Array(headBytes + packed.length + sumBytes);
  const head = new DataView(bytes.buffer);
  head.setUint8(0, form);
  head.setUint32(1, text.length);
  head.setUint32(5, packed.length);
  bytes.set(packed, headBytes);
  head.setUint32(headBytes + packed.length, crc32(bytes.subarray(0, -sumBytes)));
  return toBase64Url(bytes);
}

/** What a link carries of a plan, as text: what tells two shared plans apart. */
export function sharedText(plan: Plan): string {
  return JSON.stringify(JSON.parse(serialisePlan({ ...plan, revisions: [], log: emptyBuildLog })));
}

/** The plan that signs of an address carry, or a named reason. Never throws. */
export function decodeShare(signs: string): SharedPlan {
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
  const text = unpack(bytes.subarray(headBytes, end), textLength);
  return text === null ? damaged : readText(text);
}

/** Exactly `length` bytes; null where something else comes out. */
function unpack(packed: Uint8Array, length: number): Uint8Array | null {
  try {
    // One byte more than is stated: a packer that has more to give would else be cut off without a word.
    const text = inflateSync(packed, { dictionary, out: new Uint8Array(length + 1) });
    return text.length === length ? text : null;
  } catch {
    return null;
  }
}

function readText(bytes: Uint8Array): ParsedPlan | typeof damaged {
  try {
    return parsePlan(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return damaged;
  }
}

const cut = {
  refused: 'cut',
  sentence: 'This link ends in the middle: a part of it is missing.',
} as const satisfies SharedPlan;

const damaged = {
  refused: 'damaged',
  sentence: 'The signs of this link are not those that were sent.',
} as const satisfies SharedPlan;

const newerForm = {
  refused: 'newer-form',
  sentence: 'This link was made by a newer version of the program.',
} as const satisfies SharedPlan;

const tooLarge = {
  refused: 'too-large',
  sentence: 'This link holds more than any link of this program does.',
} as const satisfies SharedPlan;
