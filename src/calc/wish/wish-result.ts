/** One wished or stated limit beside what the plan comes to. */
export interface WishLine {
  readonly name: string;
  readonly field: string;
  readonly asked: number | null;
  readonly planned: number | null;
  readonly unit: 'mm' | 'A' | 'W' | 'money' | 'count';
}

export interface WishResults {
  readonly lines: readonly WishLine[];
}
