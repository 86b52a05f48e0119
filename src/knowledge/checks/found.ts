import type { Sentence } from '../../messages/say.js';
import type { Article } from '../article.js';
import type { Place } from '../place.js';

/** One thing wrong in an article: the line it stands in, and a sentence that says what to write instead. */
export interface Found {
  readonly line: number;
  readonly says: Sentence;
}

/** What a file of the articles is checked against. */
export interface Known {
  /** The files of `knowledge/`, by path inside it. */
  readonly files: ReadonlySet<string>;
  /** Where the article of each cause belongs, whether it is written or not, with the title of the cause. */
  readonly causes: ReadonlyMap<string, string>;
}

/** An article with what its path says. */
export interface Checked {
  readonly file: string;
  readonly place: Place;
  readonly article: Article;
}
