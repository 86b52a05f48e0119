import type { Given } from '../../arithmetic/topics/topic.js';
import { type MessageId, say } from '../../messages/say.js';
import { answerInWords } from '../answer-words.js';
import type { Call } from '../call.js';
import { topicNamed } from '../topics.js';
import { textWithin, within } from './within.js';

export type ReachId = 'camera' | 'computer' | 'router' | 'internet';

/** A device with what is known of its numbers. */
export interface ReachDevice {
  readonly id: ReachId;
  readonly title: string;
  readonly lines: readonly string[];
}

/** One walk: from whom to whom, how it ends, and how far it comes. */
export interface ReachWay {
  readonly from: ReachId;
  readonly to: ReachId;
  readonly outcome: 'reaches' | 'reply-lost' | 'fails';
  readonly endsAt: ReachId;
  readonly says: string;
}

/** Camera, computer, router and internet, and who reaches whom. */
export interface Reach {
  readonly kind: 'reach';
  readonly devices: readonly ReachDevice[];
  readonly ways: readonly ReachWay[];
  /** What is still needed before lines can be drawn, in words; nothing where they are drawn. */
  readonly waits: string | undefined;
  readonly says: string;
}

const IDS: readonly ReachId[] = ['camera', 'computer', 'router', 'internet'];
const NAMES = {
  camera: 'picture.reach-camera',
  computer: 'picture.reach-computer',
  router: 'picture.reach-router',
  internet: 'picture.reach-internet',
} as const satisfies Record<ReachId, MessageId>;
const OUTCOMES = {
  reaches: 'picture.reach-reaches',
  'reply-lost': 'picture.reach-reply-lost',
  fails: 'picture.reach-fails',
} as const satisfies Record<ReachWay['outcome'], MessageId>;

/** The picture of the sum about reach. Where it depends on the router, the stricter of the two. */
export function reachOf(given: Given, data: unknown): Reach {
  const walks = within(data, 'walks') ?? within(data, 'ifStateful', 'walks');
  const ways = (Array.isArray(walks) ? walks : []).flatMap(wayOf);
  return reach(devicesOf(given), ways, undefined);
}

/** What the sum about reach needs, and the question of a call that tells it. */
const NEEDED = [
  'camera-address',
  'camera-mask',
  'camera-gateway',
  'computer-address',
  'computer-mask',
  'router-address',
  'router-mask',
] as const;

/**
 * The same by the answers of a call; `undefined` while no address is known. A computer's gateway is not asked for:
 * the router is taken.
 */
export function reachOfCall({ rules, state }: Call): Reach | undefined {
  const told = NEEDED.flatMap((id): [string, string][] => {
    const question = rules.questions.find((one) => one.id === id);
    const value = state.answers.get(id)?.value;
    return question && value && value.kind !== 'cant-tell' ? [[id, answerInWords(question, value)]] : [];
  });
  const given: Given = Object.fromEntries(told);
  if (given['camera-address'] === undefined && given['computer-address'] === undefined) return undefined;
  const missing = NEEDED.filter((id) => given[id] === undefined).map(
    (id) => rules.questions.find((one) => one.id === id)?.title ?? id,
  );
  if (missing.length > 0) return reach(devicesOf(given), [], missing.join(', '));
  const whole: Given = { ...given, 'computer-gateway': given['router-address'] ?? '' };
  const result = topicNamed('reach')?.reckon(whole);
  return result?.ok ? reachOf(given, result.value.data) : reach(devicesOf(given), [], undefined);
}

function reach(devices: readonly ReachDevice[], ways: readonly ReachWay[], waits: string | undefined): Reach {
  const known = devices.map(({ title, lines }) => [title, ...lines].join(' '));
  const says = [...known, ...ways.map((way) => way.says)].join('. ');
  return { kind: 'reach', devices, ways, waits, says };
}

function devicesOf(given: Given): readonly ReachDevice[] {
  return IDS.map((id) => {
    const [address, mask, gateway] = [given[`${id}-address`], given[`${id}-mask`], given[`${id}-gateway`]];
    const lines = [
      ...(id === 'internet' ? [] : [address ?? say('picture.reach-unknown-address')]),
      ...(mask === undefined ? [] : [say('picture.reach-mask', { mask })]),
      ...(gateway === undefined ? [] : [say('picture.reach-gateway', { gateway })]),
    ];
    return { id, title: say(NAMES[id]), lines };
  });
}

function wayOf(walk: unknown): readonly ReachWay[] {
  const [from, to] = [idIn(walk, 'from'), idIn(walk, 'to')];
  if (from === undefined || to === undefined) return [];
  const told = textWithin(walk, 'outcome');
  const outcome = told === 'reaches' || told === 'reply-lost' ? told : 'fails';
  const endsAt = idIn(walk, 'there', 'endsAt') ?? from;
  const filling = { from: say(NAMES[from]), to: say(NAMES[to]), outcome: say(OUTCOMES[outcome]) };
  return [{ from, to, outcome, endsAt, says: say('picture.reach-line', filling) }];
}

function idIn(data: unknown, ...names: readonly string[]): ReachId | undefined {
  const found = textWithin(data, ...names);
  return IDS.find((id) => id === found);
}
