import type { Page } from 'playwright-core';

/** Waits until something is there, looking at every frame: `waitForSelector` looks ever more seldom. */
export async function appears(page: Page, selector: string): Promise<void> {
  await page.waitForFunction((wanted) => document.querySelector(wanted) !== null, selector);
}
