/** 1 January 1980, the earliest a ZIP can state: time 0, date (0 years << 9) | (month 1 << 5) | day 1. */
const earliestTime = 0;
const earliestDate = 0x21;

const centralSignature = 0x02014b50;
const endSignature = 0x06054b50;
const endLength = 22;

/**
 * Sets the time of change of every file in a ZIP to the earliest one, in place, so that the same content gives the same
 * bytes whenever it is written. Throws where the bytes are no ZIP without a comment.
 * Source: PKWARE, APPNOTE.TXT 6.3, 4.3.7 local file header, 4.3.12 central directory, 4.3.16 end of central directory.
 */
export function setZipTimes(bytes: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = bytes.byteLength - endLength;
  if (end < 0 || view.getUint32(end, true) !== endSignature) throw new Error('not a ZIP that ends with its directory');
  const files = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  for (let file = 0; file < files; file++) {
    if (view.getUint32(at, true) !== centralSignature) throw new Error('a ZIP whose directory is broken');
    view.setUint16(at + 12, earliestTime, true);
    view.setUint16(at + 14, earliestDate, true);
    const local = view.getUint32(at + 42, true);
    view.setUint16(local + 10, earliestTime, true);
    view.setUint16(local + 12, earliestDate, true);
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return bytes;
}
