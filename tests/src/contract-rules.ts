import { type Document, operationsOf, type Place } from './contract-document.ts';
import { examplesOf } from './run-contract-examples.ts';

/** Error replies that an operation does not have, and why. */
const neverAnswered: Readonly<Record<string, readonly string[]>> = {
  // is answered without counting, and stays well under pressure: see the route
  getLiveness: ['429', '503'],
};

/** Whether the operation reads a spec that may turn out to have no folder. */
const foldsSpecs = ({ operation }: Place): boolean =>
  JSON.stringify(operation.requestBody ?? null).includes('"#/components/schemas/FolderSpecInput"');

/** Operations whose replies are other numbers every time, or are no text. */
const neverShown: readonly string[] = ['getMetrics', 'drawSetSheets', 'labelSet'];

function neededReplies(place: Place): readonly string[] {
  const never = neverAnswered[place.operation.operationId ?? ''] ?? [];
  return [
    place.method === 'DELETE' ? '204' : place.operation.responses['201'] ? '201' : '200',
    ...['429', '503'].filter((status) => !never.includes(status)),
    ...(place.operation.requestBody ? ['400', '413', '415'] : []),
    ...(place.operation.parameters?.some(({ name }) => name === 'if-match') ? ['412'] : []),
    ...(place.operation.parameters ? ['400'] : []),
    ...(foldsSpecs(place) ? ['422'] : []),
  ];
}

function faultsOf(place: Place, tags: readonly string[]): readonly string[] {
  const { operationId, summary = '', responses } = place.operation;
  const shown = Object.values(responses).flatMap((reply) =>
    Object.values(reply.content ?? {}).flatMap(({ examples = {} }) => Object.values(examples)),
  );
  return [
    ...(operationId ? [] : ['no operationId']),
    ...(summary.length > 9 ? [] : ['no summary']),
    ...(place.operation.tags?.length === 1 && tags.includes(place.operation.tags[0] ?? '')
      ? []
      : ['no known tag']),
    ...(examplesOf(place).length > 0 || neverShown.includes(operationId ?? '') ? [] : ['no example']),
    ...(shown.length > 0 || neverShown.includes(operationId ?? '') ? [] : ['no reply is shown']),
    ...(shown.every((example) => example.summary) ? [] : ['an example without summary']),
    ...neededReplies(place)
      .filter((status) => !responses[status])
      .map((status) => `no reply ${status}`),
  ];
}

/** Everything in which operations fall short of what each must say, one line a fault. */
export const missingFrom = (document: Document): readonly string[] =>
  operationsOf(document).flatMap((place) =>
    faultsOf(
      place,
      document.tags.map(({ name }) => name),
    ).map((fault) => `${place.method} ${place.path}: ${fault}`),
  );
