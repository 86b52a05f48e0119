import { type Call, diagnosisOf } from '../../call/call.js';
import { percent } from '../../call/why-lines.js';
import type { Ranked, Reason } from '../../diagnosis/diagnosis.js';
import { say } from '../../messages/say.js';

const REASONS = 3;
/** From here on what is said first is worth being loud. */
const LIKELY = 0.5;
/** The reasons of so many causes stand open; those of the others unfold. */
const OPEN = 3;

/** The causes as they stand, each with its largest reasons for and against. */
export function Causes({ call }: { readonly call: Call }) {
  const { ranked, verdict } = diagnosisOf(call);
  return (
    <section id="part-causes" class="part causes" aria-labelledby="causes-heading" tabIndex={-1}>
      <h2 id="causes-heading">{say('cli.ranking')}</h2>
      <p class={`verdict ${verdict.probability > LIKELY ? 'likely' : ''}`}>
        {verdict.says}{' '}
        <span class="sure">
          {say('cli.confidence', {
            word: say(`cli.confidence.${verdict.confidence}`),
            probability: percent(verdict.probability),
          })}
        </span>
      </p>
      <ol class="ranked">
        {ranked.map((cause, at) => (
          <li key={cause.id}>
            <Cause cause={cause} isFolded={at >= OPEN} />
          </li>
        ))}
      </ol>
      <p class="small">{say('cli.ranking-note')}</p>
    </section>
  );
}

function Cause({ cause, isFolded }: { readonly cause: Ranked; readonly isFolded: boolean }) {
  const { title, probability, reasons } = cause;
  const counted = reasons.filter(({ repeats }) => repeats === undefined).slice(0, REASONS);
  return (
    <>
      <p class="cause">
        <span class="share">{percent(probability)}</span>
        <span>{title}</span>
      </p>
      <svg class="bar" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true" focusable="false">
        <rect width="100" height="4" class="whole" />
        <rect width={probability * 100} height="4" class="now" />
      </svg>
      {isFolded ? (
        <details>
          <summary>
            {say('page.reasons')}
            <span class="heard">{say('page.of', { title })}</span>
          </summary>
          <Reasons reasons={counted} />
        </details>
      ) : (
        <Reasons reasons={counted} />
      )}
    </>
  );
}

function Reasons({ reasons }: { readonly reasons: readonly Reason[] }) {
  return (
    <ul class="reasons">
      {reasons.map((reason) => (
        <li key={reason.finding}>
          <Weight reason={reason} />
          <span>{say('page.ranking-reason', { title: reason.title, shows: reason.shows })}</span>
        </li>
      ))}
    </ul>
  );
}

function Weight({ reason: { decibans } }: { readonly reason: Reason }) {
  const size = Math.abs(decibans).toFixed(1);
  return decibans > 0 ? (
    <span class="weight for">{say('page.ranking-for', { decibans: size })}</span>
  ) : (
    <span class="weight against">{say('page.ranking-against', { decibans: size })}</span>
  );
}
