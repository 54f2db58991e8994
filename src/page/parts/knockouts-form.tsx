import { useState } from 'preact/hooks';
import { type KindName, kindNames, newKnockout } from '../spec/knockouts.ts';
import type { Json } from '../spec/pointer.ts';
import { change, design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { SelectField } from './choice-fields.tsx';
import { KnockoutFields } from './knockout-fields.tsx';
import { usePlaces } from './use-places.ts';

const listIn = (value: Json | undefined): readonly Json[] =>
  Array.isArray(value) ? (value as readonly Json[]) : [];

/** Everything that is cut out, one under the other, and what else could be. */
export function KnockoutsForm() {
  const { say } = useVoice();
  const { spec } = useStore(design, 'history').history.now;
  const { first } = usePlaces();
  const [kind, setKind] = useState<KindName>('circle');
  const list = listIn(spec.knockouts);
  const put = (next: readonly Json[]) => change('/knockouts', next.length === 0 ? undefined : next);
  return (
    <>
      {list.map((knockout, index) => (
        <KnockoutFields
          key={`${index} of ${list.length}`}
          knockout={knockout}
          index={index}
          onRemove={() => put(list.filter((_, at) => at !== index))}
        />
      ))}
      {list.length > 0 && (
        <p class="hint">
          {say('cutout.hint')} {say('cutout.signed')}
        </p>
      )}
      <div class="add-knockout">
        <SelectField
          path="/knockouts/new"
          label={say('cutout.what')}
          value={kind}
          options={kindNames.map((value) => ({ value, label: say(`cutout.kind.${value}`) }))}
          onChoose={(value) => setKind(value as KindName)}
        />
        <button type="button" onClick={() => put([...list, newKnockout(kind, first)])}>
          {say(list.length === 0 ? 'cutout.open' : 'cutout.add')}
        </button>
      </div>
    </>
  );
}
