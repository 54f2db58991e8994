/** A class of nine, as the museum's volunteers hold it. */
export const evening = {
  title: 'Lamp room evening',
  kits: 9,
  units: 'mm',
  pieces: [
    {
      name: 'folder',
      make: {
        style: 'twin-sleeve',
        contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 },
      },
    },
    { name: 'tag', make: { style: 'tag' }, perKit: 2 },
    { name: 'mat', cut: { width: 90, height: 60 }, perKit: 4 },
  ],
  papers: [{ size: 'iso-a3', caliper: 0.25 }],
  ribbon: { around: 'folder' },
};
