import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseAnswer } from '../../../src/here/discovery/answer.js';
import { readXml, type XmlElement } from '../../../src/here/discovery/xml.js';
import { sampleAnswer } from './sample-answer.js';

/** An element as nested lists, to compare. */
function shown({ namespace, name, text, children }: XmlElement): unknown {
  return [namespace, name, text, children.map(shown)];
}

const WELL_FORMED: readonly string[] = [
  '<a/>',
  '<a></a>',
  '<?xml version="1.0" encoding="UTF-8"?>\n<a> x </a>\n',
  '\ufeff<a/>',
  '<a b="1" c=\'2\'>&lt;&amp;&gt;&quot;&apos;</a>',
  '<a b = "x > y"  />',
  '<a xmlns="urn:x"><b xmlns=""/><c/></a>',
  '<p:a xmlns:p="urn:x"><p:b xmlns:p="urn:y&amp;z"/><p:c/></p:a>',
  '<a><!-- <b> & --><c/>x<!---->y</a><!-- end -->',
  '<a>one<b>two</b>three</a>',
  '<a\n\tb="1"\n></a\n>',
  '<a>é€𝄞</a>',
];

const NOT_WELL_FORMED: readonly string[] = [
  '',
  ' ',
  'x',
  '<a>',
  '<a></b>',
  '<a/><b/>',
  '<a/>x',
  'x<a/>',
  '<a><b></a></b>',
  '</a>',
  '<a b></a>',
  '<a b=1></a>',
  '<a b="1" b="2"/>',
  '<a b="<"/>',
  '<a b="1"c="2"/>',
  '<p:a/>',
  '<p:a xmlns:p=""/>',
  '<a>&unknown;</a>',
  '<a>&amp</a>',
  '<a>& </a>',
  '<a>]]></a>',
  '<a>\u0001</a>',
  '<a><!-- -- --></a>',
  '<a><!-- </a>',
  '< a/>',
  '<1/>',
  '<a:b:c xmlns:a="urn:x"/>',
  '<?xml version="1.0"?><?xml version="1.0"?><a/>',
];

/** Well formed, and still no part of these messages. */
const REFUSED: readonly string[] = [
  '<!DOCTYPE a><a/>',
  '<!DOCTYPE a [<!ENTITY b "bomb">]><a>&b;</a>',
  '<!DOCTYPE a SYSTEM "file:///etc/hostname"><a/>',
  '<a>&#65;&#x41;</a>',
  '<a><![CDATA[x]]></a>',
  '<a><?stop it?></a>',
  `${'<a>'.repeat(33)}${'</a>'.repeat(33)}`,
  `<a>${' '.repeat(65_536)}</a>`,
];

test.each(WELL_FORMED)('%j is read', (text) => {
  expect(readXml(text)).toBeDefined();
});

test.each(NOT_WELL_FORMED)('%j is not well formed', (text) => {
  expect(readXml(text)).toBeUndefined();
});

test.each(REFUSED.map((text) => [text.slice(0, 60), text]))('%j is refused', (_, text) => {
  expect(readXml(text)).toBeUndefined();
});

test('32 elements deep and 64 KiB long are still read', () => {
  expect(readXml(`${'<a>'.repeat(32)}${'</a>'.repeat(32)}`)).toBeDefined();
  expect(readXml(`<a>${' '.repeat(65_536 - 7)}</a>`)).toBeDefined();
});

test('noughts at the end, as some devices send them, do no harm', () => {
  expect(readXml('<a/>\0')).toBeDefined();
  expect(readXml('<a>\0</a>')).toBeUndefined();
});

test('names stand in their namespaces, and text in its element', () => {
  const read = readXml(
    '<a xmlns="urn:x" xmlns:p="urn:p">one<p:b xmlns="" p:c="2"><c/></p:b>two &amp; three</a>',
  );
  expect(read && shown(read)).toEqual([
    'urn:x',
    'a',
    'onetwo & three',
    [['urn:p', 'b', '', [['', 'c', '', []]]]],
  ]);
});

const PYTHON = `
import json, sys
from xml.etree import ElementTree
def shown(element):
    space, name = element.tag[1:].split('}') if element.tag[0] == '{' else ('', element.tag)
    text = (element.text or '') + ''.join(child.tail or '' for child in element)
    return [space, name, text, [shown(child) for child in element]]
def read(text):
    try: return shown(ElementTree.fromstring(text.encode('utf-8', 'surrogatepass')))
    except ElementTree.ParseError: return None
print(json.dumps([read(text) for text in json.load(sys.stdin)]))
`;

import { yardsOf } from '../../timing/yards.js';

/** What Expat makes of the texts, through Python; nothing where there is no Python. */
function byExpat(texts: readonly string[]): readonly unknown[] | undefined {
  try {
    const output = execFileSync('python3', ['-c', PYTHON], {
      input: JSON.stringify(texts),
      encoding: 'utf8',
    });
    return JSON.parse(output) as readonly unknown[];
  } catch {
    return undefined;
  }
}

const HAS_PYTHON = byExpat([]) !== undefined;

/** A sample with pieces taken out, doubled and put in. */
const mutated = fc
  .tuple(
    fc.constantFrom(sampleAnswer(), ...WELL_FORMED),
    fc.array(
      fc.tuple(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.nat(30),
        fc.constantFrom(
          '',
          '<',
          '>',
          '&',
          '&amp;',
          '"',
          '/',
          '<!--',
          '-->',
          ']]>',
          '<b>',
          '</b>',
          ' xmlns:q="urn:q"',
          ':',
          '\n',
        ),
      ),
      { maxLength: 4 },
    ),
  )
  .map(([text, changes]) =>
    changes.reduce((now, [where, length, piece]) => {
      const at = Math.floor(where * now.length);
      return now.slice(0, at) + piece + now.slice(at + length);
    }, text),
  );

describe.skipIf(!HAS_PYTHON)(`beside Expat${HAS_PYTHON ? '' : ' (left out: no python3)'}`, () => {
  test('the same is read', () => {
    const texts = [...WELL_FORMED, sampleAnswer({ matches: [{}, {}] })];
    expect(texts.map((text) => shown(readXml(text) as XmlElement))).toEqual(byExpat(texts));
    // What Expat takes and we do not is refused on purpose.
    expect(byExpat(NOT_WELL_FORMED)).toEqual(NOT_WELL_FORMED.map(() => null));
  });

  test('nothing is read from a damaged message that Expat would not read, and what is read is the same', () => {
    const texts = fc.sample(mutated, { numRuns: 3000, seed: 7 });
    const expected = byExpat(texts) ?? [];
    const read = texts.map((text) => readXml(text));
    const both = read.flatMap((it, at) => (it === undefined ? [] : [[shown(it), expected[at]] as const]));
    expect(both.length).toBeGreaterThan(200);
    for (const [ours, theirs] of both) expect(ours).toEqual(theirs);
    expect(read.filter((it, at) => it === undefined && expected[at] !== null).length).toBeLessThan(
      texts.length / 20,
    );
  });
});

describe('hostile input', () => {
  test('of any kind never throws', () => {
    fc.assert(
      fc.property(fc.oneof(mutated, fc.string({ unit: 'binary', maxLength: 400 })), (text) => {
        readXml(text);
        parseAnswer(text);
      }),
      { numRuns: 1000 },
    );
  });

  test.each([
    ['open brackets', '<'],
    ['elements in one another', '<a>'],
    ['elements beside one another', '<a/>', '<r>'],
    ['comments that do not end', '<!--', '<r>'],
    ['halves of comments', '<!-- -', '<r>'],
    ['ampersands', '&', '<r>'],
    ['entities', '&amp;', '<r>'],
    ['entities that do not end', '&ampp', '<r>'],
    ['blanks in a tag', ' ', '<r'],
    ['attributes', ' a="', '<r'],
    ['different attributes', (at: number) => ` a${at}="1"`, '<r'],
    ['prefixes', (at: number) => ` xmlns:a${at}="urn:${at}"`, '<r'],
    ['a long name', 'a', '<'],
    ['colons', 'a:', '<'],
    ['brackets of a section', ']]', '<r>'],
    ['an attribute without an end', 'x', '<r a="'],
    // A time that grew with the square of the length would be several seconds.
  ])('takes no longer than its length allows: %s', (_, piece, before = '') => {
    const of = typeof piece === 'string' ? () => piece : piece;
    let text = before;
    for (let at = 0; text.length < 65_000; at += 1) text += of(at);
    const readAll = (): void => {
      for (const end of ['', '>', '/>', '</r>', '"/>']) readXml(text + end);
    };
    expect(yardsOf(readAll, 60)).toBeLessThan(60);
  });
});
