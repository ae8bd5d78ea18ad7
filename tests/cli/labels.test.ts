import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { expect, test } from 'vitest';
import { labels } from '../../src/cli/labels';
import { readPdf } from '../files/read-pdf-pages';
import { readQr } from '../sheets/read-qr';
import { givenTerminal } from './given-terminal';

const flat = readFileSync('fixtures/plans/flat.json', 'utf8');
const given = { file: 'plan.json', options: new Set<string>() };
const csv = { ...given, options: new Set(['--csv']) };

test('labels --csv prints a row for each end, which another reader takes', async () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  expect(await labels.run(csv, terminal)).toBe(0);
  const rows = csvParse(terminal.output());
  expect(rows.columns).toEqual(['kind', 'name', 'end', 'from', 'to', 'lengthClass', 'cables', 'link']);
  expect(rows.length % 2).toBe(0);
  expect(new Set(rows.map(({ end }) => end))).toEqual(new Set(['from', 'to']));
  expect(rows.find(({ kind, end }) => kind === 'Home run' && end === 'to')).toMatchObject({ link: '' });
});

test('labels --address adds the links to the items', async () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  await labels.run({ ...csv, address: 'https://plan.example/' }, terminal);
  const home = csvParse(terminal.output()).find(({ kind }) => kind === 'Home run')!;
  expect(home.link).toBe(`https://plan.example/#of=${JSON.parse(flat).id}&port=${home.name}`);
});

test('labels --out writes a PDF in which an outside reader finds both ends of every cable', async () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  await labels.run(csv, terminal);
  const rows = csvParse(terminal.output());
  expect(await labels.run({ ...given, out: 'out', paper: 'letter' }, terminal)).toBe(0);
  const { pages } = await readPdf(terminal.written.get('out/labels.pdf')!);
  // 30 labels on a sheet of Letter.
  expect(pages).toHaveLength(Math.ceil(rows.length / 30));
  const texts = pages.flatMap((page) => page.texts);
  for (const { from, to } of rows.filter(({ kind }) => kind === 'Home run')) {
    expect(texts.join('\n')).toContain(`from ${from}`);
    expect(texts.join('\n')).toContain(`to ${to}`);
  }
  const circuit = rows.find(({ kind }) => kind === 'Circuit')!.name!;
  const times = rows.filter(({ name }) => name === circuit).length;
  expect(texts.filter((text) => text === circuit)).toHaveLength(times);
});

test('every code in the PDF is read by an outside decoder as the link of its row', async () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  const address = 'https://plan.example/';
  await labels.run({ ...csv, out: 'out', address }, terminal);
  const rows = csvParse(terminal.output().slice(0, terminal.output().indexOf('out/labels.pdf')));
  const { pages } = await readPdf(terminal.written.get('out/labels.pdf')!);
  const read = pages.flatMap(({ paths, links, heightMm }) =>
    paths
      .filter(({ isFilled }) => isFilled)
      .map(({ lines }, i) => {
        const [left, bottom, right] = links[i]!.box as [number, number, number, number];
        const top = heightMm - (bottom + right - left);
        // Version 3, 29 modules a side, holds 42 bytes at level M (ISO/IEC 18004, table 7).
        const modules = 29;
        const module = (right - left) / (modules + 8);
        const xyMm = lines.flatMap((line) =>
          line.flatMap(([x, y]) => [(x - left) / module - 4, (y - top) / module - 4]),
        );
        let end = 0;
        const ends = lines.map((line) => (end += line.length));
        return readQr({ xyMm: Float64Array.from(xyMm), ends: Uint32Array.from(ends), closed: true }, modules);
      }),
  );
  expect(read).toEqual(rows.map(({ link }) => link));
});

test('labels gives the same bytes for the same plan', async () => {
  const written = async () => {
    const terminal = givenTerminal({ 'plan.json': flat });
    await labels.run({ ...given, out: 'out', address: 'https://plan.example/' }, terminal);
    return Buffer.from(terminal.written.get('out/labels.pdf')!);
  };
  expect((await written()).equals(await written())).toBe(true);
});

test('labels ends with 1 where there is no cable, with 2 where nothing is asked for, read or written', async () => {
  const bare = JSON.stringify({ ...JSON.parse(flat), walls: [], ceilings: [] });
  const empty = givenTerminal({ 'plan.json': bare });
  expect(await labels.run(csv, empty)).toBe(1);
  expect(empty.complaints()).toContain('no cable');
  expect(await labels.run(given, givenTerminal({ 'plan.json': flat }))).toBe(2);
  expect(await labels.run(csv, givenTerminal())).toBe(2);
  const locked = givenTerminal({ 'plan.json': flat });
  expect(await labels.run({ ...given, out: 'locked' }, locked)).toBe(2);
  expect(locked.complaints()).toContain('locked/labels.pdf: it may not be written');
});
