import { useMemo } from 'react';
import { useCalmWorkbench } from '../useCalmWorkbench.ts';
import './KeyStrip.css';
import { keyItems } from './keyItems.ts';
import { WhyButton } from './why/index.ts';

/** The key numbers in words people use; every derived one can be asked why. */
export function KeyStrip() {
  const { figures, project, units } = useCalmWorkbench((s) => ({
    figures: s.evaluation?.keyFigures ?? null,
    project: s.project,
    units: s.settings.units,
  }));
  const items = useMemo(() => (figures ? keyItems(figures, project, units) : []), [figures, project, units]);
  return (
    <section className="key-strip" aria-label="Key figures" data-testid="key-strip">
      {figures === null && <p className="frame-soft">Key figures appear here as soon as the design can be computed.</p>}
      <dl className="key-list">
        {items.map((item) => (
          <div
            key={item.id}
            title={item.about}
            className="key-item"
            data-key={item.id}
            data-over={item.over ? '' : undefined}
          >
            <dt>{item.words}</dt>
            <dd data-testid={`key-${item.id}`}>
              {item.over && <span aria-hidden="true">! </span>}
              {item.value}
              {item.over && <span className="unseen"> ({item.over})</span>}
            </dd>
            {item.why.length > 0 && (
              <dd className="key-why">
                <WhyButton about={`${item.value} ${item.words}`} notes={item.why} />
              </dd>
            )}
          </div>
        ))}
      </dl>
    </section>
  );
}
