import type { Hop, Leg } from '../../../src/arithmetic/walk/leg.js';
import type { Site } from '../../../src/arithmetic/walk/site.js';
import { type Walk, walk } from '../../../src/arithmetic/walk/walk.js';
import { showAddress } from '../../../src/values/address.js';

/** A ping that arrived: device, link, `request` or `reply`, sender, receiver. */
export type Echo = readonly [string, string, 'request' | 'reply', string, string];

/** What one ping did, as the namespaces saw it. */
export interface Seen {
  readonly code: number;
  readonly said: string;
  readonly echoes: readonly Echo[];
  /** ARP questions: device, link, address. */
  readonly asked: readonly (readonly [string, string, string])[];
  /** ARP answers heard: device, link, address, who answered. */
  readonly answered: readonly (readonly [string, string, string, string])[];
  /** Neighbours that did not answer: device, link, address. */
  readonly failed: readonly (readonly [string, string, string])[];
}

export interface Judged {
  readonly walked: Walk;
  /** Empty where walk and kernel agree. */
  readonly differences: readonly string[];
  /** ARP answers that the walk foresees and that were never needed: learnt from the question itself. */
  readonly learnt: number;
}

const REFUSED_AT_HOME: ReadonlySet<string> = new Set(['no-address', 'no-gateway', 'gateway-outside']);
/** From here on it is chance, or another device, which goes on: what was foreseen must be there, more may be. */
const GOES_ON: ReadonlySet<string> = new Set(['two-answers', 'wrong-device', 'going-round']);

/** Holds the walk against what was seen: the end, every hop, who answered ARP and who did not. */
export function judge(site: Site, from: string, to: string, seen: Seen): Judged {
  const walked = walk(site, from, to);
  const legs: readonly (readonly [Leg, 'request' | 'reply'])[] = [
    [walked.there, 'request'],
    ...(walked.back ? [[walked.back, 'reply'] as const] : []),
  ];
  const isOpen =
    isUnaskedAtHome(walked) || legs.some(([{ stop }]) => stop !== undefined && GOES_ON.has(stop));
  const hops = legs.flatMap(([leg]) => leg.hops);
  return {
    walked,
    learnt: hops.filter((hop) => !hasAsked(hop, seen)).length,
    differences: [
      ...endDifferences(walked, seen),
      ...echoDifferences(
        legs.flatMap(([leg, kind]) => echoesOf(leg, kind)),
        seen,
        isOpen,
      ),
      ...hops.filter((hop) => hasAsked(hop, seen)).flatMap((hop) => answerDifferences(hop, seen)),
      ...legs.flatMap(([leg]) => failureDifferences(leg, seen)),
      ...(walked.outcome === 'reaches'
        ? seen.failed.map((one) => `kernel: no answer to ${one.join(' ')}`)
        : []),
    ],
  };
}

/** A router that drops its own reply when that comes round to it (README.md, "Where the walk is wrong"). */
function isUnaskedAtHome({ to, back }: Walk): boolean {
  return back?.stop === 'unasked-reply' && back.at === to;
}

/** Which way the ping ended, by its exit code and words (ping(8): 1 no answer, 2 could not send). */
function endDifferences({ outcome, there, back }: Walk, { code, said }: Seen): readonly string[] {
  const wanted = back?.stop ?? there.stop;
  if (outcome === 'reaches') return code === 0 ? [] : [`walk: reaches; ping: ${words(said)}`];
  const isUnreachable = said.includes('Network is unreachable');
  const isRefused = there.hops.length === 0 && REFUSED_AT_HOME.has(there.stop ?? '');
  if (isRefused !== isUnreachable) return [`walk: ${outcome}; ping: ${words(said)}`];
  if (wanted === 'wrong-device' && there.stop !== undefined && there.hops.length === 0) {
    return code === 0 ? [] : [`walk: its own address; ping: ${words(said)}`];
  }
  const isChance = wanted === 'two-answers' || (wanted === 'wrong-device' && back === undefined);
  return code === 0 && !isChance ? [`walk: ${outcome}; ping: answered`] : [];
}

function echoesOf(leg: Leg, kind: 'request' | 'reply'): readonly string[] {
  return leg.hops.flatMap(({ to, segment, source, destination }) =>
    to === undefined ? [] : [[to, segment, kind, showAddress(source), showAddress(destination)].join(' ')],
  );
}

function echoDifferences(foreseen: readonly string[], { echoes }: Seen, isOpen: boolean): readonly string[] {
  const left = echoes.map((echo) => echo.join(' '));
  const missing = foreseen.filter((one) => {
    const at = left.indexOf(one);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  return [
    ...missing.map((one) => `walk only: ${one}`),
    ...(isOpen ? [] : left.map((one) => `kernel only: ${one}`)),
  ];
}

function hasAsked(hop: Hop, { asked }: Seen): boolean {
  return asked.some((one) => isSame(one, hop));
}

function answerDifferences(hop: Hop, { answered }: Seen): readonly string[] {
  const heard = new Set(
    answered.filter(([device, link, address]) => isSame([device, link, address], hop)).map((one) => one[3]),
  );
  const kernel = [...heard].sort().join();
  const foreseen = hop.answers
    .map(({ device }) => device)
    .sort()
    .join();
  const question = `${hop.from} on ${hop.segment} asks for ${showAddress(hop.asked)}`;
  return kernel === foreseen ? [] : [`${question}: walk "${foreseen}", kernel "${kernel}"`];
}

function failureDifferences({ stop, hops }: Leg, { failed }: Seen): readonly string[] {
  const last = hops.at(-1);
  if (stop !== 'no-arp-answer' || last === undefined) return [];
  const isThere = failed.some((one) => isSame(one, last));
  return isThere ? [] : [`walk: ${last.from} gets no answer from ${showAddress(last.asked)}; kernel: not so`];
}

function isSame([device, link, address]: readonly [string, string, string], hop: Hop): boolean {
  return device === hop.from && link === hop.segment && address === showAddress(hop.asked);
}

function words(said: string): string {
  return said.split('\n').slice(1, 2).join('') || said;
}
