import { showAddress } from '../../values/address.js';
import type { Hop, Leg } from './leg.js';
import type { Walk } from './walk.js';

/** A walk as plain data with addresses in dotted form: what a drawing or a script needs. */
export function walkData({ from, to, destination, outcome, there, back }: Walk): object {
  return {
    from,
    to,
    destination: showAddress(destination),
    outcome,
    there: legData(there),
    ...(back && { back: legData(back) }),
  };
}

function legData({ hops, at, stop }: Leg): object {
  return { hops: hops.map(hopData), endsAt: at, ...(stop && { stop }) };
}

function hopData(hop: Hop): object {
  return {
    from: hop.from,
    ...(hop.to !== undefined && { to: hop.to }),
    segment: hop.segment,
    because: hop.because,
    range: hop.range,
    source: showAddress(hop.source),
    destination: showAddress(hop.destination),
    asked: showAddress(hop.asked),
    answers: hop.answers,
    swaps: hop.swaps.map(({ what, before, after }) => ({
      what,
      before: showAddress(before),
      after: showAddress(after),
    })),
  };
}
