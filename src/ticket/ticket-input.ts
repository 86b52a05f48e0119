import type { Diagnosis } from '../diagnosis/diagnosis.js';

/** What the ticket says besides the diagnosis. All texts are as people typed them: nothing is masked or escaped yet. */
export interface TicketInput {
  readonly call: string;
  readonly opened: string;
  readonly closed?: string;
  readonly whydark: string;
  readonly role: 'desk' | 'site';
  readonly diagnosis: Diagnosis;
  /** Name or place of the camera, what the caller saw in their own words, since when, what was promised. */
  readonly head: readonly {
    readonly part: 'camera' | 'where' | 'words' | 'since' | 'promised';
    readonly title: string;
    readonly text: string;
  }[];
  readonly asked: readonly Asked[];
  readonly tried: readonly Tried[];
  readonly notes: readonly string[];
}

export interface Asked {
  readonly question: string;
  readonly title: string;
  /** The answer in words; "can't tell" included. */
  readonly answer: string;
  readonly origin: 'said' | 'agreed' | 'pasted' | 'read';
  /** The line of the pasted text it stands on. */
  readonly line?: number;
  /** Set aside by a remedy or a correction: what held before. */
  readonly superseded: boolean;
}

export interface Tried {
  readonly remedy: string;
  readonly title: string;
  readonly took: 'yes' | 'no' | 'cant-tell';
  /** `there`: it had been there before, too. */
  readonly picture: 'yes' | 'there' | 'no';
  /** The state it left the site in. */
  readonly leaves: string;
  /** The sums that went with it, line by line: an address that was used, and why. */
  readonly sums: readonly string[];
  readonly undo: string;
}
