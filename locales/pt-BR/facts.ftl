### What can be known about a thing: names, questions, answers. Values have to make sense alone,
### as a button and in "You could not tell, so we took: Closure: on".

## Ranges of a measure or of dates, as answers to choose from

range-at-least = pelo menos { $value }
range-over = mais de { $value }
range-at-most = no máximo { $value }
range-under = menos de { $value }
range-between = de { $low } a { $high }
range-any = qualquer

## A fact and its value, an item and its part. Examples: "Resin mark: 5", "Glass jar: the lid"

fact-value = { $fact }: { $value }
item-part = { $item }: { $part }

## Who asks, where and when

fact-day = Dia
ask-day = Em que dia?

## Time of year

fact-time-of-year = Época do ano
ask-time-of-year = Em que dia do ano?

## Service zone

fact-zone = Região
ask-zone = Onde você mora?
    .hint = As regras mudam de uma região para outra.

## Dwelling

fact-dwelling = Moradia
ask-dwelling = Em que tipo de casa você mora?
value-dwelling-house = Casa
value-dwelling-small-building = Prédio pequeno
value-dwelling-large-building = Prédio grande

## Where it comes from

fact-origin = De onde vem
ask-origin = De onde isto vem?
value-origin-household = De uma casa
value-origin-business = De uma empresa

## Proof of residency

fact-proof = Comprovante de endereço
ask-proof = Você pode comprovar que mora aqui?
    .hint = Serve uma conta ou a carteira de motorista com seu endereço.
value-proof-yes = Tenho comprovante
value-proof-no = Não tenho comprovante

## Paid extra service

fact-add-on = Serviço extra pago
ask-add-on = Você paga o serviço extra de coleta?
    .hint = Se pagar, está na sua conta.
value-add-on-yes = Eu pago
value-add-on-no = Não pago

## Quantity

fact-quantity = Quantos
ask-quantity = Quantos você tem?

## What it is

fact-item = Objeto
ask-item = O que é?

## Category

fact-category = Tipo
ask-category = Que tipo de coisa é?

## Part of a thing

fact-part = Parte
ask-part = Que parte?
value-part-whole = O objeto inteiro
value-part-lid = Tampa
value-part-cap = Tampinha
value-part-pump = Válvula
value-part-sleeve = Manga de plástico
value-part-liner = Forro
value-part-straw = Canudo
value-part-filter = Filtro
value-part-battery = Pilha ou bateria
value-part-cord = Fio elétrico
value-part-shade = Cúpula do abajur
value-part-contents = Conteúdo
value-part-bag = Saco
value-part-handle = Alça
value-part-ring = Anel

## Hazard class

fact-hazard = Perigo
ask-hazard = Que perigo isto tem?
    .hint = Procure palavras ou sinais de aviso no rótulo. Na dúvida, diga que não sabe.
value-hazard-none = Nenhum perigo
value-hazard-battery-lithium = Bateria de lítio (recarregável)
value-hazard-battery-household = Pilha comum
value-hazard-battery-lead-acid = Bateria de carro (chumbo-ácido)
value-hazard-sharps = Agulha ou lanceta
value-hazard-medicine = Remédio
value-hazard-pressurised = Lata ou cilindro com pressão
value-hazard-flammable = Líquido ou gás inflamável
value-hazard-toxic = Veneno
value-hazard-corrosive = Corrosivo (queima a pele)
value-hazard-mercury = Objeto com mercúrio
value-hazard-oil = Óleo de motor
value-hazard-explosive = Explosivo
value-hazard-radioactive = Objeto radioativo

## Material

fact-material = Material
ask-material = De que é feito?
    .hint = O material principal.
value-material-plastic = Plástico
value-material-bioplastic = Plástico vegetal
value-material-cardboard = Papelão ondulado
value-material-paperboard = Papelão fino
value-material-paper = Papel
value-material-carton = Caixinha longa vida
value-material-steel = Aço ou lata
value-material-aluminium = Alumínio
value-material-metal = Outro metal
value-material-glass = Vidro
value-material-ceramic = Cerâmica
value-material-wood = Madeira
value-material-cork = Cortiça
value-material-textile = Tecido
value-material-leather = Couro
value-material-rubber = Borracha
value-material-food = Comida
value-material-plant = Folhas ou galhos
value-material-wax = Cera
value-material-stone = Pedra ou concreto
value-material-electronics = Eletrônicos
value-material-chemical = Produto químico
value-material-mixed = Vários materiais

## Form

fact-form = Forma
ask-form = Que forma tem?
value-form-bottle = Garrafa ou frasco
value-form-jug = Galão com alça
value-form-jar = Pote de boca larga
value-form-tub = Pote
value-form-cup = Copo
value-form-lid = Tampa
value-form-clamshell = Caixa com dobradiça
value-form-tray = Bandeja
value-form-bag = Saco ou sacola
value-form-film = Plástico fino
value-form-pouch = Sachê
value-form-tube = Tubo
value-form-can = Lata
value-form-spray-can = Lata de spray
value-form-cylinder = Cilindro de gás
value-form-box = Caixa
value-form-carton = Caixinha longa vida
value-form-canister = Lata de papelão
value-form-sheet = Folha
value-form-newspaper = Jornal ou revista
value-form-book = Livro
value-form-envelope = Envelope
value-form-roll = Rolo
value-form-foil = Papel-alumínio
value-form-pan = Forma ou panela
value-form-foam = Espuma
value-form-pod = Cápsula de café
value-form-cutlery = Garfo, faca ou colher
value-form-straw = Canudo
value-form-pot = Vaso de planta
value-form-bucket = Balde
value-form-toy = Brinquedo
value-form-rope = Corda, mangueira ou cabo
value-form-clothing = Roupa
value-form-shoe = Sapato
value-form-furniture = Móvel
value-form-mattress = Colchão
value-form-appliance = Eletrodoméstico grande
value-form-device = Aparelho eletrônico
value-form-lamp = Lâmpada
value-form-battery = Pilha ou bateria
value-form-needle = Agulha
value-form-pill = Comprimidos ou remédio
value-form-tool = Ferramenta
value-form-window = Vidro ou espelho
value-form-dishes = Louça
value-form-tyre = Pneu
value-form-timber = Madeira
value-form-rubble = Entulho
value-form-food = Comida
value-form-plant = Resto de jardim
value-form-liquid = Líquido
value-form-ash = Cinza
value-form-sanitary = Fralda ou item de higiene
value-form-other = Outra forma

## Packaging or product

fact-object = Serve de
ask-object = É uma embalagem de alguma coisa?
value-object-packaging = É embalagem
value-object-product = É um objeto em si

## Battery inside

fact-battery = Pilha ou bateria
ask-battery = Tem pilha ou bateria dentro?
    .hint = Se acende, se mexe, faz som ou se recarrega, tem.
value-battery-yes = Com pilha ou bateria
value-battery-no = Sem pilha nem bateria

## Resin mark

fact-resin = Número no triângulo
ask-resin = Que número está no triângulo pequeno?
    .hint = Olhe embaixo. O número diz qual é o plástico. Não promete que se recicla.
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = Sem número
value-resin-unreadable = Não dá para ler

## Deposit mark

fact-deposit-mark = Marca de depósito
ask-deposit-mark = Tem marca de depósito (casco com retorno)?
    .hint = Procure uma marca ou um valor em dinheiro perto do código de barras.
value-deposit-mark-yes = Com marca de depósito
value-deposit-mark-no = Sem marca de depósito

## Color

fact-colour = Cor
ask-colour = De que cor é?
value-colour-clear = Transparente
value-colour-frosted = Fosco (deixa passar luz)
value-colour-white = Branco
value-colour-green = Verde
value-colour-brown = Marrom
value-colour-blue = Azul
value-colour-black = Preto
value-colour-other = Outra cor

## Coating

fact-coating = Revestimento
ask-coating = Tem alguma camada por cima?
    .hint = Rasgue um canto: se aparece um filme fino, é plástico. Raspe: a cera solta.
value-coating-none = Sem camada
value-coating-plastic = Plástico
value-coating-wax = Cera
value-coating-foil = Alumínio
value-coating-glitter = Glitter
value-coating-wet-strength = Feito para resistir à água

## Layers

fact-layers = Camadas
ask-layers = É feito de várias camadas coladas?
value-layers-one = Uma camada
value-layers-many = Várias camadas

## Longest side

fact-longest-side = Lado mais comprido
ask-longest-side = Qual é o comprimento?
    .hint = Meça o lado mais comprido.

## Middle side

fact-middle-side = Segundo lado
ask-middle-side = Qual é a largura?
    .hint = Meça o segundo lado mais comprido.

## Shortest side

fact-shortest-side = Lado mais curto
ask-shortest-side = Qual é a espessura?
    .hint = Meça o lado mais curto.

## Length of shredded strips

fact-strip-length = Comprimento das tiras
ask-strip-length = Qual é o comprimento das tiras?

## Capacity

fact-capacity = Capacidade
ask-capacity = Quanto cabe dentro?
    .hint = Veja a quantidade no rótulo.

## Weight

fact-mass = Peso
ask-mass = Quanto pesa?

## Fits the container

fact-fits-container = Cabe no contêiner
ask-fits-container = Cabe no contêiner com a tampa fechada?
value-fits-container-yes = Cabe com a tampa fechada
value-fits-container-no = Não cabe

## Contents

fact-contents = Conteúdo
ask-contents = Sobrou alguma coisa dentro?
    .hint = Vazio quer dizer que nada pinga nem cai.
value-contents-empty = Vazio
value-contents-traces = Ficou um pouco grudado
value-contents-dried = Seco
value-contents-part-full = Ainda tem uma parte
value-contents-full = Cheio

## Former contents

fact-former-contents = O que tinha dentro
ask-former-contents = O que tinha dentro?
value-former-contents-none = Nada
value-former-contents-food = Comida
value-former-contents-drink = Bebida
value-former-contents-personal-care = Sabonete, xampu ou creme
value-former-contents-cleaner = Produto de limpeza
value-former-contents-oil = Óleo de motor
value-former-contents-paint = Tinta
value-former-contents-pesticide = Veneno de inseto ou de mato
value-former-contents-solvent = Solvente ou combustível
value-former-contents-medicine = Remédio

## Soiling

fact-soiling = Limpo ou sujo
ask-soiling = Está limpo?
value-soiling-clean = Limpo
value-soiling-grease = Engordurado
value-soiling-food = Com comida grudada

## Wet

fact-wet = Molhado
ask-wet = Está molhado?
value-wet-yes = Molhado
value-wet-no = Seco

## Bagged

fact-bagged = Em saco
ask-bagged = Está em um saco?
value-bagged-loose = Solto, sem saco
value-bagged-plastic-bag = Em saco plástico
value-bagged-clear-bag = Em saco transparente
value-bagged-paper-bag = Em saco de papel

## Flattened

fact-flattened = Desmontado
ask-flattened = Está desmontado e plano?
value-flattened-yes = Desmontado
value-flattened-no = Não desmontado

## Bundled

fact-bundled = Amarrado
ask-bundled = Está amarrado em feixe?
value-bundled-yes = Amarrado
value-bundled-no = Não amarrado

## Shredded

fact-shredded = Picado
ask-shredded = Está picado?
value-shredded-yes = Picado
value-shredded-no = Não picado

## Broken

fact-broken = Quebrado
ask-broken = Está quebrado ou gasto?
value-broken-yes = Quebrado
value-broken-no = Inteiro

## Compostable

fact-compostable = Compostável
ask-compostable = Diz que pode virar adubo (compostável)?
    .hint = Procure as palavras “compostável certificado” e um selo.
value-compostable-no = Não
value-compostable-claimed = Diz, mas sem selo
value-compostable-certified = Certificado, com selo

## Closure

fact-closure = Tampa
ask-closure = Está com a tampa?
value-closure-none = Não tem tampa
value-closure-on = Tampado
value-closure-off = Sem a tampa

## Label

fact-label = Rótulo
ask-label = Que tipo de rótulo tem?
value-label-none = Sem rótulo
value-label-paper = Rótulo de papel
value-label-film = Rótulo de plástico
value-label-sleeve = Plástico em volta toda

## Pump

fact-pump = Válvula ou borrifador
ask-pump = Tem válvula ou borrifador?
value-pump-yes = Com válvula
value-pump-no = Sem válvula

## Metal fitting

fact-fitting = Peça de metal
ask-fitting = Tem uma pequena peça de metal?
value-fitting-yes = Com peça de metal
value-fitting-no = Sem peça de metal

## Window

fact-window = Janela de plástico
ask-window = Tem janela de plástico transparente?
value-window-yes = Com janela
value-window-no = Sem janela

## Liner

fact-liner = Forro interno
ask-liner = Tem saco ou forro dentro?
value-liner-yes = Com forro
value-liner-no = Sem forro

## Cord

fact-cord = Fio elétrico
ask-cord = Tem fio elétrico?
value-cord-yes = Com fio
value-cord-no = Sem fio

## What is said beside a limit. Examples: "2 inches (about a golf ball)", "4 a visit".

measure-like = { $measure } (cerca de { $thing })
measure-per = { $measure } { $period }
like-credit-card = o comprimento de um cartão de banco
like-golf-ball = uma bola de golfe
like-tennis-ball = uma bola de tênis
like-basketball = uma bola de basquete
like-sheet-of-paper = o comprimento de uma folha de papel
like-yogurt-cup = um potinho de iogurte
like-milk-jug = um galão de leite
like-bucket = um balde grande
like-brick = um tijolo
per-visit = por visita
per-day = por dia
per-week = por semana
per-month = por mês
per-year = por ano
