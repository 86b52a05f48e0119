import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clean } from '../../src/ticket/clean.js';
import { writeTicket } from '../../src/ticket/ticket.js';
import type { TicketInput } from '../../src/ticket/ticket-input.js';
import { anEmptyTicket, aTicket } from './a-ticket.js';
import { HOSTILE, hostileText, UNSEEN } from './hostile.js';
import { commonmarkShape, commonmarkText, gfmShape, gfmTables } from './read-markdown.js';

const MASKED = { unmasked: false };
const UNMASKED = { unmasked: true };

function golden(name: string): string {
  return readFileSync(new URL(`../golden/ticket-${name}.md`, import.meta.url), 'utf8');
}

function headings(ticket: string): readonly string[] {
  return ticket.split('\n').filter((line) => /^##? /.test(line));
}

describe('whole tickets, read line by line', () => {
  test('a named cause, masked', () => expect(writeTicket(aTicket(), MASKED)).toBe(golden('named')));

  test('the same one unmasked', () =>
    expect(writeTicket(aTicket(), UNMASKED)).toBe(golden('named-unmasked')));

  test('out of scope, with nothing in most sections', () =>
    expect(writeTicket(anEmptyTicket(), MASKED)).toBe(golden('out-of-scope')));
});

test('sections stand in their order', () => {
  expect(headings(writeTicket(aTicket(), MASKED))).toEqual([
    '# The camera has a default gateway that is not on its own network.',
    '## Which camera',
    '## What was seen, word for word, and since when',
    '## How sure this is',
    '## Causes, likeliest first',
    '## Defects that the numbers show',
    '## What works',
    '## What was asked and answered',
    '## Checks that say nothing, because of how they were made',
    '## Answers that contradict each other',
    '## What was tried, and how things were left',
    '## Notes',
    '## Next steps, in this order',
    '## If someone goes',
    '## What was promised',
    '## Watch, and ring back',
  ]);
});

test('a caution stands before what it warns of', () => {
  const ticket = writeTicket(aTicket(), MASKED);
  const caution = ticket.indexOf('Caution: Work at height');
  expect(caution).toBeGreaterThan(ticket.indexOf('2. Look at the plug at the camera'));
  expect(caution).toBeLessThan(ticket.indexOf('Show first everything'));
});

test('every row of every table has as many cells as its head, as marked reads GFM', () => {
  const tables = gfmTables(writeTicket(aTicket(), MASKED));
  expect(tables.map(([head = []]) => head.length)).toEqual([4, 3, 3]);
  expect(tables.map((rows) => rows.length)).toEqual([4, 7, 2]);
  for (const [head = [], ...rows] of tables) for (const row of rows) expect(row).toHaveLength(head.length);
});

test('the reference parser finds the headings and no link, picture, code or HTML', () => {
  const shape = commonmarkShape(writeTicket(aTicket(), MASKED));
  expect(shape.filter((kind) => kind === 'heading 1')).toHaveLength(1);
  expect(shape.filter((kind) => kind === 'heading 2')).toHaveLength(15);
  expect(shape.filter((kind) => /link|image|code|html|quote|thematic/.test(kind))).toEqual([]);
});

test('it ends in one newline, and its last line says what it was made with', () => {
  const ticket = writeTicket(aTicket(), MASKED);
  expect(ticket).toMatch(/[^\n]\n$/);
  expect(ticket.split('\n').at(-2)).toBe(
    'whydark 0.1.0; rule base 0.1.0, digest 3fa9c1d2e4b5; call 7f3a-22c1',
  );
});

test('our own ids are never masked, even where they look like a MAC or a phone number', () => {
  const ticket = writeTicket({ ...aTicket(), call: '07700900123' }, MASKED);
  expect(ticket).toContain('digest 3fa9c1d2e4b5; call 07700900123\n');
});

test('the picture is back: whether that names the cause depends on what the remedy mends', () => {
  const base = aTicket();
  const restored = (confirmed: boolean): string =>
    writeTicket(
      {
        ...base,
        diagnosis: { ...base.diagnosis, verdict: { ...base.diagnosis.verdict, kind: 'restored', confirmed } },
      },
      MASKED,
    );
  expect(restored(true)).toContain('and the cause is confirmed');
  expect(restored(false)).toContain('mends more than one thing, so the cause is not proven.');
});

test('no chance is written as 0 or as 100 per cent', () => {
  const base = aTicket();
  const sure = (probability: number): string =>
    writeTicket(
      {
        ...base,
        diagnosis: { ...base.diagnosis, verdict: { ...base.diagnosis.verdict, probability } },
      },
      MASKED,
    );
  expect(sure(1)).toContain('Very likely: over 99 %.');
  expect(sure(0.995)).toContain('Very likely: over 99 %.');
  expect(sure(0.994)).toContain('Very likely: 99 %.');
  expect(sure(0)).toContain('Very likely: under 1 %.');
});

test('a time that is not ISO 8601 in UTC stands as it is', () => {
  expect(writeTicket({ ...aTicket(), opened: 'today' }, MASKED)).toContain('opened today, closed 2026-11-25');
});

/** The ticket with `typed` in every place where a person types. */
function typedEverywhere(typed: string): TicketInput {
  const base = aTicket();
  return {
    ...base,
    head: base.head.map((line) => ({ ...line, text: typed })),
    asked: base.asked.map((one) => ({ ...one, answer: typed })),
    notes: [typed, typed],
    diagnosis: {
      ...base.diagnosis,
      verdict: { ...base.diagnosis.verdict, says: typed },
      defects: base.diagnosis.defects.map((one) => ({ ...one, says: typed, lines: [typed, typed] })),
    },
  };
}

/** The ticket with `text` in every place that is not a number, a choice of ours or an id. */
function everywhere(text: string): TicketInput {
  const base = typedEverywhere(text);
  const { diagnosis } = base;
  return {
    ...base,
    call: text,
    opened: text,
    closed: text,
    whydark: text,
    head: base.head.map((line) => ({ ...line, title: text })),
    asked: base.asked.map((one) => ({ ...one, title: text })),
    tried: base.tried.map((one) => ({ ...one, title: text, leaves: text, sums: [text], undo: text })),
    diagnosis: {
      ...diagnosis,
      rules: { version: text, digest: text },
      ranked: diagnosis.ranked.map((cause) => ({
        ...cause,
        title: text,
        reasons: cause.reasons.map((reason) => ({ ...reason, title: text, shows: text })),
      })),
      works: diagnosis.works.map((one) => ({ ...one, says: text })),
      spoilt: diagnosis.spoilt.map((one) => ({ ...one, title: text, help: [text, text] })),
      conflicts: diagnosis.conflicts.map((one) => ({ ...one, says: text })),
      path: diagnosis.path.map((stage) => ({ ...stage, title: text })),
      plan: diagnosis.plan.map((step) => ({
        ...step,
        title: text,
        where: text,
        how: [text],
        cautions: [text],
        check: text,
        undo: text,
      })),
      visit: { minutes: 120, days: 2, doThere: [text, text], bring: [text, text], cautions: [text] },
      watch: text,
    },
  };
}

describe('hostile text adds nothing to what the parsers find, and nothing unseen gets through', () => {
  const shapes = (input: TicketInput, options: { unmasked: boolean }): readonly (readonly string[])[] => {
    const ticket = writeTicket(input, options);
    expect(ticket).not.toMatch(UNSEEN);
    return [commonmarkShape(ticket), gfmShape(ticket)];
  };
  const check = (text: string): void => {
    if (clean(text) === '') return;
    expect(shapes(typedEverywhere(text), MASKED)).toEqual(shapes(typedEverywhere('x'), MASKED));
    expect(shapes(everywhere(text), UNMASKED)).toEqual(shapes(everywhere('x'), UNMASKED));
  };

  test.each(HOSTILE)('%j', check);

  test('whatever is put together from such pieces', () => {
    fc.assert(fc.property(hostileText, check), { numRuns: 150 });
  });
});

test('a very long text is cut, and says by how much', () => {
  const ticket = writeTicket({ ...aTicket(), notes: ['dark '.repeat(1000)] }, MASKED);
  expect(ticket).toContain('(cut here; characters left out: 2999. The call record keeps the whole text.)');
});

test('half of a secret at the cut does not come through', () => {
  const note = `${'a '.repeat(996)}zoe@mail.example`;
  expect(writeTicket({ ...aTicket(), notes: [note] }, MASKED)).not.toContain('zoe');
});

describe('planted secrets', () => {
  const hex = fc.integer({ min: 0, max: 255 }).map((byte) => byte.toString(16).padStart(2, '0'));
  const digits = (length: number): fc.Arbitrary<string> =>
    fc.array(fc.nat(9), { minLength: length, maxLength: length }).map((some) => some.join(''));
  const letters = fc.string({
    unit: fc.constantFrom(...'ABCDEFGHJKLMNPRSTUVWXYZ'),
    minLength: 2,
    maxLength: 4,
  });
  const pairs = fc.array(hex, { minLength: 6, maxLength: 6 });
  const serial = fc.tuple(letters, digits(9)).map(([head, tail]) => head + tail);
  const mac = fc.oneof(
    fc.tuple(pairs, fc.constantFrom(':', '-')).map(([some, sign]) => some.join(sign)),
    pairs.map((some) => some.join('').replace(/(....)(....)(....)/, '$1.$2.$3')),
    pairs.filter((some) => /[a-f]/.test(some.join(''))).map((some) => some.join('')),
  );
  const address = fc
    .tuple(fc.constantFrom('203.0.113', '198.51.100', '192.0.2'), fc.nat(255))
    .map(([block, host]) => `${block}.${host}`);
  const address6 = fc.tuple(hex, hex).map(([one, other]) => `2001:db8:${one}aa::${other}7`);
  const mail = fc.tuple(letters, digits(2)).map(([name, number]) => `${name}.${number}@mail.example`);
  // Kept free for invented stories (Ofcom, "Telephone numbers for use in TV and radio drama"; North American
  // Numbering Plan, 555-01xx; both from memory).
  const phone = fc.oneof(
    digits(3).map((tail) => `+44 7700 900${tail}`),
    digits(3).map((tail) => `07700 900${tail}`),
    digits(2).map((tail) => `(212) 555-01${tail}`),
    digits(2).map((tail) => `212-555-01${tail}`),
  );
  const key = fc.tuple(letters, digits(4), letters).map(([a, b, c]) => `${a.toLowerCase()}${b}!${c}`);
  const planted = fc.record({ serial, mac, address, address6, mail, phone, key });
  type Planted = typeof planted extends fc.Arbitrary<infer Kind> ? Kind : never;

  const sentence = (it: Planted): string =>
    `The label says S/N ${it.serial} and MAC ${it.mac}. Outside it is ${it.address} or ${it.address6}. ` +
    `Write to ${it.mail} or ring ${it.phone}; the Wi-Fi key is ${it.key}, the camera 172.23.40.57/24.`;

  const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, '');

  test('none of them comes out of 500 tickets, and the private address does', () => {
    fc.assert(
      fc.property(planted, (it) => {
        const ticket = writeTicket(typedEverywhere(sentence(it)), MASKED);
        for (const secret of Object.values(it)) expect(plain(ticket)).not.toContain(plain(secret));
        expect(ticket).toContain(`S/N xxxx${it.serial.slice(-4)}`);
        expect(ticket).toContain('172.23.40.57/24');
      }),
      { numRuns: 500, seed: 20_261_125 },
    );
  });

  test('alone in an answer they are hidden as well', () => {
    fc.assert(
      fc.property(planted, ({ key: _, ...it }) => {
        const asked = Object.values(it).map((answer) => ({
          question: 'q',
          title: 'What it shows',
          answer,
          origin: 'said' as const,
          superseded: false,
        }));
        const ticket = plain(writeTicket({ ...aTicket(), asked }, MASKED));
        for (const secret of Object.values(it)) expect(ticket).not.toContain(plain(secret));
      }),
      { numRuns: 200, seed: 20_261_125 },
    );
  });

  test('asked for unmasked, they all come out', () => {
    fc.assert(
      fc.property(planted, (it) => {
        const ticket = plain(writeTicket({ ...aTicket(), notes: [sentence(it)] }, UNMASKED));
        for (const secret of Object.values(it)) expect(ticket).toContain(plain(secret));
      }),
      { numRuns: 50, seed: 20_261_125 },
    );
  });
});

test('the same call gives the same bytes, and writing leaves the call as it was', () => {
  const input = aTicket();
  const first = writeTicket(input, MASKED);
  expect(writeTicket(input, MASKED)).toBe(first);
  expect(input).toEqual(aTicket());
});

test('a person who reads the plain text reads what was typed', () => {
  const typed = 'It says *offline* | <b>now</b> & #1';
  expect(commonmarkText(writeTicket({ ...aTicket(), notes: [typed] }, MASKED))).toContain(typed);
});
