import { expect, test } from 'vitest';
import { checkReport } from '../../src/cli/check-report';
import { checkOf, headline } from './small-stage';

const metric = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' } as const;
const plan = { name: 'Small stage', revision: 'B' };
const report = (checks: Parameters<typeof checkReport>[1]['checks'], options: typeof metric | object = {}) =>
  checkReport(plan, { headline, checks }, { ...metric, ...options }, 80);

test('checkReport begins with the plan and its revision', () => {
  expect(report([]).split('\n')[0]).toBe('Small stage, revision B');
  expect(checkReport({ ...plan, revision: '' }, { headline, checks: [] }, metric, 80)).toMatch(/^Small stage\n/);
});

test('checkReport writes every figure with its unit, and a dash where there is none', () => {
  const text = report([]);
  // 0.0308 of a port in hundredths is 3.08, with one decimal 3.1.
  expect(text).toMatch(/Wall height +500 mm +Circuits +1\n/);
  expect(text).toMatch(/Inside diameter +- +Panels a port +2\n/);
  expect(text).toMatch(/Opening +- +Fullest port +3\.1 %\n/);
  expect(text).toMatch(/Price +€4,000 +Full white +300 W\n/);
});

test('checkReport keeps heat apart from power: the heat of lamps and people is in it as well', () => {
  expect(report([])).toMatch(/\n +Heat, all in +0\.09 tons\n/);
});

test('checkReport in feet writes lengths in feet and inches', () => {
  // 500 mm / 25.4 = 19.685 in, to the nearest eighth 1 ft 7 5/8 in (19.625) or 1 ft 7 3/4 in (19.75): 19.685 is nearer to 5/8.
  expect(report([], { lengths: 'feet' })).toMatch(/Wall height +1' 7 5\/8"/);
});

test('checkReport puts the worst check first, whatever the order they come in', () => {
  const text = report([
    checkOf({ id: 'a.pass', severity: 'pass', sentence: 'All stands.' }),
    checkOf({ id: 'a.offer', severity: 'offer', limit: null, sentence: 'Nobody said how high: {limit}.' }),
    checkOf({ id: 'a.watch', severity: 'watch', sentence: 'Look at it.' }),
    checkOf({ id: 'a.stop', severity: 'stop', sentence: 'It cannot stand.' }),
  ]);
  expect(text).toContain('Checks: 1 stop (S), 1 watch (W), 1 offer (o), 1 pass (.)');
  const lines = text.split('\n').filter((line) => /^[SWo.] /.test(line));
  expect(lines).toEqual([
    'S It cannot stand.',
    'W Look at it.',
    'o Nobody said how high: not stated.',
    '. All stands.',
  ]);
});

test('checkReport names six places and counts the rest, and says what would repair it', () => {
  const where = Array.from({ length: 9 }, (_, i) => ({ kind: 'port', name: `port ${i + 1}` }) as const);
  const fix = { label: 'lower the base', command: { name: 'set-fields', args: { fields: [] } } } as const;
  const text = report([checkOf({ where, fix })]).replace(/\s+/g, ' ');
  expect(text).toContain('port 5, port 6, and 3 more; repair: lower the base]');
  expect(text).not.toContain('port 7');
});

test('checkReport names a field of the file only where nothing else is named', () => {
  const field = { kind: 'field', name: 'wish.budget' } as const;
  const port = { kind: 'port', name: 'port 1' } as const;
  expect(report([checkOf({ where: [port, field] })])).toContain('[runs.reach; port 1]');
  expect(report([checkOf({ where: [field] })])).toContain('[runs.reach; wish.budget]');
});

test('checkReport fits eighty columns, long names and long sentences too', () => {
  const long = 'A sentence of many words that goes on and on, as sentences do. '.repeat(5);
  const where = Array.from({ length: 50 }, (_, i) => ({ kind: 'panel', name: `A C${i + 100} R13` }) as const);
  for (const line of report([checkOf({ sentence: long, where })]).split('\n')) {
    expect(line.length).toBeLessThanOrEqual(80);
  }
});

test('checkReport ends with the caution and never calls anything safe', () => {
  const text = report([]);
  expect(text.trimEnd().replace(/\s+/g, ' ')).toMatch(/licensed electrician.*structural engineer decide\.$/);
  expect(text).not.toMatch(/\bsafe/i);
});

test('checkReport has no control characters that colour a terminal', () => {
  expect(report([checkOf({})])).not.toContain(String.fromCharCode(27));
});
