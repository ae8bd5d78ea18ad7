import { afterAll, describe, expect, test } from 'vitest';
import { pathText } from '../../src/plan/commands/path-text';
import { type ParsedPlan, parsePlan } from '../../src/plan/parse-plan';
import { sampleText } from './sample-plan';

// A document that uses every kind of record, and everything that can go wrong with it at every place.
const text = sampleText('version-3');
const document: unknown = JSON.parse(text);
const tried = new Set<string>();

type Path = (string | number)[];

/** Every place in the document with what stands there, the root left out. */
function places(value: unknown, path: Path = []): { path: Path; value: unknown }[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => {
    const here = [...path, Array.isArray(value) ? Number(key) : key];
    return [{ path: here, value: part as unknown }, ...places(part, here)];
  });
}

/** The document's text with another JSON text at one place; undefined takes the place out. */
function changed(path: Path, json: string | undefined): string {
  const copy = structuredClone(document) as Record<string, unknown>;
  let holder = copy;
  for (const key of path.slice(0, -1)) holder = holder[key] as Record<string, unknown>;
  const last = path.at(-1)!;
  if (json === undefined) delete holder[last];
  else holder[last] = 'HERE';
  return JSON.stringify(copy).replace('"HERE"', () => json ?? '');
}

function refused(broken: string): Extract<ParsedPlan, { refused: string }> {
  tried.add(broken.length > 1_000_000 ? `${broken.length} ${broken.slice(0, 200)}` : broken);
  const parsed = parsePlan(broken);
  if (!('refused' in parsed)) throw new Error(`a plan came out of ${broken.slice(0, 400)}`);
  expect(parsed.sentence).toMatch(/^[A-Z][^\n]*\.$/);
  return parsed;
}

// A catalogue's second item of a kind has the same record as its first, and a revision's content that of the plan.
const isAgain = ([group, , third, ...rest]: Path) =>
  (group === 'catalogue' && third !== undefined && third !== 0) || (group === 'revisions' && rest.length > 1);
const all = places(document).filter(({ path }) => !isAgain(path));
const numbers = all.filter(({ value }) => typeof value === 'number');
const records = [{ path: [] as Path, value: document }, ...all].filter(
  ({ value }) => typeof value === 'object' && value !== null && !Array.isArray(value),
);
const isHead = (path: Path) => path.length === 1 && (path[0] === 'format' || path[0] === 'version');

describe('no broken text opens, and each gets a named reason', () => {
  test('cut anywhere', () => {
    for (let at = 1; at < text.length - 2; at += 37) expect(refused(text.slice(0, at)).refused).toBe('cut-short');
  });

  test('begun in the middle', () => {
    for (let at = 1; at < text.length - 2; at += 377) {
      expect(['not-json', 'cut-short', 'not-a-plan']).toContain(refused(text.slice(at)).refused);
    }
  });

  test('a wrong type at every place', () => {
    for (const { path, value } of all) {
      const wrong = Array.isArray(value)
        ? '{}'
        : value === null
          ? 'true'
          : typeof value === 'object'
            ? '[]'
            : '{"a":1}';
      const answer = refused(changed(path, wrong));
      if (isHead(path)) expect(['not-a-plan', 'invalid']).toContain(answer.refused);
      else expect(answer).toMatchObject({ refused: 'invalid', path: pathText(path) });
    }
  });

  test('a text for every number, and the other way round', () => {
    for (const { path, value } of all) {
      if (typeof value === 'object' || isHead(path)) continue;
      const wrong = typeof value === 'string' ? '12' : '"12"';
      expect(refused(changed(path, wrong))).toMatchObject({ refused: 'invalid', path: pathText(path) });
    }
  });

  test('nothing at every place that must hold something', () => {
    let nullable = 0;
    for (const { path, value } of all) {
      if (value === null || isHead(path)) continue;
      const broken = changed(path, 'null');
      if ('plan' in parsePlan(broken)) nullable += 1;
      else expect(refused(broken)).toMatchObject({ refused: 'invalid', path: pathText(path) });
    }
    expect(nullable).toBeLessThan(all.length / 8);
  });

  test('a number of the wrong size at every number', () => {
    for (const { path } of numbers) {
      if (isHead(path)) continue;
      for (const wrong of ['1e400', '-1e308', '1e16']) {
        expect(refused(changed(path, wrong))).toMatchObject({ refused: 'invalid', path: pathText(path) });
      }
    }
  });

  test('an unknown field in every record', () => {
    for (const { path } of records) {
      for (const key of ['colour', '__proto__', 'constructor', 'prototype', 'toString']) {
        const at = [...path, key];
        const whole = JSON.stringify(path.reduce<unknown>((here, k) => (here as never)[k], document));
        const grown = `{"${key}":{"polluted":true},${whole.slice(1)}`;
        const answer = refused(path.length === 0 ? grown : changed(path, grown));
        expect(answer).toMatchObject({ refused: 'invalid', path: pathText(at) });
      }
    }
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });

  test('a field missing from every record', () => {
    for (const { path } of all) {
      if (typeof path.at(-1) === 'number' || isHead(path)) continue;
      const answer = refused(changed(path, undefined));
      expect(answer).toMatchObject({ refused: 'invalid', path: pathText(path) });
    }
  });

  test('another version', () => {
    for (const version of [4, 5, 99, 1e9]) {
      expect(refused(changed(['version'], String(version)))).toMatchObject({ refused: 'newer', path: 'version' });
    }
    for (const version of ['-1', '0.5', '"1"', 'null', '[]', 'true', '{}']) {
      expect(refused(changed(['version'], version))).toMatchObject({ refused: 'invalid', path: 'version' });
    }
  });

  test('another format', () => {
    for (const format of ['"plan"', 'null', '1', '{}', '"VOUSSOIR-PLAN"']) {
      expect(refused(changed(['format'], format)).refused).toBe('not-a-plan');
    }
    for (const other of ['null', 'true', '12', '"voussoir-plan"', '[]', '{}', '[{"format":"voussoir-plan"}]']) {
      expect(refused(other).refused).toBe('not-a-plan');
    }
  });

  test('nested as deep as one likes', () => {
    for (const depth of [65, 1000, 100_000, 3_000_000]) {
      expect(refused('['.repeat(depth) + ']'.repeat(depth)).refused).toBe('too-deep');
      expect(refused(changed(['note'], `${'{"a":'.repeat(depth)}1${'}'.repeat(depth)}`)).refused).toBe('too-deep');
    }
    expect(refused(changed(['note'], '['.repeat(20) + ']'.repeat(20)))).toMatchObject({ path: 'note' });
  });

  test('50 MB and more', () => {
    const much = 50_000_000;
    expect(refused('x'.repeat(much)).refused).toBe('not-json');
    expect(refused('"'.padEnd(much, 'x')).refused).toBe('cut-short');
    expect(refused(changed(['note'], `"${'n'.repeat(much)}"`))).toMatchObject({ refused: 'invalid', path: 'note' });
    expect(refused(changed(['handChanges'], `[${'0,'.repeat(much / 2)}0]`))).toMatchObject({ path: 'handChanges' });
    expect(refused(' '.repeat(much)).refused).toBe('empty');
    expect(refused(' '.repeat(100_000_001)).refused).toBe('too-large');
  });

  test('noise in the middle', () => {
    for (let at = 40; at < text.length; at += 211) {
      for (const noise of ['\u0000', '"']) {
        expect(['not-json', 'cut-short']).toContain(refused(text.slice(0, at) + noise + text.slice(at)).refused);
      }
    }
  });

  afterAll(() => {
    expect(tried.size).toBeGreaterThan(200);
  });
});
