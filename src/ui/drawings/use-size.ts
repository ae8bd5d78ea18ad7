import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Size } from './view';

/** Size of an element in pixels, followed as it changes; null before it is known or while it is hidden. */
export function useSize(ref: RefObject<Element | null>): Size | null {
  const [size, setSize] = useState<Size | null>(null);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const measure = () => {
      const { width, height } = element.getBoundingClientRect();
      setSize((before) => {
        if (width < 1 || height < 1) return null;
        return before !== null && before.width === width && before.height === height ? before : { width, height };
      });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return size;
}
