import { expect, test } from 'vitest';
import { migrate } from '../../src/plan/migrate';
import { migrations } from '../../src/plan/migrations/migrations';
import { planVersion } from '../../src/plan/plan';

test('there is one migration from every version before this one, in order', () => {
  expect(migrations.map(({ from }) => from)).toEqual(Array.from({ length: planVersion }, (_, version) => version));
});

test('migrate runs every step from the version it is given on, and says the present version', () => {
  expect(migrate({ version: 0, lengths: 'imperial' }, 0)).toMatchObject({ version: planVersion, lengths: 'feet' });
});

test('migrate leaves a document of the present version as it is', () => {
  const document = { version: planVersion, lengths: 'imperial' };
  expect(migrate(document, planVersion)).toBe(document);
});

test('migrate takes the content of every revision along, and leaves what is none for the schema to name', () => {
  const revisions = [{ id: 'revision-1', content: { lengths: 'imperial' } }, 'odd', { content: 4 }];
  expect(migrate({ version: 0, lengths: 'feet', revisions }, 0)).toMatchObject({
    lengths: 'feet',
    revisions: [
      { id: 'revision-1', content: { lengths: 'feet', existingWiring: null, names: null } },
      'odd',
      { content: 4 },
    ],
  });
  expect(migrate({ version: 0, revisions }, 0).revisions).toMatchObject([
    { content: expect.not.objectContaining({ log: [] }) },
    'odd',
    {},
  ]);
});
