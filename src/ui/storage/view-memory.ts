import type { LabelGrid } from '../../sheets/labels/label-grid';
import type { DrawingState } from '../state/bench-state';
import { readPageAddress } from './page-address';
import { readLabelGrid } from './read-label-grid';

export type ThemeChoice = 'system' | 'light' | 'dark';

/** How one person likes to look at plans: kept in this browser, never in a plan. */
export interface ViewMemory {
  readonly theme: ThemeChoice;
  readonly drawing: Pick<DrawingState, 'view' | 'from' | 'tint' | 'follows'>;
  /** Address at which others reach this page, for links and codes; null: the one it was opened from. */
  readonly address: string | null;
  /** Name under which this person ticks in the build log; empty until it is given. */
  readonly who: string;
  /** Sheet of labels that was used last; null: none yet. */
  readonly labelGrid: LabelGrid | null;
  /** The short way in was put away. */
  readonly wayInClosed: boolean;
}

export const usualView: ViewMemory = {
  theme: 'system',
  drawing: { view: 'unrolled', from: 'behind', tint: 'none', follows: true },
  address: null,
  labelGrid: null,
  who: '',
  wayInClosed: false,
};

const name = 'voussoir view';

/** The part of the browser's small store that is used. */
export type TextStore = Pick<Storage, 'getItem' | 'setItem'>;

function oneOf<Value extends string>(value: unknown, values: readonly Value[], usual: Value): Value {
  return values.find((one) => one === value) ?? usual;
}

/** What was remembered; anything unreadable falls back to the usual. */
export function readViewMemory(store: TextStore | null): ViewMemory {
  let kept: {
    theme?: unknown;
    drawing?: { view?: unknown; from?: unknown; tint?: unknown; follows?: unknown };
    address?: unknown;
    labelGrid?: unknown;
    who?: unknown;
    wayInClosed?: unknown;
  };
  try {
    const text: unknown = JSON.parse(store?.getItem(name) ?? '{}');
    kept = typeof text === 'object' && text !== null ? text : {};
  } catch {
    kept = {};
  }
  const { drawing } = usualView;
  return {
    theme: oneOf(kept.theme, ['system', 'light', 'dark'], usualView.theme),
    drawing: {
      view: oneOf(kept.drawing?.view, ['stage', 'unrolled', 'above'], drawing.view),
      from: oneOf(kept.drawing?.from, ['behind', 'inside'], drawing.from),
      tint: oneOf(kept.drawing?.tint, ['none', 'processor', 'port', 'circuit', 'leg'], drawing.tint),
      follows: kept.drawing?.follows !== false,
    },
    address: typeof kept.address === 'string' && readPageAddress(kept.address) !== null ? kept.address : null,
    who: typeof kept.who === 'string' ? kept.who.replace(/[\p{Cc}\p{Cs}]/gu, '').slice(0, 60) : '',
    labelGrid: readLabelGrid(kept.labelGrid),
    wayInClosed: kept.wayInClosed === true,
  };
}

/** Remembers; a store that refuses is no loss. */
export function writeViewMemory(store: TextStore | null, memory: ViewMemory): void {
  try {
    store?.setItem(name, JSON.stringify(memory));
  } catch {
    // The view starts as usual next time.
  }
}
