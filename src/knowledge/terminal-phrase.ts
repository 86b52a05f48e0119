import wrapAnsi from 'wrap-ansi';
import { say } from '../messages/say.js';
import type { Inline, Phrase } from './page.js';
import { isRelative, linkedFile, placeOf } from './place.js';

/** Colours text, or leaves it alone: colour never says anything that the words do not. */
export type Paint = (style: 'bold' | 'cyan', text: string) => string;

/** How wide the page is in columns, and how it is coloured. */
export interface Look {
  readonly width: number;
  readonly paint: Paint;
}

export const PLAIN: Paint = (_, text) => text;

/** Breaks text into lines of at most `width` columns, within a word only where it does not fit by itself. */
export function wrapped(text: string, width: number): readonly string[] {
  const lines = wrapAnsi(text, width, { hard: true }).split('\n');
  return lines.map((line) => line.replaceAll('\u00a0', ' ').trimEnd());
}

/** The same for what is typed as it stands: every space is kept. */
export function cut(text: string, width: number): readonly string[] {
  const spaced = text.replaceAll('\t', '    ');
  return wrapAnsi(spaced, width, { hard: true, wordWrap: false, trim: false })
    .split('\n')
    .map((line) => line.trimEnd());
}

/** A phrase as one text with its line breaks; links to pages of ours name the page that `whydark article` opens. */
export function phraseText(parts: Phrase, paint: Paint): string {
  return parts.map((part) => partText(part, paint)).join('');
}

function partText(part: Inline, paint: Paint): string {
  switch (part.kind) {
    case 'words':
      return part.text.replace(/[ \t\n]+/g, ' ');
    case 'code':
      return paint('cyan', `\`${part.text.replace(/[ \t\n]+/g, ' ')}\``);
    case 'strong':
      return paint('bold', phraseText(part.parts, paint));
    case 'stressed':
      return phraseText(part.parts, paint);
    case 'link': {
      const text = phraseText(part.parts, paint);
      const id = pageId(part.to);
      return id === undefined ? text : say('article.link', { text, id });
    }
    case 'picture':
      return say('article.picture', { shows: part.shows });
    case 'break':
      return '\n';
    case 'raw':
      return '';
  }
}

/** The id of the page a link leads to; where it stands in the folders does not matter here. */
function pageId(to: string): string | undefined {
  if (!isRelative(to) || to.startsWith('#')) return undefined;
  const name =
    linkedFile('', to.replace(/^(?:\.{1,2}\/)+/, ''))
      ?.split('/')
      .at(-1) ?? '';
  return placeOf(`how-to/${name}`)?.id;
}
