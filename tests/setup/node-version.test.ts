import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { whyNodeIsRefused } from '../../src/setup/node-version.mjs';

// The bounds are what the build tools ask for in their own package.json: vite 8 '^20.19.0 || >=22.12.0'.
test.each(['20.19.0', '20.20.2', '22.12.0', '22.22.0', '23.0.0', '24.1.0', '26.0.0'])(
  'whyNodeIsRefused(%s) is null',
  (version) => {
    expect(whyNodeIsRefused(version)).toBeNull();
  },
);

test.each(['12.22.0', '18.20.4', '20.18.3', '21.7.3', '22.11.0'])(
  'whyNodeIsRefused(%s) names what is needed and what is there, in one line',
  (version) => {
    const reason = whyNodeIsRefused(version);
    expect(reason).toContain('20.19');
    expect(reason).toContain('22.12');
    expect(reason).toContain(version);
    expect(reason).not.toContain('\n');
  },
);

test('whyNodeIsRefused refuses what it cannot read', () => {
  expect(whyNodeIsRefused('next')).toContain('next');
});

test('vite still asks for the same versions', () => {
  const vite = JSON.parse(readFileSync('node_modules/vite/package.json', 'utf8'));
  expect(vite.engines.node).toBe('^20.19.0 || >=22.12.0');
  const own = JSON.parse(readFileSync('package.json', 'utf8'));
  expect(own.engines.node).toBe(vite.engines.node);
});
