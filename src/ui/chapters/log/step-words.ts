import type { BuildStep, TickedKind } from '../../../plan/build-log';

/** A step as a word for a button. */
export const stepWords: Readonly<Record<BuildStep, string>> = {
  stands: 'Stands',
  wired: 'Wired',
  powered: 'Powered',
  tested: 'Tested',
};

export const kindWords: Readonly<Record<TickedKind, string>> = { column: 'Column', port: 'Port', circuit: 'Circuit' };

/** Things of a kind, as they are counted. */
export const kindNouns: Readonly<Record<TickedKind, string>> = {
  column: 'columns',
  port: 'ports',
  circuit: 'circuits',
};
