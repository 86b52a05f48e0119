import type { Sentence } from '../../messages/say.js';
import { parseBitRate, showBitRate } from '../../values/bit-rate.js';
import { parseMilliseconds } from '../../values/duration.js';
import { parseCount } from '../../values/measure.js';
import { ok, problem, type Result } from '../../values/result.js';
import { rounded } from '../../values/rounded.js';
import { quoted } from '../../values/tidy.js';
import { explanations } from '../loss/explanations.js';
import { lossStanding } from '../loss/loss-standing.js';
import { streamEffect } from '../loss/stream-effect.js';
import { needed, optional, orUnknown, parseChoice, readGiven } from './read-given.js';
import type { Given, Reckoning, Topic } from './topic.js';

const MOST = 1_000_000;
const LEAST_RATE = 16_000;
const USUAL_RATE = 2e6;
const USUAL_FRAMES = 15;

const time = optional(orUnknown(parseMilliseconds), undefined);
const READS = {
  sent: needed((text) => parseCount(text, 1, MOST)),
  received: needed((text) => parseCount(text, 0, MOST)),
  runs: optional(orUnknown(parseRuns), undefined),
  shortest: time,
  mean: time,
  longest: time,
  duplicates: optional((text) => parseCount(text, 0, MOST), 0),
  way: optional(parseChoice(['wireless', 'cable-only', 'dont-know']), 'dont-know'),
  rate: optional(orUnknown(parseRate), undefined),
  frames: optional(
    orUnknown((text) => parseCount(text, 1, 60)),
    undefined,
  ),
} as const;

/** What a ping says of the loss and the delay on the way, and what that does to a stream. */
export const LOSS: Topic = {
  id: 'loss',
  title: 'loss.title',
  inputs: [
    { id: 'sent', ask: 'loss.ask-sent' },
    { id: 'received', ask: 'loss.ask-received' },
    { id: 'runs', ask: 'loss.ask-runs', optional: true },
    { id: 'shortest', ask: 'loss.ask-shortest', optional: true },
    { id: 'mean', ask: 'loss.ask-mean', optional: true },
    { id: 'longest', ask: 'loss.ask-longest', optional: true },
    { id: 'duplicates', ask: 'loss.ask-duplicates', optional: true },
    {
      id: 'way',
      ask: 'loss.ask-way',
      choices: [
        { id: 'wireless', title: 'loss.way-wireless' },
        { id: 'cable-only', title: 'loss.way-cable-only' },
        { id: 'dont-know', title: 'loss.way-dont-know' },
      ],
      optional: true,
    },
    { id: 'rate', ask: 'loss.ask-rate', optional: true },
    { id: 'frames', ask: 'loss.ask-frames', optional: true },
  ],
  reckon,
};

type Inputs = Extract<ReturnType<typeof read>, { readonly ok: true }>['value'];

function read(given: Given) {
  return readGiven(given, READS);
}

function reckon(given: Given): Result<Reckoning> & { readonly input?: string } {
  const inputs = read(given);
  if (!inputs.ok) return inputs;
  const wrong = disagreement(inputs.value);
  if (wrong !== undefined) return wrong;
  const { sent, received, way, mean, rate, frames } = inputs.value;
  const loss = lossStanding(sent, received);
  const { interval, ...judged } = loss.value;
  const behind = explanations(inputs.value, way);
  const roundTrip = mean === undefined || mean === 0 ? undefined : mean;
  const effect = streamEffect(interval, rate ?? USUAL_RATE, frames ?? USUAL_FRAMES, roundTrip);
  const isReached = received > 0;
  return ok({
    ...judged,
    lines: [
      ...loss.lines,
      ...(isReached ? WHO_REPLIED : []),
      ...behind.lines,
      ...(isReached ? effect.lines : []),
      ...(isReached && roundTrip !== undefined ? delay(roundTrip) : []),
    ],
    data: {
      lossShare: interval,
      ...(behind.value === undefined ? {} : { explanations: behind.value }),
      ...(isReached ? effect.value : {}),
    },
  });
}

const WHO_REPLIED: readonly Sentence[] = [{ id: 'loss.who-replied' }];

function delay(roundTrip: number): readonly Sentence[] {
  return [{ id: 'loss.delay', with: { delay: `${rounded(roundTrip / 2)} ms` } }];
}

/** Numbers that cannot all be right, and the input to look at again. */
function disagreement(inputs: Inputs) {
  const { sent, received, runs, shortest, mean, longest } = inputs;
  if (received > sent) {
    return {
      ...problem<Reckoning>({ id: 'loss.more-than-sent', with: { sent, received } }),
      input: 'received',
    };
  }
  const sum = runs?.reduce((total, run) => total + run, 0);
  const lost = sent - received;
  if (sum !== undefined && sum !== lost) {
    return { ...problem<Reckoning>({ id: 'loss.runs-disagree', with: { sum, lost } }), input: 'runs' };
  }
  const times = [shortest, mean, longest].filter((one) => one !== undefined);
  const isInOrder = times.every((one, index) => index === 0 || one >= (times[index - 1] ?? 0));
  return isInOrder ? undefined : { ...problem<Reckoning>({ id: 'loss.times-disagree' }), input: 'mean' };
}

function parseRuns(text: string): Result<readonly number[]> {
  const pieces = text
    .trim()
    .split(/[ ,;]+/)
    .filter((piece) => piece !== '');
  const isList = pieces.length > 0 && pieces.every((piece) => /^[1-9]\d{0,5}$/.test(piece));
  return isList ? ok(pieces.map(Number)) : problem({ id: 'loss.runs-unclear', with: { text: quoted(text) } });
}

function parseRate(text: string): Result<number> {
  const rate = parseBitRate(text);
  if (!rate.ok || rate.value >= LEAST_RATE) return rate;
  return problem({ id: 'loss.rate-too-low', with: { least: showBitRate(LEAST_RATE) } });
}
