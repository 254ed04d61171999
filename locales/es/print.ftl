### The print screen and what the check before printing (preflight) says.

## The print screen

print-sheet = Hoja
print-zone = Solo para una zona
print-language = Idioma { $number }
print-make = Hacer la hoja
print-making = Haciendo la hoja…
print-done = La hoja está lista.
print-refused = No se hizo ningún archivo. Corrija los errores de abajo e inténtelo otra vez.
print-unreachable = No se pudo traer la parte de impresión. Revise la conexión e inténtelo otra vez.
print-download = Descargar el PDF para imprenta
print-download-web = Descargar el PDF para la web
print-web-hint = El PDF para imprenta es para quien imprime. El PDF para la web es para leer en pantalla y en voz alta.
print-profile = Perfil de color de la imprenta (.icc)
print-profile-hint = Sin él se usa el perfil incluido para papel estucado.
print-ink-limit = Máxima tinta, en %
print-mark = Marcado con { $number } en la hoja
print-contradictions = Líneas que se contradicen: { $count }. Véalas abajo antes de imprimir.
print-page = Página { $number }
print-no-stream = No existe el flujo “{ $stream }”. Elija uno de la lista.
print-no-zone = No existe la zona “{ $zone }”. Elija una de la lista.
print-no-language = Elija de uno a cuatro idiomas del programa.
print-shortened = { $item }: su línea sola acierta en el { $percent } de los casos; lo demás se quitó para que quepa.
print-left-out = No cupo: { $items }.
print-hazards-in-brief = No cupieron los lugares que reciben lo peligroso; el código y el teléfono de la hoja llevan a ellos.
print-refused-in-brief = No cupo a dónde va lo que se queda fuera; el código y el teléfono de la hoja lo dicen.
preflight-title = Revisión para la imprenta

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Sangrado de { $bleed } mm alrededor; nada a menos de { $safe } mm del borde.
preflight-boxes = Tamaño final { $finished } mm, con sangrado { $bleed } mm, página con marcas { $page } mm.
preflight-contrast = Las letras se distinguen del fondo: contraste de al menos { $ratio }:1, al menos { $difference } % de negro de diferencia.
preflight-fonts-embedded = Todas las fuentes van en el archivo, reducidas a las { $glyphs } formas usadas: { $fonts }.
preflight-pictures-have-words = Dibujos con palabras para quien no los ve: { $count }.
preflight-hazards-shown = Peligros mostrados: { $count }.
preflight-ink-coverage = Máxima tinta en un punto: { $coverage } %; límite { $limit } %.
preflight-postal-zones = Las zonas libres del lado de la dirección están despejadas.
preflight-qr-code = Código QR: versión { $version }, nivel { $level }, módulos de { $module } mm, zona libre de { $quiet } módulos.
preflight-type-sizes = La letra es de { $body } pt, la menor de { $smallest } pt; para leer a { $distance } mm se necesitan al menos { $floor } pt.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-outdated = “{ $text }” ({ $lang }): el original cambió después de traducirlo. Tradúzcalo otra vez antes de imprimir.
preflight-line-often-wrong = “{ $text }” acierta por sí sola en solo el { $percent } % de los casos. Diga más o quite la línea.
preflight-lines-contradict = “{ $text }” y “{ $other }” ({ $lang }) se contradicen: quien lee la primera cree que vale para las dos. Cambie las palabras de una.
preflight-picture-without-words = Faltan palabras para quien no puede verlo ({ $what }). Escríbalas.
preflight-translation-unreviewed = Nadie ha revisado los textos en “{ $lang }”. Haga que alguien los lea antes de imprimir.
preflight-postal-field-missing = { $field }: vacío. Complételo o deje que la imprenta lo agregue.
preflight-qr-dense = El código QR es muy fino (versión { $version }, { $characters } caracteres). Una dirección más corta se lee mejor.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = La dirección para el código QR no sirve: “{ $address }”. Escríbala completa, empezando con https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” tiene un carácter que cambia la dirección de la escritura ({ $codepoint }, lugar { $position }). Bórrelo y escriba las palabras otra vez.
        [control] { $place }: “{ $text }” tiene un carácter de control ({ $codepoint }, lugar { $position }). Bórrelo y escriba las palabras otra vez.
       *[invisible] { $place }: “{ $text }” tiene un carácter que no se ve ({ $codepoint }, lugar { $position }). Bórrelo y escriba las palabras otra vez.
    }
preflight-boxes-wrong = Las medidas no caben una en otra: tamaño final { $finished } mm, con sangrado { $bleed } mm, página { $page } mm. Elija otra hoja.
preflight-contrast-low = “{ $text }” casi no se distingue del fondo: contraste { $ratio }:1, se necesita al menos { $least }:1; { $difference } % de negro de diferencia, se necesita al menos { $apart } %. Elija otras tintas.
preflight-ink-limit-invalid = “{ $limit }” no es un límite de tinta. Escriba la suma de las cuatro planchas que indique la imprenta, de 100 a 400 %.
preflight-qr-not-quiet = El código QR no tiene alrededor { $quiet } módulos de papel en blanco. Mueva lo que hay ahí.
preflight-date-invalid = “{ $date }” no es una fecha. Escriba año, mes y día: 2027-01-31
preflight-distance-invalid = “{ $distance }” no es una distancia de lectura en mm. Indique a qué distancia está quien lee.
preflight-font-not-embeddable = La fuente “{ $family }” no se puede incluir en archivos. Elija otra.
preflight-font-unreadable = No se puede leer el archivo de la fuente “{ $family }”. Descárguelo otra vez.
preflight-hazard-accepted = { $place }: “{ $text }” es un peligro entre lo aceptado. Lo peligroso nunca va a un bote: corrija la regla.
preflight-hazard-missing = Falta en la hoja el peligro “{ $text }” en “{ $lang }”. Los peligros nunca se quitan para ahorrar espacio.
preflight-language-count = Una hoja lleva de uno a cuatro idiomas, no { $count }.
preflight-language-invalid = “{ $lang }” no es una etiqueta de idioma. Escriba algo como es o es-US.
preflight-language-twice = El idioma “{ $lang }” está dos veces. Quite uno.
preflight-languages-differ =
    { $what ->
        [sections] “{ $lang }” no dice lo mismo que “{ $first }”: tiene { $theirs } secciones, no { $ours }. Traduzca lo que falta.
        [verdict] “{ $lang }” no dice lo mismo que “{ $first }”: la sección { $section } tiene otra respuesta. Corríjala.
        [lines] “{ $lang }” no dice lo mismo que “{ $first }”: la sección { $section } tiene { $theirs } líneas, no { $ours }. Traduzca lo que falta.
       *[picture] “{ $lang }” no dice lo mismo que “{ $first }”: la línea { $line } de la sección { $section } tiene otro dibujo u otra marca de peligro. Corríjala.
    }
preflight-missing-glyph = { $place }: ninguna fuente tiene { $characters }, que se usa en “{ $text }”. Escríbalo sin eso o agregue una fuente que lo tenga.
preflight-nothing-to-say = No hay nada que imprimir: el programa no dice nada de este flujo. Escriba antes sus reglas.
preflight-outside-safe-area = A menos de { $safe } mm del borde, donde podría cortarse: { $what }
preflight-pictogram-unknown = { $place }: no existe el dibujo “{ $pictogram }”. Elija otro.
preflight-picture-too-small = Un dibujo mide solo { $side } mm. Imprima menos líneas o idiomas.
preflight-postal-field-full = { $field }: “{ $text }” (línea { $line }) no cabe. Acórtela.
preflight-postal-zone = En una zona reservada al correo ({ $zone }): { $what }. Muévalo o acórtelo.
preflight-profile-unusable =
    { $why ->
        [not-icc] El archivo no es un perfil de color. Use el perfil de salida CMYK (.icc) que indique la imprenta.
        [cut-short] El perfil de color está incompleto. Pida a la imprenta que lo envíe otra vez.
        [no-tables] El perfil de color “{ $name }” no tiene tablas de color. Use el perfil de salida CMYK que indique la imprenta.
       *[other-kind] El perfil de color “{ $name }” no es un perfil de salida CMYK: es para { $class }, en { $space }. Use el que indique la imprenta.
    }
preflight-qr-too-fine = El código QR es demasiado fino para leerse: sus módulos miden { $module } mm. Acorte la dirección.
preflight-qr-too-long = La dirección tiene { $characters } caracteres, más de los que caben en un código QR. Acórtela.
preflight-rule-too-thin = Una raya mide { $width } pt de grueso; la más fina que se imprime mide { $least } pt.
preflight-text-empty = { $place }: no tiene texto. Escriba algo.
preflight-step-invalid = El paso { $number } de lo que se puede quitar no es posible. Detalle, en inglés: { $why }.
preflight-text-overlaps = “{ $text }” y “{ $other }” se enciman. Acorte uno de los dos.
preflight-text-too-long = { $place }: “{ $text }” no cabe ni con { $floor } pt, la letra más pequeña que se puede leer. Acórtelo unos { $cut } caracteres.
preflight-too-many-lines = La hoja “{ $sheet }” tiene { $lines } líneas en { $languages } idiomas y le faltan { $missing } mm con letra de { $floor } pt. Quite líneas o imprima menos idiomas.
preflight-too-much-ink = Hay { $coverage } % de tinta en un punto; el límite es { $limit } %. Elija un color más claro.
preflight-type-too-small = “{ $text }” está en { $size } pt; se necesitan al menos { $least } pt. Acorte los textos.
preflight-word-too-wide = { $place }: la palabra “{ $word }” en “{ $text }” es más ancha que su columna con { $floor } pt. Use una palabra de unos { $room } caracteres como máximo.

## What preflight calls a sheet's texts, the post's zones and what is drawn. $lang is a language's name

sheet-text-title = Título ({ $lang })
sheet-text-heading = Encabezado de la sección { $section } ({ $lang })
sheet-text-line = Línea { $line } de la sección { $section } ({ $lang })
sheet-text-scan = Frase junto al código QR ({ $lang })
sheet-text-foot = Línea { $line } al pie ({ $lang })
sheet-text-issuer = Quién publica la hoja
sheet-text-short-address = Dirección web corta
sheet-text-notice = Aviso de impresión
sheet-text-edition = Edición
sheet-text-job-name = Nombre del trabajo
sheet-text-slug = Línea fuera de la hoja
sheet-text-stock = Papel
# $line may be empty.
sheet-text-return-address = Remitente { $line }
sheet-text-indicia = Marca de franqueo { $line }
sheet-text-addressee = Destinatario { $line }
postal-zone-barcode-clear = franja blanca para el código de barras
postal-zone-read-area = donde las máquinas leen la dirección
drawn-code = el código QR
drawn-picture = un dibujo
drawn-area = una zona de tinta
sheet-cart-lid = etiqueta para la tapa
sheet-postcard-mailer = postal para correo
sheet-round-sticker = etiqueta redonda
sheet-enclosure-sign = letrero para contenedores compartidos
# What a color profile is for.
profile-class-mntr = una pantalla
profile-class-scnr = un escáner o una cámara
profile-class-other = otro uso

preflight-size-zero = La hoja mide { $width } × { $height } mm. Ambos lados deben medir más que nada: escriba otra vez el tamaño final.
preflight-size-fixed = La hoja mide { $width } × { $height } mm, pero esta solo se hace en estos tamaños: { $names }.
preflight-size-out-of-range = La hoja mide { $width } × { $height } mm. Escriba lados de { $least } a { $most } mm, con su unidad.
preflight-size-too-narrow = La hoja mide { $width } × { $height } mm. Un lado puede medir como mucho { $most } veces el otro.
preflight-size-not-round = Una etiqueta redonda es tan ancha como alta, no de { $width } × { $height } mm. Escriba su diámetro.
preflight-postal-size = El correo no acepta tarjetas, cartas ni sobres planos de { $width } × { $height } mm. Una carta mide de 127 a 292 mm de largo, de 89 a 156 mm de alto, y es de 1.3 a 2.5 veces más larga que alta; un sobre plano mide como mucho 381 × 305 mm.
preflight-corner-radius = El radio de las esquinas es de { $radius } mm. Indique uno de 0 a { $most } mm.
preflight-stock-thickness = El papel tiene { $thickness } mm de grosor, y ningún papel ni vinilo es así. Mire lo que envió la imprenta.
preflight-one-message = Una etiqueta redonda lleva un mensaje, no { $lines }. Elija una sola cosa.
preflight-press-size = El pliego mide { $width } × { $height } mm. Escriba lados de { $least } a { $most } mm, con su unidad.
preflight-press-gutter = El espacio entre hojas es de { $gutter } mm. Dos sangrados necesitan { $least } mm.
preflight-press-too-small = En un pliego de { $width } × { $height } mm no cabe ninguna hoja con su sangrado y sus marcas. Elija uno mayor.
preflight-press-up = Se pidieron { $up } en un pliego en el que caben { $most }. Pida de 1 a { $most }.
preflight-on-a-fold = A menos de { $distance } mm de un doblez: { $what }. Acorte los textos.
preflight-postal-thickness = La pieza terminada tiene { $thickness } mm de grosor. El correo pide de { $least } a { $most } mm: elija otro papel.
preflight-ticket-too-long = La orden de trabajo es demasiado larga en “{ $place }”. Acorte lo que se escribió ahí.

## Preflight of further sheets: what is right, and what somebody should look at

preflight-imposed = { $up } en un pliego de { $width } × { $height } mm: { $across } a lo ancho, { $down } a lo alto.
preflight-fits-fewer = Todo cabe en estos idiomas juntos: { $tags }. Imprima esos, y los demás en una hoja aparte.
preflight-fits-larger = Todo cabe en el tamaño { $size }. Elija ese tamaño.
preflight-folds-clear = Dobleces: { $count }. Nada impreso a menos de { $distance } mm de ellos.
preflight-postal-class =
    { $class ->
        [card] Se envía como tarjeta: { $length } × { $height } mm.
        [folded] Se envía doblada, sin sobre: { $length } × { $height } mm ya doblada.
        [flat] Se envía como sobre plano: { $length } × { $height } mm.
       *[letter] Se envía como carta: { $length } × { $height } mm.
    }
preflight-postal-thickness-unknown = Nadie ha dicho qué grosor tiene el papel. El correo pide de { $least } a { $most } mm para la pieza terminada: pregunte a la imprenta.
preflight-sign-letters = Las mayúsculas del título miden { $height } mm; se leen desde { $distance } mm.
preflight-sign-letters-small = Las mayúsculas del título miden { $height } mm. Los letreros accesibles leídos desde { $distance } mm piden { $least } mm: acorte los textos o use un letrero mayor.
preflight-die-line = La línea de troquel va en su propia tinta directa, “Dieline”, y en ninguna plancha impresa.

## The choices of the print screen

sheet-lid = Etiqueta para la tapa
sheet-sticker = Etiqueta redonda, un mensaje
sheet-sign = Letrero para contenedores compartidos
sheet-postcard = Postal para correo
sheet-self-mailer = Hoja doblada para correo
sheet-handout = Hoja para entregar
print-size = Tamaño final
print-size-usual = El usual
print-size-typed = Escrito abajo
print-typed-size = Tamaño con su unidad, como 8 x 12 in; si es redonda, 115 mm
print-size-unread = “{ $text }” no es un tamaño. Escriba ancho, alto y unidad: 8 x 12 in
print-corner = Radio de las esquinas, en mm
print-fold = Doblez
print-fold-half = Uno, por la mitad
print-fold-thirds = Dos, como una carta
print-die-line = Dibujar la línea de troquel en tinta directa
print-printers-mark = Dejar sitio para la marca del impresor
print-more = Más para la imprenta
print-stock = Papel
print-thickness = Grosor del papel, en mm
print-distance = Se lee desde, en mm
print-qr-level = Código QR: daño que soporta
print-qr-most = El mayor que no lo agranda
print-qr-medium = 15 % (M)
print-qr-quartile = 25 % (Q)
print-qr-high = 30 % (H)
print-words = Palabras por línea, como máximo
print-words-any = Las que hagan falta
print-item = Un artículo
print-press = Varias en un pliego
print-press-none = Una por página
print-work-and-turn = Blanco y vuelta en el mismo pliego
print-no-item = No existe el artículo “{ $item }”. Elija uno de la lista.
print-nothing-against = Nada dice que “{ $item }” quede fuera. Elija algo que sí, o un peligro.
print-ticket = Descargar la orden de trabajo
print-number-unread = “{ $text }” no es un número de milímetros.

## The job ticket: what the print shop has to know, one page

ticket-title = Orden de trabajo
ticket-sheet = Hoja
ticket-files = Archivos
ticket-file =
    { $pages ->
        [one] { $file }: { $pages } página
        [many] { $file }: { $pages } de páginas
       *[other] { $file }: { $pages } páginas
    }
ticket-quantity = Cantidad
ticket-copies =
    { $copies ->
        [one] { $languages }: { $copies } ejemplar
        [many] { $languages }: { $copies } de ejemplares
       *[other] { $languages }: { $copies } ejemplares
    }
ticket-copies-unsaid = { $languages }: número de ejemplares por acordar
ticket-trim = Tamaño final
ticket-size = { $width } × { $height } mm ({ $across } × { $down } in)
ticket-bleed = Sangrado, en cada lado
ticket-mm = { $length } mm
ticket-corners = Esquinas
ticket-round = Corte en círculo
ticket-radius = Redondeadas, radio de { $radius } mm
ticket-square = Rectas
ticket-die = Línea de troquel en la tinta directa “Dieline”, sobreimpresa: no imprimirla
ticket-folds = Dobleces
ticket-fold = A lo ancho, a { $at } mm del borde superior de la hoja abierta
ticket-fold-order = La cara de la dirección queda fuera. Su borde inferior es un doblez; la pieza se abre por el borde superior y ahí se cierra con sellos.
ticket-colours = Colores
ticket-colours-one = 4/0: cian, magenta, amarillo y negro por una cara
ticket-colours-two = 4/4: cian, magenta, amarillo y negro por ambas caras
ticket-colours-note = PDF/X-4; el texto negro se sobreimprime; tinta total de { $limit } % como mucho
ticket-stock = Papel
ticket-stock-unsaid = Por acordar
ticket-thickness = Grosor de { $thickness } mm
ticket-thickness-unsaid = Grosor por confirmar
ticket-press = Pliego
ticket-work-and-turn = Blanco y vuelta: el dorso está en la misma plancha
ticket-mark = Marca del impresor
ticket-mark-room = Se deja un espacio de 19 × 6 mm en la letra pequeña
ticket-edition = Edición
ticket-date = Fecha del trabajo
ticket-contact = Preguntas a
