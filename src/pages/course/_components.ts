// The tags that a chapter may use. A figure or an exercise is made available to authors here.
import BenchNote from '../../components/BenchNote.astro';
import Caution from '../../components/Caution.astro';
import Cite from '../../components/Cite.astro';
import Derivation from '../../components/Derivation.astro';
import Eq from '../../components/Eq.astro';
import Figure from '../../components/Figure.astro';
import Guess from '../../components/Guess.astro';
import Numeric from '../../components/Numeric.astro';
import Q from '../../components/Q.astro';
import SideNote from '../../components/SideNote.astro';
import Step from '../../components/Step.astro';
import Teacher from '../../components/Teacher.astro';
import Term from '../../components/Term.astro';

export const components = {
  BenchNote,
  Caution,
  Cite,
  Derivation,
  Eq,
  Figure,
  Guess,
  Numeric,
  Q,
  SideNote,
  Step,
  Teacher,
  Term,
};
