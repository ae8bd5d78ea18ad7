import { memo } from 'react';
import type { PlacedText } from '../../sheets/place-labels';
import { textHeights } from './text-heights';

/** Texts in pixels of the window, each in the middle of its box, with a rim of the ground colour so that lines do not cross it. */
export const Texts = memo(function Texts({ texts }: { readonly texts: readonly PlacedText[] }) {
  return (
    <>
      {texts.map((text) => {
        const x = round(text.x + text.width / 2);
        const y = round(text.y + text.height / 2);
        return (
          <text
            key={`${text.text} ${text.x} ${text.y}`}
            className={`sheet-text ink-${text.pen}`}
            fontSize={textHeights[text.size]}
            x={x}
            y={y}
            {...(text.turned ? { transform: `rotate(-90 ${x} ${y})` } : {})}
          >
            {text.text}
          </text>
        );
      })}
    </>
  );
});

const round = (px: number) => Math.round(px * 10) / 10;
