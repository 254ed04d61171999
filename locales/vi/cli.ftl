### The command line: its help, what it says when done, and what it says when something is wrong.
### Commands, options and words in capitals are typed or replaced as they stand: do not translate
### the commands and options. Lines beginning with spaces keep them.

## Help

cli-help =
    lidleaf COMMAND [OPTIONS]

      check PROGRAM          liệt kê những gì sai trong chương trình
      answer PROGRAM ITEM    trả lời về một món như trả lời cư dân
      print PROGRAM          tạo nhãn nắp thùng hoặc bưu thiếp dạng PDF cho nhà in
      batch PROGRAM…         tạo nhiều bản in của nhiều chương trình cùng lúc
      publish [PROGRAM]      ghi hướng dẫn thành thư mục cho máy chủ web bất kỳ
      serve FOLDER           cho xem thư mục đã phát hành ở địa chỉ của máy này
      compare BEFORE AFTER   liệt kê mọi câu trả lời khác nhau giữa hai chương trình
      demo                   ghi chương trình mẫu
      schema                 ghi JSON Schema của tập tin chương trình

    lidleaf help COMMAND, hoặc lidleaf COMMAND --help, cho biết thêm.

    Mã thoát:
      0  xong; có thể có cảnh báo
      1  chương trình, hoặc bản in từ đó, có lỗi; không ghi gì
      2  không hiểu lệnh
      3  thiếu tập tin, hoặc tập tin không đúng
      4  không ghi được tập tin, hoặc không mở được địa chỉ
      5  không có món, khu vực hoặc dòng rác được hỏi
      6  dừng theo yêu cầu; những gì đã xong được giữ lại
cli-help-check =
    lidleaf check PROGRAM [--catalog FILE] [--fix NUMBER --out FILE]

    Liệt kê mọi vấn đề của chương trình: lỗi trước, rồi cảnh báo và lưu ý, mỗi cái kèm ví dụ
    và cách làm. Kết thúc với mã 1 khi có lỗi.

    Cách sửa được liệt kê kèm theo, mỗi cách có số như 2.1. --fix 2.1 dùng cách đó, ghi chương
    trình đã sửa vào tập tin nêu ở --out, và liệt kê vấn đề còn trong đó. Chương trình đã đọc
    vẫn như cũ.
cli-help-answer =
    lidleaf answer PROGRAM ITEM [--fact FACT=VALUE]… [--zone ZONE] [--on YYYY-MM-DD]

    Trả lời về một món, theo mã hoặc tên; tên có thể sai chính tả. Khi câu trả lời còn tùy, câu
    hỏi kế tiếp hiện ra cùng tùy chọn --fact để trả lời. --fact FACT=? nghĩa là cư dân không
    biết. Ngày là hôm nay, trừ khi --on nêu ngày khác.
cli-help-print =
    lidleaf print PROGRAM --sheet SHEET [OPTIONS]

      --sheet lid        nhãn nắp thùng
      --sheet sticker    nhãn dán tròn có một thông điệp
      --sheet sign       bảng ở thùng chung, đọc từ xa hơn
      --sheet postcard   bưu thiếp hai mặt để gửi thư
      --sheet self-mailer  tờ letter hoặc A4, gấp lại và gửi thư
      --sheet handout    tờ letter hoặc A4 để phát tay, một hoặc hai mặt
      --stream STREAM    dòng rác nói tới
      --zone ZONE        chỉ cho một khu vực
      --languages en,es  bằng các ngôn ngữ này, một đến bốn
      --out PLACE        thư mục hoặc tên tập tin
      --date YYYY-MM-DD  ngày làm
      --register         ghi bản in vào sổ đăng ký của tập tin chương trình
      --copies N         số bản, cho sổ đăng ký và phiếu in; hoặc en=400,es=200
      --printed YYYY-MM-DD  ngày in, cho sổ đăng ký; nếu không thì là ngày làm
      --size SIZE        khổ thành phẩm: 8x12in, a4, "200 x 300 mm", hoặc đường kính, 115mm
      --corner 6mm       bán kính góc; 0 là góc vuông
      --fold half        cách gấp tờ gửi thư: half (gấp đôi) hoặc thirds (gấp ba)
      --item ITEM        món mà nhãn dán nói tới; mã QR mở món đó
      --distance 2m      đọc từ bao xa; quyết định cỡ chữ nhỏ nhất
      --qr-level H       mức hư hỏng mã QR phải chịu được: M, Q hoặc H
      --die-line         vẽ đường bế của nhãn bằng màu pha
      --printers-mark    chừa chỗ cho dấu riêng của nhà in
      --stock NAME       in trên giấy gì, cho phiếu in
      --thickness 0.3mm  giấy dày bao nhiêu; bưu điện cần biết
      --no-places        bỏ danh sách địa điểm
      --words 6          mỗi dòng nhiều nhất bao nhiêu từ, ở mọi ngôn ngữ của bản in
      --press 13x19in    nhiều bản trên một tờ in: 11x17in, 12x18in, 13x19in, sra3, hoặc tự gõ
      --gutter 8mm       khoảng cách giữa các bản
      --up N             nhiều nhất bao nhiêu bản
      --work-and-turn    mặt trước và mặt sau trên một bản kẽm
      --alone            mỗi ngôn ngữ một tập tin, không phải một cho tất cả
      --no-ticket        bỏ phiếu in
      --for press        tập tin cho nhà in (PDF/X-4); không yêu cầu gì khác thì tạo loại này
      --for web          tập tin để đọc trên màn hình và đọc thành tiếng (PDF/UA-1), không có dấu cắt và phần tràn lề
      --profile FILE     hồ sơ màu CMYK đầu ra (.icc) mà nhà in gửi
      --ink-limit N      giấy của họ chịu được nhiều nhất bao nhiêu mực, phần trăm: không nêu thì 300

    Tạo bản in bằng một đến bốn ngôn ngữ dạng PDF cho nhà in, kèm phiếu in là tập tin riêng, và
    liệt kê kết quả kiểm tra. Có lỗi thì không ghi gì. Cùng chương trình và ngày cho ra cùng các
    byte. Nếu không nêu, dòng rác là tái chế, ngôn ngữ là ba tiếng đầu của chương trình, thư mục
    là thư mục hiện tại, ngày là hôm nay.
cli-help-batch =
    lidleaf batch PROGRAM… --sheet SHEETS --out FOLDER [OPTIONS]

      --sheet lid,postcard   các bản in này, hoặc all (tất cả)
      --stream STREAMS       các dòng rác nói tới, hoặc all (tất cả)
      --zone ZONE            chỉ cho một khu vực
      --languages SET        một nhóm ngôn ngữ; có bao nhiêu nhóm thì nêu bấy nhiêu lần
          en                 bằng một ngôn ngữ
          en,es              bằng các ngôn ngữ này chung với nhau
          each               mỗi ngôn ngữ của chương trình một bản riêng
          together           ba ngôn ngữ đầu của chương trình trên một bản in
      --out FOLDER           thư mục để ghi; mỗi chương trình có thư mục riêng trong đó
      --date YYYY-MM-DD      ngày làm
      --hands N              số bản in tạo cùng lúc; nếu không thì bằng số nhân của máy
      --again                tạo lại cả những gì đã có
      --for press            các tập tin cho nhà in (PDF/X-4), như khi không có --for
      --for web              các tập tin để đọc trên màn hình và đọc thành tiếng (PDF/UA-1)
      --profile, --ink-limit điều kiện của nhà in, như với print
      --tickets              phiếu in bên cạnh mỗi tập tin cho nhà in
      --copies N             số bản, cho các phiếu in; hoặc en=400,es=200
      --alone                mỗi ngôn ngữ trong nhóm một bản in
      --size, --press …      cách tạo, như với print: mọi tùy chọn của nó trừ --corner

    Tạo mọi bản in được yêu cầu của mọi chương trình. Thư mục giữ ghi chép mỗi tập tin được tạo
    từ gì, trong batch.json: lần chạy sau chỉ tạo những gì còn thiếu hoặc sẽ khác. Ngày cũng
    được tính; không có --date thì là hôm nay, và ngày mai mọi thứ được tạo lại.

    Một bản in không được thì các bản khác vẫn tiếp tục; cuối cùng cho biết vì sao và phải làm
    gì. Mỗi tập tin được ghi trọn vẹn hoặc không ghi. Ctrl-C dừng có trật tự: bản đang làm được
    làm xong, và cùng lệnh đó sẽ làm tiếp sau. Kết thúc với mã 1 khi có gì không được. Dạng
    JSON: “lidleaf-batch-report” (made, skipped, failed kèm why và next).
cli-help-publish =
    lidleaf publish [PROGRAM] --out FOLDER [--app FOLDER]

    Ghi hướng dẫn và ứng dụng thành thư mục mà máy chủ web nào cũng phục vụ được, ở gốc hoặc
    thư mục con. Chương trình có lỗi bị từ chối. Bản phát hành trước vẫn còn cho đến khi bản mới
    xong. Không nêu chương trình thì dùng chương trình mẫu; ứng dụng lấy từ dist/app trừ khi
    --app nêu thư mục khác.
cli-help-serve =
    lidleaf serve FOLDER [--port N] [--address ADDRESS]

    Cho xem thư mục đã phát hành ở http://127.0.0.1:8080/, hoặc ở cổng và địa chỉ đã nêu, cho
    đến khi dừng. Cổng 0 lấy cổng trống bất kỳ. Chỉ để xem thử, không phải cho công chúng.
cli-help-compare =
    lidleaf compare BEFORE AFTER [--on YYYY-MM-DD] [--notice] [--language TAG] [--out FILE]
    lidleaf compare PROGRAM PROGRAM PROGRAM… [--out FILE]

      --on YYYY-MM-DD  tính theo ngày đó, thay vì mọi ngày
      --notice         thông báo thay đổi để gửi thư, chia nhóm và có liên lạc
      --language TAG   ngôn ngữ của thông báo
      --out FILE       tập tin; nếu kết thúc bằng .md thì có dấu Markdown

    Hai chương trình: liệt kê mọi món có kết luận, nơi bỏ, cách chuẩn bị, lý do hoặc cảnh báo
    khác nhau, chính xác với câu trả lời nào và từ ngày nào; rồi các dòng trên bản in đã đăng ký
    trở thành sai. Ba đến năm mươi chương trình: điều gì giống ở tất cả, mỗi món còn lại nơi nào
    khác, và lời khuyên trái ngược nhau.

    Dạng JSON: “lidleaf-changes” (changes, asked, untrue), “lidleaf-notice” (groups, untrue,
    text) hoặc “lidleaf-regional” (programs, agreed, differing, contradictory). Trong đó “when”
    là danh sách các khả năng, mỗi cái là danh sách thuộc tính và giá trị cùng đúng.
cli-help-schema =
    lidleaf schema [--out FILE]

    Ghi JSON Schema của tập tin chương trình.
cli-help-demo =
    lidleaf demo [--town TOWN] [--out FILE]

    Ghi chương trình mẫu, một quận hoàn toàn tưởng tượng, để bắt đầu; với --town là một trong các
    thị trấn: thrushwick, kettlebrae, larkenby hoặc dunnockford.
cli-help-common =
    Mọi lệnh còn nhận:
      --lang TAG      ngôn ngữ của thông báo và câu trả lời (en, es, ar …)
      --json          kết quả dạng JSON
      --catalog FILE  danh mục khác danh mục có sẵn, khi đọc chương trình
      --help          bản giải thích này
      --version       phiên bản

## Done

cli-error = Lỗi: { $message }
cli-written = Đã ghi: { $file }
cli-serving = Đang phục vụ { $folder } ở { $url } (nhấn Ctrl-C để dừng)
cli-published =
    { $files ->
       *[other] Đã phát hành ấn bản { $edition } vào { $folder }: { $files } tập tin, { $size }.
    }

## Findings

cli-severity-error = lỗi
cli-severity-warning = cảnh báo
cli-severity-notice = lưu ý
cli-finding = { $severity }: { $message }
cli-place = ở { $kind } “{ $id }”
cli-place-field = ở { $kind } “{ $id }”, mục “{ $field }”
cli-place-program = ở mục “{ $field }” của chương trình
cli-witness = ví dụ { $item }
cli-witness-answers = ví dụ { $item } ({ $answers })
cli-hint = phải làm: { $hint }
cli-mend = cách sửa ({ $number }): { $fix }
cli-mended = Xong: { $fix }
cli-check-clean = Không có vấn đề: chương trình phát hành được.
cli-count-errors =
    { $count ->
       *[other] { $count } lỗi
    }
cli-count-warnings =
    { $count ->
       *[other] { $count } cảnh báo
    }
cli-count-notices =
    { $count ->
       *[other] { $count } lưu ý
    }
cli-check-publishable = { $counts }. Chương trình phát hành được.
cli-check-errors = { $counts }. Chưa phát hành được cho đến khi sửa lỗi.

## Answers

cli-answer-day = Ngày { $day }
cli-answer-where = Bỏ ở đâu: { $place }
cli-answer-also = Nơi khác cũng nhận: { $places }
cli-answer-prepare = Chuẩn bị: { $steps }
cli-answer-why = Vì sao: { $reason }
cli-answer-caution = Cẩn thận: { $caution }
cli-answer-rules = Theo quy tắc: { $rules }
cli-answer-temporary = Đang có quy định tạm thời.
cli-answer-site = Nơi gần nhất: { $site }, { $address }
cli-answer-assumed = Giả định, vì không biết: { $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = Tôi không biết

## Sheets

cli-sheet-shortened = dòng rút ngắn: chỉ “{ $item }” dẫn đến đúng nơi trong { $percent } trường hợp
cli-sheet-left-out = bỏ bớt vì không đủ chỗ: { $items }
cli-sheet-hazards-in-brief = không đủ chỗ cho các nơi nhận chất nguy hiểm; mã QR và số điện thoại trên bản in dẫn đến đó
cli-sheet-refused-in-brief = không đủ chỗ để ghi những thứ không nhận thì bỏ ở đâu; mã QR và số điện thoại trên bản in dẫn đến đó
cli-registered = Đã ghi vào sổ đăng ký của { $file } là “{ $id }”.
cli-preflight-pass = Kiểm tra trước khi in: không cần sửa gì.
cli-preflight-warnings =
    { $count ->
       *[other] Kiểm tra trước khi in: { $count } cảnh báo.
    }
cli-preflight-errors =
    { $count ->
       *[other] Kiểm tra trước khi in: { $count } lỗi. Không ghi tập tin.
    }
cli-batch-progress = [{ $done }/{ $of }] { $outcome }: { $file }
cli-batch-made = đã tạo
cli-batch-kept = giữ nguyên
cli-batch-failed = không được
cli-batch-failed-one = Không được: { $what }
cli-batch-summary = { $folder }: { $made } đã tạo, { $kept } giữ nguyên, { $failed } không được, từ { $programs ->
       *[other] { $programs } chương trình.
    }
cli-batch-warned =
    { $count ->
       *[other] { $count } bản in đã tạo có cảnh báo: lidleaf print cho xem.
    }
cli-batch-stopped = Đã dừng khi chưa xong hết. Chạy cùng lệnh để làm tiếp.
cli-batch-notes-lost = Không dùng được ghi chép trong batch.json nên đã tạo lại tất cả.
cli-batch-next-preflight = Xin sửa chương trình, hoặc dùng ít ngôn ngữ hơn trên bản in này, rồi chạy lại cùng lệnh.
cli-batch-crashed = Không tạo được bản in vì phần mềm này có lỗi.
cli-batch-next-crashed = Xin giữ thông báo ở trên và tập tin chương trình, rồi báo cả hai.
cli-batch-program-errors = Chương trình { $file } có lỗi ({ $count }) nên không tạo bản in nào từ đó.
    .hint = lidleaf check liệt kê các lỗi và cách làm.
cli-batch-same-id = Các tập tin này có cùng mã “{ $id }” nên bản in sẽ trùng tên: { $files }.
    .hint = Xin in vào các thư mục khác nhau.
cli-batch-busy = Một lần chạy khác đang ghi vào thư mục { $file }.
    .hint = Xin đợi đến khi xong, hoặc nêu thư mục khác bằng --out.
cli-batch-no-shop = Không dùng được phông chữ hoặc hồ sơ in đi kèm phần mềm: { $detail }
    .hint = Xin cài lại phần mềm.

## Comparing

cli-compare-same = Hai chương trình trả lời mọi món giống nhau.
cli-compare-count =
    { $count ->
       *[other] { $count } câu trả lời thay đổi.
    }
cli-compare-share = { $percent } trường hợp

## Commands not understood. Each says what to type instead.

cli-usage-command = Không có lệnh “{ $command }”.
    .hint = lidleaf --help liệt kê các lệnh.
cli-usage-option = Lệnh này không có tùy chọn { $option }.
    .hint = lidleaf help COMMAND liệt kê các tùy chọn.
cli-usage-word = “{ $word }” là từ thừa.
    .hint = Xin đặt tên có khoảng trắng trong dấu ngoặc kép.
cli-usage-not-text = “{ $word }” không phải chữ đọc được.
    .hint = Xin gõ giá trị bằng UTF-8.
cli-usage-needs-value = Tùy chọn { $option } cần giá trị theo sau.
    .hint = lidleaf help COMMAND cho biết cần gì.
cli-usage-no-value = Tùy chọn { $option } không nhận giá trị.
    .hint = Xin bỏ dấu bằng và phần sau nó.
cli-usage-needs-option = Thiếu tùy chọn { $option }.
    .hint = lidleaf help COMMAND cho biết cần gì.
cli-usage-needs-program = Thiếu tập tin chương trình.
    .hint = Xin ghi sau lệnh: lidleaf check program.json
cli-usage-needs-item = Cần tập tin chương trình và một món.
    .hint = Ví dụ: lidleaf answer program.json "hộp pizza"
cli-usage-needs-two = Cần hai tập tin chương trình, trước và sau.
    .hint = Ví dụ: lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = Thiếu thư mục để phục vụ.
    .hint = Ví dụ: lidleaf serve dist/site
cli-usage-fact = “{ $word }” không phải thuộc tính và giá trị.
    .hint = Xin viết với dấu bằng: --fact resin=1
cli-usage-date = “{ $word }” không phải là ngày.
    .hint = Xin viết năm, tháng, ngày: 2027-01-31
cli-usage-copies = “{ $word }” không phải số bản.
    .hint = Xin viết số nguyên, --copies 400, hoặc một số cho mỗi ngôn ngữ, --copies en=400,es=200
cli-usage-for = “{ $word }” không phải cách dùng bản in.
    .hint = Xin viết --for press cho nhà in, hoặc --for web để đọc trên màn hình và đọc thành tiếng.
cli-usage-ink-limit = “{ $word }” không phải giới hạn mực.
    .hint = Xin viết tổng của bốn bản kẽm, tính bằng phần trăm: --ink-limit 280
cli-usage-press-only = { $option } chỉ dùng cho nhà in, còn --for web không tạo tập tin cho nhà in.
    .hint = Xin bỏ một trong hai.
cli-usage-hands = “{ $word }” không phải số bản in tạo cùng lúc.
    .hint = Xin viết số nguyên từ 1: --hands 4
cli-usage-port = “{ $word }” không phải cổng.
    .hint = Xin viết số từ 0 đến 65535; 0 lấy cổng trống bất kỳ.
cli-usage-address = “{ $word }” không phải địa chỉ mạng.
    .hint = Viết 127.0.0.1 cho riêng máy này, 0.0.0.0 cho mạng nội bộ.
cli-usage-language = Không có thông báo bằng “{ $word }”.
    .hint = Hiện có: { $known }.
cli-usage-sheet = Không có bản in “{ $word }”.
    .hint = Xin viết --sheet và một trong: lid, sticker, sign, postcard, self-mailer, handout.
cli-usage-fix = “{ $word }” không phải số của cách sửa.
    .hint = lidleaf check PROGRAM liệt kê các số, như 2.1.
cli-usage-other = Không hiểu lệnh: { $detail }.
    .hint = lidleaf --help liệt kê các lệnh.

## Files and addresses

cli-file-missing = Tập tin { $file } không tồn tại.
    .hint = Xin kiểm tra tên và thư mục.
cli-file-unreadable = Không đọc được tập tin { $file }: { $detail }.
    .hint = Xin xem quý vị có quyền đọc, và không chương trình nào khác đang giữ nó.
cli-file-is-folder = { $file } là thư mục, không phải tập tin.
    .hint = Xin nêu tập tin bên trong.
cli-file-not-text = Tập tin { $file } không phải chữ từ dòng { $line }.
    .hint = Tập tin chương trình là chữ UTF-8. Có thể đây là loại khác, hoặc bị hỏng: lấy bản trước, hoặc xuất lại.
cli-folder-missing = Thư mục { $file } không tồn tại.
    .hint = Xin phát hành vào đó trước: lidleaf publish program.json --out FOLDER
cli-folder-unreadable = Không đọc được thư mục { $file }: { $detail }.
    .hint = Xin xem quý vị có quyền đọc không.
cli-name-not-text = Tên của { $file } không phải chữ đọc được.
    .hint = Xin đổi tên.
cli-cannot-write = Không ghi được { $file }: { $detail }. Những gì có trước vẫn như cũ.
    .hint = Xin xem thư mục có tồn tại, quý vị có quyền ghi, và còn chỗ.
cli-cannot-serve = Không mở được địa chỉ { $address }: { $detail }.
    .hint = Có thể chương trình khác đang dùng: xin nêu cổng khác bằng --port.

## Publishing

cli-app-missing = Không có ứng dụng đã dựng trong { $file }.
    .hint = Xin dựng bằng cargo xtask run, hoặc nêu thư mục bằng --app.
cli-app-list-broken = Không đọc được danh sách tập tin của ứng dụng, { $file }: { $detail }.
    .hint = Xin dựng lại ứng dụng bằng cargo xtask run.
cli-app-changed = { $file } không còn như lúc dựng.
    .hint = Xin dựng lại ứng dụng bằng cargo xtask run.
cli-out-not-folder = Không phát hành vào { $file } được: không phải thư mục có tên.
    .hint = Xin nêu thư mục mới bằng --out.
cli-out-in-use = Thư mục { $file } có tập tin khác. Phát hành thay cả thư mục nên không đổi gì.
    .hint = Xin nêu thư mục mới hoặc trống bằng --out.
cli-out-in-app = Thư mục ứng dụng, { $app }, và thư mục hướng dẫn, { $file }, nằm trong nhau.
    .hint = Xin nêu thư mục ở chỗ khác bằng --out.
cli-publish-refused = Chương trình có lỗi nên không phát hành.
    .hint = Xin sửa các lỗi nêu trên; lidleaf check liệt kê lại.

## What is not in the program

cli-unknown-item = Không có món nào tên “{ $item }”.
    .hint = Xin thử từ khác, hoặc chất liệu hay hình dạng.
cli-unknown-fact = “{ $fact }” không phải thuộc tính.
    .hint = Các thuộc tính: { $known }.
cli-unknown-value = “{ $value }” không phải giá trị của thuộc tính “{ $fact }”.
    .hint = Nhận các giá trị: { $known }.
cli-unknown-measure = “{ $value }” không phải số đo của thuộc tính “{ $fact }”.
    .hint = Xin ghi số và đơn vị, như { $known }.
cli-unknown-fix = Không vấn đề nào của chương trình có cách sửa số { $number }.
    .hint = lidleaf check PROGRAM liệt kê các số; chúng đổi khi chương trình đổi.
cli-unknown-zone = Không có khu vực “{ $zone }”.
    .hint = Các khu vực: { $known }.
cli-unknown-town = Bản mẫu không có thị trấn “{ $town }”.
    .hint = Các thị trấn: { $known }.
cli-unknown-stream = Không có dòng rác “{ $stream }”.
    .hint = Các dòng rác: { $known }.
cli-unknown-sheet-language = Chương trình không phát hành bằng “{ $language }”.
    .hint = Phát hành bằng: { $known }.
cli-too-many-languages = Một bản in dùng một đến bốn ngôn ngữ, không phải { $count }.
    .hint = Xin nêu bằng --languages en,es
cli-usage-size = “{ $word }” không phải kích thước.
    .hint = Xin viết tên, như a4 hoặc letter, hoặc rộng, cao và đơn vị: 8x12in
cli-usage-length = “{ $word }” không phải độ dài.
    .hint = Xin viết số và đơn vị: 6mm, 0.25in
cli-usage-fold = “{ $word }” không phải cách gấp.
    .hint = Xin viết --fold half hoặc --fold thirds.
cli-usage-qr-level = “{ $word }” không phải mức sửa lỗi.
    .hint = Xin viết M, Q hoặc H.
cli-usage-words = “{ $word }” không phải số từ.
    .hint = Xin viết số nguyên từ 1, ví dụ --words 6
cli-usage-up = “{ $word }” không phải số bản in.
    .hint = Xin viết số nguyên: --up 4
cli-unknown-sheet-item = Không có món “{ $item }”.
    .hint = Xin nêu bằng mã của món, như lidleaf answer --json cho thấy.
cli-nothing-against = Không có gì nói rằng “{ $item }” không được bỏ vào.
    .hint = Nhãn dán để cảnh báo: xin nêu món không nhận, hoặc chất nguy hiểm.
