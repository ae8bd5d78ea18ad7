import { expect, test } from 'vitest';
import { pathText } from '../../../src/plan/commands/path-text';

test.each([
  [[], ''],
  [['walls'], 'walls'],
  [['walls', 0, 'path', 2, 'columns'], 'walls[0].path[2].columns'],
  [['wish', 'hall', 'lengthMm'], 'wish.hall.lengthMm'],
])('pathText(%j) is %s', (path, text) => {
  expect(pathText(path)).toBe(text);
});
