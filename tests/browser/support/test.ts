import { test as base, type ConsoleMessage, expect, type Request } from '@playwright/test';
import { type ClickCounter, countClicks } from './count-clicks';

/** Messages that the page may log, each with its reason. */
const expectedMessages: readonly RegExp[] = [
  // Logged once by the 3D library's React binding, which still uses the older of three's two clocks.
  /THREE\.(THREE\.)?Clock/,
  // The software renderer's own remark on reading a picture back.
  /GPU stall due to ReadPixels/,
  // Only the spec on working offline lets the page be kept on the device.
  /Service Worker registration blocked by Playwright/,
];

interface Fixtures {
  /** Clicks of the pointer so far, in all pages of the test. */
  readonly clicks: ClickCounter;
  /** Adds a message that this test provokes on purpose. */
  readonly allowMessage: (pattern: RegExp) => void;
  readonly watched: undefined;
}

/**
 * The test of all specs. It fails when a page logs an error or a warning nobody expected, throws, or asks another host
 * for anything; and files are opened and saved by the plain chooser and download, which a test can drive.
 */
export const test = base.extend<Fixtures>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the names of the fixtures that are used from here
  allowMessage: async ({}, use) => {
    await use((pattern) => allowedNow.push(pattern));
  },
  clicks: async ({ context }, use) => {
    await use(await countClicks(context));
  },
  watched: [
    async ({ context, baseURL }, use) => {
      allowedNow.length = 0;
      const found: string[] = [];
      const onMessage = (message: ConsoleMessage) => {
        if (message.type() === 'error' || message.type() === 'warning')
          found.push(`${message.type()}: ${message.text()}`);
      };
      const onRequest = (request: Request) => {
        const url = request.url();
        if (!/^(data|blob):/.test(url) && !url.startsWith(baseURL ?? '')) found.push(`request to another host: ${url}`);
      };
      context.on('console', onMessage);
      context.on('request', onRequest);
      context.on('weberror', (error) => found.push(`thrown: ${error.error().message}`));
      // Pickers of the system cannot be driven by a test; without them the page falls back on chooser and download.
      await context.addInitScript(() => {
        for (const picker of ['showOpenFilePicker', 'showSaveFilePicker', 'showDirectoryPicker']) {
          Reflect.deleteProperty(window, picker);
        }
      });
      await use(undefined);
      const expected = [...expectedMessages, ...allowedNow];
      expect(found.filter((message) => !expected.some((pattern) => pattern.test(message)))).toEqual([]);
    },
    { auto: true },
  ],
});

/** One worker runs one test at a time, so that this list belongs to the test that runs. */
const allowedNow: RegExp[] = [];

export { expect } from '@playwright/test';
