import { leastWords, type Volts, type VoltsEnd, voltsWords } from '../../../call/pictures/volts.js';
import { say } from '../../../messages/say.js';

const [LEFT, RIGHT, TOP, FOOT] = [66, 286, 16, 128];

/** The volts falling along the cable, at best and at worst, and what the camera needs. */
export function VoltsPicture({ volts }: { readonly volts: Volts }) {
  const { metres, best, worst, top, foot, says } = volts;
  const yOf = (value: number): number => FOOT - ((value - foot) / (top - foot || 1)) * (FOOT - TOP);
  const [most, least] = [Math.max(best.least, worst.least), Math.min(best.least, worst.least)];
  return (
    <figure class="picture volts">
      <figcaption>{say('picture.volts')}</figcaption>
      <svg viewBox="0 0 360 160" role="img" aria-label={says}>
        <rect
          x={LEFT}
          y={yOf(most)}
          width={RIGHT - LEFT}
          height={Math.max(1.5, yOf(least) - yOf(most))}
          class="need"
        />
        <path d={`M${LEFT} ${TOP - 6}V${FOOT}H${RIGHT}V${TOP - 6}`} class="axis" />
        <Fall end={best} yOf={yOf} kind="best" isNew />
        <Fall end={worst} yOf={yOf} kind="worst" isNew={worst.source !== best.source} />
        <text x={LEFT} y="150" text-anchor="start">
          {say('picture.volts-source')}
        </text>
        <text x={RIGHT} y="150" text-anchor="end">
          {say('picture.volts-camera', { metres })}
        </text>
      </svg>
      <ul class="legend">
        {(
          [
            ['best', best],
            ['worst', worst],
          ] as const
        ).map(([kind, { source, camera }]) => (
          <li key={kind}>
            <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
              <path d="M1 5L19 15" class={`fall ${kind}`} />
            </svg>
            <span>
              {say(`picture.volts-${kind}`)}: {voltsWords(source)} → {voltsWords(camera)}
            </span>
          </li>
        ))}
        <li>
          <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
            <rect x="1" y="7" width="18" height="6" class="need" />
          </svg>
          <span>{say('picture.volts-least', { least: leastWords(best, worst) })}</span>
        </li>
      </ul>
    </figure>
  );
}

interface FallProps {
  readonly end: VoltsEnd;
  readonly yOf: (volts: number) => number;
  readonly kind: 'best' | 'worst';
  /** Whether its source has other volts than the line drawn before it. */
  readonly isNew: boolean;
}

/** Where no steady volts come about, the line ends at the foot with a cross. */
function Fall({ end: { source, camera }, yOf, kind, isNew }: FallProps) {
  const y = camera === undefined ? FOOT : yOf(camera);
  return (
    <>
      <path d={`M${LEFT} ${yOf(source)}L${RIGHT} ${y}`} class={`fall ${kind}`} />
      {isNew && (
        <text x={LEFT - 6} y={yOf(source) + 5} text-anchor="end">
          {voltsWords(source)}
        </text>
      )}
      {camera === undefined ? (
        <path d={`M${RIGHT - 5} ${y - 5}l10 10m0-10l-10 10`} class={`fall ${kind} end`} />
      ) : (
        <text x={RIGHT + 6} y={y + (kind === 'best' ? 2 : 10)}>
          {voltsWords(camera)}
        </text>
      )}
    </>
  );
}
