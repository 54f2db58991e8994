import type { KnockoutSpec } from '../knockout-spec.ts';
import type { DesignContext, Designed } from './design.ts';
import { figureDesign } from './figure.ts';
import { slotsDesign } from './ribbon-slots.ts';
import { cornersDesign } from './rounded-corners.ts';
import { notchDesign } from './thumb-notch.ts';

/** Designs a knockout; faults say what in its spec names nothing or cannot be drawn. */
export function designOf(spec: KnockoutSpec, context: DesignContext): Designed {
  switch (spec.kind) {
    case 'figure':
      return figureDesign(spec, context);
    case 'thumb-notch':
      return notchDesign(spec, context);
    case 'rounded-corners':
      return cornersDesign(spec, context);
    case 'ribbon-slots':
      return slotsDesign(spec, context);
  }
}
