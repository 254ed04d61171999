### Words printed on lid labels and mailers. They are read from a step away and there is little room:
### keep each as short as its English.

# Over what goes in, what stays out, what goes to another place, and what is dangerous.
sheet-heading-yes = Yes
sheet-heading-no = No
sheet-heading-elsewhere = Take elsewhere
sheet-heading-caution = Never in any cart or bin
# Beside the QR code.
sheet-scan = Not listed here? Scan to ask the guide.
# Whom to ask. $name is an office, $phone a number.
sheet-contact = Questions? { $name }, { $phone }
# A thing that is only meant under a condition: "Pizza box (clean)".
sheet-line-when = { $item } ({ $condition })
# The condition where a bare value would not be understood: "number 1 or 2".
sheet-when-resin = number { $values }
# A thing and the place that takes it: "Paint: hazardous waste facility".
sheet-line-where = { $item }: { $place }

# Hazard classes by the things people have at home. Several stand in one line before the place that
# takes them.
sheet-hazard-battery-lithium = Anything rechargeable
sheet-hazard-battery-household = Batteries
sheet-hazard-battery-lead-acid = Car batteries
sheet-hazard-sharps = Needles and lancets
sheet-hazard-medicine = Medicine
sheet-hazard-pressurised = Gas and full spray cans
sheet-hazard-flammable = Fuel and solvents
sheet-hazard-toxic = Pesticides
sheet-hazard-corrosive = Acids and drain cleaner
sheet-hazard-mercury = Mercury and fluorescent lamps
sheet-hazard-oil = Motor oil
sheet-hazard-explosive = Fireworks and ammunition
sheet-hazard-radioactive = Anything radioactive

# Between two of them. The quotation marks keep the space.
sheet-hazards-between = {", "}

# For those who cannot see: never printed. A picture of a thing; the sign on a hazard; the QR code;
# and what following the printed address does.
sheet-picture-alt = Picture: { $item }
sheet-caution-alt = Warning sign
sheet-code-alt = QR code that opens the guide
sheet-link-alt = Open the guide in a browser

# A thing alone on a round label, where no heading says that it stays out: "Not in here: plastic bags".
sheet-not-here = Not in here: { $thing }
# Over a list of places, each with its address.
sheet-heading-places = Where to take it
# Between a place's name, its address and its telephone number. The quotation marks keep the space.
sheet-place-between = {", "}
