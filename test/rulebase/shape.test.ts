import { describe, expect, it } from 'vitest';
import { inWords } from '../../src/messages/say.js';
import { checkShape } from '../../src/rulebase/check-shape.js';
import { OPERATORS } from '../../src/rulebase/condition.js';
import { KINDS } from '../../src/rulebase/records.js';
import { type Broken, faultsAfter, inShort } from './broken.js';
import { readSchemas, smallFiles } from './small-rule-base.js';

const LIGHTS = 'questions/power/lights.json';
const ADDRESS = 'questions/power/camera-address.json';
const LIFE = 'findings/power/sign-of-life.json';
const ODD = 'contradictions/dark-but-open.json';
const FACT = 'facts/camera-address-kind.json';
const MANIFEST = 'manifest.json';
const TEST = { fact: 'lights', operator: 'equal', value: 'on' };

const broken: readonly Broken[] = [
  {
    name: 'a mistyped operator',
    changes: [{ file: ODD, at: '/when/all/0/operator', value: 'equals' }],
    faults: [`error ${ODD} /when/all/0/operator rules.not-one-of-near`],
  },
  {
    name: 'an operator far from any, with a list beside it',
    changes: [{ file: ODD, at: '/when', value: { fact: 'lights', operator: 'isIn', value: ['on'] } }],
    faults: [`error ${ODD} /when/operator rules.not-one-of`],
  },
  {
    name: 'a path in a test',
    changes: [{ file: ODD, at: '/when', value: { ...TEST, path: '$.x' } }],
    faults: [`error ${ODD} /when/path rules.path-forbidden`],
  },
  {
    name: 'all and any in one condition',
    changes: [{ file: ODD, at: '/when', value: { all: [TEST], any: [TEST] } }],
    faults: [`error ${ODD} /when rules.mixed-condition`],
  },
  {
    name: 'a group with a test beside it',
    changes: [{ file: ODD, at: '/when', value: { all: [TEST], ...TEST } }],
    faults: [`error ${ODD} /when rules.mixed-condition`],
  },
  {
    name: 'an empty group',
    changes: [{ file: ODD, at: '/when', value: { any: [] } }],
    faults: [`error ${ODD} /when/any rules.too-few`],
  },
  {
    name: 'an empty condition',
    changes: [{ file: ODD, at: '/when', value: { all: [{}] } }],
    faults: [`error ${ODD} /when/all/0 rules.not-a-condition`],
  },
  {
    name: 'a mistyped group',
    changes: [{ file: ODD, at: '/when', value: { al: [TEST] } }],
    faults: [`error ${ODD} /when/al rules.unknown-field-near`],
  },
  {
    name: 'a mistyped part of a test',
    changes: [{ file: ODD, at: '/when', value: { fact: 'lights', operater: 'equal', value: 'on' } }],
    faults: [`error ${ODD} /when/operater rules.unknown-field-near`],
  },
  {
    name: 'a test without a value',
    changes: [{ file: ODD, at: '/when', value: { fact: 'lights', operator: 'equal' } }],
    faults: [`error ${ODD} /when rules.missing-field`],
  },
  {
    name: 'a list where one value belongs',
    changes: [{ file: ODD, at: '/when/all/0/value', value: ['on'] }],
    faults: [`error ${ODD} /when/all/0/value rules.wrong-type`],
  },
  {
    name: 'one value where a list belongs',
    changes: [{ file: ODD, at: '/when', value: { ...TEST, operator: 'in' } }],
    faults: [`error ${ODD} /when/value rules.wrong-type`],
  },
  {
    name: 'another fact to compare with',
    changes: [{ file: ODD, at: '/when', value: { ...TEST, value: { fact: 'lights' } } }],
    faults: [`error ${ODD} /when/value rules.wrong-type`],
  },
  {
    name: 'a bare test as a rule',
    changes: [{ file: LIFE, at: '/rules/0/conditions', value: TEST }],
    faults: [`error ${LIFE} /rules/0/conditions rules.bare-test`],
  },
  {
    name: 'a priority of 0, which the engine would quietly raise',
    changes: [{ file: LIFE, at: '/rules/1/priority', value: 0 }],
    faults: [`error ${LIFE} /rules/1/priority rules.too-small`],
  },
  {
    name: 'a source nobody knows',
    changes: [{ file: ODD, at: '/source', value: 'judge' }],
    faults: [`error ${ODD} /source rules.not-one-of-near`],
  },
  {
    name: 'a record without a source',
    changes: [{ file: LIGHTS, at: '/source' }],
    faults: [`error ${LIGHTS}  rules.missing-field`],
  },
  {
    name: 'a published source without its section',
    changes: [{ file: FACT, at: '/source', value: { title: 'RFC 3927' } }],
    faults: [`error ${FACT} /source rules.missing-field`],
  },
  {
    name: 'an unknown field',
    changes: [{ file: LIGHTS, at: '/colour', value: 'red' }],
    faults: [`error ${LIGHTS} /colour rules.unknown-field`],
  },
  {
    name: 'the schema of another kind',
    changes: [{ file: LIGHTS, at: '/$schema', value: '../../schema/finding.schema.json' }],
    faults: [`error ${LIGHTS} /$schema rules.wrong-schema`],
  },
  {
    name: 'a choice without choices',
    changes: [{ file: LIGHTS, at: '/answer/choices' }],
    faults: [`error ${LIGHTS} /answer rules.missing-field`],
  },
  {
    name: 'a single choice',
    changes: [{ file: LIGHTS, at: '/answer/choices/1' }],
    faults: [`error ${LIGHTS} /answer/choices rules.too-few`],
  },
  {
    name: 'a unit for an address',
    changes: [{ file: ADDRESS, at: '/answer/unit', value: 'm' }],
    faults: [`error ${ADDRESS} /answer/unit rules.not-here`],
  },
  {
    name: 'a question that takes no time',
    changes: [{ file: LIGHTS, at: '/minutes', value: 0 }],
    faults: [`error ${LIGHTS} /minutes rules.not-above`],
  },
  {
    name: 'a blank prompt',
    changes: [{ file: LIGHTS, at: '/prompt', value: ' ' }],
    faults: [`error ${LIGHTS} /prompt rules.wrong-form`],
  },
  {
    name: 'an id with capitals as the name of a value',
    changes: [{ file: LIFE, at: '/values/Dim', value: { title: 'Dim', usual: 0 } }],
    faults: [`error ${LIFE} /values/Dim rules.wrong-form`],
  },
  {
    name: 'a finding with one value',
    changes: [{ file: LIFE, at: '/values/dark' }],
    faults: [`error ${LIFE} /values rules.too-few`],
  },
  {
    name: 'a share over 1',
    changes: [{ file: LIFE, at: '/values/lit/usual', value: 1.5 }],
    faults: [`error ${LIFE} /values/lit/usual rules.too-large`],
  },
  {
    name: 'a fact of choices that lists none',
    changes: [{ file: FACT, at: '/values' }],
    faults: [`error ${FACT}  rules.missing-field`],
  },
  {
    name: 'one question twice in a list',
    changes: [{ file: ODD, at: '/between', value: ['lights', 'account-works', 'lights'] }],
    faults: [`error ${ODD} /between/2 rules.twice-in-list`],
  },
  {
    name: 'no mends',
    changes: [{ file: 'remedies/power/plug-in-and-sign-in.json', at: '/mends', value: [] }],
    faults: ['error remedies/power/plug-in-and-sign-in.json /mends rules.too-few'],
  },
  {
    name: 'a gate that does not say why',
    changes: [{ file: 'remedies/power/plug-in-and-sign-in.json', at: '/gate/why' }],
    faults: ['error remedies/power/plug-in-and-sign-in.json /gate rules.missing-field'],
  },
  {
    name: 'no reliability for one kind of answer',
    changes: [{ file: MANIFEST, at: '/reliability/said/mask' }],
    faults: [`error ${MANIFEST} /reliability/said rules.missing-field`],
  },
  {
    name: 'a frequency word over 1',
    changes: [{ file: MANIFEST, at: '/words/always', value: 98 }],
    faults: [`error ${MANIFEST} /words/always rules.too-large`],
  },
  {
    name: 'a file where no record belongs',
    changes: [],
    extra: [{ file: 'questions/lights.json', json: {} }],
    faults: ['error questions/lights.json  rules.misplaced-file'],
  },
];

describe('the shape of records', () => {
  it('is right for the small rule base', () => {
    expect(checkShape(smallFiles(), readSchemas())).toEqual([]);
  });

  it.each(broken)('reports $name once, at its place', (one) => {
    const faults = faultsAfter(one);
    expect(faults.map(inShort)).toEqual(one.faults);
    for (const { says } of faults) expect(inWords(says)).not.toBe('');
  });

  it('says what was probably meant', () => {
    const [fault] = faultsAfter({ changes: [{ file: ODD, at: '/when/all/0/operator', value: 'equals' }] });
    expect(fault && inWords(fault.says)).toContain('Did you mean "equal"?');
  });

  it('reports a non-object instead of a record', () => {
    const faults = checkShape([{ file: LIGHTS, json: [] }], readSchemas());
    expect(faults.map(inShort)).toEqual([`error ${LIGHTS}  rules.wrong-type`]);
  });

  it('lists the operators and kinds that the types list', () => {
    const text = JSON.stringify(readSchemas());
    expect(text).toContain(`{"operator":{"enum":["in","notIn"]}}`);
    expect(text).toContain(`"operator":{"enum":${JSON.stringify(OPERATORS)}}`);
    expect(text).toContain(JSON.stringify(KINDS.filter((kind) => kind !== 'retired')));
  });
});
