import type { Panel, PanelCutOut } from '../../../core/build/panels/index.ts';
import { Length } from '../Length.tsx';
import type { Build } from '../read/readBuild.ts';
import { Scrolling } from '../Scrolling.tsx';

/** Where every hole is bored or sawn, from the edges of its own panel. */
export function HolesTable({ build }: { readonly build: Build }) {
  const { panels, guessed } = build;
  const holes = panels.flatMap((panel) => panel.cutOuts.map((hole) => ({ panel, hole })));
  if (holes.length === 0) return null;
  const isGuess = (hole: PanelCutOut): boolean => hole.kind === 'driver' && guessed.has(driverOf(hole.id, build));
  return (
    <section className="build-section" aria-labelledby="build-holes">
      <h2 id="build-holes">Holes</h2>
      <p className="build-about">
        From the left and the bottom edge of each panel, its outer face towards you (a lying board from above, front
        edge at the bottom). Diameters, not radii. Once in each cabinet.
      </p>
      {holes.some(({ hole }) => isGuess(hole)) ? (
        <p className="build-warn">
          Marked “guess”: a share of the driver’s outer diameter, since its sheet states nothing (common practice, no
          source). Measure the driver that you have in hand before you cut.
        </p>
      ) : null}
      <Scrolling label="Holes">
        <table className="build-table">
          <caption className="unseen">Holes</caption>
          <thead>
            <tr>
              <th scope="col">for</th>
              <th scope="col">in panel</th>
              <th scope="col">centre from left, mm</th>
              <th scope="col">from bottom, mm</th>
              <th scope="col">through, mm</th>
              <th scope="col">recess, mm</th>
              <th scope="col">screws</th>
            </tr>
          </thead>
          <tbody>
            {holes.map(({ panel, hole }) => (
              <Hole key={`${panel.id} ${hole.id}`} panel={panel} hole={hole} build={build} guess={isGuess(hole)} />
            ))}
          </tbody>
        </table>
      </Scrolling>
    </section>
  );
}

/** Id of the driver that a speaker part is. */
function driverOf(partId: string, { project }: Build): string {
  const part = project.network.parts.find(({ id }) => id === partId);
  return part?.kind === 'speaker' ? part.driverId : '';
}

function Hole({
  panel,
  hole,
  build: { names },
  guess,
}: {
  readonly panel: Panel;
  readonly hole: PanelCutOut;
  readonly build: Build;
  readonly guess: boolean;
}) {
  const [acrossM, upM] = hole.at;
  return (
    <tr>
      <th scope="row">{hole.kind === 'window' ? 'opening' : names.thing(hole.id)}</th>
      <td>{names.panel(panel.id)}</td>
      <td>
        <Length of={acrossM} />
      </td>
      <td>
        <Length of={upM} />
      </td>
      <td>
        {'acrossM' in hole ? (
          <Length of={[hole.acrossM, ' across × ', hole.upM, ' up']} />
        ) : (
          <Length of={['Ø ', hole.throughDiameterM]} />
        )}
        {guess ? <em className="build-guess"> guess</em> : null}
      </td>
      <td>
        {hole.kind !== 'driver' ? (
          '–'
        ) : hole.recess === null ? (
          'none'
        ) : (
          <Length of={['Ø ', hole.recess.diameterM, ' × ', hole.recess.depthM, ' deep']} />
        )}
      </td>
      <td>
        {hole.kind !== 'driver' ? (
          '–'
        ) : hole.screws === null || hole.screws.count === 0 ? (
          'not stated'
        ) : (
          <Length of={[`${hole.screws.count} on Ø `, hole.screws.circleDiameterM]} />
        )}
      </td>
    </tr>
  );
}
