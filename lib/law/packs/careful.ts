import { CAREFUL_FINDINGS } from '../careful-findings';
import { packOf } from '../law-pack';

/** What holds until a place is chosen: the careful figure of each point. */
export const CAREFUL = packOf({ id: 'careful', place: 'No place chosen', read: CAREFUL_FINDINGS });
