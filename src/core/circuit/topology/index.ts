import type { Problem } from '../../messages/problem.ts';
import type { Branch } from '../branch.ts';
import { duplicateIds } from './duplicateIds.ts';
import { floatingNodes } from './floatingNodes.ts';
import { flooredResistances } from './flooredResistances.ts';
import { idealSources } from './idealSources.ts';
import { oneNodeBranches } from './oneNodeBranches.ts';
import { shortedSources } from './shortedSources.ts';

type Rule = (branches: readonly Branch[]) => Problem[];

/** A circuit that breaks one of these cannot be solved. */
export const TOPOLOGY_RULES: readonly Rule[] = [duplicateIds, idealSources, shortedSources, floatingNodes];
/** What can be solved, but should be said. */
export const TOPOLOGY_REMARKS: readonly Rule[] = [oneNodeBranches, flooredResistances];
