import { advance, openCall } from '../../call/call.js';
import type { CallEvent } from '../../call/events.js';
import { eventsInOrder } from '../../call/record/read-record.js';
import { screenOf } from '../../call/screen.js';
import { VERSION } from '../../call/version.js';
import { InputFault } from '../../files/faults.js';
import { readRecord } from '../../files/record.js';
import { printable } from '../../messages/printable.js';
import { inWords, say } from '../../messages/say.js';
import type { Step } from '../../steps/step.js';
import { rulesFor } from '../load-rules.js';
import { callFromText } from '../open-record.js';
import { type Options, oneFile } from '../options.js';
import { EXIT } from '../run.js';
import { verdictLines } from '../verdict-lines.js';
import { asJson } from './diagnose.js';

/** So much of an event is shown; `--json` and the record itself hold all of it. */
const LONGEST = 500;

/** `whydark replay RECORD [--json]`: plays a record step by step and says where it ends. */
export async function replayRecord(options: Options): Promise<number> {
  const file = oneFile(options);
  const { rules, digest } = await rulesFor(options);
  const text = readRecord(file, VERSION);
  const isOther = text.header.rules.digest !== digest;
  const tell = (words: string) => process.stderr.write(`${words}\n`);
  const end = await callFromText(file, text, { rules, digest }, tell, 'noted');
  if (options.json) {
    process.stdout.write(`${JSON.stringify(asJson(end), null, 2)}\n`);
    return EXIT.done;
  }
  let call = await openCall(rules, digest, text.header);
  let moved = 0;
  for (const [at, event] of eventsInOrder(text).entries()) {
    process.stdout.write(`${say('cli.replayed', { number: at + 1, step: screenOf(call).heading })}\n`);
    if (isOther && takesAnother(call.step, event)) {
      moved++;
      process.stdout.write(`   ${say('cli.step-moved')}\n`);
    }
    process.stdout.write(`   ${printable(JSON.stringify(event), LONGEST)}\n`);
    const next = await advance(call, event);
    if (!next.ok) throw new InputFault({ id: 'cli.misfit', with: { file, problem: inWords(next.problem) } });
    call = next.value;
  }
  process.stdout.write(`\n${verdictLines(end)}\n`);
  if (isOther) tell(say('cli.steps-moved', { moved, all: text.events.length }));
  return EXIT.done;
}

/** Whether the person answered or tried something else than this rule base would have put first. */
function takesAnother(step: Step, event: CallEvent): boolean {
  if (event.type === 'answered') return !(step.kind === 'ask' && step.question === event.question);
  return event.type === 'tried' && !(step.kind === 'try' && step.remedy === event.remedy);
}
