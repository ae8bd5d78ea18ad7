/** Fewest and most digits after the decimal sign. */
export interface Decimals {
  readonly least: number;
  readonly most: number;
}

const formatters = new Map<string, Intl.NumberFormat>();

/**
 * A number with the locale's decimal sign. From five digits on, groups of three stand apart by a narrow no-break space,
 * so that no reader takes a thousands mark for a decimal sign. Source: SI Brochure, 9th edition, 5.4.4 (from memory).
 */
export function formatNumber(value: number, decimals: Decimals, locale: string): string {
  const key = `${locale} ${decimals.least} ${decimals.most}`;
  let formatter = formatters.get(key);
  if (formatter === undefined) {
    formatter = new Intl.NumberFormat(locale, {
      minimumFractionDigits: decimals.least,
      maximumFractionDigits: decimals.most,
      numberingSystem: 'latn',
      useGrouping: 'min2',
      signDisplay: 'negative',
    });
    formatters.set(key, formatter);
  }
  return formatter
    .formatToParts(value)
    .map((part) => (part.type === 'group' ? '\u202f' : part.value))
    .join('');
}
