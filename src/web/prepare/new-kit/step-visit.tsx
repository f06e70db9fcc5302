import type { Questions } from '../../engine/question-wire.ts';
import { type AtQuestions, QuestionList } from './question-list.tsx';

/** Who comes, and for how long? */
export const StepVisit = ({ questions, ...at }: AtQuestions & { readonly questions: Questions }) => (
  <>
    <p>{at.say('newkit.visit.say')}</p>
    <QuestionList
      questions={questions.visit}
      first={['date', 'groups', 'pupils', 'helpers', 'period', 'starts']}
      {...at}
    />
    <h3>{at.say('newkit.visit.activity')}</h3>
    <QuestionList questions={questions.activity} first={['age', 'introduction', 'talk at the end']} {...at} />
  </>
);
