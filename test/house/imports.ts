import { posix } from 'node:path';
import { codeOf, roomOf, type Source } from './source.js';

/** Rooms in order: each imports only from itself and from rooms before it. */
export const ROOMS = [
  'messages',
  'values',
  'rulebase',
  'answers',
  'intake',
  'arithmetic',
  'findings',
  'ranking',
  'steps',
  'diagnosis',
  'ticket',
  'call',
  'knowledge',
  'files',
  'here',
  'cli',
  'web',
] as const;
const ORDER: readonly string[] = ROOMS;

/** The only rooms that know a library. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  'json-rules-engine': ['findings'],
  marked: ['knowledge'],
  ajv: ['rulebase'],
  'ip-num': ['values', 'arithmetic'],
  'pure-rand': ['call'],
  inquirer: ['cli'],
  '@inquirer/core': ['cli'],
  '@inquirer/prompts': ['cli'],
  'wrap-ansi': ['cli', 'knowledge'],
  preact: ['web'],
  qr: ['web'],
};

/** What the faces may use; of all other rooms they may name types only. */
const FACES: Readonly<Record<string, readonly string[]>> = {
  cli: ['cli', 'here', 'call', 'intake', 'knowledge', 'messages', 'files'],
  web: ['web', 'call', 'intake', 'knowledge', 'messages'],
};

export interface Import {
  readonly from: string;
  readonly typeOnly: boolean;
}

const STATEMENT = /\b(?:import|export)\s+(type\s+)?(?:[\w$*\s{},]+?\s+)?from\s*['"]([^'"]+)['"]/g;
const BARE = /\bimport\s*\(?\s*['"]([^'"]+)['"]/g;

/** The imports of a file: statements, re-exports, for their effect alone, and while running. */
export function importsOf({ text }: Source): readonly Import[] {
  const code = codeOf(text, true);
  return [
    ...[...code.matchAll(STATEMENT)].map(([, type, from]) => ({
      from: from ?? '',
      typeOnly: type !== undefined,
    })),
    ...[...code.matchAll(BARE)].map(([, from]) => ({ from: from ?? '', typeOnly: false })),
  ];
}

/** Every import that crosses the order of the rooms or brings a library where it does not belong. */
export function importFaults(files: readonly Source[]): readonly string[] {
  return files.flatMap((file) => {
    const room = roomOf(file.path);
    if (room === 'build') return [];
    if (!isRoom(room)) return [`${file.path}: stands in no room`];
    return importsOf(file).flatMap((one) => {
      const fault = one.from.startsWith('.') ? roomFault(file, room, one) : packageFault(room, one.from);
      return fault === undefined ? [] : [`${file.path}: ${one.from}: ${fault}`];
    });
  });
}

function isRoom(room: string): boolean {
  return ORDER.includes(room);
}

function roomFault({ path }: Source, room: string, { from, typeOnly }: Import): string | undefined {
  // A style is no module; only the page has any, each its own.
  if (room === 'web' && /^\.\/style\/[a-z-]+\.css$/.test(from)) return undefined;
  if (!from.endsWith('.js')) return 'a relative import ends in .js';
  const target = roomOf(posix.join(posix.dirname(path), from));
  const order = (id: string): number => ORDER.indexOf(id);
  if (!isRoom(target)) return `"${target}" is no room`;
  const uses = FACES[room];
  if (uses !== undefined && !typeOnly && !uses.includes(target)) return `a face may not use ${target}`;
  return order(target) > order(room) ? `${target} comes after ${room}` : undefined;
}

function packageFault(room: string, from: string): string | undefined {
  // Which rooms may use what Node brings is for platform.ts to say.
  if (from.startsWith('node:')) return undefined;
  const name = from.split('/', from.startsWith('@') ? 2 : 1).join('/');
  const rooms = Object.hasOwn(PACKAGES, name) ? PACKAGES[name] : undefined;
  if (rooms === undefined) return 'no library of this project';
  return rooms.includes(room) ? undefined : `only ${rooms.join(' and ')} may use it`;
}
