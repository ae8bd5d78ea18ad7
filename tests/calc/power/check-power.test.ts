import { describe, expect, it } from 'vitest';
import type { Check } from '../../../src/calc/chapter';
import { checkPower } from '../../../src/calc/power/check-power';
import { computePower, type PowerInputs } from '../../../src/calc/power/compute-power';
import type { Power } from '../../../src/plan/power';
import { distroOf, powerOf, powerPanel, surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

const inputsOf = (changes: Partial<PowerInputs> = {}, power: Partial<Power> = {}): PowerInputs => ({
  power: powerOf({ distroId: 'distro', ...power }),
  distros: [distroOf()],
  panels: [powerPanel('p')],
  surfaces: surfaceSet(surfaceOf({ columns: 36, rows: 10 })),
  signalLoadW: 0,
  ...changes,
});
const check = (inputs: PowerInputs) => checkPower(inputs, computePower(inputs));
const find = (checks: readonly Check[], id: string) => checks.find((c) => c.id === id);
const one = (id: string, changes: Partial<PowerInputs> = {}, power: Partial<Power> = {}) =>
  find(check(inputsOf(changes, power)), id);
const point = (id: string, legA: number) => ({ id, name: id, legA });
/** The inputs after a fix that sets one field of the power group. */
function fixed(inputs: PowerInputs, from: Check): PowerInputs {
  if (from.fix?.command.name !== 'set-fields') throw new Error('no fix that sets a field');
  const { path, value } = from.fix.command.args.fields[0]!;
  expect(path[0]).toBe('power');
  return { ...inputs, power: { ...inputs.power, [path[1]!]: value } };
}

describe('checkPower', () => {
  it('has unique ids, and nothing stops on a plain wall', () => {
    const checks = check(inputsOf());
    expect(new Set(checks.map((c) => c.id)).size).toBe(checks.length);
    expect(checks.filter((c) => c.severity === 'stop' || c.severity === 'watch')).toEqual([]);
  });

  it('power.circuit states the fullest circuit against 0.8 of 16 A (NEC 210.20(A))', () => {
    // By hand: 10 panels of 0.6865 A.
    const found = one('power.circuit');
    expect(found).toMatchObject({ severity: 'pass', limit: 12.8, unit: 'A' });
    expect(found!.measured).toBeCloseTo(6.865, 3);
    const uneven = surfaceSet(surfaceOf({ columns: 3, rows: 10, holds: (c, r) => c === 3 || r > 1 }));
    expect(one('power.circuit', { surfaces: uneven }, { circuit: { ratedA: 9, usableShare: 0.8 } })).toMatchObject({
      measured: expect.closeTo(6.865, 3), // two columns of 9, one of 10
      where: [{ kind: 'circuit', name: 'circuit D1-3' }],
    });
  });

  it('power.circuit stops where one panel alone is too much, and names it', () => {
    const found = one('power.circuit', { panels: [powerPanel('p', { fullWhiteW: 3000 })] });
    expect(found).toMatchObject({ severity: 'stop', limit: 12.8, where: [{ kind: 'item', name: 'Panel p' }] });
    expect(found!.measured).toBeCloseTo(3000 / 230 / 0.95, 9);
  });

  it('power.circuit measures a panel against its own power chain where that carries less', () => {
    const panels = [powerPanel('p', { chainA: 0.5 })];
    expect(one('power.circuit', { panels })).toMatchObject({ severity: 'stop', limit: 0.5 });
  });

  it('power.panel-unknown stops and says no leg figure', () => {
    const checks = check(inputsOf({ panels: [] }));
    expect(find(checks, 'power.panel-unknown')).toMatchObject({ severity: 'stop', measured: null });
    expect(find(checks, 'power.service')).toBeUndefined();
    expect(find(checks, 'power.balance')).toBeUndefined();
  });

  it('power.usable-share offers the NEC share only where the plan takes more', () => {
    const circuit = { ratedA: 16, usableShare: 1 };
    expect(one('power.usable-share', {}, { circuit })).toMatchObject({ severity: 'offer', measured: 1, limit: 0.8 });
    expect(one('power.usable-share')).toBeUndefined();
  });

  it('power.distro: none chosen is an offer, one that is gone a stop; the fix clears both', () => {
    for (const [distroId, severity] of [
      [null, 'offer'],
      ['gone', 'stop'],
    ] as const) {
      const inputs = inputsOf({}, { distroId });
      const found = find(check(inputs), 'power.distro')!;
      expect(found).toMatchObject({ severity, measured: null, limit: null });
      const after = check(fixed(inputs, found));
      expect(find(after, 'power.distro')).toBeUndefined();
      expect(after.some((c) => c.severity === 'stop')).toBe(false);
    }
  });

  it('power.distro offers no distro too small for a circuit', () => {
    expect(one('power.distro', { distros: [distroOf({ legA: 10 })] }, { distroId: null })!.fix).toBeUndefined();
  });

  it('power.distro-circuits and power.distro-leg state the fullest distro', () => {
    const checks = check(inputsOf());
    expect(find(checks, 'power.distro-circuits')).toMatchObject({ severity: 'pass', measured: 36, limit: 48 });
    expect(find(checks, 'power.distro-leg')).toMatchObject({ severity: 'pass', limit: 320 });
    expect(find(checks, 'power.distro-leg')!.measured).toBeCloseTo(82.38, 2); // 54 kW / (3 x 230 x 0.95)
  });

  it('power.distro-leg stops where one circuit is more than a leg of the distro carries', () => {
    const found = one('power.distro-leg', { distros: [distroOf({ legA: 8 })] });
    expect(found).toMatchObject({ severity: 'stop', limit: 6.4 });
    expect(found!.where).toHaveLength(36);
  });

  it('power.service: not stated is an offer without a limit; 103 A a leg are enough, 102 A are not', () => {
    expect(one('power.service')).toMatchObject({ severity: 'offer', limit: null });
    expect(one('power.service', {}, { servicePoints: [point('a', 103)] })).toMatchObject({ severity: 'pass' });
    expect(one('power.service', {}, { servicePoints: [point('a', 102)] })).toMatchObject({ severity: 'stop' });
  });

  it('power.service-points stops where a distro is more than the largest point', () => {
    const two = { servicePoints: [point('a', 60), point('b', 50)] };
    const found = one('power.service-points', {}, two);
    expect(found).toMatchObject({ severity: 'stop', limit: 48 });
    expect(one('power.service-points', { distros: [distroOf({ circuits: 18 })] }, two)).toMatchObject({
      severity: 'pass',
    });
  });

  it('power.balance passes where legs differ by no more than a circuit', () => {
    const surfaces = surfaceSet(surfaceOf({ columns: 37, rows: 10 }));
    const found = one('power.balance', { surfaces })!;
    expect(found.severity).toBe('pass');
    expect(found.measured).toBeCloseTo(6.865, 3); // 13 circuits on L1, 12 on the others
  });

  it('power.balance watches legs that the supply cannot even out', () => {
    const inputs = inputsOf();
    const results = computePower(inputs);
    const legs = results.legs.map((l) => (l.leg === 'L1' ? { ...l, currentA: l.currentA + 20 } : l));
    const found = find(checkPower(inputs, { ...results, legs }), 'power.balance')!;
    expect(found).toMatchObject({ severity: 'watch', where: [{ kind: 'leg', name: 'leg L1' }] });
  });

  it('power.voltage-high: 277 V is above a sheet of 264 V, and 480 V between legs is no help', () => {
    const panels = [powerPanel('p', { highestV: 264 })];
    const supply = { kind: 'wye', legToNeutralV: 277, lowestShare: 0.95 } as const;
    const found = one('power.voltage-high', { panels }, { supply });
    expect(found).toMatchObject({ severity: 'stop', measured: 277, limit: 264 });
    expect(found!.fix).toBeUndefined();
  });

  it('power.voltage-high: 400 V between legs is put right by feeding to neutral', () => {
    const inputs = inputsOf({}, { connection: 'leg-to-leg' });
    const found = find(check(inputs), 'power.voltage-high')!;
    expect(found.severity).toBe('stop');
    const after = check(fixed(inputs, found));
    expect(find(after, 'power.voltage-high')).toMatchObject({ severity: 'pass' });
    expect(after.some((c) => c.severity === 'stop')).toBe(false);
  });

  it('power.voltage-low: the low end of the range counts, not nominal; feeding from leg to leg puts it right', () => {
    const panels = [powerPanel('p', { lowestV: 110, highestV: 240 })];
    const supply = { kind: 'wye', legToNeutralV: 120, lowestShare: 0.9 } as const;
    const inputs = inputsOf({ panels }, { supply });
    const found = find(check(inputs), 'power.voltage-low')!;
    expect(found).toMatchObject({ severity: 'stop', measured: 108, limit: 110 });
    expect(find(check(fixed(inputs, found)), 'power.voltage-low')).toMatchObject({ severity: 'pass' });
  });

  it('power.triplen-neutral: an offer up to sqrt 3 of the leg; a watch without power-factor correction; none leg to leg', () => {
    const found = one('power.triplen-neutral')!;
    expect(found).toMatchObject({ severity: 'offer', limit: null });
    expect(found.measured).toBeCloseTo(142.69, 2); // 1.73205 x 82.380
    expect(one('power.triplen-neutral', { panels: [powerPanel('p', { powerFactor: 0.65 })] })).toMatchObject({
      severity: 'watch',
    });
    const panels = [powerPanel('p', { highestV: 480 })];
    expect(one('power.triplen-neutral', { panels }, { connection: 'leg-to-leg' })).toBeUndefined();
  });

  it('power.leakage: 1 mA a panel lets 9 behind 30 mA (IEC 60364-5-53, from memory); more never marks the chapter', () => {
    const leaking = (leakageMa: number) => one('power.leakage', { panels: [powerPanel('p', { leakageMa })] });
    expect(leaking(1)).toMatchObject({ severity: 'offer', measured: 10, limit: 9 });
    expect(leaking(0.9)).toMatchObject({ severity: 'pass', measured: 10, limit: 10 });
    expect(leaking(0)).toBeUndefined();
    expect(one('power.leakage')).toMatchObject({ severity: 'offer', measured: null, limit: null });
  });

  it('power.inrush: peaks of the panels of one circuit added up, no limit stated', () => {
    const found = one('power.inrush', { panels: [powerPanel('p', { inrushA: 15 })] });
    expect(found).toMatchObject({ severity: 'offer', measured: 150, limit: null });
    expect(one('power.inrush')).toBeUndefined();
  });

  it('of an empty stage says nothing of circuits and does not fail', () => {
    const checks = check(inputsOf({ surfaces: surfaceSet() }));
    expect(checks.map((c) => c.id)).toEqual(['power.service']);
  });

  it('never words a result as safe', () => {
    const words = check(
      inputsOf({ panels: [powerPanel('p', { inrushA: 5, leakageMa: 1 })] }, { servicePoints: [point('a', 400)] }),
    );
    expect(words.some((c) => /\bsafe/i.test(c.sentence))).toBe(false);
  });
});
