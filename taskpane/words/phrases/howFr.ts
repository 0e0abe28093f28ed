// Long: one table, a sentence a line: how each function works.
/* eslint max-len: off -- a sentence a line */
import type { Phrases } from '../../pane/phrases';

/**
 * How functions work, in French, by sentence: helps that share a beginning share its lines. Names of functions, of
 * arguments in formulas and of options stay English, as cells hold them.
 */
export const howPhrases: Phrases = {
  "Solves the carbonate system at the water's own temperature and salt.":
    'Résout le système des carbonates à la température et au sel de l’eau même.',
  'The dose is for the end, the vat in balance with the air ("open"): air first, read, dose in parts, go on with BUFFER.NEXT.':
    'La dose est pour la fin, le bac en équilibre avec l’air (« open ») : aérez d’abord, lisez, dosez en parts, continuez avec BUFFER.NEXT.',
  '"closed" is chemistry for the first minutes after mixing, before any gas is lost: such a dose in water rich in carbon dioxide ends far above the target.':
    '« closed » est la chimie des premières minutes après le mélange, avant qu’aucun gaz ne parte : une telle dose dans une eau riche en gaz carbonique finit loin au-dessus du pH voulu.',
  'With pH alone the pH counts as read after airing.':
    'Avec le pH seul, le pH compte comme lu après aération.',
  'BUFFER.AIRED gives 0 where air alone is enough.': 'BUFFER.AIRED donne 0 là où l’air seul suffit.',
  'Dose before the fish go in; with fish in the water move no more than 0.3 pH at a time and look at AMMONIA.RISE first.':
    'Dosez avant d’y mettre les poissons ; avec des poissons dans l’eau ne bougez pas plus de 0,3 pH à la fois et regardez d’abord AMMONIA.RISE.',
  'Air comes before product: carbon dioxide leaves by itself and takes the pH up with it.':
    'L’air vient avant le produit : le gaz carbonique part de lui-même et fait monter le pH.',
  'Without alkalinity the pH counts as read after airing, which is the safe way to take it: such a dose never brings more than the soft water it is meant for needs.':
    'Sans alcalinité le pH compte comme lu après aération, ce qui est la façon sûre de le prendre : une telle dose n’apporte jamais plus que ce que demande l’eau douce pour laquelle elle est faite.',
  'Air for an hour or more, read, type that pH, dose in parts, and go on with BUFFER.NEXT.':
    'Aérez une heure ou plus, lisez, tapez ce pH, dosez en parts, et continuez avec BUFFER.NEXT.',
  'Air comes before product: carbon dioxide leaves by itself and takes the pH up with it, so the vat is aired, or a jar of it shaken, before anything is given, and every dose is sized for the pH once aired.':
    'L’air vient avant le produit : le gaz carbonique part de lui-même et fait monter le pH ; le bac est donc aéré, ou un bocal secoué, avant de rien donner, et chaque dose est faite pour le pH une fois aérée.',
  'The readings are weighed against everything the water may be: its carbon dioxide, its acids, a meter that reads off, gas that moves, a dose that has not mixed yet, acids of peat and leaves.':
    'Les mesures sont pesées contre tout ce que l’eau peut être : son gaz carbonique, ses acides, un pH-mètre qui lit à côté, du gaz qui bouge, une dose pas encore mêlée, les acides de tourbe et de feuilles.',
  'A part-dose is no more than twice the one before, keeps the chance of passing the top of the window at 3 in 100 (1 in 100 with a cheap meter, strips or lime), and a reading that does not fit is asked for again.':
    'Une part de dose ne dépasse pas deux fois la précédente, garde la chance de passer le haut de la fenêtre à 3 sur 100 (1 sur 100 avec un pH-mètre bon marché, des bandelettes ou de la chaux), et une mesure qui ne va pas est redemandée.',
  'Simulated on 330 waters of pH 4.3 to 6.4 that nothing was tuned on, the meter held in a buffer first, followed until aired, and read again in the morning where that is asked for: more than 99 of 100 ended between 6.5 and 8, none of them ever passed 8; waters that air alone brings up got no product in 96 of 100; 4.9 readings on average, mornings included.':
    'Simulé sur 330 eaux de pH 4,3 à 6,4 sur lesquelles rien ne fut réglé, le pH-mètre tenu d’abord dans un tampon, suivies jusqu’à l’aération, et relues le matin où cela est demandé : plus de 99 sur 100 ont fini entre 6,5 et 8, aucune n’a jamais passé 8 ; les eaux que l’air seul remonte n’ont reçu aucun produit dans 96 cas sur 100 ; 4,9 mesures en moyenne, matins compris.',
  'The range after a dose held 93 of 100 times; in water brown as tea that nobody called brown 85 of 100: say that it is brown (origin "peat").':
    'Les bornes après une dose ont tenu 93 fois sur 100 ; dans une eau brune comme du thé que personne n’avait dite brune 85 sur 100 : dites qu’elle est brune (origin « peat »).',
  '"Done" is said only where the whole range once aired lies inside; else "watch": read again tomorrow.':
    '« Done » ne se dit que là où toute l’étendue une fois aérée est dedans ; sinon « watch » : relisez demain.',
  'Write the readings of one vat below each other; events says what happened between them.':
    'Écrivez les mesures d’un bac les unes sous les autres ; events dit ce qui s’est passé entre elles.',
  'Beliefs before the first reading are judgement, not published figures.':
    'Ce qu’on croit avant la première mesure est un jugement, pas des chiffres publiés.',
  'For a water whose alkalinity or carbon dioxide is known.':
    'Pour une eau dont l’alcalinité ou le gaz carbonique est connu.',
  'Each part lifts the aired pH by a step at most and keeps the freshly mixed pH at 7.5 or below; air for an hour between parts.':
    'Chaque part monte le pH aéré d’un pas au plus et garde le pH juste mélangé à 7,5 ou moins ; aérez une heure entre les parts.',
  'When only the pH is known use BUFFER.NEXT, which learns from each reading.':
    'Quand seul le pH est connu prenez BUFFER.NEXT, qui apprend de chaque mesure.',
  'Measure after each part-dose all the same.': 'Mesurez tout de même après chaque part de dose.',
  'Agricultural lime dissolves only until the water is saturated with calcite; what is over stays as powder.':
    'Le calcaire agricole ne se dissout que jusqu’à ce que l’eau soit saturée en calcite ; le reste demeure en poudre.',
  'Real lime also takes hours to days.': 'Le vrai calcaire prend aussi des heures à des jours.',
  'Without alkalinity or carbon dioxide the water is taken as aerated.':
    'Sans alcalinité ni gaz carbonique l’eau est prise comme aérée.',
  'Grams found for the bucket times vat litres over bucket litres is the dose for the vat.':
    'Les grammes trouvés pour le seau fois litres du bac sur litres du seau sont la dose du bac.',
  'Air the bucket before and between: what counts is the pH once the gas has left.':
    'Aérez le seau avant et entre les parts : ce qui compte est le pH une fois le gaz parti.',
  "Give the bucket's readings to BUFFER.NEXT, with the bucket as the volume, for the best answer.":
    'Donnez les mesures du seau à BUFFER.NEXT, avec le seau comme volume, pour la meilleure réponse.',
  'Aerate water rich in carbon dioxide before dosing, and measure again: often no dose is needed.':
    'Aérez l’eau riche en gaz carbonique avant de doser, et mesurez de nouveau : souvent aucune dose n’est nécessaire.',
  "The room's air matters: 1000 ppm instead of 417 ends 0.38 pH lower.":
    'L’air de la pièce compte : 1000 ppm au lieu de 417 finissent 0,38 pH plus bas.',
  'The cheapest way to an alkalinity without a kit: air fixes the carbon dioxide, so the pH tells the alkalinity.':
    'La voie la moins chère vers une alcalinité sans kit : l’air fixe le gaz carbonique, le pH dit donc l’alcalinité.',
  'Use fresh outdoor air or give the carbon dioxide of the room.':
    'Prenez de l’air frais de dehors ou donnez le gaz carbonique de la pièce.',
  'Alkalinity does not change on the way, so the dose after some hours of aeration is BUFFER.DOSE(volume, DRIFT.PH(hours, ph, alkalinity), target, alkalinity).':
    'L’alcalinité ne change pas en route : la dose après quelques heures d’aération est donc BUFFER.DOSE(volume, DRIFT.PH(hours, ph, alkalinity), target, alkalinity).',
  'Soda ash or lime in water poor in carbon dioxide overshoots and then sinks; water rich in carbon dioxide dosed to 7 goes on climbing: aerate first, measure, then dose.':
    'Carbonate de soude ou chaux dans une eau pauvre en gaz carbonique dépassent puis redescendent ; une eau riche en gaz carbonique dosée à 7 continue de monter : aérez d’abord, mesurez, puis dosez.',
  'To follow a dosed water give the pH right after mixing and its alkalinity.':
    'Pour suivre une eau dosée donnez le pH juste après le mélange et son alcalinité.',
  'From pH 6.5 to 8.9 toxic ammonia grows 166-fold at 27 °C.':
    'De pH 6,5 à 8,9 l’ammoniac toxique croît 166 fois à 27 °C.',
  'The default limit of 0.05 mg/L is where a leaflet saw first harm; eggs and larvae may need less, ask for figures of your species.':
    'La limite prise d’office, 0,05 mg/L, est celle où une notice voit le premier mal ; œufs et larves peuvent en demander moins, cherchez les chiffres de votre espèce.',
  'Before salting water with eggs or fry look at SALT.CHECK and SALT.LIMITS: 2 to 4 g/L is borne by most larvae, one paper found half dead at 0.7.':
    'Avant de saler une eau avec œufs ou alevins regardez SALT.CHECK et SALT.LIMITS : 2 à 4 g/L sont supportés par la plupart des larves, un article en a trouvé la moitié morte à 0,7.',
  'One table does not fit all hormones: at 26 °C a ready-made solution measured 10.2 h and pituitary extract in the same trial 12.4 h; with tilapia glands it is half as long again as with its own.':
    'Un seul tableau ne va pas à toutes les hormones : à 26 °C une solution prête à l’emploi a mesuré 10,2 h et l’extrait d’hypophyse dans le même essai 12,4 h ; avec des glandes de tilapia c’est moitié plus long qu’avec les siennes.',
  'The hours are the middle of what trials measured or found best.':
    'Les heures sont le milieu de ce que les essais ont mesuré ou trouvé le meilleur.',
  'In one female eggs come out over 3 to 4 hours: stripping early costs number, not quality.':
    'Dans une femelle les œufs sortent sur 3 à 4 heures : stripper tôt coûte du nombre, pas de la qualité.',
  'SPAWN.STRIP.WINDOW gives the first look and the last hour tried, SPAWN.STRIP.EVIDENCE the trials.':
    'SPAWN.STRIP.WINDOW donne le premier regard et la dernière heure essayée, SPAWN.STRIP.EVIDENCE les essais.',
  'The table "handbook pituitary" is recalled from memory: every pituitary trial seen at 26 to 28 °C took longer.':
    'Le tableau « handbook pituitary » est de mémoire : chaque essai d’hypophyse vu à 26 à 28 °C a pris plus de temps.',
  'Store your own correction as offset; after three runs trust it more than any table.':
    'Gardez votre propre correction comme offset ; après trois pontes croyez-la plus que tout tableau.',
  'The window is the envelope of the trials of the preparation, as warmth over 15.4 °C.':
    'La fenêtre est l’enveloppe des essais de la préparation, en chaleur au-dessus de 15,4 °C.',
  'Where a table prints one hour only, its width comes from one trial at an unstated temperature: 11 and 15 h were still good where 13 h was best.':
    'Là où un tableau n’imprime qu’une heure, sa largeur vient d’un essai à une température non dite : 11 et 15 h étaient encore bonnes là où 13 h était la meilleure.',
  'After the last hour tried eggs may be good or over-ripe: no trial with a known temperature says.':
    'Après la dernière heure essayée les œufs peuvent être bons ou trop mûrs : aucun essai à température connue ne le dit.',
  'One without a temperature lost nearly all at 17 h.':
    'Un essai sans température les a presque tous perdus à 17 h.',
  'If the water will change before the strip, use SPAWN.LOG.FINISH with the readings so far.':
    'Si l’eau change avant le stripping, prenez SPAWN.LOG.FINISH avec les mesures d’ici là.',
  'Published advice on injecting at a certain hour of the day is weak: in the trial seen the evening water was also 4 °C warmer.':
    'Le conseil publié d’injecter à une certaine heure du jour est faible : dans l’essai vu l’eau du soir était aussi plus chaude de 4 °C.',
  'The hours are the middle of what was measured; the first fish hatch about a tenth earlier and the last a fifth later: SPAWN.HATCH.WINDOW gives both.':
    'Les heures sont le milieu de ce qui fut mesuré ; les premiers poissons éclosent environ un dixième plus tôt et les derniers un cinquième plus tard : SPAWN.HATCH.WINDOW donne les deux.',
  'The table "handbook African catfish" is recalled from memory and runs 8 to 13 % short of the measured hours.':
    'Le tableau « handbook African catfish » est de mémoire et court 8 à 13 % sous les heures mesurées.',
  'For a hybrid take the mother: she sets the time.': 'Pour un hybride prenez la mère : elle donne le temps.',
  'A teaching table that gives 70 to 80 h at 20 to 22 °C contradicts all of them and is not used.':
    'Un tableau d’enseignement qui donne 70 à 80 h à 20 à 22 °C contredit tous les autres et n’est pas pris.',
  'Between two rows the rate (1/hours) is read in a straight line.':
    'Entre deux lignes la vitesse (1/heures) se lit sur une droite.',
  'A wide daily swing spoils the hatch: tanks in the sun at 19 to 37 °C hatched nothing in one trial.':
    'Une large variation du jour gâte l’éclosion : des bacs au soleil de 19 à 37 °C n’ont rien fait éclore dans un essai.',
  'If the water changes, use SPAWN.LOG.FINISH with the readings.':
    'Si l’eau change, prenez SPAWN.LOG.FINISH avec les mesures.',
  'The last hatch is 1.35 times the first, from one study that saw 24.1 to 25.3 h and 32.6 to 33.9 h.':
    'La dernière éclosion est 1,35 fois la première, d’après une étude qui a vu 24,1 à 25,3 h et 32,6 à 33,9 h.',
  'In another, 2.3 % hatched in the first hour, about 80 % by 4 to 5 h, and those after 6 h lived worst: the early few run ahead and eat the rest, so grade.':
    'Dans un autre, 2,3 % ont éclos la première heure, environ 80 % en 4 à 5 h, et ceux d’après 6 h ont vécu le moins : les quelques premiers prennent de l’avance et mangent les autres, triez donc.',
  'African catfish: measured at 27.5 to 28.6 °C (first food at 36 h, yolk gone at 68 h after hatching) and carried to other temperatures with the published base of 15.4 °C, so it is computed away from 28 °C.':
    'Silure africain : mesuré à 27,5 à 28,6 °C (premier aliment à 36 h, vésicule vide à 68 h après l’éclosion) et porté à d’autres températures avec la base publiée de 15,4 °C : loin de 28 °C c’est donc calculé.',
  'Another trial fed from 72 h and had the yolk complete on day 4: offer live food from the earlier time, look for full bellies, and count day 3 as normal.':
    'Un autre essai a nourri dès 72 h et avait la vésicule entière au jour 4 : offrez des proies vivantes dès l’heure la plus tôt, cherchez les ventres pleins, et tenez le jour 3 pour normal.',
  'The best strip is taken as the moment of fertilisation; the larval times are computed from one measurement.':
    'Le meilleur stripping est pris comme moment de la fécondation ; les heures des larves sont calculées d’une mesure.',
  'Times shift as the water does: give the readings to SPAWN.LOG.FINISH.':
    'Les heures bougent comme l’eau : donnez les mesures à SPAWN.LOG.FINISH.',
  'Development is the sum of rate × time, rate = 1/hours read from the table in a straight line between rows; between two readings the temperature runs in a straight line, before the first one it is held, after the last one the expected temperature takes over.':
    'Le développement est la somme de vitesse × temps, vitesse = 1/heures lue dans le tableau sur une droite entre les lignes ; entre deux mesures la température suit une droite, avant la première elle est tenue, après la dernière la température attendue prend la suite.',
  'Any spacing of readings will do, and cutting the log changes nothing.':
    'Tout espacement des mesures convient, et couper le relevé ne change rien.',
  'At one steady temperature the answer is that of the table.':
    'À une température constante la réponse est celle du tableau.',
  'The two handbook tables are recalled from memory: their printed page was not seen.':
    'Les deux tableaux du manuel sont de mémoire : leur page imprimée n’a pas été vue.',
  'Give expected a range of temperatures to see what a cold night would do.':
    'Donnez à expected une plage de températures pour voir ce que ferait une nuit froide.',
  'Each edge is when that share of the stage is done.':
    'Chaque bord est le moment où cette part de l’étape est faite.',
  'A jump is more than 4 °C within an hour (common practice, no source).':
    'Un saut est plus de 4 °C en une heure (pratique courante, sans source).',
  'No reading is ever changed or left out by this function.':
    'Cette fonction ne change et n’écarte jamais une mesure.',
  'Base zero misleads: over the handbook latency table 0-based degree-hours run from 420 °C·h at 20 °C to 210 °C·h at 30 °C, a factor of two, while above 15.4 °C they stay within about a tenth.':
    'La base zéro trompe : sur le tableau de latence du manuel les degrés-heures comptés depuis 0 vont de 420 °C·h à 20 °C à 210 °C·h à 30 °C, un facteur deux, tandis qu’au-dessus de 15,4 °C ils restent à un dixième près.',
  'So a 0-based figure holds only near the temperature it was measured at.':
    'Un chiffre compté depuis 0 ne tient donc que près de la température où il fut mesuré.',
  'Published 0-based figures also differ by a third between hormones in one species.':
    'Les chiffres publiés comptés depuis 0 diffèrent aussi d’un tiers entre hormones dans une même espèce.',
  'Channel catfish in ponds were ready to spawn after 57 to 172 degree-days above 21 °C, half of them by 99 (multiply by 24 for degree-hours).':
    'Des barbues de rivière en étang étaient prêtes à pondre après 57 à 172 degrés-jours au-dessus de 21 °C, la moitié à 99 (multipliez par 24 pour des degrés-heures).',
  'Base zero misleads: the handbook latency table runs from 420 °C·h at 20 °C to 210 °C·h at 30 °C counted from zero, but stays within about a tenth counted from 15.4 °C.':
    'La base zéro trompe : le tableau de latence du manuel va de 420 °C·h à 20 °C à 210 °C·h à 30 °C compté depuis zéro, mais reste à un dixième près compté depuis 15,4 °C.',
  'Published bases: African catfish 15.4 °C, common carp 6.7 °C, clown featherback 16.1 °C, climbing perch 7.6 °C.':
    'Bases publiées : silure africain 15,4 °C, carpe commune 6,7 °C, poisson-couteau clown 16,1 °C, perche grimpeuse 7,6 °C.',
  'The warmth sum must have been worked out over the same base.':
    'La somme de chaleur doit avoir été calculée sur la même base.',
  'With more than two lots use SPAWN.BASE.FIT.': 'Avec plus de deux lots prenez SPAWN.BASE.FIT.',
  'Least squares on the rate: 1/h = a + b·T, base = −a/b, warmth sum = 1/b.':
    'Moindres carrés sur la vitesse : 1/h = a + b·T, base = −a/b, somme de chaleur = 1/b.',
  'Eggs of African catfish die below 17.5 and above 35.1 °C, larvae below 18.9 and above 33.2 °C, in constant water.':
    'Les œufs du silure africain meurent sous 17,5 et au-dessus de 35,1 °C, les larves sous 18,9 et au-dessus de 33,2 °C, dans une eau constante.',
  'A swing within the limits still harms: tanks in the sun at 19 to 37 °C hatched nothing, the narrowest range 57 %.':
    'Une variation entre les limites fait encore du mal : des bacs au soleil de 19 à 37 °C n’ont rien fait éclore, l’étendue la plus étroite 57 %.',
  'Give it a range of weights and the doses spill.': 'Donnez une plage de poids et les doses se répandent.',
  'For pituitary powder or hCG use SPAWN.HORMONE.DOSE.':
    'Pour la poudre d’hypophyse ou l’hCG, prenez SPAWN.HORMONE.DOSE.',
  'A single injection is enough for African catfish: every other study seen used one.':
    'Une seule injection suffit au silure africain : toutes les autres études vues n’en firent qu’une.',
  'Males need none: a single injection raised nothing where the milt is taken from the testis.':
    'Les mâles n’en ont pas besoin : une injection n’a rien augmenté là où la laitance est prise du testicule.',
  'A ready-made solution holds about 20 µg GnRHa and 10 mg domperidone in each mL, so 0.5 mL/kg is 10 µg/kg and 5 mg/kg.':
    'Une solution prête à l’emploi contient environ 20 µg de GnRHa et 10 mg de dompéridone par mL : 0,5 mL/kg font donc 10 µg/kg et 5 mg/kg.',
  'Powder is taken up in salt water of 9 g/L, 1 to 2 mL per kg of fish; SPAWN.HORMONE.PREPARE says how much.':
    'La poudre se prend dans de l’eau salée à 9 g/L, 1 à 2 mL par kg de poisson ; SPAWN.HORMONE.PREPARE dit combien.',
  'LHRHa alone made few ovulate (17 %).': 'La LHRHa seule en fit ovuler peu (17 %).',
  'Columns First and Second stay blank for a single injection, and all volumes when a powder has no concentration yet.':
    'Les colonnes Première et Seconde restent vides pour une seule injection, et tous les volumes quand une poudre n’a pas encore de concentration.',
  'For African catfish all studies seen but one used a single injection.':
    'Pour le silure africain toutes les études vues sauf une n’ont fait qu’une injection.',
  'Split only for species that need it.': 'Ne partagez que pour les espèces qui le demandent.',
  'An opened vial may not keep: see its leaflet.': 'Un flacon ouvert peut ne pas se garder : voir sa notice.',
  'Put left to 0 if yours does not.': 'Mettez left à 0 si le vôtre ne se garde pas.',
  'Glands keep up to 18 months in acetone or alcohol.':
    'Les glandes se gardent jusqu’à 18 mois dans l’acétone ou l’alcool.',
  'Another study used two glands of donors as heavy as the female.':
    'Une autre étude a pris deux glandes de donneurs aussi lourds que la femelle.',
  'Eggs ÷ (weight × egg share × eggs per gram × share that spawns), rounded up.':
    'Œufs ÷ (poids × part des œufs × œufs par gramme × part qui pond), arrondi au-dessus.',
  'Fewer than 50 parents of each sex raises inbreeding: see SPAWN.INBREEDING.RATE.':
    'Moins de 50 parents de chaque sexe fait monter la consanguinité : voir SPAWN.INBREEDING.RATE.',
  'The ± 1.3 and ± 0.3 % printed with these means are errors of a mean, not what females differ by.':
    'Les ± 1,3 et ± 0,3 % imprimés avec ces moyennes sont les erreurs d’une moyenne, pas ce dont les femelles diffèrent.',
  'Season changes the yield 11-fold: a plan with one constant is wrong by that much.':
    'La saison change le rendement 11 fois : un plan à une seule constante se trompe d’autant.',
  'Replace it with your own strips as soon as you have them (SPAWN.FEMALES.NEEDED).':
    'Remplacez-le par vos propres strippings dès que vous en avez (SPAWN.FEMALES.NEEDED).',
  'Survivals are divided, never added: half lost means twice the eggs, not half as many again.':
    'Les survies se divisent, jamais ne s’additionnent : perdre la moitié veut dire deux fois plus d’œufs, pas une fois et demie.',
  'Eggs per gram are counted per gram of eggs.': 'Les œufs par gramme se comptent par gramme d’œufs.',
  'A web figure of 700 eggs per gram of body weight is a mix-up: 700 is per gram of eggs.':
    'Un chiffre de la toile, 700 œufs par gramme de poids du corps, est une confusion : 700 est par gramme d’œufs.',
  'Males of African catfish cannot be stripped: the testes are taken, so each male serves once.':
    'Les mâles du silure africain ne se strippent pas : on prend les testicules, donc chaque mâle sert une fois.',
  'Use undiluted milt at once: 1.5 to 4 % of sperm lived after 15 minutes at room temperature.':
    'Utilisez la laitance pure tout de suite : 1,5 à 4 % des spermatozoïdes vivaient après 15 minutes à la température de la pièce.',
  'Add water last: activated sperm is best at 20 s and nearly spent at 120 s.':
    'Ajoutez l’eau en dernier : les spermatozoïdes activés sont au mieux à 20 s et presque finis à 120 s.',
  'Never chill the eggs.': 'Ne refroidissez jamais les œufs.',
  'When in doubt about the count, take the lower.': 'Dans le doute sur le compte, prenez le plus bas.',
  'This is the number for the eggs, not for the stock: few males raise inbreeding faster than few females do, see SPAWN.INBREEDING.RATE.':
    'C’est le nombre pour les œufs, pas pour le stock : peu de mâles font monter la consanguinité plus vite que peu de femelles, voir SPAWN.INBREEDING.RATE.',
  'Fresh water in the milt starts the sperm and spends it: dry the tube, the testes and the fish.':
    'De l’eau douce dans la laitance fait partir les spermatozoïdes et les épuise : séchez le tube, les testicules et le poisson.',
  'Add water only over eggs and milt together.': 'N’ajoutez l’eau que sur œufs et laitance ensemble.',
  'Advice: keep the rate at 0.5 to 1 % per generation, that is 25 of each sex for 1 % and 50 of each for 0.5 %; Ne of 50 for a short time, 500 for a long one.':
    'Conseil : gardez le taux à 0,5 à 1 % par génération, soit 25 de chaque sexe pour 1 % et 50 de chaque pour 0,5 % ; un Ne de 50 pour un temps court, de 500 pour un temps long.',
  'Choosing the best makes it worse than the formula: 50 pairs or more with 30 to 50 offspring each keep about 1 %, too few pairs 6 to 8 %.':
    'Choisir les meilleurs rend pire que la formule : 50 couples ou plus avec 30 à 50 descendants chacun gardent environ 1 %, trop peu de couples 6 à 8 %.',
  'One generation of full sibs cost trout up to half of the hatch.':
    'Une génération de pleins frères et sœurs a coûté à la truite jusqu’à la moitié de l’éclosion.',
  'Each male is used once, so males usually set the limit.':
    'Chaque mâle ne sert qu’une fois : ce sont donc le plus souvent les mâles qui fixent la limite.',
  'Labels decide: the same family counts as full sibs (offspring inbred 25 %), the same line as half sibs (12.5 %), different lines as unrelated, a blank as unknown.':
    'Les étiquettes décident : la même famille compte comme pleins frères et sœurs (consanguinité des descendants 25 %), la même lignée comme demi-frères et demi-sœurs (12,5 %), des lignées différentes comme non parentes, une cellule vide comme inconnue.',
  'A label with a slash is "line/family"; without one it is a family.':
    'Une étiquette avec une barre est « lignée/famille » ; sans barre c’est une famille.',
  'Real relationship can be closer than labels know: bring in new fish, and do not mate fish of one mass lot with each other.':
    'La vraie parenté peut être plus proche que ce que disent les étiquettes : amenez de nouveaux poissons, et ne croisez pas entre eux les poissons d’un même lot de masse.',
  'Marks get lost, so tag brood fish.': 'Les marques se perdent : étiquetez donc les géniteurs.',
  'Parents that count = (sum)² ÷ sum of squares.': 'Parents qui comptent = (somme)² ÷ somme des carrés.',
  'Fertilise the eggs of each female in parts, each with one male, rather than with a mix, and keep alike from every part (SPAWN.LOT.KEEP).':
    'Fécondez les œufs de chaque femelle en parts, chacune avec un mâle, plutôt qu’avec un mélange, et gardez autant de chaque part (SPAWN.LOT.KEEP).',
  'Take them at random from each lot before grading: the largest of a mass lot often have the same few parents.':
    'Prenez-les au hasard dans chaque lot avant le tri : les plus gros d’un lot de masse ont souvent les mêmes quelques parents.',
  'One trial found fewer eggs hatched than untreated at every strength from 50 to 250 mg/L, another had its best hatch (70 %) at 250 mg/L: the evidence disagrees, so treat only when fungus is seen.':
    'Un essai a vu moins d’œufs éclos que sans traitement à chaque force de 50 à 250 mg/L, un autre a eu sa meilleure éclosion (70 %) à 250 mg/L : les preuves se contredisent, ne traitez donc que si vous voyez du champignon.',
  'Strength counts the solution as bought; 100 mg/L of it is 37 mg/L formaldehyde.':
    'La force compte la solution comme achetée ; 100 mg/L en font 37 mg/L de formaldéhyde.',
  'Trout eggs are given 750 to 1667 mg/L, which kills all catfish eggs.':
    'On donne aux œufs de truite 750 à 1667 mg/L, ce qui tue tous les œufs de silure.',
  'Trials kept larvae and fry for days at 2 to 4 g/L; one paper found half dead in a day at 0.6 to 0.7 g/L and stands alone.':
    'Des essais ont gardé larves et alevins des jours à 2 à 4 g/L ; un article en a trouvé la moitié morte en un jour à 0,6 à 0,7 g/L et reste seul.',
  'Try 50 fish for a day first: SPAWN.SALT.CHECK lists every trial.':
    'Essayez d’abord 50 poissons un jour : SPAWN.SALT.CHECK donne tous les essais.',
  'A 3 % bath used on fingerlings of another species is never for fry.':
    'Un bain à 3 %, fait sur des juvéniles d’une autre espèce, n’est jamais pour des alevins.',
  'Ratio of sums: all counts together divided by all sample sizes together.':
    'Rapport de sommes : tous les comptes ensemble divisés par toutes les tailles d’échantillon ensemble.',
  "The interval uses the spread of the samples around that ratio (Cochran's ratio estimator, shrunk by the share of the lot that was sampled) and t with one degree of freedom less than samples.":
    'L’intervalle prend l’écart des échantillons autour de ce rapport (estimateur de rapport de Cochran, réduit par la part du lot qui fut prise) et t avec un degré de liberté de moins que d’échantillons.',
  'The average of the single ratios is another estimator and gives another number.':
    'La moyenne des rapports seuls est un autre estimateur et donne un autre nombre.',
  'A single sample has no spread: its interval is the chance of the count alone and too narrow.':
    'Un seul échantillon n’a pas d’écart : son intervalle est le hasard du compte seul et trop étroit.',
  'Blot lot and samples alike: water on the eggs is weighed too (Piper et al.':
    'Épongez lot et échantillons de même : l’eau sur les œufs se pèse aussi (Piper et al.',
  'All counts together divided by all sample sizes together, times the whole lot.':
    'Tous les comptes ensemble divisés par toutes les tailles d’échantillon ensemble, fois le lot entier.',
  'Interval from the spread of the samples around that ratio, t with one degree of freedom less than samples; a single sample gives the chance of the count alone and says so.':
    'Intervalle d’après l’écart des échantillons autour de ce rapport, t avec un degré de liberté de moins que d’échantillons ; un seul échantillon donne le hasard du compte seul et le dit.',
  'Displacement suits small lots and takes about twice the time of weighing (Piper et al.':
    'Le déplacement d’eau convient aux petits lots et prend environ deux fois le temps d’une pesée (Piper et al.',
  'Take samples from top, middle and bottom; if they differ the interval widens, as it should.':
    'Prenez des échantillons en haut, au milieu et au fond ; s’ils diffèrent l’intervalle s’élargit, comme il faut.',
  'Count and weigh a whole lot once and later lots of the same size need only weighing (Piper et al.':
    'Comptez et pesez une fois un lot entier, et les lots suivants de même taille ne demandent qu’une pesée (Piper et al.',
  'Wilson score interval.': 'Intervalle de score de Wilson.',
  'It stays inside 0 to 100 % and works at 0 and 100 %, where the textbook plus-or-minus does not.':
    'Il reste entre 0 et 100 % et marche à 0 et à 100 %, ce que le plus-ou-moins des manuels ne fait pas.',
  'For several separate samples use SPAWN.SHARE.SAMPLES: it sees clumping.':
    'Pour plusieurs échantillons séparés prenez SPAWN.SHARE.SAMPLES : elle voit les amas.',
  'Say which hatch you mean: of fertilised eggs or of all eggs.':
    'Dites de quelle éclosion vous parlez : des œufs fécondés ou de tous les œufs.',
  'Mixing them is the commonest reason why two farms cannot compare.':
    'Les mêler est la raison la plus fréquente pour laquelle deux fermes ne peuvent se comparer.',
  "On each side the wider of two intervals: from the spread between the samples (t), and Wilson's for the pooled count.":
    'De chaque côté le plus large de deux intervalles : celui de l’écart entre les échantillons (t), et celui de Wilson pour le compte de tous.',
  'Dead eggs sit together, so one scoop is not a fair picture.':
    'Les œufs morts restent ensemble : une seule louche n’est donc pas une image juste.',
  "Newcombe's interval for the difference, built from the two Wilson intervals.":
    'Intervalle de Newcombe pour la différence, bâti sur les deux intervalles de Wilson.',
  'A real difference between two runs is not yet a reason: the water, the female and the hour differed too.':
    'Une vraie différence entre deux pontes n’est pas encore une raison : l’eau, la femelle et l’heure différaient aussi.',
  "Each side is a ratio of sums with its own standard error; the two are joined with Satterthwaite's degrees of freedom.":
    'Chaque côté est un rapport de sommes avec sa propre erreur type ; les deux se joignent par les degrés de liberté de Satterthwaite.',
  'The smallest sample whose Wilson interval has the wished half width at the expected share.':
    'Le plus petit échantillon dont l’intervalle de Wilson a la demi-largeur voulue à la part attendue.',
  'The textbook plus-or-minus asks for a few more (385 where this says 381).':
    'Le plus-ou-moins des manuels en demande un peu plus (385 là où ceci dit 381).',
  'Each share gets its Wilson interval; the intervals are joined on logarithms as the square root of the sum of squares, so the answer is narrower than multiplying all worst cases and wider than pretending the shares are exact.':
    'Chaque part a son intervalle de Wilson ; les intervalles se joignent en logarithmes par la racine de la somme des carrés : la réponse est plus étroite que le produit de tous les pires cas et plus large que si les parts étaient exactes.',
  'larvae × nauplii per larva ÷ (nauplii per gram × harvest share).':
    'larves × nauplii par larve ÷ (nauplii par gramme × part récoltée).',
  'Good tins give 200,000 to 300,000 nauplii per gram (from memory of FAO Paper 361); one published strain gave 230,600.':
    'De bonnes boîtes donnent 200 000 à 300 000 nauplii par gramme (de mémoire du document FAO 361) ; une souche publiée a donné 230 600.',
  'The density follows the vessel: a vessel below 20 L takes 5 g per litre, any larger one 2.':
    'La densité suit le vase : un vase sous 20 L prend 5 g par litre, un plus grand 2.',
  'Without a vessel size, up to 100 g of cysts go at 5 g/L into less than 20 L; more needs 2 g/L at once, so the water jumps from 20 to 50 L there.':
    'Sans taille de vase, jusqu’à 100 g de cystes vont à 5 g/L dans moins de 20 L ; plus demande tout de suite 2 g/L, l’eau saute donc là de 20 à 50 L.',
  'Baking soda up to 1 g per litre.': 'Bicarbonate de soude jusqu’à 1 g par litre.',
  '24 h at 25 to 28 °C is from memory of FAO Paper 361.':
    '24 h à 25 à 28 °C est de mémoire du document FAO 361.',
  'Mean count ÷ sample volume × water ÷ cysts.': 'Compte moyen ÷ volume de l’échantillon × eau ÷ cystes.',
  'With samples of 0.25 mL from 80 mL over 1.6 g that is mean × 200 (formula of FAO Paper 361, from memory).':
    'Avec des échantillons de 0,25 mL pris de 80 mL sur 1,6 g, cela fait moyenne × 200 (formule du document FAO 361, de mémoire).',
  'Nauplii ÷ (nauplii + umbrella stages + unhatched full cysts).':
    'Nauplii ÷ (nauplii + stades parapluie + cystes pleins non éclos).',
  'Formula from memory of FAO Paper 361; the definition, nauplii per 100 full cysts, was read.':
    'Formule de mémoire du document FAO 361 ; la définition, nauplii pour 100 cystes pleins, a été lue.',
  'Straight lines between readings; the last reading counts as the full hatch.':
    'Des droites entre les mesures ; la dernière mesure compte comme l’éclosion entière.',
  'Harvest near the 90 % hour: earlier loses nauplii, later they have burnt their reserves.':
    'Récoltez vers l’heure des 90 % : plus tôt perd des nauplii, plus tard ils ont brûlé leurs réserves.',
  'Recalled figures: 0.5 g active chlorine, 0.15 g caustic soda and 14 mL of solution per gram of cysts; soak the cysts 1 to 2 h first, keep below 40 °C with ice, rinse well, stop with 0.1 % sodium thiosulphate.':
    'Chiffres de mémoire : 0,5 g de chlore actif, 0,15 g de soude caustique et 14 mL de solution par gramme de cystes ; trempez d’abord les cystes 1 à 2 h, restez sous 40 °C avec de la glace, rincez bien, arrêtez avec du thiosulfate de sodium à 0,1 %.',
  'Live food alone for the first 5 days of feeding (FAO review by Hecht 2013).':
    'Proies vivantes seules les 5 premiers jours d’aliment (revue FAO de Hecht 2013).',
  'Half live and half dry from day 8 kept more than 90 % alive for 21 days, an abrupt change to dry feed less than 75 % (Chepkirui-Boit et al.':
    'Moitié vivant et moitié sec depuis le jour 8 en a gardé plus de 90 % en vie pendant 21 jours, un passage brusque au sec moins de 75 % (Chepkirui-Boit et al.',
  'The line between is common practice, no source.':
    'La ligne entre les deux est pratique courante, sans source.',
  'Most larvae die in the first four days of food.':
    'La plupart des larves meurent dans les quatre premiers jours d’aliment.',
  'The ration is yours to choose: no published table of ration by weight for African catfish was found.':
    'La ration est à vous de choisir : aucun tableau publié de ration selon le poids du silure africain n’a été trouvé.',
  'SPAWN.RATION.STUDIES lists the rates used in published trials.':
    'SPAWN.RATION.STUDIES donne les taux des essais publiés.',
  'Fill the table from your feed supplier or your own records: no published table of ration by weight for African catfish was found, so none is built in.':
    'Remplissez le tableau d’après votre fournisseur d’aliment ou vos propres registres : aucun tableau publié de ration selon le poids du silure africain n’a été trouvé, aucun n’est donc mis dedans.',
  'Between rows the ration follows a straight line over the logarithm of weight, then over temperature.':
    'Entre les lignes la ration suit une droite sur le logarithme du poids, puis sur la température.',
  "The paper's abstract prints both ends of a straight line on logarithms, for 0.07 mg and 38 g of dry body weight at 28 °C; the line between them is drawn here.":
    'Le résumé de l’article imprime les deux bouts d’une droite en logarithmes, pour 0,07 mg et 38 g de poids sec à 28 °C ; la ligne entre eux est tirée ici.',
  'Warmer water raises it, cooler water lowers it: no correction is made.':
    'Une eau plus chaude le monte, une plus fraîche le baisse : aucune correction n’est faite.',
  'The food is counted dry: bagged feed holds about a tenth of water.':
    'L’aliment est compté sec : un aliment en sac contient environ un dixième d’eau.',
  'More than this only fouls the water; feed that lies on the bottom after a few minutes was too much.':
    'Plus que cela ne fait que salir l’eau ; l’aliment qui reste au fond après quelques minutes était de trop.',
  'Each day: whole fish left × mean weight in the morning × ration.':
    'Chaque jour : poissons entiers restants × poids moyen du matin × ration.',
  'With your own table the ration follows the weight along a straight line over the logarithm of weight between two rows; a weight outside the table is not guessed.':
    'Avec votre propre tableau la ration suit le poids selon une droite sur le logarithme du poids entre deux lignes ; un poids hors du tableau n’est pas deviné.',
  'Published densities used when you give none: eggs 480 per litre of standing water (the most), fry in tanks 50 per litre, larvae in fenced ponds 100 per m², fingerlings in ponds 10 per m².':
    'Densités publiées prises quand vous n’en donnez pas : œufs 480 par litre d’eau dormante (le plus), alevins en bac 50 par litre, larves en étang clôturé 100 par m², juvéniles en étang 10 par m².',
  'SPAWN.STOCKING.STUDIES lists them with what came of them.':
    'SPAWN.STOCKING.STUDIES les donne avec ce qui en est sorti.',
  'Small catfish take more than 85 % of their oxygen from the water: breathing air does not save fry.':
    'Les petits silures prennent plus de 85 % de leur oxygène dans l’eau : respirer l’air ne sauve pas des alevins.',
  'Larger than what the fish breathe, because uneaten feed and wastes rot.':
    'Plus que ce que les poissons respirent, car l’aliment non mangé et les déchets pourrissent.',
  'Usual: feed × protein × 0.092, a coefficient recalled from a textbook, not looked up.':
    'Habituel : aliment × protéine × 0,092, un coefficient retenu d’un manuel, non vérifié.',
  'At most: protein is 16 % nitrogen, and whatever does not stay in the fish ends in the water, part of it as solids.':
    'Au plus : la protéine est à 16 % d’azote, et tout ce qui ne reste pas dans le poisson finit dans l’eau, en partie comme solides.',
  'Economic: feed ÷ (end − start).': 'Économique : aliment ÷ (fin − début).',
  'Biological: feed ÷ (end + dead − start).': 'Biologique : aliment ÷ (fin + morts − début).',
  'Farm-made feeds are reported down to 1.1 for African catfish (FAO).':
    'Des aliments faits à la ferme sont rapportés jusqu’à 1,1 pour le silure africain (FAO).',
  '100 × (ln end − ln start) ÷ days.': '100 × (ln fin − ln début) ÷ jours.',
  'The gain, not the final weight, over the days: an abstract that divides the final weight prints 3.32 where the gain is 3.274 g.':
    'Le gain, pas le poids final, sur les jours : un résumé qui divise le poids final imprime 3,32 là où le gain est 3,274 g.',
  'On a published growth curve of African catfish one rate taken over 239 days was up to 65 % too low in between (Legendre et al.':
    'Sur une courbe de croissance publiée du silure africain un seul taux pris sur 239 jours était jusqu’à 65 % trop bas entre les deux (Legendre et al.',
  '1992): measure again every few weeks.': '1992) : mesurez de nouveau toutes les quelques semaines.',
  'scale × (end^⅓ − start^⅓) ÷ (temperature × days).': 'scale × (fin^⅓ − début^⅓) ÷ (température × jours).',
  'It assumes that growth rises steadily with temperature, that weight goes with the cube of length, and that length grows evenly.':
    'Cela suppose que la croissance monte régulièrement avec la température, que le poids suit le cube de la longueur, et que la longueur croît d’un pas égal.',
  'All three can fail (Jobling 2003): use it for short spans, between temperatures you have measured at, never above the best one.':
    'Tous les trois peuvent manquer (Jobling 2003) : à prendre sur de courtes durées, entre des températures où vous avez mesuré, jamais au-dessus de la meilleure.',
  'On a published growth curve of African catfish at 29.5 °C one coefficient taken over 239 days was up to 48 % too low in between (Legendre et al.':
    'Sur une courbe de croissance publiée du silure africain à 29,5 °C un coefficient pris sur 239 jours était jusqu’à 48 % trop bas entre les deux (Legendre et al.',
  'Variation is the standard deviation over the mean.': 'La variation est l’écart type sur la moyenne.',
  'No published limit was found above which to grade; grade every two weeks (SPAWN.GRADING.DATES) and whenever single fish run ahead.':
    'Aucune limite publiée n’a été trouvée au-dessus de laquelle trier ; triez toutes les deux semaines (SPAWN.GRADING.DATES) et chaque fois que quelques poissons prennent de l’avance.',
  'Grading every two weeks gave better growth and feed conversion than every four weeks or none (Mwangi et al.':
    'Trier toutes les deux semaines a donné meilleure croissance et meilleur indice de consommation que toutes les quatre semaines ou jamais (Mwangi et al.',
  'Cannibalism mattered until about 47 days of feeding (Hecht and Appelbaum 1988).':
    'Le cannibalisme comptait jusqu’à environ 47 jours d’aliment (Hecht et Appelbaum 1988).',
  'Grade sooner whenever single fish run ahead.':
    'Triez plus tôt chaque fois que quelques poissons prennent de l’avance.',
  '5.56 % less for each °F warmer, as much more for each °F cooler; printed for 5 °F.':
    '5,56 % de moins par °F plus chaud, autant de plus par °F plus frais ; imprimé pour 5 °F.',
  'Made for trout and bass, not for catfish: a rule to be careful by.':
    'Faite pour truite et black-bass, pas pour le silure : une règle pour être prudent.',
  'Losses are never added up or added on: to have 10,000 left after losing half you need 20,000, not 15,000.':
    'Les pertes ne s’additionnent jamais ni ne s’ajoutent : pour qu’il reste 10 000 après en avoir perdu la moitié il en faut 20 000, pas 15 000.',
  'The order of the steps does not matter.': 'L’ordre des étapes ne change rien.',
  'Shares follow beta distributions, eggs of females a log-normal one; 4,000 seasons are drawn from the seed, so the answer stays the same until an input changes.':
    'Les parts suivent des lois bêta, les œufs des femelles une loi log-normale ; 4 000 saisons sont tirées de la graine, la réponse reste donc la même tant qu’aucune entrée ne change.',
  'Published hatch runs from 28 to 59 % with the season alone: a plan on the mean is kept about every second time.':
    'L’éclosion publiée va de 28 à 59 % avec la saison seule : un plan sur la moyenne est tenu environ une fois sur deux.',
  'Write down your own hours and the wear of pumps too: they are the costs most often forgotten.':
    'Notez aussi vos propres heures et l’usure des pompes : ce sont les coûts le plus souvent oubliés.',
  'A published exercise divides the feed alone by the fish and comes out at half the true price.':
    'Un exercice publié divise l’aliment seul par les poissons et arrive à la moitié du vrai prix.',
  'Of sales, not of costs: 54 on costs of 100 is a margin of 35 %, not 54 %.':
    'Des ventes, pas des coûts : 54 sur des coûts de 100 sont une marge de 35 %, pas de 54 %.',
  'SPAWN.PROFIT.RATIOS gives both with their names.': 'SPAWN.PROFIT.RATIOS donne les deux avec leurs noms.',
  'Sales ÷ costs is always profit of costs plus one.':
    'Ventes ÷ coûts est toujours le bénéfice sur coûts plus un.',
  'Publications print any of the three as "profitability": compare like with like.':
    'Les publications impriment l’un ou l’autre des trois comme « rentabilité » : comparez le semblable au semblable.',
  'A negative balance in any week is money to find before that week, even when the season as a whole earns.':
    'Un solde négatif une semaine est de l’argent à trouver avant cette semaine, même si la saison entière gagne.',
  'Draw it as bars: the top one is what is worth measuring or improving first.':
    'Tracez-le en barres : celle du haut est ce qui vaut d’être mesuré ou amélioré d’abord.',
  'Real seasons move several figures at once; SPAWN.SEASON.ODDS does that.':
    'Les vraies saisons bougent plusieurs chiffres à la fois ; SPAWN.SEASON.ODDS le fait.',
  'Partial pooling: runs differ by more than chance of the counting, so the spread between runs is estimated along with the mean, and both lean on the prior while runs are few.':
    'Mise en commun partielle : les pontes diffèrent plus que par le hasard des comptes, l’écart entre pontes est donc estimé avec la moyenne, et les deux penchent vers l’avis de départ tant que les pontes sont peu.',
  'One prior in ten is taken to be unlike the farm (three times as wide), so a farm that is different is believed after a few runs; and the prior moves the answer no further from the own mean than 0.65 of its standard error, less where own runs weigh more.':
    'Un avis de départ sur dix est tenu pour différent de la ferme (trois fois plus large), si bien qu’une ferme différente est crue après peu de pontes ; et l’avis n’éloigne la réponse de la moyenne à soi que de 0,65 de son erreur type, moins où les pontes à soi pèsent plus.',
  'Worked out on a grid, without random numbers: the same cells give the same answer.':
    'Calculé sur une grille, sans nombres au hasard : les mêmes cellules donnent la même réponse.',
  'On simulated farms the 95 % intervals held the truth in 93 to 97 of 100; for farms very unlike the published ones in 82 or more after one run and 91 or more from ten runs on.':
    'Sur des fermes simulées les intervalles à 95 % tenaient la vérité dans 93 à 97 cas sur 100 ; pour des fermes très différentes des publiées dans 82 ou plus après une ponte et 91 ou plus depuis dix pontes.',
  'Counts vary between runs as a beta-binomial.':
    'Les comptes varient entre pontes comme une bêta-binomiale.',
  'Adding all counts up and using SPAWN.SHARE.INTERVAL would pretend that every egg were a run of its own: far too narrow.':
    'Additionner tous les comptes et prendre SPAWN.SHARE.INTERVAL ferait comme si chaque œuf était une ponte à lui seul : bien trop étroit.',
  'Values vary between runs as a normal distribution, on logarithms for "factor".':
    'Les valeurs varient entre pontes comme une loi normale, en logarithmes pour « factor ».',
  'Each run is set against the table at its own temperature; what is left is pooled over runs and leans on "as the table says" while runs are few.':
    'Chaque ponte est comparée au tableau à sa propre température ; ce qui reste est mis ensemble sur les pontes et penche vers « comme dit le tableau » tant que les pontes sont peu.',
  'Runs whose water changed much are better summed with SPAWN.LOG.FINISH first.':
    'Les pontes dont l’eau a beaucoup changé sont mieux sommées d’abord avec SPAWN.LOG.FINISH.',
  'A strip delayed until staff came in says nothing about the fish: leave such runs out.':
    'Un stripping retardé jusqu’à l’arrivée des gens ne dit rien du poisson : laissez de telles pontes dehors.',
  'The prior is 0 ± 2 h: published strips lie 0.2 to 4.5 h after the handbook table.':
    'L’avis de départ est 0 ± 2 h : les strippings publiés sont 0,2 à 4,5 h après le tableau du manuel.',
  'Multiply SPAWN.INCUBATION.HOURS by it.': 'Multipliez SPAWN.INCUBATION.HOURS par lui.',
  'The prior is 1 ± 12 %.': 'L’avis de départ est 1 ± 12 %.',
  'Limits widen with the spread between runs (Laney p′), never below what chance of the counting alone allows (p chart).':
    'Les limites s’élargissent avec l’écart entre pontes (Laney p′), jamais sous ce que permet le hasard du compte seul (carte p).',
  'Only two signals: a run beyond the limits, and nine in a row on one side of the centre.':
    'Deux signaux seulement : une ponte hors des limites, et neuf de suite d’un côté du centre.',
  'A signal says look for what was different, not that someone erred; a fall in hatch may be season, water or an ageing female.':
    'Un signal dit de chercher ce qui fut différent, pas que quelqu’un s’est trompé ; une baisse d’éclosion peut être la saison, l’eau ou une femelle qui vieillit.',
  'Check hours are often fixed beforehand: "10 h" may mean that somebody looked at 10 h.':
    'Les heures de contrôle sont souvent fixées d’avance : « 10 h » peut vouloir dire que quelqu’un a regardé à 10 h.',
  'Standing: "from memory" means the publication is named but its page was not seen; "computed" means one measured duration carried to other temperatures with a published base temperature.':
    'Standing : « from memory » veut dire que la publication est nommée mais que sa page n’a pas été vue ; « computed » veut dire une durée mesurée portée à d’autres températures avec une température de base publiée.',
  'Copy the rows as values, change the hours to what your own runs took, and give the two columns as ownTemperatures and ownHours.':
    'Copiez les lignes en valeurs, changez les heures en celles de vos propres pontes, et donnez les deux colonnes comme ownTemperatures et ownHours.',
  'The two handbook tables are recalled from memory.': 'Les deux tableaux du manuel sont de mémoire.',
  'Grind glands dry, add the salt water, let it settle, draw up the clear liquid.':
    'Broyez les glandes à sec, ajoutez l’eau salée, laissez reposer, aspirez le liquide clair.',
  'Salt water of 9 g/L is 0.9 g of plain salt in 100 mL of boiled and cooled water.':
    'De l’eau salée à 9 g/L, c’est 0,9 g de sel simple dans 100 mL d’eau bouillie et refroidie.',
  'A fresh gland is used at once.': 'Une glande fraîche s’utilise tout de suite.',
  'Never give the liquid of a gland by the millilitres of a ready-made solution.':
    'Ne donnez jamais le liquide d’une glande d’après les millilitres d’une solution prête à l’emploi.',
  'Most trials with larvae and fry have them alive at 2 g/L and about 4 g/L for days; one grew more of them at 4 to 6 g/L.':
    'La plupart des essais avec larves et alevins les ont en vie à 2 g/L et environ 4 g/L pendant des jours ; un en a élevé davantage à 4 à 6 g/L.',
  'One paper found half dead at 0.6 to 0.7 g/L: it stands alone, 6 to 14 times below the others, so try 50 fish for a day first.':
    'Un article en a trouvé la moitié morte à 0,6 à 0,7 g/L : il reste seul, 6 à 14 fois sous les autres, essayez donc d’abord 50 poissons un jour.',
  'Hybrids bear less: stop at 4.': 'Les hybrides supportent moins : arrêtez à 4.',
  'Never above 6 with larvae, never 10.': 'Jamais au-dessus de 6 avec des larves, jamais 10.',
  'At day 12 of feeding an ordinary larva weighs 18 mg and one with plenty of Artemia about 100 mg: only a weighing tells.':
    'Au jour 12 d’aliment une larve ordinaire pèse 18 mg et une avec beaucoup d’Artemia environ 100 mg : seule une pesée le dit.',
  'Weigh 50 to 100 together on day 5 to 7, in a sieve dabbed from below, and plan the feed from it.':
    'Pesez-en 50 à 100 ensemble au jour 5 à 7, dans un tamis tamponné par dessous, et faites d’après cela le plan d’aliment.',
  'Order dry feed on the ordinary path until then.':
    'Commandez jusque-là l’aliment sec d’après la voie ordinaire.',
  'The values stand in for a farm without records.':
    'Les valeurs tiennent lieu de registres pour une ferme qui n’en a pas.',
  'Each note says what was published and what was chosen.':
    'Chaque note dit ce qui fut publié et ce qui fut choisi.',
  'Hang the net before stripping, 5 to 10 cm under the surface and off the floor (practice), and then leave it: eggs bear shaking worst in the first hours.':
    'Pendez le filet avant le stripping, 5 à 10 cm sous la surface et loin du fond (pratique), puis laissez-le : les œufs supportent le moins d’être secoués dans les premières heures.',
  'Lift it when hatching has ended, count the white eggs on it.':
    'Levez-le quand l’éclosion est finie, comptez les œufs blancs dessus.',
  'Thin floating roots hatched 50 to 66 %, flat nylon mat 4 % in one trial.':
    'De fines racines flottantes ont donné 50 à 66 % d’éclosion, un tapis plat de nylon 4 % dans un essai.',
  'Tannic acid hatched 13 %: do not use it.': 'L’acide tannique a donné 13 % : ne l’utilisez pas.',
  'Trial fish had more than 60 % of eggs with a moved nucleus and eggs of 0.94 to 1.07 mm.':
    'Les poissons des essais avaient plus de 60 % d’œufs au noyau déplacé et des œufs de 0,94 à 1,07 mm.',
  'Wet towel over the eyes, out of water under a minute (practice); anaesthetics only with a vet.':
    'Serviette mouillée sur les yeux, hors de l’eau moins d’une minute (pratique) ; anesthésiques seulement avec un vétérinaire.',
  'Males of 12 months had more and better milt than of 6 and 9; body weight says little (r 0.68), the testis much (r 0.98).':
    'Les mâles de 12 mois avaient plus de laitance, et meilleure, que ceux de 6 et 9 ; le poids du corps dit peu (r 0,68), le testicule beaucoup (r 0,98).',
  'Of sewn males all lived with up to three quarters taken; 45, 90 and 120 days are in print: 90 is taken.':
    'Des mâles recousus, tous ont vécu avec jusqu’aux trois quarts pris ; 45, 90 et 120 jours sont imprimés : on prend 90.',
  'A vet for the operation.': 'Un vétérinaire pour l’opération.',
  'Ammonia: feed × protein × 0.092 (from memory) over the total that keeps the toxic part under the limit at this pH and temperature.':
    'Ammoniac : aliment × protéine × 0,092 (de mémoire) sur le total qui garde la part toxique sous la limite à ce pH et cette température.',
  'The limit for larvae was not found; fish of 141 g bear 0.34 mg/L, a leaflet saw first harm at 0.05.':
    'La limite pour larves n’a pas été trouvée ; des poissons de 141 g supportent 0,34 mg/L, une notice voit le premier mal à 0,05.',
  'Fry below 1 to 2 g cannot be counted on to breathe air.':
    'On ne peut compter que des alevins sous 1 à 2 g respirent l’air.',
  'SPAWN.AIR.STEPS lists what to do first.': 'SPAWN.AIR.STEPS dit quoi faire d’abord.',
  'Never a chemical: no safe dose of peroxide for larvae was found.':
    'Jamais un produit chimique : aucune dose sûre de peroxyde pour larves n’a été trouvée.',
  'Never raise it by 0.5 at once with fish in the vat: that killed channel catfish fry of 7 to 14 days.':
    'Ne le montez jamais de 0,5 d’un coup avec des poissons au bac : cela a tué des alevins de barbue de rivière de 7 à 14 jours.',
  'pH 6 and 8.5 as ends of borne for larvae are judgement between printed levels.':
    'pH 6 et 8,5 comme bouts de ce que supportent les larves sont un jugement entre des niveaux imprimés.',
  'Three figures: first harm at 0.05 mg/L in a leaflet; 0.34 mg/L borne by fish of 141 g; fingerlings half dead in 96 h at 3.85 mg/L, form not stated.':
    'Trois chiffres : premier mal à 0,05 mg/L dans une notice ; 0,34 mg/L supporté par des poissons de 141 g ; juvéniles à moitié morts en 96 h à 3,85 mg/L, forme non dite.',
  'The last stands alone and cannot be placed.': 'Le dernier reste seul et ne peut être placé.',
  'Step up when 95 of 100 fish take the new grain, mix both for two days (practice).':
    'Passez au-dessus quand 95 poissons sur 100 prennent le nouveau grain, mêlez les deux pendant deux jours (pratique).',
  'First grain for larvae of this fish 0.2 to 0.3 mm.':
    'Premier grain pour les larves de ce poisson 0,2 à 0,3 mm.',
  'A fingerling is 0.5 to 4 g depending on the seller: go by grams.':
    'Un juvénile fait 0,5 à 4 g selon le vendeur : comptez en grammes.',
  'Good trials lost 0.3 to 1.6 % a day from day 7, ordinary ones 2 to 4, bad ones 6 to 10; hatch to day 3 up to 8 %.':
    'De bons essais ont perdu 0,3 à 1,6 % par jour depuis le jour 7, les ordinaires 2 à 4, les mauvais 6 à 10 ; de l’éclosion au jour 3 jusqu’à 8 %.',
  'Up to the first day of food 8 % a day is usual, on the three days after it 4 %: larvae that never learned to eat die then.':
    'Jusqu’au premier jour d’aliment 8 % par jour est habituel, les trois jours d’après 4 % : les larves qui n’ont pas appris à manger meurent alors.',
  'Bodies understate: eaten fish leave none, so recount every week.':
    'Les corps disent trop peu : les poissons mangés n’en laissent pas, recomptez donc chaque semaine.',
  'Two to four causes in the order to look at them, never one verdict and never a drug.':
    'Deux à quatre causes dans l’ordre où les regarder, jamais un seul verdict et jamais un médicament.',
  'Write down what you find: the next run learns from it.':
    'Notez ce que vous trouvez : la prochaine ponte en apprend.',
  'Loads were printed at 18.3 °C; each 10 °C more halves them.':
    'Les charges furent imprimées à 18,3 °C ; chaque 10 °C de plus les divise par deux.',
  '2,000 fry of this fish in 3.5 L for a day and more were reported once: several times this table.':
    '2 000 alevins de ce poisson dans 3,5 L pendant un jour et plus furent rapportés une fois : plusieurs fois ce tableau.',
  'No feed for a day before (larvae: a few hours).':
    'Pas d’aliment un jour avant (larves : quelques heures).',
  'Pack at dawn in the shade, double bag, four corners; spines pierce it above 10 cm.':
    'Emballez à l’aube à l’ombre, sac double, quatre coins ; les épines le percent au-dessus de 10 cm.',
  'Fresh oxygen after 8 h, fresh water after 12 to 16 h.':
    'Oxygène frais après 8 h, eau fraîche après 12 à 16 h.',
  'Float bags 15 to 20 minutes before opening.':
    'Laissez flotter les sacs 15 à 20 minutes avant de les ouvrir.',
  'Salt in the bag was not found for this fish.': 'Du sel dans le sac n’a pas été trouvé pour ce poisson.',
  'No trial of this fish was found.': 'Aucun essai de ce poisson n’a été trouvé.',
  '2 % at the careful load of SPAWN.BAG.FISH, up to 5 % at the highest: from there a trade in small fish pays the buyer back.':
    '2 % à la charge prudente de SPAWN.BAG.FISH, jusqu’à 5 % à la plus forte : à partir de là un commerce de petits poissons rembourse l’acheteur.',
  'Drums of fry of 1 g went 50 km without a loss.':
    'Des fûts d’alevins de 1 g ont fait 50 km sans une perte.',
  'The share goes into Figures as fish alive when the buyer counts them.':
    'La part va dans Chiffres, comme poissons vivants quand l’acheteur les compte.',
  'Lower the water first, drain the net the same way each time, keep the fish wet and out of water under half a minute.':
    'Baissez d’abord l’eau, égouttez l’épuisette chaque fois de la même façon, gardez les poissons mouillés et hors de l’eau moins d’une demi-minute.',
  'Sizes differ by a third in an ungraded lot: the miscount shown assumes that.':
    'Les tailles diffèrent d’un tiers dans un lot non trié : l’erreur de compte montrée le suppose.',
  'Scrub and rinse first.': 'Frottez et rincez d’abord.',
  'Then the bath, then thiosulfate or three rinses, then dry in the sun (practice).':
    'Puis le bain, puis thiosulfate ou trois rinçages, puis sécher au soleil (pratique).',
  'A pool strip that reads 0 is not proof: fry die far below it, so neutralise as well.':
    'Une bandelette de piscine qui lit 0 n’est pas une preuve : les alevins meurent bien en dessous, neutralisez donc aussi.',
  'Wait ten days or until pH is down: Piper prints 9.5, larvae of this fish bear 9.0 at most.':
    'Attendez dix jours ou que le pH soit redescendu : Piper imprime 9,5, les larves de ce poisson supportent 9,0 au plus.',
  'Grams over 1.09 g/mL (recalled).': 'Grammes sur 1,09 g/mL (de mémoire).',
  'A label dose for all fish eggs, 1,000 to 2,000 µL/L for 15 minutes, kills every egg of this fish.':
    'Une dose d’étiquette pour tous les œufs de poisson, 1 000 à 2 000 µL/L pendant 15 minutes, tue tous les œufs de ce poisson.',
  'Never with permanganate.': 'Jamais avec du permanganate.',
  'A gallon is that of the United States, 3.785 L; the old British one is 4.546 L.':
    'Un gallon est celui des États-Unis, 3,785 L ; l’ancien gallon britannique fait 4,546 L.',
  'Forms read the same units behind a number.': 'Les formulaires lisent les mêmes unités derrière un nombre.',
  'zero: blank cells of your own formulas arrive as 0.':
    'zero : les cellules vides de vos propres formules arrivent comme 0.',
  'Write IF(B2="","",B2) in place of B2 where the cell may stay blank; the workbooks made here do so everywhere.':
    'Écrivez IF(B2="","",B2) à la place de B2 là où la cellule peut rester vide ; les classeurs faits ici le font partout.',
  'kept: nothing to do.': 'kept : rien à faire.',
  'Gives the same verdict as the records check in the pane.':
    'Donne le même verdict que le contrôle des registres dans le volet.',
  'Nothing is corrected: the sentence says what was seen and what would fit.':
    'Rien n’est corrigé : la phrase dit ce qui fut vu et ce qui irait.',
  'Leave cells blank that you do not keep.': 'Laissez vides les cellules que vous ne tenez pas.',
  'The window is that of the preparation, or of all of them, widened by 15 %.':
    'La fenêtre est celle de la préparation, ou de toutes, élargie de 15 %.',
  'The handbook table in it is recalled from memory.': 'Le tableau du manuel qui s’y trouve est de mémoire.',
  'The span runs from the first hatch of the fastest table to the last of the slowest.':
    'L’étendue va de la première éclosion du tableau le plus rapide à la dernière du plus lent.',
  'Remove wastes and the water is spared part of it.':
    'Enlevez les déchets et l’eau en est épargnée d’une part.',
};
