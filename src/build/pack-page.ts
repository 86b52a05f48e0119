import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { articleFiles, readArticleText } from '../files/load-articles.js';
import { bundlePage, licenceOf } from './page/bundle-page.js';
import { type Parts, pageHtml } from './page/html.js';
import { packedRuleText } from './page/page-rules.js';
import { ICON, manifestText, workerText } from './page/site-files.js';

/** The articles and their pictures as one text: JSON, gzipped, in base64. */
export function packArticles(folder: string): string {
  const files = articleFiles(folder).filter((file) => /\.(?:md|svg)$/.test(file));
  const texts = Object.fromEntries(files.map((file) => [file, readArticleText(folder, file)]));
  return gzipSync(JSON.stringify(texts), { level: 9 }).toString('base64');
}

/** Writes `<root>/dist/page`: one file that opens from disk, and a folder for any static web server. */
export async function packPageInto(root: string): Promise<void> {
  const dist = join(root, 'dist');
  const { packages, ...bundle } = await bundlePage(root);
  const parts: Parts = {
    ...bundle,
    rules: packedRuleText(JSON.parse(readFileSync(join(dist, 'rules.json'), 'utf8'))),
    digest: readFileSync(join(dist, 'rules.digest'), 'utf8').trim(),
    articles: packArticles(join(root, 'knowledge')),
    icon: ICON.trim(),
    licences: packages.map(licenceOf).join('\n\n'),
  };
  const site = {
    'index.html': pageHtml(parts, 'site'),
    'manifest.webmanifest': manifestText(),
    'icon.svg': ICON,
  };
  const page = join(dist, 'page');
  rmSync(page, { recursive: true, force: true });
  mkdirSync(join(page, 'site'), { recursive: true });
  writeFileSync(join(page, 'whydark.html'), pageHtml(parts, 'file'));
  for (const [name, text] of Object.entries(site)) writeFileSync(join(page, 'site', name), text);
  writeFileSync(join(page, 'site', 'sw.js'), workerText(site));
  writeFileSync(join(page, 'LICENSES.txt'), `${parts.licences}\n`);
}

if (process.argv[1]?.endsWith('pack-page.js')) await packPageInto(process.cwd());
