import { frequencyText } from './frequencyText.ts';
import type { Picture } from './picture.ts';
import { readingOf } from './readings.ts';

const OCTAVES_HZ = [31.5, 63, 125, 250, 500, 1000, 2000, 4000, 8000, 16000];

/** The same picture as a table at octave frequencies, for those who cannot see it. */
export function PlotTable({ picture, label }: { picture: Picture; label: string }) {
  return (
    <div className="unseen">
      <table>
        <caption>{label}</caption>
        <thead>
          <tr>
            <th scope="col">frequency</th>
            {picture.curves.map((curve) => (
              <th key={curve.id} scope="col">
                {curve.name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {OCTAVES_HZ.map((hz) => (
            <tr key={hz}>
              <th scope="row">{frequencyText(hz)}</th>
              {picture.curves.map((curve) => (
                <td key={curve.id}>{readingOf(picture, curve, hz)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
