import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { exists } from '../../files/exists.js';
import { InputFault } from '../../files/faults.js';
import { printable } from '../../messages/printable.js';
import { say } from '../../messages/say.js';
import { openBrowser } from '../open-browser.js';
import type { Options } from '../options.js';
import { EXIT } from '../run.js';
import { servePage } from '../serve-page.js';

/** `whydark page [--json]`: serves the page to this computer, and opens it. Runs until it is interrupted. */
export async function page(options: Options): Promise<number> {
  const [extra] = options.operands;
  if (extra !== undefined) throw new InputFault({ id: 'cli.too-many', with: { command: 'page', extra } });
  const { server, address } = await servePage(builtPage(import.meta.url));
  const interrupted = new Promise<void>((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
  if (options.json) process.stdout.write(`${JSON.stringify({ format: 1, address })}\n`);
  else {
    process.stdout.write(`${say('page.serving', { address })}\n`);
    if (!openBrowser(address, process.platform, process.env))
      process.stdout.write(`${say('page.no-display')}\n`);
  }
  await interrupted;
  server.close();
  server.closeAllConnections();
  return EXIT.interrupted;
}

/** The folder of the page beside the bundle, or one above it where that is a chunk. Throws an InputFault without it. */
function builtPage(bundle: string): string {
  const beside = dirname(fileURLToPath(bundle));
  const places = [beside, dirname(beside)].map((folder) => join(folder, 'page', 'site'));
  const found = places.find((place) => exists(join(place, 'index.html')));
  if (found === undefined)
    throw new InputFault({ id: 'page.not-built', with: { path: printable(places[0] ?? '') } });
  return found;
}
