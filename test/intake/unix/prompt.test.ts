import { describe, expect, test } from 'vitest';
import { readPaste } from '../../../src/intake/paste.js';
import { isPrompt } from '../../../src/intake/unix/prompt.js';

describe('a prompt', () => {
  test.each([
    '[dropped]:~$ ip addr',
    '[dropped]:~$',
    '[dropped] ~ % ifconfig',
    '[dropped]:/var/log# cat /etc/resolv.conf',
    '[[dropped] ~]# ip route',
    '[dropped]@[dropped]:~$ ping 172.23.40.57',
    'name@host.example:~$ ip addr',
    '[name@host ~]# arp -n',
    'host:~ name$ netstat -rn',
    'bash-5.2$ dig cam.example',
    '~ # arping 172.23.40.57',
    '/ # ip neigh',
    '$ ip addr',
    '$ ipconfig /all',
    '# ip route',
    '% ifconfig',
    '$ sudo arping 172.23.40.57',
    '$ /sbin/ip addr',
    '$ /usr/sbin/arp -n',
    '$ ping6 fe80::1',
    '$ tracert 172.23.40.57',
  ])('is %j', (text) => {
    expect(isPrompt(text)).toBe(true);
  });

  test.each([
    '',
    '$',
    '$ 40 for the lead',
    '$ ipsum dolor',
    '$ iplink',
    '% loss',
    '#1 camera at the gate',
    '# ipaddress of the gate',
    '[dropped]',
    '[dropped] is the password, 50 % sure',
    '[dropped]: 172.23.40.57',
    'mira@firm.example',
    'mira@firm.example: it costs 50 $ or so',
    '25% packet loss',
    '172.23.40.57',
  ])('is not %j', (text) => {
    expect(isPrompt(text)).toBe(false);
  });
});

describe('a typed command is understood, and nothing is taken from it', () => {
  test.each([
    'mira@den:~$ ip addr',
    '$ ipconfig /all',
    '$ ping 172.23.40.57',
    '[mira@den ~]# cat /etc/resolv.conf',
  ])('%j', (text) => {
    const { text: kept, reading } = readPaste(text);
    expect(kept).not.toMatch(/mira|den/);
    expect(reading.unread).toEqual([]);
    expect(reading.parsers.map(({ name }) => name)).toEqual(['shell-prompt']);
    expect(Object.values(reading.seen).flat()).toEqual([]);
  });

  test('twice over: a text that was kept is read as the one that came', () => {
    const text = 'mira@den:~$ ip route\ndefault via 172.23.40.1 dev eth0\nmira@den:~$ ';
    const once = readPaste(text);
    const again = readPaste(once.text);
    expect(again.text).toBe(once.text);
    expect(again.reading).toEqual(once.reading);
    expect(once.reading.parsers.map(({ name }) => name)).toEqual([
      'shell-prompt',
      'ip-route',
      'shell-prompt',
    ]);
  });
});
