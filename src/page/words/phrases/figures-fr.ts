import type { Phrases } from '../tell.ts';

/** Ce que le cœur de calcul dit des dessins, polices et répétitions. */
export const figures: Phrases = {
  '{name} in line {number} is not read: {words}': '{name} à la ligne {number} n’est pas lu : {words}',
  '{name} in line {number} has the attribute {nameB}: {words}':
    '{name} à la ligne {number} a l’attribut {nameB} : {words}',
  '{name} in line {number} has a stroke: a line has no inside that could be cut out':
    '{name} à la ligne {number} a un contour : un trait n’a pas d’intérieur à découper',
  '{name} in line {number} has no fill': '{name} à la ligne {number} n’a pas de remplissage',
  '{name} in line {number} is white, so it hides what lies below it instead of being cut':
    '{name} à la ligne {number} est blanc : il cache ce qui est dessous au lieu d’être découpé',
  '{name} in line {number} draws nothing': '{name} à la ligne {number} ne dessine rien',
  '{name} in line {number} stands in <defs>, where nothing is drawn':
    '{name} à la ligne {number} est dans <defs>, où rien n’est dessiné',
  '{name} in line {number} has fewer than 3 points, so it has no inside':
    '{name} à la ligne {number} a moins de 3 points, donc pas d’intérieur',
  'the {name} of {nameB} in line {number} has {nameC}, which is not a number':
    '{name} de {nameB} à la ligne {number} contient {nameC}, qui n’est pas un nombre',
  'the {name} of {nameB} in line {number} is {nameC}, which is not read':
    '{name} de {nameB} à la ligne {number} est {nameC}, qui n’est pas lu',
  'the {name} of {nameB} in line {number} is not path data: {nameC}':
    '{name} de {nameB} à la ligne {number} n’est pas un tracé : {nameC}',
  'the file begins with {name} in line {number}, where {nameB} is expected':
    'le fichier commence par {name} à la ligne {number}, là où {nameB} est attendu',
  'line {number}: there is text between the shapes: {name}':
    'ligne {number} : il y a du texte entre les formes : {name}',
  'line {number}: this is not sound XML: {name}': 'ligne {number} : ce n’est pas du XML valable : {name}',
  'line {number}: the DOCTYPE declares things of its own, or is not that of SVG':
    'ligne {number} : le DOCTYPE déclare autre chose, ou n’est pas celui de SVG',
  'the artwork is neither SVG nor path data': 'le dessin n’est ni du SVG ni un tracé',
  'the artwork has no shapes': 'le dessin n’a pas de formes',
  'the artwork encloses no area': 'le dessin n’entoure aucune surface',
  'the artwork is empty': 'le dessin est vide',
  'artwork has at most {number} KiB': 'un dessin a au plus {number} Kio',
  'the artwork falls into more than {number} parts': 'le dessin compte plus de {number} morceaux',
  'nothing says how large the artwork is': 'rien ne dit la taille du dessin',
  'a part of the artwork lies outside the page that the file shows':
    'une partie du dessin est hors de la page que montre le fichier',
  'the artwork is {length} × {lengthB}': 'le dessin mesure {length} × {lengthB}',
  'a cutter reads no style sheets': 'une machine de découpe ne lit pas de feuilles de style',
  'a cutter has no fonts': 'une machine de découpe n’a pas de polices',
  'a picture has no lines to follow': 'une image n’a pas de traits à suivre',
  'copies by reference are not followed': 'les copies par référence ne sont pas suivies',
  'programs are never run': 'aucun programme n’est exécuté',
  'a clip hides lines, and a blade still follows them':
    'un masque de découpe cache des traits que la lame suivrait quand même',
  'a mask hides lines, and a blade still follows them':
    'un masque cache des traits que la lame suivrait quand même',
  'effects cannot be cut': 'les effets ne se découpent pas',
  'a line has no inside that could be cut out': 'un trait n’a pas d’intérieur à découper',
  'links are not followed': 'les liens ne sont pas suivis',
  'gradients cannot be cut': 'les dégradés ne se découpent pas',
  'patterns cannot be cut': 'les motifs ne se découpent pas',
  'only svg, g, path, rect, circle, ellipse, polygon and polyline are read':
    'seuls svg, g, path, rect, circle, ellipse, polygon et polyline sont lus',
  'styles are not read': 'les styles ne sont pas lus',
  'style sheets are not read': 'les feuilles de style ne sont pas lues',
  'it hides or changes lines that a blade still follows':
    'il cache ou change des traits que la lame suivrait quand même',
  'what is hidden or faint would be cut all the same': 'ce qui est caché ou pâle serait découpé quand même',
  'it is not one that is read': 'il n’est pas lu',
  'write colours as attributes of the shapes': 'écrire les couleurs comme attributs des formes',
  'write its colours as attributes, as in fill="black"':
    'écrire ses couleurs en attributs, comme fill="black"',
  'write colours as attributes, as in fill="black"': 'écrire les couleurs en attributs, comme fill="black"',
  'turn text into paths, or use lettering': 'convertir le texte en tracés, ou prendre des lettres',
  'trace it, and keep the paths only': 'la vectoriser et ne garder que les tracés',
  'replace each copy by its own shape': 'remplacer chaque copie par sa propre forme',
  'remove it': 'l’enlever',
  'remove it, or the shape': 'l’enlever, ou la forme',
  'remove it, or turn it into paths': 'l’enlever, ou le convertir en tracés',
  'take it out, or remove it': 'le sortir de là, ou l’enlever',
  'intersect the shapes instead': 'faire plutôt l’intersection des formes',
  'turn it into a filled outline': 'le convertir en contour rempli',
  'fill with one colour': 'remplir d’une seule couleur',
  'fill with one plain colour': 'remplir d’une couleur unie',
  'fill what is to be cut out, or remove it': 'remplir ce qui doit être découpé, ou l’enlever',
  'turn strokes into outlines, fill these, and set stroke to none':
    'convertir les contours en formes, les remplir et mettre stroke à none',
  'subtract it from the shape below, or give it a colour':
    'le soustraire de la forme du dessous, ou lui donner une couleur',
  'change the shape itself': 'changer la forme elle-même',
  'save as plain SVG, or remove it': 'enregistrer en SVG simple, ou l’enlever',
  'save it as SVG': 'l’enregistrer en SVG',
  'save the drawing again': 'enregistrer de nouveau le dessin',
  'remove the DOCTYPE; SVG needs none': 'enlever le DOCTYPE ; SVG n’en a pas besoin',
  'correct it, or save the drawing again': 'le corriger, ou enregistrer de nouveau le dessin',
  'write plain numbers without units or percentages':
    'écrire des nombres simples, sans unités ni pourcentages',
  'give the text of an SVG file, or path data that begins with M':
    'donner le texte d’un fichier SVG, ou un tracé qui commence par M',
  'draw at least one filled shape': 'dessiner au moins une forme remplie',
  'draw a shape, or remove it': 'dessiner une forme, ou l’enlever',
  'close its lines around what is to be cut out': 'fermer ses traits autour de ce qui doit être découpé',
  'simplify it': 'le simplifier',
  'simplify it, or make it smaller': 'le simplifier ou le réduire',
  'give its width or height': 'donner sa largeur ou sa hauteur',
  'enlarge the viewBox to all of the drawing, or remove what lies outside':
    'agrandir la viewBox à tout le dessin, ou enlever ce qui dépasse',
  'give it a width or height that makes both sides {length} to {lengthB}':
    'lui donner une largeur ou une hauteur telle que les deux côtés aient de {length} à {lengthB}',
  'the font file has {number} KiB, more than {numberB} KiB':
    'le fichier de police a {number} Kio, plus de {numberB} Kio',
  'a font file has at most {number} KiB': 'un fichier de police a au plus {number} Kio',
  'export it with only the characters that you need, or as WOFF':
    'l’exporter avec les seuls caractères utiles, ou en WOFF',
  'the file is no font': 'le fichier n’est pas une police',
  'the file is {name}, which is not read': 'le fichier est {name}, qui n’est pas lu',
  'give a TTF, OTF or WOFF file': 'donner un fichier TTF, OTF ou WOFF',
  'the font was not opened': 'la police n’a pas pu être ouverte',
  'name a font that comes along': 'nommer une police fournie',
  'the font has no {name}': 'la police n’a pas {name}',
  'leave it out, write it another way, or use a font that has it':
    'l’omettre, l’écrire autrement, ou prendre une police qui l’a',
  'there is no text': 'il n’y a pas de texte',
  'the text has nothing but spaces': 'le texte n’a que des espaces',
  'a line of lettering has at most {number} characters': 'une ligne de lettres a au plus {number} caractères',
  'how often the motif is repeated takes one of count and pitch':
    'la répétition du motif se dit par le nombre ou par l’écart',
  'give how many motifs there are, or how far apart their middles lie':
    'donner le nombre de motifs, ou l’écart entre leurs centres',
  'the margins leave nothing of the length': 'les marges ne laissent rien de la longueur',
  'give a margin of at most half of the length': 'donner une marge d’au plus la moitié de la longueur',
  'at this pitch the motif is repeated {number} times': 'à cet écart, le motif se répète {number} fois',
  'give a larger pitch, for at most {number} motifs':
    'donner un plus grand écart, pour au plus {number} motifs',
  'the grid has {number} motifs': 'la grille a {number} motifs',
  'give fewer rows or columns, for at most {number} motifs':
    'donner moins de lignes ou de colonnes, pour au plus {number} motifs',
  'with {words} the knockouts have more than {number} straight parts, through all layers and once curves are followed within 0.01 mm':
    'avec cela ({words}), les découpes ont plus de {number} segments à travers toutes les épaisseurs, courbes suivies à 0,01 mm',
  'repeat it less often, use plainer figures, or cut fewer layers':
    'répéter moins, prendre des figures plus simples, ou découper moins d’épaisseurs',
  '{number} pieces would fall out, more than the {numberB} that are bridged automatically':
    '{number} morceaux tomberaient, plus que les {numberB} tenus automatiquement',
};
