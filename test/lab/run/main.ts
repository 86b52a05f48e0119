import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import process, { argv, exit, stderr, stdout } from 'node:process';
import { checkRuleFolder } from '../../../src/files/load-rules.js';
import { FAULTS, PAIRS } from '../faults/faults.js';
import { runFromMemory } from '../memory/from-memory.js';
import type { Remembered } from '../memory/remembered.js';
import { labMissing, makeLab, sweep } from '../site/lab.js';
import type { Lab } from '../types.js';
import { fingerprint, heldBack } from './held-back.js';
import { leftovers } from './leftovers.js';
import { runFaults } from './matrix.js';
import { firstRightByFrequency, isFirstRight, isMended, lineOf, type Row, tableOf } from './table.js';

const HANDS = Number(process.env.WHYDARK_LABS ?? 12);

/**
 * What the whole matrix may not fall below: well under what was measured when it was set, as calls over a real site
 * do not come out alike each time. Not the aim, which stands in DEVELOPERS.md beside what was measured.
 */
const FLOORS = { singles: 0.9, pairs: 0.75 };
/** The same for the share of single faults whose first remedy was right. */
const FIRST_RIGHT_FLOOR = 0.72;

/**
 * `npm run lab [-- FAULT ...] [-v] [--clean] [--held-back | --others] [--from-memory]`: breaks a site for real, fault by
 * fault, and lets the tool mend it; from memory, what people said there when it was last written down. 0 where all held, 1 where the lab is missing, a call could not be held, a gate was broken, something
 * is left behind or, over the whole matrix, less is mended than the floor; 2 for a fault nobody knows.
 */
async function main(): Promise<number> {
  const words = argv.slice(2);
  const isFromMemory = words.includes('--from-memory');
  const missing = isFromMemory ? null : labMissing();
  if (missing !== null) {
    stderr.write(`No lab here: ${missing}\n`);
    return 1;
  }
  if (!isFromMemory) sweep();
  const isLoud = words.includes('-v');
  const wanted = words.filter((word) => !word.startsWith('-'));
  const held = new Set(heldBack([...FAULTS, ...PAIRS].map(({ id }) => id)));
  const all = [...FAULTS, ...PAIRS];
  const quiet = FAULTS.filter(({ breaks }) => breaks === 'computer').map(({ id }) => id);
  const unknown = wanted.filter((id) => !all.some((fault) => fault.id === id));
  if (unknown.length > 0) {
    stderr.write(
      `No such fault: ${unknown.join(', ')}. There are:\n${all.map(({ id }) => `  ${id}\n`).join('')}`,
    );
    return 2;
  }
  const isPart = words.includes('--held-back') || words.includes('--others');
  const isIn = (id: string): boolean =>
    wanted.length > 0
      ? wanted.includes(id)
      : !quiet.includes(id) && (!isPart || held.has(id) === words.includes('--held-back'));
  const { loaded } = await checkRuleFolder('rules', 'rules/schema');
  if (!loaded) throw new Error('the rule base has faults: whydark rules check rules');
  const wrecks: string[] = [];
  const made: Lab[] = [];
  const started = Date.now();
  const withNoise = !words.includes('--clean');
  const watch = isLoud ? (line: string) => stdout.write(`${line}\n`) : undefined;
  const chosen = {
    singles: FAULTS.filter(({ id }) => isIn(id)),
    pairs: PAIRS.filter(({ id }) => isIn(id)),
    held,
  };
  const live = () =>
    runFaults(loaded, chosen, {
      hands: isLoud ? 1 : HANDS,
      makeLab: () => {
        const lab = makeLab();
        made.push(lab);
        return lab;
      },
      watch,
      done: (row) => stderr.write(`${lineOf(row)}\n`),
      broken: (why) => {
        wrecks.push(why);
        stderr.write(`!  ${why}\n`);
      },
      withNoise,
    });
  const fromMemory = () =>
    runFromMemory(
      loaded,
      JSON.parse(readFileSync('test/lab/memory/remembered.json', 'utf8')) as Remembered,
      [...chosen.singles, ...chosen.pairs].map(({ id }) => id),
      { withNoise, held, watch },
    );
  const rows = await (isFromMemory ? fromMemory() : live());
  stdout.write(`${tableOf(rows)}\n`);
  const share = firstRightByFrequency(rows, loaded.rules.causes);
  if (Number.isFinite(share))
    stdout.write(
      `first remedy right, single faults, if causes came as often as judged: ${Math.round(100 * share)} %\n`,
    );
  if (wanted.length === 0)
    stdout.write(
      `left out, as no phone is dark (only a computer does not see the camera): ${quiet.filter((id) => !held.has(id)).length}, and as many of the held back as are such\n`,
    );
  stdout.write(`held back: ${held.size} of ${all.length} faults, list ${fingerprint([...held].sort())}\n`);
  stdout.write(`took ${Math.round((Date.now() - started) / 1000)} s\n`);
  mkdirSync('bench', { recursive: true });
  writeFileSync(
    isFromMemory ? 'bench/lab-from-memory.json' : 'bench/lab.json',
    `${JSON.stringify({ format: 1, rows }, null, 2)}\n`,
  );
  const faults = [
    ...wrecks.map((why) => `could not be held: ${why}`),
    ...rows.flatMap(({ fault, call }) =>
      call.gatesBroken.map((id) => `${fault}: ${id} proposed before its gate was open`),
    ),
    ...leftovers(made).map((left) => `left behind: ${left}`),
    ...(wanted.length === 0 && !isPart ? belowFloors(rows) : []),
  ];
  for (const line of faults) stdout.write(`! ${line}\n`);
  return faults.length > 0 ? 1 : 0;
}

function belowFloors(rows: readonly Row[]): readonly string[] {
  const singles = rows.filter(({ noisy, isPair }) => !noisy && !isPair);
  const right = singles.filter(isFirstRight).length / singles.length;
  const first =
    right < FIRST_RIGHT_FLOOR
      ? [`first remedy right: ${Math.round(right * 100)} %, the floor is ${FIRST_RIGHT_FLOOR * 100} %`]
      : [];
  const mended = (['singles', 'pairs'] as const).flatMap((kind) => {
    const some = rows.filter((row) => !row.noisy && row.isPair === (kind === 'pairs'));
    const share = some.filter(isMended).length / some.length;
    return share < FLOORS[kind]
      ? [`${kind}: ${Math.round(share * 100)} % mended, the floor is ${FLOORS[kind] * 100} %`]
      : [];
  });
  return [...mended, ...first];
}

exit(await main());
