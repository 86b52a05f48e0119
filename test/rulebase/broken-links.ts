import type { Broken } from './broken.js';

export const LIGHTS = 'questions/power/lights.json';
export const ACCOUNT = 'questions/sign-in/account-works.json';
const ADDRESS = 'questions/power/camera-address.json';
export const LIFE = 'findings/power/sign-of-life.json';
const FITS = 'findings/power/address-fits.json';
export const PHONE = 'findings/sign-in/phone-side.json';
const SUPPLY = 'causes/power/supply-off.json';
const PASSWORD = 'causes/sign-in/password-changed.json';
const REMEDY = 'remedies/power/plug-in-and-sign-in.json';
const FACT = 'facts/camera-address-kind.json';
const ODD = 'contradictions/dark-but-open.json';
const TESTER = 'tester-faults/other-camera.json';
const FAR = 'zzzzzzzzzzzzzzz';
const caution = (id: string, title: string) => ({ id, title, source: 'judged', words: 'Take care.' });
const gone = (id: string, kind: string) => ({
  id,
  title: id,
  source: 'judged',
  kind,
  since: '0.0.1',
  why: 'Merged.',
});

/** Ids, names of files, and mentions of one record in another. */
export const BROKEN_LINKS: readonly Broken[] = [
  {
    name: 'an id that is not the name of its file',
    changes: [{ file: 'cautions/mains.json', at: '/id', value: 'heights' }],
    faults: [
      'error cautions/mains.json /id rules.id-not-file',
      `error ${REMEDY} /cautions/0 rules.no-such-caution`,
    ],
  },
  {
    name: 'a file in the folder of another stage',
    changes: [{ file: SUPPLY, at: '/stage', value: 'sign-in' }],
    faults: [`error ${SUPPLY} /stage rules.stage-not-folder`],
  },
  {
    name: 'one id in two stages',
    changes: [],
    extra: [
      {
        file: 'causes/sign-in/supply-off.json',
        json: {
          id: 'supply-off',
          title: 'Twin',
          source: 'judged',
          stage: 'sign-in',
          prior: 1,
          verdict: 'Off.',
          signs: {},
          alsoExplainedBy: [],
        },
      },
    ],
    faults: ['error causes/sign-in/supply-off.json /id rules.id-twice'],
  },
  {
    name: 'a fact with the id of a question',
    changes: [],
    extra: [
      {
        file: 'facts/lights.json',
        json: {
          id: 'lights',
          title: 'Lights',
          source: 'judged',
          type: 'choice',
          values: ['on', 'off'],
          sum: 'same-address',
          inputs: ['camera-address'],
        },
      },
    ],
    // The rule of sign-of-life now reads the fact, whose input it does not ask for.
    faults: [
      'error facts/lights.json /id rules.id-shared',
      `error ${LIFE} /rules/0/conditions/all/0/fact rules.not-asked`,
      `error ${LIFE} /rules/1/conditions/not/fact rules.not-asked`,
    ],
  },
  {
    name: 'two titles alike',
    changes: [],
    extra: [{ file: 'cautions/other.json', json: caution('other', 'Mains') }],
    faults: ['error cautions/other.json /title rules.title-twice'],
  },
  {
    name: 'an id that was retired',
    changes: [],
    extra: [{ file: 'retired/mains.json', json: gone('mains', 'cautions') }],
    faults: ['error cautions/mains.json /id rules.id-retired'],
  },
  {
    name: 'the id of a retired finding as a question',
    changes: [],
    extra: [{ file: 'retired/lights.json', json: gone('lights', 'findings') }],
    faults: [`error ${LIGHTS} /id rules.id-retired`],
  },
  {
    name: 'no fault where a question has the id of a retired cause',
    changes: [],
    extra: [{ file: 'retired/lights.json', json: gone('lights', 'causes') }],
    faults: [],
  },
  {
    name: 'a retired record replaced by nothing there is',
    changes: [],
    extra: [{ file: 'retired/old.json', json: { ...gone('old', 'causes'), replacedBy: 'newer' } }],
    faults: ['error retired/old.json /replacedBy rules.no-such-replacement'],
  },
  {
    name: 'a reserved id',
    changes: [],
    extra: [{ file: 'cautions/other-in-power.json', json: caution('other-in-power', 'Other') }],
    faults: ['error cautions/other-in-power.json /id rules.reserved-id'],
  },
  {
    name: 'the id kept for "nothing is wrong"',
    changes: [],
    extra: [{ file: 'cautions/nothing-is-wrong-now.json', json: caution('nothing-is-wrong-now', 'None') }],
    faults: ['error cautions/nothing-is-wrong-now.json /id rules.reserved-id'],
  },
  {
    name: 'an unknown place',
    changes: [{ file: LIGHTS, at: '/place', value: FAR }],
    faults: [`error ${LIGHTS} /place rules.no-such-place`],
  },
  {
    name: 'an unknown question before a remedy',
    changes: [{ file: REMEDY, at: '/askBefore', value: ['lights', FAR] }],
    faults: [`error ${REMEDY} /askBefore/1 rules.no-such-question`],
  },
  {
    name: 'unknown kit',
    changes: [{ file: ADDRESS, at: '/needs/0', value: FAR }],
    faults: [`error ${ADDRESS} /needs/0 rules.no-such-kit`],
  },
  {
    name: 'an unknown stage that a value clears',
    changes: [{ file: LIFE, at: '/values/lit/clears/0', value: FAR }],
    faults: [`error ${LIFE} /values/lit/clears/0 rules.no-such-stage`],
  },
  {
    name: 'an unknown stage in a range',
    changes: [{ file: LIFE, at: '/defaults/0/to', value: FAR }],
    faults: [`error ${LIFE} /defaults/0/to rules.no-such-stage`],
  },
  {
    name: 'an unknown cause of a defect',
    changes: [{ file: FITS, at: '/values/self-assigned/defect/cause', value: FAR }],
    faults: [`error ${FITS} /values/self-assigned/defect/cause rules.no-such-cause`],
  },
  {
    name: 'an unknown cause that a remedy mends',
    changes: [{ file: REMEDY, at: '/mends/2/cause', value: 'other-in-roof' }],
    faults: [`error ${REMEDY} /mends/2/cause rules.unknown-name-near`],
  },
  {
    name: 'a stand-in cause where a real one belongs',
    changes: [{ file: PASSWORD, at: '/alsoExplainedBy/0', value: 'nothing-is-wrong-now' }],
    faults: [`error ${PASSWORD} /alsoExplainedBy/0 rules.no-such-cause`],
  },
  {
    name: 'an unknown frequency word of a chance',
    changes: [{ file: REMEDY, at: '/mends/0/chance', value: FAR }],
    faults: [`error ${REMEDY} /mends/0/chance rules.no-such-word`],
  },
  {
    name: 'an unknown finding that a remedy changes',
    changes: [{ file: REMEDY, at: '/changes/0', value: FAR }],
    faults: [`error ${REMEDY} /changes/0 rules.no-such-finding`],
  },
  {
    name: 'an unknown finding that a tester fault spoils',
    changes: [{ file: TESTER, at: '/spoils/0', value: FAR }],
    faults: [`error ${TESTER} /spoils/0 rules.no-such-finding`],
  },
  {
    name: 'an unknown question to ask again',
    changes: [{ file: TESTER, at: '/askAgain/0', value: FAR }],
    faults: [`error ${TESTER} /askAgain/0 rules.no-such-question`],
  },
  {
    name: 'a fact where a question is asked',
    changes: [{ file: FITS, at: '/asks/0', value: 'camera-address-kind' }],
    faults: [
      `error ${FITS} /asks/0 rules.unknown-name-near`,
      `error ${FITS} /rules/0/conditions/any/0/fact rules.not-asked`,
      `error ${FITS} /rules/1/conditions/all/0/fact rules.not-asked`,
    ],
  },
  {
    name: 'an unknown question in a contradiction',
    changes: [{ file: ODD, at: '/between/1', value: FAR }],
    faults: [`error ${ODD} /between/1 rules.no-such-question`],
  },
  {
    name: 'an answer to check that is not in between',
    changes: [{ file: ODD, at: '/check', value: 'camera-address' }],
    faults: [`error ${ODD} /check rules.check-not-between`],
  },
  {
    name: 'an unknown fact in a condition',
    changes: [{ file: ODD, at: '/when/all/0/fact', value: FAR }],
    faults: [`error ${ODD} /when/all/0/fact rules.no-such-fact`],
  },
  {
    name: 'an unknown sum',
    changes: [{ file: FACT, at: '/sum', value: FAR }],
    faults: [`error ${FACT} /sum rules.no-such-sum`],
  },
  {
    name: 'an unknown input of a fact',
    changes: [{ file: FACT, at: '/inputs', value: ['camera-address', 'phone-side'] }],
    faults: [`error ${FACT} /inputs/1 rules.no-such-input`],
  },
  {
    name: 'a topic without the names of its inputs',
    changes: [{ file: FACT, at: '/sum', value: 'a-topic' }],
    faults: [`error ${FACT} /as rules.input-unnamed`],
  },
  {
    name: 'an input that the topic does not have',
    changes: [
      { file: FACT, at: '/sum', value: 'a-topic' },
      { file: FACT, at: '/as', value: { 'camera-address': FAR } },
    ],
    faults: [`error ${FACT} /as/camera-address rules.no-such-topic-input`],
  },
  {
    name: 'an input named that is not among the inputs',
    changes: [
      { file: FACT, at: '/sum', value: 'a-topic' },
      { file: FACT, at: '/as', value: { 'camera-address': 'address', lights: 'address' } },
    ],
    faults: [`error ${FACT} /as/lights rules.not-an-input`],
  },
  {
    name: 'names of inputs for a plain sum',
    changes: [{ file: FACT, at: '/as', value: { 'camera-address': 'address' } }],
    faults: [`error ${FACT} /as rules.no-topic`],
  },
  {
    name: 'an unknown sum to show with a remedy',
    changes: [{ file: REMEDY, at: '/sums', value: [FAR] }],
    faults: [`error ${REMEDY} /sums/0 rules.no-such-sum-fact`],
  },
  {
    name: 'an unknown sum to show with a spoilt check',
    changes: [{ file: TESTER, at: '/sums', value: [FAR] }],
    faults: [`error ${TESTER} /sums/0 rules.no-such-sum-fact`],
  },
  {
    name: 'a cause that nothing mends, as a warning',
    changes: [{ file: REMEDY, at: '/mends/1' }],
    faults: [`warning ${PASSWORD}  rules.cause-unmended`],
  },
  {
    name: 'a cause mended twice by one remedy',
    changes: [{ file: REMEDY, at: '/mends/2/cause', value: 'supply-off' }],
    faults: [`error ${REMEDY} /mends/2/cause rules.twice-in-list`],
  },
  {
    name: 'a cause that explains itself',
    changes: [{ file: PASSWORD, at: '/alsoExplainedBy/0', value: 'password-changed' }],
    faults: [`error ${PASSWORD} /alsoExplainedBy/0 rules.explains-itself`],
  },
];
