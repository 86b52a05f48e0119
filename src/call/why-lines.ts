import { titleOf } from '../diagnosis/ranked.js';
import { say } from '../messages/say.js';
import { mentions } from '../rulebase/mentions.js';
import type { FindingId, Remedy } from '../rulebase/records.js';
import { questionsBehind } from '../steps/open-questions.js';
import type { Step } from '../steps/step.js';
import { whyAsk } from '../steps/why.js';
import type { Call } from './call.js';

type AskStep = Extract<Step, { kind: 'ask' }>;

/** Why a question is asked now, line by line. */
export function whyLines(call: Call, step: AskStep): readonly string[] {
  const { purpose } = step;
  switch (purpose.kind) {
    case 'opening':
      return [say('call.why.opening')];
    case 'closing':
      return [say('call.why.closing')];
    case 'gate': {
      const remedy = call.rules.remedies.find(({ id }) => id === purpose.remedy);
      const gate = remedy?.gate && mentions(remedy.gate.condition);
      const isGate = gate?.some((id) => questionsBehind(call.rules, id).includes(step.question));
      if (remedy?.askBefore && !isGate) return [say('call.why.before', { remedy: remedy.title })];
      return [
        say('call.why.gate', { remedy: remedy?.title ?? '' }),
        ...(remedy?.gate ? [remedy.gate.why] : []),
      ];
    }
    case 'soundness':
      return [say('call.why.soundness')];
    case 'finding':
      return [...togetherLine(call, step), ...findingLines(call, purpose.finding)];
  }
}

/** Where several questions are needed: what they settle together. */
function togetherLine({ rules }: Call, { group, purpose }: AskStep): readonly string[] {
  if (group.length < 2 || purpose.kind !== 'finding') return [];
  const title = rules.findings.find(({ id }) => id === purpose.finding)?.title ?? '';
  return [say('call.why.together', { count: group.length, title })];
}

const EFFECTS_SHOWN = 3;
/** A cause this unlikely is no reason. */
const LEAST_WORTH_SAYING = 0.01;

function findingLines({ rules, situation }: Call, id: FindingId): readonly string[] {
  const why = whyAsk(situation, id);
  const finding = rules.findings.find((one) => one.id === id);
  if (!why || !finding) return [];
  return [
    say('call.why.apart', {
      first: titleOf(rules, why.first.id),
      firstNow: percent(why.first.now),
      second: titleOf(rules, why.second.id),
      secondNow: percent(why.second.now),
    }),
    ...why.effects.slice(0, EFFECTS_SHOWN).map(({ value, first, second }) =>
      say('call.why.effect', {
        value: finding.values[value]?.title ?? value,
        first: percent(first),
        second: percent(second),
      }),
    ),
  ];
}

/** A probability as whole per cent. */
export function percent(probability: number): string {
  return say('call.percent', { number: Math.round(probability * 100) });
}

/** What a remedy would mend, likeliest first, a line each. */
export function whyTry({ rules, situation }: Call, remedy: Remedy): readonly string[] {
  const shares = remedy.mends
    .map(({ cause }) => {
      const h = situation.model.hypotheses.findIndex(({ id }) => id === cause);
      return { cause, now: situation.probabilities[h] ?? 0 };
    })
    .filter(({ now }, _, all) => now >= LEAST_WORTH_SAYING || all.length === 1)
    .sort((a, b) => b.now - a.now)
    .slice(0, EFFECTS_SHOWN);
  return shares.map(({ cause, now }) =>
    say('call.why.mends', { cause: titleOf(rules, cause), now: percent(now) }),
  );
}
