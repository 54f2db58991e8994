import { HttpProblem } from '../problem/http-problem.ts';

/**
 * Lets one request in at a time, of work that reads or writes everything.
 * @param what as in "a restore is running"
 * @returns a function that lets one in, and gives back what lets it out; it throws 409 while another is in
 */
export function oneAtATime(what: string): () => () => void {
  let isTaken = false;
  return () => {
    if (isTaken)
      throw new HttpProblem(409, `Another ${what} is running; try again when it is done.`, [], {
        'retry-after': '10',
      });
    isTaken = true;
    return () => {
      isTaken = false;
    };
  };
}
