const contents = { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 };

export const folds = {
  style: 'twin-sleeve',
  units: 'mm',
  contents,
  stock: { size: 'iso-a3', caliper: '0.25 mm' },
};
export const refused = { style: 'twin-sleeve', units: 'in', contents, stock: { size: 'craft-12x12' } };
export const unreadable = { ...folds, contents: { item: { width: 'wide', height: '1 in' } } };
export const warned = {
  ...folds,
  stock: { size: 'iso-a3', caliper: '0.6 mm', oneWay: true, printPair: 'same-way' },
};

const circle = (diameter: string) => ({ shape: 'circle', diameter });
const onFront = { place: 'front cover' };

/** With things to cut out that the checks say something about, and pieces from another paper. */
export const cut = {
  ...folds,
  knockouts: [
    {
      kind: 'figure',
      on: onFront,
      figure: circle('60 mm'),
      inlay: { margin: '6 mm', frame: { width: '8 mm' } },
    },
    {
      kind: 'figure',
      on: { ...onFront, anchor: 'bottom', offset: { up: '30 mm' } },
      figure: { lettering: 'Light', height: '16 mm' },
    },
  ],
};

/** With something that must not be cut out. */
export const forbidden = {
  ...folds,
  knockouts: [{ kind: 'figure', on: onFront, figure: circle('118 mm'), through: 'every-layer' }],
};
