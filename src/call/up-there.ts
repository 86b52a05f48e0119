import type { KitId, PlaceId } from '../rulebase/records.js';
import { questionOf } from '../steps/open-questions.js';
import { repairOrder, worthAsking } from '../steps/orders.js';
import type { Situation } from '../steps/situation.js';
import type { Call } from './call.js';
import { remedyOf } from './screen.js';

/** All there is to do at the camera, so that nobody climbs twice. */
export interface UpThere {
  /** Whether a ladder is needed for any of it. */
  readonly climbs: boolean;
  /** What is worth finding out there, in words; the present step first. */
  readonly see: readonly string[];
  /** What may be tried there, in order. */
  readonly try: readonly string[];
  readonly bring: readonly string[];
}

interface Job {
  readonly id: string;
  readonly title: string;
  readonly place: PlaceId;
  readonly needs?: readonly KitId[];
  readonly cautions?: readonly string[];
  readonly bring?: readonly string[];
}

const CAMERA = 'camera';
const LADDER = 'ladder';

/** What to do at the camera, where the present step is the first one there; else nothing. */
export function upThere({ rules, state, situation, step }: Call): UpThere | undefined {
  const now: Job | undefined =
    step.kind === 'ask'
      ? questionOf(rules, step.question)
      : step.kind === 'try'
        ? remedyOf({ rules }, step.remedy)
        : undefined;
  if (now?.place !== CAMERA || state.here === CAMERA) return undefined;
  const there: Situation = { ...situation, here: CAMERA };
  const among = new Set(rules.questions.filter(({ place }) => place === CAMERA).map(({ id }) => id));
  const asks = worthAsking(there, among).flatMap((id): readonly Job[] => {
    const question = among.has(id) ? questionOf(rules, id) : undefined;
    return question ? [question] : [];
  });
  const see = unique(step.kind === 'ask' ? [now, ...asks] : asks);
  const tries = repairOrder(there).remedies.filter(({ place }) => place === CAMERA);
  const toTry = unique(step.kind === 'try' ? [now, ...tries] : tries);
  const all = [...see, ...toTry];
  const needs = all.flatMap(({ needs: some = [] }) => some);
  const isHigh = all.some(({ cautions = [] }) => cautions.includes(LADDER)) || needs.includes(LADDER);
  const kit = rules.manifest.kit.filter(({ id }) => needs.includes(id) || (isHigh && id === LADDER));
  return {
    climbs: isHigh,
    see: see.map(({ title }) => title),
    try: toTry.map(({ title }) => title),
    bring: [...new Set([...kit.map(({ title }) => title), ...toTry.flatMap(({ bring = [] }) => bring)])],
  };
}

function unique(jobs: readonly Job[]): readonly Job[] {
  return jobs.filter(({ id }, at) => jobs.findIndex((other) => other.id === id) === at);
}
