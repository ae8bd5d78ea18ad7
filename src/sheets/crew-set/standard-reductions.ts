/**
 * Scales 1 : n of drawings on paper, from the largest picture to the smallest: those of ISO 5455 with the steps between that
 * drawings of buildings use (from memory).
 */
export const standardReductions = [
  5, 10, 20, 25, 40, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2000,
] as const;
