import { validateBytes } from 'gltf-validator';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { gltfToGlb } from '../../src/files/gltf-to-glb';
import { stageGltf } from '../../src/files/stage-gltf';
import { findOpening } from '../../src/sheets/find-opening';
import { stageParts } from '../../src/sheets/stage-parts';
import { sampleNames, samplePlan } from '../arbitraries/sample-plans';
import { readGlb } from './read-glb';

const partsOf = (name: (typeof sampleNames)[number]) => {
  const plan = samplePlan(name);
  return stageParts(plan, createEvaluator().evaluate(plan));
};
const ring = partsOf('ring-feet');
const { json, numbers } = readGlb(gltfToGlb(stageGltf(ring, 'Ring', true)));
const roots = json.scenes[0]!.nodes.map((index) => json.nodes[index]!);
const named = (name: string) => json.nodes.find((node) => node.name === name)!;

test.each(sampleNames)('stageGltf of %s passes the validator, with a node for each panel', async (name) => {
  const parts = name === 'ring-feet' ? ring : partsOf(name);
  const glb = gltfToGlb(stageGltf(parts, name, true));
  const { issues } = await validateBytes(glb);
  expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
  const { json: read } = readGlb(glb);
  const panels = read.nodes.filter((node) => /C\d+ R\d+$/.test(node.name));
  expect(panels).toHaveLength(parts.surfaces.total);
  expect(new Set(panels.map((panel) => panel.name)).size).toBe(panels.length);
});

test('stageGltf nests panels under their surface; floor, hall and vehicle stand beside', () => {
  expect(roots.map(({ name }) => name)).toEqual([
    ...ring.surfaces.surfaces.map(({ letter, name }) => `${letter} ${name}`.trim()),
    ...['Floor', 'Hall', 'Vehicle'],
  ]);
  for (const [s, table] of ring.surfaces.surfaces.entries()) {
    const children = roots[s]!.children!.map((index) => json.nodes[index]!.name);
    expect(children).toHaveLength(table.count);
    for (const name of children) expect(name).toMatch(new RegExp(`^${table.letter} C\\d+ R\\d+$`));
  }
});

test('stageGltf puts the ceiling at its trim, its faces looking down', () => {
  const ceiling = ring.surfaces.surfaces.find(({ kind }) => kind === 'ceiling')!;
  const { translation, rotation } = named(`${ceiling.letter} C${ceiling.column[0]} R${ceiling.row[0]}`);
  expect(translation![1]).toBeCloseTo(ceiling.zMm[0]! / 1000, 9);
  // +z turned by a quaternion: 2 (x z + w y), 2 (y z - w x), 1 - 2 (x x + y y).
  const [x, y, z, w] = rotation as [number, number, number, number];
  expect(2 * (y * z - w * x)).toBeCloseTo(-1, 9);
});

test('stageGltf gives a panel the size and the depth of its sheet', () => {
  const wall = ring.surfaces.surfaces[0]!;
  const { widthMm, heightMm, depthMm } = wall.types[wall.type[0]!]!;
  const points = json.meshes[named('A C1 R1').mesh]!.primitives.flatMap(({ attributes }) =>
    numbers(attributes.POSITION),
  );
  const spread = (axis: number) => {
    const values = points.filter((_, i) => i % 3 === axis);
    return (Math.max(...values) - Math.min(...values)) * 1000;
  };
  [widthMm, heightMm, depthMm].forEach((value, axis) => {
    expect(spread(axis)).toBeCloseTo(value, 3);
  });
});

test('stageGltf stands the vehicle 1.5 m before the opening, its nose into the stage', () => {
  const opening = findOpening(ring.walls)!;
  const { translation, rotation, children } = named('Vehicle');
  const nose = { x: translation![0]! * 1000, y: -translation![2]! * 1000 };
  expect(Math.hypot(nose.x - opening.middle.xMm, nose.y - opening.middle.yMm)).toBeCloseTo(1500, 6);
  // +z turned: 2 (x z + w y), 1 - 2 (x x + y y) along x and z; the plan's y runs to -z.
  const [, y, , w] = rotation as [number, number, number, number];
  expect(2 * w * y).toBeCloseTo(-opening.outX, 9);
  expect(1 - 2 * y * y).toBeCloseTo(opening.outY, 9);
  expect(children!.map((index) => json.nodes[index]!.name)).toEqual(['Cab', 'Body']);
});

test('stageGltf leaves the vehicle out where it is not wished or nothing opens, and the hall where it is not stated', () => {
  const names = (parts: Parameters<typeof stageGltf>[0], withVehicle: boolean) =>
    (stageGltf(parts, '', withVehicle).json as typeof json).nodes.map(({ name }) => name);
  expect(names(ring, false)).not.toContain('Vehicle');
  const flat = partsOf('flat');
  expect(names(flat, true)).not.toContain('Vehicle');
  expect(names({ ...flat, hall: { ...flat.hall, lengthMm: null } }, true)).not.toContain('Hall');
});

test('stageGltf of a stage without panels is a floor', async () => {
  const empty = { ...partsOf('flat'), surfaces: { surfaces: [], offsets: [], total: 0 }, walls: [] };
  const glb = gltfToGlb(stageGltf({ ...empty, hall: { ...empty.hall, lengthMm: null } }, 'Empty', true));
  expect(readGlb(glb).json.nodes.map(({ name }) => name)).toEqual(['Floor']);
  const { issues } = await validateBytes(glb);
  expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
});
