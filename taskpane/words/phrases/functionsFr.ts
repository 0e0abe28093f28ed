// Long: one table, a sentence a line: what each function gives, takes and holds for, by family.
/* eslint max-len: off -- a sentence a line */
import type { Phrases } from '../../pane/phrases';

/**
 * The help of functions in French: what they give, their arguments and columns, where they hold. Names of functions,
 * of arguments in formulas and of options stay English, as cells hold them. A text that two families share stands
 * with the first.
 */

const WATER: Phrases = {
  'Grams of a product that bring a volume of water to a wished pH.':
    'Grammes d’un produit qui amènent un volume d’eau au pH voulu.',
  'Next part-dose at the vat from the doses and pH readings so far: grams, spoons, pH to expect, what to do.':
    'Prochaine part de dose au bac, selon les doses et les pH lus jusqu’ici : grammes, cuillères, pH à attendre, que faire.',
  'What a series of doses and pH readings says about the water: its alkalinity and carbon dioxide, with ranges.':
    'Ce qu’une série de doses et de pH lus dit de l’eau : son alcalinité et son gaz carbonique, avec leurs bornes.',
  'pH against further product, with its range, from the readings so far: the curve to draw beside the window.':
    'Le pH selon le produit ajouté, avec ses bornes, d’après les mesures : la courbe à tracer à côté de la fenêtre.',
  'Splits a dose for a known water into part-doses, air between them, up to the target once aired.':
    'Partage la dose d’une eau connue en parts, avec de l’air entre elles, jusqu’au pH voulu une fois aérée.',
  'pH after a dose of a product, right after mixing or in balance with the air.':
    'pH après une dose d’un produit, juste après mélange ou en équilibre avec l’air.',
  'What a dose does, both answers: right after mixing and in balance with the air, with alkalinity, CO2 and clouding.':
    'Ce que fait une dose, les deux réponses : juste après mélange et en équilibre avec l’air, avec alcalinité, CO2 et trouble.',
  'With only a pH reading: the least, likely and most product a water may need, and a first part that is safe.':
    'Avec un pH seul : le moins, le probable et le plus de produit qu’une eau peut demander, et une première part sûre.',
  'A trial in a bucket: what to weigh, how much stock solution to add, and what to write down.':
    'Un essai dans un seau : que peser, combien de solution ajouter, et que noter.',
  'With pH and an alkalinity kit: the dose, and how far the errors of meter and kit can carry it.':
    'Avec un pH et un kit d’alcalinité : la dose, et jusqu’où les erreurs du pH-mètre et du kit peuvent la porter.',
  'Dose from an aerated jar of the water: grams that bring the whole vat to the target, with the range of a 0.1 pH error.':
    'Dose d’après un bocal aéré de l’eau : grammes qui amènent tout le bac au pH voulu, avec les bornes d’une erreur de 0,1 pH.',
  'The field rule: 1 g of soda ash in 200 L lifts pH by about 2. Common practice, no source.':
    'La règle de terrain : 1 g de carbonate de soude dans 200 L monte le pH d’environ 2. Pratique courante, sans source.',
  'Says for this water whether the field rule holds, overshoots or falls short, and by how much.':
    'Dit pour cette eau si la règle de terrain tient, dépasse ou reste courte, et de combien.',
  'Grams of one base that bring the same alkalinity as grams of another.':
    'Grammes d’une base qui apportent la même alcalinité que des grammes d’une autre.',
  'What a water holds: alkalinity, carbon dioxide, total carbon, its pH once aired and how hard its pH is to move.':
    'Ce que contient une eau : alcalinité, gaz carbonique, carbone total, son pH une fois aérée et combien son pH résiste.',
  'pH of a water from its alkalinity and total inorganic carbon.':
    'pH d’une eau d’après son alcalinité et son carbone minéral total.',
  'Two waters poured together: pH right away and once aired, alkalinity and temperature.':
    'Deux eaux versées ensemble : pH tout de suite et une fois aérées, alcalinité et température.',
  'pH a water comes to once fully aerated, with nothing added.':
    'pH où arrive une eau bien aérée, sans rien ajouter.',
  'Alkalinity of a water from the pH of a jar of it that was aerated for an hour.':
    'Alcalinité d’une eau d’après le pH d’un bocal de cette eau aéré une heure.',
  'pH some hours after dosing or filling, as carbon dioxide is exchanged with the air.':
    'pH quelques heures après dosage ou remplissage, quand le gaz carbonique s’échange avec l’air.',
  'pH and carbon dioxide hour by hour after dosing or filling.':
    'pH et gaz carbonique heure par heure après dosage ou remplissage.',
  'Where agricultural lime stops dissolving in soft water open to the air: pH, alkalinity and hardness.':
    'Où le calcaire agricole cesse de se dissoudre dans une eau douce ouverte à l’air : pH, alcalinité et dureté.',
  'Dissolved carbon dioxide from pH and alkalinity, mg/L.':
    'Gaz carbonique dissous d’après pH et alcalinité, mg/L.',
  'Dissolved carbon dioxide of water in balance with the air, mg/L.':
    'Gaz carbonique dissous d’une eau en équilibre avec l’air, mg/L.',
  "Toxic un-ionised ammonia nitrogen in a water, mg/L, from a kit's total.":
    'Azote ammoniacal toxique (non ionisé) d’une eau, mg/L, d’après le total d’un kit.',
  'Highest total ammonia nitrogen that keeps the toxic part under your limit at this pH and temperature.':
    'Plus haut azote ammoniacal total qui garde la part toxique sous votre limite à ce pH et cette température.',
  'Before raising the pH of water that holds fish: toxic ammonia now and after, and the highest pH that stays safe.':
    'Avant de monter le pH d’une eau avec des poissons : ammoniac toxique maintenant et après, et le pH le plus haut qui reste sûr.',
  'Oxygen that water holds in balance with air, mg/L, at a temperature, salt content and height.':
    'Oxygène qu’une eau tient en équilibre avec l’air, mg/L, selon température, sel et altitude.',
  'Oxygen saturation as a share from a reading in mg/L.':
    'Saturation en oxygène, en part, d’après une mesure en mg/L.',
  'Oxygen in mg/L from a meter that shows percent of saturation.':
    'Oxygène en mg/L d’après un appareil qui montre le pour cent de saturation.',
  'Turns alkalinity from one unit into another: meq/L, mg/L CaCO3, German or French degrees and more.':
    'Change l’alcalinité d’unité : meq/L, mg/L CaCO3, degrés allemands ou français et d’autres.',
  'Turns hardness from one unit into another: meq/L, mg/L CaCO3, German or French degrees and more.':
    'Change la dureté d’unité : meq/L, mg/L CaCO3, degrés allemands ou français et d’autres.',
  'Conductivity at 25 °C from a reading without temperature compensation.':
    'Conductivité à 25 °C d’après une mesure sans compensation de température.',
  'Grams of salt for a wished strength in a vat, a wash for sticky eggs or a bath.':
    'Grammes de sel pour une concentration voulue dans un bac, un rinçage d’œufs collants ou un bain.',
  'Salt in fresh water from the rise of its conductivity, g/L.':
    'Sel dans une eau douce d’après la hausse de sa conductivité, g/L.',
  'Litres in a rectangular vat.': 'Litres d’un bac rectangulaire.',
  'Litres in a round vat with a flat bottom.': 'Litres d’un bac rond à fond plat.',
  'Litres in an oval vat: an ellipse, or straight sides with half-round ends.':
    'Litres d’un bac ovale : une ellipse, ou des côtés droits aux bouts en demi-cercle.',
  'Litres in a round vat with a conical bottom, full or part filled.':
    'Litres d’un bac rond à fond conique, plein ou en partie.',
  'Litres in a vat or lined pond with sloping sides, full or part filled.':
    'Litres d’un bac ou étang bâché aux bords inclinés, plein ou en partie.',
  'Litres in a drum or pipe lying on its side, full or part filled.':
    'Litres d’un fût ou tuyau couché, plein ou en partie.',
  'Litres to exchange to bring anything dissolved (ammonia, salt, nitrite) from one level to another.':
    'Litres à changer pour amener toute chose dissoute (ammoniac, sel, nitrite) d’un niveau à un autre.',
  'Level of anything dissolved after exchanging some litres.':
    'Niveau de toute chose dissoute après avoir changé quelques litres.',
  'Hours in which a flow renews the vat once.': 'Heures en lesquelles un courant renouvelle le bac une fois.',
  'Inflow for a wished number of turnovers an hour.':
    'Débit pour le nombre voulu de renouvellements par heure.',
  'Flow from the seconds it takes to fill a bucket.':
    'Débit d’après les secondes qu’il faut pour remplir un seau.',
  'Published salt limits of catfish eggs, fry and juveniles, with what each trial saw.':
    'Limites de sel publiées pour œufs, alevins et juvéniles de silure, avec ce que vit chaque essai.',
  'Whether a salt strength and time is within what trials saw catfish of a stage bear.':
    'Si une concentration et une durée de sel sont dans ce que les essais ont vu supporter par des silures d’un stade.',
  'Is this pH good for eggs or larvae of African catfish? With every trial that says something.':
    'Ce pH est-il bon pour œufs ou larves de silure africain ? Avec chaque essai qui en dit quelque chose.',
  'Is this ammonia a danger? The toxic part at your pH and temperature against all that is printed.':
    'Cet ammoniac est-il un danger ? La part toxique à votre pH et température face à tout ce qui est publié.',
  'Chlorine bath for empty vats, nets and tools: product, minutes, and what neutralises it.':
    'Bain de chlore pour bacs vides, filets et outils : produit, minutes, et ce qui le neutralise.',
  'Sodium thiosulfate that takes chlorine out of tap water or a bath, grams.':
    'Thiosulfate de sodium qui ôte le chlore de l’eau du robinet ou d’un bain, grammes.',
  'Hydrated lime for the wet mud of an emptied pond, grams from and to.':
    'Chaux éteinte pour la boue humide d’un étang vidé, grammes de à.',
  'How to wash and disinfect a vat, nets and tools, new concrete or tarpaulin, step by step.':
    'Comment laver et désinfecter un bac, filets et outils, béton neuf ou bâche, pas à pas.',
  'Water in the vat.': 'Eau du bac.',
  'pH of the water now.': 'pH de l’eau maintenant.',
  'pH wanted.': 'pH voulu.',
  'Alkalinity from a kit, meq/L (1 meq/L = 50 mg/L CaCO3 = 2.8 dKH). Left out: the water is taken as well aerated, its carbon dioxide that of the air.':
    'Alcalinité d’un kit, meq/L (1 meq/L = 50 mg/L CaCO3 = 2,8 dKH). Vide : l’eau est prise comme bien aérée, son gaz carbonique celui de l’air.',
  'Water temperature. 25 when left out.': 'Température de l’eau. 25 si laissée vide.',
  'Product. "washing soda" is the crystals with ten waters, "soda ash monohydrate" old powder that drew water; acids count as pure acid, set purity to the strength of yours.':
    'Produit. « washing soda » : les cristaux à dix eaux ; « soda ash monohydrate » : une vieille poudre qui a pris l’eau ; les acides comptent comme purs, mettez la pureté à la force du vôtre.',
  'Share of the product that is the pure chemical; for agricultural lime its neutralising value. 1 when left out.':
    'Part du produit qui est la substance pure ; pour le calcaire agricole sa valeur neutralisante. 1 si laissée vide.',
  'Dissolved carbon dioxide if measured, mg/L. It stands in for the alkalinity, and is needed below pH 5.2.':
    'Gaz carbonique dissous s’il est mesuré, mg/L. Il remplace l’alcalinité, et il le faut sous pH 5,2.',
  '"open" is the end, in balance with the air, and what a vat is dosed for; "closed" is right after mixing, before any gas is lost or taken up.':
    '« open » est la fin, en équilibre avec l’air, ce pour quoi on dose un bac ; « closed » est juste après mélange, avant tout gaz perdu ou pris.',
  'Total hardness; it matters above pH 8. 0 when left out.':
    'Dureté totale ; elle compte au-dessus de pH 8. 0 si laissée vide.',
  'Dissolved salts, in the unit of the next argument; it matters in salted water.':
    'Sels dissous, dans l’unité de l’argument suivant ; ils comptent dans une eau salée.',
  'Unit of dissolved. For salted water give g/L salt.':
    'Unité des sels dissous. Pour une eau salée donnez g/L salt.',
  'Carbon dioxide in the air over the water: about 420 outdoors, 600 to 1000 in a shed, more where badly aired.':
    'Gaz carbonique de l’air au-dessus de l’eau : environ 420 dehors, 600 à 1000 dans un hangar, plus s’il est mal aéré.',
  'TRUE when fish or eggs are in the water: no lime, no caustic soda.':
    'TRUE s’il y a des poissons ou œufs dans l’eau : pas de chaux, pas de soude caustique.',
  'pH wanted once aired.': 'pH voulu une fois aérée.',
  'Product that raises pH.': 'Produit qui monte le pH.',
  'Lowest pH that will do: water that air alone brings here is left alone.':
    'Plus bas pH qui suffit : une eau que l’air seul amène là est laissée telle quelle.',
  'Running total of product given since the start, g, one per reading; the first is 0.':
    'Total de produit donné depuis le début, g, un par mesure ; le premier est 0.',
  'pH read after each dose, once mixed and steady; the first before any product.':
    'pH lu après chaque dose, une fois mélangé et stable ; le premier avant tout produit.',
  'pH wanted once the water is aired, up to 8.': 'pH voulu une fois l’eau aérée, jusqu’à 8.',
  'Weight of one level measure of the product in your own spoon.':
    'Poids d’une mesure rase du produit dans votre cuillère.',
  'Where the water comes from: "aerated" after an hour of strong air, "well" for well or borehole water, rich in carbon dioxide, "peat" for water brown as tea from peat, leaves or forest.':
    'D’où vient l’eau : « aerated » après une heure d’air fort, « well » pour un puits ou forage, riche en gaz carbonique, « peat » pour une eau brune comme du thé, de tourbe, de feuilles ou de forêt.',
  'Alkalinity of the untouched water from a kit, if measured.':
    'Alcalinité de l’eau d’origine d’après un kit, si mesurée.',
  'Conductivity of the untouched water, if measured; it limits the alkalinity there can be.':
    'Conductivité de l’eau d’origine, si mesurée ; elle limite l’alcalinité possible.',
  'How pH is read: "good" two decimals and calibrated, "cheap" one decimal, "strips" paper.':
    'Comment le pH est lu : « good » deux décimales et étalonné, « cheap » une décimale, « strips » du papier.',
  'Lower edge of the pH window.': 'Bord bas de la fenêtre de pH.',
  'Upper edge of the pH window, not to be passed; never above 8.':
    'Bord haut de la fenêtre de pH, à ne pas dépasser ; jamais au-dessus de 8.',
  'Most pH units in one part-dose, once aired.': 'Plus d’unités de pH en une part de dose, une fois aérée.',
  'TRUE when fish or eggs are in the water: steps of no more than 0.3 pH, and no lime.':
    'TRUE s’il y a des poissons ou œufs dans l’eau : des pas de 0,3 pH au plus, et pas de chaux.',
  'TRUE puts a heading row with units on top, FALSE leaves it out.':
    'TRUE met une ligne de titres avec unités en haut, FALSE l’omet.',
  'What happened before each reading: "aired" (strong air for an hour or more), "jar" (the reading is of a shaken or aired jar), "night", "refill", "change" (part of the water), "rain"; blank for nothing but the dose.':
    'Ce qui s’est passé avant chaque mesure : « aired » (air fort une heure ou plus), « jar » (la mesure est celle d’un bocal secoué ou aéré), « night », « refill », « change » (une partie de l’eau), « rain » ; vide : rien que la dose.',
  'Second reading some minutes after the first; blank where not taken. The two must agree.':
    'Seconde mesure quelques minutes après la première ; vide si pas prise. Les deux doivent s’accorder.',
  'Date and time of each reading; three hours and more without a dose count as a night.':
    'Date et heure de chaque mesure ; trois heures et plus sans dose comptent comme une nuit.',
  'What stands in doses: running totals; or each part-dose by itself, "given before" the reading of its row or "given after" it. Blank cells are then nothing given.':
    'Ce qui est dans les doses : totaux ; ou chaque part seule, « given before » la mesure de sa ligne ou « given after ». Les cellules vides veulent alors dire rien donné.',
  'What the meter shows in a fresh buffer solution; its error is taken off every reading.':
    'Ce que le pH-mètre montre dans un tampon frais ; son erreur est ôtée de chaque mesure.',
  'pH printed on that buffer.': 'pH imprimé sur ce tampon.',
  'Whether the vat can be put under strong air for an hour; if it "cannot", the answer says how far the pH will drift.':
    'Si le bac peut être aéré fort une heure ; si « cannot », la réponse dit jusqu’où le pH va dériver.',
  "How sure that alkalinity is: half the width of its range, 90 of 100, as BUFFER.FIT gives it for a vat of the same water. Left out: a kit's usual error.":
    'Combien cette alcalinité est sûre : la moitié de son étendue, 90 fois sur 100, comme BUFFER.FIT la donne pour un bac de la même eau. Vide : l’erreur habituelle d’un kit.',
  'pH at which the curve ends, freshly mixed.': 'pH où finit la courbe, juste après mélange.',
  'pH units per part-dose: 0.3 or less with fish in the water.':
    'Unités de pH par part : 0,3 ou moins avec des poissons dans l’eau.',
  'Product given, g, for the whole volume.': 'Produit donné, g, pour tout le volume.',
  '"closed" is right after mixing, before any gas is lost or taken up; "open" is the end, in balance with the air.':
    '« closed » est juste après mélange, avant tout gaz perdu ou pris ; « open » est la fin, en équilibre avec l’air.',
  'Water from the vat in the bucket.': 'Eau du bac dans le seau.',
  'Product dissolved in one litre of stock solution, g. 5 g/L is handy: 1 mL in 1 L is 5 mg/L.':
    'Produit dissous dans un litre de solution, g. 5 g/L est pratique : 1 mL dans 1 L fait 5 mg/L.',
  'pH of the water now; below 5.2 a kit does not tell the dose.':
    'pH de l’eau maintenant ; sous 5,2 un kit ne dit pas la dose.',
  'Alkalinity by the kit, meq/L (ALKALINITY.CONVERT turns dKH or mg/L into it).':
    'Alcalinité par le kit, meq/L (ALKALINITY.CONVERT change dKH ou mg/L).',
  'What one drop or one mark of the kit stands for. 0.36 meq/L is 1 dKH.':
    'Ce que vaut une goutte ou une marque du kit. 0,36 meq/L est 1 dKH.',
  'How far the meter may be off.': 'De combien le pH-mètre peut se tromper.',
  'pH of a jar of the water after an hour of strong aeration.':
    'pH d’un bocal de l’eau après une heure d’air fort.',
  'Wished rise of pH.': 'Hausse de pH voulue.',
  'Product the grams are of.': 'Produit dont sont les grammes.',
  'Product to use instead.': 'Produit à prendre à la place.',
  'Alkalinity, meq/L; negative is mineral acid.': 'Alcalinité, meq/L ; négative : acide minéral.',
  'Total inorganic carbon: CO2, bicarbonate and carbonate together.':
    'Carbone minéral total : CO2, bicarbonate et carbonate ensemble.',
  'Litres of the first water.': 'Litres de la première eau.',
  'pH of the first water.': 'pH de la première eau.',
  'Litres of the second water.': 'Litres de la seconde eau.',
  'pH of the second water.': 'pH de la seconde eau.',
  'Time since the pH was read.': 'Temps depuis que le pH fut lu.',
  'How the tank takes and gives gas: "still" and deep, shallow or "gentle" air, "vigorous" bubbling.':
    'Comment le bac prend et rend le gaz : « still » et profond, peu profond ou air doux « gentle », fort bullage « vigorous ».',
  'Your own exchange rate of carbon dioxide, per hour, in place of the tank type.':
    'Votre propre vitesse d’échange du gaz carbonique, par heure, à la place du genre de bac.',
  'Hours the table spans.': 'Heures que couvre le tableau.',
  'Hours between rows.': 'Heures entre les lignes.',
  'Carbon dioxide in the air over the water.': 'Gaz carbonique de l’air au-dessus de l’eau.',
  'pH of the water; below 5.2 carbon dioxide cannot be had from pH and alkalinity.':
    'pH de l’eau ; sous 5,2 le gaz carbonique ne se tire pas du pH et de l’alcalinité.',
  'Alkalinity, meq/L (50 mg/L CaCO3 is 1 meq/L).': 'Alcalinité, meq/L (50 mg/L CaCO3 est 1 meq/L).',
  'Carbon dioxide in the air.': 'Gaz carbonique de l’air.',
  'pH of the water.': 'pH de l’eau.',
  'Water temperature.': 'Température de l’eau.',
  'Total ammonia from a kit, mg/L.': 'Ammoniac total d’un kit, mg/L.',
  'What the kit\'s mg/L are of: "N" ammonia nitrogen, "NH4" ammonium, "NH3" ammonia.':
    'De quoi sont les mg/L du kit : « N » azote ammoniacal, « NH4 » ammonium, « NH3 » ammoniac.',
  'Toxic ammonia nitrogen you allow. 0.05 when left out; 0.34 is the published ceiling for juvenile African catfish.':
    'Azote ammoniacal toxique que vous admettez. 0,05 si laissé vide ; 0,34 est le plafond publié pour de jeunes silures africains.',
  'pH after the dose.': 'pH après la dose.',
  'Salt in the water, g/L. 0 when left out.': 'Sel dans l’eau, g/L. 0 si laissé vide.',
  'Height above the sea. 0 when left out.': 'Altitude. 0 si laissée vide.',
  'Dissolved oxygen, mg/L.': 'Oxygène dissous, mg/L.',
  'Saturation: 80 % is 80% or 0.8.': 'Saturation : 80 % est 80% ou 0,8.',
  'The alkalinity as printed by the kit.': 'L’alcalinité comme l’imprime le kit.',
  'Unit of the amount; "°d" is the German degree (dKH, dGH).':
    'Unité de la quantité ; « °d » est le degré allemand (dKH, dGH).',
  'Unit wanted; meq/L when left out.': 'Unité voulue ; meq/L si laissée vide.',
  'The hardness as printed by the kit.': 'La dureté comme l’imprime le kit.',
  "Reading at the water's own temperature.": 'Mesure à la température de l’eau elle-même.',
  'Temperature of the water when read.': 'Température de l’eau à la mesure.',
  'Water to be salted.': 'Eau à saler.',
  'Salt wanted. 0.5 % is 5 g/L.': 'Sel voulu. 0,5 % est 5 g/L.',
  'Salt in the water now. 0 when left out.': 'Sel dans l’eau maintenant. 0 si laissé vide.',
  'Share of the product that is salt.': 'Part du produit qui est du sel.',
  'Conductivity with the salt, at 20 °C.': 'Conductivité avec le sel, à 20 °C.',
  'Conductivity of the water before salting. 0 when left out.':
    'Conductivité de l’eau avant le sel. 0 si laissée vide.',
  'Temperature the readings refer to: 20, or 25 for a meter that compensates to 25.':
    'Température à laquelle se rapportent les mesures : 20, ou 25 pour un appareil qui compense à 25.',
  'Inside length.': 'Longueur intérieure.',
  'Inside width.': 'Largeur intérieure.',
  'Depth of the water as filled, not of the wall.': 'Profondeur de l’eau comme remplie, pas de la paroi.',
  'Inside diameter.': 'Diamètre intérieur.',
  'Longest inside length.': 'Plus grande longueur intérieure.',
  'Widest inside width.': 'Plus grande largeur intérieure.',
  '"straight sides" with half-round ends, or a true "ellipse".':
    '« straight sides » aux bouts en demi-cercle, ou une vraie « ellipse ».',
  'Inside diameter of the round wall.': 'Diamètre intérieur de la paroi ronde.',
  'Height of the cone, from outlet to wall.': 'Hauteur du cône, de la sortie à la paroi.',
  'Depth of water over the outlet.': 'Profondeur d’eau au-dessus de la sortie.',
  'Diameter of the flat or the outlet at the bottom. 0 when left out.':
    'Diamètre du plat ou de la sortie au fond. 0 si laissé vide.',
  'Length at the rim.': 'Longueur au bord.',
  'Width at the rim.': 'Largeur au bord.',
  'Length at the bottom.': 'Longueur au fond.',
  'Width at the bottom.': 'Largeur au fond.',
  'Height of the rim over the bottom.': 'Hauteur du bord au-dessus du fond.',
  'Level now, any unit.': 'Niveau maintenant, toute unité.',
  'Level wanted, same unit.': 'Niveau voulu, même unité.',
  'Level in the new water, same unit. 0 when left out.':
    'Niveau dans l’eau neuve, même unité. 0 si laissé vide.',
  '"drain" takes water out first and refills once; "flow" runs new water through a mixed vat that overflows.':
    '« drain » vide d’abord et remplit une fois ; « flow » fait passer de l’eau neuve dans un bac mélangé qui déborde.',
  'Litres of new water.': 'Litres d’eau neuve.',
  'Level before, any unit.': 'Niveau avant, toute unité.',
  'Inflow.': 'Débit d’entrée.',
  'Turnovers per hour.': 'Renouvellements par heure.',
  'Bucket filled.': 'Seau rempli.',
  'Seconds it took.': 'Secondes qu’il a fallu.',
  'Stage to list, or all.': 'Étape à lister, ou toutes.',
  'Salt in the bath or vat.': 'Sel du bain ou du bac.',
  'Minutes in it; 1440 is a day.': 'Minutes dedans ; 1440 est un jour.',
  'Age: eggs, larvae (from hatch to weaned fry), fingerlings or juveniles.':
    'Âge : œufs, larves (de l’éclosion à l’alevin sevré), juvéniles ou jeunes poissons.',
  'Whose young; a hybrid bears less.': 'De qui sont les jeunes ; un hybride supporte moins.',
  'pH, settled.': 'pH, posé.',
  'Eggs or larvae and fry.': 'Œufs ou larves et alevins.',
  'Total ammonia nitrogen, mg/L.': 'Azote ammoniacal total, mg/L.',
  'Water the gear stands in, or that fills the vat.': 'Eau où est le matériel, ou qui remplit le bac.',
  'Active chlorine wanted: 200 if left out.': 'Chlore actif voulu : 200 si laissé vide.',
  'What you have.': 'Ce que vous avez.',
  'Active chlorine in it, from the label. Left out: 65% powder, 5.25% bleach.':
    'Son chlore actif, de l’étiquette. Vide : poudre 65%, javel 5,25%.',
  'Chlorine in it: 2 mg/L if left out, a usual most of tap water.':
    'Son chlore : 2 mg/L si laissé vide, un maximum habituel d’eau du robinet.',
  'Wet bottom.': 'Fond humide.',
  'What is to be cleaned.': 'Ce qui est à nettoyer.',
  Volume: 'Volume',
  Target: 'pH visé',
  Temperature: 'Température',
  Material: 'Produit',
  'Carbon dioxide': 'Gaz carbonique',
  Mode: 'Mode',
  Dissolved: 'Sels dissous',
  'Dissolved in': 'Unité des sels',
  'Air carbon dioxide': 'Gaz carbonique de l’air',
  Stocked: 'Poissons dedans',
  Bottom: 'Bas',
  Doses: 'Doses',
  Readings: 'Mesures',
  Spoon: 'Cuillère',
  Conductivity: 'Conductivité',
  Meter: 'pH-mètre',
  Top: 'Haut de la fenêtre',
  Headings: 'Titres',
  Events: 'Ce qui s’est passé',
  Again: 'Encore',
  'Doses are': 'Les doses sont',
  'Buffer read': 'Tampon lu',
  'Buffer value': 'Valeur du tampon',
  Airing: 'Aération',
  'Alkalinity within': 'Alcalinité à tant près',
  Bucket: 'Seau',
  Stock: 'Solution',
  'Kit step': 'Pas du kit',
  'Meter error': 'Erreur du pH-mètre',
  Jar: 'Bocal',
  Rise: 'Hausse',
  'From purity': 'De pureté',
  'To purity': 'À pureté',
  Carbon: 'Carbone',
  'Volume a': 'Volume A',
  'Volume b': 'Volume B',
  'Alkalinity a': 'Alcalinité A',
  'Alkalinity b': 'Alcalinité B',
  'Temperature a': 'Température A',
  'Temperature b': 'Température B',
  After: 'Après',
  Tank: 'Cuve',
  Last: 'Durée en tout',
  Every: 'Tous les',
  Total: 'Total',
  Limit: 'Limite',
  Salt: 'Sel',
  Altitude: 'Altitude',
  Oxygen: 'Oxygène',
  Saturation: 'Saturation',
  Wanted: 'Voulu',
  Present: 'Présent',
  Before: 'Avant',
  Width: 'Largeur',
  Depth: 'Profondeur',
  Diameter: 'Diamètre',
  Ends: 'Bouts',
  Cone: 'Cône',
  Outlet: 'Sortie',
  'Top length': 'Longueur en haut',
  'Top width': 'Largeur en haut',
  'Bottom length': 'Longueur au fond',
  'Bottom width': 'Largeur au fond',
  Height: 'Hauteur',
  Incoming: 'Eau neuve',
  Method: 'Façon',
  Exchanged: 'Changé',
  Flow: 'Débit',
  Turnovers: 'Renouvellements',
  Time: 'Temps',
  Active: 'Chlore actif',
  Area: 'Surface',
  'Grams of product for the whole volume.': 'Grammes de produit pour tout le volume.',
  'First row: what to do now. Rows below: how it is likely to go on; each new reading changes them.':
    'Première ligne : que faire maintenant. Lignes dessous : la suite probable ; chaque nouvelle mesure les change.',
  'Middle estimates with 5 % and 95 % ends.': 'Estimations du milieu avec bouts de 5 % et 95 %.',
  'Thirteen points from the product given so far upwards.':
    'Treize points depuis le produit donné jusqu’ici, vers le haut.',
  'One row per part-dose.': 'Une ligne par part de dose.',
  'The water after the dose.': 'L’eau après la dose.',
  'Grams for the whole volume, for the pH once aired.':
    'Grammes pour tout le volume, pour le pH une fois aérée.',
  'The trial, row by row; stop as soon as the target is reached.':
    'L’essai, ligne par ligne ; arrêtez dès que le pH voulu est atteint.',
  'For the pH once aired, whether the vat is aired yet or not.':
    'Pour le pH une fois aérée, que le bac soit déjà aéré ou non.',
  'Grams of soda ash by the rule.': 'Grammes de carbonate de soude selon la règle.',
  'The rule held against the solved water; within 0.5 pH it is said to hold.':
    'La règle face à l’eau calculée ; à 0,5 pH près on dit qu’elle tient.',
  'Grams of the other product.': 'Grammes de l’autre produit.',
  'The solved water.': 'L’eau calculée.',
  'The mixture; alkalinity and carbon are conserved, pH is not an average.':
    'Le mélange ; alcalinité et carbone se conservent, le pH n’est pas une moyenne.',
  'pH in balance with the air.': 'pH en équilibre avec l’air.',
  'Alkalinity; negative is mineral acid.': 'Alcalinité ; négative : acide minéral.',
  'pH then.': 'pH alors.',
  'One row per time, from 0.': 'Une ligne par moment, depuis 0.',
  'Calcite saturation; more lime stays as powder.': 'Saturation en calcite ; plus de chaux reste en poudre.',
  'Dissolved CO2.': 'CO2 dissous.',
  'Share of total ammonia nitrogen present as NH3-N.': 'Part de l’azote ammoniacal total présente en N-NH3.',
  'NH3-N; times 1.216 for mg/L of NH3.': 'N-NH3 ; fois 1,216 pour des mg/L de NH3.',
  'Total ammonia nitrogen.': 'Azote ammoniacal total.',
  'The change a rise of pH brings.': 'Le changement qu’apporte une hausse de pH.',
  'Dissolved oxygen at 100 %.': 'Oxygène dissous à 100 %.',
  'Share of saturation; 1 is 100 %.': 'Part de saturation ; 1 fait 100 %.',
  'Dissolved oxygen.': 'Oxygène dissous.',
  'The alkalinity in the unit wanted.': 'L’alcalinité dans l’unité voulue.',
  'The hardness in the unit wanted.': 'La dureté dans l’unité voulue.',
  'Conductivity at 25 °C.': 'Conductivité à 25 °C.',
  'Plain salt, without iodide or anti-caking agent by custom.':
    'Sel simple, sans iode ni antiagglomérant, selon l’usage.',
  'Salt.': 'Sel.',
  'Litres in the vat.': 'Litres du bac.',
  'Level after, same unit.': 'Niveau après, même unité.',
  'Hours per turnover. In a mixed vat 63 % is new water by then.':
    'Heures par renouvellement. Dans un bac mélangé 63 % est alors de l’eau neuve.',
  'Flow.': 'Débit.',
  'One row per published trial.': 'Une ligne par essai publié.',
  'The majority of the trials with that fish and age; relatives are listed, not counted.':
    'La majorité des essais avec ce poisson et cet âge ; les parents sont listés, pas comptés.',
  'The stricter trial decides above 9, where the two disagree.':
    'L’essai le plus strict décide au-dessus de 9, où les deux ne s’accordent pas.',
  'Nothing was found for larvae: stay well below.':
    'Rien n’a été trouvé pour les larves : restez bien dessous.',
  'For clean gear: slime and dirt use the chlorine up.':
    'Pour un matériel propre : mucus et saleté usent le chlore.',
  'Crystals (pentahydrate).': 'Cristaux (pentahydrate).',
  'Spread on wet mud, before filling.': 'Étalé sur la boue humide, avant de remplir.',
  'One row a step.': 'Une ligne par pas.',
  'Total by then': 'Total alors',
  'Write this in the dose column beside the next reading.':
    'Notez ceci dans la colonne de dose, à côté de la prochaine mesure.',
  '5 of 100 readings lie lower.': '5 mesures sur 100 sont plus basses.',
  'At the next reading.': 'À la prochaine mesure.',
  '5 of 100 readings lie higher.': '5 mesures sur 100 sont plus hautes.',
  '"air first", "dose", "wait", "read again", "done", "watch" or "stop".':
    '« air first » (aérer d’abord), « dose » (doser), « wait » (attendre), « read again » (relire), « done » (fini), « watch » (surveiller) ou « stop ».',
  'pH in the air of a shed, or of its own place once aired there; 10 of 100 end lower.':
    'pH dans l’air d’un hangar, ou de son lieu si elle y fut aérée ; 10 sur 100 finissent plus bas.',
  'pH once the carbon dioxide has left.': 'pH quand le gaz carbonique est parti.',
  '5 of 100 end higher.': '5 sur 100 finissent plus haut.',
  'Aired, between the bottom of the window and pH 8; below 0.9 where that range passes either.':
    'Aérée, entre le bas de la fenêtre et pH 8 ; sous 0,9 où cette étendue dépasse l’un ou l’autre.',
  'Of the untouched water.': 'De l’eau d’origine.',
  'Alkalinity at least': 'Alcalinité au moins',
  'Alkalinity at most': 'Alcalinité au plus',
  'Carbon dioxide at least': 'Gaz carbonique au moins',
  'Carbon dioxide at most': 'Gaz carbonique au plus',
  'Meter reads off by': 'Erreur du pH-mètre',
  'Gas lost per step': 'Gaz perdu par pas',
  'Share of the carbon dioxide above that of the air.': 'Part du gaz carbonique au-dessus de celui de l’air.',
  'Chance of organic acids': 'Chance d’acides organiques',
  Misfit: 'Désaccord',
  'In reading errors; above 3 the readings do not go together.':
    'En erreurs de mesure ; au-dessus de 3 les mesures ne vont pas ensemble.',
  'pH once aired': 'pH une fois aérée',
  'With what has been given so far.': 'Avec ce qui fut donné jusqu’ici.',
  'Total product': 'Produit en tout',
  '0 where air alone is enough.': '0 où l’air seul suffit.',
  'pH then': 'pH alors',
  'Right after mixing.': 'Juste après mélange.',
  'Carbon dioxide now': 'Gaz carbonique maintenant',
  'Saturation index now': 'Indice de saturation maintenant',
  'Above 0.5 expect clouding; blank without hardness.':
    'Au-dessus de 0,5 attendez un trouble ; vide sans dureté.',
  'Share dissolved': 'Part dissoute',
  'What follows': 'Ce qui suit',
  '5 of 100 such waters need less.': '5 eaux pareilles sur 100 en demandent moins.',
  '5 of 100 such waters need more.': '5 eaux pareilles sur 100 en demandent plus.',
  'Safe first part': 'Première part sûre',
  'Keeps the chance of passing half a pH above the target at 3 in 100, freshly mixed and aired.':
    'Garde la chance de dépasser le pH voulu d’un demi à 3 sur 100, juste mélangé et aéré.',
  'What this rests on': 'Sur quoi ceci repose',
  '"air first" where air alone may do, otherwise "dose".':
    '« air first » où l’air seul peut suffire, sinon « dose ».',
  'Without product.': 'Sans produit.',
  'pH once the carbon dioxide has left, without product.':
    'pH quand le gaz carbonique est parti, sans produit.',
  'Stock to add': 'Solution à ajouter',
  'Product so far': 'Produit jusqu’ici',
  'Running total, as BUFFER.NEXT wants it with the bucket as the volume.':
    'Total, comme BUFFER.NEXT le veut avec le seau comme volume.',
  'Once aired.': 'Une fois aérée.',
  'Half a kit mark less alkalinity and the meter reading low.':
    'Une demi-marque de kit d’alcalinité en moins et le pH-mètre qui lit bas.',
  'Half a kit mark more alkalinity and the meter reading high.':
    'Une demi-marque de kit d’alcalinité en plus et le pH-mètre qui lit haut.',
  '"air first" or "dose".': '« air first » (aérer d’abord) ou « dose » (doser).',
  'Freshly mixed, with the dose.': 'Juste mélangé, avec la dose.',
  'With the dose, by the errors of the kit.': 'Avec la dose, selon les erreurs du kit.',
  'If the jar reads 0.1 low': 'Si le bocal lit 0,1 trop bas',
  'Dose if its true pH is 0.1 higher.': 'Dose si son vrai pH est de 0,1 plus haut.',
  'If the jar reads 0.1 high': 'Si le bocal lit 0,1 trop haut',
  'Dose if its true pH is 0.1 lower.': 'Dose si son vrai pH est de 0,1 plus bas.',
  'Freshly mixed into a vat aired like the jar.': 'Juste mélangé dans un bac aéré comme le bocal.',
  '"dose", or "done" where the jar stands at the target or above.':
    '« dose » (doser), ou « done » (fini) où le bocal est au pH voulu ou au-dessus.',
  'Rule, per 1000 L': 'Règle, par 1000 L',
  'pH after the rule, now': 'pH après la règle, maintenant',
  'pH after the rule, aired': 'pH après la règle, aérée',
  'Off the target now': 'Écart au pH voulu maintenant',
  'Above 0 is overshoot.': 'Au-dessus de 0 : trop haut.',
  'Off the target aired': 'Écart au pH voulu aérée',
  'Right dose now, per 1000 L': 'Bonne dose maintenant, par 1000 L',
  'Blank when there is none.': 'Vide quand il n’y en a pas.',
  'Total carbon': 'Carbone total',
  'Alkalinity per pH unit': 'Alcalinité par unité de pH',
  'meq/L that move the pH by one unit here; small is touchy.':
    'meq/L qui bougent ici le pH d’une unité ; peu est sensible.',
  'Saturation index': 'Indice de saturation',
  'Above 0 the water can lay down scale; blank without hardness.':
    'Au-dessus de 0 l’eau peut déposer du tartre ; vide sans dureté.',
  'Toxic ammonia N now': 'N ammoniac toxique maintenant',
  'Toxic ammonia N after': 'N ammoniac toxique après',
  'Blank when there is no ammonia.': 'Vide quand il n’y a pas d’ammoniac.',
  'Borne up to': 'Supporté jusqu’à',
  'Blank where the text names no level.': 'Vide où le texte ne nomme pas de niveau.',
  'Harm at': 'Mal à',
  'Killed half or more, or hatched none.': 'A tué la moitié ou plus, ou rien n’a éclos.',
  Exposure: 'Exposition',
  'Trials that bear it': 'Essais qui supportent',
  'Trials that saw harm': 'Essais qui ont vu du mal',
  Which: 'Lesquels',
  'Every trial that says something, relatives too; the one that stands alone is named.':
    'Chaque essai qui dit quelque chose, les parents aussi ; celui qui est seul est nommé.',
  'borne, disputed, harmful or untried.':
    'borne (supporté), disputed (discuté), harmful (nuisible) ou untried (pas essayé).',
  'good, borne, harmful or deadly.': 'good (bon), borne (supporté), harmful (nuisible) ou deadly (mortel).',
  'Toxic part': 'Partie toxique',
  'Un-ionised ammonia nitrogen.': 'Azote ammoniacal non ionisé.',
  'good, harmful or deadly.': 'good (bon), harmful (nuisible) ou deadly (mortel).',
  'For a liquid.': 'Pour un liquide.',
  'Sodium thiosulfate': 'Thiosulfate de sodium',
  'Crystals, to take the chlorine away.': 'Cristaux, pour ôter le chlore.',
  'Fresh and lightly salted water, 0 to 40 °C, up to about 29 g/L of salt':
    'Eau douce et peu salée, 0 à 40 °C, jusqu’à environ 29 g/L de sel',
  'Fresh water, 0 to 40 °C, products that raise pH, up to 40 readings of one dosing':
    'Eau douce, 0 à 40 °C, produits qui montent le pH, jusqu’à 40 mesures d’un dosage',
  'Fresh and lightly salted water, 0 to 40 °C, up to about 29 g/L of salt; nothing precipitates':
    'Eau douce et peu salée, 0 à 40 °C, jusqu’à environ 29 g/L de sel ; rien ne précipite',
  'Fresh water, 0 to 40 °C; what is assumed about carbon dioxide is judgement, not a published figure':
    'Eau douce, 0 à 40 °C ; ce qui est supposé du gaz carbonique est un jugement, pas un chiffre publié',
  'Fresh water, 0 to 40 °C': 'Eau douce, 0 à 40 °C',
  'Fresh water, 0 to 40 °C, pH 5.2 and above': 'Eau douce, 0 à 40 °C, pH 5,2 et plus',
  'Water in balance with the air, 0 to 40 °C': 'Eau en équilibre avec l’air, 0 à 40 °C',
  'Common practice, no source: right for aerated water of pH 4.2 to 5.6 with next to no alkalinity, wrong elsewhere; see BUFFER.RULECHECK':
    'Pratique courante, sans source : juste pour une eau aérée de pH 4,2 à 5,6 presque sans alcalinité, fausse ailleurs ; voir BUFFER.RULECHECK',
  'Fresh water, 0 to 40 °C. The rule is common practice, no source; the check is computed':
    'Eau douce, 0 à 40 °C. La règle est pratique courante, sans source ; le contrôle est calculé',
  'Same alkalinity, which is the same pH once aired; freshly mixed the pH differs, because soda brings carbon and lime does not':
    'Même alcalinité, donc même pH une fois aérée ; juste mélangée le pH diffère, car la soude apporte du carbone et la chaux non',
  'Fresh water, 0 to 40 °C; an alkalinity left out means that water is taken as aerated':
    'Eau douce, 0 à 40 °C ; une alcalinité laissée vide veut dire que l’eau est prise comme aérée',
  'Water in balance with the air; 0.1 pH of error is 26 % of the answer, stale air in a shed up to 0.38 pH':
    'Eau en équilibre avec l’air ; 0,1 pH d’erreur fait 26 % de la réponse, l’air vicié d’un hangar jusqu’à 0,38 pH',
  'Nothing breathes, grows or precipitates; rates by tank type (0.05, 0.3, 2 per hour) are from memory, not measured':
    'Rien ne respire, ne pousse ni ne précipite ; les vitesses par genre de bac (0,05, 0,3, 2 par heure) sont de mémoire, pas mesurées',
  '0 to 40 °C, soft water, days of contact; real lime is slower than that':
    '0 à 40 °C, eau douce, des jours de contact ; le vrai calcaire est plus lent',
  'pH 5.2 and above, 0 to 40 °C; 0.1 pH of error is 26 % of the answer':
    'pH 5,2 et plus, 0 à 40 °C ; 0,1 pH d’erreur fait 26 % de la réponse',
  '0 to 40 °C, sea level': '0 à 40 °C, au niveau de la mer',
  '0 to 40 °C, up to 40 g/L of salt, up to 5000 m': '0 à 40 °C, jusqu’à 40 g/L de sel, jusqu’à 5000 m',
  'Exact; a KH kit measures total alkalinity, a GH kit calcium and magnesium: do not mix the two':
    'Exact ; un kit KH mesure l’alcalinité totale, un kit GH calcium et magnésium : ne mêlez pas les deux',
  '10 to 35 °C; 2 % per °C is from memory': '10 à 35 °C ; 2 % par °C est de mémoire',
  'Exact to 1.6 % up to 30 g/L, where the water swells by the salt; it says nothing about what fish bear (SALT.CHECK)':
    'Exact à 1,6 % jusqu’à 30 g/L, où l’eau gonfle du sel ; cela ne dit rien de ce que supportent les poissons (SALT.CHECK)',
  'Sodium chloride up to 0.5 g/L; 2 % per °C from memory':
    'Chlorure de sodium jusqu’à 0,5 g/L ; 2 % par °C de mémoire',
  'Exact for the shape, inside measures; stones, pipes and dead corners hold less':
    'Exact pour la forme, mesures intérieures ; pierres, tuyaux et coins morts tiennent moins',
  'Anything that only mixes; not for pH (WATER.MIX)':
    'Tout ce qui ne fait que se mélanger ; pas le pH (WATER.MIX)',
  Exact: 'Exact',
  'Exact; time three fills and take the mean': 'Exact ; chronométrez trois remplissages et prenez la moyenne',
  'As reported; other strains, waters and temperatures differ':
    'Comme rapporté ; d’autres souches, eaux et températures diffèrent',
  'African catfish and near kin, hours to weeks; what is borne for days is borne for minutes':
    'Silure africain et proches parents, heures à semaines ; ce qui est supporté des jours l’est des minutes',
  'African catfish, steady pH; between the printed levels the verdict is borne or harmful by judgement':
    'Silure africain, pH stable ; entre les niveaux imprimés le verdict est supporté ou nuisible par jugement',
  'Fresh water; printed for fish of 141 g and for fingerlings, not for larvae':
    'Eau douce ; imprimé pour des poissons de 141 g et des juvéniles, pas pour des larves',
  'Gear and empty vats, never with fish or eggs; 200 mg/L for 30 to 60 minutes or 100 mg/L for hours':
    'Matériel et bacs vides, jamais avec poissons ou œufs ; 200 mg/L pendant 30 à 60 minutes ou 100 mg/L pendant des heures',
  'Free chlorine; chloramine gives ammonia besides, so air and test before use':
    'Chlore libre ; la chloramine donne en plus de l’ammoniac, aérez donc et testez avant usage',
  'Ponds without fish: 1,000 to 2,000 kg a hectare; fill when the pH has come below 9, larvae die above it':
    'Étangs sans poissons : 1 000 à 2 000 kg par hectare ; remplissez quand le pH est passé sous 9, les larves meurent au-dessus',
  'Gear and vats without fish; what is only practice says so':
    'Matériel et bacs sans poissons ; ce qui n’est que pratique le dit',
};

const TIMING: Phrases = {
  'Date and time to strip after an injection, at one water temperature.':
    'Date et heure du stripping après une injection, à une température d’eau.',
  'Date and time to inject so that stripping falls at a wished time.':
    'Date et heure d’injection pour que le stripping tombe à l’heure voulue.',
  'Hours from fertilisation to hatching at one temperature, by species.':
    'Heures de la fécondation à l’éclosion à une température, par espèce.',
  'Date and time the yolk is used up, after hatching: the latest moment to be feeding.':
    'Date et heure où la vésicule est vide, après l’éclosion : le dernier moment pour nourrir.',
  'Clock times of a whole African catfish run, from injection to the end of the yolk.':
    'Heures de toute une ponte de silure africain, de l’injection à la fin de la vésicule.',
  'Date and time a stage ends: the log so far, then the temperature you expect.':
    'Date et heure où finit une étape : le relevé jusqu’ici, puis la température attendue.',
  'When to check, strip and stop, or first and last hatch: the log so far, then the expected water.':
    'Quand regarder, stripper et arrêter, ou première et dernière éclosion : le relevé jusqu’ici, puis l’eau attendue.',
  'Share of a stage done at a time, summed over a temperature log.':
    'Part d’une étape faite à un moment, sommée sur un relevé de température.',
  'Lists what cannot be right in a temperature log: order, gaps, °F, jumps, text.':
    'Liste ce qui ne peut être juste dans un relevé de température : ordre, trous, °F, sauts, texte.',
  'Degree-hours above a base temperature, summed over a temperature log.':
    'Degrés-heures au-dessus d’une température de base, sommés sur un relevé.',
  'Degree-hours above a base temperature at one constant temperature.':
    'Degrés-heures au-dessus d’une température de base à une température constante.',
  'Hours a stage takes at one temperature, from its degree-hours above a base.':
    'Heures que prend une étape à une température, d’après ses degrés-heures au-dessus d’une base.',
  'Base temperature of a stage from its duration at two temperatures.':
    'Température de base d’une étape d’après sa durée à deux températures.',
  'Base temperature and degree-hours of a stage, fitted to your own lots.':
    'Température de base et degrés-heures d’une étape, ajustés à vos propres lots.',
  'Says whether a temperature is good, borderline, poor or deadly for eggs or larvae.':
    'Dit si une température est bonne, limite, mauvaise ou mortelle pour œufs ou larves.',
  'When to look, strip and what was tried, in one sentence for a preparation and a temperature.':
    'Quand regarder, stripper et ce qui fut essayé, en une phrase pour une préparation et une température.',
  'Every trial behind the waiting time of a hormone: hours, temperature, what came of it, source.':
    'Chaque essai derrière le temps d’attente d’une hormone : heures, température, résultat, source.',
  'Every built-in timing table: stage, name, temperatures, hours, standing and source.':
    'Chaque tableau d’heures intégré : étape, nom, températures, heures, fiabilité et source.',
  'The rows of one built-in timing table, to copy and make your own.':
    'Les lignes d’un tableau d’heures intégré, à copier et faire vôtres.',
  'Water temperature, as it stays until then.': 'Température de l’eau, telle qu’elle reste jusque-là.',
  'Hormone preparation; waiting times differ by hours between them. SPAWN.PROFILE.LIST shows them all with their standing.':
    'Préparation hormonale ; les attentes diffèrent d’heures entre elles. SPAWN.PROFILE.LIST les montre toutes avec leur fiabilité.',
  'Temperatures of a table of your own, used in place of the built-in one. The deadly limits of built-in species are not applied to it.':
    'Températures d’un tableau à vous, à la place de celui intégré. Les limites mortelles des espèces intégrées ne s’y appliquent pas.',
  'Hours of your own table, one for each temperature.': 'Heures de votre tableau, une par température.',
  'Date and time of the injection that makes them ovulate.':
    'Date et heure de l’injection qui les fait ovuler.',
  "The hatchery's own correction in hours, learned from past runs: later is positive.":
    'La correction propre à l’écloserie en heures, apprise des pontes passées : plus tard est positif.',
  'Wished date and time of stripping.': 'Date et heure voulues du stripping.',
  "Whose hatching table is used; for a hybrid, the mother's. SPAWN.PROFILE.LIST shows them all with their standing.":
    'De qui est le tableau d’éclosion ; pour un hybride, celui de la mère. SPAWN.PROFILE.LIST les montre tous avec leur fiabilité.',
  'Date and time water was added to eggs and milt.':
    'Date et heure où l’eau fut mise aux œufs et à la laitance.',
  'Date and time most of them had hatched.': 'Date et heure où la plupart avaient éclos.',
  'Whose larvae.': 'De qui sont les larves.',
  'Whose larvae; only African catfish is published here.':
    'De qui sont les larves ; seul le silure africain est publié ici.',
  'Date and time of the injection.': 'Date et heure de l’injection.',
  'Water of the brood fish.': 'Eau des géniteurs.',
  'Water of eggs and larvae; left out, the same.': 'Eau des œufs et larves ; vide : la même.',
  'Date and time of the injection, the fertilisation or the hatch: where the stage begins.':
    'Date et heure de l’injection, de la fécondation ou de l’éclosion : où l’étape commence.',
  'Dates and times of the readings, in order. Any spacing; a row without a reading is left out.':
    'Dates et heures des mesures, dans l’ordre. Tout écart ; une ligne sans mesure est omise.',
  'Water temperature at each of the times.': 'Température de l’eau à chacune des heures.',
  'Temperature expected after the last reading. Left out, the last reading is held for up to longestGap.':
    'Température attendue après la dernière mesure. Vide : la dernière mesure tient jusqu’à longestGap.',
  'Which stretch of the run: latency, incubation, first feed or yolk gone.':
    'Quelle partie de la ponte : latence, incubation, premier aliment ou vésicule vide.',
  'Preparation or species whose table is used; left out, "ready-made solution" for latency and "African catfish" for the others.':
    'Préparation ou espèce dont le tableau sert ; vide : « ready-made solution » pour la latence et « African catfish » pour les autres.',
  'Longest stretch without a reading that is bridged by a straight line; two readings a day are 12 h apart.':
    'Plus long temps sans mesure franchi par une ligne droite ; deux mesures par jour sont à 12 h.',
  'The date and time asked about; NOW() for now.': 'La date et l’heure demandées ; NOW() pour maintenant.',
  'Dates and times of the readings.': 'Dates et heures des mesures.',
  'The readings, as they stand in the log.': 'Les mesures, comme dans le relevé.',
  'Base temperature; nothing counts below it. 15.4 °C for eggs and larvae of African catfish.':
    'Température de base ; rien ne compte dessous. 15,4 °C pour œufs et larves de silure africain.',
  'Count from here; left out, from the first reading.': 'Compter d’ici ; vide : de la première mesure.',
  'Count up to here; left out, to the last reading.': 'Compter jusqu’ici ; vide : à la dernière mesure.',
  'Hours at that temperature.': 'Heures à cette température.',
  'Constant water temperature.': 'Température d’eau constante.',
  'Base temperature, where development stops. 15.4 °C for eggs and larvae of African catfish.':
    'Température de base, où le développement s’arrête. 15,4 °C pour œufs et larves de silure africain.',
  'Degree-hours of the stage above the base.': 'Degrés-heures de l’étape au-dessus de la base.',
  'Hours the stage took there.': 'Heures que l’étape y a pris.',
  'The other temperature.': 'L’autre température.',
  'Mean temperature of each lot.': 'Température moyenne de chaque lot.',
  'Hours each lot took.': 'Heures que chaque lot a pris.',
  'Eggs or larvae.': 'Œufs ou larves.',
  'Whose eggs or larvae.': 'De qui sont les œufs ou larves.',
  'One preparation, or all with those that name none.':
    'Une préparation, ou toutes avec celles qui n’en nomment pas.',
  'One stage, or all.': 'Une étape, ou toutes.',
  Preparation: 'Préparation',
  'Own temperatures': 'Températures propres',
  'Own hours': 'Heures propres',
  Offset: 'Décalage',
  Hatched: 'Éclos',
  'Hatchery temperature': 'Température de l’écloserie',
  Start: 'Début',
  Times: 'Moments',
  Temperatures: 'Températures',
  Stage: 'Étape',
  Profile: 'Tableau',
  'Longest gap': 'Plus long trou',
  Base: 'Base',
  Duration: 'Durée',
  Warmth: 'Degrés-heures',
  Temperature1: 'Température 1',
  Duration1: 'Durée 1',
  Temperature2: 'Température 2',
  Duration2: 'Durée 2',
  Durations: 'Durées',
  Life: 'Stade de vie',
  'Hours from injection to the strip: the middle of the best ones.':
    'Heures de l’injection au stripping : le milieu des meilleures.',
  'When eggs should flow: the middle of a window, see SPAWN.STRIP.WINDOW.':
    'Quand les œufs devraient couler : le milieu d’une fenêtre, voir SPAWN.STRIP.WINDOW.',
  'The window in which trials had good eggs. Strip when eggs run freely at a light press, not before.':
    'La fenêtre où les essais eurent de bons œufs. Strippez quand les œufs coulent librement à une légère pression, pas avant.',
  'When to give the resolving injection.': 'Quand donner l’injection décisive.',
  'Hours until half of them have hatched, about.': 'Heures jusqu’à ce que la moitié ait éclos, environ.',
  'When about half have hatched; SPAWN.HATCH.WINDOW gives the first and the last.':
    'Quand environ la moitié a éclos ; SPAWN.HATCH.WINDOW donne la première et la dernière.',
  'The stretch over which a batch hatches.': 'Le temps sur lequel un lot éclot.',
  'When the first larvae take food, with yolk still left.':
    'Quand les premières larves mangent, avec encore de la vésicule.',
  'When the yolk is gone.': 'Quand la vésicule est vide.',
  'One row for each moment, in order.': 'Une ligne par moment, dans l’ordre.',
  'When eggs flow, the first hatch, larvae first feed, or the yolk is gone.':
    'Quand les œufs coulent, la première éclosion, les larves mangent, ou la vésicule est vide.',
  'The window of SPAWN.STRIP.WINDOW or SPAWN.HATCH.WINDOW for water that changes.':
    'La fenêtre de SPAWN.STRIP.WINDOW ou SPAWN.HATCH.WINDOW pour une eau qui change.',
  'Share done: 1 when the stage is over, more when it is past.':
    'Part faite : 1 quand l’étape est finie, plus quand elle est passée.',
  'One row for each fault; one row that says so when there is none.':
    'Une ligne par faute ; une ligne qui le dit quand il n’y en a pas.',
  'Warmth above the base.': 'Chaleur au-dessus de la base.',
  'Warmth above the base; 0 below it.': 'Chaleur au-dessus de la base ; 0 dessous.',
  'Duration D/(T − base).': 'Durée D/(T − base).',
  'Temperature at which development would stop.': 'Température où le développement s’arrêterait.',
  'Straight line through 1/hours against temperature.': 'Droite de 1/heures selon la température.',
  'A verdict with the range behind it; a deadly temperature is an error that names the limit.':
    'Un verdict avec l’étendue derrière ; une température mortelle est une erreur qui nomme la limite.',
  'Hours after the injection, with a warning where no trial was.':
    'Heures après l’injection, avec un avertissement où aucun essai n’a eu lieu.',
  'One row for each trial, bad ends too.': 'Une ligne par essai, les mauvaises fins aussi.',
  'One row for each table.': 'Une ligne par tableau.',
  'Temperatures and hours, to give back as ownTemperatures and ownHours.':
    'Températures et heures, à rendre comme ownTemperatures et ownHours.',
  'Press gently for eggs from now on, every half hour.':
    'Pressez doucement pour les œufs dès maintenant, chaque demi-heure.',
  Best: 'Au mieux',
  'Middle of the measured or best hours.': 'Milieu des heures mesurées ou les meilleures.',
  'Last tried': 'Dernier essayé',
  'Good eggs were still had then. Nobody tested later well.':
    'On avait alors encore de bons œufs. Personne n’a bien essayé plus tard.',
  Opens: 'S’ouvre',
  'First look for eggs, or first hatch.': 'Premier regard pour les œufs, ou première éclosion.',
  'Strip, or the hour of the table.': 'Stripping, ou l’heure du tableau.',
  Closes: 'Se ferme',
  'Last hour tried for a strip, or last hatch.':
    'Dernière heure essayée pour un stripping, ou dernière éclosion.',
  'Counted from the first filled row.': 'Compté depuis la première ligne remplie.',
  Finding: 'Constat',
  'Warmth sum': 'Somme de chaleur',
  'Share of the variation the straight line explains; published lines have 0.92 to 1.':
    'Part de la variation que la droite explique ; les droites publiées ont 0,92 à 1.',
  'Blank where the text gives no temperature.': 'Vide où le texte ne donne pas de température.',
  'Hours from': 'Heures de',
  'Hours to': 'Heures à',
  'What came of it': 'Ce que cela donna',
  Source: 'Source',
  Name: 'Nom',
  Longest: 'Le plus long',
  Shortest: 'Le plus court',
  Standing: 'Fiabilité',
  'African catfish 20 to 33 °C, thin outside 22.9 to 30.3 °C; larvae die below 18.9 and above 33.2 °C':
    'Silure africain 20 à 33 °C, peu de données hors de 22,9 à 30,3 °C ; les larves meurent sous 18,9 et au-dessus de 33,2 °C',
  'African catfish, 20 to 33 °C, each water constant; thinner below 23 and above 28 °C':
    'Silure africain, 20 à 33 °C, chaque eau constante ; moins de données sous 23 et au-dessus de 28 °C',
  'Every reading used must lie within the rows of the chosen table; silences up to longestGap are bridged by a straight line':
    'Chaque mesure utilisée doit être dans les lignes du tableau choisi ; les silences jusqu’à longestGap sont franchis par une droite',
  'Every reading used must lie within the rows of the chosen table; silences up to longestGap are bridged by a straight line. Windows were published for latency and incubation only':
    'Chaque mesure utilisée doit être dans les lignes du tableau choisi ; les silences jusqu’à longestGap sont franchis par une droite. Des fenêtres furent publiées pour latence et incubation seulement',
  'Any two columns of the same length; nothing is changed':
    'Deux colonnes quelconques de même longueur ; rien n’est changé',
  'Any log; comparable between temperatures only when the base is that of the species and stage':
    'Tout relevé ; comparable entre températures seulement si la base est celle de l’espèce et de l’étape',
  'Constant temperature; for a log use SPAWN.LOG.DEGREE.HOURS':
    'Température constante ; pour un relevé prenez SPAWN.LOG.DEGREE.HOURS',
  'Where rate against temperature is a straight line: the middle of what the species bears':
    'Où la vitesse selon la température est une droite : le milieu de ce que supporte l’espèce',
  'Two constant temperatures inside what the species bears, the further apart the better':
    'Deux températures constantes dans ce que supporte l’espèce, le plus éloignées possible',
  'Lots at steady temperatures inside what the species bears; do not use it beyond them':
    'Des lots à températures stables dans ce que supporte l’espèce ; ne l’utilisez pas au-delà',
  'African catfish eggs and larvae; hatching of Heterobranchus longifilis':
    'Œufs et larves de silure africain ; éclosion d’Heterobranchus longifilis',
  'As SPAWN.STRIP.WINDOW': 'Comme SPAWN.STRIP.WINDOW',
  'As reported, mostly in abstracts; one to four females a trial':
    'Comme rapporté, surtout dans des résumés ; une à quatre femelles par essai',
  'What is built in; a table of your own can take the place of any of them':
    'Ce qui est intégré ; un tableau à vous peut prendre la place de chacun',
  'What is built in': 'Ce qui est intégré',
};

const BROOD: Phrases = {
  'Millilitres of a ready-made hormone solution for one fish, by its weight.':
    'Millilitres d’une solution hormonale prête à l’emploi pour un poisson, selon son poids.',
  'Hormone for one fish by weight, preparation and concentration: amount, unit and mL.':
    'Hormone pour un poisson selon poids, préparation et concentration : quantité, unité et mL.',
  'Dose table for a list of fish: amount, mL, split in two if wished, and the total.':
    'Tableau de doses pour une liste de poissons : quantité, mL, en deux fois au besoin, et le total.',
  'First and second part of a split dose, and when to give the first.':
    'Première et seconde part d’une dose partagée, et quand donner la première.',
  'Vials or packs to buy for the hormone needed, with a spare.':
    'Flacons ou boîtes à acheter pour l’hormone nécessaire, avec une réserve.',
  'Donor fish whose glands treat one fish with the pituitary of its own species.':
    'Poissons donneurs dont les glandes traitent un poisson avec l’hypophyse de son espèce.',
  'Whole number of females to inject for the eggs wanted.':
    'Nombre entier de femelles à injecter pour les œufs voulus.',
  'Females to inject for the eggs wanted, by the published yield of the season.':
    'Femelles à injecter pour les œufs voulus, selon le rendement publié de la saison.',
  'Whole number of females when the eggs or larvae of one female are known.':
    'Nombre entier de femelles quand les œufs ou larves d’une femelle sont connus.',
  'Kilograms of females for the fry wanted, through spawning, hatch and survival.':
    'Kilos de femelles pour les alevins voulus, à travers ponte, éclosion et survie.',
  'Weight and number of eggs to expect from females of a weight.':
    'Poids et nombre d’œufs à attendre de femelles d’un poids.',
  'Millilitres of undiluted milt for a batch of eggs, from sperm per egg.':
    'Millilitres de laitance pure pour un lot d’œufs, d’après les spermatozoïdes par œuf.',
  'Whole number of males whose milt fertilises a batch of eggs.':
    'Nombre entier de mâles dont la laitance féconde un lot d’œufs.',
  'Salt water to keep or spread milt in: millilitres and grams of salt.':
    'Eau salée pour garder ou étaler la laitance : millilitres et grammes de sel.',
  'Effective number of parents (Ne) from numbers of females and males.':
    'Nombre efficace de parents (Ne) d’après les nombres de femelles et de mâles.',
  'Rise of inbreeding per generation from numbers of females and males.':
    'Hausse de consanguinité par génération d’après les nombres de femelles et de mâles.',
  'Inbreeding of a closed stock after some generations.':
    'Consanguinité d’un stock fermé après quelques générations.',
  'Males needed with these females to keep inbreeding below a rate.':
    'Mâles nécessaires avec ces femelles pour garder la consanguinité sous un taux.',
  'A male for every female so that offspring are as little inbred as the labels allow.':
    'Un mâle pour chaque femelle, pour des descendants aussi peu consanguins que les étiquettes le permettent.',
  'Relationship and offspring inbreeding of pairs already chosen, row by row.':
    'Parenté et consanguinité des descendants de couples déjà choisis, ligne par ligne.',
  'Effective parents of a mass lot: pooled eggs and milt that contribute unequally.':
    'Parents efficaces d’un lot de masse : œufs et laitance mêlés qui contribuent inégalement.',
  'Fish to keep from each lot or family so that all contribute as evenly as they can.':
    'Poissons à garder de chaque lot ou famille pour que tous contribuent aussi également que possible.',
  'Grams of formalin solution for a 15-minute egg bath; stops at strengths that kill.':
    'Grammes de solution de formol pour un bain d’œufs de 15 minutes ; s’arrête aux concentrations qui tuent.',
  'Grams of salt for a 15-minute bath of catfish fry; stops at strengths that kill.':
    'Grammes de sel pour un bain de 15 minutes d’alevins de silure ; s’arrête aux concentrations qui tuent.',
  'Every hormone preparation known here: dose, salt water, donors, storage and where it comes from.':
    'Chaque préparation hormonale connue ici : dose, eau salée, donneurs, conservation et d’où cela vient.',
  'Is this female ripe? From belly, eggs, papilla, age and when she last gave.':
    'Cette femelle est-elle mûre ? Selon ventre, œufs, papille, âge et sa dernière ponte.',
  'Can this male be used? From age, papilla and days since part of a testis was taken.':
    'Ce mâle peut-il servir ? Selon âge, papille et jours depuis qu’on a pris une part de testicule.',
  'Millilitres of formalin solution for a 15-minute egg bath; stops at strengths that kill.':
    'Millilitres de solution de formol pour un bain d’œufs de 15 minutes ; s’arrête aux concentrations qui tuent.',
  'Weight of one fish.': 'Poids d’un poisson.',
  'Millilitres per kg of fish, from the leaflet. Published for African catfish: 0.4 to 0.5.':
    'Millilitres par kg de poisson, de la notice. Publié pour le silure africain : 0,4 à 0,5.',
  'What is given. Amounts are in its unit: mL, mg, IU or µg.':
    'Ce qui est donné. Les quantités sont dans son unité : mL, mg, IU ou µg.',
  'Amount per kg of fish in the unit of the preparation. Left out: 0.5 mL, 4 mg catfish or carp or 8 mg tilapia pituitary, 3000 IU hCG, 40 or 30 µg LHRHa.':
    'Quantité par kg de poisson dans l’unité de la préparation. Vide : 0,5 mL, 4 mg d’hypophyse de silure ou carpe ou 8 mg de tilapia, 3000 IU hCG, 40 ou 30 µg LHRHa.',
  'Amount in each mL of what is in the syringe (mg, µg or IU per mL); not needed for a solution dosed by volume.':
    'Quantité dans chaque mL de ce qui est dans la seringue (mg, µg ou IU par mL) ; inutile pour une solution dosée au volume.',
  'Weight of each fish.': 'Poids de chaque poisson.',
  'Tag or name of each fish; left out, they are numbered.':
    'Marque ou nom de chaque poisson ; vide : ils sont numérotés.',
  'Share given in a first, preparatory injection; 0 for a single one. 10 % was published for migrants of South America.':
    'Part donnée dans une première injection préparatoire ; 0 pour une seule. 10 % fut publié pour des migrateurs d’Amérique du Sud.',
  'The whole dose in any unit.': 'Toute la dose dans toute unité.',
  'Share given first.': 'Part donnée d’abord.',
  'Date and time of the second, resolving injection.': 'Date et heure de la seconde injection, la décisive.',
  'Hours between the two.': 'Heures entre les deux.',
  'Total needed, in mL, mg or IU.': 'Total nécessaire, en mL, mg ou IU.',
  'What one vial holds, in the same unit.': 'Ce que tient un flacon, dans la même unité.',
  'Share on top for drops left in the syringe and fish heavier than planned.':
    'Part en plus pour les gouttes restées dans la seringue et les poissons plus lourds que prévu.',
  'Good stock left, in the same unit.': 'Bon stock restant, dans la même unité.',
  'Weight of one donor.': 'Poids d’un donneur.',
  'Weight of donors ÷ weight of the fish injected.': 'Poids des donneurs ÷ poids du poisson injecté.',
  'Eggs wanted.': 'Œufs voulus.',
  'Body weight of one female, or their mean.': 'Poids du corps d’une femelle, ou leur moyenne.',
  'Stripped egg weight as a share of body weight. Published for African catfish: 14.3 % in the rains, 1.3 % in the dry season.':
    'Poids des œufs strippés en part du poids du corps. Publié pour le silure africain : 14,3 % aux pluies, 1,3 % en saison sèche.',
  'Eggs per gram of eggs, counted in a sample; not per gram of fish. Published for African catfish: 435 to 1176, mean 669.':
    'Œufs par gramme d’œufs, comptés dans un échantillon ; pas par gramme de poisson. Publié pour le silure africain : 435 à 1176, moyenne 669.',
  'Share of injected females that give eggs. Published: 87.5 to 100 %.':
    'Part des femelles injectées qui donnent des œufs. Publié : 87,5 à 100 %.',
  'Rainy or dry season.': 'Saison des pluies ou sèche.',
  'Eggs per gram of eggs. Published: 435 to 1176, mean 669.':
    'Œufs par gramme d’œufs. Publié : 435 à 1176, moyenne 669.',
  'Eggs or larvae wanted.': 'Œufs ou larves voulus.',
  'Eggs or larvae one female gives.': 'Œufs ou larves que donne une femelle.',
  'Fry wanted.': 'Alevins voulus.',
  'Eggs per kg of female. Published when stripped: 28,000 to 37,600 for African catfish, 100,000 to 200,000 for common carp.':
    'Œufs par kg de femelle. Publié au stripping : 28 000 à 37 600 pour le silure africain, 100 000 à 200 000 pour la carpe commune.',
  'Share of eggs that hatch.': 'Part des œufs qui éclosent.',
  'Share of the hatched that live to be fry.': 'Part des éclos qui deviennent alevins.',
  'Females injected.': 'Femelles injectées.',
  'Eggs to fertilise.': 'Œufs à féconder.',
  'Sperm per mL of undiluted milt. Published counts differ ten-fold: 5.6E9 to 6.5E9 and 3.8E10 to 9.7E10.':
    'Spermatozoïdes par mL de laitance pure. Les comptages publiés vont de un à dix : 5,6E9 à 6,5E9 et 3,8E10 à 9,7E10.',
  'Sperm for each egg.': 'Spermatozoïdes pour chaque œuf.',
  'Share of sperm that swim. Published: 40 % in males under 1 kg, 82 % above 1.5 kg.':
    'Part des spermatozoïdes qui nagent. Publié : 40 % chez des mâles sous 1 kg, 82 % au-dessus de 1,5 kg.',
  'Milt one male gives. Published: 0.21 to 1.3 mL at 0.57 kg, 2.2 mL at 1.2 kg.':
    'Laitance que donne un mâle. Publié : 0,21 à 1,3 mL à 0,57 kg, 2,2 mL à 1,2 kg.',
  'Undiluted milt.': 'Laitance pure.',
  'Parts of diluent to one part of milt.': 'Parts de diluant pour une part de laitance.',
  'Females whose offspring are kept.': 'Femelles dont on garde les descendants.',
  'Males whose offspring are kept.': 'Mâles dont on garde les descendants.',
  'Inbreeding of the stock already, if known.': 'Consanguinité du stock déjà là, si connue.',
  'Generations bred within the farm.': 'Générations élevées dans la ferme.',
  'Inbreeding at the start.': 'Consanguinité au début.',
  'Highest rise of inbreeding per generation. Advice: 0.5 to 1 %.':
    'Plus forte hausse de consanguinité par génération. Conseil : 0,5 à 1 %.',
  'Tags of the females.': 'Marques des femelles.',
  'Family of each, or "line/family"; blank or ? when unknown.':
    'Famille de chacun, ou « lignée/famille » ; vide ou ? si inconnue.',
  'Tags of the males.': 'Marques des mâles.',
  'Females one male may serve; his milt is divided between them.':
    'Femelles qu’un mâle peut servir ; sa laitance se partage entre elles.',
  'Of the female. Family of each, or "line/family"; blank or ? when unknown.':
    'De la femelle. Famille de chacune, ou « lignée/famille » ; vide ou ? si inconnue.',
  'Of the male. Family of each, or "line/family"; blank or ? when unknown.':
    'Du mâle. Famille de chacun, ou « lignée/famille » ; vide ou ? si inconnue.',
  'Eggs (or grams of eggs) from each female of the lot.':
    'Œufs (ou grammes d’œufs) de chaque femelle du lot.',
  'Milt from each male of the lot, in mL or as a share of offspring.':
    'Laitance de chaque mâle du lot, en mL ou en part des descendants.',
  'Fish there are in each lot.': 'Poissons qu’il y a dans chaque lot.',
  'Future brood fish wanted in all.': 'Futurs géniteurs voulus en tout.',
  'Name of each lot; left out, they are numbered.': 'Nom de chaque lot ; vide : ils sont numérotés.',
  'Water of the bath.': 'Eau du bain.',
  'Milligrams of formalin solution (37 % formaldehyde) per litre of bath.':
    'Milligrammes de solution de formol (37 % de formaldéhyde) par litre de bain.',
  'What is bathed.': 'Ce qui est baigné.',
  'Length of the bath; the trials used 15 minutes.': 'Durée du bain ; les essais prenaient 15 minutes.',
  'Grams of salt per litre of bath.': 'Grammes de sel par litre de bain.',
  'Age of the fry.': 'Âge des alevins.',
  'Weight of all fish to be injected together.': 'Poids de tous les poissons à injecter ensemble.',
  'Weight of one donor, for glands of the own species.':
    'Poids d’un donneur, pour des glandes de la même espèce.',
  'One, or all.': 'Une, ou toutes.',
  'Number of eggs; or give grams.': 'Nombre d’œufs ; ou donnez les grammes.',
  'Weight of stripped eggs, if they were not counted.':
    'Poids des œufs strippés, s’ils ne furent pas comptés.',
  'Eggs in a gram: 669 if left out.': 'Œufs dans un gramme : 669 si laissé vide.',
  'Width of one net or frame, m.': 'Largeur d’un filet ou cadre, m.',
  'Length of one net or frame, m.': 'Longueur d’un filet ou cadre, m.',
  'TRUE when the belly is soft and swollen.': 'TRUE si le ventre est mou et gonflé.',
  'TRUE when eggs come at a light press.': 'TRUE si des œufs sortent à une légère pression.',
  'TRUE when they are of one size with a small dark spot.':
    'TRUE s’ils sont d’une taille avec un petit point sombre.',
  'TRUE when the papilla is red or swollen.': 'TRUE si la papille est rouge ou gonflée.',
  'Days since she last gave eggs.': 'Jours depuis sa dernière ponte.',
  'Age in days.': 'Âge en jours.',
  'Egg across, mm, if measured.': 'Diamètre d’un œuf, mm, si mesuré.',
  'TRUE when the papilla is long and pointed.': 'TRUE si la papille est longue et pointue.',
  'Days since part of a testis was taken and the fish sewn.':
    'Jours depuis qu’on a pris une part de testicule et recousu le poisson.',
  'Milligrams of formalin solution per litre of bath.':
    'Milligrammes de solution de formol par litre de bain.',
  Weight: 'Poids',
  Concentration: 'Concentration',
  Weights: 'Liste des poids',
  Tags: 'Marques',
  'First share': 'Première part',
  Second: 'Seconde',
  Gap: 'Écart',
  'Per vial': 'Par flacon',
  'Donor weight': 'Poids du donneur',
  Ratio: 'Rapport',
  'Egg share': 'Part d’œufs',
  Spawning: 'Qui pondent',
  Season: 'Saison',
  'Per female': 'Par femelle',
  'Eggs per kilogram': 'Œufs par kilo',
  'Sperm density': 'Densité du sperme',
  'Sperm per egg': 'Sperme par œuf',
  Motile: 'Mobiles',
  'Milt per male': 'Laitance par mâle',
  Parts: 'Parts de diluant',
  Inbreeding: 'Consanguinité',
  Generations: 'Générations',
  'Female families': 'Familles des femelles',
  'Male families': 'Familles des mâles',
  'Females per male': 'Femelles par mâle',
  Available: 'Disponibles',
  Lots: 'Liste des lots',
  Strength: 'Concentration du bain',
  Minutes: 'Minutes',
  Grams: 'Grammes',
  'Net width': 'Largeur du filet',
  'Net length': 'Longueur du filet',
  Belly: 'Ventre',
  Even: 'Égaux',
  Papilla: 'Papille',
  Age: 'Âge',
  Egg: 'Œuf',
  Sewn: 'Recousu',
  'Volume to inject.': 'Volume à injecter.',
  'What one fish gets. A column of weights spills one row for each.':
    'Ce que reçoit un poisson. Une colonne de poids étale une ligne pour chacun.',
  'One row for each fish and a last row with the total.':
    'Une ligne par poisson et une dernière avec le total.',
  'Parts in the unit given; latency counts from the second.':
    'Parts dans l’unité donnée ; la latence compte depuis la seconde.',
  'Whole vials to buy.': 'Flacons entiers à acheter.',
  'Whole donors.': 'Donneurs entiers.',
  'Females to inject, rounded up.': 'Femelles à injecter, arrondi vers le haut.',
  'Whole females for the mean yield, and for nine seasons in ten.':
    'Femelles entières pour le rendement moyen, et pour neuf saisons sur dix.',
  'Females, rounded up.': 'Femelles, arrondi vers le haut.',
  'Weight of females.': 'Poids des femelles.',
  'From all of them together.': 'De toutes ensemble.',
  'Males, at least one.': 'Mâles, au moins un.',
  'Diluent of 9 g salt per litre.': 'Diluant de 9 g de sel par litre.',
  'Parents the stock behaves as if it had, half of each sex.':
    'Parents comme s’en conduit le stock, moitié de chaque sexe.',
  'Share per generation, 1/(2 Ne).': 'Part par génération, 1/(2 Ne).',
  'Inbreeding coefficient at the end.': 'Coefficient de consanguinité à la fin.',
  'Whole males, each with offspring kept.': 'Mâles entiers, chacun avec des descendants gardés.',
  'One row for each female, in the order given. The sum of inbreeding is the least there is.':
    'Une ligne par femelle, dans l’ordre donné. La somme de consanguinité est la plus petite qui soit.',
  'One row for each pair; female and male are shown by their labels.':
    'Une ligne par couple ; femelle et mâle sont montrés par leurs étiquettes.',
  'Parents that count, and the rise of inbreeding if the next generation comes from this lot alone.':
    'Parents qui comptent, et la hausse de consanguinité si la prochaine génération vient de ce lot seul.',
  'One row for each lot.': 'Une ligne par lot.',
  'Formalin solution as bought, by weight.': 'Solution de formol comme achetée, au poids.',
  'Plain salt.': 'Sel simple.',
  'For all the fish; add a fifth for what stays in mortar and syringe.':
    'Pour tous les poissons ; ajoutez un cinquième pour ce qui reste dans mortier et seringue.',
  'One row for each.': 'Une ligne pour chacune.',
  'For eggs in a single layer.': 'Pour des œufs en une seule couche.',
  'A list of signs, not a measurement.': 'Une liste de signes, pas une mesure.',
  'Formalin solution as bought (37 %).': 'Solution de formol comme achetée (37 %).',
  'Blank when a powder has no concentration yet.': 'Vide quand une poudre n’a pas encore de concentration.',
  Antagonist: 'Antagoniste',
  'Dopamine antagonist that goes with LHRHa.': 'Antagoniste de la dopamine qui va avec LHRHa.',
  First: 'Première',
  'First part': 'Première part',
  'Second part': 'Seconde part',
  'Give the first at': 'Donner la première à',
  'For nine seasons in ten': 'Pour neuf saisons sur dix',
  'Females differ: this many are enough in nine of ten.':
    'Les femelles diffèrent : tant suffisent dans neuf sur dix.',
  'Weight of females': 'Poids des femelles',
  Diluent: 'Diluant',
  'Plain sodium chloride without additives.': 'Chlorure de sodium simple, sans additifs.',
  Relationship: 'Parenté',
  'Offspring inbreeding': 'Consanguinité des descendants',
  'Blank when unknown.': 'Vide si inconnue.',
  Advice: 'Conseil',
  'Effective females': 'Femelles efficaces',
  'Effective males': 'Mâles efficaces',
  'Inbreeding rate': 'Taux de consanguinité',
  'There are': 'Il y a',
  Keep: 'Garder',
  'Salt water': 'Eau salée',
  'Of 9 g/L, boiled and cooled; none for a ready-made solution.':
    'De 9 g/L, bouillie et refroidie ; aucune pour une solution prête à l’emploi.',
  'Salt in it': 'Sel dedans',
  'In the syringe': 'Dans la seringue',
  'Millilitres for each kg of fish.': 'Millilitres par kg de poisson.',
  Donors: 'Donneurs',
  'Whole fish; blank unless the glands are of the own species.':
    'Poissons entiers ; vide sauf si les glandes sont de la même espèce.',
  'Dose per kg': 'Dose par kg',
  'Donors per kg': 'Donneurs par kg',
  'Waiting time seen': 'Attente vue',
  Storage: 'Conservation',
  'At 20 eggs on a square centimetre.': 'À 20 œufs par centimètre carré.',
  Better: 'Mieux',
  Nets: 'Filets',
  'Of your size; blank without it.': 'De votre taille ; vide sans elle.',
  Mesh: 'Maille',
  'Lets larvae through and holds shells; 0.5 mm holds larvae back.':
    'Laisse passer les larves et retient les coques ; 0,5 mm retient les larves.',
  'Standing water': 'Eau calme',
  'At 300 eggs a litre; flowing water takes far more.':
    'À 300 œufs par litre ; une eau courante en prend bien plus.',
  'ready, wait or look again.': 'ready (mûre), wait (attendre) ou look again (regarder encore).',
  'African catfish at 0.4 to 0.5 mL/kg, single injection; carps were given 0.25 to 0.80 mL/kg':
    'Silure africain à 0,4 à 0,5 mL/kg, une injection ; des carpes reçurent 0,25 à 0,80 mL/kg',
  'Published for South American migrants, 10 % then 90 % after 12 h; African catfish needs one injection only':
    'Publié pour des migrateurs d’Amérique du Sud, 10 % puis 90 % après 12 h ; le silure africain ne demande qu’une injection',
  'Any packed hormone; one tenth as a spare is common practice, no source':
    'Toute hormone emballée ; un dixième de réserve est pratique courante, sans source',
  'African catfish; 1.5 kg of donors per kg of fish, latency 12 h at 28 °C and 20 h at 22 °C':
    'Silure africain ; 1,5 kg de donneurs par kg de poisson, latence 12 h à 28 °C et 20 h à 22 °C',
  'Any egg yield; it changes 11-fold over the year, so use the season, or your own last strips':
    'Tout rendement en œufs ; il change 11 fois dans l’année, prenez donc la saison, ou vos derniers strippings',
  'African catfish in a wet and dry tropical year: stripped eggs 14.3 % of body weight in the rains, 1.3 % in the dry season; females taken to differ by 30 and 40 %':
    'Silure africain dans une année tropicale humide et sèche : œufs strippés 14,3 % du poids du corps aux pluies, 1,3 % en saison sèche ; les femelles sont supposées différer de 30 et 40 %',
  'Any species': 'Toute espèce',
  'Any egg yield; yields differ widely between females, so weigh and count what you strip':
    'Tout rendement en œufs ; il diffère beaucoup entre femelles, pesez et comptez donc ce que vous strippez',
  'African catfish, 3,000 sperm per egg or more; best at 15,000 (80 % fertilised), more than that partly hinders':
    'Silure africain, 3 000 spermatozoïdes par œuf ou plus ; au mieux à 15 000 (80 % fécondés), plus gêne en partie',
  'Milt was kept 1:5 at 4 °C in a medium with 150 mM sodium chloride (8.8 g/L) and other salts; plain 0.9 % salt water is the simple stand-in':
    'La laitance fut gardée 1:5 à 4 °C dans un milieu à 150 mM de chlorure de sodium (8,8 g/L) et d’autres sels ; une eau salée simple à 0,9 % est le remplaçant simple',
  'Every parent contributes about alike; not where the same males are used again and again, and pooled milt counts as fewer males':
    'Chaque parent contribue à peu près autant ; pas où les mêmes mâles servent sans cesse, et une laitance mêlée compte pour moins de mâles',
  'Every parent contributes about alike; not where the same males are used again and again, and pooled milt counts as fewer males; the same numbers every generation and no new blood':
    'Chaque parent contribue à peu près autant ; pas où les mêmes mâles servent sans cesse, et une laitance mêlée compte pour moins de mâles ; les mêmes nombres à chaque génération et pas de sang neuf',
  'Up to 300 females and 300 males; as good as the labels':
    'Jusqu’à 300 femelles et 300 mâles ; aussi bon que les étiquettes',
  'As good as the labels': 'Aussi bon que les étiquettes',
  'Every parent contributes about alike; not where the same males are used again and again, and pooled milt counts as fewer males. Equal volumes of milt do not mean equal offspring: one of several males usually dominates (from memory)':
    'Chaque parent contribue à peu près autant ; pas où les mêmes mâles servent sans cesse, et une laitance mêlée compte pour moins de mâles. Des volumes égaux de laitance ne veulent pas dire des descendants égaux : l’un des mâles domine d’ordinaire (de mémoire)',
  'Lots that are one family each; 30 to 50 from each of 50 pairs or more keep inbreeding near 1 %':
    'Des lots qui sont chacun une famille ; 30 à 50 de chacun de 50 couples ou plus gardent la consanguinité près de 1 %',
  'Eggs of African catfish, up to 250 mg/L for 15 minutes. 500 mg/L and more killed every egg':
    'Œufs de silure africain, jusqu’à 250 mg/L pendant 15 minutes. 500 mg/L et plus tuèrent chaque œuf',
  'African catfish and hybrids from hatch to weaned fry, up to 4 g/L for 15 minutes':
    'Silure africain et hybrides de l’éclosion à l’alevin sevré, jusqu’à 4 g/L pendant 15 minutes',
  'What is built in; doses are per kg of female, males need none for milt from the testis':
    'Ce qui est intégré ; les doses sont par kg de femelle, les mâles n’en demandent pas pour la laitance du testicule',
  'African catfish; signs are practice, egg size and age from trials':
    'Silure africain ; les signes sont de la pratique, taille d’œuf et âge d’essais',
  'African catfish, milt from the testis': 'Silure africain, laitance du testicule',
  'Eggs of African catfish, up to 250 mg/L for 15 minutes; better none. 500 mg/L and more killed every egg':
    'Œufs de silure africain, jusqu’à 250 mg/L pendant 15 minutes ; mieux aucun. 500 mg/L et plus tuèrent chaque œuf',
};

const COUNTING: Phrases = {
  'Number of eggs from their volume (settled or displaced) and a few measured and counted samples, with an interval.':
    'Nombre d’œufs d’après leur volume (déposé ou déplacé) et quelques échantillons mesurés et comptés, avec un intervalle.',
  'Number of fry or fingerlings from their total weight and a few weighed and counted samples, with an interval.':
    'Nombre d’alevins ou de juvéniles d’après leur poids total et quelques échantillons pesés et comptés, avec un intervalle.',
  'How far chance alone could move one count: the Poisson interval of a number counted once.':
    'Jusqu’où le hasard seul peut déplacer un comptage : l’intervalle de Poisson d’un nombre compté une fois.',
  'Share k of n (fertilised, hatched, alive …) with its Wilson interval: how far chance alone could have moved it.':
    'Part de k sur n (fécondés, éclos, vivants …) avec son intervalle de Wilson : jusqu’où le hasard seul a pu la déplacer.',
  'Share of fertilised eggs that hatched, from counted eggs, with its Wilson interval.':
    'Part des œufs fécondés qui ont éclos, d’œufs comptés, avec son intervalle de Wilson.',
  'Share of fish still alive, from the number stocked and the number now, with its Wilson interval.':
    'Part des poissons encore vivants, du nombre mis en bac et du nombre actuel, avec son intervalle de Wilson.',
  'Share from several separate samples, with an interval that widens when the samples disagree.':
    'Part d’après plusieurs échantillons séparés, avec un intervalle qui s’élargit quand ils ne s’accordent pas.',
  'Are two hatch, fertilisation or survival shares really different? Difference, interval and a verdict in words.':
    'Deux parts d’éclosion, de fécondation ou de survie diffèrent-elles vraiment ? Différence, intervalle et verdict en mots.',
  'Do two females (or two runs) really differ in eggs per gram? Difference, interval and a verdict in words.':
    'Deux femelles (ou deux pontes) diffèrent-elles vraiment en œufs par gramme ? Différence, intervalle et verdict en mots.',
  'How many eggs or fish to look at so that a share is known to within a wished plus-or-minus.':
    'Combien d’œufs ou de poissons regarder pour connaître une part à tant près.',
  'How many weighed samples to count so that the number of eggs or fish is known to within a wished share.':
    'Combien d’échantillons pesés compter pour connaître le nombre d’œufs ou de poissons à telle part près.',
  'A start number times the counted shares of several stages, with the uncertainty of every stage carried along.':
    'Un nombre de départ fois les parts comptées de plusieurs étapes, avec l’incertitude de chacune.',
  'Counting fish out by weight: what to weigh for an order, for each bag, with something on top.':
    'Compter des poissons au poids : que peser pour une commande, pour chaque sac, avec un peu en plus.',
  'Weight of all eggs, water drained or blotted the same way as the samples.':
    'Poids de tous les œufs, eau égouttée ou épongée comme pour les échantillons.',
  'Weight of each sample, one per row.': 'Poids de chaque échantillon, un par ligne.',
  'Eggs counted in each sample, in the same rows.':
    'Œufs comptés dans chaque échantillon, sur les mêmes lignes.',
  'How sure the interval should be: 95% if left out.':
    'Combien l’intervalle doit être sûr : 95% si laissé vide.',
  'Volume of all eggs, measured the same way as the samples.':
    'Volume de tous les œufs, mesuré comme les échantillons.',
  'Volume of each sample, one per row.': 'Volume de chaque échantillon, un par ligne.',
  'Volume of each sample, one per row, in millilitres.':
    'Volume de chaque échantillon, un par ligne, en millilitres.',
  'Larvae counted in each sample, in the same rows.':
    'Larves comptées dans chaque échantillon, sur les mêmes lignes.',
  'Weight of all fish, drained the same way as the samples.':
    'Poids de tous les poissons, égouttés comme les échantillons.',
  'Weight of each sample of fish, one per row.': 'Poids de chaque échantillon de poissons, un par ligne.',
  'Fish counted in each sample, in the same rows.':
    'Poissons comptés dans chaque échantillon, sur les mêmes lignes.',
  'Number counted.': 'Nombre compté.',
  'How many in the sample have the mark: fertilised, hatched, alive.':
    'Combien dans l’échantillon ont la marque : fécondés, éclos, vivants.',
  'How many were looked at in all.': 'Combien furent regardés en tout.',
  'TRUE adds a continuity correction: a wider, more careful interval.':
    'TRUE ajoute une correction de continuité : un intervalle plus large, plus prudent.',
  'Eggs in the sample that are fertilised.': 'Œufs de l’échantillon qui sont fécondés.',
  'All eggs in the sample, dead ones too.': 'Tous les œufs de l’échantillon, les morts aussi.',
  'Larvae that hatched from those eggs.': 'Larves écloses de ces œufs.',
  'Fertilised eggs that were followed. Give all eggs instead if you want the hatch of all eggs.':
    'Œufs fécondés qui furent suivis. Donnez tous les œufs si vous voulez l’éclosion de tous.',
  'Fish alive now.': 'Poissons vivants maintenant.',
  'Fish at the start.': 'Poissons au début.',
  'How many in each sample have the mark, one per row.':
    'Combien dans chaque échantillon ont la marque, un par ligne.',
  'How many were looked at in each sample, in the same rows.':
    'Combien furent regardés dans chaque échantillon, sur les mêmes lignes.',
  'First run: how many hatched (or fertilised, alive).':
    'Première ponte : combien ont éclos (ou fécondés, vivants).',
  'First run: out of how many.': 'Première ponte : sur combien.',
  'Second run: how many.': 'Seconde ponte : combien.',
  'Second run: out of how many.': 'Seconde ponte : sur combien.',
  'Weights of the samples of the first female or run, two or more.':
    'Poids des échantillons de la première femelle ou ponte, deux ou plus.',
  'Eggs counted in those samples of the first.': 'Œufs comptés dans ces échantillons de la première.',
  'Weights of the samples of the second female or run, two or more.':
    'Poids des échantillons de la seconde femelle ou ponte, deux ou plus.',
  'Eggs counted in those samples of the second.': 'Œufs comptés dans ces échantillons de la seconde.',
  'Wished precision: 5% means plus or minus 5 points.':
    'Précision voulue : 5% veut dire plus ou moins 5 points.',
  'Share you expect. 50% if left out, which asks for the most.':
    'Part attendue. 50% si laissée vide, ce qui demande le plus.',
  'Number in the whole lot, if it is small.': 'Nombre de tout le lot, s’il est petit.',
  'Weights (or volumes) of the samples already taken.': 'Poids (ou volumes) des échantillons déjà pris.',
  'Counts of those samples.': 'Comptages de ces échantillons.',
  'Wished precision as a share of the answer: 10% if left out.':
    'Précision voulue en part de la réponse : 10% si laissée vide.',
  'Number at the start: eggs, larvae.': 'Nombre au début : œufs, larves.',
  "Of each stage's sample, how many came through; one stage per row.":
    'De l’échantillon de chaque étape, combien sont passés ; une étape par ligne.',
  "How many were in each stage's sample, in the same rows.":
    'Combien étaient dans l’échantillon de chaque étape, sur les mêmes lignes.',
  'Low end of the start number, if it is an estimate itself.':
    'Bout bas du nombre de départ, s’il est lui-même une estimation.',
  'High end of the start number.': 'Bout haut du nombre de départ.',
  'Fish the buyer pays.': 'Poissons que l’acheteur paie.',
  'Fish counted in the sample: 200 or more.': 'Poissons comptés dans l’échantillon : 200 ou plus.',
  'Weight of that sample, without water.': 'Poids de cet échantillon, sans eau.',
  'Given on top: 5% if left out (practice, from memory).':
    'Donné en plus : 5% si laissé vide (pratique, de mémoire).',
  'Bags or buckets it is divided into.': 'Sacs ou seaux en lesquels c’est partagé.',
  'What you weigh at a time: 500 g if left out.': 'Ce que vous pesez à la fois : 500 g si laissé vide.',
  'Total weight': 'Poids total',
  'Sample weights': 'Poids des échantillons',
  'Sample counts': 'Comptes des échantillons',
  Confidence: 'Certitude',
  'Total volume': 'Volume total',
  'Sample volumes': 'Volumes des échantillons',
  Successes: 'Réussites',
  Sample: 'Échantillon',
  Continuity: 'Continuité',
  Samples: 'Échantillons',
  'First successes': 'Premières réussites',
  'First sample': 'Premier échantillon',
  'Second successes': 'Secondes réussites',
  'Second sample': 'Second échantillon',
  'First weights': 'Premiers poids',
  'First counts': 'Premiers comptes',
  'Second weights': 'Seconds poids',
  'Second counts': 'Seconds comptes',
  'Half width': 'À tant près',
  Lot: 'Le lot',
  Sizes: 'Tailles',
  'Start low': 'Départ, bas',
  'Start high': 'Départ, haut',
  Ordered: 'Commandés',
  'Sample fish': 'Poissons de l’échantillon',
  'Sample grams': 'Grammes de l’échantillon',
  Bags: 'Sacs',
  'Tray grams': 'Grammes par pesée',
  'Eggs in the whole spawn with its interval, eggs per gram, and what the interval rests on.':
    'Œufs de toute la ponte avec leur intervalle, œufs par gramme, et sur quoi repose l’intervalle.',
  'Eggs in the whole lot with its interval, eggs per millilitre, and what the interval rests on.':
    'Œufs de tout le lot avec leur intervalle, œufs par millilitre, et sur quoi repose l’intervalle.',
  'Larvae in the vat with its interval, larvae per litre, and what the interval rests on.':
    'Larves du bac avec leur intervalle, larves par litre, et sur quoi repose l’intervalle.',
  'Fish in the lot with its interval, mean weight of one fish, and what the interval rests on.':
    'Poissons du lot avec leur intervalle, poids moyen d’un poisson, et sur quoi repose l’intervalle.',
  'The two ends for the true mean behind the count.':
    'Les deux bouts pour la vraie moyenne derrière le comptage.',
  'The share and the two ends of its interval, never outside 0 to 100 %.':
    'La part et les deux bouts de son intervalle, jamais hors de 0 à 100 %.',
  'Share fertilised and the two ends of its interval.': 'Part fécondée et les deux bouts de son intervalle.',
  'Share hatched and the two ends of its interval.': 'Part éclose et les deux bouts de son intervalle.',
  'Share alive and the two ends of its interval.': 'Part vivante et les deux bouts de son intervalle.',
  'The pooled share, its interval, and whether the samples clump.':
    'La part commune, son intervalle, et si les échantillons s’agglutinent.',
  'Difference of the two shares, its interval, and what it means.':
    'Différence des deux parts, son intervalle, et ce qu’elle veut dire.',
  'Difference in eggs per gram, its interval, and what it means.':
    'Différence en œufs par gramme, son intervalle, et ce qu’elle veut dire.',
  'How many to look at.': 'Combien en regarder.',
  'Samples of that size needed in all, and the relative spread found so far.':
    'Échantillons de cette taille nécessaires en tout, et l’écart relatif trouvé jusqu’ici.',
  'Number that comes through all stages, its interval, and the share of the start.':
    'Nombre qui passe toutes les étapes, son intervalle, et la part du départ.',
  'By weight, from one sample.': 'Au poids, d’un échantillon.',
  'Interval from': 'Intervalle de',
  'Larvae per litre': 'Larves par litre',
  'In words': 'En mots',
  'First − second': 'Première − seconde',
  'Samples in all': 'Échantillons en tout',
  'Spread of one sample': 'Écart d’un échantillon',
  'Share of start': 'Part du départ',
  'Fish to weigh out': 'Poissons à peser',
  'With what is given on top.': 'Avec ce qui est donné en plus.',
  'Each bag': 'Chaque sac',
  'Full trays': 'Plateaux pleins',
  And: 'Et',
  'In the last tray.': 'Dans le dernier plateau.',
  Miscount: 'Erreur de compte',
  'About this far off, nine times in ten, from the sample alone.':
    'Environ à tant près, neuf fois sur dix, de l’échantillon seul.',
  'Lot and samples measured the same way (both settled, or both by displacement)':
    'Lot et échantillons mesurés de la même façon (tous déposés, ou tous par déplacement)',
  'Samples dipped from all over the lot; big fish escape the net first':
    'Des échantillons pris dans tout le lot ; les gros poissons fuient le filet d’abord',
  'Things spread at random; clumping makes the true interval wider':
    'Des choses réparties au hasard ; si elles s’agglutinent le vrai intervalle est plus large',
  'Counted independently; clumped eggs from one spot make the true interval wider':
    'Comptés indépendamment ; des œufs agglutinés d’un seul endroit élargissent le vrai intervalle',
  'Both numbers counted on the same eggs': 'Les deux nombres comptés sur les mêmes œufs',
  'Both numbers really counted; if they are estimates, carry them with SPAWN.STAGES.PRODUCT':
    'Les deux nombres vraiment comptés ; si ce sont des estimations, portez-les avec SPAWN.STAGES.PRODUCT',
  'Samples from different spots or trays of one lot':
    'Des échantillons de différents endroits ou plateaux d’un lot',
  'Two independent samples; two vats also differ for reasons no count can see':
    'Deux échantillons indépendants ; deux bacs diffèrent aussi pour des raisons qu’aucun comptage ne voit',
  'Two or more samples of each; samples blotted alike':
    'Deux échantillons ou plus de chacun ; échantillons épongés pareil',
  "A fair sample; the interval meant is Wilson's": 'Un échantillon loyal ; l’intervalle est celui de Wilson',
  'More samples of the same size as those already taken':
    'D’autres échantillons de la même taille que ceux déjà pris',
  'Each stage counted on its own sample': 'Chaque étape comptée sur son propre échantillon',
  'Fish of one grade; a sample from start, middle and end of the catch':
    'Poissons d’un tri ; un échantillon du début, du milieu et de la fin de la pêche',
};

const REARING: Phrases = {
  'Water, salt and vessels to hatch Artemia cysts: 5 g per litre below 20 L, 2 g per litre in larger vessels.':
    'Eau, sel et récipients pour éclore des cystes d’artémia : 5 g par litre sous 20 L, 2 g par litre dans de plus grands.',
  'Nauplii per gram of cysts in your own tin, from counted samples of a hatch, with an interval.':
    'Nauplies par gramme de cystes de votre boîte, d’après des échantillons comptés d’une éclosion, avec un intervalle.',
  'Hatching percentage of cysts: free nauplii of all that could have hatched, with its Wilson interval.':
    'Pourcentage d’éclosion des cystes : nauplies libres de tout ce qui pouvait éclore, avec son intervalle de Wilson.',
  'Dry weight of nauplii that a gram of cysts gives: the yield that compares tins of different strains.':
    'Poids sec de nauplies que donne un gramme de cystes : le rendement qui compare des boîtes de souches différentes.',
  'How evenly cysts hatch: hours from 10 % to 90 % of the final hatch, from readings through the night.':
    'Combien les cystes éclosent ensemble : heures de 10 % à 90 % de l’éclosion finale, d’après les mesures de la nuit.',
  'Bleach, caustic soda and water to take the shells off Artemia cysts (figures from memory).':
    'Javel, soude caustique et eau pour ôter la coque des cystes d’artémia (chiffres de mémoire).',
  'Live food and dry feed day by day from first feeding, with the cysts to hatch for each day.':
    'Proies vivantes et aliment sec jour par jour depuis le premier aliment, avec les cystes à éclore chaque jour.',
  'Feed for one day: number of fish × mean weight × ration.':
    'Aliment d’un jour : nombre de poissons × poids moyen × ration.',
  'Daily ration at a weight (and temperature) from your own table, between its rows, never beyond it.':
    'Ration du jour à un poids (et une température) d’après votre propre tableau, entre ses lignes, jamais au-delà.',
  'Feed table day by day: fish left, mean weight, ration, meals, grams a meal, running total and bags.':
    'Tableau d’aliment jour par jour : poissons restants, poids moyen, ration, repas, grammes par repas, total et sacs.',
  'How many eggs or fish a vat or pond may hold, by stage, at the published density or your own.':
    'Combien d’œufs ou de poissons un bac ou étang peut tenir, par stade, à la densité publiée ou à la vôtre.',
  'How many vats or ponds a number of eggs or fish needs, by stage.':
    'Combien de bacs ou d’étangs demande un nombre d’œufs ou de poissons, par stade.',
  'Is this vat or pond too full? Density, the published one, and a verdict in words.':
    'Ce bac ou cet étang est-il trop plein ? Densité, celle publiée, et un verdict en mots.',
  'Weight of fish per volume of water, kg per cubic metre.':
    'Poids de poisson par volume d’eau, kg par mètre cube.',
  'Oxygen that growing African catfish use in an hour, by number and weight, at 28 °C.':
    'Oxygène que des silures africains en croissance utilisent en une heure, selon nombre et poids, à 28 °C.',
  "Oxygen that a day's feed takes out of the water in the end: fish, bacteria and wastes together.":
    'Oxygène que l’aliment d’un jour prend à l’eau en tout : poissons, bactéries et déchets ensemble.',
  "Total ammonia nitrogen that a day's feed puts into the water, and the most it could be.":
    'Azote ammoniacal total que l’aliment d’un jour met dans l’eau, et le plus qu’il peut être.',
  'Water flow that brings the fish their oxygen.': 'Débit d’eau qui apporte aux poissons leur oxygène.',
  'Water flow that keeps toxic ammonia below the limit, from the ammonia made, pH and temperature.':
    'Débit d’eau qui garde l’ammoniac toxique sous la limite, selon l’ammoniac produit, le pH et la température.',
  'Feed conversion ratio, biological and economic: feed given per weight gained.':
    'Indice de consommation, biologique et économique : aliment donné par poids gagné.',
  'Specific growth rate from two mean weights: percent per day.':
    'Croissance spécifique d’après deux poids moyens : pour cent par jour.',
  'Weight gained per fish and day.': 'Poids gagné par poisson et par jour.',
  'Mean weight after some days at a steady growth rate.':
    'Poids moyen après quelques jours à une croissance constante.',
  'Days from one mean weight to another at a steady growth rate.':
    'Jours d’un poids moyen à un autre à une croissance constante.',
  'Growth rate that a ration can give at your feed conversion ratio: a check on a feed plan.':
    'Croissance qu’une ration peut donner à votre indice de consommation : un contrôle d’un plan d’aliment.',
  'Thermal growth coefficient from two mean weights, the days and the mean temperature between them.':
    'Coefficient thermique de croissance d’après deux poids moyens, les jours et la température moyenne entre eux.',
  'Mean weight after some days at a mean temperature, from the thermal growth coefficient.':
    'Poids moyen après quelques jours à une température moyenne, d’après le coefficient thermique de croissance.',
  'Days from one mean weight to another at a mean temperature, from the thermal growth coefficient.':
    'Jours d’un poids moyen à un autre à une température moyenne, d’après le coefficient thermique de croissance.',
  'Daily survival behind a total one: the even share that stays alive each day.':
    'Survie journalière derrière une survie totale : la part égale qui vit chaque jour.',
  'Fish left after some days at an even daily survival.':
    'Poissons restants après quelques jours à une survie journalière égale.',
  'Survival behind a harvest: fish harvested, from total and mean weight, over fish stocked.':
    'Survie derrière une récolte : poissons récoltés, d’après poids total et moyen, sur poissons mis en bac.',
  'Size spread of a weighed sample: mean, deviation, coefficient of variation, smallest and largest.':
    'Écart de taille d’un échantillon pesé : moyenne, écart type, coefficient de variation, le plus petit et le plus grand.',
  'How a weighed sample falls into grading classes: number, share and mean weight of each.':
    'Comment un échantillon pesé se range en classes de tri : nombre, part et poids moyen de chacune.',
  'Dates on which to grade, from first feeding until cannibalism has faded.':
    'Dates où trier, du premier aliment jusqu’à ce que le cannibalisme passe.',
  'When cannibalism begins and fades in African catfish, counted from first feeding.':
    'Quand le cannibalisme commence et passe chez le silure africain, compté depuis le premier aliment.',
  'What kind of cannibalism to expect at a mean length.':
    'Quel genre de cannibalisme attendre à une longueur moyenne.',
  'Condition factor from weight and length: how plump a fish is.':
    'Coefficient de condition d’après poids et longueur : combien un poisson est gras.',
  'Safe load of a transport tank at another temperature, from a load you know to be safe.':
    'Charge sûre d’un bac de transport à une autre température, d’après une charge que vous savez sûre.',
  'Stocking densities of published trials with African catfish and what came of them.':
    'Densités d’essais publiés avec le silure africain et ce qu’elles ont donné.',
  'Weight of a larva by day of feeding: ordinary and plentiful feeding, or as your weighing says.':
    'Poids d’une larve par jour d’aliment : ordinaire et abondant, ou selon vos pesées.',
  'Rations and meals of published trials with African catfish, and what came of them.':
    'Rations et repas d’essais publiés avec le silure africain, et ce qu’ils ont donné.',
  'Power cut or air gone: what to do first, in order.':
    'Coupure de courant ou d’air : que faire d’abord, dans l’ordre.',
  'Fish for one sealed bag with oxygen, by size, hours and temperature.':
    'Poissons pour un sac fermé avec oxygène, selon taille, heures et température.',
  'Dead fish to expect in bags on arrival, and how many to pack so that the order arrives alive.':
    'Poissons morts à attendre dans les sacs à l’arrivée, et combien en mettre pour que la commande arrive vivante.',
  'Larvae to feed.': 'Larves à nourrir.',
  'Nauplii per larva per day. Your own figure: no published rate for African catfish was found.':
    'Nauplies par larve et par jour. Votre propre chiffre : aucun taux publié pour le silure africain n’a été trouvé.',
  'Hatching efficiency, nauplii per gram of dry cysts: 230,600 (one published strain) if left out. Measure your own tin with SPAWN.CYSTS.EFFICIENCY.':
    'Rendement d’éclosion, nauplies par gramme de cystes secs : 230 600 (une souche publiée) si laissé vide. Mesurez votre boîte avec SPAWN.CYSTS.EFFICIENCY.',
  'Share of the hatched nauplii that reach the larvae: 80% if left out (common practice, no source).':
    'Part des nauplies éclos qui arrivent aux larves : 80% si laissée vide (pratique courante, sans source).',
  'Dry cysts put in.': 'Cystes secs mis.',
  'Water in one of your vessels. Left out: one vessel of the size needed.':
    'Eau d’un de vos récipients. Vide : un récipient de la taille qu’il faut.',
  'Salt in the hatching water: 25 g/L if left out.': 'Sel de l’eau d’éclosion : 25 g/L si laissé vide.',
  'Temperature of the hatching water: 27 °C if left out; best 25 to 28.':
    'Température de l’eau d’éclosion : 27 °C si laissée vide ; au mieux 25 à 28.',
  'Nauplii counted in each sample, one per row.': 'Nauplies comptés dans chaque échantillon, un par ligne.',
  'Volume of each sample.': 'Volume de chaque échantillon.',
  'Water the hatch stands in.': 'Eau de l’éclosion.',
  'Free-swimming nauplii in the sample.': 'Nauplies nageant librement dans l’échantillon.',
  'Nauplii still hanging in their membrane (umbrella stage).':
    'Nauplies encore pendus à leur membrane (stade parapluie).',
  'Full cysts that did not hatch, made visible by dissolving the shells.':
    'Cystes pleins qui n’ont pas éclos, rendus visibles en dissolvant les coques.',
  'Nauplii per gram of cysts (SPAWN.CYSTS.EFFICIENCY).':
    'Nauplies par gramme de cystes (SPAWN.CYSTS.EFFICIENCY).',
  'Dry weight of one nauplius, in micrograms (strains lie near 2 to 4).':
    'Poids sec d’un nauplie, en microgrammes (les souches sont près de 2 à 4).',
  'Hours since the cysts went into water, rising.': 'Heures depuis la mise à l’eau des cystes, croissantes.',
  'Nauplii counted (or share hatched) at each reading, in the same rows.':
    'Nauplies comptés (ou part éclose) à chaque mesure, sur les mêmes lignes.',
  'Active chlorine in the bleach, g per litre, from its label (household bleach is often near 40).':
    'Chlore actif de la javel, g par litre, de son étiquette (la javel ménagère est souvent près de 40).',
  'Larvae that begin to feed.': 'Larves qui commencent à manger.',
  'Nauplii per larva per day while live food is all they get. Your own figure.':
    'Nauplies par larve et par jour tant qu’elles n’ont que des proies vivantes. Votre propre chiffre.',
  'How many days to list: 12 if left out.': 'Combien de jours lister : 12 si laissé vide.',
  'Date of first feeding. Left out, the date column stays blank.':
    'Date du premier aliment. Vide : la colonne de dates reste vide.',
  'Share of the larvae still alive after the last day: 100% if left out.':
    'Part des larves encore vivantes après le dernier jour : 100% si laissée vide.',
  'Days of live food alone: 5 if left out.': 'Jours de proies vivantes seules : 5 si laissé vide.',
  'Days over which dry feed takes over: 6 if left out, so day 8 is half and half.':
    'Jours où l’aliment sec prend la place : 6 si laissé vide, le jour 8 est donc moitié-moitié.',
  'Number of fish.': 'Nombre de poissons.',
  'Mean weight of one fish, from a sample weighed now.':
    'Poids moyen d’un poisson, d’un échantillon pesé maintenant.',
  'Feed per day as a share of the weight of the fish: 5% or 0.05.':
    'Aliment par jour en part du poids des poissons : 5% ou 0,05.',
  'Weights in your table, one per row.': 'Poids de votre tableau, un par ligne.',
  'Ration at each of those rows, as a share of body weight per day.':
    'Ration à chacune de ces lignes, en part du poids du corps par jour.',
  'Water temperature, if your table has one.': 'Température de l’eau, si votre tableau en a une.',
  'Temperature of each row, if your table depends on it.':
    'Température de chaque ligne, si votre tableau en dépend.',
  'Dry matter of the fish. Left out: by weight, 12% in larvae, 18% at 1 g, 25% from 50 g (assumed).':
    'Matière sèche du poisson. Vide : selon le poids, 12% chez les larves, 18% à 1 g, 25% dès 50 g (supposé).',
  'How many days to list.': 'Combien de jours lister.',
  'Growth rate in % per day (SPAWN.GROWTH.SGR from your own two weighings).':
    'Croissance en % par jour (SPAWN.GROWTH.SGR de vos deux pesées).',
  'Feed per day as a share of body weight. Leave blank when you give your own table.':
    'Aliment par jour en part du poids du corps. Laissez vide si vous donnez votre tableau.',
  'Date of the first day. Left out, the date column stays blank.':
    'Date du premier jour. Vide : la colonne de dates reste vide.',
  'Share of the fish still alive after the last day: 100% if left out.':
    'Part des poissons encore vivants après le dernier jour : 100% si laissée vide.',
  'Meals a day: 3 if left out (published for fingerlings; fry grew best at 5 to 6).':
    'Repas par jour : 3 si laissé vide (publié pour juvéniles ; les alevins grandissaient le mieux à 5 à 6).',
  'Weight of one bag of feed: 15 kg if left out.': 'Poids d’un sac d’aliment : 15 kg si laissé vide.',
  'Your own ration table: fish weights.': 'Votre tableau de rations : poids des poissons.',
  'Your own ration table: ration at each of those weights.':
    'Votre tableau de rations : ration à chacun de ces poids.',
  'Mean water temperature of the days, if your table depends on it.':
    'Température moyenne de l’eau ces jours-là, si votre tableau en dépend.',
  'Your own ration table: temperature of each row.':
    'Votre tableau de rations : température de chaque ligne.',
  'What is stocked: eggs (standing water), fry in tanks, larvae in ponds, fingerlings in ponds.':
    'Ce qui est mis : œufs (eau calme), alevins en bacs, larves en étangs, juvéniles en étangs.',
  'Size of one vat in litres (eggs, fry), or of one pond in m² (larvae and fingerlings in ponds).':
    'Taille d’un bac en litres (œufs, alevins), ou d’un étang en m² (larves et juvéniles en étangs).',
  'Your own density, per litre or per m². Left out: the published one for the stage.':
    'Votre densité, par litre ou par m². Vide : celle publiée pour le stade.',
  'Eggs or fish to place.': 'Œufs ou poissons à placer.',
  'Eggs or fish in it.': 'Œufs ou poissons dedans.',
  'Feed given in a day.': 'Aliment donné en un jour.',
  'Oxygen per weight of feed: 1.25 if left out (Boyd, for general use).':
    'Oxygène par poids d’aliment : 1,25 si laissé vide (Boyd, usage général).',
  'Protein in the feed, from the bag: 45% or 0.45.': 'Protéines de l’aliment, du sac : 45% ou 0,45.',
  'Ammonia nitrogen per weight of protein fed: 0.092 if left out (from memory, recirculating systems).':
    'Azote ammoniacal par poids de protéines données : 0,092 si laissé vide (de mémoire, systèmes en circuit fermé).',
  'Share of the nitrogen that stays in the fish: 20% if left out (published 20 to 30% in ponds).':
    'Part de l’azote qui reste dans le poisson : 20% si laissée vide (publié 20 à 30% en étangs).',
  'Oxygen used in an hour (SPAWN.OXYGEN.USE, or your own measurement).':
    'Oxygène utilisé en une heure (SPAWN.OXYGEN.USE, ou votre mesure).',
  'Oxygen in the water coming in.': 'Oxygène de l’eau qui entre.',
  'Least oxygen you allow in the water going out: 5 mg/L if left out.':
    'Moins d’oxygène admis dans l’eau qui sort : 5 mg/L si laissé vide.',
  'Total ammonia nitrogen made in a day (SPAWN.AMMONIA.MADE).':
    'Azote ammoniacal total produit en un jour (SPAWN.AMMONIA.MADE).',
  'pH in the vat.': 'pH du bac.',
  'Highest un-ionised ammonia nitrogen: 0.34 mg/L if left out, found for catfish of 141 g. Larvae may need less.':
    'Plus haut azote ammoniacal non ionisé : 0,34 mg/L si laissé vide, trouvé pour des silures de 141 g. Les larves en veulent peut-être moins.',
  'Total ammonia nitrogen in the water coming in: none if left out.':
    'Azote ammoniacal total de l’eau qui entre : aucun si laissé vide.',
  'Feed given over the time.': 'Aliment donné pendant ce temps.',
  'Weight of all fish at the start.': 'Poids de tous les poissons au début.',
  'Weight of all living fish at the end.': 'Poids de tous les poissons vivants à la fin.',
  'Weight of the fish that died or were taken out: none if left out.':
    'Poids des poissons morts ou sortis : aucun si laissé vide.',
  'Mean weight of one fish at the start.': 'Poids moyen d’un poisson au début.',
  'Mean weight of one fish at the end.': 'Poids moyen d’un poisson à la fin.',
  'Days between the two weighings.': 'Jours entre les deux pesées.',
  'Specific growth rate, % per day.': 'Croissance spécifique, % par jour.',
  'Days from the start.': 'Jours depuis le début.',
  'Mean weight you want.': 'Poids moyen voulu.',
  'Feed per day as a share of body weight.': 'Aliment par jour en part du poids du corps.',
  'Feed given per weight gained, from your own records.': 'Aliment donné par poids gagné, de vos relevés.',
  'Mean water temperature over the days.': 'Température moyenne de l’eau pendant ces jours.',
  'Form of the coefficient: 1000 (if left out) or 100. Both are in use; say which when you compare.':
    'Forme du coefficient : 1000 (si laissée vide) ou 100. Les deux servent ; dites laquelle quand vous comparez.',
  'Thermal growth coefficient from your own two weighings, in the same form.':
    'Coefficient thermique de croissance de vos deux pesées, dans la même forme.',
  'Mean water temperature to come.': 'Température moyenne de l’eau à venir.',
  'Fish alive at the end.': 'Poissons vivants à la fin.',
  'Days between the two counts.': 'Jours entre les deux comptages.',
  'Share alive from one day to the next (SPAWN.SURVIVAL.DAILY).':
    'Part vivante d’un jour au suivant (SPAWN.SURVIVAL.DAILY).',
  'Weight of all fish harvested.': 'Poids de tous les poissons récoltés.',
  'Weight of each fish in the sample, one per row.':
    'Poids de chaque poisson de l’échantillon, un par ligne.',
  'Class limits, rising; a fish at a limit goes into the upper class.':
    'Limites des classes, croissantes ; un poisson à une limite va dans la classe du dessus.',
  'Date and time of first feeding.': 'Date et heure du premier aliment.',
  'Days between gradings: 14 if left out.': 'Jours entre deux tris : 14 si laissé vide.',
  'Last day after first feeding to grade on: 47 if left out.':
    'Dernier jour de tri après le premier aliment : 47 si laissé vide.',
  'Mean total length of the fish.': 'Longueur totale moyenne des poissons.',
  'Weight of the fish.': 'Poids du poisson.',
  'Length in centimetres; say whether total or fork length.':
    'Longueur en centimètres ; dites si totale ou à la fourche.',
  'Load known to be safe for this tank and trip.': 'Charge connue comme sûre pour ce bac et ce trajet.',
  'Water temperature of that trip.': 'Température de l’eau de ce trajet.',
  'Water temperature now.': 'Température de l’eau maintenant.',
  'Which rows: all, eggs, tanks or ponds. All if left out.':
    'Quelles lignes : toutes, œufs, bacs ou étangs. Toutes si laissé vide.',
  'Days since the first feed.': 'Jours depuis le premier aliment.',
  'Mean weight of 50 to 100 larvae weighed together, g.':
    'Poids moyen de 50 à 100 larves pesées ensemble, g.',
  'Day of feeding on which they were weighed: day 5 to 7 tells best.':
    'Jour d’aliment où elles furent pesées : le jour 5 à 7 dit le mieux.',
  'Which rows: all, fry, larvae or fingerlings. All if left out.':
    'Quelles lignes : toutes, alevins, larves ou juvéniles. Toutes si laissé vide.',
  'Dry feed given in a day.': 'Aliment sec donné en un jour.',
  'pH in the vat: 7 if left out.': 'pH du bac : 7 si laissé vide.',
  'Protein in the feed: 45% if left out.': 'Protéines de l’aliment : 45% si laissé vide.',
  'Most un-ionised ammonia nitrogen: 0.05 mg/L if left out; larvae are unknown.':
    'Plus d’azote ammoniacal non ionisé : 0,05 mg/L si laissé vide ; pour les larves c’est inconnu.',
  'TRUE where air runs day and night: then oxygen asks for no water.':
    'TRUE où l’air marche jour et nuit : alors l’oxygène ne demande pas d’eau.',
  'Fish in it, for the oxygen.': 'Poissons dedans, pour l’oxygène.',
  'Mean weight of one, g, for the oxygen.': 'Poids moyen d’un, g, pour l’oxygène.',
  'Oxygen when the air stops: 7 mg/L if left out.': 'Oxygène quand l’air s’arrête : 7 mg/L si laissé vide.',
  'What is in the vat.': 'Ce qui est dans le bac.',
  'Length of the fish, if measured; else worked out from weight.':
    'Longueur du poisson, si mesurée ; sinon calculée du poids.',
  'Fish alive in the morning, as well as you know.': 'Poissons vivants le matin, aussi bien que vous savez.',
  'Days since hatching.': 'Jours depuis l’éclosion.',
  'Dead counted today, eaten ones not among them.': 'Morts comptés aujourd’hui, sans ceux qui furent mangés.',
  'Dead counted the day before.': 'Morts comptés la veille.',
  'First full day of food, in days since hatching: 3 if left out; later in cool water.':
    'Premier jour plein d’aliment, en jours depuis l’éclosion : 3 si laissé vide ; plus tard dans une eau fraîche.',
  'Water in one bag: a quarter of it, oxygen in the rest.':
    'Eau d’un sac : un quart de celui-ci, oxygène pour le reste.',
  'From closing the bag to opening it.': 'De la fermeture du sac à son ouverture.',
  'Water in the bag: 27 °C if left out.': 'Eau du sac : 27 °C si laissée vide.',
  'Fish to be sent, for the number of bags.': 'Poissons à envoyer, pour le nombre de sacs.',
  'Fish the buyer wants alive.': 'Poissons que l’acheteur veut vivants.',
  'Fish in a litre of bag water.': 'Poissons dans un litre d’eau du sac.',
  Larvae: 'Larves',
  'Nauplii per larva': 'Nauplies par larve',
  'Nauplii per gram': 'Nauplies par gramme',
  Harvest: 'Récolte',
  Vessel: 'Récipient',
  Salinity: 'Salinité',
  'Sample volume': 'Volume d’un échantillon',
  Nauplii: 'Nauplies',
  Umbrella: 'Parapluies',
  Unhatched: 'Non éclos',
  'Per gram': 'Par gramme',
  Nauplius: 'Nauplie',
  Chlorine: 'Chlore',
  'Live only': 'Proies seules',
  Mixed: 'Mélange',
  'Table weights': 'Poids du tableau',
  'Table rations': 'Rations du tableau',
  'Table temperatures': 'Températures du tableau',
  'Dry matter': 'Matière sèche',
  Growth: 'Croissance',
  Meals: 'Repas',
  Bag: 'Sac',
  Protein: 'Protéines',
  Coefficient: 'Coefficient',
  Use: 'Usage',
  Inflow: 'Entrée',
  Outflow: 'Eau qui sort',
  Made: 'Produit par jour',
  'Start weight': 'Poids au début',
  'End weight': 'Poids à la fin',
  'Dead weight': 'Poids des morts',
  End: 'Fin',
  Conversion: 'Indice de consommation',
  Scale: 'Échelle',
  Limits: 'Limites',
  'First feeding': 'Premier aliment donné',
  Interval: 'Intervalle',
  Load: 'Charge',
  Known: 'Connu',
  Weighed: 'Pesée',
  'Weighed day': 'Jour de la pesée',
  Aerated: 'Aéré',
  Yesterday: 'Hier',
  Food: 'Aliment',
  Hours: 'Heures',
  'Per litre': 'Par litre',
  'Dry cysts to put in to hatch.': 'Cystes secs à mettre à éclore.',
  'Water in all, cysts per litre, whole vessels, salt, and the most baking soda to keep the pH above 8.':
    'Eau en tout, cystes par litre, récipients entiers, sel, et le plus de bicarbonate pour garder le pH au-dessus de 8.',
  'Hatching efficiency with its interval, and what the interval rests on.':
    'Rendement d’éclosion avec son intervalle, et sur quoi repose l’intervalle.',
  'Dry nauplii per gram of cysts; about 600 mg is best quality.':
    'Nauplies secs par gramme de cystes ; environ 600 mg est la meilleure qualité.',
  'Hours to 10 %, to 90 %, and between them.': 'Heures jusqu’à 10 %, jusqu’à 90 %, et entre les deux.',
  'Bleach, caustic soda (sodium hydroxide), final volume and the water that makes it up.':
    'Javel, soude caustique (hydroxyde de sodium), volume final et l’eau qui le complète.',
  'One row a day from first feeding. Set the cysts about a day before.':
    'Une ligne par jour depuis le premier aliment. Mettez les cystes environ un jour avant.',
  'Feed for the day.': 'Aliment du jour.',
  'Ration as a share of body weight per day.': 'Ration en part du poids du corps par jour.',
  'Dry food eaten per wet body weight and day.': 'Aliment sec mangé par poids de corps mouillé et par jour.',
  'One row a day.': 'Une ligne par jour.',
  'Number for one vat or pond.': 'Nombre pour un bac ou étang.',
  'Whole vats or ponds.': 'Bacs ou étangs entiers.',
  'Density, the most a trial recommended, their ratio, and all that the trials saw.':
    'Densité, le plus qu’un essai recommande, leur rapport, et tout ce que les essais ont vu.',
  'Weight of fish in a cubic metre of water.': 'Poids de poisson dans un mètre cube d’eau.',
  'Oxygen used by all the fish in an hour.': 'Oxygène utilisé par tous les poissons en une heure.',
  'Oxygen in a day.': 'Oxygène en un jour.',
  'Usual amount, and all nitrogen that does not stay in the fish.':
    'Quantité habituelle, et tout l’azote qui ne reste pas dans le poisson.',
  'Counting what died, and counting only what is left to sell.':
    'En comptant ce qui est mort, et en ne comptant que ce qui reste à vendre.',
  'Growth in % per day; negative if the fish lost weight.':
    'Croissance en % par jour ; négative si les poissons ont maigri.',
  'Gain of one fish per day.': 'Gain d’un poisson par jour.',
  'Mean weight.': 'Poids moyen.',
  'Days to that weight.': 'Jours jusqu’à ce poids.',
  'Growth in % per day.': 'Croissance en % par jour.',
  'Coefficient, in the chosen form.': 'Coefficient, dans la forme choisie.',
  'Share alive from one day to the next.': 'Part vivante d’un jour au suivant.',
  'Fish left; round down before you promise them.':
    'Poissons restants ; arrondissez vers le bas avant de promettre.',
  'Share of the stocked fish that was harvested.': 'Part des poissons mis en bac qui fut récoltée.',
  'The sample in figures, and what one published trial saw.':
    'L’échantillon en chiffres, et ce qu’un essai publié a vu.',
  'One row per class; the last has no upper limit.':
    'Une ligne par classe ; la dernière n’a pas de limite haute.',
  'One row per grading.': 'Une ligne par tri.',
  'About 3.5 and 47 days after first feeding, at 8 and 80 mm of length.':
    'Environ 3,5 et 47 jours après le premier aliment, à 8 et 80 mm de long.',
  'In words.': 'En mots.',
  '100 × weight ÷ length cubed.': '100 × poids ÷ longueur au cube.',
  'Load that is as safe at the new temperature.': 'Charge aussi sûre à la nouvelle température.',
  'Two published paths and the one your fish are on.': 'Deux chemins publiés et celui où sont vos poissons.',
  'Spread over the day; much at once is a shock.': 'Réparti sur la journée ; beaucoup d’un coup est un choc.',
  'In still water at 28 °C; what comes in through the surface is left out.':
    'En eau calme à 28 °C ; ce qui entre par la surface n’est pas compté.',
  'In this order.': 'Dans cet ordre.',
  'Start low; stop when grains lie on the floor.':
    'Commencez bas ; arrêtez quand des grains restent au fond.',
  'From survivals in print, at an even rate.': 'De survies imprimées, à un rythme égal.',
  'One trial bag overnight first.': 'D’abord un sac d’essai pendant une nuit.',
  'A figure to plan with; count the dead of every trip and use your own.':
    'Un chiffre pour planifier ; comptez les morts de chaque trajet et prenez le vôtre.',
  Vessels: 'Récipients',
  'Baking soda up to': 'Bicarbonate jusqu’à',
  Spread: 'Étalement',
  Bleach: 'Javel',
  'Caustic soda': 'Soude caustique',
  'Solution in all': 'Solution en tout',
  'Salt water to add': 'Eau salée à ajouter',
  'Live food': 'Proies vivantes',
  'A meal': 'Un repas',
  'Fed so far': 'Donné jusqu’ici',
  'Bags opened': 'Sacs ouverts',
  'Most recommended': 'Le plus recommandé',
  'Of that': 'De cela',
  Code: 'Code',
  'thin, within or above.': 'thin (clair), within (dedans) ou above (au-dessus).',
  'Ammonia nitrogen': 'Azote ammoniacal',
  Biological: 'Biologique',
  Economic: 'Économique',
  Mean: 'Moyenne',
  Deviation: 'Écart type',
  Variation: 'Variation',
  Smallest: 'Le plus petit',
  Largest: 'Le plus grand',
  Grading: 'Tri',
  Begins: 'Commence',
  Fades: 'Passe',
  Ordinary: 'Ordinaire',
  Plenty: 'Abondant',
  'Artemia in surplus, warm water.': 'Artémia en surplus, eau chaude.',
  'As weighed; until then the ordinary one.': 'Selon la pesée ; d’ici là l’ordinaire.',
  'In a day: the larger of the two.': 'En un jour : le plus grand des deux.',
  'Of the vat': 'Du bac',
  'For ammonia': 'Pour l’ammoniac',
  'For oxygen': 'Pour l’oxygène',
  '0 where air runs.': '0 où l’air marche.',
  'Act within': 'Agir en',
  'Half the time to the danger level.': 'La moitié du temps jusqu’au niveau de danger.',
  'At 4 mg/L after': 'À 4 mg/L après',
  'At 3 mg/L after': 'À 3 mg/L après',
  'Danger for fry.': 'Danger pour les alevins.',
  'Grain from': 'Grain de',
  'Grain to': 'Grain à',
  'Meals from': 'Repas de',
  'Meals to': 'Repas à',
  'Ration eaten': 'Ration mangée',
  'Dry feed of body weight a day, 28 °C.': 'Aliment sec du poids du corps par jour, 28 °C.',
  'Usual from': 'Habituel de',
  'Usual to': 'Habituel à',
  'Lost today': 'Perdus aujourd’hui',
  'usual, look or act; blank without a count.':
    'usual (habituel), look (regarder) ou act (agir) ; vide sans comptage.',
  'Fish in a bag': 'Poissons dans un sac',
  'Begin with this.': 'Commencez par ceci.',
  'At the careful number; blank without fish.': 'Au nombre prudent ; vide sans poissons.',
  'Dead on arrival': 'Morts à l’arrivée',
  'Fish to pack': 'Poissons à mettre en sacs',
  '25 to 28 °C, 5 to 35 g/L salt, pH above 8, light on the water, strong aeration, about 24 h':
    '25 à 28 °C, 5 à 35 g/L de sel, pH au-dessus de 8, lumière sur l’eau, air fort, environ 24 h',
  'Nauplii spread evenly by strong air before sampling':
    'Nauplies bien répartis par un air fort avant l’échantillon',
  'Empty shells are not counted': 'Les coques vides ne comptent pas',
  'Fresh first-stage nauplii': 'Nauplies frais du premier stade',
  'Readings that begin before 10 % and go on until no more hatch':
    'Des mesures qui commencent avant 10 % et continuent jusqu’à ce que plus rien n’éclose',
  'From memory of FAO Paper 361, not looked up: check before use':
    'De mémoire du FAO Paper 361, pas relu : vérifiez avant usage',
  'African catfish larvae; the straight line between live and dry is common practice':
    'Larves de silure africain ; la droite entre proies et aliment sec est pratique courante',
  "Any ration; weigh a sample every week, last week's weight underfeeds growing fish":
    'Toute ration ; pesez un échantillon chaque semaine, le poids de la semaine passée sous-nourrit des poissons qui grandissent',
  'Inside your own table': 'Dans votre propre tableau',
  'Growth and deaths at an even rate over the days listed; weigh again and start a new table every week or two':
    'Croissance et morts à un rythme égal sur les jours listés ; repesez et commencez un nouveau tableau chaque semaine ou deux',
  'African catfish; clean, aerated water': 'Silure africain ; eau propre et aérée',
  'African catfish; clean, aerated water. With flow and oxygen hatcheries hold several times as many':
    'Silure africain ; eau propre et aérée. Avec courant et oxygène les écloseries tiennent plusieurs fois plus',
  'Any species; no published limit for African catfish fry was found':
    'Toute espèce ; aucune limite publiée pour les alevins de silure africain n’a été trouvée',
  '0.07 mg to 38 g dry body weight, 28 °C, well fed and growing':
    '0,07 mg à 38 g de poids sec du corps, 28 °C, bien nourris et en croissance',
  'Ponds and vats where wastes rot in the same water':
    'Étangs et bacs où les déchets pourrissent dans la même eau',
  'Feed that is eaten; rotting leftovers add to it':
    'Aliment mangé ; des restes qui pourrissent s’y ajoutent',
  'Well-mixed vat without aeration': 'Bac bien mélangé sans aération',
  'Well-mixed fresh water without a filter that removes ammonia':
    'Eau douce bien mélangée sans filtre qui ôte l’ammoniac',
  'One unit for all weights': 'Une unité pour tous les poids',
  'One stage at a time: the rate falls as fish grow':
    'Un stade à la fois : la croissance baisse quand les poissons grandissent',
  Any: 'Tout',
  'A few weeks ahead: the rate falls as fish grow':
    'Quelques semaines à l’avance : la croissance baisse quand les poissons grandissent',
  'Feed that is eaten': 'Aliment mangé',
  'Below the best temperature of the species; describes, does not explain':
    'Sous la meilleure température de l’espèce ; décrit, n’explique pas',
  'Up to 30.3 °C for African catfish': 'Jusqu’à 30,3 °C pour le silure africain',
  'Deaths spread evenly; a disease does not': 'Des morts réparties également ; une maladie ne l’est pas',
  'Deaths spread evenly': 'Des morts réparties également',
  'Mean weight from a fair sample of the harvest': 'Poids moyen d’un échantillon loyal de la récolte',
  'A fair sample: big fish escape the net first, small ones hide at the bottom':
    'Un échantillon loyal : les gros poissons fuient le filet d’abord, les petits se cachent au fond',
  'A fair sample': 'Un échantillon loyal',
  'African catfish fry and fingerlings in tanks': 'Alevins et juvéniles de silure africain en bacs',
  'Mean of one published study; size spread and hunger bring it forward':
    'Moyenne d’une étude publiée ; l’écart de taille et la faim l’avancent',
  'African catfish': 'Silure africain',
  'Compare fish of one species and similar length':
    'Comparez des poissons d’une espèce et de longueur semblable',
  'Up to 2.8 °C warmer or cooler': 'Jusqu’à 2,8 °C plus chaud ou plus frais',
  'As printed in abstracts; different farms, waters and feeds':
    'Comme imprimé dans des résumés ; différentes fermes, eaux et aliments',
  'African catfish, 30 days of feeding from 2 to 3 mg; hybrids and Heterobranchus start at 10 to 13 mg':
    'Silure africain, 30 jours d’aliment depuis 2 à 3 mg ; hybrides et Heterobranchus commencent à 10 à 13 mg',
  'As printed in abstracts; one row is from memory and says so':
    'Comme imprimé dans des résumés ; une ligne est de mémoire et le dit',
  'Small vats; try the back-up on the day before hatching':
    'Petits bacs ; essayez le secours la veille de l’éclosion',
  'Sealed bags, a quarter water and three quarters oxygen, 1 to 48 h; many species, none of this one above 1 g was read':
    'Sacs fermés, un quart d’eau et trois quarts d’oxygène, 1 à 48 h ; beaucoup d’espèces, rien de celle-ci au-dessus de 1 g n’a été lu',
  'Sealed bags with oxygen, up to the highest load in print; the shares are chosen here, no source':
    'Sacs fermés avec oxygène, jusqu’à la plus haute charge imprimée ; les parts sont choisies ici, sans source',
};

const MONEY: Phrases = {
  'Number to start with so that the wanted number is left after every step: divides by each survival.':
    'Nombre de départ pour qu’il reste le nombre voulu après chaque étape : divise par chaque survie.',
  'Number left of those started with after every step: multiplies by each survival.':
    'Nombre restant de ceux du départ après chaque étape : multiplie par chaque survie.',
  'Fish to expect from a number of females: poor, middling and good season (P10, P50, P90).':
    'Poissons à attendre d’un nombre de femelles : saison faible, moyenne et bonne (P10, P50, P90).',
  'Share of seasons in which a number of females brings at least the fish promised.':
    'Part des saisons où un nombre de femelles donne au moins les poissons promis.',
  'Females to inject so that the fish promised are there with the certainty you want.':
    'Femelles à injecter pour que les poissons promis soient là avec la certitude voulue.',
  'Cost of one fish sold: all costs of the run together, divided by the fish sold.':
    'Coût d’un poisson vendu : tous les coûts de la ponte ensemble, divisés par les poissons vendus.',
  'Lowest price of a fish that covers all costs, or leaves the margin you want.':
    'Plus bas prix d’un poisson qui couvre tous les coûts, ou laisse la marge voulue.',
  'Fish that must be sold at a price until all costs are covered, or the profit you want is made.':
    'Poissons à vendre à un prix pour couvrir tous les coûts, ou faire le profit voulu.',
  'Profit as a share of sales.': 'Profit comme part des ventes.',
  'Profit, and the three ratios that reports call profitability, each under its own name.':
    'Profit, et les trois rapports que les bilans appellent rentabilité, chacun sous son nom.',
  'Money in and out week by week, Monday to Sunday, with what is left at the end of each.':
    'Argent entré et sorti semaine par semaine, du lundi au dimanche, avec ce qui reste à la fin de chacune.',
  'Which figure the profit hangs on: each one moved from its low to its high end, the widest swing first.':
    'De quel chiffre dépend le profit : chacun bougé de son bas à son haut, le plus grand effet d’abord.',
  'Number wanted at the end.': 'Nombre voulu à la fin.',
  'Share that comes through each step, one cell per step (80 % is 0.8). Blank cells are skipped.':
    'Part qui passe chaque étape, une cellule par étape (80 % est 0,8). Les cellules vides sont sautées.',
  'Number before the first step.': 'Nombre avant la première étape.',
  'Females injected over all runs.': 'Femelles injectées sur toutes les pontes.',
  'Eggs expected of one female that gives eggs.': 'Œufs attendus d’une femelle qui donne des œufs.',
  'Share expected to come through each stage: hatch, survival to first feed, to fry, to fingerlings.':
    'Part qui devrait passer chaque étape : éclosion, survie au premier aliment, à l’alevin, au juvénile.',
  'How much each share varies from run to run: the standard deviation of your past runs (0.15 is 15 points).':
    'Combien chaque part varie d’une ponte à l’autre : l’écart type de vos pontes passées (0,15 fait 15 points).',
  'How much eggs vary between females: standard deviation of the natural logarithm, near to the deviation as a share of the mean.':
    'Combien les œufs varient entre femelles : écart type du logarithme naturel, proche de l’écart en part de la moyenne.',
  'Runs the females are spread over evenly. More runs, less luck.':
    'Pontes sur lesquelles les femelles sont réparties. Plus de pontes, moins de hasard.',
  'Part of the variation that all runs of a season share (same water, same brood fish). 0: every run for itself; 1: all runs come out alike.':
    'Part de la variation que partagent toutes les pontes d’une saison (même eau, mêmes géniteurs). 0 : chaque ponte pour soi ; 1 : toutes donnent pareil.',
  'The same seed gives the same draws everywhere; another seed shows how much of the answer is chance of drawing.':
    'La même graine donne partout les mêmes tirages ; une autre montre combien de la réponse est hasard du tirage.',
  'Fish promised.': 'Poissons promis.',
  'Share of seasons in which the order is to be met (90 % is 0.9).':
    'Part des saisons où la commande doit être remplie (90 % est 0,9).',
  'Every cost of the run or the season, one cell each. Feed alone is not the cost.':
    'Chaque coût de la ponte ou de la saison, une cellule chacun. L’aliment seul n’est pas le coût.',
  'Fish sold, not fish hatched or stocked.': 'Poissons vendus, pas éclos ni mis en bac.',
  'Costs that come whether fish are sold or not: rent, wages, wear. Any one currency.':
    'Coûts qui viennent que l’on vende ou non : loyer, salaires, usure. Toute monnaie.',
  'Costs that come with each fish: feed, cysts, hormone, bags, divided by the fish.':
    'Coûts qui viennent avec chaque poisson : aliment, cystes, hormone, sacs, divisés par les poissons.',
  'Fish you expect to sell. Try the number of a poor season too.':
    'Poissons que vous pensez vendre. Essayez aussi le nombre d’une saison faible.',
  'Profit wanted as a share of sales (0.2 is 20 %).': 'Profit voulu en part des ventes (0,2 fait 20 %).',
  'Profit wanted on top.': 'Profit voulu en plus.',
  'Money the fish brought.': 'Argent que les poissons ont apporté.',
  'All costs of the same fish.': 'Tous les coûts des mêmes poissons.',
  'Day of each payment.': 'Jour de chaque paiement.',
  'Money in is positive, money out negative.': 'L’argent entré est positif, l’argent sorti négatif.',
  'Money at hand before the first payment.': 'Argent en caisse avant le premier paiement.',
  'Name of each figure, for example females, eggs each, hatch, survival, price.':
    'Nom de chaque chiffre, par exemple femelles, œufs chacune, éclosion, survie, prix.',
  'Poor end of each figure.': 'Bout faible de chaque chiffre.',
  'Figure as planned.': 'Chiffre comme prévu.',
  'Good end of each figure.': 'Bon bout de chaque chiffre.',
  'Costs taken off in every case.': 'Coûts ôtés dans tous les cas.',
  Survivals: 'Survies',
  Started: 'Départ',
  'Eggs per female': 'Œufs par femelle',
  Shares: 'Parts par étape',
  Spreads: 'Écarts',
  'Egg spread': 'Écart des œufs',
  Alike: 'En commun',
  Seed: 'Graine',
  Certainty: 'Sûreté voulue',
  Fixed: 'Coûts fixes',
  'Variable per fish': 'Coût par poisson',
  Margin: 'Marge',
  Dates: 'Dates',
  Amounts: 'Montants',
  'At hand': 'En caisse',
  Names: 'Noms',
  'Number needed before the first step, not rounded: round it up yourself.':
    'Nombre nécessaire avant la première étape, non arrondi : arrondissez vers le haut.',
  'Number expected to be left, not rounded: round it down yourself.':
    'Nombre qui devrait rester, non arrondi : arrondissez vers le bas.',
  'Fish at the end of the chain.': 'Poissons au bout de la chaîne.',
  'Certainty of meeting the order; 0.5 is a coin.':
    'Certitude de remplir la commande ; 0,5 est pile ou face.',
  'Whole females, over all runs together.': 'Femelles entières, sur toutes les pontes ensemble.',
  'Cost of one fish: at this price nothing is won or lost.':
    'Coût d’un poisson : à ce prix on ne gagne ni ne perd.',
  'Fish to sell, not rounded: round it up yourself.':
    'Poissons à vendre, non arrondi : arrondissez vers le haut.',
  'Share of sales; negative is a loss.': 'Part des ventes ; négative : une perte.',
  'Profit in money, as a share of sales, as a share of costs, and sales ÷ costs.':
    'Profit en argent, en part des ventes, en part des coûts, et ventes ÷ coûts.',
  'One row a week, from the first payment to the last; quiet weeks are kept.':
    'Une ligne par semaine, du premier paiement au dernier ; les semaines calmes restent.',
  'One row a figure, the widest swing on top.': 'Une ligne par chiffre, le plus grand effet en haut.',
  'One season in ten is below': 'Une saison sur dix est dessous',
  'Half are below': 'La moitié est dessous',
  'Nine in ten are below': 'Neuf sur dix sont dessous',
  'Profit of sales': 'Profit sur ventes',
  'Profit of costs': 'Profit sur coûts',
  'Sales to costs': 'Ventes sur coûts',
  Out: 'Sorti',
  'Profit at its low end': 'Profit à son bout bas',
  'Profit at its high end': 'Profit à son bout haut',
  Swing: 'Effet',
  'Exact arithmetic; as good as the survivals': 'Calcul exact ; aussi bon que les survies',
  'Any species; as good as the shares and spreads: take them from your own runs. Stages vary independently of each other within a run':
    'Toute espèce ; aussi bon que les parts et les écarts : prenez-les de vos pontes. Les étapes varient indépendamment dans une ponte',
  'Exact arithmetic; as good as the list of costs': 'Calcul exact ; aussi bon que la liste des coûts',
  'Exact arithmetic; as good as the costs': 'Calcul exact ; aussi bon que les coûts',
  'One price for all fish, costs of a fish that do not change with their number':
    'Un prix pour tous les poissons, des coûts par poisson qui ne changent pas avec leur nombre',
  'Exact arithmetic': 'Calcul exact',
  'Exact arithmetic; at most ten years': 'Calcul exact ; dix ans au plus',
  'Profit = all figures multiplied − costs; one figure moves at a time':
    'Profit = tous les chiffres multipliés − coûts ; un chiffre bouge à la fois',
};

const CHECKS: Phrases = {
  'Your own rate (hatch, survival …) from several runs, leaning on a published one while runs are few, with what the next run may give.':
    'Votre propre taux (éclosion, survie …) de plusieurs pontes, appuyé sur un publié tant qu’elles sont peu, avec ce que la suivante peut donner.',
  'Your own mean (eggs per gram, growth, hours …) from several runs, leaning on a published one while runs are few.':
    'Votre propre moyenne (œufs par gramme, croissance, heures …) de plusieurs pontes, appuyée sur une publiée tant qu’elles sont peu.',
  'Hours your fish ripen later than the table, learned from past runs: the offset the timing functions take.':
    'Heures dont vos poissons mûrissent après le tableau, apprises des pontes passées : le décalage que prennent les fonctions d’heures.',
  'How many times the table your eggs take to hatch, learned from past runs.':
    'Combien de fois le tableau vos œufs mettent à éclore, appris des pontes passées.',
  'Control limits for a share run after run (hatch, survival …), and the runs that stand out.':
    'Limites de contrôle d’une part ponte après ponte (éclosion, survie …), et les pontes qui sortent du lot.',
  'What is taken for granted of each rate before your own runs are seen: value, spreads, source.':
    'Ce qui est admis de chaque taux avant de voir vos pontes : valeur, écarts, source.',
  'Why did the hatch fail? Likely causes from what was counted, with what to look at next.':
    'Pourquoi l’éclosion a-t-elle échoué ? Causes probables d’après les comptages, avec que regarder ensuite.',
  'Why do larvae or fry die? Likely causes from the pattern, with what to look at next.':
    'Pourquoi larves ou alevins meurent-ils ? Causes probables d’après l’allure, avec que regarder ensuite.',
  'Reads a number with its unit as people write it, 81 F, 20 gal, 3 lb, and gives it in your unit.':
    'Lit un nombre avec son unité comme on l’écrit, 81 F, 20 gal, 3 lb, et le donne dans votre unité.',
  'Tells whether this spreadsheet program hands a blank cell to functions as blank or as 0.':
    'Dit si ce tableur donne aux fonctions une cellule vide comme vide ou comme 0.',
  'Does a count grow along the stages of a run? Says which, or ok.':
    'Un comptage grandit-il le long des étapes d’une ponte ? Dit lequel, ou ok.',
  'Does a percentage follow from its two counts? Says what would follow, or ok.':
    'Un pourcentage suit-il de ses deux comptages ? Dit ce qui suivrait, ou ok.',
  'Do egg weight, eggs per gram, number of eggs and female weight fit each other?':
    'Poids des œufs, œufs par gramme, nombre d’œufs et poids de la femelle vont-ils ensemble ?',
  'Does the hormone volume given fit the weight of the fish and the dose per kg?':
    'Le volume d’hormone donné va-t-il avec le poids du poisson et la dose par kg ?',
  'Do injection and strip time fit the water temperature?':
    'Les heures d’injection et de stripping vont-elles avec la température de l’eau ?',
  'Do fertilisation and hatch time fit the water temperature?':
    'Les heures de fécondation et d’éclosion vont-elles avec la température de l’eau ?',
  'Are the moments of a run in the order they must happen, and in this century?':
    'Les moments d’une ponte sont-ils dans l’ordre où ils doivent venir, et dans ce siècle ?',
  'Can a water temperature be right, or was the thermometer set to °F?':
    'Une température d’eau peut-elle être juste, ou le thermomètre était-il en °F ?',
  'Can a dose have made the pH change that was written down?':
    'Une dose a-t-elle pu faire le changement de pH noté ?',
  'Does the feed of a day fit the number and weight of the fish, and the ration?':
    'L’aliment d’un jour va-t-il avec le nombre et le poids des poissons, et la ration ?',
  'Is growth between two weighings believable, and does the growth rate follow from it?':
    'La croissance entre deux pesées est-elle croyable, et le taux de croissance en suit-il ?',
  'Does the feed conversion of a batch follow from feed and gain, and is it believable?':
    'L’indice de consommation d’un lot suit-il de l’aliment et du gain, et est-il croyable ?',
  "Is a value far from the farm's own earlier ones? Robust: a few wild ones do no harm.":
    'Une valeur est-elle loin de celles d’avant de la ferme ? Robuste : quelques folles ne nuisent pas.',
  'Were these numbers counted, or do too many of them end in 00?':
    'Ces nombres furent-ils comptés, ou trop d’entre eux finissent-ils par 00 ?',
  'For each run: how many hatched, lived …': 'Pour chaque ponte : combien ont éclos, vécu …',
  'For each run: out of how many.': 'Pour chaque ponte : sur combien.',
  'Published or usual share. Left out, nothing is taken for granted but that it lies between 5 and 95 %.':
    'Part publiée ou habituelle. Vide : rien n’est admis, sinon qu’elle est entre 5 et 95 %.',
  'How much the prior is trusted, as a number of runs of your own that would weigh the same. 1 when left out.':
    'Combien on se fie à l’avis de départ, en nombre de vos pontes qui pèseraient autant. 1 si laissé vide.',
  'Usual spread between runs before yours are seen, as a part of the largest a share can have: 30 % when left out, about 15 percentage points around one half.':
    'Écart habituel entre pontes avant de voir les vôtres, en part du plus grand qu’une part peut avoir : 30 % si laissé vide, environ 15 points autour d’une moitié.',
  'One value for each run, all in one unit.': 'Une valeur par ponte, toutes dans une unité.',
  'Published or usual value, in the same unit.': 'Valeur publiée ou habituelle, dans la même unité.',
  'Usual spread between runs before yours are seen: as a part of the value for "factor" (0.15 when left out), in the unit itself for "difference".':
    'Écart habituel entre pontes avant de voir les vôtres : en part de la valeur pour « factor » (0,15 si laissé vide), dans l’unité même pour « difference ».',
  '"factor" for what is never below 0 and varies by percent, "difference" for what can be either side of 0.':
    '« factor » pour ce qui n’est jamais sous 0 et varie en pour cent, « difference » pour ce qui peut être des deux côtés de 0.',
  'For each run: date and time of the injection.': 'Pour chaque ponte : date et heure de l’injection.',
  'For each run: date and time of the strip that went well.':
    'Pour chaque ponte : date et heure du stripping réussi.',
  'For each run: mean water temperature between the two.':
    'Pour chaque ponte : température moyenne de l’eau entre les deux.',
  'For each run: date and time of fertilising.': 'Pour chaque ponte : date et heure de la fécondation.',
  'For each run: date and time when most had hatched.':
    'Pour chaque ponte : date et heure où la plupart avaient éclos.',
  'For each run in order of time: how many hatched, lived … At least 8 runs; 20 are better.':
    'Pour chaque ponte dans l’ordre du temps : combien ont éclos, vécu … Au moins 8 pontes ; 20 sont mieux.',
  'One kind of rate, or all.': 'Un genre de taux, ou tous.',
  'Share fertilised at 12 h, if counted.': 'Part fécondée à 12 h, si comptée.',
  'Share of all eggs that hatched.': 'Part de tous les œufs qui a éclos.',
  'TRUE when nearly all were white within hours.': 'TRUE si presque tous furent blancs en quelques heures.',
  'TRUE when cotton grew on the eggs.': 'TRUE si du coton a poussé sur les œufs.',
  'TRUE when they hatched early and weak, or very drawn out.':
    'TRUE s’ils ont éclos tôt et faibles, ou très étalés.',
  'Share of bent or swollen larvae.': 'Part de larves tordues ou gonflées.',
  'What it looks like: all at once, day 3 to 8, few big ones, bodies missing, bellies burst, at weaning, slow every day.':
    'L’allure : tout d’un coup, jour 3 à 8, peu de gros, corps manquants, ventres éclatés, au sevrage, lent chaque jour.',
  'What was written: 81 F, 20 gal, 2.5 lb, 12 oz, 3 ft, 4 in, 900 g.':
    'Ce qui fut écrit : 81 F, 20 gal, 2.5 lb, 12 oz, 3 ft, 4 in, 900 g.',
  'The unit wanted.': 'L’unité voulue.',
  'Any blank cell.': 'Toute cellule vide.',
  'Put ISBLANK of the same cell here: only then can a 0 that was typed be told apart.':
    'Mettez ici ISBLANK (ESTVIDE) de la même cellule : alors seulement un 0 tapé se distingue.',
  'Number of eggs.': 'Nombre d’œufs.',
  'Number fertilised.': 'Nombre de fécondés.',
  'Number hatched.': 'Nombre d’éclos.',
  'Number of fry.': 'Nombre d’alevins.',
  'Number of fingerlings.': 'Nombre de juvéniles.',
  'Share as written down, 0 to 1 or as a percent cell.':
    'Part comme notée, 0 à 1 ou en cellule de pour cent.',
  'Count of the good ones.': 'Compte des bons.',
  'Count of all.': 'Compte de tous.',
  'What the share is of, for the words of the answer.':
    'De quoi la part est une part, pour les mots de la réponse.',
  'Weight of the stripped eggs.': 'Poids des œufs strippés.',
  'Eggs counted per gram.': 'Œufs comptés par gramme.',
  'Number of eggs as written down.': 'Nombre d’œufs comme noté.',
  'Weight of the female before stripping.': 'Poids de la femelle avant stripping.',
  'Volume injected.': 'Volume injecté.',
  'Dose per kg that was meant.': 'Dose par kg voulue.',
  'A ready-made solution has narrower limits.': 'Une solution prête à l’emploi a des limites plus étroites.',
  'Date and time of the strip.': 'Date et heure du stripping.',
  'Hormone preparation; all of African catfish when left out.':
    'Préparation hormonale ; toutes celles du silure africain si laissée vide.',
  'Date and time of fertilisation.': 'Date et heure de la fécondation.',
  'Date and time of the hatch.': 'Date et heure de l’éclosion.',
  'Species by its Latin name; African catfish when left out.':
    'Espèce par son nom latin ; silure africain si laissée vide.',
  'Injection.': 'Injection.',
  'Strip.': 'Stripping.',
  'Fertilisation.': 'Fécondation.',
  'Hatch.': 'Éclosion.',
  'First feed.': 'Premier aliment.',
  'Reading as written down.': 'Mesure comme notée.',
  'pH before the dose.': 'pH avant la dose.',
  'Product given.': 'Produit donné.',
  'Alkalinity before the dose, where it was measured.': 'Alcalinité avant la dose, où elle fut mesurée.',
  'Feed of the day.': 'Aliment du jour.',
  'Mean weight of one fish.': 'Poids moyen d’un poisson.',
  'Ration meant, share of body weight per day.': 'Ration voulue, part du poids du corps par jour.',
  'Mean weight at the start.': 'Poids moyen au début.',
  'Mean weight at the end.': 'Poids moyen à la fin.',
  'Days between.': 'Jours entre.',
  'Growth rate as written down.': 'Croissance comme notée.',
  'Feed of the whole period.': 'Aliment de toute la période.',
  'Number stocked.': 'Nombre mis en bac.',
  'Number alive at the end.': 'Nombre de vivants à la fin.',
  'Feed conversion as written down.': 'Indice de consommation comme noté.',
  'Value to judge.': 'Valeur à juger.',
  'Earlier values of the same thing, ten or more.': 'Valeurs d’avant de la même chose, dix ou plus.',
  'TRUE for weights and counts, which spread by factors rather than by steps.':
    'TRUE pour poids et comptages, qui s’étalent par facteurs plus que par pas.',
  'Counts of one kind, ten or more of at least 1,000.':
    'Comptages d’un genre, dix ou plus, d’au moins 1 000.',
  'Prior share': 'Part de départ',
  'Prior runs': 'Pontes de départ',
  'Run spread': 'Écart entre pontes',
  Values: 'Valeurs',
  Prior: 'Avis de départ',
  Stripped: 'Strippé',
  'White soon': 'Blancs vite',
  Cotton: 'Coton',
  Early: 'Tôt',
  Deformed: 'Déformés',
  Pattern: 'Allure',
  Typed: 'Tapé',
  'Is blank': 'Est vide',
  Fingerlings: 'Juvéniles',
  Part: 'Partie',
  Whole: 'Tout',
  Fed: 'Nourri',
  History: 'Valeurs d’avant',
  'By factors': 'Par facteurs',
  'Mean over runs to come with its interval, and the interval for a single next run.':
    'Moyenne des pontes à venir avec son intervalle, et l’intervalle d’une seule prochaine ponte.',
  'Offset in hours, later is positive, with its interval and that of a single next run.':
    'Décalage en heures, plus tard est positif, avec son intervalle et celui d’une seule prochaine ponte.',
  'Hours taken ÷ hours of the table, with its interval and that of a single next run.':
    'Heures prises ÷ heures du tableau, avec son intervalle et celui d’une seule prochaine ponte.',
  'One row for each run.': 'Une ligne par ponte.',
  'One row for each rate.': 'Une ligne par taux.',
  'In the order to look at them.': 'Dans l’ordre où les regarder.',
  'The number in the unit wanted, and how it was read.':
    'Le nombre dans l’unité voulue, et comment il fut lu.',
  'kept, zero, or filled when the cell is not blank.':
    'kept (gardée), zero, ou filled (remplie) si la cellule n’est pas vide.',
  '"ok", what is wrong in a sentence, or "not checked" with what is missing.':
    '« ok », ce qui ne va pas en une phrase, ou « not checked » avec ce qui manque.',
  'Weight of own runs': 'Poids de ses pontes',
  'The rest is the prior.': 'Le reste est l’avis de départ.',
  Factor: 'Facteur',
  'Blank when nothing stands out.': 'Vide quand rien ne sort du lot.',
  'Spread of farms': 'Écart entre fermes',
  'On logits for shares, on logarithms for factors, in the unit for differences.':
    'En logits pour des parts, en logarithmes pour des facteurs, dans l’unité pour des différences.',
  'Spread of runs': 'Écart d’une ponte à l’autre',
  Look: 'Regarder',
  'May be': 'Peut être',
  Check: 'Contrôler',
  'What is known': 'Ce qui est connu',
  Understood: 'Compris',
  'Runs of one farm and one way of working; each run counted apart':
    'Des pontes d’une ferme et d’une façon de travailler ; chaque ponte comptée à part',
  'Runs of one farm and one way of working': 'Des pontes d’une ferme et d’une façon de travailler',
  'Runs of one preparation within the rows of its table; strips at ripeness, not at convenience':
    'Des pontes d’une préparation dans les lignes de son tableau ; stripping à maturité, pas à convenance',
  'Runs within the rows of the table of the species, hatch noted the same way each time':
    'Des pontes dans les lignes du tableau de l’espèce, l’éclosion notée chaque fois de la même façon',
  'At least 8 runs in order of time; fewer than 20 are provisional':
    'Au moins 8 pontes dans l’ordre du temps ; moins de 20 est provisoire',
  'African catfish; the spreads are mostly chosen here, as each note says':
    'Silure africain ; les écarts sont surtout choisis ici, comme le dit chaque note',
  'African catfish; a guide put together from seen trials and practice, not a diagnosis':
    'Silure africain ; un guide fait d’essais vus et de pratique, pas un diagnostic',
  '°F, pounds, ounces, gallons of the United States, inches and feet beside the metric units; exact factors':
    '°F, livres, onces, gallons des États-Unis, pouces et pieds à côté des unités métriques ; facteurs exacts',
  'The program it is asked in; older desktop builds of Excel differ from newer ones and from the web':
    'Le programme où l’on demande ; d’anciennes versions d’Excel de bureau diffèrent des nouvelles et du web',
  'Any counts of one batch': 'Tous comptages d’un lot',
  'Shares kept to the whole percent or better': 'Des parts tenues au pour cent entier ou mieux',
  'African catfish: 435 to 1,176 eggs per gram were published':
    'Silure africain : 435 à 1 176 œufs par gramme furent publiés',
  'A ready-made solution 0.2 to 1 mL/kg, anything else 0.05 to 4 mL/kg':
    'Une solution prête à l’emploi 0,2 à 1 mL/kg, toute autre 0,05 à 4 mL/kg',
  'Temperatures of the published tables; outside them nothing is said':
    'Températures des tableaux publiés ; hors d’eux rien n’est dit',
  'Dates from 1990 to 2099': 'Dates de 1990 à 2099',
  'Water of warm-water hatcheries': 'Eau d’écloseries d’eau chaude',
  'Fresh water near 26 °C; without alkalinity only what no water could do is reported':
    'Eau douce près de 26 °C ; sans alcalinité seul ce qu’aucune eau ne pourrait faire est signalé',
  'From first feed to fingerlings and beyond': 'Du premier aliment aux juvéniles et au-delà',
  'From first feed on; limits by size at the start':
    'Depuis le premier aliment ; limites selon la taille au début',
  'Dry feed; live food and pond food lower the ratio':
    'Aliment sec ; proies vivantes et nourriture d’étang baissent l’indice',
  'Ten or more earlier values; more than 6 robust deviations from their middle is far, a little more when they are few':
    'Dix valeurs d’avant ou plus ; plus de 6 écarts robustes de leur milieu est loin, un peu plus quand elles sont peu',
  'Counts of 1,000 and more': 'Comptages de 1 000 et plus',
};

/** Short labels and headings. */
const SHORT: Phrases = {
  At: 'À',
  In: 'Entré',
  Or: 'Ou',
  '10 % at': '10 % à',
  '90 % at': '90 % à',
  'At {n}.': 'À {n}.',
};

export const functionPhrases: Phrases = {
  ...SHORT,
  ...WATER,
  ...TIMING,
  ...BROOD,
  ...COUNTING,
  ...REARING,
  ...MONEY,
  ...CHECKS,
};
