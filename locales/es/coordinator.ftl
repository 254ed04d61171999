### The coordinator's screens. Short, clear words; trade words where coordinators use them.

## Around every screen

desk-title = Mesa de la guía
desk-title-of = { $program }: mesa de la guía
navigation = Partes del programa
undo = Deshacer
redo = Rehacer
close = Cerrar
tab-files = Archivos
tab-program = Programa
tab-streams = Flujos
tab-zones = Zonas
tab-channels = Canales
tab-sites = Sitios
tab-rules = Reglas
tab-items = Objetos
tab-texts = Textos
tab-print = Imprimir
start-problem-unreachable = El servidor no respondió. Revise la conexión y vuelva a cargar la página.
start-problem-missing = Falta un archivo de esta aplicación en el servidor. Pida a quien la publicó que la publique otra vez.
start-problem-broken = Un archivo de esta aplicación llegó dañado. Vuelva a cargar la página; si sigue igual, publique la aplicación otra vez.
recover-title = Algo salió mal en esta página
recover-text = Su programa se guardó mientras usted trabajaba. Descárguelo para mayor seguridad y vuelva a cargar la página para seguir.
recover-nothing = No hay ningún programa guardado en este navegador.
recover-reload = Volver a cargar
recover-download = Descargar mi programa
panels = Hallazgos, cambios y prueba

## Saving. $time is a day with a time

save-nothing = Nada abierto
save-saved = Guardado en este dispositivo
save-waiting = Guardando…
save-failed = Sin guardar
save-again = Intentar guardar otra vez
save-problem-full = No queda espacio en este dispositivo y sus cambios no se están guardando. Exporte ahora el archivo del programa y luego libere espacio.
save-problem-forbidden = Este navegador no permite guardar nada y sus cambios no se están guardando. Exporte el archivo del programa antes de cerrar esta ventana.
save-problem-newer = Otra ventana guardó este programa después. Su versión no lo reemplazó.
day-and-time = { $day }, { $time }

## Drafts and files. $name, $copy and $program are names of drafts or files

drafts-title = Programas en este dispositivo
drafts-none = Todavía no hay ninguno. Abra la demostración, empiece un programa o importe un archivo.
draft-saved = Guardado: { $time }
draft-remove-sure = ¿Quitarlo de verdad?
draft-second-version = { $name } (segunda versión)
draft-diverged = “{ $name }” también se cambió en otra ventana. Se conservan las dos: la otra versión es ahora “{ $copy }”.
open-demo = Abrir la demostración
open-demo-hint = Quillmere County, un lugar inventado con todo completo
new-program = Programa nuevo
new-program-hint = Empezar solo con las reglas de seguridad incluidas
import-file = Importar un archivo de programa
import-file-hint = Se abre junto a sus otros programas y no reemplaza ninguno
export-file = Exportar el archivo del programa
export-file-hint = Un archivo con todo, para guardarlo o compartirlo
import-refused = No se puede abrir “{ $name }”
import-unchanged = Sus programas siguen como estaban.
import-original = Descargar el archivo tal como estaba

## Why a program file cannot be read

load-too-large = El archivo tiene { $megabytes } MB; los archivos de programa tienen como máximo { $limit } MB. Revise que sea el archivo correcto.
load-truncated = El archivo termina antes de tiempo, en la línea { $line }. Es probable que se cortara al enviarlo: cópielo o descárguelo otra vez.
load-not-json = El archivo no se puede leer desde la línea { $line }, columna { $column }. Si se editó a mano, corrija ese lugar; si no, expórtelo otra vez.
load-other-format = Este no es un archivo de programa (dice “{ $found }”). Elija un archivo exportado aquí.
load-newer = El archivo es de la versión { $found }; esta aplicación conoce hasta la versión { $known }. Use una edición más nueva de la aplicación.
load-shape = El valor en “{ $path }” no es del tipo esperado: { $detail }. Corríjalo allí e importe el archivo otra vez.
load-too-deep = Una condición de la regla “{ $rule }” tiene más de { $limit } niveles. Divídala en varias reglas.

## Lists and fields in general

list-filter = Filtrar
list-add = Agregar
list-add-one = Agregar otro
list-new-name = Nombre del nuevo
list-remove = Quitar
list-up = Subir
list-choose = Elija uno de la lista o agregue uno.
choice-none = Ninguno
field-month = Mes
field-day = Día
measure-unreadable = No se puede leer “{ $stated }”. Escriba un número con su unidad, como 2 in, 1 gal, 100 lb.
translations = En los otros idiomas
field-name = Nombre
field-kind = Tipo
field-note = Nota para los residentes
field-phone = Teléfono
field-email = Correo electrónico

## The program's own fields

program-basics = Este programa
field-program-name = Nombre de la guía
field-program-id = Id corto, para archivos y direcciones
field-edition = Edición
field-edition-from = Válida desde
field-guide-url = Dirección de la guía publicada
field-source-language = Idioma en que se escriben primero los textos
field-languages = Idiomas en que se publica
program-contact = A quién preguntar
field-contact-name = Nombre de la oficina
field-return-address = Dirección del remitente en los envíos
program-silence = Cuando ninguna regla nombra un caso
field-silence = Qué significa el silencio
silence-undecided = Aún sin decidir (no se puede publicar)
silence-ask = Lista abierta: la respuesta es “no está en la lista, pregunte”
silence-closed = Lista cerrada: lo que no se nombra se rechaza
program-unknown = Cuando un residente no lo sabe
program-unknown-hint = Qué se toma en lugar de lo desconocido. Si no se indica nada, se toma el valor prudente.
unknown-add = Indicar otro
program-counts-as = Lo que cuenta como otra cosa
program-counts-as-hint = Todas las reglas tratan entonces lo uno como lo otro: el vidrio esmerilado como transparente, por ejemplo.
counts-as-add = Dato
field-these = Estos
field-count-as = Cuentan como
program-hazards = A dónde van los peligros
program-hazards-hint = Cada clase necesita un canal que la reciba con seguridad y una persona que lo aprobó. Lo peligroso nunca va a un bote.
field-hazard-channel = Va a
field-approved-by = Aprobado por
program-plant = Planta de clasificación
field-plant-name = Nombre de la planta
field-machine-name = Máquina
field-machine-limit = Lo que no puede manejar
machine-add = Agregar una máquina
program-print = Para las hojas impresas
field-short-url = Dirección corta junto al código QR
field-indicia = Indicia postal, línea por línea
field-statement = Leyenda sobre papel reciclado o similar

## Streams and containers

containers-title = Recipientes
container-add = Agregar un recipiente
container-remove = Quitar este recipiente
field-container-name = Cómo lo llaman los residentes
field-colour = Color
field-capacity = Capacidad, con su unidad
field-container-zones = Solo en estas zonas
field-container-dwellings = Solo en estos tipos de vivienda
field-set-out = Cuándo y cómo sacarlo
field-container-rules = Reglas sobre este recipiente
field-container-rules-hint = Valen para todo lo que se pone dentro. Los residentes las ven en cada respuesta que lo nombra.
field-container-rule-add = Una regla sobre
field-container-rule = Con sus propias palabras, en lugar de la frase habitual
field-limit = Límite, con su unidad
field-share = Límite, como 10 %
limit-missing = Escriba el límite, o toda la regla con sus propias palabras.
residents-read = Los residentes leen: { $text }
container-rule-kind-lid-closed = Tapa cerrada
container-rule-kind-weight = Peso cuando está lleno
container-rule-kind-distance = Espacio libre alrededor
container-rule-kind-side-waste = Cosas al lado o encima
container-rule-kind-share-of-load = Cuánto de una carga puede no corresponder
container-rule-kind-liners = Forrarlo con una bolsa
container-rule-kind-sacks = Sacos que se entregan
container-rule-kind-registration = Inscripción previa
container-rule-kind-refusals = Cuándo se deja sin recoger
stream-kind-recycling = Reciclaje
stream-kind-organics = Orgánicos
stream-kind-refuse = Basura
stream-kind-glass = Vidrio
stream-kind-paper = Papel
stream-kind-film = Película de plástico
container-kind-cart = Bote con ruedas
container-kind-bin = Cesto
container-kind-bag = Bolsa
container-kind-box = Caja
container-kind-shared-cart = Bote compartido de un edificio
container-kind-dumpster = Contenedor grande

## Zones

field-dwelling = Tipo de vivienda
field-households = Número de viviendas
field-zone-streams = Flujos que se recogen aquí
field-centre = Centro de la zona: latitud, longitud

## Channels and sites

field-fee = Tarifa, en palabras
field-booking = Hay que reservar
field-proof = Se pide comprobante de domicilio
field-permit = Se necesita un permiso
field-voucher = Se necesita un vale
field-allowance = Cuánto o con qué frecuencia, en palabras
field-vehicles = Qué vehículos pueden venir, en palabras
field-safe-for = Recibe con seguridad estos peligros
channel-sites =
    { $count ->
        [0] Ningún sitio lo recibe todavía.
        [one] Su sitio: { $names }
       *[other] Sus sitios: { $names }
    }
channel-kind-drop-off = Centro de entrega
channel-kind-store-take-back = Entrega en tiendas
channel-kind-hazardous-waste = Centro de residuos peligrosos del hogar
channel-kind-event = Jornada de recolección
channel-kind-bulky-pickup = Recolección de objetos grandes
channel-kind-deposit-return = Devolución con depósito
channel-kind-mail-back = Envío por correo
channel-kind-reuse = Reúso y reparación
channel-kind-medicine-take-back = Entrega de medicamentos
channel-kind-sharps-take-back = Entrega de agujas
channel-kind-police = Policía
channel-kind-specialist = Empresa especializada
channel-kind-dealer = Fabricante o vendedor
channel-kind-health-office = Oficina de salud
channel-kind-authority = Autoridad a la que llamar
field-site-channels = Recibe cosas de estos canales
field-accepts = De sus cosas, recibe solo estas
field-refuses = De sus cosas, no recibe estas
field-site-vehicles = Qué vehículos pueden venir aquí, si difiere de sus canales
field-address = Dirección
field-position = Posición: latitud, longitud
field-hours = Horario
field-hours-hint = Escrito como en los mapas abiertos: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = Este horario no se puede leer: { $detail }

## Rules and their conditions

field-tier = Nivel
field-verdict = Decisión
rule-adds-steps = Ninguna: solo agrega pasos
field-stream = Flujo
field-channel = Canal
field-prepare = Preparación, en orden
field-reason = Razón
field-machine = Máquina que lo decide
field-residents = Texto para los residentes
field-sorters = Texto para quienes clasifican
field-contract = Texto del contrato
provenance-title = De dónde viene
field-decided-by = Lo decidió
field-source = Fuente
field-confirmed = Última confirmación
field-ask-again = Volver a preguntar el
rule-more = Fechas, excepciones y aprobación
field-also = También lo recibe
field-overrides = Va antes que estas reglas de su nivel
field-temporary = Una orden temporal
field-from = Desde
field-until = Hasta
field-season = Solo en una parte de cada año
field-season-from = Primer día de la temporada
field-season-until = Último día de la temporada
season-says = Cada año, del { $from } al { $until }
field-banned-from = Prohibido por ley en
acknowledgement-title = Excepción a una regla de seguridad incluida
acknowledgement-hint = Solo puede permitirla una persona con nombre y una razón. Se muestra como advertencia en cada revisión.
field-acknowledged-by = Permitido por
field-acknowledged-on = El día
field-acknowledged-because = Porque
condition-title = Cuándo
condition-always = Siempre: la regla no tiene condición.
condition-begin = Agregar una condición
condition-kind = Cómo cuentan las partes
condition-all = Todo esto
condition-any = Algo de esto
condition-not = Esto no
condition-fact = Dato
condition-is = es uno de
condition-add-fact = Agregar un dato
condition-add-group = Agregar un grupo
condition-remove = Quitar esta parte de la condición
bound-at-least = como mínimo
bound-over = más de
bound-at-most = como máximo
bound-under = menos de
bound-value = Medida con su unidad
bound-day = Día
bound-like = Comparación cotidiana
bound-per = Se cuenta

## Items. $item is an item's name

items-all = Todo
items-answer = Respuesta
items-asks = Hace una pregunta
items-ask = Probar
items-ask-name = Probar: { $item }
items-rule = Ir a la regla
items-decide = Decidir
items-decide-name = Decidir: { $item }
items-count =
    { $count ->
        [one] { $count } objeto
       *[other] { $count } objetos
    }

## Texts and their translations

texts-language = Idioma
texts-state = Estado
text-state-missing = Falta
text-state-unreviewed = Sin revisar
text-state-reviewed = Revisado
text-state-outdated = Desactualizado
# $whose is a thing's name or the name of a screen, $what one of its fields.
text-step = Paso de preparación
text-label = { $whose }: { $what }
texts-reviewer = Su nombre, para dar el visto bueno
texts-reviewer-needed = Escriba antes su nombre: cada revisión lleva firma.
texts-sign-off = Ya lo revisé
texts-count = { $done } de { $all } revisados
review-title = Estado de cada idioma
review-screens = Palabras de las pantallas: { $state }
review-source = el idioma del que salen los demás
review-by = revisado por { $name } el { $date }
review-outdated = revisado por { $name } el { $date }, pero el inglés cambió después
review-texts = Sus propios textos: { $done } de { $all } revisados
review-names = Firmado por { $names }

## What changed, and trying the guide

ask-title = Preguntar como residente
changes-title = Qué cambiaron sus ediciones
changes-count =
    { $count ->
        [0] Ninguna respuesta cambió.
        [one] Cambió { $count } respuesta.
       *[other] Cambiaron { $count } respuestas.
    }
changes-absent = No está en la guía
changes-details = El lugar es el mismo; cambia cómo prepararlo o el porqué.
changes-mark = Comparar desde ahora

## Findings. $item is an item's name, $answers a list such as "Wet: dry"

findings-title = Hallazgos
findings-count = Errores: { $errors } · Advertencias: { $warnings } · Avisos: { $notices }
findings-more =
    { $count ->
        [one] y { $count } más
       *[other] y { $count } más
    }
severity-error = Error
severity-warning = Advertencia
severity-notice = Aviso
severity-pass = Correcto
witness = Por ejemplo: { $item }, cuando { $answers }
witness-item = Por ejemplo: { $item }

## What a finding says, and below it what to do. Values are ids and texts of the program

finding-uncovered-case = Ninguna regla decide este caso.
    .hint = Escriba una regla, o indique en la pantalla del programa qué significa el silencio.
finding-conflicting-rules = Reglas del mismo nivel mandan lo mismo a lugares distintos: { $rules }.
    .hint = Cambie la condición de una, o haga que una vaya antes que la otra.
finding-hazard-not-safe =
    { $problem ->
        [no-channel] El peligro “{ $class }” no tiene canal.
        [unknown-channel] El peligro “{ $class }” va a un canal que no existe.
        [channel-does-not-take-it] El peligro “{ $class }” va a un canal que no está marcado como seguro para él.
       *[rule] La regla “{ $id }” manda el peligro “{ $class }” a un lugar que no es seguro para él.
    }
    .hint = Elija un canal que lo reciba con seguridad. Lo peligroso nunca va a un bote.
finding-hazard-acknowledged = { $by } permitió una excepción a una regla de seguridad incluida: “{ $id }”.
    .hint = Revise que la ley local y el sitio lo permitan y que la razón siga siendo válida.
finding-rule-never-applies = La regla “{ $id }” nunca decide nada.
    .hint = Otras reglas deciden antes todos sus casos, o ningún objeto cumple su condición. Cámbiela o quítela.
finding-not-listed = Algunos casos de este objeto se responden “no está en la lista, pregunte”.
    .hint = Eso está permitido. Escriba una regla si conoce la respuesta.
finding-missing-provenance = No se ve de dónde viene la decisión de la regla “{ $id }”. Falta: { $missing }.
    .hint = Indique quién lo decidió, con qué fuente y cuándo se confirmó por última vez con la planta.
finding-missing-translation =
    { $state ->
        [unreviewed] Textos en “{ $language }” que nadie ha revisado: { $count }. El primero es “{ $first }”.
        [outdated] Textos en “{ $language }” cuya fuente cambió después: { $count }. El primero es “{ $first }”.
       *[missing] Textos que faltan en “{ $language }”: { $count }. El primero es “{ $first }”.
    }
    .hint = Abra la pantalla de textos y filtre por idioma y estado.
finding-broken-condition =
    { $problem ->
        [unknown-fact] No existe el dato “{ $fact }”.
        [no-values] El dato “{ $fact }” no se compara con nada.
        [no-number] “{ $value }” para “{ $fact }” no tiene número.
        [no-unit] “{ $value }” para “{ $fact }” no tiene unidad.
        [unknown-unit] No se conoce la unidad de “{ $value }” para “{ $fact }”.
        [wrong-dimension] “{ $value }” no mide “{ $fact }”.
        [negative] “{ $value }” para “{ $fact }” es menos que nada.
        [too-large] “{ $value }” para “{ $fact }” es demasiado grande para ser cierto.
        [unknown-part] No existe la parte “{ $value }”.
        [range-reversed] El intervalo “{ $value }” de “{ $fact }” va al revés.
       *[unknown-value] “{ $value }” no es un valor de “{ $fact }”.
    }
    .hint = Elija de la lista. Escriba las medidas con su unidad, como 2 in, 1 gal o 10 lb.
finding-broken-item =
    { $problem ->
        [unknown-fact] No existe el dato “{ $fact }”.
        [no-values] El dato “{ $fact }” no se compara con nada.
        [no-number] “{ $value }” para “{ $fact }” no tiene número.
        [no-unit] “{ $value }” para “{ $fact }” no tiene unidad.
        [unknown-unit] No se conoce la unidad de “{ $value }” para “{ $fact }”.
        [wrong-dimension] “{ $value }” no mide “{ $fact }”.
        [negative] “{ $value }” para “{ $fact }” es menos que nada.
        [too-large] “{ $value }” para “{ $fact }” es demasiado grande para ser cierto.
        [unknown-part] No existe la parte “{ $value }”.
        [no-such-sides] Los lados indicados no dejan ningún tamaño posible: el más largo debe ser el más largo.
        [no-range] Al intervalo de “{ $fact }” le falta el principio o el fin.
        [range-reversed] El intervalo “{ $value }” de “{ $fact }” va al revés.
       *[unknown-value] “{ $value }” no es un valor de “{ $fact }”.
    }
    .hint = Elija de la lista. Escriba las medidas con su unidad, como 2 in, 1 gal o 10 lb.
finding-broken-reference =
    { $kind ->
        [stream] No existe el flujo “{ $target }”.
        [channel] No existe el canal “{ $target }”.
        [zone] No existe la zona “{ $target }”.
        [step] No existe el paso “{ $target }”.
        [reason] No existe la razón “{ $target }”.
        [machine] No existe la máquina “{ $target }”.
        [item] No existe el objeto “{ $target }”.
        [rule-of-tier] La regla “{ $target }” es de otro nivel, así que no se le puede ir antes.
       *[rule] No existe “{ $target }”.
    }
    .hint = Elija otro o agregue lo que falta. Un nombre vacío quiere decir que aún no se eligió nada.
finding-circular-override = Estas reglas van unas antes que otras en círculo: { $rules }.
    .hint = Quite una de ellas de la lista “va antes”.
finding-destination-not-offered = La regla “{ $id }” manda cosas al flujo “{ $stream }”, que no se recoge en la zona “{ $zone }”.
    .hint = Agregue el flujo a la zona o escriba otra regla para esa zona.
finding-duplicate-id =
    { $times ->
        [0] Algo aquí no tiene id.
        [one] El id “{ $id }” se usa { $times } vez.
       *[other] El id “{ $id }” se usa { $times } veces.
    }
    .hint = Dé a cada uno su propio id. De él dependen enlaces, etiquetas y traducciones.
finding-printed-line-untrue =
    { $span ->
        [from] La línea impresa «{ $line }» no es cierta desde el { $since }.
        [until] La línea impresa «{ $line }» no es cierta hasta el { $until }.
        [between] La línea impresa «{ $line }» no es cierta desde el { $since } hasta el { $until }.
       *[always] La línea impresa «{ $line }» no es cierta en esta edición.
    }
    .hint = Imprima la hoja de nuevo o tape la línea. Si la hoja ya no está en uso, anote el día en que se retiró.
finding-suspicious-text =
    { $problem ->
        [markup] El texto “{ $key }” ({ $language }) contiene código: { $shown }
        [direction] El texto “{ $key }” ({ $language }) contiene un carácter que cambia la dirección de la escritura: { $shown }
       *[control] El texto “{ $key }” ({ $language }) contiene un carácter que no se ve: { $shown }
    }
    .hint = Los textos son simples. Bórrelo y escriba las palabras otra vez.
finding-too-complex = Hay tantos datos abiertos de este objeto que no se pueden revisar todos sus casos (datos abiertos: { $count }).
    .hint = Fije algunos de sus datos o divídalo en varios objetos.
finding-too-many-thresholds = Las reglas nombran tantos límites que no se pueden revisar todos los casos de algunos objetos ({ $count }). La mayoría son de “{ $fact }”: { $thresholds }.
    .hint = Haga que las reglas compartan límites y quite las que ya no rigen.
finding-unreadable-hours = El horario “{ $hours }” no se puede leer: { $problem }
    .hint = Escríbalo así: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = “{ $value }” no se puede usar aquí.
    .hint = Elija un valor de la lista o corríjalo: un color se escribe #2a7f4f, una posición como latitud y longitud, una dirección empieza con https://

## Comparar con un archivo. $name es el nombre de un archivo

compare-file-title = Comparar con otro archivo
compare-file = Elija una edición anterior o el programa de un vecino
compare-file-name = Comparado con «{ $name }».
compare-newer = El archivo es el más nuevo de los dos
compare-notice = Aviso de lo que cambia
compare-copy = Copiar el aviso
compare-copied = Copiado.
compare-not-copied = El navegador no quiso copiar. Seleccione el texto y cópielo.
compare-download = Descargar el aviso

## El registro de hojas impresas

printed-title = Lo que se ha impreso
printed-copies = Número de ejemplares
printed-note = Anotar como impresa
printed-entry =
    { $copies ->
        [0] { $id }, { $day }
        [one] { $id }, { $day }, { $copies } ejemplar
        [many] { $id }, { $day }, { $copies } de ejemplares
       *[other] { $id }, { $day }, { $copies } ejemplares
    }
printed-withdrawn = retirada el { $day }
printed-withdraw = Ya no está en uso
printed-still-out = Sigue en uso
finding-question-never-matters =
    { $problem ->
        [unknown] Está fijado qué cuenta cuando no se sabe “{ $fact }”, pero ninguna respuesta lo necesita.
       *[open] Este objeto deja abierto “{ $fact }”, pero ninguna respuesta depende de ello.
    }
    .hint = Nadie lo pregunta. Déjelo así o escriba la regla que lo necesita.
finding-steps-contradict = Una misma respuesta pide “{ $one }” y “{ $other }”, que no se pueden hacer a la vez. Reglas: { $rules }.
    .hint = Quite uno de los dos pasos de su regla, o cambie una condición para que solo valga una de las reglas.
finding-preparation-contradicts =
    { $problem ->
        [none] Quien sigue el paso “{ $step }” de la regla “{ $id }” hace que “{ $fact }” sea “{ $value }”, y entonces ninguna regla lo manda ahí.
       *[rule] Quien sigue el paso “{ $step }” de la regla “{ $id }” hace que “{ $fact }” sea “{ $value }”, y entonces la regla “{ $other }” lo manda a otra parte.
    }
    .hint = Quite el paso de la regla, o haga que la regla valga también para lo que deja el paso.
finding-site-never-used =
    { $problem ->
        [item] Se dice que el sitio “{ $id }” recibe “{ $item }”, que nunca se manda a un canal de este sitio.
       *[site] Nunca se manda nada al sitio “{ $id }”.
    }
    .hint = Escriba una regla que mande algo a uno de sus canales, dele otro canal o quítelo de la lista.
finding-no-site-takes =
    { $problem ->
        [refused] “{ $item }” se manda al canal “{ $id }”, pero ninguno de sus sitios lo recibe.
       *[none] Cosas como “{ $item }” se mandan al canal “{ $id }”, que no tiene ningún sitio adonde ir.
    }
    .hint = Agregue un sitio, haga que uno de los sitios lo reciba o mándelo a otro canal.
finding-item-without-name = El objeto “{ $id }” no tiene nombre que mostrar. Idiomas sin nombre: { $languages }.
    .hint = Escriba su nombre en el idioma en que está escrito el programa.
finding-name-twice = Los objetos “{ $id }” y “{ $other }” se llaman los dos “{ $name }” en “{ $language }”.
    .hint = Dé a uno un nombre que los distinga. Los residentes eligen por el nombre.
finding-banned-destination = “{ $item }” se manda al flujo “{ $stream }”, donde la ley lo prohíbe. Reglas: { $rules }.
    .hint = Mándelo a otro flujo o canal, o corrija la prohibición donde está escrita.
finding-impossible-condition =
    { $problem ->
        [fact] La condición de la regla “{ $id }” nunca se cumple: lo que pide de “{ $fact }” se excluye a sí mismo.
       *[parts] La condición de la regla “{ $id }” nunca se cumple: sus partes se excluyen unas a otras.
    }
    .hint = Corrija o quite una de las partes. Si puede valer cualquiera, use “cualquiera de estas”.
finding-empty-condition =
    { $problem ->
        [any] La condición de la regla “{ $id }” tiene un grupo vacío “cualquiera de estas”, que nunca se cumple.
       *[all] La condición de la regla “{ $id }” tiene un grupo vacío “todas estas”, que siempre se cumple.
    }
    .hint = Agregue lo que va en el grupo o quite el grupo.
finding-rule-without-condition = La regla “{ $id }” no tiene condición: decide todo lo que no decide un nivel anterior.
    .hint = Escriba cuándo vale. Si es para todo lo que queda, póngala en el nivel “default”.
finding-text-missing-register =
    { $register ->
        [contract] Reglas sin el texto del contrato: { $count }. La primera es “{ $first }”.
        [sorters] Reglas sin texto para quienes clasifican: { $count }. La primera es “{ $first }”.
       *[residents] Reglas sin texto ni razón para residentes: { $count }. La primera es “{ $first }”.
    }
    .hint = Escríbalos en la pantalla de la regla, para que los tres digan lo mismo.
finding-unused-thing =
    { $kind ->
        [stream] Ninguna regla manda nada al flujo “{ $id }”.
        [channel] Ni una regla ni un peligro van al canal “{ $id }”.
        [step] Ninguna regla pide el paso “{ $id }”.
        [zone] Nada cambia en la zona “{ $id }”: no la nombra ninguna regla, recipiente ni flujo.
       *[machine] Ninguna regla nombra la máquina “{ $id }”.
    }
    .hint = Déjelo si va a hacer falta; si no, quítelo.
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] No existe el dato “{ $fact }” cuyos valores puedan contar como otro.
        [unlisted-fact] “{ $fact }” no tiene lista de valores, así que ninguno puede contar como otro.
        [unknown-value] “{ $value }” no es un valor de “{ $fact }”.
        [danger] “{ $fact }” es un peligro: ninguno de sus valores cuenta nunca como otro.
        [nothing] No se nombra nada que cuente como “{ $value }” en “{ $fact }”.
        [itself] “{ $value }” de “{ $fact }” cuenta como sí mismo.
        [twice] “{ $value }” de “{ $fact }” cuenta como dos valores distintos.
        [circle] Hay valores de “{ $fact }” que cuentan unos como otros en círculo, entre ellos “{ $value }”.
       *[chain] “{ $value }” de “{ $fact }” cuenta a su vez como otro valor, así que nada puede contar como él.
    }
    .hint = Elija valores de la lista. Cada uno cuenta como un solo otro valor, que cuenta solo como sí mismo.
finding-season-broken =
    { $problem ->
        [reversed] El último día de la regla “{ $id }” es anterior al primero: { $value }.
       *[not-a-year-day] “{ $value }” no es un día del año, así que no se puede leer la temporada de la regla “{ $id }”.
    }
    .hint = Escriba mes y día, como 11-01. Una temporada puede pasar de un año al otro; el primer y el último día con año, no.
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] “{ $value }” no es una clase de regla para el recipiente “{ $id }”.
        [twice] El recipiente “{ $id }” tiene dos reglas de la clase “{ $value }”.
        [limit] El límite “{ $value }” del recipiente “{ $id }” no se puede leer.
       *[unknown-dwelling] “{ $value }” no es un tipo de vivienda, así que el recipiente “{ $id }” no se usa en ninguna.
    }
    .hint = Elija de la lista, junte los dos textos en una regla o escriba el límite con su unidad: 100 lb, 3 ft, 10%.
finding-comparison-broken =
    { $problem ->
        [unknown-like] No existe la cosa cotidiana “{ $value }” con que comparar “{ $fact }”.
        [other-dimension] “{ $value }” no dice nada de “{ $fact }”: representa otra clase de medida.
        [far] “{ $value }” es más de dos veces mayor o menor que la medida dada para “{ $fact }”.
       *[unknown-period] “{ $fact }” no se puede contar por “{ $value }”.
    }
    .hint = Elija una de la lista o deje la comparación fuera.

## Maneras de corregir lo hallado

fix-replace = Poner “{ $with }” en lugar de “{ $value }”
fix-choose = Elegir “{ $with }”
fix-remove = Quitar “{ $value }”
fix-replace-fact = Comparar “{ $with }” en lugar de “{ $fact }”
fix-replace-value = Poner “{ $with }” en lugar de “{ $value }”
fix-remove-value = Quitar “{ $value }” de la condición
fix-replace-item-fact = Poner el dato “{ $with }” en lugar de “{ $fact }”
fix-remove-rule = Quitar la regla “{ $rule }”
fix-go-before = Hacer que “{ $rule }” vaya antes que { $over }
fix-not-before = Hacer que “{ $rule }” ya no vaya antes que “{ $over }”
fix-silence-undecided = Dejar sin decidir qué significa el silencio
fix-silence-ask = Lista abierta: responder “no está en la lista, pregunte” a lo que ninguna regla nombra
fix-silence-closed = Lista cerrada: no recibir lo que ninguna regla nombra
fix-answer-yes = Borrador de regla: “{ $item }” va a “{ $stream }”
fix-answer-no = Borrador de regla: “{ $item }” no se recibe y va a “{ $stream }”
fix-route = Mandar el peligro “{ $class }” al canal “{ $channel }”
fix-send-to = Mandar lo que trata la regla “{ $rule }” al canal “{ $channel }”
fix-collect = Recoger “{ $stream }” también en la zona “{ $zone }”
fix-except-zone = Hacer que la regla “{ $rule }” no valga en la zona “{ $zone }”
fix-own-ids = Dar ids nuevos: { $with }
fix-remove-twins = Quitar las copias que son iguales en todo
fix-swap-dates = Intercambiar el primer día y el último
fix-drop-from = Quitar el primer día
fix-drop-until = Quitar el último día
fix-drop-season = Quitar la temporada
fix-swap-position = Intercambiar latitud y longitud
fix-add-language = Publicar también en “{ $language }”
fix-remove-empty = Quitar los grupos vacíos
fix-remove-unused = Quitar “{ $id }”
fix-drop-counting = Que nada cuente como “{ $value }” en “{ $fact }”
fix-clean-text = Quitarlo del texto
mend-title = Maneras de corregirlo
mend-done = Hecho: { $fix }. Se puede deshacer.
mend-gone = No se cambió nada: el programa ya no está como cuando se ofreció esto.
