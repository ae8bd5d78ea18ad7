import { useMemo } from 'react';
import { useBench } from '../../state/use-bench';

/** Writes a moment short, in the person's own way and without its year: '25 Nov, 14:05'. */
export function useMoment(): (atMs: number) => string {
  const locale = useBench((state) => state.locale);
  return useMemo(() => {
    const format = new Intl.DateTimeFormat(locale, {
      day: 'numeric',
      month: 'short',
      hour: '2-digit',
      minute: '2-digit',
    });
    return (atMs) => format.format(atMs);
  }, [locale]);
}
