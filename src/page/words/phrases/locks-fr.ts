import type { Phrases } from '../tell.ts';

/** Ce que le noyau de calcul dit des tenons et des fentes. */
export const locks: Phrases = {
  'pocket tabs': 'languettes des poches',
  tongue: 'tenon',
  tongues: 'tenons',
  'the tongue': 'le tenon',
  'the tongues': 'les tenons',
  'left front pocket tab': 'languette gauche de la poche avant',
  'right front pocket tab': 'languette droite de la poche avant',
  'left back pocket tab': 'languette gauche de la poche arrière',
  'right back pocket tab': 'languette droite de la poche arrière',
  'push the tongue of the {words} through its slot, one shoulder after the other, and lay it flat.':
    'poussez le tenon à travers sa fente, une épaule après l’autre, et couchez-le à plat ({words}).',
  'push the tongues of the {words} through their slots, one shoulder after the other, and lay them flat.':
    'poussez les tenons à travers leurs fentes, une épaule après l’autre, et couchez-les à plat ({words}).',
  '{words}, and the tab at the spine lies below half of it':
    '{words}, et la languette du dos est sous une moitié de celui-ci',
  'a slot lies {length} inside its panel’s edge, and the tongue reaches beyond it':
    'une fente est à {length} du bord de son panneau, et le tenon va au-delà',
  'a slot lies {length} inside the edge of its end, and the tongue reaches beyond it':
    'une fente est à {length} du bord de son bout, et le tenon va au-delà',
  'slots lie {length} inside the edge of the back, and the tongues reach beyond them':
    'les fentes sont à {length} du bord de l’arrière, et les tenons vont au-delà',
  'a lower pocket has no room for its tongues': 'une poche plus basse n’a pas la place pour ses tenons',
  'a lower box has no room for the tongue at its seam':
    'une boîte plus basse n’a pas la place pour le tenon de sa couture',
  'a narrower band has no room for a tongue': 'une bande plus étroite n’a pas la place pour un tenon',
  'the tongues of a pocket’s two tabs must not reach each other':
    'les tenons des deux languettes d’une poche ne doivent pas se toucher',
  '{words} is cut through a tongue that holds the {wordsB}':
    '{words} traverse un tenon qui tient ceci : {wordsB}',
  '{words} leaves {length} of paper beside the tongue that holds the {wordsB}: less than {lengthB} tears':
    '{words} : laisse {length} de papier à côté du tenon qui tient ceci : {wordsB} ; moins de {lengthB} se déchire',
  '{words} leaves {length} of paper beside the slot that holds the {wordsB}: less than {lengthB} tears':
    '{words} laisse {length} de papier à côté de la fente qui tient ceci : {wordsB} ; moins de {lengthB} se déchire',
  'hold the tabs with tape or glue': 'tenir les languettes par ruban adhésif ou colle',
};
