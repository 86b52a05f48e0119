import type { Topic } from '../arithmetic/topics/topic.js';
import { TOPICS } from '../arithmetic/topics/topics.js';

/** Every sum that can be done alone, in the order in which they are listed. */
export function allTopics(): readonly Topic[] {
  return TOPICS;
}

/** The topic with this id, if there is one. */
export function topicNamed(id: string): Topic | undefined {
  return TOPICS.find((topic) => topic.id === id);
}

/** The ids of all inputs of all topics, each once: what a command line may name. */
export function inputIds(): readonly string[] {
  return [...new Set(TOPICS.flatMap(({ inputs }) => inputs.map(({ id }) => id)))];
}
