import type { Panel } from '../../plan/panel';

interface UsualRange {
  /** The field in the panel's record. */
  readonly path: readonly string[];
  readonly least: number;
  readonly most: number;
  /** Null where the sheet does not state it. */
  readonly read: (panel: Panel) => number | null;
}

const areaM2 = ({ size }: Panel) => (size.widthMm * size.heightMm) / 1e6;
const byArea = (value: number | null, panel: Panel) => (value === null ? null : value / areaM2(panel));
const widestJoint = ({ lock }: Panel) => Math.max(0, ...lock.stepsDeg.map(Math.abs));

/**
 * Usual ranges of panels that are built, to catch a slip of the finger; never a limit. From a panel of 500 x 500 mm of
 * 6.5-9.5 kg (500 x 1000: 11-15), 70-100 mm deep, 84-320 pixels along 500 mm, 100-190 W at full white, 15-25 % of it at
 * black, power factor 0.90-0.98, 0.5-1.5 mA of leakage, 800-5,000 cd/m2, 3,840-7,680 Hz, stacks of 5-10 m, locks up to
 * 15 degrees (from memory, common practice, no source), each widened by half.
 */
const usual: readonly UsualRange[] = [
  { path: ['massKg'], least: 11, most: 57, read: (panel) => byArea(panel.massKg, panel) },
  { path: ['size', 'depthMm'], least: 45, most: 150, read: (panel) => panel.size.depthMm },
  { path: ['pixels', 'wide'], least: 1, most: 9, read: ({ size, pixels }) => size.widthMm / pixels.wide },
  { path: ['lock', 'stepsDeg'], least: 0, most: 22.5, read: widestJoint },
  { path: ['lock', 'highestStackMm'], least: 2500, most: 15_000, read: ({ lock }) => lock.highestStackMm },
  { path: ['light', 'refreshHz'], least: 1920, most: 11_520, read: ({ light }) => light.refreshHz },
  { path: ['light', 'peakNits'], least: 400, most: 7500, read: ({ light }) => light.peakNits },
  { path: ['power', 'fullWhiteW'], least: 200, most: 1140, read: (panel) => byArea(panel.power.fullWhiteW, panel) },
  { path: ['power', 'blackW'], least: 0.05, most: 0.4, read: ({ power }) => power.blackW / power.fullWhiteW },
  { path: ['power', 'powerFactor'], least: 0.85, most: 1, read: ({ power }) => power.powerFactor },
  { path: ['power', 'leakageMa'], least: 1, most: 9, read: (panel) => byArea(panel.power.leakageMa, panel) },
];

/** Fields of a panel whose figures are out of the usual range, as paths in its record. What is not stated is none. */
export function unusualFigures(panel: Panel): readonly (readonly string[])[] {
  return usual
    .filter(({ least, most, read }) => {
      const figure = read(panel);
      return figure !== null && !(figure >= least && figure <= most);
    })
    .map(({ path }) => path);
}
