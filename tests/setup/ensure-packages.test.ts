import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { ensurePackages } from '../../src/setup/ensure-packages.mjs';

let root: string;
let calls: string[];
/** Stands for npm: says what it was asked and lays an empty folder, as an install of the lock would. */
const install = (command: string, args: string[]) => {
  calls.push([command, ...args].join(' '));
  mkdirSync(join(root, 'node_modules'), { recursive: true });
  return 0;
};
const lockWith = (packages: Record<string, object>) =>
  writeFileSync(join(root, 'package-lock.json'), JSON.stringify({ packages: { '': { name: 'x' }, ...packages } }));
const recordWith = (packages: Record<string, object>) => {
  mkdirSync(join(root, 'node_modules'), { recursive: true });
  writeFileSync(join(root, 'node_modules', '.package-lock.json'), JSON.stringify({ packages }));
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'voussoir-'));
  calls = [];
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

test('ensurePackages installs the lock, by npm ci, where there is no node_modules', () => {
  lockWith({ 'node_modules/a': { version: '1.0.0' } });
  expect(ensurePackages(root, install)).toBe('installed');
  expect(calls).toEqual(['npm ci --loglevel=error']);
});

test('ensurePackages asks npm nothing the second time', () => {
  lockWith({ 'node_modules/a': { version: '1.0.0' } });
  ensurePackages(root, install);
  expect(ensurePackages(root, install)).toBe('present');
  expect(calls).toHaveLength(1);
});

test('ensurePackages installs again after the lock changed', () => {
  lockWith({ 'node_modules/a': { version: '1.0.0' } });
  ensurePackages(root, install);
  lockWith({ 'node_modules/a': { version: '1.0.1' } });
  expect(ensurePackages(root, install)).toBe('installed');
  expect(calls).toHaveLength(2);
});

test('ensurePackages takes an install made by hand, with packages of other systems left out', () => {
  lockWith({ 'node_modules/a': { version: '1.0.0' }, 'node_modules/other-os': { version: '2.0.0', optional: true } });
  recordWith({ 'node_modules/a': { version: '1.0.0' } });
  expect(ensurePackages(root, install)).toBe('present');
  expect(calls).toEqual([]);
});

test.each([
  ['another version', { 'node_modules/a': { version: '0.9.0' } }],
  ['a package missing', {}],
])('ensurePackages installs over an install by hand with %s', (_what, packages) => {
  lockWith({ 'node_modules/a': { version: '1.0.0' } });
  recordWith(packages);
  expect(ensurePackages(root, install)).toBe('installed');
});

test('ensurePackages leaves no mark when npm fails, so that the next call tries again', () => {
  lockWith({ 'node_modules/a': { version: '1.0.0' } });
  expect(ensurePackages(root, () => 1)).toBe('failed');
  expect(existsSync(join(root, 'node_modules', '.voussoir-lock'))).toBe(false);
  expect(ensurePackages(root, install)).toBe('installed');
  // SHA-256 in hexadecimal has 64 digits (FIPS 180-4).
  expect(readFileSync(join(root, 'node_modules', '.voussoir-lock'), 'utf8')).toMatch(/^[0-9a-f]{64}$/);
});
