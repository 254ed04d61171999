### Words printed on lid labels and mailers. They are read from a step away and there is little room:
### keep each as short as its English.
sheet-heading-yes = Oui
sheet-heading-no = Non
sheet-heading-elsewhere = À apporter ailleurs
sheet-heading-caution = Jamais dans un bac ou une poubelle
sheet-scan = Pas ici ? Scannez pour demander au guide.
sheet-contact = Questions ? { $name }, { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-when-resin = numéro { $values }
sheet-line-where = { $item } : { $place }
sheet-hazard-battery-lithium = Tout ce qui se recharge
sheet-hazard-battery-household = Piles
sheet-hazard-battery-lead-acid = Batteries d’auto
sheet-hazard-sharps = Aiguilles et lancettes
sheet-hazard-medicine = Médicaments
sheet-hazard-pressurised = Gaz et aérosols pleins
sheet-hazard-flammable = Carburants et solvants
sheet-hazard-toxic = Pesticides
sheet-hazard-corrosive = Acides et débouche-tuyau
sheet-hazard-mercury = Mercure et tubes fluorescents
sheet-hazard-oil = Huile à moteur
sheet-hazard-explosive = Feux d’artifice et munitions
sheet-hazard-radioactive = Tout objet radioactif
sheet-hazards-between = {", "}
