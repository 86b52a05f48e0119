import type { Diagnosis, Ranked, Reason } from '../../diagnosis/diagnosis.js';
import { say } from '../../messages/say.js';
import { decibans, percent } from '../figures.js';
import { blocks, bullets, section, subsection, table } from '../markdown.js';
import type { Pen } from '../pen.js';

/** How sure the verdict is, and the causes in order, each with what speaks for it and against it. */
export function causeSections(diagnosis: Diagnosis, pen: Pen): string {
  return blocks(section(say('ticket.sure'), sureness(diagnosis, pen)), ranking(diagnosis, pen));
}

function sureness({ verdict, ranked }: Diagnosis, pen: Pen): string {
  if (verdict.kind === 'may-not-ask' || verdict.kind === 'out-of-scope') return '';
  const first = ranked[0];
  return blocks(
    verdict.kind === 'restored' ? say(verdict.confirmed ? 'ticket.confirmed' : 'ticket.unconfirmed') : '',
    say(`ticket.sure-${verdict.confidence}`, { percent: percent(verdict.probability) }),
    first === undefined ? '' : say('ticket.sure-means', { cause: pen.ours(first.title) }),
  );
}

function ranking({ ranked, path }: Diagnosis, pen: Pen): string {
  const rows = ranked.map(({ title, stage, probability }, rank) => [
    String(rank + 1),
    pen.ours(title),
    pen.ours(path.find(({ id }) => id === stage)?.title ?? ''),
    percent(probability),
  ]);
  const head = [say('ticket.rank'), say('ticket.cause'), say('ticket.part'), say('ticket.chance')];
  const hasReasons = ranked.some(({ reasons }) => reasons.length > 0);
  return section(
    say('ticket.causes'),
    table(head, rows),
    hasReasons ? say('ticket.decibans') : '',
    ...ranked.map((cause, rank) => reasonsFor(cause, rank, titles(ranked), pen)),
  );
}

function reasonsFor(
  { title, reasons }: Ranked,
  rank: number,
  titleOf: ReadonlyMap<string, string>,
  pen: Pen,
): string {
  const counted = reasons.filter(({ repeats }) => repeats === undefined);
  const lines = (some: readonly Reason[]): string =>
    bullets(some.map((one) => reasonLine(one, titleOf, pen)));
  const group = (heading: string, list: string): string => (list === '' ? '' : blocks(heading, list));
  return subsection(
    say('ticket.ranked', { rank: rank + 1, cause: pen.ours(title) }),
    group(say('ticket.for'), lines(largestFirst(counted.filter((one) => one.decibans >= 0)))),
    group(say('ticket.against'), lines(largestFirst(counted.filter((one) => one.decibans < 0)))),
    group(say('ticket.not-counted'), lines(reasons.filter(({ repeats }) => repeats !== undefined))),
  );
}

function reasonLine(reason: Reason, titleOf: ReadonlyMap<string, string>, pen: Pen): string {
  const said = { title: pen.ours(reason.title), shows: pen.ours(reason.shows) };
  if (reason.repeats === undefined)
    return say('ticket.reason', { ...said, decibans: decibans(reason.decibans) });
  return say('ticket.repeats', { ...said, other: pen.ours(titleOf.get(reason.repeats) ?? reason.repeats) });
}

function largestFirst(reasons: readonly Reason[]): readonly Reason[] {
  return [...reasons].sort((one, other) => Math.abs(other.decibans) - Math.abs(one.decibans));
}

function titles(ranked: readonly Ranked[]): ReadonlyMap<string, string> {
  return new Map(
    ranked.flatMap(({ reasons }) => reasons.map(({ finding, title }) => [finding, title] as const)),
  );
}
