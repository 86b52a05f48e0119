import { createPrompt, isDownKey, isEnterKey, isUpKey, useKeypress, useState } from '@inquirer/core';
import type { Option } from '../../call/screen.js';
import { say } from '../../messages/say.js';
import { lines, type Paint } from '../paint.js';
import { type Command, commandFor, commandLine, type Reply } from './reply.js';

export interface ChoiceConfig {
  readonly choices: readonly Option[];
  readonly commands: readonly Command[];
  readonly paint: Paint;
  readonly columns: number | undefined;
}

/** The key of the nth choice: 1 to 9, then 0 for the tenth. More than ten have no key and are reached by arrow. */
export function keyOf(at: number): string {
  return at < 9 ? String(at + 1) : at === 9 ? '0' : ' ';
}

/** One of a few: a digit answers at once, a letter commands, arrows and Enter work too. */
export const choicePrompt = createPrompt<Reply, ChoiceConfig>((config, done) => {
  const { choices, commands, paint, columns } = config;
  const [cursor, setCursor] = useState(0);
  const [chosen, setChosen] = useState<string | undefined>(undefined);
  useKeypress((key, rl) => {
    rl.clearLine(0);
    if (key.ctrl) return;
    const finish = (reply: Reply, title: string): void => {
      setChosen(title);
      done(reply);
    };
    const at = choices.findIndex((_, index) => keyOf(index) === key.name);
    const picked = choices[isEnterKey(key) ? cursor : at];
    if (picked) return finish({ kind: 'one', id: picked.id }, picked.title);
    if (isUpKey(key)) return setCursor((cursor + choices.length - 1) % choices.length);
    if (isDownKey(key)) return setCursor((cursor + 1) % choices.length);
    const command = commandFor(commands, key.name);
    if (command) finish(command, commands.find((one) => one.key === key.name)?.title ?? '');
  });
  if (chosen !== undefined) return paint('cyan', say('cli.answered', { answer: chosen }));
  const list = choices.map((choice, index) => {
    const mark = index === cursor ? '>' : ' ';
    const line = lines(choice.title, columns, '     ').trimStart();
    return `${mark} ${paint('bold', keyOf(index))}  ${line}`;
  });
  return `${list.join('\n')}\n${paint('dim', commandLine(commands, columns))}`;
});
