import { createHash } from 'node:crypto';
import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { namesOfEvaluation } from '../../src/calc/names/names-of-evaluation';
import { toBase64Url } from '../../src/files/base64url';
import { crc32 } from '../../src/files/crc32';
import { shareDictionary1 } from '../../src/files/share-dictionary-1';
import { decodeShare, encodeShare, sharedText, shareLink } from '../../src/files/share-link';
import { emptyBuildLog } from '../../src/plan/build-log';
import type { Plan } from '../../src/plan/plan';
import { anyPlan } from '../arbitraries/plan';
import { sampleNames, samplePlan } from '../arbitraries/sample-plans';

const bare = (plan: Plan): Plan => ({ ...plan, revisions: [], log: emptyBuildLog });
const reasons = [
  'cut',
  'damaged',
  'newer-form',
  'too-large',
  'empty',
  'cut-short',
  'too-deep',
  'not-json',
  'not-a-plan',
  'newer',
  'invalid',
];

/** A link of the present form made by another packer, as somebody else might make one. */
function linkOf(text: Uint8Array, change: { form?: number; length?: number; sum?: number } = {}): string {
  const packed = deflateRawSync(text, { dictionary: strToU8(shareDictionary1) });
  const bytes = new Uint8Array(9 + packed.length + 4);
  const head = new DataView(bytes.buffer);
  head.setUint8(0, change.form ?? 1);
  head.setUint32(1, change.length ?? text.length);
  head.setUint32(5, packed.length);
  bytes.set(packed, 9);
  head.setUint32(9 + packed.length, change.sum ?? crc32(bytes.subarray(0, -4)));
  return toBase64Url(bytes);
}

describe('encodeShare', () => {
  it('comes back as the same plan without the content of its revisions and its log', () => {
    fc.assert(
      fc.property(anyPlan(), (plan) => {
        expect(decodeShare(encodeShare(plan))).toEqual({ plan: bare(plan) });
      }),
      { numRuns: 25 },
    );
  });
  it.each(sampleNames)('carries the sample %s in signs that need no escape, few enough for a code', (name) => {
    const signs = encodeShare(samplePlan(name));
    expect(signs).toMatch(/^[A-Za-z0-9_-]+$/);
    // ISO/IEC 18004, table 7: 2,953 bytes at version 40-L, of which 200 are left for the address.
    expect(signs.length).toBeLessThan(2953 - 200);
    expect(decodeShare(signs)).toEqual({ plan: bare(samplePlan(name)) });
  });
  it('carries a sample of 1,800 panels with the names of an issued revision in a code', () => {
    const plan = samplePlan('horseshoe');
    const evaluation = createEvaluator().evaluate(plan);
    const issued = { ...plan, names: namesOfEvaluation(evaluation, plan.walls, null) };
    const signs = encodeShare(issued);
    expect(issued.names.ports.length + issued.names.circuits.length).toBeGreaterThan(200);
    expect(signs.length).toBeLessThan(2953 - 200);
    expect(decodeShare(signs)).toEqual({ plan: bare(issued) });
  });
  it('keeps names in force, so that a phone reads what stands on the cables', () => {
    const names = { processors: [], ports: [], circuits: [] };
    expect(decodeShare(encodeShare({ ...samplePlan('flat'), names }))).toMatchObject({ plan: { names } });
  });
  it('gives the same text for the same content, whatever was issued or ticked', () => {
    const plan = samplePlan('flat');
    const tick = { step: 'wired', of: 'port', name: '1A-01', done: true, who: 'a', atMs: 1 } as const;
    expect(sharedText({ ...plan, log: { ticks: [tick] } })).toBe(sharedText(plan));
  });
});

describe('decodeShare', () => {
  const signs = encodeShare(samplePlan('horseshoe'));

  it('reads what another packer packed against the dictionary', () => {
    const text = new TextEncoder().encode(sharedText(samplePlan('horseshoe')));
    expect(decodeShare(linkOf(text))).toEqual({ plan: bare(samplePlan('horseshoe')) });
  });
  it('names a link that was cut, wherever it was', () => {
    for (let end = 0; end < signs.length; end++) {
      expect(decodeShare(signs.slice(0, end))).toMatchObject({ refused: 'cut' });
    }
  });
  it('names a link of which one sign changed', () => {
    const alphabet = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_ .,%/ö'];
    fc.assert(
      fc.property(fc.nat(signs.length - 1), fc.constantFrom(...alphabet), (at, sign) => {
        fc.pre(signs[at] !== sign);
        const changed = decodeShare(signs.slice(0, at) + sign + signs.slice(at + 1));
        expect(reasons).toContain('refused' in changed ? changed.refused : 'a plan');
      }),
      { numRuns: 2000 },
    );
  });
  it('names whatever text stands there', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[A-Za-z0-9_-]{0,60}$/)), (text) => {
        const read = decodeShare(text);
        expect(reasons).toContain('refused' in read ? read.refused : 'a plan');
      }),
      { numRuns: 500 },
    );
  });
  it.each([
    ['more signs after the last', `${signs}AAAA`, 'damaged'],
    ['a stop after the last', `${signs}.`, 'damaged'],
    ['nothing', '', 'cut'],
    ['the form of a later program', linkOf(strToU8('{}'), { form: 2 }), 'newer-form'],
    ['a form that never was', linkOf(strToU8('{}'), { form: 0 }), 'damaged'],
    ['another text than its sum says', linkOf(strToU8('{}'), { sum: 1 }), 'damaged'],
    ['more text than it states', linkOf(strToU8('{"a":1}'), { length: 2 }), 'damaged'],
    ['less text than it states', linkOf(strToU8('{"a":1}'), { length: 20 }), 'damaged'],
    ['a text beyond all plans', linkOf(new Uint8Array(17 * 1024 * 1024).fill(32)), 'too-large'],
    ['half a sign of UTF-8', linkOf(Uint8Array.of(0x22, 0xc3, 0x22)), 'damaged'],
    ['what is no JSON', linkOf(strToU8('plan')), 'not-json'],
    ['what is no plan', linkOf(strToU8('{"a":1}')), 'not-a-plan'],
    [
      'lists that go together in no way',
      linkOf(strToU8('{"format":"voussoir-plan","version":3,"names":[[["1"],[]]]}')),
      'invalid',
    ],
    ['nesting without end', linkOf(strToU8('['.repeat(200_000))), 'too-deep'],
    ['a plan of a later program', linkOf(strToU8('{"format":"voussoir-plan","version":99}')), 'newer'],
    ['a plan with a field that cannot stand', linkOf(strToU8('{"format":"voussoir-plan","version":3}')), 'invalid'],
  ])('names %s', (_what, text, refused) => {
    expect(decodeShare(text)).toMatchObject({ refused });
  });
  it('opens links that were sent when the form began', () => {
    // A plan with one wall, sent on 25 November 2026.
    expect(decodeShare(firstSent)).toMatchObject({ plan: { name: 'First sent', walls: [{ letter: 'A' }] } });
  });
});

describe('shareLink', () => {
  it('puts the signs behind the address, and what to open at behind the signs', () => {
    expect(shareLink('https://plan.example/#plan=k', 'AQ-_z', null)).toBe('https://plan.example/#share=AQ-_z');
    expect(shareLink('https://plan.example/', 'AQ-_z', { kind: 'panel', name: 'A C38 R9' })).toBe(
      'https://plan.example/#share=AQ-_z&panel=A-C38-R9',
    );
  });
});

describe('shareDictionary1', () => {
  it('is what it was when the first link was sent', () => {
    expect(createHash('sha256').update(shareDictionary1).digest('hex')).toBe(dictionaryDigest);
  });
});

const firstSent =
  'AQAAKkkAAAB37dyxCQAgDADBod0fJIViIyRVitwWXxxfkbcHrN-ojGBdcaBI-dufd6Zv6Vv6lr6lb-lb-pa-pW_pW_qWvqVv6Vv6lr6lb-lb-pa-pW_pW_qWvqVv6Vv6lr6lb-lb-pa-pW_p23Z9i5KipCgpSoqSjpmWgqQvJN0jEzix';
const dictionaryDigest = 'eee13039245ba82fb0b00bf5e1223cd4fcf64ee3599afb5ad3b9e9b1f2aa135c';
