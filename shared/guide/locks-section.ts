import { locksOf } from '../creases/fold-program.ts';
import type { Folded } from '../folding/proof-of.ts';
import { describeLength } from '../lengths/show-length.ts';
import type { Section } from './guide.ts';

/** Which tongue goes through which slot, and where the slots are cut; nothing where nothing is locked. */
export function locksSection({ plan, program }: Folded): readonly Section[] {
  const say = (length: number) => describeLength(length, plan.spec.measure);
  const rows = locksOf(program).map(({ tongue, to, slot: { left, top, right, bottom } }) => [
    tongue,
    to,
    `${say(right - left)} × ${say(bottom - top)}`,
    `${say(left)} from the left, ${say(top)} from the top`,
  ]);
  if (rows.length === 0) return [];
  return [
    {
      id: 'locks',
      title: 'Tongues and slots',
      blocks: [
        {
          kind: 'text',
          text: 'Places are measured on the open sheet with its inside face up. Bend a tongue’s shoulders in, one after the other, to get it through its slot; flat on the other side, they hold it.',
        },
        {
          kind: 'table',
          caption: 'Where the slots are cut',
          head: ['Tongue', 'Slot in', 'Size', 'Place'],
          rows,
        },
      ],
    },
  ];
}
