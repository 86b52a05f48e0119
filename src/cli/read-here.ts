import type { Call } from '../call/call.js';
import { filledLines } from '../call/filled.js';
import { answersFrom, cameraOf, type OfPaste, pasteEvent } from '../call/from-paste.js';
import type { Ask, Terminal } from './ask.js';
import { deskOn } from './here-desk.js';
import { type Eyes, lookHere } from './look-here.js';

/** Reads the computer that a call is held on, after asking, and gives the event that fills the answers in. */
export async function readHere(
  eyes: Eyes,
  terminal: Terminal,
  ask: Ask,
  { state, rules }: Call,
): Promise<OfPaste | undefined> {
  const desk = deskOn(terminal, ask);
  const camera = cameraOf(state, rules);
  const paste = await lookHere(eyes, desk, { camera });
  if (paste === undefined) return undefined;
  const adapter = paste.way.adapter === undefined ? {} : { adapter: paste.way.adapter };
  const about = { ...adapter, isHere: true };
  const answers = answersFrom(rules, paste, about, camera);
  desk.tell(filledLines(rules, answers));
  return pasteEvent(state, paste, answers, about, 'read');
}
