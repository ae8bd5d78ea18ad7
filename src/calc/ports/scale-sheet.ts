import type { Mode } from '../../plan/picture';
import type { Processor } from '../../plan/processor';
import { fedRate } from '../picture/fed-rate';
import { carriage } from './carriage';
import { compared, divided, type Fraction, fractionOf, times } from './fraction';

const sheetHz: Fraction = { over: 60n, under: 1n };

/**
 * Pixels that a sheet's figure for 60 Hz and 8 bit comes to at a mode: x 60 / fps x carriage(8) / carriage(depth). Below
 * 60 fps it grows only down to the sheet's lowest rate. A port's figure and a processor's scale alike (common practice, no source).
 */
export function scaleSheet(pixels: number, mode: Mode, port: Processor['port']): Fraction {
  return times(
    times(fractionOf(pixels), divided(sheetHz, countedRate(mode, port.lowestRateHz))),
    divided(fractionOf(port.carriageBits.at8), fractionOf(carriage(port.carriageBits, mode.depthBits))),
  );
}

/** The rate that a sheet's figure is scaled by: the fed rate, but not below the sheet's lowest while that is under 60. */
export function countedRate(mode: Mode, lowestRateHz: number): Fraction {
  const { frames, seconds } = fedRate(mode);
  const fed: Fraction = { over: BigInt(frames), under: BigInt(seconds) };
  const lowest = fractionOf(Math.min(lowestRateHz, 60));
  return compared(fed, lowest) < 0 ? lowest : fed;
}
