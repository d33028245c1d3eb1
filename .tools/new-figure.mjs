/**
 * `npm run new-figure the-lever feel`: makes the figure `the-lever` in the part Feel of the course, with its wrapper, its tag
 * and its test. It draws the length of the string in hand, to be dragged and typed: what to put in its place comes next.
 */
import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

import { Advice, main, root } from './toolchain.mjs';

const parts = ['pull', 'feel', 'choosing', 'consequences'];
const tagList = 'src/pages/course/_components.ts';
const handleWords = 'tests/figures/marks/handles.test.ts';

/** the-lever -> TheLever, theLever, The lever */
const pascal = (id) => id.replace(/(?:^|-)(\w)/g, (_, letter) => letter.toUpperCase());
const title = (id) => pascal(id.slice(0, 1)) + id.slice(1).replaceAll('-', ' ');

const component = (
  id,
) => `<!-- ${title(id)}: the length of the string in hand, from nut to saddle. -->
<script lang="ts">
  import type { State } from '../../../instrument/schema.ts';
  import Field from '../../kit/Field.svelte';
  import { useFigure } from '../../kit/figure.svelte.ts';
  import FigureData from '../../kit/FigureData.svelte';
  import Handle from '../../kit/Handle.svelte';
  import { lengthHand, parseLength, setLength } from '../../kit/one-string/hands.ts';
  import Said from '../../kit/Said.svelte';
  import Stage from '../../kit/Stage.svelte';
  import { describe, head, rows } from './describe.ts';
  import { across, frame, perMetre } from './frame.ts';

  const figure = useFigure();

  // Lines and handles follow every step; letters, numbers and words follow what is told.
  const hand = $derived(lengthHand(figure.state));
  const told = $derived(lengthHand(figure.told));

  const move = (metres: number): void => figure.set(setLength(figure.state, metres));
  const done = (): void => {
    figure.commit();
    figure.said = describe(figure.state);
  };
  const take = (next: State): void => {
    figure.change(next);
    figure.said = describe(figure.state);
  };
</script>

<div class="${id}" {@attach figure.watch}>
  <Stage width={frame.width} height={frame.height} summary={describe(figure.told)}>
    <line class="string" x1={frame.nut} x2={across(hand.value)} y1={frame.string} y2={frame.string} />
    <text x={frame.nut} y={frame.words}>{told.text}</text>
    {#snippet over()}
      <Handle
        {...hand}
        name="length"
        x={across(hand.value)}
        y={frame.string}
        stage={frame.width}
        unitsPerValue={perMetre}
        axis="x"
        onmove={move}
        ondone={done}
      />
    {/snippet}
  </Stage>
  <div class="row">
    <Field
      label={told.label}
      text={told.text}
      parse={(typed) => parseLength(figure.state, typed)}
      onvalue={(metres) => take(setLength(figure.state, metres))}
    />
  </div>
</div>
<FigureData name="${id}" {head} rows={() => rows(figure.state)} />
<Said text={figure.said} />

<style>
  .${id} {
    max-width: 34rem;
  }
  .string {
    stroke: var(--ink);
    stroke-width: var(--medium);
  }
  text {
    font: 600 13px var(--sans);
    fill: var(--ink);
  }
  .row {
    margin-top: var(--space-3);
  }
  @media print {
    .row {
      display: none;
    }
  }
</style>
`;

const frame = (id) => `/** The sheet of ${title(id)}, in its own units. */
import { limits } from '../../../instrument/limits.ts';

export const frame = { width: 360, height: 120, nut: 20, string: 60, words: 30, right: 340 } as const;

/** Units of drawing for a metre: the longest string of the site fits. */
export const perMetre = (frame.right - frame.nut) / limits.scale.max;

/** Where a length in m from the nut ends. */
export const across = (metres: number): number => frame.nut + metres * perMetre;
`;

const words = (id) => `/** ${title(id)} in words, and its data. */
import { formatLength, spokenNote } from '../../../instrument/format.ts';
import type { State } from '../../../instrument/schema.ts';
import { triedOf } from '../../trial.ts';

export function describe(state: State): string {
  const { tried } = triedOf(state);
  return \`The \${spokenNote(tried.note)} string, \${formatLength(tried.speakingLength, state.units)} from nut to saddle.\`;
}

export const head = ['string', 'length, m'];

export const rows = (state: State): (string | number)[][] => {
  const { tried } = triedOf(state);
  return [[tried.note, tried.speakingLength]];
};
`;

const wrapper = (id) => `---
// ${title(id)}. The slot is the caption: it says what to try.
import ${pascal(id)} from '../../figures/PART/${id}/${pascal(id)}.svelte';
import Figure from '../Figure.astro';
---

<Figure title="${title(id)}" id="${id}">
  <${pascal(id)} client:visible={{ rootMargin: '200px' }} />
  <Fragment slot="caption">
    <slot />
  </Fragment>
</Figure>
`;

const test = (id) => `import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';

import { describe as say, rows } from '../../src/figures/PART/${id}/describe.ts';
import { across, frame } from '../../src/figures/PART/${id}/frame.ts';
import ${pascal(id)} from '../../src/figures/PART/${id}/${pascal(id)}.svelte';
import { formatLength } from '../../src/instrument/format.ts';
import { limits } from '../../src/instrument/limits.ts';
import { lengthOf } from '../../src/instrument/pulls.ts';
import { initialState, workshop } from '../../src/instrument/workshop.ts';

describe.each(workshop.map((mine) => [mine.id, mine] as const))('on %s', (_, mine) => {
  const state = { ...initialState, mine };
  const length = lengthOf(mine, 0);

  it('says the length of the string in hand, and gives it as data', () => {
    expect(say(state)).toContain(formatLength(length, state.units));
    expect(rows(state)[0]?.[1]).toBe(length);
  });

  it('ends the string on the sheet', () => {
    expect(across(length)).toBeGreaterThan(frame.nut);
    expect(across(length)).toBeLessThan(frame.right);
  });
});

it('fits the longest string of the site', () => {
  expect(across(0)).toBe(frame.nut);
  expect(across(limits.scale.max)).toBeCloseTo(frame.right, 9);
});

it('draws the string as long as it is, and says so beside the drawing', () => {
  const { body } = render(${pascal(id)});
  expect(body).toContain(\`x2="\${across(lengthOf(initialState.mine, initialState.trial.string))}"\`);
  expect(body).toContain(say(initialState));
});
`;

const marks = (id) => `/** ${title(id)}: its drawing, read back from its marks. */
import { expect, test } from 'vitest';

import ${pascal(id)} from '../../../src/figures/PART/${id}/${pascal(id)}.svelte';
import { formatLength } from '../../../src/instrument/format.ts';
import { pullsOf } from '../../../src/instrument/pulls.ts';
import { sheetWith, wide } from './sheet.ts';
import { holding, inHand } from './states.ts';

test.each(inHand)('of %s, string %d: as long as it is, with the handle at its end', (id, string) => {
  const state = holding(id, string);
  const length = pullsOf(state.mine)[string]?.speakingLength ?? NaN;
  const sheet = sheetWith(state, ${pascal(id)});
  const line = sheet.one('line.string');
  expect(sheet.knobs[0]?.x).toBeCloseTo(line.right, 2);
  expect(sheet.texts).toContain(formatLength(length, state.units));
  // A longer string is drawn longer, in one scale.
  const tried = holding(id, string, { length: state.mine.scale.treble * 1.05 });
  expect(wide(sheetWith(tried, ${pascal(id)}).one('line.string')) / wide(line)).toBeCloseTo(1.05, 6);
});
`;

/** Every file of a figure, by its path. Throws Advice for a name or a part that can't be used. */
export function filesOf(id, part) {
  if (!/^[a-z]+(-[a-z]+)*$/.test(id ?? ''))
    throw new Advice(
      'Give the figure a name in small letters and hyphens: npm run new-figure the-lever feel',
    );
  if (!parts.includes(part))
    throw new Advice(
      `Say which part of the course it is for (${parts.join(', ')}): npm run new-figure ${id} feel`,
    );
  const folder = `src/figures/${part}/${id}`;
  const made = {
    [`${folder}/${pascal(id)}.svelte`]: component(id),
    [`${folder}/frame.ts`]: frame(id),
    [`${folder}/describe.ts`]: words(id),
    [`src/components/figures/${pascal(id)}.astro`]: wrapper(id),
    [`tests/figures/${id}.test.ts`]: test(id),
    [`tests/figures/marks/${id}.test.ts`]: marks(id),
  };
  return Object.fromEntries(
    Object.entries(made).map(([path, text]) => [path, text.replaceAll('PART', part)]),
  );
}

/** The list of tags with one more. */
export function withTag(list, id) {
  const name = pascal(id);
  return list
    .replace(
      '\nexport const components = {\n',
      `import ${name} from '../../components/figures/${name}.astro';\n$&  ${name},\n`,
    )
    .replace(/\n\n(import [^\n]*\n)\n?(?=export const)/, '\n$1\n');
}

/** The words of all handles with those of one more figure. */
export const withHandle = (table, id) =>
  table.replace(
    /(\nconst table: [^\n]* = \{\n)/,
    `$1  ${pascal(id)}: [{ ...length, typed: 'Speaking length' }],\n`,
  );

/** Writes a figure into a copy of the project. Throws Advice rather than write over a file. */
export async function makeFigure(into, id, part) {
  const files = filesOf(id, part);
  const taken = Object.keys(files).find((path) => existsSync(join(into, path)));
  if (taken) throw new Advice(`${taken} is there already: give the figure another name.`);
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(into, path)), { recursive: true });
    await writeFile(join(into, path), text);
  }
  for (const [path, longer] of [
    [tagList, withTag],
    [handleWords, withHandle],
  ]) {
    const list = await readFile(join(into, path), 'utf8');
    await writeFile(join(into, path), longer(list, id));
  }
  return [...Object.keys(files), tagList, handleWords];
}

if (process.argv[1] === import.meta.filename) {
  await main(async () => {
    const [id, part] = process.argv.slice(2);
    const written = await makeFigure(root, id, part);
    console.log(
      `${written.join('\n')}\nPut <${pascal(id)}> into a chapter, with its caption between the tags.`,
    );
  });
}
