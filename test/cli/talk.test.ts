import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Options, readOptions } from '../../src/cli/options.js';
import { talk } from '../../src/cli/talk.js';
import { AT, DIGEST } from '../call/play.js';
import { TINY } from '../call/tiny-rule-base.js';
import { temporaryFolder } from '../files/temporary.js';
import { canMount } from '../files/tmpfs.js';
import { type Answerer, asking, command, one, quietTerminal, text } from './desk.js';
import { withTinyDisk } from './tiny-disk.js';

const root = temporaryFolder();
let made = 0;
const fresh = (): string => {
  const folder = join(root, String(made++));
  mkdirSync(folder);
  return folder;
};

interface Talked {
  readonly status: number;
  readonly told: string;
  readonly results: string;
}

/** Holds a call as `whydark call` does, but with a terminal, a clock and folders of the test's own. */
async function talked(
  options: Partial<Options>,
  replies: readonly Answerer[],
  state = fresh(),
  digest = DIGEST,
): Promise<Talked> {
  const { terminal, told } = quietTerminal();
  let results = '';
  const status = await talk(
    { ...readOptions(['call']), ...options },
    { rules: TINY, digest },
    {
      terminal,
      ask: asking(replies).ask,
      results: { write: (words) => (results += words) },
      now: () => AT,
      env: { XDG_STATE_HOME: state },
      home: '/nonexistent',
    },
  );
  return { status, told: told(), results };
}

const recordOf = (): string => join(fresh(), 'call.jsonl');
const events = (record: string): readonly { readonly type?: string }[] =>
  readFileSync(record, 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => JSON.parse(line));
const TO_THE_END: readonly Answerer[] = [
  one('here'),
  one('off'),
  one('dark'),
  one('no'),
  one('agrees'),
  one('back'),
  one('close'),
];
const STOP: readonly Answerer[] = [command('stop'), one('ticket')];

describe('a call from beginning to end', () => {
  it('talks on the terminal, and gives nothing but the ticket as its result', async () => {
    const record = recordOf();
    const { status, told, results } = await talked({ record }, TO_THE_END);
    expect(status).toBe(0);
    expect(told).toContain('Never ask for a password.');
    expect(told.replace(/\s+/g, '')).toContain(record);
    expect(told).toContain('The ticket follows.');
    expect(results).toContain('The picture is back');
    expect(results.endsWith('\n')).toBe(true);
    expect(results).not.toContain('Never ask for a password.');
    expect(events(record).map(({ type }) => type)).toEqual([
      'answered',
      'answered',
      'tried',
      'agreed',
      'tried',
      'closed',
    ]);
  });

  it('keeps its record where nobody names a file, for its owner only, and lets go of it', async () => {
    const state = fresh();
    await talked({}, TO_THE_END, state);
    const folder = join(state, 'whydark', 'calls');
    const [name = '', ...more] = readdirSync(folder);
    expect(more).toEqual([]);
    expect(name).toMatch(/^2026-11-25-083000-[0-9a-f]{8}\.jsonl$/);
    expect(statSync(join(folder, name)).mode & 0o777).toBe(0o600);
  });

  it.each([
    [true, 'site'],
    [false, 'desk'],
  ])('is at the hands of whoever holds it (--site: %s)', async (site, role) => {
    const record = recordOf();
    await talked({ record, site }, STOP);
    expect(JSON.parse(readFileSync(record, 'utf8').split('\n')[0] ?? '').role).toBe(role);
  });
});

describe('Ctrl-C', () => {
  it.each<[string, readonly Answerer[], number]>([
    ['at the first question', ['ctrl-c'], 0],
    ['later on', [one('here'), one('off'), 'ctrl-c'], 2],
    ['while a remedy is asked about', [one('here'), one('off'), one('dark'), 'ctrl-c'], 2],
    ['while an answer is being changed', [one('here'), command('change'), one('at-site'), 'ctrl-c'], 1],
  ])('%s ends with 130, says how to go on, and loses nothing', async (_, replies, kept) => {
    const record = recordOf();
    const { status, told, results } = await talked({ record }, replies);
    expect([status, results]).toEqual([130, '']);
    expect(told.replace(/\s+/g, ' ')).toContain(
      'Interrupted. Nothing is lost. Go on with: whydark call --record',
    );
    expect(told.replace(/\s+/g, '')).toContain(record);
    expect(events(record)).toHaveLength(kept);
    expect(existsSync(`${record}.lock`)).toBe(false);
  });

  it('while a call is being chosen ends with 130', async () => {
    const state = fresh();
    await talked({}, ['ctrl-c'], state);
    expect(await talked({}, ['ctrl-c'], state)).toMatchObject({ status: 130, results: '' });
  });
});

describe('going on', () => {
  it('with a named record takes the call up where it stopped', async () => {
    const record = recordOf();
    await talked({ record }, [one('here'), 'ctrl-c']);
    const { told, results } = await talked({ record }, [one('off'), one('not-now'), ...STOP]);
    expect(told).toContain('Going on where the call stopped. 1 entries are there.');
    expect(told).not.toContain('Say at-site?');
    expect(results).toContain('it is off');
    expect(events(record).map(({ type }) => type)).toEqual(['answered', 'answered', 'passed-over', 'closed']);
  });

  it('is offered where a call was left open, and a new one may be begun all the same', async () => {
    const state = fresh();
    await talked({}, [one('here'), command('stop'), one('later')], state);
    let offered = '';
    const choose =
      (id: 'old' | 'new'): Answerer =>
      ({ input }) => {
        if (!('choices' in input)) throw new Error('no choice');
        offered = input.choices.map(({ title }) => title).join(' / ');
        return one(input.choices[id === 'old' ? 1 : 0]?.id ?? '');
      };
    const anew = await talked({}, [choose('new'), one('stranger'), one('close')], state);
    expect(offered).toBe('Begin a new call / Go on with the call of 2026-11-25 08:30, 1 entries');
    expect(anew.told).not.toContain('Going on where');
    const old = await talked({}, [choose('old'), one('off'), ...STOP], state);
    expect(old.told).toContain('Going on where the call stopped.');
    expect(
      readdirSync(join(state, 'whydark', 'calls')).filter((name) => name.endsWith('.jsonl')),
    ).toHaveLength(2);
  });

  it('with a call that is closed gives its ticket again', async () => {
    const record = recordOf();
    const first = await talked({ record }, TO_THE_END);
    const again = await talked({ record }, []);
    expect([again.status, again.results]).toEqual([0, first.results]);
  });

  it('with a torn last line says so, and leaves it out', async () => {
    const record = recordOf();
    await talked({ record }, [one('here'), 'ctrl-c']);
    appendFileSync(record, '{"at":"2026-11-25T08');
    const { results, told } = await talked({ record }, [one('off'), ...STOP]);
    expect(told.replace(/\s+/g, ' ')).toContain('was cut off while it was being written; it is left out.');
    expect(results).toContain('it is off');
    expect(events(record)).toHaveLength(3);
  });

  it('with a record of another rule base is refused, and the record let go', async () => {
    const record = recordOf();
    await talked({ record }, [one('here'), 'ctrl-c']);
    const other = talked({ record }, [], fresh(), 'e'.repeat(64));
    await expect(other).rejects.toMatchObject({ exit: 2 });
    await expect(other).rejects.toThrow('Give the other one with --rules DIR');
    expect(existsSync(`${record}.lock`)).toBe(false);
  });

  it("leaves aside a record in the folder that can't be read, and says which", async () => {
    const state = fresh();
    await talked({}, [one('here'), command('stop'), one('later')], state);
    writeFileSync(join(state, 'whydark', 'calls', '2026-01-01-000000-aaaa.jsonl'), 'dear diary\n');
    const { told } = await talked({}, [one(''), one('stranger'), one('close')], state);
    expect(told).toContain('Left aside:');
  });
});

describe('a file that is in the way', () => {
  it('is refused with 2 where it is no record', async () => {
    const record = recordOf();
    writeFileSync(record, 'dear diary\n');
    await expect(talked({ record }, [])).rejects.toMatchObject({ exit: 2 });
    expect(readFileSync(record, 'utf8')).toBe('dear diary\n');
  });

  it('is refused with 2 where its folder is not there', async () => {
    await expect(talked({ record: join(fresh(), 'no', 'such', 'call.jsonl') }, [])).rejects.toMatchObject({
      exit: 2,
    });
  });
});

describe.skipIf(!canMount())('on a real disk of 64 KiB (needs root on Linux, to mount it)', () => {
  const note = (words: string): readonly Answerer[] => [command('note'), text(words)];

  it('that fills up during a call: ends with 3, says so, and the call goes on later from what was kept', async () => {
    await withTinyDisk(async ({ folder, fillUp, makeRoom }) => {
      const record = join(folder, 'call.jsonl');
      await talked({ record }, [one('here'), 'ctrl-c']);
      const full: Answerer = () => {
        fillUp();
        return text('x'.repeat(6000));
      };
      const failed = talked({ record }, [...note('short'), command('note'), full]);
      await expect(failed).rejects.toMatchObject({ exit: 3 });
      await expect(failed).rejects.toThrow(
        /is full\..* Nothing answered before is lost; the last answer was not kept\./,
      );
      expect(events(record).map(({ type }) => type)).toEqual(['answered', 'noted']);
      expect(existsSync(`${record}.lock`)).toBe(false);
      makeRoom();
      const { status, results } = await talked({ record }, [one('off'), ...STOP]);
      expect(status).toBe(0);
      expect(results).toContain('it is off');
    });
  });

  it('that can only be read: begins no call, and ends with 3', async () => {
    await withTinyDisk(async ({ folder, makeReadOnly }) => {
      makeReadOnly();
      await expect(talked({}, [], folder)).rejects.toMatchObject({
        exit: 3,
        sentence: { id: 'files.read-only' },
      });
    });
  });
});
