# Names of catalog items. ".also" holds other words people search by, separated by bars:
# synonyms, regional words and common misspellings of this language, not translations.
# Not yet reviewed by a native speaker.

## plastic-packaging

item-water-bottle = Botella de agua o refresco
    .also = botella de plástico | botella de gaseosa | envase PET | botella de soda | botela
item-milk-jug = Galón de leche
    .also = bidón de leche | garrafa de leche | botella de leche de plástico | jarra de leche
item-detergent-bottle = Botella de detergente
    .also = envase de suavizante | bote de jabón líquido | botella de lavandina vacía | galón de detergente
item-shampoo-bottle = Botella de champú
    .also = bote de champú | envase de acondicionador | botella de gel de ducha | shampoo | frasco de crema
item-soap-pump-bottle = Botella de jabón con bomba
    .also = dispensador de jabón | dosificador | jabonera con bomba | jabón de manos
item-spray-bottle = Botella con atomizador
    .also = botella de limpiador | pistola pulverizadora | limpiacristales | rociador | limpiavidrios
item-ketchup-bottle = Botella de kétchup o salsa
    .also = bote de mayonesa | frasco de mostaza | botella de aderezo | catsup | envase de salsa
item-peanut-butter-jar = Tarro de crema de cacahuate
    .also = frasco de mantequilla de maní | bote de crema de cacahuete | tarro de plástico | frasco plástico
item-cooking-oil-bottle = Botella de aceite de cocina
    .also = botella de aceite vegetal | envase de aceite | bote de aceite de girasol
item-sleeved-bottle = Botella con funda de plástico
    .also = botella con etiqueta envolvente | funda retráctil | botella de yogur líquido | etiqueta completa
item-yogurt-tub = Tarrina de yogur o margarina
    .also = bote de yogur | envase de mantequilla | pote de yogurt | tarro de margarina | tina de crema
item-yogurt-cup = Vasito de yogur
    .also = yogur individual | yogurt pequeño | vasito de gelatina | natilla | potecito de yogur
item-plastic-lid = Tapa de plástico de envase
    .also = tapa de margarina | tapadera | tapa de tarrina | tapa de pote
item-plastic-cap = Tapón de plástico suelto
    .also = tapa de botella suelta | taparrosca | tapita | corcholata de plástico | tapon
item-clamshell = Caja transparente con bisagra
    .also = caja de fresas | envase de ensalada | estuche de fruta | almeja de plástico | caja de frutillas
item-takeout-tub = Envase de comida para llevar
    .also = táper desechable | recipiente para llevar | caja de delivery
item-black-tray = Bandeja negra de plástico
    .also = charola negra | bandeja de comida preparada | envase negro de microondas
item-meat-tray = Bandeja de carne o galletas
    .also = charola de carne | bandeja transparente | envase de pollo | cubeta de carne
item-plastic-cup = Vaso de plástico
    .also = vaso de bebida fría | vaso de licuado | vaso de fiesta | vaso de café helado | vaso descartable
item-straw = Popote de plástico
    .also = pajita | sorbete | pitillo | cañita | bombilla | absorbente
item-plastic-cutlery = Cubiertos de plástico
    .also = tenedor de plástico | cuchara de plástico | cubiertos desechables | cuchillo descartable
item-foam-cup = Vaso de unicel
    .also = vaso de poliestireno | vaso de tergopol | vaso de espuma | vaso térmico desechable | vaso de icopor
item-foam-takeout = Caja de unicel para comida
    .also = envase de poliestireno | bandeja de foam | plato de unicel | caja de tecnopor
item-bag-of-recyclables = Reciclables en bolsa de plástico
    .also = bolsa con reciclaje | reciclaje embolsado | bolsa de basura con botellas
item-egg-carton-plastic = Huevera de plástico
    .also = cartón de huevos de plástico | caja de huevos transparente | estuche de huevos

## paper-cardboard

item-cardboard-box = Caja de cartón
    .also = caja de envío | cartón corrugado | caja de mudanza | carton
item-pizza-box = Caja de pizza
    .also = cartón de pizza | caja con grasa | caja de piza
item-cereal-box = Caja de cereal
    .also = caja de galletas | caja de pasta | cartoncillo | caja de zapatos | caja de cereales
item-frozen-food-box = Caja de comida congelada
    .also = caja de congelados | envase de helado de cartón | caja de palitos de pescado
item-newspaper = Periódico
    .also = diario | prensa | folletos | papel periódico | periodico
item-mixed-paper = Papel de oficina
    .also = hojas | correo publicitario | papel de colores | folletos | volantes | papel de cuaderno
item-magazine = Revista o catálogo
    .also = papel brillante | folleto | guía telefónica | revistas
item-envelope = Sobre con o sin ventana
    .also = sobre de carta | sobre con ventanilla | sobre de papel
item-padded-mailer = Sobre acolchado
    .also = sobre de burbujas | sobre con plástico de burbujas | sobre almohadillado
item-shredded-paper = Papel triturado
    .also = papel picado | tiras de papel | papel destruido | recortes de trituradora
item-paper-bag = Bolsa de papel
    .also = bolsa de estraza | bolsa de almuerzo | funda de papel | bolsa de papel kraft
item-receipt = Recibo de caja
    .also = tique de compra | papel térmico | boleta | factura de caja | ticket
item-gift-wrap = Papel de regalo
    .also = papel de envoltura | papel navideño | papel metálico | envoltorio de regalo
item-egg-carton = Cartón de huevos
    .also = huevera | caja de huevos | maple de huevos | cubeta de huevos | panal de huevos

## glass

item-glass-bottle = Botella de vidrio
    .also = botella de vino | botella de cerveza | botella de cristal | envase de vidrio | casco
item-glass-jar = Frasco de vidrio con tapa
    .also = tarro de cristal | frasco de mermelada | bote de vidrio | pote de vidrio | frasco de salsa
item-drinking-glass = Vaso de vidrio
    .also = copa de vino | vaso de cristal | copa | vaso para beber
item-bakeware-glass = Fuente de vidrio para horno
    .also = refractario | molde de vidrio | cristal de horno | jarra de cafetera
item-mirror = Espejo
    .also = espejo de baño | espejo de pared | espejo roto | luna
item-broken-glass = Vidrio roto
    .also = cristales rotos | pedazos de vidrio | botella rota | añicos

## metal

item-food-can = Lata de comida
    .also = lata de conserva | lata de sopa | lata de atún | tarro de conserva | lata de frijoles
item-drink-can = Lata de bebida
    .also = lata de refresco | lata de cerveza | lata de gaseosa | lata de aluminio | bote de refresco
item-pet-food-can = Lata de comida para mascotas
    .also = lata de gato | lata de alimento para perro | latita
item-crown-cap = Corcholata
    .also = chapa de botella | tapa corona | tapita metálica | ficha | chapita
item-steel-lid = Tapa metálica de frasco
    .also = tapa de lata | tapa de acero | tapa de rosca de metal | tapadera metálica
item-foil = Papel aluminio
    .also = papel de plata | foil | papel metálico de cocina | aluminio
item-foil-pan = Bandeja de aluminio
    .also = molde de aluminio | charola de aluminio | molde para pay | fuente de aluminio
item-empty-spray-can = Aerosol totalmente vacío
    .also = lata de spray vacía | desodorante en aerosol vacío | bote de laca vacío

## food-drink-cartons

item-coffee-cup = Vaso de café de papel
    .also = vaso de cartón | vaso de café para llevar | vaso de papel | vasito de café
item-coffee-pod = Cápsula de café
    .also = monodosis de café | cápsula de espresso | pod de café | capsula
item-milk-carton = Cartón de leche o jugo
    .also = envase de leche | cartón de zumo | caja de leche
item-aseptic-carton = Cartón de caldo o sopa
    .also = envase aséptico | brik | caja de caldo | cartón de leche vegetal
item-juice-box = Cajita de jugo con popote
    .also = juguito | brik de zumo | jugo en caja | cartoncito de jugo
item-paper-canister = Bote de cartón con fondo metálico
    .also = tubo de papas | lata de avena | canister de cartón | bote de cacahuates

## food-garden

item-food-scraps = Restos de comida
    .also = sobras | desperdicio de cocina | residuos de comida | comida echada a perder | restos orgánicos
item-fruit-vegetables = Cáscaras de fruta y verdura
    .also = corazón de manzana | cáscara de plátano | peladuras | cascara de banana
item-meat-bones = Carne, pescado y huesos
    .also = huesos de pollo | espinas | conchas de marisco | restos de carne
item-coffee-grounds = Posos y filtros de café
    .also = café usado | borra de café | filtro de café | café molido usado
item-tea-bag = Bolsita de té
    .also = saquito de té | té en hebras | infusión | sobre de té
item-egg-shells = Cáscaras de huevo
    .also = cascarones | huevo
item-food-in-package = Comida en su envase
    .also = comida vencida | alimento caducado | paquete sin abrir | producto expirado
item-cooking-oil = Aceite de cocina y grasa
    .also = aceite usado | manteca | aceite de freír | grasa de tocino
item-leaves = Hojas y malezas
    .also = hojarasca | desechos de jardín | hierbas | yuyos | hojas secas
item-grass-clippings = Césped cortado
    .also = pasto cortado | recortes de grama | zacate | hierba cortada
item-branches = Ramas y podas
    .also = ramitas | restos de poda | setos cortados | palos
item-holiday-tree = Árbol de Navidad natural
    .also = pino navideño | arbolito de navidad | abeto | árbol de fiestas
item-compostable-cup = Vaso o envase compostable
    .also = bioplástico | envase biodegradable | vaso de maíz | plástico vegetal

## film-bags

item-packing-peanuts = Bolitas de embalaje
    .also = relleno de espuma | cacahuates de unicel | chips de embalaje | maní de telgopor
item-grocery-bag = Bolsa de supermercado
    .also = bolsa de plástico | funda plástica | bolsa del súper | bolsa de compras | jaba
item-bread-bag = Bolsa de pan o verdura
    .also = bolsa de fruta | bolsa con cierre | bolsita de sándwich | bolsa de congelados
item-bubble-wrap = Plástico de burbujas
    .also = papel burbuja | bolsas de aire | envoltura de burbujas | plastico burbuja
item-plastic-wrap = Film plástico de cocina
    .also = papel film | plástico adherente | papel transparente
item-overwrap-film = Envoltura de paquetes
    .also = plástico de paquetes de agua | film retráctil | envoltorio de papel higiénico | plástico de embalaje
item-chip-bag = Bolsa de papas fritas
    .also = envoltura de dulce | bolsa de botana | paquete de patatas | envoltorio de golosina | bolsa de snack
item-pouch = Bolsa de comida que se para
    .also = pouch de comida | sobre de puré para bebé | bolsa de jugo | sobre de comida para mascotas | bolsa de recarga
item-compostable-bag = Bolsa compostable
    .also = bolsa biodegradable | bolsa para orgánicos | bolsa de maíz | forro para cubeta

## batteries-electronics

item-household-battery = Pila común, AA a D
    .also = pilas alcalinas | batería AAA | pila de 9 voltios | pilas usadas | pila botón
item-lithium-battery = Batería de litio recargable
    .also = batería de celular | batería de portátil | pila de litio | batería de taladro
item-car-battery = Batería de auto
    .also = batería de coche | acumulador | batería de moto | batería de plomo
item-vape = Vapeador o cigarrillo electrónico
    .also = vaper | pluma de vapeo | cigarro electrónico | vape desechable
item-phone = Teléfono celular
    .also = móvil | celular | tableta | smartphone | lector electrónico
item-laptop = Computadora portátil
    .also = laptop | ordenador portátil | notebook | netbook
item-cables = Cable o cargador
    .also = cordón eléctrico | extensión eléctrica | cargador de celular | alambres | cable USB
item-string-lights = Luces de Navidad
    .also = serie de luces | luces decorativas | extensión de luces | guirnalda de luces

## hazardous

item-paint-can-empty = Lata de pintura vacía o seca
    .also = bote de pintura seco | tarro de pintura vacío | pintura seca
item-spray-can = Aerosol con producto
    .also = lata de spray | laca | pintura en aerosol | desodorante en aerosol | insecticida en spray
item-propane-cylinder = Cilindro de gas o propano
    .also = garrafa de gas | bombona | tanque de propano | gas de camping | balón de gas
item-latex-paint = Pintura de látex líquida
    .also = pintura de casa | pintura vinílica | sobrante de pintura | pintura acrílica
item-oil-paint = Pintura al óleo, tinte o barniz
    .also = esmalte | laca | barniz | tinte para madera
item-motor-oil = Aceite de motor usado
    .also = aceite de carro | aceite de coche | filtro de aceite | aceite quemado
item-motor-oil-bottle = Botella de aceite de motor
    .also = envase de aceite | galón de aceite | bote de anticongelante
item-fluorescent-tube = Tubo fluorescente
    .also = lámpara fluorescente | tubo de luz | tubo de neón | fluorecente

## medical

item-pill-bottle = Frasco de pastillas vacío
    .also = frasco de medicina | bote de medicamentos | envase de vitaminas | pastillero de farmacia
item-needles = Agujas y jeringas
    .also = punzocortantes | lanceta | jeringuilla | aguja de insulina | inyectadora
item-medicine = Medicinas y pastillas
    .also = medicamentos vencidos | remedios | jarabe | pomada | fármacos caducados

## textiles

item-clothing = Ropa
    .also = camisa | pantalón | abrigo | prendas | ropa usada | playera | polera

## household-goods

item-foam-block = Bloque de unicel de embalaje
    .also = poliestireno de embalaje | espuma de empaque | telgopor | corcho blanco | icopor
item-ceramic-dishes = Plato, tazón o taza
    .also = loza | vajilla | cerámica | porcelana | pocillo
item-garden-hose = Manguera de jardín
    .also = manguera | manguera de riego | goma de regar
item-rope = Cuerda, soga o cordel
    .also = mecate | hilo | listón | estambre | cinta | piola
item-laundry-basket = Cesto de ropa de plástico
    .also = canasta de lavandería | caja organizadora | cubo de ropa | tina
item-bucket = Cubeta o balde de plástico
    .also = cubo | tobo | balde | tina | cubeta de 5 galones
item-toy = Juguete pequeño de plástico
    .also = carrito | muñeco | juego de niños | muñeca

## building

item-window-glass = Vidrio de ventana
    .also = cristal de ventana | luna de ventana | vidrio plano | puerta de ducha

## bathroom

item-toothpaste-tube = Tubo de pasta de dientes
    .also = tubo de dentífrico | pomo de pasta dental | tubo de crema | crema dental
item-travel-bottle = Botellita de viaje
    .also = champú de hotel | frasquito | botella miniatura | muestra de champú
item-paper-towel = Toalla de papel o servilleta
    .also = papel de cocina | servilletas | rollo de cocina | papel toalla
item-facial-tissue = Pañuelo de papel usado
    .also = pañuelo desechable | papel higiénico usado | tisú
item-toilet-roll-tube = Tubo de cartón
    .also = rollo de papel higiénico | canuto de cartón | centro de papel de cocina
item-diaper = Pañal
    .also = pañal desechable | pañal de bebé | toallas femeninas | compresas
item-wet-wipes = Toallitas húmedas
    .also = paños húmedos | toallitas de bebé | toallitas limpiadoras
