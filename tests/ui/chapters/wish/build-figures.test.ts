import { expect, test } from 'vitest';
import type { Build, ExactFigures } from '../../../../src/calc/finder/build';
import type { BuildWeighed } from '../../../../src/calc/finder/weigh-builds';
import { gatherWeighed, shapeRows, weighedRows } from '../../../../src/ui/chapters/wish/build-figures';
import type { Format } from '../../../../src/ui/widgets/use-format';

const format: Format = (value, unit, absent = 'not known') => (value === null ? absent : `${value} ${unit}`);
const build = {
  key: 'reed 12x6',
  heightMm: 6000,
  withinStack: true,
  underHall: true,
  letsIn: true,
  roomMm: 300,
  openingMm: 4000,
} as Build;
const exact = { processors: 9, ports: 111, worstLegA: 345, circuits: 78, priceTotal: 1, stops: [] } as ExactFigures;
const ports = (items: readonly BuildWeighed[]) =>
  weighedRows({ weighed: gatherWeighed(items), format })
    .find(({ key }) => key === 'ports')!
    .cell(build);
const shape = (key: string, of: Partial<Build>) =>
  shapeRows({ format, openingFrom: 'wish' })
    .find((row) => row.key === key)!
    .cell({ ...build, ...of });

test('a figure of signal is awaited, then a bound marked as one, then exact', () => {
  const least = { key: build.key, least: { processors: 7, ports: 100, worstLegA: 300 } };
  expect(ports([])).toBe('…');
  expect(ports([least])).toBe('at least 100 count');
  expect(ports([least, { key: build.key, exact }])).toBe('111 count');
});

test('a bound that says nothing is not shown, and a wall that nothing drives has no ports', () => {
  expect(ports([{ key: build.key, least: { processors: 0, ports: 0, worstLegA: 0 } }])).toBe('…');
  expect(ports([{ key: build.key, exact: { ...exact, ports: null } }])).toBe('none drives it');
  expect(ports([{ key: build.key, exact: null }])).toBe('none');
});

test('what breaks a limit says so beside its figure', () => {
  expect(shape('height', {})).toBe('6000 mm');
  expect(shape('height', { withinStack: false, underHall: false })).toBe(
    '6000 mm, above its stack, above the clear height',
  );
  expect(shape('opening', {})).toBe('4000 mm');
  expect(shape('opening', { letsIn: false })).toBe('4000 mm, no way in for what drives in');
  expect(shape('room', { roomMm: -200 })).toBe('too small by 200 mm');
  expect(shape('room', { roomMm: null })).toBe('not stated');
});

test('an opening that nobody stated says what it is taken for', () => {
  const title = (openingFrom: 'wish' | 'vehicle' | 'closed' | null) =>
    shapeRows({ format, openingFrom }).find(({ key }) => key === 'opening')!.title;
  expect([title('wish'), title(null)]).toEqual(['Opening', 'Opening']);
  expect(title('vehicle')).toBe('Opening, not stated: taken as wide as what drives in');
  expect(title('closed')).toBe('Opening, not stated: taken as closed');
});
