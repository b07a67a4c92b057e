import { CrossingLine } from './CrossingLine.tsx';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { PendingCurveLine } from './PendingCurveLine.tsx';
import { ProblemsLine } from './ProblemsLine.tsx';
import { RefusalLine } from './RefusalLine.tsx';

/** What stands under the plots when there is cause: waiting columns, another project, a refusal, problems. */
export function Notices() {
  return (
    <>
      <ErrorBoundary panel="the measured columns">
        <PendingCurveLine />
      </ErrorBoundary>
      <CrossingLine />
      <RefusalLine />
      <ProblemsLine />
    </>
  );
}
