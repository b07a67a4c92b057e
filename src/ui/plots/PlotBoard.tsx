import { type ReactNode, useMemo, useState } from 'react';
import '../frame/frame.css';
import { ErrorBoundary } from '../frame/ErrorBoundary.tsx';
import { useWorkbench } from '../useWorkbench.ts';
import { CurvePlot } from './CurvePlot.tsx';
import type { CursorPin } from './FrequencyCursor.tsx';
import './PlotBoard.css';
import { NARROW, useMedia } from '../useMedia.ts';
import { QuestionButtons } from './QuestionButtons.tsx';
import type { PlotView, Question } from './view.ts';
import { loadView, QUESTIONS, responseView } from './views/index.ts';

const FIRST_OF: Readonly<Record<Question, string>> = {
  heard: 'response',
  load: 'load',
  motion: 'travel',
  loudness: 'loudest',
  arrival: 'phase',
};

/**
 * The plots: on a wide screen the response stays in sight at the left and one more question is answered beside it (in the
 * lesson on port tuning two more); on a narrow one a single plot answers the chosen question. `bar` stands over them at the
 * left.
 */
export function PlotBoard({ bar }: { bar?: (pin: CursorPin) => ReactNode }) {
  const narrow = useMedia(NARROW);
  const teaching = useWorkbench((s) => s.project.opensWith === 'teach-port');
  const [pinnedHz, setPinnedHz] = useState<number | null>(null);
  const [question, setQuestion] = useState<Question | null>(null);
  const [chosen, setChosen] = useState(FIRST_OF);
  const pin = useMemo<CursorPin>(() => ({ hz: pinnedHz, set: setPinnedHz }), [pinnedHz]);

  const lesson = teaching && !narrow;
  const asked = question ?? (narrow ? 'heard' : lesson ? 'motion' : 'load');
  const offered = QUESTIONS.filter(({ id }) => narrow || (id !== 'heard' && !(lesson && id === 'load')));
  const group = offered.find(({ id }) => id === asked) ?? offered[0];
  const view = group?.views.find(({ id }) => id === chosen[group.id]) ?? group?.views[0];
  if (!group || !view) throw new Error('There is always one question to answer.');
  const buttons = (
    <QuestionButtons
      questions={offered}
      asked={group}
      view={view}
      ask={setQuestion}
      choose={(next) => setChosen({ ...chosen, [next.question]: next.id })}
    />
  );
  return (
    <section className="board" data-lesson={lesson ? '' : undefined} aria-label="Predicted curves">
      <div className="board-bar">
        {bar?.(pin)}
        {!narrow && buttons}
      </div>
      <div className="board-plots">
        {narrow && buttons}
        {!narrow && <Plot view={responseView} pin={pin} />}
        {lesson && <Plot view={loadView} pin={pin} />}
        <Plot view={view} pin={pin} />
      </div>
    </section>
  );
}

function Plot({ view, pin }: { view: PlotView; pin: CursorPin }) {
  return (
    <ErrorBoundary panel={`the plot “${view.button}”`} key={view.id}>
      <CurvePlot view={view} pin={pin} />
    </ErrorBoundary>
  );
}
