### Words printed on lid labels and mailers. They are read from a step away and there is little room:
### keep each as short as its English.
sheet-heading-yes = 可以
sheet-heading-no = 不可以
sheet-heading-elsewhere = 送到别处
sheet-heading-caution = 绝不要放进任何桶
sheet-scan = 这里没有？扫码查指南。
sheet-contact = 有问题？{ $name }，{ $phone }
sheet-line-when = { $item }（{ $condition }）
sheet-when-resin = { $values } 号
sheet-line-where = { $item }：{ $place }
sheet-hazard-battery-lithium = 任何能充电的东西
sheet-hazard-battery-household = 电池
sheet-hazard-battery-lead-acid = 汽车电瓶
sheet-hazard-sharps = 针头和采血针
sheet-hazard-medicine = 药品
sheet-hazard-pressurised = 气罐和没用完的喷雾罐
sheet-hazard-flammable = 燃油和溶剂
sheet-hazard-toxic = 农药
sheet-hazard-corrosive = 酸和管道疏通剂
sheet-hazard-mercury = 水银和荧光灯
sheet-hazard-oil = 机油
sheet-hazard-explosive = 烟花和弹药
sheet-hazard-radioactive = 放射性物品
sheet-hazards-between = 、
