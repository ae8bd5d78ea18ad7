/** Figures derived from one panel's sheet; null where the sheet contradicts itself beyond use. */
export interface PanelFigures {
  readonly panelId: string;
  readonly name: string;
  readonly pitchMm: number;
  readonly pitchAcrossMm: number;
  readonly pitchUpMm: number;
  readonly areaM2: number;
  readonly pixels: number;
  readonly wattsPerM2: number;
  readonly kgPerM2: number;
  readonly pixelsPerM2: number;
}

export interface PanelsResults {
  readonly panels: readonly PanelFigures[];
}
