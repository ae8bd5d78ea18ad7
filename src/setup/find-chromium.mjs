import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';

/** Where systems usually keep a browser of the Chromium family. @type {Record<string, string[]>} */
const usualPlaces = {
  linux: [
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/usr/bin/google-chrome-stable',
    '/usr/bin/microsoft-edge',
    '/snap/bin/chromium',
  ],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: [
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  ],
};

/**
 * Path of the Chromium that the browser tests use: CHROMIUM_PATH, else the one Playwright manages, else the system's.
 * Null where there is none that starts. Throws where CHROMIUM_PATH names no file: somebody meant that one and no other.
 * @param {object} [look] what the search looks at, so that tests can give their own
 * @param {Record<string, string | undefined>} [look.env]
 * @param {string} [look.platform]
 * @param {(path: string) => boolean} [look.exists]
 * @param {(path: string) => boolean} [look.starts]
 * @param {() => string | null} [look.managed] where Playwright would keep its own
 * @returns {string | null}
 */
export function findChromium({
  env = process.env,
  platform = process.platform,
  exists = existsSync,
  starts = startsHere,
  managed = managedByPlaywright,
} = {}) {
  const wanted = env.CHROMIUM_PATH;
  if (wanted) {
    if (!exists(wanted)) throw new Error(`CHROMIUM_PATH points at ${wanted}, and there is no such file.`);
    return wanted;
  }
  const places = [managed(), ...(usualPlaces[platform] ?? [])];
  return places.find((place) => place !== null && exists(place) && starts(place)) ?? null;
}

/** A browser without its system libraries is a file that does not start. Only Linux installs one without the other. @param {string} path */
function startsHere(path) {
  if (process.platform !== 'linux') return true;
  return spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 20_000 }).status === 0;
}

function managedByPlaywright() {
  try {
    return createRequire(import.meta.url)('@playwright/test').chromium.executablePath();
  } catch {
    return null;
  }
}
