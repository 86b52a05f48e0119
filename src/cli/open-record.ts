import { type Call, replay } from '../call/call.js';
import { VERSION } from '../call/version.js';
import { InputFault } from '../files/faults.js';
import type { LoadedRules } from '../files/load-rules.js';
import { readRecord } from '../files/record.js';
import type { RecordText } from '../files/record-text.js';
import { inWords, say } from '../messages/say.js';

/** Plays a record from a file. Says on stderr what was torn or left out. Throws an InputFault where it does not fit. */
export async function callFromRecord(file: string, { rules, digest }: LoadedRules): Promise<Call> {
  return callFromText(file, readRecord(file, VERSION), { rules, digest });
}

/** The same from a record already read. */
export async function callFromText(
  file: string,
  text: RecordText,
  { rules, digest }: LoadedRules,
): Promise<Call> {
  const { header, events, torn, strangers } = text;
  if (torn) process.stderr.write(`${say('cli.torn', { line: torn.line, file })}\n`);
  if (strangers.length > 0)
    process.stderr.write(`${say('cli.strangers', { count: strangers.length, file })}\n`);
  if (header.rules.digest !== digest) {
    throw new InputFault({
      id: 'cli.other-rules',
      with: {
        file,
        theirs: header.rules.version,
        theirDigest: header.rules.digest.slice(0, 12),
        ours: rules.manifest.version,
        ourDigest: digest.slice(0, 12),
      },
    });
  }
  const result = await replay(rules, digest, header, events);
  if (!result.ok)
    throw new InputFault({ id: 'cli.misfit', with: { file, problem: inWords(result.problem) } });
  return result.value;
}
