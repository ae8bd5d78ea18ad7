import { type Draft, produce } from 'immer';
import type { Plan } from '../../src/plan/plan';
import { type sampleNames, samplePlan } from './sample-plans';

/** A sample broken on purpose: what of it stops or is watched then, and has a fix. */
export interface BrokenPlan {
  readonly what: string;
  readonly sample: (typeof sampleNames)[number];
  readonly checkId: string;
  readonly breaks: (plan: Draft<Plan>) => void;
}

const panelOf = (plan: Draft<Plan>, id: string) => plan.catalogue.panels.find((panel) => panel.id === id)!;
const choice = (surfaceId: string, processorId: string) => ({
  surfaceId,
  processorId,
  nodeId: null,
  zoneColumnsMost: null,
  returns: null,
  zonesUp: null,
});

export const brokenPlans: readonly BrokenPlan[] = [
  {
    what: 'a joint that is not in the lock',
    sample: 'horseshoe',
    checkId: 'walls.joints.A',
    breaks: (plan) => {
      plan.walls[0]!.path[1]!.jointDeg = 2.9;
      plan.walls[0]!.path[2]!.jointBeforeDeg = 4.4;
    },
  },
  {
    what: 'more mixed joints than there are joints',
    sample: 'horseshoe',
    checkId: 'walls.mixed-joints.A',
    breaks: (plan) => {
      plan.walls[0]!.path[2]!.mixed = { jointDeg: 3, count: 12 };
    },
  },
  {
    what: 'a stack above what its panels may',
    sample: 'flat',
    checkId: 'walls.stack.A',
    breaks: (plan) => {
      plan.walls[0]!.bands[0]!.rows = 20;
    },
  },
  {
    what: 'a hanging wall longer than its panels may',
    sample: 'flat',
    checkId: 'walls.hang.A',
    breaks: (plan) => {
      plan.walls[0]!.support = 'hangs';
      plan.walls[0]!.bands[0]!.rows = 17;
    },
  },
  {
    what: 'a wall that reaches above the hall',
    sample: 'flat',
    checkId: 'walls.clear-height.A',
    breaks: (plan) => {
      plan.walls[0]!.baseMm = 3000;
    },
  },
  {
    what: 'an opening too narrow for the truck',
    sample: 'ring-feet',
    checkId: 'walls.way-in-width.A',
    breaks: (plan) => {
      plan.walls[0]!.path[0]!.columns = 88;
    },
  },
  {
    what: 'a door beyond the end of the wall',
    sample: 'ring-feet',
    checkId: 'walls.hole-outside.A',
    breaks: (plan) => {
      plan.walls[0]!.holes[0]!.column = 83;
    },
  },
  {
    what: 'a trim outside the travel',
    sample: 'horseshoe',
    checkId: 'ceilings.travel.B',
    breaks: (plan) => {
      plan.ceilings[0]!.height.trimMm = 7900;
    },
  },
  {
    what: 'a travel above the clear height',
    sample: 'horseshoe',
    checkId: 'ceilings.clear-height.B',
    breaks: (plan) => {
      plan.ceilings[0]!.height.highestMm = 11_900;
    },
  },
  {
    what: 'a ceiling that runs into the ring',
    sample: 'ring-feet',
    checkId: 'ceilings.gap.B.A',
    breaks: (plan) => {
      plan.ceilings[0]!.outline = { kind: 'circle', diameterMm: 18_288 };
    },
  },
  {
    what: 'a hole of the ceiling beside its panels',
    sample: 'horseshoe',
    checkId: 'ceilings.hole-outside.B',
    breaks: (plan) => {
      plan.ceilings[0]!.holes[0]!.yMm = 20_000;
    },
  },
  {
    what: 'a supply range upside down',
    sample: 'flat',
    checkId: 'panels.voltage-range',
    breaks: (plan) => {
      Object.assign(panelOf(plan, 'osier-25').power, { lowestV: 250, highestV: 100 });
    },
  },
  {
    what: 'a camera rate rounded to three places',
    sample: 'flat',
    checkId: 'picture.rate-exact',
    breaks: (plan) => {
      plan.picture.base.rate = { frames: 23_976, seconds: 1000 };
    },
  },
  {
    what: 'a rate for a surface that is gone',
    sample: 'horseshoe',
    checkId: 'picture.surface-names',
    breaks: (plan) => {
      plan.picture.bySurface.push({ surfaceId: 'gone', mode: plan.picture.base });
    },
  },
  {
    what: 'a rate to be served on a surface that is gone',
    sample: 'horseshoe',
    checkId: 'picture.served-names',
    breaks: (plan) => {
      plan.picture.alsoServe[0]!.surfaceIds = ['wall', 'gone'];
    },
  },
  {
    what: 'no processor',
    sample: 'ring-feet',
    checkId: 'ports.processor.A',
    breaks: (plan) => {
      plan.signal.processorId = null;
    },
  },
  {
    what: 'a processor that is gone',
    sample: 'flat',
    checkId: 'ports.processor.A',
    breaks: (plan) => {
      plan.signal.processorId = 'gone';
    },
  },
  {
    what: 'a processor of a surface of its own that is gone',
    sample: 'horseshoe',
    checkId: 'ports.processor.B',
    breaks: (plan) => {
      plan.signal.bySurface[0]!.processorId = 'gone';
    },
  },
  {
    what: 'a processor for a surface that is gone',
    sample: 'flat',
    checkId: 'ports.surface-names',
    breaks: (plan) => {
      plan.signal.bySurface.push(choice('gone', 'brook-4'));
    },
  },
  {
    what: 'a pair that the sheet does not name',
    sample: 'flat',
    checkId: 'ports.pair.A',
    breaks: (plan) => {
      panelOf(plan, 'osier-25').data.drivenBy = [{ processorId: 'culvert-16', portPixels: null }];
    },
  },
  {
    what: 'a breakout that is gone',
    sample: 'ring-feet',
    checkId: 'ports.breakout.A',
    breaks: (plan) => {
      for (const { outlets } of plan.catalogue.processors)
        if (outlets.kind === 'breakouts') outlets.breakoutId = 'gone';
    },
  },
  {
    what: 'more zones up than there are rows',
    sample: 'flat',
    checkId: 'zones.fit.A',
    breaks: (plan) => {
      plan.signal.bySurface.push({ ...choice('window', 'brook-4'), returns: null, zonesUp: 60 });
    },
  },
  {
    what: 'a way of wiring by hand for which the ports do not last',
    sample: 'flat',
    checkId: 'runs.ports.A',
    breaks: (plan) => {
      const at = { surfaceId: 'window', segmentId: 'straight', column: 1, row: 1 };
      plan.handChanges.push({ kind: 'way', id: 'columns', at, way: { kind: 'columns' } });
    },
  },
  {
    what: 'a node that does not send the canvas of the whole ceiling',
    sample: 'horseshoe',
    checkId: 'nodes.canvas.B',
    breaks: (plan) => {
      plan.catalogue.nodes[0]!.canvasPixels = 9_000_000;
    },
  },
  {
    what: 'a node that does not send the canvas of a zone of the wall',
    sample: 'horseshoe',
    checkId: 'nodes.canvas.A',
    breaks: (plan) => {
      plan.catalogue.nodes[0]!.canvasPixels = 6_000_000;
    },
  },
  {
    what: 'a canvas stated larger than its node sends',
    sample: 'flat',
    checkId: 'nodes.canvas.A',
    breaks: (plan) => {
      const canvas = { width: 7680, height: 7680 };
      plan.feed.bySurface.push({ surfaceId: 'window', zonesANode: 1, linkId: null, canvas });
    },
  },
  {
    what: 'inputs that do not take in the canvas that their processors share',
    sample: 'horseshoe',
    checkId: 'links.input.B',
    breaks: (plan) => {
      for (const processor of plan.catalogue.processors) processor.canvas.inputGbps = 15;
    },
  },
  {
    what: 'a connection whose voltage is too high',
    sample: 'flat',
    checkId: 'power.voltage-high',
    breaks: (plan) => {
      plan.power.connection = 'leg-to-leg';
    },
  },
  {
    what: 'a connection whose voltage is too low',
    sample: 'ring-feet',
    checkId: 'power.voltage-low',
    breaks: (plan) => {
      plan.power.connection = 'leg-to-neutral';
      for (const panel of plan.catalogue.panels) panel.power.lowestV = 190;
    },
  },
  {
    what: 'a distro that is gone',
    sample: 'horseshoe',
    checkId: 'power.distro',
    breaks: (plan) => {
      plan.power.distroId = 'gone';
    },
  },
  {
    what: 'a floor that takes little',
    sample: 'horseshoe',
    checkId: 'masses.floor',
    breaks: (plan) => {
      plan.masses.floorKpa = 8;
    },
  },
];

export function breakPlan({ sample, breaks }: BrokenPlan): Plan {
  return produce(samplePlan(sample), (draft) => {
    breaks(draft);
  });
}
