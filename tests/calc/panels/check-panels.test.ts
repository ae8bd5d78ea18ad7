import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPanels } from '../../../src/calc/panels/check-panels';
import type { Panel } from '../../../src/plan/panel';
import { panelArbitrary } from '../../arbitraries/panel';
import { expectFinite } from '../surfaces/expect-finite';
import { plainPanel } from './plain-panel';

const processors = [{ id: 'proc' }];
const check = (what: string, panels: readonly Panel[], level = 0.25) =>
  checkPanels(panels, processors, level).find((one) => one.id === `panels.${what}`)!;
const severities = (panels: readonly Panel[]) =>
  Object.fromEntries(checkPanels(panels, processors, 0.25).map((one) => [one.id.replace('panels.', ''), one.severity]));
const setFields = (panels: readonly Panel[], fix: NonNullable<ReturnType<typeof check>['fix']>) => {
  const next = structuredClone(panels) as unknown as Record<string, never>[];
  const { args } = fix.command as unknown as { args: { fields: { path: string[]; value: never }[] } };
  for (const { path, value } of args.fields) {
    let holder = next as never as Record<string, never>;
    for (const key of path.slice(2, -1)) holder = holder[key]!;
    holder[path.at(-1)!] = value;
  }
  return next as never as Panel[];
};

describe('checkPanels', () => {
  it('passes a sheet that agrees with itself', () => {
    expect(severities([plainPanel()])).toEqual({
      pitch: 'pass',
      'voltage-range': 'pass',
      typical: 'pass',
      'typical-level': 'pass',
      lock: 'pass',
      'driven-by': 'pass',
      unusual: 'pass',
    });
    expect(new Set(Object.values(severities([])))).toEqual(new Set(['pass']));
  });

  it('watches pitches that differ by more than 2 %, worst first', () => {
    const within = plainPanel('within', { pixels: { wide: 200, high: 196 } });
    const beyond = plainPanel('beyond', { pixels: { wide: 200, high: 195 } });
    const worst = plainPanel('worst', { pixels: { wide: 200, high: 100 } });
    // 200/196 - 1 = 2.04 %; 203 pixels: 1.5 %.
    expect(check('pitch', [plainPanel('a', { pixels: { wide: 203, high: 200 } })]).severity).toBe('pass');
    const found = check('pitch', [within, beyond, worst]);
    expect(found).toMatchObject({ severity: 'watch', measured: 1, limit: 0.02, unit: 'share' });
    expect(found.where.slice(0, 2)).toEqual([
      { kind: 'item', name: 'Panel worst' },
      { kind: 'field', name: 'catalogue.panels[2].pixels' },
    ]);
  });

  it('stops at a voltage range upside down, and swaps it', () => {
    const panels = [plainPanel('a'), plainPanel('b', { power: { lowestV: 240, highestV: 100 } })];
    const found = check('voltage-range', panels);
    expect(found).toMatchObject({ severity: 'stop', measured: 1, limit: 0 });
    const repaired = setFields(panels, found.fix!);
    expect(repaired[1]!.power).toMatchObject({ lowestV: 100, highestV: 240 });
    expect(check('voltage-range', repaired).severity).toBe('pass');
  });

  it('watches typical power outside black to full white', () => {
    expect(check('typical', [plainPanel('a', { power: { typicalW: 160 } })])).toMatchObject({
      severity: 'watch',
      measured: 10,
    });
    expect(check('typical', [plainPanel('a', { power: { typicalW: 20 } })])).toMatchObject({ measured: 10 });
    // Black 200 above white 150 is 50 out, though typical 180 is out by 30 only.
    expect(check('typical', [plainPanel('a', { power: { blackW: 200, typicalW: 180 } })])).toMatchObject({
      measured: 50,
    });
  });

  it('offers a look where the sheet’s typical power is not what the picture level gives', () => {
    // 30 + 0.25 x 120 = 60 W as the sheet says; at level 0.5 it is 90 W, half as much again.
    expect(check('typical-level', [plainPanel()], 0.25).severity).toBe('pass');
    const found = check('typical-level', [plainPanel()], 0.5);
    expect(found).toMatchObject({ severity: 'offer', measured: 90, limit: 60, unit: 'W' });
    expect(found.where.at(-1)).toEqual({ kind: 'field', name: 'power.typicalLevel' });
  });

  it('reads a sheet without joint angles as not stated', () => {
    const found = check('lock', [plainPanel('a', { lock: { stepsDeg: [] } })]);
    expect(found).toMatchObject({ severity: 'offer', limit: null, measured: 1 });
  });

  it('watches panels that no processor of the plan drives, and lets be what else their sheets name', () => {
    const pair = (processorId: string) => ({ processorId, portPixels: null });
    const drivenBy = (...ids: string[]) => plainPanel(ids.join('-') || 'none', { data: { drivenBy: ids.map(pair) } });
    expect(check('driven-by', [drivenBy('gone', 'proc')]).severity).toBe('pass');
    const found = check('driven-by', [drivenBy('gone', 'lost'), drivenBy(), drivenBy('proc')]);
    expect(found).toMatchObject({ severity: 'watch', measured: 2, limit: 0 });
    expect(found.where[1]).toEqual({ kind: 'field', name: 'catalogue.panels[0].data.drivenBy' });
  });

  it('offers a second look at a figure that slipped a digit', () => {
    const found = check('unusual', [plainPanel('a', { massKg: 80 })]);
    expect(found).toMatchObject({ severity: 'offer', measured: 1, limit: null });
    expect(found.where).toEqual([{ kind: 'field', name: 'catalogue.panels[0].massKg' }]);
  });

  it('names at most 50 places', () => {
    const many = Array.from({ length: 60 }, (_, i) =>
      plainPanel(`p${i}`, { pixels: { wide: 200, high: 100 }, massKg: 0 }),
    );
    for (const found of checkPanels(many, [], 0.9)) expect(found.where.length, found.id).toBeLessThanOrEqual(50);
  });

  it('gives finite figures for any panels that the schema accepts', () => {
    fc.assert(
      fc.property(
        fc.array(panelArbitrary(), { maxLength: 4 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (panels, level) => {
          for (const found of checkPanels(panels, processors, level)) expectFinite(found, found.id);
        },
      ),
    );
  });
});
