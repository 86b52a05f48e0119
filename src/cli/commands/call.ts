import { InputFault } from '../../files/faults.js';
import type { Terminal } from '../ask.js';
import { callDesk } from '../call-desk.js';
import { rulesFor } from '../load-rules.js';
import type { Options } from '../options.js';
import { paintFor } from '../paint.js';
import { talk } from '../talk.js';

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
  return talk(options, loaded, callDesk(terminal));
}
