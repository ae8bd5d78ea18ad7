import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readPortName, slotOfPort } from '../../../src/calc/names/read-port-name';
import type { PortOutlets } from '../../../src/calc/ports/outlets';
import { portName } from '../../../src/calc/runs/port-name';

const boxes = (breakouts: number, ports: number): PortOutlets => ({
  breakoutsAProcessor: breakouts,
  portsABreakout: ports,
  portsAProcessor: breakouts * ports,
  returns: 'none',
});
const direct = (ports: number): PortOutlets => ({ ...boxes(0, ports), portsAProcessor: ports });

test('readPortName takes a tag apart', () => {
  expect(readPortName('3B-04')).toEqual({ processor: 3, breakout: 1, port: 4 });
  expect(readPortName('12-07')).toEqual({ processor: 12, breakout: null, port: 7 });
  // AA is the 27th letter.
  expect(readPortName('1AA-10')).toEqual({ processor: 1, breakout: 26, port: 10 });
});

test.each(['', 'D4-11', '3B-4', '0A-01', '3B-00', '3B', 'B-04', '3b-04', '3B-04-1'])(
  'readPortName finds no port in %j',
  (name) => {
    expect(readPortName(name)).toBeNull();
  },
);

test('slotOfPort undoes portName, on breakouts and on direct ports', () => {
  fc.assert(
    fc.property(
      fc.nat(999),
      fc.nat(800),
      fc.integer({ min: 1, max: 40 }),
      fc.boolean(),
      (before, slot, ports, isBox) => {
        const outlets = isBox ? boxes(Math.floor(slot / ports) + 1, ports) : direct(slot + 1);
        const named = readPortName(portName(before + 1, slot, isBox ? ports : null))!;
        expect(named.processor).toBe(before + 1);
        expect(slotOfPort(named, outlets)).toBe(slot);
      },
    ),
  );
});

test('slotOfPort has none for a breakout or a port that the processor lacks, and for the other kind of outlets', () => {
  const slot = (name: string, outlets: PortOutlets) => slotOfPort(readPortName(name)!, outlets);
  expect(slot('1C-01', boxes(2, 10))).toBeNull();
  expect(slot('1B-11', boxes(2, 10))).toBeNull();
  expect(slot('1-05', direct(4))).toBeNull();
  expect(slot('1A-01', direct(4))).toBeNull();
  expect(slot('1-01', boxes(2, 10))).toBeNull();
});
