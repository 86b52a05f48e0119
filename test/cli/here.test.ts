import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { fromComputer, onComputer, setUp, takeDown, whyNoSite } from '../here/site/site.js';
import { COMMAND, run } from './built.js';

const WHY = whyNoSite();

describe('whydark here without anybody to ask', () => {
  it('says how to agree beforehand', () => {
    const { status, stderr, stdout } = run(['here']);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain('--agree read');
  });

  it('refuses a word that agrees to nothing, and an address that is none', () => {
    expect(run(['here', '--agree', 'read,everything']).stderr).toContain('not everything');
    const { status, stderr } = run(['here', '--agree', 'read', '--camera', '172.23.40']);
    expect(status).toBe(2);
    expect(stderr).toContain('--camera: ');
  });

  it('does nothing where nothing was agreed to', () => {
    const { status, stdout } = run(['here', '--agree', 'try']);
    expect(status).toBe(0);
    expect(stdout).not.toContain('Read from the text');
  });
});

const left = WHY === '' ? '' : ` (left out: ${WHY})`;
describe.skipIf(WHY !== '')(`whydark here on a site of two namespaces${left}`, () => {
  beforeEach(setUp);
  afterEach(takeDown);
  const here = (...words: readonly string[]): string =>
    fromComputer(process.execPath, [COMMAND, 'here', '--agree', 'read', ...words]).replace(/\s+/g, ' ');

  it('names a gateway outside the range as the next step', () => {
    onComputer('route add default via 172.23.99.1 dev eth0 onlink');
    expect(here()).toContain(
      'Next: put the gateway of "eth0" right. 172.23.99.1 lies outside its range 172.23.40.0/24',
    );
  });

  it('names a gateway that nobody has, once it was tried', () => {
    onComputer('route add default via 172.23.40.254');
    expect(here()).toContain('Nothing is wrong with this computer itself');
    const words = [COMMAND, 'here', '--agree', 'read,try'];
    const tried = fromComputer(process.execPath, words).replace(/\s+/g, ' ');
    // Without a ping command silence at two ports is no proof, and is not taken for one.
    const silent = /This computer could not do it: Ping the router/.test(tried);
    expect(tried.includes('Nothing answers at 172.23.40.254')).toBe(!silent);
  });

  it('says that the default route is missing', () => {
    expect(here()).toContain('"eth0" has no gateway');
  });

  it('shows what it would run before it does, and tries nothing that was not agreed to', () => {
    onComputer('route add default via 172.23.40.57');
    const text = here('--camera', '172.23.40.57');
    expect(text.indexOf('ip -j route: ')).toBeGreaterThan(-1);
    expect(text.indexOf('ip -j route: ')).toBeLessThan(text.indexOf('Read from the text'));
    expect(text).not.toContain('Ping the camera');
    expect(text).not.toContain('ONVIF');
  });

  it('gives the same as JSON', () => {
    onComputer('route add default via 172.23.40.57');
    const words = [COMMAND, 'here', '--agree', 'read,try', '--camera', '172.23.40.57', '--json'];
    const told = JSON.parse(fromComputer(process.execPath, words));
    const schema = JSON.parse(readFileSync('dist/schema/here.schema.json', 'utf8'));
    expect(new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema)(told)).toBe(true);
    expect(told.seen.adapters.map(({ name }: { name: string }) => name)).toEqual(['lo', 'eth0']);
    expect(told.seen.adapters[1]).toMatchObject({
      addresses: [{ address: '172.23.40.5', mask: '255.255.255.0' }],
      gateways: [{ value: '172.23.40.57' }],
    });
    expect(
      told.seen.ports.map(({ port, isOpen }: { port: number; isOpen: boolean }) => [port, isOpen]),
    ).toEqual([
      [80, false],
      [443, false],
      [554, false],
    ]);
    expect(told.way).toMatchObject({ adapter: 1, why: 'same-range' });
  });
});
