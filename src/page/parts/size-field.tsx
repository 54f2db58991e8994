import { useState } from 'preact/hooks';
import { isObject, type Json, type Spec, valueAt } from '../spec/pointer.ts';
import { change, design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { type Option, type OptionGroup, SelectField } from './choice-fields.tsx';
import { LengthField } from './text-fields.tsx';

const own = 'own';

interface SizeFieldProps {
  /** JSON Pointer of what has a size. */
  readonly path: string;
  readonly label: string;
  readonly hint?: string;
  /** What it says while nothing is chosen. */
  readonly none: string;
  readonly widthLabel: string;
  readonly heightLabel: string;
  readonly groups: readonly OptionGroup[];
  /** Choices that are no published size: their value as the spec holds it. */
  readonly others?: readonly (Option & { readonly holds: Json })[];
}

/** What a thing has beside its size. */
const besideSize = (value: Json | undefined): Spec =>
  isObject(value)
    ? Object.fromEntries(
        Object.entries(value).filter(([name]) => name !== 'size' && name !== 'width' && name !== 'height'),
      )
    : {};

/** Chooses a size by name, or has it measured. */
export function SizeField({
  path,
  label,
  hint,
  none,
  widthLabel,
  heightLabel,
  groups,
  others = [],
}: SizeFieldProps) {
  const { say } = useVoice();
  const { history, catalogue } = useStore(design, 'history', 'catalogue');
  const [wantsOwn, setWantsOwn] = useState(false);
  const held = valueAt(history.now.spec, path);
  const size = valueAt(held, '/size');
  const measured = valueAt(held, '/width') !== undefined || valueAt(held, '/height') !== undefined;
  const other = others.find(({ holds }) => JSON.stringify(holds) === JSON.stringify(held));
  const value = other?.value ?? (typeof size === 'string' ? size : measured || wantsOwn ? own : '');

  const choose = (chosen: string) => {
    setWantsOwn(chosen === own);
    const picked = others.find((each) => each.value === chosen);
    const rest = besideSize(other ? undefined : held);
    // somebody who types in a list of names passes by others: that is one choice
    if (picked) change(path, picked.holds, path);
    else if (chosen === '') change(path, undefined, path);
    else if (chosen === own) {
      const before = catalogue.sizes.find((each) => each.value === size);
      const sides = before && { width: before.width, height: before.height };
      change(path, { ...sides, ...besideSize(held) }, path);
    } else change(path, { size: chosen, ...rest }, path);
  };

  return (
    <>
      <SelectField
        path={path}
        label={label}
        hint={hint}
        value={value}
        onChoose={choose}
        options={[
          { value: '', label: none },
          { value: own, label: say('contents.own') },
        ]}
        groups={groups}
      />
      {value === own && (
        <div class="pair">
          <LengthField path={`${path}/width`} label={widthLabel} />
          <LengthField path={`${path}/height`} label={heightLabel} />
        </div>
      )}
    </>
  );
}
