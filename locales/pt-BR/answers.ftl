### Ready-made sentences of answers: cautions, steps, reasons; and the names of kinds of things.
### Steps are told to one person, reasons are about "it".

## Cautions, one for each hazard class. They say what is common everywhere and defer to local


## rules; local procedure comes from the program, approved by a named person.

caution-local = As regras locais e a equipe do lugar decidem.
caution-battery-lithium = Baterias de lítio podem causar incêndio. Nunca as ponha, nem os objetos que as contêm, em contêiner ou lixeira. Cubra com fita as pontas de metal das baterias soltas, ou ponha cada uma em seu próprio saco. Não amasse nem abra. { caution-local }
caution-battery-household = Pilhas podem vazar ou causar incêndio. Nunca as ponha em contêiner ou lixeira. Cubra as pontas com fita e guarde-as separadas. { caution-local }
caution-battery-lead-acid = Esta bateria tem ácido, que queima, e chumbo, que envenena. Deixe-a em pé e não a abra. Nunca a ponha em contêiner ou lixeira. { caution-local }
caution-sharps = Agulhas e lancetas podem ferir e infectar quem separa o lixo. Nunca as ponha soltas em contêiner ou lixeira. Ponha-as logo em um recipiente forte, que não fura, bem tampado. Nunca enfie a mão no contêiner para pegar uma. { caution-local }
caution-medicine = Guarde remédios longe de crianças e animais. Leve-os primeiro a um ponto de devolução. Não jogue no vaso, a não ser que o rótulo mande. { caution-local }
caution-pressurised = Pode estourar se for amassado, furado ou aquecido, mesmo que pareça vazio. Nunca o ponha em contêiner ou lixeira. { caution-local }
caution-flammable = Pega fogo com facilidade. Mantenha fechado, longe de calor e faíscas. Nunca o ponha em contêiner ou lixeira e nunca o despeje. { caution-local }
caution-toxic = Venenoso. Deixe na própria embalagem, com o rótulo. Nunca o ponha em contêiner ou lixeira, nunca despeje, nunca misture com nada. { caution-local }
caution-corrosive = Queima a pele e os olhos. Deixe em pé na própria embalagem. Nunca o ponha em contêiner ou lixeira e nunca misture com nada. { caution-local }
caution-mercury = Tem mercúrio, que envenena. Não quebre. Nunca o ponha em contêiner ou lixeira. Se quebrar, afaste as pessoas e areje o lugar. { caution-local }
caution-oil = Polui a água. Guarde em recipiente fechado. Nunca despeje, nunca ponha em contêiner ou lixeira, nunca misture com nada. { caution-local }
caution-explosive = Não toque nem tire do lugar. Afaste as pessoas e ligue para a autoridade indicada aqui. Em perigo, ligue para a emergência. { caution-local }
caution-radioactive = Não abra nem quebre. Nunca o ponha em contêiner ou lixeira. Ligue para a autoridade indicada aqui e pergunte o que fazer. { caution-local }

## Standard preparation steps

prep-empty = Esvazie.
prep-rinse = Dê uma enxaguada rápida. Não precisa brilhar.
prep-dry = Deixe secar.
prep-scrape = Raspe a comida.
prep-flatten = Desmonte e deixe plano.
prep-cut-down = Corte para caber.
prep-bundle = Amarre em feixe.
prep-loose = Ponha solto, sem saco.
prep-cap-on = Deixe a tampa.
prep-cap-off = Tire a tampinha.
prep-lid-off = Tire a tampa.
prep-lid-inside-can = Ponha a tampa dentro da lata e aperte a boca.
prep-label-stays = O rótulo pode ficar.
prep-sleeve-off = Tire a manga de plástico.
prep-pump-off = Tire a válvula.
prep-window-stays = A janela de plástico pode ficar.
prep-staples-stay = Os grampos podem ficar.
prep-remove-food-liner = Tire o saco ou o forro.
prep-tear-off-clean-half = Rasgue a parte limpa. Só ela vai aqui.
prep-crush = Amasse para ganhar espaço.
prep-do-not-crush = Não amasse.
prep-do-not-flatten = Não deixe plano.
prep-do-not-nest = Não encaixe um dentro do outro.
prep-scrunch-foil = Amasse o alumínio em uma bola do tamanho do punho.
prep-paper-bag = Ponha em um saco de papel e feche.
prep-clear-bag = Ponha em um saco transparente.
prep-tape-terminals = Cubra as pontas de metal com fita.
prep-keep-upright = Deixe em pé.
prep-puncture-proof = Ponha em um recipiente forte, que não fura.
prep-original-container = Deixe na própria embalagem, com o rótulo.
prep-do-not-mix = Não misture com nada.
prep-do-not-puncture = Não fure.
prep-puncture = Fure quando não sair mais nada.
prep-wrap-broken = Embrulhe os cacos para ninguém se cortar.
prep-remove-battery = Tire a pilha se ela sai fácil. Ela vai para outro lugar.
prep-wipe-data = Apague seus dados antes.
prep-take-apart = Desmonte: cada material tem seu lugar.
prep-no-bags = Não use saco nenhum.
prep-no-plastic-bags = Não use sacos plásticos.
prep-cool-ash = Deixe a cinza esfriar vários dias, até ficar fria por dentro.
prep-double-bag = Ponha em dois sacos, um dentro do outro.
prep-label-contents = Escreva por fora o que tem dentro.
prep-fits-lid-shut = Tem de caber com a tampa fechada.
prep-check-fluid = Confira que não sobrou líquido.
prep-pair-and-tie = Amarre os pares juntos.
prep-clean-and-usable = Só se estiver limpo e ainda servir.

## Standard reasons

reason-sells = Fábricas compram e fazem coisas novas.
reason-composts = Vira adubo.
reason-no-buyer = Ninguém compra este material aqui, então não dá para reciclar.
reason-too-small = É tão pequeno que cai pelas máquinas de triagem.
reason-too-large = É grande demais para o contêiner ou as máquinas.
reason-tangles = Enrola nas máquinas e as faz parar.
reason-wraps-screens = Plástico fino enrola nas peneiras e para a usina.
reason-bagged-unseen = Ninguém vê dentro de um saco fechado: ele é jogado fora sem abrir.
reason-soiled = Comida e gordura estragam o material.
reason-contents-spoil = O que sobrou dentro estragaria tudo em volta.
reason-mixed-materials = Os materiais estão colados e não se separam.
reason-wrong-glass = Este vidro derrete de outro jeito que garrafas e potes.
reason-breaks-unsafe = Quebra e corta quem separa.
reason-not-packaging = Aqui só se aceita embalagem.
reason-hazard = É perigoso no contêiner, no caminhão e na usina.
reason-handled-apart = É tratado separado do resto.
reason-reusable = Alguém ainda pode usar.
reason-store-collects = Lojas recolhem.
reason-contaminates-compost = Estragaria o adubo.
reason-not-named = A lista não cita.
reason-not-listed = Ninguém decidiu ainda. Perguntar é melhor que adivinhar.
reason-too-heavy = É pesado demais para levantar.
reason-number-is-not-shape = Só o número não decide: a forma também conta.
reason-black-unseen = As máquinas de triagem não veem plástico preto.
reason-burns = Pode causar incêndio.
reason-special-trip = Tem coleta própria ou lugar próprio.
reason-law = A lei manda.
reason-not-collected = Não se recolhe aqui.

## Tiers of rules, in the order in which they are looked at

tier-safety = Segurança
tier-plant = Usina de triagem
tier-program = Este programa
tier-material = Material
tier-default = Todo o resto

## Categories to browse by

category-plastic-packaging = Embalagens de plástico
category-paper-cardboard = Papel e papelão
category-glass = Vidro
category-metal = Metal
category-food-drink-cartons = Caixinhas de comida e bebida
category-food-garden = Comida e jardim
category-film-bags = Sacos e plástico fino
category-batteries-electronics = Pilhas e eletrônicos
category-hazardous = Tinta, químicos, gás
category-medical = Remédios e agulhas
category-textiles = Roupas e sapatos
category-household-goods = Coisas da casa
category-building = Obra e reforma
category-bathroom = Banheiro

## Parts of an item that may go elsewhere

part-lid = A tampa
part-cap = A tampinha
part-pump = A válvula
part-sleeve = A manga de plástico
part-liner = O forro
part-straw = O canudo
part-filter = O filtro
part-battery = A pilha ou bateria
part-cord = O fio elétrico
part-shade = A cúpula do abajur
part-contents = O que tem dentro
part-bag = O saco
part-handle = A alça
part-ring = O anel

## Rules about a container: shown where an answer names it. $limit is a measure.

container-rule-lid-closed = A tampa tem de ficar fechada.
container-rule-weight = No máximo { $limit } quando cheio.
container-rule-distance = Deixe { $limit } livres de cada lado.
container-rule-side-waste = Nada ao lado nem em cima.
container-rule-share-of-load = O que não é daqui pode ser no máximo { $limit } da carga.
container-rule-liners = Pode-se usar um saco dentro.
container-rule-sacks = Só os sacos que são distribuídos.
container-rule-registration = Inscreva-se antes.
container-rule-refusals = Se tiver algo errado, fica no lugar com um aviso.

## Where the law does not let a thing go. $place is a container or stream.

answer-banned = A lei não permite em: { $place }.
