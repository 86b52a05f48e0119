/** The headings of a cause's article, in order. */
export const CAUSE_HEADINGS = [
  'What happens',
  'How to be sure',
  'Mend it by phone',
  'Mend it on site',
  'How to know it worked',
  'Often confused with',
  'Cautions',
  'Sources',
] as const;

/** The last headings of a how-to, in order; only the sources must be there. Before them its author is free. */
export const HOW_TO_HEADINGS = ['By system', 'Putting it back', 'Sources'] as const;

export const CONFUSED = 'Often confused with';
export const SOURCES = 'Sources';
