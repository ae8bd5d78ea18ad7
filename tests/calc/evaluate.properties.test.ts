import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import type { Evaluation } from '../../src/calc/evaluation';
import type { Run } from '../../src/calc/runs/run-result';
import type { SurfaceTable } from '../../src/calc/surfaces/surface-table';
import type { Plan } from '../../src/plan/plan';
import { smallPlan } from '../arbitraries/small-plan';
import { wiredPlan } from '../arbitraries/wired-plan';
import { expectFinite } from './surfaces/expect-finite';

const plans = fc.oneof({ weight: 1, arbitrary: smallPlan }, { weight: 2, arbitrary: wiredPlan });

/** Every property looks at plans of its own, evaluated afresh. */
function always(holds: (evaluation: Evaluation, plan: Plan) => void, numRuns = 60): void {
  fc.assert(
    fc.property(plans, (plan) => {
      holds(createEvaluator().evaluate(plan), plan);
    }),
    { numRuns },
  );
}

/** Surface and panel on it of a panel numbered through the stage. */
function panelOf(
  { surfaces: { surfaces, offsets } }: Evaluation,
  panel: number,
): { table: SurfaceTable; local: number } {
  const surface = offsets.findLastIndex((offset, i) => offset <= panel && surfaces[i]!.count > 0);
  return { table: surfaces[surface]!, local: panel - offsets[surface]! };
}

const panelsOn = ({ runs }: Evaluation, { start, count }: Run) =>
  Array.from(runs.results.order.subarray(start, start + count));

const wholeStage = (evaluation: Evaluation) => Array.from({ length: evaluation.surfaces.total }, (_, panel) => panel);

/** Pixels that panels count for on one port, from their places on the canvas alone. */
function pixelsOf(evaluation: Evaluation, panels: readonly number[], counting: 'panels' | 'rectangle'): number {
  const boxes = panels.map((panel) => {
    const { table, local } = panelOf(evaluation, panel);
    const { pixelsWide, pixelsHigh } = table.types[table.type[local]!]!;
    return { left: table.canvasX[local]!, top: table.canvasY[local]!, pixelsWide, pixelsHigh };
  });
  if (counting === 'panels') return boxes.reduce((sum, box) => sum + box.pixelsWide * box.pixelsHigh, 0);
  const wide = Math.max(...boxes.map((box) => box.left + box.pixelsWide)) - Math.min(...boxes.map((box) => box.left));
  const high = Math.max(...boxes.map((box) => box.top + box.pixelsHigh)) - Math.min(...boxes.map((box) => box.top));
  return wide * high;
}

/** The same but for rounding: a share of the figures, and what no meter shows of those that are next to nothing. */
function expectSame(found: number, sum: number): void {
  const rounding = 1e-9 * Math.max(Math.abs(found), Math.abs(sum)) + 1e-6;
  expect(Math.abs(found - sum), `${found} and ${sum}`).toBeLessThanOrEqual(rounding);
}

const sumOf = (values: ArrayLike<number>) => Array.from(values).reduce((sum, value) => sum + value, 0);

test('evaluate of any plan holds no NaN and no infinity, in lists and typed arrays either', () => {
  always((evaluation) => expectFinite(evaluation, 'evaluation'), 150);
});

test('evaluate of any plan names every check once', () => {
  always(({ checks }) => {
    const ids = checks.map(({ id }) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });
});

test('evaluate of any plan prints words of a check that its figures fill', () => {
  always(({ checks }) => {
    for (const { id, sentence, measured, limit, values = {} } of checks) {
      const figures: Record<string, unknown> = { measured, limit, ...values };
      const empty = [...sentence.matchAll(/\{(\w+)\}/g)].filter(([, name]) => (figures[name!] ?? null) === null);
      expect(empty.map(([token]) => `${id}: ${token}`)).toEqual([]);
    }
  });
});

test('evaluate of any plan puts every panel of a zone on exactly one run, and no other panel on any', () => {
  always((evaluation) => {
    const { order, runOf, placeOf, runs } = evaluation.runs.results;
    const zoned = wholeStage(evaluation).filter((panel) => {
      const { table, local } = panelOf(evaluation, panel);
      const own = evaluation.zones.results.zones.filter(
        (zone) =>
          zone.surfaceId === table.surfaceId &&
          zone.firstColumn <= table.column[local]! &&
          table.column[local]! < zone.firstColumn + zone.columns &&
          zone.firstRow <= table.row[local]! &&
          table.row[local]! < zone.firstRow + zone.rows,
      );
      expect(own.length).toBeLessThanOrEqual(1);
      return own.length === 1;
    });
    expect(Array.from(order).sort((a, b) => a - b)).toEqual(zoned);
    runs.forEach((run, i) => {
      panelsOn(evaluation, run).forEach((panel, place) => {
        expect([runOf[panel], placeOf[panel]]).toEqual([i, place + 1]);
      });
    });
    const idle = wholeStage(evaluation).filter((panel) => !zoned.includes(panel));
    expect(idle.filter((panel) => runOf[panel] !== -1 || placeOf[panel] !== 0)).toEqual([]);
  });
});

test('evaluate of any plan leaves a surface without zones only with a reason', () => {
  always(({ surfaces, zones, checks }) => {
    for (const { surfaceId, letter, count } of surfaces.surfaces) {
      if (count === 0 || zones.results.zones.some((zone) => zone.surfaceId === surfaceId)) continue;
      const fit = checks.find(({ id }) => id === `zones.fit.${letter}`);
      expect(fit?.severity).toBe('stop');
    }
  });
});

test('evaluate of any plan gives every processor, port and circuit a name of its own', () => {
  always(({ runs, zones, power }) => {
    for (const names of [
      runs.results.runs.map(({ port }) => port),
      zones.results.zones.map(({ processor }) => processor),
      power.results.circuits.map(({ name }) => name),
    ]) {
      expect(new Set<unknown>(names).size).toBe(names.length);
    }
  });
});

test('evaluate of any plan overloads no port but by a panel alone or by hand, and says so', () => {
  always((evaluation) => {
    const { runs, ports, surfaces, checks } = evaluation;
    for (const run of runs.results.runs) {
      const surface = surfaces.surfaces.findIndex(({ surfaceId }) => surfaceId === run.surfaceId);
      const { usablePixels, panelsMost, counting } = ports.results.surfaces[surface]!;
      expect(run.pixels).toBe(pixelsOf(evaluation, panelsOn(evaluation, run), counting));
      const { byHand } = runs.results.zones[run.zone]!;
      const letter = surfaces.surfaces[surface]!.letter;
      if (run.pixels > usablePixels) {
        expect(run.count === 1 || byHand).toBe(true);
        expect(checks.find(({ id }) => id === `runs.load.${letter}`)?.severity).toBe('stop');
      }
      if (run.count > panelsMost) expect(byHand).toBe(true);
    }
  });
});

test('evaluate of any plan leads every run from a panel to its neighbour', () => {
  always((evaluation) => {
    for (const run of evaluation.runs.results.runs) {
      const panels = panelsOn(evaluation, run).map((panel) => panelOf(evaluation, panel));
      panels.slice(1).forEach(({ table, local }, i) => {
        const before = panels[i]!;
        expect(table).toBe(before.table);
        const across = Math.abs(table.column[local]! - table.column[before.local]!);
        const up = Math.abs(table.row[local]! - table.row[before.local]!);
        expect(across + up).toBe(1);
      });
    }
  });
});

test('evaluate of any plan puts every panel on exactly one circuit of its surface', () => {
  always((evaluation) => {
    const { order, circuitOf, circuits } = evaluation.power.results;
    expect(Array.from(order).sort((a, b) => a - b)).toEqual(wholeStage(evaluation));
    circuits.forEach(({ start, count, surfaceId }, i) => {
      for (const panel of order.subarray(start, start + count)) {
        expect(circuitOf[panel]).toBe(i);
        expect(panelOf(evaluation, panel).table.surfaceId).toBe(surfaceId);
      }
    });
  });
});

test('evaluate of any plan overloads no circuit but by a panel alone, and says so', () => {
  always(({ power, checks }, plan) => {
    const { ratedA, usableShare } = plan.power.circuit;
    for (const { currentA, count } of power.results.circuits) {
      if (currentA <= ratedA * usableShare * (1 + 1e-9)) continue;
      expect(count).toBe(1);
      expect(checks.find(({ id }) => id === 'power.circuit')?.severity).toBe('stop');
    }
  });
});

test('evaluate of any plan counts panels and pixels of the parts as of the whole', () => {
  always(({ surfaces, walls, ceilings, picture, zones, runs, headline }) => {
    expect(sumOf(surfaces.surfaces.map(({ count }) => count))).toBe(surfaces.total);
    expect(headline.panels).toBe(surfaces.total);
    const laid = [...walls.results.walls, ...ceilings.results.ceilings];
    expect(sumOf(laid.map(({ table }) => table.count))).toBe(surfaces.total);
    expect(sumOf(laid.map(({ pixels }) => pixels))).toBe(picture.results.pixels);
    expect(sumOf(picture.results.surfaces.map(({ pixels }) => pixels))).toBe(headline.pixels);
    expectSame(picture.results.rateBps, sumOf(picture.results.surfaces.map(({ rateBps }) => rateBps)));
    expect(sumOf(zones.results.zones.map(({ panels }) => panels))).toBe(runs.results.order.length);
    expect(sumOf(zones.results.surfaces.map((each) => each.zones))).toBe(zones.results.zones.length);
    expect(headline.processors).toBe(zones.results.zones.length);
  });
});

test('evaluate of any plan counts ports of the parts as of the whole, never fewer than the least', () => {
  always(({ runs: { results }, headline }) => {
    // A run that returns has a port at either end.
    const returns = results.runs.filter(({ returnPort }) => returnPort !== null).length;
    expect(results.portsUsed).toBe(results.runs.length + returns);
    expect(headline.portsUsed).toBe(results.portsUsed);
    expect(sumOf(results.surfaces.map(({ ports }) => ports))).toBe(results.portsUsed);
    expect(sumOf(results.zones.map(({ ports }) => ports))).toBe(results.portsUsed);
    expect(sumOf(results.zones.map(({ breakouts }) => breakouts))).toBe(results.breakouts);
    expect(sumOf(results.surfaces.map(({ portsLeast }) => portsLeast))).toBe(results.portsLeast);
    expect(sumOf(results.runs.map(({ count }) => count))).toBe(results.order.length);
    for (const { ports, portsLeast, byHand } of results.zones)
      if (!byHand) expect(ports).toBeGreaterThanOrEqual(portsLeast);
  });
});

test('evaluate of any plan adds up watts, heat and masses of the parts to the whole', () => {
  always(({ power, heat, masses, headline }) => {
    const { loads, signalW, circuits, maxW } = power.results;
    expectSame(maxW, sumOf(loads.map(({ fullWhiteW }) => fullWhiteW)) + signalW);
    expectSame(headline.powerMaxW, sumOf(circuits.map(({ watts }) => watts)) + signalW);
    expectSame(heat.results.fullWhiteW, sumOf(heat.results.bySource.map(({ fullWhiteW }) => fullWhiteW)));
    expectSame(headline.massKg, sumOf(masses.results.surfaces.map(({ totalKg }) => totalKg)));
    for (const { totalKg, panelsKg, fittingsKg, columnKg } of masses.results.surfaces) {
      expectSame(totalKg, panelsKg + fittingsKg);
      expectSame(totalKg, sumOf(columnKg));
    }
  });
});

test('evaluate of any plan gives every circuit to a distro, and none of them to two', () => {
  always(({ power: { results } }) => {
    for (const { number, circuits } of results.distros) {
      expect(results.circuits.filter(({ distro }) => distro === number).length).toBe(circuits);
    }
    if (results.distros.length > 0) {
      expect(sumOf(results.distros.map(({ circuits }) => circuits))).toBe(results.circuits.length);
    }
  });
});

test('evaluate of any plan adds up the lines of its bill to mass and price', () => {
  always(({ materials: { results }, surfaces, zones, runs, power, headline }) => {
    expectSame(results.massKg, sumOf(results.lines.map(({ massKg }) => massKg)));
    expectSame(results.priceToGet, sumOf(results.lines.map(({ price }) => price ?? 0)));
    const bought = results.lines.map(({ needed, spare, priceEach }) => (needed + spare) * (priceEach ?? 0));
    expectSame(headline.priceTotal, sumOf(bought));
    // Cases come with the panels that are to be got.
    for (const { group, needed, spare, owned, toGet } of results.lines) {
      if (group === 'cases') continue;
      expect(toGet).toBe(Math.max(0, needed + spare - (owned ?? 0)));
    }
    const needed = (group: string) =>
      sumOf(results.lines.filter((line) => line.group === group).map((line) => line.needed));
    expect(needed('panels')).toBe(surfaces.total);
    expect(zones.results.zones.length + runs.results.breakouts).toBeLessThanOrEqual(needed('signal'));
    expect(power.results.distros.length).toBeLessThanOrEqual(needed('power'));
  });
});
