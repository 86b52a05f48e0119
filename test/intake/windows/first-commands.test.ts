import { describe, expect, test } from 'vitest';
import { linesOf } from '../../../src/intake/clean.js';
import { readAlone, samplesOf, shown } from '../unix/shown.js';
import { FIRST_COMMANDS } from './first-commands.js';

describe.each(FIRST_COMMANDS)('$name', (parser) => {
  test('has samples and says who documents its format', () => {
    expect(samplesOf(parser.name).length).toBeGreaterThan(0);
    expect(parser.source).not.toBe('');
  });

  test.each(samplesOf(parser.name))('reads $name', ({ text, seen, unread, source }) => {
    const lines = linesOf(text);
    const read = readAlone(parser, lines);
    expect(shown(read.seen)).toEqual(seen);
    const left = lines.filter((line) => line.text.trim() !== '' && !read.understood.has(line.number));
    expect(left.map((line) => line.number)).toEqual(unread);
    expect(source).toMatch(/^(?:typed from memory of the format|taken from .+ on .+|.+, adapted)$/);
  });
});
