/** Figures derived from one panel's sheet. `pitchMm` is that across; a check says where that upwards differs. */
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
