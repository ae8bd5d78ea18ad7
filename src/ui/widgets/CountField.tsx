import { UnitField, type UnitFieldProps } from './UnitField';

/** A whole number of things. */
export function CountField<Value extends number | null>(props: Omit<UnitFieldProps<Value>, 'unit' | 'plain'>) {
  return <UnitField least={0} {...props} unit="count" />;
}
