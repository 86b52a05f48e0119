import { readdirSync, readFileSync } from 'node:fs';
import type { RuleFile, Schemas } from '../../src/rulebase/check-shape.js';
import type { CodeNames } from '../../src/rulebase/known.js';
import { fileOf, MANIFEST } from '../../src/rulebase/layout.js';
import { KINDS, type RuleBase } from '../../src/rulebase/records.js';
import { SMALL_FINDINGS } from './small-findings.js';
import { SMALL_MANIFEST } from './small-manifest.js';

/** A rule base that is tiny, complete and without a fault: two stages, one on each side of the fork. */
export const SMALL: RuleBase = {
  manifest: SMALL_MANIFEST,
  questions: [
    {
      id: 'lights',
      title: 'Lights on the camera',
      source: 'common practice, no source',
      stage: 'power',
      prompt: 'Is a light on at the camera?',
      help: 'Cup a hand around the camera and look for a small light.',
      answer: {
        type: 'choice',
        choices: [
          { id: 'on', title: 'Yes, one is on' },
          { id: 'off', title: 'No, none is on' },
        ],
      },
      minutes: 1,
      place: 'site',
      who: 'anyone',
      opening: 1,
    },
    {
      id: 'camera-address',
      title: 'Address of the camera',
      source: 'common practice, no source',
      stage: 'power',
      prompt: 'Which address does the camera have?',
      help: 'It looks like 172.23.40.57.',
      answer: { type: 'address' },
      minutes: 4,
      place: 'cabinet',
      who: 'anyone',
      needs: ['patch-lead'],
      reads: 'camera.address',
    },
    {
      id: 'account-works',
      title: 'Account',
      source: 'common practice, no source',
      stage: 'sign-in',
      prompt: 'Does the account open on the phone?',
      help: 'Open it and look for the list of cameras.',
      answer: { type: 'yes-no' },
      minutes: 0.5,
      place: 'anywhere',
      who: 'owner',
      when: { any: [{ fact: 'lights', operator: 'in', value: ['on', 'off'] }] },
    },
  ],
  findings: SMALL_FINDINGS,
  causes: [
    {
      id: 'supply-off',
      title: 'The supply is off',
      source: 'judged',
      stage: 'power',
      prior: 75,
      verdict: 'The camera gets no supply.',
      signs: { 'phone-side': { good: 'mostly' } },
      alsoExplainedBy: [],
    },
    {
      id: 'password-changed',
      title: 'The password was changed',
      source: 'judged',
      stage: 'sign-in',
      prior: 20,
      verdict: 'The phone still has the old password.',
      signs: {
        'phone-side': { good: 'seldom', bad: 'mostly', unclear: 'seldom' },
        'sign-of-life': { lit: 'always', dark: 'hardly-ever' },
      },
      alsoExplainedBy: ['supply-off'],
    },
  ],
  remedies: [
    {
      id: 'plug-in-and-sign-in',
      title: 'Plug in and sign in again',
      source: 'judged',
      stage: 'power',
      steps: ['Push the plug of the camera home.', 'Sign in again on the phone.'],
      place: 'cabinet',
      minutes: 5,
      who: 'owner',
      needs: ['patch-lead'],
      cautions: ['mains'],
      gate: {
        condition: { fact: 'account-works', operator: 'equal', value: false },
        why: 'Look at the account first.',
      },
      mends: [
        { cause: 'supply-off', chance: 'mostly' },
        { cause: 'password-changed', chance: 'seldom' },
        { cause: 'other-in-power', chance: 'seldom' },
        { cause: 'nothing-is-wrong-now', chance: 'always' },
      ],
      changes: ['sign-of-life'],
      check: 'Is a light on now?',
      undo: 'Nothing to put back.',
      leaves: 'The camera is plugged in.',
    },
  ],
  facts: [
    {
      id: 'camera-address-kind',
      title: 'Kind of the camera address',
      source: { title: 'RFC 3927', section: '2.1' },
      type: 'choice',
      values: ['private', 'self-assigned', 'public'],
      sum: 'address-kind',
      inputs: ['camera-address'],
    },
  ],
  contradictions: [
    {
      id: 'dark-but-open',
      title: 'No light, yet the account opens',
      source: 'judged',
      when: {
        all: [
          { fact: 'lights', operator: 'equal', value: 'off' },
          { not: { fact: 'account-works', operator: 'equal', value: false } },
        ],
      },
      between: ['lights', 'account-works'],
      check: 'lights',
      says: 'A camera without a light seldom shows a picture.',
    },
  ],
  cautions: [
    {
      id: 'mains',
      title: 'Mains',
      source: 'common practice, no source',
      words: 'Leave mains wiring to a licensed electrician.',
    },
  ],
  'tester-faults': [
    {
      id: 'other-camera',
      title: 'Another camera was looked at',
      source: 'judged',
      stage: 'power',
      when: { fact: 'camera-address-kind', operator: 'equal', value: 'public' },
      spoils: ['address-fits'],
      help: ['Look at the camera on this site.'],
      askAgain: ['camera-address'],
    },
  ],
  retired: [],
};

export const SMALL_NAMES: CodeNames = {
  sums: ['a-topic', 'address-kind', 'same-address'],
  topics: new Map([['a-topic', new Set(['address'])]]),
  observations: new Map([['camera.address', 'address']]),
};

/** The same as files; a fresh copy each time. */
export function smallFiles(): readonly RuleFile[] {
  const records = KINDS.flatMap((kind) =>
    SMALL[kind].map((record) => {
      const stage = 'stage' in record && typeof record.stage === 'string' ? record.stage : '';
      return { file: fileOf(kind, record.id, stage), json: structuredClone<unknown>(record) };
    }),
  );
  return [{ file: MANIFEST, json: structuredClone<unknown>(SMALL.manifest) }, ...records];
}

/** The schemas as they stand in `rules/schema/`. */
export function readSchemas(): Schemas {
  const folder = new URL('../../rules/schema/', import.meta.url);
  return Object.fromEntries(
    readdirSync(folder).map((name) => [name, JSON.parse(readFileSync(new URL(name, folder), 'utf8'))]),
  );
}
