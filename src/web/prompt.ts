import type { Call } from '../call/call.js';
import { type CommandId, commandsFor } from '../call/commands.js';
import { misfitOf } from '../call/misfit.js';
import { checkOf, type Input, questionScreen, type Screen, screenOf } from '../call/screen.js';
import { say } from '../messages/say.js';
import { pastingSays } from './pasting.js';
import type { Mode } from './state.js';

/** What is asked now, whatever asks it. */
export interface Prompt {
  /** Another one for everything else that is asked. */
  readonly key: string;
  readonly screen: Omit<Screen, 'path' | 'mayPass'>;
  /** What is wrong with a typed text, in words; `undefined` where nothing is. */
  readonly wrong: (text: string) => string | undefined;
  readonly commands: readonly CommandId[];
}

const NOTHING = { cautions: [], say: [], help: [], why: [], sums: [], reads: [] } as const;
const LEAVE: readonly CommandId[] = ['back'];

/** What is asked in this mode. A text to paste and an answer to pick have parts of their own. */
export function promptOf(call: Call, mode: Exclude<Mode, { kind: 'pick' }>): Prompt {
  const ask = (
    part: Partial<Screen> & Pick<Screen, 'heading' | 'input'>,
    more: Partial<Prompt> = {},
  ): Prompt => ({
    key: `${mode.kind}:${call.state.events.length}`,
    screen: { ...NOTHING, ...part },
    wrong: () => undefined,
    commands: LEAVE,
    ...more,
  });
  switch (mode.kind) {
    case 'step': {
      const { step } = call;
      const screen = screenOf(call);
      return ask(screen, {
        wrong: (text) => (step.kind === 'ask' ? misfitOf(call, step.question, text) : undefined),
        commands: commandsFor(call, screen, { paste: true, here: false, told: true }),
      });
    }
    case 'change': {
      const { question: id } = mode;
      const title = call.rules.questions.find((one) => one.id === id)?.title ?? id;
      return ask(
        { heading: say('page.restate', { title }), ...questionScreen(call, id) },
        { key: `change:${id}`, wrong: (text) => misfitOf(call, id, text), commands: ['cant-tell', 'back'] },
      );
    }
    case 'check':
      return ask(checkOf(call, mode.remedy), { key: `check:${mode.remedy}` });
    case 'note':
      return ask({
        heading: say('page.note'),
        say: [],
        help: [say('cli.note.say')],
        input: { kind: 'field' },
      });
    case 'told':
      return ask({
        heading: say('page.told'),
        help: [say('page.told-say')],
        say: [],
        input: { kind: 'field' },
      });
    case 'stop':
      return ask({
        heading: say('cli.stop.heading'),
        input: choice(
          (['ticket', 'later', 'back'] as const).map((id) => ({ id, title: say(`cli.stop.${id}`) })),
        ),
      });
    case 'forget':
      return ask({
        heading: say('page.forget-sure'),
        input: choice((['no', 'yes'] as const).map((id) => ({ id, title: say(`page.forget-${id}`) }))),
      });
    case 'paste': {
      const { pasting } = mode;
      if (pasting.stage === 'text')
        return ask({ heading: say('page.paste'), help: [say('page.paste-say')], input: { kind: 'field' } });
      const { found, say: words, choices } = pastingSays(call, pasting);
      const left = pasting.stage === 'whose' ? pasting.left.length : 0;
      return ask(
        { heading: words, sums: found, input: choice(choices) },
        { key: `paste:${pasting.stage}:${left}` },
      );
    }
  }
}

function choice(choices: Extract<Input, { kind: 'choice' }>['choices']): Input {
  return { kind: 'choice', choices };
}
