export { leavesOf } from '../folding/leaves.ts';
