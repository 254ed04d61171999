### What residents read on their phones. Plain words, short sentences, no jargon.

## Around every screen

page-title = { $program }: qué va en dónde
skip = Ir a la parte principal
back = Atrás
language-label = Idioma
zone-label = Su zona
zone-none = Elija su zona
unreviewed = Ninguna persona ha revisado todavía esta traducción. Si algo le parece raro, léalo en inglés.
decided-edition = Guía: { $edition }
privacy = Lo que usted busca se queda en este teléfono. No se envía ni se cuenta nada.

## Finding an item

search-label = ¿Qué quiere tirar?
search-placeholder = Por ejemplo: caja de pizza
search-count =
    { $count ->
        [0] No se encontró nada
        [one] { $count } objeto encontrado
       *[other] { $count } objetos encontrados
    }
search-nothing = No encontramos nada con ese nombre. Pruebe con una palabra más corta. Si algo no está en la lista, no siempre es un “no”: pregúntenos.
search-long = Es muy largo. Solo se buscaron las primeras { $count } letras.
home-recent = Buscado hace poco
home-common = Lo que más se busca
home-categories = Ver por tipo

## Questions

cannot-tell = No lo sé
questions-left =
    { $count ->
        [one] Como mucho { $count } pregunta más
       *[other] Como mucho { $count } preguntas en total
    }
ruler-title = Medirlo con esta pantalla
ruler-card = Apoye una tarjeta bancaria de pie contra la pantalla. Mueva el control hasta que el dibujo sea tan ancho como la tarjeta.
ruler-use = Ahora ponga el objeto sobre la regla, con un extremo en el 0.
ruler-cards = { $measure }: tarjetas bancarias puestas en fila: { $count }

## Answers

verdict-yes = Sí
verdict-no = No
verdict-elsewhere = Aquí no, va a otro lugar
verdict-unlisted = No está en la lista: pregunte
verdict-undecided = Aún no está decidido: pregunte
verdict-closed = No: no está en la lista
caution-title = Cuidado.
prepare-title = Cómo prepararlo
why-title = Por qué
also-title = También lo reciben en
temporary-order = Ahora rige una norma temporal. Puede cambiar pronto.
assumed-title = Como usted no lo sabía, usamos la respuesta más prudente:
assumed-line = { $fact }: { $value }
ask-contact = ¿Preguntas? { $name }:
decided-title = Qué regla lo decidió
decided-rule = Regla:
decided-acknowledged = Una persona con nombre y cargo aprobó esta excepción a una regla de seguridad.

## Places to take things to

site-more =
    { $count ->
        [one] { $count } lugar más
       *[other] { $count } lugares más
    }
site-locate = Buscar el lugar más cercano
site-no-position = Este teléfono no indicó dónde está.
near-label = Pueblo, zona o código postal
near-find = Buscar ahí
near-found = Lo más cercano a { $place }.
near-unknown = Esta guía no conoce el lugar “{ $place }”. Pruebe con un pueblo, su zona o el nombre de un centro.
site-also-takes = También recibe: { $items }
site-all-items = Todo lo que recibe
site-booking = Haga una cita antes.
site-proof = Lleve un comprobante de que vive aquí.
site-permit = Se necesita un permiso.
site-voucher = Se necesita un vale.
# $container is what residents call it: "blue cart".
container-rules-title = Sobre el contenedor: { $container }
hours-open = Abierto ahora
hours-open-until = Abierto hasta: { $time }
hours-closed = Cerrado ahora
hours-closed-until = Cerrado hasta: { $time }
hours-appointment = Abierto solo con cita
hours-unknown = No se conoce el horario: llame antes
hours-day-time = { $day }, { $time }

## Without a network

offline-fetching = Guardando la guía para que funcione sin internet…
offline-ready = Guardada. La guía funciona sin internet.
offline-now = Está sin conexión. La guía funciona desde este teléfono.
offline-incomplete = Está sin conexión y la guía no se guardó del todo. Pueden faltar partes.
offline-failed = No se pudo guardar la guía. Solo funciona con internet. Inténtelo más tarde.
offline-impossible = Este navegador no puede guardar la guía. Solo funciona con internet.
update-ready = Hay una guía más nueva.
update-now = Usarla ahora
offline-lost = El teléfono borró la guía guardada. Guardándola de nuevo…
offline-forgetful = Este navegador no deja guardar nada a la guía. Solo funciona con internet y olvida su idioma y su zona.
update-failed = Una guía más nueva no llegó completa. Esta sigue funcionando y el teléfono volverá a intentarlo.

## When something is not there

unknown-item = En esta guía no hay ningún objeto “{ $id }”. Búsquelo por su nombre.
unknown-category = En esta guía no hay ningún grupo “{ $id }”. Elija uno en la primera página.
unknown-address = No existe la página “{ $address }”. Vaya a la primera página.
unknown-language = Esta guía aún no está en “{ $language }”. Elija otro idioma.
language-broken = Las palabras en “{ $language }” no llegaron completas. Compruebe la conexión y elija el idioma otra vez.
unknown-zone = En esta guía no hay ninguna zona “{ $id }”. Elija la suya al pie de la página.
clock-wrong = Este teléfono dice que hoy es { $date }. No puede ser. No se sabe qué está abierto ahora, y las reglas que cambian con la temporada pueden fallar. Ajuste la fecha.
