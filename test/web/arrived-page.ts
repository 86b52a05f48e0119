import type { BrowserContext, Page } from 'playwright-core';
import { FILE } from './browser.js';

/** A page that is opened by a link with this fragment. */
export async function withFragment(context: BrowserContext, fragment: string): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(8000);
  await page.goto(FILE + fragment);
  return page;
}

/** The link of the call that is open. */
export async function linkOf(page: Page): Promise<string> {
  await page.locator('[data-key="g"]').click();
  await page.getByText('Make the link').click();
  return page.locator('#link').inputValue();
}
