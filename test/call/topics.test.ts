import { describe, expect, test } from 'vitest';
import { allTopics, topicNamed } from '../../src/call/topics.js';
import { say } from '../../src/messages/say.js';

describe('the sums that can be done alone', () => {
  test('have one id each, by which they are found', () => {
    const ids = allTopics().map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const topic of allTopics()) expect(topicNamed(topic.id)).toBe(topic);
    expect(topicNamed('subnets')).toBeUndefined();
  });

  test.each(allTopics().map((topic) => [topic.id, topic] as const))(
    '%s asks for each input once',
    (_, topic) => {
      const ids = topic.inputs.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids.filter((id) => !/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(id))).toEqual([]);
      for (const { ask, choices = [] } of topic.inputs) {
        expect(say(ask)).not.toBe('');
        expect(new Set(choices.map(({ id }) => id)).size).toBe(choices.length);
      }
    },
  );

  test.each(allTopics().map((topic) => [topic.id, topic] as const))(
    '%s says which input it misses when nothing is given, one that must be given',
    (_, topic) => {
      const result = topic.reckon({});
      const isNeeded = topic.inputs.some(({ optional }) => optional !== true);
      expect(result.ok).toBe(!isNeeded);
      if (result.ok) return;
      const input = topic.inputs.find(({ id }) => id === result.input);
      expect(input?.optional ?? false).toBe(false);
    },
  );
});
