import { RefusalLine } from '../frame/RefusalLine.tsx';
import { useCalmWorkbench } from '../useCalmWorkbench.ts';
import { Advice } from './Advice.tsx';
import './build.css';
import './print.css';
import { Clashes } from './Clashes.tsx';
import { BoardFields } from './edit/BoardFields.tsx';
import { BraceFields } from './edit/BraceFields.tsx';
import { EditGroup } from './edit/EditGroup.tsx';
import { FittingFields } from './edit/FittingFields.tsx';
import { PanelFields } from './edit/PanelFields.tsx';
import { StockFields } from './edit/StockFields.tsx';
import { ProblemList } from './ProblemList.tsx';
import { buildNames } from './read/buildNames.ts';
import { readBuild } from './read/readBuild.ts';
import { SheetHead } from './SheetHead.tsx';
import { SheetsSection } from './sheets/SheetsSection.tsx';
import { CutListTable } from './tables/CutListTable.tsx';
import { HolesTable } from './tables/HolesTable.tsx';
import { Proportions } from './tables/Proportions.tsx';
import { VolumesTable } from './tables/VolumesTable.tsx';
import { WavesTable } from './tables/WavesTable.tsx';

/** How the cabinet is made, to the left, and the sheet that is printed. */
export function BuildSheet({
  cabinets,
  setCabinets,
}: {
  readonly cabinets: number;
  readonly setCabinets: (cabinets: number) => void;
}) {
  const { project } = useCalmWorkbench((s) => ({ project: s.project }));
  const build = readBuild(project);
  return (
    <div className="build-columns">
      <aside className="build-edit" aria-label="How it is made">
        <RefusalLine />
        <EditGroup title="Panels, joints, shape">
          <PanelFields />
        </EditGroup>
        <EditGroup title="Boards, saw, number of cabinets">
          <StockFields cabinets={cabinets} setCabinets={setCabinets} />
        </EditGroup>
        <EditGroup title="Braces">
          <BraceFields />
        </EditGroup>
        <EditGroup title="Crossover board">
          <BoardFields />
        </EditGroup>
        <EditGroup title="Fitting of the drivers">
          <FittingFields />
        </EditGroup>
      </aside>
      <div className="build-paper">
        <SheetHead project={project} cabinets={cabinets} />
        {build.ok ? (
          <>
            <Clashes build={build.value} />
            <CutListTable build={build.value} cabinets={cabinets} />
            <HolesTable build={build.value} />
            <SheetsSection build={build.value} cabinets={cabinets} />
            <VolumesTable build={build.value} />
            <WavesTable build={build.value} />
            <Proportions build={build.value} />
          </>
        ) : (
          <section className="build-section build-faults" aria-labelledby="build-cannot">
            <h2 id="build-cannot">This cabinet cannot be cut as it stands</h2>
            <ProblemList problems={build.problems.map(buildNames(project).named)} />
          </section>
        )}
        <Advice />
      </div>
    </div>
  );
}
