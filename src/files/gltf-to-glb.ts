import type { GltfDocument } from './gltf-document';

const magic = 0x46546c67;
const jsonType = 0x4e4f534a;
const binaryType = 0x004e4942;
const headerBytes = 12;
const chunkHeaderBytes = 8;

/** A glTF document with its buffer as one binary file. Source: Khronos, glTF 2.0 (ISO/IEC 12113:2022), 4.4 binary glTF layout. */
export function gltfToGlb({ json, buffer }: GltfDocument): Uint8Array<ArrayBuffer> {
  const text = new TextEncoder().encode(JSON.stringify(json));
  const textBytes = upToFour(text.length);
  const binaryBytes = buffer.reduce((sum, values) => sum + values.byteLength, 0);
  const hasBinary = binaryBytes > 0;
  const length = headerBytes + chunkHeaderBytes + textBytes + (hasBinary ? chunkHeaderBytes + binaryBytes : 0);
  const bytes = new Uint8Array(length);
  const view = new DataView(bytes.buffer);
  const words = (at: number, ...values: number[]) => {
    for (const [i, value] of values.entries()) view.setUint32(at + i * 4, value, true);
  };
  words(0, magic, 2, length, textBytes, jsonType);
  let at = headerBytes + chunkHeaderBytes;
  bytes.fill(0x20, at, at + textBytes);
  bytes.set(text, at);
  at += textBytes;
  if (!hasBinary) return bytes;
  words(at, binaryBytes, binaryType);
  at += chunkHeaderBytes;
  for (const values of buffer) {
    // The file is little-endian whatever the machine is.
    const isFloat = values instanceof Float32Array;
    for (let i = 0; i < values.length; i++, at += 4) {
      if (isFloat) view.setFloat32(at, values[i]!, true);
      else view.setUint32(at, values[i]!, true);
    }
  }
  return bytes;
}

function upToFour(bytes: number): number {
  return Math.ceil(bytes / 4) * 4;
}
