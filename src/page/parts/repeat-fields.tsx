import { repeatsIn } from '../spec/knockouts.ts';
import { isObject, type Json, valueAt } from '../spec/pointer.ts';
import { change } from '../state/design.ts';
import { useVoice } from '../words/use-voice.ts';
import { SelectField } from './choice-fields.tsx';
import { LengthField, NumberField } from './text-fields.tsx';
import { useUnits } from './use-places.ts';

const once = 'once';
const ways = [once, 'edge', 'grid', 'ring'] as const;
const measures = ['count', 'columns', 'rows', 'length', 'radius', 'across', 'down'] as const;

/** How often a figure is cut. */
export function RepeatFields({ knockout, path }: { readonly knockout: Json; readonly path: string }) {
  const { say } = useVoice();
  const repeats = repeatsIn(useUnits());
  const held = valueAt(knockout, '/repeat');
  const way = isObject(held) ? String(held.repeat) : once;
  const begun = repeats[way] ?? {};
  return (
    <>
      <SelectField
        path={`${path}/repeat`}
        label={say('cutout.repeat')}
        value={way}
        options={ways.map((value) => ({ value, label: say(`cutout.repeat.${value}`) }))}
        onChoose={(value) => change(`${path}/repeat`, repeats[value])}
      />
      <div class="pair">
        {measures
          .filter((name) => begun[name] !== undefined)
          .map((name) => {
            const Measure = typeof begun[name] === 'number' ? NumberField : LengthField;
            return (
              <Measure key={name} path={`${path}/repeat/${name}`} label={say(`cutout.repeat.of.${name}`)} />
            );
          })}
      </div>
    </>
  );
}
