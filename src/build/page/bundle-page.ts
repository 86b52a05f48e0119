import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build, type Plugin } from 'vite';
import { ENGLISH } from '../../messages/english.js';
import { sentencesUsed } from './sentences-used.js';

/** The script and the style of the page, minified, each as one text. */
export interface PageBundle {
  readonly script: string;
  readonly style: string;
  /** Folders of the packages that came along, for their licences. */
  readonly packages: readonly string[];
}

/** Bundles `src/web` into one script and one style, with the sentences that it can say. Throws where vite does. */
export async function bundlePage(root: string): Promise<PageBundle> {
  const { modules } = await bundled(root, ENGLISH);
  const sources = modules
    .filter((id) => /\.tsx?$/.test(id) && !id.includes('/node_modules/') && !id.includes('/src/messages/'))
    .map((id) => readFileSync(id, 'utf8'));
  const { modules: all, ...out } = await bundled(root, sentencesUsed(ENGLISH, sources));
  const folders = all.flatMap((id) => /^(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1] ?? []);
  return { ...out, packages: [...new Set(folders)].sort() };
}

interface Bundled extends Omit<PageBundle, 'packages'> {
  /** The files of all modules that came along. */
  readonly modules: readonly string[];
}

async function bundled(root: string, sentences: Readonly<Record<string, string>>): Promise<Bundled> {
  const result = await build({
    root,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    plugins: [onlyThese(sentences), withoutUnused],
    define: { 'process.env.NODE_ENV': '"production"' },
    // Else a test's environment gets another page than is shipped, with places in the sources in it.
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact', development: false } },
    build: {
      write: false,
      target: 'es2022',
      minify: true,
      cssMinify: true,
      lib: { entry: join(root, 'src/web/main.tsx'), formats: ['iife'], name: 'whydark' },
    },
  });
  const outputs = (Array.isArray(result) ? result : [result]).flatMap((one) =>
    'output' in one ? one.output : [],
  );
  const chunk = outputs.find((one) => one.type === 'chunk');
  const css = outputs.find((one) => one.type === 'asset' && one.fileName.endsWith('.css'));
  if (chunk?.type !== 'chunk' || css?.type !== 'asset') throw new Error('the page came out incomplete');
  return { script: chunk.code, style: String(css.source), modules: chunk.moduleIds };
}

/** Puts these sentences in the place of all. */
function onlyThese(sentences: Readonly<Record<string, string>>): Plugin {
  return {
    name: 'sentences',
    load: (id) =>
      id.endsWith('/src/messages/english.ts') ? `export const ENGLISH = ${JSON.stringify(sentences)};` : null,
  };
}

/** What json-rules-engine brings along and nothing of ours reaches, in the few lines that are left of it. */
const UNUSED: Readonly<Record<string, string>> = {
  // The schema of the rule base forbids `path`.
  'jsonpath-plus': "exports.JSONPath = () => { throw new Error('no condition has a path'); };",
  // Nobody listens to an engine: what fired is read from its results.
  eventemitter2: `function Silent() {}
Silent.prototype.emitAsync = () => Promise.resolve([]);
Silent.prototype.on = () => { throw new Error('nobody listens'); };
module.exports = Silent;`,
};

const withoutUnused: Plugin = {
  name: 'without-unused',
  enforce: 'pre',
  resolveId: (id) => (Object.hasOwn(UNUSED, id) ? `\0${id}.cjs` : null),
  load: (id) => UNUSED[id.replace(/^\0|\.cjs$/g, '')] ?? null,
};

/** Name and version of a package, and its licence as it stands. */
export function licenceOf(folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one));
  const text = file === undefined ? license : readFileSync(join(folder, file), 'utf8').trim();
  return `${name} ${version} (${license})\n\n${text}`;
}
