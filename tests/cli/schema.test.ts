import { expect, test } from 'vitest';
import { schema } from '../../src/cli/schema';
import { givenTerminal } from './given-terminal';

test('schema prints a JSON Schema of draft 2020-12 that asks for every part of a plan', () => {
  const terminal = givenTerminal();
  expect(schema.run({ file: '', options: new Set() }, terminal)).toBe(0);
  const printed = JSON.parse(terminal.output());
  expect(printed.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  expect(printed.required).toEqual(expect.arrayContaining(['format', 'version', 'wish', 'walls', 'power']));
  expect(printed.additionalProperties).toBe(false);
});
