/** What the lighthouse museum's craft evenings cut out of their folders. */

const chartPaper = { name: 'Harbour chart paper', width: '305 mm', height: '390 mm', caliper: '0.25 mm' };

const lamp = {
  style: 'twin-sleeve',
  stock: chartPaper,
  prefer: 'least-paper',
  contents: { item: { size: 'iso-a6' }, perPocket: 2 },
  dimensions: { hem: '24 mm' },
};

export const scenes = {
  'lamp-room': {
    ...lamp,
    knockouts: [
      {
        kind: 'figure',
        name: 'lamp',
        on: { place: 'front', anchor: 'top', offset: { down: '22 mm' } },
        figure: { shape: 'arch', width: '34 mm', height: '48 mm' },
        inlay: { margin: '6 mm', frame: { width: '4 mm', reveal: '1 mm' } },
      },
      {
        kind: 'figure',
        name: 'beams',
        on: { place: 'left hem' },
        figure: { shape: 'circle', diameter: '6 mm' },
        repeat: { repeat: 'edge', length: '84 mm', pitch: '14 mm' },
        turn: 90,
      },
      {
        kind: 'figure',
        name: 'star',
        on: { place: 'back', anchor: 'bottom', offset: { up: '30 mm' } },
        figure: { shape: 'star', points: 5, diameter: '34 mm' },
        through: 'every-layer',
      },
      { kind: 'thumb-notch', pocket: 'front pocket', offset: { down: '28 mm' } },
      { kind: 'thumb-notch', pocket: 'back pocket', offset: { down: '28 mm' } },
      { kind: 'rounded-corners', place: 'front cover', radius: '9 mm' },
      { kind: 'rounded-corners', place: 'back cover', radius: '9 mm' },
      {
        kind: 'ribbon-slots',
        on: { place: 'back', anchor: 'top', offset: { down: '20 mm' } },
        ribbon: '10 mm',
      },
    ],
  },
  'too-near': {
    ...lamp,
    knockouts: [
      {
        kind: 'figure',
        on: { place: 'front', offset: { left: '10.5 mm' } },
        figure: { shape: 'circle', diameter: '20 mm' },
      },
      {
        kind: 'figure',
        on: { place: 'front', offset: { right: '10.5 mm' } },
        figure: { shape: 'circle', diameter: '20 mm' },
      },
      {
        kind: 'figure',
        on: { place: 'front', anchor: 'bottom left', offset: { right: '3 mm', up: '20 mm' } },
        figure: { artwork: 'M0 0 H24 V24 H0 Z M6 6 V18 H18 V6 Z', width: '24 mm', bridges: 'none' },
      },
    ],
  },
} as const;

export type SceneName = keyof typeof scenes;
