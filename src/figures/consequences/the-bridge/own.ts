/** The bridge that the reader has measured, as the state carries it: what differs from the one on the bench. */
import { benchBridge, type Measured } from '../../../instrument/bench-bridge.ts';
import type { Drawn, DrawnName } from '../../../instrument/drawn.ts';
import { unlessUsual } from '../../trial.ts';

const names = {
  stringArm: 'string-arm',
  springArm: 'spring-arm',
  rate: 'rate',
  pitch: 'pitch',
  count: 'springs',
} as const satisfies Partial<Record<keyof Measured, DrawnName>>;
const parts = Object.keys(names) as readonly (keyof typeof names)[];

export const bridgeOf = (drawn: Drawn): Measured => ({
  ...benchBridge,
  ...Object.fromEntries(parts.map((part) => [part, drawn[names[part]] ?? benchBridge[part]])),
});

export const drawnOf = (bridge: Measured): Partial<Record<DrawnName, number | undefined>> =>
  Object.fromEntries(
    parts.map((part) => [names[part], unlessUsual(bridge[part], benchBridge[part])]),
  );
