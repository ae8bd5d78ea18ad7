import type { Source, Step } from '../chapter';
import { countByType } from '../surfaces/count-by-type';
import type { PictureInputs } from './compute-picture';
import type { PictureResults } from './picture-result';

const count: Source = { kind: 'practice', text: 'panels as laid out, pixels of each from its sheet' };
const uncompressed: Source = {
  kind: 'practice',
  text: 'three colours a pixel, every frame whole; interleaved pictures count each',
};

/** Pixels and uncompressed rate of every surface, and of the stage. */
export function workPicture({ surfaces }: PictureInputs, results: PictureResults): Step[] {
  const steps = results.surfaces.flatMap(({ surfaceId, letter, pixels, mode, rateBps }): Step[] => {
    const table = surfaces.surfaces.find((surface) => surface.surfaceId === surfaceId)!;
    const numbers: Record<string, number> = {};
    const terms = countByType(table).map((panels, t) => {
      const type = table.types[t]!;
      Object.assign(numbers, {
        [`panels${t + 1}`]: panels,
        [`wide${t + 1}`]: type.pixelsWide,
        [`high${t + 1}`]: type.pixelsHigh,
      });
      return `panels${t + 1} * wide${t + 1} * high${t + 1}`;
    });
    return [
      {
        figure: `pixels of ${letter}`,
        symbol: 'pixels',
        expression: terms.length > 0 ? terms.join(' + ') : '0',
        numbers,
        value: pixels,
        unit: 'px',
        source: count,
      },
      {
        figure: `rate of ${letter}`,
        symbol: 'rate',
        expression: 'pixels * frames / seconds * pictures * 3 * bits',
        numbers: {
          pixels,
          frames: mode.rate.frames,
          seconds: mode.rate.seconds,
          pictures: mode.pictures,
          bits: mode.depthBits,
        },
        value: rateBps,
        unit: 'bps',
        source: uncompressed,
      },
    ];
  });
  if (results.surfaces.length < 2) return steps;
  const sum = (symbol: 'pixels' | 'rate', parts: readonly number[], value: number, unit: 'px' | 'bps'): Step => ({
    figure: `${symbol} of the stage`,
    symbol,
    expression: parts.map((_, i) => `${symbol}${i + 1}`).join(' + '),
    numbers: Object.fromEntries(parts.map((part, i) => [`${symbol}${i + 1}`, part])),
    value,
    unit,
    source: uncompressed,
  });
  return [
    ...steps,
    sum(
      'pixels',
      results.surfaces.map(({ pixels }) => pixels),
      results.pixels,
      'px',
    ),
    sum(
      'rate',
      results.surfaces.map(({ rateBps }) => rateBps),
      results.rateBps,
      'bps',
    ),
  ];
}
