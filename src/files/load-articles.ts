import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { printable } from '../messages/printable.js';
import { attempt, InputFault } from './faults.js';
import { readText } from './rule-folder.js';

/** A file of the articles; `file` is its path inside their folder, with forward slashes. */
export interface ArticleText {
  readonly file: string;
  readonly text: string;
}

/**
 * The files in the folder of the articles, sorted by name; what begins with a dot, and links, left out.
 * Throws an InputFault where there is no folder, a MachineFault where it cannot be read.
 */
export function articleFiles(folder: string): readonly string[] {
  if (!existsSync(folder))
    throw new InputFault({ id: 'article.no-folder', with: { path: printable(folder) } });
  return [...filesBelow(folder, '')].sort();
}

function filesBelow(root: string, below: string): readonly string[] {
  const folder = join(root, below);
  const entries = attempt(folder, () => readdirSync(folder, { withFileTypes: true }));
  return entries.flatMap((entry) => {
    const file = below === '' ? entry.name : `${below}/${entry.name}`;
    if (entry.name.startsWith('.')) return [];
    if (entry.isDirectory()) return filesBelow(root, file);
    return entry.isFile() ? [file] : [];
  });
}

/** The text of one of these files, at most 1 MiB. Throws an InputFault or a MachineFault. */
export function readArticleText(folder: string, file: string): string {
  return readText(join(folder, file));
}

/** All of them with their texts, as a check of them wants; of a picture only that it is there. */
export function readArticles(folder: string): readonly ArticleText[] {
  return articleFiles(folder).map((file) => ({
    file,
    text: file.endsWith('.md') ? readArticleText(folder, file) : '',
  }));
}

/** The folder of the articles beside the bundle whose `import.meta.url` is given, or one above it where that is a chunk. */
export function builtArticles(bundle: string): string {
  const beside = dirname(fileURLToPath(bundle));
  const folder = join(beside, 'knowledge');
  return existsSync(folder) ? folder : join(dirname(beside), 'knowledge');
}

/** The folder of the articles that belong to a rules folder: they stand side by side. */
export function articlesBeside(rules: string): string {
  return join(dirname(resolve(rules)), 'knowledge');
}
