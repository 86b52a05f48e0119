import { clean } from './clean.js';
import { escapeText } from './escape.js';
import { mask } from './mask.js';

/** Puts text into a ticket so that it stays text. */
export interface Pen {
  /** What a person typed, or a sentence that was filled from it. `about` is the question it answers. */
  readonly typed: (text: string, about?: string) => string;
  /** Words of the rule base, versions and ids: never masked. */
  readonly ours: (text: string) => string;
}

/** Masks before it cuts: half of a secret would not be known as one. */
export function makePen({ unmasked }: { readonly unmasked: boolean }): Pen {
  return {
    typed: (text, about = '') => escapeText(unmasked ? text : mask(clean(text), about)),
    ours: escapeText,
  };
}
