import { combinedErrorRate, errorRate } from '../../answers/reliability.js';
import type { AnswerKind, CauseId, Finding, FindingId, RuleBase } from '../../rulebase/records.js';
import { blur } from '../blur.js';
import { decibans } from '../decibans.js';
import type { Model } from '../model.js';

/** Two causes, and the step that tells them apart best. */
export interface Pair {
  readonly causes: readonly [CauseId, CauseId];
  readonly finding: FindingId | undefined;
  /** Expected weight of evidence of that step, in the better direction. */
  readonly decibans: number;
}

/** From this expected weight on, one answer tells two causes apart; judged, no source. */
export const TELLING = 6;

/**
 * What a step says on average for one cause against another when the first is what is wrong, in decibans:
 * Σ P′(v|a)·10·log₁₀(P′(v|a)/P′(v|b)) (Good 1950; Kullback and Leibler 1951). Rows of positive shares that
 * sum to 1; never below 0.
 */
export function expectedWeight(own: readonly number[], other: readonly number[]): number {
  return own.reduce((sum, share, value) => sum + share * decibans(share / (other[value] ?? share)), 0);
}

/** Every two named causes that no askable step tells apart by `least` decibans in at least one direction, worst first. */
export function confusablePairs(rules: RuleBase, model: Model, least: number = TELLING): readonly Pair[] {
  const rows = rules.findings.flatMap((finding) => {
    const layout = model.findings.get(finding.id);
    if (!layout || finding.asks.length === 0) return [];
    const rate = rateOf(rules, finding);
    const blurred = layout.shares.map((row) => row.map((share) => blur(share, rate, layout.values.length)));
    return [{ id: finding.id, blurred }];
  });
  const named = model.hypotheses.flatMap(({ id, kind }, at) => (kind === 'cause' ? [{ id, at }] : []));
  const pairs: Pair[] = [];
  named.forEach((a, i) => {
    for (const b of named.slice(i + 1)) {
      let best: Pair = { causes: [a.id, b.id], finding: undefined, decibans: 0 };
      for (const { id, blurred } of rows) {
        const [own, other] = [a, b].map(({ at }) => blurred.map((row) => row[at] ?? 0));
        if (!own || !other) continue;
        const weight = Math.max(expectedWeight(own, other), expectedWeight(other, own));
        if (weight > best.decibans) best = { ...best, finding: id, decibans: weight };
      }
      if (best.decibans < least) pairs.push(best);
    }
  });
  return pairs.sort((a, b) => a.decibans - b.decibans || (a.causes.join() < b.causes.join() ? -1 : 1));
}

/** What a defect rests on is read back digit by digit before it counts, and is then as good as agreed. */
function rateOf({ questions, manifest }: RuleBase, { asks, values }: Finding): number {
  const showsDefect = Object.values(values).some(({ defect }) => defect !== undefined);
  const asked = questions.filter(({ id }) => asks.includes(id));
  return combinedErrorRate(
    asked.map((question) => {
      const isReadBack = showsDefect && READ_BACK.has(question.answer.type);
      return { rate: errorRate(manifest.reliability, question, isReadBack ? 'agreed' : 'said', false) };
    }),
  );
}

const READ_BACK: ReadonlySet<AnswerKind> = new Set<AnswerKind>(['address', 'mask', 'moment', 'number']);
