import { stripVTControlCharacters } from 'node:util';
import { render } from '@inquirer/testing';
import type { Option } from '../../../src/call/screen.js';
import type { Paint } from '../../../src/cli/paint.js';
import { choicePrompt } from '../../../src/cli/prompts/choice-prompt.js';
import { fieldPrompt } from '../../../src/cli/prompts/field-prompt.js';
import type { Command, Reply } from '../../../src/cli/prompts/reply.js';
import { severalPrompt } from '../../../src/cli/prompts/several-prompt.js';

export const PLAIN: Paint = (_, text) => text;

export const COMMANDS: readonly Command[] = [
  { key: 't', id: 'cant-tell', title: "can't tell" },
  { key: 'b', id: 'back', title: 'back' },
  { key: 's', id: 'stop', title: 'stop' },
];

/** Choices c1, c2, ... */
export function options(count: number): readonly Option[] {
  return Array.from({ length: count }, (_, at) => ({ id: `c${at + 1}`, title: `Choice number ${at + 1}` }));
}

/** A prompt on a terminal that is none. */
export interface Rendered {
  readonly answer: Promise<Reply>;
  /** Types keys as a terminal sends them. */
  readonly keys: (text: string) => void;
  /** Presses a key by its name, such as `escape` or `down`. */
  readonly press: (name: string) => void;
  /** What stands on the screen, colours left out. */
  readonly screen: () => string;
  /** The last thing that was drawn, as it was sent. */
  readonly raw: () => string;
}

type Given = { readonly columns?: number; readonly commands?: readonly Command[]; readonly paint?: Paint };
const COMMON = { columns: 80, commands: COMMANDS, paint: PLAIN };

function shown({
  answer,
  input,
  events,
  getScreen,
}: Awaited<ReturnType<typeof render<Reply, object>>>): Rendered {
  // One that a test leaves open is closed by force when the worker ends, which is nobody's error.
  answer.catch(() => {});
  return {
    answer,
    keys: (text) => void input.write(text),
    press: (name) => events.keypress(name),
    screen: () => stripVTControlCharacters(getScreen()),
    raw: () => getScreen({ raw: true }),
  };
}

export const choice = async (choices: readonly Option[], given: Given = {}): Promise<Rendered> =>
  shown(
    await render<Reply, object>((config, context) => choicePrompt(config as never, context), {
      ...COMMON,
      ...given,
      choices,
    }),
  );

export const several = async (choices: readonly Option[], given: Given = {}): Promise<Rendered> =>
  shown(
    await render<Reply, object>((config, context) => severalPrompt(config as never, context), {
      ...COMMON,
      ...given,
      choices,
    }),
  );

export const field = async (
  given: Given & {
    readonly was?: string;
    readonly wrong?: (text: string) => string | undefined;
    readonly holdsMore?: (text: string) => boolean;
  } = {},
): Promise<Rendered> =>
  shown(
    await render<Reply, object>((config, context) => fieldPrompt(config as never, context), {
      wrong: () => undefined,
      ...COMMON,
      ...given,
    }),
  );

/** The widest line, in columns. */
export function widest(text: string): number {
  return Math.max(
    ...stripVTControlCharacters(text)
      .split('\n')
      .map((line) => [...line].length),
  );
}
