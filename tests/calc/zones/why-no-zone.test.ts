import { expect, test } from 'vitest';
import { computePorts, type PortsInputs } from '../../../src/calc/ports/compute-ports';
import { whyNoZone } from '../../../src/calc/zones/why-no-zone';
import { leastBlanking } from '../links/least-blanking';
import { mode, plainProcessor, plainSignal } from '../ports/plain-items';
import { plainPorts } from '../ports/plain-ports';
import { plainSurface, plainType, setOf } from './plain-surface';

const why = (rest: Partial<PortsInputs> & { base?: ReturnType<typeof mode> }) => {
  const given = plainPorts(rest);
  const served = given.picture.surfaces[0]!.served;
  return whyNoZone(given.surfaces.surfaces[0]!, computePorts(given).surfaces[0]!, given.signal, served, leastBlanking);
};
const canvas = (rest: Partial<ReturnType<typeof plainProcessor>['canvas']>) => [
  plainProcessor({}, { canvas: { pixels: 8_900_000, widest: 8192, highest: 8192, inputGbps: null, ...rest } }),
];

test('whyNoZone finds nothing where one panel fits', () => {
  expect(why({})).toBeNull();
});

test('whyNoZone finds nothing in a single row, and nothing on a surface without panels', () => {
  const row = plainSurface({ columns: 2, bands: [{ type: plainType(216), rows: 1 }] });
  expect(why({ surfaces: setOf(row) })).toBeNull();
  const asMany = {
    surfaceId: 'a',
    processorId: 'proc',
    nodeId: null,
    zoneColumnsMost: null,
    returns: null,
    zonesUp: 3,
  };
  expect(why({ signal: plainSignal({ bySurface: [asMany] }) })).toBeNull();
  const empty = plainSurface({ columns: 2, bands: [{ type: plainType(216), rows: 1 }], isHole: () => true });
  expect(why({ surfaces: setOf(empty), signal: plainSignal({ processorId: null }) })).toBeNull();
});

test.each([
  ['No processor', { signal: plainSignal({ processorId: null }) }],
  ['no port', { breakouts: [] }],
  ['more than a port', { base: mode(1000) }],
  ['more pixels', { processors: canvas({ pixels: 46_655 }) }],
  ['wider', { processors: canvas({ widest: 215 }) }],
  ['higher', { processors: canvas({ highest: 215 }) }],
  ['input', { processors: canvas({ inputGbps: 0.05 }) }],
  [
    'fewer rows',
    {
      signal: plainSignal({
        bySurface: [
          { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: null, returns: null, zonesUp: 4 },
        ],
      }),
    },
  ],
] as const)('whyNoZone says: %s', (words, rest) => {
  expect(why(rest as Partial<PortsInputs>)).toContain(words);
});
