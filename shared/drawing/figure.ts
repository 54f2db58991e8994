/** The root's attributes, groups and paths of an SVG, ready to be written; all numbers are final text. */
export interface Figure {
  readonly width: string;
  readonly height: string;
  readonly viewBox: string;
  readonly title: string;
  readonly description: string;
  readonly groups: readonly FigureGroup[];
}

export interface FigureGroup {
  readonly id: string;
  readonly title: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly paths: readonly FigurePath[];
  readonly groups: readonly FigureGroup[];
}

export interface FigurePath {
  readonly id: string;
  /** Path data: absolute M, L, C and Z only. */
  readonly data: string;
}
