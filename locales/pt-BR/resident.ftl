### What residents read on their phones. Plain words, short sentences, no jargon.

## Around every screen

page-title = { $program }: o que vai onde
skip = Ir para a parte principal
back = Voltar
language-label = Idioma
zone-label = Sua região
zone-none = Escolha sua região
unreviewed = Ninguém conferiu esta tradução ainda. Se algo parecer errado, leia em inglês.
decided-edition = Guia: { $edition }
privacy = O que você procura fica neste celular. Nada é enviado nem contado.

## Finding an item

search-label = O que você quer jogar fora?
search-placeholder = Por exemplo: caixa de pizza
search-count =
    { $count ->
        [0] Nada encontrado
        [one] { $count } objeto encontrado
        [many] { $count } objetos encontrados
       *[other] { $count } objetos encontrados
    }
search-nothing = Não achamos nada com esse nome. Tente uma palavra mais curta. O que não está na lista nem sempre é um “não”: pergunte.
search-long = É muito longo. Só as primeiras { $count } letras foram procuradas.
home-recent = Procurados há pouco
home-common = Mais procurados
home-categories = Ver por tipo

## Questions

cannot-tell = Não sei
questions-left =
    { $count ->
        [one] No máximo mais { $count } pergunta
        [many] No máximo { $count } perguntas ao todo
       *[other] No máximo { $count } perguntas ao todo
    }
ruler-title = Medir com esta tela
ruler-card = Encoste um cartão de banco em pé na tela. Mova o controle até o desenho ficar da largura do cartão.
ruler-use = Agora ponha o objeto sobre a régua, uma ponta no 0.
ruler-cards = { $measure }: cartões de banco em fila: { $count }

## Answers

verdict-yes = Sim
verdict-no = Não
verdict-elsewhere = Aqui não, vai para outro lugar
verdict-unlisted = Não está na lista: pergunte
verdict-undecided = Ainda não decidido: pergunte
verdict-closed = Não: não está na lista
caution-title = Cuidado.
prepare-title = Como preparar
why-title = Por quê
also-title = Também aceito em
temporary-order = Vale uma regra temporária agora. Pode mudar logo.
assumed-title = Você não sabia, então usamos a resposta mais segura:
assumed-line = { $fact }: { $value }
ask-contact = Dúvidas? { $name }:
decided-title = Que regra decidiu
decided-rule = Regra:
decided-acknowledged = Uma pessoa identificada aprovou esta exceção a uma regra de segurança.

## Places to take things to

site-more =
    { $count ->
        [one] Mais { $count } lugar
        [many] Mais { $count } lugares
       *[other] Mais { $count } lugares
    }
site-locate = Achar o lugar mais perto
site-no-position = Este celular não disse onde está.
near-label = Cidade, região ou CEP
near-find = Procurar lá
near-found = Mais perto de { $place }.
near-unknown = Este guia não conhece o lugar “{ $place }”. Tente uma cidade, sua região ou o nome de um ponto.
site-also-takes = Também recebe: { $items }
site-all-items = Tudo o que recebe
site-booking = Marque hora antes.
site-proof = Leve um comprovante de que mora aqui.
site-permit = Você precisa de uma licença.
site-voucher = Você precisa de um vale.
container-rules-title = Sobre: { $container }
hours-open = Aberto agora
hours-open-until = Aberto até { $time }
hours-closed = Fechado agora
hours-closed-until = Fechado até { $time }
hours-appointment = Só com hora marcada
hours-unknown = Horário desconhecido: ligue antes
hours-day-time = { $day }, { $time }

## Without a network

offline-fetching = Salvando o guia para funcionar sem internet…
offline-ready = Salvo. O guia funciona sem internet.
offline-now = Você está sem internet. O guia funciona neste celular.
offline-incomplete = Você está sem internet e o guia não foi todo salvo. Podem faltar partes.
offline-failed = Não foi possível salvar o guia. Ele só funciona com internet. Tente mais tarde.
offline-impossible = Este navegador não consegue salvar o guia. Ele só funciona com internet.
update-ready = Há um guia mais novo.
update-now = Usar agora
offline-lost = O celular apagou o guia salvo. Salvando de novo…
offline-forgetful = Este navegador não deixa o guia salvar nada. Ele só funciona com internet e esquece seu idioma e sua região.
update-failed = Um guia mais novo não chegou inteiro. Este continua funcionando e o celular vai tentar de novo.

## When something is not there

unknown-item = Não há objeto “{ $id }” neste guia. Procure pelo nome.
unknown-category = Não há grupo “{ $id }” neste guia. Escolha um na primeira página.
unknown-address = Não há página “{ $address }”. Vá para a primeira página.
unknown-language = Este guia ainda não está em “{ $language }”. Escolha outro idioma.
language-broken = As palavras em “{ $language }” não chegaram inteiras. Verifique a conexão e escolha o idioma de novo.
unknown-zone = Não há região “{ $id }” neste guia. Escolha a sua no fim da página.
clock-wrong = Este celular diz que hoje é { $date }. Não pode ser. Não se sabe o que está aberto agora, e as regras de época podem estar erradas. Acerte a data.
