import type { LineType } from '../../shared/drawing/convention.ts';
import { inMm } from '../../shared/lengths/show-length.ts';
import type { Drawn } from './drawn.ts';
import { everyGroup } from './read-svg.ts';
import type { Rule } from './rule.ts';
import { strokeFault } from './stroke-fault.ts';

/** Okabe & Ito's blue; what is on the face that lies down is dashed, as hidden outlines are. */
const usualColour = '#0072B2';
const kinds = [
  ['guide-glue', 'guideGlue', 'continuous', 'dashed'],
  ['guide-bare', 'guideBare', 'long-dashed dotted', 'long-dashed dotted'],
  ['guide-keep-out', 'guideKeepOut', 'dotted', 'dotted'],
] as const satisfies readonly (readonly [string, string, LineType, LineType])[];

/** The guide is drawn only where the convention has it, every group of it in its own style, and only stroked. */
export const guideKept: Rule = {
  name: 'the guide is there where it is asked for, in its own colour, width and line type, and is never filled',
  broken: ({ plan, read }: Drawn) => {
    const { layers, sheetLies } = plan.spec.convention ?? {};
    const up = sheetLies === 'outside-up' ? 'outside' : 'inside';
    const guide = read.groups.find(({ id }) => id === 'guide');
    const there = everyGroup(read.groups).filter(({ id }) => id.startsWith('guide-'));
    let asked = false;
    for (const [id, member, upward, downward] of kinds) {
      const own = layers?.[member];
      const all = layers?.guide;
      const wanted = (own ?? all) !== undefined && !(own?.off ?? all?.off ?? false);
      asked ||= wanted;
      for (const face of ['inside', 'outside']) {
        const group = there.find((each) => each.id === `${id}-${face}`);
        if (!group) continue;
        if (!wanted) return `${group.id} is there`;
        const { fill, stroke, 'stroke-width': width, 'stroke-dasharray': dashes, ...more } = group.attributes;
        if (Object.keys(more).length > 0) return `${group.id} has ${Object.keys(more)}`;
        const colour = own?.colour ?? all?.colour ?? usualColour;
        if (fill !== 'none' || stroke?.toLowerCase() !== colour.toLowerCase())
          return `${group.id} is filled ${fill} and stroked ${stroke}`;
        const lineType = own?.lineType ?? all?.lineType ?? (face === up ? upward : downward);
        const fault = strokeFault(
          read.scale,
          { width, dashes },
          { width: inMm(own?.width ?? all?.width ?? 250_000), lineType },
        );
        if (fault) return `${group.id} ${fault}`;
      }
    }
    return asked === (guide !== undefined) ? undefined : `the guide is ${guide ? 'there' : 'not there'}`;
  },
};
