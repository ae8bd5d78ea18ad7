import { expect, test } from 'vitest';
import { displayOptionsOf } from '../../src/cli/display-options-of';

test('displayOptionsOf takes lengths and currency from the plan and the locale from nobody', () => {
  const options = displayOptionsOf({ lengths: 'feet', currency: 'USD' });
  expect(options).toEqual({ lengths: 'feet', currency: 'USD', locale: 'en-GB' });
});
