/** What the workshop's instruments are, in words. */
import about from '../../content/data/about.yaml';

/** "standard scale, six strings", by the instrument's id. */
export const aboutOf = (id: string): string =>
  (about as Readonly<Record<string, string>>)[id] ?? '';
