import { modelOf } from '../../../src/ranking/model.js';
import type { Manifest } from '../../../src/rulebase/manifest.js';
import type { PlaceId } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';

interface Job {
  readonly id: string;
  readonly minutes: number;
  readonly place: PlaceId;
}

/** A question that settles one finding: P(value | hypothesis), by value, then by hypothesis. */
export interface ExactQuestion extends Job {
  readonly finding: string;
  readonly values: readonly string[];
  readonly rows: readonly (readonly number[])[];
}

/** A remedy, and the chance that it mends each hypothesis. */
export interface ExactRemedy extends Job {
  readonly mends: readonly number[];
}

/** The bare numbers of a small rule base, in which every answer is right and can be told. */
export interface ExactModel {
  readonly priors: readonly number[];
  readonly questions: readonly ExactQuestion[];
  readonly remedies: readonly ExactRemedy[];
  readonly manifest: Manifest;
  readonly here: PlaceId;
}

/** The numbers of a rule base whose findings rest on one choice each, as a call begins. */
export function exactModelOf({ rules, here }: Pick<Situation, 'rules' | 'here'>): ExactModel {
  const { hypotheses, findings } = modelOf(rules);
  return {
    priors: hypotheses.map(({ prior }) => prior),
    questions: rules.questions.map(({ id, minutes, place }) => {
      const finding = rules.findings.find(({ asks }) => asks.includes(id));
      const layout = finding && findings.get(finding.id);
      if (!layout || finding.asks.length !== 1)
        throw new Error(`"${id}" does not settle a finding by itself`);
      return { id, minutes, place, finding: finding.id, values: layout.values, rows: layout.shares };
    }),
    remedies: rules.remedies.map(({ id, minutes, place, mends }) => ({
      id,
      minutes,
      place,
      mends: hypotheses.map((one) => {
        const word = mends.find(({ cause }) => cause === one.id)?.chance;
        return word === undefined ? 0 : (rules.manifest.words[word] ?? 0);
      }),
    })),
    manifest: rules.manifest,
    here,
  };
}

/** What is left of each hypothesis once it showed this value. */
export function afterValue(weights: readonly number[], row: readonly number[]): readonly number[] {
  return weights.map((weight, h) => weight * (row[h] ?? 0));
}

/** What is left of each hypothesis after this was tried and the picture is still dark. */
export function afterTry(weights: readonly number[], { mends }: ExactRemedy): readonly number[] {
  return weights.map((weight, h) => weight * (1 - (mends[h] ?? 0)));
}

export function massOf(weights: readonly number[]): number {
  let mass = 0;
  for (const weight of weights) mass += weight;
  return mass;
}
