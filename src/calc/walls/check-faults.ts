import type { Wall } from '../../plan/wall';
import type { Check } from '../chapter';
import type { PanelShape } from '../panels/panel-views';
import { MOST_LINES, MOST_PANELS } from '../surfaces/size-limits';
import { surfacePlace, wallField } from './judged-wall';
import { type WallFault, wallFaults } from './wall-fault';

/** Why walls cannot be laid out: a stop for each that has no panels for it. */
export function checkFaults(walls: readonly Wall[], shapes: ReadonlyMap<string, PanelShape>): Check[] {
  return wallFaults(walls, shapes).flatMap((fault, index) =>
    fault === null ? [] : [checkFault(walls[index]!, index, fault)],
  );
}

function checkFault(wall: Wall, index: number, fault: WallFault): Check {
  const about = { chapter: 'walls', severity: 'stop' } as const;
  const bands = 'bands' in fault ? fault.bands.map((band) => wallField({ index }, 'bands', band, 'panelId')) : [];
  if (fault.kind === 'panel-missing') {
    return {
      ...about,
      id: `walls.panel-missing.${wall.letter}`,
      measured: fault.bands.length,
      limit: 0,
      unit: 'count',
      where: [surfacePlace({ wall }), ...bands],
      sentence: `Wall ${wall.letter} cannot be laid out. Its bands whose panel is not in the catalogue of this plan: {measured}.`,
    };
  }
  if (fault.kind === 'widths-differ') {
    return {
      ...about,
      id: `walls.widths.${wall.letter}`,
      measured: fault.widthMm,
      limit: fault.firstMm,
      unit: 'mm',
      where: [surfacePlace({ wall }), ...bands],
      sentence: `Wall ${wall.letter} cannot be laid out: a band has panels {measured} wide on columns of {limit}.`,
    };
  }
  const tooMany = {
    ...about,
    id: `walls.too-many.${wall.letter}`,
    unit: 'count',
    where: [surfacePlace({ wall }), wallField({ index }, 'path'), wallField({ index }, 'bands')],
  } as const;
  if (fault.kind === 'too-many-columns') {
    const sentence = `Wall ${wall.letter} has {measured} columns; a surface may have {limit}.`;
    return { ...tooMany, measured: fault.columns, limit: MOST_LINES, sentence };
  }
  return {
    ...tooMany,
    measured: fault.panels,
    limit: fault.left,
    sentence: `Wall ${wall.letter} asks for {measured} panels; a plan may have {most} on all surfaces, and {limit} are left.`,
    values: { most: { value: MOST_PANELS, unit: 'count' } },
  };
}
