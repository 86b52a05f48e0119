/** Articles and how-tos: how they are shown, and what is wrong in one. */
export const ARTICLE_WORDS = {
  'article.picture': '[Picture: {shows}]',
  'article.link': '{text} [{id}]',

  'article.listed': '{id}: {title}',
  'article.list-how': 'Open one with: whydark article NAME',
  'article.list-causes': 'Causes',
  'article.list-how-tos': 'How-tos',
  'article.none': 'There is no article yet.',
  'article.unknown': 'There is no article "{name}". "whydark article" lists them all.',
  'article.unknown-near':
    'There is no article "{name}". Did you mean "{nearest}"? "whydark article" lists them all.',
  'article.html-or-json': 'Give --html or --json, not both.',
  'article.html-one': 'The option "--html" needs the name of an article: whydark article NAME --html.',
  'article.no-folder': 'The articles are missing: there is no {path}. Install whydark again.',

  'article.missing': 'This cause has no article. Write it in {article}.',
  'article.no-place':
    'No file belongs here. Articles stand in causes/STAGE/ID.md, how-tos in how-to/ID.md, pictures in pictures/ID.svg.',
  'article.no-such-cause': 'There is no cause "{id}" in the stage "{stage}". Move or remove this file.',
  'article.no-such-cause-near': 'There is no cause "{id}" in this stage. Did you mean {nearest}?',
  'article.name-taken': 'A cause has the name "{id}" already. Give the how-to another one.',
  'article.how-to-unused':
    'No question names this how-to. Name "{id}" in the field "howTo" of a question, or remove the file.',
  'article.how-to-missing': 'There is no how-to "{howTo}". Write knowledge/how-to/{howTo}.md.',

  'article.no-title': 'Line 1: The page has no title. Begin it with "# " and the title.',
  'article.no-title-of': 'Line {line}: The article has no title. Begin it with "# {title}".',
  'article.title-late': 'Line {line}: Something stands above the title. Begin the page with the title.',
  'article.second-title': 'Line {line}: A page has one title. Begin this heading with "## ".',
  'article.title-differs':
    'Line {line}: The title is "{is}", that of the cause is "{title}". Write them alike.',
  'article.heading-missing': 'The heading "## {heading}" is missing. Write it at the end.',
  'article.heading-missing-before':
    'Line {line}: The heading "## {heading}" is missing. Write it above "## {before}".',
  'article.heading-unknown': 'Line {line}: No article has a heading "{heading}". The headings are: {all}.',
  'article.heading-unknown-near': 'Line {line}: Write "## {nearest}" for the heading "{heading}".',
  'article.heading-twice': 'Line {line}: The heading "{heading}" stands here again. Keep one of them.',
  'article.heading-late': 'Line {line}: Move the heading "{heading}" above "{before}".',
  'article.section-empty':
    'Line {line}: Nothing stands under "{heading}". Write it, or say that there is none.',
  'article.confused-list':
    'Line {line}: Under "Often confused with" stands a list. Begin this line with "- " and a link.',
  'article.confused-no-link': "Line {line}: Begin this item with a link to another cause's article.",
  'article.confused-itself': 'Line {line}: A cause is not confused with itself. Link to another one.',
  'article.confused-no-cause': 'Line {line}: "{to}" is the article of no cause. Link to one that is.',
  'article.no-steps': 'A how-to has numbered steps. Write them as "1. ", "2. " and so on.',
  'article.link-outside':
    'Line {line}: "{to}" leads outside. Link to our own pages and pictures only, each by its relative path.',
  'article.link-no-heading': 'Line {line}: "{to}" leads to no heading of this page.',
  'article.link-nowhere': 'Line {line}: "{to}" leads to no file.',
  'article.link-nowhere-near': 'Line {line}: "{to}" leads to no file. Did you mean {nearest}?',
  'article.address-outside':
    'Line {line}: The outside address "{address}" belongs under "Sources". One to type stands between backticks.',
  'article.picture-no-words':
    'Line {line}: The picture "{from}" has no words. Say between the brackets what it shows.',
  'article.raw-html': 'Line {line}: HTML is never shown: {html}. Write it as markdown.',
} as const;
