import { homedir } from 'node:os';
import { InputFault, MachineFault } from '../../files/faults.js';
import { builtArticles, readArticleText } from '../../files/load-articles.js';
import { askOn, type Terminal } from '../ask.js';
import { rulesFor } from '../load-rules.js';
import type { Options } from '../options.js';
import { paintFor } from '../paint.js';
import { pastedText } from '../prompts/pasted-text.js';
import { talk } from '../talk.js';

/** Reads the articles that the build brought along, each when it is asked for. */
function articleReader(): (file: string) => string | undefined {
  const folder = builtArticles(import.meta.url);
  return (file) => {
    try {
      return readArticleText(folder, file);
    } catch (fault) {
      if (!(fault instanceof InputFault || fault instanceof MachineFault)) throw fault;
      return undefined;
    }
  };
}

/** `whydark call [--record FILE] [--site]`: holds a call on the terminal; the ticket goes to stdout at its end. */
export async function call(options: Options): Promise<number> {
  const [extra] = options.operands;
  if (extra !== undefined) throw new InputFault({ id: 'cli.too-many', with: { command: 'call', extra } });
  if (!process.stdin.isTTY || !process.stderr.isTTY) throw new InputFault({ id: 'cli.no-terminal' });
  const loaded = await rulesFor(options);
  const terminal: Terminal = {
    input: process.stdin,
    output: process.stderr,
    paint: paintFor(process.stderr, process.env),
  };
  return talk(options, loaded, {
    terminal,
    ask: askOn(terminal),
    results: process.stdout,
    now: () => new Date().toISOString(),
    env: process.env,
    home: homedir(),
    read: articleReader(),
    pasted: () => pastedText(terminal),
  });
}
