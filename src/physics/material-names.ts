/** What the materials are called, and what must be said of some: words that only those pages load which show them. */
import type { MaterialId } from './materials.ts';

export const materialNames: Readonly<Record<MaterialId, string>> = {
  musicWire: 'music wire (plain high-carbon steel)',
  nickelPlatedSteel: 'nickel-plated steel',
  nickel: 'nickel, commercially pure',
  stainless430: 'stainless steel, grade 430',
  stainless304: 'stainless steel, grade 304',
  copper: 'copper, silver-plated or plain',
  phosphorBronze: 'phosphor bronze, 95/5',
  phosphorBronze92: 'phosphor bronze, 92/8',
  bronze8020: '80/20 bronze',
  nylon: 'nylon 6,6, drawn',
  fluorocarbon: 'fluorocarbon (polyvinylidene fluoride, PVDF), drawn',
  gut: 'gut, twisted',
};

export const materialNotes: Readonly<Partial<Record<MaterialId, string>>> = {
  musicWire: 'stiffness of wire up to 0.032 in; 200 GPa up to 0.063 in',
  nickelPlatedSteel: 'taken as steel; the plating, of unknown thickness, only adds weight',
  phosphorBronze92:
    'a packet seldom says which phosphor bronze it holds: the two differ by less than a per cent',
  nylon:
    'stiffness grows with stress and with the speed of the pull, and strings come in two groups of density that differ by a factor of two in stretch; the range is wide on purpose',
  fluorocarbon: 'behaves much as nylon does, somewhat stiffer; the range is wide on purpose',
  gut: 'equally stiff at every pull, unlike nylon; weight and pull follow the humidity; twist and make move its strength',
};
