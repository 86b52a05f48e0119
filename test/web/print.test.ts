import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { browser, FILE, watch } from './browser.js';
import { begin } from './screens.js';

const { context } = browser();
/** Points (1/72 inch): ISO 216 for A4, ANSI/ASME Y14.1 for Letter. */
const SHEETS = [
  { format: 'A4', wide: 595, high: 842 },
  { format: 'Letter', wide: 612, high: 792 },
] as const;

afterEach(async () => {
  const [first, ...others] = context().pages();
  for (const page of others) await page.close();
  await first?.goto(FILE);
});

async function sheets(page: Page, format: string): Promise<readonly (readonly number[])[]> {
  const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
  return [...pdf.matchAll(/\/MediaBox\s*\[\s*([\d.\s]+)\]/g)].map(([, box = '']) =>
    box.trim().split(/\s+/).map(Number),
  );
}

/** What would run over the right edge of the sheet, or is not black on white. */
function faults(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const shown = [...document.querySelectorAll<HTMLElement>('main *')].filter(
      (one) => one.getClientRects().length > 0 && !one.closest('.heard'),
    );
    const over = shown.filter(
      (one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 1,
    );
    const words = shown.filter((one) =>
      [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()),
    );
    const grey = words.filter(
      (one) => !(one instanceof SVGElement) && getComputedStyle(one).color !== 'rgb(0, 0, 0)',
    );
    return [
      ...over.map((one) => `over: ${one.tagName} ${one.className}`),
      ...grey.map((one) => `grey: ${one.tagName} ${one.textContent?.slice(0, 40)}`),
    ];
  });
}

async function ticket(): Promise<Page> {
  const page = await context().newPage();
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.goto(FILE);
  await page.setInputFiles('input[type=file]', 'transcripts-demo/01-gateway-of-another-subnet/record.jsonl');
  await page.waitForSelector('[data-closed]');
  return page;
}

async function sum(): Promise<Page> {
  const page = await context().newPage();
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.goto(FILE);
  await page.locator('.start button', { hasText: 'Sums' }).click();
  await page.locator('#sum-address').fill('172.23.40.22');
  await page.locator('#sum-mask').fill('255.255.255.0');
  await page.locator('#sum-gateway').fill('172.23.41.1');
  await page.waitForSelector('.picture');
  return page;
}

describe.each(SHEETS)('on $format', ({ format, wide, high }) => {
  test('a ticket takes whole sheets of that size, two or three', async () => {
    const found = await sheets(await ticket(), format);
    expect(found.length).toBeGreaterThanOrEqual(2);
    expect(found.length).toBeLessThanOrEqual(3);
    // Chromium rounds a sheet up to whole CSS pixels.
    for (const [, , x = 0, y = 0] of found) {
      expect(Math.abs(x - wide)).toBeLessThan(1.5);
      expect(Math.abs(y - high)).toBeLessThan(1.5);
    }
  });

  test('a sum with its picture takes one sheet', async () => {
    expect((await sheets(await sum(), format)).length).toBe(1);
  });

  test.each([
    ['ticket', ticket],
    ['sum', sum],
  ] as const)('a %s is black on white, and no line is cut, from a dark screen too', async (_, open) => {
    const page = await open();
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    // The sheet less its margins of 16 mm, in CSS pixels.
    await page.setViewportSize({ width: Math.floor((wide / 72) * 96 - (2 * 16 * 96) / 25.4), height: 1000 });
    expect(await faults(page)).toEqual([]);
    expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe(
      'rgb(255, 255, 255)',
    );
  });
});

test('a printed sum shows what was typed and leaves out what was not', async () => {
  const page = await sum();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('#sum-mask').isVisible()).toBe(true);
  expect(await page.locator('#sum-other').isVisible()).toBe(false);
  expect(await page.locator('.picture').isVisible()).toBe(true);
});

test('a ticket is set for paper: its headings and its table, and no sign of markdown or markup', async () => {
  const page = await context().newPage();
  const { faults, requests } = watch(page);
  await begin(page);
  await page.keyboard.press('n');
  await page
    .locator('[data-field]')
    .fill('<img src=x onerror="document.title=1"> **bold** [here](https://x.example)');
  await page.keyboard.press('Enter');
  await page.waitForSelector('[data-entries="1"]');
  await page.emulateMedia({ media: 'print' });
  await page.waitForSelector('.paper h1');
  expect(await page.locator('.paper table').count()).toBeGreaterThan(0);
  expect(await page.locator('.paper h2').first().isVisible()).toBe(true);
  expect(await page.locator('.paper :is(img, a, script)').count()).toBe(0);
  expect(await page.locator('.paper').textContent()).toContain(
    '<img src=x onerror="document.title=1"> **bold**',
  );
  expect(await page.locator('[data-ticket]').isVisible()).toBe(false);
  expect(await page.title()).toBe('whydark');
  expect([faults, requests.slice(1)]).toEqual([[], []]);
});
