import { describe, expect, test } from 'vitest';
import type { Evidence } from '../../src/ranking/evidence.js';
import { explainedBy } from '../../src/ranking/explained.js';
import { modelOf } from '../../src/ranking/model.js';
import { cause, finding, ruleBase } from './literals.js';

const usual = { lit: 0.9, dark: 0.1 };
const rules = ruleBase({
  findings: [
    finding('light', 'ask-light', usual),
    finding('lamp', 'ask-lamp', usual, { repeats: { finding: 'light', agrees: {} } }),
    finding('port', 'ask-port', usual),
    finding('by-lead', 'ask-lead', usual, { circumstance: true }),
    finding('by-default', 'ask-default', usual, {
      defaults: [{ from: 'power', to: 'power', sign: { dark: 'mostly' } }],
    }),
  ],
  causes: [
    cause('no-supply', { signs: { light: { dark: 'mostly' } } }),
    cause('bad-lead', { stage: 'link', signs: { port: { dark: 'always' }, 'by-lead': { dark: 'always' } } }),
  ],
});
const shows = (id: string, value = 'dark'): Evidence => ({ finding: id, value, errorRate: 0.05 });
const explained = (struck: readonly string[], ...evidence: Evidence[]): readonly string[] =>
  explainedBy(rules, modelOf(rules), evidence, struck);

describe('what struck causes explain', () => {
  test('is a value that the cause makes likelier than usual by a sign of its own', () => {
    expect(explained(['no-supply'], shows('light'), shows('port'))).toEqual(['light']);
    expect(explained(['no-supply', 'bad-lead'], shows('light'), shows('port'))).toEqual(['light', 'port']);
  });

  test('is not a value that the cause makes rarer', () => {
    expect(explained(['no-supply'], shows('light', 'lit'))).toEqual([]);
  });

  test('is not what all causes of its stage show: another of them may be there', () => {
    expect(explained(['no-supply'], shows('by-default'))).toEqual([]);
  });

  test('is nothing while nothing is struck', () => {
    expect(explained([], shows('light'))).toEqual([]);
  });

  test('is never a circumstance, which holds as before', () => {
    expect(explained(['bad-lead'], shows('by-lead'), shows('port'))).toEqual(['port']);
  });

  test('includes what repeats it: the same thing must not count after all', () => {
    expect(explained(['no-supply'], shows('lamp'), shows('light'))).toEqual(['lamp', 'light']);
  });
});
