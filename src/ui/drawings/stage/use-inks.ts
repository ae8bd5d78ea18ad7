import { type RefObject, useEffect, useState } from 'react';
import { Color } from 'three';
import { tintCount } from '../../../sheets/tint-panels';
import type { Rgb } from './tint-colours';

/** The bench's colours as the scene takes them. */
export interface Inks {
  readonly paper: Color;
  readonly card: Color;
  readonly ink: Color;
  readonly soft: Color;
  readonly hair: Color;
  readonly accent: Color;
  /** A panel that has gone dark. */
  readonly dark: Color;
  /** How dark a shadow is: paper that is dark itself wants more. */
  readonly shade: number;
  readonly tints: readonly Rgb[];
}

/** Colours of the CSS tokens as they hold at an element; read again when the theme changes. Null before the element is there. */
export function useInks(ref: RefObject<HTMLElement | null>): Inks | null {
  const [inks, setInks] = useState<Inks | null>(null);
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const read = () => setInks(readInks(element));
    read();
    const observer = new MutationObserver(read);
    observer.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme', 'class', 'style'] });
    const scheme = window.matchMedia('(prefers-color-scheme: dark)');
    scheme.addEventListener('change', read);
    return () => {
      observer.disconnect();
      scheme.removeEventListener('change', read);
    };
  }, [ref]);
  return inks;
}

function readInks(element: HTMLElement): Inks {
  const probe = document.createElement('span');
  element.append(probe);
  const pen = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  const colourOf = (css: string): Color => {
    probe.style.color = css;
    if (pen === null) return new Color('gray');
    // Painting it settles every way in which CSS writes a colour, mixtures included.
    pen.fillStyle = getComputedStyle(probe).color;
    pen.fillRect(0, 0, 1, 1);
    const [red, green, blue] = pen.getImageData(0, 0, 1, 1).data;
    return new Color().setRGB(red! / 255, green! / 255, blue! / 255, 'srgb');
  };
  const paper = colourOf('var(--paper)');
  const inks: Inks = {
    paper,
    shade: paper.g > 0.3 ? 0.12 : 0.55,
    card: colourOf('var(--card)'),
    ink: colourOf('var(--ink)'),
    soft: colourOf('var(--ink-2)'),
    hair: colourOf('var(--hair)'),
    accent: colourOf('var(--accent)'),
    dark: colourOf('var(--dark-panel)'),
    tints: Array.from({ length: tintCount }, (_, i) => {
      const { r, g, b } = colourOf(`var(--tint-${i})`);
      return [r, g, b] as const;
    }),
  };
  probe.remove();
  return inks;
}
