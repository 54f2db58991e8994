import type { Phrases } from '../tell.ts';

/** Was der Rechenkern zu Zungen und Schlitzen sagt. */
export const locks: Phrases = {
  'pocket tabs': 'Taschenlaschen',
  tongue: 'Zunge',
  tongues: 'Zungen',
  'the tongue': 'die Zunge',
  'the tongues': 'die Zungen',
  'left front pocket tab': 'linke Lasche der vorderen Tasche',
  'right front pocket tab': 'rechte Lasche der vorderen Tasche',
  'left back pocket tab': 'linke Lasche der hinteren Tasche',
  'right back pocket tab': 'rechte Lasche der hinteren Tasche',
  'push the tongue of the {words} through its slot, one shoulder after the other, and lay it flat.':
    'Zunge durch ihren Schlitz drücken, eine Schulter nach der anderen, und flach hinlegen ({words}).',
  'push the tongues of the {words} through their slots, one shoulder after the other, and lay them flat.':
    'Zungen durch ihre Schlitze drücken, eine Schulter nach der anderen, und flach hinlegen ({words}).',
  '{words}, and the tab at the spine lies below half of it':
    '{words}, und die Lasche am Rücken liegt unter dessen einer Hälfte',
  'a slot lies {length} inside its panel’s edge, and the tongue reaches beyond it':
    'ein Schlitz liegt {length} innerhalb des Randes, und die Zunge reicht darüber hinaus',
  'a slot lies {length} inside the edge of its end, and the tongue reaches beyond it':
    'ein Schlitz liegt {length} innerhalb des Randes seines Endes, und die Zunge reicht darüber hinaus',
  'slots lie {length} inside the edge of the back, and the tongues reach beyond them':
    'Schlitze liegen {length} innerhalb des Randes der Rückseite, und die Zungen reichen darüber hinaus',
  'a lower pocket has no room for its tongues': 'eine niedrigere Tasche hat keinen Platz für ihre Zungen',
  'a lower box has no room for the tongue at its seam':
    'eine niedrigere Schachtel hat an der Naht keinen Platz für die Zunge',
  'a narrower band has no room for a tongue': 'eine schmalere Banderole hat keinen Platz für eine Zunge',
  'the tongues of a pocket’s two tabs must not reach each other':
    'die Zungen der beiden Laschen einer Tasche dürfen sich nicht berühren',
  '{words} is cut through a tongue that holds the {wordsB}':
    '{words} geht durch eine Zunge, die hält: {wordsB}',
  '{words} leaves {length} of paper beside the tongue that holds the {wordsB}: less than {lengthB} tears':
    '{words}: lässt nur {length} Papier neben der Zunge, die hält: {wordsB}; weniger als {lengthB} reißt',
  '{words} leaves {length} of paper beside the slot that holds the {wordsB}: less than {lengthB} tears':
    '{words} lässt nur {length} Papier neben dem Schlitz, der hält: {wordsB}; weniger als {lengthB} reißt',
  'hold the tabs with tape or glue': 'die Laschen mit Klebeband oder Kleber halten',
};
