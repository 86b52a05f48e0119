import type { LoadedRules } from '../../../src/files/load-rules.js';
import type { Breaks, SiteFault } from '../faults/fault.js';
import { partsOf } from '../faults/pair.js';
import { look } from '../technician/eyes.js';
import { noisy } from '../technician/noise.js';
import type { Lab, Ran } from '../types.js';
import type { Watch } from './hold.js';
import { holdUntilBack } from './hold-on.js';
import { shared } from './pool.js';
import { remembering } from './remembering.js';
import type { Row } from './table.js';
import { triedBefore } from './tried-before.js';

/** What crawls, the slowest first: begun last, one of these calls keeps all the other labs idle for a minute. */
const CRAWLS = [
  'large-packets-lost',
  'upload-thin-low-picture-heavy',
  'upload-thin',
  'gateway-outside-onlink+phone-app-kept-from-data',
  'mask-cuts-router-off+dns-of-old-network',
  'phone-out-of-reach',
  'mask-cuts-router-off',
  'speed-fixed-at-one-end',
  'phone-data-used-up',
];

export interface Chosen {
  readonly singles: readonly SiteFault[];
  readonly pairs: readonly SiteFault[];
  readonly held: ReadonlySet<string>;
}

export interface How {
  readonly hands: number;
  readonly makeLab: () => Lab;
  readonly watch?: Watch | undefined;
  /** Told of each call when it is over. */
  readonly done?: (row: Row) => void;
  /** Told of a call that could not be held at all: the lab's own fault, not the tool's. */
  readonly broken?: (why: string) => void;
  /** Left out for a quick run. */
  readonly withNoise?: boolean;
}

/** A call over each fault, clean and with people's mistakes, on several labs side by side. */
export async function runFaults(
  loaded: LoadedRules,
  { singles, pairs, held }: Chosen,
  { hands, makeLab, watch, done, broken, withNoise = true }: How,
): Promise<readonly Row[]> {
  const jobs = [
    ...singles.map((fault) => ({ fault, isPair: false })),
    ...pairs.map((fault) => ({ fault, isPair: true })),
  ];
  const both = withNoise ? [false, true] : [false];
  const labs = Array.from({ length: Math.min(hands, jobs.length * both.length) }, makeLab);
  await Promise.all(labs.map((lab) => lab.up()));
  try {
    const listed = both.flatMap((isNoisy) => jobs.map((job) => ({ ...job, noisy: isNoisy })));
    const rows = await shared(labs, slowestFirst(listed), async (lab, job) => {
      const call = (): Promise<Row> => oneCall(loaded, lab, job, held.has(job.fault.id), watch);
      // Once more where the lab itself failed: a daemon that came up too late is no finding about the tool.
      const row = await call()
        .catch(call)
        .catch((error: unknown) => {
          broken?.(`${job.fault.id}: ${error instanceof Error ? error.message : String(error)}`);
          return undefined;
        });
      if (row) done?.(row);
      return row;
    });
    const placeOf = ({ fault, noisy: isNoisy }: Row): number =>
      listed.findIndex((job) => job.fault.id === fault && job.noisy === isNoisy);
    return rows.filter((row) => row !== undefined).sort((one, other) => placeOf(one) - placeOf(other));
  } finally {
    await Promise.all(labs.map((lab) => lab.down()));
  }
}

function slowestFirst(jobs: readonly Job[]): readonly Job[] {
  const placeOf = ({ fault: { id } }: Job): number =>
    CRAWLS.includes(id) ? CRAWLS.indexOf(id) : CRAWLS.length;
  return [...jobs].sort((one, other) => placeOf(one) - placeOf(other));
}

interface Job {
  readonly fault: SiteFault;
  readonly isPair: boolean;
  readonly noisy: boolean;
}

async function oneCall(
  loaded: LoadedRules,
  lab: Lab,
  { fault, isPair, noisy: isNoisy }: Job,
  isHeldBack: boolean,
  watch?: Watch,
): Promise<Row> {
  const started = Date.now();
  const injected = await fault.inject(lab);
  const parts = partsOf(injected);
  const tried = triedBefore(fault.id, injected.mends, injected.story.everWorked);
  const scene = { story: { ...injected.story, tried }, plain: injected.plain ?? {}, role: 'site' as const };
  let asked = 0;
  const eyes = remembering(lab);
  watch?.(`\n${fault.id}: ${fault.title}${isNoisy ? ' (with mistakes)' : ''}`);
  try {
    const call = await holdUntilBack(
      loaded,

      {
        causes: fault.causes,
        parts,
        back: () => {
          eyes.forget();
          return isPictureBack(lab, fault.breaks);
        },
      },
      async (question, again) => {
        asked += 1;
        if (again) eyes.forget();
        lab.takeLog();
        const seen = await look(question, eyes.lab, scene);
        if (watch) for (const ran of seen.ran) watch(ranLine(ran));
        return isNoisy ? noisy(seen, question, `${fault.id}:${question.id}:${asked}`) : seen;
      },
      watch,
    );
    return {
      fault: fault.id,
      title: fault.title,
      noisy: isNoisy,
      isPair,
      isHeldBack,
      call,
      seconds: Math.round((Date.now() - started) / 100) / 10,
    };
  } finally {
    await lab.restore();
  }
}

/** Fetched through the real path: on the phone that shows nothing, and on one on mobile data. */
async function isPictureBack(lab: Lab, breaks: Breaks): Promise<boolean> {
  if (breaks === 'computer') return (await lab.cameraPage('computer')) !== undefined;
  const screens = await Promise.all([lab.app('phone'), lab.app('mobile')]);
  return screens.every(({ shows }) => shows === 'picture');
}

function ranLine({ host, argv, code, stdout, stderr }: Ran): string {
  const text = `${stdout}${stderr}`.trimEnd().split('\n').slice(0, 24).join('\n      ');
  return `    ${host}$ ${argv.join(' ')}  (${code})\n      ${text}`;
}
