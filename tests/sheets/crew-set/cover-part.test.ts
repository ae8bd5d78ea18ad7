import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { emptyPlan } from '../../../src/plan/empty-plan';
import { coverPart } from '../../../src/sheets/crew-set/cover-part';
import { samplePlan } from '../../arbitraries/sample-plans';
import { issue, widenLeft } from '../../calc/names/issue';
import { blocksOf, evaluated, options, textsOf } from './sample-set';

const flat = evaluated(samplePlan('flat'));
const blocks = (url: string | null = null) =>
  coverPart(flat.plan, flat.evaluation, { ...options, url }).sheets.flatMap(blocksOf);

test('coverPart opens with the name of the plan, its revision and its note', () => {
  const plan = { ...flat.plan, revision: 'C' };
  const texts = textsOf(coverPart(plan, flat.evaluation, options));
  expect(texts.slice(0, 3)).toEqual(['Ferry Lane window (invented sample)', 'Crew set, revision C', plan.note]);
});

test('coverPart of a plan changed since it was issued does not pass for the issued one', () => {
  const changed = widenLeft(issue(flat.plan, createEvaluator(), 'C'));
  const texts = textsOf(coverPart(changed, flat.evaluation, options));
  expect(texts[1]).toBe('Crew set, changed after revision C and not issued since');
});

test('coverPart counts what the plan counts', () => {
  const figures = blocks().flatMap((block) => (block.kind === 'figures' ? block.entries : []));
  // 8 columns of panels of 1 m and 0.5 m: as many rows as the plan's bands have.
  expect(figures.find(({ name }) => name === 'Columns')?.value).toBe('8');
});

test('coverPart has a code where there is a link, else says how to get the file', () => {
  expect(blocks('https://stage.example/#p').filter(({ kind }) => kind === 'qr')).toEqual([
    { kind: 'qr', url: 'https://stage.example/#p', caption: 'Scan to open a copy of this plan.' },
  ]);
  expect(blocks().some(({ kind }) => kind === 'qr')).toBe(false);
  expect(textsOf(coverPart(flat.plan, flat.evaluation, options)).join()).toMatch(/ask .* for its file/);
});

test('coverPart lists every check that stops the plan or wants a look', () => {
  const table = blocks().find((block) => block.kind === 'table');
  const marked = flat.evaluation.checks.filter(({ severity }) => severity === 'stop' || severity === 'watch');
  expect(table?.schedule.count ?? 0).toBe(marked.length);
});

test('coverPart of nothing says what is missing', () => {
  const { plan, evaluation } = evaluated(emptyPlan({ id: 'p', name: '', lengths: 'metric' }));
  const texts = textsOf(coverPart(plan, evaluation, options));
  expect(texts.join()).toMatch(/no panels in this plan yet/);
  expect(texts).not.toContain('');
});
