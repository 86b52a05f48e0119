import { say } from '../messages/say.js';
import { clean } from './clean.js';

/** So many characters of one text stand in a ticket. The call record keeps it all. */
export const LONGEST = 2000;

/**
 * Text fit to stand anywhere in the markdown of a ticket: on one line, cut after 2,000 characters with a note,
 * and read as nothing but text by CommonMark 0.31.2 and by GFM's tables, strikethrough, footnotes and autolinks.
 */
export function escapeText(text: string): string {
  const characters = [...clean(text)];
  const left = characters.length - LONGEST;
  if (left <= 0) return escapeMarkdown(characters.join(''));
  return say('ticket.cut', { text: escapeMarkdown(characters.slice(0, LONGEST).join('').trim()), left });
}

function escapeMarkdown(line: string): string {
  return (
    line
      // GFM looks for e-mail addresses after it has taken the backslashes away: only a space stops it.
      .replace(/(?<=[A-Za-z0-9.+_-])@(?=[A-Za-z0-9][A-Za-z0-9_-]*\.)/g, ' @ ')
      .replace(/[\\`*[\]|~]|<(?! )|&(?=[#A-Za-z0-9])|(?<![A-Za-z0-9])_|_(?![A-Za-z0-9])/g, '\\$&')
      .replace(/(?<=[A-Za-z]):(?=\/)/g, '\\:')
      .replace(/(?<=www)\./gi, '\\.')
      .replace(/^(?:[#>=]|[-+](?=[-+ ]|$))|(?<![#\\])#+$/g, '\\$&')
      .replace(/^(\d{1,9})(?=[.)](?: |$))/, '$1\\')
  );
}
