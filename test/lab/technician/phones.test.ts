import { describe, expect, test } from 'vitest';
import type { AppScreen, PhoneNetwork, Story } from '../types.js';
import { ASKED, asked } from './asked.js';
import type { Answer } from './eye.js';
import { look, type Scene } from './eyes.js';
import { ALL_WELL, type Paper, paperLab, WELL } from './paper-lab.js';
import { misfit } from './valid.js';

const CANT: Answer = { kind: 'cant-tell' };
const given = (value: string | boolean | readonly string[]): Answer => ({ kind: 'value', value });

/** Where the picture is missing: the own phone at home, the own phone on mobile data, the second phone. */
interface Dark {
  readonly home?: boolean;
  readonly own?: boolean;
  readonly second?: boolean;
}

function shows(dark: Dark, phone: 'phone' | 'mobile', on: PhoneNetwork): AppScreen['shows'] {
  if (phone === 'mobile') return dark.second === true ? 'waiting' : 'picture';
  if (on === 'mobile') return dark.own === true ? 'camera-offline' : 'picture';
  return dark.home === true ? 'wrong-password' : 'picture';
}

const site = (dark: Dark): Paper => ({ ...ALL_WELL, app: (phone, on) => shows(dark, phone, on) });

function scene(everWorked = true, plain: Scene['plain'] = {}): Scene {
  const story: Story = { everWorked, changed: 'nothing', when: everWorked ? 'days' : 'never-worked' };
  return { story, plain, role: 'site' };
}

async function answer(id: string, paper: Paper, told: Scene = scene()): Promise<Answer> {
  return (await look(asked(id), paperLab(paper).lab, told)).answer;
}

describe('where only the second phone is dark, it is the phone of the call', () => {
  const paper = site({ second: true });

  test.each([
    ['exact-screen', given('waiting')],
    ['their-words', given('It shows waiting.')],
    ['when-dark', given('always')],
    ['others-closed', given(false)],
    ['which-phones', given('one')],
    ['other-phones-on-mobile', given('all')],
    ['phone-access', CANT],
    ['phone-wifi', given('no-wifi')],
    ['phone-range-same', CANT],
    ['far-wifi-try', given('no-such')],
    ['second-phone-try', CANT],
    ['kit', given(['patch-lead', 'second-phone'])],
  ])('%s is answered from it', async (id, expected) => {
    expect(await answer(id, paper)).toEqual(expected);
  });

  test('its own screens count for what the app says of passwords and lists', async () => {
    const says = (words: AppScreen['shows']): Paper => ({
      ...ALL_WELL,
      app: (phone) => (phone === 'mobile' ? words : 'picture'),
    });
    expect(await answer('typed-for-what', says('wrong-password'))).toEqual(CANT);
    expect(await answer('tries-at-password', says('wrong-password'))).toEqual({ kind: 'value', value: 1 });
    expect(await answer('account-shown', says('empty-list'))).toEqual(CANT);
    expect(await answer('account-shown', says('waiting'))).toEqual(given('signed-in'));
  });

  test('its own signs count: bars, web, key, page', async () => {
    const off = '3: wwan0@if9: <NO-CARRIER,BROADCAST,MULTICAST,UP> mtu 1500 state DOWN\n';
    const on = (host: string, prints: Record<string, string>): Paper => ({
      ...paper,
      prints: { ...WELL, ...prints, [`${host} ip -o link show up`]: '7: tun0: <POINTOPOINT,UP,LOWER_UP>\n' },
    });
    const typed = scene(true, { 'remote-way': 'forwarded' });
    const well = on('mobile', {
      'mobile ip -o link show dev wwan0': WELL['phone ip -o link show dev wwan0'] ?? '',
      'mobile curl http://www.example/': WELL['phone curl http://www.example/'] ?? '',
      'mobile curl http://198.51.100.2/': 'Yard camera\n200',
    });
    const ill = on('phone', {
      'mobile ip -o link show dev wwan0': off,
      'phone curl http://198.51.100.2/': 'Yard camera\n200',
    });
    for (const [id, good] of [
      ['web-on-mobile', true],
      ['page-on-mobile', true],
      ['vpn-mark', true],
    ] as const) {
      expect([id, await answer(id, well, typed)]).toEqual([id, given(good)]);
      expect([id, await answer(id, ill, typed)]).toEqual([id, given(!good)]);
    }
    expect(await answer('phone-bars', well)).toEqual(given('bars'));
    expect(await answer('phone-bars', ill)).toEqual(given('none'));
  });

  test('the own phone is back on its Wi-Fi after every look', async () => {
    await Promise.all(
      ASKED.map(async (question) => {
        const { lab, done } = paperLab(paper);
        await look(question, lab, scene());
        const networks = done.filter((one) => one === 'wifi' || one === 'mobile');
        expect([question.id, networks.at(-1) ?? 'wifi']).toEqual([question.id, 'wifi']);
      }),
    );
  });

  test('what it would see at home is said only by the scene', async () => {
    const told = scene(true, { 'phone-access': 'only-wifi' });
    expect(await answer('phone-access', paper, told)).toEqual(given('only-wifi'));
  });
});

describe('where the own phone is dark, it stays the phone of the call', () => {
  test.each<[string, Dark, string, Answer]>([
    ['at home only', { home: true }, 'exact-screen', given('wrong-password')],
    ['at home only', { home: true }, 'phone-access', given('only-mobile')],
    ['at home only', { home: true }, 'which-phones', CANT],
    ['at home only', { home: true }, 'other-phones-on-mobile', given('all')],
    ['at home only', { home: true }, 'phone-wifi', given('main')],
    ['at home only', { home: true }, 'kit', given(['patch-lead'])],
    ['at home, and the second one', { home: true, second: true }, 'which-phones', given('all')],
    ['on mobile data only', { own: true }, 'which-phones', given('one')],
    ['on mobile data only', { own: true }, 'phone-access', given('only-wifi')],
    ['on mobile data, and the second one', { own: true, second: true }, 'exact-screen', given('offline')],
    ['on mobile data, and the second one', { own: true, second: true }, 'which-phones', given('all')],
    ['on mobile data, and the second one', { own: true, second: true }, 'phone-wifi', given('main')],
    ['everywhere', { home: true, own: true, second: true }, 'exact-screen', given('wrong-password')],
    ['everywhere', { home: true, own: true, second: true }, 'which-phones', given('all')],
    ['everywhere', { home: true, own: true, second: true }, 'other-phones-on-mobile', given('none')],
    ['everywhere', { home: true, own: true, second: true }, 'phone-access', given('neither')],
  ])('%s', async (_, dark, id, expected) => {
    expect(await answer(id, site(dark))).toEqual(expected);
  });
});

describe('a camera with no place left is told from one that waits by the words of the app alone', () => {
  test.each<[AppScreen['shows'], string, string]>([
    ['waiting', 'The camera is busy: too many viewers. Please wait.', 'busy'],
    ['waiting', 'Too many viewers.', 'busy'],
    ['waiting', 'There is no free place.', 'busy'],
    ['waiting', 'Connecting to the camera ... please wait.', 'waiting'],
    ['waiting', 'The app does not respond.', 'waiting'],
    ['no-connection', 'No connection to the service. (Device or resource busy)', 'offline'],
  ])('%s: %s', async (screen, words, expected) => {
    const paper: Paper = { ...ALL_WELL, app: () => screen, words };
    const seen = await answer('exact-screen', paper);
    expect(seen).toEqual(given(expected));
    expect(misfit(asked('exact-screen'), seen)).toBeUndefined();
    expect(await answer('their-words', paper)).toEqual(given(words));
  });
});

describe('what is missing is told by the words of the app alone', () => {
  const NO_SERVICE = 'No connection to the service. Check the internet connection of this phone.';

  test.each<[AppScreen['shows'], string, Answer]>([
    ['camera-offline', 'The camera is offline.', given('camera')],
    ['camera-offline', 'The camera was not found.', given('camera')],
    ['camera-offline', 'The camera is offline. Check its internet connection.', given('camera')],
    ['no-connection', NO_SERVICE, given('connection')],
    ['no-connection', `${NO_SERVICE} (name not found)`, given('connection')],
    ['no-connection', `${NO_SERVICE} (no answer (time-out))`, given('connection')],
    ['no-connection', `${NO_SERVICE} (network unreachable (no route))`, given('connection')],
    [
      'no-connection',
      'No secure connection to the service: certificate refused: certificate is not yet valid.',
      given('connection'),
    ],
    ['camera-offline', 'Error 12.', given('not-said')],
    ['no-connection', 'Cannot connect.', given('not-said')],
    ['no-connection', 'No connection to the service, or the camera is offline.', given('not-said')],
    ['picture', 'Live picture.', CANT],
    ['waiting', 'Connecting to the camera ... please wait.', CANT],
    ['waiting', 'The camera is busy: too many viewers. Please wait.', CANT],
    ['wrong-password', 'The camera does not accept the saved password.', CANT],
    ['empty-list', 'There is no camera in this account yet.', CANT],
    ['stutters', 'The picture stops and starts. The connection is slow.', CANT],
  ])('%s: %s', async (screen, words, expected) => {
    const seen = await answer('screen-blames', { ...ALL_WELL, app: () => screen, words });
    expect(seen).toEqual(expected);
    expect(misfit(asked('screen-blames'), seen)).toBeUndefined();
  });

  test('on the phone of the call', async () => {
    const second: Paper = {
      ...ALL_WELL,
      app: (phone) => (phone === 'mobile' ? 'no-connection' : 'picture'),
    };
    expect(await answer('screen-blames', second)).toEqual(given('connection'));
    expect(await answer('screen-blames', site({ own: true }))).toEqual(given('camera'));
    expect(await answer('screen-blames', site({ home: true, own: true }))).toEqual(CANT);
  });
});

describe('nobody contradicts themselves', () => {
  const BOTH = [false, true];
  const sites = BOTH.flatMap((home) =>
    BOTH.flatMap((own) =>
      BOTH.flatMap((second) => BOTH.map((worked) => [home, own, second, worked] as const)),
    ),
  );

  /** Answers of one person that cannot both be true, from the words of the questions. */
  function clashes(said: Readonly<Record<string, unknown>>): readonly string[] {
    const is = (id: string, ...answers: readonly unknown[]): boolean => answers.includes(said[id]);
    const isSeen = is('exact-screen', 'picture');
    const elsewhere = is('phone-access', 'only-wifi', 'only-mobile', 'both') || is('which-phones', 'one');
    const isSomewhere = isSeen || elsewhere || is('other-phones-on-mobile', 'all');
    const pairs: Readonly<Record<string, boolean>> = {
      'no phone shows it, the screen does': is('which-phones', 'all') && isSeen,
      'no phone shows it, the others do': is('which-phones', 'all') && is('other-phones-on-mobile', 'all'),
      'both networks show it, the screen does not': is('phone-access', 'both') && !isSeen,
      'neither network shows it, the screen does': is('phone-access', 'neither') && isSeen,
      'closing the others helps, the screen is dark': is('others-closed', true) && !isSeen,
      'dark at times, the screen is not': is('when-dark', 'always') && isSeen,
      'the screen and its words differ': !`${said['their-words']}`.includes(
        SAYS[`${said['exact-screen']}`] ?? '?',
      ),
      'the screen says that the camera is offline, its words blame something else':
        is('exact-screen', 'offline') !== is('screen-blames', 'camera'),
      'not on Wi-Fi, with an address there':
        is('phone-wifi', 'no-wifi') && is('phone-range-same', true, false),
      'not on Wi-Fi, yet seen there':
        is('phone-wifi', 'no-wifi') && is('phone-access', 'only-wifi', 'neither', 'both'),
      'another phone shows it, the phone at hand is away':
        is('phone-wifi', 'no-wifi') && !`${said.kit}`.includes('second-phone'),
      'never seen, shows now': is('ever-worked', false) && isSomewhere,
      'a new camera that has shown': is('new-camera-count', 1) && is('ever-worked', true),
      'seen before, told as never':
        is('ever-worked', true) && `${said['last-picture']}`.startsWith('Never, it has not shown'),
    };
    return Object.keys(pairs).filter((name) => pairs[name]);
  }

  const SAYS: Readonly<Record<string, string>> = {
    picture: 'shows picture',
    waiting: 'shows waiting',
    offline: 'shows camera-offline',
    'wrong-password': 'shows wrong-password',
  };

  test.each(sites)(
    'dark at home %s, on mobile data %s, on the second phone %s; worked before %s',
    async (home, own, second, worked) => {
      const said: Record<string, unknown> = {};
      await Promise.all(
        ASKED.map(async (question) => {
          const seen = await answer(question.id, site({ home, own, second }), scene(worked));
          expect(misfit(question, seen)).toBeUndefined();
          if (seen.kind === 'value') said[question.id] = seen.value;
        }),
      );
      expect(clashes(said)).toEqual([]);
    },
  );
});
