import type { SheetCut, SheetPlan } from '../../../core/build/sheets/index.ts';
import { formatNumber } from '../../../core/units/formatNumber.ts';
import { Length } from '../Length.tsx';
import { pieceNames } from './pieceNames.ts';

const KINDS: Readonly<Record<SheetCut['kind'], string>> = {
  trim: 'trim an edge',
  rip: 'rip, along the board',
  cross: 'crosscut',
};
const millimetres = (m: number): string => formatNumber(m * 1000, 4);

/** The cuts of one board in the order in which they are made. */
export function CutsTable({
  plan,
  kerfM,
  markOf,
  title,
}: {
  readonly plan: SheetPlan;
  readonly kerfM: number;
  readonly markOf: (partId: string) => string;
  readonly title: string;
}) {
  const names = pieceNames(plan, kerfM, markOf);
  return (
    <details className="sheet-cuts">
      <summary>
        Cuts in order: {plan.cuts.length}, in {plan.stages} {plan.stages === 1 ? 'stage' : 'stages'} (prints when
        unfolded)
      </summary>
      <div className="build-scroll">
        <table className="build-table">
          <caption className="unseen">Cuts of {title}</caption>
          <thead>
            <tr>
              <th scope="col">no.</th>
              <th scope="col">cut</th>
              <th scope="col">of</th>
              <th scope="col">which is, mm</th>
              <th scope="col">fence at, mm</th>
              <th scope="col">makes</th>
            </tr>
          </thead>
          <tbody>
            {plan.cuts.map((cut) => (
              <tr key={cut.number}>
                <td className="build-number">{cut.number}</td>
                <td>{KINDS[cut.kind]}</td>
                <th scope="row">{names.get(cut.piece) ?? `piece ${cut.piece}`}</th>
                <td>
                  {millimetres(cut.from.lengthM)} × {millimetres(cut.from.widthM)}
                </td>
                <td>
                  <Length of={cut.fenceM} />
                </td>
                <td>
                  {cut.kind === 'trim'
                    ? 'a straight edge'
                    : cut.leaves
                        .filter((piece) => piece !== null)
                        .map((piece) => names.get(piece) ?? `piece ${piece}`)
                        .join(' and ')}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
