import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** The program as a person calls it, without npm: built where needed, then run in a process of its own. */
function call(words: readonly string[], input?: string) {
  const given = input === undefined ? {} : { input };
  const { status, stdout, stderr } = spawnSync(process.execPath, ['src/setup/voussoir.mjs', ...words], {
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
    ...given,
  });
  return { status, stdout, stderr };
}

test('the program reads a file by its path and writes one object to standard output, nothing else', () => {
  const { status, stdout, stderr } = call(['check', 'fixtures/plans/flat.json', '--json']);
  expect([0, 1]).toContain(status);
  expect(JSON.parse(stdout).headline.panels).toBeGreaterThan(0);
  expect(stderr).toBe('');
});

test('the program reads standard input', () => {
  const { stdout } = call(['check', '-'], readFileSync('fixtures/plans/flat.json', 'utf8'));
  expect(stdout).toContain('Checks: ');
});

test('the program ends with 2 on a file that is not there, and says so on standard error alone', () => {
  const { status, stdout, stderr } = call(['check', 'nowhere.json']);
  expect(status).toBe(2);
  expect(stdout).toBe('');
  expect(stderr).toBe('voussoir: nowhere.json: there is no such file\nreason: unreadable\n');
});

test('the program starts in about a second once it is built', () => {
  call(['help']);
  const taken = [1, 2, 3].map(() => {
    const began = performance.now();
    expect(call(['help']).status).toBe(0);
    return performance.now() - began;
  });
  // A fifth of a second on a quiet machine; the bound leaves room for one that runs every test at once.
  expect(Math.min(...taken)).toBeLessThan(2000);
});
