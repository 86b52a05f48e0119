import type { RawAnswer } from '../../answers/answer.js';
import type { Model } from '../../ranking/model.js';
import type {
  CauseId,
  Finding,
  FindingId,
  Question,
  RuleBase,
  TesterFault,
  ValueId,
} from '../../rulebase/records.js';
import type { Script } from '../scripted-call.js';
import { consentsOf } from './consents.js';
import type { Dice } from './dice.js';
import { tellable } from './tellable.js';
import { type Said, tellingsOf, tellingsThat } from './tellings.js';

/** How the callers of a rehearsal are. */
export interface Callers {
  /** P(value | cause) of the world they live in; the rule base's own unless it is to be tried on another. */
  readonly truth: Model;
  /** Share of answers that are wrong, and that nobody can tell; 0 to 1. */
  readonly wrong: number;
  readonly cantTell: number;
  /** What is wrong with the way they check, besides what is wrong with the camera; nothing where left out. */
  readonly testerFault?: TesterFault;
}

const OPENED = '2026-11-25T09:00:00.000Z';
/** How often the first choice of a question is the plain one, where nothing else decides; judged. */
const PLAIN = 0.8;
/** How often a caller agrees to what only opens a gate. Judged: in the written cases it is more than 98 in 100. */
const AGREES = 0.95;
const HAS_KIT = 0.4;
/** The same for an installer, who came with a bag; judged. */
const BRINGS_KIT = 0.85;
/** How often the installer is on site, who may climb and open things; judged. */
const ON_SITE = 0.5;
/** How often a remedy that mends nothing is seen to have done its own work; judged. */
const TOOK = 0.5;

/**
 * A caller with this cause, written down: what each finding reads is thrown from the signs, and answers that
 * set it so are looked for. Where two findings cannot both be met, the cause's own signs come first.
 */
export function inventCaller(rules: RuleBase, cause: CauseId, callers: Callers, dice: Dice): Script {
  const isOnSite = dice.falls(ON_SITE);
  const secondThoughts = new Map<string, RawAnswer>();
  const { testerFault } = callers;
  const spoiling = testerFault && dice.oneOf(tellingsThat(rules, testerFault.when));
  const said = new Map<string, RawAnswer>(spoiling);
  for (const finding of inOrder(rules, cause))
    meet(rules, finding, valueFor(callers, cause, finding, dice), said, dice);
  for (const question of rules.questions) {
    if (said.has(question.id)) continue;
    const consent = consentsOf(rules).get(question.id);
    const answer =
      consent === undefined
        ? plain(question, dice, isOnSite ? BRINGS_KIT : HAS_KIT)
        : dice.falls(AGREES) === consent;
    said.set(question.id, answer);
  }
  for (const question of rules.questions) {
    if (question.opening !== undefined && ends(question, said.get(question.id)))
      said.set(question.id, notEnding(question));
    else if (dice.falls(callers.cantTell) && question.opening === undefined) said.set(question.id, null);
    else if (dice.falls(callers.wrong)) {
      const right = said.get(question.id) ?? null;
      said.set(question.id, another(rules, question, right, dice));
      // As many slips stand after a second look as the rule base takes to be wrong even then.
      if (!dice.falls(stubborn(rules, question))) secondThoughts.set(question.id, right);
    }
  }
  return {
    ...{ title: cause, story: '', opened: OPENED, role: isOnSite ? 'site' : 'desk' },
    answers: Object.fromEntries(said),
    remedies: outcomes(rules, cause, dice),
    secondThoughts: Object.fromEntries(secondThoughts),
    corrections: spoiling ? toldUnasked(rules, spoiling) : [],
  };
}

/** Addresses and masks, as somebody tells them who has their own computer's network page before them. */
function toldUnasked(rules: RuleBase, said: Said): NonNullable<Script['corrections']> {
  const [first] = rules.questions
    .filter(({ opening }) => opening !== undefined)
    .sort((a, b) => (a.opening ?? 0) - (b.opening ?? 0));
  return rules.questions
    .filter(({ answer }) => answer.type === 'address' || answer.type === 'mask')
    .flatMap(({ id }) => {
      const answer = said.get(id);
      return first === undefined || answer === undefined ? [] : [{ after: first.id, question: id, answer }];
    });
}

function stubborn({ manifest: { reliability } }: RuleBase, { answer }: Question): number {
  return reliability.agreed / (reliability.said[answer.type] ?? reliability.said.number);
}

/** Findings that the cause has signs of its own for come first, then those of few answers. */
function inOrder(rules: RuleBase, cause: CauseId): readonly Finding[] {
  const own = rules.causes.find(({ id }) => id === cause)?.signs ?? {};
  const rank = ({ id, asks, circumstance }: Finding) =>
    (circumstance ? 0 : 1000) + (Object.hasOwn(own, id) ? 0 : 100) + asks.length;
  return [...rules.findings].sort((a, b) => rank(a) - rank(b) || (a.id < b.id ? -1 : 1));
}

function valueFor({ truth }: Callers, cause: CauseId, finding: Finding, dice: Dice): ValueId | undefined {
  const layout = truth.findings.get(finding.id);
  const at = truth.hypotheses.findIndex(({ id }) => id === cause);
  if (!layout) return undefined;
  return layout.values[dice.weighted(layout.shares.map((row) => row[at] ?? 0))];
}

function meet(
  rules: RuleBase,
  finding: Finding,
  value: ValueId | undefined,
  said: Map<string, RawAnswer>,
  dice: Dice,
): void {
  if (value === undefined) return;
  const fitting = optionsFor(rules, finding.id, value).filter((option) =>
    [...option].every(([id, answer]) => !said.has(id) || same(said.get(id), answer)),
  );
  for (const [id, answer] of dice.oneOf(fitting) ?? []) said.set(id, answer);
}

function optionsFor(rules: RuleBase, finding: FindingId, value: ValueId): readonly Said[] {
  return tellingsOf(rules).get(finding)?.get(value) ?? [];
}

function same(a: RawAnswer | undefined, b: RawAnswer): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function plain(question: Question, dice: Dice, hasKit: number): RawAnswer {
  const shape = question.answer;
  if (shape.type === 'choice') {
    const harmless = shape.choices.filter(({ ends }) => ends === undefined);
    return (dice.falls(PLAIN) ? harmless[0]?.id : dice.oneOf(harmless)?.id) ?? null;
  }
  if (shape.type === 'several') {
    if (question.part === 'kit') return shape.choices.map(({ id }) => id).filter(() => dice.falls(hasKit));
    return [];
  }
  if (shape.type === 'yes-no') return dice.falls(PLAIN);
  return shape.type === 'text' ? 'as told' : null;
}

function ends({ answer }: Question, said: RawAnswer | undefined): boolean {
  return answer.type === 'choice' && answer.choices.some(({ id, ends }) => id === said && ends !== undefined);
}

function notEnding({ answer }: Question): RawAnswer {
  return ('choices' in answer && answer.choices.find(({ ends }) => ends === undefined)?.id) || null;
}

function another(rules: RuleBase, question: Question, said: RawAnswer | undefined, dice: Dice): RawAnswer {
  const others = tellable(rules, question).filter((answer) => !same(said, answer));
  const picked = dice.oneOf(others);
  return picked === undefined || ends(question, picked) ? (said ?? null) : picked;
}

/** A remedy that mends the cause brings the picture back as often as it says; any other only does its own work. */
function outcomes(rules: RuleBase, cause: CauseId, dice: Dice): Script['remedies'] {
  const words = rules.manifest.words;
  return Object.fromEntries(
    rules.remedies.map(({ id, mends }) => {
      const chance = words[mends.find((one) => one.cause === cause)?.chance ?? ''] ?? 0;
      const isBack = dice.falls(chance);
      const took = isBack || dice.falls(TOOK) ? 'yes' : 'cant-tell';
      return [id, { took, picture: isBack ? 'yes' : 'no' } as const];
    }),
  );
}
