import { useState } from 'preact/hooks';
import type { Kept } from '../api/kept.ts';
import { aboutNames, aboutOf, designOf, emptyAbout } from '../spec/kept-design.ts';
import { specNow } from '../state/design.ts';
import { keep } from '../state/kept.ts';
import { tellStatus } from '../state/status.ts';
import { useVoice } from '../words/use-voice.ts';
import { keepTrouble } from './keep-trouble.ts';

/** Keeps the design on the table, with what is to be said of it. @param from the one that was opened */
export function KeepDesign({ from }: { readonly from: Kept | undefined }) {
  const { say } = useVoice();
  const [name, setName] = useState(from?.name ?? '');
  const [about, setAbout] = useState(from ? aboutOf(from.value) : emptyAbout);
  const [trouble, setTrouble] = useState('');
  const save = async () => {
    const called = name.trim();
    if (called === '') {
      setTrouble(say('keep.nameNeeded'));
      return;
    }
    const reply = await keep('designs', called, designOf(specNow(), called, about));
    setTrouble(keepTrouble(reply, called, say));
    if (reply.kind === 'done') tellStatus(say('keep.done', { name: called }));
  };
  const fields = {
    title: say('keep.designTitle'),
    notes: say('keep.notes'),
    credit: say('keep.credit'),
    licence: say('keep.licence'),
  } as const;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <div class="field">
        <label for="design-name">{say('keep.name')}</label>
        <input
          id="design-name"
          type="text"
          maxLength={80}
          autocomplete="off"
          value={name}
          aria-describedby={trouble === '' ? undefined : 'design-fault'}
          onInput={({ currentTarget }) => setName(currentTarget.value)}
        />
      </div>
      <details class="more">
        <summary>{say('keep.about')}</summary>
        <div class="more-inside">
          {aboutNames.map((each) => (
            <div class="field" key={each}>
              <label for={`design-${each}`}>{fields[each]}</label>
              {each === 'notes' ? (
                <textarea
                  id="design-notes"
                  rows={3}
                  maxLength={4000}
                  value={about.notes}
                  onInput={({ currentTarget }) => setAbout({ ...about, notes: currentTarget.value })}
                />
              ) : (
                <input
                  id={`design-${each}`}
                  type="text"
                  maxLength={120}
                  autocomplete="off"
                  value={about[each]}
                  aria-describedby={each === 'licence' ? 'licence-hint' : undefined}
                  onInput={({ currentTarget }) => setAbout({ ...about, [each]: currentTarget.value })}
                />
              )}
            </div>
          ))}
          <p class="hint" id="licence-hint">
            {say('keep.licence.hint')}
          </p>
        </div>
      </details>
      <p class="buttons">
        <button type="submit">{say('keep.design')}</button>
      </p>
      {trouble !== '' && (
        <p class="fault" id="design-fault" role="alert">
          {trouble}
        </p>
      )}
    </form>
  );
}
