import type { RuleBase } from '../../src/rulebase/records.js';
import { SMALL_MANIFEST } from '../rulebase/small-manifest.js';
import { cause, choices, equal, question, reading, remedy } from './tiny-records.js';

const PLACES = ['site', 'cabinet', 'camera', 'away'];

/** A rule base just large enough for a call: two independent faults, a gate, kit, a sum, and ways to go wrong. */
export const TINY: RuleBase = {
  manifest: {
    ...SMALL_MANIFEST,
    hypotheses: {
      otherShare: 0.05,
      nothing: { title: 'Nothing is wrong now', prior: 10, signs: { life: { lit: 'always' } } },
    },
    places: [{ id: 'anywhere', title: 'Anywhere' }, ...PLACES.map((id) => ({ id, title: `at ${id}` }))],
    ways: PLACES.flatMap((from) =>
      PLACES.filter((to) => to !== from).map((to) => ({ from, to, minutes: from === 'away' ? 240 : 4 })),
    ),
  },
  questions: [
    question({ id: 'account', stage: 'sign-in', place: 'anywhere', answer: { type: 'yes-no' } }),
    question({
      id: 'at-site',
      stage: 'power',
      place: 'anywhere',
      opening: 1,
      answer: {
        type: 'choice',
        choices: [
          { id: 'here', title: 'on the site', place: 'site' },
          { id: 'gone', title: 'somewhere else', place: 'away' },
          { id: 'stranger', title: 'no right to ask', ends: 'may-not-ask' },
          { id: 'doorbell', title: 'another kind of camera', ends: 'out-of-scope' },
        ],
      },
    }),
    question({
      id: 'camera-address',
      stage: 'power',
      place: 'site',
      minutes: 3,
      answer: { type: 'address' },
    }),
    question({
      id: 'camera-gateway',
      stage: 'power',
      place: 'site',
      minutes: 3,
      answer: { type: 'address' },
    }),
    question({ id: 'camera-mask', stage: 'power', place: 'site', minutes: 3, answer: { type: 'mask' } }),
    question({
      id: 'kit',
      stage: 'power',
      place: 'anywhere',
      part: 'kit',
      answer: { ...choices('patch-lead', 'ladder'), type: 'several' },
    }),
    question({ id: 'lights', stage: 'power', place: 'site', opening: 2, answer: choices('on', 'off') }),
    question({ id: 'loose', stage: 'power', place: 'site', answer: { type: 'yes-no' } }),
    question({ id: 'other-phone', stage: 'sign-in', place: 'anywhere', answer: { type: 'yes-no' } }),
    question({ id: 'owner-agrees', stage: 'power', place: 'anywhere', answer: { type: 'yes-no' } }),
    // Too long a way and a look to come before a minute's jiggling.
    question({
      id: 'socket',
      stage: 'power',
      place: 'cabinet',
      minutes: 5,
      answer: choices('live', 'dead'),
    }),
    question({
      id: 'their-words',
      stage: 'power',
      place: 'anywhere',
      part: 'words',
      answer: { type: 'text' },
    }),
    question({
      id: 'volts',
      stage: 'power',
      place: 'cabinet',
      answer: { type: 'number', unit: 'V', min: 0, max: 60 },
      needs: ['ladder'],
    }),
  ],
  findings: [
    reading('account-state', 'account', { opens: [true, 0.8], refused: [false, 0.2] }, { stage: 'sign-in' }),
    reading(
      'gateway-place',
      'camera-gateway',
      {},
      {
        values: {
          inside: { title: 'inside', usual: 0.9 },
          outside: {
            title: 'outside',
            usual: 0.1,
            defect: { says: 'The gateway {camera-gateway} is outside.', cause: 'gateway-wrong' },
          },
        },
        asks: ['camera-address', 'camera-mask', 'camera-gateway'],
        rules: [
          { value: 'outside', conditions: { all: [equal('standing', 'outside')] } },
          { value: 'inside', conditions: { all: [equal('standing', 'inside')] } },
        ],
      },
    ),
    reading(
      'life',
      'lights',
      { lit: ['on', 0.7], dark: ['off', 0.3] },
      {
        values: {
          lit: { title: 'seen lit', usual: 0.7, clears: ['power'] },
          dark: { title: 'seen dark', usual: 0.3 },
        },
      },
    ),
    reading('socket-state', 'socket', { live: ['live', 0.8], dead: ['dead', 0.2] }),
    {
      ...reading('volts-state', 'volts', {}),
      values: { right: { title: 'right', usual: 0.9 }, low: { title: 'low', usual: 0.1 } },
      rules: [
        { value: 'low', conditions: { all: [{ fact: 'volts', operator: 'lessThan', value: 40 }] } },
        {
          value: 'right',
          conditions: { all: [{ fact: 'volts', operator: 'greaterThanInclusive', value: 40 }] },
        },
      ],
    },
  ],
  causes: [
    cause('gateway-wrong', 'power', 4, { 'gateway-place': { outside: 'always' }, life: { lit: 'always' } }),
    cause('lead-broken', 'power', 20, { life: { dark: 'always' }, 'socket-state': { live: 'always' } }),
    cause('password-changed', 'sign-in', 30, {
      'account-state': { refused: 'always' },
      life: { lit: 'always' },
    }),
    cause('supply-off', 'power', 75, {
      life: { dark: 'always' },
      'socket-state': { dead: 'always' },
      'volts-state': { low: 'always' },
    }),
  ],
  remedies: [
    remedy('correct-gateway', { 'gateway-wrong': 'always' }, ['gateway-place'], {
      gate: { condition: equal('owner-agrees', true), why: 'The owner has to agree.' },
      cautions: ['mains'],
    }),
    remedy('jiggle', { 'lead-broken': 'half', 'supply-off': 'seldom' }, ['life'], {
      when: equal('life', 'dark'),
      minutes: 1,
    }),
    remedy('plug-in', { 'supply-off': 'always' }, ['life', 'socket-state'], {
      place: 'cabinet',
      bring: ['a lead of ten metres'],
    }),
    remedy('sign-in-again', { 'password-changed': 'always' }, ['account-state'], { place: 'anywhere' }),
    remedy('swap-lead', { 'lead-broken': 'always' }, ['life'], {
      needs: ['patch-lead'],
      bring: ['a lead of ten metres'],
    }),
    remedy('watch', { 'nothing-is-wrong-now': 'always' }, [], { place: 'anywhere', minutes: 20 }),
  ],
  facts: [
    {
      id: 'standing',
      title: 'Where the gateway stands',
      source: { title: 'RFC 1122', section: '3.3.1.1' },
      type: 'choice',
      values: ['inside', 'outside', 'own-address', 'network-address', 'broadcast-address', 'blank'],
      sum: 'gateway-standing',
      inputs: ['camera-address', 'camera-mask', 'camera-gateway'],
    },
  ],
  contradictions: [
    {
      id: 'dark-yet-open',
      title: 'No light, yet the other phone shows it',
      source: 'judged',
      when: { all: [equal('lights', 'off'), equal('other-phone', true)] },
      between: ['other-phone', 'lights'],
      check: 'lights',
      says: 'No light, yet a picture.',
    },
  ],
  cautions: [{ id: 'mains', title: 'Mains', source: 'judged', words: 'Leave mains to an electrician.' }],
  'tester-faults': [
    {
      id: 'plug-loose',
      title: 'The lamp used to try the socket was loose',
      source: 'judged',
      stage: 'power',
      when: { all: [equal('loose', true), equal('socket', 'dead')] },
      spoils: ['socket-state'],
      help: ['Try the lamp at another socket.'],
      askAgain: ['socket', 'loose'],
    },
  ],
  retired: [],
};
