import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parsePlan } from '../../src/plan/parse-plan';
import { serialisePlan } from '../../src/plan/serialise-plan';
import { samplePlan, sampleText } from './sample-plan';

const folder = new URL('../../fixtures/broken/', import.meta.url);
const expected: Record<string, object> = JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8'));
const broken = readdirSync(folder).filter((name) => name.endsWith('.json') && name !== 'expected.json');

test('every broken file has its answer written down', () => {
  expect(broken.map((name) => name.replace('.json', '')).sort()).toEqual(Object.keys(expected).sort());
});

test.each(Object.entries(expected))('parsePlan refuses %s with %j', (name, answer) => {
  const parsed = parsePlan(readFileSync(new URL(`${name}.json`, folder), 'utf8'));
  expect(parsed).toMatchObject({ ...answer, sentence: expect.stringMatching(/^[A-Z].*\.$/) });
  expect(parsed).not.toHaveProperty('plan');
  expect('path' in parsed).toBe('path' in answer);
});

test('parsePlan says the place and the reason in the sentence', () => {
  const say = (text: string) => (parsePlan(text) as { sentence: string }).sentence;
  const flat = sampleText('flat');
  expect(say(flat.replace('"columns": 8', '"columns": "eight"'))).toBe(
    'Invalid at walls[0].path[0].columns: a number belongs here.',
  );
  expect(say(flat.replace('"reachMm": 2100', '"reachMm": -1').replace('"people": 8', '"people": 0.5'))).toBe(
    'Invalid at signal.reachMm: at least 0 mm. One more place is invalid.',
  );
  expect(say(flat.replace('"version": 3', '"version": 7'))).toBe(
    'This plan was written by a newer version of the program (format 7, this one reads up to 3).',
  );
  expect(say('{\n  "format": oops\n}')).toBe('This file is not JSON from line 2, column 13 on.');
});

test('parsePlan takes a byte order mark, other line ends and other spaces', () => {
  const plan = samplePlan('flat');
  const text = serialisePlan(plan);
  expect(parsePlan(`\ufeff${text}`)).toEqual({ plan });
  expect(parsePlan(text.replaceAll('\n', '\r\n'))).toEqual({ plan });
  expect(parsePlan(JSON.stringify(plan))).toEqual({ plan });
});

test('parsePlan keeps no -0, which saving would lose', () => {
  const parsed = parsePlan(sampleText('flat').replace('"xMm": 0', '"xMm": -0.0'));
  expect(Object.is('plan' in parsed && parsed.plan.walls[0]!.place.xMm, 0)).toBe(true);
});

test('parsePlan opens every version that was released', () => {
  const present = samplePlan('version-2');
  const { catalogue, signal, walls, existingWiring, alternatives } = samplePlan('version-1');
  expect({ walls, existingWiring, alternatives }).toEqual({
    walls: present.walls,
    existingWiring: present.existingWiring,
    alternatives: present.alternatives,
  });
  expect(signal).toMatchObject({ returns: 'none', reachMm: present.signal.reachMm });
  expect(catalogue.panels).toEqual(present.catalogue.panels);
  expect(parsePlan(sampleText('version-0'))).toEqual({
    plan: { ...samplePlan('version-1'), existingWiring: null, alternatives: [] },
  });
});
