import type { Panel } from '../../plan/panel';
import type { FrameRate } from '../../plan/primitives';
import type { Check } from '../chapter';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import { fedRate } from './fed-rate';
import type { PictureResults } from './picture-result';

/** What a panel's sheet says of its refresh. */
export type PanelLight = Pick<Panel, 'id' | 'name' | 'light'>;

/** A panel of a surface at a rate that it is fed: the whole multiple of the rate nearest to its sheet's refresh, from below. */
interface Refreshed {
  readonly name: string;
  readonly fed: FrameRate;
  readonly sheetHz: number;
  readonly times: number;
  readonly holds: boolean;
  readonly mode: Panel['light']['refreshMode'];
}

/** Of a refresh that is no whole number the multiple is held to this share. */
const sameShare = 1e-9;

/**
 * Whether panels refresh a whole multiple of the rate they are fed, at every rate served: locked ones take the highest multiple
 * that their sheet allows, fixed ones are held against the sheet's figure.
 */
export function checkRefresh(surfaces: SurfaceSet, picture: PictureResults, panels: readonly PanelLight[]): Check[] {
  return surfaces.surfaces.flatMap((table, i) => (table.count === 0 ? [] : [checkSurface(table, picture, i, panels)]));
}

function checkSurface(table: SurfaceTable, picture: PictureResults, i: number, panels: readonly PanelLight[]): Check {
  const used = new Set(table.types.map(({ panelId }) => panelId));
  const lights = panels.filter(({ id }) => used.has(id));
  const known = lights.flatMap(({ name, light }) =>
    light.refreshHz === null ? [] : [{ name, sheetHz: light.refreshHz, mode: light.refreshMode }],
  );
  const all = picture.surfaces[i]!.served.flatMap((mode) =>
    known.map((panel): Refreshed => ({ ...panel, fed: fedRate(mode), ...multiple(fedRate(mode), panel) })),
  );
  const base = { id: `picture.refresh.${table.letter}`, chapter: 'picture', unit: 'Hz' } as const;
  const where = [{ kind: 'surface' as const, name: table.letter }];
  const worst = all.find(({ holds }) => !holds) ?? all.reduce<Refreshed | null>(lowest, null);
  if (worst === null || (worst.holds && known.length < lights.length)) {
    return {
      ...base,
      severity: 'offer',
      measured: null,
      limit: null,
      where,
      sentence: `Not stated: how often panels of ${surfaceWords(table)} refresh.`,
    };
  }
  const fed = worst.fed.frames / worst.fed.seconds;
  return {
    ...base,
    severity: worst.holds ? 'pass' : 'watch',
    measured: worst.times * fed,
    limit: worst.sheetHz,
    where: worst.holds ? where : [...where, { kind: 'item', name: worst.name }],
    sentence: sentenceOf(worst, surfaceWords(table)),
    values: { fed: { value: fed, unit: 'fps' }, times: { value: worst.times, unit: 'count' } },
  };
}

function multiple(
  { frames, seconds }: FrameRate,
  { sheetHz, mode }: Pick<Refreshed, 'sheetHz' | 'mode'>,
): Pick<Refreshed, 'times' | 'holds'> {
  const exact = (sheetHz * seconds) / frames;
  const nearest = Math.round(exact);
  const isWhole = nearest > 0 && Math.abs(exact - nearest) <= sameShare * exact;
  const times = isWhole ? nearest : Math.floor(exact);
  return { times, holds: mode === 'locked' ? times > 0 : isWhole };
}

const refreshOf = ({ times, fed }: Refreshed) => (times * fed.frames) / fed.seconds;
const lowest = (a: Refreshed | null, b: Refreshed) => (a === null || refreshOf(b) < refreshOf(a) ? b : a);

function sentenceOf({ holds, name, times }: Refreshed, surface: string): string {
  if (holds) return `Panels of ${surface} refresh {measured}, {times} times the {fed} they are fed.`;
  if (times === 0) return `${name} on ${surface} refreshes {limit}, slower than the {fed} it is fed.`;
  return `${name} on ${surface} always refreshes {limit}, no whole multiple of the {fed} it is fed; {measured} would be one.`;
}
