/** Ids of the blocks of data that the build writes into the page. */
export const BLOCKS = { rules: 'rules', articles: 'articles', licences: 'licences' } as const;
