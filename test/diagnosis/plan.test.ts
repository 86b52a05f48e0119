import { describe, expect, it } from 'vitest';
import { plannedStep } from '../../src/diagnosis/plan.js';
import { is, oneOf, question, remedy, ruleBase } from '../ranking/literals.js';
import { situationAfter } from '../steps/situations.js';

const lead = remedy('lead', { askBefore: ['off', 'web'] });
const rules = ruleBase({
  questions: [
    question('alone'),
    question('off', { title: 'Mobile data', when: is('alone', true) }),
    question('web', { title: 'A page', answer: oneOf('opens', 'fails'), when: is('off', true) }),
  ],
  remedies: [lead],
});
const cautions = async (answers: Parameters<typeof situationAfter>[1]) =>
  plannedStep(await situationAfter(rules, answers), lead).cautions;
const first = (title: string): string => `Ask first, for it may turn out to be something else: ${title}.`;

describe('what is to be asked before a planned remedy', () => {
  it('stands with its cautions, each once, as long as it was not answered', async () => {
    expect(await cautions({ alone: true })).toEqual([first('Mobile data'), first('A page')]);
    expect(await cautions({ alone: true, off: true })).toEqual([first('A page')]);
    expect(await cautions({ alone: true, off: true, web: 'fails' })).toEqual([]);
  });

  it('is left out where it makes no sense', async () => {
    expect(await cautions({ alone: false })).toEqual([]);
  });
});
