import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { resume } from '../../src/cli/begin-or-resume.js';
import { linkOf, withFragment as openedWith } from './arrived-page.js';
import { browser, FILE, watch } from './browser.js';
import { loaded } from './built.js';
import { fragmentWith, recordIn, withChecksumOf } from './links.js';
import { begin, goOnUntil, paste } from './screens.js';

const { context } = browser();
const DEMO = readFileSync('transcripts-demo/01-gateway-of-another-subnet/record.jsonl', 'utf8');
const HALF = `${DEMO.split('\n').slice(0, 12).join('\n')}\n`;

afterEach(async () => {
  const [first, ...others] = context().pages();
  for (const page of others) await page.close();
  await first?.goto(FILE);
  await first?.evaluate(() => localStorage.clear());
});

const withFragment = (fragment: string): Promise<Page> => openedWith(context(), fragment);

async function saved(page: Page): Promise<string> {
  if ((await page.locator('.handing').count()) === 0) await page.locator('[data-key="g"]').click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('.handing button', { hasText: 'Save the call' }).click(),
  ]);
  const path = join(mkdtempSync(join(tmpdir(), 'whydark-handed-')), 'call.jsonl');
  await download.saveAs(path);
  return path;
}

const keptIn = (page: Page) => page.evaluate(() => ({ ...localStorage }));
const notice = (page: Page) => page.locator('.notice').textContent();
const told = (page: Page) =>
  page.waitForFunction(() => document.querySelector('.notice')?.textContent !== '');

describe('a link', () => {
  test('holds the call as it is, says so before it is made, and is not made unasked', async () => {
    const page = await withFragment('');
    await begin(page);
    await goOnUntil(page, '[data-entries="4"]');
    await page.keyboard.press('n');
    await page.locator('[data-field]').fill('Ring 020 7946 0958');
    await page.keyboard.press('Enter');
    await page.waitForSelector('[data-entries="5"]');
    await page.keyboard.press('g');
    expect(await page.locator('.handing').textContent()).toContain('4 answers, 1 note.');
    expect(await page.locator('.handing').textContent()).toContain('Hidden with x');
    expect(await page.locator('#link').count()).toBe(0);
    await page.getByText('Make the link').click();
    const masked = recordIn(await page.locator('#link').inputValue());
    expect(masked).not.toContain('7946 0958');
    expect(masked.trim().split('\n').length).toBe(6);
    await page.locator('.handing input[type=checkbox]').check();
    expect(await page.locator('#link').count()).toBe(0);
    expect(await page.locator('.handing').textContent()).toContain('nothing is hidden');
    await page.getByText('Make the link').click();
    const open = recordIn(await page.locator('#link').inputValue());
    expect(open).toBe(Object.values(await keptIn(page))[0]);
  });

  test('of the terminal’s record is opened only after a yes, and leaves the address bar', async () => {
    const page = await withFragment(fragmentWith(HALF));
    const { requests } = watch(page);
    await page.waitForSelector('#arrived-heading');
    expect(await page.locator('main').textContent()).toContain('opened 2026-11-23 07:40 UTC');
    expect(page.url()).toBe(FILE);
    expect(await keptIn(page)).toEqual({});
    await page.keyboard.press('2');
    await page.waitForSelector('[data-entries="11"]');
    expect(Object.values(await keptIn(page))).toEqual([HALF]);
    expect(requests).toEqual([]);
  });

  test('that is not wanted leaves everything as it was', async () => {
    const page = await withFragment('');
    await begin(page);
    await goOnUntil(page, '[data-entries="2"]');
    const before = await keptIn(page);
    await paste(page, `Here it is: https://desk.example/page/${fragmentWith(HALF)} - please go on`);
    await page.waitForSelector('#arrived-heading');
    expect(await page.locator('main').textContent()).toContain('stays in this browser');
    await page.keyboard.press('1');
    await page.waitForSelector('[data-entries="2"]');
    expect(await keptIn(page)).toEqual(before);
  });

  test('would take the place of a kept call that holds something else, and says so', async () => {
    const page = await withFragment(fragmentWith(HALF));
    await page.waitForSelector('#arrived-heading');
    await page.keyboard.press('2');
    await page.waitForSelector('[data-entries="11"]');
    await goOnUntil(page, '[data-entries="13"]');
    const before = await keptIn(page);
    await page.goto('about:blank');
    await page.goto(FILE + fragmentWith(HALF));
    await page.waitForSelector('#arrived-heading');
    expect(await page.locator('.block.caution').textContent()).toContain('would be lost');
    expect(await keptIn(page)).toEqual(before);
    await page.keyboard.press('Escape');
    await page.waitForSelector('.kept');
    expect(await keptIn(page)).toEqual(before);
  });

  test('is pasted at the beginning where it cannot be followed', async () => {
    const page = await withFragment('');
    await page.locator('summary', { hasText: 'from a link' }).click();
    await page.locator('#link-text').fill(fragmentWith(HALF));
    await page.getByText('Open it').click();
    await page.waitForSelector('#arrived-heading');
  });

  test('of a call that is too long for one is not made, and a file is offered', async () => {
    const at = '2026-11-23T08:00:00Z';
    // Words that do not deflate to little.
    const notes = Array.from({ length: 1000 }, (_, n) =>
      JSON.stringify({ at, type: 'noted', text: `seen ${(n * 7919) % 8192} then ${(n * 104729) % 65521}` }),
    ).join('\n');
    const page = await withFragment(fragmentWith(`${HALF}${notes}\n`));
    await page.waitForSelector('#arrived-heading');
    await page.keyboard.press('2');
    await page.waitForSelector('[data-entries="1011"]');
    await page.locator('[data-key="g"]').click();
    await page.getByText('Make the link').click();
    await page.waitForFunction(() => document.querySelector('.notice')?.textContent?.includes('too long'));
    expect(await notice(page)).toContain('Save it to a file');
    expect(await page.locator('#link').count()).toBe(0);
  });

  test('that is followed while a call is open asks as well', async () => {
    const page = await withFragment('');
    await begin(page);
    await page.evaluate((fragment) => {
      location.hash = fragment;
    }, fragmentWith(HALF));
    await page.waitForSelector('#arrived-heading');
    expect(page.url()).toBe(FILE);
  });
});

const HOSTILE = '<img src=x onerror="document.title=1"><script>document.title=1</script>';

describe('a link that is broken or hostile loses nothing', () => {
  const whole = fragmentWith(HALF);
  const header = HALF.split('\n')[0] ?? '';
  test.each([
    ['cut', whole.slice(0, 200), 'not whole'],
    ['with a letter too many', `#r=A${whole.slice(3)}`, 'not whole'],
    [
      'with a word changed on the way',
      withChecksumOf(HALF, HALF.replace('"may-ask"', '"may-act"')),
      'not whole',
    ],
    ['with nothing in it but letters', '#r=AAAA', 'not whole'],
    ['of no record', fragmentWith('Dear all,\n'), 'does not begin with the first line'],
    ['that unpacks to far too much', fragmentWith(Buffer.alloc(4 * 2 ** 20, 0x20)), 'far more than a call'],
    ['of another rule base', fragmentWith(HALF.replace(/"digest":"../, '"digest":"00')), 'was held with'],
    ['with an event of no sense', fragmentWith(`${header}\n{"at":"x","type":"answered"}\n`), 'ine 2'],
    ['with a proto', fragmentWith(`{"__proto__":{"record":1}}\n`), 'does not begin with the first line'],
  ])('%s', async (_, fragment, says) => {
    const page = await withFragment('');
    const { faults } = watch(page);
    await begin(page);
    await goOnUntil(page, '[data-entries="2"]');
    const before = await keptIn(page);
    await page.evaluate((to) => {
      location.hash = to;
    }, fragment);
    await told(page);
    expect(await notice(page)).toContain(says);
    expect(await page.locator('[data-entries="2"]').count()).toBe(1);
    expect(await keptIn(page)).toEqual(before);
    expect(faults).toEqual([]);
  });

  test('with markup in its words, which stay words', async () => {
    const at = '2026-11-23T08:00:00Z';
    const note = { at, type: 'noted', text: HOSTILE };
    const words = { at, type: 'answered', question: 'their-words', answer: HOSTILE, origin: 'said' };
    const record = `${HALF}${JSON.stringify(note)}\n${JSON.stringify(words)}\n`;
    const page = await withFragment(fragmentWith(record));
    const { faults, requests } = watch(page);
    await page.waitForSelector('#arrived-heading');
    await page.keyboard.press('2');
    await page.waitForSelector('[data-entries="13"]');
    await linkOf(page);
    expect(await page.title()).toBe('whydark');
    expect(await page.locator('#page img').count()).toBe(0);
    expect(faults).toEqual([]);
    expect(requests).toEqual([]);
  });
});

describe('terminal and page go on with each other’s calls', () => {
  test('by a link to the page, and from the page by a file that the terminal resumes', async () => {
    const page = await withFragment(fragmentWith(HALF));
    await page.waitForSelector('#arrived-heading');
    await page.keyboard.press('2');
    await page.waitForSelector('[data-entries="11"]');
    await goOnUntil(page, '[data-entries="14"]');
    const file = await saved(page);
    expect(execFileSync('node', ['dist/whydark.js', 'ticket', file], { encoding: 'utf8' })).toBe(
      await page.locator('[data-ticket]').textContent(),
    );
    const { call, writer } = await resume(file, loaded(), () => undefined);
    expect(call.state.events.length).toBe(14);
    writer.append({ at: '2026-11-25T09:00:00Z', type: 'noted', text: 'from the terminal' });
    writer.close();
    await page.goto('about:blank');
    await page.goto(FILE);
    await page.setInputFiles('input[type=file]', file);
    await page.waitForSelector('[data-entries="15"]');
    expect(await page.locator('[data-ticket]').textContent()).toContain('from the terminal');
  });

  test('a file that would take the place of a longer kept call is asked about', async () => {
    const page = await withFragment('');
    const file = join(mkdtempSync(join(tmpdir(), 'whydark-handed-')), 'half.jsonl');
    await page.evaluate(([key, text]) => localStorage.setItem(key, text), [
      'whydark.call.01-gateway-of-another-subnet',
      DEMO,
    ] as const);
    writeFileSync(file, HALF);
    await page.setInputFiles('input[type=file]', file);
    await page.waitForSelector('#arrived-heading');
    await page.keyboard.press('1');
    expect(Object.values(await keptIn(page))).toEqual([DEMO]);
  });
});
