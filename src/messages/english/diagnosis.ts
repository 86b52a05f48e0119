/** The sentences of the diagnosis that the rule base does not bring. */
export const DIAGNOSIS_WORDS = {
  'diagnosis.look-first': 'Ask first, for it may turn out to be something else: {title}.',
  'diagnosis.other': 'Something else in this stage: {stage}',
  'diagnosis.shows': '{title}: {value}',
  'diagnosis.open': 'Not decided yet. Still possible: {causes}.',
  'diagnosis.open-defect': 'A fault is found, but it may not be the only one. {defect}',
  'diagnosis.nothing': 'The picture is there now. Nothing is wrong at this moment.',
  'diagnosis.restored': 'The picture is back after "{remedy}". The cause is not proven; likeliest: {cause}.',
  'diagnosis.restored-confirmed': 'The picture is back after "{remedy}". That mends one thing only: {cause}.',
  'diagnosis.restored-sum': 'The picture is back after "{remedy}". The sum had proven the fault: {cause}.',
  'diagnosis.may-not-ask':
    'Nothing was looked into: the caller may not ask for this camera. Its owner has to call.',
  'diagnosis.out-of-scope':
    'Nothing was looked into: this camera is of a kind that this guide does not cover.',
  'diagnosis.watch':
    'Watch the live picture for ten minutes. Ring back after the next night or the next rain, and ask whether it stayed.',
  'diagnosis.watch-away':
    'The picture was there all through this call, so nothing that was done is proven yet. Let somebody write down when it goes, and what else happened then. Ring back once the next such time is over.',
} as const;
