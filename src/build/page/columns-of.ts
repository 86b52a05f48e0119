import { byText } from '../../rulebase/canonical.js';
import { DIGITS, ESCAPES, type Json, type Shape } from '../../web/columns.js';

/** What the packing has to know of a value that it cannot see. */
export interface Layout {
  /** Is an object here a map, whose names are data, and not a record? */
  readonly isMap: (place: string) => boolean;
  /** The place of what lies inside: of a field by its name, of what a list or a map holds by `[]`. */
  readonly inside: (place: string, name: string) => string;
}

/** Every place by its own path, and no map: right for any value, dense for few. */
export const BY_PATH: Layout = { isMap: () => false, inside: (place, name) => `${place}/${name}` };

/**
 * A value of JSON as text that `readColumns` reads back, with likes beside likes: a column for each place, texts that
 * come again as numbers of a table, all other texts in one column.
 */
export function columnsOf(value: Json, layout: Layout = BY_PATH): string {
  return new Packing(value, layout).text();
}

/** A shape, with what writing needs beside it. */
interface Planned {
  shape: Shape;
  /** Of a name: its number among the names of this column. */
  readonly ranks?: ReadonlyMap<string, number>;
  /** Of a mixed place: its kinds in the order of its shapes. */
  readonly kinds?: readonly string[];
}

class Packing {
  readonly #columns: (number | string)[][] = [];
  readonly #amounts = new Set<number>();
  readonly #planned: Planned[] = [];
  readonly #shapeAt = new Map<string, number>();
  readonly #places = new Map<string, Json[]>();
  readonly #used = new Map<number, readonly string[]>();
  readonly #prose = this.#column();
  readonly #value: Json;
  readonly #layout: Layout;

  constructor(value: Json, layout: Layout) {
    this.#value = value;
    this.#layout = layout;
    this.#gather(value, '');
    this.#plan('');
  }

  text(): string {
    const table = [...new Set([...this.#used.values()].flat())].sort(byText);
    const rank = new Map(table.map((name, at) => [name, at]));
    for (const [at, names] of this.#used) {
      let before = -1;
      for (const name of names) {
        const here = rank.get(name) ?? 0;
        this.#put(at, here - before - 1);
        before = here;
      }
    }
    this.#write(this.#value, 0, '', -1);
    const lines = this.#columns.map((column, at) =>
      lineOf(column, at === this.#prose, this.#amounts.has(at)),
    );
    const shapes = this.#planned.map(({ shape }) => shape);
    return [JSON.stringify(shapes), table.map(escaped).join('\t'), ...lines].join('\n');
  }

  #column(): number {
    return this.#columns.push([]) - 1;
  }

  #put(at: number, one: number | string): void {
    this.#columns[at]?.push(one);
  }

  #inside(place: string, name = '[]'): string {
    return this.#layout.inside(place, name);
  }

  #gather(value: Json, place: string): void {
    const here = this.#places.get(place);
    if (here) here.push(value);
    else this.#places.set(place, [value]);
    if (isList(value)) for (const inner of value) this.#gather(inner, this.#inside(place));
    else if (typeof value === 'object' && value !== null)
      for (const [name, inner] of Object.entries(value))
        this.#gather(inner, this.#layout.isMap(place) ? this.#inside(place) : this.#inside(place, name));
  }

  #kindOf(place: string, value: Json): string {
    if (isList(value)) return 'list';
    if (value === null || typeof value === 'boolean') return `fixed ${value}`;
    if (typeof value !== 'object') return typeof value;
    return this.#layout.isMap(place) ? 'map' : 'record';
  }

  /** Plans the shape of a place, once, and gives its number. */
  #plan(place: string): number {
    const known = this.#shapeAt.get(place);
    if (known !== undefined) return known;
    const values = this.#places.get(place) ?? [];
    const kinds = [...new Set(values.map((value) => this.#kindOf(place, value)))];
    const [only] = kinds;
    const at = this.#reserve();
    this.#shapeAt.set(place, at);
    if (kinds.length === 1 && only !== undefined) this.#planned[at] = this.#planOf(place, only, values, true);
    else {
      const column = this.#column();
      const of = kinds.map((kind) => {
        const own = this.#reserve();
        const those = values.filter((value) => this.#kindOf(place, value) === kind);
        this.#planned[own] = this.#planOf(place, kind, those, false);
        return own;
      });
      this.#planned[at] = { shape: { is: 'mixed', at: column, of }, kinds };
    }
    return at;
  }

  #reserve(): number {
    return this.#planned.push({ shape: { is: 'fixed', value: null } }) - 1;
  }

  #planOf(place: string, kind: string, values: readonly Json[], isAlone: boolean): Planned {
    switch (kind) {
      case 'list': {
        const isEmpty = values.every((value) => isList(value) && value.length === 0);
        return {
          shape: { is: 'list', at: this.#column(), of: isEmpty ? 0 : this.#plan(this.#inside(place)) },
        };
      }
      case 'map': {
        const lists = values.map((value) => Object.keys(value ?? {}));
        const keys = this.#reserve();
        this.#planned[keys] = this.#names(lists.flat(), lists);
        const of = lists.flat().length === 0 ? 0 : this.#plan(this.#inside(place));
        return { shape: { is: 'map', at: this.#column(), keys, of } };
      }
      case 'record':
        return { shape: { is: 'record', fields: this.#fields(place, values) } };
      case 'number': {
        const at = this.#column();
        this.#amounts.add(at);
        return { shape: { is: 'number', at } };
      }
      case 'string': {
        const holders = isAlone && place.endsWith('[]') ? (this.#places.get(place.slice(0, -2)) ?? []) : [];
        return this.#strings(
          values.map(String),
          holders.filter(isList).map((list) => list.map(String)),
        );
      }
      default:
        return { shape: { is: 'fixed', value: JSON.parse(kind.slice('fixed '.length)) } };
    }
  }

  #fields(place: string, values: readonly Json[]): Extract<Shape, { is: 'record' }>['fields'] {
    const names = [...new Set(values.flatMap((value) => Object.keys(value ?? {})))].sort(byText);
    if (names.includes('__proto__')) throw new SyntaxError('no record may have a __proto__');
    return names.map((name) => {
      const isAlways = values.every((value) => Object.hasOwn(Object(value), name));
      const shape = this.#plan(this.#inside(place, name));
      return isAlways ? [name, shape] : [name, shape, this.#column()];
    });
  }

  /** Texts with words in them come mostly once; names and words of a list come again. */
  #strings(values: readonly string[], lists: readonly (readonly string[])[]): Planned {
    const isProse = values.some((text) => text.includes(' ')) && new Set(values).size * 2 >= values.length;
    return isProse ? { shape: { is: 'text', at: this.#prose } } : this.#names(values, lists);
  }

  #names(values: readonly string[], lists: readonly (readonly string[])[]): Planned {
    const own = [...new Set(values)].sort(byText);
    const names = this.#column();
    this.#used.set(names, own);
    const ranks = new Map(own.map((name, at) => [name, at]));
    const climbs = lists.some(({ length }) => length > 1) && lists.every(isClimbing);
    return { shape: { is: 'name', at: this.#column(), names, ...(climbs ? { climbs } : {}) }, ranks };
  }

  /** Writes a value; gives the number of a name among its like, for the one after it in a list. */
  #write(value: Json, at: number, place: string, before: number): number {
    const { shape, ranks, kinds = [] } = this.#planned[at] ?? { shape: undefined };
    switch (shape?.is) {
      case 'name': {
        const rank = ranks?.get(String(value)) ?? 0;
        this.#put(shape.at, shape.climbs ? rank - before - 1 : rank);
        return rank;
      }
      case 'text':
        this.#put(shape.at, String(value));
        return -1;
      case 'number':
        this.#put(shape.at, Number(value));
        return -1;
      case 'list': {
        const list = isList(value) ? value : [];
        this.#put(shape.at, list.length);
        this.#writeAll(list, shape.of, this.#inside(place));
        return -1;
      }
      case 'map': {
        const entries = Object.entries(value ?? {});
        this.#put(shape.at, entries.length);
        this.#writeAll(
          entries.map(([name]) => name),
          shape.keys,
          place,
        );
        for (const [, inner] of entries) this.#write(inner, shape.of, this.#inside(place), -1);
        return -1;
      }
      case 'record':
        for (const [name, of, present] of shape.fields) {
          const inner = Object.entries(value ?? {}).find(([own]) => own === name);
          if (present !== undefined) this.#put(present, inner ? 1 : 0);
          if (inner) this.#write(inner[1], of, this.#inside(place, name), -1);
        }
        return -1;
      case 'mixed': {
        const kind = kinds.indexOf(this.#kindOf(place, value));
        this.#put(shape.at, kind);
        return this.#write(value, shape.of[kind] ?? 0, place, -1);
      }
      default:
        return -1;
    }
  }

  #writeAll(values: readonly Json[], shape: number, place: string): void {
    let before = -1;
    for (const value of values) before = this.#write(value, shape, place, before);
  }
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}

function isClimbing(list: readonly string[]): boolean {
  return list.every((name, at) => at === 0 || byText(list[at - 1] ?? '', name) < 0);
}

function lineOf(column: readonly (number | string)[], isProse: boolean, isAmounts: boolean): string {
  if (isProse) return column.map((text) => escaped(String(text))).join('\t');
  if (isAmounts) return column.join('\t');
  const numbers = column.map(Number);
  const width = digitsOf(numbers.reduce((most, one) => Math.max(most, one), 0)).length;
  return `${width}${numbers.map((one) => digitsOf(one).padStart(width, DIGITS.charAt(0))).join('')}`;
}

function digitsOf(number: number): string {
  const rest = Math.floor(number / DIGITS.length);
  return (rest > 0 ? digitsOf(rest) : '') + DIGITS.charAt(number % DIGITS.length);
}

function escaped(text: string): string {
  return text.replace(/[\\\t\n\r<\0]/g, (sign) => `\\${ESCAPES[sign as keyof typeof ESCAPES]}`);
}
