/** A build leaves out what no component needs of Svelte's runtime: a component that would need it is refused. */
import { compile } from 'svelte/compiler';
import { expect, test } from 'vitest';

import { leanerRuntime } from '../../.tools/leaner-runtime.mjs';

interface Plugin {
  transform: (this: { error: (what: string) => never }, code: string, id: string) => unknown;
}

function build(source: string): unknown {
  const { code } = compile(source, {
    filename: 'Tried.svelte',
    generate: 'client',
    runes: true,
  }).js;
  const error = (what: string) => {
    throw new Error(what);
  };
  return (leanerRuntime() as unknown as Plugin).transform.call({ error }, code, 'Tried.svelte');
}

test.each([
  ['an object in $state', '<script>let a = $state({ b: 1 });</script>{a.b}'],
  [
    'a value of unknown kind in $state',
    '<script>let { b } = $props(); let a = $state(b);</script>{a}',
  ],
  ['a <svelte:boundary>', '<svelte:boundary><p>a</p></svelte:boundary>'],
  ['a transition', "<script>import { fade } from 'svelte/transition';</script><p in:fade>a</p>"],
  ['a prop that is written to', '<script>let { a } = $props(); a = 1;</script>{a}'],
  ['a prop that is mutated', '<script>let { a } = $props(); a.b = 1;</script>{a.b}'],
  ['a prop that can be bound', '<script>let { a = $bindable(1) } = $props();</script>{a}'],
  [
    'a style beside a style directive',
    '<script>let { a } = $props();</script><p style="top: 0" style:left={a}>a</p>',
  ],
  ['a list in which several are chosen', '<select multiple><option>a</option></select>'],
])('%s is refused', (_, source) => {
  expect(() => build(source)).toThrow('leaves out');
});

test.each([
  ['a state that is replaced', '<script>let a = $state.raw({ b: 1 });</script>{a.b}'],
  ['props with a usual value', '<script>let { a = 1, b = a * 2 } = $props();</script>{a}{b}'],
  ['a style directive', '<script>let { a } = $props();</script><p style:left={a}>a</p>'],
  ['a style', '<script>let { a } = $props();</script><p style={a}>a</p>'],
])('%s is not', (_, source) => {
  expect(() => build(source)).not.toThrow();
});
