/**
 * Svelte's runtime carries what this site has no use for: boundaries, awaited components, forks of the state, transitions, objects
 * that are watched property by property, props that are written to, components of the older way. Its own switches are variables,
 * which no minifier looks through, so a build takes the bodies of these functions away. What would need one of them is refused.
 */
const never = [
  [/\$\.proxy\(/, 'an object in $state: states are never mutated, use $state.raw'],
  [/\$\.boundary\(/, 'a <svelte:boundary>'],
  [/\$\.(transition|animation)\(/, 'a transition'],
  [/\$\.prop\(\$\$props, [^,]+, (?!(?:3|19)\b)/, 'a prop that is written to, mutated or bound'],
  [/\$\.set_style\(\w+, (?!'')[^;]+, styles/, 'a style beside a style directive'],
  [/<select[^>]*\smultiple/, 'a list in which several are chosen'],
];

const bodies = {
  'internal/client/proxy.js': {
    proxy: 'return value;',
    get_proxied_value: 'return value;',
    is: 'return Object.is(a, b);',
  },
  'internal/client/error-handling.js': {
    invoke_error_boundary:
      'if (error === HYDRATION_ERROR || !effect || !(effect.f & DESTROYED)) throw error;',
  },
  'internal/client/dom/blocks/boundary.js': {
    boundary: 'if (hydrating) hydrate_next(); branch(() => children(node));',
  },
  'internal/client/dom/blocks/each.js': {
    pause_effects: `
      if (controlled_anchor) {
        const { parentNode } = controlled_anchor;
        clear_text_content(parentNode);
        parentNode.append(controlled_anchor);
        state.items.clear();
      }
      for (const effect of to_destroy) destroy_effect(effect, !controlled_anchor);`,
  },
  'internal/client/dom/elements/bindings/select.js': {
    apply_default_select_value: '',
    select_option: `
      for (const option of select.options)
        if (get_option_value(option) === value) {
          option.selected = true;
          return;
        }
      if (!mounting || value !== undefined) select.selectedIndex = -1;`,
  },
  'internal/client/reactivity/async.js': { flatten: 'fn(sync.map(derived));' },
  'internal/client/reactivity/batch.js': {
    '#is_deferred': 'return false;',
    '#is_skipped': '',
    skip_effect: '',
    unskip_effect: '',
    register_created_effect: '',
    increment: '',
    decrement: '',
  },
  'internal/client/reactivity/effects.js': {
    pause_effect: 'if (destroy) destroy_effect(effect); callback?.();',
    resume_effect: '',
  },
  'internal/client/reactivity/props.js': {
    prop: `
      let made;
      const usual = flags & PROPS_IS_LAZY_INITIAL ? () => get((made ??= derived(fallback))) : () => fallback;
      return () => {
        const value = props[key];
        return value === undefined ? usual() : value;
      };`,
  },
  'internal/shared/attributes.js': {
    to_style:
      'return styles ? append_styles(styles).trim() || null : value == null ? null : String(value);',
  },
};

/** A branch that goes is gone at once. */
const modules = {
  'internal/client/dom/blocks/branches.js': `
import { branch, destroy_effect } from '../../reactivity/effects.js';
import { hydrate_node, hydrating } from '../hydration.js';
export class BranchManager {
  #shown = new Map();
  constructor(anchor) {
    this.anchor = anchor;
  }
  ensure(key, fn) {
    if (fn && !this.#shown.has(key)) this.#shown.set(key, branch(() => fn(this.anchor)));
    if (hydrating) this.anchor = hydrate_node;
    for (const [other, effect] of this.#shown)
      if (other !== key) {
        destroy_effect(effect);
        this.#shown.delete(other);
      }
  }
}`,
};

/** Variables that are always the same here. */
const constants = {
  'internal/client/dom/blocks/each.js': { is_animated: false },
  'internal/client/dom/blocks/await.js': { runes: true },
  'internal/client/dom/blocks/key.js': { legacy: false },
  'internal/client/reactivity/sources.js': { runes: true },
};

/** What is always so, wherever it is asked. */
const always = [
  [/\bis_runes\(\)(?! \{)/g, 'true'],
  [/\bshould_defer_append\(\)(?! \{)/g, 'false'],
  [/\bstate\.outrogroups !== null/g, 'false'],
  [/\b\w+\??\.is_fork\b(?! =)/g, 'false'],
  [/\.\.\.DOM_BOOLEAN_ATTRIBUTES,/, ''],
];

function emptied(code, [name, body]) {
  const found = new RegExp(
    `^(\\t?)((?:(?:export )?function )?${name}\\(.*\\) \\{)\\n[^]*?\\n\\1\\}`,
    'm',
  );
  if (!found.test(code)) throw new Error(`Svelte has no ${name} to be made leaner`);
  return code.replace(found, (_, indent, head) => `${indent}${head} ${body} }`);
}

const withConstant = (code, [name, value]) =>
  code
    .replace(new RegExp(`\\bvar ${name} = .*;`), '')
    .replaceAll(new RegExp(`\\b${name}\\b`, 'g'), value);

function leaner(code, file) {
  const lean = Object.entries(bodies[file] ?? {}).reduce(emptied, modules[file] ?? code);
  const fixed = Object.entries(constants[file] ?? {}).reduce(withConstant, lean);
  return always.reduce((text, [what, is]) => text.replace(what, is), fixed);
}

/** A plugin for what readers load, and for the tests of what reacts; the development server has all of Svelte. */
export function leanerRuntime({ inTests = false } = {}) {
  const left = new Set([bodies, modules, constants].flatMap(Object.keys));
  return {
    name: 'leaner-runtime',
    enforce: 'post',
    ...(!inTests && { apply: 'build', applyToEnvironment: ({ name }) => name === 'client' }),
    transform(code, id) {
      const file = id.split('/node_modules/svelte/src/')[1];
      if (file) {
        left.delete(file);
        return { code: leaner(code, file), map: null };
      }
      const refused = /\.svelte(\.ts)?$/.test(id) && never.find(([what]) => what.test(code));
      if (refused)
        this.error(`${id} has ${refused[1]}, which .tools/leaner-runtime.mjs leaves out`);
    },
    buildEnd() {
      if (left.size && !inTests) this.error(`Svelte has no ${[...left].join(', ')}`);
    },
  };
}
