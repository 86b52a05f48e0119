import { readFileSync, writeFileSync } from 'node:fs';
import { argv, exit, stderr, stdout } from 'node:process';
import { checkRuleFolder } from '../../../src/files/load-rules.js';
import { FAULTS, PAIRS } from '../faults/faults.js';
import { shared } from '../run/pool.js';
import { labMissing, makeLab, sweep } from '../site/lab.js';
import { remember } from './remember.js';
import { type BrokenSite, folded, type Remembered, unfolded } from './remembered.js';

const FILE = 'test/lab/memory/remembered.json';
const HANDS = 12;

/**
 * `npm run lab:remember [-- FAULT ...]`: breaks the sites and writes down what is said there; those named anew, or all.
 * 0 when it is written; 1 where the lab is missing; 2 for a fault nobody knows.
 */
async function main(): Promise<number> {
  const missing = labMissing();
  if (missing !== null) {
    stderr.write(`No lab here: ${missing}\n`);
    return 1;
  }
  const wanted = argv.slice(2);
  const dark = [...FAULTS, ...PAIRS].filter(({ breaks }) => breaks !== 'computer');
  const unknown = wanted.filter((id) => !dark.some((fault) => fault.id === id));
  if (unknown.length > 0) {
    stderr.write(`No such fault, or none that darkens a phone: ${unknown.join(', ')}\n`);
    return 2;
  }
  sweep();
  const faults = dark.filter(({ id }) => wanted.length === 0 || wanted.includes(id));
  const { loaded } = await checkRuleFolder('rules', 'rules/schema');
  if (!loaded) throw new Error('the rule base has faults: whydark rules check rules');
  const labs = Array.from({ length: Math.min(HANDS, faults.length) }, makeLab);
  await Promise.all(labs.map((lab) => lab.up()));
  try {
    const sites: Record<string, BrokenSite> = {};
    await shared(labs, faults, async (lab, fault) => {
      const one = () => remember(lab, loaded.rules.questions, fault);
      sites[fault.id] = await one().catch(one);
      stderr.write(`${fault.id}\n`);
    });
    const known = wanted.length === 0 ? {} : unfolded(JSON.parse(readFileSync(FILE, 'utf8')) as Remembered);
    writeFileSync(FILE, `${JSON.stringify(folded({ ...known, ...sites }), null, 1)}\n`);
  } finally {
    await Promise.all(labs.map((lab) => lab.down()));
  }
  stdout.write(`${faults.length} sites written down\n`);
  return 0;
}

exit(await main());
