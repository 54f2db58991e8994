import type { FoldedAnswer } from '../ask/answer.ts';
import { design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { Told } from './told.tsx';
import { useShow } from './use-show.ts';

/** What else the pockets take. */
function Fits() {
  const { say, tell, language } = useVoice();
  const fits = useStore(design, 'further').further?.fits ?? [];
  if (fits.length === 0) return null;
  const list = fits.map(({ item, envelope, perPocket }) =>
    envelope === undefined
      ? say('numbers.fits.one', { count: perPocket, item: tell(item).text })
      : say('numbers.fits.covered', {
          count: perPocket,
          item: tell(item).text,
          envelope: tell(envelope).text,
        }),
  );
  return <p>{say('numbers.fits', { list: new Intl.ListFormat(language).format(list) })}</p>;
}

/** Every size with its reason, every limit with its slack, and where to score. */
export function Numbers({ folded: { plan } }: { readonly folded: FoldedAnswer }) {
  const { say, tell, language } = useVoice();
  const show = useShow();
  const list = new Intl.ListFormat(language);
  return (
    <section class="card" aria-labelledby="numbers-title">
      <h2 id="numbers-title">{say('numbers.title')}</h2>
      <p>
        {say('numbers.blank', { width: show(plan.blank.width), height: show(plan.blank.height) })}{' '}
        {plan.sheet.whole && say('numbers.whole')} {say('numbers.tape', { length: show(plan.tapeLength) })}
      </p>
      <Fits />
      <h3>{say('numbers.scores')}</h3>
      <dl class="scores">
        <dt>{say('numbers.fromLeft')}</dt>
        <dd>{list.format(plan.scores.vertical.map(show))}</dd>
        <dt>{say('numbers.fromTop')}</dt>
        <dd>{list.format(plan.scores.horizontal.map(show))}</dd>
      </dl>
      <table>
        <caption>{say('numbers.dimensions')}</caption>
        <thead>
          <tr>
            <th scope="col">{say('numbers.part')}</th>
            <th scope="col">{say('numbers.size')}</th>
            <th scope="col">{say('numbers.why')}</th>
          </tr>
        </thead>
        <tbody>
          {plan.reasons.map(({ dimension, title, value, decidedBy, why }) => (
            <tr key={dimension}>
              <th scope="row">
                <Told told={tell(title)} begins />
              </th>
              <td>{show(value)}</td>
              <td>{decidedBy === 'given' ? say('numbers.because.given') : <Told told={tell(why)} />}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <details class="more">
        <summary>{say('numbers.slack')}</summary>
        <table class="more-inside">
          <thead>
            <tr>
              <th scope="col">{say('numbers.bound')}</th>
              <th scope="col">{say('numbers.room')}</th>
            </tr>
          </thead>
          <tbody>
            {plan.bounds
              .filter(({ kind }) => kind !== 'given')
              .map(({ name, why, slack }) => (
                <tr key={name}>
                  <td>
                    <Told told={tell(why)} />
                  </td>
                  <td>{show(slack)}</td>
                </tr>
              ))}
          </tbody>
        </table>
      </details>
    </section>
  );
}
