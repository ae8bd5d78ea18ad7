// Makes `npm start`, `npm test` and `npm run voussoir` work on a machine that has Node and nothing else.
// Called with what is needed: `node src/setup/ensure.mjs deps chromium`. Uses only Node's own modules, and loads
// those that an old Node could not read after it has looked at the version.
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { whyNodeIsRefused } from './node-version.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** @param {string[]} needs @returns {Promise<string | null>} what to tell; null where all is there */
async function whatIsMissing(needs) {
  const refusal = whyNodeIsRefused(process.versions.node);
  if (refusal !== null) return refusal;
  if (needs.includes('deps')) {
    const { ensurePackages } = await import('./ensure-packages.mjs');
    if (ensurePackages(root) === 'failed') return 'The packages could not be installed (npm ci).';
  }
  if (needs.includes('chromium')) {
    const { ensureChromium, howToGetChromium } = await import('./ensure-chromium.mjs');
    if (ensureChromium(root) === null) return howToGetChromium;
  }
  return null;
}

const missing = await whatIsMissing(process.argv.slice(2)).catch((error) => error.message);
if (missing !== null) {
  console.error(missing);
  process.exitCode = 1;
}
