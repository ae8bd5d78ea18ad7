import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Given } from '../../src/cli/command';
import { sheets } from '../../src/cli/sheets';
import { readPdf } from '../files/read-pdf-pages';
import { givenTerminal } from './given-terminal';

const flat = readFileSync('fixtures/plans/flat.json', 'utf8');
const given: Given = { file: 'plan.json', options: new Set<string>(), out: 'out', paper: 'letter' };
const written = async (more: Partial<Given> = {}, text = flat) => {
  const terminal = givenTerminal({ 'plan.json': text });
  const code = await sheets.run({ ...given, ...more }, terminal);
  return { terminal, code, bytes: terminal.written.get('out/crew-set-Letter.pdf') };
};

test('sheets writes the set on the paper asked for, with the day of the terminal on it', async () => {
  const { code, bytes, terminal } = await written();
  expect(code).toBe(0);
  expect(terminal.output()).toContain('out/crew-set-Letter.pdf');
  const { pages, title } = await readPdf(bytes!, 'texts');
  expect(title).toContain('Ferry Lane window');
  expect(pages.length).toBeGreaterThan(8);
  for (const { widthMm, heightMm, texts } of pages) {
    // ANSI/ASME Y14.1 size A, 8.5 x 11 in.
    expect([widthMm, heightMm].map((mm) => mm.toFixed(1)).sort()).toEqual(['215.9', '279.4']);
    expect(texts.join(' ')).toContain('2026-11-25');
  }
});

test('sheets takes the parts, the day and the inks that it is given', async () => {
  const { bytes } = await written({ parts: 'ports,cover', date: '2027-01-31', options: new Set(['--black']) });
  const { pages } = await readPdf(bytes!, 'texts');
  const texts = pages.map((page) => page.texts.join(' '));
  expect(texts.every((text) => text.includes('2027-01-31'))).toBe(true);
  expect(texts.length).toBeLessThan(5);
  expect(texts[0]).toContain('Contents');
});

test('sheets gives the same bytes for the same plan, day and paper', async () => {
  const [first, second] = [await written({ parts: 'cover' }), await written({ parts: 'cover' })];
  expect(first!.bytes).toEqual(second!.bytes);
});

test.each([
  [{ parts: 'cover,rigging' }, 'there is no part rigging in this set: cover, bill'],
  [{ date: '2026-02-30' }, '2026-02-30 is no day'],
  [{ date: 'today' }, 'today is no day'],
])('sheets refuses %j and says why', async (more, said) => {
  const { code, terminal } = await written(more);
  expect(code).toBe(2);
  expect(terminal.complaints()).toContain(said);
  expect(terminal.written.size).toBe(0);
});

test('sheets ends with 2 where nothing can be read or written', async () => {
  expect(await sheets.run(given, givenTerminal())).toBe(2);
  expect((await written({ out: 'locked' })).code).toBe(2);
});
