### What can be known about a thing: names, questions, answers. Values have to make sense alone,
### as a button and in "You could not tell, so we took: Closure: on".

## Ranges of a measure or of dates, as answers to choose from

range-at-least = { $value } o más
range-over = más de { $value }
range-at-most = { $value } o menos
range-under = menos de { $value }
range-between = de { $low } a { $high }
range-any = cualquiera

## A fact and its value, an item and its part. Examples: "Resin mark: 5", "Glass jar: the lid"

fact-value = { $fact }: { $value }
item-part = { $item }: { $part }

## Who asks, where and when

fact-day = Día
ask-day = ¿Qué día?

## Época del año

fact-time-of-year = Época del año
ask-time-of-year = ¿En qué día del año?

## Service zone

fact-zone = Zona
ask-zone = ¿Dónde vive?
    .hint = Las reglas cambian según la zona.

## Dwelling

fact-dwelling = Vivienda
ask-dwelling = ¿En qué tipo de vivienda vive?
value-dwelling-house = Casa
value-dwelling-small-building = Edificio pequeño
value-dwelling-large-building = Edificio grande de apartamentos

## Where it comes from

fact-origin = Procedencia
ask-origin = ¿De dónde viene?
value-origin-household = Un hogar
value-origin-business = Un negocio

## Proof of residency

fact-proof = Comprobante de domicilio
ask-proof = ¿Puede mostrar que vive aquí?
    .hint = Sirve un recibo o una licencia con su dirección.
value-proof-yes = Tengo comprobante
value-proof-no = No tengo comprobante

## Servicio adicional pagado

fact-add-on = Servicio adicional
ask-add-on = ¿Paga usted el servicio adicional de recogida?
    .hint = Si lo paga, aparece en su factura.
value-add-on-yes = Sí lo pago
value-add-on-no = No lo pago

## Quantity

fact-quantity = Cantidad
ask-quantity = ¿Cuántos tiene?

## What it is

fact-item = Objeto
ask-item = ¿Qué es?

## Category

fact-category = Tipo
ask-category = ¿Qué tipo de objeto es?

## Parte de un objeto

fact-part = Parte
ask-part = ¿Qué parte?
value-part-whole = El objeto entero
value-part-lid = Tapa
value-part-cap = Tapón
value-part-pump = Bomba
value-part-sleeve = Funda
value-part-liner = Forro
value-part-straw = Popote o pajilla
value-part-filter = Filtro
value-part-battery = Pila o batería
value-part-cord = Cable
value-part-shade = Pantalla de lámpara
value-part-contents = Contenido
value-part-bag = Bolsa
value-part-handle = Asa
value-part-ring = Anillo

## Hazard class

fact-hazard = Peligro
ask-hazard = ¿Qué peligro tiene?
    .hint = Busque palabras o señales de peligro en la etiqueta. Si tiene dudas, diga que no lo sabe.
value-hazard-none = Ningún peligro
value-hazard-battery-lithium = Batería de litio (recargable)
value-hazard-battery-household = Pila de uso doméstico
value-hazard-battery-lead-acid = Batería de auto (plomo y ácido)
value-hazard-sharps = Aguja o lanceta
value-hazard-medicine = Medicamento
value-hazard-pressurised = Lata o cilindro a presión
value-hazard-flammable = Líquido o gas inflamable
value-hazard-toxic = Veneno
value-hazard-corrosive = Corrosivo (quema la piel)
value-hazard-mercury = Objeto con mercurio
value-hazard-oil = Aceite de motor
value-hazard-explosive = Explosivo
value-hazard-radioactive = Objeto radiactivo

## Material

fact-material = Material
ask-material = ¿De qué está hecho?
    .hint = El material que más tiene.
value-material-plastic = Plástico
value-material-bioplastic = Plástico de origen vegetal
value-material-cardboard = Cartón corrugado
value-material-paperboard = Cartulina o cartón delgado
value-material-paper = Papel
value-material-carton = Cartón de bebidas
value-material-steel = Acero u hojalata
value-material-aluminium = Aluminio
value-material-metal = Otro metal
value-material-glass = Vidrio
value-material-ceramic = Cerámica
value-material-wood = Madera
value-material-cork = Corcho
value-material-textile = Tela
value-material-leather = Cuero
value-material-rubber = Goma o caucho
value-material-food = Comida
value-material-plant = Hojas o ramas
value-material-wax = Cera
value-material-stone = Piedra o concreto
value-material-electronics = Electrónica
value-material-chemical = Producto químico
value-material-mixed = Varios materiales

## Form

fact-form = Forma
ask-form = ¿Qué forma tiene?
value-form-bottle = Botella
value-form-jug = Bidón o galón con asa
value-form-jar = Frasco
value-form-tub = Tarrina o pote
value-form-cup = Vaso
value-form-lid = Tapa
value-form-clamshell = Caja con bisagra
value-form-tray = Bandeja
value-form-bag = Bolsa
value-form-film = Película o envoltura
value-form-pouch = Bolsa con pie
value-form-tube = Tubo
value-form-can = Lata
value-form-spray-can = Lata de aerosol
value-form-cylinder = Cilindro de gas
value-form-box = Caja
value-form-carton = Cartón de bebida
value-form-canister = Bote cilíndrico
value-form-sheet = Hoja
value-form-newspaper = Periódico o revista
value-form-book = Libro
value-form-envelope = Sobre
value-form-roll = Rollo
value-form-foil = Papel de aluminio
value-form-pan = Sartén u olla
value-form-foam = Espuma plástica
value-form-pod = Cápsula de café
value-form-cutlery = Tenedor, cuchillo o cuchara
value-form-straw = Popote o pajilla
value-form-pot = Maceta
value-form-bucket = Cubeta
value-form-toy = Juguete
value-form-rope = Cuerda, manguera o cable
value-form-clothing = Ropa
value-form-shoe = Zapato
value-form-furniture = Mueble
value-form-mattress = Colchón
value-form-appliance = Electrodoméstico grande
value-form-device = Aparato electrónico
value-form-lamp = Foco o tubo de luz
value-form-battery = Batería o pila
value-form-needle = Aguja
value-form-pill = Pastillas o medicina
value-form-tool = Herramienta
value-form-window = Ventana o espejo
value-form-dishes = Platos y vasos
value-form-tyre = Llanta
value-form-timber = Madera de construcción
value-form-rubble = Escombros
value-form-food = Comida
value-form-plant = Restos de jardín
value-form-liquid = Líquido
value-form-ash = Ceniza
value-form-sanitary = Pañal o artículo de higiene
value-form-other = Otra forma

## Packaging or product

fact-object = Uso
ask-object = ¿Venía algo envasado en él?
value-object-packaging = Es un envase
value-object-product = Es un objeto en sí

## Battery inside

fact-battery = Batería
ask-battery = ¿Tiene una batería adentro?
    .hint = Si se enciende, se mueve, suena o se carga, tiene una.
value-battery-yes = Con batería
value-battery-no = Sin batería

## Resin mark

fact-resin = Número en el triángulo
ask-resin = ¿Qué número hay en el triángulo pequeño?
    .hint = Mire el fondo. El número indica el tipo de plástico. No promete que se recicle.
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = Sin número
value-resin-unreadable = No se puede leer

## Marca de depósito

fact-deposit-mark = Marca de depósito
ask-deposit-mark = ¿Tiene marca de depósito?
    .hint = Busque junto al código de barras una marca o una cantidad de dinero.
value-deposit-mark-yes = Con marca de depósito
value-deposit-mark-no = Sin marca de depósito

## Color

fact-colour = Color
ask-colour = ¿De qué color es?
value-colour-clear = Transparente
value-colour-frosted = Esmerilado (deja pasar luz)
value-colour-white = Blanco
value-colour-green = Verde
value-colour-brown = Café o marrón
value-colour-blue = Azul
value-colour-black = Negro
value-colour-other = Otro color

## Coating

fact-coating = Recubrimiento
ask-coating = ¿Está recubierto con algo?
    .hint = Rompa una esquina: si hay una película fina, es plástico. Raspe: la cera se desprende.
value-coating-none = Sin recubrimiento
value-coating-plastic = Plástico
value-coating-wax = Cera
value-coating-foil = Lámina metálica
value-coating-glitter = Brillantina
value-coating-wet-strength = Hecho para resistir mojado

## Layers

fact-layers = Capas
ask-layers = ¿Tiene varias capas pegadas?
value-layers-one = Una capa
value-layers-many = Varias capas

## Longest side

fact-longest-side = Lado más largo
ask-longest-side = ¿Cuánto mide de largo?
    .hint = Mida su lado más largo.

## Middle side

fact-middle-side = Segundo lado más largo
ask-middle-side = ¿Cuánto mide de ancho?
    .hint = Mida el segundo lado más largo.

## Shortest side

fact-shortest-side = Lado más corto
ask-shortest-side = ¿Cuánto mide de grueso?
    .hint = Mida su lado más corto.

## Length of shredded strips

fact-strip-length = Largo de las tiras
ask-strip-length = ¿Qué largo tienen las tiras?

## Capacity

fact-capacity = Capacidad
ask-capacity = ¿Cuánto le cabe?
    .hint = Busque la cantidad en la etiqueta.

## Weight

fact-mass = Peso
ask-mass = ¿Cuánto pesa?

## Cabe en el contenedor

fact-fits-container = Cabe en el contenedor
ask-fits-container = ¿Cabe en el contenedor con la tapa cerrada?
value-fits-container-yes = Cabe con la tapa cerrada
value-fits-container-no = No cabe

## Contents

fact-contents = Contenido
ask-contents = ¿Queda algo adentro?
    .hint = Vacío quiere decir que no gotea ni cae nada.
value-contents-empty = Vacío
value-contents-traces = Queda un poco pegado
value-contents-dried = Seco por dentro
value-contents-part-full = Todavía tiene contenido
value-contents-full = Lleno

## Former contents

fact-former-contents = Lo que contenía
ask-former-contents = ¿Qué contenía?
value-former-contents-none = Nada
value-former-contents-food = Comida
value-former-contents-drink = Una bebida
value-former-contents-personal-care = Jabón, champú o crema
value-former-contents-cleaner = Limpiador
value-former-contents-oil = Aceite de motor
value-former-contents-paint = Pintura
value-former-contents-pesticide = Veneno para insectos o hierbas
value-former-contents-solvent = Solvente o combustible
value-former-contents-medicine = Medicina

## Soiling

fact-soiling = Limpio o sucio
ask-soiling = ¿Está limpio?
value-soiling-clean = Limpio
value-soiling-grease = Con grasa
value-soiling-food = Con comida pegada

## Wet

fact-wet = Mojado
ask-wet = ¿Está mojado?
value-wet-yes = Mojado
value-wet-no = Seco

## Bagged

fact-bagged = En bolsa
ask-bagged = ¿Está en una bolsa?
value-bagged-loose = Suelto, sin bolsa
value-bagged-plastic-bag = En bolsa de plástico
value-bagged-clear-bag = En bolsa transparente
value-bagged-paper-bag = En bolsa de papel

## Flattened

fact-flattened = Aplanado
ask-flattened = ¿Está aplanado?
value-flattened-yes = Aplanado
value-flattened-no = Sin aplanar

## Bundled

fact-bundled = Atado
ask-bundled = ¿Está atado?
value-bundled-yes = Atado
value-bundled-no = Sin atar

## Shredded

fact-shredded = Triturado
ask-shredded = ¿Está triturado?
value-shredded-yes = Triturado
value-shredded-no = Sin triturar

## Broken

fact-broken = Roto
ask-broken = ¿Está roto o gastado?
value-broken-yes = Roto
value-broken-no = Entero

## Compostable

fact-compostable = Compostable
ask-compostable = ¿Dice que se puede compostar?
    .hint = Busque las palabras “certified compostable” (compostable certificado) y un sello.
value-compostable-no = No
value-compostable-claimed = Lo dice, pero sin sello
value-compostable-certified = Certificado, con sello

## Closure

fact-closure = Tapa
ask-closure = ¿Tiene la tapa puesta?
value-closure-none = No tiene tapa
value-closure-on = Puesta
value-closure-off = Quitada

## Label

fact-label = Etiqueta
ask-label = ¿Qué tipo de etiqueta tiene?
value-label-none = Sin etiqueta
value-label-paper = Etiqueta de papel
value-label-film = Etiqueta de plástico
value-label-sleeve = Funda de plástico completa

## Pump

fact-pump = Bomba o atomizador
ask-pump = ¿Tiene bomba o atomizador?
value-pump-yes = Con bomba
value-pump-no = Sin bomba

## Metal fitting

fact-fitting = Pieza de metal
ask-fitting = ¿Tiene una pieza pequeña de metal?
value-fitting-yes = Con pieza de metal
value-fitting-no = Sin pieza de metal

## Window

fact-window = Ventana de plástico
ask-window = ¿Tiene una ventana de plástico?
value-window-yes = Con ventana
value-window-no = Sin ventana

## Liner

fact-liner = Forro interior
ask-liner = ¿Tiene un forro adentro?
value-liner-yes = Con forro
value-liner-no = Sin forro

## Cord

fact-cord = Cable
ask-cord = ¿Tiene cable?
value-cord-yes = Con cable
value-cord-no = Sin cable

## Lo que se dice junto a un límite. Ejemplos: "2 pulgadas (más o menos una pelota de golf)", "4 por visita".

measure-like = { $measure } (más o menos { $thing })
measure-per = { $measure } { $period }
like-credit-card = el largo de una tarjeta bancaria
like-golf-ball = una pelota de golf
like-tennis-ball = una pelota de tenis
like-basketball = un balón de baloncesto
like-sheet-of-paper = el largo de una hoja de papel
like-yogurt-cup = un yogur pequeño
like-milk-jug = una jarra de leche
like-bucket = una cubeta grande
like-brick = un ladrillo
per-visit = por visita
per-day = por día
per-week = por semana
per-month = por mes
per-year = por año
