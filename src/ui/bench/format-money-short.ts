import type { DisplayOptions } from '../../units/display-options';

/** An amount of money with three digits, for where the whole has no room: '€3.04M'. */
export function formatMoneyShort(amount: number, { locale, currency }: DisplayOptions): string {
  return new Intl.NumberFormat(locale, {
    style: 'currency',
    currency,
    notation: 'compact',
    minimumSignificantDigits: 3,
    maximumSignificantDigits: 3,
  }).format(amount);
}
