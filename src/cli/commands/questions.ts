import { say } from '../../messages/say.js';
import type { Question } from '../../rulebase/records.js';
import { rulesFor } from '../load-rules.js';
import type { Options } from '../options.js';
import { EXIT } from '../run.js';

/** `whydark questions [--json]`: every question with its id and what it can be answered with. */
export async function questions(options: Options): Promise<number> {
  const { rules, digest } = await rulesFor(options);
  if (options.json) {
    const list = rules.questions.map(
      ({ id, title, stage, prompt, help, answer, minutes, place, who, opening }) => ({
        ...{ id, title, stage, prompt, help, answer, minutes, place, who },
        ...(opening === undefined ? {} : { opening }),
      }),
    );
    const report = { format: 1, rules: { version: rules.manifest.version, digest }, questions: list };
    process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
    return EXIT.done;
  }
  for (const question of rules.questions) {
    process.stdout.write(
      `${say('cli.question', { id: question.id, prompt: question.prompt, answers: answersOf(question) })}\n`,
    );
  }
  return EXIT.done;
}

function answersOf({ answer }: Question): string {
  if ('choices' in answer) return answer.choices.map(({ id }) => id).join(', ');
  if (answer.type === 'number')
    return say('cli.question-number', { min: answer.min, max: answer.max, unit: answer.unit });
  return say(`cli.question-${answer.type}`);
}
