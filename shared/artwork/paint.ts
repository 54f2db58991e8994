import type { FillingRule } from '../geometry/clip/combine.ts';
import { quoted, Refused } from './refused.ts';

/** What an element hands down to those inside it. */
export interface Paint {
  readonly rule: FillingRule;
  readonly fill: string;
}

export const usualPaint: Paint = Object.freeze({ rule: 'nonzero', fill: 'black' });

/** Presentation attributes that may stand on any element; those of strokes do nothing, since none is drawn. */
export const paintAttributes: readonly string[] = Object.freeze([
  'fill',
  'fill-rule',
  'clip-rule',
  'stroke',
  'stroke-width',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-miterlimit',
]);

const colour = /^(?:[a-z]+|#[0-9a-f]{3}|#[0-9a-f]{6}|rgb\([\d\s.,%]{5,40}\))$/iu;
const white = /^(?:white|#fff|#ffffff|rgb\(\s*(?:255|100%)\s*,\s*(?:255|100%)\s*,\s*(?:255|100%)\s*\))$/iu;

/** An element's paint, from its attributes and what it is in. Throws {@link Refused}. */
export function paintOf(
  attribute: (name: string) => string | undefined,
  around: Paint,
  where: string,
): Paint {
  const stroke = attribute('stroke')?.trim();
  if (stroke !== undefined && stroke !== 'none')
    throw new Refused(
      `${where} has a stroke: a line has no inside that could be cut out`,
      'turn strokes into outlines, fill these, and set stroke to none',
    );
  return {
    fill: fillOf(attribute('fill')?.trim(), around, where),
    rule: ruleOf(attribute('fill-rule')?.trim(), around, where),
  };
}

function fillOf(fill: string | undefined, around: Paint, where: string): string {
  if (fill === undefined || fill === 'inherit') return around.fill;
  if (colour.test(fill)) return fill;
  throw new Refused(
    `the fill of ${where} is ${quoted(fill)}, which is not read`,
    'fill with one plain colour',
  );
}

function ruleOf(rule: string | undefined, around: Paint, where: string): FillingRule {
  if (rule === undefined || rule === 'inherit') return around.rule;
  if (rule === 'nonzero') return 'nonzero';
  if (rule === 'evenodd') return 'even-odd';
  throw new Refused(`the fill-rule of ${where} is ${quoted(rule)}`, 'use nonzero or evenodd');
}

/** Refuses what is not seen as a dark shape, since what is cut has to be what is seen. Throws {@link Refused}. */
export function checkSeen({ fill }: Paint, where: string): void {
  if (fill === 'none' || fill === 'transparent')
    throw new Refused(`${where} has no fill`, 'fill what is to be cut out, or remove it');
  if (white.test(fill))
    throw new Refused(
      `${where} is white, so it hides what lies below it instead of being cut`,
      'subtract it from the shape below, or give it a colour',
    );
}
