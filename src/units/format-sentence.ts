import type { DisplayOptions } from './display-options';
import { formatQuantity } from './format-quantity';
import type { Unit } from './unit';

/** What a check says, before its figures are written out. */
export interface Sentence {
  readonly sentence: string;
  readonly measured: number | null;
  readonly limit: number | null;
  readonly unit: Unit;
  readonly values?: Readonly<Record<string, { readonly value: number; readonly unit: Unit }>>;
}

/** Most digits added so that two figures that differ do not read alike. */
const extraMost = 6;

/**
 * The sentence with its figures in place of `{measured}`, `{limit}` and the names of `values`. A measured figure that is
 * null reads 'not known', a limit that is null 'not stated'. Where measured and limit differ and would read alike, both get
 * more digits. A token that names nothing stays as it stands.
 */
export function formatSentence(said: Sentence, options: DisplayOptions): string {
  const extra = digitsToTellApart(said, options);
  return said.sentence.replace(/\{(\w+)\}/g, (token, name: string) => {
    if (name === 'measured') return figureOf(said.measured, said.unit, options, extra) ?? 'not known';
    if (name === 'limit') return figureOf(said.limit, said.unit, options, extra) ?? 'not stated';
    const quantity = said.values !== undefined && Object.hasOwn(said.values, name) ? said.values[name] : undefined;
    return quantity === undefined ? token : formatQuantity(quantity.value, quantity.unit, options);
  });
}

function figureOf(value: number | null, unit: Unit, options: DisplayOptions, extra: number): string | null {
  return value === null ? null : formatQuantity(value, unit, options, extra);
}

function digitsToTellApart({ measured, limit, unit }: Sentence, options: DisplayOptions): number {
  if (measured === null || limit === null || measured === limit) return 0;
  for (let extra = 0; extra <= extraMost; extra += 1) {
    if (formatQuantity(measured, unit, options, extra) !== formatQuantity(limit, unit, options, extra)) return extra;
  }
  return 0;
}
