### The coordinator's screens. Short, clear words; trade words where coordinators use them.

## Around every screen

desk-title = Mesa do guia
desk-title-of = { $program }: mesa do guia
navigation = Partes do programa
undo = Desfazer
redo = Refazer
close = Fechar
tab-files = Arquivos
tab-program = Programa
tab-streams = Fluxos
tab-zones = Regiões
tab-channels = Canais
tab-sites = Lugares
tab-rules = Regras
tab-items = Objetos
tab-texts = Textos
tab-print = Imprimir
start-problem-unreachable = O servidor não respondeu. Confira a conexão e carregue a página de novo.
start-problem-missing = Falta um arquivo deste aplicativo no servidor. Peça a quem o publicou que publique de novo.
start-problem-broken = Um arquivo deste aplicativo chegou danificado. Carregue a página de novo; se continuar, publique o aplicativo outra vez.
recover-title = Algo deu errado nesta página
recover-text = Seu programa foi salvo enquanto você trabalhava. Baixe-o por segurança e carregue a página de novo para continuar.
recover-nothing = Não há programa salvo neste navegador.
recover-reload = Carregar de novo
recover-download = Baixar meu programa
panels = Achados, mudanças e teste

## Saving. $time is a day with a time

save-nothing = Nada aberto
save-saved = Salvo neste aparelho
save-waiting = Salvando…
save-failed = Não salvo
save-again = Tentar salvar de novo
save-problem-full = Não há mais espaço neste aparelho e suas mudanças não estão sendo salvas. Exporte já o arquivo do programa e depois libere espaço.
save-problem-forbidden = Este navegador não deixa a página salvar nada e suas mudanças não estão sendo salvas. Exporte o arquivo do programa antes de fechar esta janela.
save-problem-newer = Outra janela salvou este programa depois. Sua versão não foi gravada por cima.
day-and-time = { $day }, { $time }

## Drafts and files. $name, $copy and $program are names of drafts or files

drafts-title = Programas neste aparelho
drafts-none = Ainda não há nenhum. Abra a demonstração, comece um programa novo ou importe um arquivo.
draft-saved = Salvo { $time }
draft-remove-sure = Remover mesmo?
draft-second-version = { $name } (segunda versão)
draft-diverged = “{ $name }” foi mudado também em outra janela. Os dois ficam: a outra versão agora é “{ $copy }”.
open-demo = Abrir a demonstração
open-demo-hint = Quillmere County, um lugar inventado com tudo preenchido
new-program = Programa novo
new-program-hint = Comece só com as regras de segurança embutidas
import-file = Importar um arquivo de programa
import-file-hint = Ele abre ao lado dos seus outros programas e não substitui nenhum
export-file = Exportar o arquivo do programa
export-file-hint = Um arquivo com tudo, para guardar ou passar adiante
import-refused = Não dá para abrir “{ $name }”
import-unchanged = Seus programas estão como estavam.
import-original = Baixar o arquivo como estava

## Why a program file cannot be read

load-too-large = O arquivo tem { $megabytes } MB; arquivos de programa têm no máximo { $limit } MB. Confira se é o arquivo certo.
load-truncated = O arquivo acaba cedo demais, na linha { $line }. Deve ter sido cortado no caminho: copie ou baixe de novo.
load-not-json = Não dá para ler o arquivo a partir da linha { $line }, coluna { $column }. Se foi editado à mão, corrija ali; se não, exporte de novo.
load-other-format = Este não é um arquivo de programa (diz “{ $found }”). Escolha um arquivo exportado aqui.
load-newer = O arquivo é da versão { $found }; este aplicativo conhece versões até { $known }. Use um aplicativo mais novo.
load-shape = O valor em “{ $path }” não é do tipo esperado: { $detail }. Corrija-o e importe o arquivo de novo.
load-too-deep = Uma condição da regra “{ $rule }” tem mais de { $limit } níveis. Divida-a em várias regras.

## Lists and fields in general

list-filter = Filtrar
list-add = Acrescentar
list-add-one = Acrescentar mais um
list-new-name = Nome do novo
list-remove = Remover
list-up = Subir
list-choose = Escolha um da lista ou acrescente um.
choice-none = Nenhum
field-month = Mês
field-day = Dia
measure-unreadable = Não dá para ler “{ $stated }”. Escreva um número com a unidade, como 2 in, 1 gal, 100 lb.
translations = Nos outros idiomas
field-name = Nome
field-kind = Tipo
field-note = Recado para os moradores
field-phone = Telefone
field-email = E-mail

## The program's own fields

program-basics = Este programa
field-program-name = Nome do guia
field-program-id = Código curto, para arquivos e endereços
field-edition = Edição
field-edition-from = Vale a partir de
field-guide-url = Endereço do guia publicado
field-source-language = Idioma em que se escreve primeiro
field-languages = Idiomas em que se publica
program-contact = A quem perguntar
field-contact-name = Nome do escritório
field-return-address = Endereço do remetente nos postais
program-silence = Quando nenhuma regra cita um caso
field-silence = O que o silêncio quer dizer
silence-undecided = Ainda não decidido (não pode ser publicado)
silence-ask = Lista aberta: a resposta é “não está na lista, pergunte”
silence-closed = Lista fechada: o que não é citado é recusado
program-unknown = Quando um morador não sabe
program-unknown-hint = O que usar no lugar do desconhecido. Se nada for definido, usa-se o valor mais seguro.
unknown-add = Definir mais um
program-counts-as = O que conta como outra coisa
program-counts-as-hint = Toda regra trata então um como o outro: vidro fosco como transparente, por exemplo.
counts-as-add = Fato
field-these = Estes
field-count-as = Contam como
program-hazards = Para onde vão os perigos
program-hazards-hint = Cada classe precisa de um canal seguro e de uma pessoa que o aprovou. Perigos nunca vão em contêiner ou lixeira.
field-hazard-channel = Vai para
field-approved-by = Aprovado por
program-plant = Usina de triagem
field-plant-name = Nome da usina
field-machine-name = Máquina
field-machine-limit = O que ela não consegue tratar
machine-add = Acrescentar uma máquina
program-print = Para folhas impressas
field-short-url = Endereço curto ao lado do código QR
field-indicia = Marca de franquia postal, linha por linha
field-statement = Frase sobre papel reciclado ou parecido

## Streams and containers

containers-title = Contêineres
container-add = Acrescentar um contêiner
container-remove = Remover este contêiner
field-container-name = Como os moradores o chamam
field-colour = Cor
field-capacity = Capacidade, com a unidade
field-container-zones = Só nestas regiões
field-container-dwellings = Só nestes tipos de moradia
field-set-out = Quando e como pôr na rua
field-container-rules = Regras sobre este contêiner
field-container-rules-hint = Valem para tudo que se põe nele. Os moradores as veem em cada resposta que o cita.
field-container-rule-add = Uma regra sobre
field-container-rule = Em suas palavras, no lugar da frase padrão
field-limit = Limite, com a unidade
field-share = Limite, como 10%
limit-missing = Escreva o limite ou a regra inteira em suas palavras.
residents-read = Os moradores leem: { $text }
container-rule-kind-lid-closed = Tampa fechada
container-rule-kind-weight = Peso quando cheio
container-rule-kind-distance = Espaço livre em volta
container-rule-kind-side-waste = Coisas ao lado ou em cima
container-rule-kind-share-of-load = Quanto da carga pode ser errado
container-rule-kind-liners = Usar um saco dentro
container-rule-kind-sacks = Sacos distribuídos
container-rule-kind-registration = Inscrição antes
container-rule-kind-refusals = Quando é deixado no lugar
stream-kind-recycling = Reciclagem
stream-kind-organics = Orgânicos
stream-kind-refuse = Lixo comum
stream-kind-glass = Vidro
stream-kind-paper = Papel
stream-kind-film = Plástico fino
container-kind-cart = Contêiner com rodas
container-kind-bin = Lixeira
container-kind-bag = Saco
container-kind-box = Caixa
container-kind-shared-cart = Contêiner do prédio
container-kind-dumpster = Caçamba

## Zones

field-dwelling = Tipo de moradia
field-households = Número de moradias
field-zone-streams = Fluxos recolhidos aqui
field-centre = Centro da região: latitude, longitude

## Channels and sites

field-fee = Preço, em palavras
field-booking = Precisa marcar hora
field-proof = Precisa de comprovante de endereço
field-permit = Precisa de licença
field-voucher = Precisa de vale
field-allowance = Quanto ou quantas vezes, em palavras
field-vehicles = Que veículos podem vir, em palavras
field-safe-for = Recebe estes perigos com segurança
channel-sites =
    { $count ->
        [0] Nenhum lugar aceita ainda.
        [one] Seu lugar: { $names }
        [many] Seus lugares: { $names }
       *[other] Seus lugares: { $names }
    }
channel-kind-drop-off = Ponto de entrega
channel-kind-store-take-back = Devolução em loja
channel-kind-hazardous-waste = Centro de resíduos perigosos
channel-kind-event = Dia de coleta
channel-kind-bulky-pickup = Coleta de objetos grandes
channel-kind-deposit-return = Devolução de casco
channel-kind-mail-back = Devolução pelo correio
channel-kind-reuse = Reuso e conserto
channel-kind-medicine-take-back = Devolução de remédios
channel-kind-sharps-take-back = Devolução de agulhas
channel-kind-police = Polícia
channel-kind-specialist = Empresa especializada
channel-kind-dealer = Fabricante ou revendedor
channel-kind-health-office = Posto de saúde
channel-kind-authority = Autoridade para telefonar
field-site-channels = Aceita coisas destes canais
field-accepts = Aceita só estas coisas deles
field-refuses = Não aceita estas coisas deles
field-site-vehicles = Que veículos podem vir aqui, se não for como nos canais
field-address = Endereço
field-position = Posição: latitude, longitude
field-hours = Horário
field-hours-hint = Escrito como em mapas abertos: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = Não dá para ler este horário: { $detail }

## Rules and their conditions

field-tier = Nível
field-verdict = Veredito
rule-adds-steps = Nenhum: só acrescenta passos
field-stream = Fluxo
field-channel = Canal
field-prepare = Preparo, em ordem
field-reason = Motivo
field-machine = Máquina que decide
field-residents = Palavras para moradores
field-sorters = Palavras para quem separa
field-contract = Palavras do contrato
provenance-title = De onde vem
field-decided-by = Decidido por
field-source = Fonte
field-confirmed = Confirmado pela última vez em
field-ask-again = Perguntar de novo em
rule-more = Datas, exceções e aprovação
field-also = Também aceito por
field-overrides = Vem antes destas regras do seu nível
field-temporary = Regra temporária
field-from = De
field-until = Até
field-season = Só em uma parte de cada ano
field-season-from = Primeiro dia da temporada
field-season-until = Último dia da temporada
season-says = Todo ano de { $from } até { $until }
field-banned-from = Proibido por lei em
acknowledgement-title = Exceção a uma regra de segurança embutida
acknowledgement-hint = Só uma pessoa identificada pode permitir, com um motivo. Aparece como alerta em cada checagem.
field-acknowledged-by = Permitido por
field-acknowledged-on = Em
field-acknowledged-because = Porque
condition-title = Quando
condition-always = Sempre: a regra não tem condição.
condition-begin = Acrescentar uma condição
condition-kind = Como as partes contam
condition-all = Todas estas
condition-any = Alguma destas
condition-not = Esta não
condition-fact = Fato
condition-is = é um de
condition-add-fact = Acrescentar um fato
condition-add-group = Acrescentar um grupo
condition-remove = Remover esta parte da condição
bound-at-least = pelo menos
bound-over = mais de
bound-at-most = no máximo
bound-under = menos de
bound-value = Medida com a unidade
bound-day = Dia
bound-like = Comparação do dia a dia
bound-per = Contado

## Items. $item is an item's name

items-all = Todos
items-answer = Resposta
items-asks = Faz uma pergunta
items-ask = Testar
items-ask-name = Testar: { $item }
items-rule = Ir para a regra
items-decide = Decidir
items-decide-name = Decidir: { $item }
items-count =
    { $count ->
        [one] { $count } objeto
        [many] { $count } objetos
       *[other] { $count } objetos
    }

## Texts and their translations

texts-language = Idioma
texts-state = Estado
text-state-missing = Faltando
text-state-unreviewed = Não conferido
text-state-reviewed = Conferido
text-state-outdated = Desatualizado
text-step = Passo de preparo
text-label = { $whose }: { $what }
texts-reviewer = Seu nome, para assinar
texts-reviewer-needed = Escreva seu nome antes: a conferência é assinada.
texts-sign-off = Eu conferi isto
texts-count = { $done } de { $all } conferidos
review-title = Situação de cada idioma
review-screens = Palavras das telas: { $state }
review-source = o idioma de onde vêm os outros
review-by = conferido por { $name } em { $date }
review-outdated = conferido por { $name } em { $date }, mas o inglês mudou depois
review-texts = Seus textos: { $done } de { $all } conferidos
review-names = Assinado por { $names }

## What changed, and trying the guide

ask-title = Perguntar como morador
changes-title = O que suas edições mudaram
changes-count =
    { $count ->
        [0] Nenhuma resposta mudou.
        [one] { $count } resposta mudou.
        [many] { $count } respostas mudaram.
       *[other] { $count } respostas mudaram.
    }
changes-absent = Não está no guia
changes-details = O lugar é o mesmo; o preparo ou o motivo mudou.
changes-mark = Comparar a partir daqui

## Findings. $item is an item's name, $answers a list such as "Wet: dry"

findings-title = Achados
findings-count = Erros: { $errors } · Alertas: { $warnings } · Avisos: { $notices }
findings-more =
    { $count ->
        [one] e mais { $count }
        [many] e mais { $count }
       *[other] e mais { $count }
    }
severity-error = Erro
severity-warning = Alerta
severity-notice = Aviso
severity-pass = Certo
witness = Por exemplo: { $item }, quando { $answers }
witness-item = Por exemplo: { $item }

## What a finding says, and below it what to do. Values are ids and texts of the program

finding-uncovered-case = Nenhuma regra decide este caso.
    .hint = Escreva uma regra para ele ou diga na tela do programa o que o silêncio quer dizer.
finding-conflicting-rules = Regras do mesmo nível mandam a mesma coisa para lugares diferentes: { $rules }.
    .hint = Mude a condição de uma delas ou faça uma vir antes da outra.
finding-hazard-not-safe =
    { $problem ->
        [no-channel] O perigo “{ $class }” não tem canal.
        [unknown-channel] O perigo “{ $class }” vai para um canal que não existe.
        [channel-does-not-take-it] O perigo “{ $class }” vai para um canal que não está marcado como seguro para ele.
       *[rule] A regra “{ $id }” manda o perigo “{ $class }” para um lugar que não é seguro para ele.
    }
    .hint = Escolha um canal que o receba com segurança. Perigos nunca vão em contêiner ou lixeira.
finding-hazard-acknowledged = { $by } permitiu uma exceção a uma regra de segurança embutida: “{ $id }”.
    .hint = Confira se a lei local e o lugar permitem e se o motivo ainda vale.
finding-rule-never-applies = A regra “{ $id }” nunca decide nada.
    .hint = Regras antes dela decidem todos os seus casos, ou nenhum objeto cumpre sua condição. Mude-a ou remova-a.
finding-not-listed = Alguns casos deste objeto recebem a resposta “não está na lista, pergunte”.
    .hint = Isso é permitido. Escreva uma regra se souber a resposta.
finding-missing-provenance = Ninguém vê de onde vem a decisão da regra “{ $id }”. Falta: { $missing }.
    .hint = Escreva quem decidiu, com que fonte, e quando a usina confirmou pela última vez.
finding-missing-translation =
    { $state ->
        [unreviewed] Textos em “{ $language }” que ninguém conferiu: { $count }. O primeiro é “{ $first }”.
        [outdated] Textos em “{ $language }” cujo original mudou depois: { $count }. O primeiro é “{ $first }”.
       *[missing] Textos que faltam em “{ $language }”: { $count }. O primeiro é “{ $first }”.
    }
    .hint = Abra a tela de textos e filtre por idioma e estado.
finding-broken-condition =
    { $problem ->
        [unknown-fact] Não há fato “{ $fact }”.
        [no-values] O fato “{ $fact }” é comparado com nada.
        [no-number] “{ $value }” para “{ $fact }” não tem número.
        [no-unit] “{ $value }” para “{ $fact }” não tem unidade.
        [unknown-unit] A unidade de “{ $value }” para “{ $fact }” é desconhecida.
        [wrong-dimension] “{ $value }” não mede “{ $fact }”.
        [negative] “{ $value }” para “{ $fact }” é menos que nada.
        [too-large] “{ $value }” para “{ $fact }” é grande demais para ser verdade.
        [unknown-part] Não há parte “{ $value }”.
        [range-reversed] A faixa “{ $value }” de “{ $fact }” está ao contrário.
       *[unknown-value] “{ $value }” não é um valor de “{ $fact }”.
    }
    .hint = Escolha da lista. Escreva a medida com a unidade, como 2 in, 1 gal ou 10 lb.
finding-broken-item =
    { $problem ->
        [unknown-fact] Não há fato “{ $fact }”.
        [no-values] O fato “{ $fact }” é comparado com nada.
        [no-number] “{ $value }” para “{ $fact }” não tem número.
        [no-unit] “{ $value }” para “{ $fact }” não tem unidade.
        [unknown-unit] A unidade de “{ $value }” para “{ $fact }” é desconhecida.
        [wrong-dimension] “{ $value }” não mede “{ $fact }”.
        [negative] “{ $value }” para “{ $fact }” é menos que nada.
        [too-large] “{ $value }” para “{ $fact }” é grande demais para ser verdade.
        [unknown-part] Não há parte “{ $value }”.
        [no-such-sides] Os lados dados não deixam nenhum tamanho possível: o mais comprido tem de ser o mais comprido.
        [no-range] A faixa de “{ $fact }” não tem começo ou fim.
        [range-reversed] A faixa “{ $value }” de “{ $fact }” está ao contrário.
       *[unknown-value] “{ $value }” não é um valor de “{ $fact }”.
    }
    .hint = Escolha da lista. Escreva a medida com a unidade, como 2 in, 1 gal ou 10 lb.
finding-broken-reference =
    { $kind ->
        [stream] O fluxo “{ $target }” não existe.
        [channel] O canal “{ $target }” não existe.
        [zone] A região “{ $target }” não existe.
        [step] O passo de preparo “{ $target }” não existe.
        [reason] O motivo “{ $target }” não existe.
        [machine] A máquina “{ $target }” não existe.
        [item] O objeto “{ $target }” não existe.
        [rule-of-tier] A regra “{ $target }” é de outro nível; não dá para vir antes dela.
       *[rule] “{ $target }” não existe.
    }
    .hint = Escolha outro ou acrescente o que falta. Um nome vazio quer dizer que nada foi escolhido ainda.
finding-circular-override = Estas regras vêm uma antes da outra em círculo: { $rules }.
    .hint = Tire uma delas da lista “vem antes”.
finding-destination-not-offered = A regra “{ $id }” manda coisas para o fluxo “{ $stream }”, que não é recolhido na região “{ $zone }”.
    .hint = Acrescente o fluxo à região ou escreva outra regra para ela.
finding-duplicate-id =
    { $times ->
        [0] Alguma coisa aqui não tem código.
        [one] O código “{ $id }” é usado { $times } vez.
        [many] O código “{ $id }” é usado { $times } vezes.
       *[other] O código “{ $id }” é usado { $times } vezes.
    }
    .hint = Dê a cada um seu próprio código. Links, etiquetas e traduções dependem dele.
finding-printed-line-untrue =
    { $span ->
        [from] A linha impressa “{ $line }” está errada a partir de { $since }.
        [until] A linha impressa “{ $line }” está errada até { $until }.
        [between] A linha impressa “{ $line }” está errada de { $since } até { $until }.
       *[always] A linha impressa “{ $line }” está errada nesta edição.
    }
    .hint = Imprima a folha de novo ou cubra a linha. Quando a folha não estiver mais em uso, escreva o dia em que foi retirada.
finding-suspicious-text =
    { $problem ->
        [markup] O texto “{ $key }” ({ $language }) tem marcação: { $shown }
        [direction] O texto “{ $key }” ({ $language }) tem um caractere que muda o sentido da escrita: { $shown }
       *[control] O texto “{ $key }” ({ $language }) tem um caractere invisível: { $shown }
    }
    .hint = Os textos são simples. Apague-o e digite as palavras de novo.
finding-too-complex = Há tantas coisas em aberto neste objeto que não dá para ver todos os casos (fatos em aberto: { $count }).
    .hint = Defina alguns dos fatos ou divida-o em vários objetos.
finding-too-many-thresholds = As regras citam tantos limites que não dá para ver todos os casos de alguns objetos ({ $count }). A maioria é de “{ $fact }”: { $thresholds }.
    .hint = Faça as regras terem limites em comum e tire as que já não valem.
finding-unreadable-hours = Não dá para ler o horário “{ $hours }”: { $problem }
    .hint = Escreva assim: Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = “{ $value }” não serve aqui.
    .hint = Escolha um valor da lista ou corrija: uma cor se escreve #2a7f4f, uma posição como latitude e longitude, um endereço começa com https://

## Comparing with a file. $name is a file's name

compare-file-title = Comparar com outro arquivo
compare-file = Escolha uma edição anterior ou o programa de um vizinho
compare-file-name = Comparado com “{ $name }”.
compare-newer = O arquivo é o mais novo dos dois
compare-notice = Aviso do que muda
compare-copy = Copiar o aviso
compare-copied = Copiado.
compare-not-copied = O navegador não copiou. Selecione o texto e copie.
compare-download = Baixar o aviso

## The register of printed sheets. $id is a sheet's id, $day a date

printed-title = O que foi impresso
printed-copies = Número de cópias
printed-note = Anotar como impresso
printed-entry =
    { $copies ->
        [0] { $id }, { $day }
        [one] { $id }, { $day }, { $copies } cópia
        [many] { $id }, { $day }, { $copies } cópias
       *[other] { $id }, { $day }, { $copies } cópias
    }
printed-withdrawn = retirado em { $day }
printed-withdraw = Não está mais em uso
printed-still-out = Ainda está em uso
finding-question-never-matters =
    { $problem ->
        [unknown] Foi definido o que conta quando ninguém sabe “{ $fact }”, mas nenhuma resposta precisa disso.
       *[open] Este objeto deixa “{ $fact }” em aberto, mas nenhuma resposta sobre ele depende disso.
    }
    .hint = Isso não é perguntado a ninguém. Deixe assim ou escreva a regra que precisa disso.
finding-steps-contradict = Uma resposta pede “{ $one }” e “{ $other }”, que não se podem fazer juntos. Regras: { $rules }.
    .hint = Tire um dos dois passos da regra ou mude uma condição para que só uma das regras valha.
finding-preparation-contradicts =
    { $problem ->
        [none] Quem segue o passo “{ $step }” da regra “{ $id }” faz “{ $fact }” virar “{ $value }”, e então nenhuma regra o manda para lá.
       *[rule] Quem segue o passo “{ $step }” da regra “{ $id }” faz “{ $fact }” virar “{ $value }”, e então a regra “{ $other }” o manda para outro lugar.
    }
    .hint = Tire o passo da regra ou faça a regra valer também para o que o passo deixa.
finding-site-never-used =
    { $problem ->
        [item] Diz-se que o lugar “{ $id }” aceita “{ $item }”, que nunca é mandado para um canal deste lugar.
       *[site] Nada é mandado para o lugar “{ $id }”.
    }
    .hint = Escreva uma regra que mande coisas para um dos seus canais, dê-lhe outro canal ou tire-o da lista.
finding-no-site-takes =
    { $problem ->
        [refused] “{ $item }” é mandado para o canal “{ $id }”, mas nenhum dos seus lugares aceita.
       *[none] Coisas como “{ $item }” são mandadas para o canal “{ $id }”, que não tem lugar.
    }
    .hint = Acrescente um lugar, faça um dos lugares aceitar ou mande para outro canal.
finding-item-without-name = O objeto “{ $id }” não tem nome para mostrar. Idiomas sem nome: { $languages }.
    .hint = Escreva o nome no idioma em que o programa é escrito.
finding-name-twice = Os objetos “{ $id }” e “{ $other }” se chamam ambos “{ $name }” em “{ $language }”.
    .hint = Dê a um deles um nome que os distinga. Os moradores escolhem pelo nome.
finding-banned-destination = “{ $item }” é mandado para o fluxo “{ $stream }”, onde a lei o proíbe. Regras: { $rules }.
    .hint = Mande para outro fluxo ou canal ou corrija a proibição onde ela está escrita.
finding-impossible-condition =
    { $problem ->
        [fact] A condição da regra “{ $id }” nunca pode valer: o que ela pede de “{ $fact }” se contradiz.
       *[parts] A condição da regra “{ $id }” nunca pode valer: suas partes se contradizem.
    }
    .hint = Corrija ou tire uma das partes. Onde basta uma, use “alguma destas”.
finding-empty-condition =
    { $problem ->
        [any] A condição da regra “{ $id }” tem um grupo “alguma destas” vazio, que nunca vale.
       *[all] A condição da regra “{ $id }” tem um grupo “todas estas” vazio, que sempre vale.
    }
    .hint = Acrescente o que falta no grupo ou remova o grupo.
finding-rule-without-condition = A regra “{ $id }” não tem condição: ela decide tudo o que um nível anterior não decide.
    .hint = Escreva quando ela vale. Se é para todo o resto, ponha-a no nível “default”.
finding-text-missing-register =
    { $register ->
        [contract] Regras sem as palavras do contrato: { $count }. A primeira é “{ $first }”.
        [sorters] Regras sem palavras para quem separa: { $count }. A primeira é “{ $first }”.
       *[residents] Regras sem palavras ou motivo para os moradores: { $count }. A primeira é “{ $first }”.
    }
    .hint = Escreva-as na tela da regra, para que as três digam o mesmo.
finding-unused-thing =
    { $kind ->
        [stream] Nenhuma regra manda nada para o fluxo “{ $id }”.
        [channel] Nem regra nem perigo vai para o canal “{ $id }”.
        [step] Nenhuma regra pede o passo “{ $id }”.
        [zone] Nada muda na região “{ $id }”: nenhuma regra, contêiner ou fluxo a cita.
       *[machine] Nenhuma regra cita a máquina “{ $id }”.
    }
    .hint = Deixe se for precisar; se não, remova.
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] Não há fato “{ $fact }” cujos valores possam contar como outro.
        [unlisted-fact] “{ $fact }” não tem lista de valores; nenhum pode contar como outro.
        [unknown-value] “{ $value }” não é um valor de “{ $fact }”.
        [danger] “{ $fact }” é um perigo: nenhum valor dele conta como outro.
        [nothing] Não se cita nada que conte como “{ $value }” para “{ $fact }”.
        [itself] “{ $value }” de “{ $fact }” conta como ele mesmo.
        [twice] “{ $value }” de “{ $fact }” conta como dois valores diferentes.
        [circle] Valores de “{ $fact }” contam um como o outro em círculo, entre eles “{ $value }”.
       *[chain] “{ $value }” de “{ $fact }” já conta como outro valor, então nada pode contar como ele.
    }
    .hint = Escolha valores da lista. Cada um conta como um só outro, que conta apenas como ele mesmo.
finding-season-broken =
    { $problem ->
        [reversed] O último dia da regra “{ $id }” vem antes do primeiro: { $value }.
       *[not-a-year-day] “{ $value }” não é um dia do ano, então não dá para ler a temporada da regra “{ $id }”.
    }
    .hint = Escreva mês e dia, como 11-01. Uma temporada pode passar do ano-novo; dias com ano, não.
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] “{ $value }” não é um tipo de regra para o contêiner “{ $id }”.
        [twice] O contêiner “{ $id }” tem duas regras do tipo “{ $value }”.
        [limit] Não dá para ler o limite “{ $value }” do contêiner “{ $id }”.
       *[unknown-dwelling] “{ $value }” não é um tipo de moradia, então o contêiner “{ $id }” não é usado em nenhuma.
    }
    .hint = Escolha da lista, ponha os dois textos em uma regra ou escreva um limite com a unidade: 100 lb, 3 ft, 10%.
finding-comparison-broken =
    { $problem ->
        [unknown-like] Não há objeto do dia a dia “{ $value }” para comparar “{ $fact }”.
        [other-dimension] “{ $value }” não diz nada sobre “{ $fact }”: é outro tipo de medida.
        [far] “{ $value }” é mais que o dobro ou menos que a metade da medida dada para “{ $fact }”.
       *[unknown-period] Não dá para contar “{ $fact }” por “{ $value }”.
    }
    .hint = Escolha um da lista ou deixe sem comparação.

## Ways to mend a finding, on buttons and in lists. Values are ids and texts of the program

fix-replace = Pôr “{ $with }” no lugar de “{ $value }”
fix-choose = Escolher “{ $with }”
fix-remove = Tirar “{ $value }”
fix-replace-fact = Comparar “{ $with }” no lugar de “{ $fact }”
fix-replace-value = Pôr “{ $with }” no lugar de “{ $value }”
fix-remove-value = Tirar “{ $value }” da condição
fix-replace-item-fact = Pôr o fato “{ $with }” no lugar de “{ $fact }”
fix-remove-rule = Remover a regra “{ $rule }”
fix-go-before = Fazer “{ $rule }” vir antes de { $over }
fix-not-before = Não fazer mais “{ $rule }” vir antes de “{ $over }”
fix-silence-undecided = Deixar em aberto o que o silêncio quer dizer
fix-silence-ask = Lista aberta: responder “não está na lista, pergunte” ao que nenhuma regra cita
fix-silence-closed = Lista fechada: recusar o que nenhuma regra cita
fix-answer-yes = Rascunhar uma regra: “{ $item }” vai para “{ $stream }”
fix-answer-no = Rascunhar uma regra: “{ $item }” não é aceito e vai para “{ $stream }”
fix-route = Mandar o perigo “{ $class }” para o canal “{ $channel }”
fix-send-to = Mandar o que a regra “{ $rule }” trata para o canal “{ $channel }”
fix-collect = Recolher “{ $stream }” também na região “{ $zone }”
fix-except-zone = Não aplicar a regra “{ $rule }” na região “{ $zone }”
fix-own-ids = Dar códigos novos: { $with }
fix-remove-twins = Remover as cópias iguais em tudo
fix-swap-dates = Trocar o primeiro e o último dia
fix-drop-from = Tirar o primeiro dia
fix-drop-until = Tirar o último dia
fix-drop-season = Tirar a temporada
fix-swap-position = Trocar latitude e longitude
fix-add-language = Publicar também em “{ $language }”
fix-remove-empty = Remover os grupos vazios
fix-remove-unused = Remover “{ $id }”
fix-drop-counting = Não deixar nada contar como “{ $value }” para “{ $fact }”
fix-clean-text = Tirá-lo do texto
mend-title = Jeitos de corrigir
mend-done = Feito: { $fix }. Você pode desfazer.
mend-gone = Nada mudou: o programa não é mais o que era quando isto foi oferecido.
