import type { Json } from '../spec/pointer.ts';
import { change, design } from '../state/design.ts';
import { keptThings } from '../state/kept.ts';
import { useStore } from '../state/store.ts';
import { isWordName } from '../words/say.ts';
import { useVoice } from '../words/use-voice.ts';
import { type Option, SelectField } from './choice-fields.tsx';
import { KeepAs } from './keep-as.tsx';
import { More } from './more.tsx';
import { SizeField } from './size-field.tsx';
import { LengthField } from './text-fields.tsx';

const same = (one: Json | undefined, other: Json | undefined): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

type Held = Option & { readonly holds: Json; readonly about?: string };

/** How lines are drawn, and what the machine can take. */
export function CuttingForm() {
  const { say, tell } = useVoice();
  const { history, catalogue } = useStore(design, 'history', 'catalogue');
  const { spec } = history.now;
  const { kept } = useStore(keptThings, 'kept');
  const starting: readonly Held[] = catalogue.conventions.map(({ name, description, convention }) => {
    const word = `cutting.starting.${name}`;
    return {
      value: `starting:${name}`,
      label: isWordName(word) ? say(word) : name,
      holds: convention as Json,
      about: description,
    };
  });
  const own: readonly Held[] = kept.conventions.map(({ name, value }) => ({
    value: `kept:${name}`,
    label: name,
    holds: value,
  }));
  const conventions = [...own, ...starting];
  const chosen = conventions.find(({ holds }) => same(holds, spec.convention));
  const machines = kept.cutters.map(({ name, value }) => ({
    value: `kept:${name}`,
    label: name,
    holds: value,
  }));
  const unknown = spec.convention !== undefined && !chosen;

  return (
    <section class="slip" aria-labelledby="cutting-title">
      <h2 id="cutting-title">{say('cutting.title')}</h2>
      <SelectField
        path="/convention"
        label={say('cutting.convention')}
        hint={chosen?.about && tell(chosen.about).text}
        value={chosen?.value ?? (unknown ? 'unknown' : '')}
        onChoose={(value) => change('/convention', conventions.find((each) => each.value === value)?.holds)}
        options={[
          { value: '', label: say('cutting.convention.usual') },
          ...(unknown ? [{ value: 'unknown', label: say('cutting.convention.own') }] : []),
        ]}
        groups={[
          { label: say('cutting.group.kept'), options: own },
          { label: say('cutting.group.starting'), options: starting },
        ]}
      />
      {unknown && <KeepAs kind="conventions" label={say('keep.convention')} value={spec.convention} />}
      <SizeField
        path="/cutter"
        label={say('cutting.cutter')}
        none={say('cutting.cutter.none')}
        widthLabel={say('cutting.cutterWidth')}
        heightLabel={say('cutting.cutterHeight')}
        others={machines}
        groups={[{ label: say('cutting.group.kept'), options: machines }]}
      />
      {spec.cutter !== undefined && (
        <More title={say('cutting.more')}>
          <LengthField path="/cutter/margin" label={say('cutting.cutterMargin')} placeholder="0" />
          <KeepAs kind="cutters" label={say('keep.cutter')} value={spec.cutter} />
        </More>
      )}
    </section>
  );
}
