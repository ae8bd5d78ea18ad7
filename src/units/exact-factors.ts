/**
 * Exact conversion factors.
 * Source: international yard and pound agreement of 1959 (inch 25.4 mm, foot 12 inches, pound 0.45359237 kg); standard
 * acceleration of gravity 9.80665 m/s2 (CGPM 1901); International Table British thermal unit 1055.05585262 J; a ton of
 * refrigeration is 12,000 of them an hour.
 */
export const exactFactors = {
  mmAnInch: 25.4,
  mmAFoot: 304.8,
  kgAPound: 0.45359237,
  m2ASquareFoot: 0.09290304,
  m3ACubicFoot: 0.028316846592,
  wattsABtuh: 1055.05585262 / 3600,
  wattsATon: (12_000 * 1055.05585262) / 3600,
  /** Pound-force to the square foot. */
  kpaAPsf: (0.45359237 * 9.80665) / 0.09290304 / 1000,
} as const;
