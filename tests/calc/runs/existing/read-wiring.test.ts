import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readWiring } from '../../../../src/calc/runs/existing/read-wiring';

const row = (panel: string, port: string, place: number) => ({ panel, port, place });

test('readWiring reads panel, port and place, with or without a first line that names them', () => {
  const rows = [row('A C1 R1', '3B-04', 1), row('A C1 R2', '3B-04', 2)];
  const lines = 'A C1 R1,3B-04,1\nA C1 R2,3B-04,2\n';
  expect(readWiring(lines)).toEqual({ rows, bad: [] });
  expect(readWiring(`panel, port, place\r\n${lines}`)).toEqual({ rows, bad: [] });
});

test('readWiring finds the columns by name, in any order and among others', () => {
  const text = '\uFEFFPlace;Note;Port;Panel\r\n1;"a; b";1-01;C1 R1\r\n';
  expect(readWiring(text)).toEqual({ rows: [row('C1 R1', '1-01', 1)], bad: [] });
  expect(readWiring('C1 R1\t1-01\t1').rows).toEqual([row('C1 R1', '1-01', 1)]);
});

test('readWiring names a bad row by line and reason and loses nothing else', () => {
  const text = [
    '',
    'panel,port,place',
    'C1 R1,1-01,1',
    'C1 R2,1-01',
    ',1-01,3',
    'C1 R3,,3',
    '',
    'C1 R4,1-01,0',
    'C1 R4,1-01,two',
    'C1 R4,1-01,1.5',
    '"C1 R5,1-01,5',
    `${'x'.repeat(41)},1-01,6`,
    'C1 R6,1-01,100001',
    'C1 R7,1-01,7',
  ].join('\n');
  const { rows, bad } = readWiring(text);
  expect(rows).toEqual([row('C1 R1', '1-01', 1), row('C1 R7', '1-01', 7)]);
  expect(bad.map(({ line }) => line)).toEqual([4, 5, 6, 8, 9, 10, 11, 12, 13]);
  const reasons = bad.map(({ reason }) => reason);
  expect(reasons[0]).toContain('not all of the fields');
  expect(reasons[1]).toContain('no panel');
  expect(reasons[2]).toContain('no port');
  expect(reasons[3]).toContain('place');
  expect(reasons[6]).toContain('quotation mark');
  expect(reasons[7]).toContain('too long');
});

test('readWiring misses a field wherever the first line puts it, and takes the furthest place', () => {
  const { rows, bad } = readWiring('place,port,panel\n1,1-01\n100000,1-01,C1 R1\n');
  expect(bad.map(({ line }) => line)).toEqual([2]);
  expect(rows).toEqual([row('C1 R1', '1-01', 100_000)]);
});

test('readWiring of nothing is nothing', () => {
  expect(readWiring('')).toEqual({ rows: [], bad: [] });
  expect(readWiring('panel,port,place\n')).toEqual({ rows: [], bad: [] });
});

test('readWiring keeps what a plan holds and names the rows beyond', () => {
  const { rows, bad } = readWiring('C1 R1,1-01,1\n'.repeat(250_002));
  expect(rows).toHaveLength(250_000);
  expect(bad.map(({ line }) => line)).toEqual([250_001, 250_002]);
});

test('readWiring accounts for every line of any text', () => {
  fc.assert(
    fc.property(fc.array(fc.stringMatching(/^[A-C1-3 ,;"]{0,12}$/), { maxLength: 8 }), (lines) => {
      const { rows, bad } = readWiring(lines.join('\n'));
      expect(rows.length + bad.length).toBe(lines.filter((line) => line.trim() !== '').length);
    }),
  );
});
