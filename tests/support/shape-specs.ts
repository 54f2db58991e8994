import fc from 'fast-check';
import { type ShapeSpec, shapeFaults, shapeSpec } from '../../shared/knockouts/shapes/registry.ts';
import type { ShapeFault } from '../../shared/knockouts/shapes/shape-kind.ts';
import { withUnits } from '../../shared/lengths/length-schema.ts';

const reader = withUnits({ knockout: shapeSpec });

/** A shape as a caller writes it, read as a member of a spec. */
export function readShape(written: unknown) {
  const { success, data, error } = reader.safeParse({ units: 'mm', knockout: written });
  return success
    ? { spec: data.knockout, faults: shapeFaults(data.knockout), issues: [] }
    : { spec: undefined, faults: [] as readonly ShapeFault[], issues: error.issues };
}

/** A shape that can be read and has no faults. */
export function shapeOf(written: unknown): ShapeSpec {
  const { spec, faults, issues } = readShape(written);
  if (!spec || faults.length > 0) throw new Error(JSON.stringify([...issues, ...faults]));
  return spec;
}

/** Millimetres between two limits, both of which come up often, small ones as often as large ones. */
const measure = (least: number, most: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.constantFrom(least, most),
    fc.double({ min: Math.log(least), max: Math.log(most), noNaN: true }).map((log) => {
      const value = Math.round(Math.exp(log) * 1e6) / 1e6;
      return Math.min(most, Math.max(least, value));
    }),
  );

const across = measure(1, 600);
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
const kind = <T extends object>(shape: string, members: { [Key in keyof T]: fc.Arbitrary<T[Key]> }) =>
  fc.record({ shape: fc.constant(shape), ...members });

/** Every kind of shape with its members up to their limits, as callers write them in mm; not all go together. */
export const writtenShapes: Readonly<Record<string, fc.Arbitrary<object>>> = {
  circle: kind('circle', { diameter: across }),
  oval: kind('oval', { width: across, height: across }),
  'rounded-rectangle': kind('rounded-rectangle', {
    width: across,
    height: across,
    corner: maybe(measure(0.001, 300)),
  }),
  'regular-polygon': kind('regular-polygon', {
    sides: fc.integer({ min: 3, max: 24 }),
    diameter: across,
    corner: maybe(measure(0.001, 300)),
  }),
  star: kind('star', {
    points: fc.integer({ min: 3, max: 32 }),
    diameter: across,
    inner: maybe(measure(0.2, 0.9)),
    corner: maybe(measure(0.001, 30)),
  }),
  heart: kind('heart', { width: across, height: maybe(across) }),
  'scalloped-circle': kind('scalloped-circle', { diameter: across, scallop: maybe(measure(2, 100)) }),
  'scalloped-rectangle': kind('scalloped-rectangle', {
    width: across,
    height: across,
    scallop: maybe(measure(2, 100)),
  }),
  arch: kind('arch', { width: across, height: across }),
  tag: kind('tag', {
    width: across,
    height: across,
    shoulder: maybe(measure(0.5, 300)),
    eyelet: maybe(fc.record({ diameter: measure(1, 50), below: maybe(measure(1, 300)) })),
  }),
  'ribbon-slot': kind('ribbon-slot', { ribbon: measure(2, 100), width: maybe(measure(0.5, 3)) }),
  'thumb-notch': kind('thumb-notch', { radius: maybe(measure(3, 40)) }),
};
