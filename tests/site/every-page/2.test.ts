import { describe } from 'vitest';

import { everyPage } from '../every-page.ts';
import { shareOf } from '../pages.ts';

describe.each(shareOf(import.meta.filename))('/%s', everyPage);
