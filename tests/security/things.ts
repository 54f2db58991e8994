/** A folder of the museum's craft evening, which names nothing that is kept. */
export const folderSpec = {
  style: 'twin-sleeve',
  stock: { size: 'craft-12x12', caliper: '0.3 mm' },
  dimensions: { panel: { width: '4 in', height: '5 3/4 in' }, spine: '1/2 in' },
} as const;

export const cutter = { width: '12 in', height: '24 in' } as const;
