// Everything that must hold, in one go: `npm test`. Each step says how long it took; the last line counts
// the tests of vitest and Playwright, 'N passed, N failed', and the exit code is 0 only when nothing failed.
import { spawn } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { countPlaywright, countVitest, noTests, sumOf } from './count-tests.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const reports = '.build/test-reports';
/** A run is meant to take less than 20 minutes on two cores; what hangs beyond this is stopped and counts as failed. */
const mostMs = 45 * 60_000;

/** Packages of the commands that are called otherwise than their package. @type {Record<string, string>} */
const packageOf = { tsc: 'typescript', biome: '@biomejs/biome', playwright: '@playwright/test' };

/** @type {{ name: string, command: string, report?: string, count?: (report: unknown) => import('./count-tests.mjs').Counts, needs?: string }[]} */
const steps = [
  { name: 'types', command: 'tsc --noEmit' },
  { name: 'types of the pure half', command: 'tsc -p src/calc/tsconfig.json' },
  { name: 'lint', command: 'biome ci --error-on-warnings' },
  { name: 'dead code', command: 'knip --no-progress' },
  {
    name: 'unit tests',
    command: `vitest run --reporter=dot --reporter=json --outputFile.json=${reports}/vitest.json`,
    report: 'vitest.json',
    count: countVitest,
  },
  { name: 'build', command: 'vite build --logLevel warn' },
  {
    name: 'browser tests',
    command: 'playwright test --config tests/browser/playwright.config.ts --pass-with-no-tests',
    report: 'playwright.json',
    count: countPlaywright,
    needs: 'build',
  },
];

const began = Date.now();
const failed = new Set();
let total = noTests;
rmSync(join(root, reports), { recursive: true, force: true });

for (const step of steps) {
  if (step.needs !== undefined && failed.has(step.needs)) {
    console.log(`\n== ${step.name}: left out, for it needs: ${step.needs}`);
    continue;
  }
  console.log(`\n== ${step.name}`);
  const stepBegan = Date.now();
  const code = await run(step.command, mostMs - (stepBegan - began));
  const counts = step.count === undefined ? noTests : readCounts(step.report, step.count);
  // A step that fails without a failed test of its own is one failure.
  const failures = code === 0 ? counts.failed : Math.max(counts.failed, 1);
  if (failures > 0) failed.add(step.name);
  total = sumOf(total, { passed: counts.passed, failed: failures });
  console.log(`== ${step.name}: ${failures === 0 ? 'ok' : 'FAILED'} in ${seconds(stepBegan)}`);
}

console.log(`\nall in ${seconds(began)}${failed.size === 0 ? '' : `; failed: ${[...failed].join(', ')}`}`);
console.log(`${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed === 0 ? 0 : 1;

/** Exit code of one command; 1 where it was stopped for taking too long. @param {string} command @param {number} timeout */
function run(command, timeout) {
  const [tool = '', ...args] = command.split(' ');
  const env = { ...process.env, VOUSSOIR_REPORT: join(root, reports, 'playwright.json') };
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [scriptOf(tool), ...args], {
      cwd: root,
      env,
      stdio: ['ignore', 'inherit', 'inherit'],
      timeout: Math.max(timeout, 1),
    });
    child.on('error', () => resolve(1));
    child.on('close', (code) => resolve(code ?? 1));
  });
}

/** The file that a package's command runs: started without a shell, so that stopping it stops the tool itself. @param {string} tool */
function scriptOf(tool) {
  const home = join(root, 'node_modules', packageOf[tool] ?? tool);
  const { bin } = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8'));
  return join(home, typeof bin === 'string' ? bin : bin[tool]);
}

/** @param {string | undefined} report @param {(report: unknown) => import('./count-tests.mjs').Counts} count */
function readCounts(report, count) {
  try {
    return count(JSON.parse(readFileSync(join(root, reports, report ?? ''), 'utf8')));
  } catch {
    return noTests;
  }
}

/** @param {number} since */
function seconds(since) {
  return `${((Date.now() - since) / 1000).toFixed(1)} s`;
}
