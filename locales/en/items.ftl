# Names of catalog items. ".also" holds other words people search by, separated by bars:
# synonyms, regional words and common misspellings of this language, not translations.

## plastic-packaging

item-water-bottle = Water or soda bottle
    .also = drinks bottle | pop bottle | fizzy drink bottle | plastic bottle | PET bottle | watter botle
item-milk-jug = Milk jug
    .also = plastic milk bottle | gallon jug | milk container | HDPE jug | poly bottle
item-detergent-bottle = Laundry detergent bottle
    .also = washing liquid bottle | fabric softener bottle | soap jug | detergent jug | detergant
item-shampoo-bottle = Shampoo bottle
    .also = conditioner bottle | body wash bottle | shower gel bottle | lotion bottle | shampo
item-soap-pump-bottle = Soap bottle with pump
    .also = hand soap dispenser | pump bottle | lotion pump | soap dispenser | hand wash
item-spray-bottle = Spray cleaner bottle
    .also = trigger bottle | window cleaner bottle | cleaning spray | kitchen spray | spray top
item-ketchup-bottle = Ketchup or sauce bottle
    .also = squeeze bottle | mayonnaise bottle | mustard bottle | honey bear | salad dressing bottle | catsup
item-peanut-butter-jar = Peanut butter jar
    .also = plastic food jar | spread jar | nut butter jar | plastic mayo jar | penut butter
item-cooking-oil-bottle = Cooking oil bottle
    .also = vegetable oil bottle | olive oil plastic bottle | frying oil bottle
item-sleeved-bottle = Bottle in a full plastic sleeve
    .also = shrink sleeve bottle | wrapped bottle | yogurt drink bottle | sleeve label | coffee drink bottle
item-yogurt-tub = Yogurt or margarine tub
    .also = yoghurt pot | butter tub | sour cream tub | cottage cheese tub | plastic tub | yogart
item-yogurt-cup = Single yogurt cup
    .also = yoghurt pot | pudding cup | small yogurt | fruit cup | jelly pot
item-plastic-lid = Plastic tub lid
    .also = margarine lid | container lid | snap-on lid | deli lid | coffee can lid
item-plastic-cap = Loose plastic bottle cap
    .also = bottle top | screw cap | loose cap | twist cap | plastic top
item-clamshell = Clear clamshell box
    .also = berry box | salad box | hinged container | fruit punnet | takeout clamshell | clamshel
item-takeout-tub = Plastic takeout box
    .also = takeaway container | to-go box | deli container | carry-out tub | plastic food box
item-black-tray = Black plastic food tray
    .also = ready meal tray | microwave meal tray | TV dinner tray | black container
item-meat-tray = Plastic meat or cookie tray
    .also = meat packaging | biscuit tray | cracker tray | clear food tray | chicken tray
item-plastic-cup = Plastic cold drink cup
    .also = iced coffee cup | party cup | smoothie cup | beer cup | soda cup
item-straw = Plastic straw
    .also = drinking straw | stirrer | bendy straw
item-plastic-cutlery = Plastic fork, knife, spoon
    .also = plastic cutlery | plastic silverware | disposable utensils | spork
item-foam-cup = Foam cup
    .also = polystyrene cup | insulated cup | EPS cup | white foam cup
item-foam-takeout = Foam takeout box
    .also = foam clamshell | polystyrene food box | foam plate | foam tray | takeaway foam
item-bag-of-recyclables = Recyclables in a plastic bag
    .also = bagged recycling | trash bag of bottles | garbage bag of recycling | sack of recycling
item-egg-carton-plastic = Clear plastic egg carton
    .also = plastic egg box | plastic egg tray

## paper-cardboard

item-cardboard-box = Cardboard box
    .also = shipping box | corrugated box | moving box | delivery box | parcel box | carboard
item-pizza-box = Pizza box
    .also = pizza carton | greasy box | takeout pizza box | piza box
item-cereal-box = Cereal box
    .also = cracker box | pasta box | paperboard box | shoebox | food box | cereal carton | biscuit box
item-frozen-food-box = Frozen food box
    .also = freezer box | frozen dinner box | fish finger box | ice cream carton | frozen pizza box
item-newspaper = Newspaper
    .also = newsprint | inserts | paper ads | sunday paper | news paper
item-mixed-paper = Office paper
    .also = printer paper | letters | junk mail | colored paper | leaflets | flyers | notebook paper | coloured paper
item-magazine = Magazine or catalog
    .also = catalogue | glossy paper | brochure | phone book | magazin
item-envelope = Envelope, with or without window
    .also = mail envelope | window envelope | letter | paper mailer
item-padded-mailer = Padded envelope, mixed
    .also = bubble mailer | bubble envelope | cushioned mailer
item-shredded-paper = Shredded paper
    .also = paper shreds | shredder bin | confetti paper | shreded paper
item-paper-bag = Paper bag
    .also = brown bag | paper grocery bag | lunch bag | gift bag of paper
item-receipt = Till receipt
    .also = thermal paper | shiny receipt | sales slip | reciept | ticket
item-gift-wrap = Gift wrap
    .also = wrapping paper | christmas paper | shiny wrap | gift paper | wraping paper
item-egg-carton = Paper egg carton
    .also = egg box | egg tray | pulp carton | eggs carton

## glass

item-glass-bottle = Glass bottle
    .also = wine bottle | beer bottle | glass drink bottle | liquor bottle | green bottle
item-glass-jar = Glass jar with metal lid
    .also = jam jar | sauce jar | pickle jar | pasta sauce jar | mason jar | baby food jar
item-drinking-glass = Drinking glass
    .also = wine glass | tumbler | glass cup | pint glass | stemware | drinking glas
item-bakeware-glass = Glass oven dish
    .also = glass bakeware | casserole dish | heatproof glass | coffee pot glass | glass lid
item-mirror = Mirror
    .also = looking glass | wall mirror | bathroom mirror | broken mirror | miror
item-broken-glass = Broken glass
    .also = glass shards | smashed bottle | shattered glass | broken jar

## metal

item-food-can = Steel food can
    .also = tin can | soup can | bean can | vegetable can | tuna can | tin
item-drink-can = Drink can
    .also = soda can | beer can | pop can | aluminum can | aluminium can | seltzer can | fizzy drink can
item-pet-food-can = Pet food can
    .also = cat food tin | dog food can | small tin
item-crown-cap = Metal bottle cap
    .also = crown cap | beer cap | bottle top | metal cap
item-steel-lid = Metal jar lid
    .also = can lid | tin lid | steel lid | mason jar lid | screw lid
item-foil = Aluminum foil
    .also = kitchen foil | aluminium foil | tin foil | foil ball | foil wrap | alluminum
item-foil-pan = Foil pan or tray
    .also = pie tin | aluminum pan | roasting tray | takeout foil dish | pie plate
item-empty-spray-can = Spray can, fully empty
    .also = empty aerosol | empty hairspray | empty deodorant can | empty aerosol can

## food-drink-cartons

item-coffee-cup = Paper coffee cup
    .also = hot drink cup | paper cup | takeaway coffee cup | to-go cup | tea cup paper | cofee cup
item-coffee-pod = Coffee pod
    .also = coffee capsule | single-serve coffee | tea pod | espresso capsule | coffe pod
item-milk-carton = Milk or juice carton
    .also = gable-top carton | orange juice carton | cream carton | paper milk carton
item-aseptic-carton = Broth or soup carton
    .also = shelf-stable carton | aseptic carton | plant milk carton | soup box | stock carton | wine box
item-juice-box = Juice box with straw
    .also = drink box | kids juice | juice brick | small juice carton
item-paper-canister = Paper can with metal end
    .also = stacked chips can | oatmeal canister | nut canister | snack tube | powder drink can

## food-garden

item-food-scraps = Food scraps
    .also = leftovers | kitchen waste | food waste | plate scrapings | spoiled food | table scraps
item-fruit-vegetables = Fruit and vegetable peels
    .also = apple core | banana peel | potato peelings | vegetable scraps | salad | banana skin
item-meat-bones = Meat, fish and bones
    .also = chicken bones | fish skin | seafood shells | fat trimmings | bone
item-coffee-grounds = Coffee grounds and filters
    .also = used coffee | coffee filter | paper filter | ground coffee
item-tea-bag = Tea bag
    .also = teabags | herbal tea bag | loose tea | tea leaves
item-egg-shells = Eggshells
    .also = egg shells | eggs
item-food-in-package = Food still in its package
    .also = expired food | unopened food | out of date food | full container | moldy yogurt
item-cooking-oil = Cooking oil and grease
    .also = frying oil | bacon grease | used vegetable oil | fat | lard
item-leaves = Leaves and weeds
    .also = fall leaves | garden waste | yard waste | weeds | autumn leaves
item-grass-clippings = Grass clippings
    .also = lawn clippings | cut grass | mowed grass | turf trimmings
item-branches = Branches and twigs
    .also = brush | prunings | hedge trimmings | sticks | tree limbs
item-holiday-tree = Cut holiday tree
    .also = christmas tree | xmas tree | fir tree | pine tree | live tree
item-compostable-cup = Compostable cup or box
    .also = bioplastic container | PLA cup | plant-based cup | biodegradable cup | corn plastic

## film-bags

item-packing-peanuts = Packing peanuts
    .also = loose fill | foam peanuts | packing chips
item-grocery-bag = Plastic grocery bag
    .also = carrier bag | shopping bag | store bag | plastic bag | single-use bag
item-bread-bag = Bread or produce bag
    .also = bread sack | vegetable bag | frozen veg bag | sandwich bag | zip bag | baggie
item-bubble-wrap = Bubble wrap
    .also = air pillows | bubble film | bubble mailer film | packing air bags
item-plastic-wrap = Cling film from food
    .also = cling wrap | plastic wrap | food wrap | stretch film
item-overwrap-film = Wrap from multipacks
    .also = toilet roll wrap | case wrap | shrink wrap | pallet wrap | paper towel wrap | diaper pack wrap
item-chip-bag = Chip or snack bag
    .also = crisp packet | candy wrapper | snack wrapper | foil-looking bag | granola bar wrapper | crisps bag
item-pouch = Stand-up food pouch
    .also = baby food pouch | juice pouch | pet food pouch | rice pouch | refill pouch | squeeze pouch
item-compostable-bag = Compostable bag
    .also = caddy liner | biodegradable bag | green bin liner | food scrap bag

## batteries-electronics

item-household-battery = Household battery, AA to D
    .also = alkaline battery | AAA battery | 9V battery | dead batteries | button cell | batery
item-lithium-battery = Rechargeable lithium battery
    .also = li-ion battery | phone battery | laptop battery | power tool battery | e-bike battery
item-car-battery = Car battery
    .also = lead-acid battery | truck battery | motorcycle battery | boat battery | auto battery
item-vape = Vape or e-cigarette
    .also = vape pen | disposable vape | e-cig | electronic cigarette
item-phone = Cell phone
    .also = mobile phone | smartphone | tablet | e-reader | cellphone
item-laptop = Laptop
    .also = notebook computer | portable computer | netbook
item-cables = Cable or charger
    .also = cords | extension cord | phone charger | wires | USB cable | power lead
item-string-lights = String lights
    .also = christmas lights | fairy lights | holiday lights | xmas lights

## hazardous

item-paint-can-empty = Paint can, empty or dried
    .also = dry paint tin | empty paint tin | dried paint
item-spray-can = Spray can, not empty
    .also = aerosol can | hairspray | spray paint | deodorant spray | bug spray | air freshener spray
item-propane-cylinder = Propane tank or gas cylinder
    .also = camping gas | grill tank | butane canister | gas bottle | helium tank
item-latex-paint = Latex paint, liquid
    .also = house paint | wall paint | emulsion paint | leftover paint | acrylic paint
item-oil-paint = Oil paint, stain or varnish
    .also = wood stain | enamel paint | lacquer | varnish | deck stain
item-motor-oil = Used motor oil
    .also = engine oil | oil change | oil filter | transmission fluid | car oil
item-motor-oil-bottle = Motor oil bottle
    .also = oil jug | antifreeze jug | engine oil bottle | oil container
item-fluorescent-tube = Fluorescent tube
    .also = tube light | strip light | neon tube | flourescent | shop light tube

## medical

item-pill-bottle = Empty pill bottle
    .also = medicine bottle | prescription vial | vitamin bottle | tablet bottle
item-needles = Needles and syringes
    .also = sharps | lancet | injection needle | insulin pen needle | injector pen | syringe
item-medicine = Medicine and pills
    .also = expired medication | prescription drugs | cough syrup | ointment | vitamins | meds

## textiles

item-clothing = Clothes
    .also = clothing | shirt | jeans | coat | t-shirt | garments | old clothes

## household-goods

item-foam-block = Foam packing block
    .also = packing foam | TV foam | polystyrene block | white packing foam | EPS block
item-ceramic-dishes = Plate, bowl or mug
    .also = crockery | ceramic dish | china | porcelain | coffee mug | stoneware
item-garden-hose = Garden hose
    .also = hosepipe | water hose | soaker hose | hose pipe
item-rope = Rope, string or twine
    .also = yarn | cord | ribbon | strapping | baling twine | fishing line
item-laundry-basket = Plastic laundry basket
    .also = hamper | storage tote | plastic bin | washing basket | tub
item-bucket = Plastic bucket or pail
    .also = pail | 5 gallon bucket | cat litter pail | ice cream pail
item-toy = Small plastic toy
    .also = kids toy | toy car | action figure | doll | building bricks

## building

item-window-glass = Window pane
    .also = window glass | glass sheet | table top glass | picture frame glass | shower door

## bathroom

item-toothpaste-tube = Toothpaste tube
    .also = cream tube | lotion tube | squeeze tube | tooth paste
item-travel-bottle = Travel-size bottle
    .also = hotel shampoo | mini bottle | sample bottle | small toiletries | nip bottle
item-paper-towel = Paper towel or napkin
    .also = kitchen roll | serviette | paper napkin | kitchen paper
item-facial-tissue = Used tissue
    .also = paper hanky | facial tissue | nose tissue | toilet tissue
item-toilet-roll-tube = Cardboard roll tube
    .also = toilet roll core | loo roll | paper towel tube | cardboard tube
item-diaper = Diaper
    .also = nappy | baby diaper | adult brief | pads | period products | dipper
item-wet-wipes = Wet wipes
    .also = baby wipes | cleaning wipes | flushable wipes | makeup wipes
