import { expect, test } from 'vitest';
import { pageOfField } from '../../../src/ui/state/page-of-field';
import { somePlan } from './fake-bench';

test.each([
  ['wish.hall.lengthMm', 'wish'],
  ['walls[0].path[2].columns', 'walls'],
  ['signal.freeShare', 'runs'],
  ['signal.processorId', 'zones'],
  ['signal.bySurface[1].zonesUp', 'zones'],
  ['heat.people', 'heat'],
  ['feed.linkId', 'links'],
  ['feed.bySurface[0].linkId', 'links'],
  ['feed.bySurface[0].canvas', 'nodes'],
  ['feed.zonesANode', 'nodes'],
  ['wishful', null],
  ['name', null],
])('pageOfField of %s is %s', (path, page) => {
  expect(pageOfField(path)).toBe(page);
});

test('every group of a plan has an owner, but what is said of the plan as a whole', () => {
  const whole = ['format', 'version', 'id', 'name', 'revision', 'note', 'lengths', 'currency'];
  const without = Object.keys(somePlan).filter((key) => pageOfField(key) === null);
  expect(without).toEqual(whole);
});
