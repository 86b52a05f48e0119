import type { MessageId, Sentence } from '../../messages/say.js';
import { showAddress } from '../../values/address.js';
import type { Hop, Leg, Swap } from './leg.js';
import { deviceOf, type Site, segmentOf } from './site.js';
import type { Walk } from './walk.js';

const DECISIONS = {
  neighbour: 'walk.neighbour',
  'own-gateway': 'walk.own-gateway',
  route: 'walk.route',
  gateway: 'walk.gateway',
} as const satisfies Record<Hop['because'], MessageId>;

/** The walk written out, one sentence a decision, with its outcome last. */
export function walkLines(site: Site, walked: Omit<Walk, 'lines'>): readonly Sentence[] {
  const name = (id: string): string => deviceOf(site, id).name;
  const ends = { from: name(walked.from), to: name(walked.to) };
  const question: Sentence = {
    id: 'walk.question',
    with: { ...ends, destination: showAddress(walked.destination) },
  };
  const answer: Sentence = {
    id: 'walk.answer',
    with: { ...ends, destination: showAddress(walked.there.packet.source) },
  };
  return [
    question,
    ...legLines(site, walked.there, ends.to),
    ...(walked.back ? [answer, ...legLines(site, walked.back, ends.from)] : []),
    { id: outcomeWords(walked), with: ends },
  ];
}

function outcomeWords({ outcome, there, back }: Omit<Walk, 'lines'>): MessageId {
  if (outcome === 'reaches') return 'walk.reaches';
  const isChance = there.stop === 'two-answers' || back?.stop === 'two-answers';
  if (isChance) return 'walk.chance';
  return outcome === 'reply-lost' ? 'walk.reply-lost' : 'walk.fails';
}

function legLines(site: Site, leg: Leg, wanted: string): readonly Sentence[] {
  const { hops, at, stop, packet } = leg;
  const device = deviceOf(site, at).name;
  const said = { device, wanted, destination: showAddress(packet.destination) };
  return [
    ...hops.flatMap((hop) => hopLines(site, hop)),
    stop === undefined ? { id: 'walk.arrived', with: said } : { id: `walk.stop-${stop}`, with: said },
  ];
}

function hopLines(site: Site, hop: Hop): readonly Sentence[] {
  const name = (id: string): string => deviceOf(site, id).name;
  const said = {
    from: name(hop.from),
    segment: segmentOf(site, hop.segment).name,
    range: hop.range,
    destination: showAddress(hop.destination),
    asked: showAddress(hop.asked),
    devices: hop.answers.map(({ device }) => name(device)).join(', '),
    count: hop.answers.length,
  };
  const swapLines = (what: Swap['what']): readonly Sentence[] =>
    hop.swaps.filter((swap) => swap.what === what).map((swap) => swapLine(said.from, swap));
  // The receiver is put back before the way is chosen, the sender replaced after it.
  return [
    ...swapLines('destination'),
    { id: DECISIONS[hop.because], with: said },
    ...swapLines('source'),
    { id: answersWords(hop), with: said },
  ];
}

function answersWords({ answers }: Hop): MessageId {
  const [first, second] = answers;
  if (first === undefined) return 'walk.nobody-answers';
  if (second !== undefined) return 'walk.several-answer';
  return first.byProxy ? 'walk.answers-by-proxy' : 'walk.answers';
}

function swapLine(from: string, { what, before, after }: Swap): Sentence {
  const said = { from, before: showAddress(before), after: showAddress(after) };
  return { id: what === 'source' ? 'walk.source-swapped' : 'walk.destination-swapped', with: said };
}
