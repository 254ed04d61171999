### La línea de órdenes: su ayuda, lo que dice al terminar y lo que dice cuando algo está mal.
### Las órdenes, las opciones y las palabras en mayúsculas no se traducen.

## Ayuda

cli-help =
    lidleaf COMMAND [OPTIONS]

      check PROGRAM          muestra lo que está mal en un programa
      answer PROGRAM ITEM    responde sobre un objeto como respondería a un residente
      print PROGRAM          hace una etiqueta de tapa o una postal en PDF para imprenta
      batch PROGRAM…         hace muchas hojas de muchos programas de una vez
      publish [PROGRAM]      escribe la guía como carpeta para cualquier servidor web
      serve FOLDER           muestra una carpeta publicada en una dirección de este equipo
      compare BEFORE AFTER   muestra cada respuesta que cambia de un programa a otro
      demo                   escribe el programa de muestra
      schema                 escribe el esquema JSON de los archivos de programa

    lidleaf help COMMAND, o lidleaf COMMAND --help, dice más.

    Códigos de salida:
      0  hecho; puede haber advertencias
      1  el programa, o una hoja hecha con él, tiene errores; no se escribió nada
      2  no se entendió la orden
      3  falta un archivo, o no es lo que debería ser
      4  no se pudo escribir un archivo, o no se pudo abrir una dirección
      5  el objeto, la zona o la corriente que se pide no existe
      6  detenido a petición; lo terminado se conserva
cli-help-check =
    lidleaf check PROGRAM [--catalog FILE] [--fix NUMBER --out FILE]

    Muestra todo lo hallado en un programa: primero los errores, luego las advertencias y los
    avisos, cada uno con un ejemplo y lo que hay que hacer. Termina con el código 1 si hay errores.

    Con cada cosa se muestran maneras de corregirla, cada una con un número como 2.1. --fix 2.1
    aplica esa manera, escribe el programa cambiado en el archivo que indica --out y muestra lo
    que se halla en él. El programa que se leyó queda como estaba.
cli-help-answer =
    lidleaf answer PROGRAM ITEM [--fact FACT=VALUE]… [--zone ZONE] [--on YYYY-MM-DD]

    Responde sobre un objeto, por su id o por su nombre; el nombre puede tener faltas. Cuando la
    respuesta depende de algo, se muestra la pregunta siguiente con la opción --fact que la
    contesta. --fact FACT=? significa que el residente no puede saberlo. El día es hoy, salvo que
    --on indique otro.
cli-help-print =
    lidleaf print PROGRAM --sheet SHEET [OPTIONS]

      --sheet lid        una etiqueta para la tapa del carrito
      --sheet sticker    una etiqueta redonda con un mensaje
      --sheet sign       un letrero para contenedores compartidos, que se lee de más lejos
      --sheet postcard   una tarjeta para correo, dos caras
      --sheet self-mailer  una hoja carta o A4 que se dobla y se envía
      --sheet handout    una hoja carta o A4 para entregar, una cara o dos
      --stream STREAM    la corriente de la que trata
      --zone ZONE        solo para una zona de servicio
      --languages en,es  en estos idiomas, de uno a cuatro
      --out PLACE        una carpeta, o el nombre de un archivo
      --date YYYY-MM-DD  la fecha del trabajo
      --register         anotar la hoja en el registro de hojas impresas del programa
      --copies N         cuántos ejemplares, para el registro y la orden de trabajo; o en=400,es=200
      --printed YYYY-MM-DD  el día de impresión, para el registro; si no, la fecha del trabajo
      --size SIZE        el tamaño final: 8x12in, a4, "200 x 300 mm", o un diámetro, 115mm
      --corner 6mm       el radio de las esquinas; 0 si son rectas
      --fold half        cómo se dobla la hoja para correo: half (en dos) o thirds (en tres)
      --item ITEM        el artículo del que trata la etiqueta redonda; el código lo abre
      --distance 2m      desde dónde se lee; fija la letra más pequeña
      --qr-level H       el daño que debe soportar el código: M, Q o H
      --die-line         dibujar la línea de corte de la etiqueta, en tinta directa
      --printers-mark    dejar sitio para la marca del impresor
      --stock NAME       en qué se imprime, para la orden de trabajo
      --thickness 0.3mm  qué grosor tiene; el correo quiere saberlo
      --no-places        sin la lista de lugares
      --words 6          cuántas palabras puede tener una línea, en cada idioma de la hoja
      --press 13x19in    varias en un pliego: 11x17in, 12x18in, 13x19in, sra3, o escrito
      --gutter 8mm       el espacio entre ellas
      --up N             cuántas como mucho
      --work-and-turn    cara y dorso en una plancha
      --alone            un archivo por idioma, no uno para todos
      --no-ticket        sin la orden de trabajo
      --for press        un archivo para una imprenta (PDF/X-4); es lo que se hace si no se pide otro
      --for web          un archivo para leer en pantalla y en voz alta (PDF/UA-1), sin marcas ni sangrado
      --profile FILE     el perfil de salida CMYK (.icc) que envió la imprenta
      --ink-limit N      la máxima tinta que admite su papel, en porcentaje: 300 si no se indica

    Hace una hoja en uno a cuatro idiomas como PDF para imprenta, con una orden de trabajo en un
    archivo propio, y muestra lo que halló la revisión previa. Si hay un error no se escribe nada. El mismo programa y la misma fecha dan los mismos
    bytes. Si no se indican, la corriente es la de reciclaje, los idiomas son los tres primeros
    del programa, la carpeta es la actual y la fecha es hoy.
cli-help-batch =
    lidleaf batch PROGRAM… --sheet SHEETS --out FOLDER [OPTIONS]

      --sheet lid,postcard   estas hojas, o all (todas)
      --stream STREAMS       las corrientes de que tratan, o all (todas)
      --zone ZONE            para una sola zona de servicio
      --languages SET        un grupo de idiomas; se repite por cada grupo
          en                 en un idioma
          en,es              en estos juntos
          each               en cada idioma de un programa por separado
          together           en los tres primeros idiomas de un programa en una hoja
      --out FOLDER           la carpeta que se llena; dentro, una carpeta para cada programa
      --date YYYY-MM-DD      la fecha de los trabajos
      --hands N              cuántas hojas se hacen a la vez; si no, tantas como núcleos
      --again                hacer también lo que ya está hecho
      --for press            archivos para una imprenta (PDF/X-4), como sin --for
      --for web              archivos para leer en pantalla y en voz alta (PDF/UA-1)
      --profile, --ink-limit la condición de la imprenta, como en print
      --tickets              una orden de trabajo junto a cada archivo para imprenta
      --copies N             cuántos ejemplares, para las órdenes de trabajo; o en=400,es=200
      --alone                una hoja para cada idioma de un conjunto
      --size, --press …      cómo se hacen, como en print: todas sus opciones menos --corner

    Hace cada hoja pedida de cada programa. La carpeta guarda en batch.json de qué se hizo cada
    archivo: otra vez se hace solo lo que falta o saldría distinto. La fecha cuenta; sin --date es
    la de hoy, y mañana todo se hace de nuevo.

    Una hoja que falla no detiene las demás; al final se dice por qué falló cada una y qué hacer.
    Cada archivo se escribe entero o no se escribe. Ctrl-C termina en orden: se acaban las hojas
    empezadas, y la misma orden sigue después. Termina con el código 1 si algo falló. En JSON:
    «lidleaf-batch-report» (made, skipped, failed con why y next).
cli-help-publish =
    lidleaf publish [PROGRAM] --out FOLDER [--app FOLDER]

    Escribe la guía y la aplicación como una carpeta de archivos que cualquier servidor web puede
    ofrecer, desde su raíz o desde una carpeta. Un programa con errores se rechaza. Lo que se
    publicó antes en la carpeta permanece hasta que la nueva edición está completa. Sin programa se
    publica el de muestra; la aplicación se toma de dist/app salvo que --app indique otra carpeta.
cli-help-serve =
    lidleaf serve FOLDER [--port N] [--address ADDRESS]

    Muestra una carpeta publicada en http://127.0.0.1:8080/, o en el puerto y la dirección que se
    indiquen, hasta que se detiene. El puerto 0 toma cualquiera que esté libre. Sirve para ver una
    guía, no para el público.
cli-help-compare =
    lidleaf compare BEFORE AFTER [--on YYYY-MM-DD] [--notice] [--language TAG] [--out FILE]
    lidleaf compare PROGRAM PROGRAM PROGRAM… [--out FILE]

      --on YYYY-MM-DD  como están los dos ese día, en lugar de todos los días
      --notice         un aviso de cambios para una carta, en grupos y con el contacto
      --language TAG   el idioma en que se escribe
      --out FILE       un archivo; si termina en .md lleva las marcas de Markdown

    Dos programas: enumera cada objeto cuyo veredicto, destino, preparación, motivo o advertencia
    difiere, exactamente con qué respuestas y desde qué día; después, las líneas de hojas impresas
    del registro que dejan de ser ciertas. De tres a cincuenta programas: lo que es cierto en
    todos, quién difiere en cada otro objeto y los consejos que se contradicen.

    En JSON: “lidleaf-changes” (changes, asked, untrue), “lidleaf-notice” (groups, untrue, text)
    o “lidleaf-regional” (programs, agreed, differing, contradictory). En todos, “when” es una
    lista de alternativas, cada una una lista de datos con los valores, que valen a la vez.
cli-help-schema =
    lidleaf schema [--out FILE]

    Escribe el esquema JSON de los archivos de programa.
cli-help-demo =
    lidleaf demo [--town TOWN] [--out FILE]

    Escribe el programa de demostración, un condado enteramente inventado, para empezar; con --town
    uno de sus pueblos miembros: thrushwick, kettlebrae, larkenby o dunnockford.
cli-help-common =
    Todas las órdenes aceptan además:
      --lang TAG      idioma de los mensajes y las respuestas (en, es, ar …)
      --json          el resultado en JSON
      --catalog FILE  otro catálogo que el incluido, donde se lee un programa
      --help          este texto
      --version       la versión

## Hecho

cli-error = Error: { $message }
cli-written = Escrito: { $file }
cli-serving = Se ofrece { $folder } en { $url } (Ctrl-C lo detiene)
cli-published =
    { $files ->
        [one] Edición { $edition } publicada en { $folder }: { $files } archivo, { $size }.
       *[other] Edición { $edition } publicada en { $folder }: { $files } archivos, { $size }.
    }

## Lo hallado

cli-severity-error = error
cli-severity-warning = advertencia
cli-severity-notice = aviso
cli-finding = { $severity }: { $message }
cli-place = en { $kind } «{ $id }»
cli-place-field = en { $kind } «{ $id }», campo «{ $field }»
cli-place-program = en el campo «{ $field }» del programa
cli-witness = por ejemplo { $item }
cli-witness-answers = por ejemplo { $item } ({ $answers })
cli-hint = qué hacer: { $hint }
cli-mend = para corregirlo ({ $number }): { $fix }
cli-mended = Hecho: { $fix }
cli-check-clean = Nada que señalar: el programa se puede publicar.
cli-count-errors =
    { $count ->
        [one] { $count } error
       *[other] { $count } errores
    }
cli-count-warnings =
    { $count ->
        [one] { $count } advertencia
       *[other] { $count } advertencias
    }
cli-count-notices =
    { $count ->
        [one] { $count } aviso
       *[other] { $count } avisos
    }
cli-check-publishable = { $counts }. El programa se puede publicar.
cli-check-errors = { $counts }. El programa no se puede publicar hasta que se corrijan los errores.

## Respuestas

cli-answer-day = El { $day }
cli-answer-where = Dónde: { $place }
cli-answer-also = También se recibe en: { $places }
cli-answer-prepare = Cómo: { $steps }
cli-answer-why = Por qué: { $reason }
cli-answer-caution = Cuidado: { $caution }
cli-answer-rules = Lo decide: { $rules }
cli-answer-temporary = Rige una orden temporal.
cli-answer-site = Lugar más cercano: { $site }, { $address }
cli-answer-assumed = Se supuso, porque no se sabía: { $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = No lo sé

## Hojas

cli-sheet-shortened = línea abreviada: «{ $item }» sola lleva al lugar correcto en el { $percent } de los casos
cli-sheet-left-out = no cupo: { $items }
cli-sheet-hazards-in-brief = no cupieron los lugares que reciben lo peligroso; el código y el teléfono de la hoja llevan a ellos
cli-sheet-refused-in-brief = no cupo a dónde va lo que se queda fuera; el código y el teléfono de la hoja lo dicen
# A sheet was entered into the register of a program file.
cli-registered = Anotado en el registro de { $file } como «{ $id }».
cli-preflight-pass = Revisión previa: nada que corregir.
cli-preflight-warnings =
    { $count ->
        [one] Revisión previa: { $count } advertencia.
       *[other] Revisión previa: { $count } advertencias.
    }
cli-preflight-errors =
    { $count ->
        [one] Revisión previa: { $count } error. No se escribió ningún archivo.
       *[other] Revisión previa: { $count } errores. No se escribió ningún archivo.
    }

## Muchas hojas de una vez

cli-batch-progress = [{ $done }/{ $of }] { $outcome }: { $file }
cli-batch-made = hecha
cli-batch-kept = sin cambios
cli-batch-failed = fallida
cli-batch-failed-one = Falló: { $what }
cli-batch-summary = { $folder }: hechas { $made }, sin cambios { $kept }, fallidas { $failed }, de { $programs ->
        [one] { $programs } programa.
       *[other] { $programs } programas.
    }
cli-batch-warned =
    { $count ->
        [one] { $count } hoja hecha tiene avisos: lidleaf print los muestra.
       *[other] { $count } hojas hechas tienen avisos: lidleaf print los muestra.
    }
cli-batch-stopped = Detenido antes de acabar. La misma orden sigue desde aquí.
cli-batch-notes-lost = Las notas de batch.json no sirven, así que todo se hizo de nuevo.
cli-batch-next-preflight = Corrija el programa, o pida menos idiomas en esta hoja, y repita la misma orden.
cli-batch-crashed = No se pudo hacer la hoja por un error de este programa informático.
cli-batch-next-crashed = Guarde el mensaje de arriba y el archivo del programa, e informe de los dos.
cli-batch-program-errors = El programa { $file } tiene errores ({ $count }) y no se hizo ninguna hoja de él.
    .hint = lidleaf check los muestra y dice qué hacer.
cli-batch-same-id = Estos archivos tienen el mismo identificador, «{ $id }», y sus hojas se llamarían igual: { $files }.
    .hint = Imprímalos en carpetas distintas.
cli-batch-busy = Otra ejecución está llenando la carpeta { $file }.
    .hint = Espere a que termine, o indique otra carpeta con --out.
cli-batch-no-shop = No sirven los tipos de letra o el perfil de imprenta que vienen con el programa: { $detail }
    .hint = Instale el programa de nuevo.

## Comparación

cli-compare-same = Los dos programas responden lo mismo sobre todos los objetos.
cli-compare-count =
    { $count ->
        [one] Cambia { $count } respuesta.
       *[other] Cambian { $count } respuestas.
    }
cli-compare-share = { $percent } de los casos

## Órdenes que no se entienden

cli-usage-command = No existe la orden «{ $command }».
    .hint = lidleaf --help muestra las órdenes.
cli-usage-option = La opción { $option } no es de esta orden.
    .hint = lidleaf help COMMAND muestra sus opciones.
cli-usage-word = Sobra la palabra «{ $word }».
    .hint = Escriba entre comillas los nombres que tienen espacios.
cli-usage-not-text = «{ $word }» no es texto legible.
    .hint = Escriba el valor de la opción en UTF-8.
cli-usage-needs-value = Falta un valor después de la opción { $option }.
    .hint = lidleaf help COMMAND muestra lo que acepta.
cli-usage-no-value = La opción { $option } no lleva valor.
    .hint = Quite el signo igual y lo que sigue.
cli-usage-needs-option = Falta la opción { $option }.
    .hint = lidleaf help COMMAND muestra lo que acepta.
cli-usage-needs-program = Falta el archivo del programa.
    .hint = Escríbalo después de la orden: lidleaf check program.json
cli-usage-needs-item = Hacen falta un archivo de programa y un objeto.
    .hint = Por ejemplo: lidleaf answer program.json "caja de pizza"
cli-usage-needs-two = Hacen falta dos archivos de programa, el de antes y el de después.
    .hint = Por ejemplo: lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = Falta la carpeta que se quiere mostrar.
    .hint = Por ejemplo: lidleaf serve dist/site
cli-usage-fact = «{ $word }» no es un dato y su valor.
    .hint = Escríbalos con un signo igual: --fact resin=1
cli-usage-date = «{ $word }» no es un día.
    .hint = Escriba año, mes y día: 2027-01-31
cli-usage-copies = «{ $word }» no es un número de ejemplares.
    .hint = Escriba un número entero, --copies 400, o uno por idioma, --copies en=400,es=200
cli-usage-for = «{ $word }» no es un uso de una hoja.
    .hint = Escriba --for press, para una imprenta, o --for web, para leer en pantalla y en voz alta.
cli-usage-ink-limit = «{ $word }» no es un límite de tinta.
    .hint = Escriba la suma de las cuatro planchas en porcentaje: --ink-limit 280
cli-usage-press-only = { $option } trata de una imprenta, y --for web no hace archivo para imprenta.
    .hint = Quite una de las dos.
cli-usage-hands = «{ $word }» no es un número de hojas a la vez.
    .hint = Escriba un número entero desde 1: --hands 4
cli-usage-port = «{ $word }» no es un puerto.
    .hint = Escriba un número de 0 a 65535; 0 toma cualquiera que esté libre.
cli-usage-address = «{ $word }» no es una dirección de red.
    .hint = Escriba 127.0.0.1 para este equipo solo, 0.0.0.0 para la red local.
cli-usage-language = No hay mensajes en «{ $word }».
    .hint = Los hay en: { $known }.
cli-usage-sheet = No existe la hoja «{ $word }».
    .hint = Escriba --sheet y uno de estos: lid, sticker, sign, postcard, self-mailer, handout.
cli-usage-fix = «{ $word }» no es el número de una manera de corregir algo.
    .hint = lidleaf check PROGRAM las muestra, por ejemplo 2.1.
cli-usage-other = No se pudo leer la orden: { $detail }.
    .hint = lidleaf --help muestra las órdenes.

## Archivos y direcciones

cli-file-missing = El archivo { $file } no existe.
    .hint = Revise el nombre y la carpeta.
cli-file-unreadable = No se pudo leer el archivo { $file }: { $detail }.
    .hint = Revise que tiene permiso para leerlo y que ningún otro programa lo ocupa.
cli-file-is-folder = { $file } es una carpeta, no un archivo.
    .hint = Indique el archivo que está dentro.
cli-file-not-text = El archivo { $file } no es texto a partir de la línea { $line }.
    .hint = Los archivos de programa son texto en UTF-8. Puede ser otra clase de archivo o estar dañado: use una copia anterior o expórtelo de nuevo.
cli-folder-missing = La carpeta { $file } no existe.
    .hint = Publique antes en ella: lidleaf publish program.json --out FOLDER
cli-folder-unreadable = No se pudo leer la carpeta { $file }: { $detail }.
    .hint = Revise que tiene permiso para leerla.
cli-name-not-text = El nombre de { $file } no es texto legible.
    .hint = Cámbielo.
cli-cannot-write = No se pudo escribir { $file }: { $detail }. Lo que había antes sigue igual.
    .hint = Revise que la carpeta existe, que puede escribir en ella y que hay espacio.
cli-cannot-serve = No se pudo abrir la dirección { $address }: { $detail }.
    .hint = Puede que otro programa la use: indique otro puerto con --port.

## Publicar

cli-app-missing = No hay una aplicación construida en { $file }.
    .hint = Constrúyala con cargo xtask run, o indique su carpeta con --app.
cli-app-list-broken = No se puede leer la lista de archivos de la aplicación, { $file }: { $detail }.
    .hint = Construya la aplicación de nuevo con cargo xtask run.
cli-app-changed = { $file } no está como se construyó.
    .hint = Construya la aplicación de nuevo con cargo xtask run.
cli-out-not-folder = No se puede publicar en { $file }: no es una carpeta con nombre.
    .hint = Indique una carpeta nueva con --out.
cli-out-in-use = La carpeta { $file } contiene otros archivos. Publicar reemplaza la carpeta entera, así que no se cambió nada.
    .hint = Indique una carpeta nueva o vacía con --out.
cli-out-in-app = Las carpetas de la aplicación, { $app }, y de la guía, { $file }, están una dentro de la otra.
    .hint = Indique una carpeta en otro lugar con --out.
cli-publish-refused = El programa tiene errores y no se publicó.
    .hint = Corrija los errores de la lista de arriba; lidleaf check los muestra de nuevo.

## Lo que no está en el programa

cli-unknown-item = No hay ningún objeto llamado «{ $item }».
    .hint = Pruebe con otra palabra, o con su material o su forma.
cli-unknown-fact = «{ $fact }» no es un dato.
    .hint = Los datos son: { $known }.
cli-unknown-value = «{ $value }» no es un valor del dato «{ $fact }».
    .hint = Acepta: { $known }.
cli-unknown-measure = «{ $value }» no es una medida del dato «{ $fact }».
    .hint = Escriba un número y su unidad, como { $known }.
cli-unknown-fix = Nada de lo hallado en este programa tiene una manera de corregirlo con el número { $number }.
    .hint = lidleaf check PROGRAM muestra los números; cambian cuando cambia el programa.
cli-unknown-zone = No existe la zona de servicio «{ $zone }».
    .hint = Las zonas son: { $known }.
cli-unknown-town = No hay ningún pueblo miembro «{ $town }» en la demostración.
    .hint = Los pueblos son: { $known }.
cli-unknown-stream = No existe la corriente «{ $stream }».
    .hint = Las corrientes son: { $known }.
cli-unknown-sheet-language = El programa no se publica en «{ $language }».
    .hint = Se publica en: { $known }.
cli-too-many-languages = Una hoja lleva de uno a cuatro idiomas, no { $count }.
    .hint = Indíquelos con --languages en,es
cli-usage-size = «{ $word }» no es un tamaño.
    .hint = Escriba un nombre, como a4 o letter, o ancho, alto y unidad: 8x12in
cli-usage-length = «{ $word }» no es una longitud.
    .hint = Escriba un número y su unidad: 6mm, 0.25in
cli-usage-fold = «{ $word }» no es una manera de doblar.
    .hint = Escriba --fold half o --fold thirds.
cli-usage-qr-level = «{ $word }» no es un nivel de corrección de errores.
    .hint = Escriba M, Q o H.
cli-usage-words = «{ $word }» no es un número de palabras.
    .hint = Escriba un número entero desde 1, por ejemplo --words 6
cli-usage-up = «{ $word }» no es un número de hojas.
    .hint = Escriba un número entero: --up 4
cli-unknown-sheet-item = No existe el artículo «{ $item }».
    .hint = Indíquelo por su id, como lo muestra lidleaf answer --json.
cli-nothing-against = Nada dice que «{ $item }» quede fuera.
    .hint = La etiqueta redonda advierte: indique algo que se rechaza, o un peligro.
