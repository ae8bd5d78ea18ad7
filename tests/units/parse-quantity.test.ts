import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DisplayOptions } from '../../src/units/display-options';
import { formatQuantity } from '../../src/units/format-quantity';
import { unitMeasures } from '../../src/units/measures';
import { parseQuantity } from '../../src/units/parse-quantity';
import type { Unit } from '../../src/units/unit';

const metric: DisplayOptions = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' };
const german: DisplayOptions = { lengths: 'metric', locale: 'de-DE', currency: 'EUR' };
const feet: DisplayOptions = { lengths: 'feet', locale: 'en-US', currency: 'USD' };

// Exact: 1 in = 25.4 mm, 1 ft = 304.8 mm, 1 lb = 0.45359237 kg; 24 ft = 7315.2 mm; 24 ft 6 1/2 in = 7480.3 mm.
test.each<[string, Unit, number]>([
  [`24'`, 'mm', 7315.2],
  [`24' 6 1/2"`, 'mm', 7480.3],
  ['24′ 6½″', 'mm', 7480.3],
  [`24'6`, 'mm', 7467.6],
  [`24''`, 'mm', 609.6],
  ['3 ft 6', 'mm', 1066.8],
  ['3ft 6in', 'mm', 1066.8],
  ['3 FEET 6 INCHES', 'mm', 1066.8],
  ['1/2 in', 'mm', 12.7],
  ['7.3 m', 'mm', 7300],
  ['7,3 m', 'mm', 7300],
  ['7.3', 'mm', 7300],
  ['500mm', 'mm', 500],
  ['30 cm', 'mm', 300],
  ['1 m 20 cm', 'mm', 1200],
  [`-2'`, 'mm', -609.6],
  ['−2 ft', 'mm', -609.6],
  ['0.3333333 mm', 'mm', 0.333],
  ['9 kg', 'kg', 9],
  ['20 lb', 'kg', 9.0718474],
  ['9 kg (19.8 lb)', 'kg', 9],
  ['150 W', 'W', 150],
  ['1.2 kW', 'W', 1200],
  ['10 %', 'share', 0.1],
  ['10', 'share', 0.1],
  ['57%', 'share', 0.57],
  ['2.5°', 'deg', 2.5],
  ['2.5 deg', 'deg', 2.5],
  ['8.8 M px', 'px', 8_800_000],
  ['650 000 px', 'px', 650_000],
  ['2 weeks', 'days', 14],
  ['1 h 30', 'min', 90],
  ['16.7 ms', 's', 0.0167],
  ['€ 12.50', 'money', 12.5],
  ['12.50 EUR', 'money', 12.5],
  ['2.6 M', 'money', 2_600_000],
  ['18°F', 'K', 10],
  ['12', 'count', 12],
])('parseQuantity(%s, %s) is %f', (text, unit, value) => {
  expect(parseQuantity(text, unit, metric)).toEqual({ value });
});

test('parseQuantity counts a bare number in the unit that the field shows', () => {
  expect(parseQuantity('24', 'mm', feet)).toEqual({ value: 7315.2 });
  expect(parseQuantity('500', 'mm', feet, 'mm')).toEqual({ value: 500 });
  expect(parseQuantity('1.2', 'W', metric, 'kW')).toEqual({ value: 1200 });
  expect(parseQuantity('20', 'kg', metric, 'lb')).toEqual({ value: 9.0718474 });
});

test.each<[string, Unit, string]>([
  ['5 kg', 'mm', `kg is a mass; a length belongs here, such as 7.3 m, 500 mm or 24' 6".`],
  ['', 'mm', `Type a length, such as 7.3 m, 500 mm or 24' 6".`],
  ['wide', 'mm', `'wide' is not a length, such as 7.3 m, 500 mm or 24' 6".`],
  ['12 m2', 'mm', `m2 is an area; a length belongs here, such as 7.3 m, 500 mm or 24' 6".`],
  ['1,234', 'mm', '1,234 can be read in two ways: write 1234 or 1.234.'],
  ['1 m 20', 'mm', 'Say what the 20 at the end counts.'],
  ['24 6', 'mm', 'Say what the 6 at the end counts.'],
  [`6" 24'`, 'mm', `Behind " a smaller unit must follow, not '.`],
  ['3 m', 'kg', 'm is a length; a mass belongs here, such as 9 kg or 20 lb.'],
  ['$12', 'money', 'This plan counts in EUR.'],
  ['12 USD', 'money', 'This plan counts in EUR.'],
  ['1.5', 'count', 'A whole number belongs here.'],
  ['10.5 px', 'px', 'A whole number belongs here.'],
  ['1e300', 'W', `'e300' is no unit of power; write 150 W or 1.2 kW.`],
  ['9999999999999999', 'count', 'That is larger than anything this plan counts.'],
  ['--2 m', 'mm', `'-2 m' is not a length, such as 7.3 m, 500 mm or 24' 6".`],
])('parseQuantity(%s, %s) is refused: %s', (text, unit, refused) => {
  expect(parseQuantity(text, unit, metric)).toEqual({ refused });
});

test('parseQuantity answers to any text, with a finite figure or a sentence', () => {
  const anyUnit = fc.constantFrom(...(Object.keys(unitMeasures) as Unit[]));
  const pieces = fc.array(
    fc.constantFrom('1', '24', ',', '.', '/', "'", '"', ' ', 'm', 'ft', 'kg', '-', '€', '%', 'é'),
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        pieces.map((all) => all.join('')),
      ),
      anyUnit,
      (text, unit) => {
        const parsed = parseQuantity(text, unit, metric);
        if ('refused' in parsed) expect(parsed.refused).toMatch(/\.$/);
        else expect(Number.isFinite(parsed.value)).toBe(true);
      },
    ),
  );
});

/** Half of the last digit that formatQuantity shows, in units of the figure. Feet: half of an eighth of an inch. */
function halfLastDigit(text: string, unit: Unit, inFeet: boolean): number {
  if (inFeet && /["']/.test(text)) return 25.4 / 16;
  const decimals = /[.,](\d+)/.exec(text)?.[1]?.length ?? 0;
  const one = parseQuantity(text.replace(/\d[\d.,\u202f]*/, '1'), unit, inFeet ? feet : metric);
  if ('refused' in one) throw new Error(`${text}: ${one.refused}`);
  return 0.5 * 10 ** -decimals * Math.abs(one.value);
}

test.each([
  ['metric', metric],
  ['German', german],
  ['feet', feet],
])('what formatQuantity shows (%s) reads back within half of its last digit', (_name, options) => {
  const inFeet = options.lengths === 'feet';
  const units = (Object.keys(unitMeasures) as Unit[]).filter((unit) => unit !== 'money' && unit !== 'count');
  const size = fc.oneof(
    fc.double({ min: -100, max: 100, noNaN: true }),
    fc.double({ min: -1e9, max: 1e9, noNaN: true }),
  );
  fc.assert(
    fc.property(size, fc.constantFrom(...units), (sized, unit) => {
      const value = ['px', 'bit', 'days'].includes(unit) ? Math.round(sized) : sized;
      const text = formatQuantity(value, unit, options);
      // '7,315 m' from a German hand could be 7315 m as well: such a figure is asked for again, and no wrong one is taken.
      if (/\d,\d{3}(?!\d)/.test(text)) return;
      const back = parseQuantity(text, unit, options);
      expect(back, text).toHaveProperty('value');
      const off = Math.abs((back as { value: number }).value - value);
      expect(off, text).toBeLessThanOrEqual(halfLastDigit(text, unit, inFeet) * (1 + 1e-9) + 0.0005);
    }),
    { numRuns: 500 },
  );
});
