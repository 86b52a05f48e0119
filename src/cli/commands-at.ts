import { COMMAND_KEYS, type CommandId } from '../call/commands.js';
import { say } from '../messages/say.js';
import type { Command } from './prompts/reply.js';

/** The commands that make sense at a step, each with its letter. */
export function commandsAt(ids: readonly CommandId[]): readonly Command[] {
  return ids.map((id) => ({ id, key: COMMAND_KEYS[id], title: say(`cli.command.${id}`) }));
}
