import { Length } from '../Length.tsx';
import { lineNotes } from '../read/cutListText.ts';
import { grainWords } from '../read/grainWords.ts';
import type { Build } from '../read/readBuild.ts';
import { Scrolling } from '../Scrolling.tsx';

/** Every board at its finished size, equal ones in one line. */
export function CutListTable({ build, cabinets }: { readonly build: Build; readonly cabinets: number }) {
  const { lines, names, project } = build;
  const tapered = lines.some(({ shape }) => shape === 'trapezoid')
    ? ' A tapered panel stands by the smallest rectangle that it is cut from.'
    : '';
  const pieces = lines.reduce((sum, { count }) => sum + count * cabinets, 0);
  return (
    <section className="build-section" aria-labelledby="build-cut-list">
      <h2 id="build-cut-list">Cut list</h2>
      <p className="build-about">
        {pieces} pieces for {cabinets === 1 ? 'one cabinet' : `${cabinets} cabinets`}. Finished sizes, joints included;
        length runs along the grain.{tapered} Inches are to the nearest 1/32; in brackets what that adds to or takes
        from the true size in mm, where it is more than 0.2 mm.
      </p>
      <Scrolling label="Cut list">
        <table className="build-table">
          <caption className="unseen">Cut list</caption>
          <thead>
            <tr>
              <th scope="col">mark</th>
              <th scope="col">panel</th>
              <th scope="col">pieces</th>
              <th scope="col">length, mm</th>
              <th scope="col">width, mm</th>
              <th scope="col">thick, mm</th>
              <th scope="col">grain</th>
              <th scope="col">edges and shape</th>
            </tr>
          </thead>
          <tbody>
            {lines.map((line) => (
              <tr key={line.partId}>
                <td className="build-mark">{line.mark}</td>
                <th scope="row">{line.panels.map(names.panel).join(' and ')}</th>
                <td className="build-number">{line.count * cabinets}</td>
                <td>
                  <Length of={line.length} />
                </td>
                <td>
                  <Length of={line.width} />
                </td>
                <td>
                  <Length of={line.thickness} />
                </td>
                <td>{grainWords(line.grain, project.enclosure.wood.stock.grained)}</td>
                <td>{lineNotes(line, build).join('; ') || 'square'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolling>
    </section>
  );
}
