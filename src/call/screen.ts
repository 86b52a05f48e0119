import type { PathStage } from '../diagnosis/diagnosis.js';
import { picturePath } from '../diagnosis/path.js';
import { cautionsOf, sumsOf, visitOf } from '../diagnosis/plan.js';
import { defectReports, worksOf } from '../diagnosis/reports.js';
import { isAway } from '../findings/silent.js';
import { inWords, say } from '../messages/say.js';
import type { Question, Remedy } from '../rulebase/records.js';
import { answerInWords } from './answer-words.js';
import { type Call, diagnosisOf } from './call.js';
import { whyLines, whyTry } from './why-lines.js';

/** What a face asks for: one of a few, several of a few, or a line of text. */
export type Input =
  | { readonly kind: 'choice'; readonly choices: readonly Option[] }
  | { readonly kind: 'several'; readonly choices: readonly Option[] }
  | { readonly kind: 'field'; readonly was?: string };

export interface Option {
  readonly id: string;
  readonly title: string;
}

/** A step in words, the same for every face. */
export interface Screen {
  readonly heading: string;
  /** Cautions, before anything else is read out. */
  readonly cautions: readonly string[];
  /** The words to say, one action a line. */
  readonly say: readonly string[];
  /** How to find the answer, or what follows. */
  readonly help: readonly string[];
  readonly why: readonly string[];
  /** Sums that go with the step, line by line: an address to use, and what to check first. */
  readonly sums: readonly string[];
  readonly path: readonly PathStage[];
  /** Articles and how-tos that belong to the step, as files of `knowledge/`; most telling first. */
  readonly reads: readonly string[];
  readonly input: Input;
  /** Whether *can't tell* and *another step* make sense here. */
  readonly mayPass: boolean;
}

/** The present step of a call, in words. */
export function screenOf(call: Call): Screen {
  const { step, situation } = call;
  const path = picturePath(situation, worksOf(situation), defectReports(situation));
  const common = { path, cautions: [], help: [], why: [], sums: [], reads: [], mayPass: false };
  switch (step.kind) {
    case 'ask':
      return { ...common, ...askScreen(call, step) };
    case 'read-back':
      return { ...common, ...readBackScreen(call, step) };
    case 'check-answers':
      return { ...common, ...checkScreen(call, step) };
    case 'spoilt-check':
      return { ...common, ...spoiltScreen(call, step.fault) };
    case 'try':
      return { ...common, ...tryScreen(call, step) };
    case 'visit':
      return { ...common, ...visitScreen(call) };
    case 'end':
      return {
        ...common,
        heading: say('call.end.heading'),
        say: [diagnosisOf(call).verdict.says],
        help: [diagnosisOf(call).watch ?? say(`call.end.${step.how}`)],
        input: { kind: 'choice', choices: [{ id: 'close', title: say('call.end.close') }] },
      };
  }
}

type Part = Pick<Screen, 'heading' | 'say' | 'input'> & Partial<Screen>;
type StepOf<K> = Extract<Call['step'], { kind: K }>;

function questionOf(call: Call, id: string): Question {
  const question = call.rules.questions.find((one) => one.id === id);
  if (!question) throw new Error(`no question ${id}`);
  return question;
}

/** How a question is answered, with the answer it had. */
export function inputOf(call: Call, question: Question): Input {
  const { answer } = question;
  if ('choices' in answer) return { kind: answer.type, choices: answer.choices };
  if (answer.type === 'yes-no') {
    return {
      kind: 'choice',
      choices: [
        { id: 'yes', title: say('call.yes') },
        { id: 'no', title: say('call.no') },
      ],
    };
  }
  const was = call.state.answers.get(question.id);
  return was && was.value.kind !== 'cant-tell'
    ? { kind: 'field', was: answerInWords(question, was.value) }
    : { kind: 'field' };
}

/** A question put again, outside its turn: to change an earlier answer. */
export function questionScreen(call: Call, id: string): Pick<Screen, 'say' | 'help' | 'input'> {
  const question = questionOf(call, id);
  return { say: [question.prompt], help: [question.help], input: inputOf(call, question) };
}

function askScreen(call: Call, step: StepOf<'ask'>): Part {
  const question = questionOf(call, step.question);
  const asked = new Set(call.state.history.map((answer) => answer.question)).size + 1;
  const heading =
    step.purpose.kind === 'opening'
      ? say('call.ask.opening', { number: asked })
      : step.group.length > 1
        ? say('call.ask.group', { number: asked, left: step.group.length })
        : say('call.ask.heading', { number: asked });
  const reads = (question.howTo ?? []).map((id) => `how-to/${id}.md`);
  return { heading, ...questionScreen(call, question.id), why: whyLines(call, step), reads, mayPass: true };
}

function readBackScreen(call: Call, step: StepOf<'read-back'>): Part {
  const { question: id, because } = step;
  const question = questionOf(call, id);
  const answer = call.state.answers.get(id);
  const words = answer ? answerInWords(question, answer.value) : '';
  return {
    heading: say(`call.read-back.heading-${because}`),
    say: [
      say(`call.read-back.say-${because}`, { title: question.title, prompt: question.prompt, answer: words }),
    ],
    why: [say(`call.read-back.why-${because}`)],
    input: {
      kind: 'choice',
      choices: [
        { id: 'agrees', title: say('call.read-back.agrees') },
        { id: 'differs', title: say('call.read-back.differs') },
        { id: 'leave', title: say('call.read-back.leave') },
      ],
    },
  };
}

function checkScreen(call: Call, { conflict }: StepOf<'check-answers'>): Part {
  const ordered = [conflict.check, ...conflict.between.filter((id) => id !== conflict.check)];
  const choices = ordered.map((id) => {
    const question = questionOf(call, id);
    const answer = call.state.answers.get(id);
    const filling = { title: question.title, answer: answer ? answerInWords(question, answer.value) : '' };
    return { id: `change:${id}`, title: say('call.check.change', filling) };
  });
  return {
    heading: say('call.check.heading'),
    say: [typeof conflict.says === 'string' ? conflict.says : inWords(conflict.says)],
    help: [say('call.check.help')],
    input: { kind: 'choice', choices: [...choices, { id: 'keep', title: say('call.check.keep') }] },
  };
}

function spoiltScreen({ rules, situation }: Call, id: string): Part {
  const fault = rules['tester-faults'].find((one) => one.id === id);
  return {
    heading: say('call.spoilt.heading', { title: fault?.title ?? id }),
    say: fault?.help ?? [],
    sums: fault ? sumsOf(situation, fault) : [],
    help: [say('call.spoilt.help')],
    input: {
      kind: 'choice',
      choices: [
        { id: 'put-right', title: say('call.spoilt.put-right') },
        { id: 'left', title: say('call.spoilt.left') },
      ],
    },
  };
}

function tryScreen(call: Call, step: StepOf<'try'>): Part {
  const remedy = remedyOf(call, step.remedy);
  const place = call.rules.manifest.places.find(({ id }) => id === remedy.place)?.title ?? remedy.place;
  const isThere = isAway(call.rules, call.situation.settled);
  return {
    heading: say('call.try.heading', { title: remedy.title, place, minutes: remedy.minutes }),
    cautions: cautionsOf(call.rules, remedy),
    say: remedy.steps,
    sums: sumsOf(call.situation, remedy),
    why: whyTry(call, remedy),
    reads: articlesOf(call, remedy),
    input: {
      kind: 'choice',
      choices: [
        { id: 'back', title: say(isThere ? 'call.try.stays' : 'call.try.back') },
        { id: 'dark', title: say(isThere ? 'call.try.gone' : 'call.try.dark') },
        { id: 'not-now', title: say('call.try.not-now') },
      ],
    },
  };
}

/** The articles of what this remedy mends, likeliest first; two are enough to read on a call. */
function articlesOf({ situation, rules }: Call, { mends }: Remedy): readonly string[] {
  const { model, probabilities } = situation;
  return rules.causes
    .filter(({ id }) => mends.some(({ cause }) => cause === id))
    .map(({ id, stage }) => ({
      file: `causes/${stage}/${id}.md`,
      chance: probabilities[model.hypotheses.findIndex((one) => one.id === id)] ?? 0,
    }))
    .sort((a, b) => b.chance - a.chance)
    .slice(0, 2)
    .map(({ file }) => file);
}

/** The remedy of a step. */
export function remedyOf(call: Pick<Call, 'rules'>, id: string): Remedy {
  const remedy = call.rules.remedies.find((one) => one.id === id);
  if (!remedy) throw new Error(`no remedy ${id}`);
  return remedy;
}

/** After a remedy that did not bring the picture back: did it take? */
export function checkOf(call: Call, id: string): Pick<Screen, 'heading' | 'say' | 'input'> {
  return {
    heading: say('call.took.heading'),
    say: [remedyOf(call, id).check],
    input: {
      kind: 'choice',
      choices: [
        { id: 'yes', title: say('call.yes') },
        { id: 'no', title: say('call.no') },
        { id: 'cant-tell', title: say('call.cant-tell') },
      ],
    },
  };
}

function visitScreen(call: Call): Part {
  const visit = visitOf(call.situation);
  return {
    heading: say('call.visit.heading'),
    say: [
      say(call.state.header.role === 'site' ? 'call.visit.site' : 'call.visit.desk', {
        minutes: visit.minutes,
        days: visit.days,
      }),
    ],
    cautions: visit.cautions,
    help: [
      ...visit.doThere.map((title) => say('call.visit.do', { title })),
      ...visit.bring.map((item) => say('call.visit.bring', { item })),
    ],
    input: { kind: 'choice', choices: [{ id: 'close', title: say('call.visit.close') }] },
  };
}
