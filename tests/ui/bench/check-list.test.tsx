import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { Check, Severity } from '../../../src/calc/chapter';
import { CheckList } from '../../../src/ui/bench/CheckList';
import { BenchContext } from '../../../src/ui/state/bench-context';
import { fakeBench } from '../state/fake-bench';

const check = (id: string, severity: Severity, more: Partial<Check> = {}): Check => ({
  id,
  chapter: 'runs',
  severity,
  measured: 139,
  limit: 125,
  unit: 'count',
  where: [],
  sentence: `${id} stands.`,
  ...more,
});

const markup = (checks: readonly Check[]) =>
  renderToStaticMarkup(
    <BenchContext value={fakeBench()}>
      <CheckList checks={checks} />
    </BenchContext>,
  );

test('checks stand worst first', () => {
  const text = markup([check('one', 'pass'), check('two', 'watch'), check('three', 'offer'), check('four', 'stop')]);
  const order = ['four', 'two', 'three', 'one'].map((id) => text.indexOf(`${id} stands`));
  expect(order).toEqual(order.toSorted((a, b) => a - b));
});

test('figures stand beside a sentence that does not say them itself', () => {
  expect(markup([check('one', 'stop')])).toContain('139 / 125');
  expect(markup([check('one', 'stop', { limit: null })])).toContain('139 / not stated');
  expect(markup([check('one', 'stop', { sentence: '{measured} of {limit}.' })])).not.toContain('139 / 125');
  expect(markup([check('one', 'stop', { sentence: '{measured} of {limit}.' })])).toContain('139 of 125.');
});

test('many passes fold, a few stand', () => {
  const passes = (count: number) => Array.from({ length: count }, (_, i) => check(`p${i}`, 'pass'));
  expect(markup(passes(6))).not.toContain('<details');
  expect(markup(passes(7))).toContain('7 checks pass');
});

test('no check at all is said', () => {
  expect(markup([])).toContain('Nothing to check yet');
});
