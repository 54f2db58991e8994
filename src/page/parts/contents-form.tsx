import type { SizeOption } from '../ask/catalogue.ts';
import { type Spec, valueAt } from '../spec/pointer.ts';
import { change, changeAll, design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { CheckField, RadioField } from './choice-fields.tsx';
import { More } from './more.tsx';
import { SizeField } from './size-field.tsx';
import { LengthField, NumberField } from './text-fields.tsx';
import { useSizes } from './use-sizes.ts';

const standings: Readonly<Record<string, boolean | undefined>> = {
  any: undefined,
  given: false,
  turned: true,
};

const standingOf = (spec: Spec): string => {
  const turned = valueAt(spec, '/contents/turned');
  return turned === true ? 'turned' : turned === false ? 'given' : 'any';
};

/** A card, by name or measured. */
function CardField({ path }: { readonly path: string }) {
  const { say } = useVoice();
  const { metric, inch } = useSizes('card');
  return (
    <SizeField
      path={path}
      label={say('contents.card')}
      hint={say('contents.card.hint')}
      none={say('contents.card.none')}
      widthLabel={say('contents.cardWidth')}
      heightLabel={say('contents.cardHeight')}
      groups={[
        { label: say('contents.group.metric'), options: metric },
        { label: say('contents.group.inch'), options: inch },
      ]}
    />
  );
}

/** The card that a piece is as large as. */
function CardForm() {
  const { say } = useVoice();
  const { spec } = useStore(design, 'history').history.now;
  return (
    <>
      <CardField path="/card" />
      {spec.card !== undefined && (
        <CheckField
          path="/card/turned"
          label={say('contents.standing.turned')}
          checked={valueAt(spec, '/card/turned') === true}
          onChange={(checked) => change('/card/turned', checked ? true : undefined)}
        />
      )}
    </>
  );
}

/** What it is made for. */
export function MadeForForm() {
  const { say } = useVoice();
  const { catalogue, history } = useStore(design, 'catalogue', 'history');
  const style = catalogue.styles.find(({ name }) => name === history.now.spec.style);
  const madeFor = style?.madeFor ?? 'contents';
  return (
    <section class="slip" aria-labelledby="contents-title">
      <h2 id="contents-title">{say(madeFor === 'card' ? 'contents.title.card' : 'contents.title')}</h2>
      {madeFor === 'contents' && <ContentsForm />}
      {madeFor === 'card' && <CardForm />}
      {madeFor === 'nothing' && <p class="hint">{say('contents.nothing')}</p>}
    </section>
  );
}

/** What goes into the pockets. */
function ContentsForm() {
  const { say } = useVoice();
  const { spec } = useStore(design, 'history').history.now;
  const card = valueAt(spec, '/contents/item/size');
  const hasCard = valueAt(spec, '/contents/item') !== undefined;
  const envelopes = useSizes('envelope');
  const [metric, inch] = [say('contents.group.metric'), say('contents.group.inch')];
  const isFitting = ({ takes }: SizeOption) => typeof card === 'string' && takes.includes(card);
  const fitting = [...envelopes.metric, ...envelopes.inch].filter(isFitting);
  const others = (options: readonly SizeOption[]) => options.filter((each) => !isFitting(each));

  return (
    <>
      <CardField path="/contents/item" />
      {hasCard && (
        <>
          <SizeField
            path="/contents/envelope"
            label={say('contents.envelope')}
            none={say('contents.envelope.none')}
            widthLabel={say('contents.envelopeWidth')}
            heightLabel={say('contents.envelopeHeight')}
            groups={[
              { label: say('contents.group.fits'), options: fitting },
              { label: metric, options: others(envelopes.metric) },
              { label: inch, options: others(envelopes.inch) },
            ]}
          />
          <NumberField
            path="/contents/perPocket"
            label={say('contents.perPocket')}
            hint={say('contents.perPocket.hint')}
            placeholder="1"
          />
          <More title={say('contents.more')}>
            <RadioField
              path="/contents/item/form"
              label={say('contents.form')}
              value={String(valueAt(spec, '/contents/item/form') ?? 'folded')}
              options={(['folded', 'flat'] as const).map((value) => ({
                value,
                label: say(`contents.form.${value}`),
              }))}
              onChoose={(value) => change('/contents/item/form', value === 'folded' ? undefined : value)}
            />
            <LengthField
              path="/contents/thickness"
              label={say('contents.thickness')}
              hint={say('contents.thickness.hint')}
            />
            <LengthField path="/contents/item/raised" label={say('contents.raised')} />
            <RadioField
              path="/contents/packing"
              label={say('contents.packing')}
              value={String(valueAt(spec, '/contents/packing') ?? 'pressed')}
              options={(['pressed', 'loose'] as const).map((value) => ({
                value,
                label: say(`contents.packing.${value}`),
              }))}
              onChoose={(value) => change('/contents/packing', value === 'pressed' ? undefined : value)}
            />
            <RadioField
              path="/contents/turned"
              label={say('contents.standing')}
              value={standingOf(spec)}
              options={(['any', 'given', 'turned'] as const).map((value) => ({
                value,
                label: say(`contents.standing.${value}`),
              }))}
              onChoose={(value) => changeAll([['/contents/turned', standings[value]]])}
            />
          </More>
        </>
      )}
    </>
  );
}
