/** Where the model of the stage was last looked at from, in metres of its scene; null before anybody looked. */
export interface StageView {
  readonly position: readonly [number, number, number];
  readonly target: readonly [number, number, number];
}

let last: StageView | null = null;

/** Kept by the model as it is turned: a look of this tab, kept nowhere. */
export function keepStageView(view: StageView): void {
  last = view;
}

export function lastStageView(): StageView | null {
  return last;
}
