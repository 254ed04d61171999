### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = 印刷品
sheet-lid = 桶盖标签
sheet-sticker = 圆形贴纸，一句话
sheet-sign = 公用桶告示牌
sheet-postcard = 邮寄明信片
sheet-self-mailer = 折叠邮寄单
sheet-handout = 宣传单
print-size = 成品尺寸
print-size-usual = 常用尺寸
print-size-typed = 在下面填写
print-typed-size = 尺寸和单位，如 8 x 12 in；圆形写 115 mm
print-size-unread = “{ $text }”不是尺寸。请写宽、高和单位：8 x 12 in
print-corner = 圆角半径（mm）
print-fold = 折法
print-fold-half = 对折一次
print-fold-thirds = 折两次，像信纸
print-die-line = 用专色画模切线
print-printers-mark = 给印刷厂标记留位置
print-more = 给印刷厂的更多选项
print-stock = 纸张
print-thickness = 纸厚（mm）
print-distance = 阅读距离（mm）
print-qr-level = 二维码：可承受的损坏
print-qr-most = 不变大时的最高值
print-qr-medium = 15%（M）
print-qr-quartile = 25%（Q）
print-qr-high = 30%（H）
print-words = 每行最多几个词
print-words-any = 需要多少就多少
print-item = 一个物品
print-press = 一大张印多个
print-press-none = 每页一个
print-work-and-turn = 自翻版
print-no-item = 没有“{ $item }”这个物品。请从列表中选择。
print-nothing-against = 没有规定说“{ $item }”不能放。请选一个不能放的东西，或危险品。
print-ticket = 下载工单
print-number-unread = “{ $text }”不是毫米数。
ticket-title = 印刷工单
ticket-sheet = 印刷品
ticket-files = 文件
ticket-file =
    { $pages ->
       *[other] { $file }：{ $pages } 页
    }
ticket-quantity = 数量
ticket-copies =
    { $copies ->
       *[other] { $languages }：{ $copies } 份
    }
ticket-copies-unsaid = { $languages }：份数待定
ticket-trim = 成品尺寸
ticket-size = { $width } × { $height } mm（{ $across } × { $down } in）
ticket-bleed = 四边出血
ticket-mm = { $length } mm
ticket-corners = 角
ticket-round = 裁成圆形
ticket-radius = 圆角，半径 { $radius } mm
ticket-square = 直角
ticket-die = 模切线用专色“Dieline”，叠印：请勿印出
ticket-folds = 折叠
ticket-fold = 横折，展开时距上边 { $at } mm
ticket-fold-order = 地址面朝外。它的下边是折边；成品从上边打开，并在上边贴封。
ticket-colours = 颜色
ticket-colours-one = 4/0：单面青、品红、黄、黑
ticket-colours-two = 4/4：双面青、品红、黄、黑
ticket-colours-note = PDF/X-4；黑色文字叠印；总墨量不超过 { $limit }%
ticket-stock = 纸张
ticket-stock-unsaid = 待定
ticket-thickness = 厚 { $thickness } mm
ticket-thickness-unsaid = 厚度待确认
ticket-press = 印刷大张
ticket-work-and-turn = 自翻版：背面在同一块印版上
ticket-mark = 印刷厂标记
ticket-mark-room = 小字处留有 19 × 6 mm 的位置
ticket-edition = 版次
ticket-date = 制作日期
ticket-contact = 有问题请找
print-zone = 只限一个地区
print-language = 语言 { $number }
print-make = 制作
print-making = 正在制作…
print-done = 已做好。
print-refused = 没有生成文件。请改正下面的错误再试。
print-unreachable = 无法下载印刷模块。请检查网络再试。
print-download = 下载印刷用 PDF
print-download-web = 下载网页用 PDF
print-web-hint = 印刷用 PDF 交给印刷厂。网页用 PDF 在屏幕上看和朗读。
print-profile = 印刷厂的颜色配置文件（.icc）
print-profile-hint = 不选则用自带的铜版纸配置文件。
print-ink-limit = 最大墨量（%）
print-mark = 在印刷品上标为 { $number }
print-contradictions = 互相矛盾的行：{ $count }。印刷前请看下面。
print-page = 第 { $number } 页
print-no-stream = 没有“{ $stream }”这个类别。请从列表中选择。
print-no-zone = 没有“{ $zone }”这个地区。请从列表中选择。
print-no-language = 请选择本方案的一到四种语言。
print-shortened = { $item }：单看这一行，{ $percent } 的情况是对的；其余内容因放不下而省去。
print-left-out = 因放不下而省去：{ $items }。
print-hazards-in-brief = 放不下接收危险品的地点；可扫印刷品上的二维码或打上面的电话查询。
print-refused-in-brief = 放不下不收物品该送往何处；可扫印刷品上的二维码或打上面的电话查询。
preflight-title = 印前检查

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = 四周出血 { $bleed } mm，离边缘 { $safe } mm 以内没有内容。
preflight-boxes = 成品尺寸 { $finished } mm，含出血 { $bleed } mm，含标记的页面 { $page } mm。
preflight-contrast = 文字与底色分明：对比度至少 { $ratio }:1，黑度至少相差 { $difference }%。
preflight-fonts-embedded = 所有字体都已嵌入文件，只留用到的 { $glyphs } 个字形：{ $fonts }。
preflight-pictures-have-words = 为看不见的人配有文字的图：{ $count }。
preflight-hazards-shown = 已列出的危险品：{ $count }。
preflight-ink-coverage = 一处最大墨量 { $coverage }%，上限 { $limit }%。
preflight-postal-zones = 地址面的留空区没有被占用。
preflight-qr-code = 二维码：版本 { $version }，等级 { $level }，模块 { $module } mm，静区 { $quiet } 个模块。
preflight-type-sizes = 文字 { $body } pt，最小 { $smallest } pt；在 { $distance } mm 处阅读至少需要 { $floor } pt。
preflight-translation-outdated = “{ $text }”（{ $lang }）：翻译之后原文改过。印刷前请重新翻译。
preflight-line-often-wrong = 单写“{ $text }”，只有 { $percent }% 的情况是对的。请写得更清楚，或去掉这一行。
preflight-lines-contradict = “{ $text }”和“{ $other }”（{ $lang }）互相矛盾：只看前一行的人会以为对两者都适用。请改写其中一行。
preflight-picture-without-words = 没有为看不见的人说明这里是什么（{ $what }）。请写上文字。

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = “{ $lang }”的文字还没人检查。印刷前请找人看一遍。
preflight-postal-field-missing = { $field }：空的。请填写，或交给印刷厂补上。
preflight-qr-dense = 二维码太密（版本 { $version }，{ $characters } 个字符）。网址短一些更好扫。

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = 二维码的网址不能用：“{ $address }”。请写完整，以 https:// 开头
preflight-bad-character =
    { $kind ->
        [bidi] { $place }：“{ $text }”里有改变书写方向的字符（{ $codepoint }，第 { $position } 位）。请删掉重打。
        [control] { $place }：“{ $text }”里有控制字符（{ $codepoint }，第 { $position } 位）。请删掉重打。
       *[invisible] { $place }：“{ $text }”里有看不见的字符（{ $codepoint }，第 { $position } 位）。请删掉重打。
    }
preflight-boxes-wrong = 页面各框没有逐层套住：成品 { $finished } mm，含出血 { $bleed } mm，页面 { $page } mm。请另选印刷品。
preflight-contrast-low = “{ $text }”与底色不够分明：对比度 { $ratio }:1，至少需要 { $least }:1；黑度相差 { $difference }%，至少需要 { $apart }%。请换别的墨色。
preflight-ink-limit-invalid = “{ $limit }”不是墨量上限。请填印刷厂给出的四块印版总和，100 到 400%。
preflight-qr-not-quiet = 二维码四周没有 { $quiet } 个模块的空白。请移开那里的内容。
preflight-date-invalid = “{ $date }”不是日期。请按年、月、日写：2027-01-31
preflight-distance-invalid = “{ $distance }”不是以 mm 计的阅读距离。请填写读者站多远。
preflight-font-not-embeddable = 字体“{ $family }”不允许嵌入文件。请换一种字体。
preflight-font-unreadable = 字体“{ $family }”的文件读不了。请重新下载。
preflight-hazard-accepted = { $place }：“{ $text }”是危险品，却列在可收物品里。危险品绝不能进桶：请改正规则。
preflight-hazard-missing = “{ $lang }”的版面上缺少危险品“{ $text }”。危险品不能为省地方而省去。
preflight-language-count = 一张印刷品可用一到四种语言，不能用 { $count } 种。
preflight-language-invalid = “{ $lang }”不是语言标签。请写成 es 或 es-US 这样。
preflight-language-twice = 语言“{ $lang }”出现两次。请去掉一个。
preflight-languages-differ =
    { $what ->
        [sections] “{ $lang }”和“{ $first }”说的不一样：它有 { $theirs } 个部分，应为 { $ours } 个。请翻译缺少的内容。
        [verdict] “{ $lang }”和“{ $first }”说的不一样：第 { $section } 部分的结论不同。请改正。
        [lines] “{ $lang }”和“{ $first }”说的不一样：第 { $section } 部分有 { $theirs } 行，应为 { $ours } 行。请翻译缺少的内容。
       *[picture] “{ $lang }”和“{ $first }”说的不一样：第 { $section } 部分第 { $line } 行的图或危险标记不同。请改正。
    }
preflight-missing-glyph = { $place }：这里没有字体含有“{ $text }”中的 { $characters }。请换个写法，或添加含有它的字体。
preflight-nothing-to-say = 没有可印的内容：本方案对这个类别什么也没说。请先写规则。
preflight-outside-safe-area = 离边缘不到 { $safe } mm，可能被裁掉：{ $what }
preflight-pictogram-unknown = { $place }：没有图标“{ $pictogram }”。请另选一个。
preflight-picture-too-small = 图标只有 { $side } mm 宽。请减少行数或语言。
preflight-postal-field-full = { $field }：“{ $text }”（第 { $line } 行）放不下。请缩短。
preflight-postal-zone = 在{ $zone }里：{ $what }。请移开或缩短。
preflight-profile-unusable =
    { $why ->
        [not-icc] 这个文件不是颜色配置文件。请用印刷厂指定的 CMYK 输出配置文件（.icc）。
        [cut-short] 颜色配置文件不完整。请让印刷厂重新发送。
        [no-tables] 颜色配置文件“{ $name }”没有颜色表。请用印刷厂指定的 CMYK 输出配置文件。
       *[other-kind] 颜色配置文件“{ $name }”不是 CMYK 输出配置文件：它用于{ $class }，色彩空间为 { $space }。请用印刷厂指定的。
    }
preflight-qr-too-fine = 二维码太细，扫不了：模块只有 { $module } mm。请缩短网址。
preflight-qr-too-long = 网址有 { $characters } 个字符，二维码装不下。请缩短。
preflight-rule-too-thin = 有一条线只有 { $width } pt；能印出的最细线是 { $least } pt。
preflight-step-invalid = 可省内容的第 { $number } 步不能执行。英文详情：{ $why }。
preflight-text-empty = { $place } 没有文字。请填写。
preflight-text-overlaps = “{ $text }”和“{ $other }”重叠。请缩短其中一个。
preflight-text-too-long = { $place }：“{ $text }”用能看清的最小字号 { $floor } pt 也放不下。请缩短约 { $cut } 个字符。
preflight-too-many-lines = 印刷品“{ $sheet }”有 { $lines } 行、{ $languages } 种语言，用 { $floor } pt 字还差 { $missing } mm。请减少行数或语言。
preflight-too-much-ink = 有一处墨量 { $coverage }%，上限是 { $limit }%。请换浅一点的颜色。
preflight-type-too-small = “{ $text }”是 { $size } pt，至少要 { $least } pt。请缩短文字。
preflight-word-too-wide = { $place }：“{ $text }”里的词“{ $word }”在 { $floor } pt 时比栏宽。请用不超过约 { $room } 个字符的词。
sheet-text-title = 标题（{ $lang }）
sheet-text-heading = 第 { $section } 部分的标题（{ $lang }）
sheet-text-line = 第 { $section } 部分第 { $line } 行（{ $lang }）
sheet-text-scan = 二维码旁的句子（{ $lang }）
sheet-text-foot = 页脚第 { $line } 行（{ $lang }）
sheet-text-issuer = 发布单位
sheet-text-short-address = 短网址
sheet-text-notice = 印刷说明
sheet-text-edition = 版次
sheet-text-job-name = 工单名称
sheet-text-slug = 印刷品外的一行
sheet-text-return-address = 回邮地址 { $line }
sheet-text-indicia = 邮资标记 { $line }
sheet-text-addressee = 收件地址 { $line }
postal-zone-barcode-clear = 邮局条码的空白条
postal-zone-read-area = 邮局机器读地址的区域
drawn-code = 二维码
drawn-picture = 图
drawn-area = 一块墨色
sheet-cart-lid = 桶盖标签
sheet-round-sticker = 圆形贴纸
sheet-enclosure-sign = 公用桶告示牌
sheet-text-stock = 材料
sheet-postcard-mailer = 邮寄明信片
profile-class-mntr = 显示器
profile-class-scnr = 扫描仪或相机
profile-class-other = 其他用途
preflight-size-zero = 印刷品是 { $width } × { $height } mm。两边都要大于零：请重新填成品尺寸。
preflight-size-fixed = 印刷品是 { $width } × { $height } mm，但这一种只有这些尺寸：{ $names }。
preflight-size-out-of-range = 印刷品是 { $width } × { $height } mm。请填每边 { $least } 到 { $most } mm，并写单位。
preflight-size-too-narrow = 印刷品是 { $width } × { $height } mm。一边最多为另一边的 { $most } 倍。
preflight-size-not-round = 圆形标签的宽和高相同，不能是 { $width } × { $height } mm。请填直径。
preflight-postal-size = 邮局不收 { $width } × { $height } mm 的明信片、信件或大信封件。信件长 127 到 292 mm，高 89 到 156 mm，长为高的 1.3 到 2.5 倍；大信封件最大 381 × 305 mm。
preflight-corner-radius = 圆角半径是 { $radius } mm。请写 0 到 { $most } mm。
preflight-stock-thickness = 纸厚 { $thickness } mm，没有这么厚的纸或标签膜。请核对印刷厂给的资料。
preflight-one-message = 圆形标签只写一句话，不能有 { $lines } 行。请只选一件事。
preflight-press-size = 印刷大张是 { $width } × { $height } mm。请填每边 { $least } 到 { $most } mm，并写单位。
preflight-press-gutter = 间距是 { $gutter } mm。放两边的出血，印刷品之间需要 { $least } mm。
preflight-press-too-small = 连出血和标记，{ $width } × { $height } mm 的印刷大张一个也放不下。请选大一点的。
preflight-press-up = 要排 { $up } 个，但印刷大张只放得下 { $most } 个。请填 1 到 { $most }。
preflight-on-a-fold = “{ $what }”离折线不到 { $distance } mm。请缩短文字。
preflight-postal-thickness = 成品厚 { $thickness } mm。邮局要求 { $least } 到 { $most } mm：请换一种纸。
preflight-ticket-too-long = 工单的“{ $place }”太长。请缩短那里填写的内容。
preflight-imposed = { $width } × { $height } mm 的印刷大张上排 { $up } 个：横 { $across } 个，竖 { $down } 个。
preflight-fits-fewer = 这些语言放在一起就全部放得下：{ $tags }。请先印这些，其余语言另印一张。
preflight-fits-larger = 改用 { $size } 尺寸就全部放得下。请选择该尺寸。
preflight-folds-clear = 折线：{ $count }。离折线 { $distance } mm 以内没有印任何内容。
preflight-postal-class =
    { $class ->
        [card] 作为明信片邮寄：{ $length } × { $height } mm。
        [folded] 作为折叠邮寄单邮寄：折后 { $length } × { $height } mm。
        [flat] 作为大信封件邮寄：{ $length } × { $height } mm。
       *[letter] 作为信件邮寄：{ $length } × { $height } mm。
    }
preflight-postal-thickness-unknown = 没有写明纸有多厚。邮局要求成品厚 { $least } 到 { $most } mm：请问印刷厂。
preflight-sign-letters = 标题的大写字母高 { $height } mm，在 { $distance } mm 处看得清。
preflight-sign-letters-small = 标题的大写字母高 { $height } mm。无障碍标牌在 { $distance } mm 处阅读要求 { $least } mm：请缩短文字，或用大一点的告示牌。
preflight-die-line = 模切线用单独的专色“Dieline”，不在任何印版上。
