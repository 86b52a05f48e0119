import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { browser, FILE } from './browser.js';
import { begin, goOnUntil } from './screens.js';

const { context } = browser();

afterEach(async () => {
  const [first, ...others] = context().pages();
  for (const page of others) await page.close();
  await first?.goto(FILE);
  await first?.evaluate(() => localStorage.clear());
});

/** Buttons and fields that a thumb in a glove would miss: under 48 CSS pixels high. */
function tooSmall(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'main :is(button, .button, summary, select, input:not([type=file], [type=checkbox]))',
      ),
    ]
      .filter((one) => one.getClientRects().length > 0)
      .filter((one) => one.getBoundingClientRect().height < 48)
      .map((one) => `${one.className} ${one.textContent} ${one.getBoundingClientRect().height}`),
  );
}

async function narrow(): Promise<Page> {
  const page = await context().newPage();
  await page.setViewportSize({ width: 360, height: 740 });
  return page;
}

test('every target is at least 48 px high, at each kind of step and in each view', async () => {
  const page = await narrow();
  await page.goto(FILE);
  await page.waitForSelector('.start');
  expect(await tooSmall(page)).toEqual([]);
  await begin(page, '2');
  for (const wanted of ['[data-entries="0"]', '[data-prompt] [data-field]', '[data-prompt] [data-done]']) {
    await goOnUntil(page, wanted);
    expect(await tooSmall(page)).toEqual([]);
  }
  for (const view of await page.locator('.views button').all()) {
    await view.click();
    expect(await tooSmall(page)).toEqual([]);
  }
});

test('one part shows at a time', async () => {
  const page = await narrow();
  await begin(page, '2');
  const parts = ['.part.step', '.part.path', '.part.causes', '.part.answers', '.part.ticket'];
  for (const [at, view] of (await page.locator('.views button').all()).entries()) {
    await view.click();
    const shown = await Promise.all(parts.map((part) => page.locator(part).isVisible()));
    expect(shown).toEqual(parts.map((_, other) => other === at));
  }
});

test('a whole answer is given by touch alone', async () => {
  const page = await narrow();
  await page.goto(FILE);
  await page.locator('.start [data-choice]').nth(1).click();
  await page.locator('[data-prompt] [data-choice]').first().click();
  await page.waitForSelector('[data-entries="1"]');
});

test('the words to say come after the cautions and before the answers', async () => {
  const page = await narrow();
  await begin(page, '2');
  const order = await page.evaluate(() =>
    [...document.querySelectorAll('.prompt .say, .prompt .find, .prompt .choices, .prompt .commands')].map(
      (one) => one.className.split(' ').at(-1),
    ),
  );
  expect(order).toEqual(['say', 'find', 'choices', 'commands']);
});

test('letters and digits do nothing once they are switched off, and the buttons still do', async () => {
  const page = await context().newPage();
  await begin(page);
  await page.locator('footer button').last().click();
  await page.keyboard.press('1');
  await page.keyboard.press('s');
  expect(await page.locator('[data-asked="step:0"]').count()).toBe(1);
  await page.locator('[data-prompt] [data-choice]').first().click();
  await page.waitForSelector('[data-entries="1"]');
});

test('on paper only the ticket is left', async () => {
  const page = await context().newPage();
  await begin(page);
  await page.emulateMedia({ media: 'print' });
  await page.waitForSelector('.paper h1');
  expect(await page.locator('.paper').isVisible()).toBe(true);
  for (const part of ['.part.step', '.part.path', '.part.causes', '.part.answers', '.top', 'footer'])
    expect(await page.locator(part).isVisible()).toBe(false);
});

test('written from right to left nothing is pushed out of the page', async () => {
  const page = await narrow();
  await begin(page, '2');
  await page.evaluate(() => document.documentElement.setAttribute('dir', 'rtl'));
  const wide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(wide).toBe(0);
});
