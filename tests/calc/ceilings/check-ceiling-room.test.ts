import { describe, expect, it } from 'vitest';
import { checkCeilingRoom } from '../../../src/calc/ceilings/check-ceiling-room';
import type { Ceiling } from '../../../src/plan/ceiling';
import { judgeCeiling } from './judge-ceiling';
import { plainCeiling } from './plain-ceiling';

const hall = { lengthMm: null, widthMm: null, clearHeightMm: 8000, walkwayMm: 0 };
const vehicle = { widthMm: null, heightMm: 4000 };
const check = (
  height: Partial<Ceiling['height']>,
  inHall = hall,
  driven: { widthMm: null; heightMm: number | null } = vehicle,
) => checkCeilingRoom(judgeCeiling(plainCeiling({ height: { ...plainCeiling().height, ...height } })), inHall, driven);
const find = (checks: ReturnType<typeof check>, what: string) => checks.find((one) => one.id === `ceilings.${what}.B`);

describe('checkCeilingRoom', () => {
  it('passes a travel in order, clear of roof, people and lorry', () => {
    const found = check({});
    expect(found.map((one) => one.severity)).toEqual(['pass', 'pass', 'pass']);
    // 7000 at its highest and 80 of panel.
    expect(find(found, 'clear-height')).toMatchObject({ measured: 7080, limit: 8000 });
  });

  it('stops at a trim outside the travel, and stretches the travel to it', () => {
    const found = find(check({ trimMm: 7500 }), 'travel')!;
    expect(found).toMatchObject({ severity: 'stop', measured: 7500, limit: 7000 });
    expect(found.fix!.command.args).toMatchObject({
      fields: [
        { path: ['ceilings', 0, 'height', 'lowestMm'], value: 4000 },
        { path: ['ceilings', 0, 'height', 'highestMm'], value: 7500 },
      ],
    });
    expect(find(check({ trimMm: 3000 }), 'travel')).toMatchObject({ severity: 'stop', limit: 4000 });
  });

  it('stops above the clear height, panels included, and lowers the travel', () => {
    const found = find(check({ highestMm: 7920.001 }), 'clear-height')!;
    expect(found).toMatchObject({ severity: 'stop', measured: 8000.001 });
    expect(found.fix!.command.args).toMatchObject({
      fields: [{ value: 6000 }, { value: 4000 }, { path: ['ceilings', 0, 'height', 'highestMm'], value: 7920 }],
    });
    expect(find(check({ highestMm: 7920 }), 'clear-height')!.severity).toBe('pass');
  });

  it('reads a hall of no stated height as not stated', () => {
    const open = { lengthMm: null, widthMm: null, clearHeightMm: null, walkwayMm: 0 } as never;
    expect(find(check({}, open), 'clear-height')).toMatchObject({ severity: 'offer', limit: null });
  });

  it('watches a ceiling that comes down on people’s heads', () => {
    expect(find(check({ lowestMm: 2400 }), 'low-trim')).toMatchObject({
      severity: 'watch',
      measured: 2400,
      limit: 2500,
    });
    expect(find(check({ lowestMm: 2500 }), 'low-trim')).toBeUndefined();
  });

  it('watches a ceiling that the lorry does not pass under', () => {
    expect(find(check({ highestMm: 6000 }, hall, { widthMm: null, heightMm: 6500 }), 'vehicle')).toMatchObject({
      severity: 'watch',
      measured: 6000,
      limit: 6500,
    });
    expect(find(check({}, hall, { widthMm: null, heightMm: null }), 'vehicle')).toBeUndefined();
  });
});
