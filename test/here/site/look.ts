import { discover } from '../../../src/here/discovery/discover.js';
import { explain } from '../../../src/here/discovery/explain.js';
import { thisMachine } from '../../../src/here/machine.js';
import { thisProber } from '../../../src/here/prober.js';
import { probesFor, runProbes } from '../../../src/here/probes.js';
import { inWords } from '../../../src/messages/say.js';
import { type Address, parseAddress } from '../../../src/values/address.js';

const [what, ...texts] = process.argv.slice(2);

function at(text: string | undefined): Address {
  const read = parseAddress(text ?? '');
  if (!read.ok) throw new Error(text);
  return read.value;
}

async function look(): Promise<unknown> {
  if (what === 'probe') {
    const [camera, router] = texts.map(at);
    return runProbes(probesFor({ camera, router }), thisProber(thisMachine()));
  }
  const local = at(texts[0]);
  const own = [{ address: local, mask: { kind: 'mask', prefix: 24 } }] as const;
  const { found } = await discover({ local, own, milliseconds: 800 });
  return explain(found, own).map(({ sentence }) => inWords(sentence));
}

process.stdout.write(JSON.stringify(await look()));
