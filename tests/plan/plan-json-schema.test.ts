import { expect, test } from 'vitest';
import { planJsonSchema } from '../../src/plan/plan-json-schema';

test('the JSON Schema in the repository is the one that the program makes (vitest -u writes it anew)', async () => {
  await expect(`${JSON.stringify(planJsonSchema(), null, 2)}\n`).toMatchFileSnapshot(
    '../../src/plan/plan.schema.generated.json',
  );
});

test('the JSON Schema says draft, required fields and that no others may stand there', () => {
  expect(planJsonSchema()).toMatchObject({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    type: 'object',
    additionalProperties: false,
    required: expect.arrayContaining(['format', 'version', 'wish', 'catalogue', 'walls', 'alternatives']),
    properties: { version: { const: 3 }, currency: { pattern: '^[A-Z]{3}$' } },
  });
});
