import { useId } from 'react';
import type { Suitability } from '../../../../core/design/suitability.ts';
import { suitabilityOf } from '../../../../core/design/suitabilityOf.ts';
import type { Problem } from '../../../../core/messages/problem.ts';
import { word } from '../../../../core/messages/word.ts';
import { dispatchHere } from '../../../fields/dispatchHere.ts';
import { FieldMessage } from '../../../fields/FieldMessage.tsx';
import { useWhileOpen } from '../../../fields/useWhileOpen.ts';
import { useCalmWorkbench } from '../../../useCalmWorkbench.ts';
import { useWorkbenchStore } from '../../../useWorkbenchStore.ts';
import type { Way } from '../../../waysInOrder.ts';
import { VERDICT } from './Suitabilities.tsx';
import { STARTING_POINTS, type StartingPoint } from './startingPoints.ts';
import './panels.css';

/** One-click beginnings: other kinds of box for a way, each with what it does and how well the driver suits it. */
export function StartingPoints({ way }: { readonly way: Way }) {
  const project = useCalmWorkbench((s) => s.project);
  const verdicts = suitabilityOf(project, way.speakerId);
  return (
    <details className="enclosure-fold">
      <summary>Make it another kind of box</summary>
      <ul className="box-starts">
        {STARTING_POINTS.map((point) => (
          <Row
            key={point.name}
            way={way}
            point={point}
            verdict={verdicts.find(({ kind }) => kind === point.kind) ?? null}
          />
        ))}
      </ul>
    </details>
  );
}

function Row({
  way,
  point,
  verdict,
}: {
  readonly way: Way;
  readonly point: StartingPoint;
  readonly verdict: Suitability | null;
}) {
  const store = useWorkbenchStore();
  const [problems, setProblems] = useWhileOpen<readonly Problem[]>([]);
  const id = useId();
  const begin = () => {
    const found = point.start(store.getState().project, way.speakerId);
    setProblems(found.ok ? dispatchHere(store, found.value) : found.problems);
  };
  return (
    <li>
      <button
        type="button"
        className="lane-button"
        aria-label={`Make ${way.name} ${point.name}`}
        aria-describedby={id}
        onClick={begin}
        onBlur={() => setProblems([])}
      >
        {point.name}
      </button>
      <span id={id}>
        {point.does}
        {verdict === null ? null : (
          <span className="lane-soft" title={`${word(verdict.reason).sentence} Source: ${verdict.source}.`}>
            {' '}
            ({VERDICT[verdict.verdict]})
          </span>
        )}
        <FieldMessage id={`${id} message`} problems={problems} />
      </span>
    </li>
  );
}
