import type { RawAnswer } from '../answers/answer.js';
import type { Conflict } from '../findings/contradictions.js';
import { inWords } from '../messages/say.js';
import type { RuleBase } from '../rulebase/records.js';
import { showMoment } from '../values/moment.js';
import { advance, type Call, openCall } from './call.js';
import { type CallEvent, type CallHeader, RECORD_FORMAT, type Role } from './events.js';
import { VERSION } from './version.js';

/** A caller written down: what they would say if asked, and what remedies would do at their site. */
export interface Script {
  readonly title: string;
  /** Who calls, from where, what is really wrong: for the reader, not for the program. */
  readonly story: string;
  readonly opened: string;
  readonly role: Role;
  /** By question. A question that is not here is answered *can't tell*. */
  readonly answers: Readonly<Record<string, RawAnswer>>;
  /** By remedy. One that is not here can't be done. */
  readonly remedies: Readonly<
    Record<string, { readonly took: 'yes' | 'no' | 'cant-tell'; readonly picture: 'yes' | 'no' }>
  >;
  /** Answers the caller takes back: when `after` has been answered, or that remedy tried, `question` is answered anew. */
  readonly corrections?: readonly {
    readonly after: string;
    readonly question: string;
    readonly answer: RawAnswer;
  }[];
  /** When the tool asks for a second look at an answer, alone or with another that it does not go with: what it is then. */
  readonly secondThoughts?: Readonly<Record<string, RawAnswer>>;
  readonly notes?: readonly { readonly after: string; readonly text: string }[];
  /** The call is stopped after so many events, as somebody would who has to leave. */
  readonly stopAfter?: number;
}

export interface Played {
  readonly header: CallHeader;
  readonly events: readonly CallEvent[];
  readonly call: Call;
}

/** A call longer than this goes round in circles. */
const LONGEST = 200;
const SECONDS_BETWEEN = 20;

type Happening = CallEvent extends infer E ? (E extends CallEvent ? Omit<E, 'at'> : never) : never;

/** Told of the header and of each event as it happens, as a record is. */
export interface Keep {
  readonly header?: (header: CallHeader) => void;
  readonly event?: (event: CallEvent) => void;
  /** Shown the call before each answer. */
  readonly before?: (call: Call) => void;
}

/** Holds a whole call with a written-down caller, the way the terminal would. Throws where it never ends. */
export async function playScript(
  rules: RuleBase,
  digest: string,
  script: Script,
  id: string,
  keep: Keep = {},
): Promise<Played> {
  const header: CallHeader = {
    record: RECORD_FORMAT,
    id,
    opened: script.opened,
    whydark: VERSION,
    rules: { version: rules.manifest.version, digest },
    role: script.role,
  };
  keep.header?.(header);
  const events: CallEvent[] = [];
  let call = await openCall(rules, digest, header);
  const happen = async (happening: Happening): Promise<void> => {
    const seconds = Date.parse(script.opened) / 1000 + (events.length + 1) * SECONDS_BETWEEN;
    const at = `${showMoment(seconds).replace(' ', 'T')}.000Z`;
    const event: CallEvent = { at, ...happening };
    const next = await advance(call, event);
    if (!next.ok) throw new Error(`${script.title}: ${inWords(next.problem)}`);
    keep.event?.(event);
    events.push(event);
    call = next.value;
  };
  const follow = async (after: string): Promise<void> => {
    for (const note of script.notes ?? [])
      if (note.after === after) await happen({ type: 'noted', text: note.text });
    for (const { after: when, question, answer } of script.corrections ?? []) {
      if (when === after) await happen({ type: 'answered', question, answer, origin: 'said' });
    }
  };
  while (call.state.closed === undefined) {
    if (events.length > LONGEST) throw new Error(`${script.title}: the call never ends`);
    if (script.stopAfter !== undefined && events.length >= script.stopAfter) {
      await happen({ type: 'closed', how: 'stopped' });
      break;
    }
    keep.before?.(call);
    const { happening, after } = respond(call, script);
    await happen(happening);
    await follow(after);
  }
  return { header, events, call };
}

function respond(
  { step, situation }: Call,
  script: Script,
): { readonly happening: Happening; readonly after: string } {
  switch (step.kind) {
    case 'ask': {
      const answer = Object.hasOwn(script.answers, step.question)
        ? (script.answers[step.question] ?? null)
        : null;
      return {
        happening: { type: 'answered', question: step.question, answer, origin: 'said' },
        after: step.question,
      };
    }
    case 'read-back':
      return {
        happening: readBack(step.question, script, situation.revised),
        after: `read-back:${step.question}`,
      };
    case 'check-answers':
      return { happening: secondLook(step.conflict, script, situation.revised), after: step.conflict.id };
    case 'spoilt-check':
      return { happening: { type: 'tester-dealt', fault: step.fault, outcome: 'left' }, after: step.fault };
    case 'try': {
      const outcome = Object.hasOwn(script.remedies, step.remedy) ? script.remedies[step.remedy] : undefined;
      const happening: Happening = outcome
        ? { type: 'tried', remedy: step.remedy, ...outcome }
        : { type: 'passed-over', step: `try:${step.remedy}` };
      return { happening, after: step.remedy };
    }
    case 'visit':
      return { happening: { type: 'closed', how: 'visit' }, after: 'visit' };
    case 'end': {
      const how = step.how === 'picture-back' ? 'picture-back' : 'out-of-scope';
      return { happening: { type: 'closed', how }, after: 'end' };
    }
  }
}

function readBack(
  question: string,
  { secondThoughts = {} }: Script,
  revised: ReadonlySet<string>,
): Happening {
  return Object.hasOwn(secondThoughts, question) && !revised.has(question)
    ? { type: 'answered', question, answer: secondThoughts[question] ?? null, origin: 'said' }
    : { type: 'agreed', question };
}

function secondLook(
  { id, between }: Conflict,
  { secondThoughts = {} }: Script,
  revised: ReadonlySet<string>,
): Happening {
  const question = between.find((one) => Object.hasOwn(secondThoughts, one) && !revised.has(one));
  if (question === undefined) return { type: 'kept', contradiction: id };
  return { type: 'answered', question, answer: secondThoughts[question] ?? null, origin: 'said' };
}
