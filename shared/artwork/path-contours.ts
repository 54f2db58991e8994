import svgPath from 'svgpath';
import type { Contour, Stretch } from '../geometry/contour.ts';
import { between } from '../geometry/cubic.ts';
import type { Point } from '../geometry/plane.ts';
import { checked } from './numbers.ts';
import { Refused } from './refused.ts';

/** A segment after all others have been turned into it. */
type Segment = readonly [command: string, ...numbers: number[]];

/**
 * The closed lines of path data in its own units: absolute lines and cubics. Arcs become cubics of at most a quarter,
 * within 2.8e-4 of their radius; an open part is closed by a straight line, as SVG fills it. Throws {@link Refused}.
 */
export function contoursOfPath(data: string, where: string): Contour[] {
  const path = svgPath(data) as ReturnType<typeof svgPath> & { readonly err?: string };
  if (path.err)
    throw new Refused(
      `${where} is not path data: ${said(path.err)}`,
      'correct it, or save the drawing again',
    );
  const contours: Contour[] = [];
  let start: Point = { x: 0, y: 0 };
  let at = start;
  let stretches: Stretch[] = [];
  const end = (): void => {
    if (stretches.length > 0) contours.push({ start, stretches: closed(start, stretches) });
    stretches = [];
  };
  const to = (x: number | undefined, y: number | undefined): Point => ({
    x: checked(x ?? Number.NaN, where),
    y: checked(y ?? Number.NaN, where),
  });
  path
    .abs()
    .unshort()
    .unarc()
    .iterate((segment) => {
      const [command, ...n] = segment as unknown as Segment;
      switch (command) {
        case 'M':
          end();
          start = to(n[0], n[1]);
          at = start;
          return;
        case 'Z':
          end();
          at = start;
          return;
        case 'L':
          at = to(n[0], n[1]);
          stretches.push({ to: at });
          return;
        case 'H':
          at = to(n[0], at.y);
          stretches.push({ to: at });
          return;
        case 'V':
          at = to(at.x, n[0]);
          stretches.push({ to: at });
          return;
        case 'C':
          stretches.push({ control: [to(n[0], n[1]), to(n[2], n[3])], to: to(n[4], n[5]) });
          at = to(n[4], n[5]);
          return;
        case 'Q': {
          const control = to(n[0], n[1]);
          const last = to(n[2], n[3]);
          stretches.push({ control: [between(at, control, 2 / 3), between(last, control, 2 / 3)], to: last });
          at = last;
          return;
        }
        default:
          throw new Refused(`${where} has the command ${command}`, 'save the drawing again');
      }
    });
  end();
  return contours;
}

/** The library's own words without its name. */
const said = (text: string): string => text.replace(/^SvgPath: /u, '');

function closed(start: Point, stretches: readonly Stretch[]): readonly Stretch[] {
  const last = stretches.at(-1)?.to;
  return last && (last.x !== start.x || last.y !== start.y) ? [...stretches, { to: start }] : stretches;
}
