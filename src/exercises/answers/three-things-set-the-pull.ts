import { plainMass } from '../../figures/quantities/three-things-set-the-pull.ts';
