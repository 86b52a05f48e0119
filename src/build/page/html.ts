import { createHash } from 'node:crypto';
import { say } from '../../messages/say.js';
import { BLOCKS } from '../../web/blocks.js';
import type { PageBundle } from './bundle-page.js';

/** All that goes into the page. */
export interface Parts extends Pick<PageBundle, 'script' | 'style'> {
  /** The rule base in columns, and the digest of the whole of it. */
  readonly rules: string;
  readonly digest: string;
  /** The articles, gzipped and in base64. */
  readonly articles: string;
  readonly icon: string;
  /** The licences of what was bundled: they travel with every copy. */
  readonly licences: string;
}

/** One file that opens from disk, or the first page of a served folder with manifest and worker. */
export type Shape = 'file' | 'site';

/**
 * The page as one HTML text. Its policy (Content Security Policy Level 3) lets run nothing but the script and the
 * style that were built, by their SHA-256, and load nothing from anywhere.
 */
export function pageHtml(parts: Parts, shape: Shape): string {
  const script = `\n${parts.script.replaceAll('</script', '<\\/script')}`;
  const style = `\n${parts.style}`;
  const policy = [
    "default-src 'none'",
    `script-src '${hashOf(script)}'`,
    `style-src '${hashOf(style)}'`,
    "img-src 'self' data:",
    ...(shape === 'site' ? ["manifest-src 'self'", "worker-src 'self'"] : []),
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  const links =
    shape === 'site'
      ? '<link rel="manifest" href="manifest.webmanifest">\n<link rel="icon" href="icon.svg" type="image/svg+xml">'
      : `<link rel="icon" href="data:image/svg+xml,${encodeURIComponent(parts.icon)}">`;
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
<title>${say('page.title')}</title>
${links}
<style>${style}</style>
</head>
<body>
<div id="page"><noscript>${say('page.no-script')}</noscript></div>
<script type="text/plain" id="${BLOCKS.rules}" data-digest="${parts.digest}">${parts.rules}</script>
<script type="text/plain" id="${BLOCKS.articles}">${parts.articles}</script>
<script type="text/plain" id="${BLOCKS.licences}">${parts.licences.replaceAll('<', '(')}</script>
<script>${script}</script>
</body>
</html>
`;
}

function hashOf(text: string): string {
  return `sha256-${createHash('sha256').update(text).digest('base64')}`;
}
