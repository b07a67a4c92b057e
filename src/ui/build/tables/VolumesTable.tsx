import type { CabinetVolumes } from '../../../core/build/panels/index.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { litres } from '../litres.ts';
import { ProblemList } from '../ProblemList.tsx';
import { balanceOf } from '../read/balanceOf.ts';
import type { Build } from '../read/readBuild.ts';
import { Scrolling } from '../Scrolling.tsx';

/** Beyond this the wood and the prediction do not speak of the same box. */
const SAME_SHARE = 0.001;

/** What air each chamber has, what takes some of it, and that wood and air are the whole. */
export function VolumesTable({ build }: { readonly build: Build }) {
  const { volumes, names } = build;
  return (
    <section className="build-section" aria-labelledby="build-volumes">
      <h2 id="build-volumes">Air inside, one cabinet</h2>
      {volumes.ok ? (
        <Volumes build={build} volumes={volumes.value} />
      ) : (
        <ProblemList problems={volumes.problems.map(names.named)} />
      )}
    </section>
  );
}

function Volumes({ build, volumes }: { readonly build: Build; readonly volumes: CabinetVolumes }) {
  const system = useWorkbench((s) => s.settings.units);
  const figures = useWorkbench((s) => (s.problems.length === 0 ? s.evaluation?.keyFigures.chambers : undefined));
  const { names, project, read } = build;
  const shown = (m3: number): string => (m3 === 0 ? '–' : litres(m3, system));
  const balance = balanceOf(build.panels, volumes);
  const placed = project.enclosure.chambers.filter(({ volume }) => volume.kind === 'geometry');
  const idIn = (space: string): string => (space === 'inside' ? (placed[0]?.id ?? space) : space);
  const off = volumes.chambers.flatMap(({ chamberId, netM3 }) => {
    const figure = figures?.find(({ id }) => id === idIn(chamberId));
    return figure !== undefined && Math.abs(figure.netM3 / netM3 - 1) > SAME_SHARE
      ? [{ chamberId, netM3, predictedM3: figure.netM3 }]
      : [];
  });
  return (
    <>
      <Scrolling label="Volumes of the chambers">
        <table className="build-table build-table-figures">
          <caption className="unseen">Volumes of the chambers</caption>
          <thead>
            <tr>
              <th scope="col">chamber</th>
              <th scope="col">gross</th>
              <th scope="col">braces</th>
              <th scope="col">drivers</th>
              <th scope="col">ports</th>
              <th scope="col">crossover, other</th>
              <th scope="col">net</th>
            </tr>
          </thead>
          <tbody>
            {volumes.chambers.map((chamber) => (
              <tr key={chamber.chamberId}>
                <th scope="row">{names.space(chamber.chamberId)}</th>
                <td>{litres(chamber.grossM3, system)}</td>
                <td>{shown(chamber.bracesM3)}</td>
                <td>{shown(chamber.driversM3)}</td>
                <td>{shown(chamber.portsM3)}</td>
                <td>{shown(chamber.contentsM3)}</td>
                <td>
                  <b>{litres(chamber.netM3, system)}</b>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolling>
      <p className="build-about">
        Wood {litres(balance.woodM3, system)} + air {litres(balance.airM3, system)} + what stands in it{' '}
        {litres(balance.contentsM3, system)} make {litres(balance.woodM3 + balance.airM3 + balance.contentsM3, system)}.
        The outer volume is {litres(balance.outerM3, system)}, {(Math.abs(balance.offShare) * 100).toFixed(2)} % apart.
        Air in the cut-outs is not counted.
      </p>
      {off.map(({ chamberId, netM3, predictedM3 }) => (
        <p key={chamberId} className="build-warn">
          The prediction uses {litres(predictedM3, system)} in {names.space(chamberId)}; the boards leave{' '}
          {litres(netM3, system)}.
        </p>
      ))}
      {read.placeless.length > 0 ? (
        <p className="build-warn">
          These chambers have a volume but no place, so no dividers are drawn for them:{' '}
          {read.placeless.map(names.space).join(', ')}.
        </p>
      ) : null}
    </>
  );
}
