import { ticketOf } from '../../call/ticket-of.js';
import { rulesFor } from '../load-rules.js';
import { callFromRecord } from '../open-record.js';
import { type Options, oneFile } from '../options.js';
import { EXIT } from '../run.js';

/** `whydark ticket RECORD [--unmasked]`: the ticket of a call record, as markdown. */
export async function ticket(options: Options): Promise<number> {
  const file = oneFile(options);
  const call = await callFromRecord(file, await rulesFor(options));
  process.stdout.write(ticketOf(call, { unmasked: options.unmasked }));
  return EXIT.done;
}
