### The command line: its help, what it says when done, and what it says when something is wrong.
### Commands, options and words in capitals are typed or replaced as they stand: do not translate
### the commands and options. Lines beginning with spaces keep them.

## Help

cli-help =
    lidleaf COMMAND [OPTIONS]

      check PROGRAM          列出方案中的问题
      answer PROGRAM ITEM    像回答居民那样回答一个物品
      print PROGRAM          制作桶盖标签或明信片的印刷 PDF
      batch PROGRAM…         一次为多个方案制作多个印刷品
      publish [PROGRAM]      把指南写成文件夹，可放到任何网站服务器
      serve FOLDER           在本机地址上显示已发布的文件夹
      compare BEFORE AFTER   列出两个方案之间变动的所有答案
      demo                   写出演示方案
      schema                 写出方案文件的 JSON Schema

    lidleaf help COMMAND 或 lidleaf COMMAND --help 有更多说明。

    退出码：
      0  完成；可能有警告
      1  方案或由它制作的印刷品有错误；没有写文件
      2  命令看不懂
      3  缺少文件，或文件不对
      4  文件写不了，或地址打不开
      5  没有所要的物品、地区或类别
      6  按要求停止；已完成的保留
cli-help-check =
    lidleaf check PROGRAM [--catalog FILE] [--fix NUMBER --out FILE]

    列出方案的所有问题：先错误，后警告和提示，各附例子和办法。有错误时以退出码 1 结束。

    问题旁列出改正办法，各有编号，如 2.1。--fix 2.1 采用这个办法，把改过的方案写到 --out
    指定的文件，并列出其中的问题。读入的方案保持不变。
cli-help-answer =
    lidleaf answer PROGRAM ITEM [--fact FACT=VALUE]… [--zone ZONE] [--on YYYY-MM-DD]

    按编号或名称回答一个物品；名称可以拼错。答案取决于别的情况时，会显示下一个问题和回答它的
    --fact 选项。--fact FACT=? 表示居民看不出来。日期是今天，除非用 --on 指定。
cli-help-print =
    lidleaf print PROGRAM --sheet SHEET [OPTIONS]

      --sheet lid        桶盖标签
      --sheet sticker    圆形贴纸，一句话
      --sheet sign       公用桶告示牌，从较远处看
      --sheet postcard   双面邮寄明信片
      --sheet self-mailer  信纸或 A4 大小，折叠后邮寄
      --sheet handout    信纸或 A4 大小的宣传单，单面或双面
      --stream STREAM    所说的类别
      --zone ZONE        只限一个地区
      --languages en,es  使用的语言，一到四种
      --out PLACE        文件夹或文件名
      --date YYYY-MM-DD  制作日期
      --register         记入方案文件的印刷登记
      --copies N         份数，用于登记和工单；或写 en=400,es=200
      --printed YYYY-MM-DD  印刷日期，用于登记；不写则为制作日期
      --size SIZE        成品尺寸：8x12in、a4、"200 x 300 mm"，或直径 115mm
      --corner 6mm       圆角半径；0 为直角
      --fold half        折叠邮寄单的折法：half（对折）或 thirds（三折）
      --item ITEM        贴纸所说的那个物品；二维码打开它
      --distance 2m      阅读距离；决定最小字号
      --qr-level H       二维码须承受的损坏：M、Q 或 H
      --die-line         用专色画出标签的模切线
      --printers-mark    给印刷厂自己的标记留位置
      --stock NAME       所用的纸张，写在工单上
      --thickness 0.3mm  纸的厚度；邮局要知道
      --no-places        不写地点列表
      --words 6          每行最多几个词，按印刷品的每种语言算
      --press 13x19in    一大张印多个：11x17in、12x18in、13x19in、sra3，或自己填写
      --gutter 8mm       它们之间的间距
      --up N             最多几个
      --work-and-turn    正反面在一块印版上
      --alone            每种语言一个文件，而不是合成一个
      --no-ticket        不写工单
      --for press        交印刷厂的文件（PDF/X-4）；没有别的要求时制作这种
      --for web          在屏幕上看和朗读的文件（PDF/UA-1），没有裁切标记和出血
      --profile FILE     印刷厂发来的 CMYK 输出配置文件（.icc）
      --ink-limit N      纸张最多能承受的油墨，百分比：不写则为 300

    用一到四种语言制作印刷用 PDF，另附一个工单文件，并列出印前检查的结果。有错误就不写文件。
    同样的方案和日期得到同样的字节。不指定时，类别为可回收物，语言为方案的前三种，文件夹为
    当前文件夹，日期为今天。
cli-help-batch =
    lidleaf batch PROGRAM… --sheet SHEETS --out FOLDER [OPTIONS]

      --sheet lid,postcard   这些印刷品，或 all（全部）
      --stream STREAMS       所说的类别，或 all（全部）
      --zone ZONE            只限一个地区
      --languages SET        一组语言；有几组就写几次
          en                 用一种语言
          en,es              这几种语言放在一起
          each               方案的每种语言各做一份
          together           方案的前三种语言放在一张上
      --out FOLDER           写入的文件夹；每个方案在其中有自己的文件夹
      --date YYYY-MM-DD      制作日期
      --hands N              同时制作几个；不写则与处理器核心数相同
      --again                已经做好的也重新制作
      --for press            交印刷厂的文件（PDF/X-4），与不写 --for 相同
      --for web              在屏幕上看和朗读的文件（PDF/UA-1）
      --profile, --ink-limit 印刷厂的条件，与 print 相同
      --tickets              每个印刷文件旁边附一份工单
      --copies N             份数，用于工单；或写 en=400,es=200
      --alone                一组中的每种语言各一份印刷品
      --size, --press …      怎样制作，与 print 相同：除 --corner 外的所有选项

    为每个方案制作所要的全部印刷品。文件夹里的 batch.json 记下每个文件由什么制成：再次运行
    只制作缺少的或会有变化的。日期也算在内；不写 --date 就用今天，明天会全部重新制作。

    一个印刷品失败不影响其他的；最后会说明各自失败的原因和办法。每个文件要么完整写出，要么
    不写。按 Ctrl-C 会有序停止：已开始的做完，以后用同一条命令接着做。有失败时以退出码 1
    结束。JSON 格式：“lidleaf-batch-report”（made、skipped、failed，附 why 和 next）。
cli-help-publish =
    lidleaf publish [PROGRAM] --out FOLDER [--app FOLDER]

    把指南和应用写成一个文件夹，任何网站服务器都能提供，放在根目录或子目录均可。有错误的方案
    不发布。新版写完之前，文件夹里原来发布的内容保留。不写方案则用演示方案；应用取自
    dist/app，除非用 --app 指定别的文件夹。
cli-help-serve =
    lidleaf serve FOLDER [--port N] [--address ADDRESS]

    在 http://127.0.0.1:8080/ 或指定的端口和地址显示已发布的文件夹，直到停止。端口 0 表示任意
    空闲端口。只用于查看指南，不用于对外公开。
cli-help-compare =
    lidleaf compare BEFORE AFTER [--on YYYY-MM-DD] [--notice] [--language TAG] [--out FILE]
    lidleaf compare PROGRAM PROGRAM PROGRAM… [--out FILE]

      --on YYYY-MM-DD  以那一天为准，而不是所有日子
      --notice         写信用的变动通知，分组并附联系方式
      --language TAG   通知的语言
      --out FILE       文件；以 .md 结尾的使用 Markdown 标记

    两个方案：列出结论、去处、准备、理由或警告不同的每个物品，以及在哪些答案下、从哪天起不同；
    再列出登记的印刷品中不再正确的行。三到五十个方案：列出全部相同的内容，其他每个物品谁不同，
    以及自相矛盾的说法。

    JSON 格式：“lidleaf-changes”（changes、asked、untrue）、“lidleaf-notice”（groups、untrue、
    text）或“lidleaf-regional”（programs、agreed、differing、contradictory）。其中“when”是若干
    可能情况，每个是一组同时成立的属性和值。
cli-help-schema =
    lidleaf schema [--out FILE]

    写出方案文件的 JSON Schema。
cli-help-demo =
    lidleaf demo [--town TOWN] [--out FILE]

    写出演示方案，一个完全虚构的县，可作为起点；--town 则写出其中一个镇：thrushwick、
    kettlebrae、larkenby 或 dunnockford。
cli-help-common =
    所有命令还可用：
      --lang TAG      消息和答案的语言（en、es、ar …）
      --json          以 JSON 输出结果
      --catalog FILE  读方案时用别的物品目录
      --help          显示这段说明
      --version       显示版本

## Done

cli-error = 错误：{ $message }
cli-written = 已写出：{ $file }
cli-serving = 正在 { $url } 提供 { $folder }（按 Ctrl-C 停止）
cli-published =
    { $files ->
       *[other] 已把 { $edition } 版发布到 { $folder }：{ $files } 个文件，{ $size }。
    }

## Findings

cli-severity-error = 错误
cli-severity-warning = 警告
cli-severity-notice = 提示
cli-finding = { $severity }：{ $message }
cli-place = 位于 { $kind }“{ $id }”
cli-place-field = 位于 { $kind }“{ $id }”的“{ $field }”项
cli-place-program = 位于方案的“{ $field }”项
cli-witness = 例如 { $item }
cli-witness-answers = 例如 { $item }（{ $answers }）
cli-hint = 怎么办：{ $hint }
cli-mend = 改正办法（{ $number }）：{ $fix }
cli-mended = 已完成：{ $fix }
cli-check-clean = 没有问题：方案可以发布。
cli-count-errors =
    { $count ->
       *[other] { $count } 个错误
    }
cli-count-warnings =
    { $count ->
       *[other] { $count } 个警告
    }
cli-count-notices =
    { $count ->
       *[other] { $count } 个提示
    }
cli-check-publishable = { $counts }。方案可以发布。
cli-check-errors = { $counts }。改正错误之前不能发布。

## Answers

cli-answer-day = { $day }
cli-answer-where = 放哪里：{ $place }
cli-answer-also = 也可以送到：{ $places }
cli-answer-prepare = 怎么准备：{ $steps }
cli-answer-why = 为什么：{ $reason }
cli-answer-caution = 小心：{ $caution }
cli-answer-rules = 依据：{ $rules }
cli-answer-temporary = 现在是临时规定。
cli-answer-site = 最近的地点：{ $site }，{ $address }
cli-answer-assumed = 因为不知道，所以假定：{ $facts }
cli-question-option = { $option } — { $value }
cli-question-cannot-tell = 看不出来

## Sheets

cli-sheet-shortened = 缩短的行：单写“{ $item }”，{ $percent } 的情况去处是对的
cli-sheet-left-out = 因放不下而省去：{ $items }
cli-sheet-hazards-in-brief = 放不下接收危险品的地点；可扫印刷品上的二维码或打上面的电话查询
cli-sheet-refused-in-brief = 放不下不收物品该送往何处；可扫印刷品上的二维码或打上面的电话查询
cli-registered = 已记入 { $file } 的登记，编号“{ $id }”。
cli-preflight-pass = 印前检查：没有要改正的。
cli-preflight-warnings =
    { $count ->
       *[other] 印前检查：{ $count } 个警告。
    }
cli-preflight-errors =
    { $count ->
       *[other] 印前检查：{ $count } 个错误。没有写文件。
    }
cli-batch-progress = [{ $done }/{ $of }] { $outcome }：{ $file }
cli-batch-made = 已制作
cli-batch-kept = 没有变
cli-batch-failed = 失败
cli-batch-failed-one = 失败：{ $what }
cli-batch-summary = { $folder }：制作 { $made } 个，没有变 { $kept } 个，失败 { $failed } 个，{ $programs ->
       *[other] 来自 { $programs } 个方案。
    }
cli-batch-warned =
    { $count ->
       *[other] 制作的印刷品中有 { $count } 个带警告：lidleaf print 会显示。
    }
cli-batch-stopped = 没有全部完成就停止了。运行同一条命令会接着做。
cli-batch-notes-lost = batch.json 里的记录不能用，所以全部重新制作了。
cli-batch-next-preflight = 请改正方案，或让这张印刷品少用几种语言，再运行同一条命令。
cli-batch-crashed = 因本程序出错，印刷品没有做成。
cli-batch-next-crashed = 请保留上面的消息和方案文件，并一起报告。
cli-batch-program-errors = 方案 { $file } 有错误（{ $count } 个），没有用它制作印刷品。
    .hint = lidleaf check 会列出错误和办法。
cli-batch-same-id = 这些文件的编号相同，都是“{ $id }”，印刷品会重名：{ $files }。
    .hint = 请把它们印到不同的文件夹。
cli-batch-busy = 另一次运行正在往文件夹 { $file } 里写。
    .hint = 请等它完成，或用 --out 指定别的文件夹。
cli-batch-no-shop = 随程序附带的字体或印刷配置文件不能用：{ $detail }
    .hint = 请重新安装程序。

## Comparing

cli-compare-same = 两个方案对每个物品的回答都一样。
cli-compare-count =
    { $count ->
       *[other] 有 { $count } 个答案变动。
    }
cli-compare-share = { $percent } 的情况

## Commands not understood. Each says what to type instead.

cli-usage-command = 没有“{ $command }”这个命令。
    .hint = lidleaf --help 列出所有命令。
cli-usage-option = 这个命令没有 { $option } 选项。
    .hint = lidleaf help COMMAND 列出它的选项。
cli-usage-word = 多了一个词“{ $word }”。
    .hint = 含空格的名称请放在引号里。
cli-usage-not-text = “{ $word }”不是可读的文字。
    .hint = 选项的值请用 UTF-8 输入。
cli-usage-needs-value = 选项 { $option } 后面要有值。
    .hint = lidleaf help COMMAND 说明要写什么。
cli-usage-no-value = 选项 { $option } 不带值。
    .hint = 请去掉等号和后面的内容。
cli-usage-needs-option = 缺少选项 { $option }。
    .hint = lidleaf help COMMAND 说明要写什么。
cli-usage-needs-program = 缺少方案文件。
    .hint = 请写在命令后面：lidleaf check program.json
cli-usage-needs-item = 需要方案文件和物品。
    .hint = 例如：lidleaf answer program.json "披萨盒"
cli-usage-needs-two = 需要两个方案文件：之前的和之后的。
    .hint = 例如：lidleaf compare 2026.json 2027.json
cli-usage-needs-folder = 缺少要显示的文件夹。
    .hint = 例如：lidleaf serve dist/site
cli-usage-fact = “{ $word }”不是属性和值。
    .hint = 请用等号写：--fact resin=1
cli-usage-date = “{ $word }”不是日期。
    .hint = 请按年、月、日写：2027-01-31
cli-usage-copies = “{ $word }”不是份数。
    .hint = 请写整数：--copies 400，或每种语言各写一个：--copies en=400,es=200
cli-usage-for = “{ $word }”不是印刷品的用途。
    .hint = 请写 --for press（交印刷厂）或 --for web（在屏幕上看和朗读）。
cli-usage-ink-limit = “{ $word }”不是墨量上限。
    .hint = 请写四块印版的总和，以百分比计：--ink-limit 280
cli-usage-press-only = { $option } 只用于印刷，而 --for web 不制作印刷文件。
    .hint = 请去掉其中一个。
cli-usage-hands = “{ $word }”不是同时制作的数量。
    .hint = 请写从 1 起的整数：--hands 4
cli-usage-port = “{ $word }”不是端口。
    .hint = 请写 0 到 65535 的数；0 表示任意空闲端口。
cli-usage-address = “{ $word }”不是网络地址。
    .hint = 127.0.0.1 只限本机，0.0.0.0 用于本地网络。
cli-usage-language = 没有“{ $word }”的消息。
    .hint = 现有：{ $known }。
cli-usage-sheet = 没有“{ $word }”这种印刷品。
    .hint = 请写 --sheet 和其中一种：lid、sticker、sign、postcard、self-mailer、handout。
cli-usage-fix = “{ $word }”不是改正办法的编号。
    .hint = lidleaf check PROGRAM 会列出编号，如 2.1。
cli-usage-other = 命令看不懂：{ $detail }。
    .hint = lidleaf --help 列出所有命令。

## Files and addresses

cli-file-missing = 文件 { $file } 不存在。
    .hint = 请检查名称和文件夹。
cli-file-unreadable = 文件 { $file } 读不了：{ $detail }。
    .hint = 请确认您有读取权限，且没有被别的程序占用。
cli-file-is-folder = { $file } 是文件夹，不是文件。
    .hint = 请写里面的文件名。
cli-file-not-text = 文件 { $file } 从第 { $line } 行起不是文字。
    .hint = 方案文件是 UTF-8 文本。它可能是别的文件，或已损坏：请用以前的副本，或重新导出。
cli-folder-missing = 文件夹 { $file } 不存在。
    .hint = 请先发布到那里：lidleaf publish program.json --out FOLDER
cli-folder-unreadable = 文件夹 { $file } 读不了：{ $detail }。
    .hint = 请确认您有读取权限。
cli-name-not-text = { $file } 的名称不是可读的文字。
    .hint = 请改名。
cli-cannot-write = { $file } 写不了：{ $detail }。原来的内容没有变。
    .hint = 请确认文件夹存在、您有写入权限、还有空间。
cli-cannot-serve = 地址 { $address } 打不开：{ $detail }。
    .hint = 可能被别的程序占用：请用 --port 换端口。

## Publishing

cli-app-missing = { $file } 里没有构建好的应用。
    .hint = 请用 cargo xtask run 构建，或用 --app 指定文件夹。
cli-app-list-broken = 应用的文件列表 { $file } 读不了：{ $detail }。
    .hint = 请用 cargo xtask run 重新构建应用。
cli-app-changed = { $file } 和构建时不一样。
    .hint = 请用 cargo xtask run 重新构建应用。
cli-out-not-folder = 不能发布到 { $file }：它不是有名称的文件夹。
    .hint = 请用 --out 指定新文件夹。
cli-out-in-use = 文件夹 { $file } 里有别的文件。发布会替换整个文件夹，所以什么都没改。
    .hint = 请用 --out 指定新的或空的文件夹。
cli-out-in-app = 应用的文件夹 { $app } 和指南的文件夹 { $file } 互相包含。
    .hint = 请用 --out 指定别处的文件夹。
cli-publish-refused = 方案有错误，没有发布。
    .hint = 请改正上面的错误；lidleaf check 可再次列出。

## What is not in the program

cli-unknown-item = 没有叫“{ $item }”的物品。
    .hint = 请换个词，或用它的材料或形状。
cli-unknown-fact = “{ $fact }”不是属性。
    .hint = 属性有：{ $known }。
cli-unknown-value = “{ $value }”不是属性“{ $fact }”的值。
    .hint = 可用：{ $known }。
cli-unknown-measure = “{ $value }”不是属性“{ $fact }”的量。
    .hint = 请写数字和单位，例如 { $known }。
cli-unknown-fix = 这个方案的问题里没有编号 { $number } 的改正办法。
    .hint = lidleaf check PROGRAM 列出编号；方案改动后编号会变。
cli-unknown-zone = 没有“{ $zone }”这个地区。
    .hint = 地区有：{ $known }。
cli-unknown-town = 演示里没有“{ $town }”这个镇。
    .hint = 镇有：{ $known }。
cli-unknown-stream = 没有“{ $stream }”这个类别。
    .hint = 类别有：{ $known }。
cli-unknown-sheet-language = 方案没有用“{ $language }”发布。
    .hint = 发布语言有：{ $known }。
cli-too-many-languages = 一张印刷品可用一到四种语言，不能用 { $count } 种。
    .hint = 请用 --languages en,es 指定
cli-usage-size = “{ $word }”不是尺寸。
    .hint = 请写名称，如 a4 或 letter，或写宽、高和单位：8x12in
cli-usage-length = “{ $word }”不是长度。
    .hint = 请写数字和单位：6mm、0.25in
cli-usage-fold = “{ $word }”不是折法。
    .hint = 请写 --fold half 或 --fold thirds。
cli-usage-qr-level = “{ $word }”不是纠错等级。
    .hint = 请写 M、Q 或 H。
cli-usage-words = “{ $word }”不是词数。
    .hint = 请写不小于 1 的整数，例如 --words 6
cli-usage-up = “{ $word }”不是印刷品的数量。
    .hint = 请写整数：--up 4
cli-unknown-sheet-item = 没有“{ $item }”这个物品。
    .hint = 请写它的编号，lidleaf answer --json 会显示。
cli-nothing-against = 没有规定说“{ $item }”不能放。
    .hint = 贴纸用来提醒：请写一个不收的东西，或危险品。
