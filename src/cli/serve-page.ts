import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { attempt } from '../files/faults.js';

/** The files of the folder and their types; nothing else is ever served. */
const TYPES: Readonly<Record<string, string>> = {
  'index.html': 'text/html; charset=utf-8',
  'sw.js': 'text/javascript; charset=utf-8',
  'manifest.webmanifest': 'application/manifest+json',
  'icon.svg': 'image/svg+xml',
};

/** The same port each time where it is free: the browser keeps calls by address. */
const PORT = 38_417;
const LOOPBACK = '127.0.0.1';

/**
 * Serves the page of this folder on the loopback address, to this computer only. Resolves with its address once it
 * listens. Throws a MachineFault where a file cannot be read.
 */
export async function servePage(
  folder: string,
): Promise<{ readonly server: Server; readonly address: string }> {
  const files = new Map<string, { readonly type: string; readonly body: Buffer }>(
    Object.entries(TYPES).map(([name, type]) => {
      const path = join(folder, name);
      return [`/${name}`, { type, body: attempt(path, () => readFileSync(path)) }] as const;
    }),
  );
  const server = createServer(({ method, url = '/', headers }, response) => {
    const [path = ''] = url.split('?');
    const file = files.get(path === '/' ? '/index.html' : path);
    // Another name for this address comes from a page elsewhere that wants to read ours (DNS rebinding).
    const isOurs = /^(?:127\.0\.0\.1|localhost):\d+$/.test(headers.host ?? '');
    if (!isOurs || file === undefined || (method !== 'GET' && method !== 'HEAD')) {
      response.writeHead(isOurs && file !== undefined ? 405 : 404).end();
      return;
    }
    response
      .writeHead(200, {
        'content-type': file.type,
        'content-length': file.body.length,
        'cache-control': 'no-cache',
        'cross-origin-resource-policy': 'same-origin',
        'referrer-policy': 'no-referrer',
        'x-content-type-options': 'nosniff',
        ...(file.type.startsWith('text/html') ? { 'content-security-policy': "frame-ancestors 'none'" } : {}),
      })
      .end(method === 'HEAD' ? undefined : file.body);
  });
  await listen(server, PORT).catch(() => listen(server, 0));
  const { port } = server.address() as AddressInfo;
  return { server, address: `http://${LOOPBACK}:${port}/` };
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, LOOPBACK, () => {
      server.off('error', reject);
      resolve();
    });
  });
}
