import fc from 'fast-check';
import { type Drawn, draw } from './drawn.ts';
import { type Generated, specs } from './specs.ts';
import { spell } from './spelling.ts';

/** A generated spec that folds, with its drawing. */
export interface Sample {
  readonly generated: Generated;
  readonly drawn: Drawn;
}

export interface Sampled {
  readonly samples: readonly Sample[];
  /** Specs that the solver refused. */
  readonly refused: number;
  /** What went wrong before a rule could be asked: a crash, or a file that the strict reader refuses. */
  readonly failures: readonly string[];
}

/** Draws generated specs; the same seed gives the same ones. */
export function sampleDrawings(count: number, seed: number): Sampled {
  const samples: Sample[] = [];
  const failures: string[] = [];
  let refused = 0;
  for (const generated of fc.sample(specs, { numRuns: count, seed })) {
    const raw = spell(generated.spec, generated.spelling);
    try {
      const drawn = draw(raw);
      if (drawn) samples.push({ generated, drawn });
      else refused++;
    } catch (error) {
      failures.push(`${String(error)} for ${JSON.stringify(raw)}`);
    }
  }
  return { samples, refused, failures };
}
