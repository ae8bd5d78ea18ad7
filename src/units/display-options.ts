/** How figures are shown: an argument of every function that writes one, never a setting of the module. */
export interface DisplayOptions {
  readonly lengths: 'metric' | 'feet';
  /** BCP 47 tag: decides the decimal sign and how money is written. */
  readonly locale: string;
  /** ISO 4217 code. */
  readonly currency: string;
}
