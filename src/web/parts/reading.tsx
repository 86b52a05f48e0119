import { useEffect, useMemo, useState } from 'preact/hooks';
import { htmlOf } from '../../knowledge/html.js';
import { linkedFile } from '../../knowledge/place.js';
import { say } from '../../messages/say.js';
import { type Articles, packedArticles } from '../packed.js';
import { foldSystems, systemOf } from '../this-device.js';

const READ = '#read:';
const HERE = systemOf(navigator.userAgent, navigator.maxTouchPoints);

interface Props {
  readonly files: readonly string[];
  /** Opens others in their place; none closes it. */
  readonly turnTo: (files: readonly string[]) => void;
}

/** Articles and how-tos, unfolded where they are wanted. A link in one opens the other in its place. */
export function Reading({ files, turnTo }: Props) {
  const [articles, setArticles] = useState<Articles | undefined | 'waiting'>('waiting');
  useEffect(() => void packedArticles(document).then(setArticles), []);
  const follow = (event: MouseEvent): void => {
    const link = event.target instanceof Element ? event.target.closest('a') : null;
    const href = link?.getAttribute('href') ?? '';
    if (!href.startsWith(READ)) return;
    event.preventDefault();
    turnTo([href.slice(READ.length)]);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the click is the link's own, and Enter on it makes one
    // biome-ignore lint/a11y/useKeyWithClickEvents: the click is the link's own, and Enter on it makes one
    <div class="reading" onClick={follow}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard */}
      <section class="scrolls" aria-label={say('page.reading')} tabIndex={0}>
        {articles === undefined && <p>{say('page.reading-none')}</p>}
        {articles !== undefined &&
          articles !== 'waiting' &&
          files.map((file) => <Article key={file} file={file} articles={articles} />)}
      </section>
      <button type="button" onClick={() => turnTo([])}>
        {say('page.reading-close')}
      </button>
    </div>
  );
}

function Article({ file, articles }: { readonly file: string; readonly articles: Articles }) {
  const html = useMemo(() => foldSystems(htmlFrom(file, articles), HERE), [file, articles]);
  return <div dangerouslySetInnerHTML={{ __html: html }} />;
}

function htmlFrom(file: string, articles: Articles): string {
  return htmlOf(articles.get(file) ?? '', (to) => {
    if (to.startsWith('#')) return to;
    const target = linkedFile(file, to);
    const text = target === undefined ? undefined : articles.get(target);
    if (target === undefined || text === undefined) return undefined;
    return target.endsWith('.svg') ? `data:image/svg+xml,${encodeURIComponent(text)}` : `${READ}${target}`;
  });
}
