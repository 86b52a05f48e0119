import { say } from '../messages/say.js';
import type { Factors } from '../ranking/posterior.js';
import type { RemedyId } from '../rulebase/records.js';
import type { Situation } from '../steps/situation.js';
import type { Step } from '../steps/step.js';
import type { Diagnosis, Verdict } from './diagnosis.js';
import { picturePath } from './path.js';
import { planOf, visitOf } from './plan.js';
import { rankedCauses } from './ranked.js';
import { conflictReports, defectReports, spoiltChecks, worksOf } from './reports.js';
import { verdictOf } from './verdict.js';

/** What the diagnosis needs besides the situation. */
export interface Background {
  readonly digest: string;
  readonly factors: Factors;
  readonly step: Step;
  readonly restoredBy?: RemedyId;
  /** The picture was there before the last remedy, too. */
  readonly wasThere: boolean;
}

/** Verdict, ranked causes with reasons, defects, what works, and what to do next: everything a ticket says. */
export function diagnose(situation: Situation, background: Background): Diagnosis {
  const { rules } = situation;
  const { step, restoredBy, wasThere } = background;
  const over = step.kind === 'end';
  const defects = defectReports(situation);
  const works = worksOf(situation);
  const ranked = rankedCauses(situation, background.factors);
  const verdict = verdictOf(rules, ranked, defects, step, wasThere ? undefined : restoredBy);
  const plan = over ? [] : planOf(situation);
  const watch = restoredBy !== undefined && wasThere ? say('diagnosis.watch-away') : watchPlan(verdict);
  return {
    format: 1,
    rules: { version: rules.manifest.version, digest: background.digest },
    verdict,
    ranked: over && step.how !== 'picture-back' ? [] : ranked,
    defects,
    works,
    spoilt: spoiltChecks(situation),
    conflicts: conflictReports(situation),
    path: picturePath(situation, works, defects),
    next: keyOf(step),
    plan,
    ...(step.kind === 'visit' ? { visit: visitOf(situation) } : {}),
    ...(watch === undefined ? {} : { watch }),
  };
}

/** The next step as one word: `ask:camera-mask`, `try:restart-camera`, `visit`, `end:picture-back`. */
export function keyOf(step: Step): string {
  switch (step.kind) {
    case 'ask':
    case 'read-back':
      return `${step.kind}:${step.question}`;
    case 'check-answers':
      return `check-answers:${step.conflict.id}`;
    case 'spoilt-check':
      return `spoilt-check:${step.fault}`;
    case 'try':
      return `try:${step.remedy}`;
    case 'visit':
      return 'visit';
    case 'end':
      return `end:${step.how}`;
  }
}

function watchPlan(verdict: Verdict): string | undefined {
  if (verdict.kind === 'nothing' || (verdict.kind === 'restored' && verdict.confirmed !== true)) {
    return say('diagnosis.watch');
  }
  return undefined;
}
