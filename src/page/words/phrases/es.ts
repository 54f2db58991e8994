import type { Phrases } from '../tell.ts';
import { cutouts } from './cutouts-es.ts';
import { figures } from './figures-es.ts';
import { locks } from './locks-es.ts';
import { styles } from './styles-es.ts';

/** Lo que dice el motor de cálculo, en español; para las formas, véase `Phrases`. */
export const phrases: Phrases = {
  // partes
  hem: 'dobladillo',
  hems: 'dobladillos',
  corner: 'esquina',
  corners: 'esquinas',
  seam: 'unión',
  spine: 'lomo',
  front: 'delantera',
  back: 'trasera',
  overlap: 'solape',
  pocket: 'bolsillo',
  pockets: 'bolsillos',
  tab: 'pestaña',
  tabs: 'pestañas',
  'top flap': 'solapa superior',
  'bottom flap': 'solapa inferior',
  'front cover': 'tapa delantera',
  'back cover': 'tapa trasera',
  'panel width': 'ancho de la delantera',
  'panel height': 'alto de la delantera',
  'the hem': 'el dobladillo',
  'the hems': 'los dobladillos',
  'the corner': 'la esquina',
  'the corners': 'las esquinas',
  'the spine': 'el lomo',
  'the top flap': 'la solapa superior',
  'the bottom flap': 'la solapa inferior',
  'the front cover': 'la tapa delantera',
  'the back cover': 'la tapa trasera',
  'the card': 'la tarjeta',
  'the envelope': 'el sobre',
  'top left corner': 'esquina superior izquierda',
  'top right corner': 'esquina superior derecha',
  'bottom left corner': 'esquina inferior izquierda',
  'bottom right corner': 'esquina inferior derecha',
  'left hem': 'dobladillo izquierdo',
  'right hem': 'dobladillo derecho',
  'left hem of the top flap': 'dobladillo izquierdo de la solapa superior',
  'right hem of the top flap': 'dobladillo derecho de la solapa superior',
  'left hem of the bottom flap': 'dobladillo izquierdo de la solapa inferior',
  'right hem of the bottom flap': 'dobladillo derecho de la solapa inferior',
  'spine at the front': 'lomo, del lado delantero',
  'spine at the back': 'lomo, del lado trasero',
  card: 'tarjeta',
  cards: 'tarjetas',
  envelope: 'sobre',
  'card with its envelope': 'tarjeta con su sobre',
  'cards with their envelopes': 'tarjetas con sus sobres',
  'front pocket': 'bolsillo delantero',
  'back pocket': 'bolsillo trasero',

  // papeles y tamaños
  'craft paper, {number} x {numberB} in': 'papel de manualidades, {number} × {numberB} pulg.',
  'craft paper, 8 1/2 x 11 in': 'papel de manualidades, 8 1/2 × 11 pulg.',
  'ISO {name}, untrimmed': 'ISO {name}, sin refilar',
  'ISO {name}': 'ISO {name}',
  'JIS {name}, not ISO {nameB}': 'JIS {name}, no ISO {nameB}',
  'US {name} card': 'tarjeta US {name}',
  'US {name} envelope': 'sobre US {name}',
  'US {name} in index card': 'ficha US {name} pulg.',
  'US letter': 'US Letter',
  'US legal': 'US Legal',
  'US ledger': 'US Ledger',
  'one third of ISO A4': 'un tercio de ISO A4',
  'DIN {name} envelope': 'sobre DIN {name}',
  'Italian envelope': 'sobre italiano',
  'square invitation envelope, {name} mm': 'sobre cuadrado de invitación, {name} mm',
  'craft paper, {name} × {nameB} in': 'papel de manualidades, {name} × {nameB} pulg.',
  '{words}, {name} × {nameB} mm': '{words}, {name} × {nameB} mm',
  '{words}, {name} × {nameB} in': '{words}, {name} × {nameB} pulg.',
  'your sheet': 'tu hoja',
  'sheet {number} of your list': 'hoja {number} de tu lista',

  // pasos
  'Step {number}: {words}': 'Paso {number}: {words}',
  'Lay the sheet with its inside face up.': 'Pon la hoja con la cara interior arriba.',
  'The top of the outside print lies at the top.': 'La parte de arriba del estampado exterior queda arriba.',
  'The top of the outside print lies on the left.':
    'La parte de arriba del estampado exterior queda a la izquierda.',
  'Fold the {words} over, toward you.': '{words}: pliega hacia ti.',
  'Fold the {words} behind, away from you.': '{words}: pliega hacia atrás.',
  'Bend the {words} toward you, to a right angle.': '{words}: dobla hacia ti en ángulo recto.',
  'Bend the {words} away from you, to a right angle.': '{words}: dobla hacia atrás en ángulo recto.',
  'Crease the {words}: bend it toward you, and lay it flat again.':
    '{words}: marca el pliegue hacia ti y vuelve a dejarlo plano.',
  'Crease the {words}: bend it away from you, and lay it flat again.':
    '{words}: marca el pliegue hacia atrás y vuelve a dejarlo plano.',
  'Slip the {words} over the {wordsB}.': 'Encaja, encima: {words}; debajo: {wordsB}.',
  'Slip the {words} under the {wordsB}.': 'Encaja, debajo: {words}; encima: {wordsB}.',
  'Glue the {words} down: {wordsB} {length} wide, {lengthB} inside its edges.':
    'Pega: {words}. {wordsB} de {length} de ancho, a {lengthB} de los bordes.',
  'Glue the {words} down: {wordsB} {length} wide, {lengthB} inside their edges.':
    'Pega: {words}. {wordsB} de {length} de ancho, a {lengthB} de los bordes.',
  'a line': 'Una línea',
  'two lines': 'Dos líneas',
  '{number} lines': '{number} líneas',
  'Leave the hems of the top flap free where the bottom flap will be slipped in.':
    'Deja libres los dobladillos de la solapa superior donde se meterá la inferior.',
  'Leave the hems of the bottom flap free where the top flap will be slipped in.':
    'Deja libres los dobladillos de la solapa inferior donde se meterá la superior.',
  'Keep it off the panels behind, or the pockets are shut.':
    'No lo pongas en los paneles de detrás, o los bolsillos quedarán cerrados.',
  'Slide {number} {words} into the front pocket and {numberB} into the back pocket, through their open ends.':
    'Mete por los lados abiertos {number} {words} en el bolsillo delantero y {numberB} en el trasero.',
  'Slide {number} {words} into the {wordsB}, through its open end.':
    'Mete por el lado abierto {number} {words}. Dónde: {wordsB}.',
  'Then close the folder.': 'Después cierra la carpeta.',

  // imágenes
  'The closed {words}, {length} wide and {lengthB} high.':
    'Cerrado ({words}): {length} de ancho y {lengthB} de alto.',
  'The finished {words}, {length} wide and {lengthB} high.':
    'Terminado ({words}): {length} de ancho y {lengthB} de alto.',
  'At the front: {words}': 'Por delante: {words}',
  'At the back: {words}': 'Por detrás: {words}',
  'The {words} after it was turned over left to right.': 'Vuelto de izquierda a derecha: {words}.',
  'The {words} as it lies when it has been folded.': 'Tal como queda después de plegar: {words}.',
  folder: 'carpeta',
  'flat sleeve': 'funda plana',
  '{list} shows the outside face, print {ways}.': '{list} muestra la cara exterior, estampado {ways}.',
  '{list} show the outside face, print {ways}.': '{list} muestran la cara exterior, estampado {ways}.',
  '{list} shows the inside face, print {ways}.': '{list} muestra la cara interior, estampado {ways}.',
  '{list} show the inside face, print {ways}.': '{list} muestran la cara interior, estampado {ways}.',
  '{list} shows the inside face.': '{list} muestra la cara interior.',
  '{list} show the inside face.': '{list} muestran la cara interior.',
  upright: 'derecho',
  'upside down': 'cabeza abajo',
  'on its left side': 'sobre su lado izquierdo',
  'on its right side': 'sobre su lado derecho',
  'The folder stands like a half open book.': 'La carpeta está de pie como un libro entreabierto.',
  'At the left is the front cover from outside, at the right the pocket on the back cover.':
    'A la izquierda, la tapa delantera por fuera; a la derecha, el bolsillo de la trasera.',
  'At the left is the front cover from outside, at the right the pocket on the back cover, with what it holds as a dashed outline.':
    'A la izquierda, la tapa delantera por fuera; a la derecha, el bolsillo de la trasera, con su contenido a trazos.',

  // motivos y límites
  'makers like {length}': 'lo habitual son {length}',
  'makers like {length} for a hem': 'lo habitual son {length} para un dobladillo',
  'makers like {length} for a seam': 'lo habitual son {length} para una unión',
  'that is what the stack takes': 'es lo que ocupa el montón',
  'that is what the pocket takes': 'es lo que ocupa el bolsillo',
  '{words}, and a step more lets the hems use up the sheet’s width':
    '{words}, y un paso más deja que los dobladillos aprovechen todo el ancho de la hoja',
  'panels and hems share the sheet’s width in the style’s proportions':
    'tapas y dobladillos se reparten el ancho de la hoja en las proporciones habituales',
  'that uses the sheet’s height': 'así se aprovecha el alto de la hoja',
  'that uses the sheet’s height without letting the contents rattle':
    'así se aprovecha el alto de la hoja sin que el contenido baile',
  'the seam takes the height that is left': 'la unión toma el alto que queda',
  'a deeper seam would only add bulk': 'una unión más ancha solo abultaría',
  'the hems take the width that is left': 'los dobladillos toman el ancho que queda',
  'the hems take the width that they may': 'los dobladillos toman todo el ancho que pueden',
  'makers like the seam near the middle': 'la unión suele quedar cerca del centro',
  'the sheet is no wider': 'la hoja no es más ancha',
  'the sheet is no higher': 'la hoja no es más alta',
  'the cutter is no wider': 'la zona de corte no es más ancha',
  'the cutter is no higher': 'la zona de corte no es más alta',
  'the spec gives the {words}': 'esta medida está fijada: {words}',
  'a hem must hold its glue with {length} to spare on each side':
    'un dobladillo debe contener su cola con {length} de margen a cada lado',
  'the seam must hold its glue with {length} to spare on each side':
    'la unión debe contener su cola con {length} de margen a cada lado',
  'a hem ends {length} short of the spine score': 'un dobladillo acaba a {length} del hendido del lomo',
  'a corner must not reach the top flap’s score':
    'una esquina no debe llegar al hendido de la solapa superior',
  'a corner must not reach the bottom flap’s score':
    'una esquina no debe llegar al hendido de la solapa inferior',
  'the top flap ends {length} short of the bottom fold':
    'la solapa superior acaba a {length} del pliegue inferior',
  'the bottom flap ends at the top fold at the latest':
    'la solapa inferior acaba como muy tarde en el pliegue superior',
  'two scores closer than that are hard to make in this paper':
    'hendidos más juntos son difíciles de hacer en este papel',
  'the spine must hold the folder’s own layers': 'el lomo debe abarcar las capas de la propia carpeta',
  'the spine must hold both stacks and the folder’s own layers':
    'el lomo debe abarcar los dos montones y las capas de la propia carpeta',
  '{words} needs play between the spine and the pocket’s mouth':
    '{words} necesita holgura entre el lomo y la boca del bolsillo',
  'the pocket must go round the {words} and its stack': 'el bolsillo debe rodear el montón ({words})',
  'a finer grid, or a little more paper': 'pasos más finos o un poco más de papel',

  // avisos
  'nothing says how thick the paper is: {length} is common practice; measure ten sheets together and divide by ten':
    'no se dice el grosor del papel: lo habitual son {length}; mide diez hojas juntas y divide entre diez',
  'give the stock’s caliper': 'indicar el grosor de una hoja',
  'paper of {length} makes a floppy {words}':
    'un papel de {length} queda demasiado blando para esto ({words})',
  'paper of {length} is board: single scores crack in it, and flaps and hems will not lie flat':
    'un papel de {length} es cartón: los hendidos sencillos se agrietan y las solapas y los dobladillos no quedan planos',
  'paper of {length} may crack along single scores':
    'un papel de {length} puede agrietarse en los hendidos sencillos',
  'take card of {length} to {lengthB}': 'tomar cartulina de {length} a {lengthB}',
  'take card of {length} to {lengthB}, or try a wider score on a scrap first':
    'tomar cartulina de {length} a {lengthB}, o probar antes un hendido más ancho en un retal',
  'the two {words} scores are only {length} apart': 'esos dos hendidos ({words}) están a solo {length}',
  'score lightly, or use thinner paper': 'hender con suavidad o usar un papel más fino',
  'the sheet is {length} larger than the blank; that is too little to trim and stays on at the right':
    'la hoja es {length} mayor que el recorte; es muy poco para cortarlo y queda a la derecha',
  'the sheet is {length} larger than the blank; that is too little to trim and stays on at the bottom':
    'la hoja es {length} mayor que el recorte; es muy poco para cortarlo y queda abajo',
  'a strip of only {length} is left to trim off': 'queda por recortar una tira de solo {length}',
  'leave it on, or give no grid so that the hems and the seam take it':
    'dejarla, o no fijar pasos para que los dobladillos y la unión la absorban',
  'the {words} of {length} is no whole number of grid steps: the bounds leave no step free':
    '{words}: {length} no es un número entero de pasos; los límites no dejan ninguno libre',
  'the card is larger than its envelope': 'la tarjeta es mayor que su sobre',
  'check both sizes; the pocket was sized for the envelope':
    'revisar los dos tamaños; el bolsillo está hecho para el sobre',
  'a {words} of {length} would hold {number} sets in each pocket':
    '{words}: con {length} cabrían {number} juegos en cada bolsillo',
  '{number} layers of paper lie on each other where hems and seam meet: there the closed folder is {length} thicker than at its spine':
    'donde se juntan dobladillos y unión hay {number} capas de papel: ahí la carpeta cerrada es {length} más gruesa que en el lomo',
  'thinner paper, mitred corners, or a {words} of {length} if it should close evenly':
    'un papel más fino, esquinas cortadas o, para que cierre por igual, {words}: {length}',
  'only {number} % of the paper is left along a perforated fold: it may tear':
    'en un pliegue perforado solo queda el {number} % del papel: puede rasgarse',
  'ties about as long as the cuts, and none under {length}':
    'puentes casi tan largos como los cortes, y ninguno de menos de {length}',
  'the filled cut is written last, so that a preview shows nothing but its area':
    'el corte relleno se escribe al final, y una vista previa solo muestra su superficie',
  'give the cut layer an order below the scores if your program does not cut by the file’s order':
    'poner la capa de corte antes que los hendidos si el programa no sigue el orden del archivo',
  'the corners are cut along the sheet’s own edge, as far out as the tool must reach':
    'las esquinas se cortan en el borde mismo de la hoja, hasta donde debe llegar la herramienta',
  'the outline is cut along the sheet’s own edge, as far out as the tool must reach':
    'el contorno se corta en el borde mismo de la hoja, hasta donde debe llegar la herramienta',
  'lay the sheet so that the tool reaches over its edge, or switch the cut layer off and cut by hand':
    'colocar la hoja para que la herramienta pase de su borde, o apagar la capa de corte y cortar a mano',

  // negativas
  'the blank would be {length} wide and {words}, so {lengthB} is missing':
    'el recorte mediría {length} de ancho, pero {words}; faltan {lengthB}',
  'the blank would be {length} high and {words}, so {lengthB} is missing':
    'el recorte mediría {length} de alto, pero {words}; faltan {lengthB}',
  'the cutter’s area is {length}': 'la zona de corte mide {length}',
  '{words}, turned, is {length}': 'girada, la hoja ({words}) mide {length}',
  '{name}, turned, is {length}': 'girada, la hoja ({name}) mide {length}',
  '{words} is {length}': 'la hoja ({words}) mide {length}',
  '{name} is {length}': 'la hoja ({name}) mide {length}',
  'the given {words} is {length}': 'esta medida está fijada, {words}: {length}',
  '{words}: it must be at least {length}, and can only be {lengthB}':
    '{words}: hacen falta al menos {length} y solo puede haber {lengthB}',
  '{words}; that fails by {length}': '{words}; faltan {length}',
  'the given dimensions contradict each other by {length}': 'las medidas fijadas se contradicen en {length}',
  '{words}, because {clauses}': '{words}, porque {clauses}',
  '{words}: {clauses}': '{words}: {clauses}',
  '{words}, and {wordsB}': '{words}, y {wordsB}',
  'this style holds nothing, so it takes no contents': 'este tipo no guarda nada, así que no lleva contenido',

  // lo que ayuda
  'turn the contents by a quarter': 'girar el contenido un cuarto de vuelta',
  'stand the contents as given': 'colocar el contenido como se ha dado',
  'let the contents stand the other way': 'colocar el contenido en el otro sentido',
  'put {number} in each pocket': 'poner {number} en cada bolsillo',
  'make the {words} {length}': 'cambiar esta medida, {words}: {length}',
  'leave the {words} to the solver': 'no fijar esta medida: {words}',
  'leave every dimension to the solver': 'no fijar ninguna medida',
  'use tape of {length}': 'usar cinta de {length}',
  'leave the envelopes out': 'prescindir de los sobres',
  'use a sheet of {length} by {lengthB}': 'usar una hoja de {length} por {lengthB}',
  'use a sheet of {words} and a larger machine, or cut by hand':
    'usar esta hoja: {words}, y una máquina mayor, o cortar a mano',
  'use a sheet of {words}': 'usar esta hoja: {words}',
  'let the sheet lie the other way': 'colocar la hoja en el otro sentido',
  'use paper whose print may be turned': 'usar un papel cuyo estampado se pueda girar',
  'use a machine with a larger area, or cut by hand':
    'usar una máquina con una zona de corte mayor, o cortar a mano',
  'use as little paper as serves': 'usar el mínimo papel que sirva',
  'use the whole sheet': 'usar la hoja entera',
  'use {words}': 'usar este papel: {words}',
  'use {name}': 'usar este papel: {name}',

  // entradas
  '{name} is too long to be a length': '{name} es demasiado largo para una medida',
  'the length is empty': 'falta la medida',
  '{name} is negative': '{name} es negativo',
  '{name} has an exponent': '{name} tiene un exponente',
  '{name} has a comma': '{name} tiene una coma de más',
  '{name} is not a length': '{name} no es una medida',
  '{name} is not a unit that hemfold reads': '{name} no es una unidad que hemfold conozca',
  '{name} divides by zero': '{name} divide entre cero',
  'write it like "5 1/8 in", "5.125 in", "130 mm" or "13 cm"':
    'escribe, por ejemplo, 130 mm, 13 cm, 5 1/8 pulg. o 5,125 pulg.',
  'give a length greater than zero': 'dar una medida mayor que cero',
  'write the number out, since exponents are not read': 'escribir el número completo',
  'write the decimal mark as a point and no thousands marks':
    'escribir un solo signo decimal y ningún separador de millares',
  'use mm, cm, in or the inch sign': 'escribir mm, cm, pulg. o el signo de pulgada',
  'the length is more than 10 m': 'la medida pasa de 10 m',
  'give a length that a sheet of paper can have': 'dar una medida posible para una hoja de papel',
  'the length is zero': 'la medida es cero',
  'the length is {length}': 'la medida es {length}',
  'give a length from {length} to {lengthB}': 'dar una medida de {length} a {lengthB}',
  'the size is missing': 'falta el tamaño',
  'the size is given twice': 'el tamaño se ha dado dos veces',
  'give either a size by name or a width and a height':
    'dar o bien un tamaño por su nombre, o bien un ancho y un alto',
  'the margins leave nothing of the cutter’s area': 'los márgenes no dejan nada de la zona de corte',
  'give a margin of less than half the shorter side': 'dar un margen menor que la mitad del lado corto',
  'this version does not know it': 'esta versión no lo conoce',
  'neither contents nor dimensions are given': 'no se da ni contenido ni medidas',
  'say what goes in, or fix at least one dimension; POST /v1/folders/possible lists what a sheet can become':
    'decir qué va dentro o fijar al menos una medida',
  'without contents, nothing says how large the {words} is to be':
    'sin contenido, nada dice qué tamaño ha de tener: {words}',
  'give the sheet as stock, say what goes in, or fix {words}':
    'indicar la hoja, o qué va dentro, o estas medidas: {words}',
  'the width and height of a panel': 'ancho y alto de la delantera',
  'Invalid input: expected number, received string': 'aquí va un número',
  'Invalid input: expected int, received number': 'aquí va un número entero',
  'Too small: expected number to be >={number}': 'al menos {number}',
  'Too big: expected number to be <={number}': 'como mucho {number}',
  'Too big: expected string to have <={number} characters': 'como mucho {number} caracteres',

  // precauciones
  'Make a first piece from plain paper, and measure it, before you cut a good sheet.':
    'Haz una primera pieza de papel corriente y mídela antes de cortar una hoja buena.',
  'Follow the instructions of the machine’s maker and the material’s data sheet; they and local rules come before anything said here.':
    'Sigue las instrucciones del fabricante de la máquina y la ficha del material; ellas y las normas locales están por encima de todo lo que se dice aquí.',
  'Knives: a sharp blade, a mat larger than the cut, a metal safety rule, the other hand behind the cut.':
    'Cuchillas: hoja afilada, base mayor que el corte, regla metálica de seguridad, la otra mano detrás del corte.',
  'Keep fingers, hair and ribbon away from moving parts.':
    'Aparta dedos, pelo y cintas de las piezas en movimiento.',
  'Lasers: never leave one running alone, keep the extraction on and an extinguisher at hand.':
    'Láseres: nunca dejes uno solo en marcha; extracción encendida y extintor a mano.',
  'Never cut vinyl or PVC, nor a coated, foiled or glittered sheet that its data sheet does not clear.':
    'No cortes nunca vinilo ni PVC, ni hojas estucadas, metalizadas o con purpurina que su ficha no autorice.',
  'hemfold cannot check your machine or your material, and gives no settings for either.':
    'hemfold no puede comprobar ni tu máquina ni tu material, y no da ajustes para ninguno.',

  // formas de dibujar
  'Width and height in millimetres, and one unit inside the drawing is a millimetre.':
    'Ancho y alto en milímetros; una unidad del dibujo es un milímetro.',
  'Width and height in inches, and 96 units inside the drawing are an inch, as in CSS: for programs that ignore one or the other.':
    'Ancho y alto en pulgadas; 96 unidades del dibujo son una pulgada, como en CSS: para programas que pasan por alto una cosa u otra.',
  'Width and height in inches, and 72 units inside the drawing are an inch: for programs that count in points.':
    'Ancho y alto en pulgadas; 72 unidades del dibujo son una pulgada: para programas que cuentan en puntos.',
  'Everything in thin black lines; the line type alone says what is scored and what is cut.':
    'Todo en líneas negras finas; solo el tipo de trazo dice qué se hiende y qué se corta.',
  'Cuts and knockouts are filled shapes without an outline; the blank’s outline is always there.':
    'Cortes y calados son formas rellenas sin contorno; el contorno del recorte está siempre.',
  'For a machine without a scoring tool: scores are perforations, half cut and half tie, that stop short of the edge.':
    'Para máquinas sin herramienta de hender: los hendidos son perforaciones, mitad corte y mitad puente, que acaban antes del borde.',
  'The whole drawing mirrored, for a sheet that lies on the machine with its outside face up.':
    'Todo el dibujo en espejo, para una hoja que está en la máquina con la cara exterior arriba.',
  'The guide shows where glue goes and what it must stay clear of. It is never cut: draw it with a pen, or hide it.':
    'Una guía muestra dónde va el pegamento y de qué debe quedar lejos. Nunca se corta: trácela con un bolígrafo u ocúltela.',
  ...styles,
  '{name} is not the id of a published size': '{name} no es el identificador de un formato publicado',
  'choose an id from GET /v1/sizes, or give width and height':
    'elegir un formato de la lista, o dar ancho y alto',
  'did you mean {name}? GET /v1/sizes lists all': '¿querías decir {name}? En la lista están todos',
  ...cutouts,
  ...figures,
  ...locks,
};
