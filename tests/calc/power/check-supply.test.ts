import { describe, expect, it } from 'vitest';
import { checkPower } from '../../../src/calc/power/check-power';
import { computePower } from '../../../src/calc/power/compute-power';
import { checkOf, powerCheck, powerInputs, servicePoint } from '../../arbitraries/power-inputs';
import { distroOf, surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

describe('checkSupply', () => {
  it('power.service: not stated is an offer without a limit; 103 A a leg are enough, 102 A are not', () => {
    expect(powerCheck('power.service')).toMatchObject({ severity: 'offer', limit: null });
    expect(powerCheck('power.service', {}, { servicePoints: [servicePoint('a', 103)] })).toMatchObject({
      severity: 'pass',
    });
    expect(powerCheck('power.service', {}, { servicePoints: [servicePoint('a', 102)] })).toMatchObject({
      severity: 'stop',
    });
  });

  it('power.service-points stops where a distro is more than the largest point', () => {
    const two = { servicePoints: [servicePoint('a', 60), servicePoint('b', 50)] };
    const found = powerCheck('power.service-points', {}, two);
    expect(found).toMatchObject({ severity: 'stop', limit: 48 });
  });

  it('power.service-points stops where distros that fit one by one cannot be shared out', () => {
    // By hand: two distros of 18 circuits draw 41.2 A a leg each. Usable are 48 A and 40 A: 82.4 A of 88 A in all, yet the
    // second distro has no point.
    const distros = [distroOf({ circuits: 18 })];
    const found = powerCheck(
      'power.service-points',
      { distros },
      { servicePoints: [servicePoint('a', 60), servicePoint('b', 50)] },
    );
    expect(found).toMatchObject({ severity: 'stop', measured: expect.closeTo(82.38, 2), limit: expect.closeTo(88, 9) });
  });

  it('power.service-points passes with the point that is used most', () => {
    const distros = [distroOf({ circuits: 18 })];
    const found = powerCheck(
      'power.service-points',
      { distros },
      { servicePoints: [servicePoint('a', 60), servicePoint('b', 52)] },
    );
    expect(found).toMatchObject({
      severity: 'pass',
      measured: expect.closeTo(41.19, 2),
      limit: expect.closeTo(41.6, 9),
    });
    expect(found!.where).toEqual([{ kind: 'distro', name: 'distro 2' }]);
    expect(found!.sentence).toContain('the fullest, b, then');
  });

  it('power.service-points says nothing where all points together are too little, which power.service says', () => {
    const few = { servicePoints: [servicePoint('a', 52), servicePoint('b', 40)] };
    const distros = [distroOf({ circuits: 18 })];
    expect(powerCheck('power.service-points', { distros }, few)).toBeUndefined();
    expect(powerCheck('power.service', { distros }, few)).toMatchObject({ severity: 'stop' });
  });

  it('power.balance passes where legs differ by no more than a circuit', () => {
    const surfaces = surfaceSet(surfaceOf({ columns: 37, rows: 10 }));
    const found = powerCheck('power.balance', { surfaces })!;
    expect(found.severity).toBe('pass');
    expect(found.measured).toBeCloseTo(6.865, 3); // 13 circuits on L1, 12 on the others
  });

  it('power.balance watches legs that the supply cannot even out', () => {
    const inputs = powerInputs();
    const results = computePower(inputs);
    const legs = results.legs.map((l) => (l.leg === 'L1' ? { ...l, currentA: l.currentA + 20 } : l));
    const found = checkOf(checkPower(inputs, { ...results, legs }), 'power.balance')!;
    expect(found).toMatchObject({ severity: 'watch', where: [{ kind: 'leg', name: 'leg L1' }] });
  });
});
