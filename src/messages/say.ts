import { ENGLISH } from './english.js';

/** The id of one of our sentences. */
export type MessageId = keyof typeof ENGLISH;

/** What a placeholder is filled with. */
export type Filling = Readonly<Record<string, string | number>>;

/** A sentence not yet in words: it can be kept, compared and translated. */
export interface Sentence {
  readonly id: MessageId;
  readonly with?: Filling;
}

/** Fills the `{name}` placeholders of a template. Throws when one has no filling: that is a fault of ours. */
export function fill(template: string, filling: Filling = {}): string {
  return template.replace(/\{([a-zA-Z][\w-]*)\}/g, (_, name: string) => {
    const value = filling[name];
    if (value === undefined) throw new Error(`no filling for {${name}} in "${template}"`);
    return String(value);
  });
}

/** The words of a sentence, placeholders filled. */
export function say(id: MessageId, filling?: Filling): string {
  return fill(ENGLISH[id], filling);
}

/** The words of a kept sentence. */
export function inWords(sentence: Sentence): string {
  return say(sentence.id, sentence.with);
}
