### The command line: its help, what it says when done, and what it says when something is wrong.
### Commands, options and words in capitals are typed or replaced as they stand: do not translate
### the commands and options. Lines beginning with spaces keep them.

## Help

cli-help =
    lidleaf COMMAND [OPTIONS]

      check PROGRAM          프로그램에서 틀린 것을 나열
      answer PROGRAM ITEM    주민에게 답하듯 물건 하나에 답함
      print PROGRAM          통 뚜껑 라벨이나 엽서를 인쇄용 PDF로 만듦
      publish [PROGRAM]      안내를 아무 웹 서버에나 둘 폴더로 씀
      serve FOLDER           게시된 폴더를 이 컴퓨터 주소에서 보여 줌
      compare BEFORE AFTER   두 프로그램 사이에 바뀌는 모든 답을 나열
      demo                   예시 프로그램을 씀
      schema                 프로그램 파일의 JSON Schema를 씀

    lidleaf help COMMAND 또는 lidleaf COMMAND --help 가 더 알려 줍니다.

    종료 코드:
      0  끝남; 경고가 있을 수 있음
      1  프로그램이나 인쇄물에 오류가 있어 아무것도 쓰지 않음
      2  명령을 알아듣지 못함
      3  파일이 없거나 맞지 않음
      4  파일을 쓰지 못했거나 주소를 열지 못함
      5  찾는 물건, 지역, 배출 구분이 없음
cli-help-check =
    lidleaf check PROGRAM [--catalog FILE] [--fix NUMBER --out FILE]

    프로그램의 모든 문제를 나열합니다. 오류, 경고, 알림 순이며 예와 할 일이 붙습니다. 오류가
    있으면 종료 코드 1로 끝납니다.

    고치는 방법이 2.1 같은 번호와 함께 나옵니다. --fix 2.1 은 그 방법을 써서 바뀐 프로그램을
    --out 파일에 쓰고 거기서 찾은 문제를 나열합니다. 읽은 프로그램은 그대로입니다.
cli-help-answer =
    lidleaf answer PROGRAM ITEM [--fact FACT=VALUE]… [--zone ZONE] [--on YYYY-MM-DD]

    이름표나 이름으로 물건 하나에 답합니다. 이름은 틀리게 써도 됩니다. 답이 무엇에 달렸으면 다음
    질문과 그에 답하는 --fact 옵션을 보여 줍니다. --fact FACT=? 는 주민이 모른다는 뜻입니다.
    날짜는 --on 이 없으면 오늘입니다.
cli-help-print =
    lidleaf print PROGRAM --sheet SHEET [OPTIONS]

      --sheet lid        통 뚜껑 라벨, 7 x 9인치
      --sheet postcard   양면 우편엽서, 9 x 6인치
      --stream STREAM    다룰 배출 구분
      --zone ZONE        한 지역만
      --languages en,es  쓸 언어, 하나에서 셋
      --out PLACE        폴더나 파일 이름
      --date YYYY-MM-DD  작업 날짜
      --register         프로그램 파일의 인쇄물 대장에 적음
      --copies N         부수, 대장용
      --printed YYYY-MM-DD  인쇄한 날, 대장용; 없으면 작업 날짜

    하나에서 세 언어로 인쇄용 PDF를 만들고 인쇄 전 확인 결과를 나열합니다. 오류가 있으면 아무것도
    쓰지 않습니다. 같은 프로그램과 날짜는 같은 바이트를 만듭니다. 적지 않으면 배출 구분은 재활용,
    언어는 프로그램의 처음 셋, 폴더는 지금 폴더, 날짜는 오늘입니다.
cli-help-publish =
    lidleaf publish [PROGRAM] --out FOLDER [--app FOLDER]

    안내와 앱을 아무 웹 서버나 뿌리 또는 하위 폴더에서 보낼 수 있는 폴더로 씁니다. 오류가 있는
    프로그램은 거절합니다. 새 판이 다 될 때까지 전에 게시한 것이 남습니다. 프로그램을 적지 않으면
    예시 프로그램입니다. 앱은 --app 이 없으면 dist/app 에서 가져옵니다.
cli-help-serve =
    lidleaf serve FOLDER [--port N] [--address ADDRESS]

    게시된 폴더를 http://127.0.0.1:8080/ 또는 적은 포트와 주소에서 멈출 때까지 보여 줍니다.
    포트 0은 빈 포트 아무것이나 씁니다. 안내를 살펴보기 위한 것이며 공개용이 아닙니다.
cli-help-compare =
    lidleaf compare BEFORE AFTER [--on YYYY-MM-DD] [--notice] [--language TAG] [--out FILE]
    lidleaf compare PROGRAM PROGRAM PROGRAM… [--out FILE]

      --on YYYY-MM-DD  모든 날이 아니라 그날 기준으로
      --notice         편지에 쓸 변경 알림, 묶음과 연락처 포함
      --language TAG   알림을 쓸 언어
      --out FILE       파일; .md 로 끝나면 Markdown 표시를 씀

    두 프로그램: 결론, 갈 곳, 준비, 이유, 주의가 다른 모든 물건을 어떤 답에서 어느 날부터 다른지
    나열하고, 대장의 인쇄물 중 맞지 않게 되는 줄을 나열합니다. 셋에서 쉰 프로그램: 모두에서 같은
    것, 나머지 물건마다 어디가 다른지, 서로 어긋나는 안내.

    JSON: “lidleaf-changes”(changes, asked, untrue), “lidleaf-notice”(groups, untrue, text),
    “lidleaf-regional”(programs, agreed, differing, contradictory). 각각 “when”은 여러 경우의
    목록이며, 경우마다 함께 맞는 속성과 값의 목록입니다.
cli-help-schema =
    lidleaf schema [--out FILE]

    프로그램 파일의 JSON Schema를 씁니다.
cli-help-demo =
    lidleaf demo [--town TOWN] [--out FILE]

    시작용으로 모두 지어낸 카운티의 예시 프로그램을 씁니다. --town 을 쓰면 그 마을 하나:
    thrushwick, kettlebrae, larkenby, dunnockford.
cli-help-common =
    모든 명령에 쓸 수 있는 것:
      --lang TAG      알림과 답의 언어(en, es, ar …)
      --json          결과를 JSON으로
      --catalog FILE  프로그램을 읽을 때 다른 물건 목록
      --help          이 글
      --version       버전

## Done

cli-error = 오류: { $message }
cli-written = 씀: { $file }
cli-serving = { $url }에서 { $folder }을(를) 보여 주는 중(Ctrl-C로 멈춤)
cli-published =
    { $files ->
       *[other] { $edition } 판을 { $folder }에 게시했습니다: 파일 { $files }개, { $size }.
    }

## Findings

cli-severity-error = 오류
cli-severity-warning = 경고
cli-severity-notice = 알림
cli-finding = { $severity }: { $message }
cli-place = 위치: { $kind } “{ $id }”
cli-place-field = 위치: { $kind } “{ $id }”, 항목 “{ $field }”
cli-place-program = 위치: 프로그램의 항목 “{ $field }”
cli-witness = 예: { $item }
cli-witness-answers = 예: { $item }({ $answers })
cli-hint = 할 일: { $hint }
cli-mend = 고치는 방법({ $number }): { $fix }
cli-mended = 했습니다: { $fix }
cli-check-clean = 문제가 없습니다. 게시할 수 있습니다.
cli-count-errors =
    { $count ->
       *[other] 오류 { $count }개
    }
cli-count-warnings =
    { $count ->
       *[other] 경고 { $count }개
    }
cli-count-notices =
    { $count ->
       *[other] 알림 { $count }개
    }
cli-check-publishable = { $counts }. 게시할 수 있습니다.
cli-check-errors = { $counts }. 오류를 고칠 때까지 게시할 수 없습니다.

## Answers

cli-answer-day = { $day }
cli-answer-where = 버릴 곳: { $place }
cli-answer-also = 이곳도 받습니다: { $places }
cli-answer-prepare = 준비: { $steps }
cli-answer-why = 이유: { $reason }
cli-answer-caution = 주의: { $caution }
cli-answer-rules = 정한 규칙: { $rules }
cli-answer-temporary = 지금은 임시 규칙입니다.
cli-answer-site = 가장 가까운 곳: { $site }, { $address }
cli-answer-assumed = 몰라서 이렇게 보았습니다: { $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = 모르겠어요

## Sheets

cli-sheet-shortened = 줄인 줄: “{ $item }”만으로 { $percent }의 경우 맞는 곳으로 갑니다
cli-registered = { $file }의 대장에 “{ $id }”(으)로 적었습니다.
cli-preflight-pass = 인쇄 전 확인: 고칠 것이 없습니다.
cli-preflight-warnings =
    { $count ->
       *[other] 인쇄 전 확인: 경고 { $count }개.
    }
cli-preflight-errors =
    { $count ->
       *[other] 인쇄 전 확인: 오류 { $count }개. 파일을 쓰지 않았습니다.
    }

## Comparing

cli-compare-same = 두 프로그램의 답이 모두 같습니다.
cli-compare-count =
    { $count ->
       *[other] 답 { $count }개가 바뀝니다.
    }
cli-compare-share = { $percent }의 경우

## Commands not understood. Each says what to type instead.

cli-usage-command = “{ $command }” 명령이 없습니다.
    .hint = lidleaf --help 가 명령을 나열합니다.
cli-usage-option = 이 명령에는 { $option } 옵션이 없습니다.
    .hint = lidleaf help COMMAND 가 옵션을 나열합니다.
cli-usage-word = “{ $word }”은(는) 남는 낱말입니다.
    .hint = 빈칸이 있는 이름은 따옴표에 넣으세요.
cli-usage-not-text = “{ $word }”은(는) 읽을 수 있는 글이 아닙니다.
    .hint = 옵션 값을 UTF-8로 쓰세요.
cli-usage-needs-value = { $option } 옵션 뒤에 값이 있어야 합니다.
    .hint = lidleaf help COMMAND 가 무엇을 쓰는지 보여 줍니다.
cli-usage-no-value = { $option } 옵션은 값을 받지 않습니다.
    .hint = 등호와 그 뒤를 빼세요.
cli-usage-needs-option = { $option } 옵션이 없습니다.
    .hint = lidleaf help COMMAND 가 무엇을 쓰는지 보여 줍니다.
cli-usage-needs-program = 프로그램 파일이 없습니다.
    .hint = 명령 뒤에 적으세요: lidleaf check program.json
cli-usage-needs-item = 프로그램 파일과 물건이 필요합니다.
    .hint = 예: lidleaf answer program.json "피자 상자"
cli-usage-needs-two = 전과 후의 프로그램 파일 둘이 필요합니다.
    .hint = 예: lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = 보여 줄 폴더가 없습니다.
    .hint = 예: lidleaf serve dist/site
cli-usage-fact = “{ $word }”은(는) 속성과 값이 아닙니다.
    .hint = 등호로 쓰세요: --fact resin=1
cli-usage-date = “{ $word }”은(는) 날짜가 아닙니다.
    .hint = 연, 월, 일로 쓰세요: 2027-01-31
cli-usage-copies = “{ $word }”은(는) 부수가 아닙니다.
    .hint = 자연수로 쓰세요: --copies 400
cli-usage-port = “{ $word }”은(는) 포트가 아닙니다.
    .hint = 0에서 65535까지 쓰세요. 0은 빈 포트 아무것이나 씁니다.
cli-usage-address = “{ $word }”은(는) 네트워크 주소가 아닙니다.
    .hint = 이 컴퓨터만이면 127.0.0.1, 내부 네트워크면 0.0.0.0 을 쓰세요.
cli-usage-language = “{ $word }” 언어의 글이 없습니다.
    .hint = 있는 것: { $known }.
cli-usage-sheet = “{ $word }” 인쇄물이 없습니다.
    .hint = --sheet lid 나 --sheet postcard 를 쓰세요.
cli-usage-fix = “{ $word }”은(는) 고치는 방법의 번호가 아닙니다.
    .hint = lidleaf check PROGRAM 이 2.1 같은 번호를 나열합니다.
cli-usage-other = 명령을 읽을 수 없습니다: { $detail }.
    .hint = lidleaf --help 가 명령을 나열합니다.

## Files and addresses

cli-file-missing = 파일 { $file }이(가) 없습니다.
    .hint = 이름과 폴더를 확인하세요.
cli-file-unreadable = 파일 { $file }을(를) 읽지 못했습니다: { $detail }.
    .hint = 읽을 권한이 있는지, 다른 프로그램이 잡고 있지 않은지 확인하세요.
cli-file-is-folder = { $file }은(는) 파일이 아니라 폴더입니다.
    .hint = 그 안의 파일을 적으세요.
cli-file-not-text = 파일 { $file }은(는) { $line }번째 줄부터 글이 아닙니다.
    .hint = 프로그램 파일은 UTF-8 글입니다. 다른 파일이거나 손상되었을 수 있습니다. 이전 사본을 쓰거나 다시 내보내세요.
cli-folder-missing = 폴더 { $file }이(가) 없습니다.
    .hint = 먼저 거기에 게시하세요: lidleaf publish program.json --out FOLDER
cli-folder-unreadable = 폴더 { $file }을(를) 읽지 못했습니다: { $detail }.
    .hint = 읽을 권한이 있는지 확인하세요.
cli-name-not-text = { $file }의 이름은 읽을 수 있는 글이 아닙니다.
    .hint = 이름을 바꾸세요.
cli-cannot-write = { $file }을(를) 쓰지 못했습니다: { $detail }. 전에 있던 것은 그대로입니다.
    .hint = 폴더가 있는지, 쓸 권한과 자리가 있는지 확인하세요.
cli-cannot-serve = 주소 { $address }을(를) 열지 못했습니다: { $detail }.
    .hint = 다른 프로그램이 쓰는 중일 수 있습니다. --port 로 다른 포트를 적으세요.

## Publishing

cli-app-missing = { $file }에 만들어진 앱이 없습니다.
    .hint = cargo xtask run 으로 만들거나 --app 으로 폴더를 적으세요.
cli-app-list-broken = 앱 파일 목록 { $file }을(를) 읽을 수 없습니다: { $detail }.
    .hint = cargo xtask run 으로 앱을 다시 만드세요.
cli-app-changed = { $file }이(가) 만들었을 때와 다릅니다.
    .hint = cargo xtask run 으로 앱을 다시 만드세요.
cli-out-not-folder = { $file }에 게시할 수 없습니다. 이름 있는 폴더가 아닙니다.
    .hint = --out 으로 새 폴더를 적으세요.
cli-out-in-use = 폴더 { $file }에 다른 파일이 있습니다. 게시는 폴더를 통째로 바꾸므로 아무것도 바꾸지 않았습니다.
    .hint = --out 으로 새 폴더나 빈 폴더를 적으세요.
cli-out-in-app = 앱 폴더 { $app }와(과) 안내 폴더 { $file }이(가) 서로 안에 있습니다.
    .hint = --out 으로 다른 곳의 폴더를 적으세요.
cli-publish-refused = 프로그램에 오류가 있어 게시하지 않았습니다.
    .hint = 위의 오류를 고치세요. lidleaf check 가 다시 나열합니다.

## What is not in the program

cli-unknown-item = “{ $item }”이라는 물건이 없습니다.
    .hint = 다른 말이나 재질, 모양으로 찾아보세요.
cli-unknown-fact = “{ $fact }”은(는) 속성이 아닙니다.
    .hint = 속성: { $known }.
cli-unknown-value = “{ $value }”은(는) 속성 “{ $fact }”의 값이 아닙니다.
    .hint = 쓸 수 있는 값: { $known }.
cli-unknown-fix = 이 프로그램의 문제에는 번호 { $number }인 고치는 방법이 없습니다.
    .hint = lidleaf check PROGRAM 이 번호를 나열합니다. 프로그램이 바뀌면 번호도 바뀝니다.
cli-unknown-zone = “{ $zone }”이라는 지역이 없습니다.
    .hint = 지역: { $known }.
cli-unknown-town = 예시에 “{ $town }”이라는 마을이 없습니다.
    .hint = 마을: { $known }.
cli-unknown-stream = “{ $stream }”이라는 배출 구분이 없습니다.
    .hint = 배출 구분: { $known }.
cli-unknown-sheet-language = 프로그램은 “{ $language }”(으)로 게시되지 않습니다.
    .hint = 게시 언어: { $known }.
cli-too-many-languages = 인쇄물은 언어 하나에서 셋까지이며 { $count }개는 안 됩니다.
    .hint = --languages en,es 로 적으세요
