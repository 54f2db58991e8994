import { useId } from 'preact/hooks';
import type { Sight } from '../ask/answer.ts';
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
}

/** Room for letters beside what is drawn, in pixels. */
const rim = 14;

/** One thing seen, as large as its place allows. */
export const SightView = memo(function SightView({
  sight,
  tell,
  tallest,
  print,
  labelled = true,
}: SightProps) {
  const id = useId();
  const { ref, width } = useWidth<HTMLDivElement>();
  const room = width - 2 * rim;
  const scale = Math.min(room / sight.width, tallest / sight.height);
  const [across, down] = [sight.width * scale + 2 * rim, sight.height * scale + 2 * rim];
  const description = tell(sight.description);
  return (
    <div class="sight" ref={ref}>
      {room > 0 && (
        <svg
          role="img"
          aria-label={description.text}
          lang={description.known ? undefined : 'en'}
          width={across}
          height={down}
          viewBox={`${sight.left * scale - rim} ${sight.top * scale - rim} ${across} ${down}`}
        >
          <Marks marks={sight.marks} drawing={{ scale, tell, labelled, print }} id={id} />
        </svg>
      )}
    </div>
  );
});
