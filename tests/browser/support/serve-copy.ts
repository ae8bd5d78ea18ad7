import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

export interface ServedCopy {
  /** Publishes another version: the same files, of which the list of those to keep has changed. */
  readonly publish: () => void;
  readonly stop: () => Promise<void>;
}

/** Serves a copy of what was built, so that a test can publish a newer version of it. */
export async function serveCopy(port: number): Promise<ServedCopy> {
  const folder = mkdtempSync(join(tmpdir(), 'voussoir-served-'));
  cpSync(fileURLToPath(new URL('../../../dist', import.meta.url)), folder, { recursive: true });
  const server = createServer((request, response) => {
    const asked = new URL(request.url ?? '/', 'http://127.0.0.1').pathname;
    const path = asked === '/' ? '/index.html' : asked;
    try {
      const bytes = readFileSync(join(folder, path));
      response.writeHead(200, { 'content-type': types[extname(path)] ?? 'application/octet-stream' }).end(bytes);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
  return {
    publish() {
      const worker = join(folder, 'sw.js');
      writeFileSync(worker, `${readFileSync(worker, 'utf8')}\n// a newer version\n`);
    },
    async stop() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
