import type { Stock } from '../../plan/catalogue';
import type { Check, Place } from '../chapter';
import type { MaterialLine } from '../materials/material-result';
import type { WishInputs } from './compute-wish';

/** Money and counts against what was stated; sizes are judged by the walls, cooling by heat, supply by power. */
export function checkWish(inputs: WishInputs): Check[] {
  return [...checkBudget(inputs), ...checkStock(inputs), ...checkCameras(inputs)];
}

function checkBudget({ wish, materials }: WishInputs): Check[] {
  if (materials.lines.length === 0) return [];
  const base = {
    id: 'wish.budget',
    chapter: 'wish' as const,
    measured: materials.priceToGet,
    limit: wish.budget,
    unit: 'money' as const,
    where: [{ kind: 'field' as const, name: 'wish.budget' }],
  };
  if (wish.budget === null)
    return [{ ...base, severity: 'offer', sentence: 'What is to be got costs {measured}; the budget is not stated.' }];
  if (materials.priceToGet > wish.budget)
    return [
      { ...base, severity: 'stop', sentence: 'What is to be got costs {measured}, more than the budget of {limit}.' },
    ];
  return [{ ...base, severity: 'pass', sentence: 'What is to be got costs {measured} of a budget of {limit}.' }];
}

/** Items of the catalogue against what is owned and can be had; what nobody stated is gathered in one offer. */
function checkStock({ wish, materials }: WishInputs): Check[] {
  const stated = new Map(wish.stock.map((entry) => [entry.itemId, entry]));
  const items = materials.lines.filter((line) => line.group !== 'cases');
  const checks = items.flatMap((line) => {
    const entry = stated.get(line.itemId);
    return entry === undefined ? [] : [checkItem(line, entry)];
  });
  const unstated = items.filter((line) => line.group !== 'cables' && !stated.has(line.itemId));
  if (unstated.length === 0) return checks;
  const where: Place[] = unstated.slice(0, 50).map((line) => ({ kind: 'item', name: line.name }));
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
      sentence: 'Of {measured} kinds of item nobody stated how many are owned or can be had.',
    },
  ];
}

function checkItem(line: MaterialLine, { owned, obtainable }: Stock): Check {
  const had = owned === null || obtainable === null ? null : owned + obtainable;
  const base = {
    id: `wish.stock.${line.itemId}`,
    chapter: 'wish' as const,
    measured: line.needed,
    unit: 'count' as const,
    where: [{ kind: 'item' as const, name: line.name }],
    values: {
      owned: { value: owned ?? 0, unit: 'count' as const },
      obtainable: { value: obtainable ?? 0, unit: 'count' as const },
    },
  };
  const { name, needed } = line;
  if (owned !== null && needed <= owned) {
    return { ...base, limit: owned, severity: 'pass', sentence: `${name}: {measured} needed, {limit} owned.` };
  }
  if (had === null) {
    const known =
      owned === null ? 'how many are owned is not stated' : '{owned} owned; how many more can be had is not stated';
    return { ...base, limit: null, severity: 'offer', sentence: `${name}: {measured} needed, ${known}.` };
  }
  return needed <= had
    ? {
        ...base,
        limit: had,
        severity: 'watch',
        sentence: `${name}: {measured} needed, {owned} owned; {obtainable} more can be had.`,
      }
    : {
        ...base,
        limit: had,
        severity: 'stop',
        sentence: `${name}: {measured} needed, but only {limit} are there: {owned} owned and {obtainable} more to be had.`,
      };
}

/** Cameras that shoot at once see pictures of their own only where pictures are interleaved. */
function checkCameras({ wish, picture }: WishInputs): Check[] {
  const pictures = picture.surfaces.reduce((most, surface) => Math.max(most, surface.mode.pictures), 0);
  if (pictures === 0 || wish.camerasAtOnce <= pictures) return [];
  return [
    {
      id: 'wish.cameras',
      chapter: 'wish',
      severity: 'offer',
      measured: pictures,
      limit: wish.camerasAtOnce,
      unit: 'count',
      where: [{ kind: 'field', name: 'wish.camerasAtOnce' }],
      sentence:
        '{limit} cameras shoot at once, but the wall shows {measured} pictures a camera frame: they see the same one.',
    },
  ];
}
