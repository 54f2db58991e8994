import { type Found, placeBadges } from './place-badges.ts';

interface FindingsProps {
  readonly found: readonly Found[];
  /** The middle of the picture, in pixels. */
  readonly middle: { readonly x: number; readonly y: number };
}

/** Where the checks of knockouts found something: a dot at each place, and over all of them a number for each finding. */
export function Findings({ found, middle }: FindingsProps) {
  const badges = placeBadges(found, middle);
  return (
    <>
      {found.map(({ x, y }, index) => (
        <circle key={index} cx={x} cy={y} r="3.5" class="finding-place" />
      ))}
      {badges.map(({ number, refuses, x, y }) => (
        <g key={number} class={refuses ? 'finding finding-refuses' : 'finding'}>
          <circle cx={x} cy={y} r="9" />
          <text x={x} y={y} dy="0.35em" text-anchor="middle">
            {number}
          </text>
        </g>
      ))}
    </>
  );
}
