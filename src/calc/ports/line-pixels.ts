import type { Mode } from '../../plan/picture';
import type { Processor } from '../../plan/processor';
import { fedRate } from '../picture/fed-rate';
import { ethernetFrame } from '../tables/ethernet-frame';
import { carriage } from './carriage';
import { divided, type Fraction, fractionOf, times } from './fraction';

/** Highest share of a line's bits that Ethernet framing leaves for data: 1500 / 1538. IEEE 802.3. */
const ethernetEfficiency: Fraction = { over: BigInt(ethernetFrame.dataBytes), under: BigInt(ethernetFrame.wireBytes) };

/** Pixels that a port's line rate carries at a mode: line rate x framing efficiency / (fps x bits a pixel takes on the wire). */
export function linePixels(mode: Mode, port: Processor['port']): Fraction {
  const { frames, seconds } = fedRate(mode);
  const bitsAFrame = divided(
    times(times(fractionOf(port.lineMbps), { over: 1_000_000n, under: 1n }), ethernetEfficiency),
    { over: BigInt(frames), under: BigInt(seconds) },
  );
  return divided(bitsAFrame, fractionOf(carriage(port.carriageBits, mode.depthBits)));
}
