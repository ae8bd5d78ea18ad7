import type { Page } from '@playwright/test';

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** One finger that goes down, moves in small steps and leaves: events of the browser's own, scrolling and all. */
export async function dragByTouch(page: Page, from: Spot, to: Spot, steps = 8): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: Spot[]) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints });
  await send('touchStart', [from]);
  for (let i = 1; i <= steps; i++) {
    await send('touchMove', [{ x: from.x + ((to.x - from.x) * i) / steps, y: from.y + ((to.y - from.y) * i) / steps }]);
  }
  await send('touchEnd', []);
  await session.detach();
}
