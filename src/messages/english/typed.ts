/** What is said when typed text cannot be used as it stands. */
export const TYPED_WORDS = {
  'typed.empty': 'Nothing was typed. Type the answer, or choose "can\'t tell".',
} as const;
