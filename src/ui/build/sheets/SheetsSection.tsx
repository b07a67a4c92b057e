import type { SheetLayout } from '../../../core/build/sheets/index.ts';
import { formatNumber } from '../../../core/units/formatNumber.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { ProblemList } from '../ProblemList.tsx';
import type { Build } from '../read/readBuild.ts';
import { sizeText } from '../read/sizeWords.ts';
import { CutsTable } from './CutsTable.tsx';
import { boardGroups, cuttingJobOf } from './cuttingJobOf.ts';
import { SheetDrawing } from './SheetDrawing.tsx';
import './sheets.css';
import { type SheetLayouts, useSheetLayouts } from './useSheetLayouts.ts';

const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** How the panels lie on the boards that are bought, board by board. */
export function SheetsSection({ build, cabinets }: { readonly build: Build; readonly cabinets: number }) {
  const found = useSheetLayouts(cuttingJobOf(build, cabinets), build);
  const made = found.about ?? build;
  const { stock } = build.project.enclosure.wood;
  const system = useWorkbench((s) => s.settings.units);
  const size = sizeText([stock.lengthM, stock.widthM], system);
  return (
    <section className="build-section" aria-labelledby="build-sheets">
      <h2 id="build-sheets">On the boards</h2>
      <p className="build-about">
        Boards of {size}, saw cut {sizeText([stock.kerfM], system)}, {sizeText([stock.trimM], system)} trimmed off each
        edge. Every cut goes straight through the piece that it is made in. Hatched: off-cuts.
      </p>
      <Progress found={found} />
      <div className="sheet-groups" data-stale={found.stale ? '' : undefined} aria-busy={found.stale}>
        {boardGroups(made).map(({ millimetres }, group) => {
          const layout = found.layouts[group];
          if (layout === undefined) return null;
          return (
            <section key={millimetres} className="sheet-group" aria-label={`Boards of ${millimetres} mm`}>
              <h3>{millimetres} mm thick</h3>
              {layout.ok ? (
                <Boards layout={layout.value} build={made} thick={millimetres} found={found} />
              ) : (
                <ProblemList
                  problems={layout.problems.map((flaw) => ({
                    ...flaw,
                    values: { ...flaw.values, name: partName(made, flaw.place.id ?? '').name },
                  }))}
                />
              )}
            </section>
          );
        })}
      </div>
    </section>
  );
}

/** How far the search is. Always there, so that what it says is announced. */
function Progress({ found }: { readonly found: SheetLayouts<Build> }) {
  const { state, stale, share, stop } = found;
  const searching = stale || state === 'waiting' || state === 'searching';
  return (
    <div className="sheet-progress">
      <span role="status">
        {state === 'failed' && !stale
          ? 'The boards could not be laid out: this browser did not start the search. Load the page again.'
          : stale
            ? 'Working out a new layout; the one below is from before the change.'
            : searching
              ? 'Looking for a layout with fewer boards.'
              : state === 'stopped'
                ? 'Stopped: this is the best of what was found so far.'
                : ''}
      </span>
      {searching ? (
        <>
          <progress max={1} value={stale ? 0 : share} aria-label="Search for a layout" />
          {stale ? null : (
            <button type="button" className="frame-button" onClick={stop}>
              Stop
            </button>
          )}
        </>
      ) : null}
    </div>
  );
}

function partName({ lines, names }: Build, partId: string): { readonly mark: string; readonly name: string } {
  const line = lines.find((candidate) => candidate.partId === partId);
  return { mark: line?.mark ?? '?', name: (line?.panels ?? [partId]).map(names.panel).join(' / ') };
}

/** Whether fewer boards would do: what is known, and what is not. */
function verdict({ sheets, provedOptimal, lowerBound }: SheetLayout, state: SheetLayouts<Build>['state']): string {
  if (provedOptimal) return 'No layout needs fewer: proved.';
  const least = `at least ${lowerBound} ${lowerBound === 1 ? 'is' : 'are'} needed`;
  if (state !== 'done') return `The best found so far; ${least}.`;
  return `The best found, not proved the least: ${least}, and whether fewer than ${sheets.length} would do is not known.`;
}

function Boards({
  layout,
  build,
  thick,
  found,
}: {
  readonly layout: SheetLayout;
  readonly build: Build;
  readonly thick: string;
  readonly found: SheetLayouts<Build>;
}) {
  const system = useWorkbench((s) => s.settings.units);
  const { grained, kerfM } = build.project.enclosure.wood.stock;
  const nameOf = (partId: string) => partName(build, partId);
  return (
    <>
      <p className="sheet-verdict">
        <b>{count(layout.sheets.length, 'board', 'boards')}</b>, {formatNumber(layout.wasteFraction * 100, 2)} % waste
        (saw cuts, trimmed edges and off-cuts). {verdict(layout, found.state)}
      </p>
      {layout.sheets.map((plan, i) => {
        const title = `board ${i + 1} of ${layout.sheets.length}, ${thick} mm`;
        const marks = [...new Set(plan.parts.map(({ partId }) => partId))].map((partId) => {
          const { mark, name } = nameOf(partId);
          return `${mark} ${name} × ${plan.parts.filter((part) => part.partId === partId).length}`;
        });
        return (
          <figure key={title} className="sheet-figure">
            <figcaption>
              <b>{title[0]!.toUpperCase() + title.slice(1)}</b>: {marks.join(', ')}
            </figcaption>
            <SheetDrawing
              plan={plan}
              nameOf={nameOf}
              grained={grained}
              system={system}
              label={`${title}: ${marks.join(', ')}`}
            />
            <CutsTable plan={plan} kerfM={kerfM} markOf={(partId) => nameOf(partId).mark} title={title} />
          </figure>
        );
      })}
    </>
  );
}
