import { lazy, Suspense } from 'react';
import { useCalmWorkbench } from '../../useCalmWorkbench.ts';
import { Popover } from '../Popover.tsx';
import './why.css';
import type { WhyInput, WhyNote } from './whyNote.ts';

const WhyText = lazy(() => import('./WhyText.tsx'));

type Explain = (input: WhyInput) => WhyNote | null;

/** “why?” beside a derived number: opens a side note that follows the design while it is open. */
export function WhyButton({ about, notes }: { about: string; notes: readonly Explain[] }) {
  return (
    <Popover face="why?" label={`Why? ${about}`} className="why-button" labelled>
      {() => <Notes notes={notes} />}
    </Popover>
  );
}

function Notes({ notes }: { notes: readonly Explain[] }) {
  const { project, evaluation, units } = useCalmWorkbench((s) => ({
    project: s.project,
    evaluation: s.evaluation,
    units: s.settings.units,
  }));
  const answers = evaluation ? notes.flatMap((note) => note({ project, evaluation, units }) ?? []) : [];
  return (
    <Suspense fallback={<p className="frame-soft">One moment…</p>}>
      {answers.length === 0 && <p>This design no longer has that number.</p>}
      {answers.map((answer) => (
        <WhyText key={answer.title} note={answer} />
      ))}
    </Suspense>
  );
}
