import type { Phrases } from '../tell.ts';

/** Lo que el motor de cálculo dice de lo que se recorta. */
export const cutouts: Phrases = {
  outside: 'exterior',
  inside: 'interior',
  'inside of the {words}': 'interior: {words}',
  'outside of the {words}': 'exterior: {words}',
  'left dust flap': 'guardapolvo izquierdo',
  'right dust flap': 'guardapolvo derecho',
  top: 'arriba',
  'left flap hinge': 'bisagra de la solapa izquierda',
  'right flap hinge': 'bisagra de la solapa derecha',
  'top flap hinge': 'bisagra de la solapa superior',
  'bottom flap hinge': 'bisagra de la solapa inferior',
  '{words}, {wordsB}': '{words}, {wordsB}',
  'the circle': 'el círculo',
  'the oval': 'el óvalo',
  'the rounded rectangle': 'el rectángulo redondeado',
  'the regular polygon': 'el polígono',
  'the star': 'la estrella',
  'the heart': 'el corazón',
  'the scalloped circle': 'el círculo festoneado',
  'the scalloped rectangle': 'el rectángulo festoneado',
  'the arch': 'el arco',
  'the lettering': 'el rótulo',
  'the artwork': 'el dibujo',
  'the ribbon slot': 'la ranura de cinta',
  'the thumb notch': 'la muesca para el pulgar',
  'the rounding of corners': 'el redondeo de las esquinas',
  'the pair of ribbon slots': 'el par de ranuras de cinta',
  'inlay of {words}': 'pieza de fondo: {words}',
  'frame around {words}': 'marco: {words}',
  '{words} no. {number}': '{words} n.º {number}',
  '“{name}”': '«{name}»',
  'a piece of paper stands loose in {list}: {length}² falls out':
    'un trozo de papel queda suelto ({list}): se caen {length}²',
  '{number} pieces of paper stand loose in {list}: {length}² falls out':
    '{number} trozos de papel quedan sueltos ({list}): se caen {length}²',
  'an arch that is this low has no sides below its half circle':
    'un arco tan bajo no tiene lados bajo su semicírculo',
  'between {list} only {length} of paper is left: less than {lengthB} tears':
    'entre estos recortes ({list}) solo quedan {length} de papel: menos de {lengthB} se rasga',
  'between {list} only {length} of paper is left in {number} places: less than {lengthB} tears':
    'entre estos recortes ({list}) solo quedan {length} de papel en {number} sitios: menos de {lengthB} se rasga',
  'beside {words} only {length} of paper is left: less than {lengthB} tears':
    'al lado ({words}) solo quedan {length} de papel: menos de {lengthB} se rasga',
  'beside {words} only {length} of paper is left in {number} places: less than {lengthB} tears':
    'al lado ({words}) solo quedan {length} de papel en {number} sitios: menos de {lengthB} se rasga',
  'in {words} only {length} of paper is left: less than {lengthB} tears':
    'dentro ({words}) solo quedan {length} de papel: menos de {lengthB} se rasga',
  'in {words} only {length} of paper is left in {number} places: less than {lengthB} tears':
    'dentro ({words}) solo quedan {length} de papel en {number} sitios: menos de {lengthB} se rasga',
  'a strip of paper beside {list} is {number} times as long as it is wide: more than {numberB} times bends and catches':
    'una tira de papel al lado ({list}) es {number} veces más larga que ancha: más de {numberB} veces se dobla y se engancha',
  'give a height of at least {length}': 'dar un alto de al menos {length}',
  'give a radius of at most {length}': 'dar un radio de como mucho {length}',
  'give a shoulder of at most {length}': 'dar un bisel de como mucho {length}',
  'known here: {words}': 'aquí hay: {words}',
  'leave bridges, or keep the piece and glue it back': 'dejar puentes, o guardar el trozo y volver a pegarlo',
  'make it larger or plainer': 'hacerlo mayor o más sencillo',
  'move it away or make it smaller': 'apartarlo o hacerlo menor',
  'move it away, or keep the glue short there': 'apartarlo, o acortar ahí la cola',
  'move it off the fold if that is not meant': 'apartarlo del pliegue si no se quería',
  'move it onto the {words}, or cut other layers': 'llevarlo aquí: {words}, o recortar otras capas',
  'move it or make it smaller if that is not meant': 'apartarlo o hacerlo menor si no se quería',
  'move it, make it smaller, or cut only the seen layer if that is not meant':
    'apartarlo, hacerlo menor o recortar solo la capa visible si no se quería',
  'move it, make it smaller, or cut other layers': 'apartarlo, hacerlo menor o recortar otras capas',
  'move them apart if that is not meant': 'separarlos si no se quería',
  'move them apart, make them smaller, or set knockoutLimits if your paper and tool bear it':
    'separarlos, hacerlos menores o cambiar los límites si el papel y la herramienta lo aguantan',
  'make it wider or shorter, or hold it by a bridge':
    'hacerla más ancha o más corta, o sujetarla con un puente',
  'set cutter.roundCorners, or expect torn corners':
    'hacer redondear las esquinas para la máquina, o contar con esquinas rasgadas',
  '{words} cuts {length}, {number} %, out of the fold “{wordsB}”: the score stops at the opening, and the edge shows it from both sides':
    'eso quita {length}, {number} %, de un pliegue ({words}; {wordsB}): el hendido acaba en la abertura y el borde lo muestra por los dos lados',
  '{list} cut {length}, {number} %, out of the fold “{wordsB}”: the score stops at the opening, and the edge shows it from both sides':
    '{list} quitan entre todos {length}, {number} %, de un pliegue ({wordsB}): el hendido acaba en la abertura y el borde lo muestra por los dos lados',
  '{words} cuts {length}, {number} %, out of the fold “{wordsB}”: too little is left to fold':
    'eso quita {length}, {number} %, de un pliegue ({words}; {wordsB}): queda muy poco para plegar',
  '{list} cut {length}, {number} %, out of the fold “{wordsB}”: too little is left to fold':
    '{list} quitan entre todos {length}, {number} %, de un pliegue ({wordsB}): queda muy poco para plegar',
  '{words} has a corner sharper than the {length} that the cutter can turn in':
    '{words}: una esquina es más aguda que los {length} en que puede girar la máquina',
  '{words} has {number} corners sharper than the {length} that the cutter can turn in':
    '{words}: {number} esquinas son más agudas que los {length} en que puede girar la máquina',
  '{words} is cut through the glue at the {wordsB}, {number} % of a strip: leave the glue out there':
    '{words} atraviesa la cola ({wordsB}), {number} % de una tira; no pegar ahí',
  '{words} is cut through the glue at the {wordsB}, {number} % of a strip: what is left does not hold':
    '{words} atraviesa la cola ({wordsB}), {number} % de una tira; lo que queda no sujeta',
  '{words} comes within {length} of the glue at the {wordsB}: nearer than {lengthB} it may be pressed out into the opening':
    '{words} queda a {length} de la cola ({wordsB}); a menos de {lengthB} puede salirse por la abertura',
  '{words} comes within {length} of a score: nearer than {lengthB} the fold pulls at the opening':
    '{words} queda a {length} de un hendido; a menos de {lengthB} el pliegue tira de la abertura',
  '{words} comes within {length} of the paper’s edge: nearer than {lengthB} narrow edges bend and tear':
    '{words} queda a {length} del borde del papel; a menos de {lengthB} el borde se dobla y se rasga',
  '{words} reaches the sheet’s edge: the outline changes there, and a hem or flap under it is cut open':
    '{words} llega al borde de la hoja; ahí cambia el contorno y se abre un dobladillo o una solapa de debajo',
  '{words} cuts nothing: no layer that it is meant for lies there':
    '{words} no recorta nada; ahí no hay ninguna de las capas previstas',
  '{list} overlap: they are cut as one opening': '{list} se solapan: se recortan como una sola abertura',
  '{words} is only {length} wide: openings of less than {lengthB} tear or close up':
    '{words} solo mide {length} de ancho; por debajo de {lengthB} una abertura se rasga o se cierra',
  '{words} is only {length} wide in {number} places: openings of less than {lengthB} tear or close up':
    '{words} solo mide {length} de ancho en {number} sitios; por debajo de {lengthB} una abertura se rasga o se cierra',
  'the corners are rounder than the sides have room for':
    'las esquinas son más redondas de lo que permiten los lados',
  'there is no layer under it called {name}': 'debajo no hay ninguna capa llamada {name}',
  'there is no place {name}': 'este sitio no existe: {name}',
  'there is no pocket {name}': 'este bolsillo no existe: {name}',
  '{number} % of {words} lies beyond the {wordsB}': '{number} % queda fuera ({words}; {wordsB})',
  'the cut corners leave nothing of the top or of the sides':
    'las esquinas cortadas no dejan nada arriba o a los lados',
  'the eyelet does not lie within the tag': 'el ojal no queda dentro de la etiqueta',
  'give a smaller eyelet, or one whose middle lies further from the edges':
    'dar un ojal menor, o más lejos de los bordes',
  'make it smaller or move it off the fold': 'hacerlo menor o apartarlo del pliegue',
  '{words} comes within {length} of a pocket’s mouth: nearer than {lengthB} it is pulled at there':
    '{words} queda a {length} de la boca de un bolsillo; a menos de {lengthB} se tira de él',
  'a piece between the edge and {list}: {length}² comes off':
    'un trozo entre el borde y la abertura ({list}): se desprenden {length}²',
  '{number} pieces between the edge and {list}: {length}² comes off':
    '{number} trozos entre el borde y la abertura ({list}): se desprenden {length}²',
  'the sheet falls into {number} parts at {list}: {length}² comes off':
    'la hoja se parte aquí en {number} ({list}): se desprenden {length}²',
  'move it away from the edge, or further over it': 'apartarlo del borde, o pasarlo más allá',
  'make it smaller or leave a bridge': 'hacerlo más pequeño o dejar un puente',
  'make it wider, or leave a bridge across the opening':
    'hacerla más ancha, o dejar un puente a través de la abertura',
  'every corner of the {words} is at a spine': 'cada esquina está en el lomo: {words}',
  'name the corners, or another place': 'nombrar las esquinas, u otro lugar',
  'the corners are rounder than the place is large':
    'las esquinas son más redondas de lo que el lugar es grande',
};
