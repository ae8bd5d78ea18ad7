import { describe, expect, test } from 'vitest';
import { checkSync } from '../../../src/calc/nodes/check-sync';
import type { Sync } from '../../../src/plan/sync';
import { plainMode } from './plain-nodes';

const at = (...rates: number[]) => rates.map((frames, i) => ({ letter: 'ABC'.charAt(i), mode: plainMode(frames) }));
const of = (reference: Sync['reference'], surfaces: ReturnType<typeof at>, id: string) =>
  checkSync(reference, surfaces).find((check) => check.id === id);

describe('checkSync', () => {
  test('passes rates that are whole multiples of the slowest', () => {
    expect(of('ptp', at(24, 48, 24), 'nodes.sync-rates')).toMatchObject({ severity: 'pass', limit: 24 });
  });

  test('watches rates that never keep step on one sync', () => {
    expect(of('ptp', at(25, 24, 48), 'nodes.sync-rates')).toMatchObject({
      severity: 'watch',
      measured: 25,
      limit: 24,
      where: [{ kind: 'surface', name: 'A' }],
    });
    expect(of('ptp', at(60, 24), 'nodes.sync-rates')?.severity).toBe('watch');
  });

  test('holds the reference against the rate, and offers one that beats in step', () => {
    // Black burst beats at 25 and 30000/1001: 50 is a multiple of 25, 24 and 60 of neither.
    expect(of('black-burst', at(50), 'nodes.sync-reference')?.severity).toBe('pass');
    const film = of('black-burst', at(24), 'nodes.sync-reference');
    expect(film).toMatchObject({ severity: 'watch', measured: 24 });
    expect(film?.fix?.command.args).toMatchObject({ fields: [{ path: ['sync', 'reference'], value: 'tri-level' }] });
    // No tri-level format has 37 frames a second.
    const odd = of('tri-level', at(37), 'nodes.sync-reference');
    expect(odd?.fix?.command.args).toMatchObject({ fields: [{ path: ['sync', 'reference'], value: 'ptp' }] });
    expect(of('ptp', at(37), 'nodes.sync-reference')?.severity).toBe('pass');
  });

  test('says nothing where no surface is fed', () => {
    expect(checkSync('ptp', [])).toEqual([]);
  });
});
