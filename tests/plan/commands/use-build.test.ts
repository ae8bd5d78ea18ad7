import { expect, test } from 'vitest';
import { starterPanels } from '../../../src/plan/catalogue/starter-panels';
import { useBuild } from '../../../src/plan/commands/use-build';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

// Wall A of this document has a door in 'left', and changes by hand in 'left' and 'right'.
const plan = samplePlan('version-2');
const old = plan.walls[0]!;
const build = {
  ...old,
  name: 'Found',
  path: [{ id: 'ring', columns: 30, jointDeg: 5, mixed: null, jointBeforeDeg: 0 }],
  holes: [],
};

test('use-build replaces the wall of the same id in one step', () => {
  const after = taken(useBuild.apply(plan, { wall: build }));
  expect(after.walls.map(({ id, name }) => [id, name])).toEqual([['wall', 'Found']]);
  expect(changedGroups(plan, after)).toEqual(['walls']);
});

test('use-build loses neither holes nor changes by hand: they rest in the file', () => {
  const after = taken(useBuild.apply(plan, { wall: build }));
  expect(after.handChanges).toBe(plan.handChanges);
  expect(after.walls[0]!.holes).toEqual(old.holes);
  const back = taken(useBuild.apply(after, { wall: { ...old, holes: [] } }));
  expect(back.walls).toEqual(plan.walls);
});

test('use-build takes the holes that come with the build before those of the old wall', () => {
  const door = { ...old.holes[0]!, segmentId: 'ring' };
  expect(taken(useBuild.apply(plan, { wall: { ...build, holes: [door] } })).walls[0]!.holes).toEqual([door]);
});

test('use-build keeps the old wall as an alternative and adds the panel, where asked', () => {
  const panel = starterPanels.find(({ id }) => id === 'alder-25')!;
  const bands = [{ id: 'all', panelId: panel.id, rows: 9, turnDeg: 0 as const }];
  const keepOldAs = { id: 'alternative-2', name: 'As it was' };
  const after = taken(useBuild.apply(plan, { wall: { ...build, bands }, keepOldAs, addsPanel: panel }));
  expect(after.alternatives.at(-1)).toEqual({ ...keepOldAs, wall: old });
  expect(after.catalogue.panels.at(-1)).toEqual(panel);
  expect(taken(useBuild.apply(after, { wall: build, addsPanel: panel })).catalogue).toBe(after.catalogue);
});

test('use-build adds the wall where there is none of its id', () => {
  const after = taken(useBuild.apply(plan, { wall: { ...build, id: 'inner', letter: 'E' }, keepOldAs: null }));
  expect(after.walls.map(({ id }) => id)).toEqual(['wall', 'inner']);
  expect(useBuild.apply(plan, { wall: { ...build, id: 'inner' } })).toMatchObject({ path: 'walls[1].letter' });
});

test('use-build says what it replaces and what rests from now on', () => {
  // Entry, cut, join and the way at wall A rest: four; the ways on ceilings do not. The door rests.
  expect(useBuild.label(plan, { wall: build })).toBe(
    'replace A Wall by the build found; at rest: 4 changes by hand, 1 hole',
  );
  // Six columns are left of the seven of 'right': the way at its column 7 rests.
  const shorter = { ...old, path: [old.path[0]!, { ...old.path[1]!, columns: 6 }] };
  expect(useBuild.label(plan, { wall: shorter })).toBe('replace A Wall by the build found; at rest: 1 change by hand');
  expect(useBuild.label(plan, { wall: old })).toBe('replace A Wall by the build found');
  expect(useBuild.label(plan, { wall: { ...build, id: 'inner', name: '' } })).toBe('add wall A');
});
