import { expect, test } from 'vitest';
import { locateNames } from '../../../src/calc/names/locate-names';
import { anchor, plainRuns } from '../runs/plain-runs';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';

const bands = [{ type: plainType(216), rows: 3 }];
const ground = plainRuns({
  surfaces: setOf(
    plainSurface({ letter: 'A', columns: 4, bands }),
    plainSurface({ letter: 'B', kind: 'ceiling', columns: 2, bands }),
  ),
});
const none = { processors: [], ports: [], circuits: [] };

test('locateNames numbers panels through all surfaces, -1 where none stands', () => {
  const at = (column: number, row: number) => anchor(column, row);
  const located = locateNames(
    {
      // The lattice of ceiling B begins at -2, -1: that is its first panel, behind twelve of the wall.
      processors: [{ number: 2, at: anchor(-2, -1, 'b', null) }],
      ports: [{ name: '1A-01', first: at(1, 1), last: at(2, 3) }],
      circuits: [{ name: 'D1-1', first: at(4, 3), last: at(5, 1) }],
    },
    ground,
  );
  expect(located.processors).toEqual([{ number: 2, at: 12 }]);
  // Columns of three panels: column 2, row 3 is panel 5, column 4, row 3 panel 11; there is no column 5.
  expect(located.ports).toEqual([{ name: '1A-01', first: 0, last: 5, returnName: null }]);
  expect(located.circuits).toEqual([{ name: 'D1-1', first: 11, last: -1, returnName: null }]);
});

test('locateNames puts a port that a run returns to with the run', () => {
  const [first, last, other] = [anchor(1, 1), anchor(1, 3), anchor(2, 1)];
  const ports = [
    { name: '1A-01', first, last },
    { name: '1B-01', first: last, last: first },
    { name: '1A-02', first: other, last: other },
    { name: '1B-02', first: other, last: other },
    { name: '1A-03', first: last, last },
  ];
  expect(locateNames({ ...none, ports }, ground).ports.map(({ name, returnName }) => [name, returnName])).toEqual([
    ['1A-01', '1B-01'],
    ['1A-02', '1B-02'],
    ['1A-03', null],
  ]);
});

test('locateNames keeps a return with its run when their panels are gone', () => {
  const [first, last] = [anchor(8, 1), anchor(8, 3)];
  const gone = [
    { name: '1A-01', first, last },
    { name: '1A-02', first: anchor(9, 1), last: anchor(9, 3) },
  ];
  expect(locateNames({ ...none, ports: gone }, ground).ports.map(({ returnName }) => returnName)).toEqual([null, null]);
});

test('locateNames counts a name once', () => {
  const twice = [
    { name: '1A-01', first: anchor(1, 1), last: anchor(1, 3) },
    { name: '1A-01', first: anchor(2, 1), last: anchor(2, 3) },
  ];
  expect(locateNames({ ...none, ports: twice }, ground).ports).toMatchObject([{ first: 0, last: 2 }]);
});
