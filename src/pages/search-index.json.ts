// The search's index: every piece of text that it can find, written once at build.
import { getCollection, render } from 'astro:content';
import { pieces } from '../components/search/documents.ts';

export async function GET(): Promise<Response> {
  const chapters = await Promise.all(
    (await getCollection('course')).map(async (chapter) => {
      const { headings } = await render(chapter);
      return {
        id: chapter.id,
        ...chapter.data,
        body: chapter.body ?? '',
        headings: headings.filter(({ depth }) => depth === 2 || depth === 3),
      };
    }),
  );
  const labs = (await getCollection('labs')).map(({ id, data }) => ({ id, ...data }));
  return new Response(JSON.stringify(pieces(chapters, labs)), {
    headers: { 'Content-Type': 'application/json' },
  });
}
