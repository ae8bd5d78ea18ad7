import type { DisplayOptions } from '../../units/display-options';
import { measures, unitMeasures } from '../../units/measures';
import { plainUnit } from '../../units/plain-unit';
import type { Unit } from '../../units/unit';

export interface EditableQuantity {
  readonly text: string;
  /** Unit that stands behind the box; empty where the text carries its own. */
  readonly suffix: string;
}

/** Parts of an inch that a tape shows; what lies between is written with decimals. */
const partsOfInch = 64;

function feetText(mm: number): string {
  const inches = Math.abs(mm) / 25.4;
  const parts = Math.round(inches * partsOfInch);
  const onTape = Math.abs(inches * partsOfInch - parts) < 1e-6;
  const feet = Math.floor(inches / 12 + 1e-9);
  const sign = mm < 0 ? '-' : '';
  if (!onTape) return `${sign}${feet === 0 ? '' : `${feet}' `}${Number((inches - feet * 12).toFixed(6))}"`;
  const whole = Math.floor(parts / partsOfInch) - feet * 12;
  let over = parts % partsOfInch;
  let under = partsOfInch;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  const inchText = over === 0 ? `${whole}"` : `${whole === 0 ? '' : `${whole} `}${over}/${under}"`;
  return feet === 0 ? `${sign}${inchText}` : `${sign}${feet}' ${inchText}`;
}

/**
 * A figure as a field shows it for editing: never rounded and without marks for thousands, so that reading it back gives
 * the same figure (lengths to the micrometre). Metres keep two decimals at least.
 */
export function editableQuantity(value: number, unit: Unit, options: DisplayOptions, plain?: string): EditableQuantity {
  const spelling = plainUnit(unit, options, plain);
  if (spelling === 'ft') return { text: feetText(value), suffix: '' };
  const { dimension, size } = unitMeasures[unit];
  const inPlain = (value * size) / (measures[dimension].sizes[spelling] ?? 1);
  const exact = Number(inPlain.toPrecision(12));
  const decimals = /\.(\d+)$/.exec(String(exact))?.[1]?.length ?? 0;
  const text = spelling === 'm' && decimals < 2 && !/e/.test(String(exact)) ? exact.toFixed(2) : String(exact);
  return { text, suffix: spelling };
}
