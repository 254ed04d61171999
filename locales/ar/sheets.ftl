### كلمات تُطبع على ملصقات الأغطية والبطاقات. المساحة قليلة، فلتكن كل عبارة بقِصر الإنجليزية.

sheet-heading-yes = نعم
sheet-heading-no = لا
sheet-heading-elsewhere = خذه إلى مكان آخر
sheet-heading-caution = لا تضعه في أي حاوية أبدًا
sheet-scan = ليس مذكورًا هنا؟ امسح الرمز واسأل الدليل.
sheet-contact = لديك سؤال؟ { $name }، { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-when-resin = الرقم { $values }
sheet-line-where = { $item }: { $place }

sheet-hazard-battery-lithium = كل ما يُشحن
sheet-hazard-battery-household = البطاريات
sheet-hazard-battery-lead-acid = بطاريات السيارات
sheet-hazard-sharps = الإبر والمشارط
sheet-hazard-medicine = الأدوية
sheet-hazard-pressurised = الغاز وعلب الرش الممتلئة
sheet-hazard-flammable = الوقود والمذيبات
sheet-hazard-toxic = المبيدات
sheet-hazard-corrosive = الأحماض ومسلّكات المجاري
sheet-hazard-mercury = الزئبق والمصابيح الفلورية
sheet-hazard-oil = زيت المحرك
sheet-hazard-explosive = الألعاب النارية والذخيرة
sheet-hazard-radioactive = كل ما هو مشع
sheet-hazards-between = {"، "}

# For those who cannot see: never printed. A picture of a thing; the sign on a hazard; the QR code;
# and what following the printed address does.
sheet-picture-alt = صورة: { $item }
sheet-caution-alt = علامة تحذير
sheet-code-alt = رمز QR يفتح الدليل
sheet-link-alt = افتح الدليل في المتصفح

sheet-not-here = ليس هنا: { $thing }
sheet-heading-places = إلى أين تأخذه
sheet-place-between = {"، "}
