import { expect, test } from 'vitest';
import { sentencesUsed } from '../../../src/build/page/sentences-used.js';

const ALL = {
  'call.yes': 'Yes',
  'call.no': 'No',
  'paste.owner-camera': 'Camera',
  'paste.owner-router': 'Router',
  'help.call': 'whydark call',
};

test.each([
  ["say('call.yes')", ['call.yes']],
  ["return { id: 'call.no', with: { a } };", ['call.no']],
  ["say(isOpen ? 'call.yes' : 'call.no')", ['call.yes', 'call.no']],
  [`say(\`paste.owner-\${owner}\`)`, ['paste.owner-camera', 'paste.owner-router']],
  [`say(\`paste.\${kind}\`)`, ['paste.owner-camera', 'paste.owner-router']],
  ['const a = 5;', []],
])('%s can say %j', (source, ids) => {
  expect(Object.keys(sentencesUsed(ALL, [source]))).toEqual(ids);
});
