import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App, PageServicesContext, WorkbenchContext } from '../ui/index.ts';
import { openPage } from './openPage.ts';

const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no element #root.');
const { store, services } = await openPage();
createRoot(root).render(
  <StrictMode>
    <WorkbenchContext value={store}>
      <PageServicesContext value={services}>
        <App />
      </PageServicesContext>
    </WorkbenchContext>
  </StrictMode>,
);
