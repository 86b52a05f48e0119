import type { Finding } from '../../src/rulebase/records.js';

/** Two findings on answers and a fact, and one that builds on another. */
export const SMALL_FINDINGS: readonly Finding[] = [
  {
    id: 'sign-of-life',
    title: 'Signs of life',
    source: 'judged',
    stage: 'power',
    values: {
      lit: { title: 'A light is on', usual: 0.9, clears: ['power'] },
      dark: { title: 'No light is on', usual: 0.1 },
    },
    asks: ['lights'],
    defaults: [{ from: 'power', to: 'power', side: 'camera', sign: { dark: 'mostly' } }],
    rules: [
      { value: 'lit', conditions: { all: [{ fact: 'lights', operator: 'equal', value: 'on' }] } },
      { value: 'dark', conditions: { not: { fact: 'lights', operator: 'equal', value: 'on' } }, priority: 2 },
    ],
  },
  {
    id: 'address-fits',
    title: 'Address of the camera',
    source: { title: 'RFC 3927', section: '2.1' },
    stage: 'power',
    values: {
      fits: { title: 'From a plan', usual: 0.95 },
      'self-assigned': {
        title: 'Chosen by the camera itself',
        usual: 0.05,
        defect: { says: 'The camera chose an address itself.', cause: 'supply-off' },
      },
    },
    asks: ['camera-address'],
    repeats: { finding: 'sign-of-life', agrees: { fits: ['lit'], 'self-assigned': ['lit', 'dark'] } },
    rules: [
      {
        value: 'fits',
        conditions: { any: [{ fact: 'camera-address-kind', operator: 'notEqual', value: 'self-assigned' }] },
      },
      {
        value: 'self-assigned',
        conditions: { all: [{ fact: 'camera-address-kind', operator: 'equal', value: 'self-assigned' }] },
      },
    ],
  },
  {
    id: 'phone-side',
    title: 'Account on the phone',
    source: 'judged',
    stage: 'sign-in',
    values: {
      good: { title: 'Opens', usual: 0.7 },
      bad: { title: 'Does not open, camera alive', usual: 0.3 },
      unclear: { title: 'Does not open, camera dark', usual: 0 },
    },
    asks: ['account-works'],
    rules: [
      { value: 'good', conditions: { all: [{ fact: 'account-works', operator: 'equal', value: true }] } },
      {
        value: 'bad',
        conditions: {
          all: [
            { fact: 'account-works', operator: 'equal', value: false },
            { fact: 'sign-of-life', operator: 'equal', value: 'lit' },
          ],
        },
      },
      {
        value: 'unclear',
        conditions: {
          all: [
            { fact: 'account-works', operator: 'equal', value: false },
            { fact: 'sign-of-life', operator: 'equal', value: 'dark' },
          ],
        },
      },
    ],
  },
];
