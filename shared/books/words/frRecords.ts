// Long: one table, a sentence a line: what the check of records, the rates and the trends say, in French.
/* eslint max-len: off -- a sentence a line */
import type { Phrases } from '../../units/phrases';

/** What a record can say, as sentences name it and at their beginning. */
const NOUNS: Phrases = {
  run: 'ponte',
  date: 'date',
  species: 'espèce',
  female: 'femelle',
  male: 'mâle',
  operator: 'personne',
  'hormone preparation': 'préparation hormonale',
  vat: 'bac',
  'product given': 'produit donné',
  note: 'note',
  'female weight': 'poids de la femelle',
  'hormone dose per kg': 'dose d’hormone par kg',
  'hormone volume': 'volume d’hormone',
  'injection time': 'heure d’injection',
  'strip time': 'heure de stripping',
  'water temperature': 'température de l’eau',
  latency: 'latence',
  'egg weight': 'poids des œufs',
  'eggs per gram': 'œufs par gramme',
  'number of eggs': 'nombre d’œufs',
  'egg yield': 'rendement en œufs',
  'fertilisation time': 'heure de fécondation',
  'eggs looked at': 'œufs regardés',
  'fertilised in the sample': 'fécondés dans l’échantillon',
  'number fertilised': 'nombre de fécondés',
  'share fertilised': 'part fécondée',
  'hatch time': 'heure d’éclosion',
  'incubation temperature': 'température d’incubation',
  'incubation time': 'durée d’incubation',
  'number hatched': 'nombre d’éclos',
  'share hatched': 'part éclose',
  'first feed': 'premier aliment',
  'number of fry': 'nombre d’alevins',
  'number of fingerlings': 'nombre de juvéniles',
  'number stocked': 'nombre mis en bac',
  'number alive': 'nombre de vivants',
  'number dead': 'nombre de morts',
  survival: 'survie',
  'stocking date': 'date de mise en bac',
  'end date': 'date de fin',
  'weight at the start': 'poids au début',
  'weight at the end': 'poids à la fin',
  days: 'jours',
  'growth rate': 'taux de croissance',
  'number of fish': 'nombre de poissons',
  'mean weight': 'poids moyen',
  'feed given': 'aliment donné',
  ration: 'ration',
  'feed conversion': 'indice de consommation',
  'pH after the dose': 'pH après la dose',
  'dose of the product': 'dose du produit',
  'water volume': 'volume d’eau',
  alkalinity: 'alcalinité',
  'dissolved oxygen': 'oxygène dissous',
  'vats in use': 'bacs occupés',
  'vats owned': 'bacs de la ferme',
  'line number': 'numéro de ligne',
  'receipt number': 'numéro de reçu',
  month: 'mois',
  week: 'semaine',
  sex: 'sexe',
  origin: 'origine',
  state: 'état',
  buyer: 'acheteur',
  'kind of entry': 'genre d’écriture',
  'what it was': 'ce que c’était',
  reason: 'raison',
  'kind of feed': 'genre d’aliment',
  size: 'taille',
  'time of day': 'heure du jour',
  'start time': 'heure de début',
  'end time': 'heure de fin',
  'time taken': 'durée',
  'male weight': 'poids du mâle',
  'female weight after stripping': 'poids de la femelle après stripping',
  'number of females': 'nombre de femelles',
  'number of males': 'nombre de mâles',
  'first dose': 'première dose',
  'second dose': 'seconde dose',
  'first dose per kg': 'première dose par kg',
  'second dose per kg': 'seconde dose par kg',
  'injection date': 'date d’injection',
  'time of the first injection': 'heure de la première injection',
  'strip date': 'date de stripping',
  'hatch date': 'date d’éclosion',
  'degree-hours': 'degrés-heures',
  'egg volume': 'volume des œufs',
  'eggs per millilitre': 'œufs par millilitre',
  'dead eggs': 'œufs morts',
  'morning water temperature': 'température de l’eau le matin',
  'afternoon water temperature': 'température de l’eau l’après-midi',
  ammonia: 'ammoniac',
  nitrite: 'nitrite',
  nitrate: 'nitrate',
  hardness: 'dureté',
  'salt in the water': 'sel dans l’eau',
  'strength of the treatment': 'concentration du traitement',
  'amount of the treatment': 'quantité du traitement',
  'number at the start': 'nombre au début',
  'number moved in': 'nombre entré',
  'number moved out': 'nombre sorti',
  'number sold': 'nombre vendu',
  'number left': 'nombre restant',
  'deaths in all': 'morts en tout',
  'deaths up to this day': 'morts jusqu’à ce jour',
  'fish in the sample': 'poissons dans l’échantillon',
  'weight of the sample': 'poids de l’échantillon',
  length: 'longueur',
  biomass: 'biomasse',
  'feed in all': 'aliment en tout',
  'meals a day': 'repas par jour',
  density: 'densité',
  'number graded': 'nombre trié',
  'small fish': 'petits poissons',
  'middle-sized fish': 'poissons moyens',
  'big fish': 'gros poissons',
  'fish put out': 'poissons écartés',
  'price of one': 'prix d’un poisson',
  'price of a thousand': 'prix du mille',
  'price of a unit': 'prix d’une unité',
  quantity: 'quantité',
  'money for the sale': 'argent de la vente',
  deposit: 'acompte',
  'money paid': 'argent payé',
  'money owed': 'argent dû',
  'money owed in all': 'argent dû en tout',
  'money in': 'argent entré',
  'money out': 'argent sorti',
  'money in hand': 'argent en caisse',
  'delivery date': 'date de livraison',
  'weight of a bag': 'poids d’un sac',
  'food per larva': 'aliment par larve',
};
const large = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const AT_THE_BEGINNING: Phrases = Object.fromEntries(
  Object.entries(NOUNS).map(([english, own]) => [large(english), large(own)]),
);

/** Each rule: its title, and why it matters. */
const RULES: Phrases = {
  'A decimal point in the wrong place': 'Une virgule au mauvais endroit',
  'A point left out or set wrong is the commonest slip of all.':
    'Une virgule oubliée ou mal mise est l’erreur la plus courante de toutes.',
  'Grams and kilograms mixed': 'Grammes et kilos mélangés',
  'One row in grams in a column of kilograms moves every figure made from it a thousandfold.':
    'Une ligne en grammes dans une colonne de kilos fausse mille fois tout chiffre qui en vient.',
  'Pounds in a column of kilograms': 'Des livres dans une colonne de kilos',
  'A scale set to pounds doubles the hormone she is given.':
    'Une balance réglée en livres double l’hormone qu’elle reçoit.',
  'Two digits swapped': 'Deux chiffres échangés',
  'Swapped digits look like any other number; only what follows from it gives it away.':
    'Des chiffres échangés ressemblent à tout autre nombre ; seul ce qui en découle le trahit.',
  '°F and °C mixed': '°F et °C mélangés',
  'A thermometer set to °F makes every time worked out from it wrong.':
    'Un thermomètre réglé en °F rend fausse toute heure calculée avec lui.',
  'A count grows along the stages': 'Un nombre grandit d’une étape à l’autre',
  'Eggs do not multiply: a later stage that counts more means one of the two was counted or typed wrong.':
    'Les œufs ne se multiplient pas : si une étape suivante en compte plus, l’un des deux est mal compté ou mal tapé.',
  'Negative, or a fraction of a fish': 'Négatif, ou une fraction de poisson',
  'A minus slips in with a dash, a fraction comes from a formula where a count was wanted.':
    'Un moins vient d’un tiret, une fraction d’une formule là où il fallait un comptage.',
  'Eggs do not follow from weight and count': 'Les œufs ne suivent pas du poids et du comptage',
  'The number is worked out from the two; when it differs, one of the three was changed or mistyped.':
    'Le nombre se calcule des deux ; s’il diffère, l’un des trois a été changé ou mal tapé.',
  'Egg yield does not follow from the weights': 'Le rendement en œufs ne suit pas des poids',
  'The yield is worked out from the two weights.': 'Le rendement se calcule des deux poids.',
  'A percentage does not follow from its counts': 'Un pourcentage ne suit pas de ses comptages',
  'A share is one count divided by another; when it is not, one of the three is wrong.':
    'Une part est un comptage divisé par un autre ; sinon, l’un des trois est faux.',
  'Hormone volume does not follow from weight and dose':
    'Le volume d’hormone ne suit pas du poids et de la dose',
  'Too little does not ovulate her, too much is wasted or harms.':
    'Trop peu ne la fait pas ovuler, trop est perdu ou nuit.',
  'Latency does not follow from the times': 'La latence ne suit pas des heures',
  'Incubation time does not follow from the times': 'La durée d’incubation ne suit pas des heures',
  'The times say how long it was.': 'Les heures disent combien cela a duré.',
  'Days do not follow from the dates': 'Les jours ne suivent pas des dates',
  'The dates say how long it was; whether the first day counts is left open.':
    'Les dates disent combien cela a duré ; que le premier jour compte ou non reste ouvert.',
  'Feed does not follow from number, weight and ration':
    'L’aliment ne suit pas du nombre, du poids et de la ration',
  'Feed worked out on an old weight or number starves the fish or fouls the water.':
    'Un aliment calculé sur un vieux poids ou nombre affame les poissons ou salit l’eau.',
  'Growth rate does not follow from the weights': 'Le taux de croissance ne suit pas des poids',
  'A growth rate worked out in another way cannot be compared with any other.':
    'Un taux de croissance calculé autrement ne se compare à aucun autre.',
  'Feed conversion does not follow from feed and gain':
    'L’indice de consommation ne suit pas de l’aliment et du gain',
  'Counting the final weight as gain, or the stocked number as harvested, makes it look better than it is.':
    'Compter le poids final comme gain, ou le nombre mis en bac comme récolté, le fait paraître meilleur qu’il n’est.',
  'A value beyond belief': 'Une valeur incroyable',
  'Such a value is a slip of the pen, a wrong unit or a wrong column.':
    'Une telle valeur est une faute d’écriture, une mauvaise unité ou une mauvaise colonne.',
  'More than 100 %': 'Plus de 100 %',
  'A part cannot be more than the whole; often the counts behind it are of two different batches.':
    'Une partie ne dépasse pas le tout ; souvent les comptages derrière viennent de deux lots.',
  'Eggs per gram out of the ordinary': 'Œufs par gramme hors de l’ordinaire',
  'Wet eggs, a sample that was weighed with its dish, or a count of the wrong sample.':
    'Des œufs mouillés, un échantillon pesé avec son récipient, ou le comptage d’un autre échantillon.',
  'More eggs than she can hold': 'Plus d’œufs qu’elle ne peut en porter',
  'Published stripped eggs weighed 1.3 % of the body in the dry and 14.3 % in the rainy season.':
    'Les œufs strippés publiés pesaient 1,3 % du corps en saison sèche et 14,3 % en saison des pluies.',
  'Hormone per kg out of the ordinary': 'Hormone par kg hors de l’ordinaire',
  'A ready-made solution is given to females at 0.25 to 0.80 mL/kg.':
    'Une solution prête à l’emploi se donne aux femelles à 0,25 à 0,80 mL/kg.',
  'Hatched where eggs die': 'Éclos là où les œufs meurent',
  'Either the reading is wrong or the eggs were not in that water.':
    'Ou la mesure est fausse, ou les œufs n’étaient pas dans cette eau.',
  'Latency does not fit the temperature': 'La latence ne va pas avec la température',
  'Warmth sets the hour: at 20 °C it is three times as long as at 30 °C. A strip at the wrong hour loses the eggs, a wrong time or temperature loses the record.':
    'La chaleur fixe l’heure : à 20 °C il faut trois fois plus de temps qu’à 30 °C. Un stripping à la mauvaise heure perd les œufs, une heure ou une température fausse perd le relevé.',
  'Hatch time does not fit the temperature': 'L’heure d’éclosion ne va pas avec la température',
  'Eggs hatch by warmth, not by habit: a hatch a day early or late is a wrong date or a wrong reading.':
    'Les œufs éclosent selon la chaleur, pas par habitude : une éclosion un jour trop tôt ou trop tard est une date fausse ou une mesure fausse.',
  'A pH change the dose cannot have made': 'Un changement de pH que la dose n’a pu faire',
  'pH read before it settled, grams for kilograms, or a volume that was guessed.':
    'Un pH lu avant qu’il se pose, des grammes pour des kilos, ou un volume deviné.',
  'Feed does not fit number and weight': 'L’aliment ne va pas avec le nombre et le poids',
  'Grams for kilograms, an old weight, or fish that are no longer there.':
    'Des grammes pour des kilos, un vieux poids, ou des poissons qui ne sont plus là.',
  'Growth beyond belief': 'Une croissance incroyable',
  'A sample of the biggest, a unit slip, or a date that is wrong by a month.':
    'Un échantillon des plus gros, une erreur d’unité, ou une date fausse d’un mois.',
  'Feed conversion beyond belief': 'Un indice de consommation incroyable',
  'Water makes up most of a fish, so a little less than 1 is possible; far less is a wrong weight or number.':
    'Un poisson est surtout de l’eau, un peu moins de 1 est donc possible ; bien moins est un poids ou un nombre faux.',
  'Times out of order': 'Des heures dans le désordre',
  'A run happens in one order; past midnight the date is often not moved on.':
    'Une ponte se déroule dans un ordre ; après minuit on oublie souvent de changer la date.',
  'A date in a wrong century': 'Une date d’un autre siècle',
  'A year of two digits is read as 19.. or 20.. by the program, not by the one who typed it.':
    'Une année à deux chiffres est lue 19.. ou 20.. par le programme, pas par qui l’a tapée.',
  'A date out of sequence': 'Une date hors de la suite',
  'Day and month are exchanged by programs set to another country, or the year is last year’s.':
    'Jour et mois sont échangés par des programmes réglés sur un autre pays, ou l’année est celle d’avant.',
  "Day and month are exchanged by programs set to another country, or the year is last year's.":
    'Jour et mois sont échangés par des programmes réglés sur un autre pays, ou l’année est celle d’avant.',
  'Dates in two orders': 'Des dates dans deux ordres',
  'Then every date with a day up to the 12th is open to both readings.':
    'Alors toute date avec un jour jusqu’au 12 se lit des deux façons.',
  'Copied down, not measured': 'Recopié, pas mesuré',
  'A copied value looks like a careful measurement and hides that none was made.':
    'Une valeur recopiée ressemble à une mesure soignée et cache qu’il n’y en a pas eu.',
  'A row entered twice': 'Une ligne entrée deux fois',
  'A run counted twice raises every average it is in.':
    'Une ponte comptée deux fois pèse sur toute moyenne où elle est.',
  'Round numbers where counts belong': 'Des nombres ronds au lieu de comptages',
  'A count by eye is often wrong by half; a round number says that it was one.':
    'Un comptage à l’œil se trompe souvent de moitié ; un nombre rond dit que c’en était un.',
  "Far from the farm's own history": 'Loin de l’histoire de la ferme',
  'What is usual on this farm is the best yardstick there is; a run that far off deserves a second look, right or wrong.':
    'Ce qui est habituel dans cette ferme est la meilleure mesure ; une ponte si loin mérite un second regard, juste ou fausse.',
  "Ten or a thousand times the farm's own values": 'Dix ou mille fois les valeurs de la ferme',
  'A point left out, or grams in a column of kilograms, where nothing else in the row gives it away.':
    'Une virgule oubliée, ou des grammes dans une colonne de kilos, là où rien d’autre sur la ligne ne le trahit.',
  'A number typed over a formula': 'Un nombre tapé sur une formule',
  'It does not follow when the numbers before it change, and nobody sees that.':
    'Il ne suit pas quand les nombres d’avant changent, et personne ne le voit.',
  'A formula unlike its neighbours': 'Une formule différente de ses voisines',
  'A formula copied from the wrong row, or mended in one place only.':
    'Une formule copiée de la mauvaise ligne, ou corrigée à un seul endroit.',
  'Words where a number belongs': 'Des mots à la place d’un nombre',
  'The row is missing from everything worked out from the column.':
    'La ligne manque dans tout ce qui se calcule de la colonne.',
  'Numbers stored as text': 'Des nombres enregistrés comme texte',
  'SUM and AVERAGE pass over them without a word.': 'SOMME et MOYENNE les sautent sans rien dire.',
  'The header names another unit': 'Le titre nomme une autre unité',
  'Whoever reads the header later is wrong by a thousand.':
    'Qui lit le titre plus tard se trompe de mille fois.',
  'A date in the future': 'Une date dans l’avenir',
  'A record is written after the event; a plan in the same sheet should be kept apart.':
    'Un relevé s’écrit après coup ; un plan dans la même feuille devrait être à part.',
  'One vat, two batches': 'Un bac, deux lots',
  'Either a date or a vat number is wrong, or two batches were mixed and neither can be counted.':
    'Ou une date ou un numéro de bac est faux, ou deux lots ont été mélangés et aucun ne se compte.',
  'More vats in use than there are': 'Plus de bacs occupés qu’il n’y en a',
  'An end date was not written down, or a vat is called by two names.':
    'Une date de fin n’a pas été notée, ou un bac porte deux noms.',
  'An error in a cell': 'Une erreur dans une cellule',
  'What reads the cell shows an error too, or leaves the row out without saying so.':
    'Ce qui lit la cellule montre aussi une erreur, ou laisse la ligne de côté sans le dire.',
  'A Spawnbook formula tied to another file': 'Une formule Spawnbook liée à un autre fichier',
  'It happens when a sheet is opened where the add-in is missing and saved again; the call is then dead.':
    'Cela arrive quand une feuille est ouverte là où le complément manque, puis enregistrée ; l’appel est alors mort.',
  'A line breaks what all others keep': 'Une ligne rompt ce que toutes les autres tiennent',
  'One of the figures was typed wrongly, or a formula reads the wrong cell.':
    'Un des chiffres est mal tapé, ou une formule lit la mauvaise cellule.',
  'A word among numbers': 'Un mot parmi des nombres',
  'The line is missing from everything worked out from the column.':
    'La ligne manque dans tout ce qui se calcule de la colonne.',
  'No such day or hour': 'Un jour ou une heure qui n’existe pas',
  'Nothing can be worked out from it, and the line drops out of every order by time.':
    'Rien ne s’en calcule, et la ligne tombe de tout ordre dans le temps.',
  'A number below nothing': 'Un nombre sous zéro',
  'A sign slipped in, or more was taken than there was.':
    'Un signe s’est glissé, ou on a pris plus qu’il n’y avait.',
  'Over a hundred percent': 'Plus de cent pour cent',
  'A part cannot be more than the whole.': 'Une partie ne dépasse pas le tout.',
  'Nothing like the others': 'Rien à voir avec les autres',
  'A nought too many, a mark that moved, or another unit.':
    'Un zéro de trop, une virgule déplacée, ou une autre unité.',
  'Fahrenheit among Celsius': 'Des Fahrenheit parmi des Celsius',
  'A thermometer or a hand changed scale.': 'Un thermomètre ou une main a changé d’échelle.',
  'Out of proportion to its line': 'Hors de proportion avec sa ligne',
  'One of the two is wrong by a factor, though each alone could be right.':
    'L’un des deux est faux d’un facteur, quoique chacun seul pourrait être juste.',
  'A product that does not come out': 'Un produit qui ne tombe pas juste',
  'One of the figures of the line is wrong by a factor.':
    'Un des chiffres de la ligne est faux d’un facteur.',
  'A tank or a bag of another size': 'Un bac ou un sac d’une autre taille',
  'A digit was mistyped; the dose worked out from it is wrong.':
    'Un chiffre a été mal tapé ; la dose qui s’en calcule est fausse.',
  'No fish is like that': 'Aucun poisson n’est ainsi',
  'One of the two was written in another unit or with a nought too many.':
    'L’un des deux a été écrit dans une autre unité ou avec un zéro de trop.',
  'A date out of its order': 'Une date hors de son ordre',
  'A month or a year slipped; everything counted from the day is wrong.':
    'Un mois ou une année s’est trompé ; tout ce qui se compte de ce jour est faux.',
  'Two days too far apart': 'Deux jours trop éloignés',
  'One of the dates has slipped.': 'L’une des dates s’est trompée.',
  'Not at this hour': 'Pas à cette heure',
  'Morning and evening are easily exchanged; everything counted from the hour is then twelve hours off.':
    'Matin et soir s’échangent facilement ; tout ce qui se compte de l’heure est alors décalé de douze heures.',
  'Too many hours or too few': 'Trop d’heures ou trop peu',
  'One of the two was written wrongly.': 'L’un des deux a été mal écrit.',
  'The time stated is not the time between': 'La durée écrite n’est pas la durée entre les deux',
  'One of the three is wrong.': 'L’un des trois est faux.',
  'More out than in': 'Plus de sortis que d’entrés',
  'The pH moves with nothing given': 'Le pH bouge sans que rien soit donné',
  'The dose was not written down, or a reading is wrong.':
    'La dose n’a pas été notée, ou une mesure est fausse.',
  'Smaller than before': 'Plus petit qu’avant',
  'Fish do not get smaller or become more by themselves; a figure or a tank was exchanged.':
    'Les poissons ne rapetissent ni ne se multiplient seuls ; un chiffre ou un bac a été échangé.',
  'A record entered twice': 'Un relevé entré deux fois',
  'Counted twice, it changes every total.': 'Compté deux fois, il change tout total.',
  'A number used twice': 'Un numéro utilisé deux fois',
  'Two records under one name are later taken for one.':
    'Deux relevés sous un nom sont plus tard pris pour un seul.',
  'Figures of the line above left standing': 'Des chiffres de la ligne du dessus laissés',
  'The line was copied as a form and not filled in.': 'La ligne a été copiée comme modèle et pas remplie.',
  'A total is not its lines': 'Un total qui n’est pas celui de ses lignes',
  'A line was left out, or a figure changed after it was added up.':
    'Une ligne a été oubliée, ou un chiffre changé après l’addition.',
  'Two sheets disagree': 'Deux feuilles ne s’accordent pas',
  'One of the two was typed wrongly, or not carried over.': 'L’une des deux est mal tapée, ou pas reportée.',
};

/** How a figure follows from others. */
const RELATIONS: Phrases = {
  'egg weight × eggs per gram': 'poids des œufs × œufs par gramme',
  'egg weight ÷ body weight': 'poids des œufs ÷ poids du corps',
  'good ÷ looked at': 'bons ÷ regardés',
  'fertilised ÷ eggs': 'fécondés ÷ œufs',
  'hatched ÷ fertilised': 'éclos ÷ fécondés',
  'hatched ÷ eggs': 'éclos ÷ œufs',
  'fry ÷ hatched': 'alevins ÷ éclos',
  'fingerlings ÷ fry': 'juvéniles ÷ alevins',
  'alive ÷ stocked': 'vivants ÷ mis en bac',
  'weight × dose per kg': 'poids × dose par kg',
  'strip time − injection time': 'heure de stripping − heure d’injection',
  'hatch time − fertilisation time': 'heure d’éclosion − heure de fécondation',
  'end date − stocking date': 'date de fin − date de mise en bac',
  'fish × mean weight × ration': 'poissons × poids moyen × ration',
  'feed ÷ gain of the batch': 'aliment ÷ gain du lot',
};

const SENTENCES: Phrases = {
  '{} does not follow from {}: {} expected, {} seen.': '{} : ne suit pas de {} ; attendu {}, vu {}.',
  '{} looks {}: {} seen; with {} the {} follows from {}.': '{} : semble {} ; vu {} ; avec {}, {} suit de {}.',
  'ten times too much': 'dix fois trop grand',
  'ten times too little': 'dix fois trop petit',
  'a hundred times too much': 'cent fois trop grand',
  'a hundred times too little': 'cent fois trop petit',
  'a thousand times too much': 'mille fois trop grand',
  'a thousand times too little': 'mille fois trop petit',
  'in pounds': 'en livres',
  'turned from pounds twice over': 'converti deux fois depuis des livres',
  'with two digits swapped': 'avec deux chiffres échangés',
  '{n} times too much': '{n} fois trop grand',
  '{n} times too little': '{n} fois trop petit',
  '{} is {} in {n} rows one after the other: copied down instead of measured?':
    '{} : {} dans {n} lignes de suite ; recopié au lieu d’être mesuré ?',
  '{} is {} in {n} rows one after the other, down to {}: copied down instead of measured?':
    '{} : {} dans {n} lignes de suite, jusqu’à {} ; recopié au lieu d’être mesuré ?',
  '{} is {} in all {n} rows: a figure assumed, not measured.':
    '{} : {} dans toutes les {n} lignes ; un chiffre supposé, pas mesuré.',
  'Every number of this record is the same as in the one at {}: entered twice, or copied and not filled in?':
    'Chaque nombre de ce relevé est celui du relevé en {} : entré deux fois, ou copié et pas rempli ?',
  '{} is before the {}: {}, but {}.': '{} : avant {} ; {}, mais {}.',
  'With day and month exchanged it would be {}.': 'Jour et mois échangés, ce serait {}.',
  '{} is {}, which is no day: the last one a sheet knows is 31 Dec 9999.':
    '{} : {} n’est pas un jour ; le dernier qu’une feuille connaît est le 31 déc. 9999.',
  '{} lies in the year {n}: probably {n}.': '{} : en l’an {n} ; probablement {n}.',
  'The date {} is out of order between {} and {}.': 'La date {} est hors d’ordre entre {} et {}.',
  'The column "{}" holds dates written day first and others written month first: 03/04 cannot be told apart.':
    'La colonne « {} » tient des dates écrites jour d’abord et d’autres mois d’abord : 03/04 ne se distingue pas.',
  '{} lies in the future: {}.': '{} : dans l’avenir, {}.',
  'A number is typed over the formula of the column "{}"; its {n} other rows have {}.':
    'Un nombre est tapé sur la formule de la colonne « {} » ; ses {n} autres lignes ont {}.',
  'The formula differs from the {n} others of the column "{}", which read like {}.':
    'La formule diffère des {n} autres de la colonne « {} », qui sont comme {}.',
  'A Spawnbook formula shows {}: open the pane and use Repair, or mend what it reads.':
    'Une formule Spawnbook montre {} : ouvrez le volet et réparez, ou corrigez ce qu’elle lit.',
  'The cell shows {} from {}; everything worked out from it fails too.':
    'La cellule montre {}, de {} ; tout ce qui s’en calcule échoue aussi.',
  'The cell shows {}; everything worked out from it fails too.':
    'La cellule montre {} ; tout ce qui s’en calcule échoue aussi.',
  'The formula calls Spawnbook through a link to another file ({}): it will not calculate until Repair takes the link out.':
    'La formule appelle Spawnbook par un lien vers un autre fichier ({}) : elle ne calcule pas tant que la réparation n’ôte pas le lien.',
  '{n} of {n} values of {} end in 00 ({}, where counting leaves about 1 %): rounded or estimated, so no interval worked out from them is true.':
    '{n} valeurs sur {n} de « {} » finissent par 00 ({}, où compter en laisse environ 1 %) : arrondies ou estimées, aucun intervalle qui s’en calcule n’est vrai.',
  '{} of {} is far from this farm’s own {n} values, whose middle is {}.':
    '{} : {} est loin des {n} valeurs de cette ferme, dont le milieu est {}.',
  "{} of {} is far from this farm's own {n} values, whose middle is {}.":
    '{} : {} est loin des {n} valeurs de cette ferme, dont le milieu est {}.',
  '{} of {} looks {}: the middle of {n} own values is {}, and {} would fit.':
    '{} : {} semble {} ; le milieu de {n} valeurs propres est {}, et {} irait.',
  '{} of {} cannot be right: {}.': '{} : {} ne peut être juste ; {}.',
  '{n} eggs per gram is outside what was counted in African catfish, 435 to 1\u202f176.':
    '{n} œufs par gramme est hors de ce qui fut compté chez le silure africain, 435 à 1\u202f176.',
  '{n} g of eggs from a female of {n} kg is {} of her body; 14 % is a good season.':
    '{n} g d’œufs d’une femelle de {n} kg font {} de son corps ; 14 % est une bonne saison.',
  '{n} mL of hormone per kg is outside what is given, {n} to {n} mL/kg.':
    '{n} mL d’hormone par kg est hors de ce qui se donne, {n} à {n} mL/kg.',
  'Eggs hatched at {n} °C, which kills them ({}: alive from {n} to {n} °C).':
    'Des œufs éclos à {n} °C, qui les tue ({} : vivants de {n} à {n} °C).',
  '{n} g for {n} fish of {n} g is {} of their weight in a day; {} is more than they eat.':
    '{n} g pour {n} poissons de {n} g font {} de leur poids en un jour ; {} est plus qu’ils ne mangent.',
  'A thousand times less would fit: grams and kilograms mixed?':
    'Mille fois moins irait : grammes et kilos mélangés ?',
  'A thousand times more would fit: grams and kilograms mixed?':
    'Mille fois plus irait : grammes et kilos mélangés ?',
  'From {n} to {n} g in {n} days is {n} % per day; fish of that size do not grow above {n}.':
    'De {n} à {n} g en {n} jours font {n} % par jour ; des poissons de cette taille ne dépassent pas {n}.',
  'The fish are lighter at the end: {n} g became {n} g.':
    'Les poissons sont plus légers à la fin : {n} g sont devenus {n} g.',
  'Were the two samples of the same fish, and in the same unit?':
    'Les deux échantillons étaient-ils des mêmes poissons, et dans la même unité ?',
  'Feed conversion of {n} is beyond belief: so little dry feed does not make so much fish.':
    'Un indice de consommation de {n} est incroyable : si peu d’aliment sec ne fait pas tant de poisson.',
  'Feed conversion of {n}: the feed was lost, or fish died or were taken out unseen.':
    'Indice de consommation de {n} : l’aliment a été perdu, ou des poissons sont morts ou sortis sans être vus.',
  '{} of {n} looks like °F: that is {n} °C.': '{} : {n} semble être en °F, soit {n} °C.',
  '{} of {n} in a column kept in °F looks like °C.':
    '{} : {n}, dans une colonne tenue en °F, semble être en °C.',
  '{} is above the {} it came from: {} of {}.': '{} : au-dessus de ce dont il vient ({}) ; {} sur {}.',
  'Alive and dead together are more than were stocked: {} + {} of {}.':
    'Vivants et morts ensemble dépassent ce qui fut mis en bac : {} + {} sur {}.',
  '{} is negative: {}.': '{} : négatif, {}.',
  '{} is a fraction: {n}. A count is whole.': '{} : une fraction, {n}. Un comptage est entier.',
  '"{}" stands where the {} belongs: it was not read.': '« {} » est à la place de « {} » : ce ne fut pas lu.',
  '{n} of the values of "{}" are stored as text: formulas that add them up leave them out.':
    '{n} des valeurs de « {} » sont enregistrées comme texte : les formules qui les additionnent les oublient.',
  'The values of "{}" do not look like its unit: {}. They are read as {}; say so if that is wrong.':
    'Les valeurs de « {} » ne semblent pas dans son unité : {}. Elles sont lues en {} ; dites-le si c’est faux.',
  '{} from injection to strip does not fit {n} °C: {} to {} would ({}).':
    '{} de l’injection au stripping ne va pas avec {n} °C : {} à {} irait ({}).',
  '{}, moved by your own rates': '{}, déplacé par vos propres taux',
  'a trial without a named hormone': 'un essai sans hormone nommée',
  '{} from fertilisation to hatch does not fit {n} °C: {} to {} would.':
    '{} de la fécondation à l’éclosion ne va pas avec {n} °C : {} à {} irait.',
  'Vat {} is filled on {} while another batch is in it until {}.':
    'Le bac {} est rempli le {} alors qu’un autre lot y est jusqu’au {}.',
  '{n} vats are in use, but there are only {n}.': '{n} bacs sont occupés, mais il n’y en a que {n}.',
  'On {} {n} vats are in use at once, but there are only {n}.':
    'Le {}, {n} bacs sont occupés à la fois, mais il n’y en a que {n}.',
  '{} raises pH, yet it went from {n} to {n}.': '{} : monte le pH, pourtant il est passé de {n} à {n}.',
  '{} lowers pH, yet it went from {n} to {n}.': '{} : baisse le pH, pourtant il est passé de {n} à {n}.',
  'That dose of {} in water of {n} meq/L cannot give pH {n}: {n} freshly mixed or aired to {n} would follow.':
    'Cette dose de {} dans une eau de {n} meq/L ne peut donner pH {n} : il suivrait {n} à {n}, juste mélangée ou aérée.',
  'So little {} cannot lift pH from {n} to {n}: even the softest water needs {n} times as much.':
    'Si peu de {} ne peut monter le pH de {n} à {n} : même l’eau la plus douce en demande {n} fois plus.',
  'So much {} must lift pH from {n} to at least {n}, even in water full of carbon dioxide; {n} was read.':
    'Tant de {} doit monter le pH de {n} à {n} au moins, même dans une eau pleine de gaz carbonique ; {n} fut lu.',
  'Volume, dose or a reading is wrong.': 'Le volume, la dose ou une mesure est faux.',
  '"{}" is {n} times too much for {}, by what the other {n} lines say.':
    '« {} » est {n} fois trop grand pour {}, selon les {n} autres lignes.',
  '"{}" is {n} times too little for {}, by what the other {n} lines say.':
    '« {} » est {n} fois trop petit pour {}, selon les {n} autres lignes.',
  '"{}" and "{}"': '« {} » et « {} »',
  '"{}" and "{}" and "{}"': '« {} », « {} » et « {} »',
  '"{}" of sheet {}': '« {} » de la feuille {}',
  '"{}" is {n} here and {n} in the other lines.': '« {} » est {n} ici et {n} dans les autres lignes.',
  '"{}" is {n} here and {n} in the other lines of {}.':
    '« {} » est {n} ici et {n} dans les autres lignes de {}.',
  '{n} under "{}" is nothing like {n} in the line above and {n} below.':
    '{n} sous « {} » n’a rien à voir avec {n} à la ligne du dessus et {n} dessous.',
  'More under "{}" ({n}) than there were under "{}" ({n}).':
    'Plus sous « {} » ({n}) qu’il n’y en avait sous « {} » ({n}).',
  '"{}" is no day of the calendar; the others under "{}" are.':
    '« {} » n’est pas un jour du calendrier ; les autres sous « {} » en sont.',
  '"{}" is no date or hour; the others under "{}" are.':
    '« {} » n’est ni date ni heure ; les autres sous « {} » en sont.',
  '"{}" stands where "{}" has numbers: it was not read.':
    '« {} » est là où « {} » a des nombres : ce ne fut pas lu.',
  '"{}" is below nothing here ({n}); no other line is.':
    '« {} » est ici sous zéro ({n}) ; aucune autre ligne ne l’est.',
  '{n} % under "{}": a part cannot be more than the whole.':
    '{n} % sous « {} » : une partie ne dépasse pas le tout.',
  '{n} is nothing like the other {n} numbers under "{}", whose middle is {n}.':
    '{n} n’a rien à voir avec les {n} autres nombres sous « {} », dont le milieu est {n}.',
  '{n} under "{}" looks like °F: that is {n} °C, as the others are.':
    '{n} sous « {} » semble être en °F, soit {n} °C, comme les autres.',
  '{n} lies far from the other {n} numbers under "{}", whose middle is {n}.':
    '{n} est loin des {n} autres nombres sous « {} », dont le milieu est {n}.',
  '{n} would follow, {n} stands there': '{n} suivrait, {n} y est',
  '{} does not begin with the {} of the line above, as the other lines do: {}.':
    '{} : ne commence pas par {} de la ligne du dessus, comme les autres lignes ; {}.',
  '{} does not follow from {} as in the other lines: {}.':
    '{} : ne suit pas de {} comme dans les autres lignes ; {}.',
  '{} does not go with {} as in the other lines: {}.':
    '{} : ne va pas avec {} comme dans les autres lignes ; {}.',
  '{} does not go on from the line above with {}: {}.':
    '{} : ne continue pas la ligne du dessus avec {} ; {}.',
  '{} is not {} as in the other lines: {}.': '{} : n’est pas {} comme dans les autres lignes ; {}.',
  '{} under "{}" breaks the order of the lines: {} stands above, {} below.':
    '{} sous « {} » rompt l’ordre des lignes : {} au-dessus, {} au-dessous.',
  '{} under "{}" breaks the order of the lines: {} stands above.':
    '{} sous « {} » rompt l’ordre des lignes : {} au-dessus.',
  '{} under "{}" breaks the order of the lines: {} below.':
    '{} sous « {} » rompt l’ordre des lignes : {} au-dessous.',
  'From "{}" {} to "{}" {} are {n} days; the other lines have about {n}.':
    'De « {} » {} à « {} » {} il y a {n} jours ; les autres lignes en ont environ {n}.',
  '{} under "{}" is far from the usual {}.': '{} sous « {} » est loin de l’habituel {}.',
  '{} under "{}" is far from the usual {}; {} would fit.':
    '{} sous « {} » est loin de l’habituel {} ; {} irait.',
  '{} under "{}" is far from all others, {} to {}.': '{} sous « {} » est loin de tous les autres, {} à {}.',
  'The pH goes from {n} to {n} with nothing given.': 'Le pH passe de {n} à {n} sans que rien soit donné.',
  '"{}" is warmer than "{}", alone among {n} days: the two may be exchanged.':
    '« {} » est plus chaud que « {} », seul parmi {n} jours : les deux sont peut-être échangés.',
  'The {} goes from {n} to {n} in {}: fish do not become more by themselves.':
    '{} : passe de {n} à {n} dans {} ; les poissons ne se multiplient pas seuls.',
  'The {} goes from {n} to {n}: fish do not become more by themselves.':
    '{} : passe de {n} à {n} ; les poissons ne se multiplient pas seuls.',
  'The {} goes from {n} to {n} in {}: fish do not get smaller by themselves.':
    '{} : passe de {n} à {n} dans {} ; les poissons ne rapetissent pas seuls.',
  'The {} goes from {n} to {n}: fish do not get smaller by themselves.':
    '{} : passe de {n} à {n} ; les poissons ne rapetissent pas seuls.',
  '"{}" {n} with "{}" {n}: {n} times more of it than in the other {n} lines, whose middle is {n} to one.':
    '« {} » {n} avec « {} » {n} : {n} fois plus que dans les {n} autres lignes, dont le milieu est {n} pour un.',
  '"{}" {n} with "{}" {n}: {n} times less of it than in the other {n} lines, whose middle is {n} to one.':
    '« {} » {n} avec « {} » {n} : {n} fois moins que dans les {n} autres lignes, dont le milieu est {n} pour un.',
  '{} with {}: that cannot be of one {} and {}.': '{} avec {} : cela ne peut être du même {} et {}.',
  '"{}" {n}': '« {} » {n}',
  'This line says the same as an earlier one, cell for cell: it may have been entered twice.':
    'Cette ligne dit la même chose qu’une ligne d’avant, cellule pour cellule : elle est peut-être entrée deux fois.',
  '"{}" under "{}" stands there twice; every other line has its own.':
    '« {} » sous « {} » y est deux fois ; chaque autre ligne a le sien.',
  '{n} figures of this line are those of the line above: it may have been copied and not filled in.':
    '{n} chiffres de cette ligne sont ceux de la ligne du dessus : elle est peut-être copiée et pas remplie.',
  '{} says {n} and the lines of "{}" of sheet {} give {n} for {}; {n} others agree.':
    '{} dit {n} et les lignes de « {} » de la feuille {} donnent {n} pour {} ; {n} autres s’accordent.',
  '{} says {n} and "{}" of sheet {} says {n} for {}; {n} others agree.':
    '{} dit {n} et « {} » de la feuille {} dit {n} pour {} ; {n} autres s’accordent.',
  '"{}" stands in no line of "{}" of sheet {}; all others do.':
    '« {} » n’est dans aucune ligne de « {} » de la feuille {} ; tous les autres y sont.',
  '{n} are sold of "{}"; sheet {} has {n} under "{}".':
    '{n} sont vendus de « {} » ; la feuille {} en a {n} sous « {} ».',
  'From "{}" to "{}" are {n} hours; the other lines have about {n}.':
    'De « {} » à « {} » il y a {n} heures ; les autres lignes en ont environ {n}.',
  'From "{}" to "{}" are {n} hours; the other lines have about {n}: morning and evening may be exchanged.':
    'De « {} » à « {} » il y a {n} heures ; les autres lignes en ont environ {n} : matin et soir sont peut-être échangés.',
  '"{}" says {n}, but from "{}" to "{}" it is {n}.': '« {} » dit {n}, mais de « {} » à « {} » il y a {n}.',
  'The total under "{}" is typed as {n}; the lines give {n}.':
    'Le total sous « {} » est tapé {n} ; les lignes donnent {n}.',
  'The average under "{}" is typed as {n}; the lines give {n}.':
    'La moyenne sous « {} » est tapée {n} ; les lignes donnent {n}.',
  'The formula under "{}" gives {n}, but the lines give {n}: it leaves some of them out.':
    'La formule sous « {} » donne {n}, mais les lignes donnent {n} : elle en oublie.',
};

/** Why a value cannot be right. */
const LIMITS: Phrases = {
  'a part cannot be more than the whole': 'une partie ne dépasse pas le tout',
  'warm-water fish and their eggs do not live through it': 'poissons et œufs d’eau chaude n’y survivent pas',
  'no brood fish of these kinds weighs that': 'aucun géniteur de ces espèces ne pèse cela',
  'no preparation is given in such a volume per kg': 'aucune préparation ne se donne à un tel volume par kg',
  'no fish is given such a volume': 'aucun poisson ne reçoit un tel volume',
  'no warm-water fish ovulates after such a time': 'aucun poisson d’eau chaude n’ovule après un tel temps',
  'no female of these kinds gives so much': 'aucune femelle de ces espèces n’en donne tant',
  'counts of African catfish run from 435 to 1\u202f176 per gram':
    'les comptages de silure africain vont de 435 à 1\u202f176 par gramme',
  'no spawning gives so many': 'aucune ponte n’en donne tant',
  'no female is so much egg': 'aucune femelle n’est à ce point pleine d’œufs',
  'no warm-water eggs hatch after such a time': 'aucun œuf d’eau chaude n’éclot après un tel temps',
  'no fish of these kinds weighs that': 'aucun poisson de ces espèces ne pèse cela',
  'no batch is kept so long': 'aucun lot n’est gardé si longtemps',
  'no water that fish are put into has that pH': 'aucune eau où l’on met des poissons n’a ce pH',
  'fresh water does not hold so much': 'l’eau douce n’en contient pas tant',
  'water gives off oxygen long before': 'l’eau rend l’oxygène bien avant',
};

/** Units as a figure has them behind it, and in French. */
const UNITS: Phrases = {
  '': '',
  ...Object.fromEntries(
    [' kg', ' g', ' mg', ' mL', ' L', ' °C', ' °F', ' h', ' d', ' %', ' mL/kg', ' meq/L', ' mg/L'].map(
      (unit) => [unit, unit],
    ),
  ),
  ' per g': ' par g',
  ' % per day': ' % par jour',
  ' days': ' jours',
};
/** A figure within bounds, unit by unit: a hole that takes any text would change the words of others. */
const BOUNDS: Phrases = {
  '@': '@',
  '@ to @': '@ à @',
  '{n} to @': '{n} à @',
  'after @': 'après @',
  'between @ and @': 'entre @ et @',
  'up to @': 'jusqu’à @',
  'up to about @': 'jusqu’à environ @',
  'about @': 'environ @',
  'above @': 'au-dessus de @',
  'below @': 'au-dessous de @',
  'at most @': 'au plus @',
  '@, {n} times': '@, {n} fois',
};
const FIGURES: Phrases = Object.fromEntries(
  Object.entries(UNITS).flatMap(([unit, own]) =>
    Object.entries(BOUNDS)
      .filter(([english]) => unit !== own || english !== '@')
      .map(([english, said]) => [english.replaceAll('@', `{n}${unit}`), said.replaceAll('@', `{n}${own}`)]),
  ),
);

/** What was seen, what was expected, what is proposed. */
const SHORT: Phrases = {
  'values that differ a little': 'des valeurs qui diffèrent un peu',
  '{} in all {n} rows': '{} dans toutes les {n} lignes',
  'the same numbers as row {n}': 'les mêmes nombres que la ligne {n}',
  'numbers of its own': 'des nombres à elle',
  'a day with its hour': 'un jour avec son heure',
  'a year like {n}': 'une année comme {n}',
  'the same day in {n}': 'le même jour en {n}',
  'day first and month first': 'jour d’abord et mois d’abord',
  'one order': 'un seul ordre',
  'a value': 'une valeur',
  'the function without a link': 'la fonction sans lien',
  '{n} of {n} end in 00': '{n} sur {n} finissent par 00',
  'about 1 in 100': 'environ 1 sur 100',
  '{} to {} of body weight': '{} à {} du poids du corps',
  '{n} or more': '{n} ou plus',
  'a whole number': 'un nombre entier',
  'a date': 'une date',
  'a number': 'un nombre',
  numbers: 'des nombres',
  '{n} as text': '{n} comme texte',
  'the unit of the header': 'l’unité du titre',
  'in use until {}': 'occupé jusqu’au {}',
  'free on {}': 'libre le {}',
  '{n} vats on {}': '{n} bacs le {}',
  'a rise of less than {n}': 'une montée de moins de {n}',
  'a name of the other sheet': 'un nom de l’autre feuille',
  'as the other lines': 'comme les autres lignes',
};

/** The sheets themselves: titles, headings, how columns were read, what was not checked. */
const SHEETS: Phrases = {
  'Findings of the records check': 'Constats du contrôle des relevés',
  '{n} findings in {n} records of {n} tables. Nothing was changed: a proposal is only a proposal.':
    '{n} constats dans {n} relevés de {n} tableaux. Rien n’a été changé : une proposition n’est qu’une proposition.',
  '{n} findings in {n} records of one table. Nothing was changed: a proposal is only a proposal.':
    '{n} constats dans {n} relevés d’un tableau. Rien n’a été changé : une proposition n’est qu’une proposition.',
  Severity: 'Gravité',
  Sheet: 'Feuille',
  Cell: 'Cellule',
  'What was found': 'Ce qui fut trouvé',
  Seen: 'Vu',
  'Proposal (nothing was changed)': 'Proposition (rien n’a été changé)',
  'Why it matters': 'Pourquoi cela compte',
  Rule: 'Règle',
  'Rests on': 'Repose sur',
  'Cannot be right': 'Ne peut être juste',
  'Common practice, no source': 'Pratique courante, sans source',
  'Definition or exact arithmetic': 'Définition ou calcul exact',
  Unlikely: 'Peu probable',
  'Worth a look': 'À regarder',
  '… and {n} more of {} in {}': '… et {n} de plus de {} dans {}',
  'Nothing was found.': 'Rien n’a été trouvé.',
  'How the records were read, and what was not checked':
    'Comment les relevés furent lus, et ce qui ne fut pas contrôlé',
  'A column read wrongly can be set right in the pane; the check then runs again.':
    'Une colonne mal lue se corrige dans le volet ; le contrôle recommence alors.',
  Column: 'Colonne',
  Header: 'Titre',
  'Read as': 'Lu comme',
  'Sure to': 'Sûr à',
  Because: 'Parce que',
  'not used': 'pas utilisé',
  'Not checked': 'Pas contrôlé',
  'you said so': 'vous l’avez dit',
  'the header "{}" reads as {}': 'le titre « {} » se lit : {}',
  'its header is not known': 'son titre n’est pas connu',
  'the header says {}, but a middle of {n} looks like {}':
    'le titre dit {}, mais un milieu de {n} semble être en {}',
  share: 'part',
  'its cells hold {}': 'ses cellules tiennent {}',
  'the numbers of the table bear it out': 'les nombres du tableau le confirment',
  'nearly every cell holds a date': 'presque chaque cellule tient une date',
  'nearly every cell holds an hour': 'presque chaque cellule tient une heure',
  'of what stands beside it': 'à cause de ce qui est à côté',
  'of the order of the work': 'à cause de l’ordre du travail',
  'its numbers are those of warm water': 'ses nombres sont ceux d’une eau chaude',
  'larvae come before fry': 'les larves viennent avant les alevins',
  'numbers are written with a decimal comma': 'les nombres ont une virgule décimale',
  'every number has three digits behind its mark: the mark parts thousands':
    'chaque nombre a trois chiffres derrière sa marque : la marque sépare les milliers',
  'numbers like {} are read as one thousand two hundred and fifty, as other columns write them':
    'les nombres comme {} se lisent mille deux cent cinquante, comme d’autres colonnes les écrivent',
  'dates are written in both orders': 'les dates sont écrites dans les deux ordres',
  'dates are read {}, because some can only be that':
    'les dates se lisent {}, parce que certaines ne peuvent être que cela',
  'day first': 'jour d’abord',
  'month first': 'mois d’abord',
  'one of several columns of the same kind': 'une colonne parmi plusieurs du même genre',
  'it is the time between two moments of its line': 'c’est le temps entre deux moments de sa ligne',
  'of the clock beside it': 'à cause de l’heure à côté',
  'it is the only column of dates': 'c’est la seule colonne de dates',
  dates: 'des dates',
  'dates or times': 'des dates ou des heures',
  words: 'des mots',
  times: 'des heures',
  text: 'du texte',
  nothing: 'rien',
  'fewer than two measured columns': 'moins de deux colonnes mesurées',
  'no column of dates': 'pas de colonne de dates',
  'only {n} rows have a date': 'seulement {n} lignes ont une date',
  'the rows are not kept in the order of their dates': 'les lignes ne suivent pas l’ordre de leurs dates',
  'the day of the check was not given': 'le jour du contrôle n’a pas été donné',
  'no column with {n} formulas of one form': 'pas de colonne avec {n} formules d’une forme',
  'fewer than {n} counts of {n} and more': 'moins de {n} comptages de {n} et plus',
  'fewer than {n} values in every column': 'moins de {n} valeurs dans chaque colonne',
  'no column with at least {n} values that lie close together':
    'pas de colonne avec au moins {n} valeurs proches',
  'no table says which vat was in use from when to when':
    'aucun tableau ne dit quel bac fut occupé de quand à quand',
  'the number of vats of the farm is not known; say it in the options or in a cell "Number of vats"':
    'le nombre de bacs de la ferme n’est pas connu ; dites-le dans les options ou dans une cellule « Number of vats »',
  'the book has only one table': 'le classeur n’a qu’un tableau',
};

/** Own rates and trends. */
const LEARNED: Phrases = {
  'What your own runs say': 'Ce que disent vos propres pontes',
  '{n} records used. With few runs a figure leans on the literature, with many on your farm. Low and high: where the mean of many runs lies, next run: where a single one lies, both with {n} % certainty.':
    '{n} relevés utilisés. Avec peu de pontes un chiffre s’appuie sur la littérature, avec beaucoup sur votre ferme. Bas et haut : où est la moyenne de beaucoup de pontes ; ponte suivante : où est une seule ; les deux sûrs à {n} %.',
  Rate: 'Taux',
  For: 'Pour',
  'Farm value': 'Valeur de la ferme',
  Low: 'Bas',
  High: 'Haut',
  'Next run low': 'Ponte suivante, bas',
  'Next run high': 'Ponte suivante, haut',
  Runs: 'Pontes',
  'Own weight': 'Poids propre',
  Literature: 'Littérature',
  Change: 'Écart',
  'Literature from': 'Littérature de',
  'the whole year': 'toute l’année',
  'a preparation not used yet': 'une préparation pas encore utilisée',
  'every run': 'chaque ponte',
  "the farm's other runs": 'les autres pontes de la ferme',
  'literature only': 'littérature seule',
  'mostly literature': 'surtout la littérature',
  'mostly own runs': 'surtout ses pontes',
  'own runs': 'ses propres pontes',
  'per g': 'par g',
  'Before and after: shares': 'Avant et après : parts',
  Farm: 'Ferme',
  'Egg weight of body weight, by month': 'Poids des œufs, part du corps, par mois',
  'Not used': 'Pas utilisés',
  Records: 'Relevés',
  'All rates': 'Tous les taux',
  'the check of records found something in them': 'le contrôle des relevés y a trouvé quelque chose',
  '{}: own rates': '{} : taux de la ferme',
  '{} · own rates': '{} · taux de la ferme',
  '{}: trends': '{} : tendances',
  '{} · trends': '{} · tendances',
  'My hatchery': 'Mon écloserie',
  'Eggs fertilised': 'Œufs fécondés',
  'Strip later than the table by': 'Stripping plus tard que le tableau de',
  'Incubation, times the table': 'Incubation, fois le tableau',
  'Injected females that give eggs': 'Femelles injectées qui donnent des œufs',
  'Eggs in a gram': 'Œufs dans un gramme',
  'Eggs, spread between females': 'Œufs, écart entre femelles',
  'Hatched larvae that become fry': 'Larves écloses qui deviennent alevins',
  'Larvae stocked that become weaned fry': 'Larves mises en bac qui deviennent alevins sevrés',
  'Fry that become fingerlings': 'Alevins qui deviennent juvéniles',
  'Growth of larvae and fry': 'Croissance des larves et alevins',
  'Growth while nursing': 'Croissance en prégrossissement',
  'Spreads are chosen here, no source.': 'Les écarts sont choisis ici, sans source.',
  'the record has no date, so no month': 'le relevé n’a pas de date, donc pas de mois',
  'no record says that a female gave no eggs, so failures seem not to be written down':
    'aucun relevé ne dit qu’une femelle n’a pas donné d’œufs, les échecs ne semblent donc pas notés',
  'the water temperature is not in the record': 'la température de l’eau n’est pas dans le relevé',
  'the hatch is not after the fertilising': 'l’éclosion n’est pas après la fécondation',
  'the fish did not grow': 'les poissons n’ont pas grandi',
  'the length of the period is not in the record': 'la durée n’est pas dans le relevé',
  'nothing was counted': 'rien n’a été compté',
  'more came out than went in': 'il en est sorti plus qu’il n’en est entré',
  'Hours after the table of the preparation. Published strips lie 0.2 to 4.5 h after the handbook table, hence a farm spread of 2 h; the other spreads are chosen here, no source.':
    'Heures après le tableau de la préparation. Les strippings publiés sont 0,2 à 4,5 h après le tableau du manuel, d’où un écart entre fermes de 2 h ; les autres écarts sont choisis ici, sans source.',
  'Hours taken ÷ hours of the table. Two published durations are 1.10 and 1.11 times the handbook table, hence a farm spread of 12 %; the spread of runs is chosen here, no source.':
    'Heures prises ÷ heures du tableau. Deux durées publiées sont 1,10 et 1,11 fois le tableau du manuel, d’où un écart entre fermes de 12 % ; l’écart entre pontes est choisi ici, sans source.',
  '87.5 % after a ready-made solution, all after carp pituitary. Spreads are chosen here, no source.':
    '87,5 % après une solution prête à l’emploi, toutes après l’hypophyse de carpe. Les écarts sont choisis ici, sans source.',
  'Dry season 1.3 %, rainy season 14.3 %; 10 % is chosen between them and a quarter of their distance on a logarithmic scale is the spread of farms. The other spreads, and the 30 % nothing may pass, are chosen here, no source.':
    'Saison sèche 1,3 %, saison des pluies 14,3 % ; 10 % est choisi entre les deux, et un quart de leur distance sur une échelle logarithmique est l’écart entre fermes. Les autres écarts, et les 30 % que rien ne dépasse, sont choisis ici, sans source.',
  'Mean of 40 females, 435 to 1\u202f176, preserved ovaries; five stripped groups elsewhere gave 692 to 847. A quarter of the range on a logarithmic scale is the spread of farms; the spread of runs is chosen here, no source.':
    'Moyenne de 40 femelles, 435 à 1\u202f176, ovaires conservés ; cinq groupes strippés ailleurs ont donné 692 à 847. Un quart de l’étendue sur une échelle logarithmique est l’écart entre fermes ; l’écart entre pontes est choisi ici, sans source.',
  'Deviation of the logarithm of what females of one run give for their weight, from rows of runs with several females weighed one by one. 0.3, known to a factor of two, is chosen here, no source.':
    'Écart du logarithme de ce que donnent les femelles d’une ponte pour leur poids, des lignes de pontes avec plusieurs femelles pesées une à une. 0,3, connu à un facteur deux, est choisi ici, sans source.',
  '83.6 % at the best hour of one trial; 80 % and 98 to 99 % elsewhere. Spreads are chosen here, no source.':
    '83,6 % à la meilleure heure d’un essai ; 80 % et 98 à 99 % ailleurs. Les écarts sont choisis ici, sans source.',
  'Of all eggs set. Rainy season 59 %, dry 28 %, best month of another station 86 %: a quarter of that range is the spread of farms. The spread of runs is chosen here, no source.':
    'De tous les œufs mis. Saison des pluies 59 %, sèche 28 %, meilleur mois d’une autre station 86 % : un quart de cette étendue est l’écart entre fermes. L’écart entre pontes est choisi ici, sans source.',
  '80 % alive at first feed times 75 % weaned. Spreads are chosen here, no source.':
    '80 % vivantes au premier aliment fois 75 % sevrées. Les écarts sont choisis ici, sans source.',
  '88 % at 50 per litre, 64 % at 150 per litre. Spreads are chosen here, no source.':
    '88 % à 50 par litre, 64 % à 150 par litre. Les écarts sont choisis ici, sans source.',
  'Below 75 % with sudden dry feed, above 90 % with half live food; 33 % on dry feed alone. About a quarter of 33 to 93 % is the spread of farms; the spread of runs is chosen here, no source.':
    'Sous 75 % avec un aliment sec soudain, au-dessus de 90 % avec moitié de proies vivantes ; 33 % à l’aliment sec seul. Environ un quart de 33 à 93 % est l’écart entre fermes ; l’écart entre pontes est choisi ici, sans source.',
  '16.5 and 17 % a day in ordinary trials, 7.0 % on dry feed alone. Spreads are chosen here, no source.':
    '16,5 et 17 % par jour dans des essais ordinaires, 7,0 % à l’aliment sec seul. Les écarts sont choisis ici, sans source.',
  '1 g at 40 to 50 days means 13 to 16 %; 12.5 % a day at 50 per litre, 11.1 % at 150; 8.5 % at 100 in another trial. Spreads are chosen here, no source.':
    '1 g à 40 à 50 jours veut dire 13 à 16 % ; 12,5 % par jour à 50 par litre, 11,1 % à 150 ; 8,5 % à 100 dans un autre essai. Les écarts sont choisis ici, sans source.',
  '{}: what moves it': '{} : ce qui les fait varier',
  '{}, run by run': '{}, ponte par ponte',
  'by female': 'par femelle',
  'by male': 'par mâle',
  'by water temperature': 'par température d’eau',
  'by month': 'par mois',
  '{n} runs: too few for limits, which need {n} (20 is better).':
    '{n} pontes : trop peu pour des limites, qui en demandent {n} (20 est mieux).',
  'No run stands out from the usual spread.': 'Aucune ponte ne sort de l’écart habituel.',
  '{n} of {n} runs stand out: look for what was different.':
    '{n} pontes sur {n} sortent du lot : cherchez ce qui était différent.',
  'Runs differ {} times more than chance of the counting alone would make them, as living things do; the limits allow for it.':
    'Les pontes diffèrent {} fois plus que le hasard du comptage seul ne ferait, comme tout ce qui vit ; les limites en tiennent compte.',
  'Provisional: fewer than 20 runs.': 'Provisoire : moins de 20 pontes.',
  'Expected: the mean of further runs with that female, water or month, low and high its interval; it leans on the farm while there are few runs. A difference is not yet a cause: the best female may have had the best month.':
    'Attendu : la moyenne d’autres pontes avec cette femelle, cette eau ou ce mois, bas et haut son intervalle ; il s’appuie sur la ferme tant qu’il y a peu de pontes. Une différence n’est pas encore une cause : la meilleure femelle a peut-être eu le meilleur mois.',
  Run: 'Ponte',
  Of: 'Sur',
  Share: 'Part',
  Centre: 'Centre',
  'Lower limit': 'Limite basse',
  'Upper limit': 'Limite haute',
  Signal: 'Signal',
  Month: 'Mois',
  'No record says it.': 'Aucun relevé ne le dit.',
  '{n} more run does not say it.': '{n} ponte de plus ne le dit pas.',
  '{n} more runs do not say it.': '{n} pontes de plus ne le disent pas.',
  'above the limits': 'au-dessus des limites',
  'below the limits': 'au-dessous des limites',
};

export const recordPhrases: Phrases = {
  ...NOUNS,
  ...AT_THE_BEGINNING,
  ...RULES,
  ...RELATIONS,
  ...LIMITS,
  ...FIGURES,
  ...SHORT,
  ...SHEETS,
  ...LEARNED,
  ...SENTENCES,
};
