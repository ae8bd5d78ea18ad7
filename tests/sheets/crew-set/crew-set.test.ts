import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emptyPlan } from '../../../src/plan/empty-plan';
import type { Plan } from '../../../src/plan/plan';
import type { CrewPart, CrewPartId, DrawingSheet } from '../../../src/sheets/crew-set/crew-part';
import { crewSet } from '../../../src/sheets/crew-set/crew-set';
import { paperStyle } from '../../../src/sheets/paper-style';
import { sampleNames, samplePlan } from '../../arbitraries/sample-plans';
import { wiredPlan } from '../../arbitraries/wired-plan';
import { blocksOf, type Evaluated, evaluated, options, tablesOf } from './sample-set';

const setOf = ({ plan, evaluation }: Evaluated) =>
  crewSet(plan, evaluation, { ...options, display: { ...options.display, lengths: plan.lengths } });
const partOf = (set: readonly CrewPart[], id: CrewPartId) => set.find((part) => part.id === id);
const drawingsOf = (part: CrewPart | undefined) =>
  (part?.sheets ?? []).filter((sheet): sheet is DrawingSheet => sheet.kind === 'drawing');

/** Names of panels that a drawing writes at the smallest of its scales, with the letter of its surface. */
function panelsNamed(sheet: DrawingSheet, letter: string): string[] {
  const reduction = sheet.reductions.at(-1)!;
  return sheet.draw(reduction, options.rooms[0]).labels.flatMap(({ count, at, leastScale }) =>
    leastScale > paperStyle.pixelsAMm / reduction
      ? []
      : Array.from({ length: count }, (_, i) => at(i).text)
          .filter((text) => /^C\d+ R\d+$/.test(text))
          .map((text) => `${letter} ${text}`),
  );
}

function countNames({ evaluation }: Evaluated, set: readonly CrewPart[]) {
  const surfaces = evaluation.surfaces.surfaces;
  const ofZones = drawingsOf(partOf(set, 'zones')).flatMap((sheet) => {
    const processor = Number(/^Processor (\d+)/.exec(sheet.title)![1]);
    return panelsNamed(sheet, evaluation.zones.results.zones.find((zone) => zone.processor === processor)!.letter);
  });
  const ofSurfaces = (['from-behind', 'from-inside', 'ceiling-below', 'ceiling-above'] as const).map((id) =>
    drawingsOf(partOf(set, id)).flatMap((sheet) => panelsNamed(sheet, sheet.title[0]!)),
  );
  const all = surfaces.flatMap(({ letter, column, row }) => Array.from(column, (c, i) => `${letter} C${c} R${row[i]}`));
  return { ofZones, ofSurfaces, all };
}

function expectEverythingNamed(stage: Evaluated): void {
  const { evaluation } = stage;
  const set = setOf(stage);
  const { ofZones, ofSurfaces, all } = countNames(stage, set);
  const zoned = evaluation.zones.results.zones.reduce((sum, { panels }) => sum + panels, 0);
  expect(ofZones).toHaveLength(zoned);
  expect(new Set(ofZones).size).toBe(zoned);
  const named = new Set([...ofZones, ...ofSurfaces.flat()]);
  expect(all.filter((name) => !named.has(name))).toEqual([]);
  for (const names of ofSurfaces) expect(new Set(names).size).toBe(names.length);

  const cellsOf = (id: CrewPartId, key: string) =>
    tablesOf(partOf(set, id) ?? { id, title: '', sheets: [] }).flatMap(({ schedule }) => {
      const place = schedule.columns.findIndex((column) => column.key === key);
      return place < 0 ? [] : Array.from({ length: schedule.count }, (_, i) => schedule.row(i)[place]);
    });
  const ports = evaluation.runs.results.runs.map(({ port }) => port).sort();
  expect(cellsOf('ports', 'port').sort()).toEqual(ports);
  expect(cellsOf('zones', 'port').sort()).toEqual(ports);
  const circuits = evaluation.power.results.circuits.map(({ name }) => name).sort();
  expect(cellsOf('circuits', 'circuit').sort()).toEqual(circuits);
  const ticked = cellsOf('check-sheet', 'name');
  for (const name of [...ports, ...circuits]) expect(ticked.filter((one) => one === name)).toHaveLength(1);
}

/** Every text and cell of the set. */
function wordsOf(set: readonly CrewPart[]): string[] {
  return set.flatMap(({ title, sheets }) => [
    title,
    ...sheets.flatMap((sheet) => [
      sheet.title,
      ...blocksOf(sheet).flatMap((block) => {
        if (block.kind === 'text') return [block.text];
        if (block.kind === 'figures') return block.entries.map(({ name, value }) => `${name} ${value}`);
        if (block.kind !== 'table') return [];
        return Array.from({ length: block.schedule.count }, (_, i) => block.schedule.row(i).join(' ')).concat(
          (block.schedule.totals ?? []).join(' '),
        );
      }),
    ]),
  ]);
}

test.each(sampleNames)('crewSet of %s names every panel, port and circuit as often as it should', (name) => {
  expectEverythingNamed(evaluated(samplePlan(name)));
});

test('crewSet of any plan names every panel, port and circuit as often as it should, and says no nonsense', () => {
  fc.assert(
    fc.property(wiredPlan, (plan) => {
      const stage = evaluated(plan);
      expectEverythingNamed(stage);
      const set = setOf(stage);
      expect(wordsOf(set).filter((words) => /NaN|undefined|Infinity/.test(words))).toEqual([]);
      expect(set.every(({ sheets }) => sheets.length > 0)).toBe(true);
    }),
    { numRuns: 8 },
  );
});

test('crewSet of one panel has every part but the ceilings', () => {
  const flat = samplePlan('flat');
  const [wall] = flat.walls;
  const one: Plan = {
    ...flat,
    walls: [
      {
        ...wall!,
        path: [{ ...wall!.path[0]!, columns: 1 }],
        bands: [{ ...wall!.bands[0]!, rows: 1 }],
        holes: [],
      },
    ],
  };
  const stage = evaluated(one);
  expect(stage.evaluation.headline.panels).toBe(1);
  expectEverythingNamed(stage);
  expect(setOf(stage).map(({ id }) => id)).toEqual([
    ...['cover', 'bill', 'from-behind', 'from-inside', 'from-above', 'elevation', 'zones', 'ports', 'circuits'],
    ...['counts', 'check-sheet', 'commissioning'],
  ]);
});

test('crewSet of nothing is a cover', () => {
  const stage = evaluated(emptyPlan({ id: 'p', name: '', lengths: 'metric' }));
  expect(setOf(stage).map(({ id }) => id)).toEqual(['cover']);
});
