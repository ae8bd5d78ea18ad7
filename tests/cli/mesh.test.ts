import { readFileSync } from 'node:fs';
import { validateBytes } from 'gltf-validator';
import { expect, test } from 'vitest';
import { mesh } from '../../src/cli/mesh';
import { givenTerminal } from './given-terminal';

const flat = readFileSync('fixtures/plans/flat.json', 'utf8');
const given = { file: 'plan.json', options: new Set<string>(), out: 'out' };

test('mesh writes glTF that the validator passes, OBJ and its materials, into the folder', async () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  expect(mesh.run(given, terminal)).toBe(0);
  expect([...terminal.written.keys()]).toEqual(['out/stage.glb', 'out/stage.obj', 'out/stage.mtl']);
  const { issues } = await validateBytes(terminal.written.get('out/stage.glb')!);
  expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
});

test('mesh ends with 2 where nothing can be read or written', () => {
  expect(mesh.run(given, givenTerminal())).toBe(2);
  const locked = givenTerminal({ 'plan.json': flat });
  expect(mesh.run({ ...given, out: 'locked' }, locked)).toBe(2);
  expect(locked.complaints()).toContain('reason: unwritable');
});
