import type { Answers, RawAnswer } from '../../answers/answer.js';
import { parseAnswer } from '../../answers/parse-answer.js';
import { deriveFacts } from '../../findings/derive-facts.js';
import type { Facts } from '../../findings/fact.js';
import { holds } from '../../findings/holds.js';
import type { Condition } from '../../rulebase/condition.js';
import { mentions } from '../../rulebase/mentions.js';
import type {
  FactRecord,
  Finding,
  FindingId,
  Question,
  QuestionId,
  RuleBase,
  ValueId,
} from '../../rulebase/records.js';
import { tellable } from './tellable.js';

/** What a caller says to some questions. */
export type Said = ReadonlyMap<QuestionId, RawAnswer>;

/** By finding and value: the answers that set it, each as a whole set. */
export type Tellings = ReadonlyMap<FindingId, ReadonlyMap<ValueId, readonly Said[]>>;

/** Enough sets of answers for a value; more would only slow the search. */
const MOST = 60;

/** Sets looked at for one condition: with many addresses in it there are millions, and the first fit is enough. */
const LOOKED_AT = 50_000;

const KNOWN = new WeakMap<RuleBase, Tellings>();
const MEETING = new WeakMap<RuleBase, Map<Condition, readonly Said[]>>();

/** Turns the rules of findings round: which answers make a finding read so. Worked out once for a rule base. */
export function tellingsOf(rules: RuleBase): Tellings {
  const known = KNOWN.get(rules);
  if (known) return known;
  const tellings = new Map(rules.findings.map((finding) => [finding.id, forFinding(rules, finding)]));
  KNOWN.set(rules, tellings);
  return tellings;
}

/** Answers that make a condition hold by themselves, each as a whole set; none where it takes more than answers. */
export function tellingsThat(rules: RuleBase, condition: Condition): readonly Said[] {
  const all = MEETING.get(rules) ?? new Map<Condition, readonly Said[]>();
  MEETING.set(rules, all);
  const known = all.get(condition);
  if (known) return known;
  const wanted = mentions(condition);
  const records = factsBehind(rules, wanted);
  const meeting: Said[] = [];
  let looked = 0;
  for (const said of everySaying(rules, questionsBehind(rules, wanted, records))) {
    if (holds(condition, deriveFacts(records, parsed(rules, said), rules.questions)) === true)
      meeting.push(said);
    looked += 1;
    if (meeting.length === MOST || looked === LOOKED_AT) break;
  }
  all.set(condition, meeting);
  return meeting;
}

function forFinding(rules: RuleBase, finding: Finding): ReadonlyMap<ValueId, readonly Said[]> {
  const mentioned = mentionedBy(finding);
  const records = factsBehind(rules, mentioned);
  const questions = questionsBehind(rules, [...finding.asks, ...mentioned], records);
  const byValue = new Map<ValueId, Said[]>();
  for (const said of everySaying(rules, questions)) {
    const facts = deriveFacts(records, parsed(rules, said), rules.questions);
    const value = valueSet(finding, facts);
    if (value === undefined) continue;
    const list = byValue.get(value) ?? [];
    byValue.set(value, list);
    if (list.length < MOST) list.push(said);
  }
  return byValue;
}

/** The value that the highest rule sets on these facts alone. */
function valueSet({ rules }: Finding, facts: Facts): ValueId | undefined {
  return [...rules]
    .sort((a, b) => (b.priority ?? 1) - (a.priority ?? 1))
    .find(({ conditions }) => holds(conditions, facts) === true)?.value;
}

function mentionedBy(finding: Finding): readonly string[] {
  return finding.rules.flatMap(({ conditions }) => mentions(conditions));
}

function factsBehind(rules: RuleBase, mentioned: readonly string[]): readonly FactRecord[] {
  const wanted = new Set(mentioned);
  for (let before = -1; before !== wanted.size; ) {
    before = wanted.size;
    for (const record of rules.facts)
      if (wanted.has(record.id)) for (const id of record.inputs) wanted.add(id);
  }
  return rules.facts.filter(({ id }) => wanted.has(id));
}

function questionsBehind(
  rules: RuleBase,
  mentioned: readonly string[],
  records: readonly FactRecord[],
): readonly Question[] {
  const ids = new Set([...mentioned, ...records.flatMap(({ inputs }) => inputs)]);
  return rules.questions.filter(({ id }) => ids.has(id));
}

function* everySaying(rules: RuleBase, questions: readonly Question[]): Generator<Said> {
  const [first, ...rest] = questions;
  if (!first) {
    yield new Map();
    return;
  }
  for (const said of everySaying(rules, rest)) {
    for (const answer of tellable(rules, first)) yield new Map([...said, [first.id, answer]]);
  }
}

/** What was said, as the call would understand it. What it would refuse is left out. */
function parsed({ questions }: RuleBase, said: Said): Answers {
  return new Map(
    [...said].flatMap(([id, raw]) => {
      const question = questions.find((one) => one.id === id);
      const value = question && parseAnswer(question, raw);
      return value?.ok ? [[id, { question: id, value: value.value, origin: 'said' as const }] as const] : [];
    }),
  );
}
