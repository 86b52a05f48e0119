import { type RuleFault, warning } from '../../rulebase/fault.js';
import { fileOf, MANIFEST } from '../../rulebase/layout.js';
import {
  type Cause,
  type CauseId,
  type Finding,
  KINDS,
  type RemedyId,
  type RuleBase,
} from '../../rulebase/records.js';
import { rounded } from '../../values/rounded.js';
import type { Model } from '../model.js';
import { againstDefaults } from './against-default.js';
import { confusablePairs, type Pair, TELLING } from './confusable.js';
import { neverFirst } from './never-first.js';
import { sameInformation } from './same-information.js';

/** A remedy that is the same for two causes cures both at least this surely. */
const SAME_REMEDY = 0.7;
/** More pairs than this may not be declared to have the same remedy. */
const MOST_DECLARED = 10;
/** About three words a second; ten seconds is a long breath; common practice, no source. */
const LONGEST_PROMPT = 30;

/** What a reviewer would miss: records that fit one by one, and do not do their work together. All are warnings. */
export function review(rules: RuleBase, model: Model): readonly RuleFault[] {
  return [
    ...pairFaults(rules, model),
    ...neverFirst(model).map(({ cause, leader }) =>
      atCause(rules, cause, '/signs', 'review.never-first', { other: titleOf(rules, leader) }),
    ),
    ...sameInformation(rules).map(({ question, findings: [a, b] }) => {
      const finding = rules.findings.find(({ id }) => id === b);
      return atFinding(finding, { question, other: a });
    }),
    ...defaultFaults(rules, model),
    ...longPrompts(rules),
    ...unopened(rules),
  ];
}

function pairFaults(rules: RuleBase, model: Model): readonly RuleFault[] {
  const close = confusablePairs(rules, model);
  const declared = rules.causes.flatMap(({ id, sameRemedy = [] }) =>
    sameRemedy.map(({ cause, remedy }) => ({ own: id, other: cause, remedy })),
  );
  const isDeclared = ({ causes: [a, b] }: Pair) =>
    declared.some(({ own, other }) => (own === a && other === b) || (own === b && other === a));
  const undeclared = close
    .filter((pair) => !isDeclared(pair))
    .map(({ causes: [a, b], finding, decibans }) =>
      atCause(rules, a, '', 'review.confusable', {
        other: titleOf(rules, b),
        finding: finding ?? '-',
        weight: rounded(decibans),
        least: TELLING,
      }),
    );
  const weak = declared.filter(({ own, other, remedy }) => !curesBoth(rules, remedy, [own, other]));
  const idle = declared.filter(
    ({ own, other }) => !close.some(({ causes }) => causes.includes(own) && causes.includes(other)),
  );
  return [
    ...undeclared,
    ...weak.map(({ own, other, remedy }) =>
      atCause(rules, own, '/sameRemedy', 'review.same-remedy-weak', {
        remedy,
        other: titleOf(rules, other),
        least: SAME_REMEDY,
      }),
    ),
    ...idle.map(({ own, other }) =>
      atCause(rules, own, '/sameRemedy', 'review.same-remedy-idle', { other: titleOf(rules, other) }),
    ),
    ...(declared.length > MOST_DECLARED
      ? [
          warning(MANIFEST, '', {
            id: 'review.same-remedy-many',
            with: { count: declared.length, most: MOST_DECLARED },
          }),
        ]
      : []),
  ];
}

function curesBoth({ remedies, manifest }: RuleBase, remedy: RemedyId, causes: readonly CauseId[]): boolean {
  const mends = remedies.find(({ id }) => id === remedy)?.mends ?? [];
  return causes.every((cause) => {
    const chance = mends.find((one) => one.cause === cause)?.chance ?? '';
    return (manifest.words[chance] ?? 0) >= SAME_REMEDY;
  });
}

function defaultFaults(rules: RuleBase, model: Model): readonly RuleFault[] {
  const against = againstDefaults(rules, model);
  const silent = against.filter(
    ({ cause, finding }) => causeOf(rules, cause)?.because?.[finding] === undefined,
  );
  const idle = rules.causes.flatMap(({ id, because = {} }) =>
    Object.keys(because)
      .filter((finding) => !against.some((one) => one.cause === id && one.finding === finding))
      .map((finding) => atCause(rules, id, `/because/${finding}`, 'review.idle-because', { finding })),
  );
  return [
    ...silent.map(({ cause, finding, own, usual }) =>
      atCause(rules, cause, `/signs/${finding}`, 'review.against-default', { finding, own, usual }),
    ),
    ...idle,
  ];
}

function longPrompts({ questions }: RuleBase): readonly RuleFault[] {
  return questions.flatMap(({ id, stage, prompt }) => {
    const words = prompt.split(/\s+/).length;
    if (words <= LONGEST_PROMPT) return [];
    const says = { id: 'review.long-prompt', with: { words, most: LONGEST_PROMPT } } as const;
    return [warning(fileOf('questions', id, stage), '/prompt', says)];
  });
}

/** A published source was opened, or says that it is from memory. */
function unopened(rules: RuleBase): readonly RuleFault[] {
  return KINDS.flatMap((kind) => rules[kind].map((record) => ({ kind, record }))).flatMap(
    ({ kind, record }) => {
      const { id, source } = record;
      if (typeof source === 'string' || source.opened !== undefined || /from memory/i.test(source.section))
        return [];
      const stage = 'stage' in record ? record.stage : '';
      return [warning(fileOf(kind, id, stage), '/source', { id: 'review.source-unopened' })];
    },
  );
}

type Filling = Readonly<Record<string, string | number>>;
type ReviewId =
  | 'review.confusable'
  | 'review.same-remedy-weak'
  | 'review.same-remedy-idle'
  | 'review.never-first'
  | 'review.against-default'
  | 'review.idle-because';

function atCause(rules: RuleBase, id: CauseId, pointer: string, says: ReviewId, filling: Filling): RuleFault {
  const stage = causeOf(rules, id)?.stage ?? '';
  return warning(fileOf('causes', id, stage), pointer, { id: says, with: filling });
}

function atFinding(finding: Finding | undefined, filling: Filling): RuleFault {
  const file = fileOf('findings', finding?.id ?? '', finding?.stage ?? '');
  return warning(file, '/rules', { id: 'review.same-information', with: filling });
}

function causeOf({ causes }: RuleBase, id: CauseId): Cause | undefined {
  return causes.find((one) => one.id === id);
}

function titleOf(rules: RuleBase, id: CauseId): string {
  return causeOf(rules, id)?.title ?? id;
}
