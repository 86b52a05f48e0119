import { encodeQR } from 'qr';
import { say } from '../../messages/say.js';

/** Bytes that a code of version 30 holds at level M (ISO/IEC 18004): 137 modules, which a phone still reads. */
const MOST = 1370;
/** Modules that stay white around it (ISO/IEC 18004, 6.3.8). */
const QUIET = 4;

/** A text as a code to scan, black on white in both schemes; what it holds is said under it. */
export function Code({ text, caption }: { readonly text: string; readonly caption: string }) {
  if (text.length > MOST) return <p>{say('page.code-too-large')}</p>;
  const modules = encodeQR(text, 'raw', { ecc: 'medium', border: QUIET });
  const size = modules.length;
  return (
    <figure class="code">
      <svg
        viewBox={`0 0 ${size} ${size}`}
        style={{ '--boxes': `${size / devicePixelRatio}px` }}
        role="img"
        aria-label={caption}
        shape-rendering="crispEdges"
      >
        <rect width={size} height={size} fill="#ffffff" />
        <path d={pathOf(modules)} fill="#000000" />
      </svg>
      <figcaption>{caption}</figcaption>
    </figure>
  );
}

/** Each run of dark modules in a row as one box. */
function pathOf(modules: readonly (readonly boolean[])[]): string {
  const runs: string[] = [];
  for (const [y, row] of modules.entries())
    for (let x = 0; x < row.length; x += 1) {
      const from = x;
      while (row[x]) x += 1;
      if (x > from) runs.push(`M${from} ${y}h${x - from}v1h${from - x}z`);
    }
  return runs.join('');
}
