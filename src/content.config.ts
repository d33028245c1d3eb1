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

/** The labs: content/labs/NN-name.mdx, in the order of their number. */
const labs = defineCollection({
  loader: glob({
    pattern: '*.mdx',
    base: './content/labs',
    generateId: ({ entry }) => entry.replace(/^\d+-/, '').replace(/\.mdx$/, ''),
  }),
  schema: z.object({
    title: z.string(),
    number: z.number().int().positive(),
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
