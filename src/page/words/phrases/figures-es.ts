import type { Phrases } from '../tell.ts';

/** Lo que el núcleo de cálculo dice de dibujos, fuentes y repeticiones. */
export const figures: Phrases = {
  '{name} in line {number} is not read: {words}': '{name} en la línea {number} no se lee: {words}',
  '{name} in line {number} has the attribute {nameB}: {words}':
    '{name} en la línea {number} tiene el atributo {nameB}: {words}',
  '{name} in line {number} has a stroke: a line has no inside that could be cut out':
    '{name} en la línea {number} tiene un contorno: una línea no tiene interior que recortar',
  '{name} in line {number} has no fill': '{name} en la línea {number} no tiene relleno',
  '{name} in line {number} is white, so it hides what lies below it instead of being cut':
    '{name} en la línea {number} es blanco: tapa lo que hay debajo en vez de cortarse',
  '{name} in line {number} draws nothing': '{name} en la línea {number} no dibuja nada',
  '{name} in line {number} stands in <defs>, where nothing is drawn':
    '{name} en la línea {number} está en <defs>, donde no se dibuja nada',
  '{name} in line {number} has fewer than 3 points, so it has no inside':
    '{name} en la línea {number} tiene menos de 3 puntos, así que no tiene interior',
  'the {name} of {nameB} in line {number} has {nameC}, which is not a number':
    '{name} de {nameB} en la línea {number} contiene {nameC}, que no es un número',
  'the {name} of {nameB} in line {number} is {nameC}, which is not read':
    '{name} de {nameB} en la línea {number} es {nameC}, que no se lee',
  'the {name} of {nameB} in line {number} is not path data: {nameC}':
    '{name} de {nameB} en la línea {number} no es un trazado: {nameC}',
  'the file begins with {name} in line {number}, where {nameB} is expected':
    'el archivo empieza por {name} en la línea {number}, donde se espera {nameB}',
  'line {number}: there is text between the shapes: {name}':
    'línea {number}: hay texto entre las formas: {name}',
  'line {number}: this is not sound XML: {name}': 'línea {number}: esto no es XML correcto: {name}',
  'line {number}: the DOCTYPE declares things of its own, or is not that of SVG':
    'línea {number}: el DOCTYPE declara cosas propias o no es el de SVG',
  'the artwork is neither SVG nor path data': 'el dibujo no es SVG ni un trazado',
  'the artwork has no shapes': 'el dibujo no tiene formas',
  'the artwork encloses no area': 'el dibujo no encierra ninguna superficie',
  'the artwork is empty': 'el dibujo está vacío',
  'artwork has at most {number} KiB': 'un dibujo tiene como mucho {number} KiB',
  'the artwork falls into more than {number} parts': 'el dibujo tiene más de {number} trozos',
  'nothing says how large the artwork is': 'nada dice qué tamaño tiene el dibujo',
  'a part of the artwork lies outside the page that the file shows':
    'una parte del dibujo queda fuera de la página que muestra el archivo',
  'the artwork is {length} × {lengthB}': 'el dibujo mide {length} × {lengthB}',
  'a cutter reads no style sheets': 'una cortadora no lee hojas de estilo',
  'a cutter has no fonts': 'una cortadora no tiene fuentes',
  'a picture has no lines to follow': 'una imagen no tiene líneas que seguir',
  'copies by reference are not followed': 'las copias por referencia no se siguen',
  'programs are never run': 'nunca se ejecutan programas',
  'a clip hides lines, and a blade still follows them':
    'un recorte oculta líneas que la cuchilla seguiría igualmente',
  'a mask hides lines, and a blade still follows them':
    'una máscara oculta líneas que la cuchilla seguiría igualmente',
  'effects cannot be cut': 'los efectos no se pueden cortar',
  'a line has no inside that could be cut out': 'una línea no tiene interior que recortar',
  'links are not followed': 'los enlaces no se siguen',
  'gradients cannot be cut': 'los degradados no se pueden cortar',
  'patterns cannot be cut': 'los patrones no se pueden cortar',
  'only svg, g, path, rect, circle, ellipse, polygon and polyline are read':
    'solo se leen svg, g, path, rect, circle, ellipse, polygon y polyline',
  'styles are not read': 'los estilos no se leen',
  'style sheets are not read': 'las hojas de estilo no se leen',
  'it hides or changes lines that a blade still follows':
    'oculta o cambia líneas que la cuchilla seguiría igualmente',
  'what is hidden or faint would be cut all the same': 'lo oculto o tenue se cortaría igualmente',
  'it is not one that is read': 'no se lee',
  'write colours as attributes of the shapes': 'escribir los colores como atributos de las formas',
  'write its colours as attributes, as in fill="black"':
    'escribir sus colores como atributos, como fill="black"',
  'write colours as attributes, as in fill="black"': 'escribir los colores como atributos, como fill="black"',
  'turn text into paths, or use lettering': 'convertir el texto en trazados, o usar letras',
  'trace it, and keep the paths only': 'vectorizarla y quedarse solo con los trazados',
  'replace each copy by its own shape': 'sustituir cada copia por su propia forma',
  'remove it': 'quitarlo',
  'remove it, or the shape': 'quitarlo, o quitar la forma',
  'remove it, or turn it into paths': 'quitarlo o convertirlo en trazados',
  'take it out, or remove it': 'sacarlo de ahí o quitarlo',
  'intersect the shapes instead': 'intersecar las formas en su lugar',
  'turn it into a filled outline': 'convertirla en un contorno relleno',
  'fill with one colour': 'rellenar con un solo color',
  'fill with one plain colour': 'rellenar con un color liso',
  'fill what is to be cut out, or remove it': 'rellenar lo que se ha de recortar, o quitarlo',
  'turn strokes into outlines, fill these, and set stroke to none':
    'convertir los contornos en formas, rellenarlas y poner stroke en none',
  'subtract it from the shape below, or give it a colour': 'restarlo de la forma de debajo, o darle un color',
  'change the shape itself': 'cambiar la propia forma',
  'save as plain SVG, or remove it': 'guardar como SVG simple, o quitarlo',
  'save it as SVG': 'guardarlo como SVG',
  'save the drawing again': 'guardar de nuevo el dibujo',
  'remove the DOCTYPE; SVG needs none': 'quitar el DOCTYPE; SVG no lo necesita',
  'correct it, or save the drawing again': 'corregirlo, o guardar de nuevo el dibujo',
  'write plain numbers without units or percentages': 'escribir números simples, sin unidades ni porcentajes',
  'give the text of an SVG file, or path data that begins with M':
    'dar el texto de un archivo SVG, o un trazado que empiece por M',
  'draw at least one filled shape': 'dibujar al menos una forma rellena',
  'draw a shape, or remove it': 'dibujar una forma, o quitarlo',
  'close its lines around what is to be cut out': 'cerrar sus líneas alrededor de lo que se ha de recortar',
  'simplify it': 'simplificarlo',
  'simplify it, or make it smaller': 'simplificarlo o hacerlo más pequeño',
  'give its width or height': 'dar su ancho o su alto',
  'enlarge the viewBox to all of the drawing, or remove what lies outside':
    'ampliar el viewBox a todo el dibujo, o quitar lo que queda fuera',
  'give it a width or height that makes both sides {length} to {lengthB}':
    'darle un ancho o un alto con que ambos lados midan de {length} a {lengthB}',
  'the font file has {number} KiB, more than {numberB} KiB':
    'el archivo de fuente tiene {number} KiB, más de {numberB} KiB',
  'a font file has at most {number} KiB': 'un archivo de fuente tiene como mucho {number} KiB',
  'export it with only the characters that you need, or as WOFF':
    'exportarlo solo con los caracteres necesarios, o como WOFF',
  'the file is no font': 'el archivo no es una fuente',
  'the file is {name}, which is not read': 'el archivo es {name}, que no se lee',
  'give a TTF, OTF or WOFF file': 'dar un archivo TTF, OTF o WOFF',
  'the font was not opened': 'la fuente no se pudo abrir',
  'name a font that comes along': 'nombrar una fuente incluida',
  'the font has no {name}': 'a la fuente le falta {name}',
  'leave it out, write it another way, or use a font that has it':
    'omitirlo, escribirlo de otro modo o usar una fuente que lo tenga',
  'there is no text': 'no hay texto',
  'the text has nothing but spaces': 'el texto solo tiene espacios',
  'a line of lettering has at most {number} characters':
    'una línea de letras tiene como mucho {number} caracteres',
  'how often the motif is repeated takes one of count and pitch':
    'cuánto se repite el motivo lo dice o la cantidad o la separación',
  'give how many motifs there are, or how far apart their middles lie':
    'dar cuántos motivos hay, o cuánto distan sus centros',
  'the margins leave nothing of the length': 'los márgenes no dejan nada del largo',
  'give a margin of at most half of the length': 'dar un margen de como mucho la mitad del largo',
  'at this pitch the motif is repeated {number} times':
    'con esta separación el motivo se repite {number} veces',
  'give a larger pitch, for at most {number} motifs':
    'dar una separación mayor, para como mucho {number} motivos',
  'the grid has {number} motifs': 'la cuadrícula tiene {number} motivos',
  'give fewer rows or columns, for at most {number} motifs':
    'dar menos filas o columnas, para como mucho {number} motivos',
  'with {words} the knockouts have more than {number} straight parts, through all layers and once curves are followed within 0.01 mm':
    'con esto ({words}) los recortes tienen más de {number} tramos rectos en todas las capas, con curvas a 0,01 mm',
  'repeat it less often, use plainer figures, or cut fewer layers':
    'repetir menos, usar figuras más simples o cortar menos capas',
  '{number} pieces would fall out, more than the {numberB} that are bridged automatically':
    'se caerían {number} trozos, más de los {numberB} que se sujetan solos',
};
