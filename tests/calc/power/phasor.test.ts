import { describe, expect, it } from 'vitest';
import electrical from '../../../fixtures/reference/electrical.json';
import {
  addPhasors,
  magnitude,
  type Phasor,
  phasor,
  subtractPhasors,
  turnPhasor,
} from '../../../src/calc/power/phasor';

const example = (name: string) => electrical.examples.find((e) => e.name.startsWith(name))!;
const angleDeg = (p: Phasor) => (Math.atan2(p.im, p.re) * 180) / Math.PI;

describe('phasor arithmetic', () => {
  it('phasor(5, 53.13) is 3 + 4j: the right triangle of 3, 4 and 5', () => {
    const p = phasor(5, (Math.atan2(4, 3) * 180) / Math.PI);
    expect(p.re).toBeCloseTo(3, 12);
    expect(p.im).toBeCloseTo(4, 12);
    expect(magnitude(p)).toBeCloseTo(5, 12);
  });

  it('addPhasors of three equal phasors a third of a turn apart is nothing', () => {
    const sum = [0, -120, 120].map((angle) => phasor(7, angle)).reduce(addPhasors);
    expect(magnitude(sum)).toBeLessThan(1e-12);
  });

  it('turnPhasor adds angles and keeps the magnitude', () => {
    const turned = turnPhasor(phasor(2, 20), phasor(1, 70));
    expect(magnitude(turned)).toBeCloseTo(2, 12);
    expect(angleDeg(turned)).toBeCloseTo(90, 10);
  });

  it('subtractPhasors gives the line currents of the unbalanced delta with given branch angles', () => {
    const printed = example('unbalanced delta').values as Record<'IA' | 'IB' | 'IC', { mag: number; deg: number }>;
    const [ab, bc, ca] = [phasor(105, 0), phasor(33, -120), phasor(33, 120)];
    const lines = { IA: subtractPhasors(ab, ca), IB: subtractPhasors(bc, ab), IC: subtractPhasors(ca, bc) };
    for (const name of ['IA', 'IB', 'IC'] as const) {
      expect(magnitude(lines[name])).toBeCloseTo(printed[name].mag, 2);
      expect(Math.cos(((angleDeg(lines[name]) - printed[name].deg) * Math.PI) / 180)).toBeCloseTo(1, 6);
    }
  });

  it('subtractPhasors gives the line currents of the 400 V delta of three impedances', () => {
    const { phase, line } = example('delta 400 V').values as Record<'phase' | 'line', { mag: number; deg: number }[]>;
    const branches = phase.map((p) => phasor(p.mag, p.deg));
    line.forEach((printed, i) => {
      const current = subtractPhasors(branches[i]!, branches[(i + 2) % 3]!);
      expect(magnitude(current)).toBeCloseTo(printed.mag, 2);
      expect(Math.cos(((angleDeg(current) - printed.deg) * Math.PI) / 180)).toBeCloseTo(1, 6);
    });
  });
});
