import { codeOf, type Source } from './source.js';

export type Templates = Readonly<Record<string, string>>;

/** Sentences with an exclamation mark. */
export function shouted(templates: Templates): readonly string[] {
  return Object.entries(templates)
    .filter(([, template]) => template.includes('!'))
    .map(([id]) => id);
}

/** `say('id'` and `{ id: 'id'`, each with what follows. */
const CALLS = /\bsay\(\s*'([\w.-]+)'\s*(,?)\s*|\bid:\s*'([\w.-]+)'\s*,?\s*(with:)?\s*/g;

/**
 * Fillings written out that do not fit: names that stand nowhere in the sentence and, where it is said at once,
 * placeholders left empty.
 */
export function fillingFaults(files: readonly Source[], templates: Templates): readonly string[] {
  return files.flatMap(({ path, text }) => {
    const code = codeOf(text, true);
    return [...code.matchAll(CALLS)].flatMap((call) => {
      const id = call[1] ?? call[3] ?? '';
      const template = Object.hasOwn(templates, id) ? templates[id] : undefined;
      // `id: '...'` stands in other records too; only a call of say must know its sentence.
      if (template === undefined) return call[1] === undefined ? [] : [`${path}: ${id}: no such sentence`];
      const given = fillingAt(code, call.index + call[0].length, call[2] === ',' || call[4] !== undefined);
      if (given === undefined) return [];
      const open = given.open || call[1] === undefined;
      return misfits(template, { ...given, open }).map((fault) => `${path}: ${id}: ${fault}`);
    });
  });
}

interface Given {
  readonly names: readonly string[];
  /** Whether more names may come, from a spread or later. */
  readonly open: boolean;
}

/** The names filled in by an object written out at `at`; `undefined` where the filling is not written out there. */
function fillingAt(code: string, at: number, follows: boolean): Given | undefined {
  // Without a filling the call or the object ends here; a shorthand such as `with` names what stands elsewhere.
  if (!follows) return /^[)}]/.test(code.slice(at)) ? { names: [], open: false } : undefined;
  if (code[at] !== '{') return undefined;
  const parts: string[] = [''];
  let depth = 0;
  for (const letter of codeOf(code.slice(at), false)) {
    if ('{[('.includes(letter)) depth += 1;
    if ('}])'.includes(letter)) depth -= 1;
    if (depth === 0) break;
    if (letter === ',' && depth === 1) parts.push('');
    else parts[parts.length - 1] += depth === 1 && letter === '{' ? ' ' : letter;
  }
  const names = parts.map((part) => part.trim()).filter((part) => part !== '');
  return {
    names: names.filter((part) => !part.startsWith('...')).map((part) => part.split(':')[0]?.trim() ?? ''),
    open: names.some((part) => part.startsWith('...')),
  };
}

function misfits(template: string, { names, open }: Given): readonly string[] {
  const wanted = new Set([...template.matchAll(/\{([a-zA-Z][\w-]*)\}/g)].map(([, name]) => name ?? ''));
  return [
    ...names.filter((name) => !wanted.has(name)).map((name) => `{${name}} stands nowhere in it`),
    ...(open
      ? []
      : [...wanted].filter((name) => !names.includes(name)).map((name) => `{${name}} is not filled`)),
  ];
}
