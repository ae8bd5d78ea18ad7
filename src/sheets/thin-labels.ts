import type { LabelSeries } from './drawing';
import { type LabelView, type TextBox, textBox } from './text-box';

/** Every so many texts of a numbered series stay; `short`: in their short form. */
export interface Thinned {
  readonly step: number;
  readonly short: boolean;
}

const steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000] as const;
/** So many of the neighbours may still touch (a zone's end); the later one then gives way. */
const toleratedShare = 0.2;

/** The closest step of 1, 2, 5, 10 ... at which neighbours in a series keep clear of each other at this scale, wherever the window is. */
export function thinLabels(series: LabelSeries, view: LabelView): Thinned {
  if (series.numberOf === null) return { step: 1, short: false };
  for (const step of steps) {
    for (const short of [false, true]) if (hasRoom(series, view, step, short)) return { step, short };
  }
  return { step: 1000, short: true };
}

function hasRoom(series: LabelSeries, view: LabelView, step: number, short: boolean): boolean {
  let before: TextBox | null = null;
  let shown = 0;
  let touching = 0;
  for (let i = 0; i < series.count; i++) {
    if (series.numberOf!(i) % step !== 0) continue;
    const { to: _anywhere, ...label } = series.at(i);
    const box = textBox(label, short ? (label.short ?? label.text) : label.text, series.size, view)!;
    shown++;
    if (before !== null && touches(before, box)) touching++;
    before = box;
  }
  return touching <= shown * toleratedShare;
}

function touches(a: TextBox, b: TextBox): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
