/**
 * A drawing as plain data: a display list in millimetres of the thing drawn (full size), x to the right, y down as on
 * paper. The screen's SVG and the writers for paper and CAD share it. Line weights, text and marks that must keep their
 * size at every scale are named here and sized by whoever renders.
 */
export interface Drawing {
  readonly title: string;
  /** Everything but texts lies inside. */
  readonly box: Box;
  /** In order of painting: fills, strokes, marks (arrow heads, entries), dimensions, texts. */
  readonly fills: readonly Fill[];
  readonly strokes: readonly Stroke[];
  readonly marks: readonly Fill[];
  readonly dimensions: readonly Dimension[];
  /** In order of importance: where two texts would touch, the later one gives way. */
  readonly labels: readonly LabelSeries[];
  /** What the reader must know, such as from which side it is seen. */
  readonly notes: readonly string[];
  /** Meaning of each tint, where texts in the drawing do not say it. */
  readonly legend: readonly LegendEntry[];
}

export interface Box {
  readonly leftMm: number;
  readonly topMm: number;
  readonly rightMm: number;
  readonly bottomMm: number;
}

/** From the heaviest: the cut edge, the border of a zone, the outline of a run, objects, lines through, the grid. */
export type Weight = 'cut' | 'heavy' | 'medium' | 'fine' | 'hair';
/** ink, softer ink, a faint line, what is picked out (cables), a limit. */
export type Pen = 'ink' | 'soft' | 'faint' | 'accent' | 'limit';
/** dashed: above or below the plane of the drawing; chain: a centre line or an imagined one. */
export type Dash = 'solid' | 'dashed' | 'chain';
/** Layers of a CAD file; letters only. */
export type Layer =
  | 'tint'
  | 'grid'
  | 'wall'
  | 'ceiling'
  | 'runs'
  | 'homeruns'
  | 'zones'
  | 'limits'
  | 'changes'
  | 'hall'
  | 'vehicle'
  | 'dimensions'
  | 'texts';

/** Polylines end to end: polyline i has the points from `ends[i - 1]` (0 for the first) up to, not including, `ends[i]`. */
export interface Lines {
  /** x0 y0 x1 y1 ... */
  readonly xyMm: Float64Array;
  readonly ends: Uint32Array;
  readonly closed: boolean;
}

export interface Stroke {
  readonly layer: Layer;
  readonly pen: Pen;
  readonly weight: Weight;
  readonly dash: Dash;
  /** Least scale, in screen pixels a millimetre, at which it is worth showing. */
  readonly leastScale: number;
  readonly lines: Lines;
}

export interface Fill {
  readonly layer: Layer;
  /** A pen, the sheet itself (hides what is under it), or a tint by its number. */
  readonly paint: Pen | 'sheet' | number;
  readonly leastScale: number;
  readonly lines: Lines;
}

/** A dimension line with its ticks; the text stands at the middle of what is visible of it,
 * above a level line, and turned, on the left, beside an upright one. */
export interface Dimension {
  readonly x1Mm: number;
  readonly y1Mm: number;
  readonly x2Mm: number;
  readonly y2Mm: number;
  readonly text: string;
  /** Where the text stands off the line instead: direction, y down, and clear distance in heights of the text. */
  readonly aside?: { readonly x: number; readonly y: number; readonly gap: number };
}

export type TextSize = 'small' | 'normal' | 'large';

export interface Label {
  readonly text: string;
  /** Said instead where the whole text has no room. */
  readonly short?: string;
  readonly xMm: number;
  readonly yMm: number;
  /** Where given, the text belongs to the line from (xMm, yMm) to here and stays on the part of it that is visible. */
  readonly to?: { readonly xMm: number; readonly yMm: number; readonly at: 'start' | 'middle' };
  /** Direction, y down, in which the text stands off its point; both 0: centred on it. */
  readonly asideX: number;
  readonly asideY: number;
  /** Clear distance from the point, in heights of the text. */
  readonly gap: number;
  /** Read from the right, upwards. */
  readonly turned?: boolean;
}

/** Texts of one kind. `at` makes a label on demand, so that a name for every panel costs nothing until it shows. */
export interface LabelSeries {
  readonly layer: Layer;
  readonly pen: Pen;
  readonly size: TextSize;
  readonly leastScale: number;
  readonly count: number;
  readonly at: (index: number) => Label;
  /** A numbered row of texts is thinned to every 2nd, 5th, 10th ... number; null: each stands for itself. */
  readonly numberOf: ((index: number) => number) | null;
  /** Indices of the labels that can lie in a part of the drawing; left out: all of them. */
  readonly near?: (part: Box) => Iterable<number>;
}

export interface LegendEntry {
  readonly tint: number;
  readonly text: string;
}
