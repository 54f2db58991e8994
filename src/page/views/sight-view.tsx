import { useId } from 'preact/hooks';
import type { Grip, Sight } from '../ask/answer.ts';
import { Later } from '../parts/later.ts';
import type { Tell } from '../words/tell.ts';
import { Marks, type Print } from './marks.tsx';
import { memo } from './memo.ts';
import { useWidth } from './use-width.ts';

interface SightProps {
  readonly sight: Sight;
  readonly tell: Tell;
  readonly print: Print;
  /** The most that it may be high, in pixels. */
  readonly tallest: number;
  readonly labelled?: boolean;
  /** What can be taken hold of in it. */
  readonly grips?: readonly Grip[] | undefined;
}

const none: readonly Grip[] = [];
const loadGrips = () => import('./grips.tsx').then(({ Grips }) => Grips);

/** Room for letters beside what is drawn, in pixels. */
const rim = 14;

/** One thing seen, as large as its place allows. */
export const SightView = memo(function SightView({
  sight,
  tell,
  tallest,
  print,
  labelled = true,
  grips = none,
}: SightProps) {
  const id = useId();
  const { ref, width } = useWidth<HTMLDivElement>();
  const room = width - 2 * rim;
  const scale = Math.min(room / sight.width, tallest / sight.height);
  const [across, down] = [sight.width * scale + 2 * rim, sight.height * scale + 2 * rim];
  const middle = {
    x: (sight.left + sight.width / 2) * scale,
    y: (sight.top + sight.height / 2) * scale,
  };
  const description = tell(sight.description);
  return (
    <div class="sight" ref={ref}>
      {room > 0 && (
        <div class="frame">
          <svg
            role="img"
            aria-label={description.text}
            lang={description.known ? undefined : 'en'}
            width={across}
            height={down}
            viewBox={`${sight.left * scale - rim} ${sight.top * scale - rim} ${across} ${down}`}
          >
            <Marks marks={sight.marks} drawing={{ scale, tell, labelled, print, middle }} id={id} />
          </svg>
          {grips.length > 0 && sight.ratio !== undefined && (
            <Later
              load={loadGrips}
              props={{
                grips,
                frame: {
                  scale,
                  ratio: sight.ratio,
                  left: rim - sight.left * scale,
                  top: rim - sight.top * scale,
                },
              }}
              loading=""
              failed=""
            />
          )}
        </div>
      )}
    </div>
  );
});
