export { type CsvRecord, csvRecords } from './csvRecords.ts';
export { DRAWER_COLUMNS, type DrawerColumn, type DrawerKind, type DrawerPart } from './drawerPart.ts';
export { type DrawerCombination, nearestInDrawer } from './nearestInDrawer.ts';
export { readDrawer } from './readDrawer.ts';
export { writeDrawer } from './writeDrawer.ts';
