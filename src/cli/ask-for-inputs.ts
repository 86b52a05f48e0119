import type { Given, Topic, TopicInput } from '../arithmetic/topics/topic.js';
import { inWords, say } from '../messages/say.js';
import type { Ask, Terminal } from './ask.js';
import { lines } from './paint.js';

/**
 * Asks for what a sum has not been given, one input after the other, and again for one that it cannot
 * read. Gives all that was given. Rejects with inquirer's ExitPromptError on Ctrl-C.
 */
export async function askForInputs(topic: Topic, start: Given, terminal: Terminal, ask: Ask): Promise<Given> {
  let given = start;
  const put = async (input: TopicInput): Promise<void> => {
    const typed = await askOne(topic, input, given, terminal, ask);
    const { [input.id]: _old, ...others } = given;
    given = typed === undefined ? others : { ...others, [input.id]: typed };
  };
  for (const input of topic.inputs) if (start[input.id] === undefined) await put(input);
  for (;;) {
    const result = topic.reckon(given);
    const wrong = result.ok ? undefined : topic.inputs.find(({ id }) => id === result.input);
    if (result.ok || wrong === undefined) return given;
    tell(terminal, inWords(result.problem));
    await put(wrong);
  }
}

async function askOne(
  topic: Topic,
  input: TopicInput,
  given: Given,
  terminal: Terminal,
  ask: Ask,
): Promise<string | undefined> {
  tell(terminal, say(input.ask));
  if (input.choices) {
    const choices = input.choices.map(({ id, title }) => ({ id, title: say(title) }));
    const unknown = { id: '', title: say('cli.command.cant-tell') };
    const reply = await ask(
      { kind: 'choice', choices: input.optional ? [...choices, unknown] : choices },
      [],
    );
    return reply.kind === 'one' && reply.id !== '' ? reply.id : undefined;
  }
  if (input.optional) tell(terminal, say('reckon.may-be-left-out'));
  const reply = await ask({ kind: 'field' }, [], (text) => wrong(topic, input, given, text));
  return reply.kind === 'text' && reply.text.trim() !== '' ? reply.text : undefined;
}

/** What is wrong with one input, as far as the sum gets before it misses another. */
function wrong(topic: Topic, { id, optional }: TopicInput, given: Given, text: string): string | undefined {
  if (optional && text.trim() === '') return undefined;
  const result = topic.reckon({ ...given, [id]: text });
  return !result.ok && result.input === id ? inWords(result.problem) : undefined;
}

function tell(terminal: Terminal, text: string): void {
  terminal.output.write(`${lines(text, terminal.output.columns)}\n`);
}
