import type { FoldedAnswer } from '../ask/answer.ts';
import { paintOf } from '../views/paper-defs.tsx';
import { useVoice } from '../words/use-voice.ts';

const line = (name: string) => <path d="M 1 9 H 33" class={name} />;

const samples = {
  valley: line('score score-valley'),
  mountain: line('score score-mountain'),
  cut: line('cut-sample'),
  knockout: line('hole'),
  rest: <rect x="1" y="1" width="32" height="16" class="rest-sample" />,
  outside: <rect x="1" y="1" width="32" height="16" class="edge" fill={paintOf('outside')} />,
  inside: <rect x="1" y="1" width="32" height="16" class="edge" fill={paintOf('inside')} />,
  seam: line('line line-seam'),
  contents: line('line line-contents'),
  finding: (
    <g class="finding">
      <circle cx="17" cy="9" r="8" />
      <text x="17" y="9" dy="0.35em" text-anchor="middle">
        1
      </text>
    </g>
  ),
  up: <path d="M 17 1 L 22 9 H 18.5 V 17 H 15.5 V 9 H 12 Z" class="print-arrow" />,
} as const;

const names = Object.keys(samples) as (keyof typeof samples)[];

/** What the lines and the papers of the pictures mean, as far as they are there. */
export function Legend({ folded: { open, plan } }: { readonly folded: FoldedAnswer }) {
  const { say } = useVoice();
  const isThere: Partial<Record<keyof typeof samples, boolean>> = {
    rest: open.blank.width < open.sheet.width || open.blank.height < open.sheet.height,
    knockout: open.knockouts.length > 0,
    finding: (plan.knockouts?.findings ?? []).length > 0,
    contents: plan.contents !== undefined,
  };
  return (
    <section class="legend" aria-labelledby="legend-title">
      <h3 id="legend-title">{say('picture.legend')}</h3>
      <ul>
        {names
          .filter((name) => isThere[name] ?? true)
          .map((name) => (
            <li key={name}>
              <svg width="34" height="18" aria-hidden="true" focusable="false">
                {samples[name]}
              </svg>
              {say(`picture.legend.${name}`)}
            </li>
          ))}
      </ul>
    </section>
  );
}
