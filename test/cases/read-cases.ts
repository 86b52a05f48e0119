import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { RawAnswer } from '../../src/answers/answer.js';
import { parseAnswer } from '../../src/answers/parse-answer.js';
import type { Role } from '../../src/call/events.js';
import type { Script } from '../../src/call/scripted-call.js';
import type { RuleBase } from '../../src/rulebase/records.js';

type Answers = Readonly<Record<string, RawAnswer>>;

/** A case as its author wrote it: whole, or as what differs from a healthy world. */
interface Written {
  readonly cause: string;
  /** Of a near miss: the cause it is taken for at first. */
  readonly looksLike?: string;
  readonly story: string;
  readonly role: Role;
  readonly world?: string;
  readonly answers: Answers;
  /** Either what each remedy would do there, or only which would bring the picture back. */
  readonly remedies?: Script['remedies'];
  readonly mends?: readonly string[];
}

export interface Case {
  /** `stage/cause` and its number in the file, from 1. */
  readonly name: string;
  readonly cause: string;
  readonly looksLike?: string;
  readonly script: Script;
}

const OPENED = '2026-11-25T09:00:00.000Z';
const ROOT = 'test/cases';

/** The cases by cause, sorted by name. */
export function readCases(rules: RuleBase): readonly Case[] {
  return readdirSync(ROOT, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name: stage }) =>
      readdirSync(join(ROOT, stage)).flatMap((file) => casesIn(rules, `${stage}/${file}`)),
    )
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Cases drawn as often as their causes come, told after the rule base was mended by the others. */
export function readHoldOut(rules: RuleBase): readonly Case[] {
  return casesIn(rules, 'hold-out.json');
}

function casesIn(rules: RuleBase, file: string): readonly Case[] {
  const written: Written | { readonly cases: readonly Written[] } = JSON.parse(
    readFileSync(join(ROOT, file), 'utf8'),
  );
  const worlds: Readonly<Record<string, Answers>> = JSON.parse(
    readFileSync(join(ROOT, 'worlds.json'), 'utf8'),
  );
  const list = 'cases' in written ? written.cases : [written];
  return list.map((one, at) => caseOf(rules, worlds, `${file.replace('.json', '')} ${at + 1}`, one));
}

function caseOf(
  rules: RuleBase,
  worlds: Readonly<Record<string, Answers>>,
  name: string,
  { cause, looksLike, story, role, world, answers, remedies, mends = [] }: Written,
): Case {
  const healthy = world === undefined ? {} : worlds[world];
  if (!healthy) throw new Error(`${name}: there is no world ${world}`);
  // The author says what would bring the picture back; whether anything else did its own work, nobody there can tell.
  const outcomes = rules.remedies.map(({ id }) => {
    const isCure = mends.includes(id);
    return [id, { took: isCure ? 'yes' : 'cant-tell', picture: isCure ? 'yes' : 'no' }];
  });
  return {
    name,
    cause,
    ...(looksLike === undefined ? {} : { looksLike }),
    script: {
      ...{ title: name, story, opened: OPENED, role },
      answers: taken(rules, { ...healthy, ...answers }),
      remedies: remedies ?? Object.fromEntries(outcomes),
    },
  };
}

/** What the question would not take is no answer: on a call they would say that they can't tell. */
function taken({ questions }: RuleBase, answers: Answers): Answers {
  return Object.fromEntries(
    Object.entries(answers).flatMap(([id, raw]) => {
      const question = questions.find((one) => one.id === id);
      return question ? [[id, parseAnswer(question, raw).ok ? raw : null] as const] : [];
    }),
  );
}
