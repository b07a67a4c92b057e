import type { Axis } from '../../../core/build/panels/index.ts';
import { formatNumber } from '../../../core/units/formatNumber.ts';
import { Length } from '../Length.tsx';
import { ProblemList } from '../ProblemList.tsx';
import type { Build } from '../read/readBuild.ts';
import { Scrolling } from '../Scrolling.tsx';

const BETWEEN: Readonly<Record<Axis, string>> = { x: 'side to side', y: 'bottom to top', z: 'front to back' };
const capital = (text: string): string => text[0]!.toUpperCase() + text.slice(1);

/** Standing waves between facing inner walls of each chamber, and sizes whose waves fall together. */
export function WavesTable({ build }: { readonly build: Build }) {
  const { waves, names } = build;
  if (!waves.ok) return <ProblemList problems={waves.problems.map(names.named)} />;
  const chambers = waves.value.filter(({ chamberId }) => !chamberId.startsWith('unused'));
  return (
    <section className="build-section" aria-labelledby="build-waves">
      <h2 id="build-waves">Standing waves</h2>
      <p className="build-about">
        At these frequencies the air of an empty chamber resonates between two facing walls; filling and braces shift
        and damp them.
      </p>
      <Scrolling label="Standing waves">
        <table className="build-table">
          <caption className="unseen">Standing waves</caption>
          <thead>
            <tr>
              <th scope="col">chamber</th>
              <th scope="col">between</th>
              <th scope="col">distance, mm</th>
              <th scope="col">first three</th>
            </tr>
          </thead>
          <tbody>
            {chambers.flatMap(({ chamberId, waves: own }) =>
              own.map(({ axis, distanceM, parallel, frequenciesHz }) => (
                <tr key={`${chamberId} ${axis}`}>
                  <th scope="row">{names.space(chamberId)}</th>
                  <td>
                    {BETWEEN[axis]}
                    {parallel ? '' : ', not parallel: of the middle'}
                  </td>
                  <td>
                    <Length of={distanceM} />
                  </td>
                  <td>{frequenciesHz.map((hz) => formatNumber(hz, 3)).join(', ')} Hz</td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      </Scrolling>
      {chambers.flatMap(({ chamberId, waves: own, warnings }) =>
        warnings.map(({ axes, ratio, whole }) => {
          const length = (axis: Axis): number => own.find((wave) => wave.axis === axis)!.distanceM;
          const [longer, shorter] = length(axes[0]) >= length(axes[1]) ? axes : ([axes[1], axes[0]] as const);
          const near = whole === 1 ? 'nearly the same as' : `${formatNumber(ratio, 3)} times, nearly ${whole} times,`;
          return (
            <p key={`${chamberId} ${axes.join('')}`} className="build-warn">
              {capital(names.space(chamberId))}: {BETWEEN[longer]} is {near} {BETWEEN[shorter]}, so that their waves
              fall together. Change one of the two, or line the walls that they stand between.
            </p>
          );
        }),
      )}
    </section>
  );
}
