import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { allTopics, inputIds } from '../../../src/call/topics.js';
import { readOptions } from '../../../src/cli/options.js';
import { EXIT, run } from '../../../src/cli/run.js';

/** Runs a command line without a terminal. */
async function whydark(...argv: readonly string[]) {
  let out = '';
  let err = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    err += String(text);
    return true;
  });
  const exit = await run(argv);
  vi.restoreAllMocks();
  return { exit, out, err };
}

const isTerminal = process.stdin.isTTY;
beforeEach(() => {
  process.stdin.isTTY = false;
});
afterEach(() => {
  process.stdin.isTTY = isTerminal;
});

const SUBNET = ['reckon', 'subnet', '--address', '172.23.40.57', '--mask', '255.255.255.0'] as const;

const PLAN = [
  ...['reckon', 'address-plan', '--router-address', '172.23.40.1', '--router-mask', '24'],
] as const;

describe('whydark reckon', () => {
  test('prints the sum line by line, and what it judges', async () => {
    const { exit, out, err } = await whydark(...SUBNET, '--gateway', '172.23.99.1');
    expect([exit, err]).toEqual([EXIT.done, '']);
    expect(out.split('\n')).toEqual([
      '172.23.40.57 with mask 255.255.255.0 (/24) belongs to the network 172.23.40.0.',
      'Devices there have addresses from 172.23.40.1 to 172.23.40.254.',
      '172.23.40.57 may be the address of a device.',
      '172.23.40.57 lies in the block 172.16.0.0/12 (RFC 1918).',
      '172.23.40.57 is a private address. It works on a local network only.',
      '172.23.99.1 is outside it.',
      'This cannot work.',
      '',
    ]);
  });

  test('gives the same as JSON, options before or after the topic', async () => {
    const { out } = await whydark('--json', ...SUBNET);
    expect(JSON.parse(out)).toMatchObject({
      format: 1,
      topic: 'subnet',
      verdict: 'fine',
      lines: expect.arrayContaining(['172.23.40.57 may be the address of a device.']),
      data: { network: '172.23.40.0', hosts: 254 },
    });
    expect((await whydark(...SUBNET, '--json')).out).toBe(out);
  });

  test('leaves out a verdict where the sum does not judge', async () => {
    const { out } = await whydark('reckon', 'address', '--address', 'fe80::1', '--json');
    expect(Object.keys(JSON.parse(out))).toEqual(['format', 'topic', 'lines', 'data']);
  });

  test('names the input that would decide it', async () => {
    const reach = ['camera', 'computer'].flatMap((who) => [
      ...[`--${who}-address`, who === 'camera' ? '172.23.40.21' : '172.23.40.184'],
      ...[`--${who}-mask`, who === 'camera' ? '/25' : '/24', `--${who}-gateway`, '172.23.40.1'],
    ]);
    const router = ['--router-address', '172.23.40.1', '--router-mask', '/24'];
    const { out } = await whydark('reckon', 'reach', ...reach, ...router);
    expect(out).toMatch(/Doubtful\.\nWhat would decide it: --stateful-router\n$/);
    expect(JSON.parse((await whydark('reckon', 'reach', ...reach, ...router, '--json')).out)).toMatchObject({
      verdict: 'doubtful',
      decides: 'stateful-router',
    });
  });

  test('alone lists the topics, each with its options', async () => {
    const { exit, out } = await whydark('reckon');
    expect(exit).toBe(EXIT.done);
    for (const { id, inputs } of allTopics()) {
      expect(out).toContain(`\n  ${id}: `);
      for (const input of inputs) expect(out).toContain(`--${input.id}`);
    }
    expect(out).toContain('      --address --mask [--gateway] [--other]\n');
    const { topics } = JSON.parse((await whydark('reckon', '--json')).out);
    expect(topics.map(({ id }: { id: string }) => id)).toEqual(allTopics().map(({ id }) => id));
  });

  test('prints a plan as CSV and nothing else, line ends as RFC 4180 has them', async () => {
    const { exit, out, err } = await whydark(...PLAN, '--cameras', 'Yard, Gate', '--csv');
    expect([exit, err]).toEqual([EXIT.done, '']);
    expect(out).toBe(
      'camera,address,mask,gateway,first dns\r\n' +
        'Yard,172.23.40.252,255.255.255.0,172.23.40.1,172.23.40.1\r\n' +
        'Gate,172.23.40.253,255.255.255.0,172.23.40.1,172.23.40.1\r\n',
    );
  });

  test('keeps the columns of a plan in the terminal, none wider than 80', async () => {
    const { out } = await whydark(...PLAN, '--cameras', `Yard, ${'Warehouse '.repeat(9)}`);
    const table = out.split('\n').filter((line) => line.startsWith('|'));
    expect(table).toHaveLength(4);
    expect(out).toMatch(/\n\n\| Camera [\s\S]* \|\n\nFirst DNS/);
    expect(new Set(table.map((line) => line.length)).size).toBe(1);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test.each([
    [['reckon', 'subnets'], 'There is no sum "subnets". Did you mean "subnet"?'],
    [['reckon', 'zzzzzz'], 'There is no sum "zzzzzz". "whydark reckon" lists them all.'],
    [['reckon', 'subnet', 'reach'], '"reach" is left over'],
    [['reckon', 'subnet'], 'these are needed too: --address, --mask\n'],
    [['reckon', 'subnet', '--mask', '/24'], 'these are needed too: --address\n'],
    [[...SUBNET, '--router-mask', '/24'], '--router-mask does not belong to "subnet".'],
    [[...SUBNET, '--gateway', '172.23.40'], '--gateway: "172.23.40" has only 3 of the four numbers'],
    [[...SUBNET, '--wibble', '1'], 'There is no option "--wibble".'],
    [['reckon', 'subnet', '--adress', '172.23.40.57'], 'Did you mean "--address"?'],
    [['reckon', '--address', '172.23.40.57'], 'whydark reckon subnet --address VALUE'],
    [[...SUBNET, '--csv'], 'The sum subnet has no table to print as CSV.'],
    [['reckon', 'subnet', '--csv'], 'The sum subnet has no table to print as CSV.'],
    [['reckon', '--csv'], 'whydark reckon address-plan --csv'],
    [[...PLAN, '--cameras', '8', '--csv', '--json'], 'Only one of --csv and --json'],
    [['questions', '--address', '172.23.40.57'], 'There is no option "--address".'],
  ])('%j is wrong use', async (argv, says) => {
    const { exit, out, err } = await whydark(...argv);
    expect([exit, out]).toEqual([EXIT.wrongUse, '']);
    expect(err).toContain(says);
  });

  test('stands in the usage', async () => {
    expect((await whydark('--help')).out).toContain('whydark reckon [TOPIC]');
  });

  test('has no input whose name is an option of every command', () => {
    const common = Object.keys(readOptions([]));
    expect(common).toContain('record');
    expect(inputIds().filter((id) => common.includes(id))).toEqual([]);
  });
});
