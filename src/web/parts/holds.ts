import type { HandedOver } from '../../call/record/handed-over.js';
import { say } from '../../messages/say.js';

/** How much of each kind a call holds, as a list in words. */
export function holdsWords({ answers, texts, notes, tried }: HandedOver): string {
  const all: readonly (readonly [number, string])[] = [
    [answers, say(answers === 1 ? 'page.answers-one' : 'page.answers-many', { count: answers })],
    [texts, say(texts === 1 ? 'page.texts-one' : 'page.texts-many', { count: texts })],
    [notes, say(notes === 1 ? 'page.notes-one' : 'page.notes-many', { count: notes })],
    [tried, say(tried === 1 ? 'page.tried-one' : 'page.tried-many', { count: tried })],
  ];
  const words = all.flatMap(([count, one]) => (count === 0 ? [] : one));
  return words.length === 0 ? say('page.holds-nothing') : words.join(', ');
}
