import fc from 'fast-check';

const bits = fc.oneof(
  { weight: 6, arbitrary: fc.stringMatching(/^[a-zA-Z0-9 .,;:'"()-]{1,30}$/) },
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.stringMatching(/^[a-z]{60,120}$/),
  fc.stringMatching(/^[\u4e00-\u4e40]{1,70}$/),
  fc.constantFrom(
    ...[
      '**bold**',
      '*soft*',
      '`code < x`',
      '[a](../link/x.md)',
      '[b](javascript:alert(1))',
      '<https://a.example>',
    ],
    ...[
      '[c](https://a.example "t")',
      '![d](../../pictures/d.svg)',
      '![e"><script>](x:y)',
      '<b>',
      '</article>',
    ],
    ...[
      '<script>alert(1)</script>',
      '<img src=x onerror=alert(1)>',
      '&lt;b&gt;',
      '&#27;[31m',
      '&#x202e;',
      '&amp;lt;',
    ],
    ...[
      '\u001b[31mred',
      '\u001b]8;;http://a.example\u0007',
      '\u202e',
      '\u0000',
      '\ud800',
      'e\u0301',
      '\\<b\\>',
      '  \n',
    ],
  ),
);
const line = fc.array(bits, { maxLength: 6 }).map((parts) => parts.join(' '));

const block = fc.oneof(
  line,
  fc.tuple(fc.integer({ min: 1, max: 6 }), line).map(([level, text]) => `${'#'.repeat(level)} ${text}`),
  fc
    .array(fc.tuple(fc.nat(40), line), { maxLength: 4 })
    .map((items) => items.map(([indent, text]) => `${' '.repeat(indent)}- ${text}`).join('\n')),
  fc.tuple(fc.nat(999999999), line, line).map(([n, a, b]) => `${n}. ${a}\n\n   ${b}\n${n}. x`),
  fc.tuple(fc.integer({ min: 1, max: 30 }), line).map(([depth, text]) => `${'> '.repeat(depth)}${text}`),
  line.map((text) => `\`\`\`\n\tif x\n${text}\n\`\`\``),
  fc
    .array(line, { minLength: 1, maxLength: 4 })
    .map((cells) => `|${cells.join('|')}|\n|${cells.map(() => '-').join('|')}|\n|${cells.join('|')}|`),
  fc.constantFrom('<div>\n\nx\n\n</div>', '---', '<!-- c -->', '[r]: javascript:alert(1)\n\n[x][r]'),
);

/** Pages of markdown with all that should not come through: HTML, foreign links, escapes, endless words. */
export const hostilePages = fc.oneof(
  fc.array(block, { maxLength: 8 }).map((blocks) => blocks.join('\n\n')),
  fc.string({ unit: 'binary', maxLength: 200 }),
);

const WIDE =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97f\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6]/;

/** Columns of a line: wide letters of East Asia take two (Unicode UAX #11), marks that combine none. */
export function columnsOf(text: string): number {
  return [...text].reduce((sum, letter) => sum + (/\p{M}/u.test(letter) ? 0 : WIDE.test(letter) ? 2 : 1), 0);
}
