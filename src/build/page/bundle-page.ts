import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';

/** The script and the style of the page, minified, each as one text. */
export interface PageBundle {
  readonly script: string;
  readonly style: string;
  /** Folders of the packages that came along, for their licences. */
  readonly packages: readonly string[];
}

/** Bundles `src/web` into one script and one style. Throws where vite does. */
export async function bundlePage(root: string): Promise<PageBundle> {
  const result = await build({
    root,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    define: { 'process.env.NODE_ENV': '"production"' },
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    resolve: { alias: { 'jsonpath-plus': join(root, 'src/web/no-json-path.ts') } },
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
  const folders = chunk.moduleIds.flatMap(
    (id) => /^(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1] ?? [],
  );
  return { script: chunk.code, style: String(css.source), packages: [...new Set(folders)].sort() };
}

/** Name and version of a package, and its licence as it stands. */
export function licenceOf(folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one));
  const text = file === undefined ? license : readFileSync(join(folder, file), 'utf8').trim();
  return `${name} ${version} (${license})\n\n${text}`;
}
