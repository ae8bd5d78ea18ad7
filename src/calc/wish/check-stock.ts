import type { Stock } from '../../plan/catalogue';
import type { Check, Place } from '../chapter';
import type { MaterialLine } from '../materials/material-result';

/** One item against what is owned and can be had. Spares are the bill's. */
function checkItem(line: MaterialLine, owned: number | null, obtainable: number | null): Check {
  const count = (value: number) => ({ value, unit: 'count' as const });
  const common = {
    id: `wish.stock.${line.itemId}`,
    chapter: 'wish' as const,
    measured: line.needed,
    unit: 'count' as const,
    where: [{ kind: 'item' as const, name: line.name }],
    values: {
      ...(owned === null ? {} : { owned: count(owned), short: count(line.needed - owned) }),
      ...(obtainable === null ? {} : { obtainable: count(obtainable) }),
    },
  };
  if (owned !== null && line.needed <= owned) {
    return { ...common, severity: 'pass', limit: owned, sentence: `${line.name}: {measured} needed, {owned} owned.` };
  }
  if (owned === null) {
    const known = obtainable === null ? 'nothing of it is stated' : 'how many are owned is not stated';
    return { ...common, severity: 'offer', limit: null, sentence: `${line.name}: {measured} needed, ${known}.` };
  }
  if (obtainable === null) {
    const sentence = `${line.name}: {measured} needed, {owned} owned; whether {short} more can be had is not stated.`;
    return { ...common, severity: 'watch', limit: owned, sentence };
  }
  const limit = owned + obtainable;
  return line.needed <= limit
    ? {
        ...common,
        severity: 'watch',
        limit,
        sentence: `${line.name}: {measured} needed, {owned} owned; {short} of {obtainable} that can be had must be got.`,
      }
    : {
        ...common,
        severity: 'stop',
        limit,
        sentence: `${line.name}: {measured} needed, more than the {limit} there can be: {owned} owned and {obtainable} that can be had.`,
      };
}

/**
 * Needed counts against what is owned and can be had, one check for each item of which somebody stated something. What nobody
 * stated is gathered in one offer, cables and the network left out.
 */
export function checkStock(stock: readonly Stock[], lines: readonly MaterialLine[]): Check[] {
  const stated = new Map(stock.map((entry) => [entry.itemId, entry]));
  const items = lines.filter((line) => line.group !== 'cases');
  const checks = items.flatMap((line) => {
    const entry = stated.get(line.itemId);
    return entry === undefined ? [] : [checkItem(line, entry.owned, entry.obtainable)];
  });
  const unstated = items.filter((line) => !['cables', 'network'].includes(line.group) && !stated.has(line.itemId));
  if (unstated.length === 0) return checks;
  const where: Place[] = unstated.slice(0, 49).map((line) => ({ kind: 'item', name: line.name }));
  return [
    ...checks,
    {
      id: 'wish.stock-not-stated',
      chapter: 'wish',
      severity: 'offer',
      measured: unstated.length,
      limit: null,
      unit: 'count',
      where: [...where, { kind: 'field', name: 'wish.stock' }],
      sentence: 'Not stated: how many are owned or can be had. Kinds of item of which nobody said so: {measured}.',
    },
  ];
}
