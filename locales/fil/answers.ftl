### Mga handang pangungusap ng sagot: babala, hakbang, dahilan; at mga pangalan ng uri ng bagay.
### Sa isang tao ang mga hakbang; tungkol sa bagay ang mga dahilan.

## Mga babala, isa sa bawat panganib. Sinasabi nila ang totoo kahit saan; ang lokal na patakaran ang
## nasusunod.

caution-local = Lokal na patakaran at mga kawani roon ang masusunod.
caution-battery-lithium = Puwedeng magliyab ang lithium na baterya. Huwag na huwag ilagay ito, o ang gamit na mayroon nito, sa anumang cart o bin. Takpan ng tape ang dulong metal ng mga baterya, o ilagay ang bawat isa sa sariling supot. Huwag durugin o buksan. { caution-local }
caution-battery-household = Puwedeng tumagas o magsimula ng sunog ang baterya. Huwag na huwag ilagay sa anumang cart o bin. Takpan ng tape ang mga dulo at paghiwa-hiwalayin. { caution-local }
caution-battery-lead-acid = May asidong nakasusunog at tinggang nakalalason ang bateryang ito. Panatilihing nakatayo at huwag buksan. Huwag na huwag ilagay sa anumang cart o bin. { caution-local }
caution-sharps = Puwedeng makasugat at makahawa ang karayom at lanseta sa mga nagbubukod. Huwag na huwag ihulog nang basta sa anumang cart o bin. Ilagay agad sa matibay na lalagyang hindi natutusok at mahigpit ang takip. Huwag na huwag itong dukutin sa cart. { caution-local }
caution-medicine = Ilayo ang gamot sa mga bata at alagang hayop. Una sa lahat, isauli ito sa tumatanggap ng gamot. Huwag i-flush maliban kung sinabi sa etiketa. { caution-local }
caution-pressurised = Puwedeng sumabog kapag nadurog, natusok o nainitan, kahit mukhang ubos na. Huwag na huwag ilagay sa anumang cart o bin. { caution-local }
caution-flammable = Madaling magliyab. Panatilihing sarado, malayo sa init at apoy. Huwag na huwag ilagay sa anumang cart o bin at huwag ibuhos kahit saan. { caution-local }
caution-toxic = Nakalalason. Itago sa sariling lalagyan na may etiketa. Huwag na huwag ilagay sa anumang cart o bin, huwag ibuhos, huwag ihalo sa iba. { caution-local }
caution-corrosive = Nakasusunog ng balat at mata. Panatilihing nakatayo sa sariling lalagyan. Huwag na huwag ilagay sa anumang cart o bin at huwag ihalo sa iba. { caution-local }
caution-mercury = May asoge na nakalalason. Huwag basagin. Huwag na huwag ilagay sa anumang cart o bin. Kapag nabasag, palayuin ang mga tao at pahanginan ang kuwarto. { caution-local }
caution-oil = Dinudumihan nito ang tubig. Itago sa saradong lalagyan. Huwag na huwag ibuhos, ilagay sa anumang cart o bin, o ihalo sa iba. { caution-local }
caution-explosive = Huwag hawakan at huwag galawin. Palayuin ang mga tao at tawagan ang tanggapang nakasulat dito. Kapag may panganib, tawagan ang numerong pang-emergency. { caution-local }
caution-radioactive = Huwag buksan at huwag basagin. Huwag na huwag ilagay sa anumang cart o bin. Tawagan ang tanggapang nakasulat dito at itanong ang gagawin. { caution-local }

## Karaniwang paghahanda

prep-empty = Ubusin ang laman.
prep-rinse = Banlawan nang mabilis. Hindi kailangang makintab.
prep-dry = Patuyuin.
prep-scrape = Simutin ang pagkain.
prep-flatten = Pipiin.
prep-cut-down = Putul-putulin para magkasya.
prep-bundle = Talian nang bigkis.
prep-loose = Ilagay nang walang supot.
prep-cap-on = Iwang nakasara ang takip.
prep-cap-off = Alisin ang takip na de-ikot.
prep-lid-off = Alisin ang takip.
prep-lid-inside-can = Ilagay ang takip sa loob ng lata at ipitin pasara.
prep-label-stays = Puwedeng iwan ang etiketa.
prep-sleeve-off = Tanggalin ang plastik na balot.
prep-pump-off = Alisin ang pump.
prep-window-stays = Puwedeng iwan ang plastik na bintana.
prep-staples-stay = Puwedeng iwan ang staple.
prep-remove-food-liner = Alisin ang supot o sapin sa loob.
prep-tear-off-clean-half = Punitin ang malinis na bahagi. Iyon lang ang dito.
prep-crush = Pisain para makatipid ng lugar.
prep-do-not-crush = Huwag pisain.
prep-do-not-flatten = Huwag pipiin.
prep-do-not-nest = Huwag isiksik ang isa sa loob ng isa pa.
prep-scrunch-foil = Lukutin ang foil nang bilog na sinlaki ng kamao.
prep-paper-bag = Ilagay sa paper bag at isara.
prep-clear-bag = Ilagay sa malinaw na bag.
prep-tape-terminals = Takpan ng tape ang mga dulong metal.
prep-keep-upright = Panatilihing nakatayo.
prep-puncture-proof = Ilagay sa matibay na lalagyang hindi natutusok.
prep-original-container = Iwan sa sariling lalagyan na may etiketa.
prep-do-not-mix = Huwag ihalo sa iba.
prep-do-not-puncture = Huwag butasin.
prep-puncture = Butasin kapag wala nang lumalabas.
prep-wrap-broken = Balutin ang basag para walang masugatan.
prep-remove-battery = Alisin ang baterya kung madali. Sa iba ito dinadala.
prep-wipe-data = Burahin muna ang data ninyo.
prep-take-apart = Kalasin: kani-kaniyang lugar ang bawat materyales.
prep-no-bags = Huwag gumamit ng anumang supot.
prep-no-plastic-bags = Huwag gumamit ng plastic bag.
prep-cool-ash = Palamigin ang abo nang ilang araw, hanggang malamig pati loob.
prep-double-bag = Ilagay sa dalawang supot na magkapatong.
prep-label-contents = Isulat kung ano ang nasa loob.
prep-fits-lid-shut = Dapat kasya nang sarado ang takip.
prep-check-fluid = Siguruhing wala nang likido sa loob.
prep-pair-and-tie = Pagtaliin ang magkapares.
prep-clean-and-usable = Kung malinis at magagamit pa lang.

## Karaniwang dahilan

reason-sells = Binibili ito ng mga pabrika at ginagawang bagong gamit.
reason-composts = Nagiging compost ito.
reason-no-buyer = Walang bumibili ng materyales na ito rito, kaya hindi ito nare-recycle.
reason-too-small = Sa liit nito, nalalaglag ito sa mga makina.
reason-too-large = Sobrang laki nito para sa cart o mga makina.
reason-tangles = Pumupulupot ito sa mga makina at napapatigil ang mga ito.
reason-wraps-screens = Pumupulupot ang manipis na plastik sa mga salaan at napapatigil ang planta.
reason-bagged-unseen = Hindi makita ang laman ng saradong supot, kaya itinatapon ito nang hindi binubuksan.
reason-soiled = Nasisira ng pagkain at mantika ang materyales.
reason-contents-spoil = Masisira ng natirang laman ang lahat sa paligid.
reason-mixed-materials = Magkadikit ang mga materyales at hindi mapaghihiwalay.
reason-wrong-glass = Iba ang pagkatunaw ng salaming ito sa mga bote at garapon.
reason-breaks-unsafe = Nababasag ito at nakasusugat ng mga nagbubukod.
reason-not-packaging = Mga lalagyan at balot lang ang tinatanggap dito.
reason-hazard = Mapanganib ito sa cart, sa trak at sa planta.
reason-handled-apart = Inaasikaso ito nang hiwalay sa iba.
reason-reusable = May makagagamit pa nito.
reason-store-collects = Tinatanggap ito ng mga tindahan.
reason-contaminates-compost = Masisira nito ang compost.
reason-not-named = Wala ito sa listahan.
reason-not-listed = Wala pang nagpasya. Mas mabuting magtanong kaysa manghula.
reason-too-heavy = Sobrang bigat nito para buhatin.
reason-number-is-not-shape = Hindi sapat ang numero: mahalaga rin ang hugis.
reason-black-unseen = Hindi nakikita ng mga makina ang itim na plastik.
reason-burns = Puwede itong magsimula ng sunog.
reason-special-trip = May sarili itong hakot o sariling lugar.
reason-law = Iyon ang sabi ng batas.
reason-not-collected = Hindi ito kinokolekta rito.

## Mga antas ng tuntunin, ayon sa pagkakasunod ng pagtingin

tier-safety = Kaligtasan
tier-plant = Planta ng pagbubukod
tier-program = Programang ito
tier-material = Materyales
tier-default = Lahat ng iba pa

## Mga uri na mapagpipilian

category-plastic-packaging = Plastik na lalagyan
category-paper-cardboard = Papel at karton
category-glass = Salamin
category-metal = Metal
category-food-drink-cartons = Karton ng pagkain at inumin
category-food-garden = Pagkain at bakuran
category-film-bags = Supot at manipis na plastik
category-batteries-electronics = Baterya at electronics
category-hazardous = Pintura, kemikal, gas
category-medical = Gamot at karayom
category-textiles = Damit at sapatos
category-household-goods = Gamit sa bahay
category-building = Konstruksiyon at pagkukumpuni
category-bathroom = Banyo

## Mga bahaging puwedeng sa iba dalhin

part-lid = Ang takip
part-cap = Ang takip na de-ikot
part-pump = Ang pump
part-sleeve = Ang balot
part-liner = Ang sapin
part-straw = Ang straw
part-filter = Ang filter
part-battery = Ang baterya
part-cord = Ang kurdon
part-shade = Ang lampshade
part-contents = Ang laman
part-bag = Ang supot
part-handle = Ang hawakan
part-ring = Ang singsing

## Mga tuntunin tungkol sa lalagyan

container-rule-lid-closed = Dapat sarado ang takip.
container-rule-weight = Hindi dapat lumampas sa { $limit } kapag puno.
container-rule-distance = Mag-iwan ng { $limit } sa bawat gilid.
container-rule-side-waste = Walang ilalagay sa tabi o sa ibabaw.
container-rule-share-of-load = Hanggang { $limit } lang ng karga ang puwedeng hindi dapat dito.
container-rule-liners = Puwedeng lagyan ng bag na sapin.
container-rule-sacks = Ang mga sakong ibinigay lang.
container-rule-registration = Magpalista muna.
container-rule-refusals = Kapag may mali sa laman, iiwan ito na may sulat.

## Kung saan bawal sa batas

answer-banned = Bawal ito sa batas sa: { $place }.
