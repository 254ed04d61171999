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
# A thing and the place that takes it: "Paint: hazardous waste facility".
sheet-line-where = { $item }: { $place }
