import type { Call } from '../call/call.js';
import { filledLines } from '../call/filled.js';
import { eventsFromHere, type SaidOnTheWay } from '../call/from-here.js';
import { cameraOf, type OfPaste } from '../call/from-paste.js';
import type { Ask, Terminal } from './ask.js';
import { deskOn } from './here-desk.js';
import { type Eyes, lookHere } from './look-here.js';

/** Reads the computer that a call is held on, after asking, and gives the events that fill the answers in. */
export async function readHere(
  eyes: Eyes,
  terminal: Terminal,
  ask: Ask,
  call: Call,
): Promise<readonly (SaidOnTheWay | OfPaste)[]> {
  const desk = deskOn(terminal, ask);
  const looked = await lookHere(eyes, desk, { camera: cameraOf(call.state, call.rules) });
  if (looked === undefined) return [];
  const { said, read } = eventsFromHere(call, looked.paste, looked.given);
  desk.tell(filledLines(call.rules, read.answers));
  return [...said, read];
}
