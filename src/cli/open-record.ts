import { type Call, replay } from '../call/call.js';
import { eventsInOrder, type RecordText } from '../call/record/read-record.js';
import { VERSION } from '../call/version.js';
import { InputFault } from '../files/faults.js';
import type { LoadedRules } from '../files/load-rules.js';
import { readRecord } from '../files/record.js';
import { inWords, say } from '../messages/say.js';

/** Plays a record from a file. Says on stderr what was torn or left out. Throws an InputFault where it does not fit. */
export async function callFromRecord(file: string, { rules, digest }: LoadedRules): Promise<Call> {
  return callFromText(file, readRecord(file, VERSION), { rules, digest });
}

/** The same from a record already read. `tell` says what was torn or left out; other rules are refused, or noted. */
export async function callFromText(
  file: string,
  text: RecordText,
  { rules, digest }: LoadedRules,
  tell: (text: string) => unknown = (words) => process.stderr.write(`${words}\n`),
  otherRules: 'refused' | 'noted' = 'refused',
): Promise<Call> {
  const { header, torn, strangers } = text;
  if (torn) tell(say('cli.torn', { line: torn.line, file }));
  if (strangers.length > 0) tell(say('cli.strangers', { count: strangers.length, file }));
  if (header.rules.digest !== digest) {
    const both = {
      file,
      theirs: header.rules.version,
      theirDigest: header.rules.digest.slice(0, 12),
      ours: rules.manifest.version,
      ourDigest: digest.slice(0, 12),
    };
    if (otherRules === 'refused') throw new InputFault({ id: 'cli.other-rules', with: both });
    tell(say('cli.under-other-rules', both));
  }
  const result = await replay(rules, digest, header, eventsInOrder(text));
  if (!result.ok)
    throw new InputFault({ id: 'cli.misfit', with: { file, problem: inWords(result.problem) } });
  return result.value;
}
