import { compareWalk } from './compare.js';

const [count = 2000, seed = 1, pools = 12] = process.argv.slice(2).map(Number);
const begun = performance.now();
const { differed, ...counts } = await compareWalk(count, seed, pools);
const seconds = Math.round((performance.now() - begun) / 100) / 10;
process.stdout.write(
  `${JSON.stringify({ seconds, ...counts, differed: differed.length }, null, 1)}\n${differed
    .map((one) => `${JSON.stringify(one)}\n`)
    .join('')}`,
);
