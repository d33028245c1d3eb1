/** What it costs to listen to one pluck, 1.5 s at 48 kHz, from a bass's low B to high on a neck, with all that makes it hard. */
import { listen } from '../../src/physics/listen.ts';
import { sound } from '../physics/plucked.ts';
import { median, rounded, rounds } from './race.mjs';

const plucks = {
  'low B, 31 Hz': { fundamental: 31, inharmonicity: 1e-4 },
  'low E, 82 Hz': { fundamental: 82.4, inharmonicity: 8e-5 },
  'high E, 330 Hz': { fundamental: 329.6, inharmonicity: 2e-5 },
  '659 Hz': { fundamental: 659.3, inharmonicity: 8e-5 },
};
const second = { level: 0.3, cents: 1.2, decay: 0.6 };

/** Of the processor, which others on the same machine don't lengthen as they do the clock's */
const milliseconds = (run) => {
  const start = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
};

/** Prints times and judges nothing. */
export function benchListen() {
  const rows = {};
  let first;
  for (const [name, pluck] of Object.entries(plucks)) {
    const row = {};
    for (const [kind, more] of Object.entries({ 'rings alone': {}, beats: { second } })) {
      const heard = sound({ ...pluck, most: 80, ...more }, 5);
      first ??= milliseconds(() => listen(heard));
      const times = Array.from({ length: rounds }, () => milliseconds(() => listen(heard)));
      row[`${kind}, ms`] = rounded(median(times));
      row[`${kind}, slowest ms`] = rounded(Math.max(...times));
    }
    rows[name] = row;
  }
  console.log('\nWhat it costs to listen to 1.5 s of sound at 48 kHz, in time of the processor');
  console.table(rows);
  console.log(`The first time, with nothing compiled yet: ${rounded(first)} ms`);
}

if (import.meta.main) benchListen();
