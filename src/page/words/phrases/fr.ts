import type { Phrases } from '../tell.ts';
import { cutouts } from './cutouts-fr.ts';
import { figures } from './figures-fr.ts';
import { locks } from './locks-fr.ts';
import { styles } from './styles-fr.ts';

/** Ce que dit le moteur de calcul, en français ; pour les formes, voir `Phrases`. */
export const phrases: Phrases = {
  // parties
  hem: 'rempli',
  hems: 'remplis',
  corner: 'coin',
  corners: 'coins',
  seam: 'jointure',
  spine: 'dos',
  front: 'devant',
  back: 'derrière',
  overlap: 'recouvrement',
  pocket: 'poche',
  pockets: 'poches',
  tab: 'languette',
  tabs: 'languettes',
  'top flap': 'rabat du haut',
  'bottom flap': 'rabat du bas',
  'front cover': 'plat avant',
  'back cover': 'plat arrière',
  'panel width': 'largeur du plat',
  'panel height': 'hauteur du plat',
  'the hem': 'le rempli',
  'the hems': 'les remplis',
  'the corner': 'le coin',
  'the corners': 'les coins',
  'the spine': 'le dos',
  'the top flap': 'le rabat du haut',
  'the bottom flap': 'le rabat du bas',
  'the front cover': 'le plat avant',
  'the back cover': 'le plat arrière',
  'the card': 'la carte',
  'the envelope': 'l’enveloppe',
  'top left corner': 'coin supérieur gauche',
  'top right corner': 'coin supérieur droit',
  'bottom left corner': 'coin inférieur gauche',
  'bottom right corner': 'coin inférieur droit',
  'left hem': 'rempli gauche',
  'right hem': 'rempli droit',
  'left hem of the top flap': 'rempli gauche du rabat du haut',
  'right hem of the top flap': 'rempli droit du rabat du haut',
  'left hem of the bottom flap': 'rempli gauche du rabat du bas',
  'right hem of the bottom flap': 'rempli droit du rabat du bas',
  'spine at the front': 'dos, côté avant',
  'spine at the back': 'dos, côté arrière',
  card: 'carte',
  cards: 'cartes',
  envelope: 'enveloppe',
  'card with its envelope': 'carte avec son enveloppe',
  'cards with their envelopes': 'cartes avec leurs enveloppes',
  'front pocket': 'poche avant',
  'back pocket': 'poche arrière',

  // papiers et formats
  'craft paper, {number} x {numberB} in': 'papier de loisirs créatifs, {number} × {numberB} po',
  'craft paper, 8 1/2 x 11 in': 'papier de loisirs créatifs, 8 1/2 × 11 po',
  'ISO {name}, untrimmed': 'ISO {name}, non rogné',
  'ISO {name}': 'ISO {name}',
  'JIS {name}, not ISO {nameB}': 'JIS {name}, et non ISO {nameB}',
  'US {name} card': 'carte US {name}',
  'US {name} envelope': 'enveloppe US {name}',
  'US {name} in index card': 'fiche US {name} po',
  'US letter': 'US Letter',
  'US legal': 'US Legal',
  'US ledger': 'US Ledger',
  'one third of ISO A4': 'tiers d’ISO A4',
  'DIN {name} envelope': 'enveloppe DIN {name}',
  'Italian envelope': 'enveloppe italienne',
  'square invitation envelope, {name} mm': 'enveloppe d’invitation carrée, {name} mm',
  'craft paper, {name} × {nameB} in': 'papier de loisirs créatifs, {name} × {nameB} po',
  '{words}, {name} × {nameB} mm': '{words}, {name} × {nameB} mm',
  '{words}, {name} × {nameB} in': '{words}, {name} × {nameB} po',
  'your sheet': 'votre feuille',
  'sheet {number} of your list': 'feuille {number} de votre liste',

  // étapes
  'Step {number}: {words}': 'Étape {number} : {words}',
  'Lay the sheet with its inside face up.': 'Poser la feuille face intérieure dessus.',
  'The top of the outside print lies at the top.': 'Le haut du motif extérieur est en haut.',
  'The top of the outside print lies on the left.': 'Le haut du motif extérieur est à gauche.',
  'Fold the {words} over, toward you.': '{words} : replier vers vous.',
  'Fold the {words} behind, away from you.': '{words} : replier vers l’arrière.',
  'Bend the {words} toward you, to a right angle.': '{words} : plier vers vous à angle droit.',
  'Bend the {words} away from you, to a right angle.': '{words} : plier vers l’arrière à angle droit.',
  'Crease the {words}: bend it toward you, and lay it flat again.':
    '{words} : marquer le pli vers vous, puis remettre à plat.',
  'Crease the {words}: bend it away from you, and lay it flat again.':
    '{words} : marquer le pli vers l’arrière, puis remettre à plat.',
  'Slip the {words} over the {wordsB}.': 'Glisser dessus : {words} ; dessous : {wordsB}.',
  'Slip the {words} under the {wordsB}.': 'Glisser dessous : {words} ; dessus : {wordsB}.',
  'Glue the {words} down: {wordsB} {length} wide, {lengthB} inside its edges.':
    'Coller : {words}. {wordsB} de {length} de large, à {lengthB} des bords.',
  'Glue the {words} down: {wordsB} {length} wide, {lengthB} inside their edges.':
    'Coller : {words}. {wordsB} de {length} de large, à {lengthB} des bords.',
  'a line': 'Un trait',
  'two lines': 'Deux traits',
  '{number} lines': '{number} traits',
  'Leave the hems of the top flap free where the bottom flap will be slipped in.':
    'Laisser libres les remplis du rabat du haut là où le rabat du bas se glissera.',
  'Leave the hems of the bottom flap free where the top flap will be slipped in.':
    'Laisser libres les remplis du rabat du bas là où le rabat du haut se glissera.',
  'Keep it off the panels behind, or the pockets are shut.':
    'Ne pas en mettre sur les panneaux de derrière, sinon les poches sont fermées.',
  'Slide {number} {words} into the front pocket and {numberB} into the back pocket, through their open ends.':
    'Glisser par les côtés ouverts {number} {words} dans la poche avant et {numberB} dans la poche arrière.',
  'Slide {number} {words} into the {wordsB}, through its open end.':
    'Glisser par le côté ouvert {number} {words}. Où : {wordsB}.',
  'Then close the folder.': 'Puis fermer la pochette.',

  // images
  'The closed {words}, {length} wide and {lengthB} high.':
    'Fermé ({words}) : {length} de large et {lengthB} de haut.',
  'The finished {words}, {length} wide and {lengthB} high.':
    'Fini ({words}) : {length} de large et {lengthB} de haut.',
  'At the front: {words}': 'Devant : {words}',
  'At the back: {words}': 'Derrière : {words}',
  'The {words} after it was turned over left to right.': 'Retourné de gauche à droite : {words}.',
  'The {words} as it lies when it has been folded.': 'Tel que posé après le pliage : {words}.',
  folder: 'pochette',
  'flat sleeve': 'fourreau à plat',
  '{list} shows the outside face, print {ways}.': '{list} montre la face extérieure, motif {ways}.',
  '{list} show the outside face, print {ways}.': '{list} montrent la face extérieure, motif {ways}.',
  '{list} shows the inside face, print {ways}.': '{list} montre la face intérieure, motif {ways}.',
  '{list} show the inside face, print {ways}.': '{list} montrent la face intérieure, motif {ways}.',
  '{list} shows the inside face.': '{list} montre la face intérieure.',
  '{list} show the inside face.': '{list} montrent la face intérieure.',
  upright: 'à l’endroit',
  'upside down': 'à l’envers',
  'on its left side': 'couché sur son côté gauche',
  'on its right side': 'couché sur son côté droit',
  'The folder stands like a half open book.': 'La pochette se tient comme un livre entrouvert.',
  'At the left is the front cover from outside, at the right the pocket on the back cover.':
    'À gauche, le plat avant vu de l’extérieur ; à droite, la poche du plat arrière.',
  'At the left is the front cover from outside, at the right the pocket on the back cover, with what it holds as a dashed outline.':
    'À gauche, le plat avant vu de l’extérieur ; à droite, la poche du plat arrière, son contenu en pointillés.',

  // raisons et limites
  'makers like {length}': 'l’usage est de {length}',
  'makers like {length} for a hem': 'l’usage est de {length} pour un rempli',
  'makers like {length} for a seam': 'l’usage est de {length} pour une jointure',
  'that is what the stack takes': 'c’est ce que prend la pile',
  'that is what the pocket takes': 'c’est ce que prend la poche',
  '{words}, and a step more lets the hems use up the sheet’s width':
    '{words}, et un pas de plus laisse les remplis employer toute la largeur de la feuille',
  'panels and hems share the sheet’s width in the style’s proportions':
    'plats et remplis se partagent la largeur de la feuille dans les proportions habituelles',
  'that uses the sheet’s height': 'cela emploie la hauteur de la feuille',
  'that uses the sheet’s height without letting the contents rattle':
    'cela emploie la hauteur de la feuille sans que le contenu ballotte',
  'the seam takes the height that is left': 'la jointure prend la hauteur qui reste',
  'a deeper seam would only add bulk': 'une jointure plus haute ne ferait qu’épaissir',
  'the hems take the width that is left': 'les remplis prennent la largeur qui reste',
  'the hems take the width that they may': 'les remplis prennent autant de largeur que permis',
  'makers like the seam near the middle': 'la jointure se place d’ordinaire près du milieu',
  'the sheet is no wider': 'la feuille n’est pas plus large',
  'the sheet is no higher': 'la feuille n’est pas plus haute',
  'the cutter is no wider': 'la zone de coupe n’est pas plus large',
  'the cutter is no higher': 'la zone de coupe n’est pas plus haute',
  'the spec gives the {words}': 'cette mesure est imposée : {words}',
  'a hem must hold its glue with {length} to spare on each side':
    'un rempli doit contenir sa colle avec {length} de marge de chaque côté',
  'the seam must hold its glue with {length} to spare on each side':
    'la jointure doit contenir sa colle avec {length} de marge de chaque côté',
  'a hem ends {length} short of the spine score': 'un rempli s’arrête à {length} du rainage du dos',
  'a corner must not reach the top flap’s score': 'un coin ne doit pas atteindre le rainage du rabat du haut',
  'a corner must not reach the bottom flap’s score':
    'un coin ne doit pas atteindre le rainage du rabat du bas',
  'the top flap ends {length} short of the bottom fold': 'le rabat du haut s’arrête à {length} du pli du bas',
  'the bottom flap ends at the top fold at the latest':
    'le rabat du bas s’arrête au plus tard au pli du haut',
  'two scores closer than that are hard to make in this paper':
    'des rainages plus rapprochés sont difficiles à faire dans ce papier',
  'the spine must hold the folder’s own layers':
    'le dos doit contenir les épaisseurs de la pochette elle-même',
  'the spine must hold both stacks and the folder’s own layers':
    'le dos doit contenir les deux piles et les épaisseurs de la pochette elle-même',
  '{words} needs play between the spine and the pocket’s mouth':
    'il faut du jeu entre le dos et l’ouverture de la poche pour {words}',
  'the pocket must go round the {words} and its stack': 'la poche doit faire le tour de la pile ({words})',
  'a finer grid, or a little more paper': 'un pas plus fin ou un peu plus de papier',

  // remarques
  'nothing says how thick the paper is: {length} is common practice; measure ten sheets together and divide by ten':
    'l’épaisseur du papier n’est pas indiquée : l’usage est de {length} ; mesurez dix feuilles ensemble et divisez par dix',
  'give the stock’s caliper': 'indiquer l’épaisseur d’une feuille',
  'paper of {length} makes a floppy {words}': 'un papier de {length} est trop mou pour cela ({words})',
  'paper of {length} is board: single scores crack in it, and flaps and hems will not lie flat':
    'un papier de {length} est du carton : les rainages simples s’y fendent, et rabats et remplis ne restent pas à plat',
  'paper of {length} may crack along single scores':
    'un papier de {length} peut se fendre le long des rainages simples',
  'take card of {length} to {lengthB}': 'prendre un papier cartonné de {length} à {lengthB}',
  'take card of {length} to {lengthB}, or try a wider score on a scrap first':
    'prendre un papier cartonné de {length} à {lengthB}, ou essayer d’abord un rainage plus large sur une chute',
  'the two {words} scores are only {length} apart':
    'ces deux rainages ({words}) ne sont qu’à {length} l’un de l’autre',
  'score lightly, or use thinner paper': 'rainer légèrement ou prendre un papier plus mince',
  'the sheet is {length} larger than the blank; that is too little to trim and stays on at the right':
    'la feuille dépasse la découpe de {length} ; c’est trop peu pour être rogné et cela reste à droite',
  'the sheet is {length} larger than the blank; that is too little to trim and stays on at the bottom':
    'la feuille dépasse la découpe de {length} ; c’est trop peu pour être rogné et cela reste en bas',
  'a strip of only {length} is left to trim off': 'il reste à rogner une bande de seulement {length}',
  'leave it on, or give no grid so that the hems and the seam take it':
    'la laisser, ou n’imposer aucun pas pour que remplis et jointure l’absorbent',
  'the {words} of {length} is no whole number of grid steps: the bounds leave no step free':
    '{words} : {length} n’est pas un nombre entier de pas ; les limites n’en laissent aucun libre',
  'the card is larger than its envelope': 'la carte est plus grande que son enveloppe',
  'check both sizes; the pocket was sized for the envelope':
    'vérifier les deux formats ; la poche est faite pour l’enveloppe',
  'a {words} of {length} would hold {number} sets in each pocket':
    '{words} : avec {length}, chaque poche contiendrait {number} jeux',
  '{number} layers of paper lie on each other where hems and seam meet: there the closed folder is {length} thicker than at its spine':
    'là où remplis et jointure se rencontrent, {number} épaisseurs de papier se superposent : la pochette fermée y est plus épaisse de {length} qu’au dos',
  'thinner paper, mitred corners, or a {words} of {length} if it should close evenly':
    'un papier plus mince, des coins coupés ou, pour une fermeture régulière, {words} : {length}',
  'only {number} % of the paper is left along a perforated fold: it may tear':
    'il ne reste que {number} % du papier le long d’un pli perforé : il peut se déchirer',
  'ties about as long as the cuts, and none under {length}':
    'des attaches à peu près aussi longues que les coupes, et aucune sous {length}',
  'the filled cut is written last, so that a preview shows nothing but its area':
    'la coupe pleine est écrite en dernier, si bien qu’un aperçu ne montre que sa surface',
  'give the cut layer an order below the scores if your program does not cut by the file’s order':
    'placer le calque de coupe avant les rainages si le programme ne suit pas l’ordre du fichier',
  'the corners are cut along the sheet’s own edge, as far out as the tool must reach':
    'les coins sont coupés au bord même de la feuille, l’outil doit aller jusque-là',
  'the outline is cut along the sheet’s own edge, as far out as the tool must reach':
    'le contour est coupé au bord même de la feuille, l’outil doit aller jusque-là',
  'lay the sheet so that the tool reaches over its edge, or switch the cut layer off and cut by hand':
    'poser la feuille pour que l’outil dépasse son bord, ou désactiver le calque de coupe et couper à la main',

  // refus
  'the blank would be {length} wide and {words}, so {lengthB} is missing':
    'la découpe ferait {length} de large, or {words} ; il manque {lengthB}',
  'the blank would be {length} high and {words}, so {lengthB} is missing':
    'la découpe ferait {length} de haut, or {words} ; il manque {lengthB}',
  'the cutter’s area is {length}': 'la zone de coupe fait {length}',
  '{words}, turned, is {length}': 'tournée, la feuille ({words}) fait {length}',
  '{name}, turned, is {length}': 'tournée, la feuille ({name}) fait {length}',
  '{words} is {length}': 'la feuille ({words}) fait {length}',
  '{name} is {length}': 'la feuille ({name}) fait {length}',
  'the given {words} is {length}': 'cette mesure est imposée, {words} : {length}',
  '{words}: it must be at least {length}, and can only be {lengthB}':
    '{words} : il faut au moins {length}, et on ne peut avoir que {lengthB}',
  '{words}; that fails by {length}': '{words} ; il s’en faut de {length}',
  'the given dimensions contradict each other by {length}':
    'les mesures imposées se contredisent de {length}',
  '{words}, because {clauses}': '{words}, car {clauses}',
  '{words}: {clauses}': '{words} : {clauses}',
  '{words}, and {wordsB}': '{words}, et {wordsB}',
  'this style holds nothing, so it takes no contents':
    'ce modèle ne contient rien ; il n’a donc pas de contenu',

  // ce qui aide
  'turn the contents by a quarter': 'tourner le contenu d’un quart de tour',
  'stand the contents as given': 'placer le contenu dans le sens indiqué',
  'let the contents stand the other way': 'placer le contenu dans l’autre sens',
  'put {number} in each pocket': 'en mettre {number} dans chaque poche',
  'make the {words} {length}': 'changer cette mesure, {words} : {length}',
  'leave the {words} to the solver': 'ne pas imposer cette mesure : {words}',
  'leave every dimension to the solver': 'n’imposer aucune mesure',
  'use tape of {length}': 'prendre un ruban de {length}',
  'leave the envelopes out': 'se passer des enveloppes',
  'use a sheet of {length} by {lengthB}': 'prendre une feuille de {length} sur {lengthB}',
  'use a sheet of {words} and a larger machine, or cut by hand':
    'prendre cette feuille : {words}, et une machine plus grande, ou couper à la main',
  'use a sheet of {words}': 'prendre cette feuille : {words}',
  'let the sheet lie the other way': 'placer la feuille dans l’autre sens',
  'use paper whose print may be turned': 'prendre un papier dont le motif peut être tourné',
  'use a machine with a larger area, or cut by hand':
    'prendre une machine à plus grande zone de coupe, ou couper à la main',
  'use as little paper as serves': 'prendre le moins de papier possible',
  'use the whole sheet': 'utiliser toute la feuille',
  'use {words}': 'prendre ce papier : {words}',
  'use {name}': 'prendre ce papier : {name}',

  // saisies
  '{name} is too long to be a length': '{name} est trop long pour une mesure',
  'the length is empty': 'la mesure manque',
  '{name} is negative': '{name} est négatif',
  '{name} has an exponent': '{name} a un exposant',
  '{name} has a comma': '{name} a une virgule de trop',
  '{name} is not a length': '{name} n’est pas une mesure',
  '{name} is not a unit that hemfold reads': '{name} n’est pas une unité connue de hemfold',
  '{name} divides by zero': '{name} divise par zéro',
  'write it like "5 1/8 in", "5.125 in", "130 mm" or "13 cm"':
    'écrivez par exemple 130 mm, 13 cm, 5 1/8 po ou 5,125 po',
  'give a length greater than zero': 'donner une mesure supérieure à zéro',
  'write the number out, since exponents are not read': 'écrire le nombre en entier',
  'write the decimal mark as a point and no thousands marks':
    'n’écrire qu’un signe décimal et aucun séparateur de milliers',
  'use mm, cm, in or the inch sign': 'écrire mm, cm, po ou le signe du pouce',
  'the length is more than 10 m': 'la mesure dépasse 10 m',
  'give a length that a sheet of paper can have': 'donner une mesure possible pour une feuille de papier',
  'the length is zero': 'la mesure est nulle',
  'the length is {length}': 'la mesure est de {length}',
  'give a length from {length} to {lengthB}': 'donner une mesure de {length} à {lengthB}',
  'the size is missing': 'le format manque',
  'the size is given twice': 'le format est donné deux fois',
  'give either a size by name or a width and a height':
    'donner soit un format par son nom, soit une largeur et une hauteur',
  'the margins leave nothing of the cutter’s area': 'les marges ne laissent rien de la zone de coupe',
  'give a margin of less than half the shorter side': 'donner une marge inférieure à la moitié du petit côté',
  'this version does not know it': 'cette version ne le connaît pas',
  'neither contents nor dimensions are given': 'ni contenu ni mesures ne sont indiqués',
  'say what goes in, or fix at least one dimension; POST /v1/folders/possible lists what a sheet can become':
    'dire ce qu’on y met, ou imposer au moins une mesure',
  'without contents, nothing says how large the {words} is to be':
    'sans contenu, rien ne dit la taille voulue : {words}',
  'give the sheet as stock, say what goes in, or fix {words}':
    'indiquer la feuille, ou ce qu’on y met, ou ces mesures : {words}',
  'the width and height of a panel': 'largeur et hauteur d’un plat',
  'Invalid input: expected number, received string': 'il faut ici un nombre',
  'Invalid input: expected int, received number': 'il faut ici un nombre entier',
  'Too small: expected number to be >={number}': 'au moins {number}',
  'Too big: expected number to be <={number}': 'au plus {number}',
  'Too big: expected string to have <={number} characters': 'au plus {number} caractères',

  // prudence
  'Make a first piece from plain paper, and measure it, before you cut a good sheet.':
    'Faites une première pièce en papier ordinaire et mesurez-la avant de couper une belle feuille.',
  'Follow the instructions of the machine’s maker and the material’s data sheet; they and local rules come before anything said here.':
    'Suivez la notice du fabricant de la machine et la fiche technique du matériau ; elles et les règles locales passent avant tout ce qui est dit ici.',
  'Knives: a sharp blade, a mat larger than the cut, a metal safety rule, the other hand behind the cut.':
    'Couteaux : lame affûtée, tapis plus grand que la coupe, règle de sécurité en métal, l’autre main derrière la coupe.',
  'Keep fingers, hair and ribbon away from moving parts.':
    'Éloignez doigts, cheveux et rubans des pièces en mouvement.',
  'Lasers: never leave one running alone, keep the extraction on and an extinguisher at hand.':
    'Lasers : ne jamais les laisser tourner seuls, aspiration en marche et extincteur à portée de main.',
  'Never cut vinyl or PVC, nor a coated, foiled or glittered sheet that its data sheet does not clear.':
    'Ne coupez jamais de vinyle ni de PVC, ni de feuille enduite, métallisée ou pailletée que sa fiche technique n’autorise pas.',
  'hemfold cannot check your machine or your material, and gives no settings for either.':
    'hemfold ne peut vérifier ni votre machine ni votre matériau et ne donne de réglages pour aucun des deux.',

  // façons de dessiner
  'Width and height in millimetres, and one unit inside the drawing is a millimetre.':
    'Largeur et hauteur en millimètres ; une unité du dessin vaut un millimètre.',
  'Width and height in inches, and 96 units inside the drawing are an inch, as in CSS: for programs that ignore one or the other.':
    'Largeur et hauteur en pouces ; 96 unités du dessin valent un pouce, comme en CSS : pour les programmes qui ignorent l’un ou l’autre.',
  'Width and height in inches, and 72 units inside the drawing are an inch: for programs that count in points.':
    'Largeur et hauteur en pouces ; 72 unités du dessin valent un pouce : pour les programmes qui comptent en points.',
  'Everything in thin black lines; the line type alone says what is scored and what is cut.':
    'Tout en traits noirs fins ; seul le type de trait dit ce qui se raine et ce qui se coupe.',
  'Cuts and knockouts are filled shapes without an outline; the blank’s outline is always there.':
    'Coupes et ajours sont des formes pleines sans contour ; le contour de la découpe est toujours là.',
  'For a machine without a scoring tool: scores are perforations, half cut and half tie, that stop short of the edge.':
    'Pour une machine sans outil de rainage : les rainages sont des perforations, moitié coupe et moitié attache, qui s’arrêtent avant le bord.',
  'The whole drawing mirrored, for a sheet that lies on the machine with its outside face up.':
    'Tout le dessin en miroir, pour une feuille posée sur la machine face extérieure dessus.',
  'The guide shows where glue goes and what it must stay clear of. It is never cut: draw it with a pen, or hide it.':
    'Un guide montre où va la colle et ce qu’elle ne doit pas atteindre. Il n’est jamais coupé : tracez-le au stylo ou masquez-le.',
  ...styles,
  '{name} is not the id of a published size': '{name} n’est pas l’identifiant d’un format publié',
  'choose an id from GET /v1/sizes, or give width and height':
    'choisir un format de la liste, ou donner largeur et hauteur',
  'did you mean {name}? GET /v1/sizes lists all': 'vouliez-vous dire {name} ? La liste les a tous',
  ...cutouts,
  ...figures,
  ...locks,
};
