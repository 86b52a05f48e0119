import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';

const FLAGS = [
  '--headless=new',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const CHROMIUM = process.env.WHYDARK_CHROMIUM ?? '/usr/bin/chromium';

/** The single file, as a browser opens it from disk. */
export const FILE = new URL('../../dist/page/whydark.html', import.meta.url).href;

export type Options = Parameters<typeof chromium.launchPersistentContext>[1];

/** A Chromium with an empty folder of its own, open while the tests of a file run. */
export function browser(options: Options = {}): { readonly context: () => BrowserContext } {
  let context: BrowserContext | undefined;
  let folder = '';
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'whydark-web-'));
    context = await launch(folder, options);
  }, 60_000);
  afterAll(async () => {
    await context?.close();
    rmSync(folder, { recursive: true, force: true });
  });
  return {
    context: () => {
      if (!context) throw new Error('no browser yet');
      return context;
    },
  };
}

export async function launch(folder: string, options: Options = {}): Promise<BrowserContext> {
  if (!existsSync(CHROMIUM))
    throw new Error(
      `no Chromium at ${CHROMIUM}: apt-get install chromium, or say its place in WHYDARK_CHROMIUM`,
    );
  return chromium.launchPersistentContext(folder, {
    executablePath: CHROMIUM,
    args: FLAGS,
    headless: true,
    acceptDownloads: true,
    viewport: { width: 1280, height: 900 },
    ...options,
  });
}

/** Everything that a page tells of what went wrong in it: errors, refused policies, requests. */
export interface Watched {
  readonly faults: string[];
  readonly requests: string[];
}

export function watch(page: Page): Watched {
  const watched: Watched = { faults: [], requests: [] };
  page.on('pageerror', (error) => watched.faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') watched.faults.push(message.text());
  });
  page.on('request', (request) => watched.requests.push(request.url()));
  return watched;
}
