import type { ExistingWiring } from '../../../plan/signal';
import { splitFields } from './split-fields';

/** A row that could not be read: its line in the text, from 1, and why. */
export interface BadRow {
  readonly line: number;
  readonly reason: string;
}

export interface ReadWiring {
  readonly rows: ExistingWiring['rows'];
  readonly bad: readonly BadRow[];
}

type Row = ExistingWiring['rows'][number];
type FieldOrder = Readonly<Record<keyof Row, number>>;

/** What the schema of an existing wiring takes. */
const mostRows = 250_000;
const longestName = 40;
const furthestPlace = 100_000;

/**
 * Reads a table of panel, port and place on the run. A first line with these three names says in which order they stand among
 * others; without it they stand in this order. Fields are parted by the comma, semicolon or tab that the first line has most
 * of. A bad row is named, nothing else is lost.
 */
export function readWiring(text: string): ReadWiring {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
  const first = lines.find((line) => line.trim() !== '') ?? '';
  const separator = separatorOf(first);
  const header = headerOf(splitFields(first, separator) ?? []);
  const order = header ?? { panel: 0, port: 1, place: 2 };
  const rows: Row[] = [];
  const bad: BadRow[] = [];
  let isHeader = header !== null;
  for (const [index, line] of lines.entries()) {
    if (line.trim() === '') continue;
    if (isHeader) {
      isHeader = false;
      continue;
    }
    const read = readRow(splitFields(line, separator), order);
    if ('reason' in read) bad.push({ line: index + 1, reason: read.reason });
    else if (rows.length < mostRows) rows.push(read);
    else bad.push({ line: index + 1, reason: 'a plan holds no more rows' });
  }
  return { rows, bad };
}

function separatorOf(line: string): string {
  const count = (mark: string) => line.split(mark).length - 1;
  return [',', ';', '\t'].reduce((most, mark) => (count(mark) > count(most) ? mark : most));
}

function headerOf(fields: readonly string[]): FieldOrder | null {
  const names = fields.map((field) => field.toLowerCase());
  const [panel, port, place] = [names.indexOf('panel'), names.indexOf('port'), names.indexOf('place')];
  return panel < 0 || port < 0 || place < 0 ? null : { panel, port, place };
}

function readRow(fields: readonly string[] | null, order: FieldOrder): Row | { readonly reason: string } {
  if (fields === null) return { reason: 'a quotation mark is opened and not closed' };
  const [panel, port, place] = [fields[order.panel], fields[order.port], fields[order.place]];
  if (panel === undefined || port === undefined || place === undefined) {
    return { reason: 'it has not all of the fields panel, port and place' };
  }
  if (panel === '') return { reason: 'it names no panel' };
  if (port === '') return { reason: 'it names no port' };
  if (panel.length > longestName || port.length > longestName) return { reason: 'a name in it is too long' };
  const count = /^\d{1,6}$/.test(place) ? Number(place) : 0;
  if (count < 1 || count > furthestPlace) return { reason: 'its place is not a whole number from 1 on' };
  return { panel, port, place: count };
}
