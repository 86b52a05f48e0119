import { readFileSync } from 'node:fs';
import { brotliCompressSync, gzipSync } from 'node:zlib';

/** Thousands of bytes, each at the highest effort of its compressor; base64 is counted before it is written so. */
export interface PageWeight {
  /** Script, style, markup and rule base of the page. */
  readonly codeAndRules: Weight;
  readonly rules: Weight;
  readonly articles: number;
  readonly licences: number;
}

export interface Weight {
  readonly gzip: number;
  readonly brotli: number;
}

/** What the built page weighs. Articles with their pictures, and licences, are counted apart. */
export function pageWeight(file: string): PageWeight {
  const html = readFileSync(file, 'utf8');
  const block = (id: string): string => new RegExp(`id="${id}"[^>]*>([^<]*)<`).exec(html)?.[1] ?? '';
  const [rules, articles, licences] = [block('rules'), block('articles'), block('licences')];
  const rest = html.replace(articles, () => '').replace(licences, () => '');
  return {
    codeAndRules: weightOf(rest),
    rules: weightOf(rules),
    articles: Buffer.from(articles, 'base64').length / 1000,
    licences: weightOf(licences).gzip,
  };
}

function weightOf(text: string): Weight {
  return { gzip: gzipSync(text, { level: 9 }).length / 1000, brotli: brotliCompressSync(text).length / 1000 };
}
