import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { computeHeadline } from '../../src/calc/headline';
import { plan as planSchema } from '../../src/plan/plan';

const evaluated = (name: string) => {
  const plan = planSchema.parse(JSON.parse(readFileSync(`fixtures/plans/${name}.json`, 'utf8')));
  return { plan, evaluation: createEvaluator().evaluate(plan) };
};

describe('computeHeadline', () => {
  const { plan, evaluation } = evaluated('flat');
  const headline = computeHeadline(evaluation);

  it('says what a small flat wall comes to, counted by hand from its plan', () => {
    const wall = plan.walls[0]!;
    const panel = plan.catalogue.panels.find(({ id }) => id === wall.bands[0]!.panelId)!;
    const columns = wall.path.reduce((sum, segment) => sum + segment.columns, 0);
    const rows = wall.bands.reduce((sum, band) => sum + band.rows, 0);
    expect(headline).toMatchObject({
      panels: columns * rows,
      columns,
      rows,
      insideDiameterMm: null,
      openingMm: null,
      pixels: columns * rows * panel.pixels.wide * panel.pixels.high,
    });
    expect(headline.wallHeightMm).toBeCloseTo(
      wall.bands.reduce((sum, band) => sum + band.rows * panel.size.heightMm, 0),
      6,
    );
  });

  it('repeats the chapters and computes nothing of its own', () => {
    const { power, heat, masses, materials, runs, zones } = evaluation;
    expect(headline).toMatchObject({
      processors: zones.results.processors,
      breakouts: runs.results.breakouts,
      portsUsed: runs.results.portsUsed,
      portsLeast: runs.results.portsLeast,
      fullestPortShare: runs.results.fullestPortShare,
      circuits: power.results.circuits.length,
      worstLegA: power.results.worstLegA,
      neutralA: power.results.neutralA,
      powerMaxW: power.results.maxW,
      heatTons: heat.results.fullWhiteTons,
      massKg: masses.results.totalKg,
      priceTotal: materials.results.priceTotal,
    });
  });

  it('of a stage without walls has no sizes, only counts of nothing', () => {
    const empty = createEvaluator().evaluate({ ...plan, walls: [], ceilings: [] });
    expect(computeHeadline(empty)).toMatchObject({
      panels: 0,
      columns: 0,
      rows: 0,
      insideDiameterMm: null,
      openingMm: null,
      wallHeightMm: null,
      pixels: 0,
      circuits: 0,
      panelsPerPortMin: null,
      priceTotal: 0,
    });
  });
});
