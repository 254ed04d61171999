### Ready-made sentences of answers: cautions, steps, reasons; and the names of kinds of things.
### Steps are told to one person, reasons are about "it".

## Cautions, one for each hazard class. They say what is common everywhere and defer to local
## rules; local procedure comes from the program, approved by a named person.

caution-local = Deciden las reglas locales y el personal del lugar.
caution-battery-lithium = Las baterías de litio pueden incendiarse. Nunca las ponga en ningún contenedor ni cubo, ni los aparatos que las llevan. Cubra con cinta las puntas de metal de las sueltas o ponga cada una en su bolsa. No las aplaste ni abra. { caution-local }
caution-battery-household = Las pilas pueden derramarse o causar un incendio. Nunca las ponga en ningún contenedor ni cubo. Cubra las puntas con cinta y guárdelas separadas. { caution-local }
caution-battery-lead-acid = Esta batería tiene ácido que quema y plomo que envenena. Manténgala de pie y no la abra. Nunca la ponga en ningún contenedor ni cubo. { caution-local }
caution-sharps = Las agujas y lancetas pueden herir e infectar a quienes clasifican. Nunca las ponga sueltas en ningún contenedor ni cubo. Échelas enseguida en un recipiente fuerte que no se pueda perforar, con tapa firme. Nunca meta la mano en un contenedor para sacar una. { caution-local }
caution-medicine = Guarde los medicamentos lejos de niños y mascotas. Antes que nada, llévelos a un lugar que los reciba. No los eche al inodoro, salvo que la etiqueta lo diga. { caution-local }
caution-pressurised = Puede reventar si se aplasta, se perfora o se calienta, aunque parezca vacío. Nunca lo ponga en ningún contenedor ni cubo. { caution-local }
caution-flammable = Se incendia con facilidad. Manténgalo cerrado, lejos del calor y las chispas. Nunca lo ponga en ningún contenedor ni cubo ni lo derrame. { caution-local }
caution-toxic = Es venenoso. Déjelo en su propio envase con la etiqueta. Nunca lo ponga en ningún contenedor ni cubo, no lo derrame ni lo mezcle con nada. { caution-local }
caution-corrosive = Quema la piel y los ojos. Manténgalo de pie en su propio envase. Nunca lo ponga en ningún contenedor ni cubo ni lo mezcle con nada. { caution-local }
caution-mercury = Contiene mercurio, que envenena. No lo rompa. Nunca lo ponga en ningún contenedor ni cubo. Si se rompe, aleje a las personas y ventile el cuarto. { caution-local }
caution-oil = Contamina el agua. Guárdelo en un envase cerrado. Nunca lo derrame, no lo ponga en ningún contenedor ni cubo ni lo mezcle con nada. { caution-local }
caution-explosive = No lo toque ni lo mueva. Aleje a las personas y llame a la autoridad que se indica aquí. Si hay peligro, llame al número de emergencias. { caution-local }
caution-radioactive = No lo abra ni lo rompa. Nunca lo ponga en ningún contenedor ni cubo. Llame a la autoridad que se indica aquí y pregunte qué hacer. { caution-local }

## Standard preparation steps

prep-empty = Vacíelo.
prep-rinse = Enjuáguelo rápido. No tiene que quedar perfecto.
prep-dry = Déjelo secar.
prep-scrape = Raspe los restos de comida.
prep-flatten = Aplánelo.
prep-cut-down = Córtelo para que quepa.
prep-bundle = Átelo en un paquete.
prep-loose = Échelo suelto, sin bolsa.
prep-cap-on = Deje la tapa puesta.
prep-cap-off = Quite la tapa.
prep-lid-off = Quite la tapa grande.
prep-lid-inside-can = Meta la tapa en la lata y apriete la lata para cerrarla.
prep-label-stays = La etiqueta puede quedarse.
prep-sleeve-off = Quite la funda de plástico.
prep-pump-off = Quite la bomba.
prep-window-stays = La ventana de plástico puede quedarse.
prep-staples-stay = Las grapas pueden quedarse.
prep-remove-food-liner = Saque la bolsa o el forro.
prep-tear-off-clean-half = Separe la parte limpia. Solo esa parte va aquí.
prep-crush = Aplástelo para ahorrar espacio.
prep-do-not-crush = No lo aplaste.
prep-do-not-flatten = No lo aplane.
prep-do-not-nest = No meta uno dentro de otro.
prep-scrunch-foil = Haga una bola de aluminio del tamaño de un puño.
prep-paper-bag = Póngalo en una bolsa de papel y ciérrela.
prep-clear-bag = Póngalo en una bolsa transparente.
prep-tape-terminals = Cubra las puntas de metal con cinta.
prep-keep-upright = Manténgalo de pie.
prep-puncture-proof = Póngalo en un recipiente fuerte que no se pueda perforar.
prep-original-container = Déjelo en su envase original con la etiqueta.
prep-do-not-mix = No lo mezcle con nada.
prep-do-not-puncture = No lo perfore.
prep-puncture = Perfórelo cuando ya no salga nada.
prep-wrap-broken = Envuelva los pedazos rotos para que nadie se corte.
prep-remove-battery = Saque la batería si sale con facilidad. Va a otro lugar.
prep-wipe-data = Borre antes sus datos.
prep-take-apart = Desármelo: cada material va por separado.
prep-no-bags = No use ninguna bolsa.
prep-no-plastic-bags = No use bolsas de plástico.
prep-cool-ash = Deje enfriar la ceniza varios días, hasta que esté fría por dentro.
prep-double-bag = Use dos bolsas, una dentro de la otra.
prep-label-contents = Escriba encima qué contiene.
prep-fits-lid-shut = Debe caber con la tapa cerrada.
prep-check-fluid = Revise que no quede líquido adentro.
prep-pair-and-tie = Ate los pares juntos.
prep-clean-and-usable = Solo si está limpio y todavía sirve.

## Standard reasons

reason-sells = Hay fábricas que lo compran y hacen cosas nuevas con él.
reason-composts = Se convierte en composta.
reason-no-buyer = Aquí nadie compra este material, así que no se puede reciclar.
reason-too-small = Es tan pequeño que se cae entre las máquinas que clasifican.
reason-too-large = Es demasiado grande para el contenedor o las máquinas.
reason-tangles = Se enreda en las máquinas y las detiene.
reason-wraps-screens = El plástico delgado se enrolla en las máquinas y detiene la planta.
reason-bagged-unseen = Nadie ve lo que hay en una bolsa cerrada, así que se tira sin abrir.
reason-soiled = La comida y la grasa echan a perder el material.
reason-contents-spoil = Lo que queda adentro ensucia todo lo demás.
reason-mixed-materials = Sus materiales están pegados y no se pueden separar.
reason-wrong-glass = Este vidrio se funde de otra manera que las botellas y frascos.
reason-breaks-unsafe = Se rompe y corta a quienes clasifican.
reason-not-packaging = Aquí solo se reciben envases.
reason-hazard = Es peligroso en el contenedor, en el camión y en la planta.
reason-handled-apart = Se maneja aparte de lo demás.
reason-reusable = A alguien todavía le sirve.
reason-store-collects = Las tiendas lo reciben.
reason-contaminates-compost = Echaría a perder la composta.
reason-not-named = La lista no lo nombra.
reason-not-listed = Nadie lo ha decidido todavía. Es mejor preguntar que adivinar.
reason-too-heavy = Pesa demasiado para levantarlo.
reason-number-is-not-shape = El número solo no decide: también cuenta la forma.
reason-black-unseen = Las máquinas no pueden ver el plástico negro.
reason-burns = Puede causar un incendio.
reason-special-trip = Tiene su propia recolección o su propio lugar.
reason-law = Lo manda la ley.
reason-not-collected = Aquí no se recoge.

## Tiers of rules, in the order in which they are looked at

tier-safety = Seguridad
tier-plant = Planta de clasificación
tier-program = Este programa
tier-material = Material
tier-default = Todo lo demás

## Categories to browse by

category-plastic-packaging = Envases de plástico
category-paper-cardboard = Papel y cartón
category-glass = Vidrio
category-metal = Metal
category-food-drink-cartons = Cartones de alimentos y bebidas
category-food-garden = Comida y jardín
category-film-bags = Bolsas y plástico delgado
category-batteries-electronics = Baterías y electrónica
category-hazardous = Pintura, químicos, gas
category-medical = Medicinas y agujas
category-textiles = Ropa y zapatos
category-household-goods = Cosas de la casa
category-building = Construcción y remodelación
category-bathroom = Baño

## Parts of an item that may go elsewhere

part-lid = La tapa
part-cap = El tapón
part-pump = La bomba
part-sleeve = La funda
part-liner = El forro
part-straw = El popote o pajilla
part-filter = El filtro
part-battery = La batería
part-cord = El cable
part-shade = La pantalla
part-contents = Lo que hay adentro
part-bag = La bolsa
part-handle = El asa
part-ring = El aro

## Reglas sobre un contenedor: se muestran donde una respuesta lo nombra. $limit es una medida.

container-rule-lid-closed = La tapa debe quedar cerrada.
container-rule-weight = Lleno, no debe pesar más de { $limit }.
container-rule-distance = Deje { $limit } libres por cada lado.
container-rule-side-waste = Nada al lado ni encima.
container-rule-share-of-load = Lo que no corresponde puede ser { $limit } de una carga como máximo.
container-rule-liners = Puede forrarse con una bolsa.
container-rule-sacks = Solo los sacos que se entregan.
container-rule-registration = Inscríbase primero.
container-rule-refusals = Si hay algo equivocado, se deja en su lugar con un aviso.

## Adónde la ley no permite llevar algo. $place es un contenedor o una corriente.

answer-banned = La ley no lo permite en: { $place }.
