import { HAS } from '../looks.js';
import type { Parser } from '../parser.js';
import { isPrompt } from '../unix/prompt.js';
import { firstWhere } from '../unix/walk.js';

/** The prompt of a shell and what was typed behind it: understood, and nothing taken from it. */
export const shellPrompt: Parser = {
  name: 'shell-prompt',
  source: 'bash(1), PROMPTING; zsh and busybox from memory',
  claims: (lines, from) => firstWhere(lines, from, isPrompt, HAS.signs),
  take: (lines, from) => {
    const number = lines[from]?.number;
    return { seen: {}, lines: new Set(number === undefined ? [] : [number]) };
  },
};
