### Ready-made sentences of answers: cautions, steps, reasons; and the names of kinds of things.
### Steps are told to one person, reasons are about "it".

## Cautions, one for each hazard class. They say what is common everywhere and defer to local

## rules; local procedure comes from the program, approved by a named person.

caution-local = 以当地规定和现场工作人员的话为准。
caution-battery-lithium = 锂电池会起火。绝不要把它或装有它的东西放进任何垃圾桶或回收桶。散装电池用胶带包住金属头，或每个单独装袋。不要压，不要拆。{ caution-local }
caution-battery-household = 电池会漏液或起火。绝不要放进任何垃圾桶或回收桶。用胶带包住两头，彼此分开放。{ caution-local }
caution-battery-lead-acid = 电瓶里有烧人的酸和有毒的铅。要竖直放，不要打开。绝不要放进任何垃圾桶或回收桶。{ caution-local }
caution-sharps = 针头会扎伤分拣工人并传染疾病。绝不要散放进任何垃圾桶或回收桶。用完马上放进扎不破、盖得紧的硬容器。绝不要伸手到桶里去拿。{ caution-local }
caution-medicine = 药品要放在孩子和宠物够不到的地方。首先送到药品回收点。除非标签上写明，不要冲进马桶。{ caution-local }
caution-pressurised = 看起来空了，受压、被刺或受热也可能爆炸。绝不要放进任何垃圾桶或回收桶。{ caution-local }
caution-flammable = 很容易着火。盖紧，远离热源和火花。绝不要放进任何垃圾桶或回收桶，也不要倒掉。{ caution-local }
caution-toxic = 有毒。留在原来的容器里，保留标签。绝不要放进任何垃圾桶或回收桶，不要倒掉，不要和别的东西混合。{ caution-local }
caution-corrosive = 会烧伤皮肤和眼睛。在原来的容器里竖直放。绝不要放进任何垃圾桶或回收桶，不要和别的东西混合。{ caution-local }
caution-mercury = 含水银，有毒。不要打碎。绝不要放进任何垃圾桶或回收桶。如果碎了，让人离开并开窗通风。{ caution-local }
caution-oil = 会污染水。放在盖紧的容器里。不要倒掉，绝不要放进任何垃圾桶或回收桶，不要和别的东西混合。{ caution-local }
caution-explosive = 不要碰它，也不要移动它。让所有人远离，马上打电话给这里写的部门。有危险时请打紧急求助电话。{ caution-local }
caution-radioactive = 不要打开它，也不要打碎它。绝不要放进任何垃圾桶或回收桶。打电话问这里写的部门该怎么办。{ caution-local }

## Standard preparation steps

prep-empty = 倒空。
prep-rinse = 快速冲一下，不必洗得很干净。
prep-dry = 晾干。
prep-scrape = 刮掉食物。
prep-flatten = 压平。
prep-cut-down = 剪小，放得下为止。
prep-bundle = 捆成一捆。
prep-loose = 散着放，不要装袋。
prep-cap-on = 盖着瓶盖。
prep-cap-off = 拿掉瓶盖。
prep-lid-off = 拿掉盖子。
prep-lid-inside-can = 把盖子放进罐里，捏紧罐口。
prep-label-stays = 标签可以留着。
prep-sleeve-off = 撕掉外面的塑料套。
prep-pump-off = 拿掉泵头。
prep-window-stays = 塑料窗可以留着。
prep-staples-stay = 订书钉可以留着。
prep-remove-food-liner = 拿出里面的袋子或内衬。
prep-tear-off-clean-half = 撕下干净的部分，只有这部分放这里。
prep-crush = 压扁，省地方。
prep-do-not-crush = 不要压扁。
prep-do-not-flatten = 不要压平。
prep-do-not-nest = 不要一个套一个。
prep-scrunch-foil = 把铝箔揉成拳头大的球。
prep-paper-bag = 装进纸袋，封好口。
prep-clear-bag = 装进透明袋。
prep-tape-terminals = 用胶带包住金属头。
prep-keep-upright = 竖直放。
prep-puncture-proof = 装进扎不破的硬容器。
prep-original-container = 留在原来有标签的容器里。
prep-do-not-mix = 不要和别的东西混合。
prep-do-not-puncture = 不要刺破。
prep-puncture = 完全喷不出东西后，刺一个洞。
prep-wrap-broken = 把碎片包好，免得割伤人。
prep-remove-battery = 电池容易取就取出来，放到别处。
prep-wipe-data = 先删除您的资料。
prep-take-apart = 拆开，每种材料分开放。
prep-no-bags = 什么袋子都不要用。
prep-no-plastic-bags = 不要用塑料袋。
prep-cool-ash = 灰放凉几天，直到里外都凉透。
prep-double-bag = 套两层袋子。
prep-label-contents = 写上里面是什么。
prep-fits-lid-shut = 必须能盖上桶盖。
prep-check-fluid = 确认里面没有液体了。
prep-pair-and-tie = 成双绑在一起。
prep-clean-and-usable = 只收干净、还能用的。

## Standard reasons

reason-sells = 工厂买它，做成新东西。
reason-composts = 它会变成堆肥。
reason-no-buyer = 这里没人买这种材料，所以不能回收。
reason-too-small = 太小，会从分拣机器的缝里掉下去。
reason-too-large = 太大，桶和机器都放不下。
reason-tangles = 它会缠住机器，让机器停下。
reason-wraps-screens = 薄塑料缠住分拣筛，整个厂都要停。
reason-bagged-unseen = 袋子封着看不见里面，只能整袋扔掉。
reason-soiled = 食物和油会弄坏材料。
reason-contents-spoil = 里面剩的东西会弄脏周围的一切。
reason-mixed-materials = 几种材料粘在一起，分不开。
reason-wrong-glass = 这种玻璃和瓶罐玻璃的熔化温度不同。
reason-breaks-unsafe = 它会碎，割伤分拣工人。
reason-not-packaging = 这里只收包装。
reason-hazard = 它在桶里、车上和厂里都很危险。
reason-handled-apart = 它要和别的东西分开处理。
reason-reusable = 别人还能用。
reason-store-collects = 商店回收它。
reason-contaminates-compost = 它会弄坏堆肥。
reason-not-named = 清单上没有它。
reason-not-listed = 还没有定。问一问比猜好。
reason-too-heavy = 太重，抬不动。
reason-number-is-not-shape = 只看数字不够，形状也要紧。
reason-black-unseen = 分拣机器看不见黑色塑料。
reason-burns = 它会引起火灾。
reason-special-trip = 它有专门的收集或专门的地点。
reason-law = 法律这样规定。
reason-not-collected = 这里不收它。

## Tiers of rules, in the order in which they are looked at

tier-safety = 安全
tier-plant = 分拣厂
tier-program = 本地规定
tier-material = 材料
tier-default = 其他

## Categories to browse by

category-plastic-packaging = 塑料包装
category-paper-cardboard = 纸和纸板
category-glass = 玻璃
category-metal = 金属
category-food-drink-cartons = 食品饮料纸盒
category-food-garden = 厨余和园林
category-film-bags = 袋子和薄膜
category-batteries-electronics = 电池和电子产品
category-hazardous = 油漆、化学品、气体
category-medical = 药品和针头
category-textiles = 衣服和鞋
category-household-goods = 家庭用品
category-building = 建筑装修
category-bathroom = 浴室用品

## Parts of an item that may go elsewhere

part-lid = 盖子
part-cap = 瓶盖
part-pump = 泵头
part-sleeve = 外套膜
part-liner = 内衬
part-straw = 吸管
part-filter = 滤芯
part-battery = 电池
part-cord = 电线
part-shade = 灯罩
part-contents = 里面的东西
part-bag = 袋子
part-handle = 把手
part-ring = 环

## Rules about a container: shown where an answer names it. $limit is a measure.

container-rule-lid-closed = 盖子必须关上。
container-rule-weight = 装满不超过 { $limit }。
container-rule-distance = 四周各留 { $limit } 空位。
container-rule-side-waste = 旁边和上面不要放东西。
container-rule-share-of-load = 不该放的东西最多占 { $limit }。
container-rule-liners = 里面可以套袋子。
container-rule-sacks = 只能用发放的袋子。
container-rule-registration = 请先登记。
container-rule-refusals = 里面放错东西就不收，会留下纸条。

## Where the law does not let a thing go. $place is a container or stream.

answer-banned = 法律禁止放进：{ $place }。
