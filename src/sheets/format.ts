import type { Unit } from '../units/unit';

/** Turns a figure of the plan into words and digits; whoever calls chooses locale and system of lengths. */
export type Format = (value: number, unit: Unit) => string;
