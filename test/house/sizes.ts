import { codeOf, type Source } from './source.js';

const LONGEST = 300;
const MEDIAN = 60;
const NINE_IN_TEN = 180;
/** Names that say nothing about what is inside. */
const EMPTY_NAMES = /(?:^|\/)(?:utils?|helpers?|common|misc|shared|lib)(?:\.ts|\/)/;

/** Lines of a file; the newline at its end starts none. */
export function lines({ text }: Source): number {
  return text === '' ? 0 : text.replace(/\n$/, '').split('\n').length;
}

function at(counts: readonly number[], share: number): number {
  const sorted = [...counts].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
}

/** Files that are too long, by themselves or taken together. */
export function sizeFaults(files: readonly Source[]): readonly string[] {
  const counts = files.map(lines);
  const median = at(counts, 0.5);
  const most = at(counts, 0.9);
  return [
    ...files.filter((file) => lines(file) > LONGEST).map((file) => `${file.path}: ${lines(file)} lines`),
    ...(median > MEDIAN ? [`the median file has ${median} lines`] : []),
    ...(most > NINE_IN_TEN ? [`one file in ten has over ${most} lines`] : []),
  ];
}

/** Files and folders whose name says nothing, and default exports, which have no name at all. */
export function nameFaults(files: readonly Source[]): readonly string[] {
  return files.flatMap(({ path, text }) => [
    ...(EMPTY_NAMES.test(path) ? [`${path}: an empty name`] : []),
    ...(/\bexport\s+default\b|\bas\s+default\b/.test(codeOf(text, false))
      ? [`${path}: a default export`]
      : []),
  ]);
}
