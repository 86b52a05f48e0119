import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Host, Lab } from '../types.js';
import type { Undo } from './fault.js';

const SERVER = `
const { createServer } = require(process.env.PAGE_CERT ? 'node:https' : 'node:http');
const { readFileSync } = require('node:fs');
const at = process.env.PAGE_CERT;
const sealed = at ? [{ key: readFileSync(at + '/key.pem'), cert: readFileSync(at + '/cert.pem') }] : [];
createServer(...sealed, (_, reply) => {
  reply.writeHead(Number(process.env.PAGE_CODE), { 'content-type': 'text/html', 'cache-control': 'no-store' });
  reply.end('<title>' + process.env.PAGE_WORDS + '</title><p>' + process.env.PAGE_WORDS + '</p>\\n');
}).listen(Number(process.env.PAGE_PORT));
setTimeout(() => process.exit(), 20 * 60_000);
`;

/** A page that says one thing whatever is asked, on a port of a host. */
export async function startPage(
  lab: Lab,
  host: Host,
  port: number,
  words: string,
  { tls = false, code = 200 }: { readonly tls?: boolean; readonly code?: number } = {},
): Promise<Undo> {
  const key = `page-${host}-${port}`;
  const certificate = tls ? selfSigned() : undefined;
  lab.daemon(key, host, [process.execPath, '-e', SERVER], {
    PAGE_PORT: String(port),
    PAGE_WORDS: words,
    PAGE_CODE: String(code),
    ...(certificate ? { PAGE_CERT: certificate } : {}),
  });
  await lab.listening(host, port);
  return async () => {
    await lab.stop(key);
    if (certificate) rmSync(certificate, { recursive: true, force: true });
  };
}

function selfSigned(): string {
  const folder = mkdtempSync(join(tmpdir(), 'whydark-page-'));
  const settings = join(folder, 'settings');
  writeFileSync(settings, '[req]\ndistinguished_name=name\n[name]\n');
  const key = ['-keyout', join(folder, 'key.pem'), '-out', join(folder, 'cert.pem')];
  const made = [
    'req',
    '-x509',
    '-newkey',
    'ec',
    '-pkeyopt',
    'ec_paramgen_curve:prime256v1',
    '-nodes',
    '-days',
    '30',
  ];
  execFileSync('openssl', [...made, '-config', settings, '-subj', '/CN=firm.example', ...key], {
    stdio: 'ignore',
  });
  return folder;
}
