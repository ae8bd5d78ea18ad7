import { describe, expect, test } from 'vitest';
import { type CaseGroup, readOptima } from './wiring-optima';
import { worseThanProgram } from './worse-than-program';

// Source of every optimum: fixtures/reference/wiring-optima.json, computed by HiGHS from an integer program.
// Zones of up to 7 x 7 and the widest ones have test files of their own, so that none takes long.

const middle = readOptima().groups.slice(1, -1);
const groupOf = ({ columns, rows }: CaseGroup) => `${columns.join(' to ')} columns of ${rows.join(' to ')} rows`;

describe('chooseWiring with fewest ports first is never worse than the integer program', () => {
  test.each(middle.map((group) => [group.many, groupOf(group), group] as const))(
    'on %i random zones of %s',
    { timeout: 60_000 },
    (_many, _size, { zones }) => {
      const { worse, proved } = worseThanProgram(zones);
      expect(worse).toEqual([]);
      expect(proved).toBeGreaterThan(0.9 * zones.length);
    },
  );
});
