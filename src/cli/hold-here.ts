import { answersFrom, pasteEvent } from '../call/from-paste.js';
import type { Paste } from '../intake/paste.js';
import type { Terminal } from './ask.js';
import { callDesk } from './call-desk.js';
import { rulesFor } from './load-rules.js';
import type { Options } from './options.js';
import { talk } from './talk.js';

/** A call of the installer's own, begun with what this computer told; the ticket goes to stdout at its end. */
export async function holdHere(options: Options, terminal: Terminal, paste: Paste): Promise<number> {
  const loaded = await rulesFor(options);
  return talk({ ...options, site: true }, loaded, {
    ...callDesk(terminal),
    first: ({ state, rules }) => {
      const adapter = paste.way.adapter === undefined ? {} : { adapter: paste.way.adapter };
      const about = { ...adapter, isHere: true };
      return [pasteEvent(state, paste, answersFrom(rules, paste, about, undefined), about, 'read')];
    },
  });
}
