import { describe, expect, it } from 'vitest';
import { setFieldsFix } from '../../src/calc/set-fields-fix';

describe('setFieldsFix', () => {
  it('is the command that sets fields, with a label for its button and one for the history', () => {
    const fields = [{ path: ['walls', 0, 'baseMm'], value: 0 }];
    expect(setFieldsFix('Put the wall on the floor', 'base height', fields)).toEqual({
      label: 'Put the wall on the floor',
      command: { name: 'set-fields', args: { fields, label: 'base height' } },
    });
  });
});
