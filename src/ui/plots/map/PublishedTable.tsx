import type { PublishedFamily, PublishedPoint, PublishedPoints } from '../../../core/design/alignmentMap/index.ts';
import { word } from '../../../core/messages/word.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { decibelText, hertzText, volumeText } from './mapQuantities.ts';
import { shortName } from './placeMarks.ts';

/** What the short names of the families stand for. */
const FAMILIES: Readonly<Record<PublishedFamily, string>> = {
  B2: 'Butterworth of second order',
  C2: 'Chebyshev of second order',
  BL2: 'Bessel of second order',
  Qtc: 'sealed, of the Q that is wished',
  B4: 'Butterworth of fourth order',
  QB3: 'quasi-Butterworth of third order',
  C4: 'Chebyshev of fourth order',
  SC4: 'sub-Chebyshev of fourth order',
  BL4: 'Bessel of fourth order',
  BB4: 'boom box of fourth order',
  SBB4: 'super boom box of fourth order',
};

/** The published boxes for the driver as a table, each to be taken; and the families that have none, with the reason. */
export function PublishedTable({
  published,
  units,
  pick,
  canPick,
}: {
  published: PublishedPoints;
  units: UnitSystem;
  pick(point: PublishedPoint): void;
  canPick(point: PublishedPoint): boolean;
}) {
  return (
    <details className="map-published">
      <summary>Published boxes for this driver</summary>
      <div className="map-published-table">
        <table>
          <thead>
            <tr>
              <th scope="col">Name</th>
              <th scope="col">Volume</th>
              <th scope="col">Tuning</th>
              <th scope="col">Cut-off</th>
              <th scope="col">Ripple</th>
            </tr>
          </thead>
          <tbody>
            {published.points.map((point) => (
              <tr key={shortName(point)} title={`Source: ${point.source}`}>
                <th scope="row">
                  {canPick(point) ? (
                    <button type="button" className="map-pick" onClick={() => pick(point)}>
                      {shortName(point)}
                    </button>
                  ) : (
                    shortName(point)
                  )}
                  {point.family === 'Qtc' ? null : <span className="lane-soft">, {FAMILIES[point.family]}</span>}
                </th>
                <td>{volumeText(point.volumeM3, units)}</td>
                <td>{point.tuningHz === null ? 'sealed' : hertzText(point.tuningHz)}</td>
                <td>{hertzText(point.f3Hz)}</td>
                <td>{decibelText(point.rippleDb)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {published.absent.length > 0 && (
        <ul className="map-absent">
          {published.absent.map(({ family, reason }) => (
            <li key={`${family} ${JSON.stringify(reason.values)}`}>{word(reason).sentence}</li>
          ))}
        </ul>
      )}
    </details>
  );
}
