import { useState } from 'preact/hooks';
import { ownersNotes } from '../../../shared/kept/owners-notes.ts';
import type { Kind } from '../api/kept.ts';
import { isObject, type Json } from '../spec/pointer.ts';
import { keep, keptAs, keptThings } from '../state/kept.ts';
import { tellStatus } from '../state/status.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { keepTrouble } from './keep-trouble.ts';

interface KeepAsProps {
  readonly kind: Exclude<Kind, 'designs'>;
  readonly label: string;
  /** What is to be kept. */
  readonly value: Json | undefined;
  /** A name that it already has. */
  readonly name?: Json | undefined;
}

/** Members that are no part of what is kept: the name is outside of it. */
const withoutName = (value: Json): Json =>
  isObject(value) ? Object.fromEntries(Object.entries(value).filter(([member]) => member !== 'name')) : value;

/** An owner's notes on what was kept before stay with it. */
const over = (before: Json | undefined, value: Json): Json => {
  if (!isObject(before) || !isObject(value)) return value;
  const notes = ownersNotes.flatMap((member) => {
    const note = before[member];
    return note === undefined ? [] : [[member, note] as const];
  });
  return { ...value, ...Object.fromEntries(notes) };
};

/** Keeps a paper, a machine or a way of drawing under a name, where the service can be reached. */
export function KeepAs({ kind, label, value, name }: KeepAsProps) {
  const { say } = useVoice();
  const { reach } = useStore(keptThings, 'reach');
  const [typed, setTyped] = useState<string>();
  const [trouble, setTrouble] = useState('');
  if (reach !== 'ready' || value === undefined) return null;
  const chosen = typed ?? (typeof name === 'string' ? name : '');
  const id = `keep-${kind}`;
  const save = async () => {
    const trimmed = chosen.trim();
    if (trimmed === '') {
      setTrouble(say('keep.nameNeeded'));
      return;
    }
    const before = kind === 'stock' ? keptAs(kind, trimmed)?.value : undefined;
    const reply = await keep(kind, trimmed, over(before, withoutName(value)));
    setTrouble(keepTrouble(reply, trimmed, say));
    if (reply.kind === 'done') tellStatus(say('keep.done', { name: trimmed }));
  };
  return (
    <div class="keep-as">
      <label for={id}>{say('keep.name')}</label>
      <input
        id={id}
        type="text"
        maxLength={80}
        autocomplete="off"
        value={chosen}
        aria-describedby={trouble === '' ? undefined : `${id}-fault`}
        onInput={({ currentTarget }) => setTyped(currentTarget.value)}
      />
      <button type="button" onClick={save}>
        {label}
      </button>
      {trouble !== '' && (
        <p class="fault" id={`${id}-fault`} role="alert">
          {trouble}
        </p>
      )}
    </div>
  );
}
