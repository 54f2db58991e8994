import type { BrowserContext, Page } from 'playwright-core';

declare global {
  interface Window {
    /** When the core's worker was asked, and when it last answered. */
    asked: number;
    answered: number;
  }
}

/** Lets every page of a context note when its worker is asked and when it answers. */
export const noteAnswers = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    window.Worker = class extends Worker {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        this.addEventListener('message', () => {
          window.answered = performance.now();
        });
      }
      override postMessage(message: unknown): void {
        window.asked = performance.now();
        super.postMessage(message);
      }
    };
  });

/** Milliseconds of every round. */
export interface Times {
  /** From one frame to the next while nothing happens. */
  readonly frame: readonly number[];
  /** From asking the core until it has answered. */
  readonly answered: readonly number[];
  /** From a change of a field until the new folder is in the document. */
  readonly told: readonly number[];
  /** The same, until it is on the screen. */
  readonly shown: readonly number[];
}

/**
 * Changes a number field again and again in the page itself, and waits each time until the headline says so.
 * @param page of a context that notes answers
 * @param label of a number field that the headline tells of
 */
export const timeChanges = (page: Page, label: string, rounds: number): Promise<Times> =>
  page.evaluate(
    async ([wanted, count]) => {
      const named = [...document.querySelectorAll('label')].find(({ textContent }) => textContent === wanted);
      const field = named?.control;
      const headline = document.querySelector('.headline');
      if (!(field instanceof HTMLInputElement) || !headline) throw new Error(`there is no field ${wanted}`);
      const nextFrame = () => new Promise<number>((resolve) => requestAnimationFrame(resolve));
      const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));
      const change = () =>
        new Promise<void>((resolve) => {
          const observer = new MutationObserver(() => {
            observer.disconnect();
            resolve();
          });
          observer.observe(headline, { childList: true, characterData: true, subtree: true });
          field.value = field.value === '2' ? '3' : '2';
          field.dispatchEvent(new Event('input', { bubbles: true }));
        });
      const rounds: { frame: number; answered: number; told: number; shown: number }[] = [];
      for (let round = 0; round < count; round++) {
        const before = await nextFrame();
        const frame = (await nextFrame()) - before;
        const from = performance.now();
        await change();
        const told = performance.now() - from;
        const answered = window.answered - window.asked;
        await nextFrame();
        await pause(0);
        rounds.push({ frame, answered, told, shown: performance.now() - from });
        await pause(600); // what the page tells after a pause is over
      }
      return {
        frame: rounds.map(({ frame }) => frame),
        answered: rounds.map(({ answered }) => answered),
        told: rounds.map(({ told }) => told),
        shown: rounds.map(({ shown }) => shown),
      };
    },
    [label, rounds] as const,
  );
