import type { Phrases } from '../tell.ts';

/** Lo que el núcleo dice de lengüetas y ranuras. */
export const locks: Phrases = {
  'pocket tabs': 'pestañas de los bolsillos',
  tongue: 'lengüeta',
  tongues: 'lengüetas',
  'the tongue': 'la lengüeta',
  'the tongues': 'las lengüetas',
  'left front pocket tab': 'pestaña izquierda del bolsillo delantero',
  'right front pocket tab': 'pestaña derecha del bolsillo delantero',
  'left back pocket tab': 'pestaña izquierda del bolsillo trasero',
  'right back pocket tab': 'pestaña derecha del bolsillo trasero',
  'push the tongue of the {words} through its slot, one shoulder after the other, and lay it flat.':
    'empuje la lengüeta por su ranura, un hombro tras otro, y déjela plana ({words}).',
  'push the tongues of the {words} through their slots, one shoulder after the other, and lay them flat.':
    'empuje las lengüetas por sus ranuras, un hombro tras otro, y déjelas planas ({words}).',
  '{words}, and the tab at the spine lies below half of it':
    '{words}, y la pestaña del lomo queda bajo una mitad de este',
  'a slot lies {length} inside its panel’s edge, and the tongue reaches beyond it':
    'una ranura queda a {length} del borde de su panel, y la lengüeta va más allá',
  'a slot lies {length} inside the edge of its end, and the tongue reaches beyond it':
    'una ranura queda a {length} del borde de su extremo, y la lengüeta va más allá',
  'slots lie {length} inside the edge of the back, and the tongues reach beyond them':
    'las ranuras quedan a {length} del borde de la parte trasera, y las lengüetas van más allá',
  'a lower pocket has no room for its tongues': 'un bolsillo más bajo no tiene sitio para sus lengüetas',
  'a lower box has no room for the tongue at its seam':
    'una caja más baja no tiene sitio para la lengüeta de su unión',
  'a narrower band has no room for a tongue': 'una faja más estrecha no tiene sitio para una lengüeta',
  'the tongues of a pocket’s two tabs must not reach each other':
    'las lengüetas de las dos pestañas de un bolsillo no deben tocarse',
  '{words} is cut through a tongue that holds the {wordsB}':
    '{words} atraviesa una lengüeta que sujeta esto: {wordsB}',
  '{words} leaves {length} of paper beside the tongue that holds the {wordsB}: less than {lengthB} tears':
    '{words}: deja {length} de papel junto a la lengüeta que sujeta esto: {wordsB}; menos de {lengthB} se rasga',
  '{words} leaves {length} of paper beside the slot that holds the {wordsB}: less than {lengthB} tears':
    '{words} deja {length} de papel junto a la ranura que sujeta esto: {wordsB}; menos de {lengthB} se rasga',
  'hold the tabs with tape or glue': 'sujetar las pestañas con cinta o pegamento',
};
