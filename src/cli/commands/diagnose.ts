import { readAnswersText } from '../../call/answers-file.js';
import { type Call, diagnosisOf, replay } from '../../call/call.js';
import { RECORD_FORMAT } from '../../call/events.js';
import { screenOf } from '../../call/screen.js';
import { VERSION } from '../../call/version.js';
import { InputFault } from '../../files/faults.js';
import { readInput } from '../../files/input.js';
import { inWords, say } from '../../messages/say.js';
import { faultLine } from '../fault-line.js';
import { rulesFor } from '../load-rules.js';
import { type Options, oneFile } from '../options.js';
import { EXIT } from '../run.js';
import { verdictLines } from '../verdict-lines.js';

/** Stamped on events that come from a file of answers: no clock has a say in a diagnosis. */
const NO_TIME = '1970-01-01T00:00:00.000Z';

/** `whydark diagnose FILE|- [--json] [--site]`: a diagnosis from a file of answers. */
export async function diagnose(options: Options): Promise<number> {
  const file = oneFile(options);
  const { rules, digest } = await rulesFor(options);
  const shown = file === '-' ? say('files.standard-input') : file;
  const read = readAnswersText(rules, await readInput(file, process.stdin), NO_TIME);
  if (!read.ok) {
    const faults = read.problems.map(({ pointer, says }) => faultLine({ file: shown, pointer, says }));
    process.stderr.write(`${faults.join('\n')}\n`);
    return EXIT.wrongUse;
  }
  const header = {
    record: RECORD_FORMAT,
    id: 'answers-file',
    opened: NO_TIME,
    whydark: VERSION,
    rules: { version: rules.manifest.version, digest },
    role: options.site ? ('site' as const) : read.role,
  };
  const result = await replay(rules, digest, header, read.events, { opening: 'skipped' });
  if (!result.ok)
    throw new InputFault({ id: 'cli.misfit', with: { file: shown, problem: inWords(result.problem) } });
  process.stdout.write(
    options.json ? `${JSON.stringify(asJson(result.value), null, 2)}\n` : `${verdictLines(result.value)}\n`,
  );
  return EXIT.done;
}

/** The diagnosis, with the next step in words. */
export function asJson(call: Call): object {
  const { heading, cautions, say: words } = screenOf(call);
  return { ...diagnosisOf(call), step: { heading, cautions, say: words } };
}
