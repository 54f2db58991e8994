import type { ShownLength } from '../../../shared/lengths/show-length.ts';
import type { FoldedAnswer, OpenSheet, Stroke } from '../ask/answer.ts';
import type { Photo } from '../state/photos.ts';
import { numberIn } from '../words/lengths.ts';
import type { Voice } from '../words/use-voice.ts';
import { Findings } from './findings.tsx';
import { memo } from './memo.ts';
import { paintOf } from './paper-defs.tsx';
import { after, matrixText, photoOnSheet } from './photo-matrix.ts';
import { type PlacedTick, sideRooms, tickReach, tickRows, unitEnd } from './tick-rows.ts';
import { useWidth } from './use-width.ts';

interface OpenSheetProps {
  readonly folded: FoldedAnswer;
  readonly voice: Voice;
  readonly inches: boolean;
  readonly tallest: number;
  readonly photo: Photo | undefined;
}

/** Room for the numbers along the edges, in pixels. */
const above = 46;
const rim = 16;
const rows = 3;
const rowHeight = 13;

const textWidth = (text: string): number => text.length * 6.6;

const lineData = (strokes: readonly Stroke[], scale: number): string =>
  strokes
    .map(
      ({ from, to }) =>
        `M ${from.map((each) => each * scale).join(' ')} L ${to.map((each) => each * scale).join(' ')}`,
    )
    .join(' ');

/** A panel's name, level or upright, where there is room for it. */
function PanelName({
  panel,
  scale,
  text,
  aside,
}: {
  readonly panel: OpenSheet['panels'][number];
  readonly scale: number;
  readonly text: string;
  /** Above what may be cut out of its middle. */
  readonly aside: boolean;
}) {
  const [wide, high] = [panel.width * scale, panel.height * scale];
  const needs = textWidth(text) + 8;
  const level = needs <= wide && high >= 16;
  const x = panel.x * scale + (aside && !level ? Math.min(10, wide / 2) : wide / 2);
  const y = panel.y * scale + (aside && level ? 10 : high / 2);
  if (!level && !(needs <= high && wide >= 14)) return null;
  return (
    <text
      x={x}
      y={y}
      dy="0.35em"
      text-anchor="middle"
      class="part"
      {...(level ? {} : { transform: `rotate(-90 ${x} ${y})` })}
    >
      {text}
    </text>
  );
}

/** Numbers along an edge; a line to a number further out goes behind those that are nearer. */
const Ticks = ({ ticks, left }: { readonly ticks: readonly PlacedTick[]; readonly left?: boolean }) => (
  <g class={left ? 'ticks ticks-left' : 'ticks'}>
    {ticks.map(({ at, row }) => (
      <path
        key={at}
        d={left ? `M -3 ${at} L -9 ${at}` : `M ${at} -3 L ${at} ${-8 - row * rowHeight}`}
        class="tick"
      />
    ))}
    {ticks.map(({ at, text, row }) =>
      left ? (
        <text key={at} x={-tickReach} y={at} dy="0.35em" text-anchor="end">
          {text}
        </text>
      ) : (
        <text key={at} x={at} y={-11 - row * rowHeight} text-anchor="middle">
          {text}
        </text>
      ),
    )}
  </g>
);

/** The open sheet on the table: what is scored, what is cut, and how far from the edges. */
export const OpenSheetView = memo(function OpenSheetView(props: OpenSheetProps) {
  const { folded, voice, inches, tallest, photo } = props;
  const { say, tell, language } = voice;
  const { ref, width } = useWidth<HTMLDivElement>();
  const { open, plan } = folded;
  const { sheet, blank } = open;
  const show = ({ mm, inch }: ShownLength): string =>
    inches ? inch : numberIn(language, String(Math.round(mm * 100) / 100));
  const withUnit = (length: ShownLength): string => (inches ? `${length.inch} in` : `${show(length)} mm`);
  const listed = (lengths: readonly ShownLength[]): string =>
    new Intl.ListFormat(language).format(lengths.map(withUnit));
  const [across, down] = [
    [...plan.scores.vertical, plan.blank.width],
    [...plan.scores.horizontal, plan.blank.height],
  ];
  const { left, right } = sideRooms({ across: across.map(show), down: down.map(show) }, textWidth);
  const scale = Math.min((width - left - right) / sheet.width, (tallest - above - rim) / sheet.height);
  const columns = tickRows(
    across.map((length) => ({ at: length.mm * scale, text: show(length) })),
    textWidth,
    rows,
  );
  const lines = tickRows(
    down.map((length) => ({ at: length.mm * scale, text: show(length) })),
    () => rowHeight - 4,
    1,
  );
  const trims = blank.width < sheet.width || blank.height < sheet.height;
  const [wide, high] = [sheet.width * scale, sheet.height * scale];
  const refuses = new Set(folded.forbids.map(({ message }) => message));
  const found = (plan.knockouts?.findings ?? []).flatMap(({ number, message, at }) =>
    at.map(({ x, y }) => ({ number, refuses: refuses.has(message), x: x.mm * scale, y: y.mm * scale })),
  );
  const picture = { wide: left + wide + right, high: above + high + rim };
  return (
    <div class="sight" ref={ref}>
      {scale > 0 && (
        <svg
          role="img"
          aria-label={say('picture.open.about', {
            width: withUnit(plan.blank.width),
            height: withUnit(plan.blank.height),
            vertical: listed(plan.scores.vertical),
            horizontal: listed(plan.scores.horizontal),
          })}
          width={picture.wide}
          height={picture.high}
          viewBox={`${-left} ${-above} ${picture.wide} ${picture.high}`}
        >
          <rect width={wide} height={high} class="sheet" fill={paintOf('inside')} />
          {photo && (
            <image
              href={photo.address}
              width="1"
              height="1"
              preserveAspectRatio="none"
              transform={matrixText(
                after(
                  { a: scale, b: 0, c: 0, d: scale, e: 0, f: 0 },
                  photoOnSheet('inside', sheet, open.ups.inside),
                ),
              )}
            />
          )}
          {trims && (
            <path
              class="rest"
              fill-rule="evenodd"
              d={`M 0 0 H ${wide} V ${high} H 0 Z M 0 0 V ${blank.height * scale} H ${blank.width * scale} V 0 Z`}
            />
          )}
          <g transform={`scale(${scale})`}>
            <path d={open.knockouts.map(({ data }) => data).join(' ')} class="hole" />
          </g>
          <path d={lineData(open.valleys, scale)} class="score score-halo" />
          <path d={lineData(open.mountains, scale)} class="score score-halo" />
          <path d={lineData(open.valleys, scale)} class="score score-valley" />
          <path d={lineData(open.mountains, scale)} class="score score-mountain" />
          <g transform={`scale(${scale})`}>
            <path d={open.cuts} class="cut" />
          </g>
          <rect width={wide} height={high} class="edge" />
          {open.panels.map((panel, index) => (
            <PanelName
              key={index}
              panel={panel}
              scale={scale}
              text={tell(panel.label).text}
              aside={open.knockouts.length > 0}
            />
          ))}
          <Findings found={found} middle={{ x: wide / 2, y: high / 2 }} />
          <Ticks ticks={columns} />
          <Ticks ticks={lines} left />
          <text x={unitEnd(columns, textWidth)} y={-11} text-anchor="end" class="unit">
            {inches ? 'in' : 'mm'}
          </text>
        </svg>
      )}
    </div>
  );
});
