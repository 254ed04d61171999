### The command line: its help, what it says when done, and what it says when something is wrong.
### Commands, options and words in capitals are typed or replaced as they stand: do not translate
### the commands and options. Lines beginning with spaces keep them.

## Help

cli-help =
    lidleaf COMMAND [OPTIONS]

      check PROGRAM          프로그램에서 틀린 것을 나열
      answer PROGRAM ITEM    주민에게 답하듯 물건 하나에 답함
      print PROGRAM          통 뚜껑 라벨이나 엽서를 인쇄용 PDF로 만듦
      batch PROGRAM…         여러 프로그램의 여러 인쇄물을 한꺼번에 만듦
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
      6  요청에 따라 멈춤; 끝난 것은 남아 있음
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

      --sheet lid        통 뚜껑 라벨
      --sheet sticker    한 가지 내용의 원형 스티커
      --sheet sign       공용 통 안내판, 더 멀리서 읽음
      --sheet postcard   양면 우편엽서
      --sheet self-mailer  레터나 A4 한 장, 접어서 우편으로 보냄
      --sheet handout    나눠 주는 레터나 A4 한 장, 한 면이나 양면
      --stream STREAM    다룰 배출 구분
      --zone ZONE        한 지역만
      --languages en,es  쓸 언어, 하나에서 넷
      --out PLACE        폴더나 파일 이름
      --date YYYY-MM-DD  작업 날짜
      --register         프로그램 파일의 인쇄물 대장에 적음
      --copies N         부수, 대장과 작업 지시서용; 또는 en=400,es=200
      --printed YYYY-MM-DD  인쇄한 날, 대장용; 없으면 작업 날짜
      --size SIZE        완성 크기: 8x12in, a4, "200 x 300 mm", 또는 지름 115mm
      --corner 6mm       모서리 반지름; 0은 직각
      --fold half        접는 우편물을 접는 방법: half(반), thirds(세 겹)
      --item ITEM        스티커가 다룰 물건 하나; QR 코드가 그것을 엶
      --distance 2m      읽는 거리; 가장 작은 글자 크기를 정함
      --qr-level H       QR 코드가 견뎌야 할 손상: M, Q, H
      --die-line         라벨을 자르는 칼선을 별색으로 그림
      --printers-mark    인쇄소 자체 표시 자리를 둠
      --stock NAME       인쇄할 용지, 작업 지시서용
      --thickness 0.3mm  용지 두께; 우체국에 필요함
      --no-places        장소 목록을 뺌
      --words 6          인쇄물의 모든 언어에서 한 줄의 최대 단어 수
      --press 13x19in    인쇄 전지에 여러 개: 11x17in, 12x18in, 13x19in, sra3, 또는 직접 씀
      --gutter 8mm       그 사이 간격
      --up N             최대 개수
      --work-and-turn    앞뒤를 한 판에
      --alone            모두 한 파일이 아니라 언어마다 한 파일
      --no-ticket        작업 지시서를 뺌
      --for press        인쇄소용 파일(PDF/X-4); 따로 청하지 않으면 이것을 만듦
      --for web          화면으로 보고 소리로 듣는 파일(PDF/UA-1), 재단 표시와 도련 없음
      --profile FILE     인쇄소가 보낸 CMYK 출력 프로파일(.icc)
      --ink-limit N      종이가 받는 최대 잉크량(퍼센트): 적지 않으면 300

    하나에서 네 언어로 인쇄용 PDF와 별도 파일인 작업 지시서를 만들고 인쇄 전 확인 결과를
    나열합니다. 오류가 있으면 아무것도 쓰지 않습니다. 같은 프로그램과 날짜는 같은 바이트를
    만듭니다. 적지 않으면 배출 구분은 재활용, 언어는 프로그램의 처음 셋, 폴더는 지금 폴더,
    날짜는 오늘입니다.
cli-help-batch =
    lidleaf batch PROGRAM… --sheet SHEETS --out FOLDER [OPTIONS]

      --sheet lid,postcard   이 인쇄물들, 또는 all(모두)
      --stream STREAMS       다룰 배출 구분들, 또는 all(모두)
      --zone ZONE            한 지역만
      --languages SET        언어 묶음; 묶음 수만큼 여러 번 적음
          en                 한 언어로
          en,es              이 언어들을 함께
          each               프로그램의 언어마다 따로
          together           프로그램의 처음 세 언어를 한 장에
      --out FOLDER           채울 폴더; 그 안에 프로그램마다 폴더가 생김
      --date YYYY-MM-DD      작업 날짜
      --hands N              한꺼번에 만드는 수; 없으면 코어 수만큼
      --again                이미 만든 것도 다시 만듦
      --for press            인쇄소용 파일(PDF/X-4), --for 없을 때와 같음
      --for web              화면으로 보고 소리로 듣는 파일(PDF/UA-1)
      --profile, --ink-limit 인쇄소 조건, print와 같음
      --tickets              인쇄용 파일마다 작업 지시서를 곁들임
      --copies N             부수, 작업 지시서용; 또는 en=400,es=200
      --alone                묶음의 언어마다 인쇄물 하나
      --size, --press …      만드는 방법, print와 같음: --corner를 뺀 모든 옵션

    모든 프로그램에서 요청한 인쇄물을 모두 만듭니다. 파일마다 무엇으로 만들었는지 폴더의
    batch.json 에 적어 두므로, 다시 실행하면 없거나 달라질 것만 만듭니다. 날짜도 거기에 듭니다.
    --date 가 없으면 오늘이며, 내일은 모두 새로 만듭니다.

    하나가 실패해도 나머지는 계속합니다. 끝에 실패한 이유와 할 일을 알려 줍니다. 파일은 온전히
    쓰거나 아예 쓰지 않습니다. Ctrl-C 를 누르면 시작한 것까지 마치고 멈추며, 나중에 같은 명령으로
    이어서 합니다. 실패가 있으면 종료 코드 1로 끝납니다.
    JSON: “lidleaf-batch-report”(made, skipped, failed 와 그 why, next).
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
cli-sheet-left-out = 자리가 없어 뺀 것: { $items }
cli-sheet-hazards-in-brief = 위험물 받는 곳을 적을 자리가 없습니다. 인쇄물의 QR 코드와 전화번호로 알 수 있습니다
cli-sheet-refused-in-brief = 넣으면 안 되는 것을 어디로 보내는지 적을 자리가 없습니다. 인쇄물의 QR 코드와 전화번호로 알 수 있습니다
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
cli-batch-progress = [{ $done }/{ $of }] { $outcome }: { $file }
cli-batch-made = 만듦
cli-batch-kept = 그대로
cli-batch-failed = 실패
cli-batch-failed-one = 실패: { $what }
cli-batch-summary = { $folder }: 만듦 { $made }개, 그대로 { $kept }개, 실패 { $failed }개, { $programs ->
       *[other] 대상 프로그램 { $programs }개.
    }
cli-batch-warned =
    { $count ->
       *[other] 만든 인쇄물 { $count }개에 경고가 있습니다. lidleaf print 가 보여 줍니다.
    }
cli-batch-stopped = 다 끝나기 전에 멈췄습니다. 같은 명령을 실행하면 이어서 합니다.
cli-batch-notes-lost = batch.json 의 기록을 쓸 수 없어 모두 새로 만들었습니다.
cli-batch-next-preflight = 프로그램을 고치거나 이 인쇄물의 언어를 줄이고 같은 명령을 다시 실행하세요.
cli-batch-crashed = 이 소프트웨어의 잘못으로 인쇄물을 만들지 못했습니다.
cli-batch-next-crashed = 위의 글과 프로그램 파일을 보관하고 둘 다 알려 주세요.
cli-batch-program-errors = 프로그램 { $file }에 오류가 있어({ $count }개) 인쇄물을 만들지 않았습니다.
    .hint = lidleaf check 가 오류와 할 일을 나열합니다.
cli-batch-same-id = 이 파일들은 이름표가 “{ $id }”(으)로 같아 인쇄물 이름이 겹칩니다: { $files }.
    .hint = 서로 다른 폴더에 인쇄하세요.
cli-batch-busy = 다른 실행이 폴더 { $file }에 쓰는 중입니다.
    .hint = 끝날 때까지 기다리거나 --out 으로 다른 폴더를 적으세요.
cli-batch-no-shop = 함께 제공된 글꼴이나 인쇄 프로필을 쓸 수 없습니다: { $detail }
    .hint = 소프트웨어를 다시 설치하세요.

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
    .hint = 자연수로 --copies 400, 또는 언어마다 --copies en=400,es=200 처럼 쓰세요
cli-usage-for = “{ $word }”은(는) 인쇄물의 용도가 아닙니다.
    .hint = 인쇄소용은 --for press, 화면으로 보고 소리로 듣는 용은 --for web 을 쓰세요.
cli-usage-ink-limit = “{ $word }”은(는) 잉크 한도가 아닙니다.
    .hint = 네 판의 합을 퍼센트로 쓰세요: --ink-limit 280
cli-usage-press-only = { $option }은(는) 인쇄용인데 --for web 은 인쇄용 파일을 만들지 않습니다.
    .hint = 둘 중 하나를 빼세요.
cli-usage-hands = “{ $word }”은(는) 한꺼번에 만드는 수가 아닙니다.
    .hint = 1부터의 자연수로 쓰세요: --hands 4
cli-usage-port = “{ $word }”은(는) 포트가 아닙니다.
    .hint = 0에서 65535까지 쓰세요. 0은 빈 포트 아무것이나 씁니다.
cli-usage-address = “{ $word }”은(는) 네트워크 주소가 아닙니다.
    .hint = 이 컴퓨터만이면 127.0.0.1, 내부 네트워크면 0.0.0.0 을 쓰세요.
cli-usage-language = “{ $word }” 언어의 글이 없습니다.
    .hint = 있는 것: { $known }.
cli-usage-sheet = “{ $word }” 인쇄물이 없습니다.
    .hint = --sheet 뒤에 다음 중 하나를 쓰세요: lid, sticker, sign, postcard, self-mailer, handout.
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
cli-unknown-measure = “{ $value }”은(는) 속성 “{ $fact }”의 크기가 아닙니다.
    .hint = 숫자와 단위를 쓰세요. 예: { $known }.
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
cli-too-many-languages = 인쇄물은 언어 하나에서 넷까지이며 { $count }개는 안 됩니다.
    .hint = --languages en,es 로 적으세요
cli-usage-size = “{ $word }”은(는) 크기가 아닙니다.
    .hint = a4 나 letter 같은 이름, 또는 너비, 높이, 단위를 쓰세요: 8x12in
cli-usage-length = “{ $word }”은(는) 길이가 아닙니다.
    .hint = 숫자와 단위를 쓰세요: 6mm, 0.25in
cli-usage-fold = “{ $word }”은(는) 접는 방법이 아닙니다.
    .hint = --fold half 나 --fold thirds 를 쓰세요.
cli-usage-qr-level = “{ $word }”은(는) 오류 복원 수준이 아닙니다.
    .hint = M, Q, H 중 하나를 쓰세요.
cli-usage-words = “{ $word }”은(는) 단어 수가 아닙니다.
    .hint = 1 이상의 자연수를 쓰세요. 예: --words 6
cli-usage-up = “{ $word }”은(는) 인쇄물 수가 아닙니다.
    .hint = 자연수로 쓰세요: --up 4
cli-unknown-sheet-item = “{ $item }”이라는 물건이 없습니다.
    .hint = lidleaf answer --json 이 보여 주는 이름표로 적으세요.
cli-nothing-against = “{ $item }”을(를) 넣지 말라는 규칙이 없습니다.
    .hint = 스티커는 경고용입니다. 안 받는 물건이나 위험물을 적으세요.
