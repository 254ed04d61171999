### Palabras impresas en etiquetas de tapa y postales. Hay poco espacio: que cada una sea tan corta
### como la inglesa.

sheet-heading-yes = Sí
sheet-heading-no = No
sheet-heading-elsewhere = Llévelo a otro lugar
sheet-heading-caution = Nunca en ningún contenedor ni cubo
sheet-scan = ¿No está aquí? Escanee y pregunte a la guía.
sheet-contact = ¿Preguntas? { $name }, { $phone }
sheet-line-when = { $item } ({ $condition })
sheet-when-resin = número { $values }
sheet-line-where = { $item }: { $place }

sheet-hazard-battery-lithium = Todo lo recargable
sheet-hazard-battery-household = Pilas
sheet-hazard-battery-lead-acid = Baterías de auto
sheet-hazard-sharps = Agujas y lancetas
sheet-hazard-medicine = Medicinas
sheet-hazard-pressurised = Gas y aerosoles llenos
sheet-hazard-flammable = Combustible y disolventes
sheet-hazard-toxic = Plaguicidas
sheet-hazard-corrosive = Ácidos y destapacaños
sheet-hazard-mercury = Mercurio y tubos fluorescentes
sheet-hazard-oil = Aceite de motor
sheet-hazard-explosive = Pirotecnia y munición
sheet-hazard-radioactive = Todo lo radiactivo
sheet-hazards-between = {", "}

# For those who cannot see: never printed. A picture of a thing; the sign on a hazard; the QR code;
# and what following the printed address does.
sheet-picture-alt = Dibujo: { $item }
sheet-caution-alt = Señal de advertencia
sheet-code-alt = Código QR que abre la guía
sheet-link-alt = Abrir la guía en el navegador

sheet-not-here = Aquí no: { $thing }
sheet-heading-places = Dónde llevarlo
sheet-place-between = {", "}
