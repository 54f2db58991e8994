import type { Phrases } from '../tell.ts';

/** Was der Rechenkern zu dem sagt, was ausgeschnitten wird. */
export const cutouts: Phrases = {
  outside: 'Außenseite',
  inside: 'Innenseite',
  'inside of the {words}': 'Innenseite: {words}',
  'outside of the {words}': 'Außenseite: {words}',
  'left dust flap': 'linke Staublasche',
  'right dust flap': 'rechte Staublasche',
  top: 'oben',
  'left flap hinge': 'Gelenkstreifen der linken Klappe',
  'right flap hinge': 'Gelenkstreifen der rechten Klappe',
  'top flap hinge': 'Gelenkstreifen der oberen Klappe',
  'bottom flap hinge': 'Gelenkstreifen der unteren Klappe',
  '{words}, {wordsB}': '{words}, {wordsB}',
  'the circle': 'der Kreis',
  'the oval': 'das Oval',
  'the rounded rectangle': 'das abgerundete Rechteck',
  'the regular polygon': 'das Vieleck',
  'the star': 'der Stern',
  'the heart': 'das Herz',
  'the scalloped circle': 'der Kreis mit Bogenrand',
  'the scalloped rectangle': 'das Rechteck mit Bogenrand',
  'the arch': 'der Bogen',
  'the lettering': 'die Schrift',
  'the artwork': 'die Grafik',
  'the ribbon slot': 'der Bandschlitz',
  'the thumb notch': 'der Daumenausschnitt',
  'the rounding of corners': 'das Runden der Ecken',
  'the pair of ribbon slots': 'das Paar Bandschlitze',
  'inlay of {words}': 'Einsatz: {words}',
  'frame around {words}': 'Rahmen: {words}',
  '{words} no. {number}': '{words} Nr. {number}',
  '“{name}”': '„{name}“',
  'a piece of paper stands loose in {list}: {length}² falls out':
    'ein Stück Papier steht lose darin ({list}): {length}² fallen heraus',
  '{number} pieces of paper stand loose in {list}: {length}² falls out':
    '{number} Stücke Papier stehen lose darin ({list}): {length}² fallen heraus',
  'an arch that is this low has no sides below its half circle':
    'ein so niedriger Bogen hat unter seinem Halbkreis keine Seiten',
  'between {list} only {length} of paper is left: less than {lengthB} tears':
    'zwischen diesen Ausschnitten ({list}) bleiben nur {length} Papier: weniger als {lengthB} reißt',
  'between {list} only {length} of paper is left in {number} places: less than {lengthB} tears':
    'zwischen diesen Ausschnitten ({list}) bleiben an {number} Stellen nur {length} Papier: weniger als {lengthB} reißt',
  'beside {words} only {length} of paper is left: less than {lengthB} tears':
    'daneben ({words}) bleiben nur {length} Papier: weniger als {lengthB} reißt',
  'beside {words} only {length} of paper is left in {number} places: less than {lengthB} tears':
    'daneben ({words}) bleiben an {number} Stellen nur {length} Papier: weniger als {lengthB} reißt',
  'in {words} only {length} of paper is left: less than {lengthB} tears':
    'darin ({words}) bleiben nur {length} Papier: weniger als {lengthB} reißt',
  'in {words} only {length} of paper is left in {number} places: less than {lengthB} tears':
    'darin ({words}) bleiben an {number} Stellen nur {length} Papier: weniger als {lengthB} reißt',
  'a strip of paper beside {list} is {number} times as long as it is wide: more than {numberB} times bends and catches':
    'ein Papierstreifen daneben ({list}) ist {number}-mal so lang wie breit: mehr als {numberB}-mal verbiegt sich und bleibt hängen',
  'give a height of at least {length}': 'eine Höhe von mindestens {length} angeben',
  'give a radius of at most {length}': 'einen Radius von höchstens {length} angeben',
  'give a shoulder of at most {length}': 'eine Schräge von höchstens {length} angeben',
  'known here: {words}': 'hier gibt es: {words}',
  'leave bridges, or keep the piece and glue it back':
    'Stege lassen, oder das Stück aufheben und wieder einkleben',
  'make it larger or plainer': 'es größer oder schlichter machen',
  'move it away or make it smaller': 'es wegrücken oder kleiner machen',
  'move it away, or keep the glue short there': 'es wegrücken, oder dort kürzer kleben',
  'move it off the fold if that is not meant': 'es von der Falte wegrücken, falls das nicht gewollt ist',
  'move it onto the {words}, or cut other layers': 'es hierher rücken: {words}, oder andere Lagen schneiden',
  'move it or make it smaller if that is not meant':
    'es wegrücken oder kleiner machen, falls das nicht gewollt ist',
  'move it, make it smaller, or cut only the seen layer if that is not meant':
    'es wegrücken, kleiner machen oder nur die sichtbare Lage schneiden, falls das nicht gewollt ist',
  'move it, make it smaller, or cut other layers': 'es wegrücken, kleiner machen oder andere Lagen schneiden',
  'move them apart if that is not meant': 'sie auseinanderrücken, falls das nicht gewollt ist',
  'move them apart, make them smaller, or set knockoutLimits if your paper and tool bear it':
    'sie auseinanderrücken, kleiner machen oder andere Grenzen setzen, falls Papier und Werkzeug es aushalten',
  'make it wider or shorter, or hold it by a bridge':
    'ihn breiter oder kürzer machen oder mit einem Steg halten',
  'set cutter.roundCorners, or expect torn corners':
    'die Ecken für die Maschine runden lassen, oder mit gerissenen Ecken rechnen',
  '{words} cuts {length}, {number} %, out of the fold “{wordsB}”: the score stops at the opening, and the edge shows it from both sides':
    'das nimmt {length}, {number} %, aus einer Falte ({words}; {wordsB}): Die Rille endet an der Öffnung, und man sieht es am Rand von beiden Seiten',
  '{list} cut {length}, {number} %, out of the fold “{wordsB}”: the score stops at the opening, and the edge shows it from both sides':
    '{list} nehmen zusammen {length}, {number} %, aus einer Falte ({wordsB}): Die Rille endet an der Öffnung, und man sieht es am Rand von beiden Seiten',
  '{words} cuts {length}, {number} %, out of the fold “{wordsB}”: too little is left to fold':
    'das nimmt {length}, {number} %, aus einer Falte ({words}; {wordsB}): Zum Falten bleibt zu wenig',
  '{list} cut {length}, {number} %, out of the fold “{wordsB}”: too little is left to fold':
    '{list} nehmen zusammen {length}, {number} %, aus einer Falte ({wordsB}): Zum Falten bleibt zu wenig',
  '{words} has a corner sharper than the {length} that the cutter can turn in':
    '{words}: eine Ecke ist spitzer als die {length}, in denen die Maschine wenden kann',
  '{words} has {number} corners sharper than the {length} that the cutter can turn in':
    '{words}: {number} Ecken sind spitzer als die {length}, in denen die Maschine wenden kann',
  '{words} is cut through the glue at the {wordsB}, {number} % of a strip: leave the glue out there':
    '{words} geht durch den Kleber ({wordsB}), {number} % eines Streifens; dort nicht kleben',
  '{words} is cut through the glue at the {wordsB}, {number} % of a strip: what is left does not hold':
    '{words} geht durch den Kleber ({wordsB}), {number} % eines Streifens; was bleibt, hält nicht',
  '{words} comes within {length} of the glue at the {wordsB}: nearer than {lengthB} it may be pressed out into the opening':
    '{words} kommt dem Kleber ({wordsB}) auf {length} nahe; näher als {lengthB} kann er in die Öffnung quellen',
  '{words} comes within {length} of a score: nearer than {lengthB} the fold pulls at the opening':
    '{words} kommt einer Rille auf {length} nahe; näher als {lengthB} zieht die Falte an der Öffnung',
  '{words} comes within {length} of the paper’s edge: nearer than {lengthB} narrow edges bend and tear':
    '{words} kommt dem Papierrand auf {length} nahe; näher als {lengthB} verbiegt sich der Rand und reißt',
  '{words} reaches the sheet’s edge: the outline changes there, and a hem or flap under it is cut open':
    '{words} reicht bis an den Rand des Bogens; dort ändert sich der Umriss, und ein Saum oder eine Klappe darunter wird aufgeschnitten',
  '{words} cuts nothing: no layer that it is meant for lies there':
    '{words} schneidet nichts; dort liegt keine Lage, für die es gedacht ist',
  '{list} overlap: they are cut as one opening':
    '{list} überlappen sich: Sie werden als eine Öffnung geschnitten',
  '{words} is only {length} wide: openings of less than {lengthB} tear or close up':
    '{words} ist nur {length} breit; Öffnungen unter {lengthB} reißen oder gehen zu',
  '{words} is only {length} wide in {number} places: openings of less than {lengthB} tear or close up':
    '{words} ist an {number} Stellen nur {length} breit; Öffnungen unter {lengthB} reißen oder gehen zu',
  'the corners are rounder than the sides have room for': 'die Ecken sind runder, als die Seiten Platz haben',
  'there is no layer under it called {name}': 'darunter liegt keine Lage mit diesem Namen: {name}',
  'there is no place {name}': 'diesen Platz gibt es nicht: {name}',
  'there is no pocket {name}': 'diese Tasche gibt es nicht: {name}',
  '{number} % of {words} lies beyond the {wordsB}': '{number} % liegen außerhalb ({words}; {wordsB})',
  'the cut corners leave nothing of the top or of the sides':
    'die schrägen Ecken lassen oben oder an den Seiten nichts übrig',
  'the eyelet does not lie within the tag': 'das Loch liegt nicht im Anhänger',
  'give a smaller eyelet, or one whose middle lies further from the edges':
    'ein kleineres Loch angeben, oder eines weiter weg von den Rändern',
  'make it smaller or move it off the fold': 'es kleiner machen oder von der Falte wegrücken',
  '{words} comes within {length} of a pocket’s mouth: nearer than {lengthB} it is pulled at there':
    '{words} kommt einer Taschenöffnung auf {length} nahe; näher als {lengthB} wird dort daran gezogen',
  'a piece between the edge and {list}: {length}² comes off':
    'ein Stück zwischen Rand und Öffnung ({list}): {length}² gehen ab',
  '{number} pieces between the edge and {list}: {length}² comes off':
    '{number} Stücke zwischen Rand und Öffnung ({list}): {length}² gehen ab',
  'the sheet falls into {number} parts at {list}: {length}² comes off':
    'der Bogen zerfällt hier in {number} Teile ({list}): {length}² gehen ab',
  'move it away from the edge, or further over it': 'es vom Rand wegrücken oder weiter darüber hinaus',
  'make it smaller or leave a bridge': 'es kleiner machen oder einen Steg lassen',
  'make it wider, or leave a bridge across the opening':
    'ihn breiter machen oder einen Steg über die Öffnung lassen',
  'every corner of the {words} is at a spine': 'jede Ecke liegt am Rücken: {words}',
  'name the corners, or another place': 'die Ecken nennen oder einen anderen Platz',
  'the corners are rounder than the place is large': 'die Ecken sind runder, als der Platz groß ist',
};
