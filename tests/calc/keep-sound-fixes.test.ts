import { describe, expect, it } from 'vitest';
import type { Check, Severity } from '../../src/calc/chapter';
import { keepSoundFixes } from '../../src/calc/keep-sound-fixes';
import { setFieldsFix } from '../../src/calc/set-fields-fix';

const check = (id: string, severity: Severity, fixed = false): Check => ({
  id,
  chapter: 'walls',
  severity,
  measured: 1,
  limit: 0,
  unit: 'count',
  where: [],
  sentence: '',
  ...(fixed && { fix: setFieldsFix('Mend', 'mended', []) }),
});
const kept = (before: Check[], after: Check[]) => keepSoundFixes(before, () => after)[0]!.fix !== undefined;

describe('keepSoundFixes', () => {
  it('keeps a fix that clears its check', () => {
    expect(kept([check('a', 'stop', true)], [check('a', 'pass')])).toBe(true);
    expect(kept([check('a', 'watch', true)], [])).toBe(true);
  });

  it('drops a fix that leaves its check standing', () => {
    expect(kept([check('a', 'stop', true)], [check('a', 'stop')])).toBe(false);
    expect(kept([check('a', 'stop', true)], [check('a', 'watch')])).toBe(false);
  });

  it('drops a fix that stops something else, not one beside what stopped before', () => {
    expect(kept([check('a', 'stop', true)], [check('b', 'stop')])).toBe(false);
    expect(kept([check('a', 'stop', true), check('b', 'pass')], [check('b', 'stop')])).toBe(false);
    expect(kept([check('a', 'stop', true), check('b', 'stop')], [check('b', 'stop')])).toBe(true);
    expect(kept([check('a', 'stop', true)], [check('b', 'watch')])).toBe(true);
  });

  it('tries only checks that have a fix', () => {
    const plain = check('a', 'stop');
    const never = () => {
      throw new Error('tried');
    };
    expect(keepSoundFixes([plain], never)).toEqual([plain]);
  });
});
