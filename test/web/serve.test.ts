import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openerFor } from '../../src/cli/open-browser.js';
import { browser, FILE, watch } from './browser.js';
import { begin, goOnUntil } from './screens.js';

const { context } = browser();
let child: ChildProcess | undefined;
let printed = '';
let address = '';

beforeAll(async () => {
  child = spawn('node', ['dist/whydark.js', 'page', '--json'], { stdio: ['ignore', 'pipe', 'inherit'] });
  printed = await new Promise<string>((resolve) =>
    child?.stdout?.once('data', (data) => resolve(String(data))),
  );
  address = JSON.parse(printed).address;
});
afterAll(() => {
  child?.kill('SIGTERM');
});

function asked(
  path: string,
  headers: Record<string, string> = {},
  method = 'GET',
): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const sent = request(new URL(path, address), { headers, method }, (answer) => {
      answer.resume();
      resolve(answer.statusCode);
    });
    sent.on('error', reject);
    sent.end();
  });
}

describe('whydark page', () => {
  test('prints where it stands, as its schema says, on the loopback address', () => {
    const schema = JSON.parse(readFileSync('dist/schema/page.schema.json', 'utf8'));
    expect(new Ajv2020().validate(schema, JSON.parse(printed))).toBe(true);
  });

  test('serves the page and nothing that is not of it', async () => {
    expect(await asked('/')).toBe(200);
    expect(await asked('/sw.js')).toBe(200);
    expect(await asked('/../package.json')).toBe(404);
    expect(await asked('/%2e%2e/whydark.html')).toBe(404);
    expect(await asked('/', {}, 'POST')).toBe(405);
  });

  test('gives nothing to a page elsewhere that has its name lead here', async () => {
    expect(await asked('/', { host: 'evil.example:38417' })).toBe(404);
  });

  test('ends when it is interrupted', async () => {
    const second = spawn('node', ['dist/whydark.js', 'page', '--json'], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const other = await new Promise<string>((resolve) =>
      second.stdout.once('data', (data) => resolve(JSON.parse(String(data)).address)),
    );
    // The first has the port; the second finds another.
    expect(other).not.toBe(address);
    const ended = new Promise((resolve) => second.once('exit', resolve));
    second.kill('SIGINT');
    expect(await ended).toBe(130);
  });

  test('takes no file', () => {
    expect(spawnSync('node', ['dist/whydark.js', 'page', 'x']).status).toBe(2);
  });

  test('says the address, and that there is no display, where there is none', async () => {
    const env = { PATH: process.env.PATH };
    const third = spawn('node', ['dist/whydark.js', 'page'], { stdio: ['ignore', 'pipe', 'inherit'], env });
    let said = '';
    await new Promise<void>((resolve) =>
      third.stdout.on('data', (data) => {
        said += data;
        if (said.includes('display')) resolve();
      }),
    );
    expect(said).toMatch(/http:\/\/127\.0\.0\.1:\d+\//);
    third.kill('SIGTERM');
  });
});

test.each([
  ['linux', {}, undefined],
  ['linux', { DISPLAY: ':0' }, 'xdg-open'],
  ['linux', { WAYLAND_DISPLAY: 'wayland-0' }, 'xdg-open'],
  ['darwin', {}, 'open'],
  ['darwin', { SSH_CONNECTION: '10.77.5.2 1 10.77.5.3 22' }, undefined],
  ['win32', {}, 'explorer.exe'],
] as const)('on %s with %o the browser is opened by %s', (platform, env, command) => {
  expect(openerFor(platform, env)?.command).toBe(command);
});

test('served, the page goes on without its server and without a network', async () => {
  const page = await context().newPage();
  const { faults, requests } = watch(page);
  await page.goto(address);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  child?.kill('SIGTERM');
  await new Promise((resolve) => child?.once('exit', resolve));
  await context().setOffline(true);
  await begin(page, '1', address);
  await goOnUntil(page, '[data-key="h"]');
  await page.keyboard.press('h');
  await page.waitForSelector('.reading article h1');
  await context().setOffline(false);
  expect(requests.filter((url) => !url.startsWith(address) && !url.startsWith('data:'))).toEqual([]);
  expect(faults).toEqual([]);
  await page.close();
});

test('the single file goes on without a network, wherever it is copied', async () => {
  const copy = join(mkdtempSync(join(tmpdir(), 'whydark-copy-')), 'why dark?.html');
  cpSync(new URL(FILE), copy);
  const page = await context().newPage();
  const { faults, requests } = watch(page);
  await context().setOffline(true);
  const url = `file://${encodeURI(copy).replaceAll('?', '%3F')}`;
  await begin(page, '1', url);
  await goOnUntil(page, '[data-entries="3"]');
  await context().setOffline(false);
  expect(requests).toEqual([url]);
  expect(faults).toEqual([]);
});
