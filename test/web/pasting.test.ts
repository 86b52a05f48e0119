import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { browser, FILE } from './browser.js';
import { begin, entriesOf, paste } from './screens.js';

const { context } = browser();

afterEach(async () => {
  const [first, ...others] = context().pages();
  for (const page of others) await page.close();
  await first?.goto(FILE);
  await first?.evaluate(() => localStorage.clear());
});

const CAMERA = 'Camera\nAddress 172.23.40.22\nMask 255.255.255.0\nGateway 172.23.41.1\npassword: hunter2\n';
const found = (page: Page) => page.locator('.block.sum').textContent();

test('a text pasted anywhere shows what was understood, and fills nothing in before it is agreed to', async () => {
  const page = await context().newPage();
  await begin(page);
  await paste(page, CAMERA);
  await page.waitForSelector('[data-asked^="paste:here"]');
  expect(await found(page)).toContain('172.23.40.22');
  expect(await entriesOf(page)).toBe(0);
  await page.keyboard.press('1');
  await page.waitForSelector('[data-asked^="paste:filled"]');
  expect(await found(page)).toContain("The camera's gateway: 172.23.41.1");
  expect(await entriesOf(page)).toBe(0);
  await page.keyboard.press('1');
  await page.waitForSelector('[data-entries="1"]');
  expect(await page.locator('.given').textContent()).toContain('172.23.41.1');
  // Its gateway lies outside its subnet, and pasted numbers prove it.
  expect(await page.locator('[data-ticket]').textContent()).toContain('*Proven*');
});

test('no password of a text is kept, shown or saved', async () => {
  const page = await context().newPage();
  await begin(page);
  await paste(page, CAMERA);
  for (const stage of ['here', 'filled']) {
    await page.waitForSelector(`[data-asked^="paste:${stage}"]`);
    await page.keyboard.press('1');
  }
  await page.waitForSelector('[data-entries="1"]');
  const all = await page.evaluate(
    () => document.getElementById('page')?.textContent + Object.values(localStorage).join(''),
  );
  expect(all).not.toContain('hunter2');
  expect(all).toContain('172.23.41.1');
});

test('a text that is left out leaves no trace', async () => {
  const page = await context().newPage();
  await begin(page);
  await paste(page, CAMERA);
  await page.waitForSelector('[data-asked^="paste:here"]');
  await page.keyboard.press('2');
  await page.waitForSelector('[data-asked="step:0"]');
  expect(await page.evaluate(() => Object.values(localStorage).join(''))).not.toContain('172.23.40.22');
});

test('what a text would fill in is still left out when somebody says no to it', async () => {
  const page = await context().newPage();
  await begin(page);
  await paste(page, CAMERA);
  await page.waitForSelector('[data-asked^="paste:here"]');
  await page.keyboard.press('1');
  await page.waitForSelector('[data-asked^="paste:filled"]');
  await page.keyboard.press('2');
  await page.waitForSelector('[data-asked="step:0"]');
  expect(await entriesOf(page)).toBe(0);
});

test('numbers that belong to nobody are asked about', async () => {
  const page = await context().newPage();
  await begin(page);
  await paste(page, 'Address 172.23.40.22\nMask 255.255.255.0\nGateway 172.23.41.1\n');
  await page.waitForSelector('[data-asked^="paste:whose"]');
  await page.keyboard.press('1');
  await page.waitForSelector('[data-asked^="paste:here"]');
  await page.keyboard.press('1');
  await page.waitForSelector('[data-asked^="paste:filled"]');
  expect(await found(page)).toContain("The camera's mask: 255.255.255.0");
});

test('a page of text pasted into the field of one answer is taken as a text', async () => {
  const page = await context().newPage();
  await begin(page);
  await page.keyboard.press('a');
  await page.locator('#told').fill("camera's address");
  await page.keyboard.press('Enter');
  await page.waitForSelector('#answer:focus');
  await paste(page, CAMERA);
  await page.waitForSelector('[data-asked^="paste:here"]');
});
