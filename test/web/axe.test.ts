import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { advance, openCall } from '../../src/call/call.js';
import { recordTextOf } from '../../src/call/record/read-record.js';
import { screenOf } from '../../src/call/screen.js';
import { VERSION } from '../../src/call/version.js';
import { readRecord } from '../../src/files/record.js';
import { browser, FILE } from './browser.js';
import { loaded } from './built.js';
import { fragmentWith } from './links.js';
import { begin, goOnUntil, paste } from './screens.js';

// axe-core 4.14, every rule that is on by default and those for WCAG 2.2: a check that is not ours.
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { context } = browser();

afterEach(async () => {
  const [first, ...others] = context().pages();
  for (const page of others) await page.close();
  await first?.evaluate(() => undefined);
});

const NUMBERS = 'Address 172.23.40.22\nMask 255.255.255.0\nGateway 172.23.41.1\n';

/** A recorded call up to a remedy that can hurt somebody. */
async function atCaution(): Promise<{ readonly id: string; readonly record: string }> {
  const { rules, digest } = loaded();
  for (const name of readdirSync('transcripts-demo')) {
    if (!existsSync(`transcripts-demo/${name}/record.jsonl`)) continue;
    const { header, events } = readRecord(`transcripts-demo/${name}/record.jsonl`, VERSION);
    let call = await openCall(rules, digest, { ...header, opened: '2000-01-01T00:00:00Z' });
    for (const [at, event] of events.entries()) {
      const next = await advance(call, event);
      if (!next.ok) break;
      call = next.value;
      if (call.step.kind === 'try' && screenOf(call).cautions.length > 0)
        return { id: header.id, record: recordTextOf(call.state.header, events.slice(0, at + 1)) };
    }
  }
  throw new Error('no recorded call has a caution');
}

/** Every screen of the page, and how somebody comes to it. */
const SCREENS: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  'the beginning': async (page) => {
    await begin(page);
    await page.reload();
    await page.waitForSelector('.start .kept');
  },
  'a choice': (page) => begin(page),
  'several choices': async (page) => {
    await begin(page);
    await goOnUntil(page, '[data-prompt] [data-done]');
    await page.keyboard.press('1');
  },
  'a field with something wrong in it': async (page) => {
    await begin(page);
    await page.keyboard.press('a');
    await page.locator('#told').fill("camera's address");
    await page.keyboard.press('Enter');
    await page.waitForSelector('#answer:focus');
    await page.keyboard.insertText('172.23.40.300');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.wrong');
  },
  'an answer to pick': async (page) => {
    await begin(page);
    await goOnUntil(page, '[data-entries="6"]');
    await page.keyboard.press('c');
    await page.waitForSelector('.answers[data-prompt]');
  },
  'an answer being changed': async (page) => {
    await begin(page);
    await goOnUntil(page, '[data-entries="6"]');
    await page.keyboard.press('c');
    await page.keyboard.press('2');
    await page.waitForSelector('[data-asked^="change:"]');
  },
  'what was told unasked': async (page) => {
    await begin(page);
    await page.keyboard.press('a');
    await page.locator('#told').fill('address');
    await page.waitForSelector('form .choices li');
  },
  'a note': async (page) => {
    await begin(page);
    await page.keyboard.press('n');
    await page.waitForSelector('[data-asked^="note"]');
  },
  'a text to paste': async (page) => {
    await begin(page);
    await page.keyboard.press('p');
    await page.waitForSelector('#pasted');
  },
  'whose numbers these are': async (page) => {
    await begin(page);
    await paste(page, NUMBERS);
    await page.waitForSelector('[data-asked^="paste:"]');
  },
  'what a text fills in': async (page) => {
    await begin(page);
    await paste(page, `Camera\n${NUMBERS}`);
    await page.waitForSelector('[data-asked^="paste:here"]');
    await page.keyboard.press('1');
    await page.waitForSelector('[data-asked^="paste:filled"]');
  },
  'stop or go on': async (page) => {
    await begin(page);
    await page.keyboard.press('s');
    await page.waitForSelector('[data-asked^="stop"]');
  },
  'forget or keep': async (page) => {
    await begin(page);
    await page.locator('.top button').last().click();
    await page.waitForSelector('[data-asked^="forget"]');
  },
  'a stage that stands open': async (page) => {
    await begin(page);
    await goOnUntil(page, '.stage.suspect');
    const view = page.locator('.views button').nth(1);
    if (await view.isVisible()) await view.click();
    await page.locator('.stage.suspect').first().click();
    await page.waitForSelector('.stage-panel');
    const article = page.locator('.stage-panel li button').first();
    await article.click();
    await page.waitForSelector('.stage-panel article h1');
  },
  'a how-to in its place': async (page) => {
    await begin(page);
    await goOnUntil(page, '[data-key="h"]');
    await page.keyboard.press('h');
    await page.waitForSelector('.reading article h1');
  },
  'a remedy with its caution': async (page) => {
    const { id, record } = await atCaution();
    await begin(page);
    await page.evaluate(([key, text]) => localStorage.setItem(key, text), [
      `whydark.call.${id}`,
      record,
    ] as const);
    await page.reload();
    await page.locator('.start .kept button').last().waitFor();
    await page.keyboard.press('4');
    await page.waitForSelector('.block.caution');
  },
  'the closed call': async (page) => {
    await begin(page);
    await page.keyboard.press('s');
    await page.waitForSelector('[data-asked^="stop"]');
    await page.keyboard.press('1');
    await page.waitForSelector('[data-closed]');
  },
  'the ways to hand over, with link and code': async (page) => {
    await begin(page);
    await page.locator('[data-key="g"]').click();
    await page.getByText('Make the link').click();
    await page.waitForSelector('.code svg');
  },
  'a call that has arrived': async (page) => {
    const { record } = await atCaution();
    await page.goto(`${FILE}${fragmentWith(record)}`);
    await page.waitForSelector('#arrived-heading');
  },
  'the keys': async (page) => {
    await begin(page);
    await page.keyboard.press('?');
    await page.waitForSelector('.keys');
  },
  'who reaches whom': async (page) => {
    await page.goto(FILE);
    await page.setInputFiles('input[type=file]', 'transcripts-demo/04-mask-of-half-a-network/record.jsonl');
    await page.waitForSelector('.call');
    const view = page.locator('.views button').nth(1);
    if (await view.isVisible()) await view.click();
    await page.locator('.path > details summary').click();
    await page.waitForSelector('.picture.reach');
  },
  'the volts along a cable': async (page) => {
    await page.goto(FILE);
    await page.locator('.start button', { hasText: 'Sums alone' }).click();
    await page.selectOption('#topic', 'dc-supply');
    await page.locator('#sum-supply-volts').fill('12');
    await page.locator('#sum-length').fill('40 m');
    await page.waitForSelector('.picture.volts');
  },
  'the days on a card': async (page) => {
    await page.goto(FILE);
    await page.locator('.start button', { hasText: 'Sums alone' }).click();
    await page.selectOption('#topic', 'storage');
    await page.locator('#sum-main').fill('2 Mbit/s');
    await page.locator('#sum-capacity').fill('128 GB');
    await page.waitForSelector('.picture.days');
  },
  'the sums': async (page) => {
    await begin(page);
    await page.reload();
    await page.locator('.start button', { hasText: 'Sums alone' }).click();
    await page.locator('#sum-address').fill('172.23.40.22');
    await page.locator('#sum-mask').fill('255.255.255.0');
    await page.waitForSelector('.result');
  },
};

/** Come to on the narrow one: what it shows in views of its own stands side by side on the wide one. */
const LOOKS = [
  { colorScheme: 'dark', width: 360, height: 740 },
  { colorScheme: 'light', width: 1280, height: 900 },
] as const;

describe('dark and narrow, then light and wide', () => {
  test.each(Object.entries(SCREENS))('%s: axe finds nothing', async (_, come) => {
    const page = await context().newPage();
    for (const [at, { colorScheme, width, height }] of LOOKS.entries()) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height });
      if (at === 0) await come(page);
      expect([colorScheme, await sideways(page)]).toEqual([colorScheme, 0]);
      expect([colorScheme, ...(await found(page))]).toEqual([colorScheme]);
    }
    await page.evaluate(() => localStorage.clear());
  });
});

describe('on a narrow screen', () => {
  test.each(['path', 'causes', 'answers', 'ticket'])('%s: axe finds nothing', async (view) => {
    const page = await context().newPage();
    await page.setViewportSize({ width: 320, height: 640 });
    await begin(page);
    await goOnUntil(page, '[data-entries="9"]');
    await page
      .locator('.views button')
      .nth(['step', 'path', 'causes', 'answers', 'ticket'].indexOf(view))
      .click();
    expect(await sideways(page)).toBe(0);
    expect(await found(page)).toEqual([]);
    await page.evaluate(() => localStorage.clear());
  });
});

/** How far the page can be scrolled sideways, in CSS pixels (WCAG 2.2, 1.4.10: at 320 px it must not). */
function sideways(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

async function found(page: Page): Promise<readonly string[]> {
  // Through the debugger, as the page's own policy lets no other script in.
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: (options: object) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const { violations } = await axe.run({
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  });
}
