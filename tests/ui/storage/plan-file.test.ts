import { expect, test } from 'vitest';
import { FileTooLarge, planFileName, readPlanFile } from '../../../src/ui/storage/plan-file';

test.each([
  [{ name: 'Saltmarsh', revision: 'C' }, 'Saltmarsh, revision C.json'],
  [{ name: 'Saltmarsh', revision: '' }, 'Saltmarsh.json'],
  [{ name: '', revision: '' }, 'plan.json'],
  [{ name: '../a/b:c*"d"', revision: '' }, 'a b c d.json'],
  [{ name: 'line\nbreak', revision: '' }, 'line break.json'],
])('planFileName of %j is a name that file systems take', (plan, name) => {
  expect(planFileName(plan)).toBe(name);
});

test('planFileName of a long name stays below what file systems take', () => {
  expect(planFileName({ name: 'x'.repeat(200), revision: 'A' }).length).toBeLessThan(130);
});

test('readPlanFile gives the text', async () => {
  expect(await readPlanFile(new File(['{}'], 'a.json'), null)).toEqual({ name: 'a.json', text: '{}', handle: null });
});

test('readPlanFile does not read what is too large to be a plan', async () => {
  const file = { name: 'a.mov', size: 5e9 } as File;
  await expect(readPlanFile(file, null)).rejects.toThrow(FileTooLarge);
});
