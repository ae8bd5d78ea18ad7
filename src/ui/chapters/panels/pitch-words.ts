import type { PanelFigures } from '../../../calc/panels/panel-result';

/** Pitch in mm to two places, as sheets give it; across and up where those differ by then. */
export function pitchWords({ pitchAcrossMm, pitchUpMm }: Pick<PanelFigures, 'pitchAcrossMm' | 'pitchUpMm'>): string {
  const across = pitchAcrossMm.toFixed(2);
  const up = pitchUpMm.toFixed(2);
  return across === up ? across : `${across} × ${up}`;
}
