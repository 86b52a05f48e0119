import { say } from '../../messages/say.js';
import type { Terminal } from '../ask.js';
import { BEGINS, ENDS, MARKS_OFF, MARKS_ON } from './paste-marks.js';

const CTRL_C = '\u0003';
const CTRL_D = '\u0004';
const ESC = '\u001b';
/** Characters; a longer text is no screen of a computer. */
const MOST = 5_000_000;

/** What has come in so far, and whether that is all. */
export interface Pasting {
  readonly text: string;
  readonly state: 'open' | 'done' | 'left';
}

export const NOTHING_PASTED: Pasting = { text: '', state: 'open' };

/**
 * Takes in what the terminal sent: a marked paste ends by itself, an unmarked one with Ctrl-D or with Enter twice on
 * an empty line. Esc alone, and Ctrl-C, leave it.
 */
export function pasting(so: Pasting, chunk: string): Pasting {
  if (chunk === ESC || chunk === CTRL_C) return { text: '', state: 'left' };
  const text = `${so.text}${chunk}`.slice(0, MOST);
  const begins = text.indexOf(BEGINS);
  const ends = text.indexOf(ENDS, Math.max(0, begins));
  if (begins >= 0 && ends >= 0) return { text: text.slice(begins + BEGINS.length, ends), state: 'done' };
  if (begins < 0 && chunk.endsWith(CTRL_D)) return { text: text.slice(0, -1), state: 'done' };
  const isEnter = chunk === '\r' || chunk === '\n';
  if (begins < 0 && isEnter && /(?:^|\r|\n)[\r\n][\r\n]$/.test(`\n${text}`)) return { text, state: 'done' };
  return { text, state: text.length < MOST ? 'open' : 'done' };
}

/** Reads a pasted text from the terminal, of any number of lines; `undefined` where nothing came. It is not shown. */
export function pastedText({ input, output }: Terminal): Promise<string | undefined> {
  output.write(`${say('paste.say')}\n${MARKS_ON}`);
  return new Promise((resolve) => {
    let now = NOTHING_PASTED;
    const take = (chunk: Buffer | string): void => {
      now = pasting(now, chunk.toString());
      if (now.state === 'open') return;
      input.off('data', take);
      input.off('end', leave);
      input.setRawMode?.(false);
      input.pause();
      output.write(MARKS_OFF);
      resolve(now.state === 'done' && now.text.trim() !== '' ? now.text : undefined);
    };
    const leave = (): void => take(CTRL_D);
    input.setRawMode?.(true);
    input.setEncoding('utf8');
    input.on('data', take);
    input.once('end', leave);
    input.resume();
  });
}
