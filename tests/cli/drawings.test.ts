import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { drawings } from '../../src/cli/drawings';
import { readDxf } from '../files/read-dxf';
import { readSvg } from '../files/read-svg';
import { givenTerminal } from './given-terminal';

const flat = readFileSync('fixtures/plans/flat.json', 'utf8');
const given = { file: 'plan.json', options: new Set<string>(), out: 'out', format: 'dxf' } as const;
const decode = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);

test('drawings writes DXF that an outside reader takes, and names each file', () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  expect(drawings.run(given, terminal)).toBe(0);
  const names = [...terminal.written.keys()];
  expect(names.slice(0, 5)).toEqual([
    'out/from-above.dxf',
    'out/elevation-from-the-open-side.dxf',
    'out/elevation-from-behind.dxf',
    'out/elevation-from-the-side.dxf',
    'out/A-unrolled-from-behind.dxf',
  ]);
  expect(terminal.output().trimEnd().split('\n')).toHaveLength(names.length);
  for (const bytes of terminal.written.values()) expect(readDxf(decode(bytes)).entities.length).toBeGreaterThan(10);
});

test('drawings --format svg writes SVG, with lengths as the plan reads them', () => {
  const terminal = givenTerminal({ 'plan.json': JSON.stringify({ ...JSON.parse(flat), lengths: 'feet' }) });
  expect(drawings.run({ ...given, format: 'svg' }, terminal)).toBe(0);
  const elements = readSvg(decode(terminal.written.get('out/A-unrolled-from-behind.svg')));
  expect(elements[0]!.name).toBe('svg');
  expect(elements.find(({ name }) => name === 'title')!.text).toContain('15\' 9"'); // 8 columns of 600 mm
});

test('drawings gives the same bytes for the same plan', () => {
  const [first, second] = [givenTerminal({ 'plan.json': flat }), givenTerminal({ 'plan.json': flat })];
  for (const terminal of [first, second]) drawings.run(given, terminal);
  expect([...first!.written].map(([, bytes]) => decode(bytes))).toEqual(
    [...second!.written].map(([, bytes]) => decode(bytes)),
  );
});

test('drawings ends with 1 and says why where the plan has no panels', () => {
  const terminal = givenTerminal({
    'plan.json': JSON.stringify({ ...JSON.parse(flat), walls: [], ceilings: [] }),
  });
  expect(drawings.run(given, terminal)).toBe(1);
  expect(terminal.complaints()).toContain('no panels');
  expect(terminal.written.size).toBe(0);
});

test('drawings ends with 2 where nothing can be read or written', () => {
  expect(drawings.run(given, givenTerminal())).toBe(2);
  const locked = givenTerminal({ 'plan.json': flat });
  expect(drawings.run({ ...given, out: 'locked' }, locked)).toBe(2);
  expect(locked.complaints()).toContain('locked/from-above.dxf: it may not be written');
});
