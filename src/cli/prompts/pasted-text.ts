import { say } from '../../messages/say.js';
import type { Terminal } from '../ask.js';
import { BEGINS, ENDS, MARKS_OFF, MARKS_ON } from './paste-marks.js';

const CTRL_C = '\u0003';
const CTRL_D = '\u0004';
const ESC = '\u001b';
/** Characters; a longer text is no screen of a computer. */
const MOST = 5_000_000;
/** Milliseconds that the rest of a mark may take behind its Esc, as with Node's own reading of keys. */
const REST_OF_MARK = 500;
/** One line end, CRLF as one. */
const END = '(?:\\r\\n|\\r(?!\\n)|\\n)';
const EMPTY_LINE_ENTERED_TWICE = new RegExp(`(?:^|${END})${END}{2}$`);
const LONGEST_ENDS = 6;

/** What has come in so far, and whether that is all. */
export interface Pasting {
  readonly text: string;
  /** `held`: an Esc came by itself. It leaves, unless the rest of a mark follows at once. */
  readonly state: 'open' | 'held' | 'done' | 'left';
}

export const NOTHING_PASTED: Pasting = { text: '', state: 'open' };
const LEFT: Pasting = { text: '', state: 'left' };

/**
 * Takes in what the terminal sent: a marked paste ends by itself, an unmarked one with Ctrl-D or with Enter twice on
 * an empty line. Esc alone, and Ctrl-C, leave it.
 */
export function pasting(so: Pasting, chunk: string): Pasting {
  if (chunk === CTRL_C || (so.state === 'held' && !goesOn(chunk))) return LEFT;
  const text = `${so.text}${chunk}`.slice(0, MOST);
  if (chunk === ESC) return { text, state: 'held' };
  const begins = text.indexOf(BEGINS);
  const ends = text.indexOf(ENDS, Math.max(0, begins));
  if (begins >= 0 && ends >= 0) return { text: text.slice(begins + BEGINS.length, ends), state: 'done' };
  if (begins < 0 && chunk.endsWith(CTRL_D)) return { text: text.slice(0, -1), state: 'done' };
  const isEnter = chunk === '\r' || chunk === '\n';
  if (begins < 0 && isEnter && isEnteredTwice(text)) return { text, state: 'done' };
  return text.length < MOST ? { text, state: 'open' } : ended({ text, state: 'open' });
}

/** Where nothing more comes: what came is all, with or without the mark at its end. */
export function ended({ text, state }: Pasting): Pasting {
  if (state === 'held') return LEFT;
  const begins = text.indexOf(BEGINS);
  return { text: begins < 0 ? text : text.slice(begins + BEGINS.length), state: 'done' };
}

/** Whether a mark goes on with this behind its Esc. */
function goesOn(chunk: string): boolean {
  const sent = `${ESC}${chunk}`;
  return [BEGINS, ENDS].some((mark) => sent.startsWith(mark) || mark.startsWith(sent));
}

function isEnteredTwice(text: string): boolean {
  const end = text.slice(-LONGEST_ENDS);
  return EMPTY_LINE_ENTERED_TWICE.test(end.length < text.length ? `.${end}` : end);
}

/** Reads a pasted text from the terminal, of any number of lines; `undefined` where nothing came. It is not shown. */
export function pastedText({ input, output }: Terminal): Promise<string | undefined> {
  output.write(`${say('paste.say')}\n${MARKS_ON}`);
  return new Promise((resolve) => {
    let now = NOTHING_PASTED;
    let waiting: NodeJS.Timeout | undefined;
    const become = (next: Pasting): void => {
      clearTimeout(waiting);
      now = next;
      if (now.state === 'held') waiting = setTimeout(end, REST_OF_MARK);
      if (now.state === 'open' || now.state === 'held') return;
      input.off('data', take);
      input.off('end', end);
      input.setRawMode?.(false);
      input.pause();
      output.write(MARKS_OFF);
      resolve(now.state === 'done' && now.text.trim() !== '' ? now.text : undefined);
    };
    const take = (chunk: Buffer | string): void => become(pasting(now, chunk.toString()));
    const end = (): void => become(ended(now));
    input.setRawMode?.(true);
    input.setEncoding('utf8');
    input.on('data', take);
    input.once('end', end);
    input.resume();
  });
}
