import { existsSync, readdirSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { parseAnswer } from '../../src/answers/parse-answer.js';
import { advance, type Call, openCall } from '../../src/call/call.js';
import type { CallEvent } from '../../src/call/events.js';
import { screenOf } from '../../src/call/screen.js';
import { playScript } from '../../src/call/scripted-call.js';
import { ticketOf } from '../../src/call/ticket-of.js';
import { browser, FILE, watch } from './browser.js';
import { loaded } from './built.js';
import { begin, goOnUntil } from './screens.js';

const { context } = browser({
  viewport: { width: 360, height: 740 },
  hasTouch: true,
  isMobile: true,
  deviceScaleFactor: 2,
  reducedMotion: 'reduce',
});

afterEach(async () => {
  await context().setOffline(false);
  const [first, ...others] = context().pages();
  for (const page of others) await page.close();
  await first?.goto(FILE);
  await first?.evaluate(() => localStorage.clear());
});

const choices = (page: Page) => page.locator('[data-prompt] [data-choice]');

async function tapped(page: Page, call: Call, event: CallEvent): Promise<void> {
  const { input } = screenOf(call);
  const pick = (id: string) =>
    choices(page)
      .nth(input.kind === 'field' ? -1 : input.choices.findIndex((one) => one.id === id))
      .tap();
  switch (event.type) {
    case 'answered': {
      if (call.step.kind !== 'ask' || call.step.question !== event.question)
        throw new Error(`asked out of turn: ${event.question}`);
      if (event.answer === null) return page.locator('[data-key="t"]').tap();
      const question = call.rules.questions.find(({ id }) => id === event.question);
      const parsed = question && parseAnswer(question, event.answer);
      if (!parsed?.ok) throw new Error(event.question);
      const { value } = parsed;
      if (value.kind === 'yes-no') return pick(value.yes ? 'yes' : 'no');
      if (value.kind === 'choice') return pick(value.id);
      if (value.kind === 'several') {
        for (const id of value.ids) await pick(id);
        return page.locator('[data-done]').tap();
      }
      await page.locator('[data-field]').tap();
      await page.keyboard.insertText(String(event.answer));
      return page.locator('.field button[type=submit]').tap();
    }
    case 'noted':
      await page.locator('[data-key="n"]').tap();
      await page.waitForSelector('[data-asked^="note"]');
      await page.locator('[data-field]').tap();
      await page.keyboard.insertText(event.text);
      return page.locator('.field button[type=submit]').tap();
    case 'agreed':
      return pick('agrees');
    case 'tried':
      if (event.picture === 'yes') return pick('back');
      await pick('dark');
      await page.waitForSelector('[data-asked^="check:"]');
      return choices(page).nth(['yes', 'no', 'cant-tell'].indexOf(event.took)).tap();
    case 'closed':
      return choices(page).first().tap();
    default:
      throw new Error(`no finger for ${event.type}`);
  }
}

test.each(['01-gateway-of-another-subnet', '02-lead-not-clicked-in'])(
  '%s is held by touch alone, offline, from disk, and gives the same ticket',
  async (name) => {
    const { rules, digest } = loaded();
    const script = JSON.parse(readFileSync(`transcripts-demo/${name}/caller.json`, 'utf8'));
    const { header, events } = await playScript(rules, digest, script, name);
    const page = await context().newPage();
    page.setDefaultTimeout(8000);
    await context().setOffline(true);
    const { faults, requests } = watch(page);
    await page.clock.setFixedTime(new Date(header.opened));
    await page.addInitScript(
      ([key, text]) => {
        if (!localStorage.getItem(key)) localStorage.setItem(key, text);
      },
      [`whydark.call.${header.id}`, `${JSON.stringify(header)}\n`] as const,
    );
    await page.goto(FILE);
    await page.locator('.kept [data-choice]').tap();
    await page.waitForSelector('[data-entries="0"]');
    let call = await openCall(rules, digest, header);
    for (const event of events) {
      await page.clock.setFixedTime(new Date(event.at));
      await tapped(page, call, event);
      const next = await advance(call, event);
      if (!next.ok) throw new Error(next.problem.id);
      call = next.value;
      await page.waitForSelector(`[data-entries="${call.state.events.length}"]`);
    }
    expect(await page.locator('[data-ticket]').textContent()).toBe(ticketOf(call));
    expect(faults).toEqual([]);
    expect(requests).toEqual([FILE]);
  },
  60_000,
);

test('there are those calls', () => {
  expect(
    readdirSync('transcripts-demo').filter((name) => existsSync(`transcripts-demo/${name}/caller.json`))
      .length,
  ).toBeGreaterThanOrEqual(24);
});

/** Every screen that a person comes past without looking for it. */
const PLACES: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  'the beginning': async (page) => {
    await page.goto(FILE);
    await page.locator('summary').first().tap();
  },
  'the first step': (page) => begin(page, '2'),
  'a field': async (page) => {
    await begin(page, '2');
    await goOnUntil(page, '[data-prompt] [data-field]');
  },
  'the ways to hand over': async (page) => {
    await begin(page, '2');
    await page.locator('[data-key="g"]').tap();
    await page.getByText('Make the link').tap();
    await page.waitForSelector('.code svg');
  },
  'the keys': async (page) => {
    await page.goto(FILE);
    await page.locator('[data-key="?"]').tap();
  },
  'a sum with its picture': async (page) => {
    await page.goto(FILE);
    await page.locator('.start button', { hasText: 'Sums' }).tap();
    await page.locator('#sum-address').fill('172.23.40.22');
    await page.locator('#sum-mask').fill('24');
    await page.waitForSelector('.picture');
  },
};

/** Buttons, fields and links under 24 CSS pixels (WCAG 2.2, 2.5.8), and under 48 in the step. */
function tooSmall(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('button, .button, summary, select, a, input:not([type=file])')]
      .filter((one) => one.getClientRects().length > 0)
      .filter((one) => {
        const { width, height } = one.getBoundingClientRect();
        return (
          Math.min(width, height) < 24 ||
          (one.matches('main .prompt :is(button, input, select)') && height < 48)
        );
      })
      .map((one) => `${one.tagName} ${one.textContent}`),
  );
}

const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

describe.each(Object.entries(PLACES))('%s', (_, come) => {
  test('has targets that a glove hits, and nothing to scroll sideways, at 320 px and from right to left', async () => {
    const page = await context().newPage();
    page.setDefaultTimeout(8000);
    await page.setViewportSize({ width: 320, height: 640 });
    await come(page);
    expect(await tooSmall(page)).toEqual([]);
    expect(await sideways(page)).toBe(0);
    await page.evaluate(() => document.documentElement.setAttribute('dir', 'rtl'));
    expect(await sideways(page)).toBe(0);
  });

  test('at 400 % on a screen of 1280 px nothing is to be scrolled sideways', async () => {
    const page = await context().newPage();
    page.setDefaultTimeout(8000);
    // Zooming to 400 % leaves a quarter of the CSS pixels, four of the screen for each (WCAG 2.2, 1.4.10).
    await page.setViewportSize({ width: 1280 / 4, height: 800 / 4 });
    await come(page);
    expect(await sideways(page)).toBe(0);
  });

  test('nothing moves by itself where less motion is wanted', async () => {
    const page = await context().newPage();
    page.setDefaultTimeout(8000);
    await come(page);
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll('*')]
        .filter((one) => {
          const { transitionDuration, animationName } = getComputedStyle(one);
          return (
            animationName !== 'none' ||
            transitionDuration.split(',').some((time) => Number.parseFloat(time) > 0)
          );
        })
        .map((one) => one.className),
    );
    expect(moving).toEqual([]);
  });
});
