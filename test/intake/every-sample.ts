import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = new URL('samples/', import.meta.url);

/** Every text of the samples, by folder and file. */
export const EVERY_SAMPLE: ReadonlyMap<string, string> = new Map(
  readdirSync(FOLDER)
    .sort()
    .flatMap((parser) =>
      readdirSync(new URL(`${parser}/`, FOLDER))
        .filter((name) => name.endsWith('.txt'))
        .sort()
        .map((name): [string, string] => [
          `${parser}/${name}`,
          readFileSync(new URL(`${parser}/${name}`, FOLDER), 'utf8'),
        ]),
    ),
);

/** The text of a sample; throws where there is none. */
export function sampleText(path: string): string {
  const text = EVERY_SAMPLE.get(path);
  if (text === undefined) throw new Error(`no sample ${path}`);
  return text;
}
