/**
 * Strings as pails: as wide as the section that carries, as high as its strength, filled as high as its stress. An area is then
 * a force: the whole pail is what the wire can hold, its filling what the note asks for.
 */
import { constructionOf, drawerOf } from '../../../instrument/drawer.ts';
import { isSoft } from '../../../instrument/family-names.ts';
import type { Gauge, Instrument } from '../../../instrument/schema.ts';
import {
  coreArea,
  linearDensity,
  pullAtPitch,
  strengthBounds,
  type Construction,
} from '../../../physics/index.ts';
import type { Span } from '../../kit/margin.ts';

export interface Pail {
  readonly gauge: Gauge;
  /** m² */
  readonly area: number;
  /** Pa; the weak and the strong end of what is known of the material */
  readonly strength: Span;
  readonly construction: Construction;
  /** kg/m a square metre of what carries, slack: the wire's density, or a core's that is burdened with its wrap */
  readonly burden: number;
}

/** Undefined for a string of which only the weight is known. */
function pailOf(gauge: Gauge): Pail | undefined {
  const c: Construction = constructionOf(gauge);
  const strength = strengthBounds(c);
  if (c.kind === 'measured' || !strength) return undefined;
  const area = coreArea(c);
  return { gauge, construction: c, area, strength, burden: linearDensity(c) / area };
}

/** Stress in Pa at a speaking length (m) and a pitch (Hz), and the pull in N that makes it. */
export function fillOf(
  { area, construction }: Pail,
  speakingLength: number,
  frequency: number,
): { readonly stress: number; readonly pull: number } {
  const pull = pullAtPitch({ construction, speakingLength, frequency });
  return { stress: pull / area, pull };
}

const nearest = (list: readonly number[], wanted: number): number =>
  list.reduce(
    (best, g) => (Math.abs(g - wanted) < Math.abs(best - wanted) ? g : best),
    list[0] ?? 0,
  );

/** Thousandths: five plain gauges of usual sets, and the thickest plain one that a wound string is commonly chosen against. */
const wire = [9, 11, 13, 17, 20];
const soft = [0, 0.25, 0.5, 0.75, 1];

/** Five plain strings of the drawer that the instrument is strung from, thin to thick, and a wound one as thick as the last. */
export function pailsOf({ strings }: Instrument): readonly Pail[] {
  const family = strings[0]?.family;
  const { plain, wound } = drawerOf(family).gauges;
  const [first = 0, last = 0] = [plain[0], plain.at(-1)];
  const wanted = isSoft(family) ? soft.map((share) => first + share * (last - first)) : wire;
  const thickest = nearest(plain, wanted.at(-1) ?? last);
  const gauges: Gauge[] = [
    ...wanted.map((g) => ({ kind: 'plain' as const, gauge: nearest(plain, g) })),
    { kind: 'wound' as const, gauge: nearest(wound, thickest) },
  ].map((g) => (family ? { ...g, family } : g));
  return gauges.flatMap((gauge) => pailOf(gauge) ?? []);
}
