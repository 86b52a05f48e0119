import { eventsFromHere } from '../call/from-here.js';
import type { Terminal } from './ask.js';
import { callDesk } from './call-desk.js';
import { rulesFor } from './load-rules.js';
import type { Looked } from './look-here.js';
import type { Options } from './options.js';
import { talk } from './talk.js';

/** A call of the installer's own, begun with what this computer told; the ticket goes to stdout at its end. */
export async function holdHere(options: Options, terminal: Terminal, looked: Looked): Promise<number> {
  const loaded = await rulesFor(options);
  return talk({ ...options, site: true }, loaded, {
    ...callDesk(terminal),
    first: (call) => {
      const { said, read } = eventsFromHere(call, looked.paste, looked.given);
      return [...said, read];
    },
  });
}
