import { drawStrip } from '../../shared/calibration/draw-strip.ts';
import type { StripSpec } from '../../shared/calibration/strip-spec.ts';
import { applyConvention } from '../../shared/drawing/apply-convention.ts';
import { writeSvg } from '../svg/write-svg.ts';

/** A calibration strip as layered SVG, in its spec's convention. */
export const svgOfStrip = (spec: StripSpec): string =>
  writeSvg(applyConvention(drawStrip(spec), spec.convention));
