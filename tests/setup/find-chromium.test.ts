import { expect, test } from 'vitest';
import { findChromium } from '../../src/setup/find-chromium.mjs';

const nowhere = { env: {}, platform: 'linux', exists: () => false, starts: () => true, managed: () => null };

test('findChromium takes CHROMIUM_PATH before everything else', () => {
  const found = findChromium({
    ...nowhere,
    env: { CHROMIUM_PATH: '/opt/mine' },
    exists: () => true,
    managed: () => '/cache/chrome',
  });
  expect(found).toBe('/opt/mine');
});

test('findChromium refuses a CHROMIUM_PATH that names no file, though another browser is there', () => {
  const look = { ...nowhere, env: { CHROMIUM_PATH: '/opt/gone' }, exists: (path: string) => path !== '/opt/gone' };
  expect(() => findChromium(look)).toThrow('/opt/gone');
});

test("findChromium takes Playwright's own before the system's", () => {
  expect(findChromium({ ...nowhere, exists: () => true, managed: () => '/cache/chrome' })).toBe('/cache/chrome');
});

test("findChromium goes on to the system's where Playwright names a file that was never downloaded", () => {
  const found = findChromium({
    ...nowhere,
    managed: () => '/cache/chrome',
    exists: (path) => path === '/usr/bin/chromium',
  });
  expect(found).toBe('/usr/bin/chromium');
});

test('findChromium passes over a browser that does not start', () => {
  const found = findChromium({
    ...nowhere,
    managed: () => '/cache/chrome',
    exists: (path) => ['/cache/chrome', '/usr/bin/google-chrome'].includes(path),
    starts: (path) => path !== '/cache/chrome',
  });
  expect(found).toBe('/usr/bin/google-chrome');
});

test.each(['linux', 'darwin', 'win32', 'plan9'])('findChromium on %s is null where there is none', (platform) => {
  expect(findChromium({ ...nowhere, platform })).toBeNull();
});
