import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

/** The chapters: content/course/NN-name.mdx, in the order of their number. */
const course = defineCollection({
  loader: glob({
    pattern: '*.mdx',
    base: './content/course',
    generateId: ({ entry }) => entry.replace(/^\d+-/, '').replace(/\.mdx$/, ''),
  }),
  schema: z.object({
    title: z.string(),
    number: z.number().int().positive(),
    part: z.string(),
    /** the opening line: what the chapter answers */
    question: z.string(),
    /** one sentence for lists and search results */
    summary: z.string(),
    /** what the reader can do afterwards */
    aim: z.string(),
    /** the time that reading, trying the figures and the exercises take together */
    minutes: z.number().positive(),
    /** the chapters that it builds on directly, by their slugs */
    needs: z.array(z.string()).default([]),
  }),
});

export const collections = { course };
