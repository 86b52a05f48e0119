import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { program } from '../site/homes.js';
import { labMissing, makeLab } from '../site/lab.js';
import { ASKED, asked } from './asked.js';
import { BROKEN } from './broken-words.js';
import { type Answer, CANT_TELL } from './eye.js';
import { look, type Scene } from './eyes.js';
import { misfit } from './valid.js';

const missing = labMissing();
// As a test of its own: an error while the file is read left the runner waiting for ever, now and then.
test.runIf(missing !== null && process.env.CI)(
  'a machine that tests for everybody can build the site',
  () => {
    throw new Error(String(missing));
  },
);

/** Half a minute of looks at a healthy site, and more: with WHYDARK_FAULTS=all, as for all the faults. */
const isWhole = process.env.WHYDARK_FAULTS === 'all';

const CALM: Scene = {
  story: { everWorked: true, changed: 'nothing', when: 'days' },
  plain: {},
  role: 'site',
};

/** Looks that a healthy site answers; a shrug would be a look that failed. */
const TOLD = [
  ...[
    'camera-page',
    'camera-ping',
    'camera-date',
    'camera-clock-reads',
    'computer-by-hand',
    'masks-compared',
  ],
  ...['gateway-compared', 'hand-out-full', 'in-handed-out-range', 'list-name-there', 'address-in-list'],
  ...[
    'router-list',
    'router-mask',
    'router-outside-address',
    'address-seen-outside',
    'blocked-mark',
    'let-in-list',
  ],
  ...['line-account', 'second-router-there', 'service-state', 'time-test', 'phone-range-same', 'slide-place'],
];

describe.skipIf(missing !== null || !isWhole)(
  `eyes on the site${missing === null ? '' : ` (not here: ${missing})`}`,
  () => {
    const lab = makeLab();
    beforeAll(() => lab.up(), 30_000);
    afterAll(() => lab.down());

    const say = async (id: string, scene = CALM): Promise<Answer> =>
      (await look(asked(id), lab, scene)).answer;
    const said = (value: string | boolean | number) => ({ kind: 'value', value });

    test('where all is well, every answer fits and none names anything broken', async () => {
      const wrong: string[] = [];
      for (const question of ASKED) {
        const { answer } = await look(question, lab, CALM);
        const words = misfit(question, answer);
        if (words !== undefined) wrong.push(words);
        if (answer.kind === 'cant-tell' && TOLD.includes(question.id)) wrong.push(`${question.id}: a shrug`);
        if (answer.kind === 'value' && BROKEN[question.id]?.includes(answer.value as string | boolean))
          wrong.push(`${question.id}: ${answer.value}`);
      }
      expect(wrong).toEqual([]);
      expect(await lab.app('phone')).toMatchObject({ shows: 'picture', way: 'direct' });
    }, 120_000);

    test('a dark socket is seen, and what hangs behind it is silent', async () => {
      await lab.ip('switch', 'link set dev p-camera down');
      expect(await say('port-light')).toEqual(said('dark'));
      expect(await say('camera-ping')).toEqual(said(false));
      expect(await say('camera-page')).toEqual(said('nothing'));
      expect(await say('lead-look')).toEqual(CANT_TELL);
      expect(await say('others-online')).toEqual(said(true));
      await lab.ip('switch', 'link set dev p-camera up');
      await lab.restore();
    }, 60_000);

    test('a phone among guests knows its Wi-Fi, and still does after a look at mobile data', async () => {
      await lab.phoneTo('guest');
      expect(await say('phone-access')).toEqual(said('both'));
      expect(await say('phone-wifi')).toEqual(said('guest'));
      expect(await say('phone-range-same')).toEqual(said(false));
      await lab.phoneTo('wifi');
    }, 60_000);

    test('a name server typed in on the phone is still there after a look at mobile data', async () => {
      lab.resolv('phone', '203.0.113.7');
      expect(await say('web-on-mobile')).toEqual(said(true));
      expect((await lab.run('phone', ['cat', '/etc/resolv.conf'])).stdout).toContain('203.0.113.7');
      expect(await say('site-web')).toEqual(said('fails'));
      await lab.restore();
    }, 60_000);

    test('a second phone that alone is dark is the phone of the call', async () => {
      lab.resolv('mobile', '203.0.113.7');
      try {
        expect(await say('which-phones')).toEqual(said('one'));
        expect(await say('exact-screen')).toEqual(said('offline'));
        expect(await say('phone-bars')).toEqual(said('bars'));
        expect(await say('web-on-mobile')).toEqual(said(false));
        expect(await say('other-phones-on-mobile')).toEqual(said('all'));
        expect(await say('phone-access')).toEqual(CANT_TELL);
        expect(await say('phone-wifi')).toEqual(said('no-wifi'));
        expect(await say('site-web')).toEqual(said('opens'));
        await lab.ip('mobile', 'link set dev wwan0 down');
        expect(await say('phone-bars')).toEqual(said('none'));
      } finally {
        await lab.ip('mobile', 'link set dev wwan0 up\nroute replace default via 100.72.0.1');
        lab.resolv('mobile', '203.0.113.53');
        await lab.restore();
      }
      expect(await say('exact-screen')).toEqual(said('picture'));
    }, 90_000);

    test('phones with IPv6 only see what others see', async () => {
      const ids = [
        ...['phone-bars', 'web-on-mobile', 'phone-access', 'which-phones', 'other-phones-on-mobile'],
        ...['exact-screen', 'vpn-mark', 'phone-wifi', 'site-web', 'address-seen-outside', 'remote-way'],
      ];
      const all = async () => {
        const seen: unknown[] = [];
        for (const id of ids) seen.push([id, await say(id)]);
        return seen;
      };
      const before = await all();
      await lab.carrier('ipv6-only');
      expect(await all()).toEqual(before);
      await lab.restore();
    }, 60_000);

    test('a site whose line is out has no web, and its router says so', async () => {
      await lab.ip('box', 'link set dev in0 down');
      expect(await say('router-lights')).toEqual(said('warning'));
      expect(await say('router-status')).toEqual(said('down'));
      expect(await say('site-web')).toEqual(said('fails'));
      expect(await say('web-on-mobile')).toEqual(said(true));
      expect(await say('line-account')).toEqual(CANT_TELL);
      await lab.ip('box', 'link set dev in0 up');
      await lab.restore();
    }, 60_000);

    test('another device at the camera’s address answers while the camera is unplugged, with its own page', async () => {
      expect(await say('answers-while-unplugged')).toEqual(said(false));
      await lab.ip('twin', 'addr add 172.23.40.21/24 dev eth0');
      expect(await say('answers-while-unplugged')).toEqual(said(true));
      lab.daemon('twin', 'twin', program('camera'));
      await lab.listening('twin', 80);
      await lab.ip('switch', 'link set dev p-camera down');
      await lab.run('computer', ['ip', 'neigh', 'flush', 'all']);
      expect(await say('camera-page')).toEqual(said('another'));
      await lab.ip('switch', 'link set dev p-camera up');
      await lab.stop('twin');
      await lab.ip('twin', 'addr del 172.23.40.21/24 dev eth0');
      await lab.restore();
    }, 60_000);
  },
);
