import type { Manifest } from '../../src/rulebase/manifest.js';

export const SMALL_MANIFEST: Manifest = {
  version: '0.0.1',
  date: '2026-11-25',
  title: 'A small rule base',
  source: 'judged',
  stages: [
    { id: 'power', title: 'Power', side: 'camera' },
    { id: 'sign-in', title: 'Sign-in', side: 'phone' },
  ],
  words: { always: 0.98, mostly: 0.8, half: 0.5, seldom: 0.1, 'hardly-ever': 0.02 },
  reliability: {
    said: {
      choice: 0.05,
      'yes-no': 0.05,
      several: 0.05,
      address: 0.06,
      mask: 0.06,
      number: 0.06,
      text: 0.05,
    },
    agreed: 0.01,
    pasted: 0.005,
    read: 0.002,
    disputed: 0.3,
  },
  places: [
    { id: 'anywhere', title: 'Anywhere' },
    { id: 'site', title: 'On the site' },
    { id: 'cabinet', title: 'At the cabinet' },
  ],
  ways: [
    { from: 'site', to: 'cabinet', minutes: 4 },
    { from: 'cabinet', to: 'site', minutes: 4 },
  ],
  kit: [
    { id: 'patch-lead', title: 'A good patch lead' },
    { id: 'ladder', title: 'A ladder' },
  ],
  hypotheses: {
    otherShare: 0.05,
    nothing: { title: 'Nothing is wrong now', prior: 20, signs: { 'sign-of-life': { lit: 'always' } } },
  },
  visit: { labourMinutes: 120, waitDays: 1.5, minutesPerDay: 60 },
  subjectPrice: 0.5,
  cantTell: 0.15,
};
