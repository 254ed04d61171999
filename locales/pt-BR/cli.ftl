### The command line: its help, what it says when done, and what it says when something is wrong.
### Commands, options and words in capitals are typed or replaced as they stand: do not translate
### the commands and options. Lines beginning with spaces keep them.

## Help

cli-help =
    lidleaf COMANDO [OPÇÕES]

      check PROGRAMA         lista o que está errado em um programa
      answer PROGRAMA OBJETO responde sobre um objeto como a um morador
      print PROGRAMA         faz uma etiqueta de tampa ou um cartão-postal em PDF
      batch PROGRAMA…        faz muitas folhas de muitos programas de uma vez
      publish [PROGRAMA]     grava o guia como pasta para qualquer hospedagem
      serve PASTA            mostra uma pasta publicada em um endereço deste computador
      compare ANTES DEPOIS   lista cada resposta que muda de um programa para outro
      demo                   grava o programa de demonstração
      schema                 grava o esquema JSON dos arquivos de programa

    lidleaf help COMANDO, ou lidleaf COMANDO --help, diz mais.

    Códigos de saída:
      0  feito; pode haver alertas
      1  o programa, ou uma folha feita dele, tem erros; nada foi gravado
      2  o comando não foi entendido
      3  um arquivo falta ou não é o que devia ser
      4  não foi possível gravar um arquivo ou abrir um endereço
      5  o objeto, a região ou o fluxo pedido não está lá
      6  parado a pedido; o que já estava pronto fica
cli-help-check =
    lidleaf check PROGRAMA [--catalog ARQUIVO] [--fix NÚMERO --out ARQUIVO]

    Lista cada achado de um programa: primeiro os erros, depois alertas e avisos, cada um com um
    exemplo e o que fazer. Termina com o código 1 quando há erros.

    Os jeitos de corrigir vêm com cada achado, com um número como 2.1. --fix 2.1 aplica esse
    jeito, grava o programa mudado no arquivo que --out indica e lista o que se acha nele. O
    programa lido fica como estava.
cli-help-answer =
    lidleaf answer PROGRAMA OBJETO [--fact FATO=VALOR]… [--zone REGIÃO] [--on AAAA-MM-DD]

    Responde sobre um objeto, pelo código ou pelo nome; o nome pode estar mal escrito. Quando a
    resposta depende de algo, mostra a próxima pergunta com a opção --fact que a responde.
    --fact FATO=? quer dizer que o morador não sabe. O dia é hoje, se --on não indicar outro.
cli-help-print =
    lidleaf print PROGRAMA --sheet FOLHA [OPÇÕES]

      --sheet lid        uma etiqueta para a tampa do contêiner
      --sheet sticker    uma etiqueta redonda com uma mensagem
      --sheet sign       uma placa para contêineres compartilhados, lida de mais longe
      --sheet postcard   um cartão para o correio, dois lados
      --sheet self-mailer  uma folha letter ou A4, dobrada e enviada pelo correio
      --sheet handout    uma folha letter ou A4 para entregar, um lado ou dois
      --stream FLUXO     o fluxo de que trata
      --zone REGIÃO      só para uma região de serviço
      --languages en,pt-BR  nestes idiomas, de um a quatro
      --out LUGAR        uma pasta ou o nome de um arquivo
      --date AAAA-MM-DD  a data do trabalho
      --register         anotar a folha no registro do arquivo de programa
      --copies N         quantas cópias, para o registro e a ordem de serviço; ou en=400,pt-BR=200
      --printed AAAA-MM-DD  o dia da impressão, para o registro; senão, a data do trabalho
      --size TAMANHO     o tamanho final: 8x12in, a4, "200 x 300 mm", ou um diâmetro, 115mm
      --corner 6mm       o raio dos cantos; 0 para cantos retos
      --fold half        como se dobra o folheto para o correio: half (uma dobra) ou thirds (duas)
      --item OBJETO      o único objeto de que trata um adesivo; o código o abre
      --distance 2m      de que distância se lê; isso define a menor letra
      --qr-level H       o dano que o código tem que aguentar: M, Q ou H
      --die-line         desenhar a linha de corte de uma etiqueta em cor especial
      --printers-mark    deixar espaço para a marca da gráfica
      --stock NOME       em que papel se imprime, para a ordem de serviço
      --thickness 0.3mm  a espessura dele; o correio quer saber
      --no-places        tirar a lista de lugares
      --words 6          quantas palavras no máximo por linha, em cada idioma da folha
      --press 13x19in    várias por folha de máquina: 11x17in, 12x18in, 13x19in, sra3, ou digitada
      --gutter 8mm       o espaço entre elas
      --up N             quantas no máximo
      --work-and-turn    frente e verso na mesma chapa
      --alone            um arquivo para cada idioma, não um só para todos
      --no-ticket        não fazer a ordem de serviço
      --for press        um arquivo para uma gráfica (PDF/X-4); é o que se faz se não se pedir outro
      --for web          um arquivo para ler na tela e em voz alta (PDF/UA-1), sem marcas nem sangria
      --profile ARQUIVO  o perfil de saída CMYK (.icc) que a gráfica enviou
      --ink-limit N      o máximo de tinta que o papel dela aceita, em porcentagem: 300 se não se disser

    Faz uma folha em um a quatro idiomas, em PDF para a gráfica, com a ordem de serviço em um
    arquivo separado, e lista o que a checagem achou. Com um erro, nada é gravado. O mesmo
    programa e a mesma data dão os mesmos bytes. Se nada for indicado, valem o fluxo de
    reciclagem, os três primeiros idiomas do programa, a pasta atual e a data de hoje.
cli-help-batch =
    lidleaf batch PROGRAMA… --sheet FOLHAS --out PASTA [OPÇÕES]

      --sheet lid,postcard   estas folhas, ou all para todas
      --stream FLUXOS        os fluxos de que tratam, ou all para todos
      --zone REGIÃO          só para uma região de serviço
      --languages GRUPO      um grupo de idiomas; repita para cada grupo
          en                 em um idioma
          en,pt-BR           nestes juntos
          each               em cada idioma de um programa, em separado
          together           nos três primeiros idiomas de um programa, em uma folha
      --out PASTA            a pasta a encher; cada programa tem nela a sua própria pasta
      --date AAAA-MM-DD      a data dos trabalhos
      --hands N              quantas folhas ao mesmo tempo; senão, tantas quantos os núcleos
      --again                fazer de novo também o que já está feito
      --for press            arquivos para uma gráfica (PDF/X-4), como sem --for
      --for web              arquivos para ler na tela e em voz alta (PDF/UA-1)
      --profile, --ink-limit as condições da gráfica, como em print
      --tickets              uma ordem de serviço ao lado de cada arquivo para a gráfica
      --copies N             quantas cópias, para as ordens de serviço; ou en=400,pt-BR=200
      --alone                uma folha para cada idioma de um grupo
      --size, --press …      como são feitas, como em print: todas as suas opções menos --corner

    Faz cada folha pedida de cada programa. A pasta guarda em batch.json de que foi feito cada
    arquivo: uma segunda execução só faz o que falta ou ficaria diferente. A data faz parte disso;
    sem --date vale a de hoje, e amanhã tudo é feito de novo.

    Uma folha que falha não para as outras; no fim se diz por que cada uma falhou e o que fazer.
    Cada arquivo é gravado inteiro ou não é gravado. Ctrl-C para em ordem: as folhas começadas são
    terminadas, e o mesmo comando continua depois. Termina com o código 1 quando algo falhou.
    Em JSON: “lidleaf-batch-report” (made, skipped, failed com why e next).
cli-help-publish =
    lidleaf publish [PROGRAMA] --out PASTA [--app PASTA]

    Grava o guia e o aplicativo como uma pasta de arquivos que qualquer hospedagem serve, na raiz
    ou em uma pasta dela. Um programa com erros é recusado. O que estava publicado na pasta fica
    até a nova edição estar inteira. Sem programa, vale o de demonstração; o aplicativo vem de
    dist/app, se --app não indicar outra pasta.
cli-help-serve =
    lidleaf serve PASTA [--port N] [--address ENDEREÇO]

    Mostra uma pasta publicada em http://127.0.0.1:8080/, ou na porta e no endereço indicados,
    até ser parado. A porta 0 usa qualquer porta livre. Serve para ver um guia, não para o público.
cli-help-compare =
    lidleaf compare ANTES DEPOIS [--on AAAA-MM-DD] [--notice] [--language CÓDIGO] [--out ARQUIVO]
    lidleaf compare PROGRAMA PROGRAMA PROGRAMA… [--out ARQUIVO]

      --on AAAA-MM-DD    como os dois estão nesse dia, em vez de em todos os dias
      --notice           um aviso de mudanças para uma carta, em grupos e com o contato
      --language CÓDIGO  o idioma em que é escrito
      --out ARQUIVO      um arquivo; se acaba em .md, leva as marcas de Markdown

    Dois programas: lista cada objeto cujo veredito, destino, preparo, motivo ou aviso muda, com
    que respostas exatas e a partir de que dia; depois, as linhas de folhas impressas do registro
    que ficam erradas. De três a cinquenta programas: o que vale em todos, quem difere em cada
    outro objeto e os conselhos contrários.

    Em JSON: “lidleaf-changes” (changes, asked, untrue), “lidleaf-notice” (groups, untrue, text)
    ou “lidleaf-regional” (programs, agreed, differing, contradictory). Em cada um, “when” é uma
    lista de alternativas, cada uma uma lista de fatos com os valores que valem juntos.
cli-help-schema =
    lidleaf schema [--out ARQUIVO]

    Grava o esquema JSON dos arquivos de programa.
cli-help-demo =
    lidleaf demo [--town CIDADE] [--out ARQUIVO]

    Grava o programa de demonstração, um condado todo inventado, para começar; com --town, uma
    das suas cidades-membros: thrushwick, kettlebrae, larkenby ou dunnockford.
cli-help-common =
    Todo comando aceita também:
      --lang CÓDIGO      idioma das mensagens e respostas (en, pt-BR, es …)
      --json             o resultado em JSON
      --catalog ARQUIVO  outro catálogo em vez do que vem junto, onde se lê um programa
      --help             este texto
      --version          a versão

## Done

cli-error = Erro: { $message }
cli-written = Gravado: { $file }
cli-serving = Mostrando { $folder } em { $url } (Ctrl-C para parar)
cli-published =
    { $files ->
        [one] Edição { $edition } publicada em { $folder }: { $files } arquivo, { $size }.
        [many] Edição { $edition } publicada em { $folder }: { $files } arquivos, { $size }.
       *[other] Edição { $edition } publicada em { $folder }: { $files } arquivos, { $size }.
    }

## Findings

cli-severity-error = erro
cli-severity-warning = alerta
cli-severity-notice = aviso
cli-finding = { $severity }: { $message }
cli-place = em { $kind } “{ $id }”
cli-place-field = em { $kind } “{ $id }”, campo “{ $field }”
cli-place-program = no campo “{ $field }” do programa
cli-witness = por exemplo { $item }
cli-witness-answers = por exemplo { $item } ({ $answers })
cli-hint = o que fazer: { $hint }
cli-mend = para corrigir ({ $number }): { $fix }
cli-mended = Feito: { $fix }
cli-check-clean = Nenhum achado: o programa pode ser publicado.
cli-count-errors =
    { $count ->
        [one] { $count } erro
        [many] { $count } erros
       *[other] { $count } erros
    }
cli-count-warnings =
    { $count ->
        [one] { $count } alerta
        [many] { $count } alertas
       *[other] { $count } alertas
    }
cli-count-notices =
    { $count ->
        [one] { $count } aviso
        [many] { $count } avisos
       *[other] { $count } avisos
    }
cli-check-publishable = { $counts }. O programa pode ser publicado.
cli-check-errors = { $counts }. O programa não pode ser publicado enquanto os erros não forem corrigidos.

## Answers

cli-answer-day = Em { $day }
cli-answer-where = Onde: { $place }
cli-answer-also = Também aceito em: { $places }
cli-answer-prepare = Como: { $steps }
cli-answer-why = Por quê: { $reason }
cli-answer-caution = Cuidado: { $caution }
cli-answer-rules = Decidido por: { $rules }
cli-answer-temporary = Vale uma regra temporária.
cli-answer-site = Lugar mais perto: { $site }, { $address }
cli-answer-assumed = Suposto, porque não se sabia: { $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = Não sei

## Sheets

cli-sheet-shortened = linha encurtada: só “{ $item }” leva ao lugar certo em { $percent } dos casos
cli-sheet-left-out = cortado por falta de espaço: { $items }
cli-sheet-hazards-in-brief = sem espaço para os lugares que recebem perigos; o código e o telefone da folha levam a eles
cli-sheet-refused-in-brief = sem espaço para dizer aonde vai o que fica de fora; o código e o telefone da folha dizem
cli-registered = Anotado no registro de { $file } como “{ $id }”.
cli-preflight-pass = Checagem: nada a corrigir.
cli-preflight-warnings =
    { $count ->
        [one] Checagem: { $count } alerta.
        [many] Checagem: { $count } alertas.
       *[other] Checagem: { $count } alertas.
    }
cli-preflight-errors =
    { $count ->
        [one] Checagem: { $count } erro. Nenhum arquivo foi gravado.
        [many] Checagem: { $count } erros. Nenhum arquivo foi gravado.
       *[other] Checagem: { $count } erros. Nenhum arquivo foi gravado.
    }
cli-batch-progress = [{ $done }/{ $of }] { $outcome }: { $file }
cli-batch-made = feito
cli-batch-kept = sem mudança
cli-batch-failed = falha
cli-batch-failed-one = Falha: { $what }
cli-batch-summary = { $folder }: feitos { $made }, sem mudança { $kept }, falhas { $failed }, de { $programs ->
        [one] { $programs } programa.
        [many] { $programs } programas.
       *[other] { $programs } programas.
    }
cli-batch-warned =
    { $count ->
        [one] { $count } folha feita tem alertas: lidleaf print os mostra.
        [many] { $count } folhas feitas têm alertas: lidleaf print os mostra.
       *[other] { $count } folhas feitas têm alertas: lidleaf print os mostra.
    }
cli-batch-stopped = Parado antes de acabar. O mesmo comando continua daqui.
cli-batch-notes-lost = Não foi possível usar as notas de batch.json, então tudo foi feito de novo.
cli-batch-next-preflight = Corrija o programa, ou peça menos idiomas nesta folha, e rode o mesmo comando de novo.
cli-batch-crashed = Não foi possível fazer a folha por causa de um erro neste software.
cli-batch-next-crashed = Guarde a mensagem acima e o arquivo de programa e informe os dois.
cli-batch-program-errors = O programa { $file } tem erros ({ $count }), e nenhuma folha foi feita dele.
    .hint = lidleaf check lista os erros e o que fazer.
cli-batch-same-id = Estes arquivos têm o mesmo código, “{ $id }”, e as folhas deles teriam os mesmos nomes: { $files }.
    .hint = Imprima-os em pastas diferentes.
cli-batch-busy = Outra execução está enchendo a pasta { $file }.
    .hint = Espere ela terminar ou indique outra pasta com --out.
cli-batch-no-shop = As fontes ou o perfil de cor que vêm com o software não servem: { $detail }
    .hint = Instale o software de novo.

## Comparing

cli-compare-same = Todo objeto tem a mesma resposta nos dois programas.
cli-compare-count =
    { $count ->
        [one] { $count } resposta muda.
        [many] { $count } respostas mudam.
       *[other] { $count } respostas mudam.
    }
cli-compare-share = { $percent } dos casos

## Commands not understood. Each says what to type instead.

cli-usage-command = Não há comando “{ $command }”.
    .hint = lidleaf --help lista os comandos.
cli-usage-option = A opção { $option } não é deste comando.
    .hint = lidleaf help COMANDO lista as opções dele.
cli-usage-word = “{ $word }” é uma palavra a mais.
    .hint = Ponha entre aspas os nomes com espaços.
cli-usage-not-text = “{ $word }” não é texto legível.
    .hint = Digite o valor da opção em UTF-8.
cli-usage-needs-value = A opção { $option } precisa de um valor depois dela.
    .hint = lidleaf help COMANDO mostra o que ela aceita.
cli-usage-no-value = A opção { $option } não aceita valor.
    .hint = Tire o sinal de igual e o que vem depois.
cli-usage-needs-option = Falta a opção { $option }.
    .hint = lidleaf help COMANDO mostra o que ela aceita.
cli-usage-needs-program = Falta o arquivo de programa.
    .hint = Indique-o depois do comando: lidleaf check program.json
cli-usage-needs-item = É preciso um arquivo de programa e um objeto.
    .hint = Por exemplo: lidleaf answer program.json "caixa de pizza"
cli-usage-needs-two = São precisos dois arquivos de programa, o de antes e o de depois.
    .hint = Por exemplo: lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = Falta a pasta a mostrar.
    .hint = Por exemplo: lidleaf serve dist/site
cli-usage-fact = “{ $word }” não é um fato e seu valor.
    .hint = Escreva com um sinal de igual: --fact resin=1
cli-usage-date = “{ $word }” não é um dia.
    .hint = Escreva ano, mês e dia: 2027-01-31
cli-usage-copies = “{ $word }” não é um número de cópias.
    .hint = Escreva um número inteiro, --copies 400, ou um para cada idioma, --copies en=400,pt-BR=200
cli-usage-for = “{ $word }” não é um uso de uma folha.
    .hint = Escreva --for press, para uma gráfica, ou --for web, para ler na tela e em voz alta.
cli-usage-ink-limit = “{ $word }” não é um limite de tinta.
    .hint = Escreva a soma das quatro chapas em por cento: --ink-limit 280
cli-usage-press-only = { $option } é para a gráfica, e --for web não faz arquivo para ela.
    .hint = Tire um dos dois.
cli-usage-hands = “{ $word }” não é um número de folhas feitas ao mesmo tempo.
    .hint = Escreva um número inteiro a partir de 1: --hands 4
cli-usage-port = “{ $word }” não é uma porta.
    .hint = Escreva um número de 0 a 65535; 0 usa qualquer porta livre.
cli-usage-address = “{ $word }” não é um endereço de rede.
    .hint = Escreva 127.0.0.1 só para este computador, 0.0.0.0 para a rede local.
cli-usage-language = Não há mensagens em “{ $word }”.
    .hint = Há: { $known }.
cli-usage-sheet = Não há folha “{ $word }”.
    .hint = Escreva --sheet e um destes: lid, sticker, sign, postcard, self-mailer, handout.
cli-usage-fix = “{ $word }” não é o número de um jeito de corrigir.
    .hint = lidleaf check PROGRAMA lista os números, como 2.1.
cli-usage-other = Não foi possível ler o comando: { $detail }.
    .hint = lidleaf --help lista os comandos.

## Files and addresses

cli-file-missing = O arquivo { $file } não existe.
    .hint = Confira o nome e a pasta.
cli-file-unreadable = Não foi possível ler o arquivo { $file }: { $detail }.
    .hint = Confira se você pode lê-lo e se nenhum outro programa o está usando.
cli-file-is-folder = { $file } é uma pasta, não um arquivo.
    .hint = Indique o arquivo dentro dela.
cli-file-not-text = O arquivo { $file } não é texto a partir da linha { $line }.
    .hint = Arquivos de programa são texto em UTF-8. Pode ser outro tipo de arquivo ou estar danificado: use uma cópia anterior ou exporte de novo.
cli-folder-missing = A pasta { $file } não existe.
    .hint = Publique nela antes: lidleaf publish program.json --out PASTA
cli-folder-unreadable = Não foi possível ler a pasta { $file }: { $detail }.
    .hint = Confira se você pode lê-la.
cli-name-not-text = O nome de { $file } não é texto legível.
    .hint = Mude o nome.
cli-cannot-write = Não foi possível gravar { $file }: { $detail }. O que estava lá não mudou.
    .hint = Confira se a pasta existe, se você pode gravar nela e se há espaço.
cli-cannot-serve = Não foi possível abrir o endereço { $address }: { $detail }.
    .hint = Outro programa pode estar usando: indique outra porta com --port.

## Publishing

cli-app-missing = Não há aplicativo construído em { $file }.
    .hint = Construa com cargo xtask run ou indique a pasta com --app.
cli-app-list-broken = Não dá para ler a lista dos arquivos do aplicativo, { $file }: { $detail }.
    .hint = Construa o aplicativo de novo com cargo xtask run.
cli-app-changed = { $file } não está como foi construído.
    .hint = Construa o aplicativo de novo com cargo xtask run.
cli-out-not-folder = Não dá para publicar em { $file }: não é uma pasta com nome.
    .hint = Indique uma pasta nova com --out.
cli-out-in-use = A pasta { $file } tem outros arquivos. Publicar substitui a pasta inteira, então nada foi mudado.
    .hint = Indique uma pasta nova ou vazia com --out.
cli-out-in-app = As pastas do aplicativo, { $app }, e do guia, { $file }, estão uma dentro da outra.
    .hint = Indique uma pasta em outro lugar com --out.
cli-publish-refused = O programa tem erros e não foi publicado.
    .hint = Corrija os erros listados acima; lidleaf check os lista de novo.

## What is not in the program

cli-unknown-item = Não há objeto chamado “{ $item }”.
    .hint = Tente outra palavra, ou o material ou a forma.
cli-unknown-fact = “{ $fact }” não é um fato.
    .hint = Os fatos são: { $known }.
cli-unknown-value = “{ $value }” não é um valor do fato “{ $fact }”.
    .hint = Ele aceita: { $known }.
cli-unknown-measure = “{ $value }” não é uma medida do fato “{ $fact }”.
    .hint = Escreva um número e sua unidade, como { $known }.
cli-unknown-fix = Nenhum achado deste programa tem um jeito de corrigir com o número { $number }.
    .hint = lidleaf check PROGRAMA lista os números; eles mudam quando o programa muda.
cli-unknown-zone = Não há região de serviço “{ $zone }”.
    .hint = As regiões são: { $known }.
cli-unknown-town = Não há cidade-membro “{ $town }” na demonstração.
    .hint = As cidades são: { $known }.
cli-unknown-stream = Não há fluxo “{ $stream }”.
    .hint = Os fluxos são: { $known }.
cli-unknown-sheet-language = O programa não é publicado em “{ $language }”.
    .hint = É publicado em: { $known }.
cli-too-many-languages = Uma folha leva de um a quatro idiomas, não { $count }.
    .hint = Indique-os com --languages en,pt-BR
cli-usage-size = “{ $word }” não é um tamanho.
    .hint = Escreva um nome, como a4 ou letter, ou largura, altura e unidade: 8x12in
cli-usage-length = “{ $word }” não é um comprimento.
    .hint = Escreva um número e a unidade: 6mm, 0.25in
cli-usage-fold = “{ $word }” não é um jeito de dobrar.
    .hint = Escreva --fold half ou --fold thirds.
cli-usage-qr-level = “{ $word }” não é um nível de correção de erros.
    .hint = Escreva M, Q ou H.
cli-usage-words = “{ $word }” não é um número de palavras.
    .hint = Escreva um número inteiro a partir de 1, por exemplo --words 6
cli-usage-up = “{ $word }” não é um número de folhas.
    .hint = Escreva um número inteiro: --up 4
cli-unknown-sheet-item = Não há objeto “{ $item }”.
    .hint = Indique-o pelo código, como lidleaf answer --json mostra.
cli-nothing-against = Nada diz que “{ $item }” é recusado.
    .hint = Um adesivo avisa: indique uma coisa recusada ou um perigo.
