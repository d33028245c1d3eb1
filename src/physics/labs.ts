/** What the labs need beside the rest of the physics: an entry of its own, so that no other page loads it. */
export * from './labs/hung.ts';
export * from './labs/judged.ts';
export * from './labs/line.ts';
export * from './labs/pushed-aside.ts';
export * from './labs/staircase.ts';
export * from './labs/weighed.ts';
