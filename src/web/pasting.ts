import type { Call } from '../call/call.js';
import type { PastedAnswer } from '../call/events.js';
import { filledLines } from '../call/filled.js';
import { type AboutPaste, answersFrom, cameraOf } from '../call/from-paste.js';
import {
  aboutOf,
  hereQuestion,
  ownerNamed,
  type WhoseQuestion,
  whichAdapter,
  whoseQuestions,
} from '../call/paste-questions.js';
import type { Option } from '../call/screen.js';
import { understood } from '../call/understood.js';
import { type Paste, readPaste, withOwner } from '../intake/paste.js';
import { say } from '../messages/say.js';

/** How far taking a text has come. Nothing of it is used before somebody has seen what was understood. */
export type Pasting =
  | { readonly stage: 'text' }
  | { readonly stage: 'whose'; readonly paste: Paste; readonly left: readonly WhoseQuestion[] }
  | { readonly stage: 'here' | 'which'; readonly paste: Paste }
  | {
      readonly stage: 'filled';
      readonly paste: Paste;
      readonly about: AboutPaste;
      readonly answers: readonly PastedAnswer[];
    };

/** A text has come: what is asked about it first. */
export function pastingOf(call: Call, text: string): Pasting {
  const paste = readPaste(text, cameraOf(call.state, call.rules));
  return whoseOrHere(paste, whoseQuestions(call, paste));
}

/** After a reply; `undefined` where the text is left out. */
export function pastingAfter(call: Call, pasting: Pasting, id: string): Pasting | undefined {
  const camera = cameraOf(call.state, call.rules);
  const filled = (paste: Paste, about: AboutPaste): Pasting => ({
    stage: 'filled',
    paste,
    about,
    answers: answersFrom(call.rules, paste, about, camera),
  });
  switch (pasting.stage) {
    case 'whose': {
      const [now, ...left] = pasting.left;
      const owner = ownerNamed(id);
      const paste = now && owner ? withOwner(pasting.paste, now.index, owner, camera) : pasting.paste;
      return whoseOrHere(paste, left);
    }
    case 'here': {
      const about = aboutOf(pasting.paste, id);
      if (about === 'none') return undefined;
      return about === 'other' ? { stage: 'which', paste: pasting.paste } : filled(pasting.paste, about);
    }
    case 'which':
      return filled(pasting.paste, { isHere: true, adapter: Number(id) });
    default:
      return undefined;
  }
}

/** What is asked now about a text, with the lines that were understood of it. */
export function pastingSays(
  call: Call,
  pasting: Exclude<Pasting, { stage: 'text' }>,
): { readonly found: readonly string[]; readonly say: string; readonly choices: readonly Option[] } {
  const found = understood(pasting.paste);
  switch (pasting.stage) {
    case 'whose':
      return { found, say: pasting.left[0]?.say ?? '', choices: pasting.left[0]?.choices ?? [] };
    case 'here':
      return { found, ...hereQuestion(pasting.paste) };
    case 'which':
      return { found, say: say('paste.which'), choices: whichAdapter(pasting.paste) };
    case 'filled':
      return filledSays(call, pasting.answers);
  }
}

function whoseOrHere(paste: Paste, left: readonly WhoseQuestion[]): Pasting {
  return left.length > 0 ? { stage: 'whose', paste, left } : { stage: 'here', paste };
}

function filledSays(call: Call, answers: readonly PastedAnswer[]): ReturnType<typeof pastingSays> {
  const kind = answers.length === 0 ? 'keep' : 'fill';
  // The first line says that they are filled in, and they are not yet.
  const [, ...found] = answers.length === 0 ? [] : filledLines(call.rules, answers);
  return {
    found: found.map((line) => line.trim()),
    say: say(`page.paste-${kind}`),
    choices: [
      { id: 'yes', title: say(`page.paste-${kind}-yes`) },
      { id: 'no', title: say('page.paste-fill-no') },
    ],
  };
}
