export interface HeatResults {
  readonly fullWhiteW: number;
  readonly typicalW: number;
  readonly fullWhiteBtuh: number;
  readonly fullWhiteTons: number;
  readonly airM3PerS: number;
  /** Minutes until the room is `roomRiseK` warmer without cooling; null without a hall. */
  readonly warmUpMin: number | null;
  readonly bySource: readonly { readonly name: string; readonly fullWhiteW: number; readonly typicalW: number }[];
}
