import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

/** A folder's files NN-name.mdx, which stand in the order of their number and go by their name. */
const numbered = (base: string) =>
  glob({
    pattern: '*.mdx',
    base,
    generateId: ({ entry }) => entry.replace(/^\d+-/, '').replace(/\.mdx$/, ''),
  });

const headed = {
  title: z.string(),
  number: z.number().int().positive(),
};

/** The chapters. */
const course = defineCollection({
  loader: numbered('./content/course'),
  schema: z.object({
    ...headed,
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

/** The labs. */
const labs = defineCollection({
  loader: numbered('./content/labs'),
  schema: z.object({
    ...headed,
    /** the drawing of its set-up */
    part: z.string(),
    /** what you'll find out */
    question: z.string(),
    summary: z.string(),
    minutes: z.number().positive(),
    /** what has to be there */
    needs: z.array(z.string()).min(1),
    /** the columns of its table for paper */
    sheet: z.array(z.string()).min(1),
    readings: z.number().int().positive(),
    /** what is written in below that table; predicted and measured when left out */
    after: z.array(z.string()).min(1).optional(),
    /** the chapter that it belongs to, by its slug */
    chapter: z.string(),
  }),
});

export const collections = { course, labs };
