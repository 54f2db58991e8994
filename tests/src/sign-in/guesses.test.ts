import { describe, expect, test } from 'vitest';
import { countGuesses } from '../../../src/sign-in/guesses.ts';
import { setClock } from '../members/set-clock.ts';

const from = '192.0.2.7';

describe('guesses', () => {
  function counted() {
    const clock = setClock('2026-11-03T18:00:00.000Z');
    const guesses = countGuesses(clock);
    const fail = (address: string, text: string) => {
      const wait = guesses.waitSeconds(address, text);
      if (wait === undefined) guesses.ended(address, text, false);
      return wait;
    };
    return { clock, guesses, fail };
  }

  test('are ten in a minute from one address', () => {
    const { clock, guesses, fail } = counted();
    for (let n = 0; n < 10; n++) expect(fail(from, `guess ${n}`)).toBeUndefined();
    clock.set('2026-11-03T18:00:30.500Z');
    expect(fail(from, 'guess 10')).toBe(30);
    expect(guesses.waitSeconds('192.0.2.8', 'guess 10')).toBeUndefined();
    clock.set('2026-11-03T18:01:00.000Z');
    expect(fail(from, 'guess 10')).toBeUndefined();
  });

  test('are different ones: the same again is a forgotten program', () => {
    const { fail, guesses } = counted();
    for (let n = 0; n < 60; n++) expect(fail(from, 'old token')).toBeUndefined();
    expect(fail(from, 'old token')).toBe(60);
    expect(guesses.waitSeconds(from, 'another')).toBeUndefined();
  });

  test('keep nobody out who was known lately', () => {
    const { guesses, fail } = counted();
    guesses.ended(from, 'good', true);
    for (let n = 0; n < 12; n++) fail(from, `guess ${n}`);
    expect(guesses.waitSeconds(from, 'good')).toBeUndefined();
    expect(guesses.waitSeconds(from, 'good, but new here')).toBe(60);
    guesses.ended(from, 'good', false);
    expect(guesses.waitSeconds(from, 'good'), 'one guess among the others').toBeUndefined();
    guesses.ended('192.0.2.8', 'good', false);
    for (let n = 0; n < 12; n++) fail('192.0.2.9', `guess ${n}`);
    expect(guesses.waitSeconds('192.0.2.9', 'good'), 'known no more').toBe(60);
  });
});
