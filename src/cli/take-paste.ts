import type { Call } from '../call/call.js';
import { filledLines } from '../call/filled.js';
import { type AboutPaste, answersFrom, cameraOf, type OfPaste, pasteEvent } from '../call/from-paste.js';
import { aboutOf, hereQuestion, ownerNamed, whichAdapter, whoseQuestions } from '../call/paste-questions.js';
import { understood } from '../call/understood.js';
import { type Paste, readPaste, withOwner } from '../intake/paste.js';
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
  const paste = await withOwners({ ask, tell, columns }, { step, rules }, read, camera);
  const about = await aboutPaste({ ask, tell, columns }, paste);
  if (!about) return undefined;
  const answers = answersFrom(rules, paste, about, camera);
  tell(foundText(filledLines(rules, answers), columns));
  return pasteEvent(state, paste, answers, about, origin);
}

/** Asks whose numbers those are that the text gives to nobody. */
async function withOwners(
  { ask, tell, columns }: PasteDesk,
  call: Pick<Call, 'step' | 'rules'>,
  paste: Paste,
  camera: Address | undefined,
): Promise<Paste> {
  let now = paste;
  for (const { index, say: words, choices } of whoseQuestions(call, paste)) {
    tell(foundText([words], columns));
    const reply = await ask({ kind: 'choice', choices }, []);
    const owner = reply.kind === 'one' ? ownerNamed(reply.id) : undefined;
    if (owner) now = withOwner(now, index, owner, camera);
  }
  return now;
}

async function aboutPaste({ ask, tell }: PasteDesk, paste: Paste): Promise<AboutPaste | undefined> {
  const { say: words, choices } = hereQuestion(paste);
  tell(words);
  const reply = await ask({ kind: 'choice', choices }, []);
  const about = aboutOf(paste, reply.kind === 'one' ? reply.id : 'none');
  if (about !== 'other') return about === 'none' ? undefined : about;
  tell(say('paste.which'));
  const which = await ask({ kind: 'choice', choices: whichAdapter(paste) }, []);
  return which.kind === 'one' ? { isHere: true, adapter: Number(which.id) } : undefined;
}
