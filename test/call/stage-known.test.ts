import { describe, expect, it } from 'vitest';
import { questionsWith } from '../../src/call/questions-with.js';
import { stageKnown } from '../../src/call/stage-known.js';
import { played, said } from './play.js';
import { TINY } from './tiny-rule-base.js';

const HERE = said('at-site', 'here');

describe('what is known of a stage', () => {
  it('is what was seen to work there and what was answered about it', async () => {
    const known = stageKnown(await played([HERE, said('lights', 'on'), said('account', true)]), 'power');
    expect(known?.stage.state).toBe('good');
    expect(known?.works).toEqual([expect.stringContaining('seen lit')]);
    expect(known?.answers.map(({ id }) => id)).toEqual(['lights', 'at-site']);
  });

  it('is what the numbers show, with the sum', async () => {
    const call = await played([
      HERE,
      said('camera-address', '172.23.40.57'),
      said('camera-mask', '255.255.255.0'),
      said('camera-gateway', '172.23.41.1'),
    ]);
    const known = stageKnown(call, 'power');
    expect(known?.stage.state).toBe('faulty');
    expect(known?.defects.map(({ says }) => says)).toEqual(['The gateway 172.23.41.1 is outside.']);
    expect(known?.defects[0]?.lines.length).toBeGreaterThan(0);
    expect(stageKnown(call, 'sign-in')?.defects).toEqual([]);
  });

  it('is which causes are possible there, likeliest first, with the article of those that have a name', async () => {
    const known = stageKnown(await played([HERE, said('lights', 'off')]), 'power');
    const [first, ...others] = known?.causes ?? [];
    expect(first).toMatchObject({
      title: 'Title of supply-off',
      file: 'causes/power/supply-off.md',
    });
    for (const other of others) expect(other.probability).toBeLessThanOrEqual(first?.probability ?? 0);
    expect(others.map(({ title }) => title)).not.toContain('Title of password-changed');
  });

  it('is nothing where there is no such stage', async () => {
    expect(stageKnown(await played([HERE]), 'constructor')).toBeUndefined();
  });
});

describe('the questions with some words', () => {
  const ids = (words: string) => questionsWith(TINY, words).map(({ id }) => id);

  it('have all of them, in any order and case', () => {
    expect(ids('MASK camera')).toEqual(['camera-mask']);
    expect(ids('camera')).toEqual(['camera-address', 'camera-gateway', 'camera-mask']);
    expect(ids('camera volts')).toEqual([]);
  });

  it('stand with those first that have them in the title', () => {
    const [one, other] = TINY.questions;
    if (!one || !other) throw new Error('no questions');
    const questions = [
      { ...one, title: 'First', prompt: 'Is the lamp lit?' },
      { ...other, title: 'The lamp', prompt: 'Is it?' },
    ];
    expect(questionsWith({ questions }, 'lamp').map(({ title }) => title)).toEqual(['The lamp', 'First']);
  });

  it.each(['', '  '])('are none for "%s"', (words) => {
    expect(ids(words)).toEqual([]);
  });
});
