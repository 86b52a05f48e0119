import { describe, expect, test } from 'vitest';
import { POE_BUDGET } from '../../../src/arithmetic/topics/poe-budget.js';
import { reckoned, refusal, wordsOf } from './power-topics.js';

const GIVEN = {
  budget: '60 W',
  ports: '1 class 3 6 W; 2 class 3 6 W high; 3 class 3 6 W',
  next: 'class 3 9 W',
  'night-watts': '0 W',
};

describe('the sum of a switch’s budget', () => {
  test('counts four cameras of class 3 as 61.6 W, and says who goes first', () => {
    const reckoning = reckoned(POE_BUDGET, { ...GIVEN, counts: 'class', 'when-full': 'priority' });
    expect(reckoning.verdict).toBe('impossible');
    expect(reckoning.data.shedByPriorityPorts).toEqual([4]);
    const words = wordsOf(reckoning);
    expect(words).toContain('with the next camera: 61.6 W');
    expect(words).toContain('The budget is short by 1.6 W.');
    expect(words).toContain('By priority port 4 goes first.');
    expect(words).toContain('IEEE 802.3');
  });

  test('says that the newest stays dark where the switch refuses it', () => {
    const words = wordsOf(reckoned(POE_BUDGET, { ...GIVEN, counts: 'class', 'when-full': 'refuses newest' }));
    expect(words).toContain('it stays dark');
    expect(words).not.toContain('By priority port');
  });

  test('says that the next camera comes up where there is enough', () => {
    const reckoning = reckoned(POE_BUDGET, { ...GIVEN, counts: 'drawn' });
    expect(reckoning.verdict).toBe('fine');
    expect(wordsOf(reckoning)).toContain('The next camera gets its power');
  });

  test('says both where it is not known how the switch counts or what it does', () => {
    const reckoning = reckoned(POE_BUDGET, { ...GIVEN, counts: '?' });
    expect(reckoning).toMatchObject({ verdict: 'doubtful', decides: 'counts' });
    expect(wordsOf(reckoning)).toContain('The newest camera stays dark, or ports are let go by priority.');
  });

  test('is not fine where nobody knows what hangs on the ports', () => {
    const reckoning = reckoned(POE_BUDGET, { budget: '60 W', ports: '?' });
    expect(reckoning).toMatchObject({ verdict: 'doubtful', decides: 'ports' });
    expect(wordsOf(reckoning)).toContain('It is not known what hangs on the ports');
  });

  test('lets go at worst what cameras of unknown class may need', () => {
    // Three of class 4 are 90 W at the port; without port 3 they are 60 W.
    const { data } = reckoned(POE_BUDGET, { budget: '60 W', ports: '1; 2; 3' });
    expect(data.shedByPriorityPorts).toEqual([3]);
  });

  test('is never below nought', () => {
    const { data } = reckoned(POE_BUDGET, { ...GIVEN, budget: '20 W' });
    expect(data.freeAtWorstByClassWatts).toBe(0);
    expect(data.shortAtWorstByClassWatts).toBeCloseTo(41.6, 9);
  });

  test('finds out that night is what is too much', () => {
    const dusk = { ...GIVEN, next: '', counts: 'drawn', budget: '30 W' };
    expect(reckoned(POE_BUDGET, { ...dusk, 'night-watts': '0 W' }).verdict).toBe('fine');
    expect(reckoned(POE_BUDGET, { ...dusk, 'night-watts': '5 W' }).verdict).toBe('impossible');
    expect(reckoned(POE_BUDGET, { ...dusk, 'night-watts': '?' })).toMatchObject({
      verdict: 'doubtful',
      decides: 'night-watts',
    });
  });

  test.each([
    [{ ports: '1' }, 'budget', 'amount.missing'],
    [{ budget: '60 V', ports: '1' }, 'budget', 'typed.unit-other'],
    [{ budget: '60 W', ports: '1; 1' }, 'ports', 'measure.port-twice'],
    [{ budget: '60 W', ports: '1', counts: 'both' }, 'counts', 'amount.not-a-choice'],
  ])('%j is refused at %s', (given, input, problem) => {
    expect(refusal(POE_BUDGET, given)).toEqual([input, problem]);
  });
});
