import { nameOf } from '../call/adapter-name.js';
import type { Call } from '../call/call.js';
import type { CallEvent } from '../call/events.js';
import { filledLines } from '../call/filled.js';
import { type AboutPaste, answersFrom, cameraOf, pasteEvent } from '../call/from-paste.js';
import { understood } from '../call/understood.js';
import { type Paste, readPaste } from '../intake/paste.js';
import { say } from '../messages/say.js';
import type { Ask } from './ask.js';
import { foundText } from './found-text.js';

/** What taking a paste needs of a terminal. */
export interface PasteDesk {
  readonly ask: Ask;
  readonly tell: (text: string) => void;
  readonly columns: number | undefined;
}

type PastedEvent = Omit<Extract<CallEvent, { type: 'pasted' }>, 'at'>;

/**
 * Says what was understood of a text, asks whose computer it is, and gives the event that fills the answers in;
 * `undefined` where the text is left out. Nothing of it is used before somebody has seen it.
 */
export async function takePaste(
  { ask, tell, columns }: PasteDesk,
  { state, rules }: Call,
  text: string,
  origin: 'pasted' | 'read' = 'pasted',
): Promise<PastedEvent | undefined> {
  const camera = cameraOf(state, rules);
  const paste = readPaste(text, camera);
  tell(foundText(understood(paste), columns));
  const about = await aboutPaste({ ask, tell, columns }, paste);
  if (!about) return undefined;
  const answers = answersFrom(rules, paste, about, camera);
  tell(foundText(filledLines(rules, answers), columns));
  return pasteEvent(state, paste, answers, origin);
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
