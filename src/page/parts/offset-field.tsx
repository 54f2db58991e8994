import { useState } from 'preact/hooks';
import { type OffsetAxis, offsetText, withOffset } from '../spec/knockouts.ts';
import { valueAt } from '../spec/pointer.ts';
import { change, design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { lengthForSpec } from '../words/lengths.ts';
import { Field } from './field.tsx';

interface OffsetProps {
  /** JSON Pointer of the offset. */
  readonly path: string;
  readonly axis: OffsetAxis;
  readonly label: string;
  readonly hint?: string;
}

/** How far something is moved along one axis; a minus moves it the other way. */
export function OffsetField({ path, axis, label, hint }: OffsetProps) {
  const { spec } = useStore(design, 'history').history.now;
  const [typed, setTyped] = useState<string>();
  const offset = valueAt(spec, path);
  const unit = spec.units === 'in' ? 'in' : 'mm';
  return (
    <Field path={`${path}/${axis}`} label={label} hint={hint}>
      {(wiring) => (
        <input
          {...wiring}
          class="length"
          type="text"
          autocomplete="off"
          placeholder="0"
          value={typed ?? offsetText(offset, axis)}
          onInput={({ currentTarget: { value } }) => {
            setTyped(value);
            change(path, withOffset(offset, axis, lengthForSpec(value, unit)), `${path}/${axis}`);
          }}
          onBlur={() => setTyped(undefined)}
        />
      )}
    </Field>
  );
}
