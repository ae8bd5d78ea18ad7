import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyCommand, type Command, type CommandName, commands, labelCommand } from '../../src/plan/commands';
import { parsePlan } from '../../src/plan/parse-plan';
import { type Plan, plan as planSchema } from '../../src/plan/plan';
import { planContentOf } from '../../src/plan/plan-content-of';
import { serialisePlan } from '../../src/plan/serialise-plan';
import { anyPlan, heldNames } from '../arbitraries/plan';
import { catalogue, node, panel } from '../arbitraries/plan-catalogue';
import { anchor, idOf, label, mode, surfaceId, whole } from '../arbitraries/plan-fields';
import { ceiling, wall } from '../arbitraries/plan-surfaces';
import { tick, ticks } from '../arbitraries/tick';

const someId = fc.oneof(idOf('panel'), idOf('processor'), idOf('breakout'), idOf('node'), idOf('cable'), idOf('new'));
const anyWall = idOf('wall', 3).chain(wall('small'));
const listPath = fc.oneof(
  fc.constantFrom(['walls'], ['ceilings'], ['handChanges'], ['picture', 'alsoServe'], ['name'], []),
  fc.tuple(fc.constant('walls'), whole(0, 1), fc.constantFrom('path', 'bands', 'holes')),
);
const fieldPath = fc.oneof(
  fc.constantFrom(['signal', 'freeShare'], ['wish', 'hall', 'lengthMm'], ['lengths'], ['catalogue'], ['gone', 'x']),
  fc.tuple(fc.constant('walls'), whole(0, 1), fc.constantFrom('baseMm', 'letter', 'path')),
);
const place = whole(-1, 4);
const value = fc.oneof(fc.constantFrom(0, -0, 'A', null, [], {}, Number.NaN), anyWall, whole(0, 1000));

/** Arguments of every command, sensible ones and others. */
const argumentsOf: { readonly [Name in CommandName]: fc.Arbitrary<Extract<Command, { name: Name }>['args']> } = {
  'set-fields': fc.record({
    fields: fc.oneof(
      fc.array(fc.record({ path: fieldPath, value }), { minLength: 1, maxLength: 2 }),
      fc.tuple(fc.record({ path: fc.constant(['wish', 'hall', 'lengthMm']), value: whole(1, 1000) })),
    ),
  }),
  insert: fc.oneof(
    fc.record({ path: listPath, index: place, value }),
    fc.record({
      path: fc.constant(['handChanges']),
      index: fc.constant(0),
      value: fc.record({ kind: fc.constant('entry'), id: idOf('new', 9), at: anchor }),
    }),
  ),
  remove: fc.record({ path: fc.oneof(listPath, fc.constant(['handChanges'])), index: fc.oneof(place, fc.constant(0)) }),
  move: fc.oneof(
    fc.record({ path: listPath, from: place, to: place }),
    fc.record({ path: fc.constant(['walls', 0, 'path']), from: fc.constant(0), to: whole(0, 1) }),
  ),
  'set-mode': fc.record({ surfaceIds: fc.option(fc.array(surfaceId, { maxLength: 3 }), { nil: null }), mode }),
  'set-stock': fc.record({ itemId: someId, owned: fc.option(whole(-1, 9), { nil: null }) }),
  'use-build': fc.record({
    wall: anyWall,
    keepOldAs: fc.option(fc.record({ id: idOf('alternative', 3), name: label }), { nil: null }),
    addsPanel: idOf('panel').chain(panel),
  }),
  'keep-alternative': fc.record({ id: idOf('alternative', 3), name: label, wall: anyWall }),
  'use-alternative': fc.record({ id: idOf('alternative', 3) }),
  'remove-surface': fc.record({ surfaceId }),
  'add-wall': fc.record({ wall: anyWall }),
  'add-ceiling': fc.record({ ceiling: idOf('ceiling', 2).chain(ceiling('small')) }),
  'mirror-wall': fc.record({ wallId: fc.oneof(surfaceId, idOf('wall', 2)) }),
  'add-item': fc.record({ list: fc.constantFrom('nodes', 'panels'), item: someId.chain(node) }),
  'duplicate-item': fc.record({ itemId: someId, newId: someId, name: label }),
  'remove-item': fc.record({ itemId: someId }),
  'take-items': fc.record({ catalogue, itemIds: fc.array(someId, { maxLength: 4 }) }),
  'put-step': fc.record({
    change: fc.oneof(
      fc.record({ kind: fc.constant('entry' as const), id: idOf('change', 8), at: anchor }),
      fc.record({
        kind: fc.constantFrom('cut' as const, 'join' as const),
        id: idOf('change', 8),
        from: anchor,
        to: anchor,
      }),
    ),
  }),
  'put-way': fc.record({ id: idOf('change', 8), at: anchor, way: fc.constant({ kind: 'rows' }) }),
  'put-ticks': fc.record({ ticks: fc.oneof(ticks, fc.tuple(tick.map((one) => ({ ...one, atMs: -1 })))) }),
  'clear-hand-change': fc.record({ ids: fc.array(idOf('change', 5), { maxLength: 2 }) }),
  'set-existing-wiring': fc.constant({ wiring: null }),
  'issue-revision': fc.record({
    name: fc.constantFrom('A', 'RA', '', 'a name that is longer than twenty'),
    issuedOn: fc.constantFrom('2026-11-25', '2026-02-29'),
    note: label,
    names: heldNames,
  }),
  'restore-revision': fc.record({ id: idOf('revision', 1) }),
  'release-names': fc.record({ ports: fc.constant(['1A-01']), circuits: fc.constant(['D1-1', 'D2-11']) }),
};

const names = Object.keys(commands) as CommandName[];
const commandOf = (name: CommandName): fc.Arbitrary<Command> =>
  (argumentsOf[name] as fc.Arbitrary<never>).map((args) => ({ name, args }) as Command);
const anyCommand = fc.oneof(...names.map(commandOf));

/** Plans with something issued to restore where that is what is asked for: few have. */
const plansFor = (name: CommandName): fc.Arbitrary<Plan> =>
  name !== 'restore-revision'
    ? anyPlan()
    : fc.tuple(anyPlan(), anyPlan()).map(([plan, other]): Plan => {
        const issued = { id: 'revision-1', name: 'A', issuedOn: '2026-11-25', note: '', content: planContentOf(other) };
        return { ...plan, revisions: [issued] };
      });

test('every command is registered under its own name', () => {
  for (const [name, definition] of Object.entries(commands)) expect(definition.name).toBe(name);
});

test.each(names)('%s gives a plan that the schema takes and a file keeps, or says why it refuses', (name) => {
  let taken = 0;
  fc.assert(
    fc.property(plansFor(name), commandOf(name), (plan, command) => {
      const outcome = applyCommand(plan, command);
      if ('refused' in outcome) {
        expect(outcome.refused).not.toBe('');
        return;
      }
      taken += 1;
      expect(planSchema.safeParse(outcome.plan).error?.issues).toBeUndefined();
      expect(parsePlan(serialisePlan(outcome.plan))).toEqual({ plan: outcome.plan });
    }),
    { numRuns: 60 },
  );
  // The property says something: the arguments are not all refused.
  expect(taken).toBeGreaterThan(0);
});

test('a command leaves the plan it was given as it is, and says a label for it', () => {
  fc.assert(
    fc.property(anyPlan(), anyCommand, (plan, command) => {
      const before = structuredClone(plan);
      const label = labelCommand(plan, command);
      expect(typeof label).toBe('string');
      applyCommand(plan, command);
      expect(plan).toEqual(before);
    }),
    { numRuns: 200 },
  );
});

test('going back along the plans that were kept is undo, and what a command did not touch stays the same object', () => {
  fc.assert(
    fc.property(anyPlan(), fc.array(anyCommand, { maxLength: 12 }), (plan, list) => {
      const history: { plan: Plan; text: string }[] = [{ plan, text: serialisePlan(plan) }];
      for (const command of list) {
        const before = history.at(-1)!.plan;
        const outcome = applyCommand(before, command);
        if ('refused' in outcome) continue;
        if (command.name !== 'restore-revision') {
          for (const key of ['power', 'heat', 'masses'] as const) expect(outcome.plan[key]).toBe(before[key]);
        }
        history.push({ plan: outcome.plan, text: serialisePlan(outcome.plan) });
      }
      for (const { plan: kept, text } of history.reverse()) expect(serialisePlan(kept)).toBe(text);
    }),
    { numRuns: 100 },
  );
});
