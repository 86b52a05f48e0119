/** A value of JSON. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json };

/**
 * How the values of one place are written. Numbers name columns (`at`, `names`, a field's third) and other shapes
 * (`of`, `keys`, a field's second). Where the names of a list climb, each is written as the steps from the one before.
 */
export type Shape =
  | { readonly is: 'text' | 'number'; readonly at: number }
  | { readonly is: 'name'; readonly at: number; readonly names: number; readonly climbs?: boolean }
  | { readonly is: 'fixed'; readonly value: null | boolean }
  | { readonly is: 'list'; readonly at: number; readonly of: number }
  | { readonly is: 'map'; readonly at: number; readonly keys: number; readonly of: number }
  | { readonly is: 'record'; readonly fields: readonly Field[] }
  | { readonly is: 'mixed'; readonly at: number; readonly of: readonly number[] };

/** Name, shape, and the column that says where it is there, if it can be missing. */
export type Field = readonly [name: string, shape: number, present?: number];

/** What a small number is written with: printable, nothing that HTML or the escapes of a text give a meaning. */
export const DIGITS = Array.from({ length: 94 }, (_, at) => String.fromCharCode(33 + at))
  .filter((digit) => digit !== '<' && digit !== '\\')
  .join('');
const WORTH: number[] = [];
for (let worth = 0; worth < DIGITS.length; worth += 1) WORTH[DIGITS.charCodeAt(worth)] = worth;

/** What may not stand in a text of a column as it is, with the letter that stands for it after a backslash. */
export const ESCAPES = { '\\': 'b', '\t': 't', '\n': 'n', '\r': 'r', '<': 'l', '\0': '0' } as const;
const MEANT = new Map<string, string>(Object.entries(ESCAPES).map(([meant, letter]) => [letter, meant]));

/**
 * The value that `columnsOf` of the build wrote: likes beside likes, names as numbers, so that a compressor finds
 * more in it than in JSON. Throws a SyntaxError where the text is cut. It runs before the page shows anything, so it
 * loops where a chain of maps would read better.
 */
export function readColumns(text: string): Json {
  const [head = '', table = '', ...lines] = text.split('\n');
  const shapes: readonly Shape[] = JSON.parse(head);
  const all = textsOf(table);
  const columns: Column[] = lines.map((line) => ({ line, next: 0, width: line.charCodeAt(0) - 48 }));
  const cells: (readonly string[])[] = [];
  const names: (readonly string[])[] = [];

  const column = (at: number): Column => {
    const found = columns[at];
    if (!found) throw cut();
    return found;
  };
  /** The first character of a column says how many digits each of its numbers has. */
  const number = (at: number): number => {
    const from = column(at);
    const begin = 1 + from.width * from.next;
    from.next += 1;
    let sum = 0;
    for (let place = begin; place < begin + from.width; place += 1)
      sum = sum * DIGITS.length + (WORTH[from.line.charCodeAt(place)] ?? Number.NaN);
    if (!(sum >= 0)) throw cut();
    return sum;
  };
  /** The next of the texts that stand in a column as they are. */
  const cell = (at: number): string => {
    const from = column(at);
    cells[at] ??= textsOf(from.line);
    const found = cells[at]?.[from.next];
    from.next += 1;
    if (found === undefined) throw cut();
    return found;
  };
  const namesOf = (at: number): readonly string[] => {
    const own: string[] = [];
    const { line, width } = column(at);
    for (let rank = -1, left = (line.length - 1) / width; left > 0; left -= 1) {
      rank += 1 + number(at);
      own.push(all[rank] ?? '');
    }
    return own;
  };
  const namesIn = (of: number, length: number): string[] => {
    const shape = shapes[of];
    if (shape?.is !== 'name') throw cut();
    names[shape.names] ??= namesOf(shape.names);
    const own = names[shape.names] ?? [];
    const found: string[] = [];
    for (let rank = -1; found.length < length; ) {
      rank = shape.climbs ? rank + 1 + number(shape.at) : number(shape.at);
      const name = own[rank];
      if (name === undefined) throw cut();
      found.push(name);
    }
    return found;
  };
  const read = (of: number): Json => {
    const shape = shapes[of];
    switch (shape?.is) {
      case 'text':
        return cell(shape.at);
      case 'name':
        return namesIn(of, 1)[0] ?? '';
      case 'number':
        return Number(cell(shape.at));
      case 'fixed':
        return shape.value;
      case 'list': {
        const length = number(shape.at);
        if (shapes[shape.of]?.is === 'name') return namesIn(shape.of, length);
        const list: Json[] = [];
        while (list.length < length) list.push(read(shape.of));
        return list;
      }
      case 'map': {
        const map: Record<string, Json> = {};
        for (const name of namesIn(shape.keys, number(shape.at))) map[name] = read(shape.of);
        return map;
      }
      case 'record': {
        const record: Record<string, Json> = {};
        for (const [name, inner, present] of shape.fields)
          if (present === undefined || number(present) === 1) record[name] = read(inner);
        return record;
      }
      case 'mixed':
        return read(shape.of[number(shape.at)] ?? -1);
      default:
        throw cut();
    }
  };
  return read(0);
}

interface Column {
  readonly line: string;
  readonly width: number;
  next: number;
}

function cut(): SyntaxError {
  return new SyntaxError('the columns are cut');
}

function textsOf(line: string): readonly string[] {
  const texts = line.split('\t');
  if (!line.includes('\\')) return texts;
  return texts.map((text) => text.replace(/\\(.)/g, (_, letter: string) => MEANT.get(letter) ?? letter));
}
