import { say } from '../messages/say.js';
import type { Command } from './prompts/reply.js';

const KEYS = {
  'cant-tell': 't',
  back: 'b',
  change: 'c',
  note: 'n',
  paste: 'p',
  here: 'r',
  why: 'w',
  how: 'h',
  other: 'o',
  view: 'v',
  stop: 's',
} as const;

export type CommandId = keyof typeof KEYS;

/** The commands that make sense at a step, each with its letter. */
export function commandsAt(ids: readonly CommandId[]): readonly Command[] {
  return ids.map((id) => ({ id, key: KEYS[id], title: say(`cli.command.${id}`) }));
}
