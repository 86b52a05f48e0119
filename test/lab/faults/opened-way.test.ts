import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { labMissing, makeLab } from '../site/lab.js';
import { asked } from '../technician/asked.js';
import { look, type Scene } from '../technician/eyes.js';
import type { Lab } from '../types.js';
import { openWay, typeInApps } from './opened-way.js';
import { inShort, screensOf } from './screens.js';
import { withIpv6Only, withOpenedWay } from './traits.js';

const CALM: Scene = {
  story: { everWorked: true, changed: 'nothing', when: 'days' },
  plain: {},
  role: 'site',
};
const EVERYWHERE = 'phone picture (forwarded), mobile picture (forwarded), page opens';
const NOT_AWAY = 'phone picture (forwarded), mobile no-connection, page opens';

const isWhole = process.env.WHYDARK_FAULTS === 'all';

describe.skipIf(labMissing() !== null || !isWhole)('a way opened in the router', () => {
  let lab: Lab;
  beforeAll(async () => {
    lab = makeLab();
    await lab.up();
  }, 30_000);
  afterEach(() => lab.restore(), 30_000);
  afterAll(() => lab.down());

  const screens = async () => inShort(await screensOf(lab));
  const says = async (id: string) => {
    const { answer } = await look(asked(id), lab, CALM);
    return answer.kind === 'value' ? answer.value : answer.kind;
  };

  it('shows the picture at home, and to every phone that has IPv4', async () => {
    await withOpenedWay(lab);
    expect(await screens()).toBe(EVERYWHERE);
    await lab.carrier('both');
    expect(await screens()).toBe(EVERYWHERE);
    expect(await says('remote-way')).toBe('forwarded');
    expect(await says('numbers-or-name')).toBe('numbers');
    expect(await says('forward-line-now')).toBe(true);
    expect(await says('app-address-today')).toBe(true);
    expect(await says('page-on-mobile')).toBe(true);
  }, 40_000);

  it('is out of reach by numbers for phones with IPv6 only, until a name or IPv4 is there', async () => {
    await withOpenedWay(lab);
    await withIpv6Only(lab);
    expect(await screens()).toBe(NOT_AWAY);
    expect(await says('page-on-mobile')).toBe(false);
    expect(await says('web-on-mobile')).toBe(true);
    expect(await says('phone-bars')).toBe('bars');
    expect(await says('phone-access')).toBe('only-wifi');
    expect(await says('forward-line-now')).toBe(true);
    const numbers = typeInApps(lab, 'name');
    expect(await screens()).toBe(EVERYWHERE);
    expect(await says('numbers-or-name')).toBe('name');
    expect(await says('app-address-today')).toBe(true);
    await numbers();
    expect(await screens()).toBe(NOT_AWAY);
    await lab.carrier('both');
    expect(await screens()).toBe(EVERYWHERE);
  }, 60_000);

  it('leads nowhere where its line names an address that the camera has no more', async () => {
    lab.defer(await openWay(lab, '172.23.40.99'));
    lab.defer(typeInApps(lab, 'numbers'));
    expect(await screens()).toBe('phone no-connection, mobile no-connection, page opens');
    expect(await says('forward-line-now')).toBe(false);
    expect(await says('app-address-today')).toBe(true);
  }, 40_000);
});
