import type { PlotView, Question } from './view.ts';
import type { QUESTIONS } from './views/index.ts';

type Asked = (typeof QUESTIONS)[number];

/** The questions that can be asked, and, where one has several answers, which of them is drawn. */
export function QuestionButtons({
  questions,
  asked,
  view,
  ask,
  choose,
}: {
  questions: readonly Asked[];
  asked: Asked;
  view: PlotView;
  ask(question: Question): void;
  choose(view: PlotView): void;
}) {
  return (
    <div className="questions">
      <fieldset className="questions-row" aria-label="Question to answer">
        {questions.map(({ id, words }) => (
          <button
            key={id}
            type="button"
            className="frame-button questions-button"
            aria-pressed={id === asked.id}
            onClick={() => ask(id)}
          >
            {words}
          </button>
        ))}
      </fieldset>
      {asked.views.length > 1 && (
        <fieldset className="questions-row questions-answers" aria-label={asked.words}>
          {asked.views.map((candidate) => (
            <button
              key={candidate.id}
              type="button"
              className="frame-button questions-button"
              aria-pressed={candidate.id === view.id}
              onClick={() => choose(candidate)}
            >
              {candidate.button}
            </button>
          ))}
        </fieldset>
      )}
    </div>
  );
}
