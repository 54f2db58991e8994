import { useState } from 'preact/hooks';
import type { Json } from '../spec/pointer.ts';
import { valueAt } from '../spec/pointer.ts';
import { change, design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { lengthForSpec } from '../words/lengths.ts';
import { Field, type FieldProps } from './field.tsx';

interface TypedProps extends FieldProps {
  /** What is typed, as the spec holds it; nothing for an empty field. */
  readonly read: (typed: string) => Json | undefined;
  readonly inputMode: 'text' | 'numeric' | 'decimal';
  readonly placeholder?: string | undefined;
  /** What the spec holds while the field is empty; default nothing. */
  readonly usual?: Json | undefined;
  readonly class?: string;
}

/** A field that is typed into. While it is, it shows what was typed; afterwards, what the spec holds. */
function TypedField({ path, label, hint, read, inputMode, placeholder, usual, class: name }: TypedProps) {
  const { history } = useStore(design, 'history');
  const [typed, setTyped] = useState<string>();
  const held = valueAt(history.now.spec, path);
  const shown = typed ?? (held === undefined || held === null ? '' : String(held));
  return (
    <Field path={path} label={label} hint={hint}>
      {(wiring) => (
        <input
          {...wiring}
          class={name}
          type="text"
          inputMode={inputMode}
          autocomplete="off"
          spellcheck={false}
          placeholder={placeholder}
          value={shown}
          onInput={({ currentTarget: { value } }) => {
            setTyped(value);
            change(path, value.trim() === '' ? usual : read(value), path);
          }}
          onBlur={() => setTyped(undefined)}
        />
      )}
    </Field>
  );
}

type LengthProps = FieldProps & Pick<TypedProps, 'placeholder' | 'usual'>;

/** A length; without a unit it is in the page's own. */
export function LengthField(props: LengthProps) {
  const { history } = useStore(design, 'history');
  const unit = history.now.spec.units === 'in' ? 'in' : 'mm';
  return (
    <TypedField {...props} inputMode="text" class="length" read={(typed) => lengthForSpec(typed, unit)} />
  );
}

/** A number; what is none stays text, for the core to tell. */
export const NumberField = (props: LengthProps) => (
  <TypedField
    {...props}
    inputMode="decimal"
    class="length"
    read={(typed) => {
      const number = Number(typed.trim().replace(',', '.'));
      return Number.isFinite(number) ? number : typed;
    }}
  />
);

/** A line of text. */
export const TextField = (props: LengthProps) => (
  <TypedField {...props} inputMode="text" read={(typed) => typed} />
);
