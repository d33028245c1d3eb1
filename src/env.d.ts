declare module '*.yaml' {
  const data: unknown;
  export default data;
}

declare namespace Astro {
  interface ClientDirectives {
    /** Comes alive at the first sign of a reader, or of one who turns to it: components/sign.ts */
    'client:sign'?: boolean | 'own' | 'answer';
  }
}

declare namespace App {
  /** What the tags of a chapter leave for its layout, which renders them first. */
  interface Locals {
    /** The chapter that is rendered, by its id: only its own quantities follow on its page */
    chapter?: string;
    /** ids of glossary entries */
    terms?: Set<string>;
    /** ids of sources, in the order of their first citation */
    cited?: Set<string>;
    /** parts of figures that words point to */
    parts?: Set<string>;
  }
}
