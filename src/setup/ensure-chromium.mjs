import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { findChromium } from './find-chromium.mjs';

const minutes = 60_000;

export const howToGetChromium =
  'The browser tests need Chromium and none was found. Install one (on Debian or Ubuntu: sudo apt-get install -y chromium), ' +
  'or set CHROMIUM_PATH to the browser of the Chromium family that you have.';

/**
 * Finds a Chromium, or gets one: by Playwright's own download, then, as root on a Debian-like system, as a package.
 * @param {string} root folder of package.json
 * @returns {string | null} its path; null where there is none to be had
 */
export function ensureChromium(root) {
  return (
    findChromium() ??
    after(root, [['npx', 'playwright', 'install', 'chromium']], 5 * minutes) ??
    (canInstallPackages() ? after(root, debianPackages, 10 * minutes) : null)
  );
}

/** @type {[string, ...string[]][]} */
const debianPackages = [
  ['apt-get', 'update', '-q'],
  ['apt-get', 'install', '-y', '-q', '--no-install-recommends', 'chromium', 'fonts-liberation'],
];

function canInstallPackages() {
  return process.platform === 'linux' && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
}

/**
 * Runs commands one after the other, each within a time limit, and looks again. Their words go to standard error.
 * @param {string} root
 * @param {[string, ...string[]][]} commands
 * @param {number} timeout in ms
 */
function after(root, commands, timeout) {
  for (const [command, ...args] of commands) {
    console.error(`Looking for Chromium: ${[command, ...args].join(' ')}`);
    const ended = spawnSync(command, args, {
      cwd: root,
      stdio: ['ignore', 2, 2],
      timeout,
      shell: process.platform === 'win32',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    if (ended.status !== 0) return null;
  }
  return findChromium();
}
