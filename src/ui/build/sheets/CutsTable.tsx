import type { SheetCut, SheetPlan } from '../../../core/build/sheets/index.ts';
import { Length } from '../Length.tsx';
import { Scrolling } from '../Scrolling.tsx';
import { pieceNames } from './pieceNames.ts';

const KINDS: Readonly<Record<SheetCut['kind'], string>> = {
  trim: 'trim an edge',
  rip: 'rip, along the board',
  cross: 'crosscut',
};

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
        Cuts in order: {plan.cuts.length}, in {plan.stages} {plan.stages === 1 ? 'stage' : 'stages'}{' '}
        <span className="build-screen build-soft">(printed when unfolded)</span>
      </summary>
      <Scrolling label={`Cuts of ${title}`}>
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
                  <Length of={[cut.from.lengthM, ' × ', cut.from.widthM]} />
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
      </Scrolling>
    </details>
  );
}
