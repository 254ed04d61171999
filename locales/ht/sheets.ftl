### Words printed on lid labels and mailers. They are read from a step away and there is little room:
### keep each as short as its English.
sheet-heading-yes = Wi
sheet-heading-no = Non
sheet-heading-elsewhere = Pote yon lòt kote
sheet-heading-caution = Pa janm nan bak ni poubèl
sheet-scan = Li pa isit? Eskane pou mande gid la.
sheet-contact = Kesyon? { $name }, { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-when-resin = nimewo { $values }
sheet-line-where = { $item }: { $place }
sheet-hazard-battery-lithium = Tout sa ki rechajab
sheet-hazard-battery-household = Pil
sheet-hazard-battery-lead-acid = Batri machin
sheet-hazard-sharps = Zegui ak lansèt
sheet-hazard-medicine = Medikaman
sheet-hazard-pressurised = Gaz ak bonm espre plen
sheet-hazard-flammable = Gazolin ak tinè
sheet-hazard-toxic = Pwazon
sheet-hazard-corrosive = Asid ak debouche tiyo
sheet-hazard-mercury = Mèki ak tib fliyoresan
sheet-hazard-oil = Luil motè
sheet-hazard-explosive = Fedatifis ak minisyon
sheet-hazard-radioactive = Tout sa ki radyoaktif
sheet-hazards-between = {", "}
