import type { KeyFigures } from '../../core/design/evaluation.ts';
import { useWorkbench } from '../useWorkbench.ts';
import { resultRows } from './resultRows.ts';

/** What a kept state comes to and what the present one does. */
export function CompareResults({ name, before, now }: { name: string; before: KeyFigures; now: KeyFigures }) {
  const units = useWorkbench((s) => s.settings.units);
  return (
    <section aria-label={`Results: ${name}`}>
      <table className="compare-table compare-results">
        <thead>
          <tr>
            <th scope="col">result</th>
            <th scope="col">kept</th>
            <th scope="col">now</th>
          </tr>
        </thead>
        <tbody>
          {resultRows(before, now, units).map((row) => (
            <tr key={row.words} data-same={row.before === row.now ? '' : undefined}>
              <th scope="row">{row.words}</th>
              <td>{row.before}</td>
              <td>{row.now}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
