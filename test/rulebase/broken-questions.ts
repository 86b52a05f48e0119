import type { Broken } from './broken.js';
import { ACCOUNT, LIGHTS } from './broken-links.js';
import { asked, KIT, METRES, MOVES, test } from './pieces.js';

const ODD = 'contradictions/dark-but-open.json';
const ADDRESS = 'questions/power/camera-address.json';
const MANIFEST = 'manifest.json';
const FAR = 'zzzzzzzzzzzzzzz';
const when = (condition: unknown) => [{ file: ODD, at: '/when', value: condition }];

/** Questions that cannot be answered, or whose answer does nothing. */
export const BROKEN_QUESTIONS: readonly Broken[] = [
  {
    name: 'a choice given twice',
    changes: [{ file: LIGHTS, at: '/answer/choices/2', value: { id: 'on', title: 'Again' } }],
    faults: [`error ${LIGHTS} /answer/choices/2/id rules.twice-in-list`],
  },
  {
    name: 'a smallest number that is not below the largest',
    changes: when(test('metres', 'equal', 100)),
    extra: [asked('metres', { type: 'number', unit: 'm', min: 100, max: 100 })],
    faults: ['error questions/power/metres.json /answer/max rules.not-above'],
  },
  {
    name: 'something to read that no text gives, as a warning',
    changes: [{ file: ADDRESS, at: '/reads', value: 'zzzz.zzzzzzzz' }],
    faults: [`warning ${ADDRESS} /reads rules.no-such-observation`],
  },
  {
    name: 'something to read that is no answer to it',
    changes: [{ file: ACCOUNT, at: '/reads', value: 'camera.address' }],
    faults: [`error ${ACCOUNT} /reads rules.observation-misfit`],
  },
  {
    name: 'an opening number given twice',
    changes: [{ file: ACCOUNT, at: '/opening', value: 1 }],
    faults: [`error ${ACCOUNT} /opening rules.opening-twice`],
  },
  {
    name: 'a question that waits for its own answer',
    changes: [{ file: ACCOUNT, at: '/when', value: test('account-works', 'equal', true) }],
    faults: [`error ${ACCOUNT} /when rules.waits-for-itself`],
  },
  {
    name: 'a question on which nothing depends',
    changes: [],
    extra: [METRES],
    faults: ['error questions/power/metres.json  rules.question-idle'],
  },
  {
    name: 'no fault where a question asks for kit, takes down words or moves a person',
    changes: [],
    extra: [asked('words', { type: 'text' }), asked('walk', MOVES), KIT],
    faults: [],
  },
  {
    name: 'a choice that leads to a place nobody knows',
    changes: [],
    extra: [
      asked('walk', { ...MOVES, choices: [MOVES.choices[0], { id: 'far', title: 'Far', place: FAR }] }),
    ],
    faults: ['error questions/power/walk.json /answer/choices/1/place rules.no-such-place'],
  },
  {
    name: 'several choices of which one ends the call',
    changes: when(test('walk', 'contains', 'far')),
    extra: [asked('walk', { ...MOVES, type: 'several' })],
    faults: [
      'error questions/power/walk.json /answer/choices/0 rules.choice-cannot-act',
      'error questions/power/walk.json /answer/choices/1 rules.choice-cannot-act',
    ],
  },
  {
    name: 'kit asked for as a single choice',
    changes: [],
    extra: [{ ...KIT, json: { ...KIT.json, answer: MOVES } }],
    faults: ['error questions/power/things.json /part rules.kit-needs-several'],
  },
  {
    name: 'kit asked for as a yes or no',
    changes: [],
    extra: [{ ...KIT, json: { ...KIT.json, answer: { type: 'yes-no' } } }],
    faults: ['error questions/power/things.json /part rules.kit-needs-several'],
  },
  {
    name: 'kit that nobody can answer',
    changes: [{ file: MANIFEST, at: '/kit/2', value: { id: 'spare-camera', title: 'A spare camera' } }],
    extra: [KIT],
    faults: ['error questions/power/things.json /answer/choices rules.kit-not-asked'],
  },
  {
    name: 'a mistyped kit id',
    changes: [{ file: MANIFEST, at: '/kit/1/id', value: 'ladders' }],
    extra: [KIT],
    faults: ['error questions/power/things.json /answer/choices/1/id rules.unknown-name-near'],
  },
];
