import { isCantTell } from '../answers/answer.js';
import { combinedErrorRate, errorRate, type Leaning, leaningOf } from '../answers/reliability.js';
import { isSilent } from '../findings/silent.js';
import { blur } from '../ranking/blur.js';
import type { FindingModel } from '../ranking/model.js';
import type { Finding, FindingId, PlaceId, Question, QuestionId } from '../rulebase/records.js';
import { information, type Rows } from './information.js';
import { groupFor, questionOf } from './open-questions.js';
import type { Try } from './repair-plan.js';
import type { Situation } from './situation.js';
import { placeAfter, wayMinutes } from './ways.js';
import { mendsUnseen, quickPlan } from './while-away.js';

/** A question, or a short group of them, that together settle a finding, and what asking it is worth. */
export interface Candidate {
  readonly questions: readonly Question[];
  readonly settles: FindingId;
  /** Minutes of the questions and the ways between them. */
  readonly minutes: number;
  /** Expected minutes until the picture is back if this is asked now. */
  readonly expected: number;
}

/** A finding that is not known yet, and the questions that together settle it. */
interface Open {
  readonly finding: Finding;
  readonly questions: readonly Question[];
}

/**
 * Steps that would settle a finding which is not known yet, each with its expected minutes, best first;
 * with `only`, those that put one of these questions.
 */
export function candidates(
  situation: Situation,
  tries: readonly Try[],
  only: ReadonlySet<QuestionId> | undefined = undefined,
): readonly Candidate[] {
  const open = situation.rules.findings.flatMap((finding): Open[] => {
    const questions = usefulGroup(situation, finding);
    return questions ? [{ finding, questions }] : [];
  });
  const groups = new Map<string, Open[]>();
  for (const one of open) {
    const key = one.questions.map(({ id }) => id).join(' ');
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const unseen = mendsUnseen(situation);
  const minutesOf: Costs = (weights, place) => quickPlan(situation, unseen, weights, place, tries).minutes;
  const known = new Map<PlaceId, number>();
  /** Minutes from a place where nobody could tell: the same for every question asked there. */
  const untoldAt = (place: PlaceId): number => {
    const minutes = known.get(place) ?? minutesOf(situation.probabilities, place);
    known.set(place, minutes);
    return minutes;
  };
  const wanted = [...groups.values()].filter(
    (own) => !only || own[0]?.questions.some(({ id }) => only.has(id)),
  );
  return shortlist(situation, wanted)
    .map((own) => weigh(situation, minutesOf, own, open, untoldAt))
    .sort((a, b) => round(a.expected) - round(b.expected) || (a.settles < b.settles ? -1 : 1));
}

/**
 * So many steps are weighed in full. Measured on rehearsed calls: of some eighty the best was never past the
 * eighteenth by information per minute.
 */
const WEIGHED = 24;

/** The steps that tell most for their minutes. */
function shortlist(situation: Situation, groups: readonly (readonly Open[])[]): readonly (readonly Open[])[] {
  if (groups.length <= WEIGHED) return groups;
  const { manifest } = situation.rules;
  return groups
    .map((own) => {
      const questions = own[0]?.questions ?? [];
      const told = (1 - manifest.cantTell) ** questions.length;
      const most = Math.max(
        ...own.map((open) =>
          information(situation.probabilities, rowsOf(situation, open.finding, questions)),
        ),
      );
      return { own, rate: (told * most) / (walk(situation, questions).minutes + SETTLING) };
    })
    .sort((a, b) => b.rate - a.rate)
    .slice(0, WEIGHED)
    .map(({ own }) => own);
}

/** What any step takes besides its own minutes, for comparing very short ones; judged. */
const SETTLING = 2;

/** A step that tells something, whatever it saves. */
export interface Telling {
  readonly questions: readonly Question[];
  readonly settles: FindingId;
  /** Minutes of the questions and the ways between them. */
  readonly minutes: number;
  readonly rows: Rows;
}

/** The step that tells most of what is wrong for its minutes; see `tellingFor`. */
export function mostTellingFor(situation: Situation, least: number, longest: number): Telling | undefined {
  return tellingFor(situation, least, longest)[0];
}

/**
 * The steps that tell at least `least` nats a minute of what is wrong and take at most `longest` minutes, what tells most
 * for its minutes first: for when it is not minutes that are to be saved.
 */
export function tellingFor(situation: Situation, least: number, longest: number): readonly Telling[] {
  return situation.rules.findings
    .flatMap((finding) => {
      const questions = usefulGroup(situation, finding);
      const { minutes } = walk(situation, questions ?? []);
      if (!questions || minutes > longest) return [];
      const rows = rowsOf(situation, finding, questions);
      const rate = information(situation.probabilities, rows) / (minutes + SETTLING);
      return rate >= least ? [{ questions, settles: finding.id, minutes, rows, rate }] : [];
    })
    .sort((a, b) => b.rate - a.rate);
}

/** Expected minutes to compare by; beyond a thousandth they are noise of the sum. */
export function round(minutes: number): number {
  return Math.round(minutes * 1000) / 1000;
}

function usefulGroup(situation: Situation, finding: Finding): readonly Question[] | undefined {
  const { settled, evidence, model, rules } = situation;
  if (settled.findings.has(finding.id) || isSilent(rules, settled, finding)) return undefined;
  const group = model.findings.get(finding.id)?.group;
  if (evidence.some((one) => model.findings.get(one.finding)?.group === group)) return undefined;
  const questions = groupFor(situation, wantedOf(situation, finding));
  return questions && questions.length > 0 ? questions : undefined;
}

/** Expected minutes of what would be tried, by the weights of the hypotheses and the place. */
type Costs = (weights: ArrayLike<number>, place: PlaceId) => number;

function weigh(
  situation: Situation,
  minutesOf: Costs,
  own: readonly Open[],
  open: readonly Open[],
  untoldAt: (place: PlaceId) => number,
): Candidate {
  const { manifest } = situation.rules;
  const questions = own[0]?.questions ?? [];
  const { minutes, place } = walk(situation, questions);
  const first = mostTelling(situation, own);
  const second = first && mostTelling(situation, alongside(situation, open, first.open));
  const after = outcomes(
    situation.probabilities,
    [first, second].flatMap((one) => (one ? [one.rows] : [])),
  );
  const settled = after.reduce((sum, weights) => sum + minutesOf(weights, place), 0);
  const untold = untoldAt(place);
  const { lastStage } = situation;
  const price = lastStage === undefined || questions[0]?.stage === lastStage ? 0 : manifest.subjectPrice;
  const told = chanceToSettle(manifest.cantTell, questions.length, first?.open.finding.withGaps === true);
  const expected = minutes + price + told * settled + (1 - told) * untold;
  return { questions, settles: first?.open.finding.id ?? '', minutes, expected };
}

interface Told {
  readonly open: Open;
  readonly rows: Rows;
}

/** Only the finding that says most, and one more, are looked into: more would multiply the outcomes. */
function mostTelling(situation: Situation, among: readonly Open[]): Told | undefined {
  const [only, ...others] = among;
  if (!only) return undefined;
  if (others.length === 0) return { open: only, rows: rowsOf(situation, only.finding, only.questions) };
  let best: (Told & { readonly worth: number }) | undefined;
  for (const open of among) {
    const rows = rowsOf(situation, open.finding, open.questions);
    const worth = information(situation.probabilities, rows);
    if (!best || worth > best.worth) best = { open, rows, worth };
  }
  return best;
}

/**
 * What the same questions settle besides. Not what shares a question or a group of repeats with the first: two
 * readings of one answer are not two observations.
 */
function alongside({ model }: Situation, open: readonly Open[], { finding, questions }: Open): Open[] {
  const groupOf = (id: FindingId): FindingId => model.findings.get(id)?.group ?? id;
  return open.filter(
    (other) =>
      other.questions.every((one) => questions.includes(one)) &&
      !other.finding.asks.some((id) => finding.asks.includes(id)) &&
      groupOf(other.finding.id) !== groupOf(finding.id),
  );
}

function walk(
  { here, rules }: Situation,
  questions: readonly Question[],
): { minutes: number; place: PlaceId } {
  let place = here;
  let minutes = 0;
  for (const question of questions) {
    minutes += question.minutes + wayMinutes(rules.manifest, place, question.place);
    place = placeAfter(rules.manifest, place, question.place);
  }
  return { minutes, place };
}

/** P′(value | hypothesis) of a finding, by value, once these questions are answered by voice. */
export function rowsOf(situation: Situation, finding: Finding, questions: readonly Question[]): Rows {
  const layout = situation.model.findings.get(finding.id);
  if (!layout) return [];
  const rate = combinedErrorRate(finding.asks.flatMap((id) => leaning(situation, id, questions)));
  return blurred(layout, rate);
}

const BLURRED = new WeakMap<FindingModel, Map<number, Rows>>();

/** The shares of a finding at this error rate: the few rates that come up are worked out once. */
function blurred(layout: FindingModel, rate: number): Rows {
  const known = BLURRED.get(layout) ?? new Map<number, Rows>();
  BLURRED.set(layout, known);
  const rows =
    known.get(rate) ??
    layout.shares.map((row) => Float64Array.from(row, (share) => blur(share, rate, layout.values.length)));
  known.set(rate, rows);
  return rows;
}

function leaning({ rules, answers }: Situation, id: QuestionId, asked: readonly Question[]): Leaning[] {
  const question = questionOf(rules, id);
  const answer = answers.get(id);
  if (!question) return [];
  if (answer) return [leaningOf(rules.manifest.reliability, question, answer, false)];
  return asked.includes(question)
    ? [{ rate: errorRate(rules.manifest.reliability, question, 'said', false) }]
    : [];
}

/** Weights of the hypotheses after each combination of values; each sums to the chance of that combination. */
function outcomes(probabilities: readonly number[], findings: readonly Rows[]): readonly Float64Array[] {
  return findings.reduce<readonly Float64Array[]>(
    (before, rows) =>
      before.flatMap((weights) => rows.map((row) => weights.map((weight, h) => weight * (row[h] ?? 0)))),
    [Float64Array.from(probabilities)],
  );
}

/** A sum over ranges does without what nobody could tell. */
function wantedOf({ answers }: Situation, { asks, withGaps }: Finding): readonly QuestionId[] {
  return withGaps ? asks.filter((id) => !isCantTell(answers.get(id))) : asks;
}

/** The chance that these questions settle the finding: all have to be told, or, for a sum over ranges, one of them. */
function chanceToSettle(cantTell: number, questions: number, withGaps: boolean): number {
  return withGaps ? 1 - cantTell ** questions : (1 - cantTell) ** questions;
}
