import type { Reckoning, Topic, TopicInput } from '../../arithmetic/topics/topic.js';
import { nearestName } from '../../call/nearest-name.js';
import { allTopics, topicNamed } from '../../call/topics.js';
import { InputFault } from '../../files/faults.js';
import { inWords, say } from '../../messages/say.js';
import { askOn, type Terminal } from '../ask.js';
import { askForInputs } from '../ask-for-inputs.js';
import type { Options } from '../options.js';
import { lines, paintFor } from '../paint.js';
import { EXIT } from '../run.js';

/** `whydark reckon [TOPIC] [--input VALUE ...] [--json | --csv]`: one sum alone; without a topic, what there is. */
export async function reckon(options: Options): Promise<number> {
  const [id, extra] = options.operands;
  if (options.csv && options.json) throw new InputFault({ id: 'reckon.csv-or-json' });
  if (id === undefined) return listTopics(options);
  if (extra !== undefined) throw new InputFault({ id: 'cli.too-many', with: { command: 'reckon', extra } });
  const topic = topicNamed(id) ?? unknownTopic(id);
  refuseStrangers(topic, options.given);
  if (options.csv && topic.hasTable !== true)
    throw new InputFault({ id: 'reckon.no-table', with: { topic: topic.id } });
  const terminal: Terminal = {
    input: process.stdin,
    output: process.stderr,
    paint: paintFor(process.stderr, process.env),
  };
  const isTerminal = process.stdin.isTTY && process.stderr.isTTY;
  try {
    const given = isTerminal
      ? await askForInputs(topic, options.given, terminal, askOn(terminal))
      : options.given;
    return report(topic, reckoned(topic, given), options);
  } catch (error) {
    if (!(error instanceof Error) || error.name !== 'ExitPromptError') throw error;
    return EXIT.interrupted;
  }
}

function listTopics({ json, csv, given }: Options): number {
  if (csv) throw new InputFault({ id: 'reckon.csv-topic' });
  const [stray] = Object.keys(given);
  if (stray !== undefined) throw new InputFault({ id: 'reckon.topic-wanted', with: { option: stray } });
  const listed = allTopics().map(({ id, title, inputs }) => ({
    id,
    title: say(title),
    inputs: inputs.map(({ id: input, ask, optional = false, choices }) => ({
      ...{ id: input, asks: say(ask), optional },
      ...(choices && { choices: choices.map((choice) => choice.id) }),
    })),
  }));
  const text = json ? JSON.stringify({ format: 1, topics: listed }, null, 2) : listing();
  process.stdout.write(`${text}\n`);
  return EXIT.done;
}

function listing(): string {
  const one = ({ id, title, inputs }: Topic): readonly string[] => [
    lines(say('reckon.topic', { id, title: say(title) }), process.stdout.columns, '  '),
    lines(inputs.map(flagOf).join(' '), process.stdout.columns, '      '),
  ];
  return [say('reckon.topics'), say('reckon.topics-inputs'), '', ...allTopics().flatMap(one)].join('\n');
}

/** In brackets where it may be left out. */
function flagOf({ id, optional }: TopicInput): string {
  return optional === true ? `[--${id}]` : `--${id}`;
}

function unknownTopic(topic: string): never {
  const near = nearestName(
    topic,
    allTopics().map(({ id }) => id),
  );
  throw new InputFault(
    near === undefined
      ? { id: 'reckon.unknown-topic', with: { topic } }
      : { id: 'reckon.unknown-topic-near', with: { topic, nearest: near } },
  );
}

/** An option of another topic would be passed over in silence. */
function refuseStrangers(topic: Topic, given: Options['given']): void {
  const stranger = Object.keys(given).find((id) => !topic.inputs.some((input) => input.id === id));
  if (stranger === undefined) return;
  const flags = topic.inputs.map(({ id }) => `--${id}`).join(', ');
  throw new InputFault({ id: 'reckon.not-of-topic', with: { option: stranger, topic: topic.id, flags } });
}

/** The sum. Throws an InputFault that names every input that is missing, or the one that cannot be read. */
function reckoned(topic: Topic, given: Options['given']): Reckoning {
  const missing = topic.inputs.filter(({ id, optional }) => optional !== true && given[id] === undefined);
  if (missing.length > 0) {
    const flags = missing.map(({ id }) => `--${id}`).join(', ');
    throw new InputFault({ id: 'reckon.missing', with: { flags } });
  }
  const result = topic.reckon(given);
  if (result.ok) return result.value;
  const problem = inWords(result.problem);
  if (result.input === undefined) throw new InputFault(result.problem);
  throw new InputFault({ id: 'reckon.input-wrong', with: { input: result.input, problem } });
}

function report(
  topic: Topic,
  { verdict, lines: sentences, decides, data, csv = '' }: Reckoning,
  options: Options,
): number {
  if (options.csv) {
    process.stdout.write(csv);
    return EXIT.done;
  }
  const words = sentences.map(inWords);
  if (options.json) {
    const judged = { ...(verdict && { verdict }), ...(decides !== undefined && { decides }) };
    const whole = { format: 1, topic: topic.id, ...judged, lines: words, data };
    process.stdout.write(`${JSON.stringify(whole, null, 2)}\n`);
    return EXIT.done;
  }
  const last = [
    ...(verdict ? [say(`reckon.verdict-${verdict}`)] : []),
    ...(decides === undefined ? [] : [say('reckon.decides', { input: decides })]),
  ];
  const text = apart([...words, ...last]).map((line) => lines(line, process.stdout.columns));
  process.stdout.write(`${text.join('\n')}\n`);
  return EXIT.done;
}

/** A table between empty lines, as what follows would else be read as one more row of it (GFM 0.29, section 4.10). */
function apart(texts: readonly string[]): readonly string[] {
  const isRow = (text: string | undefined): boolean => text?.startsWith('|') === true;
  return texts.flatMap((text, at) => (at > 0 && isRow(text) !== isRow(texts[at - 1]) ? ['', text] : [text]));
}
