import type { Panel } from '../../plan/panel';

interface UsualRange {
  readonly path: readonly [group: 'power' | 'size' | 'massKg', field?: string];
  readonly least: number;
  readonly most: number;
  readonly read: (panel: Panel) => number;
}

const areaM2 = ({ size }: Panel) => (size.widthMm * size.heightMm) / 1e6;

/**
 * Usual ranges of panels that are built, to catch a slip of the finger; never a limit. From a panel of 500 x 500 mm of
 * 6.5-9.5 kg (500 x 1000: 11-15), 70-100 mm deep, 100-190 W at full white, 15-25 % of it at black, power factor
 * 0.90-0.98 (from memory, common practice, no source), each widened by half.
 */
const usual: readonly UsualRange[] = [
  { path: ['massKg'], least: 11, most: 57, read: (panel) => panel.massKg / areaM2(panel) },
  { path: ['size', 'depthMm'], least: 45, most: 150, read: (panel) => panel.size.depthMm },
  { path: ['power', 'fullWhiteW'], least: 200, most: 1140, read: (panel) => panel.power.fullWhiteW / areaM2(panel) },
  { path: ['power', 'blackW'], least: 0.05, most: 0.4, read: ({ power }) => power.blackW / power.fullWhiteW },
  { path: ['power', 'powerFactor'], least: 0.85, most: 1, read: ({ power }) => power.powerFactor },
];

/** Fields of a panel whose figures are out of the usual range, as paths in its record. */
export function unusualFigures(panel: Panel): readonly (readonly string[])[] {
  return usual
    .filter(({ least, most, read }) => !(read(panel) >= least && read(panel) <= most))
    .map(({ path }) => path as readonly string[]);
}
