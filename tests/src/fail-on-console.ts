import { afterEach, beforeEach, expect, vi } from 'vitest';

/** Every way to write to the console. */
export const consoleMethods = ['debug', 'error', 'info', 'log', 'trace', 'warn'] as const;

let written: string[] = [];

/** What was written so far in this test, which then no longer fails it: for the test of this file. */
export function forgiveConsoleOutput(): readonly string[] {
  const forgiven = written;
  written = [];
  return forgiven;
}

/** Makes console output throw where it happens, and fail the test even where that is caught. */
beforeEach(() => {
  written = [];
  for (const method of consoleMethods)
    vi.spyOn(console, method).mockImplementation((...words: unknown[]) => {
      written.push(method);
      throw new Error(`console.${method} was called: ${words.map(String).join(' ')}`);
    });
});

afterEach(() => {
  vi.restoreAllMocks();
  expect(written, 'console output').toEqual([]);
});
