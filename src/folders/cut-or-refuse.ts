import type { Folded } from '../../shared/folding/proof-of.ts';
import { placeKnockouts } from '../../shared/knockouts/place-knockouts.ts';
import { showLength } from '../../shared/lengths/show-length.ts';
import type { FontShelf } from '../../shared/lettering/font-choice.ts';
import { CannotBeFolded } from '../problem/cannot-be-folded.ts';
import { jsonPointer } from '../problem/json-pointer.ts';

/**
 * A folded plan with its knockouts placed and checked; itself where it has none.
 * @param fonts from `fontsFor`
 * @throws CannotBeFolded when a knockout names what is not there or cannot be drawn
 */
export function placeOrRefuse(folded: Folded, fonts: FontShelf): Folded {
  const { knockouts = [] } = folded.plan.spec;
  if (knockouts.length === 0) return folded;
  const placing = placeKnockouts(folded, fonts);
  if (placing.ok) return { ...folded, knockouts: placing.knockouts };
  const errors = placing.faults.map(({ path, message, remedy }) => ({
    path: jsonPointer(path),
    message,
    remedy,
  }));
  throw new CannotBeFolded({
    message: errors[0]?.message ?? 'a knockout cannot be drawn',
    errors,
    remedies: [],
  });
}

/**
 * A folded plan that may be cut.
 * @throws CannotBeFolded when a check of its knockouts says that it must not
 */
export function cutOrRefuse(folded: Folded): Folded {
  const refusing = folded.knockouts?.findings.filter(({ does }) => does === 'refuse') ?? [];
  const [worst] = refusing;
  if (!worst) return folded;
  const { size, limit } = worst;
  throw new CannotBeFolded({
    message: worst.message,
    errors: refusing.flatMap(({ knockouts, message, remedy }) =>
      (knockouts.length === 0 ? [''] : knockouts.map((index) => jsonPointer(['knockouts', index]))).map(
        (path) => ({ path, message, ...(remedy === undefined ? {} : { remedy }) }),
      ),
    ),
    bound: worst.code,
    ...(size === undefined || limit === undefined ? {} : { shortfall: showLength(limit - size) }),
    remedies: [],
  });
}
