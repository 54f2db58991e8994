import { useState } from 'preact/hooks';
import { requestFile } from '../api/client.ts';
import type { FoldedAnswer } from '../ask/answer.ts';
import type { Json } from '../spec/pointer.ts';
import { setOf } from '../spec/set-of.ts';
import { design, specNow, unitsIn } from '../state/design.ts';
import { tellStatus } from '../state/status.ts';
import { usePicked, useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { downloadFile } from './download.ts';

const wishes = ['large', 'hand', 'template'] as const;
type Wish = (typeof wishes)[number];

const mostKits = 1000;

/** Files that the service alone can make: the maker's sheet, and the sheets of several folders. */
export function FromService({ folded }: { readonly folded: FoldedAnswer }) {
  const { say } = useVoice();
  const { catalogue } = useStore(design, 'catalogue');
  const units = usePicked(design, unitsIn);
  const [paper, setPaper] = useState(units === 'in' ? 'letter' : 'a4');
  const [wanted, setWanted] = useState<ReadonlySet<Wish>>(new Set());
  const [kits, setKits] = useState('6');
  const [trouble, setTrouble] = useState('');
  const [busy, setBusy] = useState(false);

  const fetchFile = async (name: string, path: string, body: Json) => {
    setBusy(true);
    setTrouble('');
    const reply = await requestFile(path, body);
    setBusy(false);
    if (reply.kind === 'done') {
      downloadFile(name, reply.file);
      tellStatus(say('take.saved', { name }));
    } else if (reply.kind === 'refused') setTrouble(say('made.refused', { reason: reply.detail }));
    else setTrouble(say(reply.kind === 'offline' ? 'made.offline' : 'made.signedOut'));
  };
  const makersSheet = () => {
    const query = new URLSearchParams({
      format: 'pdf',
      paper,
      print: wanted.has('large') ? 'large' : 'standard',
      machine: wanted.has('hand') ? 'no' : 'yes',
      template: wanted.has('template') ? 'yes' : 'no',
    });
    return fetchFile(`${folded.plan.style}-guide.pdf`, `v1/folders/guide?${query}`, specNow());
  };
  const sheets = () => {
    const count = Number(kits.trim());
    if (!Number.isInteger(count) || count < 1 || count > mostKits) {
      setTrouble(say('made.kitsNeeded', { most: mostKits }));
      return undefined;
    }
    const lengths = catalogue.styles.find(({ name }) => name === folded.plan.style)?.lengths ?? [];
    const set = setOf(
      design.get().history.now,
      folded.plan,
      lengths.map(({ path }) => path),
      count,
    );
    return fetchFile(`${folded.plan.style}-sheets.zip`, 'v1/sets/sheets', set);
  };
  const want = (wish: Wish, on: boolean) => {
    const others = [...wanted].filter((each) => each !== wish);
    setWanted(new Set(on ? [...others, wish] : others));
  };

  return (
    <div class="from-service">
      <h3>{say('made.guide')}</h3>
      <p class="hint">{say('made.guide.hint')}</p>
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
      <h3>{say('made.sheets')}</h3>
      <div class="field">
        <label for="kits">{say('made.kits')}</label>
        <input
          id="kits"
          class="length"
          type="text"
          inputMode="numeric"
          autocomplete="off"
          aria-describedby="kits-hint"
          value={kits}
          onInput={({ currentTarget }) => setKits(currentTarget.value)}
        />
        <p class="hint" id="kits-hint">
          {say('made.kits.hint')}
        </p>
      </div>
      <p class="buttons">
        <button type="button" disabled={busy} onClick={sheets}>
          {say('made.sheets.zip')}
        </button>
      </p>
      {trouble !== '' && (
        <p class="fault" role="alert">
          {trouble}
        </p>
      )}
    </div>
  );
}
