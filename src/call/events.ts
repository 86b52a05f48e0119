import type { Origin, RawAnswer } from '../answers/answer.js';

export type { RawAnswer };

/** The version of the call record's format: its first line carries it. */
export const RECORD_FORMAT = 1;

/** At whose hands the call is: the help desk's, or the installer's on site. */
export type Role = 'desk' | 'site';

/** The first line of a call record. `opened` is ISO 8601 in UTC; `digest` is SHA-256 in hex. */
export interface CallHeader {
  readonly record: number;
  readonly id: string;
  readonly opened: string;
  readonly whydark: string;
  readonly rules: { readonly version: string; readonly digest: string };
  readonly role: Role;
}

/** An answer out of a pasted text, with the line it stands on, counted from 1. */
export interface PastedAnswer {
  readonly question: string;
  readonly answer: RawAnswer;
  readonly line: number;
}

/** One thing that happened in a call. `at` is ISO 8601 in UTC. */
export type CallEvent = { readonly at: string } & (
  | {
      readonly type: 'answered';
      readonly question: string;
      readonly answer: RawAnswer;
      readonly origin: Origin;
      readonly paste?: string;
    }
  /** A text that was pasted, or read from this computer, without its secrets, and the answers it gave: one thing to take back. */
  | {
      readonly type: 'pasted';
      readonly paste: string;
      readonly origin: 'pasted' | 'read';
      readonly text: string;
      readonly answers: readonly PastedAnswer[];
      /** What stood out in it, in words. */
      readonly note?: string;
    }
  | { readonly type: 'agreed'; readonly question: string }
  /** The last thing that still held is taken back. */
  | { readonly type: 'undone' }
  | { readonly type: 'noted'; readonly text: string }
  | {
      readonly type: 'tried';
      readonly remedy: string;
      readonly took: 'yes' | 'no' | 'cant-tell';
      readonly picture: 'yes' | 'no';
    }
  | { readonly type: 'passed-over'; readonly step: string }
  | { readonly type: 'kept'; readonly contradiction: string }
  | { readonly type: 'tester-dealt'; readonly fault: string; readonly outcome: 'put-right' | 'left' }
  | { readonly type: 'moved'; readonly place: string }
  | { readonly type: 'closed'; readonly how: 'picture-back' | 'visit' | 'stopped' | 'out-of-scope' }
);
