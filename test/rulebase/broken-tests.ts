import type { Broken } from './broken.js';
import { METRES, SOUNDS, test } from './pieces.js';

const FITS = 'findings/power/address-fits.json';
const REMEDY = 'remedies/power/plug-in-and-sign-in.json';
const FACT = 'facts/camera-address-kind.json';
const ODD = 'contradictions/dark-but-open.json';
const FAR = 'zzzzzzzzzzzzzzz';
const when = (condition: unknown) => [{ file: ODD, at: '/when', value: condition }];

/** Comparisons that cannot be made. */
export const BROKEN_TESTS: readonly Broken[] = [
  {
    name: 'an operator for numbers on a choice',
    changes: when(test('lights', 'lessThan', 'on')),
    faults: [`error ${ODD} /when/all/0/operator rules.operator-misfit`],
  },
  {
    name: 'contains on a single choice',
    changes: when(test('lights', 'contains', 'on')),
    faults: [`error ${ODD} /when/all/0/operator rules.operator-misfit`],
  },
  {
    name: 'equal on several choices',
    changes: when({ any: [...test('sounds', 'contains', 'hum').all, ...test('sounds', 'equal', 'hum').all] }),
    extra: [SOUNDS],
    faults: [`error ${ODD} /when/any/1/operator rules.operator-misfit`],
  },
  {
    name: 'a word compared with a yes or no',
    changes: when(test('account-works', 'equal', 'yes')),
    faults: [`error ${ODD} /when/all/0/value rules.write-true-or-false`],
  },
  {
    name: 'a number in quotes',
    changes: when(test('metres', 'lessThan', '5')),
    extra: [METRES],
    faults: [`error ${ODD} /when/all/0/value rules.write-number`],
  },
  {
    name: 'a number the answer can never reach',
    changes: when(test('metres', 'greaterThan', 101)),
    extra: [METRES],
    faults: [`error ${ODD} /when/all/0/value rules.outside-range`],
  },
  {
    name: 'a value the answer cannot take',
    changes: when(test('lights', 'in', ['on', FAR])),
    faults: [`error ${ODD} /when/all/0/value/1 rules.no-such-value`],
  },
  {
    name: 'a value the fact cannot take',
    changes: when(test('camera-address-kind', 'equal', FAR)),
    faults: [`error ${ODD} /when/all/0/value rules.no-such-value`],
  },
  {
    name: 'a value the finding cannot take, inside not',
    changes: when({ not: { fact: 'sign-of-life', operator: 'equal', value: 'lot' } }),
    faults: [`error ${ODD} /when/not/value rules.unknown-name-near`],
  },
  {
    name: 'a number compared with a choice',
    changes: when(test('lights', 'equal', 1)),
    faults: [`error ${ODD} /when/all/0/value rules.no-such-value`],
  },
  {
    name: 'an address compared directly, in a gate',
    changes: [
      { file: REMEDY, at: '/gate/condition', value: test('camera-address', 'equal', '172.23.40.57') },
    ],
    faults: [`error ${REMEDY} /gate/condition/all/0/fact rules.not-comparable`],
  },
  {
    name: 'a number compared with a text fact',
    changes: [
      { file: FACT, at: '/type', value: 'text' },
      { file: FACT, at: '/values' },
      { file: FITS, at: '/rules/0/conditions/any/0/value', value: 7 },
    ],
    faults: [`error ${FITS} /rules/0/conditions/any/0/value rules.write-text`],
  },
];
