import fc from 'fast-check';
import type { HandChange, WayOfWiring } from '../../src/plan/hand-change';
import { type Plan, planFormat, planVersion } from '../../src/plan/plan';
import { catalogue } from './plan-catalogue';
import {
  amount,
  anchor,
  count,
  idOf,
  label,
  lengthWithin,
  listOf,
  mode,
  nullable,
  number,
  share,
  surfaceId,
  text,
  whole,
} from './plan-fields';
import { ceiling, type Size, wall } from './plan-surfaces';

const size = lengthWithin(0.001, 1e5);
const length = lengthWithin(0, 1e6);
const itemId = fc.oneof(
  idOf('panel'),
  idOf('processor'),
  idOf('breakout'),
  idOf('distro'),
  idOf('node'),
  idOf('cable'),
);

const wish: fc.Arbitrary<Plan['wish']> = fc.record({
  hall: fc.record({
    lengthMm: nullable(size),
    widthMm: nullable(size),
    clearHeightMm: nullable(size),
    walkwayMm: length,
  }),
  vehicle: fc.record({ widthMm: nullable(size), heightMm: nullable(size) }),
  wall: fc.record({
    form: fc.constantFrom('ring', 'flat'),
    acrossMm: nullable(size),
    heightMm: nullable(size),
    openingMm: nullable(length),
  }),
  camerasAtOnce: whole(1, 16),
  budget: nullable(amount),
  coolingW: nullable(number(0, 1e8)),
  stock: fc.uniqueArray(fc.record({ itemId, owned: nullable(count), obtainable: nullable(count) }), {
    selector: (entry) => entry.itemId,
    maxLength: 6,
  }),
  note: label,
});

const picture: fc.Arbitrary<Plan['picture']> = fc.record({
  base: mode,
  bySurface: fc.uniqueArray(fc.record({ surfaceId, mode }), { selector: (entry) => entry.surfaceId, maxLength: 3 }),
  alsoServe: listOf(
    'served',
    (id) => fc.record({ id: fc.constant(id), mode, surfaceIds: nullable(fc.array(surfaceId, { maxLength: 3 })) }),
    3,
  ),
});

const signal: fc.Arbitrary<Plan['signal']> = fc.record({
  processorId: nullable(idOf('processor')),
  nodeId: nullable(idOf('node')),
  bySurface: fc.uniqueArray(
    fc.record({
      surfaceId,
      processorId: idOf('processor'),
      nodeId: nullable(idOf('node')),
      zoneColumnsMost: nullable(fc.oneof(whole(1, 20), whole(1, 5000))),
      zonesUp: nullable(fc.oneof(whole(1, 3), whole(1, 100))),
      returns: nullable(fc.constantFrom('none', 'port', 'breakout', 'processor')),
    }),
    { selector: (entry) => entry.surfaceId, maxLength: 3 },
  ),
  freeShare: number(0, 0.95),
  panelsMost: nullable(fc.oneof(whole(1, 20), whole(1, 10_000))),
  reachMm: fc.oneof(fc.constant(2100), length),
  priority: fc.constantFrom('repeats', 'fewest-ports', 'most-free', 'shortest-cable'),
  returns: fc.constantFrom('none', 'port', 'breakout', 'processor'),
  ceilingEntry: fc.constantFrom('left', 'right', 'bottom', 'top'),
});

const zonesANode = nullable(fc.oneof(whole(1, 6), whole(1, 10_000)));
const linkId = nullable(fc.oneof(fc.constantFrom('displayport-hbr2', 'sdi-12g-single', 'st-2110-25'), idOf('link')));

const feed: fc.Arbitrary<Plan['feed']> = fc.record({
  zonesANode,
  equalCanvases: fc.boolean(),
  spareNodes: whole(0, 20),
  timing: fc.constantFrom('reduced-2', 'reduced-1', 'full', 'cta', 'container'),
  containerId: nullable(idOf('mode')),
  linkId,
  bySurface: fc.uniqueArray(
    fc.record({
      surfaceId,
      zonesANode,
      linkId,
      canvas: nullable(fc.record({ width: whole(1, 1_000_000), height: whole(1, 1_000_000) })),
    }),
    { selector: (entry) => entry.surfaceId, maxLength: 3 },
  ),
});

const delay: fc.Arbitrary<Plan['delay']> = fc.record({
  steps: listOf(
    'step',
    (id) =>
      fc.record({
        id: fc.constant(id),
        name: label,
        frames: number(0, 1000),
        ms: number(0, 100_000),
        surfaceIds: nullable(fc.array(surfaceId, { maxLength: 3 })),
      }),
    6,
  ),
  mostMs: nullable(number(0, 100_000)),
});

const phase = fc.record({
  amount: number(-100_000, 100_000),
  unit: fc.constantFrom('ms' as const, 'degrees' as const),
});

const sync: fc.Arbitrary<Plan['sync']> = fc.record({
  reference: fc.constantFrom('black-burst', 'tri-level', 'ptp'),
  outletsASplitter: whole(2, 1000),
  trackers: whole(0, 20),
  phase: fc.record({ nodes: phase, processors: phase, cameras: phase, trackers: phase }),
});

const addresses: fc.Arbitrary<Plan['addresses']> = fc.record({
  prefixBits: whole(8, 30),
  nodes: fc.ipV4(),
  processors: fc.ipV4(),
  cameras: fc.ipV4(),
  trackers: fc.ipV4(),
  portsASwitch: whole(4, 1000),
});

const tag = text(24).map((any) => any.replace(/["\\]/g, '.'));
const existingWiring = fc.record({
  source: label,
  rows: fc.array(fc.record({ panel: tag, port: tag, place: whole(1, 100_000) }), { maxLength: 8 }),
});

const way: fc.Arbitrary<WayOfWiring> = fc.oneof(
  fc.constantFrom({ kind: 'columns' as const }, { kind: 'rows' as const }, { kind: 'free' as const }),
  fc.record({ kind: fc.constant('folded' as const), wide: fc.oneof(whole(1, 4), whole(1, 1000)) }),
  fc.record({
    kind: fc.constant('split' as const),
    aboveRow: fc.oneof(whole(1, 8), whole(1, 1000)),
    wide: fc.oneof(whole(1, 4), whole(1, 1000)),
  }),
);

const handChange = (id: string): fc.Arbitrary<HandChange> =>
  fc.oneof(
    fc.record({ kind: fc.constant('entry' as const), id: fc.constant(id), at: anchor }),
    fc.record({
      kind: fc.constantFrom('cut' as const, 'join' as const),
      id: fc.constant(id),
      from: anchor,
      to: anchor,
    }),
    fc.record({ kind: fc.constant('way' as const), id: fc.constant(id), at: anchor, way }),
  );

const power: fc.Arbitrary<Plan['power']> = fc.record({
  supply: fc.record({
    kind: fc.constantFrom('wye', 'split-phase'),
    legToNeutralV: fc.oneof(fc.constantFrom(120, 230, 277), number(50, 1000)),
    lowestShare: number(0.5, 1),
  }),
  connection: fc.constantFrom('leg-to-neutral', 'leg-to-leg'),
  circuit: fc.record({ ratedA: fc.oneof(fc.constantFrom(16, 20), number(1, 1000)), usableShare: number(0.1, 1) }),
  distroId: nullable(idOf('distro', 3)),
  servicePoints: listOf(
    'service',
    (id) => fc.record({ id: fc.constant(id), name: label, legA: number(1, 100_000) }),
    2,
  ),
  typicalLevel: share,
  brightnessShare: share,
  includesSignal: fc.boolean(),
});

const heldChain = fc.record({ name: fc.constantFrom('1A-01', '2-03', 'D1-1', 'D2-11'), first: anchor, last: anchor });
export const heldNames = fc.record({
  processors: fc.array(fc.record({ number: whole(1, 10_000), at: anchor }), { maxLength: 3 }),
  ports: fc.array(heldChain, { maxLength: 3 }),
  circuits: fc.array(heldChain, { maxLength: 3 }),
});

const tick = fc.record({
  step: fc.constantFrom('stands' as const, 'wired' as const, 'powered' as const, 'tested' as const),
  of: fc.constantFrom('column' as const, 'port' as const, 'circuit' as const),
  name: fc.constantFrom('A C1', '1A-01', 'D1-1', 'nothing of this name'),
  done: fc.boolean(),
  who: label,
  atMs: whole(0, 4_000_000_000_000),
});

/** Fields of everything that is planned. */
const content = (sizes: Size) => ({
  name: label,
  revision: text(20),
  note: text(400),
  lengths: fc.constantFrom('metric' as const, 'feet' as const),
  currency: fc.constantFrom('EUR', 'USD', 'JPY', 'XXX'),
  wish,
  catalogue,
  walls: listOf('wall', wall(sizes), 2),
  ceilings: listOf('ceiling', ceiling(sizes), 2),
  picture,
  signal,
  feed,
  delay,
  sync,
  addresses,
  existingWiring: nullable(existingWiring),
  handChanges: listOf('change', handChange, 5),
  power,
  heat: fc.record({
    people: whole(0, 10_000),
    lampsW: number(0, 1e8),
    airRiseK: number(0.1, 100),
    roomRiseK: number(0.1, 100),
  }),
  masses: fc.record({
    fittingsKgPerM2: number(0, 1000),
    columnsAFrame: whole(1, 1000),
    plateAreaM2: number(0.0001, 100),
    floorKpa: nullable(number(0, 1e6)),
  }),
  materials: fc.record({
    spareShare: share,
    spareLeast: count,
    byItem: fc.uniqueArray(fc.record({ itemId, share, least: count }), {
      selector: (entry) => entry.itemId,
      maxLength: 4,
    }),
  }),
  alternatives: listOf(
    'alternative',
    (id) => fc.record({ id: fc.constant(id), name: label, wall: idOf('wall', 3).chain(wall(sizes)) }),
    2,
  ),
  names: nullable(heldNames),
});

const revision = (id: string, sizes: Size) =>
  fc.record({
    id: fc.constant(id),
    name: text(19).map((name) => `R${name}`),
    issuedOn: fc.constantFrom('2026-02-28', '2028-02-29', '2031-12-31'),
    note: text(400),
    content: fc.record(content(sizes)),
  });

/**
 * Any plan that the schema accepts: dangling ids, contradicting sheets, resting changes and extreme figures included.
 * 'small' keeps walls to at most 24 columns of 10 rows and outlines of ceilings within 10 m, for tests that evaluate.
 */
export const anyPlan = (sizes: Size = 'small'): fc.Arbitrary<Plan> =>
  fc.record({
    format: fc.constant(planFormat),
    version: fc.constant(planVersion),
    id: idOf('plan'),
    ...content(sizes),
    revisions: fc
      .tuple(
        whole(0, 9),
        listOf('revision', (id) => revision(id, sizes), 1),
      )
      .map(([one, list]) => (one === 9 ? list : [])),
    log: fc.record({ ticks: fc.array(tick, { maxLength: 4 }) }),
  });
