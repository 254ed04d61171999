### What residents read on their phones. Plain words, short sentences, no jargon.

## Around every screen

page-title = { $program }：什么放哪里
skip = 跳到主要内容
back = 返回
language-label = 语言
zone-label = 您的地区
zone-none = 选择您的地区
unreviewed = 这份译文还没有人检查过。如有不对，请看英文。
decided-edition = 指南：{ $edition }
privacy = 您查的内容只留在这部手机上，不会发送，也不会统计。

## Finding an item

search-label = 您想扔什么？
search-placeholder = 例如：披萨盒
search-count =
    { $count ->
        [0] 没有找到
       *[other] 找到 { $count } 项
    }
search-nothing = 没找到这个名称。请试试更短的词。清单上没有的东西不一定“不收”，请问我们。
search-long = 内容太长，只查找了前 { $count } 个字。
home-recent = 最近查过
home-common = 常查
home-categories = 按种类查

## Questions

cannot-tell = 看不出来
questions-left =
    { $count ->
       *[other] 最多还有 { $count } 个问题
    }
ruler-title = 用这个屏幕量
ruler-card = 把一张银行卡竖着贴在屏幕上。移动滑块，直到图和卡一样宽。
ruler-use = 现在把东西放在尺子上，一端对准 0。
ruler-cards = { $measure }：银行卡首尾相接 { $count } 张

## Answers

verdict-yes = 可以
verdict-no = 不可以
verdict-elsewhere = 不放这里，另有去处
verdict-unlisted = 清单上没有：请询问
verdict-undecided = 还没有定：请询问
verdict-closed = 不可以：清单上没有
caution-title = 小心！
prepare-title = 怎么准备
why-title = 为什么
also-title = 也可以送到
temporary-order = 现在是临时规定，可能很快会变。
assumed-title = 您看不出来，所以我们取了稳妥的答案：
assumed-line = { $fact }：{ $value }
ask-contact = 请问{ $name }：
decided-title = 依据哪条规定
decided-rule = 规定：
decided-acknowledged = 这是安全规定的例外，由指定的人批准。

## Places to take things to

site-more =
    { $count ->
       *[other] 还有 { $count } 个地点
    }
site-locate = 找最近的地点
site-no-position = 手机没有给出位置。
near-label = 城镇、地区或邮政编码
near-find = 在那里找
near-found = 按离“{ $place }”的远近排列。
near-unknown = 指南里没有“{ $place }”这个地方。请试试城镇、您的地区或站点名称。
site-also-takes = 还收：{ $items }
site-all-items = 全部收的东西
site-booking = 请先预约。
site-proof = 请带住址证明。
site-permit = 需要许可证。
site-voucher = 需要凭券。
container-rules-title = 关于{ $container }
hours-open = 现在开门
hours-open-until = 开门到 { $time }
hours-closed = 现在关门
hours-closed-until = 现在关门，{ $time } 开门
hours-appointment = 只接受预约
hours-unknown = 开放时间不明：请先打电话
hours-day-time = { $day } { $time }

## Without a network

offline-fetching = 正在保存指南，以便没有网络也能用…
offline-ready = 已保存。没有网络也能用。
offline-now = 您没有联网。正在用手机里的指南。
offline-incomplete = 您没有联网，指南也没存完，有些内容可能缺少。
offline-failed = 指南没能保存，只能联网用。请稍后再试。
offline-impossible = 这个浏览器不能保存指南，只能联网用。
update-ready = 有新版指南。
update-now = 用新版
offline-lost = 手机清除了已保存的指南。正在重新保存…
offline-forgetful = 这个浏览器不让指南保存任何内容。只能联网用，也记不住您的语言和地区。
update-failed = 新版指南没有完整收到。现在的仍可用，手机会再试。

## When something is not there

unknown-item = 指南里没有“{ $id }”这个物品。请用名称搜索。
unknown-category = 指南里没有“{ $id }”这个类别。请在首页选择。
unknown-address = 没有“{ $address }”这一页。请回首页。
unknown-language = 指南还没有“{ $language }”版本。请选别的语言。
language-broken = “{ $language }”的文字没有完整收到。请检查网络，再选一次语言。
unknown-zone = 指南里没有“{ $id }”这个地区。请在页面底部选择您的地区。
clock-wrong = 手机显示今天是 { $date }，这不可能对。现在开不开门无法知道，随季节变化的规则也可能不对。请校正日期。
