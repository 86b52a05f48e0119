import { afterAll, describe, expect, test } from 'vitest';
import { cannotRun } from './can-run.js';
import { type DifferenceClass, NEUTRALISED, ONCE_WRONG } from './classes.js';
import { compareWalk, differences } from './compare.js';
import { Pool } from './pool.js';

const reason = cannotRun();
// As a test of its own: an error while the file is read left the runner waiting for ever, now and then.
test.runIf(reason !== undefined && process.env.CI)(
  'a machine that tests for everybody can build networks',
  () => {
    throw new Error(reason);
  },
);
if (reason !== undefined) process.stderr.write(`walk against the kernel left out: ${reason}\n`);

describe.skipIf(reason !== undefined)('the walk against the kernel of this machine', () => {
  test('150 networks by chance: the same end, the same hops, the same answers to ARP', {
    timeout: 180_000,
  }, async () => {
    const { differed, outcomes, probes } = await compareWalk(150, 20261125, 4);
    expect(differed).toEqual([]);
    expect(probes).toBeGreaterThan(400);
    const kinds = ['reaches', 'no-arp-answer', 'no-gateway', 'gateway-outside', 'reply-lost: no-arp-answer'];
    for (const kind of kinds) expect(outcomes[kind] ?? 0, kind).toBeGreaterThan(5);
  });
});

describe.skipIf(reason !== undefined)('what the walk leaves out, with the kernel as it is', () => {
  const pool = reason === undefined ? Pool.open() : undefined;
  afterAll(async () => (await pool)?.close());

  async function seen({ network }: DifferenceClass) {
    const answer = await (await pool)?.ask(network, true);
    if (answer === undefined) throw new Error('no pool');
    return { answer, judged: differences(network, answer) };
  }

  test.each(NEUTRALISED)('$name', async (one) => {
    const { answer, judged } = await seen(one);
    expect(judged.map(({ outcome }) => outcome)).toEqual(one.walk);
    expect(answer.probes.map(({ code }) => code === 0)).toEqual(one.answered);
    expect(judged.some(({ differences: found }) => found.length > 0)).toBe(true);
    if (one.arrived === undefined) return;
    const last = one.network.probes[0]?.[1];
    const arrived = answer.probes
      .flatMap(({ echoes }) => echoes)
      .filter(([device, , kind]) => device === last && kind === 'request')
      .map(([device, , , sender]) => `${device} ${sender}`);
    expect(arrived.join()).toBe(one.arrived);
  });

  test.each(ONCE_WRONG)('walk and kernel agree by now: $name', async ({ name, network }) => {
    const { judged } = await seen({ name, network, walk: [], answered: [] });
    expect(judged.length).toBeGreaterThan(0);
    expect(judged.flatMap(({ differences: found }) => found)).toEqual([]);
  });

  test.each(NEUTRALISED.filter(({ network }) => network.settings ?? network.passesSelfAssigned))(
    'neutralised, walk and kernel agree: $name',
    async (one) => {
      const { site, probes } = one.network;
      const { judged } = await seen({ ...one, network: { site, probes } });
      expect(judged.flatMap(({ differences: found }) => found)).toEqual([]);
    },
  );
});
