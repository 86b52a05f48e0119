import { type Conflict, conflicts } from '../findings/contradictions.js';
import { type Settled, settle } from '../findings/settle.js';
import { isSilent } from '../findings/silent.js';
import type { Evidence } from '../ranking/evidence.js';
import type { Model } from '../ranking/model.js';
import { posterior } from '../ranking/posterior.js';
import type { KitId, RuleBase, Who } from '../rulebase/records.js';
import { nextStep } from '../steps/next-step.js';
import type { Situation } from '../steps/situation.js';
import type { Step } from '../steps/step.js';
import { hasChanged, knownOf } from './known-of.js';
import { type CallState, disputedOf } from './state.js';

/** What follows from a state: findings, ranking, contradictions. */
export interface Assessment {
  readonly model: Model;
  readonly settled: Settled;
  readonly evidence: readonly Evidence[];
  readonly probabilities: readonly number[];
  readonly conflicts: readonly Conflict[];
}

/** Settles the findings and ranks the causes. Findings spent in an earlier epoch, or silent, say nothing. */
export async function assess(rules: RuleBase, model: Model, state: CallState): Promise<Assessment> {
  const settled = await settle(rules, state.answers, disputedOf(state));
  const silent = new Set(
    rules.findings.filter((finding) => isSilent(rules, settled, finding)).map(({ id }) => id),
  );
  const evidence = [...settled.findings.values()]
    .filter(({ finding }) => !state.spent.has(finding) && !silent.has(finding))
    .map(({ finding, value, errorRate }) => ({ finding, value, errorRate }))
    .sort((a, b) => (a.finding < b.finding ? -1 : 1));
  const probabilities = posterior(model, evidence, state.factors);
  return { model, settled, evidence, probabilities, conflicts: conflicts(rules, settled) };
}

const DESK: ReadonlySet<Who> = new Set<Who>(['anyone', 'owner', 'help-desk']);
const SITE: ReadonlySet<Who> = new Set<Who>(['anyone', 'owner', 'installer']);

/** The situation in which the next step is chosen. */
export function situationOf(rules: RuleBase, state: CallState, assessed: Assessment): Situation {
  const tried = new Set(
    rules.remedies
      .filter((remedy) => {
        const then = state.tried.get(remedy.id);
        return then !== undefined && !hasChanged(then, knownOf(remedy, assessed.settled.facts));
      })
      .map(({ id }) => id),
  );
  return {
    rules,
    model: assessed.model,
    answers: state.answers,
    settled: assessed.settled,
    evidence: assessed.evidence,
    probabilities: assessed.probabilities,
    here: state.here,
    hands: state.header.role === 'site' ? SITE : DESK,
    kit: kitOf(rules, state),
    ...(state.lastStage === undefined ? {} : { lastStage: state.lastStage }),
    passed: state.passed,
    tried,
    askedBefore: state.askedBefore,
    revised: revisedIn(state),
    left: new Set([...state.left, ...state.kept.keys()]),
  };
}

function revisedIn({ history }: CallState): Situation['revised'] {
  const given = history.map(({ question }) => question);
  return new Set(given.filter((question, at) => given.indexOf(question) < at));
}

/** The next step of a call; one whose picture is back has ended. */
export function stepOf(state: CallState, situation: Situation): Step {
  return state.restoredBy === undefined ? nextStep(situation) : { kind: 'end', how: 'picture-back' };
}

function kitOf(rules: RuleBase, state: CallState): ReadonlySet<KitId> {
  const kit = new Set<KitId>();
  for (const question of rules.questions) {
    const value = question.part === 'kit' ? state.answers.get(question.id)?.value : undefined;
    if (value?.kind === 'several') for (const id of value.ids) kit.add(id);
  }
  return kit;
}
