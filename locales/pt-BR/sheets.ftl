### Words printed on lid labels and mailers. They are read from a step away and there is little room:
### keep each as short as its English.
sheet-heading-yes = Sim
sheet-heading-no = Não
sheet-heading-elsewhere = Leve a outro lugar
sheet-heading-caution = Nunca em contêiner ou lixeira
sheet-scan = Não está aqui? Escaneie e pergunte ao guia.
sheet-contact = Dúvidas? { $name }, { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-when-resin = número { $values }
sheet-line-where = { $item }: { $place }
sheet-hazard-battery-lithium = Tudo que se recarrega
sheet-hazard-battery-household = Pilhas
sheet-hazard-battery-lead-acid = Baterias de carro
sheet-hazard-sharps = Agulhas e lancetas
sheet-hazard-medicine = Remédios
sheet-hazard-pressurised = Gás e sprays cheios
sheet-hazard-flammable = Combustível e solventes
sheet-hazard-toxic = Venenos
sheet-hazard-corrosive = Ácidos e soda cáustica
sheet-hazard-mercury = Mercúrio e lâmpadas fluorescentes
sheet-hazard-oil = Óleo de motor
sheet-hazard-explosive = Fogos e munição
sheet-hazard-radioactive = Tudo que é radioativo
sheet-hazards-between = {", "}
