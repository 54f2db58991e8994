import { oneKept } from '../../../../src/resources/one-kept.ts';

export default oneKept('cutters');
