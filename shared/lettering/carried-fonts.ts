/** A font that comes with the program, in a package of its own. */
export interface CarriedFont {
  /** What a spec calls it: what it is for. */
  readonly name: string;
  /** What its makers call it. */
  readonly title: string;
  readonly use: string;
  readonly licence: string;
  readonly licenceLink: string;
  /** Who holds the copyright, as the licence asks to be told. */
  readonly copyright: string;
  /** The package, and the file in it. */
  readonly source: string;
  readonly file: string;
}

const openFontLicence = {
  licence: 'SIL Open Font License 1.1',
  licenceLink: 'https://openfontlicense.org',
} as const;

const file = (title: string) => `files/${title}-latin-400-normal.woff`;

/** Every font that is carried, all of them Latin. */
export const carriedFonts = Object.freeze([
  {
    name: 'plain',
    title: 'Alata',
    use: 'Names and short words: sturdy, without serifs.',
    ...openFontLicence,
    copyright: 'Copyright 2019 The Alata Project Authors (https://github.com/SorkinType/Alata)',
    source: '@fontsource/alata',
    file: file('alata'),
  },
  {
    name: 'stencil',
    title: 'Saira Stencil One',
    use: 'Heavy letters whose counters are held by gaps of their own.',
    ...openFontLicence,
    copyright: 'Copyright 2019 The Saira Stencil Project Authors (https://github.com/Omnibus-Type/Saira)',
    source: '@fontsource/saira-stencil-one',
    file: file('saira-stencil-one'),
  },
  {
    name: 'script',
    title: 'Pacifico',
    use: 'Joined brush letters: a word is cut as one opening.',
    ...openFontLicence,
    copyright: 'Copyright 2018 The Pacifico Project Authors (https://github.com/googlefonts/Pacifico)',
    source: '@fontsource/pacifico',
    file: file('pacifico'),
  },
] as const satisfies readonly CarriedFont[]);

export type CarriedFontName = (typeof carriedFonts)[number]['name'];

export const carriedFontNames: readonly CarriedFontName[] = carriedFonts.map(({ name }) => name);
