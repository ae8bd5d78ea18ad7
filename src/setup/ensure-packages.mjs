import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Installs the packages of package-lock.json unless they are there already.
 * A mark in node_modules holds the hash of the lock that was installed last. An install made by hand has no mark:
 * it counts when npm's own record of what it put there names the same packages as the lock.
 * @param {string} root folder of package.json
 * @param {(command: string, args: string[]) => number} [run] runs a command there and gives its exit code
 * @returns {'present' | 'installed' | 'failed'}
 */
export function ensurePackages(root, run = runIn(root)) {
  const lock = readFileSync(join(root, 'package-lock.json'), 'utf8');
  const mark = join(root, 'node_modules', '.voussoir-lock');
  const hash = createHash('sha256').update(lock).digest('hex');
  if (existsSync(mark) && readFileSync(mark, 'utf8') === hash) return 'present';
  if (isInstalled(JSON.parse(lock), readRecord(root))) {
    writeFileSync(mark, hash);
    return 'present';
  }
  if (run('npm', ['ci', '--loglevel=error']) !== 0) return 'failed';
  writeFileSync(mark, hash);
  return 'installed';
}

/** @typedef {{ packages: Record<string, { version?: string, optional?: boolean }> }} Lock */

/**
 * True where every package of the lock is in the record with the same version; those for other systems may be missing.
 * @param {Lock} lock
 * @param {Lock | null} record
 */
function isInstalled(lock, record) {
  if (record === null) return false;
  return Object.entries(lock.packages).every(([place, wanted]) => {
    if (place === '') return true;
    const present = record.packages[place];
    return present === undefined ? wanted.optional === true : present.version === wanted.version;
  });
}

/** @param {string} root @returns {Lock | null} */
function readRecord(root) {
  try {
    return JSON.parse(readFileSync(join(root, 'node_modules', '.package-lock.json'), 'utf8'));
  } catch {
    return null;
  }
}

/** Standard output stays the asking command's own: what npm says goes to standard error. @param {string} root */
function runIn(root) {
  return (/** @type {string} */ command, /** @type {string[]} */ args) =>
    spawnSync(command, args, { cwd: root, stdio: ['ignore', 2, 2], shell: process.platform === 'win32' }).status ?? 1;
}
