import { useState } from 'preact/hooks';
import type { Kept } from '../api/kept.ts';
import { aboutOf } from '../spec/kept-design.ts';
import { removeFrom } from '../state/kept.ts';
import { tellStatus } from '../state/status.ts';
import { useVoice } from '../words/use-voice.ts';
import { Later } from './later.ts';

const loadShares = () => import('./shares.tsx').then(({ Shares }) => Shares);

interface DesignProps {
  readonly kept: Kept;
  readonly onOpen: (kept: Kept) => void;
}

/** One design that is kept: to be opened, shared and removed. */
export function KeptDesign({ kept, onOpen }: DesignProps) {
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
      {shares && (
        <Later
          load={loadShares}
          props={{ name }}
          loading={say('made.loading')}
          failed={say('keep.offline')}
        />
      )}
    </li>
  );
}
