import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packSigns } from '../../src/files/packed-signs';
import { tickDictionary1 } from '../../src/files/tick-dictionary-1';
import { decodeTicks, tickLink } from '../../src/files/tick-link';
import { buildStep, type Tick } from '../../src/plan/build-log';
import type { TickList } from '../../src/plan/tick-list';
import { tickList } from '../arbitraries/tick';

const listOf = (ticks: Tick[]): TickList => ({
  format: 'voussoir-ticks',
  version: 1,
  planId: '4cbf54e8-8b0e-4f0c-9f5e-3a9a1c2d7e10',
  planName: 'Stage',
  ticks,
});

/** A day's work of one person: a tick every forty seconds or so. */
const dayOf = (count: number) =>
  listOf(
    Array.from({ length: count }, (_, place) => ({
      step: buildStep.options[place % 4]!,
      of: 'column',
      name: `A C${place + 1}`,
      done: true,
      who: 'Ada Lovelace',
      atMs: 1_764_000_000_000 + place * 41_937,
    })),
  );

const address = 'https://stage.example/plan/';
const encodeTicks = (list: TickList) => tickLink(address, list)?.replace(/^.*#ticks=/, '') ?? null;

const packed = (text: string, form = 1) =>
  packSigns(text, { form, dictionary: new TextEncoder().encode(tickDictionary1) });

test('tickLink leads to the page under its address, whatever stood behind it', () => {
  const link = tickLink(`${address}?x=1#page=log`, dayOf(1))!;
  expect(link).toMatch(/^https:\/\/stage\.example\/plan\/\?x=1#ticks=[\w-]+$/);
});

test('decodeTicks gives back what tickLink was given', () => {
  fc.assert(
    fc.property(tickList, (list) => {
      expect(decodeTicks(encodeTicks(list)!)).toEqual({ list });
    }),
  );
});

test('tickLink gives a short link for a few ticks and one that a message carries for a day of them', () => {
  expect(encodeTicks(dayOf(1))!.length).toBeLessThan(250);
  expect(encodeTicks(dayOf(300))!.length).toBeLessThan(8000);
});

test('tickLink gives no link where the ticks are more than one carries', () => {
  expect(encodeTicks(dayOf(10_000))).toBeNull();
});

test('decodeTicks names a link that was cut anywhere', () => {
  const signs = encodeTicks(dayOf(5))!;
  for (let end = 0; end < signs.length; end++) {
    expect(decodeTicks(signs.slice(0, end))).toMatchObject({ refused: 'cut' });
  }
});

test('decodeTicks names a link of which one sign changed, or reads the very list', () => {
  const list = dayOf(5);
  const signs = encodeTicks(list)!;
  fc.assert(
    fc.property(fc.nat(signs.length - 1), fc.constantFrom(...'AZaz09-_ .%'), (at, sign) => {
      fc.pre(signs[at] !== sign);
      expect(decodeTicks(signs.slice(0, at) + sign + signs.slice(at + 1))).toHaveProperty('refused');
    }),
    { numRuns: 500 },
  );
});

test.each([
  ['what is no JSON', packed('ticks'), 'not-json'],
  ['a plan', packed('{"format":"voussoir-plan"}'), 'not-ticks'],
  ['a list of a later version', packed('{"format":"voussoir-ticks","version":2}'), 'newer'],
  ['a list without its plan', packed('{"format":"voussoir-ticks","version":1,"ticks":[]}'), 'invalid'],
  ['signs of a later form', packed('{}', 2), 'newer-form'],
  ['signs that none are', 'ä', 'damaged'],
])('decodeTicks names %s', (_what, signs, refused) => {
  expect(decodeTicks(signs)).toMatchObject({ refused, sentence: expect.stringMatching(/^[A-Z].*\.$/) });
});

test('decodeTicks opens a link that was sent when the form began', () => {
  // One tick, sent on 25 November 2026.
  expect(decodeTicks(firstSent)).toEqual({
    list: {
      format: 'voussoir-ticks',
      version: 1,
      planId: 'plan-1',
      planName: 'First sent',
      ticks: [{ step: 'stands', of: 'column', name: 'A C38', done: true, who: 'Ada', atMs: 1_764_000_000_000 }],
    },
  });
});

test('tickDictionary1 is what it was when the first link was sent', () => {
  expect(createHash('sha256').update(tickDictionary1).digest('hex')).toBe(dictionaryDigest);
});

const firstSent = 'AQAAALcAAAAsIznsQQxw2CHFgFtmUXGJQnFqHsgrGHFB0JXGFlid6ZiSiOxSEwMYqI2tBQAxM4LH';
const dictionaryDigest = '16f948a5eca3d97dd53afe4695d5a4a5eb091a63092cc6e86155bb7d7f344e02';
