import type { CauseId, Finding, FindingId, RuleBase, Sign, StageId, ValueId } from '../rulebase/records.js';
import { spread } from './spread.js';

export const NOTHING: CauseId = 'nothing-is-wrong-now';

/** The id of the hypothesis that something unnamed of this stage is wrong. */
export function otherIn(stage: StageId): CauseId {
  return `other-in-${stage}`;
}

/** One thing that may be wrong: a named cause, something unnamed of a stage, or nothing any more. */
export interface Hypothesis {
  readonly id: CauseId;
  readonly kind: 'cause' | 'other' | 'nothing';
  readonly stage?: StageId;
  /** Share of the prior, 0 to 1; all together 1. */
  readonly prior: number;
}

export interface FindingModel {
  readonly id: FindingId;
  readonly values: readonly ValueId[];
  /** P(value | hypothesis), before reliability: by value, then by hypothesis. */
  readonly shares: readonly (readonly number[])[];
  /** The finding whose repeat this is, else its own id. */
  readonly group: FindingId;
}

/** Faults that come and go: what is seen at this moment may be seen while they are away. */
export interface Absence {
  /** The finding that tells whether they are. */
  readonly finding: FindingId;
  /** By hypothesis: the chance that it is away at the time of the call; 0 for one that does not say. */
  readonly shares: readonly number[];
  /** The findings of what is seen at this moment. */
  readonly momentary: ReadonlySet<FindingId>;
}

/** The numbers of a rule base, laid out for the ranking; hypotheses in one fixed order. */
export interface Model {
  readonly hypotheses: readonly Hypothesis[];
  readonly findings: ReadonlyMap<FindingId, FindingModel>;
  readonly absence?: Absence;
}

const MODELS = new WeakMap<RuleBase, Model>();

/** Lays out the numbers of a checked rule base; once for each rule base, as every replay asks for it. */
export function modelOf(rules: RuleBase): Model {
  const known = MODELS.get(rules);
  if (known) return known;
  const model = laidOut(rules);
  MODELS.set(rules, model);
  return model;
}

function laidOut(rules: RuleBase): Model {
  const hypotheses = hypothesesOf(rules);
  const own = ownSigns(rules);
  const findings = rules.findings.map((finding): [FindingId, FindingModel] => {
    const usual = new Map(Object.entries(finding.values).map(([value, { usual }]) => [value, usual]));
    // Most causes share the sign of their stage, or have none: each sign is spread once.
    const spreads = new Map<Sign | undefined, readonly number[]>();
    const defaults = defaultsByStage(rules, finding);
    const signs = own.get(finding.id);
    const byHypothesis = hypotheses.map((hypothesis) => {
      const sign = signFor(rules, finding, hypothesis, signs, defaults);
      const known = spreads.get(sign) ?? spread(sign, usual, rules.manifest.words);
      spreads.set(sign, known);
      return known;
    });
    const values = [...usual.keys()];
    const shares = values.map((_, v) => byHypothesis.map((row) => row[v] ?? 0));
    return [finding.id, { id: finding.id, values, shares, group: finding.repeats?.finding ?? finding.id }];
  });
  const absence = absenceIn(rules, hypotheses, findings);
  return { hypotheses, findings: new Map(findings), ...(absence ? { absence } : {}) };
}

type OwnSigns = ReadonlyMap<CauseId, Sign>;

/** The causes' own signs by finding: few causes have one of any finding. */
function ownSigns({ causes }: RuleBase): ReadonlyMap<FindingId, OwnSigns> {
  const byFinding = new Map<FindingId, Map<CauseId, Sign>>();
  for (const { id, signs } of causes) {
    for (const [finding, sign] of Object.entries(signs)) {
      const known = byFinding.get(finding) ?? new Map<CauseId, Sign>();
      byFinding.set(finding, known.set(id, sign));
    }
  }
  return byFinding;
}

function absenceIn(
  { manifest: { silence }, causes, findings }: RuleBase,
  hypotheses: readonly Hypothesis[],
  laid: readonly (readonly [FindingId, FindingModel])[],
): Absence | undefined {
  const layout = laid.find(([id]) => id === silence?.finding)?.[1];
  if (silence === undefined || layout === undefined) return undefined;
  const says = new Set(causes.flatMap(({ id, signs }) => (signs[silence.finding] ? [id] : [])));
  const row = layout.shares[layout.values.indexOf(silence.value)] ?? [];
  return {
    finding: silence.finding,
    shares: hypotheses.map(({ id }, h) => (says.has(id) ? (row[h] ?? 0) : 0)),
    momentary: new Set(findings.flatMap(({ id, now }) => (now === true ? [id] : []))),
  };
}

function hypothesesOf({ manifest, causes }: RuleBase): readonly Hypothesis[] {
  const named = causes.reduce((total, cause) => total + cause.prior, 0) + manifest.hypotheses.nothing.prior;
  const forNamed = 1 - manifest.hypotheses.otherShare;
  return [
    ...causes.map(
      (cause): Hypothesis => ({
        id: cause.id,
        kind: 'cause',
        stage: cause.stage,
        prior: (cause.prior / named) * forNamed,
      }),
    ),
    ...manifest.stages.map(
      (stage): Hypothesis => ({
        id: otherIn(stage.id),
        kind: 'other',
        stage: stage.id,
        prior: manifest.hypotheses.otherShare / manifest.stages.length,
      }),
    ),
    { id: NOTHING, kind: 'nothing', prior: (manifest.hypotheses.nothing.prior / named) * forNamed },
  ];
}

/** The cause's own sign if it has one, else the default of its stage, else none: the usual shares. Never a mixture. */
function signFor(
  { manifest }: RuleBase,
  finding: Finding,
  hypothesis: Hypothesis,
  own: OwnSigns | undefined,
  defaults: ReadonlyMap<StageId, Sign>,
): Sign | undefined {
  if (hypothesis.kind === 'nothing') return manifest.hypotheses.nothing.signs[finding.id];
  return own?.get(hypothesis.id) ?? defaults.get(hypothesis.stage ?? '');
}

/** The first default that covers a stage is the one that counts there. */
function defaultsByStage(
  { manifest: { stages } }: RuleBase,
  { defaults }: Finding,
): ReadonlyMap<StageId, Sign> {
  const signs = new Map<StageId, Sign>();
  for (const { from, to, side, sign } of defaults ?? []) {
    const first = stages.findIndex(({ id }) => id === from);
    const last = stages.findIndex(({ id }) => id === to);
    for (const stage of stages.slice(first, last + 1)) {
      if (!signs.has(stage.id) && (side === undefined || stage.side === side)) signs.set(stage.id, sign);
    }
  }
  return signs;
}
