import { createPrompt, isEnterKey, useKeypress, useState } from '@inquirer/core';
import { say } from '../../messages/say.js';
import { lines, type Paint } from '../paint.js';
import { type Command, commandFor, commandLine, type Reply } from './reply.js';

export interface FieldConfig {
  /** The answer it had, offered by Tab. */
  readonly was?: string;
  readonly commands: readonly Command[];
  readonly paint: Paint;
  readonly columns: number | undefined;
  /** What is wrong with this text, or nothing. */
  readonly wrong: (text: string) => string | undefined;
}

/** Shown of a very long line: the rest is kept, not drawn. */
const SHOWN = 200;

/** A line of text. Enter answers, Esc opens the commands and closes them again. Nothing typed is lost to an error. */
export const fieldPrompt = createPrompt<Reply, FieldConfig>((config, done) => {
  const { commands, paint, columns, was, wrong } = config;
  const [text, setText] = useState('');
  const [commanding, setCommanding] = useState(false);
  const [fault, setFault] = useState<string | undefined>(undefined);
  const [finished, setFinished] = useState<string | undefined>(undefined);
  useKeypress((key, rl) => {
    if (key.name === 'escape') {
      rl.clearLine(0);
      rl.write(text);
      return setCommanding(!commanding);
    }
    if (commanding) {
      rl.clearLine(0);
      rl.write(text);
      const command = commandFor(commands, key.name);
      if (!command) return;
      setFinished(commands.find((one) => one.key === key.name)?.title ?? '');
      return done(command);
    }
    if (isEnterKey(key)) {
      const says = wrong(text);
      if (says === undefined) {
        setFinished(text);
        return done({ kind: 'text', text });
      }
      rl.write(text);
      return setFault(says);
    }
    if (key.name === 'tab' && was !== undefined && text === '') {
      rl.clearLine(0);
      rl.write(was);
      return setText(was);
    }
    setText(rl.line);
    setFault(undefined);
  });
  if (finished !== undefined) return paint('cyan', say('cli.answered', { answer: shown(finished) }));
  const hint =
    was === undefined || text !== '' ? '' : paint('dim', ` ${say('cli.was', { answer: shown(was) })}`);
  const foot = commanding ? commandLine(commands, columns) : say('cli.esc');
  const below = [...(fault === undefined ? [] : [paint('red', lines(fault, columns))]), paint('dim', foot)];
  return [`> ${shown(text)}${hint}`, below.join('\n')];
});

function shown(text: string): string {
  return text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text;
}
