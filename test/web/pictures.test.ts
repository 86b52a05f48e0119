import { existsSync, mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { browser, FILE } from './browser.js';

const FOLDER = 'test/web/pictures';
const MOST = 120_000;
/** Less than a pixel of the picture for one of the page: large pictures stay small files. */
const { context } = browser({ deviceScaleFactor: 0.8 });

async function opened(page: Page, name: string, entries: number): Promise<void> {
  const lines = readFileSync(`transcripts-demo/${name}/record.jsonl`, 'utf8').split('\n');
  const { opened: time } = JSON.parse(lines[0] ?? '{}');
  // Some minutes into the call, for the time beside its name.
  await page.clock.setFixedTime(new Date(Date.parse(time) + 7 * 60_000));
  await page.goto(FILE);
  const buffer = Buffer.from(`${lines.slice(0, entries + 1).join('\n')}\n`);
  await page.setInputFiles('input[type=file]', { name: 'call.jsonl', mimeType: 'text/plain', buffer });
  await page.waitForSelector('.call');
  await page.evaluate(() => document.querySelector('.notice')?.replaceChildren());
}

const PHONE = { width: 360, height: 740 };
const DESK = { width: 1200, height: 720 };

/** The pictures of the README: what they are called, how large, and how somebody comes there. */
const PICTURES: Readonly<
  Record<string, readonly [typeof PHONE, 'light' | 'dark', (page: Page) => Promise<unknown>]>
> = {
  'on-a-call.png': [DESK, 'light', (page) => opened(page, '01-gateway-of-another-subnet', 26)],
  'on-site.png': [
    PHONE,
    'light',
    async (page) => {
      await opened(page, '18-gone-when-its-lamps-come-on', 38);
      await page.locator('.block.climb').evaluate((one) => one.scrollIntoView({ block: 'center' }));
    },
  ],
  'path-on-a-phone.png': [
    PHONE,
    'dark',
    async (page) => {
      await opened(page, '04-mask-of-half-a-network', 61);
      await page.locator('.views button').nth(1).click();
    },
  ],
  'who-reaches-whom.png': [
    PHONE,
    'light',
    async (page) => {
      await opened(page, '04-mask-of-half-a-network', 61);
      await page.locator('.views button').nth(1).click();
      await page.locator('.path > details summary').click();
      await page.locator('.path .picture').evaluate((one) => one.scrollIntoView({ block: 'center' }));
    },
  ],
  'a-sum.png': [
    PHONE,
    'dark',
    async (page) => {
      await page.goto(FILE);
      await page.locator('.start button', { hasText: 'Sums' }).click();
      await page.selectOption('#topic', 'dc-supply');
      const typed = { 'supply-volts': '12', length: '40 m', night: '0.4 A', wire: '0.5 mm2' };
      for (const [id, text] of Object.entries(typed)) await page.locator(`#sum-${id}`).fill(text);
      await page.locator('.picture').evaluate((one) => one.scrollIntoView({ block: 'center' }));
    },
  ],
};

/** `WHYDARK_PICTURES=renew npx vitest run test/web/pictures` takes them anew. */
test.runIf(process.env.WHYDARK_PICTURES === 'renew')(
  'the pictures are taken anew',
  async () => {
    mkdirSync(FOLDER, { recursive: true });
    for (const [name, [viewport, colorScheme, come]] of Object.entries(PICTURES)) {
      const page = await context().newPage();
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize(viewport);
      await come(page);
      if (viewport === DESK) await page.evaluate(() => scrollTo(0, 0));
      await page.screenshot({ path: `${FOLDER}/${name}` });
      await page.evaluate(() => localStorage.clear());
      await page.close();
    }
  },
  60_000,
);

test('each picture of the README is there, is small, and the README shows no other', () => {
  const shown = [...readFileSync('README.md', 'utf8').matchAll(/test\/web\/pictures\/([\w-]+\.png)/g)];
  expect(new Set(shown.map(([, name]) => name))).toEqual(new Set(Object.keys(PICTURES)));
  expect(existsSync(FOLDER) && readdirSync(FOLDER).sort()).toEqual(Object.keys(PICTURES).sort());
  for (const name of readdirSync(FOLDER)) expect(statSync(`${FOLDER}/${name}`).size).toBeLessThan(MOST);
});

test('each of them can be taken again', async () => {
  for (const [viewport, , come] of Object.values(PICTURES)) {
    const page = await context().newPage();
    page.setDefaultTimeout(8000);
    await page.setViewportSize(viewport);
    await come(page);
    await page.evaluate(() => localStorage.clear());
    await page.close();
  }
}, 60_000);
