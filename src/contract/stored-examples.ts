import type { Example, Examples } from './example.ts';
import { exampleSecret, keptConvention, keptCutter, keptDesign, keptPaper } from './kept-examples.ts';

const unknownName = { parameters: { name: 'not there' } };

const listOf = (summary: string): readonly Example[] => [
  { name: 'first-page', summary, parameters: { limit: '20' } },
];

const readOf = (summary: string, name: string): readonly Example[] => [
  { name: 'kept', summary, parameters: { name } },
  { name: 'unknown', summary: 'Refused: nothing is kept under this name', ...unknownName },
];

const removalOf = (summary: string, name: string): readonly Example[] => [
  { name: 'known-version', summary, parameters: { name }, headers: { 'if-match': '"1"' } },
  {
    name: 'stale',
    summary: 'Refused: it was changed meanwhile',
    parameters: { name },
    headers: { 'if-match': '"7"' },
  },
];

const thanks = { parameters: { name: keptDesign.name } };
const link = { parameters: { secret: exampleSecret } };
const wrongLink = { parameters: { secret: 'mistyped' } };

/** Examples of what is kept by name, and of links; each finds the store as it was filled. */
export const storedExamples: Examples = {
  listConventions: listOf('The conventions of the museum shop'),
  readConvention: readOf('The convention for the museum’s cutter', keptConvention.name),
  keepConvention: [
    {
      name: 'new',
      summary: 'Keep a convention for a machine that only cuts',
      parameters: { name: 'no scoring tool' },
      body: { score: { as: 'perforation', inset: '3 mm' } },
    },
    {
      name: 'no-unit',
      summary: 'Refused: a kept length names its unit',
      parameters: { name: 'no scoring tool' },
      body: { score: { inset: 3 } },
    },
  ],
  removeConvention: removalOf('Remove the convention that was just read', keptConvention.name),
  listCutters: listOf('The machines of the craft evening'),
  readCutter: readOf('The machine on the bench', keptCutter.name),
  keepCutter: [
    {
      name: 'new',
      summary: 'Keep the limits of a small machine',
      parameters: { name: 'travel cutter' },
      body: { width: '216 mm', height: '297 mm', margin: '5 mm' },
    },
  ],
  removeCutter: removalOf('Remove the machine that was just read', keptCutter.name),
  listPapers: listOf('The papers in the cupboard'),
  readPaper: readOf('One paper with its owner’s notes', keptPaper.name),
  keepPaper: [
    {
      name: 'count',
      summary: 'Two sheets were used: change what was just read',
      parameters: { name: keptPaper.name },
      headers: { 'if-match': '"1"' },
      body: { ...keptPaper.value, count: 22 },
    },
    {
      name: 'lost-update',
      summary: 'Refused: somebody else has changed it meanwhile',
      parameters: { name: keptPaper.name },
      headers: { 'if-match': '"7"' },
      body: { ...keptPaper.value, count: 22 },
    },
  ],
  removePaper: removalOf('Remove the paper that was just read', keptPaper.name),
  listDesigns: listOf('The designs of the museum shop'),
  readDesign: readOf('A design with its credit and licence', keptDesign.name),
  keepDesign: [
    {
      name: 'new',
      summary: 'Keep a design that names a paper and a convention of one’s own',
      parameters: { name: 'thank-you folder, wide' },
      body: {
        ...keptDesign.value,
        title: 'Thank-you folder, wide spine',
        spec: {
          ...keptDesign.value.spec,
          dimensions: { ...keptDesign.value.spec.dimensions, spine: '3/4 in' },
        },
      },
    },
    {
      name: 'names-nothing',
      summary: 'Refused: the spec names a paper that is not kept',
      parameters: { name: 'thank-you folder' },
      body: { ...keptDesign.value, spec: { ...keptDesign.value.spec, stock: 'sold out' } },
    },
  ],
  removeDesign: removalOf('Remove the design that was just read', keptDesign.name),
  listVersionsOfDesign: [{ name: 'versions', summary: 'The versions of a design', ...thanks }],
  readVersionOfDesign: [
    {
      name: 'first',
      summary: 'A design as it was at first',
      parameters: { name: keptDesign.name, version: '1' },
    },
  ],
  listSharesOfDesign: [{ name: 'links', summary: 'The links to a design', ...thanks }],
  shareDesign: [
    {
      name: 'until-the-craft-evening',
      summary: 'A link that ends with the craft evening',
      ...thanks,
      body: { expires: '2026-12-03T21:00:00Z' },
    },
  ],
  revokeShareOfDesign: [
    {
      name: 'revoke',
      summary: 'The link that was passed on too far',
      parameters: { name: keptDesign.name, id: 'link-0000001' },
    },
    {
      name: 'unknown',
      summary: 'Refused: there is no such link',
      parameters: { name: keptDesign.name, id: 'link-0000009' },
    },
  ],
  readSharedDesign: [
    { name: 'thank-you-folder', summary: 'The design behind a link', ...link },
    { name: 'mistyped', summary: 'Refused: a link that gives nothing', ...wrongLink },
  ],
  planSharedDesign: [
    { name: 'thank-you-folder', summary: 'The plan of the design behind a link', ...link, show: 'excerpt' },
  ],
  viewSharedDesign: [
    {
      name: 'closed',
      summary: 'The closed folder behind a link',
      parameters: { secret: exampleSecret, view: 'closed' },
    },
  ],
  guideSharedDesign: [
    { name: 'as-a-page', summary: 'The maker’s sheet behind a link', ...link, show: 'none' },
    { name: 'mistyped', summary: 'Refused: a link that gives nothing', ...wrongLink },
  ],
  drawSharedDesign: [
    {
      name: 'in-millimetres',
      summary: 'The drawing behind a link, in a starting convention',
      parameters: { secret: exampleSecret, convention: 'millimetres' },
    },
  ],
  drawSharedDesignAs: [
    {
      name: 'own-colours',
      summary: 'The drawing behind a link, in colours of the reader’s own',
      ...link,
      body: { convention: { layers: { cut: { colour: '#56B4E9' } } } },
    },
  ],
  listStartingConventions: [{ name: 'all', summary: 'Conventions to begin with' }],
};
