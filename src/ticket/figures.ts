import { say } from '../messages/say.js';

/** A chance, 0 to 1, in whole per cent. Never 0 and never 100: nothing is that sure. */
export function percent(chance: number): string {
  if (chance < 0.005) return say('ticket.percent-under');
  if (chance >= 0.995) return say('ticket.percent-over');
  return say('ticket.percent', { number: Math.round(chance * 100) });
}

/** Decibans with their sign and one decimal. */
export function decibans(weight: number): string {
  return `${weight > 0 ? '+' : ''}${weight.toFixed(1)}`;
}

/** The time of a record, ISO 8601 in UTC, to the minute; nothing where it is written in another way. */
export function time(iso: string): string | undefined {
  const [, date, clock] = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)(?::\d\d(?:\.\d+)?)?Z$/.exec(iso) ?? [];
  return date === undefined || clock === undefined ? undefined : say('ticket.time', { date, clock });
}
