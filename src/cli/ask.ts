import { createPromptModule } from 'inquirer';
import type { Input } from '../call/screen.js';
import type { Paint } from './paint.js';
import { choicePrompt } from './prompts/choice-prompt.js';
import { fieldPrompt } from './prompts/field-prompt.js';
import { MARKS_OFF, MARKS_ON } from './prompts/paste-marks.js';
import type { Command, Reply } from './prompts/reply.js';
import { severalPrompt } from './prompts/several-prompt.js';

/** The terminal a call is held on. Talk goes to `output`; results go elsewhere. */
export interface Terminal {
  readonly input: NodeJS.ReadStream;
  readonly output: NodeJS.WriteStream;
  readonly paint: Paint;
}

/** Puts one prompt and gives what came of it. Rejects with inquirer's ExitPromptError on Ctrl-C. */
export type Ask = (
  input: Input,
  commands: readonly Command[],
  wrong?: (text: string) => string | undefined,
  holdsMore?: (text: string) => boolean,
) => Promise<Reply>;

/** Prompts on a terminal, through inquirer. */
export function askOn({ input, output, paint }: Terminal): Ask {
  const prompt = createPromptModule({ input, output });
  prompt.registerPrompt('whydark-choice', choicePrompt);
  prompt.registerPrompt('whydark-several', severalPrompt);
  prompt.registerPrompt('whydark-field', fieldPrompt);
  return async (asked, commands, wrong = () => undefined, holdsMore = () => false) => {
    const takesPaste = asked.kind === 'field' && commands.some(({ id }) => id === 'paste');
    const common = {
      type: `whydark-${asked.kind}`,
      name: 'reply',
      message: '',
      commands,
      paint,
      columns: output.columns,
    };
    const question =
      asked.kind === 'field'
        ? { ...common, was: asked.was, wrong, holdsMore }
        : { ...common, choices: asked.choices };
    if (takesPaste) output.write(MARKS_ON);
    try {
      const answers: { reply: Reply } = await prompt([question]);
      return answers.reply;
    } finally {
      if (takesPaste) output.write(MARKS_OFF);
    }
  };
}
