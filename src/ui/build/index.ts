// The cabinet as wood: one chunk, fetched when the sheet is opened first. `BuildView.tsx` alone is part of the page before.
export { BuildActions } from './BuildActions.tsx';
export { BuildSheet } from './BuildSheet.tsx';
