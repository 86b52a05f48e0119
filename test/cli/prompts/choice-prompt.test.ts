import { describe, expect, it } from 'vitest';
import { keyOf } from '../../../src/cli/prompts/choice-prompt.js';
import { choice, options, widest } from './rendered.js';

describe('one of a few', () => {
  it.each([
    ['1', 'c1'],
    ['9', 'c9'],
    ['0', 'c10'],
  ])('is answered by %s at once, without Enter', async (digit, id) => {
    const { answer, keys } = await choice(options(11));
    keys(digit);
    expect(await answer).toEqual({ kind: 'one', id });
  });

  it('shows the digit of each; past ten there is none', async () => {
    const lines = (await choice(options(11))).screen().split('\n');
    expect(lines[0]).toBe('> 1  Choice number 1');
    expect(lines[9]).toContain('0  Choice number 10');
    expect(lines[10]?.trim()).toBe('Choice number 11');
    expect([0, 8, 9, 10].map(keyOf)).toEqual(['1', '9', '0', ' ']);
  });

  it('takes no digit that stands for nothing, and no space for the eleventh', async () => {
    const { answer, keys, screen } = await choice(options(3));
    const before = screen();
    keys('7 0');
    expect(screen()).toBe(before);
    keys('2');
    expect(await answer).toEqual({ kind: 'one', id: 'c2' });
  });

  it.each([
    ['down', 1, 'c2'],
    ['down', 12, 'c2'],
    ['up', 1, 'c11'],
  ])('is reached by the arrows too: %s %i times, then Enter', async (key, times, id) => {
    const { answer, press } = await choice(options(11));
    for (let i = 0; i < times; i++) press(key);
    press('enter');
    expect(await answer).toEqual({ kind: 'one', id });
  });

  it.each(['t', 'b', 's'])('takes the letter %s as a command', async (letter) => {
    const { answer, keys } = await choice(options(3));
    keys(letter);
    const ids: Record<string, string> = { t: 'cant-tell', b: 'back', s: 'stop' };
    expect(await answer).toEqual({ kind: 'command', id: ids[letter] });
  });

  it('does nothing on a letter that is no command, or with Ctrl held', async () => {
    const { answer, keys, screen } = await choice(options(3));
    const before = screen();
    keys('x\u0002\u0014');
    expect(screen()).toBe(before);
    keys('1');
    expect(await answer).toEqual({ kind: 'one', id: 'c1' });
  });

  it('leaves one line behind that says what was answered', async () => {
    const { answer, keys, screen } = await choice(options(3));
    keys('3');
    await answer;
    expect(screen()).toBe('= Choice number 3');
  });

  it.each([80, 40, 24])('keeps within %i columns', async (columns) => {
    const long = [
      {
        id: 'a',
        title:
          'It says that it cannot reach the camera, and to try again later, in red letters on a black field',
      },
      ...options(2),
    ];
    const { screen, press } = await choice(long, { columns });
    expect(widest(screen())).toBeLessThanOrEqual(columns);
    press('down');
    expect(widest(screen())).toBeLessThanOrEqual(columns);
    expect(screen().replace(/\s+/g, ' ')).toContain('in red letters on a black field');
  });

  it('draws no control characters of a title', async () => {
    const { raw } = await choice([{ id: 'a', title: 'all \u001b[2Jblack\u0007 \u202egnp' }]);
    expect(raw()).not.toContain('\u001b[2J');
    for (const control of ['\u0007', '\u202e']) expect(raw()).not.toContain(control);
    expect(raw()).toContain('all ?[2Jblack? ?gnp');
  });

  it('rejects on Ctrl-C, by name', async () => {
    const { answer, keys } = await choice(options(2));
    keys('\u0003');
    await expect(answer).rejects.toMatchObject({ name: 'ExitPromptError' });
  });
});
