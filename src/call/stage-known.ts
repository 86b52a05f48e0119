import type { DefectReport, PathStage } from '../diagnosis/diagnosis.js';
import { type Call, diagnosisOf } from './call.js';
import { changeable } from './outcome.js';

/** What is known of one stage of the picture path. */
export interface StageKnown {
  readonly stage: PathStage;
  /** Sentences on what was seen to work, and so proves this stage good. */
  readonly works: readonly string[];
  readonly defects: readonly DefectReport[];
  /** Of the ranked causes those of this stage, likeliest first; `file` is the article, where it has one. */
  readonly causes: readonly {
    readonly title: string;
    readonly probability: number;
    readonly file?: string;
  }[];
  /** Answers about this stage that hold. */
  readonly answers: readonly { readonly id: string; readonly title: string; readonly answer: string }[];
}

/** What is known of a stage; `undefined` where the rule base has no such stage. */
export function stageKnown(call: Call, id: string): StageKnown | undefined {
  const { path, works, defects, ranked } = diagnosisOf(call);
  const stage = path.find((one) => one.id === id);
  if (!stage) return undefined;
  const stageOf = (finding: string) => call.rules.findings.find((one) => one.id === finding)?.stage;
  const asked = new Set(call.rules.questions.filter((one) => one.stage === id).map((one) => one.id));
  return {
    stage,
    works: works.filter(({ clears }) => clears.includes(id)).map(({ says }) => says),
    defects: defects.filter(({ finding }) => stageOf(finding) === id),
    causes: ranked
      .filter((one) => one.stage === id)
      .map(({ id: cause, kind, title, probability }) => ({
        title,
        probability,
        ...(kind === 'cause' ? { file: `causes/${id}/${cause}.md` } : {}),
      })),
    answers: changeable(call).filter((one) => asked.has(one.id)),
  };
}
