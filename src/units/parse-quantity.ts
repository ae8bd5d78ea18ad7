import type { DisplayOptions } from './display-options';
import { type Dimension, measures, unitMeasures } from './measures';
import { parseNumber } from './parse-number';
import { plainUnit } from './plain-unit';
import { readSpelling } from './read-spelling';
import { settleQuantity } from './settle-quantity';
import type { Unit } from './unit';

/** What a typed text comes to, in `unit`; or a sentence that says why it cannot be taken. */
export type ParsedQuantity = { readonly value: number } | { readonly refused: string };

const wholeUnits: readonly Unit[] = ['px', 'bit', 'count', 'days'];

/**
 * Reads what a person types into a field: a number with or without a unit, fractions, and sums of falling units
 * (`24' 6 1/2"`, '3 ft 6', '1 h 30 min'). A bare number counts in `plain` (see plainUnit). Lengths come in whole
 * micrometres, everything else with 12 significant digits. A unit of another kind is refused, never dropped.
 */
export function parseQuantity(text: string, unit: Unit, options: DisplayOptions, plain?: string): ParsedQuantity {
  const { dimension, size } = unitMeasures[unit];
  const measure = measures[dimension];
  const clean = tidy(text);
  if (clean === '') return { refused: `Type ${measure.name}, such as ${measure.example}.` };
  const [sign, unsigned] = /^[-+]/.test(clean) ? [clean[0], clean.slice(1).trim()] : ['+', clean];
  const amount = dimension === 'money' ? withoutCurrency(unsigned, options) : unsigned;
  if (dimension === 'money' && namesACurrency(amount)) return { refused: `This plan counts in ${options.currency}.` };
  const summed = sum(amount, dimension, plainUnit(unit, options, plain));
  if ('refused' in summed) return summed;
  const value = settleQuantity(((sign === '-' ? -1 : 1) * summed.value) / size, unit);
  if (Math.abs(value) > 1e15) return { refused: 'That is larger than anything this plan counts.' };
  if (wholeUnits.includes(unit) && !Number.isInteger(value)) return { refused: 'A whole number belongs here.' };
  return { value };
}

/** One look for signs that have several, and without what a shown figure has in brackets: '9 kg (19.8 lb)'. */
function tidy(text: string): string {
  return text
    .replace(/\s*\([^()]*\)\s*$/, '')
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (glyph) => ` ${vulgarFractions[glyph]}`)
    .replace(/[’′‘]/g, "'")
    .replace(/[”″“]|''/g, '"')
    .replace(/[−–]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

const vulgarFractions: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

function sum(text: string, dimension: Dimension, plain: string): ParsedQuantity {
  const measure = measures[dimension];
  let rest = text;
  let total = 0;
  let last: { readonly spelling: string; readonly size: number } | undefined;
  while (rest !== '') {
    const number = parseNumber(rest);
    if (number === undefined) return { refused: `'${rest}' is not ${measure.name}, such as ${measure.example}.` };
    if ('refused' in number) return number;
    const read = readSpelling(number.rest, dimension);
    if ('refused' in read) return read;
    const spelling = read.spelling !== '' ? read.spelling : last === undefined ? plain : bareAfter(last.spelling);
    if (spelling === undefined) return { refused: `Say what the ${rest} at the end counts.` };
    const size = spelling === '' ? 1 : measure.sizes[spelling]!;
    if (last !== undefined && size >= last.size) {
      return { refused: `Behind ${last.spelling} a smaller unit must follow, not ${spelling}.` };
    }
    total += number.value * size;
    last = { spelling: read.spelling, size };
    rest = read.rest;
  }
  return { value: total };
}

/** What a bare number counts behind a unit: inches behind feet, minutes behind hours; else nothing that one could know. */
function bareAfter(spelling: string): string | undefined {
  if (spelling === "'" || spelling === 'ft' || spelling === 'foot' || spelling === 'feet') return 'in';
  return spelling === 'h' ? 'min' : undefined;
}

/** Without the plan's own currency, by sign or code, before or behind. */
function withoutCurrency(text: string, { locale, currency }: DisplayOptions): string {
  const names = new Set([currency, currency.toLowerCase()]);
  for (const currencyDisplay of ['symbol', 'narrowSymbol'] as const) {
    const parts = new Intl.NumberFormat(locale, { style: 'currency', currency, currencyDisplay }).formatToParts(0);
    names.add(parts.find((part) => part.type === 'currency')?.value ?? currency);
  }
  for (const name of names) {
    if (text.startsWith(name)) return text.slice(name.length).trim();
    if (text.endsWith(name)) return text.slice(0, -name.length).trim();
  }
  return text;
}

function namesACurrency(text: string): boolean {
  return /\p{Sc}|^[A-Z]{3}\b|\b[A-Z]{3}$/u.test(text);
}
