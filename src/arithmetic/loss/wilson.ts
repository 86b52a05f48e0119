/** The value of the standard normal distribution that 97.5 % lie below, for an interval of 95 %. */
const Z = 1.959963984540054;

/** A share (0 to 1), at least and at most. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/**
 * The shares of loss that fit `lost` of `sent` packets, with 95 % confidence: the score interval
 * (Wilson 1927, "Probable inference, the law of succession, and statistical inference", JASA 22,
 * 209-212). It supposes that packets are lost independently. Throws unless 0 <= lost <= sent, sent >= 1.
 */
export function wilson(lost: number, sent: number): Interval {
  if (!(lost >= 0 && lost <= sent && sent >= 1)) throw new RangeError(`${lost} of ${sent} is no share`);
  const centre = (lost + (Z * Z) / 2) / (sent + Z * Z);
  const half = (Z / (sent + Z * Z)) * Math.sqrt((lost * (sent - lost)) / sent + (Z * Z) / 4);
  // At the ends the sum gives the end itself, but for the last digit of the machine.
  return { low: lost === 0 ? 0 : centre - half, high: lost === sent ? 1 : centre + half };
}

/** How many packets without a single loss show that the loss is at most `limit` (0 to 1), by that interval. */
export function packetsFor(limit: number): number {
  return Math.ceil((Z * Z * (1 - limit)) / limit);
}
