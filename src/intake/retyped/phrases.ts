import { DEVICE_WORDS, LINK_WORDS, NAME_WORDS } from './device-words.js';
import { FIELD_WORDS, type Field } from './field-words.js';
import { folded, spaced } from './fold.js';
import { isNearly } from './nearly.js';
import { FILLERS, STATE_WORDS, type State, TRIES } from './state-words.js';

/** What a word or phrase of a network page means. */
export type Meaning =
  | { readonly type: 'field'; readonly field: Field }
  | { readonly type: 'device'; readonly device: keyof typeof DEVICE_WORDS }
  | { readonly type: 'link'; readonly link: keyof typeof LINK_WORDS }
  | { readonly type: 'state'; readonly state: State }
  | { readonly type: 'name' | 'filler' | 'try' };

interface Phrase {
  readonly text: string;
  readonly meaning: Meaning;
}

/** Long enough to be known for what they are with a letter wrong. */
const OFTEN_MISSPELT: readonly string[] = [
  'gateway getaway netmask submask subnet subnetmask address router camera',
  'adresse subnetzmaske teilnetzmaske standardgateway passerelle masque mascara direccion endereco indirizzo',
  'maschera subnetmasker podsieci domyslna gecidi маршрутизатор подсети',
];
const MEANT: ReadonlyMap<string, Field> = new Map([
  ['getaway', 'gateway'],
  ['podsieci', 'mask'],
  ['domyslna', 'gateway'],
  ['gecidi', 'gateway'],
  ['подсети', 'mask'],
]);

const ALL: readonly Phrase[] = [
  ...rows(FIELD_WORDS, (field) => ({ type: 'field', field })),
  ...rows(DEVICE_WORDS, (device) => ({ type: 'device', device })),
  ...rows(LINK_WORDS, (link) => ({ type: 'link', link })),
  ...rows(STATE_WORDS, (state) => ({ type: 'state', state })),
  ...phrases(TRIES, { type: 'try' }),
  ...phrases(NAME_WORDS, { type: 'name' }),
  ...phrases(FILLERS, { type: 'filler' }),
];

/** By first letter; the longest first, and of equals the one that stands first above. */
const BY_LETTER = new Map<string, readonly Phrase[]>();
for (const phrase of ALL) {
  const letter = phrase.text.charAt(0);
  BY_LETTER.set(letter, [...(BY_LETTER.get(letter) ?? []), phrase]);
}
for (const [letter, found] of BY_LETTER) {
  BY_LETTER.set(
    letter,
    [...found].sort((one, other) => other.text.length - one.text.length),
  );
}
const MEANINGS: ReadonlyMap<string, Meaning> = new Map(
  [...ALL].reverse().map(({ text, meaning }) => [text, meaning]),
);
const MISSPELT = OFTEN_MISSPELT.flatMap((row) => row.split(' ')).flatMap((word): readonly Phrase[] => {
  const field = MEANT.get(word);
  const meaning: Meaning | undefined = field === undefined ? MEANINGS.get(word) : { type: 'field', field };
  return meaning === undefined ? [] : [{ text: word, meaning }];
});

/** The longest phrase of the tables at a place of a folded and spaced text. */
export function phraseAt(text: string, at: number): Phrase | undefined {
  return BY_LETTER.get(text.charAt(at))?.find((phrase) => {
    return text.startsWith(phrase.text, at) && endsThere(text, at + phrase.text.length);
  });
}

/** What a folded word means that has one letter wrong, too many or too few, or two swapped. */
export function misspelt(word: string): Meaning | undefined {
  return MISSPELT.find((phrase) => isNearly(word, phrase.text))?.meaning;
}

/** Scripts without blanks between words end a phrase anywhere. */
function endsThere(text: string, end: number): boolean {
  const [last, next] = [text.charAt(end - 1), text.charAt(end)];
  if (!/[a-z0-9\u0430-\u045f]/.test(last)) return true;
  if (/\d/.test(last) && (/\d/.test(next) || /^\.\d/.test(text.slice(end, end + 2)))) return false;
  return !/[a-z\u00df-\u024f\u0430-\u045f]/.test(next);
}

function rows<Key extends string>(
  table: Readonly<Record<Key, readonly string[]>>,
  meaning: (key: Key) => Meaning,
): readonly Phrase[] {
  const keys = Object.keys(table) as Key[];
  return keys.flatMap((key) => phrases(table[key], meaning(key)));
}

function phrases(list: readonly string[], meaning: Meaning): readonly Phrase[] {
  return list.flatMap((row) => row.split(', ')).map((text) => ({ text: spaced(folded(text)), meaning }));
}
