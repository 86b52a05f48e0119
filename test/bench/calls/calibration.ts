import { RECORD_FORMAT } from '../../../src/call/events.js';
import { freshState } from '../../../src/call/state.js';
import { VERSION } from '../../../src/call/version.js';
import { modelOf } from '../../../src/ranking/model.js';
import type { RuleBase } from '../../../src/rulebase/records.js';
import type { Case } from '../../cases/read-cases.js';
import { happen, see } from './happen.js';
import type { Held } from './hold.js';
import { leaderOf } from './suspicion.js';

/** A leading cause with its probability, and whether it was the true one. */
export interface Said {
  readonly probability: number;
  readonly isRight: boolean;
}

export interface Calibration {
  readonly verdicts: number;
  /** Verdicts given with 80 to 90 per cent, and the share of them that is right. */
  readonly eighties: { readonly verdicts: number; readonly right: number };
  /** Expected calibration error over 10 bins of equal width, 0 to 1. */
  readonly error: number;
  /** By bin: how many, their mean probability, the share that is right. */
  readonly bins: readonly { readonly verdicts: number; readonly said: number; readonly right: number }[];
}

const BINS = 10;

/**
 * How far verdicts can be trusted: the expected calibration error is the mean gap between what is said and what
 * is right, bins weighted by their verdicts (Naeini, Cooper, Hauskrecht 2015).
 */
export function calibrationOf(verdicts: readonly Said[]): Calibration {
  const bins = Array.from({ length: BINS }, (_, at) => {
    const own = verdicts.filter(({ probability }) => binOf(probability) === at);
    const said = own.reduce((sum, { probability }) => sum + probability, 0);
    const right = own.filter(({ isRight }) => isRight).length;
    const count = Math.max(1, own.length);
    return { verdicts: own.length, said: said / count, right: right / count };
  });
  const gaps = bins.map((bin) => bin.verdicts * Math.abs(bin.said - bin.right));
  const { verdicts: many = 0, right = 0 } = bins[8] ?? {};
  return {
    verdicts: verdicts.length,
    eighties: { verdicts: many, right },
    error: gaps.reduce((sum, gap) => sum + gap, 0) / Math.max(1, verdicts.length),
    bins,
  };
}

function binOf(probability: number): number {
  return Math.min(BINS - 1, Math.floor(probability * BINS));
}

/** What our own policy says at the end of held calls. */
export function saidAtTheEnd(held: readonly Held[]): readonly Said[] {
  return held
    .filter(({ policy }) => policy === 'ours')
    .map(({ probability, leader, cause }) => ({ probability, isRight: leader === cause }));
}

/** What is said of written cases when all their answers are known. */
export function saidOfCases(rules: RuleBase, cases: readonly Case[]): readonly Said[] {
  const model = modelOf(rules);
  return cases.map(({ cause, script }) => {
    let state = freshState({
      ...{ record: RECORD_FORMAT, id: 'case', opened: script.opened, whydark: VERSION },
      ...{ rules: { version: rules.manifest.version, digest: '' }, role: script.role },
    });
    const empty = see(rules, model, state);
    for (const [question, answer] of Object.entries(script.answers))
      state = happen(rules, { ...empty, state }, { type: 'answered', question, answer, origin: 'said' });
    const { situation } = see(rules, model, state);
    const at = leaderOf(situation);
    return { probability: situation.probabilities[at] ?? 0, isRight: model.hypotheses[at]?.id === cause };
  });
}
