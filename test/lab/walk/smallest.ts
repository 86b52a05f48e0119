import { differences } from './compare.js';
import { drawNetwork } from './draw.js';
import { Pool } from './pool.js';
import { showNetwork, shrink } from './shrink.js';

const pool = await Pool.open();
for (const seed of process.argv.slice(2).map(Number)) {
  const small = await shrink(drawNetwork(seed), pool);
  const found = differences(small, await pool.ask(small, true));
  process.stdout.write(`${showNetwork(small)}\n${JSON.stringify(found, null, 1)}\n`);
}
await pool.close();
