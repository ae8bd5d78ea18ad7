import { readFileSync } from 'node:fs';
import { validateBytes } from 'gltf-validator';
import { expect, test } from 'vitest';
import { check } from '../../src/cli/check';
import { mesh } from '../../src/cli/mesh';
import { readGlb } from '../files/read-glb';
import { givenTerminal } from './given-terminal';

const flat = readFileSync('fixtures/plans/flat.json', 'utf8');
const ring = readFileSync('fixtures/plans/ring-feet.json', 'utf8');
const given = { file: 'plan.json', options: new Set<string>(), out: 'out' };

test('mesh writes glTF that the validator passes, OBJ and its materials, into the folder', async () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  expect(mesh.run(given, terminal)).toBe(0);
  expect([...terminal.written.keys()]).toEqual([
    'out/stage.glb',
    'out/stage.obj',
    'out/stage.mtl',
    'out/whole-stage.glb',
  ]);
  for (const name of ['stage', 'whole-stage']) {
    const { issues } = await validateBytes(terminal.written.get(`out/${name}.glb`)!);
    expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
  }
});

test('mesh has a node for each panel in the whole stage, and --vehicle the vehicle', () => {
  const names = (...options: string[]) => {
    const terminal = givenTerminal({ 'plan.json': ring });
    mesh.run({ ...given, options: new Set(options) }, terminal);
    return readGlb(terminal.written.get('out/whole-stage.glb')!).json.nodes.map(({ name }) => name);
  };
  const checked = givenTerminal({ 'plan.json': ring });
  check.run({ file: 'plan.json', options: new Set(['--json']) }, checked);
  const panels = names().filter((name) => /^[A-Z] C\d+ R\d+$/.test(name));
  expect(panels).toHaveLength(JSON.parse(checked.output()).headline.panels);
  expect(names()).not.toContain('Vehicle');
  expect(names('--vehicle')).toContain('Vehicle');
});

test('mesh ends with 2 where nothing can be read or written', () => {
  expect(mesh.run(given, givenTerminal())).toBe(2);
  const locked = givenTerminal({ 'plan.json': flat });
  expect(mesh.run({ ...given, out: 'locked' }, locked)).toBe(2);
  expect(locked.complaints()).toContain('reason: unwritable');
});
