import type { Mode } from '../../plan/picture';
import { fedRate } from '../picture/fed-rate';
import type { VideoLink } from '../tables/video-links';
import type { Canvas } from './canvas';
import type { LinkFit } from './link-result';
import { sdiNeed, sdiRaster } from './sdi-raster';
import { st2110Wire } from './st-2110-wire';
import { type TimingChoice, timeCanvas } from './time-canvas';

/** Whether a link carries a canvas at a mode in RGB 4:4:4 without compression, and what is left of it. */
export function carryCanvas(link: VideoLink, canvas: Canvas, mode: Mode, choice: TimingChoice): LinkFit {
  const { raster, needBps, whyNot } = judge(link, canvas, mode, choice);
  return {
    linkId: link.id,
    fits: whyNot === null,
    whyNot,
    canvas,
    mode,
    raster,
    needBps,
    isAtMost: link.kind === 'frl' && needBps !== null,
    carriesBps: link.payloadBps,
    marginShare: needBps === null ? null : 1 - needBps / link.payloadBps,
  };
}

type Judged = Pick<LinkFit, 'raster' | 'needBps' | 'whyNot'>;

function judge(link: VideoLink, canvas: Canvas, mode: Mode, choice: TimingChoice): Judged {
  switch (link.kind) {
    case 'sdi':
      return judgeSdi(link, canvas, mode);
    case 'ethernet': {
      const { raster, wireBps } = st2110Wire(canvas, fedRate(mode), mode.depthBits);
      return { raster, needBps: wireBps, whyNot: wireBps > link.payloadBps ? 'packets' : null };
    }
    default:
      return judgeTimed(link, canvas, mode, choice);
  }
}

function judgeSdi(link: VideoLink, canvas: Canvas, mode: Mode): Judged {
  const rate = fedRate(mode);
  const found = sdiRaster(link, canvas, rate);
  if (typeof found === 'string') return { raster: null, needBps: null, whyNot: found };
  const raster = { width: found.width, height: found.height };
  return { raster, needBps: sdiNeed(raster, rate), whyNot: null };
}

function judgeTimed(link: VideoLink, canvas: Canvas, mode: Mode, choice: TimingChoice): Judged {
  const rate = fedRate(mode);
  const timing = timeCanvas(canvas, rate, choice);
  if (typeof timing === 'string') return { raster: null, needBps: null, whyNot: 'timing' };
  const raster = { width: timing.width, height: timing.height };
  const bits = 3 * mode.depthBits;
  const sent = { raster, needBps: timing.pixelClockHz * bits };
  if (!link.depths.includes(mode.depthBits)) return { ...sent, whyNot: 'depth' };
  if (link.characterHz !== null && (timing.pixelClockHz * mode.depthBits) / 8 > link.characterHz)
    return { ...sent, whyNot: 'clock' };
  if (sent.needBps <= link.payloadBps) return { ...sent, whyNot: null };
  const activeBps = (raster.width * raster.height * bits * rate.frames) / rate.seconds;
  return { ...sent, whyNot: link.kind === 'frl' && activeBps <= link.payloadBps ? 'unproven' : 'payload' };
}
