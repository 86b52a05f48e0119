import { describe, expect, it } from 'vitest';
import { field, widest } from './rendered.js';

const noTen = (text: string): string | undefined =>
  text.startsWith('10.') ? undefined : 'Write an address that begins with 10.';

describe('a line of text', () => {
  it('is answered by Enter', async () => {
    const { answer, keys, screen } = await field();
    keys('all black');
    expect(screen()).toContain('> all black');
    keys('\r');
    expect(await answer).toEqual({ kind: 'text', text: 'all black' });
    expect(screen()).toBe('= all black');
  });

  it('can be mended before it is given', async () => {
    const { answer, keys } = await field();
    keys('10.77.5.99\u007f\r');
    expect(await answer).toEqual({ kind: 'text', text: '10.77.5.9' });
  });

  it('takes letters of the commands as text', async () => {
    const { answer, keys } = await field();
    keys('tbs\r');
    expect(await answer).toEqual({ kind: 'text', text: 'tbs' });
  });
});

describe('Esc', () => {
  it('opens the commands, whose letters then command', async () => {
    const { answer, keys, press, screen } = await field();
    expect(screen()).not.toContain("t can't tell");
    press('escape');
    expect(screen()).toContain("t can't tell · b back · s stop");
    keys('b');
    expect(await answer).toEqual({ kind: 'command', id: 'back' });
  });

  it('closes them again, and keeps what was typed', async () => {
    const { answer, keys, press, screen } = await field();
    keys('172.23.');
    press('escape');
    keys('q');
    expect(screen()).toContain('> 172.23.\n');
    press('escape');
    expect(screen()).not.toContain("t can't tell");
    keys('40.57\r');
    expect(await answer).toEqual({ kind: 'text', text: '172.23.40.57' });
  });

  it('leaves Ctrl and a letter no command', async () => {
    const { answer, keys, press, screen } = await field();
    press('escape');
    keys('\u0002');
    expect(screen()).toContain("t can't tell");
    press('escape');
    keys('x\r');
    expect(await answer).toEqual({ kind: 'text', text: 'x' });
  });
});

describe('the answer it had', () => {
  it('is offered, and Tab takes it', async () => {
    const { answer, keys, screen } = await field({ was: '172.23.40.57' });
    expect(screen()).toContain('(Tab takes 172.23.40.57)');
    keys('\t');
    expect(screen()).toContain('> 172.23.40.57');
    keys('\u007f8\r');
    expect(await answer).toEqual({ kind: 'text', text: '172.23.40.58' });
  });

  it('is gone from the screen once something else is typed, and Tab then does nothing', async () => {
    const { answer, keys, screen } = await field({ was: '172.23.40.57' });
    keys('10.');
    expect(screen()).not.toContain('Tab takes');
    keys('\t1\r');
    expect(await answer).toEqual({ kind: 'text', text: '10.1' });
  });

  it('is not offered where there is none', async () => {
    const { answer, keys, screen } = await field();
    expect(screen()).not.toContain('Tab takes');
    keys('\tx\r');
    expect(await answer).toEqual({ kind: 'text', text: 'x' });
  });
});

describe('an answer that does not fit', () => {
  it('is told, and the text stays to be mended', async () => {
    const { answer, keys, screen } = await field({ wrong: noTen });
    keys('11.77.5.9\r');
    expect(screen()).toContain('> 11.77.5.9');
    expect(screen()).toContain('Write an address that begins with 10.');
    keys('\u007f'.repeat(8));
    expect(screen()).not.toContain('Write an address');
    keys('0.77.5.9\r');
    expect(await answer).toEqual({ kind: 'text', text: '10.77.5.9' });
  });
});

describe('what is typed', () => {
  it('draws no control characters, and is given as it was typed', async () => {
    const { answer, keys, raw } = await field({ was: 'old\u001b[2J\u202e' });
    expect(raw()).not.toContain('\u001b[2J');
    expect(raw()).not.toContain('\u202e');
    keys('a\u202eb');
    expect(raw()).not.toContain('\u202e');
    expect(raw()).toContain('a?b');
    keys('\r');
    expect(await answer).toEqual({ kind: 'text', text: 'a\u202eb' });
  });

  it('may be very long: it is kept whole, drawn in part, and each key costs the same', async () => {
    const { answer, keys, screen } = await field();
    const long = 'all black since Tuesday '.repeat(2000);
    keys(long);
    expect(screen().length).toBeLessThan(400);
    expect(screen()).toContain('…');
    keys('\u007f'.repeat(130));
    keys('\r');
    expect(await answer).toEqual({ kind: 'text', text: long.slice(0, -130) });
  });

  it('may have been a megabyte before, too', async () => {
    const was = 'x'.repeat(1024 * 1024);
    const { answer, keys, screen } = await field({ was });
    expect(screen().length).toBeLessThan(400);
    keys('\t');
    expect(screen().length).toBeLessThan(400);
    keys('\r');
    expect(await answer).toEqual({ kind: 'text', text: was });
  });

  it('keeps the hint within 80 columns', async () => {
    const { screen } = await field({ wrong: () => 'word '.repeat(40), was: 'short' });
    expect(widest(screen())).toBeLessThanOrEqual(80);
  });
});

describe('what is pasted into the line', () => {
  const begins = '\u001b[200~';
  const ends = '\u001b[201~';

  it('answers nothing by its line ends, and comes whole', async () => {
    const { answer, keys } = await field({});
    keys(`${begins}eth0: 172.23.40.57\r\nmask 255.255.255.0\n${ends}`);
    expect(await answer).toEqual({ kind: 'pasted', text: 'eth0: 172.23.40.57\r\nmask 255.255.255.0\n' });
  });

  it('is typed text where it is one line only', async () => {
    const { answer, keys, screen } = await field();
    keys(`${begins}172.23.40.57\n${ends}`);
    expect(screen()).toContain('> 172.23.40.57');
    keys('\r');
    expect(await answer).toEqual({ kind: 'text', text: '172.23.40.57' });
  });

  it('is taken as more than an answer where it holds more, and it is wrong as one', async () => {
    const { answer, keys } = await field({
      wrong: () => 'Write one address.',
      holdsMore: (text) => text.includes('mask'),
    });
    keys('ip 172.23.40.57 mask 255.255.255.0\r');
    expect(await answer).toEqual({ kind: 'pasted', text: 'ip 172.23.40.57 mask 255.255.255.0' });
  });
});
