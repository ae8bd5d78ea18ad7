declare const unit: unique symbol;

/** An angle in degrees, as the document and the screen state it. */
export type Degrees = number & { readonly [unit]: 'degrees' };
/** An angle in radians, as Math.sin and its kin take it. */
export type Radians = number & { readonly [unit]: 'radians' };

export const degrees = (value: number): Degrees => value as Degrees;
export const radians = (value: number): Radians => value as Radians;

export const toRadians = (angle: Degrees): Radians => ((angle * Math.PI) / 180) as Radians;
export const toDegrees = (angle: Radians): Degrees => ((angle * 180) / Math.PI) as Degrees;
