import type { Change, Changed, Said } from '../calc/compare/change';
import type { Format } from './format';
import type { Schedule } from './schedule';
import { words } from './schedule-column';

const names: Readonly<Record<Changed, string>> = {
  figure: 'Figure',
  check: 'Check',
  panel: 'Panel',
  port: 'Port',
  trunk: 'Trunk',
  processor: 'Processor',
  node: 'Node',
  circuit: 'Circuit',
  item: 'Item of the bill',
};

/** Writes a figure with so many digits more than usual. */
type FormatClosely = (...given: [...Parameters<Format>, extra: number]) => string;

/** How the figures of the two states are written out, each in its own currency. */
export interface ChangedFormats {
  readonly before: FormatClosely;
  readonly after: FormatClosely;
}

/** Most digits added so that two figures that differ do not read alike. */
const extraMost = 6;

/** What changed between two plans: a row for each change. The old plan's figures are written out by `before`, for its own currency. */
export function scheduleChanges(changes: readonly Change[], formats: ChangedFormats): Schedule {
  return {
    id: 'changes',
    title: 'What changed',
    columns: [
      words('kind', 'Change'),
      words('what', 'Of what'),
      words('name', 'Name'),
      words('before', 'Before'),
      words('after', 'After'),
    ],
    count: changes.length,
    row: (index) => {
      const { kind, what, name, before, after } = changes[index]!;
      const absent = kind !== 'changed' ? null : what === 'figure' ? 'not known' : 'none';
      let sides: readonly [string | null, string | null] = [null, null];
      for (let extra = 0; extra <= extraMost && sides[0] === sides[1]; extra += 1) {
        sides = [inWords(before, formats.before, extra) ?? absent, inWords(after, formats.after, extra) ?? absent];
      }
      return [kind, names[what], name, ...sides];
    },
    panelOf: () => null,
    totals: null,
  };
}

function inWords(said: Said | null, format: FormatClosely, extra: number): string | null {
  if (said === null) return null;
  return said.map((part) => (typeof part === 'string' ? part : format(part.value, part.unit, extra))).join('');
}
