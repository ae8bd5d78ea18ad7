import { pathText } from '../../plan/commands/path-text';
import type { Panel } from '../../plan/panel';
import type { Processor } from '../../plan/processor';
import type { Check, Place } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { unusualFigures } from './unusual-figures';

/** Pitch across and pitch up may differ by this share before the sheet contradicts itself (common practice, no source). */
const PITCH_SHARE = 0.02;
/** The sheet's typical power and the plan's level may differ by this share of it (common practice, no source, from memory). */
const TYPICAL_SHARE = 0.25;
const MOST_PLACES = 50;

/**
 * Sheets that contradict themselves or leave out what the plan needs. `typicalLevel` is the average picture level that
 * the plan counts typical power with, against which the sheets' typical figures are held.
 */
export function checkPanels(
  panels: readonly Panel[],
  processors: readonly Pick<Processor, 'id'>[],
  typicalLevel: number,
): Check[] {
  return [
    checkPitch(panels),
    checkVoltage(panels),
    checkTypical(panels),
    checkLevel(panels, typicalLevel),
    checkLock(panels),
    checkDrivenBy(panels, processors),
    checkUnusual(panels),
  ];
}

interface Found {
  readonly panel: Panel;
  readonly index: number;
  readonly figure: number;
}

/** Panels for which `figure` gives one, the greatest first. */
function find(panels: readonly Panel[], figure: (panel: Panel) => number | null): Found[] {
  return panels
    .flatMap((panel, index) => {
      const found = figure(panel);
      return found === null ? [] : [{ panel, index, figure: found }];
    })
    .sort((a, b) => b.figure - a.figure);
}

/** The panel by its name and the field of its record, for each that was found. */
function placesOf(found: readonly Found[], ...field: string[]): Place[] {
  return found
    .flatMap(({ panel, index }): Place[] => [
      { kind: 'item', name: panel.name },
      { kind: 'field', name: pathText(['catalogue', 'panels', index, ...field]) },
    ])
    .slice(0, MOST_PLACES);
}

const pitchDifference = ({ size, pixels }: Panel): number => {
  const across = size.widthMm / pixels.wide;
  const up = size.heightMm / pixels.high;
  return Math.max(across, up) / Math.min(across, up) - 1;
};

function checkPitch(panels: readonly Panel[]): Check {
  const found = find(panels, (panel) => (pitchDifference(panel) > PITCH_SHARE ? pitchDifference(panel) : null));
  return {
    id: 'panels.pitch',
    chapter: 'panels',
    severity: found.length > 0 ? 'watch' : 'pass',
    measured: found[0]?.figure ?? Math.max(0, ...panels.map(pitchDifference)),
    limit: PITCH_SHARE,
    unit: 'share',
    where: placesOf(found, 'pixels'),
    sentence:
      found.length > 0
        ? 'Pitch across and pitch up differ by {measured}, more than {limit}: size or pixels on the sheet are wrong, or the pixels are not square.'
        : 'Pitch across and pitch up agree on every sheet: they differ by {measured} at most.',
  };
}

function checkVoltage(panels: readonly Panel[]): Check {
  const found = find(panels, ({ power }) => (power.lowestV > power.highestV ? power.lowestV - power.highestV : null));
  return {
    id: 'panels.voltage-range',
    chapter: 'panels',
    severity: found.length > 0 ? 'stop' : 'pass',
    measured: found.length,
    limit: 0,
    unit: 'count',
    where: placesOf(found, 'power', 'lowestV'),
    sentence:
      found.length > 0
        ? 'Sheets whose lowest supply voltage stands above the highest: {measured}.'
        : 'Every sheet gives its supply voltage from lowest to highest.',
    ...(found.length > 0 && {
      fix: setFieldsFix(
        'Swap lowest and highest',
        'supply voltage range',
        found.flatMap(({ panel, index }) => [
          { path: ['catalogue', 'panels', index, 'power', 'lowestV'], value: panel.power.highestV },
          { path: ['catalogue', 'panels', index, 'power', 'highestV'], value: panel.power.lowestV },
        ]),
      ),
    }),
  };
}

function checkTypical(panels: readonly Panel[]): Check {
  const beyond = ({ power }: Panel) =>
    Math.max(power.blackW - power.typicalW, power.typicalW - power.fullWhiteW, power.blackW - power.fullWhiteW);
  const found = find(panels, (panel) => (beyond(panel) > 0 ? beyond(panel) : null));
  return {
    id: 'panels.typical',
    chapter: 'panels',
    severity: found.length > 0 ? 'watch' : 'pass',
    measured: found[0]?.figure ?? 0,
    limit: 0,
    unit: 'W',
    where: placesOf(found, 'power', 'typicalW'),
    sentence:
      found.length > 0
        ? 'Black, typical and full white do not rise in that order: out by {measured}.'
        : 'Typical power stands between black and full white on every sheet.',
  };
}

function checkLevel(panels: readonly Panel[], typicalLevel: number): Check {
  const atLevelW = ({ power }: Panel) => power.blackW + typicalLevel * (power.fullWhiteW - power.blackW);
  const off = (panel: Panel) => Math.abs(atLevelW(panel) - panel.power.typicalW);
  const found = find(panels, (panel) => (off(panel) > TYPICAL_SHARE * panel.power.typicalW ? off(panel) : null));
  const worst = found[0]?.panel;
  return {
    id: 'panels.typical-level',
    chapter: 'panels',
    severity: worst ? 'offer' : 'pass',
    measured: worst ? atLevelW(worst) : Math.max(0, ...panels.map(off)),
    limit: worst ? worst.power.typicalW : Math.max(0, ...panels.map((panel) => TYPICAL_SHARE * panel.power.typicalW)),
    unit: 'W',
    where: [...placesOf(found, 'power', 'typicalW').slice(0, MOST_PLACES - 1), ...levelField(found)],
    sentence: worst
      ? 'At the picture level of this plan, {level}, a panel takes {measured}; its sheet calls {limit} typical.'
      : 'Typical power on the sheets and at the picture level of this plan, {level}, differ by {measured} at most.',
    values: { level: { value: typicalLevel, unit: 'share' } },
  };
}

const levelField = (found: readonly Found[]): Place[] =>
  found.length > 0 ? [{ kind: 'field', name: 'power.typicalLevel' }] : [];

function checkLock(panels: readonly Panel[]): Check {
  const found = find(panels, ({ lock }) => (lock.stepsDeg.length === 0 ? 1 : null));
  return {
    id: 'panels.lock',
    chapter: 'panels',
    severity: found.length > 0 ? 'offer' : 'pass',
    measured: found.length,
    limit: found.length > 0 ? null : 0,
    unit: 'count',
    where: placesOf(found, 'lock', 'stepsDeg'),
    sentence:
      found.length > 0
        ? 'Not stated: the joint angles that the lock takes. Sheets without them: {measured}; joints of walls cannot be checked against those.'
        : 'Every sheet states the joint angles that its lock takes.',
  };
}

function checkDrivenBy(panels: readonly Panel[], processors: readonly Pick<Processor, 'id'>[]): Check {
  const known = new Set(processors.map((processor) => processor.id));
  const isDriven = ({ data }: Panel) => data.drivenBy.some((pair) => known.has(pair.processorId));
  const found = find(panels, (panel) => (isDriven(panel) ? null : 1));
  return {
    id: 'panels.driven-by',
    chapter: 'panels',
    severity: found.length > 0 ? 'watch' : 'pass',
    measured: found.length,
    limit: 0,
    unit: 'count',
    where: placesOf(found, 'data', 'drivenBy'),
    sentence:
      found.length > 0
        ? 'Panels that no processor in the catalogue of this plan drives, by their sheets: {measured}.'
        : 'A processor in the catalogue of this plan drives each of its panels, by their sheets.',
  };
}

function checkUnusual(panels: readonly Panel[]): Check {
  const found = panels.flatMap((panel, index) => unusualFigures(panel).map((field) => ({ panel, index, field })));
  return {
    id: 'panels.unusual',
    chapter: 'panels',
    severity: found.length > 0 ? 'offer' : 'pass',
    measured: found.length,
    limit: null,
    unit: 'count',
    where: found
      .map(({ index, field }): Place => ({ kind: 'field', name: pathText(['catalogue', 'panels', index, ...field]) }))
      .slice(0, MOST_PLACES),
    sentence:
      found.length > 0
        ? 'Figures on the sheets that are unusual for panels as they are built: {measured}. See that they are typed right.'
        : 'No figure on the sheets is unusual for panels as they are built.',
  };
}
