/** The bench's ready-made beginnings, read from the data into states. */
import jobData from '../../content/data/jobs.yaml';
import type { State } from './schema.ts';
import { tunings } from './tunings.ts';
import { asTarget, initialState, workshopInstrument } from './workshop.ts';

interface JobData {
  readonly title: string;
  readonly mine: string;
  readonly other: string;
  readonly tuning: string;
  readonly aim?: number;
}

export interface Job {
  readonly title: string;
  readonly state: State;
}

/** Throws RangeError for an instrument or a tuning that the data don't name. */
export const jobs: readonly Job[] = (jobData as JobData[]).map(
  ({ title, mine, other, tuning, aim = 1 }) => {
    const tuned = tunings.find(({ id }) => id === tuning);
    if (!tuned)
      throw new RangeError(
        `tuning is "${tuning}"; permitted: ${tunings.map(({ id }) => id).join(', ')}`,
      );
    const state: State = {
      ...initialState,
      mine: workshopInstrument(mine),
      other: {
        ...asTarget(workshopInstrument(other)),
        strings: tuned.notes.map((note) => ({ note })),
      },
      aim: { ...initialState.aim, factor: aim },
    };
    return { title, state };
  },
);
