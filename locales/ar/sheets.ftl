### كلمات تُطبع على ملصقات الأغطية والبطاقات. المساحة قليلة، فلتكن كل عبارة بقِصر الإنجليزية.

sheet-heading-yes = نعم
sheet-heading-no = لا
sheet-heading-elsewhere = خذه إلى مكان آخر
sheet-heading-caution = لا تضعه في أي حاوية أبدًا
sheet-scan = ليس مذكورًا هنا؟ امسح الرمز واسأل الدليل.
sheet-contact = لديك سؤال؟ { $name }، { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-line-where = { $item }: { $place }
