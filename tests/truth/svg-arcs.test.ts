import { describe, expect, test } from 'vitest';
import { PAGE, sizeOf, svg } from '../support/artwork.ts';

/*
 * Bounds of elliptical arcs worked out from the ellipse itself (SVG 1.1, section 8.3.8 and appendix F.6): an ellipse with
 * radii a and b turned by φ reaches √(a²cos²φ + b²sin²φ) from its middle along x, √(a²sin²φ + b²cos²φ) along y.
 * A cubic for a quarter leaves its circle by 2.8e-4 of the radius at most.
 */
describe('arcs', () => {
  test.each([
    ['a half of radius 20', 'M30 50A20 20 0 0 1 70 50Z', 40, 20],
    ['three quarters of radius 20', 'M50 30A20 20 0 1 1 30 50L50 50Z', 40, 40],
    ['a quarter of radius 20', 'M50 30A20 20 0 0 1 70 50L50 50Z', 20, 20],
    ['the same by flags written together', 'M50 30A20 20 0 0170 50L50 50Z', 20, 20],
    // two halves of an ellipse of 30 × 10 turned by 30°: its ends lie at ±(30·cos 30°, 30·sin 30°)
    [
      'a turned ellipse',
      `M${50 - 30 * Math.cos(Math.PI / 6)} ${50 - 15}A30 10 30 0 1 ${50 + 30 * Math.cos(Math.PI / 6)} ${50 + 15}A30 10 30 0 1 ${50 - 30 * Math.cos(Math.PI / 6)} ${50 - 15}Z`,
      2 * Math.sqrt(900 * 0.75 + 100 * 0.25),
      2 * Math.sqrt(900 * 0.25 + 100 * 0.75),
    ],
    // radii too small for the chord of 40 are enlarged until they reach: a half of radius 20
    ['radii that are too small', 'M30 50A5 5 0 0 1 70 50Z', 40, 20],
    // negative radii lose their signs
    ['radii with a sign', 'M30 50A-20-20 0 0 1 70 50Z', 40, 20],
    // the small arc of radius 25 over a chord of 40 rises 25 − √(25² − 20²) = 10
    ['a flat bow', 'M30 50A25 25 0 0 1 70 50Z', 40, 10],
    // the large one rises 25 + 15 and is as wide as the circle
    ['a large bow', 'M30 70A25 25 0 1 1 70 70Z', 50, 40],
  ])('%s', (_, d, width, height) => {
    const [across, along] = sizeOf(svg(`<path d="${d}"/>`, PAGE));
    expect(Math.abs(across - width)).toBeLessThan(0.02);
    expect(Math.abs(along - height)).toBeLessThan(0.02);
  });
});
