import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { findChromium } from '../../src/setup/find-chromium.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** Not the port of `npm start`, which may be running. */
const address = 'http://127.0.0.1:4187';
const chromium = findChromium();
const report = process.env.VOUSSOIR_REPORT;

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.spec.ts',
  outputDir: `${root}/test-results`,
  timeout: 60_000,
  expect: { timeout: 15_000 },
  workers: 1,
  retries: 0,
  forbidOnly: process.env.CI !== undefined,
  reporter: report === undefined ? [['list']] : [['list'], ['json', { outputFile: report }]],
  use: {
    baseURL: address,
    viewport: { width: 1280, height: 800 },
    deviceScaleFactor: 1,
    colorScheme: 'light',
    locale: 'en-GB',
    timezoneId: 'UTC',
    // Keeping the page on the device takes its time, and has a spec of its own.
    serviceWorkers: 'block',
    trace: 'retain-on-failure',
    launchOptions: {
      ...(chromium === null ? {} : { executablePath: chromium }),
      // Software rendering everywhere, so that pictures do not hang on the machine's graphics card.
      args: [
        '--headless',
        '--no-sandbox',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--use-gl=angle',
        '--use-angle=swiftshader',
        '--enable-unsafe-swiftshader',
        '--font-render-hinting=none',
      ],
    },
  },
  webServer: {
    command: 'npx vite preview --host 127.0.0.1 --port 4187 --strictPort',
    cwd: root,
    url: address,
    reuseExistingServer: false,
    timeout: 60_000,
    gracefulShutdown: { signal: 'SIGTERM', timeout: 5_000 },
  },
});
