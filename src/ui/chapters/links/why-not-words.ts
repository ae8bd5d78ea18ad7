import type { WhyNot } from '../../../calc/links/link-result';

const words: Readonly<Record<WhyNot, string>> = {
  timing: 'no timing of this kind',
  depth: 'not at this depth',
  clock: 'pixel clock too high',
  payload: 'too many bits',
  unproven: 'may fit: needs at most this',
  raster: 'no fixed raster holds it',
  rate: 'no fixed raster at this rate',
  packets: 'packets exceed the line',
};

/** Why a link does not carry a canvas, in a few words for a table. */
export function whyNotWords(whyNot: WhyNot): string {
  return words[whyNot];
}
