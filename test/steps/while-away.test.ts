import { describe, expect, it } from 'vitest';
import type { RuleBase } from '../../src/rulebase/records.js';
import { nextStep } from '../../src/steps/next-step.js';
import { repairOrder } from '../../src/steps/orders.js';
import { mendsUnseen } from '../../src/steps/while-away.js';
import { cause, finding, is, oneOf, question, remedy, ruleBase } from '../ranking/literals.js';
import { situationAfter } from './situations.js';

const plain = ruleBase({
  questions: [
    question('seen', { answer: oneOf('there', 'dark') }),
    question('when', { answer: oneOf('rain', 'night') }),
  ],
  findings: [
    finding('phase', 'seen', { there: 0.05, dark: 0.95 }),
    finding('rhythm', 'when', { rain: 0.1, night: 0.9 }),
  ],
  causes: [
    cause('joint', { signs: { phase: { there: 'half' }, rhythm: { rain: 'always' } }, prior: 40 }),
    cause('lamp', { signs: { phase: { there: 'half' }, rhythm: { night: 'always' } }, prior: 40 }),
  ],
  remedies: [
    remedy('joint', { minutes: 20 }),
    remedy('lamp', { minutes: 20 }),
    remedy('nothing-is-wrong-now', { id: 'watch', minutes: 2, when: is('seen', 'there') }),
  ],
});
const rules: RuleBase = {
  ...plain,
  manifest: { ...plain.manifest, silence: { finding: 'phase', value: 'there' } },
};
/** Where nobody can tell when it goes. */
const untold = { seen: 'there', when: null };

describe('a fault that comes and goes, and is away', () => {
  it('is known as such only while something is looked for', async () => {
    expect(mendsUnseen(await situationAfter(rules, { seen: 'there' }))).toBe(true);
    expect(mendsUnseen(await situationAfter(rules, { seen: 'dark' }))).toBe(false);
    const probabilities = (await situationAfter(rules)).model.hypotheses.map(({ kind }) =>
      Number(kind === 'nothing'),
    );
    expect(mendsUnseen(await situationAfter(rules, { seen: 'there' }, { probabilities }))).toBe(false);
  });

  it('is asked after, and what mends it likeliest is done, though the picture is there', async () => {
    expect(nextStep(await situationAfter(rules, { seen: 'there' }))).toMatchObject({
      kind: 'ask',
      question: 'when',
    });
    const rain = await situationAfter(rules, { seen: 'there', when: 'rain' }, {}, 'agreed');
    expect(nextStep(rain)).toMatchObject({ kind: 'try', remedy: 'joint', plan: ['joint'] });
  });

  it('is watched for, and nobody is sent, where nothing is likely enough to mend unseen', async () => {
    const many = ['a', 'b', 'c', 'd', 'e', 'f'].map((id) =>
      cause(id, { signs: { phase: { there: 'half' } }, prior: 30 }),
    );
    const unclear = {
      ...rules,
      causes: many,
      remedies: [...many.map(({ id }) => remedy(id, { minutes: 20 })), ...rules.remedies.slice(2)],
    };
    const step = nextStep(await situationAfter(unclear, untold, { left: new Set(['read-back:seen']) }));
    expect(step).toMatchObject({ kind: 'try', remedy: 'watch' });
  });

  it('has a plan of that one thing only, for the ticket too', async () => {
    const rain = await situationAfter(rules, { seen: 'there', when: 'rain' }, {}, 'agreed');
    expect(repairOrder(rain).remedies.map(({ id }) => id)).toEqual(['joint']);
    const gone = await situationAfter(rules, { seen: 'dark', when: 'rain' }, {}, 'agreed');
    expect(repairOrder(gone).remedies.map(({ id }) => id)).toContain('lamp');
  });

  it('has somebody sent where it is known what to mend, and nobody there can', async () => {
    const far = {
      ...rules,
      remedies: [remedy('joint', { minutes: 20, who: 'installer' }), ...rules.remedies.slice(2)],
    };
    const step = nextStep(await situationAfter(far, { seen: 'there', when: 'rain' }, {}, 'agreed'));
    expect(step).toMatchObject({ kind: 'visit' });
  });
});
