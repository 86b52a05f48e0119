import { say } from '../messages/say.js';
import { NOTHING } from '../ranking/model.js';
import type { CauseId, RemedyId, RuleBase } from '../rulebase/records.js';
import type { Step } from '../steps/step.js';
import { confidenceOf } from './confidence.js';
import type { DefectReport, Ranked, Verdict } from './diagnosis.js';

/** From this probability on the leading cause is named as the verdict. */
const NAMED_FROM = 0.5;
/** Up to this many causes are named where none leads. */
const NAMED_TOGETHER = 3;

/** The one-line verdict. `ranked` likeliest first, at least one. */
export function verdictOf(
  rules: RuleBase,
  ranked: readonly Ranked[],
  defects: readonly DefectReport[],
  step: Step,
  restoredBy: RemedyId | undefined,
): Verdict {
  const first = ranked[0];
  const probability = first?.probability ?? 0;
  const common = { probability, confidence: confidenceOf(probability) };
  if (step.kind === 'end' && step.how !== 'picture-back') {
    return { kind: step.how, says: say(`diagnosis.${step.how}`), probability: 0, confidence: 'not-enough' };
  }
  if (restoredBy !== undefined) return restored(rules, first, restoredBy, defects, common);
  if (!first || probability < NAMED_FROM) return open(ranked, defects, common);
  if (first.kind === 'nothing') return { kind: 'nothing', says: say('diagnosis.nothing'), ...common };
  if (first.kind === 'other') return { kind: 'other', says: first.title, ...common };
  return { kind: 'named', says: verdictWords(rules, first.id), cause: first.id, ...common };
}

type Common = Pick<Verdict, 'probability' | 'confidence'>;

function verdictWords(rules: RuleBase, cause: CauseId): string {
  return rules.causes.find((one) => one.id === cause)?.verdict ?? cause;
}

function restored(
  rules: RuleBase,
  first: Ranked | undefined,
  remedyId: RemedyId,
  defects: readonly DefectReport[],
  common: Common,
): Verdict {
  const remedy = rules.remedies.find((one) => one.id === remedyId);
  const [mended, more] = remedy?.mends ?? [];
  // Waiting brings nothing back: the picture had come back by itself.
  if (more === undefined && mended?.cause === NOTHING) {
    return { kind: 'nothing', says: say('diagnosis.nothing'), ...common };
  }
  const confirmed = more === undefined && rules.causes.some(({ id }) => id === mended?.cause);
  const proven = defects.some(({ grade, cause }) => grade === 'proven' && cause === first?.id);
  const filling = { remedy: remedy?.title ?? remedyId, cause: first?.title ?? '' };
  const id = confirmed ? 'restored-confirmed' : proven ? 'restored-sum' : 'restored';
  return {
    kind: 'restored',
    says: say(`diagnosis.${id}`, filling),
    ...(first === undefined ? {} : { cause: first.id }),
    remedy: remedyId,
    confirmed: confirmed || proven,
    ...common,
  };
}

/** None leads: a defect that arithmetic shows is said first, else the causes that are left. */
function open(ranked: readonly Ranked[], defects: readonly DefectReport[], common: Common): Verdict {
  const defect = defects[0];
  if (defect) {
    const cause = defect.cause === undefined ? {} : { cause: defect.cause };
    return { kind: 'open', says: say('diagnosis.open-defect', { defect: defect.says }), ...cause, ...common };
  }
  const causes = ranked.slice(0, NAMED_TOGETHER).map(({ title }) => title);
  return { kind: 'open', says: say('diagnosis.open', { causes: causes.join('; ') }), ...common };
}
