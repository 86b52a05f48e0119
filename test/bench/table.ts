import type { Calibration } from './calls/calibration.js';
import type { Row } from './calls/rows.js';
import type { RatioRow } from './exact/ratios.js';
import type { PageSpeed } from './speed/page.js';
import type { PageWeight, Weight } from './speed/page-weight.js';

interface Shown {
  readonly ratios: readonly RatioRow[];
  readonly calls: Readonly<Record<string, readonly Row[]>>;
  readonly calibration: Readonly<Record<string, Calibration>>;
  readonly step: {
    readonly medianOverEngineRun: number;
    readonly p99OverEngineRun: number;
    readonly growthAtTenTimes: number;
  };
  readonly startUp: { readonly version: number; readonly firstQuestion: number | undefined };
  readonly page: { readonly speed: PageSpeed | undefined; readonly weight: PageWeight };
  readonly memory: { readonly call: number; readonly empty: number } | undefined;
}

const fixed = (number: number | undefined, digits: number) =>
  number === undefined ? '-' : number.toFixed(digits);

/** The results as one table of text, 80 columns wide. */
export function tableOf({ ratios, calls, calibration, step, startUp, page, memory }: Shown): string {
  return [
    'Expected minutes over the exact optimum           mean    p95   worst  models',
    ...ratios.map(
      ({ name, mean, p95, worst, models }) =>
        `  ${name.padEnd(44)} ${fixed(mean, 3).padStart(7)} ${fixed(p95, 3).padStart(6)} ${fixed(worst, 3).padStart(7)} ${String(models).padStart(7)}`,
    ),
    ...Object.entries(calls).flatMap(([name, rows]) => [
      '',
      `${`Calls on a perturbed truth, ${name}`.padEnd(38)} minutes quest. remed. trips visit found`,
      ...rows.map((row) => callLine(row)),
    ]),
    '',
    'Calibration                                  verdicts  said 80-90 %: right  error',
    ...Object.entries(calibration).map(([name, { verdicts, eighties, error }]) => {
      const right = `${eighties.right === 0 ? '-' : `${fixed(100 * eighties.right, 0)} %`} of ${eighties.verdicts}`;
      return `  ${name.padEnd(42)} ${String(verdicts).padStart(7)} ${right.padStart(19)}  ${fixed(error, 3)}`;
    }),
    '',
    'Speed, as ratios of this run',
    `  step, median, over one engine run            ${fixed(step.medianOverEngineRun, 2)}`,
    `  step, 99th percentile, over one engine run   ${fixed(step.p99OverEngineRun, 2)}`,
    `  step at ten times the rule base              ${fixed(step.growthAtTenTimes, 1)}`,
    `  whydark --version over node -e 0             ${fixed(startUp.version, 2)}`,
    `  first question over node saying it           ${fixed(startUp.firstQuestion, 2)}`,
    `  peak memory of a replayed call, MiB          ${memory ? `${memory.call} (node -e 0: ${memory.empty})` : '-'}`,
    ...pageLines(page),
  ].join('\n');
}

function pageLines({ speed, weight }: Shown['page']): readonly string[] {
  const both = ({ gzip, brotli }: Weight) => `${fixed(gzip, 0)} (${fixed(brotli, 0)})`;
  return [
    '',
    'The page, over an empty one in the same browser, processor at a quarter',
    `  opened to first step drawn                   ${fixed(speed?.firstStep, 1)}`,
    `  answer to next step drawn, median            ${fixed(speed?.nextStep, 2)}`,
    `  answer to next step drawn, 90th percentile   ${fixed(speed?.nextStepNinetieth, 2)}`,
    `  code and rules, kB gzipped (Brotli)          ${both(weight.codeAndRules)}`,
    `    of that the rules                          ${both(weight.rules)}`,
    `  articles and pictures apart, kB              ${fixed(weight.articles, 0)}`,
    `  licences apart, kB                           ${fixed(weight.licences, 0)}`,
  ];
}

function callLine({ policy, minutes, questions, remedies, trips, visits, found }: Row): string {
  const numbers = [
    fixed(minutes, 1).padStart(7),
    fixed(questions, 1).padStart(6),
    fixed(remedies, 1).padStart(6),
    fixed(trips, 1).padStart(5),
    `${fixed(visits, 0)}%`.padStart(5),
    `${fixed(found, 0)}%`.padStart(5),
  ];
  return `  ${policy.padEnd(36)} ${numbers.join(' ')}`;
}
