import { describe, expect, test } from 'vitest';
import { sameSubnet, subnetOf } from '../../src/arithmetic/subnet.js';
import { showAddress } from '../../src/values/address.js';
import { address, mask } from './given.js';
import { published, type Reference, referencesFor } from './references.js';

interface Answer {
  readonly input: string;
  readonly mask: string;
  readonly network: string;
  readonly broadcast: string;
  readonly first: string;
  readonly last: string;
  readonly usable: number;
}
interface WorkedExample {
  readonly stated_by_page: Partial<Answer>;
  readonly full_answer: Answer;
}

const examples = referencesFor('b-').filter((row) => row.statement.startsWith('Published worked example'));

function dotted(addressText: string, maskText: string) {
  const { network, broadcast, first, last, hosts } = subnetOf(address(addressText), mask(maskText));
  return {
    network: showAddress(network),
    broadcast: showAddress(broadcast),
    first: showAddress(first),
    last: showAddress(last),
    usable: hosts,
  };
}

function split(block: string): readonly [string, string] {
  const [addressText = '', prefixText = ''] = block.split('/');
  return [addressText, `/${prefixText}`];
}

describe('the subnet of an address', () => {
  test('there are the 31 worked examples of textbooks, courses and RFC 1878', () => {
    expect(examples).toHaveLength(31);
  });

  test.each(examples.map((row): [string, Reference] => [`${row.id}, ${row.source_title}`, row]))(
    'is what was published: %s',
    (_, row) => {
      const { stated_by_page: stated, full_answer: answer } = row.value as WorkedExample;
      const ours = dotted(...split(answer.input));
      expect(ours).toMatchObject(stated);
      const { input: _input, mask: dottedMask, ...rest } = answer;
      expect(ours).toEqual(rest);
      expect(dotted(split(answer.input)[0], dottedMask)).toEqual(rest);
    },
  );

  // RFC 1878, Table 1-1, prints N.N.254.255 in the last row of each mask.
  test('follows the arithmetic where RFC 1878 has a misprint', () => {
    const misprint = published<{ printed: string; correct: string; rows: string[] }>('b-rfc1878-misprint');
    expect(misprint.rows).toHaveLength(3);
    for (const row of misprint.rows) {
      const { broadcast } = dotted(...split(row.replace('N.N', '172.16')));
      expect(broadcast).toBe(misprint.correct.replace('N.N', '172.16'));
      expect(broadcast).not.toBe(misprint.printed.replace('N.N', '172.16'));
    }
  });

  // RFC 4632, section 3.1, table of block sizes.
  test('has the published number of addresses for every prefix, less two where the ends are kept', () => {
    const sizes = Object.entries(published<Record<string, number>>('a-4632-sizes'));
    expect(sizes).toHaveLength(33);
    for (const [prefixText, size] of sizes) {
      const subnet = subnetOf(address('172.23.40.57'), mask(prefixText));
      expect(subnet.broadcast.bits - subnet.network.bits + 1).toBe(size);
      expect(subnet.hosts).toBe(size > 2 ? size - 2 : size);
    }
  });

  // RFC 3021, sections 2.1 and 2.2.
  test('gives both addresses of a /31 to hosts', () => {
    expect(published<{ usable: number }>('a-3021-31').usable).toBe(2);
    expect(dotted('10.77.5.6', '/31')).toMatchObject({ first: '10.77.5.6', last: '10.77.5.7', usable: 2 });
  });

  // RFC 4632, section 3.1: a /32 is a host route.
  test('is one single address for a /32', () => {
    expect(dotted('10.77.5.6', '/32')).toMatchObject({ first: '10.77.5.6', last: '10.77.5.6', usable: 1 });
  });

  test('stays unsigned at the top of the address range', () => {
    expect(dotted('254.254.254.254', '/1')).toMatchObject({
      network: '128.0.0.0',
      broadcast: '255.255.255.255',
      usable: 2 ** 31 - 2,
    });
  });
});

// RFC 1122, section 3.3.1.1: (destination AND mask) equals (source AND mask).
describe('the on-link test', () => {
  test.each([
    ['172.23.40.57', '/24', '172.23.40.1', true],
    ['172.23.40.57', '/24', '172.23.41.1', false],
    ['172.23.40.57', '/23', '172.23.41.1', true],
    ['172.23.40.57', '/26', '172.23.40.64', false],
    ['172.23.40.57', '/32', '172.23.40.58', false],
    ['172.23.40.57', '/0', '10.77.5.1', true],
  ])('from %s with %s to %s: %s', (own, maskText, other, expected) => {
    expect(sameSubnet(address(own), mask(maskText), address(other))).toBe(expected);
  });
});
