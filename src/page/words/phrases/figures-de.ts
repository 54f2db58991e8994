import type { Phrases } from '../tell.ts';

/** Was der Rechenkern zu eigenen Zeichnungen, Schriften und Wiederholungen sagt. */
export const figures: Phrases = {
  '{name} in line {number} is not read: {words}': '{name} in Zeile {number} wird nicht gelesen: {words}',
  '{name} in line {number} has the attribute {nameB}: {words}':
    '{name} in Zeile {number} hat das Attribut {nameB}: {words}',
  '{name} in line {number} has a stroke: a line has no inside that could be cut out':
    '{name} in Zeile {number} hat einen Strich: eine Linie hat kein Inneres zum Ausschneiden',
  '{name} in line {number} has no fill': '{name} in Zeile {number} hat keine Füllung',
  '{name} in line {number} is white, so it hides what lies below it instead of being cut':
    '{name} in Zeile {number} ist weiß und verdeckt, was darunter liegt, statt geschnitten zu werden',
  '{name} in line {number} draws nothing': '{name} in Zeile {number} zeichnet nichts',
  '{name} in line {number} stands in <defs>, where nothing is drawn':
    '{name} in Zeile {number} steht in <defs>, wo nichts gezeichnet wird',
  '{name} in line {number} has fewer than 3 points, so it has no inside':
    '{name} in Zeile {number} hat weniger als 3 Punkte, also kein Inneres',
  'the {name} of {nameB} in line {number} has {nameC}, which is not a number':
    '{name} von {nameB} in Zeile {number} enthält {nameC}, und das ist keine Zahl',
  'the {name} of {nameB} in line {number} is {nameC}, which is not read':
    '{name} von {nameB} in Zeile {number} ist {nameC}, und das wird nicht gelesen',
  'the {name} of {nameB} in line {number} is not path data: {nameC}':
    '{name} von {nameB} in Zeile {number} sind keine Pfaddaten: {nameC}',
  'the file begins with {name} in line {number}, where {nameB} is expected':
    'die Datei beginnt mit {name} in Zeile {number}, wo {nameB} erwartet wird',
  'line {number}: there is text between the shapes: {name}':
    'Zeile {number}: zwischen den Formen steht Text: {name}',
  'line {number}: this is not sound XML: {name}': 'Zeile {number}: das ist kein fehlerfreies XML: {name}',
  'line {number}: the DOCTYPE declares things of its own, or is not that of SVG':
    'Zeile {number}: der DOCTYPE erklärt Eigenes oder ist nicht der von SVG',
  'the artwork is neither SVG nor path data': 'die Grafik ist weder SVG noch Pfaddaten',
  'the artwork has no shapes': 'die Grafik hat keine Formen',
  'the artwork encloses no area': 'die Grafik umschließt keine Fläche',
  'the artwork is empty': 'die Grafik ist leer',
  'artwork has at most {number} KiB': 'eine Grafik hat höchstens {number} KiB',
  'the artwork falls into more than {number} parts': 'die Grafik zerfällt in mehr als {number} Teile',
  'nothing says how large the artwork is': 'nichts sagt, wie groß die Grafik ist',
  'a part of the artwork lies outside the page that the file shows':
    'ein Teil der Grafik liegt außerhalb der Seite, die die Datei zeigt',
  'the artwork is {length} × {lengthB}': 'die Grafik ist {length} × {lengthB} groß',
  'a cutter reads no style sheets': 'ein Schneidegerät liest keine Stilvorlagen',
  'a cutter has no fonts': 'ein Schneidegerät hat keine Schriften',
  'a picture has no lines to follow': 'ein Bild hat keine Linien zum Nachfahren',
  'copies by reference are not followed': 'Verweisen auf Kopien wird nicht gefolgt',
  'programs are never run': 'Programme werden nie ausgeführt',
  'a clip hides lines, and a blade still follows them':
    'ein Beschnitt verdeckt Linien, und die Klinge folgt ihnen trotzdem',
  'a mask hides lines, and a blade still follows them':
    'eine Maske verdeckt Linien, und die Klinge folgt ihnen trotzdem',
  'effects cannot be cut': 'Effekte lassen sich nicht schneiden',
  'a line has no inside that could be cut out': 'eine Linie hat kein Inneres zum Ausschneiden',
  'links are not followed': 'Verweisen wird nicht gefolgt',
  'gradients cannot be cut': 'Verläufe lassen sich nicht schneiden',
  'patterns cannot be cut': 'Muster lassen sich nicht schneiden',
  'only svg, g, path, rect, circle, ellipse, polygon and polyline are read':
    'gelesen werden nur svg, g, path, rect, circle, ellipse, polygon und polyline',
  'styles are not read': 'Stile werden nicht gelesen',
  'style sheets are not read': 'Stilvorlagen werden nicht gelesen',
  'it hides or changes lines that a blade still follows':
    'es verdeckt oder ändert Linien, denen die Klinge trotzdem folgt',
  'what is hidden or faint would be cut all the same': 'Verstecktes oder Blasses würde trotzdem geschnitten',
  'it is not one that is read': 'es wird nicht gelesen',
  'write colours as attributes of the shapes': 'Farben als Attribute der Formen schreiben',
  'write its colours as attributes, as in fill="black"':
    'die Farben als Attribute schreiben, wie fill="black"',
  'write colours as attributes, as in fill="black"': 'Farben als Attribute schreiben, wie fill="black"',
  'turn text into paths, or use lettering': 'Text in Pfade umwandeln oder Schrift nehmen',
  'trace it, and keep the paths only': 'es nachzeichnen und nur die Pfade behalten',
  'replace each copy by its own shape': 'jede Kopie durch ihre eigene Form ersetzen',
  'remove it': 'es entfernen',
  'remove it, or the shape': 'es oder die Form entfernen',
  'remove it, or turn it into paths': 'ihn entfernen oder in Pfade umwandeln',
  'take it out, or remove it': 'es herausnehmen oder entfernen',
  'intersect the shapes instead': 'stattdessen die Formen verschneiden',
  'turn it into a filled outline': 'sie in einen gefüllten Umriss umwandeln',
  'fill with one colour': 'mit einer Farbe füllen',
  'fill with one plain colour': 'mit einer einfachen Farbe füllen',
  'fill what is to be cut out, or remove it': 'füllen, was ausgeschnitten werden soll, oder es entfernen',
  'turn strokes into outlines, fill these, and set stroke to none':
    'Striche in Umrisse umwandeln, diese füllen und stroke auf none setzen',
  'subtract it from the shape below, or give it a colour':
    'es von der Form darunter abziehen oder ihm eine Farbe geben',
  'change the shape itself': 'die Form selbst ändern',
  'save as plain SVG, or remove it': 'als einfaches SVG speichern oder es entfernen',
  'save it as SVG': 'es als SVG speichern',
  'save the drawing again': 'die Zeichnung neu speichern',
  'remove the DOCTYPE; SVG needs none': 'den DOCTYPE entfernen; SVG braucht keinen',
  'correct it, or save the drawing again': 'es berichtigen oder die Zeichnung neu speichern',
  'write plain numbers without units or percentages': 'einfache Zahlen ohne Einheiten und Prozente schreiben',
  'give the text of an SVG file, or path data that begins with M':
    'den Text einer SVG-Datei geben oder Pfaddaten, die mit M beginnen',
  'draw at least one filled shape': 'mindestens eine gefüllte Form zeichnen',
  'draw a shape, or remove it': 'eine Form zeichnen oder es entfernen',
  'close its lines around what is to be cut out':
    'die Linien um das schließen, was ausgeschnitten werden soll',
  'simplify it': 'sie vereinfachen',
  'simplify it, or make it smaller': 'sie vereinfachen oder verkleinern',
  'give its width or height': 'ihre Breite oder Höhe angeben',
  'enlarge the viewBox to all of the drawing, or remove what lies outside':
    'die viewBox auf die ganze Zeichnung vergrößern oder entfernen, was außerhalb liegt',
  'give it a width or height that makes both sides {length} to {lengthB}':
    'eine Breite oder Höhe geben, mit der beide Seiten {length} bis {lengthB} haben',
  'the font file has {number} KiB, more than {numberB} KiB':
    'die Schriftdatei hat {number} KiB, mehr als {numberB} KiB',
  'a font file has at most {number} KiB': 'eine Schriftdatei hat höchstens {number} KiB',
  'export it with only the characters that you need, or as WOFF':
    'sie nur mit den nötigen Zeichen oder als WOFF ausgeben',
  'the file is no font': 'die Datei ist keine Schrift',
  'the file is {name}, which is not read': 'die Datei ist {name}, und das wird nicht gelesen',
  'give a TTF, OTF or WOFF file': 'eine TTF-, OTF- oder WOFF-Datei geben',
  'the font was not opened': 'die Schrift ließ sich nicht öffnen',
  'name a font that comes along': 'eine mitgelieferte Schrift nennen',
  'the font has no {name}': 'der Schrift fehlt {name}',
  'leave it out, write it another way, or use a font that has it':
    'es weglassen, anders schreiben oder eine Schrift nehmen, die es hat',
  'there is no text': 'es gibt keinen Text',
  'the text has nothing but spaces': 'der Text besteht nur aus Leerzeichen',
  'a line of lettering has at most {number} characters': 'eine Schriftzeile hat höchstens {number} Zeichen',
  'how often the motif is repeated takes one of count and pitch':
    'wie oft sich das Motiv wiederholt, sagt entweder die Anzahl oder der Abstand',
  'give how many motifs there are, or how far apart their middles lie':
    'angeben, wie viele Motive es sind oder wie weit ihre Mitten auseinanderliegen',
  'the margins leave nothing of the length': 'die Ränder lassen nichts von der Länge übrig',
  'give a margin of at most half of the length': 'einen Rand von höchstens der halben Länge angeben',
  'at this pitch the motif is repeated {number} times':
    'bei diesem Abstand wiederholt sich das Motiv {number}-mal',
  'give a larger pitch, for at most {number} motifs':
    'einen größeren Abstand angeben, für höchstens {number} Motive',
  'the grid has {number} motifs': 'das Raster hat {number} Motive',
  'give fewer rows or columns, for at most {number} motifs':
    'weniger Zeilen oder Spalten angeben, für höchstens {number} Motive',
  'with {words} the knockouts have more than {number} straight parts, through all layers and once curves are followed within 0.01 mm':
    'damit ({words}) haben die Ausschnitte durch alle Lagen mehr als {number} gerade Stücke, wenn Kurven auf 0,01 mm genau sind',
  'repeat it less often, use plainer figures, or cut fewer layers':
    'seltener wiederholen, schlichtere Figuren nehmen oder weniger Lagen schneiden',
  '{number} pieces would fall out, more than the {numberB} that are bridged automatically':
    '{number} Stücke würden herausfallen, mehr als die {numberB}, die von selbst Stege bekommen',
};
