import { isProposal, type SpeltSpec, spellOut } from '../resources/spell-out.ts';
import type { ProblemError } from './problem.ts';

/** Why a spec has no folder, as data. */
export interface Refusal {
  readonly message: string;
  readonly errors: readonly ProblemError[];
  /** The bound that cannot be met. */
  readonly bound?: string | undefined;
  /** By how much it is missed. */
  readonly shortfall?: unknown;
  /** Changes that would help, cheapest first. */
  readonly remedies: readonly unknown[];
}

/** Thrown by a route or command for a spec that was understood but cannot be folded; answered as 422. */
export class CannotBeFolded extends Error {
  override readonly name = 'CannotBeFolded';
  readonly refusal: Refusal;
  constructor(refusal: Refusal) {
    super(refusal.message);
    this.refusal = refusal;
  }

  /** The same, with remedies that can be applied to a spec that names what is kept. */
  forSpec(spec: SpeltSpec | undefined): CannotBeFolded {
    if (!spec) return this;
    const { remedies } = this.refusal;
    return new CannotBeFolded({
      ...this.refusal,
      remedies: remedies.map((each) => (isProposal(each) ? spellOut([each], spec)[0] : each)),
    });
  }
}
