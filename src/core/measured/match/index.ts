export * from './channelMatch.ts';
export * from './channelPolarity.ts';
export * from './judgeDifference.ts';
export * from './levelDifference.ts';
export * from './matchWindows.ts';
