import type { ComponentChildren } from 'preact';
import { change, design, redo, startOver, undo } from '../state/design.ts';
import { lookLike, looks, manners, speak } from '../state/manners.ts';
import { useStore } from '../state/store.ts';
import { languageNames, languages } from '../words/say.ts';
import { useVoice } from '../words/use-voice.ts';

interface PickProps {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly onChoose: (value: string) => void;
  readonly children: ComponentChildren;
}

const Pick = ({ id, label, value, onChoose, children }: PickProps) => (
  <div class="pick">
    <label for={id}>{label}</label>
    <select id={id} value={value} onChange={({ currentTarget }) => onChoose(currentTarget.value)}>
      {children}
    </select>
  </div>
);

/** The name of the page, and how it speaks and looks. */
export function Header() {
  const { say, language } = useVoice();
  const { look } = useStore(manners, 'look');
  const { history } = useStore(design, 'history');
  return (
    <header class="top">
      {/* no link, since the address belongs to the design */}
      <button type="button" class="skip" onClick={() => document.getElementById('outcome')?.focus()}>
        {say('page.skip')}
      </button>
      <div class="name">
        <h1>hemfold</h1>
        <p class="tagline">{say('page.tagline')}</p>
      </div>
      <fieldset class="manners" aria-label={say('page.settings')}>
        <Pick
          id="measure"
          label={say('page.measure')}
          value={history.now.spec.units === 'in' ? 'in' : 'mm'}
          onChoose={(value) => change('/units', value)}
        >
          <option value="mm">{say('page.measure.mm')}</option>
          <option value="in">{say('page.measure.in')}</option>
        </Pick>
        <Pick
          id="language"
          label={say('page.language')}
          value={language}
          onChoose={(value) => void speak(languages.find((each) => each === value) ?? 'en')}
        >
          {languages.map((each) => (
            <option key={each} value={each} lang={each}>
              {languageNames[each]}
            </option>
          ))}
        </Pick>
        <Pick
          id="look"
          label={say('page.look')}
          value={look}
          onChoose={(value) => lookLike(looks.find((each) => each === value) ?? 'auto')}
        >
          {looks.map((each) => (
            <option key={each} value={each}>
              {say(`page.look.${each}`)}
            </option>
          ))}
        </Pick>
      </fieldset>
      <p class="buttons">
        <button type="button" disabled={history.past.length === 0} onClick={undo}>
          {say('page.undo')}
        </button>
        <button type="button" disabled={history.future.length === 0} onClick={redo}>
          {say('page.redo')}
        </button>
        <button type="button" onClick={startOver}>
          {say('page.startOver')}
        </button>
      </p>
    </header>
  );
}
