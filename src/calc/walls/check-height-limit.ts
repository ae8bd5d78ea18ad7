import type { Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { toMicrometres } from '../surfaces/micrometres';
import { type JudgedWall, surfacePlace, wallField } from './judged-wall';

/** A standing wall is no higher than its panels may be stacked, a hanging one no longer than they may hang. */
export function checkHeightLimit(judged: JudgedWall): Check[] {
  const { wall, index, result, shapes } = judged;
  const stands = wall.support === 'stands';
  const limits = wall.bands.map((band) => {
    const { highestStackMm, longestHangMm } = shapes.get(band.panelId)!.lock;
    return stands ? highestStackMm : longestHangMm;
  });
  const stated = limits.filter((limit) => limit !== null);
  const least = stated.length > 0 ? Math.min(...stated) : null;
  const about = {
    id: `walls.${stands ? 'stack' : 'hang'}.${wall.letter}`,
    chapter: 'walls',
    measured: result.heightMm,
    unit: 'mm',
    where: [surfacePlace(judged)],
  } as const;
  const does = stands ? 'stands {measured} high from its foot' : 'hangs {measured} long';
  const may = stands ? 'be stacked {limit} high' : 'hang {limit} long';
  if (least !== null && result.heightMm > least) {
    const rows = rowsWithin(judged, least);
    return [
      {
        ...about,
        severity: 'stop',
        limit: least,
        where: [surfacePlace(judged), wallField(judged, 'bands')],
        sentence: `Wall ${wall.letter} ${does}; its panels may ${may} by the sheet.`,
        ...(rows !== null && {
          fix: {
            ...setFieldsFix('Take rows off the top', `rows of wall ${wall.letter}`, [
              { path: ['walls', index, 'bands', wall.bands.length - 1, 'rows'], value: rows },
            ]),
            // Fewer rows may be too few for the zones that are asked for one above the other.
            otherwise: null,
          },
        }),
      },
    ];
  }
  if (stated.length < limits.length) {
    const sentence = `Not stated: how far the panels of wall ${wall.letter} may ${stands ? 'be stacked' : 'hang'}. It ${does}.`;
    return [{ ...about, severity: 'offer', limit: null, sentence }];
  }
  return [
    { ...about, severity: 'pass', limit: least, sentence: `Wall ${wall.letter} ${does}; its panels may ${may}.` },
  ];
}

/** Rows of the top band with which the wall keeps the limit; null where it would have none left. */
function rowsWithin({ wall, result }: JudgedWall, limitMm: number): number | null {
  const { table } = result;
  const top = wall.bands.at(-1)!;
  const type = table.types.find((one) => one.panelId === top.panelId && one.turnDeg === top.turnDeg)!;
  const rowUm = toMicrometres(type.heightMm);
  const overUm = toMicrometres(result.heightMm) - toMicrometres(limitMm);
  // As many rows off as cover what is over, rounded up in whole micrometres.
  const off = (overUm + rowUm - 1 - ((overUm + rowUm - 1) % rowUm)) / rowUm;
  return top.rows > off ? top.rows - off : null;
}
