import type { FrameRate } from '../../plan/primitives';
import type { Source, Step } from '../chapter';
import { coordinatedTiming } from '../tables/coordinated-timing';
import { fixedModesSource } from '../tables/fixed-modes';
import type { Canvas } from './canvas';
import { syncLines } from './sync-lines';
import { type TimingChoice, timeCanvas } from './time-canvas';
import type { VideoTiming } from './video-timing';
import { wholeRate } from './whole-rate';

const { cellPixels, full, reduced1, reduced2 } = coordinatedTiming;
const formulae: Source = { kind: 'source', text: coordinatedTiming.source, fromMemory: true };

/** Steps up to the pixel clock ('clock') of a canvas as it is timed; none where it has no timing. */
export function workTiming(figure: string, canvas: Canvas, rate: FrameRate, choice: TimingChoice): Step[] {
  const timing = timeCanvas(canvas, rate, choice);
  if (typeof timing === 'string') return [];
  switch (choice.timing) {
    case 'reduced-2':
      return workReduced(figure, timing, rate, wholeRate(rate), reduced2, reduced2.leastBlankLines);
    case 'reduced-1': {
      const least = reduced1.leastPorchLines + syncLines(timing.width, timing.height);
      return workReduced(figure, timing, rate, rate, reduced1, least);
    }
    case 'full':
      return workFull(figure, timing, rate);
    case 'cta':
    case 'container':
      return [workFixed(figure, timing)];
  }
}

function workReduced(
  figure: string,
  timing: VideoTiming,
  rate: FrameRate,
  lineRate: FrameRate,
  { blankPixels, leastBlankMicroseconds, clockStepsAMHz }: Omit<typeof reduced1, 'leastPorchLines'>,
  least: number,
): Step[] {
  const { width, height, totalHeight, pixelClockHz } = timing;
  return [
    {
      figure,
      symbol: 'lines',
      expression: 'height + max(least, floor(blank * height * frames / (1000000 * seconds - blank * frames)) + 1)',
      numbers: { height, least, blank: leastBlankMicroseconds, ...lineRate },
      value: totalHeight,
      unit: 'count',
      source: formulae,
    },
    {
      figure,
      symbol: 'clock',
      expression: 'floor((width + blank) * lines * frames / (seconds * step)) * step',
      numbers: { width, blank: blankPixels, lines: totalHeight, ...rate, step: 1_000_000 / clockStepsAMHz },
      value: pixelClockHz,
      unit: 'Hz',
      source: formulae,
    },
  ];
}

function workFull(figure: string, timing: VideoTiming, rate: FrameRate): Step[] {
  const { width, height, totalWidth, totalHeight, pixelClockHz } = timing;
  const times = { blank: full.leastSyncAndBackMicroseconds, ...rate };
  const porch = full.frontPorchLines;
  const line = (1e6 * rate.seconds - times.blank * rate.frames) / (rate.frames * (height + porch));
  const share = Math.max(
    full.leastBlankPercent,
    full.blankOffsetPercent - (full.blankSlopePercentAMillisecond * line) / 1000,
  );
  return [
    {
      figure,
      symbol: 'lines',
      expression:
        'height + porch + max(least, floor(blank * frames * (height + porch) / (1000000 * seconds - blank * frames)) + 1)',
      numbers: { height, porch, least: syncLines(width, height) + full.leastBackPorchLines, ...times },
      value: totalHeight,
      unit: 'count',
      source: formulae,
    },
    {
      figure,
      symbol: 'blank share',
      expression:
        'max(least, offset - slope * (1000000 * seconds - blank * frames) / (frames * (height + porch)) / 1000) / 100',
      numbers: {
        least: full.leastBlankPercent,
        offset: full.blankOffsetPercent,
        slope: full.blankSlopePercentAMillisecond,
        height,
        porch,
        ...times,
      },
      value: share / 100,
      unit: 'share',
      source: formulae,
    },
    {
      figure,
      symbol: 'wide',
      expression: 'width + floor(width * share / (1 - share) / cell) * cell',
      numbers: { width, share: share / 100, cell: 2 * cellPixels },
      value: totalWidth,
      unit: 'px',
      source: formulae,
    },
    {
      figure,
      symbol: 'clock',
      expression:
        'floor(wide * frames * (height + porch) / (1000000 * seconds - blank * frames) * 1000000 / step) * step',
      numbers: { wide: totalWidth, height, porch, ...times, step: 1_000_000 / full.clockStepsAMHz },
      value: pixelClockHz,
      unit: 'Hz',
      source: formulae,
    },
  ];
}

function workFixed(figure: string, { pixelClockHz }: VideoTiming): Step {
  return {
    figure,
    symbol: 'clock',
    expression: 'mode',
    numbers: { mode: pixelClockHz },
    value: pixelClockHz,
    unit: 'Hz',
    source: { kind: 'source', text: fixedModesSource },
  };
}
