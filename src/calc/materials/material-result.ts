/** One line of the bill. */
export interface MaterialLine {
  /** Catalogue id, or the kind of cable. */
  readonly itemId: string;
  readonly group: 'panels' | 'signal' | 'power' | 'cables' | 'network' | 'cases';
  readonly name: string;
  readonly needed: number;
  readonly spare: number;
  readonly owned: number | null;
  readonly toGet: number;
  readonly obtainable: number | null;
  readonly massKgEach: number;
  readonly massKg: number;
  readonly priceEach: number | null;
  /** Price of what is to be got; null where the price is not stated. */
  readonly price: number | null;
  /** Days from order to delivery; null where nobody stated them. */
  readonly leadDays: number | null;
  /** How it was counted, in words. */
  readonly countedAs: string;
}

export interface MaterialsResults {
  readonly lines: readonly MaterialLine[];
  readonly massKg: number;
  /** Price of everything needed and spare, bought new. */
  readonly priceTotal: number;
  /** Price of what is still to be got. */
  readonly priceToGet: number;
  /** Lines without a price, which the totals leave out; sync and network aside, of which the catalogue has no list. */
  readonly unpriced: number;
}
