import { type Call, replay } from '../call/call.js';
import type { CallHeader } from '../call/events.js';
import { eventsInOrder, readRecordBytes } from '../call/record/read-record.js';
import { VERSION } from '../call/version.js';
import { inWords, say } from '../messages/say.js';
import type { PackedRules } from './packed.js';

/** A call that was read from outside. */
export interface Arrived {
  readonly call: Call;
  /** Its record, without a last line that was cut off. */
  readonly record: string;
  readonly from: 'file' | 'link' | 'kept';
  /** It would take the place of a kept call that holds something else. */
  readonly replaces: boolean;
}

export type ArrivedRead =
  | { readonly ok: true; readonly value: Pick<Arrived, 'call' | 'record'> }
  | { readonly ok: false; readonly says: string };

/** Reads a record from outside, or says what is wrong with it; `path` is what it is called there. */
export async function arrivedFrom(
  packed: PackedRules,
  bytes: Uint8Array,
  path: string,
): Promise<ArrivedRead> {
  const { rules, digest } = packed;
  const read = readRecordBytes(bytes, VERSION);
  if (!read.ok) {
    const { id, with: filling } = read.problem;
    return { ok: false, says: say(id, { ...filling, path, line: read.line }) };
  }
  const { header, length } = read.value;
  if (header.rules.digest !== digest) return { ok: false, says: otherRules(packed, header) };
  const result = await replay(rules, digest, header, eventsInOrder(read.value));
  if (!result.ok)
    return { ok: false, says: say('cli.misfit', { file: path, problem: inWords(result.problem) }) };
  return {
    ok: true,
    value: { call: result.value, record: new TextDecoder().decode(bytes.subarray(0, length)) },
  };
}

function otherRules({ rules, digest }: PackedRules, header: CallHeader): string {
  return say('page.other-rules', {
    theirs: header.rules.version,
    theirDigest: header.rules.digest.slice(0, 12),
    ours: rules.manifest.version,
    ourDigest: digest.slice(0, 12),
  });
}
