import type { WayOfWiring } from '../../../plan/hand-change';

/** A way whose runs follow a rule. */
export type RegularWay = Exclude<WayOfWiring, { kind: 'free' }>;
