### What can be known about a thing: names, questions, answers. Values have to make sense alone,
### as a button and in "You could not tell, so we took: Closure: on".

## Ranges of a measure or of dates, as answers to choose from

range-at-least = 至少 { $value }
range-over = 超过 { $value }
range-at-most = 最多 { $value }
range-under = 不到 { $value }
range-between = { $low } 到 { $high }
range-any = 不限

## A fact and its value, an item and its part. Examples: "Resin mark: 5", "Glass jar: the lid"

fact-value = { $fact }：{ $value }
item-part = { $item }：{ $part }

## Who asks, where and when

fact-day = 日期
ask-day = 哪一天？

## Time of year

fact-time-of-year = 时节
ask-time-of-year = 一年中的哪一天？

## Service zone

fact-zone = 地区
ask-zone = 您住在哪里？
    .hint = 各地区的规定不一样。

## Dwelling

fact-dwelling = 住房
ask-dwelling = 您住什么样的房子？
value-dwelling-house = 独立房屋
value-dwelling-small-building = 小型公寓楼
value-dwelling-large-building = 大型公寓楼

## Where it comes from

fact-origin = 来源
ask-origin = 它从哪里来？
value-origin-household = 家庭
value-origin-business = 商家

## Proof of residency

fact-proof = 地址证明
ask-proof = 您能证明自己住在这里吗？
    .hint = 有您地址的账单或驾照就可以。
value-proof-yes = 我有证明
value-proof-no = 我没有证明

## Paid extra service

fact-add-on = 付费加收服务
ask-add-on = 您付费使用加收服务吗？
    .hint = 如果有，账单上会写。
value-add-on-yes = 我付费
value-add-on-no = 我没付

## Quantity

fact-quantity = 数量
ask-quantity = 您有多少？

## What it is

fact-item = 物品
ask-item = 这是什么？

## Category

fact-category = 种类
ask-category = 这是哪一类东西？

## Part of a thing

fact-part = 部分
ask-part = 是哪一部分？
value-part-whole = 整个
value-part-lid = 盖子
value-part-cap = 瓶盖
value-part-pump = 泵头
value-part-sleeve = 外套膜
value-part-liner = 内衬
value-part-straw = 吸管
value-part-filter = 滤芯
value-part-battery = 电池
value-part-cord = 电线
value-part-shade = 灯罩
value-part-contents = 里面的东西
value-part-bag = 袋子
value-part-handle = 把手
value-part-ring = 环

## Hazard class

fact-hazard = 危险
ask-hazard = 它有什么危险？
    .hint = 看标签上的警告文字或图标。不确定就选“看不出来”。
value-hazard-none = 没有危险
value-hazard-battery-lithium = 锂电池（可充电）
value-hazard-battery-household = 普通电池
value-hazard-battery-lead-acid = 汽车电瓶（铅酸）
value-hazard-sharps = 针头或采血针
value-hazard-medicine = 药品
value-hazard-pressurised = 有压力的罐或气瓶
value-hazard-flammable = 易燃液体或气体
value-hazard-toxic = 有毒
value-hazard-corrosive = 腐蚀性（烧伤皮肤）
value-hazard-mercury = 含水银的东西
value-hazard-oil = 机油
value-hazard-explosive = 爆炸物
value-hazard-radioactive = 放射性物品

## Material

fact-material = 材料
ask-material = 它是什么做的？
    .hint = 选最主要的材料。
value-material-plastic = 塑料
value-material-bioplastic = 植物塑料
value-material-cardboard = 瓦楞纸板
value-material-paperboard = 薄纸板
value-material-paper = 纸
value-material-carton = 饮料纸盒材料
value-material-steel = 钢或铁皮
value-material-aluminium = 铝
value-material-metal = 其他金属
value-material-glass = 玻璃
value-material-ceramic = 陶瓷
value-material-wood = 木头
value-material-cork = 软木
value-material-textile = 布料
value-material-leather = 皮革
value-material-rubber = 橡胶
value-material-food = 食物
value-material-plant = 树叶或树枝
value-material-wax = 蜡
value-material-stone = 石头或混凝土
value-material-electronics = 电子产品
value-material-chemical = 化学品
value-material-mixed = 多种材料

## Form

fact-form = 形状
ask-form = 它是什么形状？
value-form-bottle = 瓶子
value-form-jug = 带把手的壶
value-form-jar = 广口罐
value-form-tub = 圆盒
value-form-cup = 杯子
value-form-lid = 盖子
value-form-clamshell = 翻盖盒
value-form-tray = 托盘
value-form-bag = 袋子
value-form-film = 薄膜
value-form-pouch = 软包袋
value-form-tube = 软管
value-form-can = 罐子
value-form-spray-can = 喷雾罐
value-form-cylinder = 气瓶
value-form-box = 盒子或箱子
value-form-carton = 饮料纸盒
value-form-canister = 筒罐
value-form-sheet = 单张
value-form-newspaper = 报纸或杂志
value-form-book = 书
value-form-envelope = 信封
value-form-roll = 卷
value-form-foil = 铝箔
value-form-pan = 锅
value-form-foam = 泡沫
value-form-pod = 咖啡胶囊
value-form-cutlery = 叉、刀或勺
value-form-straw = 吸管
value-form-pot = 花盆
value-form-bucket = 桶
value-form-toy = 玩具
value-form-rope = 绳、水管或电线
value-form-clothing = 衣服
value-form-shoe = 鞋
value-form-furniture = 家具
value-form-mattress = 床垫
value-form-appliance = 大家电
value-form-device = 电子设备
value-form-lamp = 灯泡或灯管
value-form-battery = 电池
value-form-needle = 针头
value-form-pill = 药片或药品
value-form-tool = 工具
value-form-window = 窗户或镜子
value-form-dishes = 碗碟
value-form-tyre = 轮胎
value-form-timber = 木料
value-form-rubble = 碎砖石
value-form-food = 食物
value-form-plant = 园林垃圾
value-form-liquid = 液体
value-form-ash = 灰
value-form-sanitary = 尿布或卫生用品
value-form-other = 其他形状

## Packaging or product

fact-object = 用途
ask-object = 它是用来装东西的包装吗？
value-object-packaging = 是包装
value-object-product = 本身是用品

## Battery inside

fact-battery = 电池
ask-battery = 里面有电池吗？
    .hint = 会亮、会动、会响或能充电的，就有电池。
value-battery-yes = 有电池
value-battery-no = 没有电池

## Resin mark

fact-resin = 三角里的数字
ask-resin = 小三角里是几号？
    .hint = 看底部。数字说的是塑料种类，不代表一定能回收。
value-resin-1 = 1
value-resin-2 = 2
value-resin-3 = 3
value-resin-4 = 4
value-resin-5 = 5
value-resin-6 = 6
value-resin-7 = 7
value-resin-none = 没有数字
value-resin-unreadable = 看不清

## Deposit mark

fact-deposit-mark = 押金标志
ask-deposit-mark = 上面有押金标志吗？
    .hint = 看条形码旁边有没有标志或金额。
value-deposit-mark-yes = 有押金标志
value-deposit-mark-no = 没有押金标志

## Color

fact-colour = 颜色
ask-colour = 它是什么颜色？
value-colour-clear = 透明
value-colour-frosted = 半透明
value-colour-white = 白色
value-colour-green = 绿色
value-colour-brown = 棕色
value-colour-blue = 蓝色
value-colour-black = 黑色
value-colour-other = 其他颜色

## Coating

fact-coating = 涂层
ask-coating = 表面有涂层吗？
    .hint = 撕开一角：有薄膜就是塑料。用指甲刮：掉屑就是蜡。
value-coating-none = 没有涂层
value-coating-plastic = 塑料
value-coating-wax = 蜡
value-coating-foil = 铝箔
value-coating-glitter = 亮粉
value-coating-wet-strength = 湿了也结实的纸

## Layers

fact-layers = 层数
ask-layers = 是几层粘在一起的吗？
value-layers-one = 一层
value-layers-many = 多层

## Longest side

fact-longest-side = 最长边
ask-longest-side = 它有多长？
    .hint = 量最长的一边。

## Middle side

fact-middle-side = 第二长边
ask-middle-side = 它有多宽？
    .hint = 量第二长的一边。

## Shortest side

fact-shortest-side = 最短边
ask-shortest-side = 它有多厚？
    .hint = 量最短的一边。

## Length of shredded strips

fact-strip-length = 纸条长度
ask-strip-length = 纸条有多长？

## Capacity

fact-capacity = 容量
ask-capacity = 它能装多少？
    .hint = 看标签上写的量。

## Weight

fact-mass = 重量
ask-mass = 它有多重？

## Fits the container

fact-fits-container = 放得进桶
ask-fits-container = 放进桶里盖子能关上吗？
value-fits-container-yes = 盖子能关上
value-fits-container-no = 放不下

## Contents

fact-contents = 剩余
ask-contents = 里面还有东西吗？
    .hint = 不滴也不掉东西，就是空的。
value-contents-empty = 空的
value-contents-traces = 沾着一点
value-contents-dried = 已经干了
value-contents-part-full = 还有一部分
value-contents-full = 满的

## Former contents

fact-former-contents = 原来装的东西
ask-former-contents = 原来装什么？
value-former-contents-none = 什么都没装
value-former-contents-food = 食物
value-former-contents-drink = 饮料
value-former-contents-personal-care = 肥皂、洗发水或乳霜
value-former-contents-cleaner = 清洁剂
value-former-contents-oil = 机油
value-former-contents-paint = 油漆
value-former-contents-pesticide = 杀虫剂或除草剂
value-former-contents-solvent = 稀释剂或燃料
value-former-contents-medicine = 药品

## Soiling

fact-soiling = 干净程度
ask-soiling = 它干净吗？
value-soiling-clean = 干净
value-soiling-grease = 有油
value-soiling-food = 沾着食物

## Wet

fact-wet = 湿不湿
ask-wet = 它是湿的吗？
value-wet-yes = 湿
value-wet-no = 干

## Bagged

fact-bagged = 装袋
ask-bagged = 装在袋子里吗？
value-bagged-loose = 散放，没装袋
value-bagged-plastic-bag = 装在塑料袋里
value-bagged-clear-bag = 装在透明袋里
value-bagged-paper-bag = 装在纸袋里

## Flattened

fact-flattened = 压平
ask-flattened = 压平了吗？
value-flattened-yes = 压平了
value-flattened-no = 没压平

## Bundled

fact-bundled = 捆扎
ask-bundled = 捆起来了吗？
value-bundled-yes = 捆好了
value-bundled-no = 没捆

## Shredded

fact-shredded = 切碎
ask-shredded = 是切碎的吗？
value-shredded-yes = 切碎了
value-shredded-no = 没切碎

## Broken

fact-broken = 损坏
ask-broken = 坏了或用旧了吗？
value-broken-yes = 坏了
value-broken-no = 完好

## Compostable

fact-compostable = 可堆肥
ask-compostable = 上面写着可以堆肥吗？
    .hint = 找英文“certified compostable”（可堆肥认证）和认证标志。
value-compostable-no = 没写
value-compostable-claimed = 写了，但没有标志
value-compostable-certified = 有认证标志

## Closure

fact-closure = 盖子
ask-closure = 盖子盖着吗？
value-closure-none = 没有盖子
value-closure-on = 盖着
value-closure-off = 拿掉了

## Label

fact-label = 标签
ask-label = 它有什么样的标签？
value-label-none = 没有标签
value-label-paper = 纸标签
value-label-film = 塑料标签
value-label-sleeve = 整圈包着塑料

## Pump

fact-pump = 泵头或喷头
ask-pump = 它有泵头或喷头吗？
value-pump-yes = 有泵头
value-pump-no = 没有泵头

## Metal fitting

fact-fitting = 金属件
ask-fitting = 上面有小金属件吗？
value-fitting-yes = 有金属件
value-fitting-no = 没有金属件

## Window

fact-window = 塑料窗
ask-window = 它有透明塑料窗吗？
value-window-yes = 有窗
value-window-no = 没有窗

## Liner

fact-liner = 内衬
ask-liner = 里面有内衬吗？
value-liner-yes = 有内衬
value-liner-no = 没有内衬

## Cord

fact-cord = 电线
ask-cord = 它有电线吗？
value-cord-yes = 有电线
value-cord-no = 没有电线

## What is said beside a limit. Examples: "2 inches (about a golf ball)", "4 a visit".

measure-like = { $measure }（约{ $thing }）
measure-per = { $period } { $measure }
like-credit-card = 一张银行卡的长度
like-golf-ball = 一个高尔夫球
like-tennis-ball = 一个网球
like-basketball = 一个篮球
like-sheet-of-paper = 一张信纸的长度
like-yogurt-cup = 一小杯酸奶
like-milk-jug = 一大桶牛奶
like-bucket = 一个大水桶
like-brick = 一块砖
per-visit = 每次
per-day = 每天
per-week = 每周
per-month = 每月
per-year = 每年
