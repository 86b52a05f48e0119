import { describe, expect, it } from 'vitest';
import { options, several, widest } from './rendered.js';

describe('several of a few', () => {
  it('are ticked and unticked by digits, and given by Enter in the order they stand', async () => {
    const { answer, keys, screen } = await several(options(10));
    keys('302');
    expect(screen()).toContain('3  [x] Choice number 3');
    expect(screen()).toContain('0  [x] Choice number 10');
    keys('3');
    expect(screen()).toContain('3  [ ] Choice number 3');
    keys('\r');
    expect(await answer).toEqual({ kind: 'several', ids: ['c2', 'c10'] });
    expect(screen()).toBe('= Choice number 2, Choice number 10');
  });

  it('may be none', async () => {
    const { answer, press, screen } = await several(options(3));
    press('enter');
    expect(await answer).toEqual({ kind: 'several', ids: [] });
    expect(screen()).toBe('= none of these');
  });

  it('are reached by the arrows and Space too', async () => {
    const { answer, press } = await several(options(3));
    for (const key of ['down', 'space', 'up', 'up', 'space', 'enter']) press(key);
    expect(await answer).toEqual({ kind: 'several', ids: ['c2', 'c3'] });
  });

  it('leave the commands their letters', async () => {
    const { answer, keys } = await several(options(3));
    keys('1t');
    expect(await answer).toEqual({ kind: 'command', id: 'cant-tell' });
  });

  it('say how to answer, within 80 columns', async () => {
    const { screen } = await several([
      {
        id: 'a',
        title:
          'A power injector of the 802.3 kind that suits the camera, with a label that can still be read',
      },
    ]);
    expect(screen()).toContain('Enter is done');
    expect(widest(screen())).toBeLessThanOrEqual(80);
  });
});
