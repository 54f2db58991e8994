import { applyChanges, type Change } from '../../shared/spec/change.ts';
import { namesIn } from '../../shared/spec/names-in-spec.ts';
import { jsonPointer } from '../problem/json-pointer.ts';

/** A spec as it was sent, and with everything that it names in its place. */
export interface SpeltSpec {
  readonly sent: unknown;
  readonly spelt: unknown;
}

/** Changes to a spec that were tried. */
export interface Proposal {
  readonly changes: readonly Pick<Change, 'op' | 'path' | 'value'>[];
}

export const isProposal = (value: unknown): value is Proposal =>
  typeof value === 'object' && value !== null && 'changes' in value && Array.isArray(value.changes);

/** A change cannot reach into what is only named: such a member is given whole, as the changes leave it. */
function speltOut<Given extends Proposal>(proposal: Given, { sent, spelt }: SpeltSpec): Given {
  const reached = new Set(
    namesIn(sent)
      .filter(({ path }) =>
        proposal.changes.some((change) => change.path.startsWith(`${jsonPointer(path)}/`)),
      )
      .map(({ path: [member] }) => member),
  );
  if (reached.size === 0 || typeof spelt !== 'object' || spelt === null) return proposal;
  const memberOf = ({ path }: Proposal['changes'][number]) => path.split('/')[1] ?? '';
  const within = proposal.changes.filter((change) => reached.has(memberOf(change)));
  const changed: Readonly<Record<string, unknown>> = applyChanges(
    { ...spelt },
    within.map((change) => ({ ...change, settled: change.value })),
  );
  return {
    ...proposal,
    changes: [
      ...proposal.changes.filter((change) => !reached.has(memberOf(change))),
      ...[...reached].map((member) => ({ op: 'add', path: `/${member}`, value: changed[member] })),
    ],
  };
}

/** Proposals, such as remedies, whose changes can be applied to the spec as it was sent, names and all. */
export const spellOut = <Given extends Proposal>(
  proposals: readonly Given[],
  spec: SpeltSpec | undefined,
): Given[] => proposals.map((each) => (spec ? speltOut(each, spec) : each));
