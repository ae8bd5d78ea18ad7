import { expect, test } from 'vitest';
import { createGltfBuffer } from '../../src/files/gltf-buffer';

test('createGltfBuffer lays numbers one after the other and says where each begins', () => {
  const buffer = createGltfBuffer();
  const accessors = [buffer.putPositions([0, 1, 2, -3, 4, 5]), buffer.put([0, 1], 2), buffer.putIndices([0, 1, 1])];
  expect(accessors).toEqual([0, 1, 2]);
  // Source: Khronos, glTF 2.0 (ISO/IEC 12113:2022), 3.6.2: 5126 float, 5125 unsigned int; 34962 vertices, 34963 indices.
  expect(buffer.json()).toEqual({
    accessors: [
      { bufferView: 0, componentType: 5126, count: 2, type: 'VEC3', min: [-3, 1, 2], max: [0, 4, 5] },
      { bufferView: 1, componentType: 5126, count: 1, type: 'VEC2' },
      { bufferView: 2, componentType: 5125, count: 3, type: 'SCALAR' },
    ],
    bufferViews: [
      { buffer: 0, byteOffset: 0, byteLength: 24, target: 34962 },
      { buffer: 0, byteOffset: 24, byteLength: 8, target: 34962 },
      { buffer: 0, byteOffset: 32, byteLength: 12, target: 34963 },
    ],
    buffers: [{ byteLength: 44 }],
  });
  expect(buffer.values.map((values) => [...values])).toEqual([
    [0, 1, 2, -3, 4, 5],
    [0, 1],
    [0, 1, 1],
  ]);
});

test('createGltfBuffer that nothing was put into says nothing', () => {
  expect(createGltfBuffer().json()).toEqual({});
});
