/** What a table's heading says: which column it is, and in which unit. */
const columnNames = [
  'doubt',
  'how',
  'stock',
  'weight',
  'gauge',
  'kind',
  'family',
  'label',
] as const;
export type Column = (typeof columnNames)[number];

// The first that fits: "± of the weight" is no weight, "how it is known" no name.
const words: Readonly<Record<Column, RegExp>> = {
  doubt: /doubt|uncertain|±|\+\/-|plus or minus|\berror/,
  how: /\bhow\b|origin|\bsource/,
  stock: /stock|\bhave\b|\bqty\b|quantity|\bcount\b|in hand/,
  weight: /weight|density|\bmass\b|\bg ?\/ ?m\b|\blbs? ?\/ ?in\b/,
  gauge: /gauge|diameter|\bdia\b|\bsize\b|thickness|ø/,
  kind: /\bkind\b|\btype\b|\bwound\b|construction/,
  family: /family|material|made for/,
  label: /label|\bname\b|remark|\bnotes?\b|description|place|\bbox\b/,
};

export const columnOf = (heading: string): Column | undefined => {
  const text = heading.toLowerCase();
  return columnNames.find((name) => words[name].test(text));
};

export type GaugeUnit = 'thousandths' | 'in' | 'mm';
export type WeightUnit = 'g/m' | 'lb/in' | 'kg/m';
export const gaugeUnits: readonly GaugeUnit[] = ['thousandths', 'in', 'mm'];
export const weightUnits: readonly WeightUnit[] = ['g/m', 'lb/in', 'kg/m'];

/** The unit of a gauge, in a heading or behind a number. */
export function gaugeUnitIn(text: string): GaugeUnit | undefined {
  const said = text.toLowerCase();
  if (/thou|\bmils?\b|0\.001|1\/1000/.test(said)) return 'thousandths';
  if (/\bmm\b|millimet/.test(said)) return 'mm';
  return /\bin\b\.?(?! ?stock)|\binch|["″”]/.test(said) ? 'in' : undefined;
}

export function weightUnitIn(text: string): WeightUnit | undefined {
  const said = text.toLowerCase().replace(/\s*(?:\/|per|p\.)\s*/g, '/');
  if (/\b(?:kg|kilograms?)\/(?:m\b|met)/.test(said)) return 'kg/m';
  if (/\b(?:g|grams?|grammes?)\/(?:m\b|met)/.test(said)) return 'g/m';
  return /\b(?:lbs?|pounds?)\/in/.test(said) ? 'lb/in' : undefined;
}
