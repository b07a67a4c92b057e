import './theme.css';
import { Suspense, useCallback, useState } from 'react';
import './App.css';
import { afterFirstPicture } from './afterFirstPicture.ts';
import { BuildView } from './build/BuildView.tsx';
import { ErrorBoundary } from './frame/ErrorBoundary.tsx';
import { PlotBoard } from './plots/index.ts';
import { useLook } from './useLook.ts';

const frame = () => import('./frame/index.ts');
const Header = afterFirstPicture(async () => (await frame()).Header);
const PlotBar = afterFirstPicture(async () => (await frame()).PlotBar);
const Notices = afterFirstPicture(async () => (await frame()).Notices);
const KeyStrip = afterFirstPicture(async () => (await frame()).KeyStrip);
const FindingsStrip = afterFirstPicture(async () => (await frame()).FindingsStrip);
const Lanes = afterFirstPicture(async () => (await import('./lanes/Lanes.tsx')).Lanes);

/**
 * The whole screen: the workbench, or the build sheet in its place; the workbench stays as it was meanwhile. The plots come first;
 * every panel keeps its own faults to itself.
 */
export function App() {
  useLook();
  const [building, setBuilding] = useState(false);
  const closeBuild = useCallback(() => setBuilding(false), []);
  return (
    <>
      <div className="app" hidden={building}>
        <div className="app-header">
          <ErrorBoundary panel="the top line">
            <Suspense>
              <Header onBuild={() => setBuilding(true)} />
            </Suspense>
          </ErrorBoundary>
        </div>
        <div className="app-answer">
          <ErrorBoundary panel="the plots">
            <PlotBoard
              bar={(pin) => (
                <Suspense>
                  <PlotBar pin={pin} />
                </Suspense>
              )}
            />
          </ErrorBoundary>
          <Suspense>
            <Notices />
          </Suspense>
          <ErrorBoundary panel="the key figures">
            <div className="app-key">
              <Suspense>
                <KeyStrip />
              </Suspense>
            </div>
          </ErrorBoundary>
        </div>
        <main className="app-lanes">
          <ErrorBoundary panel="the lanes">
            <Suspense fallback={<p className="app-wait">Laying out the lanes…</p>}>
              <Lanes />
            </Suspense>
          </ErrorBoundary>
        </main>
        <div className="app-findings">
          <ErrorBoundary panel="the findings">
            <Suspense>
              <FindingsStrip />
            </Suspense>
          </ErrorBoundary>
        </div>
      </div>
      <BuildView open={building} close={closeBuild} />
    </>
  );
}
