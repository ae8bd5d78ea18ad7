import { expect, test } from 'vitest';
import { cautions } from '../../../src/calc/cautions';
import { zonesPart } from '../../../src/sheets/crew-set/zones-part';
import { stageParts } from '../../../src/sheets/stage-parts';
import { samplePlan } from '../../arbitraries/sample-plans';
import { cells } from '../cells';
import { evaluated, options, tablesOf, textsOf } from './sample-set';

const { plan, evaluation } = evaluated(samplePlan('horseshoe'));
const parts = stageParts(plan, evaluation);
const nodes = evaluation.nodes.results;
const part = zonesPart(parts, nodes, options)!;

test('zonesPart has the sheets of every zone in the order of processors, walls from behind and ceilings from below', () => {
  const sides = new Map(part.sheets.map(({ title, side }) => [title.split(':')[0], side]));
  const expected = parts.zones.map(({ processor, letter }) => [
    `Processor ${processor}`,
    letter === 'A' ? 'drawn from behind' : 'drawn from below',
  ]);
  expect([...sides]).toEqual(expected);
});

test('zonesPart has the ports of each processor under its drawing, and those of all processors once', () => {
  const tables = tablesOf(part);
  expect(tables.map(({ title }) => title)).toEqual(
    parts.zones.map(({ processor }) => `Ports of processor ${processor}`),
  );
  const ports = tables.flatMap(({ schedule }) =>
    Array.from({ length: schedule.count }, (_, i) => cells(schedule, i).port),
  );
  expect(ports.sort()).toEqual(parts.runs.runs.map(({ port }) => port).sort());
  tables.forEach(({ schedule }, i) => {
    expect(cells(schedule, 'totals').panels).toBe(parts.zones[i]!.panels);
  });
});

test('zonesPart says of each zone its canvas, its node and, of a wall, the reach', () => {
  const [first] = parts.zones;
  const texts = textsOf(part);
  expect(texts[0]).toContain(`${first!.panels} panels, canvas ${first!.canvasWidth} × ${first!.canvasHeight} px`);
  expect(texts[0]).toContain(`node ${nodes.nodes[nodes.nodeOfZone[0]!]!.name}`);
  expect(texts[0]).toContain('An adult reaches 2.10 m.');
  expect(texts.at(-1)).not.toContain('reaches');
});

test('zonesPart names every panel on the sheets of its zone, and tags every run, at the scale it is drawn at', () => {
  const names: string[] = [];
  for (const sheet of part.sheets) {
    if (sheet.kind !== 'drawing') continue;
    const letter = /: ([A-Z]) C/.exec(sheet.title)![1]!;
    const { labels } = sheet.draw(sheet.reductions[0]!, options.rooms[0]);
    for (const { count, at, leastScale } of labels) {
      // 5 pixels a mm of paper, as paperStyle has it.
      expect(leastScale).toBeLessThanOrEqual(5 / sheet.reductions.at(-1)!);
      for (let i = 0; i < count; i++) if (/^C\d+ R\d+$/.test(at(i).text)) names.push(`${letter} ${at(i).text}`);
    }
  }
  expect(new Set(names).size).toBe(evaluation.headline.panels);
  expect(names).toHaveLength(evaluation.headline.panels);
});

test('zonesPart carries the caution of height where a wall is built, of hanging load where a ceiling is', () => {
  for (const { side, caution } of part.sheets)
    expect(caution).toBe(side === 'drawn from behind' ? cautions.height : cautions.hangingLoad);
});

test('zonesPart of a stage without zones is none', () => {
  expect(zonesPart({ ...parts, zones: [], runs: { ...parts.runs, runs: [] } }, nodes, options)).toBeNull();
});
