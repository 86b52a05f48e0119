import type { MarkedToken, Token } from 'marked';
import { resolved } from './characters.js';
import type { Inline, Phrase } from './page.js';
import { plainOf } from './plain.js';

/** How many lines a piece of source text goes down. */
export function linesDown(raw: string): number {
  return raw.split('\n').length - 1;
}

/** Tokens with the line each begins in, counted from `line`. */
export function placed(
  tokens: readonly Token[],
  line: number,
): readonly { readonly token: MarkedToken; readonly line: number }[] {
  let at = line;
  return tokens.map((token) => {
    const begins = at;
    at += linesDown(token.raw);
    // No extension of the lexer is in use, so there are only tokens of its own.
    return { token: token as MarkedToken, line: begins };
  });
}

/** The parts of a line of text, from the lexer's tokens. */
export function readPhrase(tokens: readonly Token[] = [], line: number): Phrase {
  return placed(tokens, line).flatMap(({ token, line: at }) => part(token, at));
}

function part(token: MarkedToken, line: number): readonly Inline[] {
  switch (token.type) {
    case 'text':
      if (token.tokens) return readPhrase(token.tokens, line);
      return [{ kind: 'words', text: resolved(token.text), line }];
    case 'escape':
      return [{ kind: 'words', text: token.text, line }];
    case 'codespan':
      return [{ kind: 'code', text: token.text, line }];
    case 'strong':
      return [{ kind: 'strong', parts: readPhrase(token.tokens, line), line }];
    case 'em':
      return [{ kind: 'stressed', parts: readPhrase(token.tokens, line), line }];
    case 'del':
      return readPhrase(token.tokens, line);
    case 'link':
      return [{ kind: 'link', to: token.href, parts: readPhrase(token.tokens, line), line }];
    case 'image': {
      const shows = plainOf(readPhrase(token.tokens, line)).trim();
      return [{ kind: 'picture', from: token.href, shows, line }];
    }
    case 'br':
      return [{ kind: 'break', line }];
    case 'html':
      return [{ kind: 'raw', text: token.text, line }];
    default:
      return [];
  }
}
