import { useId, useState } from 'react';
import { formatNetlist } from '../../../../core/circuit/netlist/formatNetlist.ts';
import { parseNetlist } from '../../../../core/circuit/netlist/parseNetlist.ts';
import { keptAmplifiers } from '../../../../core/document/commands/network/keptAmplifiers.ts';
import { type Problem, problem } from '../../../../core/messages/problem.ts';
import { word } from '../../../../core/messages/word.ts';
import { simulatorText } from '../../../../core/speaker/simulatorText.ts';
import { useWorkbench } from '../../../useWorkbench.ts';
import { useWorkbenchStore } from '../../../useWorkbenchStore.ts';
import { partsList } from '../partsList.ts';
import './netlist-panel.css';

/** The circuit as text: to read, to paste another one in, and the parts list to copy. */
export function NetlistPanel() {
  const store = useWorkbenchStore();
  const parts = useWorkbench((s) => s.project.network.parts);
  const present = formatNetlist(parts);
  const [draft, setDraft] = useState<string | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [copied, setCopied] = useState('');
  /** What the text for a simulator leaves out or changes. */
  const [remarks, setRemarks] = useState<readonly Problem[]>([]);
  /** What was read into the text that it does not say. */
  const [readInto, setReadInto] = useState<readonly Problem[]>([]);
  const id = useId();

  const apply = () => {
    const read = parseNetlist(draft ?? present);
    const kept = read.ok ? keptAmplifiers(parts, read.value) : [];
    const found = read.ok ? store.getState().dispatch({ type: 'replace-network', parts: read.value }) : read.problems;
    setProblems(found);
    if (found.length > 0) return;
    setDraft(null);
    setReadInto(
      kept.map((part) =>
        problem('document.amplifier-kept', { kind: 'part', id: part.id }, { line: formatNetlist([part]).trim() }),
      ),
    );
  };
  const copy = async (what: string, text: string, about: readonly Problem[] = []) => {
    setRemarks(about);
    try {
      await navigator.clipboard.writeText(text);
      setCopied(`${what} copied.`);
    } catch {
      setCopied('The browser did not allow copying: select the text and copy it by hand.');
    }
  };
  const copyForSimulator = async () => {
    const made = simulatorText(store.getState().project);
    if (made.ok) await copy('Circuit for a simulator', made.value.text, made.value.remarks);
    else {
      setCopied('');
      setRemarks(made.problems);
    }
  };
  const { project, settings } = store.getState();
  return (
    <section className="netlist-panel" aria-label="Circuit as text">
      <div>
        <label htmlFor={id} className="lane-soft">
          One part a line: name, two nodes, value; 0 is the return. R, C and L parts, J links, V amplifiers, LS
          speakers.
        </label>
        <textarea
          id={id}
          className="netlist-panel-text"
          rows={Math.min(12, Math.max(6, present.split('\n').length))}
          spellCheck={false}
          value={draft ?? present}
          aria-describedby={`${id}-problems`}
          aria-invalid={problems.length > 0}
          onChange={(event) => {
            setDraft(event.target.value);
            setProblems([]);
            setReadInto([]);
          }}
        />
        <div className="netlist-panel-actions">
          <button type="button" className="lane-button lane-button-main" disabled={draft === null} onClick={apply}>
            use this circuit
          </button>
          <button
            type="button"
            className="lane-button"
            disabled={draft === null}
            onClick={() => {
              setDraft(null);
              setProblems([]);
            }}
          >
            back to the present one
          </button>
          <button type="button" className="lane-button" onClick={() => void copy('Circuit', draft ?? present)}>
            copy the circuit
          </button>
          <button
            type="button"
            className="lane-button"
            onClick={() => void copy('Parts list', partsList(parts, project.drivers, settings.units))}
          >
            copy the parts list
          </button>
          <button type="button" className="lane-button" onClick={() => void copyForSimulator()}>
            copy for a circuit simulator
          </button>
          <span role="status" className="lane-soft">
            {copied}
          </span>
        </div>
        <div aria-live="polite">
          {readInto.map((remark) => {
            const { sentence, remedy } = word(remark);
            return (
              <p key={remark.place.id} className="netlist-panel-note">
                {sentence} <span className="lane-soft">{remedy}</span>
              </p>
            );
          })}
        </div>
        {remarks.length > 0 ? (
          <ul className="netlist-panel-remarks" aria-label="About the text for a simulator">
            {remarks.map((remark) => {
              const { sentence, remedy } = word(remark);
              return (
                <li key={`${remark.code} ${remark.place.id}`}>
                  {sentence} <span className="lane-soft">{remedy}</span>
                </li>
              );
            })}
          </ul>
        ) : null}
      </div>
      <ul id={`${id}-problems`} className="netlist-panel-problems" aria-live="polite">
        {problems.map((found) => {
          const { sentence, remedy } = word(found);
          const line = found.place.line === undefined ? '' : `Line ${found.place.line}: `;
          const said = sentence.toLowerCase().includes('line') ? sentence : `${line}${sentence}`;
          return (
            <li key={`${found.code} ${found.place.line} ${found.place.id} ${sentence}`}>
              {said} <span className="lane-soft">{remedy}</span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
