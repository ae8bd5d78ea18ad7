import type { Check, Place } from '../chapter';
import type { MaterialsInputs } from './compute-materials';
import { isUnpriced } from './is-unpriced';
import type { MaterialLine, MaterialsResults } from './material-result';

const placesOf = (lines: readonly MaterialLine[]): Place[] =>
  lines.slice(0, 50).map(({ name }) => ({ kind: 'item', name }));

function checkPrices({ lines, unpriced }: MaterialsResults): Check {
  return {
    id: 'materials.prices',
    chapter: 'materials',
    severity: unpriced > 0 ? 'watch' : 'pass',
    measured: unpriced,
    limit: 0,
    unit: 'count',
    where: placesOf(lines.filter(isUnpriced)),
    sentence:
      unpriced > 0
        ? 'Lines of the bill that have no price, which the totals leave out: {measured}.'
        : 'Everything on the bill that the catalogue lists has a price.',
  };
}

/** Needed things that the catalogue does not have: an id that leads nowhere, or a kind that nobody has listed. */
function checkListed(inputs: MaterialsInputs, { lines }: MaterialsResults): Check[] {
  const { panels, processors, breakouts, nodes, distros, cables } = inputs;
  const ids = new Set([panels, processors, breakouts, nodes, distros, cables].flat().map(({ id }) => id));
  const missing = lines.filter(({ itemId, group }) => group !== 'cases' && !ids.has(itemId));
  if (missing.length === 0) return [];
  const isUnchosen = (line: MaterialLine) =>
    line.group === 'cables' || line.group === 'network' || line.name !== line.itemId;
  return [
    {
      id: 'materials.catalogue',
      chapter: 'materials',
      severity: missing.every(isUnchosen) ? 'offer' : 'watch',
      measured: missing.length,
      limit: null,
      unit: 'count',
      where: placesOf(missing),
      sentence:
        'Things that are needed and that the catalogue does not have: {measured}. Mass and price leave them out.',
    },
  ];
}

/** Enough for the plan, not enough for its spares. What is needed itself is checked against the wish. */
function checkSpares({ lines }: MaterialsResults): Check[] {
  const had = ({ owned, obtainable }: MaterialLine) =>
    owned === null || obtainable === null ? null : owned + obtainable;
  const short = lines.filter((line) => {
    const all = had(line);
    return all !== null && line.needed <= all && line.needed + line.spare > all;
  });
  const lack = (line: MaterialLine) => line.needed + line.spare - (had(line) ?? 0);
  const first = short[0];
  if (first === undefined) return [];
  const worst = short.reduce((a, b) => (lack(b) > lack(a) ? b : a), first);
  return [
    {
      id: 'materials.spares',
      chapter: 'materials',
      severity: 'watch',
      measured: worst.needed + worst.spare,
      limit: had(worst),
      unit: 'count',
      where: placesOf([worst, ...short.filter((line) => line !== worst)]),
      sentence:
        'Wanted with spares: {measured}; owned or to be had: {limit}. That is enough for the plan, not for its spares.',
    },
  ];
}

/** Longest time that anything takes which is still to be got; cases come with their panels. */
function checkLeadTime({ lines }: MaterialsResults): Check[] {
  const waited = lines.flatMap((line) =>
    line.group !== 'cases' && line.toGet > 0 && line.leadDays !== null ? [{ line, days: line.leadDays }] : [],
  );
  const first = waited[0];
  if (first === undefined) return [];
  const longest = waited.reduce((a, b) => (b.days > a.days ? b : a), first).days;
  return [
    {
      id: 'materials.lead-time',
      chapter: 'materials',
      severity: 'offer',
      measured: longest,
      limit: null,
      unit: 'days',
      where: placesOf(waited.filter(({ days }) => days === longest).map(({ line }) => line)),
      sentence: 'What is still to be got takes up to {measured}; the day it must be there is not stated.',
    },
  ];
}

export function checkMaterials(inputs: MaterialsInputs, results: MaterialsResults): Check[] {
  return [
    ...(results.lines.length > 0 ? [checkPrices(results)] : []),
    ...checkListed(inputs, results),
    ...checkSpares(results),
    ...checkLeadTime(results),
  ];
}
