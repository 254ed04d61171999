### Ang nakita sa paghahambing ng mga programa: mga pagbabago, ang paunawa, ang ulat ng rehiyon, at mga
### nakalimbag na linyang hindi na totoo. Walang kinikilingan: walang sinasabing mabuti o masama.

## Mga sagot at pagbabago

compare-answer = { $verdict }, { $place }
compare-becomes = { $item }: mula “{ $before }” naging “{ $after }”.
compare-stays = { $item }: “{ $answer }” pa rin.
compare-new = Bago sa gabay ang { $item }: “{ $answer }”.
compare-gone = Wala na sa gabay ang { $item }. Dati: “{ $answer }”.
compare-steps-added = Bago: { $steps }
compare-steps-removed = Hindi na kailangan: { $steps }
compare-steps-order = Ganito na ang pagkakasunod: { $steps }
compare-also = Tinatanggap din sa: { $places }.
compare-also-none = Wala nang ibang lugar na tumatanggap.
compare-ban-gone = Hindi na ito bawal sa batas sa alinmang lalagyan.
compare-caution = Ang babala ngayon: { $hazard }.
compare-caution-gone = Wala na ang babala: { $hazard }.
compare-reason = Ang ibinigay na dahilan: { $reason }
compare-reason-gone = Wala nang ibinibigay na dahilan.
compare-temporary = Pansamantalang kautusan ang nagpapasya rito.
compare-temporary-over = Wala nang pansamantalang kautusang nagpapasya rito.

## Kailan ganoon

compare-when = Kapag: { $conditions }.
compare-when-many = Sobrang dami ng kondisyon para ilista.
compare-or = { $before }; o { $next }
compare-any-but = kahit ano maliban sa { $values }
compare-day-on = sa { $day }
compare-day-from = mula { $day }
compare-day-until = hanggang { $day }
compare-day-between = mula { $first } hanggang { $last }

## Ang paunawa

notice-title = Mga pagbabago sa gabay sa pagbubukod ng { $place }
notice-editions = Inihahambing ng paunawang ito ang { $before } at ang { $after }.
notice-edition = edisyong { $label }
notice-edition-from = edisyong { $label } (mula { $day })
notice-on = Ayon sa lagay sa { $day }.
notice-nothing = Walang sagot na nagbago.
notice-now-accepted = Tinatanggap na ngayon
notice-no-longer-accepted = Hindi na tinatanggap
notice-another-place = Sa ibang lugar na
notice-prepared-differently = Iba na ang paghahanda
notice-asked-differently = Iba na ang itinatanong
notice-caution-changed = Ibang babala
notice-explained-differently = Iba na ang paliwanag
notice-new-in-guide = Bago sa gabay
notice-gone-from-guide = Wala na sa gabay
notice-reworded = Sinabi sa ibang salita
# $words is a text of the program.
notice-words-now = “{ $words }”
notice-words-before = Dati: “{ $words }”
notice-words-of = Ito ang dahilang ibinigay sa: { $items }.
notice-more = { $count } pa
notice-asked-now = Nakasalalay na ngayon sa: { $facts }.
notice-asked-no-longer = Hindi na nakasalalay sa: { $facts }.
notice-contact = May tanong? { $name }: { $ways }.
notice-unreviewed = Wala pang taong nagsuri ng saling ito.

## Mga nakalimbag na linya

untrue-title = Mga nakalimbag na linyang hindi na totoo
untrue-sheet =
    { $copies ->
        [0] pirasong “{ $id }”, edisyong { $edition }
        [one] pirasong “{ $id }”, edisyong { $edition }, { $copies } kopya
       *[other] pirasong “{ $id }”, edisyong { $edition }, { $copies } na kopya
    }
untrue-always = “{ $line }” ({ $sheet }): hindi totoo mula nang magsimula ang edisyong ito.
untrue-from = “{ $line }” ({ $sheet }): hindi totoo mula { $day }.
untrue-until = “{ $line }” ({ $sheet }): hindi totoo hanggang { $day }.
untrue-between = “{ $line }” ({ $sheet }): hindi totoo mula { $first } hanggang { $last }.
untrue-now = Totoo ngayon: “{ $answer }”.
untrue-gone = Wala na sa gabay ang bagay na ito.

## Ulat ng rehiyon

regional-title = Pinaghambing: { $places }
regional-contradictory = Magkasalungat na payo
regional-differing =
    { $count ->
        [one] Sino ang naiiba ({ $count } bagay)
       *[other] Sino ang naiiba ({ $count } na bagay)
    }
regional-agreed = Totoo sa lahat
regional-says = { $places }: { $answer }
regional-with-steps = { $answer }. { $steps }
regional-unknown = wala sa gabay
regional-item-when = { $item }. { $when }
regional-more-cases =
    { $count ->
        [one] May { $count } pang pagkakaiba sa ibang kaso.
       *[other] May { $count } pang pagkakaiba sa ibang kaso.
    }
