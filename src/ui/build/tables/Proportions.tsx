import { PROPORTIONS, proportionsFor } from '../../../core/build/panels/index.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { Length } from '../Length.tsx';
import { litres } from '../litres.ts';
import type { Build } from '../read/readBuild.ts';
import { Scrolling } from '../Scrolling.tsx';

const RATIO_NAMES: Readonly<Record<(typeof PROPORTIONS)[number]['id'], string>> = {
  golden: 'golden ratio: width 1, height 1.62, depth 0.62',
  'cube-roots': 'cube roots of two: width 1, height 1.26, depth 0.79',
};

/** Other sizes for the same air, for who wants one; nothing is changed by it. */
export function Proportions({ build }: { readonly build: Build }) {
  const system = useWorkbench((s) => s.settings.units);
  if (!build.volumes.ok) return null;
  const { innerM3 } = build.volumes.value;
  return (
    <details className="build-section build-screen">
      <summary>Other proportions for the same {litres(innerM3, system)} inside, if you want them</summary>
      <p className="build-about">
        Ratios that keep two sizes from being multiples of each other: common practice, no source. Inside sizes of the
        whole cabinet, boards between chambers not counted.
      </p>
      <Scrolling label="Other proportions">
        <table className="build-table">
          <caption className="unseen">Other proportions</caption>
          <thead>
            <tr>
              <th scope="col">proportions</th>
              <th scope="col">width, mm</th>
              <th scope="col">height, mm</th>
              <th scope="col">depth, mm</th>
            </tr>
          </thead>
          <tbody>
            {PROPORTIONS.map(({ id, ratio }) => {
              const { widthM, heightM, depthM } = proportionsFor(innerM3, ratio);
              return (
                <tr key={id}>
                  <th scope="row">{RATIO_NAMES[id]}</th>
                  <td>
                    <Length of={widthM} />
                  </td>
                  <td>
                    <Length of={heightM} />
                  </td>
                  <td>
                    <Length of={depthM} />
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scrolling>
    </details>
  );
}
