import { describe, expect, it } from 'vitest';
import { checkHeat } from '../../../src/calc/heat/check-heat';
import { computeHeat } from '../../../src/calc/heat/compute-heat';
import { heatInputs, statedHall } from '../../arbitraries/heat-inputs';

const check = (coolingW: number | null, hall = heatInputs().hall) =>
  checkHeat({ coolingW, heat: heatInputs().heat }, computeHeat(heatInputs({ hall })));

describe('checkHeat', () => {
  it('heat.cooling: not stated is an offer without a limit', () => {
    expect(check(null)[0]).toMatchObject({ id: 'heat.cooling', severity: 'offer', measured: 61_300, limit: null });
  });

  it('heat.cooling: enough for 61.3 kW of white passes, for 31.06 kW of a typical picture is a watch, less stops', () => {
    const severity = (coolingW: number) => check(coolingW)[0]!.severity;
    expect(severity(61_300)).toBe('pass');
    expect(severity(61_299)).toBe('watch');
    expect(severity(31_061)).toBe('watch');
    expect(severity(31_059)).toBe('stop');
  });

  it('heat.warm-up: says what is missing, or how long the air holds out', () => {
    expect(check(null)[1]).toMatchObject({ measured: null, where: [{ kind: 'field', name: 'wish.hall' }] });
    expect(check(null, statedHall)[1]).toMatchObject({
      severity: 'offer',
      measured: expect.closeTo(20.48, 2),
      values: { rise: { value: 8, unit: 'K' } },
    });
  });

  it('says nothing where nothing gives heat', () => {
    const heat = { people: 0, lampsW: 0, airRiseK: 10, roomRiseK: 8 };
    expect(checkHeat({ coolingW: null, heat }, computeHeat(heatInputs({ heat, loads: [], signalW: 0 })))).toEqual([]);
  });

  it('has a name for every figure that a sentence shows', () => {
    for (const { sentence, values } of [...check(null), ...check(1, statedHall), ...check(40_000)]) {
      const names = [...sentence.matchAll(/\{(\w+)\}/g)].map((match) => match[1]!);
      expect(names.every((name) => ['measured', 'limit'].includes(name) || values?.[name] !== undefined)).toBe(true);
    }
  });
});
