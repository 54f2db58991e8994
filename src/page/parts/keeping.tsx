import { useState } from 'preact/hooks';
import type { Kept } from '../api/kept.ts';
import { isObject, type Json, type Spec } from '../spec/pointer.ts';
import { put, specNow } from '../state/design.ts';
import { keep, keptThings, removeFrom } from '../state/kept.ts';
import { tellStatus } from '../state/status.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { Shares } from './shares.tsx';

const aboutNames = ['title', 'notes', 'credit', 'licence'] as const;
type About = Readonly<Record<(typeof aboutNames)[number], string>>;

const emptyAbout: About = { title: '', notes: '', credit: '', licence: '' };

const aboutOf = (value: Json): About => {
  const held = isObject(value) ? value : {};
  const text = (name: keyof About) => (typeof held[name] === 'string' ? held[name] : '');
  return { title: text('title'), notes: text('notes'), credit: text('credit'), licence: text('licence') };
};

/** A design to keep: only what was filled in. */
function designOf(spec: Spec, name: string, about: About): Json {
  const said = aboutNames.filter((each) => about[each].trim() !== '');
  return {
    title: name,
    ...Object.fromEntries(said.map((each) => [each, about[each].trim()])),
    spec,
  };
}

interface DesignProps {
  readonly kept: Kept;
  readonly onOpen: (kept: Kept) => void;
}

function KeptDesign({ kept, onOpen }: DesignProps) {
  const { say } = useVoice();
  const [asked, setAsked] = useState(false);
  const [shares, setShares] = useState(false);
  const { name, value } = kept;
  const { title } = aboutOf(value);
  return (
    <li>
      <span class="design-name">
        <b>{name}</b>
        {title !== '' && title !== name && <small>{title}</small>}
      </span>
      <span class="buttons">
        <button type="button" aria-label={say('keep.openOf', { name })} onClick={() => onOpen(kept)}>
          {say('keep.open')}
        </button>
        <button
          type="button"
          aria-expanded={shares}
          aria-label={say('keep.shareOf', { name })}
          onClick={() => setShares(!shares)}
        >
          {say('keep.share')}
        </button>
        <button type="button" aria-label={say('keep.removeOf', { name })} onClick={() => setAsked(true)}>
          {say('keep.remove')}
        </button>
      </span>
      {asked && (
        <p class="sure" role="alert">
          {say('keep.sure', { name })}{' '}
          <button
            type="button"
            onClick={async () => {
              const reply = await removeFrom('designs', name);
              if (reply.kind === 'done') tellStatus(say('keep.removed', { name }));
            }}
          >
            {say('keep.sure.yes')}
          </button>{' '}
          <button type="button" onClick={() => setAsked(false)}>
            {say('keep.sure.no')}
          </button>
        </p>
      )}
      {shares && <Shares name={name} />}
    </li>
  );
}

/** Keeps designs with the service, opens them again and shares them. */
export function Keeping() {
  const { say } = useVoice();
  const { reach, member, kept } = useStore(keptThings, 'reach', 'member', 'kept');
  const [name, setName] = useState('');
  const [about, setAbout] = useState(emptyAbout);
  const [trouble, setTrouble] = useState('');
  const open = (each: Kept) => {
    const spec = isObject(each.value) ? each.value.spec : undefined;
    if (!isObject(spec)) return;
    setName(each.name);
    setAbout(aboutOf(each.value));
    put({ spec, swapped: false });
    tellStatus(say('keep.opened', { name: each.name }));
  };
  const save = async () => {
    const called = name.trim();
    if (called === '') {
      setTrouble(say('keep.nameNeeded'));
      return;
    }
    const reply = await keep('designs', called, designOf(specNow(), called, about));
    if (reply.kind === 'done') {
      setTrouble('');
      tellStatus(say('keep.done', { name: called }));
    } else if (reply.kind === 'refused')
      setTrouble(
        reply.status === 412
          ? say('keep.changedMeanwhile', { name: called })
          : say('keep.refused', { reason: reply.detail }),
      );
  };
  const fields = {
    title: say('keep.designTitle'),
    notes: say('keep.notes'),
    credit: say('keep.credit'),
    licence: say('keep.licence'),
  } as const;
  return (
    <section class="card keeping" aria-labelledby="keep-title">
      <h2 id="keep-title">{say('keep.title')}</h2>
      {reach === 'offline' && <p>{say('keep.offline')}</p>}
      {reach === 'signed-out' && (
        <p>
          {say('keep.signedOut')} <a href="sign-in">{say('keep.signIn')}</a>
        </p>
      )}
      {member !== undefined && reach === 'ready' && (
        <form class="signed-in" method="post" action="sign-out">
          <span>{say('keep.signedIn', { name: member })}</span>{' '}
          <button type="submit" class="quiet">
            {say('keep.signOut')}
          </button>
        </form>
      )}
      {reach === 'ready' && (
        <>
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
          <h3>{say('keep.designs')}</h3>
          {kept.designs.length === 0 ? (
            <p class="hint">{say('keep.designs.none')}</p>
          ) : (
            <ul class="designs">
              {kept.designs.map((each) => (
                <KeptDesign key={each.name} kept={each} onOpen={open} />
              ))}
            </ul>
          )}
        </>
      )}
    </section>
  );
}
