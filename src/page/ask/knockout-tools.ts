/* What only designs with knockouts need, loaded for the first of them. */
export { drawPiece } from '../../../shared/drawing/draw-piece.ts';
export { placeKnockouts } from '../../../shared/knockouts/place-knockouts.ts';
