import { nameOf } from '../call/adapter-name.js';
import type { Call } from '../call/call.js';
import { filledLines } from '../call/filled.js';
import { type AboutPaste, answersFrom, cameraOf, type OfPaste, pasteEvent } from '../call/from-paste.js';
import { understood, valuesOf } from '../call/understood.js';
import { type Paste, readPaste, withOwner } from '../intake/paste.js';
import type { Owner } from '../intake/seen.js';
import { say } from '../messages/say.js';
import type { Address } from '../values/address.js';
import type { Ask } from './ask.js';
import { foundText } from './found-text.js';

/** What taking a paste needs of a terminal. */
export interface PasteDesk {
  readonly ask: Ask;
  readonly tell: (text: string) => void;
  readonly columns: number | undefined;
}

/**
 * Says what was understood of a text, asks whose computer it is, and gives the event that fills the answers in;
 * `undefined` where the text is left out. Nothing of it is used before somebody has seen it.
 */
export async function takePaste(
  { ask, tell, columns }: PasteDesk,
  { state, rules, step }: Call,
  text: string,
  origin: 'pasted' | 'read' = 'pasted',
): Promise<OfPaste | undefined> {
  const camera = cameraOf(state, rules);
  const read = readPaste(text, camera);
  tell(foundText(understood(read), columns));
  const paste = await withOwners({ ask, tell, columns }, read, likelyOwner({ step, rules }), camera);
  const about = await aboutPaste({ ask, tell, columns }, paste);
  if (!about) return undefined;
  const answers = answersFrom(rules, paste, about, camera);
  tell(foundText(filledLines(rules, answers), columns));
  return pasteEvent(state, paste, answers, about, origin);
}

/** What the question asks about comes first, as whoever types numbers off there most likely means it. */
function likelyOwner({ step, rules }: Pick<Call, 'step' | 'rules'>): Owner | undefined {
  const asked = step.kind === 'ask' ? rules.questions.find(({ id }) => id === step.question) : undefined;
  return OWNERS.find((owner) => asked?.reads?.startsWith(`${owner}.`));
}

const OWNERS = ['camera', 'phone', 'computer', 'router'] as const satisfies readonly Owner[];

/** Asks whose numbers those are that the text gives to nobody. */
async function withOwners(
  { ask, tell, columns }: PasteDesk,
  paste: Paste,
  likely: Owner | undefined,
  camera: Address | undefined,
): Promise<Paste> {
  let now = paste;
  for (const [index, adapter] of paste.reading.seen.adapters.entries()) {
    if (adapter.owner !== 'unknown' || adapter.addresses.length === 0) continue;
    tell(foundText([say('paste.whose', { values: valuesOf(adapter).join(', ') })], columns));
    const order = [...OWNERS].sort((one, other) => Number(other === likely) - Number(one === likely));
    const choices = [...order, 'unknown' as const].map((id) => ({ id, title: say(`paste.whose-${id}`) }));
    const reply = await ask({ kind: 'choice', choices }, []);
    const owner = OWNERS.find((one) => reply.kind === 'one' && reply.id === one);
    if (owner) now = withOwner(now, index, owner, camera);
  }
  return now;
}

async function aboutPaste({ ask, tell }: PasteDesk, paste: Paste): Promise<AboutPaste | undefined> {
  const { adapters } = paste.reading.seen;
  const own = adapters.flatMap((adapter, index) =>
    adapter.owner === 'computer' ? [{ adapter, index }] : [],
  );
  const chosen = paste.way.adapter === undefined ? {} : { adapter: paste.way.adapter };
  // What a phone or a camera says of itself needs no question whose place it comes from.
  const isOfComputer = own.length > 0 || saysOfPlace(paste);
  tell(say(isOfComputer ? 'paste.here' : 'paste.take'));
  const ids = !isOfComputer
    ? (['take', 'none'] as const)
    : own.length > 1
      ? (['yes', 'other', 'no', 'none'] as const)
      : (['yes', 'no', 'none'] as const);
  const reply = await ask(
    { kind: 'choice', choices: ids.map((id) => ({ id, title: say(`paste.here-${id}`) })) },
    [],
  );
  const picked = reply.kind === 'one' ? reply.id : 'none';
  if (picked === 'none') return undefined;
  if (picked === 'no') return { isHere: false };
  if (picked === 'yes' || picked === 'take') return { isHere: true, ...chosen };
  tell(say('paste.which'));
  const choices = own.map(({ adapter, index }) => ({ id: String(index), title: nameOf(adapter) }));
  const which = await ask({ kind: 'choice', choices }, []);
  return which.kind === 'one' ? { isHere: true, adapter: Number(which.id) } : undefined;
}

/** Whether a text holds what a computer sends and hears, beside what devices say of themselves. */
function saysOfPlace({ reading: { seen } }: Paste): boolean {
  return [seen.pings, seen.traces, seen.routes, seen.neighbours, seen.ports, seen.arps, seen.lookups].some(
    (found) => found.length > 0,
  );
}
