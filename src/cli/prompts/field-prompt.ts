import { createPrompt, isEnterKey, useKeypress, useRef, useState } from '@inquirer/core';
import { printable } from '../../files/printable.js';
import { say } from '../../messages/say.js';
import { lines, type Paint } from '../paint.js';
import { type Command, commandFor, commandLine, type Reply } from './reply.js';
import { added, beginningOf, EMPTY, type Typed, textOf } from './typed.js';

export interface FieldConfig {
  /** The answer it had, offered by Tab. */
  readonly was?: string;
  readonly commands: readonly Command[];
  readonly paint: Paint;
  readonly columns: number | undefined;
  /** What is wrong with this text, or nothing. */
  readonly wrong: (text: string) => string | undefined;
  /** Whether a text that is wrong as an answer holds more than was asked for, as a network page does. */
  readonly holdsMore?: (text: string) => boolean;
}

/** Shown of a very long line: the rest is kept, not drawn. */
const SHOWN = 200;

/** A line of text. Enter answers, Esc opens the commands and closes them again. Nothing typed is lost to an error. */
export const fieldPrompt = createPrompt<Reply, FieldConfig>((config, done) => {
  const { commands, paint, columns, was, wrong, holdsMore = () => false } = config;
  const pasting = useRef<string | undefined>(undefined);
  const typed = useRef<Typed>(EMPTY);
  const [drawn, setDrawn] = useState('');
  const [commanding, setCommanding] = useState(false);
  const [fault, setFault] = useState<string | undefined>(undefined);
  const [finished, setFinished] = useState<string | undefined>(undefined);
  useKeypress((key, rl) => {
    const restore = (line: string): void => {
      rl.clearLine(0);
      rl.write(line);
    };
    const take = (now: Typed): void => {
      if (now.line !== rl.line) restore(now.line);
      typed.current = now;
      setDrawn(shown(beginningOf(now, 2 * SHOWN)));
    };
    if (key.name === 'paste-start') {
      pasting.current = '';
      return;
    }
    if (key.name === 'paste-end') {
      const text = pasting.current ?? '';
      pasting.current = undefined;
      if (!isLong(text)) return take(added(typed.current, typed.current.line + text.trim()));
      restore(typed.current.line);
      setFinished(say('cli.command.paste'));
      return done({ kind: 'pasted', text });
    }
    if (pasting.current !== undefined) {
      pasting.current += sequenceOf(key);
      return;
    }
    if (key.name === 'escape') {
      restore(typed.current.line);
      return setCommanding(!commanding);
    }
    if (commanding) {
      restore(typed.current.line);
      const command = key.ctrl ? undefined : commandFor(commands, key.name);
      if (!command) return;
      setFinished(commands.find((one) => one.key === key.name)?.title ?? '');
      return done(command);
    }
    if (isEnterKey(key)) {
      const text = textOf(typed.current);
      const says = wrong(text);
      if (says === undefined) {
        setFinished(shown(text.slice(0, 2 * SHOWN)));
        return done({ kind: 'text', text });
      }
      if (holdsMore(text)) {
        setFinished(shown(text.slice(0, 2 * SHOWN)));
        return done({ kind: 'pasted', text });
      }
      restore(typed.current.line);
      return setFault(says);
    }
    if (key.name === 'tab') {
      const offered = was !== undefined && textOf(typed.current) === '';
      return take(offered ? added(EMPTY, was) : { ...typed.current });
    }
    setFault(undefined);
    take(added(typed.current, rl.line, key.name === 'backspace'));
  });
  if (finished !== undefined) return paint('cyan', say('cli.answered', { answer: finished }));
  const hint =
    was === undefined || drawn !== ''
      ? ''
      : paint('dim', ` ${say('cli.was', { answer: shown(was.slice(0, 2 * SHOWN)) })}`);
  const foot = commanding ? commandLine(commands, columns) : say('cli.esc');
  const below = [...(fault === undefined ? [] : [paint('red', lines(fault, columns))]), paint('dim', foot)];
  return [`> ${drawn}${hint}`, below.join('\n')];
});

/** More than one line: no answer to a question, but what a screen shows. */
function isLong(text: string): boolean {
  return /\S[^\S\r\n]*[\r\n]+\s*\S/.test(text);
}

/** The characters of a key, which Node keeps beside its name. */
function sequenceOf(key: object): string {
  return 'sequence' in key && typeof key.sequence === 'string' ? key.sequence : '';
}

function shown(text: string): string {
  return printable(text, SHOWN);
}
