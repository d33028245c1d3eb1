/** What is asked of a drawer of strings, and what it answers. */
import type { Aim, AimedResidual } from './aim.ts';
import type { Construction } from './construction.ts';
import type { BendAsked } from './feel.ts';

export interface Wanted {
  /** m */
  readonly speakingLength: number;
  /** Hz */
  readonly frequency: number;
  /** N */
  readonly tension: number;
  /** Only this kind; any kind when left out. */
  readonly kind?: Construction['kind'] | undefined;
  /** What to come near to: the pull, when left out. */
  readonly aim?: Aim;
  /** N and m, of the bend below; needed by an aim that weighs them. `feelOf` gives them for a reference string. */
  readonly push?: number | undefined;
  readonly travel?: number | undefined;
  readonly bend?: BendAsked | undefined;
}

export interface Candidate {
  readonly construction: Construction;
  /** N */
  readonly tension: number;
  /** Relative: 0.02 is two per cent above what was wanted. */
  readonly residual: number;
  /** Share of the minimum strength, where it is known. */
  readonly share: number | undefined;
}

export interface Match extends Candidate {
  /** The next lighter and the next heavier of the same kind choice, whether or not they would hold. */
  readonly lighter: Candidate | undefined;
  readonly heavier: Candidate | undefined;
  /** Set when the wanted pull lies beyond the drawer's lightest or heaviest. */
  readonly drawerEnd: 'lightest' | 'heaviest' | undefined;
  /** How far the pick is from each thing that the aim weighs; only when an aim other than the pull was given. */
  readonly aimed?: AimedResidual;
}
