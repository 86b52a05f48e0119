import type { Reach, ReachDevice, ReachId, ReachWay } from '../../../call/pictures/reach.js';
import { say } from '../../../messages/say.js';

const [WIDE, HIGH] = [168, 80];
/** Upper left corners of the boxes. */
const PLACES: Readonly<Record<ReachId, readonly [number, number]>> = {
  camera: [2, 4],
  computer: [250, 4],
  router: [126, 128],
  internet: [126, 238],
};

/** How far a call out comes: along the cables of the drawing. */
const TO_INTERNET: Readonly<Record<ReachId, string>> = {
  camera: 'M60 84V104',
  computer: 'M60 84V104',
  router: 'M60 84V168H126M210 208V214',
  internet: 'M60 84V168H126M210 208V236',
};

/** Camera, computer, router and internet with their numbers, and lines for who reaches whom. */
export function ReachPicture({ reach: { devices, ways, waits, says } }: { readonly reach: Reach }) {
  return (
    <figure class="picture reach">
      <figcaption>{say('picture.reach')}</figcaption>
      <svg viewBox="0 0 420 278" role="img" aria-label={says}>
        <path d="M170 44H250M60 84V168H126M360 84V168H294M210 208V238" class="cable" />
        {ways.map((way) => (
          <Way key={`${way.from} ${way.to}`} way={way} />
        ))}
        {devices.map((device) => (
          <Box key={device.id} device={device} />
        ))}
      </svg>
      {waits !== undefined && <p class="small">{say('picture.reach-waits', { missing: waits })}</p>}
      {ways.length > 0 && (
        <ul class="legend">
          {ways.map(({ from, to, outcome, says: words }) => (
            <li key={`${from} ${to}`}>
              <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
                <path d="M1 10H19" class={`way ${outcome}`} />
                {outcome === 'reaches' ? (
                  <path d="M12 5l6 5-6 5" class="way reaches" />
                ) : (
                  <path d="M6 5l8 10m0-10l-8 10" class="way cross" />
                )}
              </svg>
              <span>{words}</span>
            </li>
          ))}
        </ul>
      )}
    </figure>
  );
}

function Box({ device: { id, title, lines } }: { readonly device: ReachDevice }) {
  const [x, y] = PLACES[id];
  const high = id === 'internet' ? 36 : HIGH;
  return (
    <>
      <rect x={x} y={y} width={WIDE} height={high} rx="4" class="device" />
      <text x={x + 8} y={y + 21} class="name">
        {title}
      </text>
      {lines.map((line, at) => (
        <text key={line} x={x + 8} y={y + 39 + at * 17}>
          {line}
        </text>
      ))}
    </>
  );
}

/** The line of a walk, with an arrow where it comes, a cross where it ends. */
function Way({ way: { from, to, outcome, endsAt } }: { readonly way: ReachWay }) {
  const isThere = outcome === 'reaches';
  if (to === 'internet') {
    const comes = outcome === 'fails' ? endsAt : 'internet';
    return (
      <>
        <path d={TO_INTERNET[comes]} class={`way ${outcome}`} />
        {isThere ? (
          <path d="M204 230l6 8 6-8" class="way reaches" />
        ) : (
          <path d={comes === 'camera' ? crossAt(60, 112) : crossAt(210, 222)} class="way cross" />
        )}
      </>
    );
  }
  const isRight = from === 'camera';
  const [y, start, end] = isRight ? [32, 172, 248] : [56, 248, 172];
  return (
    <>
      <path d={`M${start} ${y}H${isThere ? end : (start + end) / 2}`} class={`way ${outcome}`} />
      {isThere ? (
        <path d={isRight ? `M241 ${y - 6}l7 6-7 6` : `M179 ${y - 6}l-7 6 7 6`} class="way reaches" />
      ) : (
        <path d={crossAt(210, y)} class="way cross" />
      )}
    </>
  );
}

function crossAt(x: number, y: number): string {
  return `M${x - 5} ${y - 5}l10 10m0-10l-10 10`;
}
