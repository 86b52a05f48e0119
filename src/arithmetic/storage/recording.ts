import type { Between } from '../../values/between.js';
import { SECONDS_AN_HOUR } from '../../values/duration.js';

/** What is recorded: bit/s, hours a day, and the share of those hours in which something is recorded. */
export interface Recording {
  readonly main: Between;
  readonly audio: Between;
  readonly hours: Between;
  readonly events: Between;
}

/** A card or drive: bytes as printed on it, and the share the file system and the camera keep for themselves. */
export interface Store {
  readonly capacity: Between;
  readonly reserve: Between;
}

/** One value of every input, in the same units. */
export type RecordingPoint = Readonly<Record<keyof Recording, number>>;
export type StorePoint = Readonly<Record<keyof Store, number>>;

interface Ends {
  readonly low: number;
  readonly high: number;
}

/** Bytes recorded a day: (main + audio) / 8 x 3600 x hours x share; 1 Mbit/s all day is 10.8 GB. */
export function bytesADay({ main, audio, hours, events }: RecordingPoint): number {
  return ((main + audio) / 8) * SECONDS_AN_HOUR * hours * events;
}

/** Bytes that recordings may fill. */
export function usableBytes({ capacity, reserve }: StorePoint): number {
  return capacity * (1 - reserve);
}

/** Bytes recorded a day, at least and at most. */
export function bytesADayRange(recording: Recording): Ends {
  return { low: bytesADay(side(recording, 'low')), high: bytesADay(side(recording, 'high')) };
}

/** Bytes that recordings may fill, at least and at most: a larger reserve leaves less. */
export function usableRange({ capacity, reserve }: Store): Ends {
  return {
    low: usableBytes({ capacity: capacity.low, reserve: reserve.high }),
    high: usableBytes({ capacity: capacity.high, reserve: reserve.low }),
  };
}

/** Days until the oldest recording is written over, at least and at most. */
export function daysKept(recording: Recording, store: Store): Ends {
  const [day, usable] = [bytesADayRange(recording), usableRange(store)];
  return { low: usable.low / day.high, high: usable.high / day.low };
}

/** The bit rate of the main stream in bit/s that keeps `days`, at worst; negative where sound alone is too much. */
export function rateForDays(recording: Omit<Recording, 'main'>, store: Store, days: number): number {
  const { audio, hours, events } = side({ ...recording, main: recording.audio }, 'high');
  return (usableRange(store).low * 8) / (days * SECONDS_AN_HOUR * hours * events) - audio;
}

function side(recording: Recording, end: 'low' | 'high'): RecordingPoint {
  const { main, audio, hours, events } = recording;
  return { main: main[end], audio: audio[end], hours: hours[end], events: events[end] };
}
