import './why.css';
import type { WhyNote } from './whyNote.ts';

/** A why-note as it is read: formula, present values, result, limits, source. */
export default function WhyText({ note }: { note: WhyNote }) {
  return (
    <div className="why" data-testid="why">
      <h2 className="why-title">{note.title}</h2>
      <p className="why-formula">{note.formula}</p>
      <table className="why-values">
        <caption className="unseen">Present values</caption>
        <tbody>
          {[...note.lines, note.result].map((line) => (
            <tr key={`${line.symbol} ${line.meaning}`} data-result={line === note.result ? '' : undefined}>
              <th scope="row">{line.symbol}</th>
              <td>{line.meaning}</td>
              <td className="why-value">{line.value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{note.holds}</p>
      <p className="frame-soft">Source: {note.source}</p>
    </div>
  );
}
