import { Field, type FieldProps, useFaults } from './field.tsx';
import { fieldId } from './field-id.ts';

export interface Option {
  readonly value: string;
  readonly label: string;
}

export interface OptionGroup {
  readonly label: string;
  readonly options: readonly Option[];
}

interface SelectProps extends FieldProps {
  readonly value: string;
  readonly options: readonly Option[];
  readonly groups?: readonly OptionGroup[];
  readonly onChoose: (value: string) => void;
}

const Choice = ({ value, label }: Option) => <option value={value}>{label}</option>;

/** One of many. */
export const SelectField = ({ path, label, hint, value, options, groups = [], onChoose }: SelectProps) => (
  <Field path={path} label={label} hint={hint}>
    {(wiring) => (
      <select {...wiring} value={value} onChange={({ currentTarget }) => onChoose(currentTarget.value)}>
        {options.map((option) => (
          <Choice key={option.value} {...option} />
        ))}
        {groups
          .filter((group) => group.options.length > 0)
          .map((group) => (
            <optgroup key={group.label} label={group.label}>
              {group.options.map((option) => (
                <Choice key={option.value} {...option} />
              ))}
            </optgroup>
          ))}
      </select>
    )}
  </Field>
);

interface RadioProps extends FieldProps {
  readonly value: string;
  readonly options: readonly Option[];
  readonly onChoose: (value: string) => void;
}

/** One of a few, all in sight. */
export function RadioField({ path, label, value, options, onChoose }: RadioProps) {
  const id = fieldId(path);
  return (
    <fieldset class="field radios" id={id} tabIndex={-1}>
      <legend>{label}</legend>
      {options.map((option) => (
        <label key={option.value}>
          <input
            type="radio"
            name={id}
            value={option.value}
            checked={option.value === value}
            onChange={() => onChoose(option.value)}
          />
          <span>{option.label}</span>
        </label>
      ))}
    </fieldset>
  );
}

interface CheckProps extends FieldProps {
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** Yes or no. */
export function CheckField({ path, label, checked, onChange }: CheckProps) {
  const faults = useFaults(path);
  return (
    <label class="field check">
      <input
        id={fieldId(path)}
        type="checkbox"
        checked={checked}
        aria-invalid={faults.length > 0 ? true : undefined}
        onChange={({ currentTarget }) => onChange(currentTarget.checked)}
      />
      <span>{label}</span>
    </label>
  );
}
