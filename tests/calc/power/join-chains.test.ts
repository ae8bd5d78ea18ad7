import { describe, expect, it } from 'vitest';
import { type Chain, joinChains } from '../../../src/calc/power/join-chains';
import { surfaceOf } from '../../arbitraries/power-surfaces';

// One row of eight: panel i stands in column i + 1.
const row = surfaceOf({ columns: 8, rows: 1 });
const chain = (...panels: number[]): Chain => ({ panels, currentA: panels.length, limitA: 5 });
const panelsOf = (chains: readonly Chain[]) => chains.map((c) => c.panels);

describe('joinChains', () => {
  it('joins loose pieces end to end, turning one round where that is needed', () => {
    expect(panelsOf(joinChains(row, [chain(1, 0), chain(2, 3)], [true, true]))).toEqual([[0, 1, 2, 3]]);
  });

  it('never joins above what the circuit carries', () => {
    expect(joinChains(row, [chain(0, 1, 2), chain(3, 4, 5)], [true, true])).toHaveLength(2);
  });

  it('keeps to the lesser limit of the two', () => {
    const weak = { ...chain(2, 3), limitA: 3 };
    expect(joinChains(row, [chain(0, 1), weak], [true, true])).toHaveLength(2);
  });

  it('leaves regular chains alone, but lets a piece join one', () => {
    expect(joinChains(row, [chain(0, 1), chain(2, 3)], [false, false])).toHaveLength(2);
    expect(panelsOf(joinChains(row, [chain(0, 1), chain(2)], [false, true]))).toEqual([[2, 1, 0]]);
  });

  it('takes the fullest partner that fits, so that the other stays free', () => {
    const joined = joinChains(row, [chain(0), chain(1), chain(2, 3, 4, 5)], [false, true, false]);
    expect(panelsOf(joined)).toEqual([[0], [1, 2, 3, 4, 5]]);
  });

  it('does not join pieces that only meet in their middle', () => {
    const lattice = surfaceOf({ columns: 3, rows: 2, holds: (c, r) => r === 1 || c === 2 }); // panels 0, 1 and 2, 3: a T
    const across = { panels: [0, 1, 3], currentA: 3, limitA: 9 };
    const stem = { panels: [2], currentA: 1, limitA: 9 };
    expect(joinChains(lattice, [across, stem], [true, true])).toHaveLength(2);
  });
});
