import { useState } from 'preact/hooks';
import type { FoldedAnswer } from '../ask/answer.ts';
import { setOf } from '../spec/set-of.ts';
import { design } from '../state/design.ts';
import { useVoice } from '../words/use-voice.ts';
import { MadeTold } from './made-told.tsx';
import { useMade } from './use-made.ts';

/** The most that the service makes at once. */
const mostKits = 1000;

interface SetFieldsProps {
  readonly folded: FoldedAnswer;
  /** `a4` or `letter`. */
  readonly paper: string;
  readonly print: 'standard' | 'large';
}

/** Several folders like the one on the table: all sheets for the machine, and labels for the kits of a class. */
export function SetFields({ folded, paper, print }: SetFieldsProps) {
  const { say } = useVoice();
  const [kits, setKits] = useState('6');
  const [title, setTitle] = useState('');
  const { make, busy, trouble, setTrouble } = useMade();
  const { style } = folded.plan;
  const makeOfSet = (name: string, path: string) => {
    const count = Number(kits.trim());
    if (!Number.isInteger(count) || count < 1 || count > mostKits) {
      setTrouble(say('made.kitsNeeded', { most: mostKits }));
      return;
    }
    const { catalogue, history } = design.get();
    const lengths = catalogue.styles.find((each) => each.name === style)?.lengths ?? [];
    const set = setOf(history.now, folded.plan, {
      kits: count,
      lengths: lengths.map((length) => length.path),
      second: say('made.secondPaper'),
    });
    const called = title.trim();
    void make(name, path, called === '' ? set : { ...set, title: called });
  };
  return (
    <>
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
      <div class="field">
        <label for="set-title">{say('made.setTitle')}</label>
        <input
          id="set-title"
          type="text"
          maxLength={60}
          autocomplete="off"
          value={title}
          onInput={({ currentTarget }) => setTitle(currentTarget.value)}
        />
      </div>
      <p class="buttons">
        <button
          type="button"
          disabled={busy}
          onClick={() => makeOfSet(`${style}-sheets.zip`, 'v1/sets/sheets')}
        >
          {say('made.sheets.zip')}
        </button>
        <button
          type="button"
          disabled={busy}
          onClick={() => makeOfSet(`${style}-labels.pdf`, `v1/sets/labels?paper=${paper}&print=${print}`)}
        >
          {say('made.labels.pdf')}
        </button>
      </p>
      <MadeTold busy={busy} trouble={trouble} />
    </>
  );
}
