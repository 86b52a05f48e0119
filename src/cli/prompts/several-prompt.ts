import {
  createPrompt,
  isDownKey,
  isEnterKey,
  isSpaceKey,
  isUpKey,
  useKeypress,
  useState,
} from '@inquirer/core';
import { say } from '../../messages/say.js';
import { lines } from '../paint.js';
import { type ChoiceConfig, keyOf } from './choice-prompt.js';
import { commandFor, commandLine, type Reply } from './reply.js';

/** Any of a few: digits tick and untick, Enter is done, a letter commands. */
export const severalPrompt = createPrompt<Reply, ChoiceConfig>((config, done) => {
  const { choices, commands, paint, columns } = config;
  const [cursor, setCursor] = useState(0);
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const [finished, setFinished] = useState<string | undefined>(undefined);
  const toggle = (id: string): void =>
    setTicked(ticked.includes(id) ? ticked.filter((one) => one !== id) : [...ticked, id]);
  useKeypress((key, rl) => {
    rl.clearLine(0);
    if (key.ctrl) return;
    if (isEnterKey(key)) {
      const titles = choices.filter(({ id }) => ticked.includes(id)).map(({ title }) => title);
      setFinished(titles.length > 0 ? titles.join(', ') : say('call.none-of-these'));
      done({ kind: 'several', ids: choices.map(({ id }) => id).filter((id) => ticked.includes(id)) });
      return;
    }
    const at = isSpaceKey(key) ? cursor : choices.findIndex((_, index) => keyOf(index) === key.name);
    const picked = choices[at];
    if (picked) return toggle(picked.id);
    if (isUpKey(key)) return setCursor((cursor + choices.length - 1) % choices.length);
    if (isDownKey(key)) return setCursor((cursor + 1) % choices.length);
    const command = commandFor(commands, key.name);
    if (command) {
      setFinished(commands.find((one) => one.key === key.name)?.title ?? '');
      done(command);
    }
  });
  if (finished !== undefined) return paint('cyan', say('cli.answered', { answer: finished }));
  const list = choices.map((choice, index) => {
    const box = ticked.includes(choice.id) ? '[x]' : '[ ]';
    const line = lines(choice.title, columns, '         ').trimStart();
    return `${index === cursor ? '>' : ' '} ${paint('bold', keyOf(index))}  ${box} ${line}`;
  });
  const foot = `${say('cli.several')}\n${commandLine(commands, columns)}`;
  return `${list.join('\n')}\n${paint('dim', foot)}`;
});
