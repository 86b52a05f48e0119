import type { Call } from '../call/call.js';
import type { Arrived } from './arrived.js';
import type { Link } from './link.js';
import type { Pasting } from './pasting.js';

/** What is being asked on the page: the step of the call, or something between two steps. */
export type Mode =
  | { readonly kind: 'step' }
  | { readonly kind: 'pick' }
  | { readonly kind: 'change'; readonly question: string }
  | { readonly kind: 'check'; readonly remedy: string }
  | { readonly kind: 'note' }
  | { readonly kind: 'told' }
  | { readonly kind: 'paste'; readonly pasting: Pasting }
  | { readonly kind: 'stop' }
  | { readonly kind: 'forget' };

/** On a narrow screen one part of the call shows at a time; on a wide one all of them. */
export const VIEWS = ['step', 'path', 'causes', 'answers', 'ticket'] as const;
export type View = (typeof VIEWS)[number];

/** All that the page shows. */
export interface Page {
  readonly place: 'start' | 'call' | 'sums' | 'arrived';
  readonly call: Call | undefined;
  /** The record of the call as it is kept: everything that happened, what was taken back too. */
  readonly record: string;
  readonly mode: Mode;
  readonly view: View;
  /** A call that was read from outside and waits for a yes. */
  readonly arrived: Arrived | undefined;
  /** Whether the ways to hand the call over stand open, and the link once it is made. */
  readonly handing: boolean;
  readonly link: Link | undefined;
  /** Whether the list of keys stands open. */
  readonly keys: boolean;
  /** Articles that stand open in the step. */
  readonly reading: readonly string[];
  /** The stage of the picture path that stands open. */
  readonly stage: string | undefined;
  /** A sentence that is said once, also to those who hear the page. */
  readonly notice: string;
  readonly busy: boolean;
  /** Whether letters and digits command; somebody who dictates may want them off (WCAG 2.2, 2.1.4). */
  readonly letters: boolean;
}

export const FRESH: Page = {
  place: 'start',
  call: undefined,
  record: '',
  mode: { kind: 'step' },
  view: 'step',
  arrived: undefined,
  handing: false,
  link: undefined,
  keys: false,
  reading: [],
  stage: undefined,
  notice: '',
  busy: false,
  letters: true,
};

/** Holds the page and tells of each change. */
export interface Store {
  readonly get: () => Page;
  readonly set: (part: Partial<Page>) => void;
}

/** A store that tells `changed` of every change. */
export function storeOf(start: Page, changed: (page: Page) => void): Store {
  let now = start;
  return {
    get: () => now,
    set: (part) => {
      now = { ...now, ...part };
      changed(now);
    },
  };
}
