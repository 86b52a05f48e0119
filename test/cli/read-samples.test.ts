import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { toldOf } from '../../src/cli/commands/read.js';
import { readPaste } from '../../src/intake/paste.js';
import { textOf } from '../../src/intake/text-of.js';
import { run } from './built.js';
import { ODD_TEXTS } from './read-odd-texts.js';
import { type ReadText, USUAL_TEXTS } from './read-texts.js';

const ALL: readonly ReadText[] = [...USUAL_TEXTS, ...ODD_TEXTS];

interface Told {
  readonly seen: {
    readonly adapters: readonly {
      readonly owner: string;
      readonly addresses: readonly { readonly address: string; readonly mask?: string }[];
      readonly gateways: readonly { readonly value: string }[];
      readonly dns: readonly { readonly value: string }[];
    }[];
    readonly pings: readonly { readonly target: string; readonly sent: number; readonly received: number }[];
    readonly lookups: readonly {
      readonly name: string;
      readonly server?: string;
      readonly addresses: readonly string[];
      readonly outcome: string;
    }[];
  };
  readonly observations: readonly { readonly id: string; readonly value: string | number | boolean }[];
}

/** What the JSON says, in the short form of the table. */
function shortOf({ seen, observations }: Told): Pick<ReadText, 'devices' | 'tries' | 'observations'> {
  const list = (name: string, values: readonly { readonly value: string }[]): readonly string[] =>
    values.length === 0 ? [] : [`${name} ${values.map(({ value }) => value).join(' ')}`];
  return {
    devices: seen.adapters
      .filter(({ addresses, gateways, dns }) => addresses.length + gateways.length + dns.length > 0)
      .map(({ owner, addresses, gateways, dns }) =>
        [
          [owner, ...addresses.flatMap(({ address, mask }) => [address, ...(mask ? [mask] : [])])].join(' '),
          ...list('gateway', gateways),
          ...list('dns', dns),
        ].join(', '),
      ),
    tries: [
      ...seen.pings.map(({ target, received, sent }) => `${target} ${received}/${sent}`),
      ...seen.lookups.map(({ name, server, addresses, outcome }) => {
        return `${name} from ${server ?? 'nobody'}: ${addresses.length > 0 ? addresses.join(' ') : outcome}`;
      }),
    ],
    observations: Object.fromEntries(observations.map(({ id, value }) => [id, value])),
  };
}

function wanted({ devices, tries, observations }: ReadText): ReturnType<typeof shortOf> {
  return { devices, tries, observations };
}

/** As the command does it, but for the file and the terminal. */
function toldHere({ bytes }: ReadText): Told {
  return JSON.parse(JSON.stringify(toldOf(readPaste(textOf(bytes)))));
}

test('there are at least 80 texts in at least 12 languages', () => {
  expect(new Set(ALL.map(({ name }) => name)).size).toBe(ALL.length);
  expect(ALL.length).toBeGreaterThanOrEqual(80);
  expect(new Set(ALL.map(({ language }) => language)).size).toBeGreaterThanOrEqual(12);
});

describe('`read --json` says exactly what stands in', () => {
  test.each(ALL)('$name', (text) => {
    expect(shortOf(toldHere(text))).toEqual(wanted(text));
  });
});

describe('and so does the built command of', () => {
  const oneEach = [...new Map(USUAL_TEXTS.map((text) => [text.language, text])).values()];
  test.each([...oneEach, ...ODD_TEXTS.slice(0, 5)])('$name', (text) => {
    const folder = mkdtempSync(join(tmpdir(), 'whydark-read-'));
    try {
      const path = join(folder, 'text');
      writeFileSync(path, text.bytes);
      const { status, stdout, stderr } = run(['read', path, '--json']);
      expect(stderr).toBe('');
      expect(status).toBe(0);
      expect(shortOf(JSON.parse(stdout))).toEqual(wanted(text));
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
