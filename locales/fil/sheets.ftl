### Mga salita sa etiketa ng takip at sa postcard. Binabasa nang isang hakbang ang layo; maikli dapat.

sheet-heading-yes = Puwede
sheet-heading-no = Hindi puwede
sheet-heading-elsewhere = Dalhin sa iba
sheet-heading-caution = Bawal sa anumang cart o bin
sheet-scan = Wala rito? I-scan at itanong.
sheet-contact = May tanong? { $name }, { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-when-resin = numero { $values }
sheet-line-where = { $item }: { $place }

sheet-hazard-battery-lithium = Lahat ng rechargeable
sheet-hazard-battery-household = Mga baterya
sheet-hazard-battery-lead-acid = Baterya ng kotse
sheet-hazard-sharps = Karayom at lanseta
sheet-hazard-medicine = Mga gamot
sheet-hazard-pressurised = Tangke ng gas, spray na may laman
sheet-hazard-flammable = Gasolina at thinner
sheet-hazard-toxic = Pamatay ng insekto at damo
sheet-hazard-corrosive = Asido at panlinis ng tubo
sheet-hazard-mercury = Asoge at fluorescent
sheet-hazard-oil = Langis ng makina
sheet-hazard-explosive = Paputok at bala
sheet-hazard-radioactive = Anumang radioactive
sheet-hazards-between = {", "}
sheet-picture-alt = Larawan: { $item }
sheet-caution-alt = Tanda ng babala
sheet-code-alt = QR code na nagbubukas sa gabay
sheet-link-alt = Buksan ang gabay sa browser
sheet-not-here = Bawal dito: { $thing }
sheet-heading-places = Saan dadalhin
sheet-place-between = {", "}
