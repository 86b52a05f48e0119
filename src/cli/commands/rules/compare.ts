import {
  type Compared,
  compareRules,
  firstOther,
  type Moved,
  movedBetween,
  type Standing,
} from '../../../call/compare-rules.js';
import { eventsInOrder } from '../../../call/record/read-record.js';
import { VERSION } from '../../../call/version.js';
import { InputFault } from '../../../files/faults.js';
import { readRecord } from '../../../files/record.js';
import { say } from '../../../messages/say.js';
import { rulesFor } from '../../load-rules.js';
import type { Options } from '../../options.js';
import { EXIT } from '../../run.js';

type MovedFile = Moved & { readonly file: string };

/** `whydark rules compare OLD NEW [RECORD...]`: what changed, whether the version says so, and what calls make of it. */
export async function compare(options: Options): Promise<number> {
  const [old, now, ...records] = options.operands;
  if (old === undefined || now === undefined) throw new InputFault({ id: 'cli.compare-wants' });
  const [older, newer] = [await rulesFor({ rules: [old] }), await rulesFor({ rules: [now] })];
  const compared = compareRules(older, newer);
  const moved: MovedFile[] = [];
  for (const file of records) {
    const text = readRecord(file, VERSION);
    moved.push({ file, ...(await movedBetween(older, newer, text.header, eventsInOrder(text))) });
  }
  if (options.json) {
    process.stdout.write(`${JSON.stringify({ format: 1, ...compared, records: moved }, null, 2)}\n`);
  } else {
    for (const line of [...changeLines(compared), ...moved.map(movedLines)])
      process.stdout.write(`${line}\n`);
  }
  return compared.enough ? EXIT.done : EXIT.failed;
}

function changeLines({ changes, older, newer, needed, enough }: Compared): readonly string[] {
  const version = say(enough ? 'cli.version-enough' : 'cli.version-too-small', { older, newer, needed });
  return [...changes.map(changeLine), `${say('cli.changes', { count: changes.length })} ${version}`];
}

function changeLine(change: Compared['changes'][number]): string {
  const name = `${change.kind}/${change.id}`;
  if (change.what !== 'changed') return say(`cli.change-${change.what}`, { name });
  const { reworded, reweighed, rewired } = change.fields;
  const parts = [
    rewired.length > 0 ? say('cli.change-rewired', { fields: rewired.join(', ') }) : '',
    reweighed.length > 0 ? say('cli.change-reweighed', { fields: reweighed.join(', ') }) : '',
    reworded.length > 0 ? say('cli.change-reworded', { fields: reworded.join(', ') }) : '',
  ];
  return `${name}: ${parts.filter((part) => part !== '').join('; ')}`;
}

function movedLines({ file, ...moved }: MovedFile): string {
  const { older, newer, same } = moved;
  if (same) return say('cli.record-same', { file, now: standingLine(newer) });
  const line = say('cli.record-moved', { file, was: standingLine(older), now: standingLine(newer) });
  const step = firstOther(moved);
  return step === undefined ? line : `${line}\n  ${say('cli.record-step', step)}`;
}

function standingLine(one: Standing): string {
  if ('problem' in one) return one.problem;
  const { verdict, cause, probability } = one;
  return say('cli.record-standing', { verdict, cause: cause ?? '-', percent: Math.round(probability * 100) });
}
