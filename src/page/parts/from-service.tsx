import { useState } from 'preact/hooks';
import type { FoldedAnswer } from '../ask/answer.ts';
import { design, specNow, swappedIn, unitsIn } from '../state/design.ts';
import { usePicked } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { MadeTold } from './made-told.tsx';
import { SetFields } from './set-fields.tsx';
import { useMade } from './use-made.ts';

type Wish = 'large' | 'hand' | 'template';

/** Files that the service alone can make: the maker's sheet, and what several folders need. */
export function FromService({ folded }: { readonly folded: FoldedAnswer }) {
  const { say } = useVoice();
  const units = usePicked(design, unitsIn);
  const [paper, setPaper] = useState(units === 'in' ? 'letter' : 'a4');
  const [wanted, setWanted] = useState<ReadonlySet<Wish>>(new Set());
  const { make, busy, trouble } = useMade();
  const print = wanted.has('large') ? 'large' : 'standard';
  const makersSheet = () => {
    const query = new URLSearchParams({
      format: 'pdf',
      paper,
      print,
      machine: wanted.has('hand') ? 'no' : 'yes',
      template: wanted.has('template') ? 'yes' : 'no',
      shows: swappedIn(design.get()) ? 'inside' : 'outside',
    });
    return make(`${folded.plan.style}-guide.pdf`, `v1/folders/guide?${query}`, specNow());
  };
  const want = (wish: Wish, on: boolean) => {
    const others = [...wanted].filter((each) => each !== wish);
    setWanted(new Set(on ? [...others, wish] : others));
  };
  const check = (wish: Wish) => (
    <label class="check" key={wish}>
      <input
        type="checkbox"
        checked={wanted.has(wish)}
        onChange={({ currentTarget }) => want(wish, currentTarget.checked)}
      />
      <span>{say(`made.${wish}`)}</span>
    </label>
  );
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
      {check('large')}
      <h3>{say('made.guide')}</h3>
      <p class="hint">{say('made.guide.hint')}</p>
      {(['hand', 'template'] as const).map(check)}
      <p class="buttons">
        <button type="button" disabled={busy} onClick={makersSheet}>
          {say('made.guide.pdf')}
        </button>
      </p>
      <MadeTold busy={busy} trouble={trouble} />
      <SetFields folded={folded} paper={paper} print={print} />
    </div>
  );
}
