import type { Sentence } from '../../messages/say.js';
import { ok, problem, type Result } from '../../values/result.js';
import { type Judged, worstOf } from '../judge.js';
import { type Kept, keeps, keepsDays } from '../storage/keeps.js';
import { speedClass } from '../storage/speed-class.js';
import { wear } from '../storage/wear.js';
import { whyGone } from '../storage/why-gone.js';
import type { Worked } from '../worked.js';
import { readGiven } from './read-given.js';
import { STORAGE_INPUTS, STORAGE_READS } from './storage-inputs.js';
import type { Given, Reckoning, Topic } from './topic.js';

/** How long recordings are kept, why a date is gone, and whether the card takes it. */
export const STORAGE: Topic = { id: 'storage', title: 'storage.title', inputs: STORAGE_INPUTS, reckon };

type Inputs = Extract<ReturnType<typeof read>, { readonly ok: true }>['value'];

function read(given: Given) {
  return readGiven(given, STORAGE_READS);
}

function reckon(given: Given): Result<Reckoning> & { readonly input?: string } {
  const inputs = read(given);
  if (!inputs.ok) return inputs;
  const { main, audio, hours, events, capacity, reserve, date, today, rated } = inputs.value;
  if (date !== undefined && today === undefined) {
    return { ...problem({ id: 'storage.today-needed' }), input: 'today' };
  }
  const recording = { main, audio, hours, events };
  const store = { capacity, reserve };
  const kept = keeps(recording, store);
  const judged = judgedParts(inputs.value, kept.value);
  const worn = wear(recording, store, rated);
  return ok({
    ...(judged.length === 0 ? {} : worstOf(judged.map(({ value }) => value))),
    lines: [
      ...kept.lines,
      ...(events.low < 1 ? EVENTS_VARY : []),
      ...judged.flatMap(({ lines }) => lines),
      ...worn.lines,
      ...(rated === undefined ? UNRATED : []),
    ],
    data: { daysKept: kept.value, ...whereabouts(inputs.value, kept.value), ...worn.value },
  });
}

const EVENTS_VARY: readonly Sentence[] = [{ id: 'storage.events-vary' }];
const UNRATED: readonly Sentence[] = [{ id: 'storage.wear-unrated' }];

function judgedParts(inputs: Inputs, kept: Kept): readonly Worked<Judged<string>>[] {
  const { main, audio, hours, events, capacity, reserve, days } = inputs;
  const card = inputs['card-class'];
  const rate = { low: main.low + audio.low, high: main.high + audio.high, isGuess: main.isGuess };
  const gone = goneOf(inputs, kept);
  return [
    ...(days === undefined ? [] : [keepsDays({ main, audio, hours, events }, { capacity, reserve }, days)]),
    ...(gone === undefined ? [] : [gone]),
    ...(card === 'dont-know' ? [] : [speedClass(card, rate)]),
  ];
}

function goneOf({ date, today, since }: Inputs, kept: Kept) {
  return date === undefined || today === undefined ? undefined : whyGone(kept, date, today, since);
}

function whereabouts(inputs: Inputs, kept: Kept) {
  const gone = goneOf(inputs, kept);
  return gone === undefined ? {} : { dateIs: gone.value.whereabouts };
}
