import { paintOf } from '../views/paper-defs.tsx';
import { useVoice } from '../words/use-voice.ts';

const line = (name: string) => <path d="M 1 9 H 33" class={name} />;

const samples = {
  valley: line('score score-valley'),
  mountain: line('score score-mountain'),
  cut: line('cut-sample'),
  rest: <rect x="1" y="1" width="32" height="16" class="rest-sample" />,
  outside: <rect x="1" y="1" width="32" height="16" class="edge" fill={paintOf('outside')} />,
  inside: <rect x="1" y="1" width="32" height="16" class="edge" fill={paintOf('inside')} />,
  seam: line('line line-seam'),
  contents: line('line line-contents'),
  up: <path d="M 17 1 L 22 9 H 18.5 V 17 H 15.5 V 9 H 12 Z" class="print-arrow" />,
} as const;

const names = Object.keys(samples) as (keyof typeof samples)[];

/** What the lines and the papers of the pictures mean. */
export function Legend() {
  const { say } = useVoice();
  return (
    <section class="legend" aria-labelledby="legend-title">
      <h3 id="legend-title">{say('picture.legend')}</h3>
      <ul>
        {names.map((name) => (
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
