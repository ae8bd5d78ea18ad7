import type { BrowserContext } from '@playwright/test';

export interface ClickCounter {
  readonly count: () => number;
  readonly reset: () => void;
}

/** Counts what a person would count: clicks of a pointer. A button pressed by the keyboard or by code is none. */
export async function countClicks(context: BrowserContext): Promise<ClickCounter> {
  let clicks = 0;
  await context.exposeFunction('countClick', () => {
    clicks++;
  });
  await context.addInitScript(() => {
    const report = (event: MouseEvent) => {
      if (event.isTrusted && event.detail > 0) (window as unknown as { countClick: () => void }).countClick();
    };
    window.addEventListener('click', report, { capture: true });
  });
  return {
    count: () => clicks,
    reset: () => {
      clicks = 0;
    },
  };
}
