import { mkdirSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { argv } from 'node:process';
import { checkRuleFolder } from '../../src/files/load-rules.js';
import { readCases, readHoldOut } from '../cases/read-cases.js';
import { calibrationOf, saidAtTheEnd, saidOfCases } from './calls/calibration.js';
import { heldInWorkers } from './calls/in-workers.js';
import { rowsOf } from './calls/rows.js';
import { exactRatios } from './exact/ratios.js';
import { pictureOf } from './picture.js';
import { peakMemory } from './speed/memory.js';
import { pageSpeed } from './speed/page.js';
import { pageWeight } from './speed/page-weight.js';
import { startUp } from './speed/start-up.js';
import { engineTime, stepTimes } from './speed/step-time.js';
import { copiesOf } from './speed/ten-fold.js';
import { tableOf } from './table.js';

/** How many of each: more would tell little more, and the whole takes minutes as it is. */
const MODELS = 200;
const CALLS = Number(process.env.WHYDARK_BENCH_CALLS ?? 1000);
const SEED = 20261125;
/** The picture that the README shows. */
const PICTURE = 'test/bench/minutes-and-trust.svg';
const PAGE = 'dist/page/whydark.html';
const STEPPED_CALLS = 15;

/** Everything that is measured, as it is printed and written to `bench.json`. */
async function measured() {
  const { loaded } = await checkRuleFolder('rules', 'rules/schema');
  if (!loaded) throw new Error('the rule base has faults: whydark rules check rules');
  const { rules, digest } = loaded;
  const ratios = await exactRatios(MODELS);
  const wanted = { calls: CALLS, seed: SEED, wrong: 0, cantTell: 0, visitFactor: 1 };
  const [clean = [], noisy = [], half = [], twice = []] = await heldInWorkers(
    [
      wanted,
      { ...wanted, wrong: 0.05, cantTell: 0.15 },
      { ...wanted, calls: CALLS / 4, visitFactor: 0.5 },
      { ...wanted, calls: CALLS / 4, visitFactor: 2 },
    ],
    2,
    resolve('test/bench/calls/worker.ts'),
  );
  const engine = await engineTime(rules, 60);
  const steps = await stepTimes(rules, STEPPED_CALLS);
  const tenfold = await stepTimes(copiesOf(rules, 10), 2, rules);
  return {
    format: 1,
    rules: { version: rules.manifest.version, digest },
    ratios,
    calls: {
      'all answers right': rowsOf(clean),
      '5 % wrong, 15 % untold': rowsOf(noisy),
      'a visit at half': rowsOf(half),
      'a visit at twice': rowsOf(twice),
    },
    calibration: {
      clean: calibrationOf(saidAtTheEnd(clean)),
      noisy: calibrationOf(saidAtTheEnd(noisy)),
      cases: calibrationOf(saidOfCases(rules, readCases(rules))),
      heldOut: calibrationOf(saidOfCases(rules, readHoldOut(rules))),
    },
    step: {
      medianOverEngineRun: steps.median / engine,
      p99OverEngineRun: steps.p99 / engine,
      growthAtTenTimes: tenfold.median / steps.median,
    },
    startUp: await startUp('dist/whydark.js'),
    page: { speed: await pageSpeed(PAGE), weight: pageWeight(PAGE) },
    memory: peakMemory('dist/whydark.js', 'transcripts-demo/19-new-router-and-a-lead-astray/record.jsonl'),
  };
}

const results = await measured();
mkdirSync('bench', { recursive: true });
writeFileSync('bench/bench.json', `${JSON.stringify(results, null, 2)}\n`);
process.stdout.write(`${tableOf(results)}\n`);
if (argv.includes('--svg')) {
  const { calls, calibration } = results;
  const minutes = { clean: calls['all answers right'], noisy: calls['5 % wrong, 15 % untold'] };
  writeFileSync(PICTURE, pictureOf({ minutes, calibration }));
  process.stdout.write(`${PICTURE}\n`);
}

/** What `measured` gives. */
export type Results = Awaited<ReturnType<typeof measured>>;
