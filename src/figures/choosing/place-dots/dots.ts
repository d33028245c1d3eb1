/** The set moved to a neck that is a tenth longer: which gauge of the drawer comes nearest to the old pull, and by how much it misses. */
import { drawerOf, gaugeOf, physicalKind } from '../../../instrument/drawer.ts';
import { pullsOf } from '../../../instrument/pulls.ts';
import type { Gauge, Instrument } from '../../../instrument/schema.ts';
import { nearestPull } from '../../../physics/index.ts';

export const LONGER = 1.1;

export interface Dot {
  readonly note: string;
  readonly old: Gauge;
  readonly pick: Gauge;
  /** Of the pick's pull from the old one, as a share of it */
  readonly off: number;
}

/** From the highest string; those for which nothing in the drawer holds are left out. */
export const dotsOf = (mine: Instrument): readonly Dot[] =>
  pullsOf(mine).flatMap(({ note, gauge, tension, frequency, speakingLength, strain }): Dot[] => {
    if (strain === 'broken') return [];
    const { kind, family } = gauge;
    const found = nearestPull({
      speakingLength: speakingLength * LONGER,
      frequency,
      tension,
      drawer: drawerOf(family).constructions,
      kind: physicalKind(kind, family),
    });
    if (!found) return [];
    const pick = gaugeOf(found.construction, family);
    return [{ note, old: gauge, pick, off: found.tension / tension - 1 }];
  });
