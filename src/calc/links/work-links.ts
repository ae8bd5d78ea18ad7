import type { Source, Step } from '../chapter';
import { fedRate } from '../picture/fed-rate';
import { packetFigures, sdiFigures, type VideoLink } from '../tables/video-links';
import type { LinksInputs } from './compute-links';
import { linkById } from './link-by-id';
import type { LinkFit, LinksResults, SurfaceLinks } from './link-result';
import { st2110Wire } from './st-2110-wire';
import { wholeRate } from './whole-rate';
import { workTiming } from './work-timing';

const uncompressed: Source = { kind: 'practice', text: 'three colours a pixel, without compression' };

/** Pixel clock and payload of what every surface is sent, and what is left of its link. */
export function workLinks(inputs: LinksInputs, results: LinksResults): Step[] {
  return results.surfaces.flatMap((links) => [...workPayload(inputs, links), ...workMargin(links)]);
}

function workPayload(inputs: LinksInputs, { letter, canvas, mode, timing, payloadBps }: SurfaceLinks): Step[] {
  if (canvas === null || timing === null || payloadBps === null) return [];
  const figure = `payload of a link of ${letter}`;
  return [
    ...workTiming(figure, canvas, fedRate(mode), inputs),
    {
      figure,
      symbol: 'payload',
      expression: 'clock * 3 * bits',
      numbers: { clock: timing.pixelClockHz, bits: mode.depthBits },
      value: payloadBps,
      unit: 'bps',
      source: uncompressed,
    },
  ];
}

function workMargin({ letter, chosen }: SurfaceLinks): Step[] {
  if (chosen === null || chosen.needBps === null || chosen.marginShare === null) return [];
  const figure = `left of the link of ${letter}`;
  const link = linkById(chosen.linkId)!;
  return [
    ...workNeed(figure, link, chosen),
    {
      figure,
      symbol: 'carries',
      expression: 'raw * part / whole',
      numbers: { raw: link.rawBps, part: link.carries[0], whole: link.carries[1] },
      value: link.payloadBps,
      unit: 'bps',
      source: { kind: 'source', text: link.source, fromMemory: link.howKnown.includes('from memory') },
    },
    {
      figure,
      symbol: 'left',
      expression: '1 - need / carries',
      numbers: { need: chosen.needBps, carries: link.payloadBps },
      value: chosen.marginShare,
      unit: 'share',
      source: uncompressed,
    },
  ];
}

/** What a link that counts otherwise than by pixel clock needs; of the others the payload is worked out already. */
function workNeed(figure: string, link: VideoLink, fit: LinkFit): Step[] {
  const rate = fedRate(fit.mode);
  if (link.kind === 'sdi') {
    const { bitsAPixel, clockHz, lines, fps, source } = sdiFigures;
    const whole = wholeRate(rate);
    const tier = whole.frames / whole.seconds / fps;
    return [
      {
        figure,
        symbol: 'need',
        expression: 'clock * bits * (high / lines) ^ 2 * faster',
        numbers: {
          clock: clockHz,
          bits: bitsAPixel,
          high: fit.raster!.height,
          lines,
          faster: tier > 2 ? 4 : tier > 1 ? 2 : 1,
        },
        value: fit.needBps!,
        unit: 'bps',
        source: { kind: 'source', text: source, fromMemory: true },
      },
    ];
  }
  if (link.kind !== 'ethernet') return [];
  return workPackets(figure, fit);
}

function workPackets(figure: string, fit: LinkFit): Step[] {
  const rate = fedRate(fit.mode);
  const { octetsAFrame, packetsAFrame, wireBps } = st2110Wire(fit.canvas, rate, fit.mode.depthBits);
  const { samplesOctets, overheadOctets, pixelGroups, source: text } = packetFigures;
  const group = pixelGroups.find(({ bits }) => bits === fit.mode.depthBits)!;
  const source: Source = { kind: 'source', text };
  return [
    {
      figure,
      symbol: 'octets',
      expression: 'ceil(wide / pixels) * group * high',
      numbers: { wide: fit.canvas.width, high: fit.canvas.height, pixels: group.pixels, group: group.octets },
      value: octetsAFrame,
      unit: 'count',
      source,
    },
    {
      figure,
      symbol: 'packets',
      expression: 'ceil(octets / block)',
      numbers: { octets: octetsAFrame, block: samplesOctets },
      value: packetsAFrame,
      unit: 'count',
      source,
    },
    {
      figure,
      symbol: 'need',
      expression: '(octets + packets * overhead) * 8 * frames / seconds',
      numbers: { octets: octetsAFrame, packets: packetsAFrame, overhead: overheadOctets, ...rate },
      value: wireBps,
      unit: 'bps',
      source,
    },
  ];
}
