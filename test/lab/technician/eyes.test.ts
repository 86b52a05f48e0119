import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { Story } from '../types.js';
import { ASKED, asked } from './asked.js';
import { BROKEN } from './broken-words.js';
import { EYES, look, type Scene } from './eyes.js';
import { ALL_DARK, ALL_WELL, type Paper, paperLab, WELL } from './paper-lab.js';
import { misfit } from './valid.js';

const CALM: Scene = {
  story: { everWorked: true, changed: 'nothing', when: 'days' },
  plain: {},
  role: 'site',
};

async function answer(id: string, paper: Paper, scene: Scene = CALM) {
  return (await look(asked(id), paperLab(paper).lab, scene)).answer;
}

const given = (value: unknown) => ({ kind: 'value', value });
const CANT = { kind: 'cant-tell' };

describe('which questions have eyes', () => {
  test('all of them, and nothing that nobody asks', () => {
    expect(Object.keys(EYES).sort()).toEqual(ASKED.map(({ id }) => id).sort());
  });

  const program = fileURLToPath(new URL('../../../dist/whydark.js', import.meta.url));
  test.skipIf(!existsSync(program))('the questions kept here are those that the program prints', () => {
    const { questions } = JSON.parse(
      execFileSync('node', [program, 'questions', '--json'], { encoding: 'utf8' }),
    );
    const facts = (all: readonly (typeof ASKED)[number][]) =>
      all.map(({ id, answer: { type, choices } }) => [id, type, choices?.map((one) => one.id) ?? []]);
    expect(facts(ASKED).sort()).toEqual(facts(questions).sort());
  });

  test('a question without eyes is an error, not a shrug', async () => {
    await expect(look({ ...asked('kit'), id: 'kit-of-old' }, paperLab(ALL_WELL).lab, CALM)).rejects.toThrow(
      'kit-of-old',
    );
  });
});

describe('what the answers look like', () => {
  const changes: readonly Story['changed'][] = [
    ...(['nothing', 'router', 'provider', 'phone', 'password', 'building-work', 'storm'] as const),
    ...(['power-cut', 'settings', 'new-device', 'firmware', 'not-known'] as const),
  ];
  const HALF: Paper = {
    ...ALL_WELL,
    page: undefined,
    app: (_, on) => (on === 'mobile' ? 'waiting' : 'picture'),
  };

  test.each([
    ['where all is well', ALL_WELL],
    ['where all is dark', ALL_DARK],
    ['where half of it works', HALF],
    ['where the app wants a password', { ...ALL_WELL, app: () => 'wrong-password' as const }],
    ['where the account is empty', { ...ALL_DARK, app: () => 'empty-list' as const }],
    ['where the picture stutters', { ...ALL_WELL, app: () => 'stutters' as const }],
  ])('each fits its question %s', async (_, paper) => {
    const wrong: string[] = [];
    await Promise.all(
      ASKED.map(async (question) => {
        const seen = await look(question, paperLab(paper).lab, CALM);
        wrong.push(...[misfit(question, seen.answer)].flatMap((words) => words ?? []));
      }),
    );
    expect(wrong).toEqual([]);
  });

  test.each(changes)('the story %s fits the choices', async (changed) => {
    const story = { everWorked: false, changed, when: 'never-worked' } as const;
    for (const id of ['what-changed', 'ever-worked', 'last-picture', 'wifi-same', 'plugs-put-on']) {
      const seen = await answer(id, ALL_WELL, { ...CALM, story });
      expect(misfit(asked(id), seen)).toBeUndefined();
    }
  });

  test.each<[Story['changed'], string]>([
    ['nothing', 'none'],
    ['not-known', 'none'],
    ['router', 'router'],
    ['provider', 'router'],
    ['phone', 'phone'],
    ['password', 'password'],
    ['building-work', 'building'],
    ['storm', 'storm'],
    ['power-cut', 'storm'],
    ['settings', 'settings'],
    ['new-device', 'device'],
    ['firmware', 'update'],
  ])('whoever tells of %s names the choice %s', async (changed, said) => {
    const story: Story = { ...CALM.story, changed };
    expect(await answer('what-changed', ALL_WELL, { ...CALM, story })).toEqual(given(said));
  });

  test.each([
    [undefined, ['none']],
    [[], ['none']],
    [['phone'], ['phone']],
    [
      ['camera', 'router', 'phone'],
      ['camera', 'router', 'phone'],
    ],
  ] as const)('whoever did %s before ringing says %s', async (tried, said) => {
    const story: Story = { ...CALM.story, ...(tried ? { tried } : {}) };
    const seen = await answer('tried-already', ALL_WELL, { ...CALM, story });
    expect(seen).toEqual(given(said));
    expect(misfit(asked('tried-already'), seen)).toBeUndefined();
  });

  test('on a site where all is well, nobody names anything broken', async () => {
    const named: string[] = [];
    await Promise.all(
      ASKED.map(async (question) => {
        const seen = await look(question, paperLab(ALL_WELL).lab, CALM);
        if (
          seen.answer.kind === 'value' &&
          BROKEN[question.id]?.includes(seen.answer.value as string | boolean)
        )
          named.push(`${question.id}: ${seen.answer.value}`);
      }),
    );
    expect(named).toEqual([]);
  });

  test('the list of broken answers holds only answers that can be given', () => {
    for (const [id, answers] of Object.entries(BROKEN))
      for (const one of answers) expect(misfit(asked(id), { kind: 'value', value: one })).toBeUndefined();
  });
});

describe('what the scene tells', () => {
  test('wins over every look, without a command', async () => {
    const seen = await look(asked('camera-lights'), paperLab(ALL_WELL).lab, {
      ...CALM,
      plain: { 'camera-lights': 'dead' },
    });
    expect(seen).toEqual({ ran: [], answer: given('dead') });
  });

  test('takes the shape of the question', async () => {
    const plain = {
      'camera-ping': 'no',
      'upload-speed': '0.4',
      kit: 'ladder, laptop',
      'router-page': 'cant-tell',
    };
    const scene = { ...CALM, plain };
    expect(await answer('camera-ping', ALL_WELL, scene)).toEqual(given(false));
    expect(await answer('upload-speed', ALL_WELL, scene)).toEqual(given(0.4));
    expect(await answer('kit', ALL_WELL, scene)).toEqual(given(['ladder', 'laptop']));
    expect(await answer('router-page', ALL_WELL, scene)).toEqual(CANT);
  });

  test.each([
    ['port-light', 'purple'],
    ['port-light', true],
    ['camera-ping', 'perhaps'],
    ['upload-speed', 'slow'],
  ])('is refused where %s has no answer %s', async (id, word) => {
    await expect(answer(id, ALL_WELL, { ...CALM, plain: { [id]: word } })).rejects.toThrow(id);
  });
});

describe('addresses', () => {
  test('are pasted as the computer and the page show them', async () => {
    const own = await answer('computer-address', ALL_WELL);
    expect(own).toMatchObject({ kind: 'paste', from: 'this-computer' });
    expect(own).toMatchObject({ text: expect.stringContaining('inet 172.23.40.131/24') });
    expect(await answer('camera-gateway', ALL_WELL)).toEqual({
      kind: 'paste',
      text: ALL_WELL.page,
      from: 'camera',
    });
  });

  test('an empty line of the page is typed as such', async () => {
    const page = ALL_WELL.page?.replace('Default gateway: 172.23.40.1', 'Default gateway: not set');
    expect(await answer('camera-gateway', { ...ALL_WELL, page })).toEqual(given('0.0.0.0'));
    expect(await answer('gateway-compared', { ...ALL_WELL, page })).toEqual(given(false));
  });

  test('without the page there are the notes, and for the other lines nothing', async () => {
    const paper = { ...ALL_WELL, page: undefined };
    expect(await answer('camera-address', paper)).toEqual(given('172.23.40.21'));
    for (const id of ['camera-mask', 'camera-gateway', 'camera-dns', 'gateway-compared'])
      expect(await answer(id, paper)).toEqual(CANT);
  });
});

describe('looks that move something put it back', () => {
  test('the phone returns to its Wi-Fi', async () => {
    const { lab, done } = paperLab({ ...ALL_WELL, app: (_, on) => (on === 'wifi' ? 'picture' : 'waiting') });
    expect((await look(asked('phone-access'), lab, CALM)).answer).toEqual(given('only-wifi'));
    expect(done).toEqual(['mobile', 'wifi']);
  });

  test('the lead goes back in, unless it was out before', async () => {
    const { lab, done } = paperLab(ALL_WELL);
    await look(asked('answers-while-unplugged'), lab, CALM);
    expect(done).toEqual(['switch: link set dev p-camera down', 'switch: link set dev p-camera up']);
    const out = paperLab({
      ...ALL_WELL,
      prints: { ...WELL, 'switch ip -o link show dev p-camera': '6: p-camera@if2: <BROADCAST> state DOWN\n' },
    });
    await look(asked('answers-while-unplugged'), out.lab, CALM);
    expect(out.done).toEqual([]);
  });
});

describe('single looks', () => {
  test('only replies from the camera itself count', async () => {
    const prints = { 'computer ping': 'From 172.23.40.131 icmp_seq=1 Destination Host Unreachable\n' };
    expect(await answer('camera-ping', { prints })).toEqual(given(false));
    expect(await answer('ping-loss', { prints })).toEqual(given(100));
    const other = { 'computer ping': '64 bytes from 172.23.40.99: icmp_seq=1 ttl=64 time=0.1 ms\n' };
    expect(await answer('camera-ping', { prints: other })).toEqual(given(false));
    expect(await answer('ping-loss', ALL_WELL)).toEqual(given(0));
  });

  const url = 'computer curl http://172.23.40.21/';
  const own = '02:53:00:00:00:21';
  const other = '02:53:00:00:00:41';
  test.each([
    ['', 'nothing'],
    ['\n401', 'opens'],
    ['Please sign in\n200', 'opens'],
    ['Choose a first password\n200', 'first-setup'],
    [`Yard camera - status\n\nMAC address: ${own}\n200`, 'opens'],
    [`Gate - status\n\nMAC address: ${own}\n200`, 'opens'],
    [`Yard camera - status\n\nMAC address: ${other}\n200`, 'another'],
    [`Another device - status\n\nMAC address: ${other}\n200`, 'another'],
    ['Another device - status\n200', 'another'],
    ['Another device - status\n\nChoose a first password\n200', 'another'],
    ['Another device - status\n403', 'nothing'],
  ])('a page at the camera’s address that says %j is %s', async (body, word) => {
    const paper = { ...ALL_WELL, prints: { ...WELL, [url]: body } };
    expect(await answer('camera-page', paper)).toEqual(given(word));
  });

  test('without a label that can be read, the name on the page settles whose it is', async () => {
    const page = (name: string) => ({
      prints: { [url]: `${name} - status\n\nMAC address: ${other}\n200` },
    });
    expect(await answer('camera-page', page('Yard camera'))).toEqual(given('opens'));
    expect(await answer('camera-page', page('Another device'))).toEqual(given('another'));
  });

  test.each([
    ['2026-11-25 14:30:07 UTC', 'right'],
    ['2026-11-25 12:30:07 UTC', 'hour-off'],
    ['2021-06-04 14:30:07 UTC', 'far-off'],
    ['2026-11-25 13:50:07 UTC', 'far-off'],
  ])('a clock that shows %s is %s', async (shown, word) => {
    const page = ALL_WELL.page?.replace('2026-11-25 14:30:07 UTC', shown);
    expect(await answer('camera-date', { ...ALL_WELL, page })).toEqual(given(word));
  });

  test('dates are read out with the month as a word', async () => {
    expect(await answer('camera-clock-reads', ALL_WELL)).toEqual(given('25 Nov 2026 14:30'));
  });

  test('another letters-and-digits at the camera’s address is seen in the list', async () => {
    const list = (WELL['computer curl http://172.23.40.1/'] ?? '').replace(
      '172.23.40.21  02:53:00:00:00:21',
      '172.23.40.21  02:53:00:00:00:41  shed',
    );
    const paper = { ...ALL_WELL, prints: { ...WELL, 'computer curl http://172.23.40.1/': list } };
    expect(await answer('list-name-there', paper)).toEqual(given(true));
    expect(await answer('router-list', paper)).toEqual(given(false));
  });

  test.each([
    ['<h1>Welcome, please sign in</h1>\n200', 'sign-in-page'],
    ['Your bill of October is open.\n200', 'firm-page'],
    ['\n503', 'fails'],
  ])('a page that says %s instead of the web', async (body, word) => {
    const paper = { ...ALL_WELL, prints: { ...WELL, 'phone curl http://www.example/': body } };
    expect(await answer('site-web', paper)).toEqual(given(word));
  });
});
