import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { browser, FILE, watch } from './browser.js';
import { begin, goOnUntil, paste } from './screens.js';

const { context } = browser();

afterEach(async () => {
  const [first, ...others] = context().pages();
  for (const page of others) await page.close();
  await first?.goto(FILE);
  await first?.evaluate(() => localStorage.clear());
});

const EVIL = [
  '<img src=x onerror="window.hit=1">',
  '<script>window.hit=1</script>',
  '"><svg onload=window.hit=1>',
  '[a](javascript:window.hit=1)',
  '</script><script>window.hit=1</script>',
  '<style>*{display:none}</style><iframe src="https://example.com/"></iframe>',
].join(' ');

/** Elements that nobody of ours ever draws, and what evil code would have left behind. */
async function injected(page: Page): Promise<readonly unknown[]> {
  return page.evaluate(() =>
    [
      ...document.querySelectorAll(
        '#page :is(script, style, iframe, object, embed, link, [onerror], [onload])',
      ),
      ...document.querySelectorAll('#page a[href^="javascript" i]'),
      ...('hit' in window ? ['hit'] : []),
    ].map(String),
  );
}

test('a hostile note injects nothing, and stands in the ticket as it was typed', async () => {
  const page = await context().newPage();
  const { faults, requests } = watch(page);
  await begin(page);
  await page.keyboard.press('n');
  await page.waitForSelector('#answer:focus');
  await page.keyboard.insertText(EVIL);
  await page.keyboard.press('Enter');
  await page.waitForSelector('[data-entries="1"]');
  expect(await page.locator('[data-ticket]').textContent()).toContain('onerror');
  expect(await injected(page)).toEqual([]);
  expect(faults).toEqual([]);
  expect(requests).toEqual([FILE]);
});

test('hostile words of the caller inject nothing, in the list of answers neither', async () => {
  const page = await context().newPage();
  const { faults } = watch(page);
  await begin(page);
  await page.keyboard.press('a');
  await page.locator('#told').fill('own words');
  await page.keyboard.press('Enter');
  await page.waitForSelector('#answer:focus');
  await page.keyboard.insertText(EVIL);
  await page.keyboard.press('Enter');
  await page.waitForSelector('[data-entries="1"]');
  expect(await page.locator('.given').textContent()).toContain('onerror');
  expect(await injected(page)).toEqual([]);
  expect(faults).toEqual([]);
});

test('a hostile record injects nothing, and its id makes no file name', async () => {
  const record = readFileSync('transcripts-demo/01-gateway-of-another-subnet/record.jsonl', 'utf8');
  const [first = '', ...rest] = record.trim().split('\n').slice(0, 14);
  const header = JSON.stringify({ ...JSON.parse(first), id: `../../${EVIL}`, whydark: '0.1.0', more: EVIL });
  const events = [
    ...rest,
    JSON.stringify({ at: '2026-11-23T07:49:00Z', type: 'noted', text: EVIL, __proto__x: EVIL }),
    JSON.stringify({
      at: '2026-11-23T07:49:01Z',
      type: 'pasted',
      paste: EVIL,
      origin: 'pasted',
      text: EVIL,
      answers: [],
    }),
  ];
  const path = join(mkdtempSync(join(tmpdir(), 'whydark-evil-')), '<img src=x onerror=window.hit=1>.jsonl');
  writeFileSync(path, `${[header, ...events].join('\n')}\n`);
  const page = await context().newPage();
  const { faults, requests } = watch(page);
  await page.goto(FILE);
  await page.setInputFiles('input[type=file]', path);
  await page.waitForSelector(`[data-entries="${events.length}"]`);
  expect(await injected(page)).toEqual([]);
  await page.locator('[data-key="g"]').click();
  expect(await injected(page)).toEqual([]);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('.handing button', { hasText: 'Save the call' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^2026-11-23-074000-[A-Za-z0-9-]+\.jsonl$/);
  await page.reload();
  expect(await injected(page)).toEqual([]);
  expect(faults).toEqual([]);
  expect(requests.filter((url) => !url.startsWith('blob:'))).toEqual([FILE, FILE]);
});

test('a hostile text that is pasted injects nothing', async () => {
  const page = await context().newPage();
  const { faults } = watch(page);
  await begin(page);
  await paste(page, `Camera ${EVIL}\nAddress 172.23.40.22\nGateway ${EVIL}\nName ${EVIL}\n`);
  await page.waitForSelector('[data-asked^="paste:"]');
  expect(await injected(page)).toEqual([]);
  expect(faults).toEqual([]);
});

test('even markup that got in could run nothing and load nothing', async () => {
  const page = await context().newPage();
  const asked: string[] = [];
  const elsewhere = createServer((request, response) => {
    asked.push(request.url ?? '');
    response.writeHead(200, { 'access-control-allow-origin': '*' }).end();
  });
  await new Promise<void>((resolve) => elsewhere.listen(0, '127.0.0.1', resolve));
  const there = `http://127.0.0.1:${(elsewhere.address() as AddressInfo).port}/`;
  await begin(page);
  const refused = await page.evaluate(
    async ([evil, address]) => {
      const seen: string[] = [];
      document.addEventListener('securitypolicyviolation', (event) => seen.push(event.effectiveDirective));
      const box = document.createElement('div');
      box.innerHTML = evil;
      document.body.append(box);
      const script = document.createElement('script');
      script.textContent = 'window.hit = 1';
      document.body.append(script);
      const image = new Image();
      image.src = `${address}image`;
      await fetch(`${address}fetch`).catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, 300));
      return { seen, hit: 'hit' in window };
    },
    [EVIL, there] as const,
  );
  elsewhere.close();
  expect(refused.hit).toBe(false);
  for (const directive of ['script-src-elem', 'script-src-attr', 'style-src-elem', 'img-src', 'connect-src'])
    expect(refused.seen).toContain(directive);
  expect(asked).toEqual([]);
  // Code from text is refused too; the debugger, which runs this, is exempt, so the policy itself is read.
  const policy = await page.locator('meta[http-equiv=Content-Security-Policy]').getAttribute('content');
  expect(policy).not.toMatch(/unsafe|\*|https?:/);
});

test('no request is made in a whole call, with its articles read', async () => {
  const page = await context().newPage();
  const { faults, requests } = watch(page);
  await begin(page, '2');
  await goOnUntil(page, '[data-key="h"]');
  await page.keyboard.press('h');
  await page.waitForSelector('.reading article h1');
  expect(requests.filter((url) => !url.startsWith('data:'))).toEqual([FILE]);
  expect(faults).toEqual([]);
});
