import type { Plan } from './plan';

/** The first letter that no surface has; 'Z' where all are taken, which a command then refuses. */
export function freeLetter(plan: Plan): string {
  const taken = new Set([...plan.walls, ...plan.ceilings].map(({ letter }) => letter));
  return [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].find((letter) => !taken.has(letter)) ?? 'Z';
}
