import type { RawAnswer } from '../../../src/answers/answer.js';
import { parseAnswer } from '../../../src/answers/parse-answer.js';
import { advance, type Call, openCall } from '../../../src/call/call.js';
import { type CallEvent, RECORD_FORMAT } from '../../../src/call/events.js';
import { answersFrom, cameraOf, pasteEvent } from '../../../src/call/from-paste.js';
import { VERSION } from '../../../src/call/version.js';
import type { LoadedRules } from '../../../src/files/load-rules.js';
import { defectsOf } from '../../../src/findings/defects.js';
import { holds } from '../../../src/findings/holds.js';
import { readPaste } from '../../../src/intake/paste.js';
import { inWords } from '../../../src/messages/say.js';
import type { Remedy } from '../../../src/rulebase/records.js';
import { visitOrder } from '../../../src/steps/orders.js';
import type { Step } from '../../../src/steps/step.js';
import { visitMinutes, wayMinutes } from '../../../src/steps/ways.js';
import type { AskedQuestion, Injected, Look } from '../types.js';
import type { LabCall, Tried } from './lab-call.js';

/** How a question is answered on site; the noise of people is in it where there is any. */
export type Looks = (question: AskedQuestion, again: boolean) => Promise<Look>;

/** What is wrong on the site: nothing, one thing or two. `back` says whether the picture really is. */
export interface World {
  readonly causes: readonly string[];
  readonly parts: readonly Injected[];
  readonly back: () => Promise<boolean>;
}

/** Told of each step as it happens, for whoever wants to see the packets. */
export type Watch = (line: string) => void;

/** A call longer than this goes round in circles. */
const LONGEST = 150;

type Happening = CallEvent extends infer E ? (E extends CallEvent ? Omit<E, 'at'> : never) : never;

/**
 * Holds a whole call over a real site until the picture is back, somebody is sent, or the call ends. Remedies are
 * applied to the site where they mend what is wrong with it; whether the picture is back is looked at, not known.
 */
export async function holdLabCall(
  { rules, digest }: LoadedRules,

  world: World,
  looks: Looks,
  watch: Watch = () => {},
): Promise<LabCall> {
  const questions = new Map(rules.questions.map((one) => [one.id, asked(one)]));
  let call = await openCall(rules, digest, {
    record: RECORD_FORMAT,
    id: 'lab',
    opened: '2026-11-25T09:00:00.000Z',
    whydark: VERSION,
    rules: { version: rules.manifest.version, digest },
    role: 'site',
  });
  const left = new Set(world.parts);
  const tried: Tried[] = [];
  const visitTried: { readonly remedy: string; readonly mends: boolean }[] = [];
  const gatesBroken: string[] = [];
  let minutes = 0;
  let count = 0;
  let number = 0;

  const happen = async (happening: Happening): Promise<void> => {
    number += 1;
    const at = `2026-11-25T${String(9 + Math.floor(number / 180)).padStart(2, '0')}:${String(Math.floor((number % 180) / 3)).padStart(2, '0')}:${String((number % 3) * 20).padStart(2, '0')}.000Z`;
    const next = await advance(call, { at, ...happening } as CallEvent);
    if (!next.ok) throw new Error(inWords(next.problem));
    call = next.value;
  };

  const look = async (id: string, again: boolean): Promise<Look> => {
    const question = questions.get(id);
    if (!question) throw new Error(`no question ${id}`);
    return looks(question, again);
  };

  while (call.state.closed === undefined && number < LONGEST) {
    const { step } = call;
    const before = number;
    minutes += minutesOf(call);
    if (step.kind === 'ask') {
      count += 1;
      const seen = await look(step.question, call.state.askedBefore.has(step.question));
      watch(`ask ${step.question}: ${said(seen)}`);
      await answer(call, step.question, seen, happen);
    } else if (step.kind === 'read-back') {
      const seen = await look(step.question, true);
      watch(`read back ${step.question}: ${said(seen)}`);
      await readBack(call, step.question, seen, happen);
    } else if (step.kind === 'check-answers') {
      watch(`do not go together: ${step.conflict.between.join(', ')}`);
      await checkAgain(call, step.conflict.id, step.conflict.between, look, happen);
    } else if (step.kind === 'spoilt-check') {
      watch(`spoilt check: ${step.fault}`);
      await happen({ type: 'tester-dealt', fault: step.fault, outcome: 'left' });
    } else if (step.kind === 'try') {
      const remedy = rules.remedies.find(({ id }) => id === step.remedy);
      if (!remedy) throw new Error(`no remedy ${step.remedy}`);
      if (isShut(call, remedy)) gatesBroken.push(remedy.id);
      watch(standing(call));
      tried.push({
        remedy: remedy.id,
        rank: rankOf(call, world.causes),
        mends: mendsOne(left, remedy.id),
        standing: standing(call),
      });
      const part = [...left].find(({ mends }) => mends.includes(remedy.id));
      if (part) {
        await part.mend();
        left.delete(part);
      }
      const isBack = await world.back();
      watch(
        `try ${remedy.id}: ${part ? 'mends' : 'mends nothing here'}, picture ${isBack ? 'back' : 'not back'}`,
      );
      await happen({
        type: 'tried',
        remedy: remedy.id,
        took: part || isBack ? 'yes' : 'cant-tell',
        picture: isBack ? 'yes' : 'no',
      });
    } else if (step.kind === 'visit') {
      watch(standing(call));
      watch('somebody has to be sent');
      const list = visitOrder(call.situation).map(({ id }) => id);
      await happen({ type: 'closed', how: 'visit' });
      for (const remedy of list) {
        const part = [...left].find(({ mends }) => mends.includes(remedy));
        visitTried.push({ remedy, mends: part !== undefined });
        if (part) {
          await part.mend();
          left.delete(part);
        }
        const isBack = await world.back();
        watch(
          `there: ${remedy}, ${part ? 'mends' : 'mends nothing here'}, picture ${isBack ? 'back' : 'not back'}`,
        );
        if (isBack) break;
      }
    } else {
      await happen({ type: 'closed', how: step.how === 'picture-back' ? 'picture-back' : 'out-of-scope' });
    }
    if (number === before) throw new Error(`nothing came of ${step.kind}`);
  }
  const top = leader(call);
  return {
    causes: world.causes,
    closed: call.state.closed ?? 'never',
    defects: defectsOf(rules, call.state.answers, call.assessed.settled).map(({ finding }) => finding),
    isBack: await world.back(),
    leader: top.id,
    probability: top.probability,
    finalRank: rankOf(call, world.causes),
    tried,
    wrong: tried.filter(({ mends }) => !mends).length,
    questions: count,
    minutes: Math.round(minutes * 10) / 10,
    visitTried,
    visits: call.state.closed === 'visit' ? 1 : 0,
    gatesBroken,
  };
}

function asked(one: {
  readonly id: string;
  readonly prompt: string;
  readonly help?: string;
  readonly answer: unknown;
  readonly place: string;
  readonly who: string;
}): AskedQuestion {
  return one as AskedQuestion;
}

type Happen = (happening: Happening) => Promise<void>;

async function answer(call: Call, question: string, { answer: given }: Look, happen: Happen): Promise<void> {
  if (given.kind === 'paste') {
    const camera = cameraOf(call.state, call.rules);
    const paste = readPaste(given.text, camera);
    const adapter = paste.way.adapter === undefined ? {} : { adapter: paste.way.adapter };
    const about = { ...adapter, isHere: true };
    const answers = answersFrom(call.rules, paste, about, camera);
    if (answers.length > 0) await happen(pasteEvent(call.state, paste, answers, about));
    if (answers.some((one) => one.question === question)) return;
  }
  const value = given.kind === 'value' ? given.value : null;
  await happen({ type: 'answered', question, answer: value, origin: 'said' } as Happening);
}

async function readBack(
  call: Call,
  question: string,
  { answer: given }: Look,
  happen: Happen,
): Promise<void> {
  const asked = call.rules.questions.find(({ id }) => id === question);
  const again = given.kind === 'value' && asked ? parseAnswer(asked, given.value as RawAnswer) : undefined;
  const now = call.state.answers.get(question)?.value;
  if (given.kind === 'value' && again?.ok && JSON.stringify(again.value) !== JSON.stringify(now)) {
    await happen({ type: 'answered', question, answer: given.value, origin: 'said' } as Happening);
    return;
  }
  await happen({ type: 'agreed', question });
}

async function checkAgain(
  call: Call,
  id: string,
  between: readonly string[],
  look: (id: string, again: boolean) => Promise<Look>,
  happen: Happen,
): Promise<void> {
  for (const question of between) {
    const was = JSON.stringify(call.state.answers.get(question)?.value);
    const seen = await look(question, true);
    if (seen.answer.kind !== 'value') continue;
    const probe = await advance(call, {
      at: '2026-11-25T09:00:00.000Z',
      type: 'answered',
      question,
      answer: seen.answer.value,
      origin: 'said',
    } as CallEvent);
    if (!probe.ok || JSON.stringify(probe.value.state.answers.get(question)?.value) === was) continue;
    await happen({ type: 'answered', question, answer: seen.answer.value, origin: 'said' } as Happening);
    return;
  }
  await happen({ type: 'kept', contradiction: id });
}

function said({ answer: given }: Look): string {
  return given.kind === 'value'
    ? JSON.stringify(given.value)
    : given.kind === 'paste'
      ? '(pasted)'
      : "can't tell";
}

/** A remedy that may not be proposed yet; its gate is looked at here by itself. */
function isShut({ assessed }: Call, { gate }: Remedy): boolean {
  return gate !== undefined && holds(gate.condition, assessed.settled.facts) !== true;
}

/** What is taken for likely now, and what is known, for whoever watches. */
function standing({ situation, assessed }: Call): string {
  const likely = situation.model.hypotheses
    .map(({ id }, at) => ({ id, probability: situation.probabilities[at] ?? 0 }))
    .sort((a, b) => b.probability - a.probability)
    .slice(0, 6)
    .map(({ id, probability }) => `${id} ${Math.round(probability * 100)} %`);
  const known = [...assessed.settled.findings].map(([id, { value }]) => `${id}=${value}`);
  return `likely: ${likely.join(', ')}\nknown: ${known.join(' ')}`;
}

function mendsOne(left: ReadonlySet<Injected>, remedy: string): boolean {
  return [...left].some(({ mends }) => mends.includes(remedy));
}

/** The place of the best placed of the true causes, from 1. */
function rankOf({ situation }: Call, causes: readonly string[]): number {
  const order = situation.model.hypotheses
    .map(({ id }, at) => ({ id, probability: situation.probabilities[at] ?? 0 }))
    .sort((a, b) => b.probability - a.probability);
  const at = order.findIndex(({ id }) => causes.includes(id));
  return at < 0 ? order.length + 1 : at + 1;
}

function leader({ situation }: Call): { readonly id: string; readonly probability: number } {
  const all = situation.model.hypotheses.map(({ id }, at) => ({
    id,
    probability: situation.probabilities[at] ?? 0,
  }));
  return all.reduce((best, one) => (one.probability > best.probability ? one : best), {
    id: '',
    probability: -1,
  });
}

function minutesOf({ rules, step, state }: Call): number {
  const record = recordOf(rules, step);
  if (step.kind === 'visit') return visitMinutes(rules.manifest);
  if (step.kind === 'read-back') return 0.3;
  return record === undefined ? 0 : record.minutes + wayMinutes(rules.manifest, state.here, record.place);
}

function recordOf(
  { questions, remedies }: Call['rules'],
  step: Step,
): { readonly minutes: number; readonly place: string } | undefined {
  if (step.kind === 'ask') return questions.find(({ id }) => id === step.question);
  return step.kind === 'try' ? remedies.find(({ id }) => id === step.remedy) : undefined;
}
