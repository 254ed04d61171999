### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = Folha
sheet-lid = Etiqueta de tampa
sheet-sticker = Adesivo redondo, uma mensagem
sheet-sign = Placa para contêineres compartilhados
sheet-postcard = Cartão-postal
sheet-self-mailer = Folheto dobrado para o correio
sheet-handout = Folheto para entregar
print-size = Tamanho final
print-size-usual = O de costume
print-size-typed = Digitado abaixo
print-typed-size = Tamanho com a unidade, como 8 x 12 in; para uma etiqueta redonda, 115 mm
print-size-unread = “{ $text }” não é um tamanho. Escreva largura, altura e unidade: 8 x 12 in
print-corner = Raio dos cantos, em mm
print-fold = Dobra
print-fold-half = Uma, no meio
print-fold-thirds = Duas, como uma carta
print-die-line = Desenhar a linha de corte em cor especial
print-printers-mark = Deixar espaço para a marca da gráfica
print-more = Mais opções para a gráfica
print-stock = Papel
print-thickness = Espessura do papel, em mm
print-distance = Distância de leitura, em mm
print-qr-level = Código QR: dano que aguenta
print-qr-most = O máximo sem aumentar o código
print-qr-medium = 15% (M)
print-qr-quartile = 25% (Q)
print-qr-high = 30% (H)
print-words = Palavras por linha, no máximo
print-words-any = Quantas forem precisas
print-item = Um objeto
print-press = Várias por folha de máquina
print-press-none = Uma por página
print-work-and-turn = Tira e retira
print-no-item = Não há objeto “{ $item }”. Escolha um da lista.
print-nothing-against = Nada diz que “{ $item }” é recusado. Escolha uma coisa recusada ou um perigo.
print-ticket = Baixar a ordem de serviço
print-number-unread = “{ $text }” não é um número de milímetros.
ticket-title = Ordem de serviço
ticket-sheet = Folha
ticket-files = Arquivos
ticket-file =
    { $pages ->
        [one] { $file }: { $pages } página
        [many] { $file }: { $pages } páginas
       *[other] { $file }: { $pages } páginas
    }
ticket-quantity = Quantidade
ticket-copies =
    { $copies ->
        [one] { $languages }: { $copies } cópia
        [many] { $languages }: { $copies } cópias
       *[other] { $languages }: { $copies } cópias
    }
ticket-copies-unsaid = { $languages }: número de cópias a combinar
ticket-trim = Tamanho final
ticket-size = { $width } × { $height } mm ({ $across } × { $down } in)
ticket-bleed = Sangria, em cada lado
ticket-mm = { $length } mm
ticket-corners = Cantos
ticket-round = Corte em círculo
ticket-radius = Arredondados, raio de { $radius } mm
ticket-square = Retos
ticket-die = Linha de corte na cor especial “Dieline”, em sobreimpressão: não imprimir
ticket-folds = Dobras
ticket-fold = Na largura, { $at } mm abaixo da borda de cima da folha aberta
ticket-fold-order = O painel do endereço fica por fora. A borda de baixo dele é uma dobra; a peça abre na borda de cima e é fechada ali com selos adesivos.
ticket-colours = Cores
ticket-colours-one = 4/0: ciano, magenta, amarelo e preto em um lado
ticket-colours-two = 4/4: ciano, magenta, amarelo e preto nos dois lados
ticket-colours-note = PDF/X-4; texto preto em sobreimpressão; tinta total de no máximo { $limit }%
ticket-stock = Papel
ticket-stock-unsaid = A combinar
ticket-thickness = Espessura de { $thickness } mm
ticket-thickness-unsaid = Espessura a confirmar
ticket-press = Folha de máquina
ticket-work-and-turn = Tira e retira: o verso está na mesma chapa
ticket-mark = Marca da gráfica
ticket-mark-room = Um espaço de 19 × 6 mm fica livre na letra miúda
ticket-edition = Edição
ticket-date = Data do trabalho
ticket-contact = Dúvidas com
print-zone = Só para uma região
print-language = Idioma { $number }
print-make = Fazer a folha
print-making = Fazendo a folha…
print-done = A folha está pronta.
print-refused = Nenhum arquivo foi feito. Corrija os erros abaixo e tente de novo.
print-unreachable = Não foi possível carregar a parte de impressão. Confira a conexão e tente de novo.
print-download = Baixar o PDF para a gráfica
print-download-web = Baixar o PDF para a web
print-web-hint = O PDF para a gráfica vai para a gráfica. O PDF para a web é para ler na tela e em voz alta.
print-profile = Perfil de cor da gráfica (.icc)
print-profile-hint = Sem ele, usa-se o perfil incluído, para papel revestido.
print-ink-limit = Máximo de tinta, em %
print-mark = Marcado com { $number } na folha
print-contradictions = Linhas que se contradizem: { $count }. Veja abaixo antes de imprimir.
print-page = Página { $number }
print-no-stream = Não há fluxo “{ $stream }”. Escolha um da lista.
print-no-zone = Não há região “{ $zone }”. Escolha uma da lista.
print-no-language = Escolha de um a quatro idiomas do programa.
print-shortened = { $item }: só a linha dele está certa em { $percent } dos casos; o resto foi cortado para caber.
print-left-out = Cortado por falta de espaço: { $items }.
print-hazards-in-brief = Não houve espaço para os lugares que recebem perigos; o código e o telefone da folha levam a eles.
print-refused-in-brief = Não houve espaço para dizer aonde vai o que fica de fora; o código e o telefone da folha dizem.
preflight-title = Conferido para a gráfica

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Sangria de { $bleed } mm em volta, nada a menos de { $safe } mm da borda.
preflight-boxes = Tamanho final { $finished } mm, com sangria { $bleed } mm, página com marcas { $page } mm.
preflight-contrast = As palavras se destacam do fundo: contraste de pelo menos { $ratio }:1, pelo menos { $difference }% de preto de diferença.
preflight-fonts-embedded = Todas as fontes estão no arquivo, reduzidas às { $glyphs } formas de caracteres usadas: { $fonts }.
preflight-pictures-have-words = Figuras com palavras para quem não pode vê-las: { $count }.
preflight-hazards-shown = Perigos mostrados: { $count }.
preflight-ink-coverage = Mais tinta em um ponto: { $coverage }%, limite { $limit }%.
preflight-postal-zones = As áreas livres do lado do endereço estão vazias.
preflight-qr-code = Código QR: versão { $version }, nível { $level }, módulos de { $module } mm, margem de { $quiet } módulos.
preflight-type-sizes = Letra de { $body } pt, a menor { $smallest } pt; a { $distance } mm de distância é preciso pelo menos { $floor } pt.
preflight-translation-outdated = “{ $text }” ({ $lang }): o original mudou depois da tradução. Traduza de novo antes de imprimir.
preflight-line-often-wrong = “{ $text }” sozinho só está certo em { $percent }% dos casos. Diga mais ou tire a linha.
preflight-lines-contradict = “{ $text }” e “{ $other }” ({ $lang }) se contradizem: quem lê a primeira linha acha que vale para as duas. Mude as palavras de uma.
preflight-picture-without-words = Faltam palavras para quem não pode ver o que está aqui ({ $what }). Escreva algumas.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = Ninguém conferiu os textos em “{ $lang }”. Peça que alguém leia antes de imprimir.
preflight-postal-field-missing = { $field }: vazio. Preencha ou deixe a gráfica acrescentar.
preflight-qr-dense = O código QR é muito fino (versão { $version }, { $characters } caracteres). Um endereço mais curto é mais fácil de escanear.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = O endereço do código QR não serve: “{ $address }”. Escreva-o inteiro, começando com https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” tem um caractere que muda o sentido da escrita ({ $codepoint }, posição { $position }). Apague-o e digite as palavras de novo.
        [control] { $place }: “{ $text }” tem um caractere de controle ({ $codepoint }, posição { $position }). Apague-o e digite as palavras de novo.
       *[invisible] { $place }: “{ $text }” tem um caractere invisível ({ $codepoint }, posição { $position }). Apague-o e digite as palavras de novo.
    }
preflight-boxes-wrong = As medidas não cabem uma na outra: tamanho final { $finished } mm, com sangria { $bleed } mm, página { $page } mm. Escolha outra folha.
preflight-contrast-low = “{ $text }” quase não se destaca do fundo: contraste { $ratio }:1, é preciso pelo menos { $least }:1; { $difference }% de preto de diferença, é preciso pelo menos { $apart }%. Escolha outras tintas.
preflight-ink-limit-invalid = “{ $limit }” não é um limite de tinta. Escreva a soma das quatro chapas que a gráfica indica, de 100 a 400%.
preflight-qr-not-quiet = O código QR não tem { $quiet } módulos de papel limpo em volta. Mude de lugar o que está ali.
preflight-date-invalid = “{ $date }” não é uma data. Escreva ano, mês e dia: 2027-01-31
preflight-distance-invalid = “{ $distance }” não é uma distância de leitura em mm. Escreva a que distância fica o leitor.
preflight-font-not-embeddable = A fonte “{ $family }” não pode ser posta em arquivos. Escolha outra.
preflight-font-unreadable = Não dá para ler o arquivo da fonte “{ $family }”. Baixe-o de novo.
preflight-hazard-accepted = { $place }: “{ $text }” é um perigo entre as coisas aceitas. Perigos nunca vão em contêiner ou lixeira: corrija a regra.
preflight-hazard-missing = Falta o perigo “{ $text }” na folha em “{ $lang }”. Perigos nunca são cortados para ganhar espaço.
preflight-language-count = Uma folha leva de um a quatro idiomas, não { $count }.
preflight-language-invalid = “{ $lang }” não é um código de idioma. Escreva algo como es ou es-US.
preflight-language-twice = O idioma “{ $lang }” está duas vezes. Tire um.
preflight-languages-differ =
    { $what ->
        [sections] “{ $lang }” não diz o mesmo que “{ $first }”: tem { $theirs } seções, não { $ours }. Traduza o que falta.
        [verdict] “{ $lang }” não diz o mesmo que “{ $first }”: a seção { $section } tem outro veredito. Corrija-o.
        [lines] “{ $lang }” não diz o mesmo que “{ $first }”: a seção { $section } tem { $theirs } linhas, não { $ours }. Traduza o que falta.
       *[picture] “{ $lang }” não diz o mesmo que “{ $first }”: a linha { $line } da seção { $section } tem outra figura ou outra marca de perigo. Corrija isso.
    }
preflight-missing-glyph = { $place }: nenhuma fonte daqui tem { $characters }, usado em “{ $text }”. Escreva sem ele ou acrescente uma fonte que o tenha.
preflight-nothing-to-say = Não há o que imprimir: o programa não diz nada sobre este fluxo. Escreva regras para ele antes.
preflight-outside-safe-area = A menos de { $safe } mm da borda, onde pode ser cortado: { $what }
preflight-pictogram-unknown = { $place }: não há figura “{ $pictogram }”. Escolha outra.
preflight-picture-too-small = Uma figura tem só { $side } mm de largura. Imprima menos linhas ou idiomas.
preflight-postal-field-full = { $field }: “{ $text }” (linha { $line }) não cabe. Encurte.
preflight-postal-zone = Em uma área reservada ({ $zone }): { $what }. Mude de lugar ou encurte.
preflight-profile-unusable =
    { $why ->
        [not-icc] O arquivo não é um perfil de cor. Use o perfil de saída CMYK (.icc) que a gráfica indicar.
        [cut-short] O perfil de cor está incompleto. Peça à gráfica que o envie de novo.
        [no-tables] O perfil de cor “{ $name }” não tem tabelas de cor. Use o perfil de saída CMYK que a gráfica indicar.
       *[other-kind] O perfil de cor “{ $name }” não é um perfil de saída CMYK: é para { $class }, em { $space }. Use o que a gráfica indicar.
    }
preflight-qr-too-fine = O código QR é fino demais para escanear: os módulos têm { $module } mm. Encurte o endereço.
preflight-qr-too-long = O endereço tem { $characters } caracteres, mais do que cabe em um código QR. Encurte-o.
preflight-rule-too-thin = Um traço tem só { $width } pt; o mais fino que se imprime tem { $least } pt.
preflight-step-invalid = Não dá para fazer o passo { $number } do que se pode cortar. Os detalhes, em inglês: { $why }.
preflight-text-empty = { $place } não tem palavras. Escreva algumas.
preflight-text-overlaps = “{ $text }” e “{ $other }” ficam um sobre o outro. Encurte um deles.
preflight-text-too-long = { $place }: “{ $text }” não cabe, nem em { $floor } pt, a menor letra legível. Corte cerca de { $cut } caracteres.
preflight-too-many-lines = A folha “{ $sheet }” tem { $lines } linhas em { $languages } idiomas e faltam { $missing } mm para elas em { $floor } pt. Tire linhas ou imprima menos idiomas.
preflight-too-much-ink = Há { $coverage }% de tinta em um ponto; o limite é { $limit }%. Escolha uma cor mais clara.
preflight-type-too-small = “{ $text }” está em { $size } pt; é preciso pelo menos { $least } pt. Encurte os textos.
preflight-word-too-wide = { $place }: a palavra “{ $word }” em “{ $text }” é mais larga que a coluna em { $floor } pt. Use uma palavra de cerca de { $room } caracteres no máximo.
sheet-text-title = Título ({ $lang })
sheet-text-heading = Título da seção { $section } ({ $lang })
sheet-text-line = Linha { $line } da seção { $section } ({ $lang })
sheet-text-scan = Frase ao lado do código QR ({ $lang })
sheet-text-foot = Linha { $line } no pé ({ $lang })
sheet-text-issuer = Quem publica a folha
sheet-text-short-address = Endereço web curto
sheet-text-notice = Aviso de impressão
sheet-text-edition = Edição
sheet-text-job-name = Nome do trabalho
sheet-text-slug = Linha fora da folha
sheet-text-return-address = Endereço do remetente { $line }
sheet-text-indicia = Marca de franquia postal { $line }
sheet-text-addressee = Endereço de entrega { $line }
postal-zone-barcode-clear = faixa branca para o código de barras do correio
postal-zone-read-area = área onde as máquinas do correio leem o endereço
drawn-code = o código QR
drawn-picture = uma figura
drawn-area = uma área de tinta
sheet-cart-lid = etiqueta de tampa
sheet-round-sticker = adesivo redondo
sheet-enclosure-sign = placa para contêineres compartilhados
sheet-text-stock = Material
sheet-postcard-mailer = cartão-postal
profile-class-mntr = um monitor
profile-class-scnr = um scanner ou uma câmera
profile-class-other = outro uso
preflight-size-zero = A folha tem { $width } × { $height } mm. Os dois lados têm que ser maiores que zero: digite o tamanho final de novo.
preflight-size-fixed = A folha tem { $width } × { $height } mm, mas esta só é feita nestes tamanhos: { $names }.
preflight-size-out-of-range = A folha tem { $width } × { $height } mm. Digite lados de { $least } a { $most } mm, com a unidade.
preflight-size-too-narrow = A folha tem { $width } × { $height } mm. Um lado pode ter no máximo { $most } vezes o outro.
preflight-size-not-round = Uma etiqueta redonda tem a largura igual à altura, não { $width } × { $height } mm. Digite o diâmetro.
preflight-postal-size = O correio não aceita cartão, carta ou carta grande de { $width } × { $height } mm. Uma carta tem de 127 a 292 mm de comprimento, de 89 a 156 mm de altura, e o comprimento é de 1,3 a 2,5 vezes a altura; uma carta grande tem no máximo 381 × 305 mm.
preflight-corner-radius = O raio dos cantos é de { $radius } mm. Indique um de 0 a { $most } mm.
preflight-stock-thickness = O papel tem { $thickness } mm de espessura, e nenhum papel ou filme de etiqueta é assim. Veja o que a gráfica enviou.
preflight-one-message = Uma etiqueta redonda leva uma só mensagem, não { $lines }. Escolha uma coisa só.
preflight-press-size = A folha de máquina tem { $width } × { $height } mm. Digite lados de { $least } a { $most } mm, com a unidade.
preflight-press-gutter = O espaço entre as folhas é de { $gutter } mm. Duas sangrias precisam de { $least } mm.
preflight-press-too-small = Nenhuma folha cabe em uma folha de máquina de { $width } × { $height } mm com sangria e marcas. Escolha uma maior.
preflight-press-up = Foram pedidas { $up } em uma folha de máquina onde cabem { $most }. Peça de 1 a { $most }.
preflight-on-a-fold = “{ $what }” está a menos de { $distance } mm de uma dobra. Encurte os textos.
preflight-postal-thickness = A peça pronta tem { $thickness } mm de espessura. O correio pede de { $least } a { $most } mm: escolha outro papel.
preflight-ticket-too-long = A ordem de serviço é longa demais em “{ $place }”. Encurte o que foi digitado ali.
preflight-imposed = { $up } em uma folha de máquina de { $width } × { $height } mm: { $across } na largura, { $down } na altura.
preflight-fits-fewer = Tudo cabe nestes idiomas juntos: { $tags }. Imprima esses, e os outros em uma folha à parte.
preflight-fits-larger = Tudo cabe no tamanho { $size }. Escolha esse tamanho.
preflight-folds-clear = Dobras: { $count }. Nada é impresso a menos de { $distance } mm delas.
preflight-postal-class =
    { $class ->
        [card] Enviado como cartão: { $length } × { $height } mm.
        [folded] Enviado como folheto dobrado: { $length } × { $height } mm depois de dobrado.
        [flat] Enviado como carta grande: { $length } × { $height } mm.
       *[letter] Enviado como carta: { $length } × { $height } mm.
    }
preflight-postal-thickness-unknown = Ninguém disse a espessura do papel. O correio pede de { $least } a { $most } mm para a peça pronta: pergunte à gráfica.
preflight-sign-letters = As maiúsculas do título têm { $height } mm de altura, o bastante para ler a { $distance } mm.
preflight-sign-letters-small = As maiúsculas do título têm { $height } mm de altura. Placas acessíveis lidas a { $distance } mm pedem { $least } mm: encurte os textos ou use uma placa maior.
preflight-die-line = A linha de corte está em uma cor especial própria, “Dieline”, e em nenhuma chapa impressa.
