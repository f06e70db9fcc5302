import { type Answer, casesOf, inputsOf, type PublishedCase } from './topic.ts';

/** What the laws say of a case, from its inputs in SI, by the names of its figures. */
export type Answering = (
  given: ReturnType<typeof inputsOf>,
  published: PublishedCase,
) => Readonly<Record<string, number | boolean>>;

/**
 * Answers for a topic whose kinds are mixed: a case's own answer by its id stands in front of that of
 * its kind. A kind of which some case has no answer is left to the topic's list, which then fails.
 */
export function answersBy(
  topic: string,
  answers: Readonly<Record<string, Answering>>,
): Readonly<Record<string, Answer>> {
  const byKind: Record<string, Answer> = {};
  for (const each of casesOf(topic))
    if (answers[each.id] !== undefined || answers[each.kind] !== undefined)
      byKind[each.kind] = (published) => {
        const answer = answers[published.id] ?? answers[published.kind];
        if (answer === undefined) throw new Error(`${published.id} has no answer`);
        return answer(inputsOf(published), published);
      };
  return byKind;
}
