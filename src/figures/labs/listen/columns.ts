/** What is kept of a pluck, as columns of a file. */
import { plainColumn } from '../kit/columns.ts';

export const heardColumns = [
  plainColumn('fundamental', 'pitch', 'Hz'),
  plainColumn('fundamentalDoubt', '± of the pitch', 'Hz'),
  plainColumn('inharmonicity', 'inharmonicity B', '1'),
  plainColumn('inharmonicityDoubt', '± of B', '1'),
  plainColumn('partials', 'partials', 'count'),
];
