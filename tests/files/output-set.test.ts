import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { validateBytes } from 'gltf-validator';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { meshFiles, outputSet, pictureFile } from '../../src/files/output-set';
import { parsePlan } from '../../src/plan/parse-plan';
import { outputsOf } from '../../src/sheets/outputs-of';
import { readGlb } from './read-glb';
import { cornersOfRow, readPng } from './read-png';

function openSample(name: string) {
  const parsed = parsePlan(readFileSync(`fixtures/plans/${name}.json`, 'utf8'));
  if (!('plan' in parsed)) throw new Error(parsed.sentence);
  return createEvaluator().evaluate(parsed.plan);
}

const evaluation = openSample('flat');
const inputs = outputsOf(evaluation);
const set = [...outputSet(inputs, 'Flat')];
const fileOf = (name: string) => set.find(({ file }) => file.name === name)!.file.bytes;
const rows = csvParse(new TextDecoder().decode(fileOf('pixel-map.csv')));
const { nodes } = inputs.fed;

/** Ten panels spread over the stage, each with its line of the pixel map. */
const ten = Array.from({ length: 10 }, (_, i) => Math.floor((i * (rows.length - 1)) / 9));

test('outputSet has notes, pixel map, geometry and the pictures of every node, and ends with all of it done', () => {
  const pictures = nodes.flatMap(({ name, mode }) => [
    `pictures/${name}.png`,
    ...(mode.depthBits > 8 ? [`pictures-16-bit/${name}.png`] : []),
  ]);
  expect(nodes.length).toBeGreaterThan(0);
  expect(set.map(({ file }) => file.name)).toEqual([
    'read-me.txt',
    'pixel-map.csv',
    'stage.glb',
    'stage.obj',
    'stage.mtl',
    ...pictures,
  ]);
  expect(set.at(-1)!.done).toBe(1);
  expect(set.map(({ done }) => done)).toEqual(set.map(({ done }) => done).sort((a, b) => a - b));
});

test('the pixel map covers every panel once', () => {
  expect(rows).toHaveLength(inputs.surfaces.total);
  expect(new Set(rows.map(({ panel }) => panel)).size).toBe(rows.length);
});

/** Pictures as another program decodes them, each once. */
const pictureOf = new Map(nodes.map(({ name }) => [name, readPng(fileOf(`pictures/${name}.png`))]));

test('pictures are decoded by another program at the exact size of the canvas, with borders where the pixel map has panels', () => {
  for (const { name, canvasWidth, canvasHeight } of nodes) {
    expect(pictureOf.get(name)).toMatchObject({ width: canvasWidth, height: canvasHeight });
  }
  for (const index of ten) {
    const row = rows[index]!;
    const { rgb } = pictureOf.get(row.node!)!;
    const { outer, inner } = cornersOfRow(row);
    for (const corner of outer) expect(rgb(...corner)).toEqual([255, 255, 255]);
    for (const corner of inner) expect(rgb(...corner)).not.toEqual([255, 255, 255]);
  }
});

test('the grey ramp of ten panels, decoded by another program: level of 8 bits, and of 10 in the picture of 16', () => {
  const [node] = nodes;
  const shallow = pictureOf.get(node!.name)!;
  const full = readPng(pictureFile(inputs, 0, 16).bytes, 16);
  const own = rows.filter((row) => row.node === node!.name && row.place !== '');
  for (let i = 0; i < 10; i++) {
    const row = own[Math.floor((i * (own.length - 1)) / 9)]!;
    const x = Number(row.canvasX) + Math.floor(Number(row.width) / 2);
    // The second row of pixels of the ramp, which takes five stripes of 0.026 of the height above the border.
    const stripe = Math.max(1, Math.round(Number(row.height) * 0.026));
    const y = Number(row.canvasY) + Number(row.height) - 1 - stripe * 5 + 1;
    const level = Math.floor((x * 1024) / node!.canvasWidth);
    expect(shallow.rgb(x, y)).toEqual([level >> 2, level >> 2, level >> 2]);
    expect(full.rgb(x, y).map((value) => value >> 6)).toEqual([level, level, level]);
  }
});

test('the geometry of ten panels read back from the glTF file: corners of the wall, texture coordinates of the pixel map', async () => {
  const glb = fileOf('stage.glb');
  const { issues } = await validateBytes(glb);
  expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
  const { json, numbers } = readGlb(glb);
  const [wall] = evaluation.walls.results.walls;
  const { table } = wall!;
  const uvOf = (
    row: (typeof rows)[number],
    right: number,
    up: number,
    canvas: { canvasWidth: number; canvasHeight: number },
  ) => [
    (Number(row.canvasX) + right * Number(row.width)) / canvas.canvasWidth,
    (Number(row.canvasY) + (1 - up) * Number(row.height)) / canvas.canvasHeight,
  ];
  const primitives = json.meshes[0]!.primitives.map(({ attributes, material }) => ({
    node: json.materials[material]!.name,
    positions: numbers(attributes.POSITION),
    uv: numbers(attributes.TEXCOORD_1),
  }));
  for (const index of ten.filter((panel) => panel < table.count)) {
    const row = rows[index]!;
    const column = Number(row.column) - 1;
    const node = nodes.find(({ name }) => name === row.node)!;
    const { positions, uv } = primitives.find((one) => one.node === row.node)!;
    const half = table.types[table.type[index]!]!.heightMm / 2;
    const corners = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ] as const;
    const expected = corners.map(([right, up]) => ({
      // The wall's own corners in plan: x0 y0 x1 y1 a column. glTF: x, height, -y, in metres.
      position: [
        wall!.frontMm[column * 4 + right * 2]! / 1000,
        (table.zMm[index]! + (up === 1 ? half : -half)) / 1000,
        -wall!.frontMm[column * 4 + right * 2 + 1]! / 1000,
      ],
      uv: uvOf(row, right, up, node),
    }));
    // The panel is the quadrilateral whose first corner has the expected texture coordinate.
    const first = Array.from({ length: uv.length / 8 }, (_, quad) => quad).find(
      (quad) => Math.hypot(uv[quad * 8]! - expected[0]!.uv[0]!, uv[quad * 8 + 1]! - expected[0]!.uv[1]!) < 1e-6,
    )!;
    expected.forEach(({ position, uv: share }, corner) => {
      const vertex = first * 4 + corner;
      position.forEach((value, axis) => {
        expect(positions[vertex * 3 + axis]).toBeCloseTo(value, 5);
      });
      share.forEach((value, axis) => {
        expect(uv[vertex * 2 + axis]).toBeCloseTo(value, 6);
      });
    });
  }
});

test('outputSet gives the same bytes for the same plan, evaluated anew', () => {
  const again = meshFiles(outputsOf(openSample('flat')), 'Flat');
  for (const { name, bytes } of again) expect(Buffer.from(bytes).equals(Buffer.from(fileOf(name)))).toBe(true);
});
