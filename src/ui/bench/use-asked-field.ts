import { type RefObject, useEffect } from 'react';
import { useBench } from '../state/use-bench';
import { findField } from './find-field';

/** Time that a page has to appear before an asking is given up: pages load when first opened. */
const patienceMs = 5000;

/** Brings the field that was asked for into view and puts the focus there: after undo, from a check, from a link. */
export function useAskedField(page: RefObject<HTMLElement | null>): void {
  const asked = useBench((state) => state.asked);

  useEffect(() => {
    if (!asked) return;
    const until = performance.now() + patienceMs;
    let frame = requestAnimationFrame(function look() {
      const field = page.current && findField(page.current, asked.field);
      if (field) {
        field.scrollIntoView({ block: 'nearest' });
        field.querySelector<HTMLElement>('input, select, textarea, button')?.focus({ preventScroll: true });
        field.classList.add('asked');
        field.addEventListener('animationend', () => field.classList.remove('asked'), { once: true });
        return;
      }
      if (performance.now() < until) frame = requestAnimationFrame(look);
    });
    return () => cancelAnimationFrame(frame);
  }, [asked, page]);
}
