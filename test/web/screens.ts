import type { Page } from 'playwright-core';
import { appears } from './appears.js';
import { FILE } from './browser.js';

/** Opens the page fresh and begins a call: `1` is the help desk, `2` on site. */
export async function begin(page: Page, key: '1' | '2' = '1', at = FILE): Promise<void> {
  page.setDefaultTimeout(8000);
  await page.goto(at);
  await appears(page, '.start');
  await page.keyboard.press(key);
  await appears(page, '[data-entries="0"]');
}

/** Answers *can't tell* or the first choice until a step shows that holds what is looked for. */
export async function goOnUntil(page: Page, wanted: string): Promise<void> {
  for (let entries = await entriesOf(page); entries < 80; ) {
    if ((await page.locator(wanted).count()) > 0) return;
    if (await page.locator('[data-prompt] [data-field]').count()) {
      await page.keyboard.press('Escape');
      await page.keyboard.press('t');
    } else {
      // Looked at first: the next question may be such a one, and is not meant.
      const isOfSeveral = (await page.locator('[data-prompt] [data-done]').count()) > 0;
      await page.keyboard.press('1');
      if (isOfSeveral) await page.keyboard.press('Enter');
    }
    const next = entries + 1;
    await page.waitForFunction(
      (least) => Number(document.querySelector('.call')?.getAttribute('data-entries')) >= least,
      next,
    );
    entries = next;
  }
  throw new Error(`no step with ${wanted}`);
}

export async function entriesOf(page: Page): Promise<number> {
  return Number(await page.locator('.call').getAttribute('data-entries'));
}

/** A paste anywhere outside a field, as Ctrl-V makes one. */
export async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate((pasted) => {
    const data = new DataTransfer();
    data.setData('text/plain', pasted);
    const event = new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true });
    (document.activeElement ?? document.body).dispatchEvent(event);
  }, text);
}
