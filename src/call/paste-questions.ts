import type { Paste } from '../intake/paste.js';
import type { Owner } from '../intake/seen.js';
import { say } from '../messages/say.js';
import { nameOf } from './adapter-name.js';
import type { Call } from './call.js';
import type { AboutPaste } from './from-paste.js';
import type { Option } from './screen.js';
import { valuesOf } from './understood.js';

const OWNERS = ['camera', 'phone', 'computer', 'router'] as const satisfies readonly Owner[];

/** Whose numbers are these, that a text gives to nobody? One question for each such device. */
export interface WhoseQuestion {
  /** Of the adapter in the reading. */
  readonly index: number;
  readonly say: string;
  /** The likeliest first; the id is the owner's. */
  readonly choices: readonly Option[];
}

/** What has to be asked whose it is, before a text is used. */
export function whoseQuestions(call: Pick<Call, 'step' | 'rules'>, paste: Paste): readonly WhoseQuestion[] {
  const likely = likelyOwner(call);
  const order = [...OWNERS].sort((one, other) => Number(other === likely) - Number(one === likely));
  const choices = [...order, 'unknown' as const].map((id) => ({ id, title: say(`paste.whose-${id}`) }));
  return paste.reading.seen.adapters.flatMap((adapter, index) =>
    adapter.owner === 'unknown' && adapter.addresses.length > 0
      ? [{ index, say: say('paste.whose', { values: valuesOf(adapter).join(', ') }), choices }]
      : [],
  );
}

/** The owner that was chosen; `undefined` for none of them. */
export function ownerNamed(id: string): Owner | undefined {
  return OWNERS.find((one) => one === id);
}

/** What the question asks about comes first, as whoever types numbers off there most likely means it. */
function likelyOwner({ step, rules }: Pick<Call, 'step' | 'rules'>): Owner | undefined {
  const asked = step.kind === 'ask' ? rules.questions.find(({ id }) => id === step.question) : undefined;
  return OWNERS.find((owner) => asked?.reads?.startsWith(`${owner}.`));
}

/** Is that computer at the place of the camera? Asked only where the text speaks of one. */
export function hereQuestion(paste: Paste): { readonly say: string; readonly choices: readonly Option[] } {
  const own = ownAdapters(paste);
  // What a phone or a camera says of itself needs no question whose place it comes from.
  const isOfComputer = own.length > 0 || saysOfPlace(paste);
  const ids = !isOfComputer
    ? (['take', 'none'] as const)
    : own.length > 1
      ? (['yes', 'other', 'no', 'none'] as const)
      : (['yes', 'no', 'none'] as const);
  return {
    say: say(isOfComputer ? 'paste.here' : 'paste.take'),
    choices: ids.map((id) => ({ id, title: say(`paste.here-${id}`) })),
  };
}

/** What a reply to that says of the text: `other` asks which adapter, `none` leaves the text out. */
export function aboutOf(paste: Paste, id: string): AboutPaste | 'other' | 'none' {
  if (id === 'other') return 'other';
  if (id === 'no') return { isHere: false };
  if (id !== 'yes' && id !== 'take') return 'none';
  return paste.way.adapter === undefined ? { isHere: true } : { isHere: true, adapter: paste.way.adapter };
}

/** The adapters of the computer, by their place in the reading. */
export function whichAdapter(paste: Paste): readonly Option[] {
  return ownAdapters(paste).map(({ adapter, index }) => ({ id: String(index), title: nameOf(adapter) }));
}

function ownAdapters({ reading }: Paste) {
  return reading.seen.adapters.flatMap((adapter, index) =>
    adapter.owner === 'computer' ? [{ adapter, index }] : [],
  );
}

/** Whether a text holds what a computer sends and hears, beside what devices say of themselves. */
function saysOfPlace({ reading: { seen } }: Paste): boolean {
  return [seen.pings, seen.traces, seen.routes, seen.neighbours, seen.ports, seen.arps, seen.lookups].some(
    (found) => found.length > 0,
  );
}
