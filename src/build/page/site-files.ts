import { createHash } from 'node:crypto';
import { say } from '../../messages/say.js';

/** The sign of the page: a dark picture with one corner that comes back. */
export const ICON = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><rect width="64" height="64" rx="12" fill="#1c5868"/><path d="M12 18h40v28H12z" fill="#0b1a1e"/><path d="M52 18v28L30 18z" fill="#f0d9a0"/></svg>\n`;

/** The web app manifest (W3C, Web Application Manifest) of the served folder. */
export function manifestText(): string {
  const manifest = {
    name: say('page.title'),
    short_name: say('page.title'),
    description: say('page.about'),
    lang: 'en-GB',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#f4f2ec',
    theme_color: '#1c5868',
    icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' }],
  };
  return `${JSON.stringify(manifest, null, 2)}\n`;
}

/**
 * The service worker: keeps the files of the folder when it is installed, and answers from what it kept. It asks
 * the server for nothing after that; what is not in the folder fails.
 */
export function workerText(files: Readonly<Record<string, string>>): string {
  const hash = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16);
  const names = ['./', ...Object.keys(files)];
  return `const KEPT = 'whydark-${hash}';
const FILES = ${JSON.stringify(names)};
self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(KEPT).then((kept) => kept.addAll(FILES)).then(() => self.skipWaiting()));
});
self.addEventListener('activate', (event) => {
  const old = (name) => name.startsWith('whydark-') && name !== KEPT;
  event.waitUntil(
    caches.keys()
      .then((names) => Promise.all(names.filter(old).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});
self.addEventListener('fetch', (event) => {
  event.respondWith(
    caches.match(event.request, { ignoreSearch: true }).then((found) => found ?? Response.error()),
  );
});
`;
}
