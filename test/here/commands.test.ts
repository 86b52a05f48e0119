import { expect, test } from 'vitest';
import { commandsOn, typed } from '../../src/here/commands.js';
import { inWords } from '../../src/messages/say.js';

test.each([
  ['linux', ['ip -j addr', 'ip -j route', 'ip -j neigh', 'cat /etc/resolv.conf']],
  ['darwin', ['ifconfig', 'netstat -rn -f inet', 'arp -an', 'scutil --dns']],
  ['win32', ['ipconfig /all', 'route print -4', 'arp -a']],
  ['plan9', []],
])('%s has its commands', (platform, commands) => {
  expect(commandsOn(platform).map(({ argv }) => typed(argv))).toEqual(commands);
});

test('Linux without iproute2 has the commands of net-tools', () => {
  const instead = commandsOn('linux').flatMap((command) => (command.instead ? [typed(command.instead)] : []));
  expect(instead).toEqual(['ifconfig', 'route -n', 'arp -n']);
});

test('every command says why, and only reads', () => {
  // Words with which these commands change something.
  const changing =
    /\b(?:add|del|delete|set|change|flush|replace|up|down|-d|-s|-f(?! inet)|\/release|\/renew|\/flushdns)\b/;
  for (const platform of ['linux', 'darwin', 'win32']) {
    for (const { argv, why, instead } of commandsOn(platform)) {
      expect(inWords(why)).toMatch(/^Shows .+\.$/);
      expect(`${typed(argv)} ${instead ? typed(instead) : ''}`).not.toMatch(changing);
    }
  }
});
