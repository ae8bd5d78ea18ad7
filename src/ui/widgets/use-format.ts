import { useCallback } from 'react';
import { formatQuantity } from '../../units/format-quantity';
import type { Unit } from '../../units/unit';
import { useDisplayOptions } from './display-context';

/** Writes figures as the person reads them; what is null reads `absent`. Stable until the way of showing changes. */
export type Format = (value: number | null, unit: Unit, absent?: string) => string;

export function useFormat(): Format {
  const options = useDisplayOptions();
  return useCallback(
    (value, unit, absent = 'not known') => (value === null ? absent : formatQuantity(value, unit, options)),
    [options],
  );
}
