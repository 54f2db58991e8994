import type { Phrases } from '../tell.ts';

/** Ce que le moteur de calcul dit des manières de plier. */
export const styles: Phrases = {
  'Twin sleeve': 'Fourreau double',
  'One rectangle becomes a flat sleeve, hemmed at its two open ends, and folds on a spine into a book with two pockets.':
    'Un rectangle devient un fourreau plat, rempli à ses deux bouts ouverts, et se plie sur un dos en un livre à deux poches.',
  'Pocket folder': 'Chemise à poches',
  'Two covers with a spine between them, and on each a pocket that is folded up from the bottom, glued or locked.':
    'Deux plats avec un dos entre eux, et sur chacun une poche repliée depuis le bas, collée ou verrouillée.',
  'Slip sleeve': 'Fourreau simple',
  'A flat pocket with a thumb notch: a back with two tabs, and a front that folds over and is glued to them.':
    'Une poche plate avec une encoche : un dos à deux languettes, et un devant qui se replie et s’y colle.',
  'Gate wallet': 'Pochette à deux battants',
  'A middle with a pocket, and two doors that meet over it or lie over each other.':
    'Un milieu avec une poche, et deux battants qui se rejoignent dessus ou se recouvrent.',
  'Four-flap wrap': 'Chemise à quatre rabats',
  'A base with a flap on a hinge at each side; the four close over a stack of cards, without glue.':
    'Un fond avec un rabat à charnière de chaque côté ; les quatre se ferment sans colle sur une pile de cartes.',
  'Belly band': 'Bandeau',
  'A strip that goes round a stack of cards and holds it together, glued or locked at the back.':
    'Une bande qui entoure une pile de cartes et la tient, collée ou verrouillée à l’arrière.',
  'Tuck box': 'Boîte à rabats rentrants',
  'A box for a thick stack: four walls glued or locked into a tube, with lid and bottom that tuck in behind the front.':
    'Une boîte pour une pile épaisse : quatre parois collées ou verrouillées en tube, un couvercle et un fond qui rentrent derrière le devant.',
  'A front with four flaps: the sides fold in, the back is glued over them, and a gummed flap closes it.':
    'Un devant à quatre rabats : les côtés se replient, le derrière se colle dessus, et un rabat gommé la ferme.',
  'Card base': 'Carte pliée',
  'A card with one fold, or with several panels: to and fro, rolled up, or two doors over a middle.':
    'Une carte à un pli, ou à plusieurs panneaux : en accordéon, roulés, ou deux battants sur un milieu.',
  Tag: 'Étiquette',
  'A single piece with its two upper corners cut off, to be tied on through a hole.':
    'Une seule pièce aux deux coins du haut coupés, à attacher par un trou.',
  Divider: 'Intercalaire',
  'A single piece as large as the cards that it parts, with a tab that stands out above them.':
    'Une seule pièce, grande comme les cartes qu’elle sépare, avec un onglet qui les dépasse.',
  'pocket height': 'hauteur de la poche',
  width: 'largeur',
  height: 'hauteur',
  depth: 'profondeur',
  'thumb notch': 'encoche',
  hinge: 'charnière',
  'outer hinge': 'charnière extérieure',
  'bottom hinge': 'charnière du bas',
  'top hinge': 'charnière du haut',
  'left hinge': 'charnière gauche',
  'right hinge': 'charnière droite',
  'left door': 'battant gauche',
  'right door': 'battant droit',
  'side flap': 'rabat latéral',
  'side flaps': 'rabats latéraux',
  'left side flap': 'rabat latéral gauche',
  'right side flap': 'rabat latéral droit',
  'left flap': 'rabat gauche',
  'right flap': 'rabat droit',
  'band height': 'hauteur du bandeau',
  side: 'côté',
  sides: 'côtés',
  'left side': 'côté gauche',
  'right side': 'côté droit',
  end: 'bout',
  ends: 'bouts',
  'left end': 'bout gauche',
  'right end': 'bout droit',
  lid: 'couvercle',
  bottom: 'fond',
  base: 'fond',
  middle: 'milieu',
  'tuck flap': 'patte rentrante',
  'lid tuck flap': 'patte rentrante du couvercle',
  'bottom tuck flap': 'patte rentrante du fond',
  'dust flap': 'rabat anti-poussière',
  'dust flaps': 'rabats anti-poussière',
  'dust flaps of the lid': 'rabats anti-poussière du couvercle',
  'dust flaps of the bottom': 'rabats anti-poussière du fond',
  'closing flap': 'rabat de fermeture',
  gum: 'gommage',
  step: 'décalage',
  gap: 'écart',
  divider: 'intercalaire',
  tag: 'étiquette',
  'tab height': 'hauteur de l’onglet',
  'tab width': 'largeur de l’onglet',
  'panel {number}': 'panneau {number}',
  'the panel {number}': 'le panneau {number}',
  'side tab': 'languette latérale',
  'bottom tab': 'languette du bas',
  'left pocket tab': 'languette gauche de la poche',
  'right pocket tab': 'languette droite de la poche',
  'front pocket tab': 'languette de la poche avant',
  'back pocket tab': 'languette de la poche arrière',
  'left hinge at its door': 'charnière gauche, côté battant',
  'left hinge at the middle': 'charnière gauche, côté milieu',
  'right hinge at its door': 'charnière droite, côté battant',
  'right hinge at the middle': 'charnière droite, côté milieu',
  '{words} at its hinge': '{words}, à sa charnière',
  '{words} at the base': '{words}, au fond',
  'the front': 'le devant',
  'the back': 'le derrière',
  'the pocket': 'la poche',
  'the pockets': 'les poches',
  'the tab': 'la languette',
  'the tabs': 'les languettes',
  'the middle': 'le milieu',
  'the base': 'le fond',
  'the bottom': 'le fond',
  'the lid': 'le couvercle',
  'the hinge': 'la charnière',
  'the hinges': 'les charnières',
  'the left door': 'le battant gauche',
  'the right door': 'le battant droit',
  'the left flap': 'le rabat gauche',
  'the right flap': 'le rabat droit',
  'the side flap': 'le rabat latéral',
  'the side flaps': 'les rabats latéraux',
  'the side': 'le côté',
  'the sides': 'les côtés',
  'the end': 'le bout',
  'the ends': 'les bouts',
  'the tuck flap': 'la patte rentrante',
  'the tuck flaps': 'les pattes rentrantes',
  'the dust flap': 'le rabat anti-poussière',
  'the dust flaps': 'les rabats anti-poussière',
  'the closing flap': 'le rabat de fermeture',
  'the divider': 'l’intercalaire',
  'the tag': 'l’étiquette',
  band: 'bandeau',
  box: 'boîte',
  sleeve: 'fourreau',
  wallet: 'pochette',
  wrap: 'chemise',
  'flat tube': 'tube à plat',
  'flattened band': 'bandeau à plat',
  'folded card': 'carte pliée',
  'open folder': 'chemise ouverte',
  'open wallet': 'pochette ouverte',
  'open wrap': 'chemise ouverte',
  'The {words} as it lies.': 'Tel que posé : {words}.',
  'Close the bottom flap over them.': 'Fermer le rabat du bas par-dessus.',
  'Close the lid in the same way: dust flaps, lid, tuck flap.':
    'Fermer le couvercle de même : rabats anti-poussière, couvercle, patte rentrante.',
  'Close the side flaps over the contents.': 'Fermer les rabats latéraux sur le contenu.',
  'Close the top flap over all of them, and tie the wrap or put a band around it.':
    'Fermer le rabat du haut sur tous les autres, puis nouer la chemise ou l’entourer d’un lien.',
  'Fold the dust flaps of the bottom in, then the bottom over them, and tuck its flap in behind the front.':
    'Rabattre les rabats anti-poussière du fond, puis le fond par-dessus, et rentrer sa patte derrière le devant.',
  'Keep it on the tabs and beside the spine, or the pockets are shut.':
    'Seulement sur les languettes et près du dos, sinon les poches sont fermées.',
  'Keep it on the tabs, or the pocket is shut.': 'Seulement sur les languettes, sinon la poche est fermée.',
  'Keep it under the back, or the contents stick.': 'Seulement sous le derrière, sinon le contenu colle.',
  'Lay {number} {words} on the base.': 'Poser sur le fond : {number} {words}.',
  'Open the band, and bend all its scores to right angles.':
    'Ouvrir le bandeau et plier tous ses rainages à angle droit.',
  'Press the edges of the flat tube together until it stands square.':
    'Presser les bords du tube à plat jusqu’à ce qu’il se dresse d’équerre.',
  'Slip the band over {number} {words}.': 'Enfiler le bandeau sur {number} {words}.',
  'Stand {number} {words} in the box.': 'Placer dans la boîte {number} {words}.',
  'Then close the doors, the left one first.': 'Puis fermer les battants, le gauche d’abord.',
  'The band stands open.': 'Le bandeau se tient ouvert.',
  'The band stands open, with what it holds as a dashed outline.':
    'Le bandeau se tient ouvert, son contenu en pointillés.',
  'The box stands with its lid open.': 'La boîte est debout, couvercle ouvert.',
  'The card stands half open.': 'La carte se tient entrouverte.',
  'The divider lies on the table, its inside face up.':
    'L’intercalaire est posé sur la table, face intérieure dessus.',
  'The tag lies on the table, its inside face up.':
    'L’étiquette est posée sur la table, face intérieure dessus.',
  'The envelope from its back, the closing flap half open.':
    'L’enveloppe vue de derrière, le rabat de fermeture entrouvert.',
  'The envelope from its back, the closing flap half open, with what it holds as a dashed outline.':
    'L’enveloppe vue de derrière, le rabat de fermeture entrouvert, son contenu en pointillés.',
  'The sleeve with its front half folded over.': 'Le fourreau, son devant à moitié replié.',
  'The sleeve with its front half folded over, with what it holds as a dashed outline.':
    'Le fourreau, son devant à moitié replié, son contenu en pointillés.',
  'The wallet stands with its doors half open.': 'La pochette se tient, battants entrouverts.',
  'The wallet stands with its doors half open, with what it holds as a dashed outline.':
    'La pochette se tient, battants entrouverts, son contenu en pointillés.',
  'The wrap lies on the table, its flaps half closed.':
    'La chemise est posée sur la table, ses rabats à moitié fermés.',
  'The wrap lies on the table, its flaps half closed, with what it holds as a dashed outline.':
    'La chemise est posée sur la table, ses rabats à moitié fermés, son contenu en pointillés.',
  'a box that flat has no room for its dust flaps':
    'une boîte si plate n’a pas de place pour ses rabats anti-poussière',
  'a deeper tab would only take paper': 'une languette plus longue ne ferait que prendre du papier',
  'a door ends {length} short of the other hinge': 'un battant s’arrête à {length} de l’autre charnière',
  'a dust flap takes no more of the sheet than the lid beside it':
    'un rabat anti-poussière ne prend pas plus de feuille que le couvercle voisin',
  'a larger step leaves the back uncovered': 'un décalage plus grand laisse le derrière à découvert',
  'a longer flap would only take paper': 'un rabat plus long ne ferait que prendre du papier',
  'a lower back would not hold the sides together': 'un derrière plus bas ne tiendrait pas les côtés',
  'a lower card cannot be folded well': 'une carte plus basse se plie mal',
  'a narrower card cannot be folded well': 'une carte plus étroite se plie mal',
  'a lower divider parts nothing': 'un intercalaire plus bas ne sépare rien',
  'a narrower divider parts nothing': 'un intercalaire plus étroit ne sépare rien',
  'a lower pocket has no room for its glue': 'une poche plus basse n’a pas de place pour sa colle',
  'a lower pocket would let the {words} tip out': 'une poche plus basse laisserait basculer ceci : {words}',
  'a lower tag has no room for its hole': 'une étiquette plus basse n’a pas de place pour son trou',
  'a narrower tag has no room for its hole': 'une étiquette plus étroite n’a pas de place pour son trou',
  'a narrower band tears': 'un bandeau plus étroit se déchire',
  'a pocket’s mouth lies at least {length} below the top':
    'l’ouverture d’une poche est au moins à {length} sous le haut',
  'the pocket’s mouth lies at least {length} below the top':
    'l’ouverture de la poche est au moins à {length} sous le haut',
  'a rolled panel must lie within the one around it': 'un panneau roulé doit tenir dans celui qui l’entoure',
  'a shorter bottom flap holds nothing': 'un rabat du bas plus court ne retient rien',
  'a shorter dust flap keeps nothing out': 'un rabat anti-poussière plus court n’arrête rien',
  'a shorter side flap holds nothing': 'un rabat latéral plus court ne retient rien',
  'a shorter top flap holds nothing': 'un rabat du haut plus court ne retient rien',
  'a shorter tuck flap slips out': 'une patte rentrante plus courte ressort',
  'a side flap must hold its glue, clear of its edge and under the back':
    'un rabat latéral doit contenir sa colle, loin du bord et sous le derrière',
  'a smaller corner cannot be cut': 'un coin plus petit ne peut pas être coupé',
  'a straight mouth has no notch': 'une ouverture droite n’a pas d’encoche',
  'a tab leaves {length} for its own ends, which are cut off askew':
    'une languette laisse {length} pour ses bouts coupés en biais',
  'a tab must hold its glue, clear of its edge and its score':
    'une languette doit contenir sa colle, loin du bord et du rainage',
  'the tab must hold its glue, clear of its edge and its score':
    'la languette doit contenir sa colle, loin du bord et du rainage',
  'a tab must not reach the glue at the pocket’s other end':
    'une languette ne doit pas atteindre la colle à l’autre bout de la poche',
  'a tab takes no more width than the hinge and the door above it':
    'une languette n’est pas plus large que la charnière et le battant au-dessus',
  'a third of the height holds well': 'un tiers de la hauteur tient bien',
  'both doors together cover the middle': 'les deux battants ensemble couvrent le milieu',
  'carton seams are glued over {number} to {length}':
    'les jointures de carton se collent sur {number} à {length}',
  'doors are kept {length} apart': 'les battants restent à {length} l’un de l’autre',
  'doors further apart would not close': 'plus écartés, les battants ne fermeraient pas',
  'doors that meet are {length} apart at most':
    'des battants qui se rejoignent sont au plus à {length} l’un de l’autre',
  'doors that meet lie in one plane': 'des battants qui se rejoignent sont dans un même plan',
  'doors that meet need {length} between them': 'entre des battants qui se rejoignent, il faut {length}',
  'dust flaps reach nearly to the middle': 'les rabats anti-poussière vont presque au milieu',
  'ends lie over each other by {number} to {length}': 'les bouts se recouvrent de {number} à {length}',
  'every tab has its share of the width': 'chaque onglet a sa part de la largeur',
  'gum is to be {length} deep': 'le gommage doit faire {length}',
  'narrower gum holds nothing': 'un gommage plus étroit ne tient rien',
  'no thumb fits a smaller notch': 'aucun pouce n’entre dans une encoche plus petite',
  'nobody can hold a lower tab': 'personne ne peut saisir un onglet plus bas',
  'nobody can write on a narrower tab': 'personne ne peut écrire sur un onglet plus étroit',
  'one fold goes round a stack that thin': 'un seul pli suffit autour d’une pile si mince',
  'only a gate has doors': 'seule une carte à battants a des battants',
  'only a roll has narrower panels': 'seule une carte roulée a des panneaux plus étroits',
  'pointed side flaps must reach far enough under the back for a seam':
    'des rabats latéraux en pointe doivent aller assez loin sous le derrière pour une jointure',
  'printed folders have tabs of {length}': 'les chemises imprimées ont des languettes de {length}',
  'that is a seam as libraries glue it': 'c’est une jointure comme en collent les bibliothèques',
  'that is what lies under it': 'c’est ce qu’il y a dessous',
  'that is what lies under the right door': 'c’est ce qu’il y a sous le battant droit',
  'that is what the contents take': 'c’est ce que prend le contenu',
  'that is what the paper takes': 'c’est ce que prend le papier',
  'that share of the cover holds well': 'cette part du plat tient bien',
  'that share of the height holds well': 'cette part de la hauteur tient bien',
  'that takes a thumb': 'un pouce y entre',
  'that uses the sheet': 'cela emploie la feuille',
  'the back ends {length} below the mouth': 'le derrière s’arrête à {length} sous l’ouverture',
  'the back takes that share of the front': 'le derrière prend cette part du devant',
  'the band is no higher than the {words}': 'le bandeau n’est pas plus haut que ceci : {words}',
  'the band must go round the {words}': 'le bandeau doit faire le tour ({words})',
  'the bottom flap closes over the side flaps, so its hinge is deeper by the paper':
    'le rabat du bas se ferme sur les rabats latéraux, sa charnière est donc plus profonde du papier',
  'the top flap closes over the bottom flap, so its hinge is deeper by the paper':
    'le rabat du haut se ferme sur celui du bas, sa charnière est donc plus profonde du papier',
  'the bottom flap ends {length} short of the hinge across':
    'le rabat du bas s’arrête à {length} de la charnière d’en face',
  'the top flap ends {length} short of the hinge across':
    'le rabat du haut s’arrête à {length} de la charnière d’en face',
  'the bottom flap reaches past the middle': 'le rabat du bas dépasse le milieu',
  '{words} must not stand out above the cover': 'rien ne doit dépasser du plat : {words}',
  '{words} must not stand out above the wallet': 'rien ne doit dépasser de la pochette : {words}',
  '{words} needs play between the bottom and the closing flap':
    'il faut du jeu entre le fond et le rabat de fermeture pour {words}',
  '{words} needs play between the bottom and the mouth':
    'il faut du jeu entre le fond et l’ouverture pour {words}',
  '{words} needs play between the dust flaps': 'il faut du jeu entre les rabats anti-poussière pour {words}',
  '{words} needs play between the other two hinges':
    'il faut du jeu entre les deux autres charnières pour {words}',
  '{words} needs play between the side flaps’ hinges':
    'il faut du jeu entre les charnières des rabats latéraux pour {words}',
  '{words} needs play between the sides': 'il faut du jeu entre les côtés pour {words}',
  'the closing flap ends {length} above the bottom fold':
    'le rabat de fermeture s’arrête à {length} au-dessus du pli du bas',
  'the corners must not reach the lower edge': 'les coins ne doivent pas atteindre le bord inférieur',
  'the corners take that share of the width': 'les coins prennent cette part de la largeur',
  'the doors lie over each other by {length} at least': 'les battants se recouvrent d’au moins {length}',
  'the doors lie over each other in the middle': 'les battants se recouvrent au milieu',
  'the doors meet in the middle': 'les battants se rejoignent au milieu',
  'the doors must not lie over each other': 'les battants ne doivent pas se recouvrir',
  'the dust flaps must not reach each other': 'les rabats anti-poussière ne doivent pas se toucher',
  'the ends meet on the back': 'les bouts se rejoignent derrière',
  'the ends must hold their glue with {length} to spare on each side':
    'les bouts doivent contenir leur colle avec {length} de marge de chaque côté',
  'the envelope must go round the {words} and its thickness':
    'l’enveloppe doit en faire le tour, épaisseur comprise ({words})',
  'the flap takes that share of the front': 'le rabat prend cette part du devant',
  'the gum must lie on the back, {length} below its edge':
    'le gommage doit tomber sur le derrière, à {length} sous son bord',
  'the hinge must hold the wallet’s own layers':
    'la charnière doit contenir les épaisseurs de la pochette elle-même',
  'the hinges must hold the stack and the wallet’s own layers':
    'les charnières doivent contenir la pile et les épaisseurs de la pochette elle-même',
  'the innermost panel must be wide enough to fold':
    'le panneau le plus intérieur doit être assez large pour se plier',
  'the notch stays {length} from the sides': 'l’encoche reste à {length} des côtés',
  'the notch takes a third of the height at most': 'l’encoche prend au plus un tiers de la hauteur',
  '{words}, beside its glue': '{words}, à côté de la colle',
  'the points nearly meet in the middle': 'les pointes se rejoignent presque au milieu',
  'the right door lies over the left one, so its hinge is deeper by the paper':
    'le battant droit recouvre le gauche, sa charnière est donc plus profonde du papier',
  'the side flaps must not reach each other': 'les rabats latéraux ne doivent pas se toucher',
  'the side flaps nearly meet': 'les rabats latéraux se rejoignent presque',
  'the side flaps’ hinges must be as deep as the stack':
    'les charnières des rabats latéraux doivent être aussi profondes que la pile',
  'the sides must be as deep as the stack': 'les côtés doivent être aussi profonds que la pile',
  'the sides must hold the stack, the tuck flap and the front':
    'les côtés doivent contenir la pile, la patte rentrante et le devant',
  'the sleeve must go round the {words} and its stack': 'le fourreau doit faire le tour de la pile ({words})',
  'the stack lies behind the tuck flaps': 'la pile est derrière les pattes rentrantes',
  'the tab is no wider than the divider': 'l’onglet n’est pas plus large que l’intercalaire',
  'the tab takes half of the back at most': 'la languette prend au plus la moitié du derrière',
  'the tabs must not reach each other': 'les languettes ne doivent pas se toucher',
  'the top flap covers it': 'le rabat du haut le recouvre',
  'the top flap’s hinge must hold the stack and the flaps under it':
    'la charnière du rabat du haut doit contenir la pile et les rabats de dessous',
  'the tuck flap lies close behind the front': 'la patte rentrante est tout contre le devant',
  'the tuck flap must lie behind the front, so the lid is shorter by the paper':
    'la patte rentrante doit passer derrière le devant, le couvercle est donc plus court du papier',
  'the tuck flap must lie close behind the front': 'la patte rentrante doit être tout contre le devant',
  'the tuck flaps of lid and bottom must not meet':
    'les pattes rentrantes du couvercle et du fond ne doivent pas se toucher',
  'the upper edge needs {length} for the hole': 'le bord supérieur a besoin de {length} pour le trou',
  'top and bottom flap lie over each other by {length}, or the contents show':
    'rabats du haut et du bas se recouvrent de {length}, sinon le contenu se voit',
  'At the inside face: {words}': 'Face intérieure : {words}',
  'At the outside face: {words}': 'Face extérieure : {words}',
  'Crease the {words}: bend them toward you, and lay them flat again.':
    '{words} : marquer les plis vers vous, puis remettre à plat.',
  'Fold the {words} over, both toward you.': '{words} : replier les deux vers vous.',
  'bottom dust flaps': 'rabats anti-poussière du fond',
  'lid dust flaps': 'rabats anti-poussière du couvercle',
  'a lower envelope has no room for diagonal seams':
    'une enveloppe plus basse n’a pas de place pour des jointures en biais',
  'outside face': 'face extérieure',
  'inside face': 'face intérieure',
  'it is to be as large as the card': 'elle doit être aussi grande que la carte',
  'The guide shows where glue goes and what it must stay clear of. It is never cut: draw it with a pen, or hide it.':
    'Les repères montrent où va la colle et ce qui doit en rester libre. Ils ne sont jamais découpés : tracez-les au stylo, ou masquez-les.',
};
