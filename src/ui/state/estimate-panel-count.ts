import { bandRows } from '../../plan/band-rows';
import type { Ceiling } from '../../plan/ceiling';
import { pathColumns } from '../../plan/path-columns';
import type { Plan } from '../../plan/plan';

/** Area of the box round a ceiling's outline in mm2. */
function outlineBoxMm2({ outline }: Ceiling): number {
  switch (outline.kind) {
    case 'rectangle':
      return outline.widthMm * outline.depthMm;
    case 'circle':
      return outline.diameterMm ** 2;
    case 'polygon': {
      const xs = outline.points.map((point) => point.xMm);
      const ys = outline.points.map((point) => point.yMm);
      return (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
    }
  }
}

/** About how many panels a plan has, from above and without laying it out: enough to choose where it is evaluated. */
export function estimatePanelCount(plan: Pick<Plan, 'walls' | 'ceilings' | 'catalogue'>): number {
  const onWalls = plan.walls.map((wall) => {
    const columns = pathColumns(wall.path);
    return columns * bandRows(wall.bands);
  });
  const onCeilings = plan.ceilings.map((ceiling) => {
    const panel = plan.catalogue.panels.find((one) => one.id === ceiling.panelId);
    return panel ? Math.ceil(outlineBoxMm2(ceiling) / (panel.size.widthMm * panel.size.heightMm)) : 0;
  });
  return [...onWalls, ...onCeilings].reduce((sum, count) => sum + count, 0);
}
