import { PassThrough } from 'node:stream';
import type { Input } from '../../src/call/screen.js';
import type { Ask, Terminal } from '../../src/cli/ask.js';
import type { Command, Reply } from '../../src/cli/prompts/reply.js';
import { PLAIN } from './prompts/rendered.js';

/** A terminal that is none: what is told is kept. */
export function quietTerminal(): { readonly terminal: Terminal; readonly told: () => string } {
  const output = Object.assign(new PassThrough(), { columns: 80, isTTY: true });
  let text = '';
  output.on('data', (chunk: Buffer) => {
    text += chunk.toString();
  });
  const terminal = { input: new PassThrough(), output, paint: PLAIN } as unknown as Terminal;
  return { terminal, told: () => text };
}

/** One prompt that was put. */
export interface Put {
  readonly input: Input;
  readonly commands: readonly Command[];
  readonly wrong: ((text: string) => string | undefined) | undefined;
}

export type Answerer = Reply | 'ctrl-c' | ((put: Put) => Reply);

export const one = (id: string): Reply => ({ kind: 'one', id });
export const some = (...ids: readonly string[]): Reply => ({ kind: 'several', ids });
export const text = (words: string): Reply => ({ kind: 'text', text: words });
export const command = (id: string): Reply => ({ kind: 'command', id });

/** Answers prompts from a list, one after the other, and keeps what was put. Throws where the list is too short. */
export function asking(answers: readonly Answerer[]): {
  readonly ask: Ask;
  readonly put: readonly Put[];
  readonly left: () => number;
} {
  const put: Put[] = [];
  const queue = [...answers];
  const ask: Ask = async (input, commands, wrong) => {
    const now: Put = { input, commands, wrong };
    put.push(now);
    const answer = queue.shift();
    if (answer === undefined) throw new Error(`nothing is left to answer ${JSON.stringify(input)}`);
    if (answer === 'ctrl-c')
      throw Object.assign(new Error('User force closed the prompt with SIGINT'), { name: 'ExitPromptError' });
    return typeof answer === 'function' ? answer(now) : answer;
  };
  return { ask, put, left: () => queue.length };
}
