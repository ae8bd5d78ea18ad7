import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** What the command line is made of. The page's own folder (src/ui) is none of it. */
const sources = [
  'src/units',
  'src/plan',
  'src/calc',
  'src/sheets',
  'src/files',
  'src/cli',
  'src/setup/build-command-line.mjs',
  'shared',
  'fixtures/plans',
  'package-lock.json',
];

/**
 * Builds src/cli/main.ts for Node unless it is built from these very sources already.
 * Each state of the sources has a folder of its own, put in place by one rename: two calls at once do no harm.
 * @param {string} root folder of package.json
 * @returns {Promise<string>} path of the built entry
 */
export async function buildCommandLine(root) {
  const home = join(root, '.build');
  const place = join(home, `command-line-${fingerprint(root)}`);
  const entry = join(place, 'main.mjs');
  if (existsSync(entry)) return entry;
  mkdirSync(home, { recursive: true });
  const draft = mkdtempSync(join(home, 'draft-'));
  try {
    await buildInto(root, draft);
    renameSync(draft, place);
  } catch (error) {
    rmSync(draft, { recursive: true, force: true });
    if (!existsSync(entry)) throw error;
  }
  for (const old of readdirSync(home)) {
    if (/^command-line-[0-9a-f]+$/.test(old) && join(home, old) !== place) {
      rmSync(join(home, old), { recursive: true, force: true });
    }
  }
  return entry;
}

/** @param {string} root @param {string} folder */
async function buildInto(root, folder) {
  const { build } = await import('vite');
  await build({
    root,
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    ssr: { noExternal: true },
    build: {
      ssr: 'src/cli/main.ts',
      outDir: folder,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: 'main.mjs' } },
    },
  });
}

/** Names, sizes and times of change of all sources in one short hash. @param {string} root */
function fingerprint(root) {
  const hash = createHash('sha256');
  const visit = (/** @type {string} */ path) => {
    const found = statSync(join(root, path), { throwIfNoEntry: false });
    if (found === undefined) return;
    if (found.isDirectory()) {
      for (const name of readdirSync(join(root, path)).sort()) visit(`${path}/${name}`);
    } else {
      hash.update(`${path} ${found.size} ${found.mtimeMs}\n`);
    }
  };
  for (const source of sources) visit(source);
  return hash.digest('hex').slice(0, 16);
}
