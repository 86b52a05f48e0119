import { type Sentence, say } from '../../messages/say.js';
import { type Address, showAddress } from '../../values/address.js';
import { type Mask, showMask } from '../../values/mask.js';

/** One line of a plan; without an address where there was none left. */
export interface TableRow {
  readonly camera: string;
  readonly address: Address | undefined;
}

type Cells = readonly [camera: string, address: string, mask: string, gateway: string];

/** Paper and terminals hold this many columns. */
const WIDEST = 80;
/** Bars and spaces around four cells. */
const FRAME = 13;

/**
 * The plan as a GFM table in columns, a sentence a line, none wider than 80 columns. A name that is too long is
 * cut and gets its place in the list, so that no two are alike; what would mean something in Markdown is escaped.
 */
export function tableLines(rows: readonly TableRow[], mask: Mask, gateway: Address): readonly Sentence[] {
  const head: Cells = [
    say('plan.column-camera'),
    say('plan.column-address'),
    say('plan.column-mask'),
    say('plan.column-gateway'),
  ];
  const shown = rows.map(
    ({ camera, address }): Cells => [
      camera,
      address ? showAddress(address) : say('plan.no-address'),
      showMask(mask),
      showAddress(gateway),
    ],
  );
  const width = (column: 1 | 2 | 3): number => Math.max(...[head, ...shown].map((row) => row[column].length));
  const [address, masks, gateways] = [width(1), width(2), width(3)];
  const names = rows.map(({ camera }, at) =>
    fitted(camera, at + 1, WIDEST - FRAME - address - masks - gateways),
  );
  const name = Math.max(head[0].length, ...names.map(lengthOf));
  const line = ([camera, ...rest]: Cells): Sentence => ({
    id: 'plan.row',
    with: {
      camera: camera + ' '.repeat(name - lengthOf(camera)),
      address: rest[0].padEnd(address),
      mask: rest[1].padEnd(masks),
      gateway: rest[2].padEnd(gateways),
    },
  });
  const rule: Cells = ['-'.repeat(name), '-'.repeat(address), '-'.repeat(masks), '-'.repeat(gateways)];
  const body = shown.map(([, ...rest], at) => line([names[at] ?? '', ...rest]));
  return [line(head), line(rule), ...body];
}

function fitted(name: string, place: number, width: number): string {
  const whole = escaped(name);
  if (lengthOf(whole) <= width) return whole;
  const end = `… ${place}`;
  const letters = [...name];
  while (lengthOf(escaped(letters.join(''))) + end.length > width) letters.pop();
  return escaped(letters.join('')) + end;
}

/** A backslash before what Markdown would read as more than text (CommonMark 0.31, section 2.4). */
function escaped(text: string): string {
  return text.replace(/[\\|<[\]`*&~]|(?<![\p{L}\p{N}])_|_(?![\p{L}\p{N}])/gu, '\\$&');
}

function lengthOf(text: string): number {
  return [...text].length;
}
