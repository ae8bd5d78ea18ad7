/** A sinusoidal quantity at mains frequency as its root-mean-square phasor: real and imaginary part in the unit of the quantity. */
export interface Phasor {
  readonly re: number;
  readonly im: number;
}

export const noCurrent: Phasor = { re: 0, im: 0 };

/** Magnitude and angle in degrees, anticlockwise positive (leading). */
export function phasor(magnitude: number, angleDeg: number): Phasor {
  const angle = (angleDeg * Math.PI) / 180;
  return { re: magnitude * Math.cos(angle), im: magnitude * Math.sin(angle) };
}

export function addPhasors(a: Phasor, b: Phasor): Phasor {
  return { re: a.re + b.re, im: a.im + b.im };
}

export function subtractPhasors(a: Phasor, b: Phasor): Phasor {
  return { re: a.re - b.re, im: a.im - b.im };
}

/** `value` times `turn`, where `turn` has length 1: a change of angle. */
export function turnPhasor(value: Phasor, turn: Phasor): Phasor {
  return { re: value.re * turn.re - value.im * turn.im, im: value.re * turn.im + value.im * turn.re };
}

export function magnitude(value: Phasor): number {
  return Math.hypot(value.re, value.im);
}
