import type { FrameRate } from '../../plan/primitives';
import { packetFigures } from '../tables/video-links';
import type { Canvas } from './canvas';

/** A stream of ST 2110-20: its raster, widened to whole pixel groups, its packets and what they take of the wire. */
export interface PacketStream {
  readonly raster: Canvas;
  readonly octetsAFrame: number;
  readonly packetsAFrame: number;
  readonly wireBps: number;
}

/**
 * Active pixels of a canvas in RGB 4:4:4 as ST 2110-20 sends them, in blocks of 1260 octets with one sample-row header each (one
 * that spans two lines carries six octets more, which is left out). The wire counts preamble and gap.
 */
export function st2110Wire({ width, height }: Canvas, rate: FrameRate, depthBits: number): PacketStream {
  const { samplesOctets, overheadOctets, pixelGroups } = packetFigures;
  const group = pixelGroups.find(({ bits }) => bits === depthBits)!;
  const groupsALine = Math.ceil(width / group.pixels);
  const octetsAFrame = groupsALine * group.octets * height;
  const packetsAFrame = Math.ceil(octetsAFrame / samplesOctets);
  return {
    raster: { width: groupsALine * group.pixels, height },
    octetsAFrame,
    packetsAFrame,
    wireBps: ((octetsAFrame + packetsAFrame * overheadOctets) * 8 * rate.frames) / rate.seconds,
  };
}
