import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { buildCommandLine } from '../../src/setup/build-command-line.mjs';

let root: string;
const write = (path: string, text: string) => {
  mkdirSync(join(root, path, '..'), { recursive: true });
  writeFileSync(join(root, path), text);
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'voussoir-'));
  write('src/cli/main.ts', "import { word } from '../plan/word';\nconst text: string = word;\nconsole.log(text);\n");
  write('src/plan/word.ts', "export const word = 'first';\n");
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

test('buildCommandLine gives an entry that Node runs as it is', async () => {
  const entry = await buildCommandLine(root);
  expect(execFileSync(process.execPath, [entry], { encoding: 'utf8' })).toBe('first\n');
});

test('buildCommandLine builds nothing while no source changes', async () => {
  const source = join(root, 'src/plan/word.ts');
  const time = new Date('2020-01-01');
  utimesSync(source, time, time);
  const entry = await buildCommandLine(root);
  // A source that cannot be built, of the same length and the same time: whoever builds it fails.
  writeFileSync(source, '{'.repeat(statSync(source).size));
  utimesSync(source, time, time);
  expect(await buildCommandLine(root)).toBe(entry);
});

test('buildCommandLine builds anew after a change, even one of the same length, and keeps one build only', async () => {
  await buildCommandLine(root);
  write('src/plan/word.ts', "export const word = 'other';\n");
  const entry = await buildCommandLine(root);
  expect(execFileSync(process.execPath, [entry], { encoding: 'utf8' })).toBe('other\n');
  expect(readdirSync(join(root, '.build'))).toHaveLength(1);
});

test('buildCommandLine called twice at once gives both the same entry', async () => {
  const [one, other] = await Promise.all([buildCommandLine(root), buildCommandLine(root)]);
  expect(one).toBe(other);
  expect(execFileSync(process.execPath, [one], { encoding: 'utf8' })).toBe('first\n');
});

test('buildCommandLine that fails leaves nothing behind, and works again once the source does', async () => {
  write('src/plan/word.ts', 'export const word = ;\n');
  await expect(buildCommandLine(root)).rejects.toThrow();
  expect(readdirSync(join(root, '.build'))).toEqual([]);
  write('src/plan/word.ts', "export const word = 'again';\n");
  const entry = await buildCommandLine(root);
  expect(execFileSync(process.execPath, [entry], { encoding: 'utf8' })).toBe('again\n');
});
