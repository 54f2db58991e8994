import type { Phrases } from '../tell.ts';

/** Ce que le moteur de calcul dit de ce qu’on découpe. */
export const cutouts: Phrases = {
  outside: 'extérieur',
  inside: 'intérieur',
  'inside of the {words}': 'intérieur : {words}',
  'outside of the {words}': 'extérieur : {words}',
  'left dust flap': 'rabat anti-poussière gauche',
  'right dust flap': 'rabat anti-poussière droit',
  top: 'haut',
  'left flap hinge': 'charnière du rabat gauche',
  'right flap hinge': 'charnière du rabat droit',
  'top flap hinge': 'charnière du rabat du haut',
  'bottom flap hinge': 'charnière du rabat du bas',
  '{words}, {wordsB}': '{words}, {wordsB}',
  'the circle': 'le cercle',
  'the oval': 'l’ovale',
  'the rounded rectangle': 'le rectangle arrondi',
  'the regular polygon': 'le polygone',
  'the star': 'l’étoile',
  'the heart': 'le cœur',
  'the scalloped circle': 'le cercle festonné',
  'the scalloped rectangle': 'le rectangle festonné',
  'the arch': 'l’arche',
  'the lettering': 'le lettrage',
  'the artwork': 'le dessin',
  'the ribbon slot': 'la fente à ruban',
  'the thumb notch': 'l’encoche pour le pouce',
  'the rounding of corners': 'l’arrondi des coins',
  'the pair of ribbon slots': 'la paire de fentes à ruban',
  'inlay of {words}': 'pièce de fond : {words}',
  'frame around {words}': 'cadre : {words}',
  '{words} no. {number}': '{words} n° {number}',
  '“{name}”': '« {name} »',
  'a piece of paper stands loose in {list}: {length}² falls out':
    'un morceau de papier ne tient à rien ({list}) : {length}² tombent',
  '{number} pieces of paper stand loose in {list}: {length}² falls out':
    '{number} morceaux de papier ne tiennent à rien ({list}) : {length}² tombent',
  'an arch that is this low has no sides below its half circle':
    'une arche si basse n’a pas de côtés sous son demi-cercle',
  'between {list} only {length} of paper is left: less than {lengthB} tears':
    'entre ces découpes ({list}), il ne reste que {length} de papier : moins de {lengthB} se déchire',
  'between {list} only {length} of paper is left in {number} places: less than {lengthB} tears':
    'entre ces découpes ({list}), il ne reste que {length} de papier en {number} endroits : moins de {lengthB} se déchire',
  'beside {words} only {length} of paper is left: less than {lengthB} tears':
    'à côté ({words}), il ne reste que {length} de papier : moins de {lengthB} se déchire',
  'beside {words} only {length} of paper is left in {number} places: less than {lengthB} tears':
    'à côté ({words}), il ne reste que {length} de papier en {number} endroits : moins de {lengthB} se déchire',
  'in {words} only {length} of paper is left: less than {lengthB} tears':
    'dedans ({words}), il ne reste que {length} de papier : moins de {lengthB} se déchire',
  'in {words} only {length} of paper is left in {number} places: less than {lengthB} tears':
    'dedans ({words}), il ne reste que {length} de papier en {number} endroits : moins de {lengthB} se déchire',
  'a strip of paper beside {list} is {number} times as long as it is wide: more than {numberB} times bends and catches':
    'une bande de papier à côté ({list}) est {number} fois plus longue que large : au-delà de {numberB} fois, elle plie et accroche',
  'give a height of at least {length}': 'donner une hauteur d’au moins {length}',
  'give a radius of at most {length}': 'donner un rayon d’au plus {length}',
  'give a shoulder of at most {length}': 'donner un biseau d’au plus {length}',
  'known here: {words}': 'ici, il y a : {words}',
  'leave bridges, or keep the piece and glue it back':
    'laisser des attaches, ou garder le morceau et le recoller',
  'make it larger or plainer': 'l’agrandir ou le simplifier',
  'move it away or make it smaller': 'l’éloigner ou le réduire',
  'move it away, or keep the glue short there': 'l’éloigner, ou coller moins loin à cet endroit',
  'move it off the fold if that is not meant': 'l’écarter du pli si ce n’est pas voulu',
  'move it onto the {words}, or cut other layers': 'le placer ici : {words}, ou découper d’autres épaisseurs',
  'move it or make it smaller if that is not meant': 'l’éloigner ou le réduire si ce n’est pas voulu',
  'move it, make it smaller, or cut only the seen layer if that is not meant':
    'l’éloigner, le réduire ou ne découper que l’épaisseur visible si ce n’est pas voulu',
  'move it, make it smaller, or cut other layers': 'l’éloigner, le réduire ou découper d’autres épaisseurs',
  'move them apart if that is not meant': 'les écarter si ce n’est pas voulu',
  'move them apart, make them smaller, or set knockoutLimits if your paper and tool bear it':
    'les écarter, les réduire ou changer les limites si le papier et l’outil le permettent',
  'make it wider or shorter, or hold it by a bridge': 'l’élargir, la raccourcir ou la tenir par une attache',
  'set cutter.roundCorners, or expect torn corners':
    'faire arrondir les coins pour la machine, ou s’attendre à des coins déchirés',
  '{words} cuts {length}, {number} %, out of the fold “{wordsB}”: the score stops at the opening, and the edge shows it from both sides':
    'cela ôte {length}, {number} %, d’un pli ({words} ; {wordsB}) : le rainage s’arrête à l’ouverture, et le bord le montre des deux côtés',
  '{list} cut {length}, {number} %, out of the fold “{wordsB}”: the score stops at the opening, and the edge shows it from both sides':
    '{list} ôtent ensemble {length}, {number} %, d’un pli ({wordsB}) : le rainage s’arrête à l’ouverture, et le bord le montre des deux côtés',
  '{words} cuts {length}, {number} %, out of the fold “{wordsB}”: too little is left to fold':
    'cela ôte {length}, {number} %, d’un pli ({words} ; {wordsB}) : il reste trop peu à plier',
  '{list} cut {length}, {number} %, out of the fold “{wordsB}”: too little is left to fold':
    '{list} ôtent ensemble {length}, {number} %, d’un pli ({wordsB}) : il reste trop peu à plier',
  '{words} has a corner sharper than the {length} that the cutter can turn in':
    '{words} : un coin est plus aigu que les {length} où la machine peut tourner',
  '{words} has {number} corners sharper than the {length} that the cutter can turn in':
    '{words} : {number} coins sont plus aigus que les {length} où la machine peut tourner',
  '{words} is cut through the glue at the {wordsB}, {number} % of a strip: leave the glue out there':
    '{words} traverse la colle ({wordsB}), {number} % d’une bande ; ne pas coller à cet endroit',
  '{words} is cut through the glue at the {wordsB}, {number} % of a strip: what is left does not hold':
    '{words} traverse la colle ({wordsB}), {number} % d’une bande ; le reste ne tient pas',
  '{words} comes within {length} of the glue at the {wordsB}: nearer than {lengthB} it may be pressed out into the opening':
    '{words} arrive à {length} de la colle ({wordsB}) ; à moins de {lengthB}, elle peut déborder dans l’ouverture',
  '{words} comes within {length} of a score: nearer than {lengthB} the fold pulls at the opening':
    '{words} arrive à {length} d’un rainage ; à moins de {lengthB}, le pli tire sur l’ouverture',
  '{words} comes within {length} of the paper’s edge: nearer than {lengthB} narrow edges bend and tear':
    '{words} arrive à {length} du bord du papier ; à moins de {lengthB}, le bord plie et se déchire',
  '{words} reaches the sheet’s edge: the outline changes there, and a hem or flap under it is cut open':
    '{words} atteint le bord de la feuille ; le contour y change, et un rempli ou un rabat dessous est ouvert',
  '{words} cuts nothing: no layer that it is meant for lies there':
    '{words} ne découpe rien ; aucune des épaisseurs voulues ne s’y trouve',
  '{list} overlap: they are cut as one opening':
    '{list} se recouvrent : c’est une seule ouverture qui est découpée',
  '{words} is only {length} wide: openings of less than {lengthB} tear or close up':
    '{words} ne fait que {length} de large ; sous {lengthB}, une ouverture se déchire ou se referme',
  '{words} is only {length} wide in {number} places: openings of less than {lengthB} tear or close up':
    '{words} ne fait que {length} de large en {number} endroits ; sous {lengthB}, une ouverture se déchire ou se referme',
  'the corners are rounder than the sides have room for':
    'les coins sont plus ronds que les côtés ne le permettent',
  'there is no layer under it called {name}': 'aucune épaisseur dessous ne s’appelle {name}',
  'there is no place {name}': 'cet endroit n’existe pas : {name}',
  'there is no pocket {name}': 'cette poche n’existe pas : {name}',
  '{number} % of {words} lies beyond the {wordsB}': '{number} % dépassent ({words} ; {wordsB})',
  'the cut corners leave nothing of the top or of the sides':
    'les coins coupés ne laissent rien du haut ou des côtés',
  'the eyelet does not lie within the tag': 'l’œillet n’est pas dans l’étiquette',
  'give a smaller eyelet, or one whose middle lies further from the edges':
    'donner un œillet plus petit, ou plus loin des bords',
  'make it smaller or move it off the fold': 'le réduire ou l’écarter du pli',
  '{words} comes within {length} of a pocket’s mouth: nearer than {lengthB} it is pulled at there':
    '{words} arrive à {length} de l’ouverture d’une poche ; à moins de {lengthB}, on tire dessus',
  'a piece between the edge and {list}: {length}² comes off':
    'un morceau entre le bord et l’ouverture ({list}) : {length}² se détachent',
  '{number} pieces between the edge and {list}: {length}² comes off':
    '{number} morceaux entre le bord et l’ouverture ({list}) : {length}² se détachent',
  'the sheet falls into {number} parts at {list}: {length}² comes off':
    'la feuille tombe ici en {number} parties ({list}) : {length}² se détachent',
  'move it away from the edge, or further over it': 'l’éloigner du bord, ou le pousser plus loin au-delà',
  'make it smaller or leave a bridge': 'le réduire ou laisser un pont',
  'make it wider, or leave a bridge across the opening':
    'l’élargir, ou laisser un pont à travers l’ouverture',
  'every corner of the {words} is at a spine': 'chaque coin est au dos : {words}',
  'name the corners, or another place': 'nommer les coins, ou un autre endroit',
  'the corners are rounder than the place is large': 'les coins sont plus ronds que l’endroit n’est grand',
};
