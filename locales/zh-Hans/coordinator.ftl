### The coordinator's screens. Short, clear words; trade words where coordinators use them.

## Around every screen

desk-title = 指南工作台
desk-title-of = { $program }：指南工作台
navigation = 程序各部分
undo = 撤销
redo = 重做
close = 关闭
tab-files = 文件
tab-program = 方案
tab-streams = 类别
tab-zones = 地区
tab-channels = 渠道
tab-sites = 地点
tab-rules = 规则
tab-items = 物品
tab-texts = 文字
tab-print = 印刷
start-problem-unreachable = 服务器没有回应。请检查网络，重新载入页面。
start-problem-missing = 服务器上缺少本应用的一个文件。请让发布者重新发布。
start-problem-broken = 本应用的一个文件在传送中损坏。请重新载入；如果还不行，请重新发布应用。
recover-title = 本页出错了
recover-text = 您的方案在编辑时已自动保存。为保险请先下载，再重新载入页面继续。
recover-nothing = 这个浏览器里没有保存的方案。
recover-reload = 重新载入
recover-download = 下载我的方案
panels = 问题、变动和试用

## Saving. $time is a day with a time

save-nothing = 没有打开的方案
save-saved = 已存在本设备
save-waiting = 正在保存…
save-failed = 没有保存
save-again = 再试着保存
save-problem-full = 本设备没有空间了，您的改动没有保存。请马上导出方案文件，再腾出空间。
save-problem-forbidden = 这个浏览器不让本页存储内容，您的改动没有保存。关窗口前请导出方案文件。
save-problem-newer = 另一个窗口后来保存了这个方案。您的版本没有覆盖它。
day-and-time = { $day } { $time }

## Drafts and files. $name, $copy and $program are names of drafts or files

drafts-title = 本设备上的方案
drafts-none = 还没有。请打开演示、新建方案或导入文件。
draft-saved = { $time } 保存
draft-remove-sure = 确定删除吗？
draft-second-version = { $name }（第二版）
draft-diverged = “{ $name }”在另一个窗口也改过。两份都保留：另一份现在叫“{ $copy }”。
open-demo = 打开演示
open-demo-hint = Quillmere 县，一个虚构的地方，内容都已填好
new-program = 新建方案
new-program-hint = 只从内置的安全规则开始
import-file = 导入方案文件
import-file-hint = 与您的其他方案并列打开，不替换任何一个
export-file = 导出方案文件
export-file-hint = 一个文件包含全部内容，可保存或转给别人
import-refused = 打不开“{ $name }”
import-unchanged = 您的方案没有变。
import-original = 下载原来的文件

## Why a program file cannot be read

load-too-large = 文件有 { $megabytes } MB；方案文件最多 { $limit } MB。请确认文件没选错。
load-truncated = 文件在第 { $line } 行就断了，可能传送时被截断。请重新复制或下载。
load-not-json = 文件从第 { $line } 行第 { $column } 列起读不了。如果手工改过，请改正那里；否则请重新导出。
load-other-format = 这不是方案文件（它写着“{ $found }”）。请选择从这里导出的文件。
load-newer = 文件版本是 { $found }，本应用只认识到 { $known }。请用更新的应用。
load-shape = “{ $path }”处的值类型不对：{ $detail }。请改正后再导入。
load-too-deep = 规则“{ $rule }”的条件嵌套超过 { $limit } 层。请拆成几条规则。

## Lists and fields in general

list-filter = 筛选
list-add = 添加
list-add-one = 再加一个
list-new-name = 新的名称
list-remove = 删除
list-up = 上移
list-choose = 从列表中选一个，或添加一个。
choice-none = 无
field-month = 月
field-day = 日
measure-unreadable = “{ $stated }”读不懂。请写数字和单位，如 2 in、1 gal、100 lb。
translations = 其他语言
field-name = 名称
field-kind = 种类
field-note = 给居民的说明
field-phone = 电话
field-email = 电子邮件

## The program's own fields

program-basics = 本方案
field-program-name = 指南名称
field-program-id = 短编号，用于文件和网址
field-edition = 版次
field-edition-from = 生效日期
field-guide-url = 已发布指南的网址
field-source-language = 文字最先用哪种语言写
field-languages = 发布语言
program-contact = 问谁
field-contact-name = 办公室名称
field-return-address = 邮件上的回邮地址
program-silence = 没有规则提到时
field-silence = 没提到表示什么
silence-undecided = 还没有定（不能发布）
silence-ask = 开放清单：答“清单上没有，请询问”
silence-closed = 封闭清单：没提到的一律不收
program-unknown = 居民看不出来时
program-unknown-hint = 用什么代替未知。没有设定的取稳妥的值。
unknown-add = 再设一个
program-counts-as = 什么算作别的
program-counts-as-hint = 所有规则都会同样对待：例如半透明算作透明。
counts-as-add = 属性
field-these = 这些
field-count-as = 算作
program-hazards = 危险品送到哪里
program-hazards-hint = 每一类都要有安全接收的渠道和批准人。危险品绝不能进桶。
field-hazard-channel = 送到
field-approved-by = 批准人
program-plant = 分拣厂
field-plant-name = 工厂名称
field-machine-name = 机器
field-machine-limit = 它处理不了什么
machine-add = 添加机器
program-print = 用于印刷品
field-short-url = 二维码旁的短网址
field-indicia = 邮资标记，逐行填写
field-statement = 关于再生纸等的声明

## Streams and containers

containers-title = 桶
container-add = 添加桶
container-remove = 删除这个桶
field-container-name = 居民怎么叫它
field-colour = 颜色
field-capacity = 容量和单位
field-container-zones = 只限这些地区
field-container-dwellings = 只限这些住房
field-set-out = 什么时候、怎么放出来
field-container-rules = 关于这个桶的规定
field-container-rules-hint = 不管放什么都适用。居民在每个提到它的答案里都会看到。
field-container-rule-add = 规定的内容
field-container-rule = 用您自己的话代替标准句子
field-limit = 限度和单位
field-share = 限度，如 10%
limit-missing = 请填限度，或用自己的话写完整的规定。
residents-read = 居民看到：{ $text }
container-rule-kind-lid-closed = 盖子关上
container-rule-kind-weight = 装满的重量
container-rule-kind-distance = 周围的空位
container-rule-kind-side-waste = 旁边或上面的东西
container-rule-kind-share-of-load = 不该放的最多占多少
container-rule-kind-liners = 套袋子
container-rule-kind-sacks = 发放的袋子
container-rule-kind-registration = 先登记
container-rule-kind-refusals = 什么时候不收
stream-kind-recycling = 可回收物
stream-kind-organics = 有机垃圾
stream-kind-refuse = 垃圾
stream-kind-glass = 玻璃
stream-kind-paper = 纸
stream-kind-film = 塑料薄膜
container-kind-cart = 带轮的桶
container-kind-bin = 小桶
container-kind-bag = 袋子
container-kind-box = 箱子
container-kind-shared-cart = 楼里的公用桶
container-kind-dumpster = 大型垃圾箱

## Zones

field-dwelling = 住房种类
field-households = 户数
field-zone-streams = 这里收集的类别
field-centre = 地区中心：纬度、经度

## Channels and sites

field-fee = 费用，用文字写
field-booking = 需要预约
field-proof = 需要住址证明
field-permit = 需要许可证
field-voucher = 需要凭券
field-allowance = 数量或次数，用文字写
field-vehicles = 什么车可以来，用文字写
field-safe-for = 能安全接收这些危险品
channel-sites =
    { $count ->
        [0] 还没有地点接收。
       *[other] 它的地点：{ $names }
    }
channel-kind-drop-off = 回收站
channel-kind-store-take-back = 商店回收
channel-kind-hazardous-waste = 家庭有害垃圾处理站
channel-kind-event = 收集活动
channel-kind-bulky-pickup = 大件收集
channel-kind-deposit-return = 退押金
channel-kind-mail-back = 邮寄回收
channel-kind-reuse = 再用和修理
channel-kind-medicine-take-back = 药品回收
channel-kind-sharps-take-back = 针头回收
channel-kind-police = 警察
channel-kind-specialist = 专业公司
channel-kind-dealer = 厂家或商家
channel-kind-health-office = 卫生局
channel-kind-authority = 要打电话的部门
field-site-channels = 接收这些渠道的东西
field-accepts = 其中只收这些
field-refuses = 其中不收这些
field-site-vehicles = 什么车可以来，如与渠道不同
field-address = 地址
field-position = 位置：纬度、经度
field-hours = 开放时间
field-hours-hint = 按开放地图数据的写法：Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
hours-unreadable = 这个时间读不懂：{ $detail }

## Rules and their conditions

field-tier = 层级
field-verdict = 结论
rule-adds-steps = 无：只增加步骤
field-stream = 类别
field-channel = 渠道
field-prepare = 准备步骤，按顺序
field-reason = 理由
field-machine = 由哪台机器决定
field-residents = 给居民的话
field-sorters = 给分拣工人的话
field-contract = 合同用语
provenance-title = 依据
field-decided-by = 决定人
field-source = 来源
field-confirmed = 最近确认日期
field-ask-again = 再次询问日期
rule-more = 日期、例外和批准
field-also = 也收的地方
field-overrides = 优先于同层的这些规则
field-temporary = 临时规定
field-from = 从
field-until = 到
field-season = 只限每年的一段时间
field-season-from = 第一天
field-season-until = 最后一天
season-says = 每年从 { $from } 到 { $until }
field-banned-from = 法律禁止放进
acknowledgement-title = 内置安全规则的例外
acknowledgement-hint = 只有指定的人可以批准，并写明理由。每次检查都会作为警告显示。
field-acknowledged-by = 批准人
field-acknowledged-on = 日期
field-acknowledged-because = 理由
condition-title = 条件
condition-always = 总是：这条规则没有条件。
condition-begin = 添加条件
condition-kind = 各部分怎么算
condition-all = 全部符合
condition-any = 符合任意一个
condition-not = 不符合
condition-fact = 属性
condition-is = 是其中之一
condition-add-fact = 添加属性
condition-add-group = 添加一组
condition-remove = 删除条件的这部分
bound-at-least = 至少
bound-over = 超过
bound-at-most = 最多
bound-under = 不到
bound-value = 数量和单位
bound-day = 日期
bound-like = 日常比较
bound-per = 计数方式

## Items. $item is an item's name

items-all = 全部
items-answer = 答案
items-asks = 要提问
items-ask = 试一试
items-ask-name = 试一试：{ $item }
items-rule = 去看规则
items-decide = 做决定
items-decide-name = 做决定：{ $item }
items-count =
    { $count ->
       *[other] { $count } 项物品
    }

## Texts and their translations

texts-language = 语言
texts-state = 状态
text-state-missing = 缺少
text-state-unreviewed = 未检查
text-state-reviewed = 已检查
text-state-outdated = 已过时
text-step = 准备步骤
text-label = { $whose }：{ $what }
texts-reviewer = 您的姓名，用于签字
texts-reviewer-needed = 请先填姓名：检查要签字。
texts-sign-off = 我已检查
texts-count = 已检查 { $done } / { $all }
review-title = 各语言的状态
review-screens = 界面文字：{ $state }
review-source = 其他语言的来源
review-by = 由 { $name } 于 { $date } 检查
review-outdated = 由 { $name } 于 { $date } 检查，但英文之后有改动
review-texts = 您自己的文字：{ $all } 条中已检查 { $done } 条
review-names = 签名：{ $names }

## What changed, and trying the guide

ask-title = 以居民身份提问
changes-title = 您的改动带来的变化
changes-count =
    { $count ->
        [0] 没有答案变动。
       *[other] 有 { $count } 个答案变动。
    }
changes-absent = 指南里没有
changes-details = 地方没变；准备方法或理由变了。
changes-mark = 从现在起比较

## Findings. $item is an item's name, $answers a list such as "Wet: dry"

findings-title = 问题
findings-count = 错误：{ $errors } · 警告：{ $warnings } · 提示：{ $notices }
findings-more =
    { $count ->
       *[other] 还有 { $count } 项
    }
severity-error = 错误
severity-warning = 警告
severity-notice = 提示
severity-pass = 正确
witness = 例如：{ $item }，当 { $answers }
witness-item = 例如：{ $item }

## What a finding says, and below it what to do. Values are ids and texts of the program

finding-uncovered-case = 没有规则决定这种情况。
    .hint = 请为它写一条规则，或在方案页说明没提到表示什么。
finding-conflicting-rules = 同层的规则把同一样东西送到不同地方：{ $rules }。
    .hint = 请修改其中一条的条件，或让一条优先。
finding-hazard-not-safe =
    { $problem ->
        [no-channel] 危险品“{ $class }”没有渠道。
        [unknown-channel] 危险品“{ $class }”送往一个不存在的渠道。
        [channel-does-not-take-it] 危险品“{ $class }”送往的渠道没有标明能安全接收。
       *[rule] 规则“{ $id }”把危险品“{ $class }”送到不安全的地方。
    }
    .hint = 请选能安全接收的渠道。危险品绝不能进桶。
finding-hazard-acknowledged = { $by } 批准了内置安全规则的例外：“{ $id }”。
    .hint = 请确认当地法律和地点允许，且理由仍然成立。
finding-rule-never-applies = 规则“{ $id }”从不起作用。
    .hint = 前面的规则已决定它的所有情况，或没有物品符合它的条件。请修改或删除。
finding-not-listed = 这个物品有些情况的答案是“清单上没有，请询问”。
    .hint = 这是允许的。知道答案的话请写规则。
finding-missing-provenance = 看不出规则“{ $id }”的决定从哪里来。缺少：{ $missing }。
    .hint = 请填写谁决定、依据什么、最近何时与工厂确认。
finding-missing-translation =
    { $state ->
        [unreviewed] “{ $language }”里没人检查过的文字：{ $count }。第一条是“{ $first }”。
        [outdated] “{ $language }”里原文后来改过的文字：{ $count }。第一条是“{ $first }”。
       *[missing] “{ $language }”里缺少的文字：{ $count }。第一条是“{ $first }”。
    }
    .hint = 请打开文字页，按语言和状态筛选。
finding-broken-condition =
    { $problem ->
        [unknown-fact] 没有“{ $fact }”这个属性。
        [no-values] 属性“{ $fact }”没有和任何值比较。
        [no-number] “{ $fact }”的“{ $value }”没有数字。
        [no-unit] “{ $fact }”的“{ $value }”没有单位。
        [unknown-unit] “{ $fact }”的“{ $value }”单位不认识。
        [wrong-dimension] “{ $value }”不能用来量“{ $fact }”。
        [negative] “{ $fact }”的“{ $value }”小于零。
        [too-large] “{ $fact }”的“{ $value }”大得不可能。
        [unknown-part] 没有“{ $value }”这个部分。
        [range-reversed] “{ $fact }”的范围“{ $value }”前后颠倒。
       *[unknown-value] “{ $value }”不是“{ $fact }”的值。
    }
    .hint = 请从列表中选。数量要写单位，如 2 in、1 gal 或 10 lb。
finding-broken-item =
    { $problem ->
        [unknown-fact] 没有“{ $fact }”这个属性。
        [no-values] 属性“{ $fact }”没有和任何值比较。
        [no-number] “{ $fact }”的“{ $value }”没有数字。
        [no-unit] “{ $fact }”的“{ $value }”没有单位。
        [unknown-unit] “{ $fact }”的“{ $value }”单位不认识。
        [wrong-dimension] “{ $value }”不能用来量“{ $fact }”。
        [negative] “{ $fact }”的“{ $value }”小于零。
        [too-large] “{ $fact }”的“{ $value }”大得不可能。
        [unknown-part] 没有“{ $value }”这个部分。
        [no-such-sides] 按所写的边长不可能有这样的尺寸：最长边必须最长。
        [no-range] “{ $fact }”的范围没有起点或终点。
        [range-reversed] “{ $fact }”的范围“{ $value }”前后颠倒。
       *[unknown-value] “{ $value }”不是“{ $fact }”的值。
    }
    .hint = 请从列表中选。数量要写单位，如 2 in、1 gal 或 10 lb。
finding-broken-reference =
    { $kind ->
        [stream] 类别“{ $target }”不存在。
        [channel] 渠道“{ $target }”不存在。
        [zone] 地区“{ $target }”不存在。
        [step] 准备步骤“{ $target }”不存在。
        [reason] 理由“{ $target }”不存在。
        [machine] 机器“{ $target }”不存在。
        [item] 物品“{ $target }”不存在。
        [rule-of-tier] 规则“{ $target }”属于另一层，不能对它优先。
       *[rule] “{ $target }”不存在。
    }
    .hint = 请另选一个，或添加缺少的。名称为空表示还没有选。
finding-circular-override = 这些规则互相优先，成了圈：{ $rules }。
    .hint = 请从“优先”列表中去掉一条。
finding-destination-not-offered = 规则“{ $id }”把东西送到类别“{ $stream }”，但地区“{ $zone }”不收这一类。
    .hint = 请给该地区加上这个类别，或为该地区另写规则。
finding-duplicate-id =
    { $times ->
        [0] 这里有东西没有编号。
       *[other] 编号“{ $id }”用了 { $times } 次。
    }
    .hint = 请给每个独立的编号。链接、标签和译文都靠它。
finding-printed-line-untrue =
    { $span ->
        [from] 印刷内容“{ $line }”从 { $since } 起不对。
        [until] 印刷内容“{ $line }”到 { $until } 为止不对。
        [between] 印刷内容“{ $line }”从 { $since } 到 { $until } 不对。
       *[always] 印刷内容“{ $line }”在本版里不对。
    }
    .hint = 请重印或遮住这一行。印刷品不再使用时，请填写收回日期。
finding-suspicious-text =
    { $problem ->
        [markup] 文字“{ $key }”（{ $language }）里有标记代码：{ $shown }
        [direction] 文字“{ $key }”（{ $language }）里有改变书写方向的字符：{ $shown }
       *[control] 文字“{ $key }”（{ $language }）里有看不见的字符：{ $shown }
    }
    .hint = 文字应是纯文本。请删掉重打。
finding-too-complex = 这个物品未定的太多，无法查看所有情况（未定属性：{ $count }）。
    .hint = 请定下一些属性，或拆成几个物品。
finding-too-many-thresholds = 规则列出的界限太多，无法查看 { $count } 个物品的所有情况。最多的是“{ $fact }”：{ $thresholds } 个。
    .hint = 请让规则共用界限，并去掉已经过期的规则。
finding-unreadable-hours = 开放时间“{ $hours }”读不懂：{ $problem }
    .hint = 请这样写：Mo-Fr 08:00-17:00; Sa 09:00-13:00; PH off
finding-unusable-setting = “{ $value }”在这里不能用。
    .hint = 请从列表中选，或改正：颜色写成 #2a7f4f，位置写纬度和经度，网址以 https:// 开头

## Comparing with a file. $name is a file's name

compare-file-title = 与另一个文件比较
compare-file = 选择以前的版本或邻近地方的方案
compare-file-name = 已与“{ $name }”比较。
compare-newer = 这个文件是两者中较新的
compare-notice = 变动通知
compare-copy = 复制通知
compare-copied = 已复制。
compare-not-copied = 浏览器不能复制。请选中文字自己复制。
compare-download = 下载通知

## The register of printed sheets. $id is a sheet's id, $day a date

printed-title = 已印刷的内容
printed-copies = 份数
printed-note = 记为已印刷
printed-entry =
    { $copies ->
        [0] { $id }，{ $day }
       *[other] { $id }，{ $day }，{ $copies } 份
    }
printed-withdrawn = { $day } 收回
printed-withdraw = 不再使用
printed-still-out = 还在使用
finding-question-never-matters =
    { $problem ->
        [unknown] 设定了看不出“{ $fact }”时取什么，但没有物品的答案用到它。
       *[open] 这个物品没有定“{ $fact }”，但没有答案取决于它。
    }
    .hint = 不会有人被问到。可以不管，或写需要它的规则。
finding-steps-contradict = 一个答案既要“{ $one }”又要“{ $other }”，两者做不到。规则：{ $rules }。
    .hint = 请从规则中去掉一个步骤，或修改条件，让其中只有一条规则适用。
finding-preparation-contradicts =
    { $problem ->
        [none] 按规则“{ $id }”的步骤“{ $step }”做，“{ $fact }”就成了“{ $value }”，之后没有规则把它送到那里。
       *[rule] 按规则“{ $id }”的步骤“{ $step }”做，“{ $fact }”就成了“{ $value }”，之后规则“{ $other }”会把它送到别处。
    }
    .hint = 请去掉这个步骤，或让规则也适用于做完之后的情况。
finding-site-never-used =
    { $problem ->
        [item] 地点“{ $id }”说收“{ $item }”，但它从不送往这个地点的渠道。
       *[site] 没有东西送往地点“{ $id }”。
    }
    .hint = 请写规则送东西到它的渠道，给它另一个渠道，或从列表中去掉。
finding-no-site-takes =
    { $problem ->
        [refused] “{ $item }”送往渠道“{ $id }”，但它的地点都不收。
       *[none] “{ $item }”等东西送往渠道“{ $id }”，它却没有地点。
    }
    .hint = 请添加地点，让一个地点接收，或送往别的渠道。
finding-item-without-name = 物品“{ $id }”没有可显示的名称。缺名称的语言：{ $languages }。
    .hint = 请用方案的原文语言填写名称。
finding-name-twice = 物品“{ $id }”和“{ $other }”在“{ $language }”里都叫“{ $name }”。
    .hint = 请给其中一个能区别的名称。居民按名称选择。
finding-banned-destination = “{ $item }”被送到法律禁止放入的类别“{ $stream }”。规则：{ $rules }。
    .hint = 请送到别的类别或渠道，或改正写有禁令的地方。
finding-impossible-condition =
    { $problem ->
        [fact] 规则“{ $id }”的条件永远不成立：它对“{ $fact }”的要求自相矛盾。
       *[parts] 规则“{ $id }”的条件永远不成立：各部分互相排斥。
    }
    .hint = 请改正或去掉一个部分。任意一个成立即可时，用“符合任意一个”。
finding-empty-condition =
    { $problem ->
        [any] 规则“{ $id }”的条件里有空的“符合任意一个”组，永远不成立。
       *[all] 规则“{ $id }”的条件里有空的“全部符合”组，总是成立。
    }
    .hint = 请填上该组的内容，或删除该组。
finding-rule-without-condition = 规则“{ $id }”没有条件：凡是前面层级没有决定的，都由它决定。
    .hint = 请写明何时适用。如果是指其余一切，请放到“default”层级。
finding-text-missing-register =
    { $register ->
        [contract] 没有合同用语的规则：{ $count }。第一条是“{ $first }”。
        [sorters] 没有给分拣工人的话的规则：{ $count }。第一条是“{ $first }”。
       *[residents] 没有给居民的话或理由的规则：{ $count }。第一条是“{ $first }”。
    }
    .hint = 请在规则页填写，让三种说法一致。
finding-unused-thing =
    { $kind ->
        [stream] 没有规则送东西到类别“{ $id }”。
        [channel] 没有规则或危险品用到渠道“{ $id }”。
        [step] 没有规则用到步骤“{ $id }”。
        [zone] 地区“{ $id }”没有什么不同：没有规则、桶或类别提到它。
       *[machine] 没有规则提到机器“{ $id }”。
    }
    .hint = 以后要用就留着，否则请删除。
finding-counts-as-broken =
    { $problem ->
        [unknown-fact] 没有“{ $fact }”这个属性，不能把它的值算作别的。
        [unlisted-fact] “{ $fact }”没有值的列表，不能把一个算作另一个。
        [unknown-value] “{ $value }”不是“{ $fact }”的值。
        [danger] “{ $fact }”是危险：它的值绝不能算作别的。
        [nothing] 没有写明什么算作“{ $fact }”的“{ $value }”。
        [itself] “{ $fact }”的“{ $value }”算作它自己。
        [twice] “{ $fact }”的“{ $value }”算作两个不同的值。
        [circle] “{ $fact }”的值互相算作，成了圈，其中有“{ $value }”。
       *[chain] “{ $fact }”的“{ $value }”本身算作另一个值，所以不能有值算作它。
    }
    .hint = 请从列表中选值。每个只能算作一个别的值，而那个值不再算作别的。
finding-season-broken =
    { $problem ->
        [reversed] 规则“{ $id }”的最后一天早于第一天：{ $value }。
       *[not-a-year-day] “{ $value }”不是一年中的日子，规则“{ $id }”的时段读不懂。
    }
    .hint = 请写月和日，如 11-01。时段可以跨年；带年份的起止日期不可以。
finding-container-rule-broken =
    { $problem ->
        [unknown-kind] “{ $value }”不是桶“{ $id }”可用的规定种类。
        [twice] 桶“{ $id }”有两条“{ $value }”规定。
        [limit] 桶“{ $id }”的限度“{ $value }”读不懂。
       *[unknown-dwelling] “{ $value }”不是住房种类，桶“{ $id }”就没有地方用。
    }
    .hint = 请从列表中选，把两段文字合成一条，或写带单位的限度：100 lb、3 ft、10%。
finding-comparison-broken =
    { $problem ->
        [unknown-like] 没有“{ $value }”这种日常物品可与“{ $fact }”比较。
        [other-dimension] “{ $value }”不能说明“{ $fact }”：它代表另一种量。
        [far] “{ $value }”和“{ $fact }”的数值相差两倍以上。
       *[unknown-period] “{ $fact }”不能按“{ $value }”计数。
    }
    .hint = 请从列表中选一个，或不写比较。

## Ways to mend a finding, on buttons and in lists. Values are ids and texts of the program

fix-replace = 用“{ $with }”代替“{ $value }”
fix-choose = 选择“{ $with }”
fix-remove = 去掉“{ $value }”
fix-replace-fact = 改为比较“{ $with }”，不比较“{ $fact }”
fix-replace-value = 用“{ $with }”代替“{ $value }”
fix-remove-value = 从条件中去掉“{ $value }”
fix-replace-item-fact = 用属性“{ $with }”代替“{ $fact }”
fix-remove-rule = 删除规则“{ $rule }”
fix-go-before = 让“{ $rule }”优先于 { $over }
fix-not-before = 让“{ $rule }”不再优先于“{ $over }”
fix-silence-undecided = 先不定没提到表示什么
fix-silence-ask = 开放清单：没提到的答“清单上没有，请询问”
fix-silence-closed = 封闭清单：没提到的一律不收
fix-answer-yes = 起草规则：“{ $item }”送到“{ $stream }”
fix-answer-no = 起草规则：不收“{ $item }”，送到“{ $stream }”
fix-route = 把危险品“{ $class }”送往渠道“{ $channel }”
fix-send-to = 把规则“{ $rule }”所说的东西送往渠道“{ $channel }”
fix-collect = 在地区“{ $zone }”也收“{ $stream }”
fix-except-zone = 让规则“{ $rule }”不适用于地区“{ $zone }”
fix-own-ids = 给新编号：{ $with }
fix-remove-twins = 删除完全相同的副本
fix-swap-dates = 对调第一天和最后一天
fix-drop-from = 去掉第一天
fix-drop-until = 去掉最后一天
fix-drop-season = 去掉时段
fix-swap-position = 对调纬度和经度
fix-add-language = 也用“{ $language }”发布
fix-remove-empty = 删除空的组
fix-remove-unused = 删除“{ $id }”
fix-drop-counting = 不让任何值算作“{ $fact }”的“{ $value }”
fix-clean-text = 从文字中去掉
mend-title = 改正办法
mend-done = 已完成：{ $fix }。可以撤销。
mend-gone = 没有改动：方案已和当时不同。
