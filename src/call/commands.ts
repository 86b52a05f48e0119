import type { Call } from './call.js';
import type { Screen } from './screen.js';

/** The commands of a call, each with the letter that gives it in every face. */
export const COMMAND_KEYS = {
  'cant-tell': 't',
  back: 'b',
  change: 'c',
  told: 'a',
  note: 'n',
  paste: 'p',
  here: 'r',
  why: 'w',
  how: 'h',
  other: 'o',
  view: 'v',
  stop: 's',
} as const;

export type CommandId = keyof typeof COMMAND_KEYS;

/** What a face can do besides: take a text in, look at the computer that it runs on, take what was told unasked. */
export interface FaceCan {
  readonly paste: boolean;
  readonly here: boolean;
  readonly told: boolean;
}

/** The commands that make sense at the present step, in the order in which they are shown. */
export function commandsFor({ step, state }: Call, screen: Screen, can: FaceCan): readonly CommandId[] {
  const ids: CommandId[] = [];
  const isAsking = step.kind === 'ask' || step.kind === 'read-back';
  if (step.kind === 'ask') ids.push('cant-tell');
  if (state.events.length > 0) ids.push('back', 'change');
  if (can.told) ids.push('told');
  ids.push('note');
  if (can.paste && isAsking) ids.push('paste');
  // On the desk's own computer there is no site to see.
  if (can.here && isAsking && state.header.role === 'site') ids.push('here');
  ids.push('why');
  if (screen.reads.length > 0) ids.push('how');
  if (screen.mayPass) ids.push('other');
  return [...ids, 'view', 'stop'];
}
