import { plainMarks } from '../../shared/views/move-marks.ts';
import { methods } from '../../src/page/ask/methods.ts';
import { prepareFor } from '../../src/page/ask/tools.ts';

/** Everything that the core says about a spec and that the page shows. */
export async function saidAbout(spec: unknown): Promise<string[]> {
  await prepareFor(spec);
  const answer = methods.fold(spec);
  const { proposals, steps } = await methods.further(spec);
  const others = [
    ...proposals.flatMap(({ message, gives }) => [message, gives.sheet]),
    ...steps.flatMap(({ words, sight }) => [words, sight.description, ...textsIn(sight.marks)]),
  ];
  switch (answer.state) {
    case 'empty':
      return others;
    case 'unreadable':
    case 'refused':
      return [
        ...others,
        ...answer.faults.flatMap(({ message, remedy }) => [
          message,
          ...(remedy === undefined ? [] : [remedy]),
        ]),
      ];
    case 'folded': {
      const { plan, sights, open, forbids, grips, pockets } = answer;
      return [
        ...others,
        plan.sheet.title,
        // told by the page itself
        ...plan.warnings
          .filter(({ code }) => code !== 'print-not-upright')
          .flatMap(({ message, remedy }) => [message, ...(remedy === undefined ? [] : [remedy])]),
        ...plan.reasons.flatMap(({ title, why, decidedBy }) => [
          title,
          ...(decidedBy === 'given' ? [] : [why]),
        ]),
        ...plan.bounds.filter(({ kind }) => kind !== 'given').map(({ why }) => why),
        ...plan.cautions,
        ...Object.values(sights).flatMap(({ description, marks }) => [description, ...textsIn(marks)]),
        ...open.panels.map(({ label }) => label),
        ...forbids.map(({ message }) => message),
        ...grips.map(({ title }) => title),
        ...plan.places.map(({ name }) => name),
        ...pockets,
        ...(plan.knockouts?.pieces ?? []).map(({ title }) => title),
      ];
    }
  }
}

const textsIn = (marks: Parameters<typeof plainMarks>[0]): string[] =>
  plainMarks(marks).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
