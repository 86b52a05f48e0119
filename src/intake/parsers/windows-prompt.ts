import { HAS } from '../looks.js';
import type { Parser } from '../parser.js';
import { firstWhere } from '../unix/walk.js';
import { isWindowsPrompt } from '../windows/prompt.js';

/** The prompt of a Windows console and what was typed behind it: understood, and nothing taken from it. */
export const windowsPrompt: Parser = {
  name: 'windows-prompt',
  source: 'prompt of cmd.exe ($P$G) and of PowerShell, as in published outputs',
  claims: (lines, from) => firstWhere(lines, from, isWindowsPrompt, HAS.signs, HAS.blank),
  take: (lines, from) => {
    const number = lines[from]?.number;
    return { seen: {}, lines: new Set(number === undefined ? [] : [number]) };
  },
};
