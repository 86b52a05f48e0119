import { describe, expect, it } from 'vitest';
import { lines, paintFor } from '../../src/cli/paint.js';
import { widest } from './prompts/rendered.js';

const TERMINAL = { isTTY: true };

describe('colour', () => {
  it.each<[string, { readonly isTTY?: boolean }, NodeJS.ProcessEnv, boolean]>([
    ['on a terminal', TERMINAL, { TERM: 'xterm' }, true],
    ['on a terminal with an empty NO_COLOR, which says nothing', TERMINAL, { NO_COLOR: '' }, true],
    ['with NO_COLOR set to anything', TERMINAL, { NO_COLOR: '0' }, false],
    ['on a dumb terminal', TERMINAL, { TERM: 'dumb' }, false],
    ['in a file or a pipe', { isTTY: false }, {}, false],
    ['where nobody knows what it is', {}, {}, false],
  ])('%s', (_, stream, env, coloured) => {
    const text = paintFor(stream, env)('bold', 'Say');
    expect(text).toBe(coloured ? '\u001b[1mSay\u001b[22m' : 'Say');
  });
});

describe('lines', () => {
  it.each([undefined, 200, 80, 40, 20])('fit a screen of %s columns, and never go past 80', (columns) => {
    const text = 'Look for a small light at the camera, cup a hand around it if the sun shines. '.repeat(4);
    const broken = lines(text, columns, '    ');
    expect(widest(broken)).toBeLessThanOrEqual(Math.min(columns ?? 80, 80) + (columns === 20 ? 4 : 0));
    expect(broken.split('\n').every((line) => line.startsWith('    '))).toBe(true);
    expect(broken.replace(/\s+/g, ' ').trim()).toBe(text.trim());
  });

  it('break a word that is too long for one', () => {
    expect(widest(lines('x'.repeat(300), 80))).toBeLessThanOrEqual(80);
  });

  it('let nothing steer the terminal', () => {
    expect(lines('a\u001b[2Jb\u0007c\u009bd\u202ee\u2028f\rg\th', 80)).toBe('a?[2Jb?c?d?e?f?g?h');
    expect(lines('one\ntwo', 80)).toBe('one\ntwo');
  });
});
