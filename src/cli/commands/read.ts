import { noticed } from '../../call/noticed.js';
import { understood } from '../../call/understood.js';
import { readBytes } from '../../files/input.js';
import { observationsIn } from '../../intake/observations.js';
import { type Paste, readPaste } from '../../intake/paste.js';
import { plain } from '../../intake/plain-seen.js';
import { textOf } from '../../intake/text-of.js';
import { foundText } from '../found-text.js';
import { type Options, oneFile } from '../options.js';
import { EXIT } from '../run.js';

/** `whydark read FILE|- [--json]`: what is understood of a pasted text. */
export async function readText(options: Options): Promise<number> {
  const paste = readPaste(textOf(await readBytes(oneFile(options), process.stdin)));
  if (!options.json) {
    process.stdout.write(`${foundText(understood(paste), process.stdout.columns)}\n`);
    return EXIT.done;
  }
  process.stdout.write(`${JSON.stringify(toldOf(paste), null, 2)}\n`);
  return EXIT.done;
}

/** What is printed as JSON; its schema is output/read.schema.json. */
export function toldOf(paste: Paste): unknown {
  const { reading, way, dropped } = paste;
  const adapter = way.adapter === undefined ? {} : { adapter: way.adapter };
  return {
    format: 1,
    seen: plain(reading.seen),
    way,
    observations: observationsIn(reading.seen, adapter),
    noticed: noticed(reading.seen),
    unread: reading.unread,
    parsers: reading.parsers,
    dropped,
  };
}
