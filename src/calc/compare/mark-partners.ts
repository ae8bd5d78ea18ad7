import type { Pairing } from './pair-things';

/** Marks by place in each list: alike for two that are partners, and otherwise each its own. */
export interface PartnerMarks {
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** Lets what is made of other things (a run of panels) be compared by which they are, whatever they are called now. */
export function markPartners({ newOf, oldOf }: Pairing): PartnerMarks {
  return {
    before: Array.from(newOf, (place, own) => (place < 0 ? `gone ${own}` : `${place}`)),
    after: Array.from(oldOf, (_, own) => `${own}`),
  };
}
