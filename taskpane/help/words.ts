// Long: one table of the words people use for the things of a hatchery.

/**
 * The one table: what the finder knows a thing by, and how people say it. English of West and East Africa and
 * pidgin, French, Portuguese, Spanish, Hausa, Swahili; abbreviations and words often written wrong. Accents and
 * case do not matter. From memory unless a record's own questions hold the word; a speaker of each should read it.
 */
export const WORDS: Readonly<Record<string, string>> = {
  egg: `eggs ova oeuf oeufs ovo ovos huevo huevos kwai kwayaye yai mayai ovocyte frai`,
  hatch: `hatching hatched hatchery-time eclosion eclore ecloront eclosent eclos eclosao eclodir eclodem eclosion eclosionar eclosionan kyankyashe kyankyasa kyankyashewa kuanguliwa wataanguliwa yataanguliwa angua come-out comot commot nacer nacen nascer nascem hatchabilty hatchability`,
  fry: `fries frys larva larvae larve larves larva larvas alevin alevins alevino alevinos cria crias hatchling hatchlings pikin pikins jariri yayan vifaranga vichanga mabuu post-larvae postlarvae babies baby young`,
  fingerling: `fingerlings fingerlin fingerlins juvenile juveniles juvinile jumper jumpers melange juvenil juveniles juvenis dedo alevins-pregrossis`,
  female: `females femelle femelles femea femeas hembra hembras mama mother mothers femal femals mace mata jike majike reproductrice reproductora`,
  male: `males male males macho machos papa father namiji maza dume madume`,
  brood: `broodstock brood brooder brooders broodfish brodstock parent parents geniteur geniteurs reprodutor reprodutores reproductor reproductores wazazi iyaye`,
  hormone: `hormon harmone hormones hormona hormonas hormonio hormonios ovulin injection-drug homoni hormonal inducing pituitary-extract`,
  pituitary: `pitutary pituary hypophyse hypofise hipofise hipofisis pituitaries`,
  inject: `injection inject injected injecter injecte injecting injecao injetar injeto inyeccion inyectar inyecto jab needle piqure allura allurar sindano kudunga choma`,
  strip: `stripping striping stripped strip press squeeze stripper desova desovar desovo extrusao desovar desove extraer presser spawn-out matsa matse kukamua kamua`,
  latency: `latence latencia latency waiting delai intervalo`,
  milt: `sperm semen laitance sperme semen esperma milt testes testicule maniyyi shahawa mbegu`,
  fertilise: `fertilisation fertilization fertilize fertilized fertilised fetilization fertilisaton fertility fecondation feconde fecondes fertilizacao fertilizados fecundacion fecundados fecundacao mbolea kurutubisha fertil`,
  feed: `feeding feeds fed food aliment aliments nourrir nourriture alimenter ration racao alimentar alimento alimentacion comida chop chow abinci ciyar chakula kulisha lisha pellet pellets granule ration comer`,
  artemia: `artemia artamia altemia artimia brine shrimp nauplii nauplius nauplio nauplios cysts cyst cyste cystes cisto cistos quistes`,
  weight: `weigh weighing weighs weigth wieght poids peser peso pesar nauyi uzito kupima pois heavy grams size`,
  grow: `growth growing grows croissance grandir grossir grossissent crescimento crescer crecimiento crecer girma kukua ukuaji sgr`,
  die: `dying died dead dieing death deaths mortality mortalty motality mort morts mortalite meurent mourir mortalidade morte mortos morrem mortalidad muertos mueren mutuwa mutu kufa vifo wamekufa perish losses`,
  survive: `survival survial survived surviving alive survie survivants sobrevivencia sobrevive supervivencia sobreviven rayuwa tsira kuishi wamepona remain remaining left`,
  water: `eau agua ruwa maji wata omi mmiri`,
  acid: `acidic sour acide acida acido tsami chachu tindikali low-ph`,
  ph: `ph`,
  raise: `raise rasie increase bring-up up monter augmenter relever remonter subir aumentar elevar kara ongeza pandisha correct corriger corrigir corregir`,
  soda: `sodash ash carbonate carbonato barrilha soude sosa bicarbonate bicarb bicarbonato baking kanwa magadi buffer bufer tampon tampao`,
  lime: `limes chaux cal calcario chokaa farar kasa alkaline quicklime`,
  salt: `sel sal gishiri chumvi salting saline`,
  formalin: `formol formaldehyde formalina formaline formalin`,
  temperature: `temprature tempreture temperature heat warm hot cold cool froid chaud temperatura quente frio caliente zafi sanyi joto baridi thermometer degres graus grados`,
  oxygen: `oxigen oxygene oxigenio oxigeno do air aeration aire hewa iska oksijeni`,
  ammonia: `amonia ammoniac ammoniaque amoniaco amonio ammonium tan`,
  vat: `tank tanks vats bac bacs bassin bassins cuve tanque tanques estanque estanques pond ponds tafki tanki bwawa matangi caixa pila basin bowl trough`,
  litre: `liter litres liters litters litro litros lita volume volumen`,
  count: `counting counted number numbering compter compte comptage contar contagem conteo kirga kirge kuhesabu hesabu idadi nombre numero`,
  sample: `samples echantillon echantillons amostra amostras muestra muestras samfuri sampuli`,
  day: `days jour jours dia dias rana kwana siku`,
  hour: "hours time when wen heure heures quand hora horas quando cuando lokaci yaushe awa sa'a saa lini wakati",
  cost: `costs price prices cout couts prix custo preco custos costo precio costos gharama bei kudi farashi money naira shilling cfa`,
  profit: `profits gain benefice lucro lucros ganancia ganancias riba faida margin marge margem margen`,
  sell: `sale sales sold selling vendre vente vender venda venta sayar sayarwa kuuza mauzo`,
  order: `orders commande commandes encomenda encomendas pedido pedidos oda agizo`,
  grade: `grading sorting sort trier tri triage classificar classificacao clasificar separar tantance kupanga`,
  cannibal: `cannibalism cannabalism cannibales cannibalisme canibalismo canibal eat-each-other eating-each-other shooter shooters`,
  stock: `stocking density densite densidade densidad empoissonnement povoamento siembra densities crowded mise-en-charge`,
  transport: `transporting carry carrying bag bags bagging transporter sachets transportar sacos bolsas kai safarisha usafiri`,
  yolk: `yolk-sac vitellus vitellin vitelo vitelino saco kiini gwaiduwa`,
  wean: `weaning sevrage sevrer desmame destete`,
  change: `exchange changing renouveler renouvellement trocar troca cambio cambiar canza badilisha`,
  flow: `debit caudal vazao fluxo inflow gudu mtiririko`,
  white: `blanc blancs branco brancos blanco blancos fari fararen nyeupe`,
  check: `verify verifier verificar controler revisar duba angalia hakiki wrong right`,
  inbreed: `inbreeding consanguinite consanguinidade endogamia consanguinidad related sibling brother sister`,
  certain: `sure certainty chance odds probability probabilite probabilidade probabilidad risk`,
  average: `mean moyenne media promedio wastani matsakaici`,
  much: `combien quanto quanta cuanto cuanta cuantos cuantas quantos quantas many nawa kiasi ngapi gani how wetin qty quantity amount quelle quel dose dosage`,
};

/** Words that say nothing of what is wanted. */
export const EMPTY_WORDS = new Set(
  (
    'a an the of for to in on at is are be my i you it we do does did what which will would can ' +
    'could should with and or by per from as if not no so this that these those me your our go ' +
    'don dey na am e wey abi o le la les un une des de du d l mon ma mes est sont il faut pour ' +
    'dans en et par avec ce que qui au aux je on se sa son o os as um uma do da dos das meu ' +
    'minha meus e para com em no na por que se eu el los las una unos mi mis del y con por es ' +
    'al ya wa za la cha ni na kwa gani da ne ce mai nake zan ina please tell know find get give ' +
    'need'
  ).split(' '),
);
