import { advance, openCall } from '../../call/call.js';
import { screenOf } from '../../call/screen.js';
import { VERSION } from '../../call/version.js';
import { InputFault } from '../../files/faults.js';
import { readRecord } from '../../files/record.js';
import { inWords, say } from '../../messages/say.js';
import { rulesFor } from '../load-rules.js';
import { callFromText } from '../open-record.js';
import { type Options, oneFile } from '../options.js';
import { EXIT } from '../run.js';
import { verdictLines } from '../verdict-lines.js';
import { asJson } from './diagnose.js';

/** `whydark replay RECORD [--json]`: plays a record step by step and says where it ends. */
export async function replayRecord(options: Options): Promise<number> {
  const file = oneFile(options);
  const { rules, digest } = await rulesFor(options);
  const text = readRecord(file, VERSION);
  const end = await callFromText(file, text, { rules, digest });
  if (options.json) {
    process.stdout.write(`${JSON.stringify(asJson(end), null, 2)}\n`);
    return EXIT.done;
  }
  let call = await openCall(rules, digest, text.header);
  for (const [at, event] of text.events.entries()) {
    process.stdout.write(`${say('cli.replayed', { number: at + 1, step: screenOf(call).heading })}\n`);
    process.stdout.write(`   ${JSON.stringify(event)}\n`);
    const next = await advance(call, event);
    if (!next.ok) throw new InputFault({ id: 'cli.misfit', with: { file, problem: inWords(next.problem) } });
    call = next.value;
  }
  process.stdout.write(`\n${verdictLines(end)}\n`);
  return EXIT.done;
}
