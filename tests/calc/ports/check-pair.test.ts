import { expect, test } from 'vitest';
import { checkPair } from '../../../src/calc/ports/check-pair';
import { plainPanel, plainProcessor } from './plain-items';
import { plainPorts } from './plain-ports';

const check = (drivenBy: { processorId: string; portPixels: number | null }[]) => {
  const given = plainPorts({ panels: [plainPanel(64), plainPanel(216, { drivenBy })] });
  const processor = plainProcessor();
  return checkPair(given, [{ processor }], given.surfaces.surfaces[0]!, processor);
};

test('checkPair is silent where the sheet names the processor', () => {
  expect(check([{ processorId: 'proc', portPixels: 500_000 }])).toEqual([]);
});

test('checkPair stops where the sheet names others, and writes the pair down where the user knows better', () => {
  const other = { processorId: 'other', portPixels: null };
  const [found] = check([other]);
  expect(found).toMatchObject({ id: 'ports.pair.A', severity: 'stop', limit: 0, measured: 1 });
  expect(found?.where).toContainEqual({ kind: 'item', name: 'Panel 216' });
  expect(found?.fix?.command.args).toMatchObject({
    fields: [
      {
        path: ['catalogue', 'panels', 1, 'data', 'drivenBy'],
        value: [other, { processorId: 'proc', portPixels: null }],
      },
    ],
  });
});

test('checkPair reads a sheet that names none as not stated', () => {
  expect(check([])[0]).toMatchObject({ severity: 'offer', limit: null });
});

test('checkPair writes down every processor that drives a panel whose sheet names none: one alone would stop the others', () => {
  const given = plainPorts({ panels: [plainPanel(64), plainPanel(216, { drivenBy: [] })] });
  const [wall] = given.surfaces.surfaces;
  const own = plainProcessor();
  const other = { ...own, id: 'other' };
  const surfaces = {
    ...given.surfaces,
    surfaces: [wall!, { ...wall!, letter: 'B' }, { ...wall!, letter: 'E', types: [] }],
  };
  const [found] = checkPair(
    { ...given, surfaces },
    [{ processor: own }, { processor: other }, { processor: null }],
    wall!,
    own,
  );
  expect(found?.fix).toMatchObject({
    label: 'The sheet allows these pairs: write them down',
    command: {
      args: {
        fields: [
          {
            path: ['catalogue', 'panels', 1, 'data', 'drivenBy'],
            value: [
              { processorId: 'proc', portPixels: null },
              { processorId: 'other', portPixels: null },
            ],
          },
        ],
      },
    },
  });
});
