import { describe, expect, test } from 'vitest';
import { checkArticles, type KnowledgeFile } from '../../src/knowledge/check-articles.js';
import { inWords } from '../../src/messages/say.js';
import { FILES, planted, question, RULES } from './an-article.js';

const ARTICLE = 'causes/link/lead-out.md';
const HOW_TO = 'how-to/plug.md';

function told(files: readonly KnowledgeFile[], rules = RULES): readonly string[] {
  return checkArticles(rules, files).map((fault) => `${fault.grade} ${fault.file}: ${inWords(fault.says)}`);
}

test('nothing is wrong where nothing is', () => {
  expect(told(FILES)).toEqual([]);
});

describe('planted in an article', () => {
  test.each([
    ['# Lead out\n', '\n', ['Line 1: The article has no title. Begin it with "# Lead out".']],
    [
      '# Lead out\n',
      'Well.\n\n# Lead out\n',
      ['Line 3: Something stands above the title. Begin the page with the title.'],
    ],
    [
      '## Cautions',
      '## Cautions\n\nMind the edge.\n\n# Sharp',
      ['Line 37: A page has one title. Begin this heading with "## ".'],
    ],
    [
      '# Lead out',
      '# Lead off',
      ['Line 1: The title is "Lead off", that of the cause is "Lead out". Write them alike.'],
    ],
    [
      '## Cautions\n\nNone beyond the usual.\n',
      '',
      ['Line 34: The heading "## Cautions" is missing. Write it above "## Sources".'],
    ],
    [
      '## Sources',
      'And:',
      [
        'The heading "## Sources" is missing. Write it at the end.',
        'Line 39: The outside address "https://leads.example" belongs under "Sources". One to type stands between backticks.',
      ],
    ],
    [
      '## Cautions',
      '## Caution',
      [
        'Line 37: The heading "## Cautions" is missing. Write it above "## Sources".',
        'Line 33: Write "## Cautions" for the heading "Caution".',
      ],
    ],
    [
      'The light is on.',
      '### Lights\n\nThe light is on.',
      [
        'Line 27: No article has a heading "Lights". The headings are: What happens, How to be sure, Mend it by phone, Mend it on site, How to know it worked, Often confused with, Cautions, Sources.',
      ],
    ],
    [
      '## Cautions',
      '## Mend it on site',
      [
        'The heading "## Cautions" is missing.',
        'The heading "Mend it on site" stands here again. Keep one of them.',
        'Line 33: Move the heading "Mend it on site" above "How to know it worked".',
      ],
    ],
    [
      'The light beside the socket is dark.\n',
      '',
      ['Line 9: Nothing stands under "How to be sure". Write it, or say that there is none.'],
    ],
    [
      'The light beside the socket is dark.\n',
      '<!-- later -->\n',
      [
        'Nothing stands under "How to be sure".',
        'Line 11: HTML is never shown: <!-- later -->. Write it as markdown.',
      ],
    ],
    [
      'has come out',
      'has <b>come</b> out',
      ['Line 5: HTML is never shown: <b>.', 'Line 5: HTML is never shown: </b>.'],
    ],
    ['has come out', 'has [come](../link/cable.md) out', ['Line 5: "../link/cable.md" leads to no file.']],
    [
      '../../how-to/plug.md',
      '../../how-to/plugs.md',
      ['Line 23: "../../how-to/plugs.md" leads to no file. Did you mean how-to/plug.md?'],
    ],
    ['../../how-to/plug.md', '../../../README.md', ['Line 23: "../../../README.md" leads to no file.']],
    ['../../how-to/plug.md', '#by-hand', ['Line 23: "#by-hand" leads to no heading of this page.']],
    ['../../how-to/plug.md', 'https://plugs.example', ['Line 23: "https://plugs.example" leads outside.']],
    [
      'Take another lead.',
      'See www.plugs.example.',
      ['Line 23: The outside address "www.plugs.example." belongs under "Sources".'],
    ],
    [
      ', https://leads.example',
      ', [leads](https://leads.example)',
      ['Line 39: "https://leads.example" leads outside.'],
    ],
    [
      '![A lead half out of its socket]',
      '![ ]',
      ['Line 7: The picture "../../pictures/lead.svg" has no words. Say between the brackets what it shows.'],
    ],
    [
      'pictures/lead.svg',
      'pictures/leads.svg',
      ['Line 7: "../../pictures/leads.svg" leads to no file. Did you mean pictures/lead.svg?'],
    ],
    [
      '- [Supply off](../power/supply-off.md)',
      'Supply off',
      ['Line 31: Under "Often confused with" stands a list. Begin this line with "- " and a link.'],
    ],
    [
      '- [Supply off](../power/supply-off.md)',
      '- Supply off',
      ["Line 31: Begin this item with a link to another cause's article."],
    ],
    [
      '../power/supply-off.md',
      '../link/lead-out.md',
      ['Line 31: A cause is not confused with itself. Link to another one.'],
    ],
    [
      '../power/supply-off.md',
      '../../how-to/plug.md',
      ['Line 31: "../../how-to/plug.md" is the article of no cause. Link to one that is.'],
    ],
  ])('%j for %j', (was, now, faults) => {
    const found = told(planted(ARTICLE, was, now));
    expect(found.map((fault) => fault.startsWith(`error knowledge/${ARTICLE}: `))).toEqual(
      faults.map(() => true),
    );
    for (const fault of faults) expect(found.join('\n')).toContain(fault);
  });
});

describe('planted in a how-to', () => {
  test.each([
    ['# Put a plug on\n', '\n', 'Line 1: The page has no title. Begin it with "# " and the title.'],
    ['1. Strip the end.\n2. ', 'Strip the end. ', 'A how-to has numbered steps.'],
    ['## Sources', '## Sources used', 'The heading "## Sources" is missing. Write it at the end.'],
    ['## Sources', '## Sources\n\nNone.\n\n## Tools', 'Line 16: Move the heading "Tools" above "By system".'],
    ['Take the round plug.\n', '', 'Line 8: Nothing stands under "Round cable".'],
    ['`http://10.77.5.10`', 'http://10.77.5.10', 'Line 4: The outside address "http://10.77.5.10." belongs'],
  ])('%j for %j', (was, now, fault) => {
    const found = told(planted(HOW_TO, was, now));
    expect(found.join('\n')).toContain(`error knowledge/${HOW_TO}: ${fault}`);
  });
});

describe('files and records', () => {
  const without = (file: string): readonly KnowledgeFile[] => FILES.filter((one) => one.file !== file);
  const moved = (to: string): readonly KnowledgeFile[] =>
    FILES.map((one) => (one.file === ARTICLE ? { ...one, file: to } : one));

  test('a cause without an article is a warning in its record; a link to that article is none', () => {
    expect(told(without(ARTICLE))).toEqual([
      `warning causes/link/lead-out.json: This cause has no article. Write it in knowledge/${ARTICLE}.`,
    ]);
  });

  test.each([
    [
      'causes/power/lead-out.md',
      `There is no cause "lead-out" in this stage. Did you mean knowledge/${ARTICLE}?`,
    ],
    [
      'causes/link/lead-outs.md',
      `There is no cause "lead-outs" in this stage. Did you mean knowledge/${ARTICLE}?`,
    ],
    ['causes/link/wind.md', 'There is no cause "wind" in the stage "link". Move or remove this file.'],
    ['causes/lead-out.md', 'No file belongs here.'],
    ['how-to/Plug.md', 'No file belongs here.'],
    ['pictures/lead.png', 'No file belongs here.'],
    ['how-to/supply-off.md', 'A cause has the name "supply-off" already. Give the how-to another one.'],
  ])('an article in %s', (file, fault) => {
    expect(told(moved(file)).join('\n')).toContain(`error knowledge/${file}: ${fault}`);
  });

  test('how-tos are compared with the questions that name them, once one does', () => {
    const naming = (howTo: unknown) => ({ ...RULES, questions: [question('lit', howTo), question('other')] });
    expect(told(FILES, naming('plug'))).toEqual([]);
    expect(told(FILES, naming({ windows: ['plug'] }))).toEqual([]);
    expect(told(FILES, naming('plugs'))).toEqual([
      'error questions/link/lit.json: There is no how-to "plugs". Write knowledge/how-to/plugs.md.',
      `error knowledge/${HOW_TO}: No question names this how-to. Name "plug" in the field "howTo" of a question, or remove the file.`,
    ]);
  });
});
