import { createContext, useContext } from 'react';
import type { DisplayOptions } from '../../units/display-options';

/** How figures are written below this point: lengths, locale, currency. */
export const DisplayContext = createContext<DisplayOptions>({ lengths: 'metric', locale: 'en-GB', currency: 'EUR' });

export function useDisplayOptions(): DisplayOptions {
  return useContext(DisplayContext);
}
