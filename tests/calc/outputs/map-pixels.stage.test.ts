import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { mapPixels } from '../../../src/calc/outputs/map-pixels';
import { pictureSpot } from '../../../src/calc/outputs/picture/test-picture-inputs';
import { parsePlan } from '../../../src/plan/parse-plan';

const evaluator = createEvaluator();

/** A sample whose nodes feed so many zones each; null: all of a surface. */
function evaluated(name: string, zonesANode: number | null) {
  const parsed = parsePlan(readFileSync(`fixtures/plans/${name}.json`, 'utf8'));
  if (!('plan' in parsed)) throw new Error(parsed.sentence);
  const { plan } = parsed;
  const bySurface = plan.feed.bySurface.map((own) => ({ ...own, zonesANode }));
  return evaluator.evaluate({ ...plan, feed: { ...plan.feed, zonesANode, bySurface } });
}

const stages = [
  ['horseshoe', 1],
  ['ring-feet', 3],
  ['ring-feet', null],
  ['flat', 1],
] as const;

test.each(stages)(
  'mapPixels of %s, %s zones a node: every driven panel lies in its canvas and its crop, on pixels of its own',
  (name, zonesANode) => {
    const { surfaces, zones, nodes } = evaluated(name, zonesANode);
    const fed = nodes.results;
    const map = mapPixels(surfaces, zones.results.zones, fed);
    // A byte a pixel of each canvas: set twice, two panels share it.
    const taken = fed.nodes.map((node) => new Uint8Array(node.canvasWidth * node.canvasHeight));
    const lit = fed.nodes.map(() => 0);
    const faults: string[] = [];
    for (let panel = 0; panel < surfaces.total; panel++) {
      const zone = map.zoneOf[panel]!;
      const node = fed.nodes[map.nodeOf[panel]!];
      if (node === undefined) {
        if (zone >= 0) faults.push(`${panel} has a zone and no node`);
        continue;
      }
      const { x, y, width, height } = pictureSpot({ surfaces, map }, panel);
      if (x + width > node.canvasWidth || y + height > node.canvasHeight) faults.push(`${panel} leaves the canvas`);
      const crop = node.crops.find((one) => one.zone === zone)!;
      const inCrop =
        x >= crop.x && y >= crop.y && x + width <= crop.x + crop.width && y + height <= crop.y + crop.height;
      if (!inCrop) faults.push(`${panel} leaves its crop`);
      lit[map.nodeOf[panel]!]! += width * height;
      const pixels = taken[map.nodeOf[panel]!]!;
      for (let row = y; row < y + height; row++) {
        const from = row * node.canvasWidth + x;
        if (pixels.subarray(from, from + width).includes(1)) faults.push(`${panel} shares pixels`);
        pixels.fill(1, from, from + width);
      }
    }
    expect(faults).toEqual([]);
    expect(lit).toEqual(fed.nodes.map(({ litPixels }) => litPixels));
  },
);
