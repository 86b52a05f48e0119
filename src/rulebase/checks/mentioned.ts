import type { MessageId } from '../../messages/say.js';
import type { Draft } from '../draft.js';
import type { RuleFault } from '../fault.js';
import type { Known } from '../known.js';
import { pointer } from '../pointer.js';
import { mustExist } from './exists.js';
import { standIns } from './ids.js';

interface Mention {
  readonly file: string;
  readonly at: string;
  readonly id: string;
}

/** Every id that a record mentions outside its conditions and signs is there. */
export function checkMentions(draft: Draft, known: Known): readonly RuleFault[] {
  const { questions, findings, causes, remedies, contradictions } = draft;
  const testers = draft['tester-faults'];
  const mendable = new Set([...known.ids.causes, ...standIns(known.stages.keys())]);
  const exist = (
    names: Parameters<typeof mustExist>[3],
    otherwise: MessageId,
    mentioned: readonly Mention[],
  ) => mentioned.flatMap(({ file, at, id }) => mustExist(file, at, id, names, otherwise));
  const staged = [...questions, ...findings, ...causes, ...remedies, ...testers];
  const done = [...questions, ...remedies];
  return [
    ...exist(known.stages, 'rules.no-such-stage', [
      ...staged.map(({ file, record }) => ({ file, at: '/stage', id: record.stage })),
      ...findings.flatMap(({ file, record }) =>
        Object.entries(record.values).flatMap(([value, { clears }]) =>
          listed(file, clears, 'values', value, 'clears'),
        ),
      ),
      ...findings.flatMap(({ file, record }) =>
        (record.defaults ?? []).flatMap(({ from, to }, i) => [
          { file, at: pointer('defaults', i, 'from'), id: from },
          { file, at: pointer('defaults', i, 'to'), id: to },
        ]),
      ),
    ]),
    ...exist(
      known.places,
      'rules.no-such-place',
      done.map(({ file, record }) => ({ file, at: '/place', id: record.place })),
    ),
    ...exist(
      known.kit,
      'rules.no-such-kit',
      done.flatMap(({ file, record }) => listed(file, record.needs, 'needs')),
    ),
    ...exist(
      known.ids.cautions,
      'rules.no-such-caution',
      remedies.flatMap(({ file, record }) => listed(file, record.cautions, 'cautions')),
    ),
    ...exist(known.ids.facts, 'rules.no-such-sum-fact', [
      ...remedies.flatMap(({ file, record }) => listed(file, record.sums, 'sums')),
      ...testers.flatMap(({ file, record }) => listed(file, record.sums, 'sums')),
    ]),
    ...exist(known.ids.findings, 'rules.no-such-finding', [
      ...remedies.flatMap(({ file, record }) => listed(file, record.changes, 'changes')),
      ...testers.flatMap(({ file, record }) => listed(file, record.spoils, 'spoils')),
      ...findings.flatMap(({ file, record: { repeats } }) =>
        repeats === undefined ? [] : [{ file, at: '/repeats/finding', id: repeats.finding }],
      ),
    ]),
    ...exist(known.ids.questions, 'rules.no-such-question', [
      ...findings.flatMap(({ file, record }) => listed(file, record.asks, 'asks')),
      ...remedies.flatMap(({ file, record }) => listed(file, record.askBefore, 'askBefore')),
      ...contradictions.flatMap(({ file, record }) => [
        ...listed(file, record.between, 'between'),
        { file, at: '/check', id: record.check },
      ]),
      ...testers.flatMap(({ file, record }) => listed(file, record.askAgain, 'askAgain')),
    ]),
    ...exist(known.ids.causes, 'rules.no-such-cause', [
      ...causes.flatMap(({ file, record }) => listed(file, record.alsoExplainedBy, 'alsoExplainedBy')),
      ...findings.flatMap(({ file, record }) =>
        Object.entries(record.values).flatMap(([value, { defect }]) =>
          defect?.cause === undefined
            ? []
            : [{ file, at: pointer('values', value, 'defect', 'cause'), id: defect.cause }],
        ),
      ),
    ]),
    ...exist(
      mendable,
      'rules.no-such-cause',
      remedies.flatMap(({ file, record }) =>
        record.mends.map(({ cause }, i) => ({ file, at: pointer('mends', i, 'cause'), id: cause })),
      ),
    ),
    ...exist(
      known.words,
      'rules.no-such-word',
      remedies.flatMap(({ file, record }) =>
        record.mends.map(({ chance }, i) => ({ file, at: pointer('mends', i, 'chance'), id: chance })),
      ),
    ),
  ];
}

function listed(
  file: string,
  ids: readonly string[] | undefined,
  ...at: readonly string[]
): readonly Mention[] {
  return (ids ?? []).map((id, i) => ({ file, at: pointer(...at, i), id }));
}
