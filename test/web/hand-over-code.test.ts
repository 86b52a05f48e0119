import { readFileSync } from 'node:fs';
import jsQR from 'jsqr';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { linkOf, withFragment } from './arrived-page.js';
import { browser } from './browser.js';
import { fragmentWith } from './links.js';

const DEMO = readFileSync('transcripts-demo/01-gateway-of-another-subnet/record.jsonl', 'utf8');

/** A line with a note of so many words that hardly deflate; none for none. */
function note(words: number): string {
  if (words === 0) return '';
  const letter = (n: number): string => String.fromCharCode(97 + (n % 26));
  const word = (n: number): string => [3, 7, 11, 17, 23].map((by) => letter((n + 5) * by * by)).join('');
  const text = Array.from({ length: words }, (_, n) => word(n * n)).join(' ');
  return `${JSON.stringify({ at: '2026-11-23T09:00:00Z', type: 'noted', text })}\n`;
}

/** What jsQR, another library than the one that drew it, reads from the pixels on the screen. */
async function scanned(page: Page): Promise<string | undefined> {
  const png = await page.locator('.code svg').screenshot();
  const blank = await page.context().newPage();
  const { width, height, pixels } = await blank.evaluate(async (base64) => {
    const picture = new Image();
    picture.src = `data:image/png;base64,${base64}`;
    await picture.decode();
    const canvas = document.createElement('canvas');
    canvas.width = picture.width;
    canvas.height = picture.height;
    const pen = canvas.getContext('2d');
    pen?.drawImage(picture, 0, 0);
    const data = pen?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
    let text = '';
    for (const byte of data) text += String.fromCharCode(byte);
    return { width: canvas.width, height: canvas.height, pixels: btoa(text) };
  }, png.toString('base64'));
  await blank.close();
  return jsQR.default(new Uint8ClampedArray(Buffer.from(pixels, 'base64')), width, height)?.data;
}

// A phone has two pixels or more where the page counts one.
describe.each([
  ['a wide', 1280, 1],
  ['a narrow', 360, 2],
  ['a magnified', 1280, 1.5],
])('a code on %s screen', (_, width, ratio) => {
  const { context } = browser({ viewport: { width, height: 900 }, deviceScaleFactor: ratio });

  test('is read at every size, for its boxes are even', async () => {
    const sizes = new Set<number>();
    for (const words of [0, 12, 24]) {
      const page = await withFragment(context(), fragmentWith(`${DEMO}${note(words)}`));
      await page.waitForSelector('#arrived-heading');
      await page.keyboard.press('2');
      await page.waitForSelector('[data-closed]');
      const link = await linkOf(page);
      const code = page.locator('.code svg');
      const modules = Number((await code.getAttribute('viewBox'))?.split(' ')[2]);
      const pixels = ((await code.boundingBox())?.width ?? 0) * ratio;
      expect(pixels / modules, `${modules} boxes`).toBeCloseTo(Math.round(pixels / modules), 3);
      expect(await scanned(page)).toBe(link.slice(link.indexOf('#r=')));
      sizes.add(modules);
      await page.evaluate(() => localStorage.clear());
      await page.close();
    }
    expect(sizes.size).toBe(3);
  });
});

describe('a code to scan', () => {
  const { context } = browser();

  test.each(['light', 'dark'] as const)(
    'holds what the link holds, read from the screen: %s',
    async (colorScheme) => {
      const page = await withFragment(context(), fragmentWith(DEMO));
      await page.emulateMedia({ colorScheme });
      await page.waitForSelector('#arrived-heading');
      await page.keyboard.press('2');
      await page.waitForSelector('[data-closed]');
      const link = await linkOf(page);
      expect(await scanned(page)).toBe(link.slice(link.indexOf('#r=')));
    },
  );

  test('is left out, in words, where the call is too long for it', async () => {
    const long = readFileSync('transcripts-demo/19-new-router-and-a-lead-astray/record.jsonl', 'utf8');
    const page = await withFragment(context(), fragmentWith(long));
    await page.waitForSelector('#arrived-heading');
    await page.keyboard.press('2');
    await page.waitForSelector('[data-closed]');
    await linkOf(page);
    expect(await page.locator('.code').count()).toBe(0);
    expect(await page.locator('.made').textContent()).toContain('too long for a code');
  });
});
