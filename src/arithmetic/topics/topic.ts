import type { MessageId, Sentence } from '../../messages/say.js';
import type { Result } from '../../values/result.js';

/** What a topic may be given: text as typed, to be parsed by the topic. Missing ones are not there. */
export type Given = Readonly<Record<string, string>>;

/** One number, address or choice that a topic works with. Its id is the option's name: `--camera-mask`. */
export interface TopicInput {
  readonly id: string;
  /** The words that ask for it. */
  readonly ask: MessageId;
  /** A choice is answered with one of these. */
  readonly choices?: readonly { readonly id: string; readonly title: MessageId }[];
  /** May be left out: the sum then says what it could not tell. */
  readonly optional?: boolean;
}

/** What came of a sum. */
export interface Reckoning {
  /** Where the sum judges: an estimate gives no more than this, and is never proof. */
  readonly verdict?: 'fine' | 'doubtful' | 'impossible';
  /** The sum, line by line, with units and the source of each constant. */
  readonly lines: readonly Sentence[];
  /** The input that would decide it, where the verdict is doubtful. */
  readonly decides?: string;
  /** The numbers, for `--json`: plain data with units in the names. */
  readonly data: Readonly<Record<string, unknown>>;
  /** The table of a topic that has one, as comma-separated values (RFC 4180). */
  readonly csv?: string;
}

/** A sum that can be done alone: `whydark reckon <id>`. */
export interface Topic {
  readonly id: string;
  readonly title: MessageId;
  readonly inputs: readonly TopicInput[];
  /** Whether its sum comes with a table as comma-separated values. */
  readonly hasTable?: boolean;
  /** Gives the sum, or the problem with what was typed and the input it belongs to. */
  readonly reckon: (given: Given) => Result<Reckoning> & { readonly input?: string };
}
