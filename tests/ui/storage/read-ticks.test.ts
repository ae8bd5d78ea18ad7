import { expect, test } from 'vitest';
import { tickListOf } from '../../../src/files/tick-file';
import { tickLink } from '../../../src/files/tick-link';
import { readTicks } from '../../../src/ui/storage/read-ticks';
import { somePlan } from '../state/fake-bench';

test('readTicks gives the ticks that a link was made of, or why there are none', async () => {
  const list = tickListOf(somePlan);
  const signs = new URL(tickLink('https://plan.example/', list)!).hash.replace('#ticks=', '');
  expect(await readTicks(signs)).toEqual({ list });
  expect(await readTicks(signs.slice(0, -1))).toMatchObject({ refused: 'cut' });
});
