import readWorkbook from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { planWorkbook } from '../../src/files/plan-workbook';
import { samplePlan } from '../arbitraries/sample-plans';
import { workbookPart } from './workbook-part';

const formula = '=1+1';
const sample = samplePlan('flat');
const plan = {
  ...sample,
  name: formula,
  catalogue: {
    ...sample.catalogue,
    panels: sample.catalogue.panels.map((panel) => ({ ...panel, name: formula })),
  },
};
const evaluation = createEvaluator().evaluate(plan);
const made = await planWorkbook(plan, evaluation);
const workbook = Buffer.from(made.bytes);
const sheets = await readWorkbook(workbook);
const sheet = (name: string) => sheets.find((each) => each.sheet === name)!.data;

test('planWorkbook is read back by another reader: a sheet for each schedule, under names of its own', () => {
  expect(made.name).toBe('schedules.xlsx');
  const names = sheets.map((each) => each.sheet);
  expect(names).toEqual(
    expect.arrayContaining(['Plan', 'Bill of materials', 'Runs by port', 'Circuits by distro', 'Legs and bonding']),
  );
  expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
  for (const name of names) expect(name.length).toBeLessThanOrEqual(31);
});

test('planWorkbook has a row for each panel, each run and each circuit of the plan', () => {
  // One row of headings each; runs and circuits have a row of totals below.
  expect(sheet('Panels')).toHaveLength(1 + evaluation.surfaces.total);
  expect(sheet('Pixel map')).toHaveLength(1 + evaluation.surfaces.total);
  expect(sheet('Runs by port')).toHaveLength(2 + evaluation.headline.portsUsed);
  expect(sheet('Circuits by distro')).toHaveLength(2 + evaluation.headline.circuits);
});

test('planWorkbook keeps a plan and an item that are named like a formula words', () => {
  expect(sheet('Plan')[1]).toEqual(['Plan', formula]);
  expect(sheet('Bill of materials').some((row) => row[1] === formula)).toBe(true);
  expect(sheet('Panels')[1]![1]).toBe(formula);
  for (const i of sheets.keys()) {
    expect(workbookPart(workbook, `xl/worksheets/sheet${i + 1}.xml`)).not.toContain('<f>');
  }
});

test('planWorkbook keeps a current a number, shown with one decimal', () => {
  const circuits = sheets.findIndex((each) => each.sheet === 'Circuits by distro');
  const column = sheet('Circuits by distro')[0]!.indexOf('Current (A)');
  expect(sheet('Circuits by distro')[1]![column]).toBeCloseTo(evaluation.power.results.circuits[0]!.currentA, 9);
  const cell = `${'ABCDEFGHIJ'[column]}2`;
  const style = new RegExp(`<c r="${cell}" s="(\\d+)"`).exec(
    workbookPart(workbook, `xl/worksheets/sheet${circuits + 1}.xml`),
  )![1]!;
  const styles = workbookPart(workbook, 'xl/styles.xml');
  const cellStyles = /<cellXfs[^>]*>(.*)<\/cellXfs>/.exec(styles)![1]!.split('<xf ').slice(1);
  const id = /numFmtId="(\d+)"/.exec(cellStyles[Number(style)]!)![1];
  expect(styles).toContain(`<numFmt numFmtId="${id}" formatCode="#,##0.0"/>`);
});

test('planWorkbook gives the same bytes for the same plan', async () => {
  const again = await planWorkbook(plan, createEvaluator().evaluate(plan));
  expect(Buffer.from(again.bytes).equals(workbook)).toBe(true);
});
