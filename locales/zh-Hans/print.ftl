### The print screen and what the check before printing (preflight) says.
### $place, $what, $field and $zone come from the printing part in English.

## The print screen

print-sheet = 印刷品
sheet-lid = 桶盖标签，7 × 9 英寸
sheet-postcard = 邮寄明信片，9 × 6 英寸
print-zone = 只限一个地区
print-language = 语言 { $number }
print-make = 制作
print-making = 正在制作…
print-done = 已做好。
print-refused = 没有生成文件。请改正下面的错误再试。
print-unreachable = 无法下载印刷模块。请检查网络再试。
print-download = 下载印刷用 PDF
print-page = 第 { $number } 页
print-no-stream = 没有“{ $stream }”这个类别。请从列表中选择。
print-no-zone = 没有“{ $zone }”这个地区。请从列表中选择。
print-no-language = 请选择本方案的一到三种语言。
print-shortened = { $item }：单看这一行，{ $percent } 的情况是对的；其余内容因放不下而省去。
preflight-title = 印前检查

## Preflight: what was checked and is right. Sizes are in mm, type in points

preflight-bleed-and-safe-area = 四周出血 { $bleed } mm，离边缘 { $safe } mm 以内没有内容。
preflight-hazards-shown = 已列出的危险品：{ $count }。
preflight-ink-coverage = 一处最大墨量 { $coverage }%，上限 { $limit }%。
preflight-postal-zones = 地址面的留空区没有被占用。
preflight-qr-code = 二维码：版本 { $version }，等级 { $level }，模块 { $module } mm，静区 { $quiet } 个模块。
preflight-type-sizes = 文字 { $body } pt，最小 { $smallest } pt；在 { $distance } mm 处阅读至少需要 { $floor } pt。

## Preflight: somebody should look before it goes to the print shop

preflight-translation-unreviewed = “{ $lang }”的文字还没人检查。印刷前请找人看一遍。
preflight-postal-field-missing = “{ $field }”一栏是空的。请填写，或交给印刷厂补上。
preflight-qr-dense = 二维码太密（版本 { $version }，{ $characters } 个字符）。网址短一些更好扫。

## Preflight: errors. No file is made until they are put right. $place and $what say where

preflight-address-invalid = 二维码的网址不能用：“{ $address }”。请写完整，以 https:// 开头
preflight-bad-character =
    { $kind ->
        [bidi] { $place }：“{ $text }”里有改变书写方向的字符（{ $codepoint }，第 { $position } 位）。请删掉重打。
        [control] { $place }：“{ $text }”里有控制字符（{ $codepoint }，第 { $position } 位）。请删掉重打。
       *[invisible] { $place }：“{ $text }”里有看不见的字符（{ $codepoint }，第 { $position } 位）。请删掉重打。
    }
preflight-date-invalid = “{ $date }”不是日期。请按年、月、日写：2027-01-31
preflight-distance-invalid = “{ $distance }”不是以 mm 计的阅读距离。请填写读者站多远。
preflight-font-not-embeddable = 字体“{ $family }”不允许嵌入文件。请换一种字体。
preflight-font-unreadable = 字体“{ $family }”的文件读不了。请重新下载。
preflight-hazard-accepted = { $place }：“{ $text }”是危险品，却列在可收物品里。危险品绝不能进桶：请改正规则。
preflight-hazard-missing = “{ $lang }”的版面上缺少危险品“{ $text }”。危险品不能为省地方而省去。
preflight-language-count = 一张印刷品可用一到三种语言，不能用 { $count } 种。
preflight-language-invalid = “{ $lang }”不是语言标签。请写成 es 或 es-US 这样。
preflight-language-twice = 语言“{ $lang }”出现两次。请去掉一个。
preflight-languages-differ = “{ $lang }”和“{ $first }”说的不一样：{ $what }。
preflight-missing-glyph = { $place }：这里没有字体含有“{ $text }”中的 { $characters }。请换个写法，或添加含有它的字体。
preflight-nothing-to-say = 没有可印的内容：本方案对这个类别什么也没说。请先写规则。
preflight-outside-safe-area = “{ $what }”离边缘不到 { $safe } mm，可能被裁掉。
preflight-pictogram-unknown = { $place }：没有图标“{ $pictogram }”。请另选一个。
preflight-picture-too-small = 图标只有 { $side } mm 宽。请减少行数或语言。
preflight-postal-field-full = “{ $field }”一栏第 { $line } 行放不下：“{ $text }”。请缩短。
preflight-postal-zone = “{ $what }”占了 { $zone }。请移开或缩短。
preflight-profile-unusable = 颜色配置文件不能用：{ $why }。请用印刷厂指定的 CMYK 输出配置文件。
preflight-qr-too-fine = 二维码太细，扫不了：模块只有 { $module } mm。请缩短网址。
preflight-qr-too-long = 网址有 { $characters } 个字符，二维码装不下。请缩短。
preflight-rule-too-thin = 线条“{ $what }”太细，印不出来。
preflight-text-empty = { $place } 没有文字。请填写。
preflight-text-overlaps = “{ $text }”和“{ $other }”重叠。请缩短其中一个。
preflight-text-too-long = { $place }（{ $lang }）：“{ $text }”用能看清的最小字号 { $floor } pt 也放不下。请缩短约 { $cut } 个字符。
preflight-too-many-lines = 印刷品“{ $sheet }”有 { $lines } 行、{ $languages } 种语言，用 { $floor } pt 字还差 { $missing } mm。请减少行数或语言。
preflight-too-much-ink = 有一处墨量 { $coverage }%，上限是 { $limit }%。请换浅一点的颜色。
preflight-type-too-small = “{ $text }”是 { $size } pt，至少要 { $least } pt。请缩短文字。
preflight-word-too-wide = { $place }（{ $lang }）：“{ $text }”里的词“{ $word }”在 { $floor } pt 时比栏宽。请用不超过约 { $room } 个字符的词。
