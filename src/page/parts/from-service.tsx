import { useState } from 'preact/hooks';
import type { FoldedAnswer } from '../ask/answer.ts';
import { design, specNow, unitsIn } from '../state/design.ts';
import { usePicked } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { MadeTold } from './made-told.tsx';
import { SetFields } from './set-fields.tsx';
import { useMade } from './use-made.ts';

const wishes = ['large', 'hand', 'template'] as const;
type Wish = (typeof wishes)[number];

/** Files that the service alone can make: the maker's sheet, and what several folders need. */
export function FromService({ folded }: { readonly folded: FoldedAnswer }) {
  const { say } = useVoice();
  const units = usePicked(design, unitsIn);
  const [paper, setPaper] = useState(units === 'in' ? 'letter' : 'a4');
  const [wanted, setWanted] = useState<ReadonlySet<Wish>>(new Set());
  const { make, busy, trouble } = useMade();
  const makersSheet = () => {
    const query = new URLSearchParams({
      format: 'pdf',
      paper,
      print: wanted.has('large') ? 'large' : 'standard',
      machine: wanted.has('hand') ? 'no' : 'yes',
      template: wanted.has('template') ? 'yes' : 'no',
    });
    return make(`${folded.plan.style}-guide.pdf`, `v1/folders/guide?${query}`, specNow());
  };
  const want = (wish: Wish, on: boolean) => {
    const others = [...wanted].filter((each) => each !== wish);
    setWanted(new Set(on ? [...others, wish] : others));
  };
  return (
    <div class="from-service">
      <div class="field">
        <label for="guide-paper">{say('made.paper')}</label>
        <select
          id="guide-paper"
          value={paper}
          onChange={({ currentTarget }) => setPaper(currentTarget.value)}
        >
          <option value="a4">A4</option>
          <option value="letter">US letter</option>
        </select>
      </div>
      <h3>{say('made.guide')}</h3>
      <p class="hint">{say('made.guide.hint')}</p>
      {wishes.map((wish) => (
        <label class="check" key={wish}>
          <input
            type="checkbox"
            checked={wanted.has(wish)}
            onChange={({ currentTarget }) => want(wish, currentTarget.checked)}
          />
          <span>{say(`made.${wish}`)}</span>
        </label>
      ))}
      <p class="buttons">
        <button type="button" disabled={busy} onClick={makersSheet}>
          {say('made.guide.pdf')}
        </button>
      </p>
      <MadeTold busy={busy} trouble={trouble} />
      <SetFields folded={folded} paper={paper} />
    </div>
  );
}
