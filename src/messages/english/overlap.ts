/** The worked lines about two ranges of addresses. */
export const OVERLAP_WORDS = {
  'overlap.same': 'Both are the same range, {inner}.',
  'overlap.inside': 'The range {inner} lies inside the range {outer}.',
  'overlap.apart': 'The ranges {inner} and {outer} have no address in common.',
  'overlap.no-harm': 'A router or a VPN can stand between them.',
  'overlap.matters':
    'Where a VPN or a second router stands between them, a device takes an address of the far side for one on its own side and never calls the far side. Give one of the two another range, such as 10.77.5.0/24.',
} as const;
