### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = Hoja
sheet-lid = Etiqueta para la tapa, 7 × 9 pulgadas
sheet-postcard = Postal para correo, 9 × 6 pulgadas
print-zone = Solo para una zona
print-language = Idioma { $number }
print-make = Hacer la hoja
print-making = Haciendo la hoja…
print-done = La hoja está lista.
print-refused = No se hizo ningún archivo. Corrija los errores de abajo e inténtelo otra vez.
print-unreachable = No se pudo traer la parte de impresión. Revise la conexión e inténtelo otra vez.
print-download = Descargar el PDF para imprenta
print-page = Página { $number }
print-no-stream = No existe el flujo “{ $stream }”. Elija uno de la lista.
print-no-zone = No existe la zona “{ $zone }”. Elija una de la lista.
print-no-language = Elija de uno a cuatro idiomas del programa.
print-shortened = { $item }: su línea sola acierta en el { $percent } de los casos; lo demás se quitó para que quepa.
print-left-out = No cupo: { $items }.
print-hazards-in-brief = No cupieron los lugares que reciben lo peligroso; el código y el teléfono de la hoja llevan a ellos.
preflight-title = Revisión para la imprenta

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Sangrado de { $bleed } mm alrededor; nada a menos de { $safe } mm del borde.
preflight-hazards-shown = Peligros mostrados: { $count }.
preflight-ink-coverage = Máxima tinta en un punto: { $coverage } %; límite { $limit } %.
preflight-postal-zones = Las zonas libres del lado de la dirección están despejadas.
preflight-qr-code = Código QR: versión { $version }, nivel { $level }, módulos de { $module } mm, zona libre de { $quiet } módulos.
preflight-type-sizes = La letra es de { $body } pt, la menor de { $smallest } pt; para leer a { $distance } mm se necesitan al menos { $floor } pt.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = Nadie ha revisado los textos en “{ $lang }”. Haga que alguien los lea antes de imprimir.
preflight-postal-field-missing = El campo “{ $field }” está vacío. Complételo o deje que la imprenta lo agregue.
preflight-qr-dense = El código QR es muy fino (versión { $version }, { $characters } caracteres). Una dirección más corta se lee mejor.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = La dirección para el código QR no sirve: “{ $address }”. Escríbala completa, empezando con https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” tiene un carácter que cambia la dirección de la escritura ({ $codepoint }, lugar { $position }). Bórrelo y escriba las palabras otra vez.
        [control] { $place }: “{ $text }” tiene un carácter de control ({ $codepoint }, lugar { $position }). Bórrelo y escriba las palabras otra vez.
       *[invisible] { $place }: “{ $text }” tiene un carácter que no se ve ({ $codepoint }, lugar { $position }). Bórrelo y escriba las palabras otra vez.
    }
preflight-date-invalid = “{ $date }” no es una fecha. Escriba año, mes y día: 2027-01-31
preflight-distance-invalid = “{ $distance }” no es una distancia de lectura en mm. Indique a qué distancia está quien lee.
preflight-font-not-embeddable = La fuente “{ $family }” no se puede incluir en archivos. Elija otra.
preflight-font-unreadable = No se puede leer el archivo de la fuente “{ $family }”. Descárguelo otra vez.
preflight-hazard-accepted = { $place }: “{ $text }” es un peligro entre lo aceptado. Lo peligroso nunca va a un bote: corrija la regla.
preflight-hazard-missing = Falta en la hoja el peligro “{ $text }” en “{ $lang }”. Los peligros nunca se quitan para ahorrar espacio.
preflight-language-count = Una hoja lleva de uno a cuatro idiomas, no { $count }.
preflight-language-invalid = “{ $lang }” no es una etiqueta de idioma. Escriba algo como es o es-US.
preflight-language-twice = El idioma “{ $lang }” está dos veces. Quite uno.
preflight-languages-differ = “{ $lang }” no dice lo mismo que “{ $first }”: { $what }.
preflight-missing-glyph = { $place }: ninguna fuente tiene { $characters }, que se usa en “{ $text }”. Escríbalo sin eso o agregue una fuente que lo tenga.
preflight-nothing-to-say = No hay nada que imprimir: el programa no dice nada de este flujo. Escriba antes sus reglas.
preflight-outside-safe-area = “{ $what }” está a menos de { $safe } mm del borde y podría cortarse.
preflight-pictogram-unknown = { $place }: no existe el dibujo “{ $pictogram }”. Elija otro.
preflight-picture-too-small = Un dibujo mide solo { $side } mm. Imprima menos líneas o idiomas.
preflight-postal-field-full = La línea { $line } del campo “{ $field }” no cabe: “{ $text }”. Acórtela.
preflight-postal-zone = “{ $what }” está en una zona reservada al correo ({ $zone }). Muévalo o acórtelo.
preflight-profile-unusable = El perfil de color no sirve: { $why }. Use el perfil de salida CMYK que indique la imprenta.
preflight-qr-too-fine = El código QR es demasiado fino para leerse: sus módulos miden { $module } mm. Acorte la dirección.
preflight-qr-too-long = La dirección tiene { $characters } caracteres, más de los que caben en un código QR. Acórtela.
preflight-rule-too-thin = La línea “{ $what }” es demasiado fina para imprimirse.
preflight-step-invalid = El paso { $number } de lo que se puede quitar no es posible. Detalle, en inglés: { $why }.
preflight-text-empty = { $place } no tiene texto. Escriba algo.
preflight-text-overlaps = “{ $text }” y “{ $other }” se enciman. Acorte uno de los dos.
preflight-text-too-long = { $place } ({ $lang }): “{ $text }” no cabe ni con { $floor } pt, la letra más pequeña que se puede leer. Acórtelo unos { $cut } caracteres.
preflight-too-many-lines = La hoja “{ $sheet }” tiene { $lines } líneas en { $languages } idiomas y le faltan { $missing } mm con letra de { $floor } pt. Quite líneas o imprima menos idiomas.
preflight-too-much-ink = Hay { $coverage } % de tinta en un punto; el límite es { $limit } %. Elija un color más claro.
preflight-type-too-small = “{ $text }” está en { $size } pt; se necesitan al menos { $least } pt. Acorte los textos.
preflight-word-too-wide = { $place } ({ $lang }): la palabra “{ $word }” en “{ $text }” es más ancha que su columna con { $floor } pt. Use una palabra de unos { $room } caracteres como máximo.
