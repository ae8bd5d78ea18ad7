import { expect, test } from 'vitest';
import { catalogue } from '../../src/plan/catalogue';
import { samplePlan } from './sample-plan';

test('an id stands once in a catalogue, over all its lists', () => {
  const { catalogue: made } = samplePlan('flat');
  expect(catalogue.safeParse(made).success).toBe(true);
  made.distros[0]!.id = made.panels[0]!.id;
  expect(catalogue.safeParse(made).error!.issues).toMatchObject([
    { path: ['distros', 0, 'id'], message: `the catalogue has 'sedge-26' already` },
  ]);
});
