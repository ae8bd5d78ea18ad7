import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { readPrintFonts } from './read-print-fonts';
import { runCommandLine } from './run-command-line';

/** Where a person stood who called it through npm, which itself moves to the folder of package.json. */
const folder = (process.env.npm_lifecycle_event === 'voussoir' && process.env.INIT_CWD) || process.cwd();
const standardInput = 0;

// Whoever reads only the first lines closes the pipe: that is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

process.exitCode = await runCommandLine(process.argv.slice(2), {
  read: (path) => readFileSync(path === '-' ? standardInput : resolve(folder, path), 'utf8'),
  write: (path, bytes) => {
    const place = resolve(folder, path);
    mkdirSync(dirname(place), { recursive: true });
    writeFileSync(place, bytes);
  },
  fonts: readPrintFonts,
  today() {
    const now = new Date();
    const two = (figure: number) => String(figure).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  },
  print: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
  columns: Math.max(process.stdout.columns ?? 80, 40),
});
