import type { Condition } from '../../src/rulebase/condition.js';
import type { Manifest } from '../../src/rulebase/manifest.js';
import type { AnswerShape, Cause, Finding, Question, Remedy, RuleBase } from '../../src/rulebase/records.js';

/** Minutes between the places of the tests; up to the camera is a ladder. */
const WAYS: readonly (readonly [string, string, number])[] = [
  ['site', 'computer', 2],
  ['site', 'cabinet', 4],
  ['site', 'camera', 12],
  ['computer', 'site', 2],
  ['computer', 'cabinet', 4],
  ['computer', 'camera', 12],
  ['cabinet', 'site', 4],
  ['cabinet', 'computer', 4],
  ['cabinet', 'camera', 12],
  ['camera', 'site', 5],
  ['camera', 'computer', 5],
  ['camera', 'cabinet', 5],
];

export const MANIFEST: Manifest = {
  version: '0.0.1',
  date: '2026-11-25',
  title: 'A rule base of the tests',
  source: 'judged',
  stages: [
    { id: 'power', title: 'Power', side: 'camera' },
    { id: 'link', title: 'Link', side: 'camera' },
    { id: 'rendezvous', title: 'Rendezvous', side: 'joined' },
    { id: 'sign-in', title: 'Sign-in', side: 'phone' },
  ],
  words: { always: 0.98, mostly: 0.8, half: 0.5, sometimes: 0.2, seldom: 0.1 },
  reliability: {
    said: {
      choice: 0.05,
      'yes-no': 0.04,
      several: 0.05,
      address: 0.06,
      mask: 0.06,
      number: 0.07,
      text: 0.05,
    },
    agreed: 0.01,
    pasted: 0.005,
    read: 0.002,
    disputed: 0.3,
  },
  places: ['anywhere', 'desk', 'site', 'computer', 'cabinet', 'camera'].map((id) => ({ id, title: id })),
  ways: WAYS.map(([from, to, minutes]) => ({ from, to, minutes })),
  kit: [
    { id: 'ladder', title: 'A ladder' },
    { id: 'patch-lead', title: 'A patch lead' },
  ],
  hypotheses: {
    otherShare: 0.05,
    nothing: { title: 'Nothing is wrong now', prior: 20, signs: {} },
  },
  visit: { labourMinutes: 120, waitDays: 1, minutesPerDay: 60 },
  subjectPrice: 0.5,
  cantTell: 0.15,
};

export function oneOf(...ids: readonly string[]): AnswerShape {
  return { type: 'choice', choices: ids.map((id) => ({ id, title: id })) };
}

export function question(id: string, over: Partial<Question> = {}): Question {
  return {
    id,
    title: id,
    source: 'judged',
    stage: 'power',
    prompt: `${id}?`,
    help: 'Look.',
    answer: { type: 'yes-no' },
    minutes: 1,
    place: 'anywhere',
    who: 'anyone',
    ...over,
  };
}

export function is(fact: string, value: string | number | boolean): Condition {
  return { fact, operator: 'equal', value };
}

/** A finding that shows what the question `asked` was answered with; `usual` gives its values. */
export function finding(
  id: string,
  asked: string,
  usual: Readonly<Record<string, number>>,
  over: Partial<Finding> = {},
): Finding {
  return {
    id,
    title: id,
    source: 'judged',
    stage: 'power',
    values: Object.fromEntries(
      Object.entries(usual).map(([value, share]) => [value, { title: value, usual: share }]),
    ),
    asks: [asked],
    rules: Object.keys(usual).map((value) => ({ value, conditions: { all: [is(asked, value)] } })),
    ...over,
  };
}

export function cause(id: string, over: Partial<Cause> = {}): Cause {
  return {
    id,
    title: id,
    source: 'judged',
    stage: 'power',
    prior: 10,
    verdict: id,
    signs: {},
    alsoExplainedBy: [],
    ...over,
  };
}

/** A remedy that mends the cause of the same name, nearly always. */
export function remedy(id: string, over: Partial<Remedy> = {}): Remedy {
  return {
    id,
    title: id,
    source: 'judged',
    stage: 'power',
    steps: ['Do it.'],
    place: 'anywhere',
    minutes: 5,
    who: 'anyone',
    mends: [{ cause: id, chance: 'always' }],
    changes: [],
    check: 'Done?',
    undo: 'Nothing to put back.',
    leaves: 'As it was.',
    ...over,
  };
}

/** A rule base of these records, sorted by id as a loaded one is. */
export function ruleBase(parts: Partial<RuleBase>): RuleBase {
  const whole: RuleBase = {
    manifest: MANIFEST,
    questions: [],
    findings: [],
    causes: [],
    remedies: [],
    facts: [],
    contradictions: [],
    cautions: [],
    'tester-faults': [],
    retired: [],
    ...parts,
  };
  const byId = <T extends { readonly id: string }>(records: readonly T[]): readonly T[] =>
    [...records].sort((a, b) => (a.id < b.id ? -1 : 1));
  return {
    ...whole,
    questions: byId(whole.questions),
    findings: byId(whole.findings),
    causes: byId(whole.causes),
    remedies: byId(whole.remedies),
  };
}
