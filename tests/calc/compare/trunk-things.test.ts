import { expect, test } from 'vitest';
import { trunkThings } from '../../../src/calc/compare/trunk-things';

const run = (port: string, returnPort: string | null = null) => ({ port, returnPort });

test('trunkThings has one for each breakout with its ports, those of returns among them', () => {
  const list = trunkThings([run('1A-02'), run('1A-01', '1B-01'), run('12AA-03')], ['0', '1', '2']);
  expect(list.things.map(({ name }) => name)).toEqual(['1A', '1B', '12AA']);
  expect(list.sayContent(0)).toEqual(['ports 01 02']);
  expect(list.sayContent(1)).toEqual(['ports 01']);
});

test('trunkThings has none of a processor with direct ports', () => {
  expect(trunkThings([run('3-04')], ['0']).things).toEqual([]);
});

test('trunkThings takes a trunk with the same runs as the same, whatever the order and the names', () => {
  const content = (...given: Parameters<typeof trunkThings>) => trunkThings(...given).things.map((one) => one.content);
  const here = content([run('1A-01'), run('1A-02')], ['0', '1']);
  expect(content([run('2C-07'), run('2C-01')], ['1', '0'])).toEqual(here);
  expect(content([run('1A-01'), run('1A-02')], ['0', 'gone 1'])).not.toEqual(here);
});

test('trunkThings tells the way out of a run from its way back', () => {
  const [out, back] = trunkThings([run('1A-01', '1B-01')], ['0']).things;
  expect(out!.content).not.toBe(back!.content);
});
