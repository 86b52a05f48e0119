import type { MessageId, Sentence } from '../../messages/say.js';
import { showBitRate, showBitRates } from '../../values/bit-rate.js';
import { showBytes, showGibibytes, showGigabytes } from '../../values/byte-size.js';
import { rounded, showRange } from '../../values/rounded.js';
import { showShares } from '../../values/share.js';
import { type Judged, judge, type Verdict } from '../judge.js';
import type { Worked } from '../worked.js';
import {
  bytesADay,
  bytesADayRange,
  daysKept,
  type Recording,
  rateForDays,
  type Store,
  usableBytes,
  usableRange,
} from './recording.js';

export type StorageInput = keyof Recording | keyof Store;

/** Days until a recording is written over, at least and at most. */
export interface Kept {
  readonly low: number;
  readonly high: number;
}

const WORDS = {
  fine: 'storage.days-enough',
  doubtful: 'storage.days-uncertain',
  impossible: 'storage.days-too-few',
} as const satisfies Record<Verdict, MessageId>;

/** How long recordings are kept: usable bytes over bytes a day, decimal GB with GiB beside (IEC 80000-13). */
export function keeps(recording: Recording, store: Store): Worked<Kept> {
  const value = daysKept(recording, store);
  const { low, high } = store.capacity;
  const gigabytes = low === high ? showGigabytes(low) : showBytes(store.capacity);
  return {
    value,
    lines: [
      ...rateLines(recording),
      { id: 'storage.a-day', with: { amount: showBytes(bytesADayRange(recording)) } },
      { id: 'storage.capacity', with: { gigabytes, gibibytes: showGibibytes(low) } },
      {
        id: 'storage.usable',
        with: { reserve: showShares(store.reserve), amount: showBytes(usableRange(store)) },
      },
      keptLine(value),
    ],
  };
}

/** Whether `days` are kept, and the bit rate of the main stream that would keep them at worst. */
export function keepsDays(recording: Recording, store: Store, days: number): Worked<Judged<StorageInput>> {
  const inputs = { ...recording, ...store };
  const value = judge<StorageInput>(inputs, (at) => usableBytes(at) - days * bytesADay(at));
  const rate = rateForDays(recording, store, days);
  const advice: Sentence =
    rate > 0
      ? { id: 'storage.rate-for-days', with: { days: rounded(days), rate: showBitRate(rate) } }
      : { id: 'storage.no-rate', with: { days: rounded(days) } };
  return { value, lines: [{ id: WORDS[value.verdict], with: { days: rounded(days) } }, advice] };
}

function rateLines({ main, audio, hours, events }: Recording): readonly Sentence[] {
  const said = {
    main: showBitRates(main),
    audio: showBitRates(audio),
    hours: showRange(hours.low, hours.high, ''),
    events: showShares(events),
  };
  const guessed: readonly Sentence[] = main.isGuess ? [{ id: 'storage.main-guessed', with: said }] : [];
  return [...guessed, { id: audio.high === 0 ? 'storage.recorded-silent' : 'storage.recorded', with: said }];
}

function keptLine({ low, high }: Kept): Sentence {
  // Less than two days is easier to grasp in hours.
  return high < 2
    ? { id: 'storage.hours-kept', with: { hours: showRange(low * 24, high * 24, '') } }
    : { id: 'storage.days-kept', with: { days: showRange(low, high, '') } };
}
