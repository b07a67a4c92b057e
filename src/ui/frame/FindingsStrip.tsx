import { useState } from 'react';
import type { Finding } from '../../core/messages/problem.ts';
import { word } from '../../core/messages/word.ts';
import { useCalmWorkbench } from '../useCalmWorkbench.ts';
import { NARROW, useMedia } from '../useMedia.ts';
import { useWorkbench } from '../useWorkbench.ts';
import './FindingsStrip.css';
import { selectionOf } from './selectionOf.ts';
import { selectionWords } from './selectionWords.ts';

const SEVERITY: Readonly<Record<Finding['severity'], { readonly word: string; readonly mark: string }>> = {
  danger: { word: 'Danger', mark: 'M8 1 15 14H1Z' },
  warning: { word: 'Warning', mark: 'M8 1 15 8 8 15 1 8Z' },
  note: { word: 'Note', mark: 'M8 2a6 6 0 1 0 .01 0Z' },
};
/** How many stand in the closed strip: as many as fit side by side, or three below one another. */
const SIDE_BY_SIDE = { wide: 3, middling: 2, narrow: 3 };
const WIDE = '(min-width: 75rem)';
const NONE: readonly Finding[] = [];

/** Every flaw of the design in one sentence with its number, its remedy and a way to the place. */
export function FindingsStrip() {
  const { evaluated, findings, project } = useCalmWorkbench((s) => ({
    evaluated: s.evaluation !== null,
    findings: s.evaluation?.findings ?? NONE,
    project: s.project,
  }));
  // At once, not calmly: the good word must be gone before a problem is said.
  const solved = useWorkbench((s) => s.problems.length === 0);
  const select = useWorkbench((s) => s.select);
  const [open, setOpen] = useState(false);
  const wide = useMedia(WIDE);
  const narrow = useMedia(NARROW);
  const atOnce = SIDE_BY_SIDE[wide ? 'wide' : narrow ? 'narrow' : 'middling'];
  const shown = open ? findings : findings.slice(0, atOnce);
  const more = findings.length - atOnce;
  return (
    <section className="findings" data-open={open ? '' : undefined} aria-label="Findings" data-testid="findings">
      {evaluated && solved && findings.length === 0 && (
        <p className="findings-none">No flaw found at this drive and listening place.</p>
      )}
      <ul className="findings-list">
        {shown.map((finding) => {
          const { sentence, remedy } = word(finding);
          const selection = selectionOf(finding.place, project);
          const { word: severity, mark } = SEVERITY[finding.severity];
          return (
            <li key={`${finding.code} ${finding.place.kind} ${finding.place.id}`} className="findings-item">
              <span className={`findings-severity findings-${finding.severity}`}>
                <svg viewBox="0 0 16 16" aria-hidden="true" focusable="false">
                  <title>{severity}</title>
                  <path d={mark} />
                </svg>
                {severity}
              </span>
              <span>
                {sentence} {open && <span className="frame-soft">{remedy}</span>}
              </span>
              {selection && (
                <button
                  type="button"
                  className="frame-link"
                  aria-label={`Show ${selectionWords(selection, project)}`}
                  onClick={() => select(selection)}
                >
                  show
                </button>
              )}
            </li>
          );
        })}
      </ul>
      {findings.length > 0 && (
        <button type="button" className="frame-button" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? 'Less' : more > 0 ? `What to do, ${more} more` : 'What to do'}
        </button>
      )}
    </section>
  );
}
