import { useEffect, useState } from 'preact/hooks';
import { revokeShare, shareDesign, sharesOf } from '../api/kept.ts';
import { linkFragment } from '../spec/address.ts';
import { isObject, type Json } from '../spec/pointer.ts';
import { tellStatus } from '../state/status.ts';
import { useVoice } from '../words/use-voice.ts';

interface Share {
  readonly id: string;
  readonly created: string;
}

const sharesIn = (body: Json | undefined): readonly Share[] => {
  const items = isObject(body) && Array.isArray(body.items) ? (body.items as readonly Json[]) : [];
  return items.flatMap((item) =>
    isObject(item) && typeof item.id === 'string'
      ? [{ id: item.id, created: typeof item.created === 'string' ? item.created : '' }]
      : [],
  );
};

/** The reader's own country, where it speaks the page's language. */
const localeIn = (language: string): string =>
  navigator.languages.find((each) => each.startsWith(language)) ?? language;

/** The links to one design: a new one, and those that are there to be taken back. */
export function Shares({ name }: { readonly name: string }) {
  const { say, language } = useVoice();
  const [shares, setShares] = useState<readonly Share[]>([]);
  const [link, setLink] = useState('');
  const refresh = async () => {
    const reply = await sharesOf(name);
    if (reply.kind === 'done') setShares(sharesIn(reply.body));
  };
  useEffect(() => {
    void refresh();
  }, [name]);
  const make = async () => {
    const reply = await shareDesign(name);
    const secret = reply.kind === 'done' && isObject(reply.body) ? reply.body.secret : undefined;
    if (typeof secret === 'string') setLink(new URL(linkFragment(secret), document.baseURI).href);
    if (reply.kind === 'refused') tellStatus(say('keep.refused', { reason: reply.detail }));
    await refresh();
  };
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      tellStatus(say('take.link.copied'));
    } catch {
      tellStatus(say('take.link.failed'));
    }
  };
  return (
    <div class="shares">
      <h4>{say('keep.shares', { name })}</h4>
      {link === '' ? (
        <p>
          <button type="button" onClick={make}>
            {say('keep.share.new')}
          </button>
        </p>
      ) : (
        <div class="field" role="status">
          <label for={`link-${name}`}>{say('keep.share.made')}</label>
          <input id={`link-${name}`} type="text" readOnly value={link} />
          <button type="button" onClick={copy}>
            {say('keep.share.copy')}
          </button>
        </div>
      )}
      <ul>
        {shares.map(({ id, created }) => {
          const date = new Date(created).toLocaleString(localeIn(language), {
            dateStyle: 'medium',
            timeStyle: 'short',
          });
          return (
            <li key={id}>
              {say('keep.share.since', { date })}{' '}
              <button
                type="button"
                aria-label={`${say('keep.share.revoke')}: ${say('keep.share.since', { date })}`}
                onClick={async () => {
                  const reply = await revokeShare(name, id);
                  if (reply.kind === 'done') {
                    setLink('');
                    tellStatus(say('keep.share.revoked'));
                  }
                  await refresh();
                }}
              >
                {say('keep.share.revoke')}
              </button>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
