import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { performance } from 'node:perf_hooks';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';

/** Ratios to an empty page that the same browser opens in the same run, all at a quarter of the processor's speed. */
export interface PageSpeed {
  /** From opening the file, with one key pressed, to the first step of a call drawn. */
  readonly firstStep: number;
  /** From an answer to the next step drawn: median, and 90th percentile. */
  readonly nextStep: number;
  readonly nextStepNinetieth: number;
}

const RUNS = 9;
const STEPS = 14;
const SLOWER = 4;

/** How fast the built page is; `undefined` where there is no Chromium. Each run opens both pages afresh. */
export async function pageSpeed(file: string): Promise<PageSpeed | undefined> {
  const executablePath = process.env.WHYDARK_CHROMIUM ?? '/usr/bin/chromium';
  if (!existsSync(executablePath)) return undefined;
  const folder = mkdtempSync(join(tmpdir(), 'whydark-bench-'));
  const empty = join(folder, 'empty.html');
  writeFileSync(
    empty,
    '<!doctype html>\n<html lang="en"><meta charset="utf-8"><title>empty</title><p>Empty</p>\n',
  );
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const first: number[] = [];
    const next: number[] = [];
    const blank: number[] = [];
    for (let run = 0; run < RUNS; run += 1) {
      blank.push(await inFreshPage(browser, (page) => timeOpen(page, empty, 'p')));
      await inFreshPage(browser, async (page) => {
        const opened = await timeOpen(page, resolve(file), '.start');
        first.push(opened + (await timeKey(page, '1', 0)));
        for (let step = 1; step <= STEPS; step += 1) next.push(await timeAnswer(page, step));
      });
    }
    const one = at(blank, 0.5);
    return {
      firstStep: at(first, 0.5) / one,
      nextStep: at(next, 0.5) / one,
      nextStepNinetieth: at(next, 0.9) / one,
    };
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function inFreshPage<T>(browser: Browser, use: (page: Page) => Promise<T>): Promise<T> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    return await use(page);
  } finally {
    await context.close();
  }
}

/** Milliseconds until what is looked for is there and has been drawn. */
async function timeOpen(page: Page, file: string, selector: string): Promise<number> {
  const begun = performance.now();
  await page.goto(pathToFileURL(file).href);
  await page.waitForSelector(selector);
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn))));
  return performance.now() - begun;
}

/** Answers the first choice, or *can't tell* where something is to be typed, and times the key that does it. */
async function timeAnswer(page: Page, step: number): Promise<number> {
  if ((await page.locator('[data-prompt] [data-field]').count()) > 0) {
    await page.keyboard.press('Escape');
    return timeKey(page, 't', step);
  }
  if ((await page.locator('[data-prompt] [data-done]').count()) === 0) return timeKey(page, '1', step);
  await page.keyboard.press('1');
  return timeKey(page, 'Enter', step);
}

/** Milliseconds in the page itself from a key to the step that comes of it, drawn. */
function timeKey(page: Page, key: string, entries: number): Promise<number> {
  return page.evaluate(
    ({ key, entries }) =>
      new Promise<number>((drawn) => {
        const begun = performance.now();
        const look = (): void => {
          if (document.querySelector(`.call[data-entries="${entries}"]`) === null) setTimeout(look);
          else requestAnimationFrame(() => setTimeout(() => drawn(performance.now() - begun)));
        };
        const pressed = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true });
        (document.activeElement ?? document.body).dispatchEvent(pressed);
        look();
      }),
    { key, entries },
  );
}

function at(numbers: readonly number[], share: number): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
}
