import { coordinatedTiming } from '../tables/coordinated-timing';

/** Lines of vertical sync of a VESA CVT picture: they tell its aspect. */
export function syncLines(width: number, height: number): number {
  const { byAspect, other } = coordinatedTiming.syncLines;
  return byAspect.find(({ wide, high }) => width * high === height * wide)?.lines ?? other;
}
