import { listKept } from '../../../src/resources/list-kept.ts';

export default listKept('designs');
