// The tags that a lab may use.
import Caution from '../../components/Caution.astro';
import Cite from '../../components/Cite.astro';
import Derivation from '../../components/Derivation.astro';
import LabReadings from '../../components/LabReadings.astro';
import LabSetup from '../../components/LabSetup.astro';
import SideNote from '../../components/SideNote.astro';
import Step from '../../components/Step.astro';
import Term from '../../components/Term.astro';

export const components = {
  Caution,
  Cite,
  Derivation,
  Lab: LabReadings,
  Setup: LabSetup,
  SideNote,
  Step,
  Term,
};
