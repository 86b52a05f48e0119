import { type Dice, diceOf } from '../../../src/call/rehearsal/dice.js';
import type { Cause, Finding, Question, Remedy, RuleBase } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';
import { startOf, withoutNoise } from './small-start.js';

const CAUSES = [5, 6];
const QUESTIONS = 5;
const REMEDIES = 6;
const MOST_VALUES = 3;

/** The starts of so many cuts of a rule base, seed by seed, no two of the same causes. */
export function cutStarts(rules: RuleBase, count: number): readonly Situation[] {
  const found = new Map<string, Situation>();
  for (let seed = 1; found.size < count && seed <= 10 * count; seed++) {
    const start = cutStart(rules, seed);
    const causes = start.rules.causes.map(({ id }) => id).join(' ');
    if (!found.has(causes)) found.set(causes, start);
  }
  return [...found.values()];
}

/**
 * The start of a call on a seeded small cut of a rule base: a cause and those that share most findings with it,
 * the single questions that bear on most of them, and the remedies that mend them; no conditions, no gates.
 */
export function cutStart(rules: RuleBase, seed: number): Situation {
  const dice = diceOf(seed);
  const single = rules.findings.filter((finding) => questionOf(rules, finding) !== undefined);
  const causes = akin(dice, rules.causes, new Set(single.map(({ id }) => id)));
  const findings = mostTold(single, causes);
  const remedies = weightiest(rules.remedies, causes);
  const named = (list: readonly Cause[]): number => list.reduce((sum, { prior }) => sum + prior, 0);
  const scale = named(rules.causes) / named(causes);
  const kept = new Set(findings.map(({ id }) => id));
  const whole: RuleBase = {
    manifest: rules.manifest,
    questions: findings.flatMap((finding) => questionOf(rules, finding) ?? []).sort(byId),
    findings: findings.map(bareFinding).sort(byId),
    causes: causes
      .map((one) => ({
        ...one,
        prior: one.prior * scale,
        signs: Object.fromEntries(Object.entries(one.signs).filter(([id]) => kept.has(id))),
      }))
      .sort(byId),
    remedies: remedies.map(bareRemedy).sort(byId),
    facts: [],
    contradictions: [],
    cautions: [],
    'tester-faults': [],
    retired: [],
  };
  return startOf(withoutNoise(whole), 'site');
}

function byId(a: { readonly id: string }, b: { readonly id: string }): number {
  return a.id < b.id ? -1 : 1;
}

/** The question that settles this finding by itself, as a bare choice of its values. */
function questionOf(rules: RuleBase, { asks, values }: Finding): Question | undefined {
  const question = asks.length === 1 ? rules.questions.find(({ id }) => id === asks[0]) : undefined;
  const ids = Object.keys(values);
  const isChoice = question?.answer.type === 'choice' || question?.answer.type === 'yes-no';
  if (!question || !isChoice || ids.length > MOST_VALUES) return undefined;
  const { when: _, opening: __, part: ___, ...bare } = question;
  return { ...bare, answer: { type: 'choice', choices: ids.map((id) => ({ id, title: id })) } };
}

function bareFinding({ repeats: _, now: __, values, ...bare }: Finding): Finding {
  const plain = Object.entries(values).map(([id, { title, usual }]) => [id, { title, usual }] as const);
  return { ...bare, values: Object.fromEntries(plain) };
}

function bareRemedy({ when: _, gate: __, ...bare }: Remedy): Remedy {
  return bare;
}

/** A cause drawn by its prior, and those that share most findings with it; chance decides between equals. */
function akin(dice: Dice, causes: readonly Cause[], counted: ReadonlySet<string>): readonly Cause[] {
  const first = causes[dice.weighted(causes.map(({ prior }) => prior))];
  const size = dice.oneOf(CAUSES) ?? QUESTIONS;
  const own = Object.keys(first?.signs ?? {}).filter((id) => counted.has(id));
  return causes
    .map((one) => ({
      one,
      shared: one === first ? Number.POSITIVE_INFINITY : own.filter((id) => id in one.signs).length,
      lot: dice.number(),
    }))
    .sort((a, b) => b.shared - a.shared || a.lot - b.lot)
    .slice(0, size)
    .map(({ one }) => one);
}

/** The findings that most of these causes have signs on, one for each question. */
function mostTold(findings: readonly Finding[], causes: readonly Cause[]): readonly Finding[] {
  const told = ({ id }: Finding): number => causes.filter(({ signs }) => id in signs).length;
  const taken = new Set<string>();
  return [...findings]
    .sort((a, b) => told(b) - told(a) || byId(a, b))
    .filter(({ asks: [question = ''] }) => !taken.has(question) && taken.add(question))
    .slice(0, QUESTIONS);
}

/** The remedies that mend most of what these causes weigh. */
function weightiest(remedies: readonly Remedy[], causes: readonly Cause[]): readonly Remedy[] {
  const weight = ({ mends }: Remedy): number =>
    causes
      .filter(({ id }) => mends.some(({ cause }) => cause === id))
      .reduce((sum, one) => sum + one.prior, 0);
  return remedies
    .filter((one) => weight(one) > 0)
    .sort((a, b) => weight(b) - weight(a) || byId(a, b))
    .slice(0, REMEDIES);
}
