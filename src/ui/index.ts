export { App } from './App.tsx';
export { answerShown } from './afterFirstPicture.ts';
export { keptName } from './frame/keptName.ts';
export { NO_SERVICES, type PageServices, PageServicesContext, type StartingPoint } from './PageServices.ts';
export { useWorkbench } from './useWorkbench.ts';
export { useWorkbenchStore } from './useWorkbenchStore.ts';
export { WorkbenchContext } from './WorkbenchContext.ts';
