import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { browser, FILE, watch } from './browser.js';
import { begin, entriesOf, goOnUntil } from './screens.js';

const { context } = browser();
const folder = mkdtempSync(join(tmpdir(), 'whydark-kept-'));

afterEach(async () => {
  const [first, ...others] = context().pages();
  for (const page of others) await page.close();
  await first?.goto(FILE);
  await first?.evaluate(() => localStorage.clear());
});

async function saved(page: Page, button: string): Promise<string> {
  if (button === 'Save the call to a file' && (await page.locator('.handing').count()) === 0)
    await page.locator('[data-key="g"]').click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('button', { hasText: button }).first().click(),
  ]);
  const path = join(folder, download.suggestedFilename());
  await download.saveAs(path);
  return path;
}

const ticketOn = (page: Page) => page.locator('[data-ticket]').textContent();

describe('a call', () => {
  test('is there again after a reload, with its answers and its ticket', async () => {
    const page = await context().newPage();
    await begin(page);
    await goOnUntil(page, '[data-entries="7"]');
    const ticket = await ticketOn(page);
    await page.reload();
    await page.keyboard.press('3');
    await page.waitForSelector('[data-entries="7"]');
    expect(await ticketOn(page)).toBe(ticket);
  });

  test('keeps what was taken back in its record, as the terminal does', async () => {
    const page = await context().newPage();
    await begin(page);
    await goOnUntil(page, '[data-entries="3"]');
    await page.keyboard.press('b');
    await page.waitForSelector('[data-entries="2"]');
    const kept = await page.evaluate(() => Object.values(localStorage).join(''));
    const types = kept
      .trim()
      .split('\n')
      .slice(1)
      .map((line: string) => JSON.parse(line).type);
    expect(types).toEqual(['answered', 'answered', 'answered', 'undone']);
  });

  test('is gone from the browser once it is closed', async () => {
    const page = await context().newPage();
    await begin(page);
    await goOnUntil(page, '[data-entries="2"]');
    expect(await page.evaluate(() => localStorage.length)).toBe(1);
    await page.keyboard.press('s');
    await page.waitForSelector('[data-asked^="stop"]');
    await page.keyboard.press('1');
    await page.waitForSelector('[data-closed]');
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
  });

  test('is gone from the browser when it is to be forgotten, and only after a second question', async () => {
    const page = await context().newPage();
    await begin(page);
    await page.locator('.top button', { hasText: 'Forget this' }).click();
    await page.waitForSelector('[data-asked^="forget"]');
    expect(await page.evaluate(() => localStorage.length)).toBe(1);
    await page.keyboard.press('2');
    await page.waitForSelector('.start');
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
  });

  test('is forgotten from the beginning of the page too, and not by one press', async () => {
    const page = await context().newPage();
    await begin(page);
    await page.reload();
    await page.locator('.kept .forget').click();
    expect(await page.evaluate(() => localStorage.length)).toBe(1);
    await page.locator('.kept .forget').click();
    await page.waitForFunction(() => document.querySelector('.kept') === null);
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
  });

  test('saved to a file is a record that the terminal reads, with the same ticket', async () => {
    const page = await context().newPage();
    await begin(page, '2');
    await goOnUntil(page, '[data-entries="12"]');
    const record = await saved(page, 'Save the call to a file');
    const out = execFileSync('node', ['dist/whydark.js', 'ticket', record], { encoding: 'utf8' });
    expect(out).toBe(await ticketOn(page));
    expect(readFileSync(await saved(page, 'Save the ticket'), 'utf8')).toBe(out);
  });

  test('is gone on with from a file that the terminal kept', async () => {
    const page = await context().newPage();
    const record = 'transcripts-demo/01-gateway-of-another-subnet/record.jsonl';
    const lines = readFileSync(record, 'utf8').split('\n').slice(0, 10);
    const path = join(folder, 'half.jsonl');
    // The last line was cut off while it was being written.
    writeFileSync(path, `${lines.join('\n')}\n{"at":"2026-`);
    await page.goto(FILE);
    await page.setInputFiles('input[type=file]', path);
    await page.waitForSelector('[data-entries="9"]');
    await goOnUntil(page, '[data-entries="10"]');
    expect(await entriesOf(page)).toBe(10);
    const again = await saved(page, 'Save the call to a file');
    const text = readFileSync(again, 'utf8');
    expect(text.startsWith(`${lines.join('\n')}\n`)).toBe(true);
    expect(text).not.toContain('"at":"2026-\n');
  });

  test('copies its ticket with one key', async () => {
    const page = await context().newPage();
    await context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await begin(page);
    await goOnUntil(page, '[data-entries="5"]');
    await page.keyboard.press('m');
    await page.waitForFunction(() => document.querySelector('.notice')?.textContent !== '');
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(await ticketOn(page));
  });
});

test('where the browser keeps nothing the call goes on, and the page says so', async () => {
  const page = await context().newPage();
  const { faults } = watch(page);
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('refused', 'SecurityError');
      },
    });
  });
  await begin(page);
  await goOnUntil(page, '[data-entries="2"]');
  expect(await page.locator('.notice').textContent()).toContain('keeps nothing');
  expect(faults).toEqual([]);
});

test('another tab that goes on with the same call is told of', async () => {
  const page = await context().newPage();
  await begin(page);
  const other = await context().newPage();
  await other.goto(FILE);
  await other.keyboard.press('3');
  await other.waitForSelector('[data-entries="0"]');
  await other.keyboard.press('1');
  await page.waitForFunction(() => document.querySelector('.notice')?.textContent !== '');
  expect(await page.locator('.notice').textContent()).toContain('another tab');
});

describe('a file that is no record of ours is refused in words', () => {
  test.each([
    ['another kind of file', 'Dear all,\n', 'does not begin with the first line of a call record'],
    ['a damaged line', null, 'Line 3'],
    ['another rule base', 'other', 'was held with rule base 0.9.9'],
  ])('%s', async (_, text, says) => {
    const record = readFileSync('transcripts-demo/01-gateway-of-another-subnet/record.jsonl', 'utf8');
    const [header = '', ...rest] = record.split('\n');
    const other = JSON.stringify({
      ...JSON.parse(header),
      rules: { version: '0.9.9', digest: 'ab'.repeat(32) },
    });
    const path = join(folder, 'x.jsonl');
    const damaged = [header, rest[0], 'oh', ...rest.slice(1)].join('\n');
    writeFileSync(path, text === null ? damaged : text === 'other' ? `${other}\n` : text);
    const page = await context().newPage();
    await page.goto(FILE);
    await page.setInputFiles('input[type=file]', path);
    await page.waitForFunction(() => document.querySelector('.notice')?.textContent !== '');
    expect(await page.locator('.notice').textContent()).toContain(says);
    expect(await page.locator('.start').count()).toBe(1);
  });
});
