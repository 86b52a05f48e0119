import { readAnswersFile } from '../../call/answers-file.js';
import { type Call, diagnosisOf, replay } from '../../call/call.js';
import { RECORD_FORMAT } from '../../call/events.js';
import { screenOf } from '../../call/screen.js';
import { VERSION } from '../../call/version.js';
import { InputFault } from '../../files/faults.js';
import { readInput } from '../../files/input.js';
import { inWords, say } from '../../messages/say.js';
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
  const json = parseJson(file, await readInput(file, process.stdin));
  const read = readAnswersFile(rules, json, NO_TIME);
  if (!read.ok) {
    const faults = read.problems.map(({ pointer, says }) =>
      say('cli.at', { file, pointer, says: inWords(says) }),
    );
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
  const result = await replay(rules, digest, header, read.events);
  if (!result.ok)
    throw new InputFault({ id: 'cli.misfit', with: { file, problem: inWords(result.problem) } });
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

/** Reads JSON. Throws an InputFault that says where it breaks. */
function parseJson(file: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    const problem = error instanceof Error ? error.message : '';
    throw new InputFault({ id: 'cli.not-json', with: { file, problem } }, error);
  }
}
