import { styleText } from 'node:util';
import wrapAnsi from 'wrap-ansi';

type Style = 'bold' | 'dim' | 'cyan' | 'yellow' | 'green' | 'red';

/** Colours text, or leaves it alone: colour never says anything that the words do not. */
export type Paint = (style: Style, text: string) => string;

/** Paint for a stream: none where it is no terminal, NO_COLOR is set (to anything) or the terminal is dumb. */
export function paintFor(stream: { readonly isTTY?: boolean }, env: NodeJS.ProcessEnv): Paint {
  const plain = stream.isTTY !== true || Boolean(env.NO_COLOR) || env.TERM === 'dumb';
  return plain ? (_, text) => text : (style, text) => styleText(style, text, { validateStream: false });
}

/** Holds words together where lines are broken; printed as a plain space. */
export const NO_BREAK = '\u00a0';

/** Lines are broken at this many columns, or earlier on a narrower screen. */
const WIDEST = 80;

/** What a caller typed, or a file holds, must not steer the terminal: control and direction characters. */
const UNFIT = /(?!\n)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu;

/** Breaks text into lines that fit, each after an indent. */
export function lines(text: string, columns: number | undefined, indent = ''): string {
  const width = Math.max(20, Math.min(columns ?? WIDEST, WIDEST) - indent.length);
  return wrapAnsi(text.replace(UNFIT, '?'), width, { hard: true })
    .split('\n')
    .map((line) => `${indent}${line}`)
    .join('\n')
    .replaceAll(NO_BREAK, ' ');
}
