import type { AskedQuestion, Host, Lab, Look, Ran, Story } from '../types.js';

/** What is known from outside about the site: what people tell of the past, and what they see that no packet shows. */
export interface Scene {
  readonly story: Story;
  /** Wins over every look, by the id of the question. The word `cant-tell` is an answer too. */
  readonly plain: Readonly<Record<string, string | boolean>>;
  readonly role: 'site';
}

export type Answer = Look['answer'];

/** Where somebody sits who is asked one question: what they can do, and the log of it. */
export interface Seat {
  readonly lab: Lab;
  readonly question: AskedQuestion;
  readonly scene: Scene;
  readonly ran: readonly Ran[];
  /** A command on one of the devices that people have before them. */
  run(host: Host, argv: readonly string[], timeoutMs?: number): Promise<Ran>;
  /** Something looked at that is no command: a light, a screen. */
  saw(host: Host, what: string, words: string): void;
}

/** How one question is answered on site. */
export type Eye = (seat: Seat) => Answer | Promise<Answer>;
export type Eyes = Readonly<Record<string, Eye>>;

export const CANT_TELL: Answer = { kind: 'cant-tell' };

export function value(given: string | boolean | number | readonly string[]): Answer {
  return { kind: 'value', value: given };
}

export function pasted(text: string, from: 'this-computer' | 'phone' | 'camera'): Answer {
  return { kind: 'paste', text, from };
}

/** The answer of somebody who needs no look for it. */
export function always(given: string | boolean | number | readonly string[]): Eye {
  return () => value(given);
}

/** Nobody on this site could tell. `why` is for the reader of the table. */
export function nobodyKnows(_why: string): Eye {
  return () => CANT_TELL;
}

export function seatOf(lab: Lab, question: AskedQuestion, scene: Scene): Seat {
  const ran: Ran[] = [];
  return {
    lab,
    question,
    scene,
    ran,
    run: async (host, argv, timeoutMs = 4000) => {
      const one = await lab.run(host, argv, { timeoutMs });
      ran.push(one);
      return one;
    },
    saw: (host, what, words) => {
      ran.push({ host, argv: [`(${what})`], code: 0, stdout: words, stderr: '', ms: 0, timedOut: false });
    },
  };
}
