import type { Phrases } from '../tell.ts';
import { cutouts } from './cutouts-de.ts';
import { figures } from './figures-de.ts';
import { locks } from './locks-de.ts';
import { styles } from './styles-de.ts';

/** Was der Rechenkern sagt, auf Deutsch; Formen siehe `Phrases`. */
export const phrases: Phrases = {
  // Teile
  hem: 'Saum',
  hems: 'Säume',
  corner: 'Ecke',
  corners: 'Ecken',
  seam: 'Naht',
  spine: 'Rücken',
  front: 'Vorderseite',
  back: 'Rückseite',
  overlap: 'Überlappung',
  pocket: 'Tasche',
  pockets: 'Taschen',
  tab: 'Lasche',
  tabs: 'Laschen',
  'top flap': 'obere Klappe',
  'bottom flap': 'untere Klappe',
  'front cover': 'vorderer Deckel',
  'back cover': 'hinterer Deckel',
  'panel width': 'Breite der Vorderseite',
  'panel height': 'Höhe der Vorderseite',
  'the hem': 'der Saum',
  'the hems': 'die Säume',
  'the corner': 'die Ecke',
  'the corners': 'die Ecken',
  'the spine': 'der Rücken',
  'the top flap': 'die obere Klappe',
  'the bottom flap': 'die untere Klappe',
  'the front cover': 'der vordere Deckel',
  'the back cover': 'der hintere Deckel',
  'the card': 'die Karte',
  'the envelope': 'der Umschlag',
  'top left corner': 'obere linke Ecke',
  'top right corner': 'obere rechte Ecke',
  'bottom left corner': 'untere linke Ecke',
  'bottom right corner': 'untere rechte Ecke',
  'left hem': 'linker Saum',
  'right hem': 'rechter Saum',
  'left hem of the top flap': 'linker Saum der oberen Klappe',
  'right hem of the top flap': 'rechter Saum der oberen Klappe',
  'left hem of the bottom flap': 'linker Saum der unteren Klappe',
  'right hem of the bottom flap': 'rechter Saum der unteren Klappe',
  'spine at the front': 'Rücken an der Vorderseite',
  'spine at the back': 'Rücken an der Rückseite',
  card: 'Karte',
  cards: 'Karten',
  envelope: 'Umschlag',
  'card with its envelope': 'Karte mit Umschlag',
  'cards with their envelopes': 'Karten mit Umschlägen',
  'front pocket': 'vordere Tasche',
  'back pocket': 'hintere Tasche',

  // Papiere und Formate
  'craft paper, {number} x {numberB} in': 'Bastelpapier, {number} × {numberB} Zoll',
  'craft paper, 8 1/2 x 11 in': 'Bastelpapier, 8 1/2 × 11 Zoll',
  'ISO {name}, untrimmed': 'ISO {name}, unbeschnitten',
  'ISO {name}': 'ISO {name}',
  'JIS {name}, not ISO {nameB}': 'JIS {name}, nicht ISO {nameB}',
  'US {name} card': 'US-Karte {name}',
  'US {name} envelope': 'US-Umschlag {name}',
  'US {name} in index card': 'US-Karteikarte {name} Zoll',
  'US letter': 'US Letter',
  'US legal': 'US Legal',
  'US ledger': 'US Ledger',
  'one third of ISO A4': 'ein Drittel von ISO A4',
  'DIN {name} envelope': 'DIN-Umschlag {name}',
  'Italian envelope': 'italienischer Umschlag',
  'square invitation envelope, {name} mm': 'quadratischer Einladungsumschlag, {name} mm',
  'craft paper, {name} × {nameB} in': 'Bastelpapier, {name} × {nameB} Zoll',
  '{words}, {name} × {nameB} mm': '{words}, {name} × {nameB} mm',
  '{words}, {name} × {nameB} in': '{words}, {name} × {nameB} Zoll',
  'your sheet': 'dein Bogen',
  'sheet {number} of your list': 'Bogen {number} deiner Liste',

  // Schritte
  'Step {number}: {words}': 'Schritt {number}: {words}',
  'Lay the sheet with its inside face up.': 'Den Bogen mit der Innenseite nach oben hinlegen.',
  'The top of the outside print lies at the top.': 'Die Oberkante des äußeren Musters liegt oben.',
  'The top of the outside print lies on the left.': 'Die Oberkante des äußeren Musters liegt links.',
  'Fold the {words} over, toward you.': '{words}: zu dir hin umfalten.',
  'Fold the {words} behind, away from you.': '{words}: nach hinten umfalten, von dir weg.',
  'Bend the {words} toward you, to a right angle.': '{words}: zu dir hin zum rechten Winkel biegen.',
  'Bend the {words} away from you, to a right angle.': '{words}: von dir weg zum rechten Winkel biegen.',
  'Crease the {words}: bend it toward you, and lay it flat again.':
    '{words}: zu dir hin vorbrechen und wieder flach legen.',
  'Crease the {words}: bend it away from you, and lay it flat again.':
    '{words}: von dir weg vorbrechen und wieder flach legen.',
  'Slip the {words} over the {wordsB}.': 'Übereinander stecken, oben: {words}; unten: {wordsB}.',
  'Slip the {words} under the {wordsB}.': 'Übereinander stecken, unten: {words}; oben: {wordsB}.',
  'Glue the {words} down: {wordsB} {length} wide, {lengthB} inside its edges.':
    'Festkleben: {words}. {wordsB}, {length} breit, {lengthB} innerhalb der Kanten.',
  'Glue the {words} down: {wordsB} {length} wide, {lengthB} inside their edges.':
    'Festkleben: {words}. {wordsB}, {length} breit, {lengthB} innerhalb der Kanten.',
  'a line': 'Eine Linie',
  'two lines': 'Zwei Linien',
  '{number} lines': '{number} Linien',
  'Leave the hems of the top flap free where the bottom flap will be slipped in.':
    'Die Säume der oberen Klappe dort frei lassen, wo die untere hineingesteckt wird.',
  'Leave the hems of the bottom flap free where the top flap will be slipped in.':
    'Die Säume der unteren Klappe dort frei lassen, wo die obere hineingesteckt wird.',
  'Keep it off the panels behind, or the pockets are shut.':
    'Nichts auf die Felder dahinter bringen, sonst sind die Taschen zu.',
  'Slide {number} {words} into the front pocket and {numberB} into the back pocket, through their open ends.':
    'Durch die offenen Enden einschieben: {number} {words} in die vordere Tasche, {numberB} in die hintere.',
  'Slide {number} {words} into the {wordsB}, through its open end.':
    'Durch das offene Ende einschieben: {number} {words}. Wohin: {wordsB}.',
  'Then close the folder.': 'Dann die Mappe schließen.',

  // Bilder
  'The closed {words}, {length} wide and {lengthB} high.':
    'Geschlossen ({words}): {length} breit und {lengthB} hoch.',
  'The finished {words}, {length} wide and {lengthB} high.':
    'Fertig ({words}): {length} breit und {lengthB} hoch.',
  'At the front: {words}': 'Vorn: {words}',
  'At the back: {words}': 'Hinten: {words}',
  'The {words} after it was turned over left to right.': 'Von links nach rechts gewendet: {words}.',
  'The {words} as it lies when it has been folded.': 'So liegt es nach dem Falten: {words}.',
  folder: 'Mappe',
  'flat sleeve': 'flache Hülle',
  '{list} shows the outside face, print {ways}.': '{list} zeigt die Außenseite, Muster {ways}.',
  '{list} show the outside face, print {ways}.': '{list} zeigen die Außenseite, Muster {ways}.',
  '{list} shows the inside face, print {ways}.': '{list} zeigt die Innenseite, Muster {ways}.',
  '{list} show the inside face, print {ways}.': '{list} zeigen die Innenseite, Muster {ways}.',
  '{list} shows the inside face.': '{list} zeigt die Innenseite.',
  '{list} show the inside face.': '{list} zeigen die Innenseite.',
  upright: 'aufrecht',
  'upside down': 'kopfstehend',
  'on its left side': 'auf der linken Seite liegend',
  'on its right side': 'auf der rechten Seite liegend',
  'The folder stands like a half open book.': 'Die Mappe steht wie ein halb offenes Buch.',
  'At the left is the front cover from outside, at the right the pocket on the back cover.':
    'Links ist der vordere Deckel von außen zu sehen, rechts die Tasche am hinteren.',
  'At the left is the front cover from outside, at the right the pocket on the back cover, with what it holds as a dashed outline.':
    'Links ist der vordere Deckel von außen zu sehen, rechts die Tasche am hinteren, ihr Inhalt gestrichelt.',

  // Gründe und Grenzen
  'makers like {length}': 'üblich sind {length}',
  'makers like {length} for a hem': 'für einen Saum sind {length} üblich',
  'makers like {length} for a seam': 'für eine Naht sind {length} üblich',
  'that is what the stack takes': 'so viel braucht der Stapel',
  'that is what the pocket takes': 'so viel braucht die Tasche',
  '{words}, and a step more lets the hems use up the sheet’s width':
    '{words}, und ein Schritt mehr lässt die Säume die Bogenbreite aufbrauchen',
  'panels and hems share the sheet’s width in the style’s proportions':
    'Deckel und Säume teilen sich die Bogenbreite in den üblichen Verhältnissen',
  'that uses the sheet’s height': 'so wird die Bogenhöhe genutzt',
  'that uses the sheet’s height without letting the contents rattle':
    'so wird die Bogenhöhe genutzt, ohne dass der Inhalt klappert',
  'the seam takes the height that is left': 'die Naht nimmt die übrige Höhe',
  'a deeper seam would only add bulk': 'eine tiefere Naht würde nur auftragen',
  'the hems take the width that is left': 'die Säume nehmen die übrige Breite',
  'the hems take the width that they may': 'die Säume nehmen so viel Breite, wie sie dürfen',
  'makers like the seam near the middle': 'die Naht soll nahe der Mitte liegen',
  'the sheet is no wider': 'breiter ist der Bogen nicht',
  'the sheet is no higher': 'höher ist der Bogen nicht',
  'the cutter is no wider': 'breiter ist die Schneidefläche nicht',
  'the cutter is no higher': 'höher ist die Schneidefläche nicht',
  'the spec gives the {words}': 'vorgegeben ist: {words}',
  'a hem must hold its glue with {length} to spare on each side':
    'ein Saum braucht auf jeder Seite des Klebers {length} Luft',
  'the seam must hold its glue with {length} to spare on each side':
    'die Naht braucht auf jeder Seite des Klebers {length} Luft',
  'a hem ends {length} short of the spine score': 'ein Saum endet {length} vor der Rückenrille',
  'a corner must not reach the top flap’s score': 'eine Ecke darf nicht bis an die Rille der oberen Klappe',
  'a corner must not reach the bottom flap’s score':
    'eine Ecke darf nicht bis an die Rille der unteren Klappe',
  'the top flap ends {length} short of the bottom fold':
    'die obere Klappe endet {length} vor der unteren Falte',
  'the bottom flap ends at the top fold at the latest':
    'die untere Klappe endet spätestens an der oberen Falte',
  'two scores closer than that are hard to make in this paper':
    'engere Rillen lassen sich in dieses Papier kaum machen',
  'the spine must hold the folder’s own layers': 'der Rücken muss die eigenen Papierlagen fassen',
  'the spine must hold both stacks and the folder’s own layers':
    'der Rücken muss beide Stapel und die eigenen Papierlagen fassen',
  '{words} needs play between the spine and the pocket’s mouth':
    '{words} braucht Spiel zwischen Rücken und Taschenöffnung',
  'the pocket must go round the {words} and its stack': 'die Tasche muss um {words} und Stapel herumreichen',
  'a finer grid, or a little more paper': 'feinere Schritte oder etwas mehr Papier',

  // Hinweise
  'nothing says how thick the paper is: {length} is common practice; measure ten sheets together and divide by ten':
    'die Papierdicke ist nicht angegeben: üblich sind {length}; miss zehn Bogen zusammen und teile durch zehn',
  'give the stock’s caliper': 'die Dicke eines Bogens angeben',
  'paper of {length} makes a floppy {words}': 'Papier von {length} ist dafür zu weich ({words})',
  'paper of {length} is board: single scores crack in it, and flaps and hems will not lie flat':
    'Papier von {length} ist Pappe: einfache Rillen brechen darin, und Klappen und Säume liegen nicht flach',
  'paper of {length} may crack along single scores': 'Papier von {length} kann an einfachen Rillen brechen',
  'take card of {length} to {lengthB}': 'Karton von {length} bis {lengthB} nehmen',
  'take card of {length} to {lengthB}, or try a wider score on a scrap first':
    'Karton von {length} bis {lengthB} nehmen oder erst an einem Rest eine breitere Rille versuchen',
  'the two {words} scores are only {length} apart':
    'die beiden Rillen dort ({words}) liegen nur {length} auseinander',
  'score lightly, or use thinner paper': 'leicht rillen oder dünneres Papier nehmen',
  'the sheet is {length} larger than the blank; that is too little to trim and stays on at the right':
    'der Bogen ist {length} größer als der Zuschnitt; das ist zum Abschneiden zu wenig und bleibt rechts dran',
  'the sheet is {length} larger than the blank; that is too little to trim and stays on at the bottom':
    'der Bogen ist {length} größer als der Zuschnitt; das ist zum Abschneiden zu wenig und bleibt unten dran',
  'a strip of only {length} is left to trim off': 'es bleibt ein Streifen von nur {length} abzuschneiden',
  'leave it on, or give no grid so that the hems and the seam take it':
    'ihn dranlassen oder keine Schritte vorgeben, damit Säume und Naht ihn aufnehmen',
  'the {words} of {length} is no whole number of grid steps: the bounds leave no step free':
    '{words}: {length} sind keine ganze Zahl von Schritten; die Grenzen lassen keinen Schritt frei',
  'the card is larger than its envelope': 'die Karte ist größer als ihr Umschlag',
  'check both sizes; the pocket was sized for the envelope':
    'beide Maße prüfen; die Tasche ist für den Umschlag bemessen',
  'a {words} of {length} would hold {number} sets in each pocket':
    '{words}: bei {length} passen {number} Sätze in jede Tasche',
  '{number} layers of paper lie on each other where hems and seam meet: there the closed folder is {length} thicker than at its spine':
    'wo Säume und Naht zusammentreffen, liegen {number} Lagen Papier aufeinander: dort ist die geschlossene Mappe {length} dicker als am Rücken',
  'thinner paper, mitred corners, or a {words} of {length} if it should close evenly':
    'dünneres Papier, weggeschnittene Ecken oder, damit sie gleichmäßig schließt, {words}: {length}',
  'only {number} % of the paper is left along a perforated fold: it may tear':
    'entlang einer perforierten Falte bleiben nur {number} % des Papiers: sie kann reißen',
  'ties about as long as the cuts, and none under {length}':
    'Stege etwa so lang wie die Schnitte und keiner unter {length}',
  'the filled cut is written last, so that a preview shows nothing but its area':
    'der gefüllte Schnitt steht zuletzt, sodass eine Vorschau nur seine Fläche zeigt',
  'give the cut layer an order below the scores if your program does not cut by the file’s order':
    'die Schnittebene vor die Rillen stellen, falls das Programm nicht in der Reihenfolge der Datei schneidet',
  'the corners are cut along the sheet’s own edge, as far out as the tool must reach':
    'die Ecken werden am Rand des Bogens geschnitten, so weit außen muss das Werkzeug hinkommen',
  'the outline is cut along the sheet’s own edge, as far out as the tool must reach':
    'der Umriss wird am Rand des Bogens geschnitten, so weit außen muss das Werkzeug hinkommen',
  'lay the sheet so that the tool reaches over its edge, or switch the cut layer off and cut by hand':
    'den Bogen so legen, dass das Werkzeug über den Rand kommt, oder die Schnittebene abschalten und von Hand schneiden',

  // Absagen
  'the blank would be {length} wide and {words}, so {lengthB} is missing':
    'der Zuschnitt wäre {length} breit, doch {words}; es fehlen {lengthB}',
  'the blank would be {length} high and {words}, so {lengthB} is missing':
    'der Zuschnitt wäre {length} hoch, doch {words}; es fehlen {lengthB}',
  'the cutter’s area is {length}': 'die Schneidefläche misst {length}',
  '{words}, turned, is {length}': 'gedreht misst der Bogen ({words}) {length}',
  '{name}, turned, is {length}': 'gedreht misst der Bogen ({name}) {length}',
  '{words} is {length}': 'der Bogen ({words}) misst {length}',
  '{name} is {length}': 'der Bogen ({name}) misst {length}',
  'the given {words} is {length}': 'vorgegeben ist {words}: {length}',
  '{words}: it must be at least {length}, and can only be {lengthB}':
    '{words}: nötig sind mindestens {length}, möglich nur {lengthB}',
  '{words}; that fails by {length}': '{words}; daran fehlen {length}',
  'the given dimensions contradict each other by {length}':
    'die vorgegebenen Maße widersprechen sich um {length}',
  '{words}, because {clauses}': '{words}, denn {clauses}',
  '{words}: {clauses}': '{words}: {clauses}',
  '{words}, and {wordsB}': '{words}, und {wordsB}',
  'this style holds nothing, so it takes no contents': 'diese Art nimmt nichts auf, also auch keinen Inhalt',

  // Was hilft
  'turn the contents by a quarter': 'den Inhalt um ein Viertel drehen',
  'stand the contents as given': 'den Inhalt so stellen, wie angegeben',
  'let the contents stand the other way': 'den Inhalt anders herum stellen',
  'put {number} in each pocket': '{number} in jede Tasche stecken',
  'make the {words} {length}': 'dieses Maß ändern: {words} {length}',
  'leave the {words} to the solver': 'dieses Maß nicht vorgeben: {words}',
  'leave every dimension to the solver': 'kein Maß vorgeben',
  'use tape of {length}': 'Klebeband von {length} nehmen',
  'leave the envelopes out': 'die Umschläge weglassen',
  'use a sheet of {length} by {lengthB}': 'einen Bogen von {length} mal {lengthB} nehmen',
  'use a sheet of {words} and a larger machine, or cut by hand':
    'diesen Bogen nehmen: {words}, und eine größere Maschine, oder von Hand schneiden',
  'use a sheet of {words}': 'diesen Bogen nehmen: {words}',
  'let the sheet lie the other way': 'den Bogen anders herum legen',
  'use paper whose print may be turned': 'Papier nehmen, dessen Muster man drehen darf',
  'use a machine with a larger area, or cut by hand':
    'eine Maschine mit größerer Schneidefläche nehmen oder von Hand schneiden',
  'use as little paper as serves': 'so wenig Papier nehmen, wie reicht',
  'use the whole sheet': 'den ganzen Bogen nutzen',
  'use {words}': 'dieses Papier nehmen: {words}',
  'use {name}': 'dieses Papier nehmen: {name}',

  // Eingaben
  '{name} is too long to be a length': '{name} ist zu lang für ein Maß',
  'the length is empty': 'das Maß fehlt',
  '{name} is negative': '{name} ist kleiner als null',
  '{name} has an exponent': '{name} hat einen Exponenten',
  '{name} has a comma': '{name} hat ein Komma',
  '{name} is not a length': '{name} ist kein Maß',
  '{name} is not a unit that hemfold reads': '{name} ist keine Einheit, die hemfold kennt',
  '{name} divides by zero': '{name} teilt durch null',
  'write it like "5 1/8 in", "5.125 in", "130 mm" or "13 cm"':
    'schreib es wie 130 mm, 13 cm, 5 1/8 Zoll oder 5,125 Zoll',
  'give a length greater than zero': 'ein Maß über null angeben',
  'write the number out, since exponents are not read': 'die Zahl ausschreiben',
  'write the decimal mark as a point and no thousands marks':
    'nur ein Dezimalzeichen und keine Tausenderzeichen schreiben',
  'use mm, cm, in or the inch sign': 'mm, cm, Zoll oder das Zollzeichen schreiben',
  'the length is more than 10 m': 'das Maß ist größer als 10 m',
  'give a length that a sheet of paper can have': 'ein Maß angeben, das ein Bogen Papier haben kann',
  'the length is zero': 'das Maß ist null',
  'the length is {length}': 'das Maß ist {length}',
  'give a length from {length} to {lengthB}': 'ein Maß von {length} bis {lengthB} angeben',
  'the size is missing': 'die Größe fehlt',
  'the size is given twice': 'die Größe ist doppelt angegeben',
  'give either a size by name or a width and a height': 'entweder ein Format oder Breite und Höhe angeben',
  'the margins leave nothing of the cutter’s area': 'die Ränder lassen nichts von der Schneidefläche übrig',
  'give a margin of less than half the shorter side':
    'einen Rand angeben, der kleiner als die halbe kürzere Seite ist',
  'this version does not know it': 'diese Version kennt das nicht',
  'neither contents nor dimensions are given': 'weder Inhalt noch Maße sind angegeben',
  'say what goes in, or fix at least one dimension; POST /v1/folders/possible lists what a sheet can become':
    'angeben, was hineinkommt, oder wenigstens ein Maß',
  'without contents, nothing says how large the {words} is to be':
    'ohne Inhalt sagt nichts, wie groß es werden soll: {words}',
  'give the sheet as stock, say what goes in, or fix {words}':
    'den Bogen angeben, oder was hineinkommt, oder diese Maße: {words}',
  'the width and height of a panel': 'Breite und Höhe der Vorderseite',
  'Invalid input: expected number, received string': 'hier steht eine Zahl',
  'Invalid input: expected int, received number': 'hier steht eine ganze Zahl',
  'Too small: expected number to be >={number}': 'mindestens {number}',
  'Too big: expected number to be <={number}': 'höchstens {number}',
  'Too big: expected string to have <={number} characters': 'höchstens {number} Zeichen',

  // Vorsicht
  'Make a first piece from plain paper, and measure it, before you cut a good sheet.':
    'Mach ein erstes Stück aus einfachem Papier und miss es nach, bevor du einen guten Bogen schneidest.',
  'Follow the instructions of the machine’s maker and the material’s data sheet; they and local rules come before anything said here.':
    'Folge der Anleitung des Maschinenherstellers und dem Datenblatt des Materials; sie und die Regeln am Ort gehen allem vor, was hier steht.',
  'Knives: a sharp blade, a mat larger than the cut, a metal safety rule, the other hand behind the cut.':
    'Messer: scharfe Klinge, Matte größer als der Schnitt, Sicherheitslineal aus Metall, die andere Hand hinter dem Schnitt.',
  'Keep fingers, hair and ribbon away from moving parts.':
    'Finger, Haare und Band von beweglichen Teilen fernhalten.',
  'Lasers: never leave one running alone, keep the extraction on and an extinguisher at hand.':
    'Laser: nie allein laufen lassen, Absaugung an, Feuerlöscher griffbereit.',
  'Never cut vinyl or PVC, nor a coated, foiled or glittered sheet that its data sheet does not clear.':
    'Nie Vinyl oder PVC schneiden, auch keinen beschichteten, folierten oder beglitzerten Bogen, den sein Datenblatt nicht freigibt.',
  'hemfold cannot check your machine or your material, and gives no settings for either.':
    'hemfold kann weder Maschine noch Material prüfen und nennt für beide keine Einstellungen.',

  // Zeichenweisen
  'Width and height in millimetres, and one unit inside the drawing is a millimetre.':
    'Breite und Höhe in Millimetern; eine Einheit in der Zeichnung ist ein Millimeter.',
  'Width and height in inches, and 96 units inside the drawing are an inch, as in CSS: for programs that ignore one or the other.':
    'Breite und Höhe in Zoll; 96 Einheiten in der Zeichnung sind ein Zoll, wie in CSS: für Programme, die eines von beiden nicht beachten.',
  'Width and height in inches, and 72 units inside the drawing are an inch: for programs that count in points.':
    'Breite und Höhe in Zoll; 72 Einheiten in der Zeichnung sind ein Zoll: für Programme, die in Punkten rechnen.',
  'Everything in thin black lines; the line type alone says what is scored and what is cut.':
    'Alles in dünnen schwarzen Linien; nur die Linienart sagt, was gerillt und was geschnitten wird.',
  'Cuts and knockouts are filled shapes without an outline; the blank’s outline is always there.':
    'Schnitte und Ausschnitte sind gefüllte Formen ohne Umriss; der Umriss des Zuschnitts ist immer da.',
  'For a machine without a scoring tool: scores are perforations, half cut and half tie, that stop short of the edge.':
    'Für Maschinen ohne Rillwerkzeug: Rillen sind Perforationen, halb Schnitt und halb Steg, die vor dem Rand enden.',
  'The whole drawing mirrored, for a sheet that lies on the machine with its outside face up.':
    'Die ganze Zeichnung gespiegelt, für einen Bogen, der mit der Außenseite nach oben auf der Maschine liegt.',
  'The guide shows where glue goes and what it must stay clear of. It is never cut: draw it with a pen, or hide it.':
    'Ein Plan zeigt, wo Kleber hinkommt und wovon er wegbleiben muss. Er wird nie geschnitten: mit einem Stift zeichnen oder ausblenden.',
  ...styles,
  '{name} is not the id of a published size': '{name} ist keine Kennung eines veröffentlichten Formats',
  'choose an id from GET /v1/sizes, or give width and height':
    'ein Format aus der Liste wählen oder Breite und Höhe angeben',
  'did you mean {name}? GET /v1/sizes lists all': 'war {name} gemeint? In der Liste stehen alle',
  ...cutouts,
  ...figures,
  ...locks,
};
