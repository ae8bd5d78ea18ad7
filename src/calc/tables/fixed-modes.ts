import table from '../../../shared/fixed-modes.json';

/** A published mode: raster, totals and clock at the rate that it is called by. */
export interface FixedMode {
  /** 'cta-16' is CTA-861 identification code 16, 'dmt-82' VESA DMT identification 82. */
  readonly id: string;
  readonly standard: 'cta' | 'dmt';
  readonly width: number;
  readonly height: number;
  readonly frames: number;
  readonly seconds: number;
  readonly totalWidth: number;
  readonly totalHeight: number;
  readonly pixelClockHz: number;
}

/** Progressive modes of CTA-861 and VESA DMT. */
export const fixedModes: readonly FixedMode[] = table.modes.map(({ pixelClockKHz, ...mode }) => ({
  ...mode,
  standard: mode.id.startsWith('cta') ? 'cta' : 'dmt',
  pixelClockHz: pixelClockKHz * 1000,
}));

/** Where the fixed modes come from. */
export const fixedModesSource = `${table.edition}, ${table.clause}`;
