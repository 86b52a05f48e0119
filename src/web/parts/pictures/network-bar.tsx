import type { MarkKind, NetworkBar } from '../../../call/pictures/network-bar.js';

/** Width of the drawing; the bar keeps a margin on both sides for marks at its ends. */
const [WIDE, EDGE] = [400, 10];
const placed = (at: number): number => EDGE + at * (WIDE - 2 * EDGE);

/** A network as a bar, with a legend below that holds every word. */
export function NetworkBarPicture({ bar }: { readonly bar: NetworkBar }) {
  const { first, last, marks, dhcp, free, title, says } = bar;
  return (
    <figure class="picture network">
      <figcaption>{title}</figcaption>
      <svg viewBox={`0 0 ${WIDE} 48`} role="img" aria-label={says}>
        <rect x={EDGE} y="16" width={WIDE - 2 * EDGE} height="16" rx="3" class="room" />
        {dhcp && (
          <rect
            x={placed(dhcp.from)}
            y="16"
            width={placed(dhcp.to) - placed(dhcp.from)}
            height="16"
            class="dhcp"
          />
        )}
        {marks.map(({ at, kind, title: name }) =>
          at === undefined ? null : <Mark key={name} kind={kind} x={placed(at)} y={24} />,
        )}
      </svg>
      <p class="ends" aria-hidden="true">
        <span>{first}</span>
        <span>{last}</span>
      </p>
      <ul class="legend">
        {marks.map(({ kind, title: name, at }) => (
          <li key={name} class={at === undefined ? 'off' : undefined}>
            <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
              <Mark kind={kind} x={10} y={10} />
            </svg>
            <span>{name}</span>
          </li>
        ))}
        {dhcp && (
          <li>
            <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
              <rect x="2" y="4" width="16" height="12" class="dhcp" />
            </svg>
            <span>{dhcp.title}</span>
          </li>
        )}
        {free !== undefined && (
          <li>
            <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
              <rect x="2" y="4" width="16" height="12" class="room" />
            </svg>
            <span>{free}</span>
          </li>
        )}
      </ul>
    </figure>
  );
}

/** A shape for each kind: square, disc, diamond, triangle, ring. */
function Mark({ kind, x, y }: { readonly kind: MarkKind; readonly x: number; readonly y: number }) {
  switch (kind) {
    case 'router':
      return <rect x={x - 6} y={y - 6} width="12" height="12" class="mark router" />;
    case 'camera':
      return <circle cx={x} cy={y} r="6.5" class="mark camera" />;
    case 'computer':
      return <path d={`M${x} ${y - 8}l8 14h-16z`} class="mark computer" />;
    case 'other':
      return <path d={`M${x} ${y - 8}l8 8-8 8-8-8z`} class="mark other" />;
    case 'proposed':
      return <circle cx={x} cy={y} r="6" class="mark proposed" />;
  }
}
