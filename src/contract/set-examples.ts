import type { Examples } from './example.ts';

const craftEvening = {
  units: 'mm',
  kits: 12,
  pieces: [
    {
      name: 'folder',
      paper: 'Lamp room blue',
      minutes: 25,
      make: {
        style: 'twin-sleeve',
        units: 'mm',
        dimensions: { panel: { width: 90, height: 130 }, spine: 10, hem: 20, overlap: 15, topFlap: 60 },
      },
    },
    {
      name: 'card',
      paper: 'Chart white',
      perKit: 2,
      minutes: 2,
      make: { style: 'card-base', units: 'mm', dimensions: { panel: { width: 80, height: 110 } } },
    },
    { name: 'mat', paper: 'Chart white', perKit: 2, cut: { width: 70, height: 100 } },
    {
      name: 'tag',
      paper: 'Chart white',
      make: { style: 'tag', units: 'mm', dimensions: { panel: { width: 40, height: 75 } } },
    },
  ],
  papers: [
    {
      name: 'Lamp room blue',
      width: 305,
      height: 305,
      grammage: 216,
      oneWay: true,
      count: 5,
      packOf: 10,
      price: { perSheet: 0.9, currency: 'EUR' },
    },
    {
      name: 'Chart white',
      size: 'iso-a4',
      grammage: 270,
      packOf: 50,
      price: { perSheet: 0.2, currency: 'EUR' },
    },
  ],
  cutter: { width: 305, height: 610 },
  ribbon: { around: 'folder', metres: 10, price: { perPack: 3.5, currency: 'EUR' } },
  tape: { metres: 20, price: { perPack: 2.4, currency: 'EUR' } },
  post: { piece: 'folder' },
} as const;

/** Of the operations that plan a set for a number of kits. */
export const setExamples: Examples = {
  planSet: [
    {
      name: 'craft-evening',
      summary: 'Craft evening: twelve kits of a folder, two cards with mats, and a tag, with ribbon',
      body: craftEvening,
      show: 'excerpt',
    },
    {
      name: 'too-large-for-its-paper',
      summary: 'Refused: the folder is larger than the postcard-sized sheet it is to be cut from',
      body: {
        units: 'mm',
        kits: 4,
        pieces: [{ name: 'mat', cut: { width: 120, height: 160 } }],
        papers: [{ name: 'Offcuts', width: 148, height: 105 }],
      },
    },
  ],
  drawSetSheets: [
    {
      name: 'craft-evening-sheets',
      summary: 'Every sheet of the craft evening as a ZIP',
      body: craftEvening,
      show: 'none',
    },
  ],
  labelSet: [
    {
      name: 'craft-evening-labels',
      summary: 'Labels and cards for the craft evening, to print on A4',
      body: { title: 'Lamp room evening', ...craftEvening },
      show: 'none',
    },
  ],
};
