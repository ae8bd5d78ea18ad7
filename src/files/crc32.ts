/** Remainders of all bytes. Source: ISO/IEC 15948:2004 (PNG), annex D; polynomial of ISO 3309. */
const remainders = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit++) remainder = remainder & 1 ? 0xedb88320 ^ (remainder >>> 1) : remainder >>> 1;
  return remainder;
});

/** Check sum of bytes as PNG and ZIP have it, from 0 to 2^32 - 1. */
export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) sum = remainders[(sum ^ bytes[i]!) & 0xff]! ^ (sum >>> 8);
  return (sum ^ 0xffffffff) >>> 0;
}
