### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = Folha
sheet-lid = Etiqueta de tampa, 7 × 9 pol
sheet-postcard = Cartão-postal, 9 × 6 pol
print-zone = Só para uma região
print-language = Idioma { $number }
print-make = Fazer a folha
print-making = Fazendo a folha…
print-done = A folha está pronta.
print-refused = Nenhum arquivo foi feito. Corrija os erros abaixo e tente de novo.
print-unreachable = Não foi possível carregar a parte de impressão. Confira a conexão e tente de novo.
print-download = Baixar o PDF para a gráfica
print-page = Página { $number }
print-no-stream = Não há fluxo “{ $stream }”. Escolha um da lista.
print-no-zone = Não há região “{ $zone }”. Escolha uma da lista.
print-no-language = Escolha de um a três idiomas do programa.
print-shortened = { $item }: só a linha dele está certa em { $percent } dos casos; o resto foi cortado para caber.
preflight-title = Conferido para a gráfica

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = Sangria de { $bleed } mm em volta, nada a menos de { $safe } mm da borda.
preflight-hazards-shown = Perigos mostrados: { $count }.
preflight-ink-coverage = Mais tinta em um ponto: { $coverage }%, limite { $limit }%.
preflight-postal-zones = As áreas livres do lado do endereço estão vazias.
preflight-qr-code = Código QR: versão { $version }, nível { $level }, módulos de { $module } mm, margem de { $quiet } módulos.
preflight-type-sizes = Letra de { $body } pt, a menor { $smallest } pt; a { $distance } mm de distância é preciso pelo menos { $floor } pt.

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = Ninguém conferiu os textos em “{ $lang }”. Peça que alguém leia antes de imprimir.
preflight-postal-field-missing = O campo “{ $field }” está vazio. Preencha ou deixe a gráfica acrescentar.
preflight-qr-dense = O código QR é muito fino (versão { $version }, { $characters } caracteres). Um endereço mais curto é mais fácil de escanear.

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = O endereço do código QR não serve: “{ $address }”. Escreva-o inteiro, começando com https://
preflight-bad-character =
    { $kind ->
        [bidi] { $place }: “{ $text }” tem um caractere que muda o sentido da escrita ({ $codepoint }, posição { $position }). Apague-o e digite as palavras de novo.
        [control] { $place }: “{ $text }” tem um caractere de controle ({ $codepoint }, posição { $position }). Apague-o e digite as palavras de novo.
       *[invisible] { $place }: “{ $text }” tem um caractere invisível ({ $codepoint }, posição { $position }). Apague-o e digite as palavras de novo.
    }
preflight-date-invalid = “{ $date }” não é uma data. Escreva ano, mês e dia: 2027-01-31
preflight-distance-invalid = “{ $distance }” não é uma distância de leitura em mm. Escreva a que distância fica o leitor.
preflight-font-not-embeddable = A fonte “{ $family }” não pode ser posta em arquivos. Escolha outra.
preflight-font-unreadable = Não dá para ler o arquivo da fonte “{ $family }”. Baixe-o de novo.
preflight-hazard-accepted = { $place }: “{ $text }” é um perigo entre as coisas aceitas. Perigos nunca vão em contêiner ou lixeira: corrija a regra.
preflight-hazard-missing = Falta o perigo “{ $text }” na folha em “{ $lang }”. Perigos nunca são cortados para ganhar espaço.
preflight-language-count = Uma folha leva de um a três idiomas, não { $count }.
preflight-language-invalid = “{ $lang }” não é um código de idioma. Escreva algo como es ou es-US.
preflight-language-twice = O idioma “{ $lang }” está duas vezes. Tire um.
preflight-languages-differ = “{ $lang }” não diz o mesmo que “{ $first }”: { $what }.
preflight-missing-glyph = { $place }: nenhuma fonte daqui tem { $characters }, usado em “{ $text }”. Escreva sem ele ou acrescente uma fonte que o tenha.
preflight-nothing-to-say = Não há o que imprimir: o programa não diz nada sobre este fluxo. Escreva regras para ele antes.
preflight-outside-safe-area = “{ $what }” está a menos de { $safe } mm da borda e pode ser cortado.
preflight-pictogram-unknown = { $place }: não há figura “{ $pictogram }”. Escolha outra.
preflight-picture-too-small = Uma figura tem só { $side } mm de largura. Imprima menos linhas ou idiomas.
preflight-postal-field-full = A linha { $line } do campo “{ $field }” não cabe: “{ $text }”. Encurte-a.
preflight-postal-zone = “{ $what }” está na área reservada: { $zone }. Mude de lugar ou encurte.
preflight-profile-unusable = O perfil de cor não serve: { $why }. Use o perfil de saída CMYK que a gráfica indicar.
preflight-qr-too-fine = O código QR é fino demais para escanear: os módulos têm { $module } mm. Encurte o endereço.
preflight-qr-too-long = O endereço tem { $characters } caracteres, mais do que cabe em um código QR. Encurte-o.
preflight-rule-too-thin = A linha “{ $what }” é fina demais para imprimir.
preflight-text-empty = { $place } não tem palavras. Escreva algumas.
preflight-text-overlaps = “{ $text }” e “{ $other }” ficam um sobre o outro. Encurte um deles.
preflight-text-too-long = { $place } ({ $lang }): “{ $text }” não cabe, nem em { $floor } pt, a menor letra legível. Corte cerca de { $cut } caracteres.
preflight-too-many-lines = A folha “{ $sheet }” tem { $lines } linhas em { $languages } idiomas e faltam { $missing } mm para elas em { $floor } pt. Tire linhas ou imprima menos idiomas.
preflight-too-much-ink = Há { $coverage }% de tinta em um ponto; o limite é { $limit }%. Escolha uma cor mais clara.
preflight-type-too-small = “{ $text }” está em { $size } pt; é preciso pelo menos { $least } pt. Encurte os textos.
preflight-word-too-wide = { $place } ({ $lang }): a palavra “{ $word }” em “{ $text }” é mais larga que a coluna em { $floor } pt. Use uma palavra de cerca de { $room } caracteres no máximo.
