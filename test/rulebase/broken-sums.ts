import type { Broken } from './broken.js';
import { LIFE, PHONE } from './broken-links.js';
import { test } from './pieces.js';

const FITS = 'findings/power/address-fits.json';
const SUPPLY = 'causes/power/supply-off.json';
const PASSWORD = 'causes/sign-in/password-changed.json';
const FACT = 'facts/camera-address-kind.json';
const MANIFEST = 'manifest.json';
const FAR = 'zzzzzzzzzzzzzzz';

/** Shares, ranges, layers and the manifest. */
export const BROKEN_SUMS: readonly Broken[] = [
  {
    name: 'a sign for a finding nobody knows',
    changes: [{ file: SUPPLY, at: '/signs', value: { [FAR]: { good: 'mostly' } } }],
    faults: [`error ${SUPPLY} /signs/${FAR} rules.no-such-finding`],
  },
  {
    name: 'a sign for a value nobody knows',
    changes: [{ file: SUPPLY, at: '/signs/phone-side', value: { [FAR]: 'mostly' } }],
    faults: [`error ${SUPPLY} /signs/phone-side/${FAR} rules.no-such-value`],
  },
  {
    name: 'a sign with a word nobody knows',
    changes: [{ file: SUPPLY, at: '/signs/phone-side/good', value: FAR }],
    faults: [`error ${SUPPLY} /signs/phone-side/good rules.no-such-word`],
  },
  {
    name: 'signs over 1',
    changes: [{ file: SUPPLY, at: '/signs/phone-side', value: { good: 'mostly', bad: 'half' } }],
    faults: [`error ${SUPPLY} /signs/phone-side rules.signs-over-one`],
  },
  {
    name: 'all values listed, but under 1',
    changes: [
      { file: PASSWORD, at: '/signs/sign-of-life/dark', value: 'hardly-ever' },
      { file: PASSWORD, at: '/signs/sign-of-life/lit', value: 'mostly' },
    ],
    faults: [`error ${PASSWORD} /signs/sign-of-life rules.signs-under-one`],
  },
  {
    name: 'a share left for values that usually never show',
    changes: [{ file: PASSWORD, at: '/signs/phone-side/unclear' }],
    faults: [`error ${PASSWORD} /signs/phone-side rules.nothing-to-share`],
  },
  {
    name: 'no fault where nothing is left to share',
    changes: [{ file: SUPPLY, at: '/signs/phone-side', value: { good: 'half', bad: 'half' } }],
    faults: [],
  },
  {
    name: 'a default over 1',
    changes: [{ file: LIFE, at: '/defaults/0/sign', value: { lit: 'mostly', dark: 'half' } }],
    faults: [`error ${LIFE} /defaults/0/sign rules.signs-over-one`],
  },
  {
    name: 'an unknown word in the signs of "nothing is wrong"',
    changes: [{ file: MANIFEST, at: '/hypotheses/nothing/signs/sign-of-life/lit', value: FAR }],
    faults: [`error ${MANIFEST} /hypotheses/nothing/signs/sign-of-life/lit rules.no-such-word`],
  },
  {
    name: 'usual shares that do not add up to 1',
    changes: [{ file: LIFE, at: '/values/dark/usual', value: 0.2 }],
    faults: [`error ${LIFE} /values rules.usual-not-one`],
  },
  {
    name: 'a range that runs backwards',
    changes: [
      { file: LIFE, at: '/defaults/0', value: { from: 'sign-in', to: 'power', sign: { dark: 'mostly' } } },
    ],
    faults: [`error ${LIFE} /defaults/0 rules.range-backwards`],
  },
  {
    name: 'a range without a stage on its side',
    changes: [{ file: LIFE, at: '/defaults/0/side', value: 'phone' }],
    faults: [`error ${LIFE} /defaults/0/side rules.range-empty`],
  },
  {
    name: 'two defaults for one stage',
    changes: [
      { file: LIFE, at: '/defaults/1', value: { from: 'power', to: 'sign-in', sign: { lit: 'half' } } },
    ],
    faults: [`error ${LIFE} /defaults/1 rules.defaults-overlap`],
  },
  {
    name: 'no fault where ranges overlap on different sides',
    changes: [
      {
        file: LIFE,
        at: '/defaults/1',
        value: { from: 'power', to: 'sign-in', side: 'phone', sign: { lit: 'half' } },
      },
    ],
    faults: [],
  },
  {
    name: 'a value that no rule sets',
    changes: [{ file: PHONE, at: '/rules/2' }],
    faults: [`error ${PHONE} /values/unclear rules.value-never-set`],
  },
  {
    name: 'a rule for a value nobody knows',
    changes: [
      {
        file: PHONE,
        at: '/rules/3',
        value: { value: FAR, conditions: test('account-works', 'equal', true) },
      },
    ],
    faults: [`error ${PHONE} /rules/3/value rules.no-such-value`],
  },
  {
    name: 'a rule on an answer the finding does not ask for',
    changes: [{ file: PHONE, at: '/rules/0/conditions', value: test('lights', 'equal', 'on') }],
    faults: [`error ${PHONE} /rules/0/conditions/all/0/fact rules.not-asked`],
  },
  {
    name: 'a rule on a fact whose input the finding does not ask for',
    changes: [
      { file: PHONE, at: '/rules/0/conditions', value: test('camera-address-kind', 'equal', 'public') },
    ],
    faults: [`error ${PHONE} /rules/0/conditions/all/0/fact rules.not-asked`],
  },
  {
    name: 'an answer asked for nothing',
    changes: [{ file: PHONE, at: '/asks', value: ['account-works', 'lights'] }],
    faults: [`error ${PHONE} /asks/1 rules.asked-for-nothing`],
  },
  {
    name: 'findings that rest on each other',
    changes: [
      {
        file: LIFE,
        at: '/rules/2',
        value: { value: 'lit', conditions: test('phone-side', 'equal', 'good') },
      },
    ],
    faults: [`error ${PHONE} /rules rules.findings-cycle`],
  },
  {
    name: 'a finding that rests on itself',
    changes: [
      {
        file: LIFE,
        at: '/rules/2',
        value: { value: 'lit', conditions: test('sign-of-life', 'equal', 'lit') },
      },
    ],
    faults: [`error ${LIFE} /rules rules.findings-cycle`],
  },
  {
    name: 'a fact that is worked out from itself',
    changes: [{ file: FACT, at: '/inputs/1', value: 'camera-address-kind' }],
    faults: [`error ${FACT} /inputs rules.facts-cycle`],
  },
  {
    name: 'a repeat of a repeat',
    changes: [{ file: LIFE, at: '/repeats', value: { finding: 'address-fits', agrees: { lit: ['fits'] } } }],
    faults: [
      `error ${FITS} /repeats/finding rules.repeats-a-repeat`,
      `error ${LIFE} /repeats/finding rules.repeats-a-repeat`,
    ],
  },
  {
    name: 'a repeat of a finding nobody knows',
    changes: [{ file: FITS, at: '/repeats/finding', value: FAR }],
    faults: [`error ${FITS} /repeats/finding rules.no-such-finding`],
  },
  {
    name: 'an agreement with values nobody knows',
    changes: [{ file: FITS, at: '/repeats/agrees', value: { fits: [FAR], [FAR]: ['lit'] } }],
    faults: [
      `error ${FITS} /repeats/agrees/fits/0 rules.no-such-value`,
      `error ${FITS} /repeats/agrees/${FAR} rules.no-such-value`,
    ],
  },
  {
    name: 'a missing way',
    changes: [{ file: MANIFEST, at: '/ways/1' }],
    faults: [`error ${MANIFEST} /ways rules.way-missing`],
  },
  {
    name: 'a way to a place nobody knows',
    changes: [{ file: MANIFEST, at: '/ways/2', value: { from: 'site', to: FAR, minutes: 1 } }],
    faults: [`error ${MANIFEST} /ways/2/to rules.no-such-place`],
  },
  {
    name: 'a place within one that nobody knows',
    changes: [{ file: MANIFEST, at: '/places/0/within', value: ['site', FAR] }],
    faults: [`error ${MANIFEST} /places/0/within/1 rules.no-such-place`],
  },
  {
    name: 'a way to a place that lies within another',
    changes: [{ file: MANIFEST, at: '/places/2/within', value: ['site'] }],
    faults: [
      `error ${MANIFEST} /ways/0 rules.way-of-within`,
      `error ${MANIFEST} /ways/1 rules.way-of-within`,
    ],
  },
  {
    name: 'a way from a place to itself',
    changes: [{ file: MANIFEST, at: '/ways/2', value: { from: 'site', to: 'site', minutes: 1 } }],
    faults: [`error ${MANIFEST} /ways/2 rules.way-to-itself`],
  },
  {
    name: 'a way given twice',
    changes: [{ file: MANIFEST, at: '/ways/2', value: { from: 'site', to: 'cabinet', minutes: 1 } }],
    faults: [`error ${MANIFEST} /ways/2 rules.twice-in-list`],
  },
  {
    name: 'a stage given twice',
    changes: [{ file: MANIFEST, at: '/stages/2', value: { id: 'power', title: 'Again', side: 'camera' } }],
    faults: [`error ${MANIFEST} /stages/2/id rules.twice-in-list`],
  },
];
