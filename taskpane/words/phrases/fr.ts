// Long: one table, a sentence a line; a language is one such file.
/* eslint max-len: off -- a sentence a line */
import { phrases as bookPhrases } from '../../../shared/books/words/fr';
import type { Phrases } from '../../pane/phrases';
import { faultPhrases } from './faultsFr';

/** French sentences of the screens and of the engine below them; {} stands for a number, a name, a day. */
export const phrases: Phrases = {
  ...bookPhrases,
  ...faultPhrases,
  // One run
  'What to plan': 'Que planifier',
  'One run': 'Une ponte',
  'A whole season': 'Toute une saison',
  'Type how many fish: the hour of the injection stands here.':
    'Tapez combien de poissons : l’heure de l’injection s’affiche ici.',
  'A field cannot be used yet: see below.': 'Un champ n’est pas encore utilisable : voir plus bas.',
  'Working it out…': 'Calcul en cours…',
  'Working it out anew…': 'Nouveau calcul…',
  'Fish wanted': 'Poissons voulus',
  'Number counted out to the buyer.': 'Nombre compté pour l’acheteur.',
  'What is sold': 'Ce qui est vendu',
  'Fry leave after weaning, fingerlings after some weeks of nursing.':
    'Les alevins partent après le sevrage, les juvéniles après quelques semaines de prégrossissement.',
  'By what day': 'Pour quel jour',
  'Wanted on': 'Voulu le',
  'The morning of this day the fish must be ready.': 'Le matin de ce jour les poissons doivent être prêts.',
  'With what': 'Avec quoi',
  'Ripe females you have': 'Femelles mûres',
  'Swollen belly, eggs run at a light press.': 'Ventre gonflé, des œufs sortent à une légère pression.',
  'Mean weight of a female': 'Poids moyen d’une femelle',
  'Weigh them: eggs and hormone follow the weight.': 'Pesez-les : œufs et hormone suivent le poids.',
  'Males you have': 'Mâles',
  'Catfish males give their milt once.': 'Un silure mâle donne sa laitance une seule fois.',
  'Vats you have': 'Bacs',
  'Free for this run from fertilising to sale.': 'Libres pour cette ponte, de la fécondation à la vente.',
  'Water in one vat': 'Eau d’un bac',
  'Filled as you use it.': 'Rempli comme vous l’utilisez.',
  'How warm': 'Quelle chaleur',
  'At night, where the eggs lie. It moves every clock time.':
    'La nuit, là où sont les œufs. Elle déplace toutes les heures.',
  'Everything else, taken as usual': 'Tout le reste, pris comme d’habitude',
  '– something cannot be used': '– un champ n’est pas utilisable',
  Work: 'Travail',
  'Printed on every page.': 'Imprimé sur chaque page.',
  'A name for the order in the book.': 'Un nom pour la commande dans le classeur.',
  '– may stay empty': '– peut rester vide',
  '– may be left out': '– facultatif',
  'Weight of a fish wanted': 'Poids voulu d’un poisson',
  'Empty: what the usual days of rearing give.': 'Vide : ce que donnent les jours d’élevage habituels.',
  'Price of a fish': 'Prix d’un poisson',
  'In your money.': 'Dans votre monnaie.',
  'Of a hundred such runs, so many must bring the whole order. It sizes females and water.':
    'Sur cent pontes pareilles, tant doivent donner toute la commande. Cela fixe femelles et eau.',
  'Today: nothing is planned before it.': 'Aujourd’hui : rien n’est planifié avant.',
  'Nothing is planned before it.': 'Rien n’est planifié avant.',
  'pH of the water now': 'pH de l’eau maintenant',
  'After an hour of air, when the reading has stopped moving. Empty: no dose is worked out.':
    'Après une heure d’air, quand la mesure ne bouge plus. Vide : aucune dose n’est calculée.',
  'pH you want': 'pH voulu',
  'Near 7 is safe; above 8 ammonia turns toxic.':
    'Près de 7 est sûr ; au-dessus de 8 l’ammoniac devient toxique.',
  'From a drop test. Empty: not measured, so treat the dose as a first guess.':
    'D’un test à gouttes. Vide : non mesurée, la dose n’est alors qu’une première idée.',
  'slaked lime': 'chaux éteinte',
  'Goggles and gloves; dissolve it in a bucket first.': 'Lunettes et gants ; dissolvez d’abord dans un seau.',
  'Each has its own waiting time. Ask a vet; local rules come first.':
    'Chacune a son temps d’attente. Demandez à un vétérinaire ; les règles locales d’abord.',
  'When people are there. The injection hour follows from it.':
    'Quand il y a du monde. L’heure d’injection en découle.',
  'Hormone and cysts come within': 'Hormone et cystes arrivent en',
  'Days from ordering; 0 when they are on the shelf.': 'Jours depuis la commande ; 0 s’ils sont en stock.',
  'Dry feed comes within': 'L’aliment sec arrive en',
  'Days from ordering; 0 when it is on the shelf.': 'Jours depuis la commande ; 0 s’il est en stock.',
  'Figures taken for granted ({})': 'Chiffres supposés ({})',
  'Put in your own where you have counted; a share as 59 % or 0.59.':
    'Mettez les vôtres là où vous avez compté ; une part comme 59 % ou 0,59.',
  'Taken as {}, usual {} to {}. {}': 'Pris à {}, habituel de {} à {}. {}',
  'Order goods before stripping': 'Commander les fournitures avant le stripping',
  'Delivery time of hormone, cysts and feed.': 'Délai de livraison de l’hormone, des cystes et de l’aliment.',
  '({})': '({})',
  hours: 'heures',
  days: 'jours',
  day: 'jour',
  'Fill in an example': 'Remplir un exemple',
  Result: 'Résultat',
  'It grows from the first question on.': 'Il grandit dès la première question.',
  'Preview of the plan': 'Aperçu du plan',
  'Save as .xlsx file': 'Enregistrer en .xlsx',
  'Cards to print': 'Fiches à imprimer',
  'New sheets only: nothing that is in the workbook now is changed.':
    'De nouvelles feuilles seulement : rien de ce qui est dans le classeur n’est changé.',
  'Plan again from this workbook': 'Replanifier depuis ce classeur',
  'Write into this workbook': 'Écrire dans ce classeur',
  '{} of 100 such runs bring all {}.': '{} pontes pareilles sur 100 donnent tous les {}.',
  ': {} of 100 such runs bring all {}.': ' : {} pontes pareilles sur 100 donnent tous les {}.',
  'Promise {}, hope for {}.': 'Promettez {}, espérez {}.',
  'Promise {}, hope for {}': 'Promettez {}, espérez {}',
  'All fish of a poor run {}, of a middling one {}, of a good one {}.':
    'Tous les poissons d’une mauvaise ponte {}, d’une moyenne {}, d’une bonne {}.',
  'Nine runs in ten take {}.': 'Neuf pontes sur dix demandent {}.',
  'No number of females makes it nine in ten.': 'Aucun nombre de femelles n’en fait neuf sur dix.',
  '{n} female': '{n} femelle',
  'Inject {} on {}': 'Injectez {} le {}',
  'No night can be planned: see below.': 'Aucune nuit ne peut être planifiée : voir plus bas.',
  '· inject {}': '· injecter {}',
  '. The first of {} nights.': '. La première de {} nuits.',
  'Taken for granted so far: {}.': 'Supposé jusqu’ici : {}.',
  'enough females': 'assez de femelles',
  'females of 1 kg': 'femelles de 1 kg',
  'enough males': 'assez de mâles',
  'enough vats': 'assez de bacs',
  'vats of 1,000 L': 'bacs de 1 000 L',
  'water of 27 °C': 'eau à 27 °C',
  'In numbers': 'En chiffres',
  'The workbook has it too, to tick off, and the feed and water day by day.':
    'Le classeur l’a aussi, à cocher, avec l’aliment et l’eau jour par jour.',
  '◆ a coin toss': '◆ pile ou face',
  // Broken off
  'The writing of “{}” was broken off the last time and left {}: {}. Take them away?':
    'L’écriture de « {} » a été interrompue la dernière fois et a laissé {} : {}. Les enlever ?',
  'The writing of “{}” was broken off the last time and left {}: {}. Take it away?':
    'L’écriture de « {} » a été interrompue la dernière fois et a laissé {} : {}. L’enlever ?',
  '{n} sheets': '{n} feuilles',
  '{n} sheet': '{n} feuille',
  'Take away': 'Enlever',
  'Leave as it is': 'Laisser ainsi',
  '{n} of the broken-off writing taken away.': '{n} de l’écriture interrompue enlevées.',
  'The season on {} was being written over the last time, and that broke off: its sheets are half written. Put back what stood there?':
    'La saison sur {} était en train d’être réécrite la dernière fois, et cela s’est interrompu : ses feuilles sont à moitié écrites. Remettre ce qu’il y avait ?',
  'Put back what stood there': 'Remettre ce qu’il y avait',
  'The workbook keeps nothing of that season any more. Use a copy of the file, or the version history of your storage.':
    'Le classeur ne garde plus rien de cette saison. Prenez une copie du fichier, ou l’historique des versions de votre stockage.',
  // Season
  'The form has changed since: this plan is outdated. Work the plan out again.':
    'Le formulaire a changé depuis : ce plan n’est plus à jour. Recalculez le plan.',
  'Many orders, with the fish, vats and hands you have: which nights to strip, which fish go to whom, in which vats, and how much of it can be promised.':
    'Beaucoup de commandes, avec les poissons, bacs et bras que vous avez : quelles nuits stripper, quels poissons vont à qui, dans quels bacs, et combien on peut promettre.',
  'Stands on every sheet.': 'Figure sur chaque feuille.',
  'Share of seasons that bring an order: 50 % to 99 %. Surer takes more females and water.':
    'Part des saisons qui donnent une commande : 50 % à 99 %. Plus sûr demande plus de femelles et d’eau.',
  'Order {n}': 'Commande {n}',
  'Due on': 'Pour le',
  'To become brood fish': 'Pour devenir géniteurs',
  'Duplicate {}': 'Copier {}',
  Duplicate: 'Copier',
  'Remove {}': 'Retirer {}',
  Remove: 'Retirer',
  'order {n}': 'commande {n}',
  'Weight and price may stay empty. A buyer may have several orders.':
    'Poids et prix peuvent rester vides. Un acheteur peut avoir plusieurs commandes.',
  'Order {} says the same. If this one was typed twice, remove it.':
    'La commande {} dit la même chose. Si celle-ci a été tapée deux fois, retirez-la.',
  'Many orders from a sheet': 'Beaucoup de commandes d’une feuille',
  'Rows of orders': 'Lignes de commandes',
  'Name; fry or fingerlings; number; due on (2027-03-31); weight in g; price. Copy the rows in a sheet and paste them.':
    'Nom ; fry ou fingerlings ; nombre ; pour le (2027-03-31) ; poids en g ; prix. Copiez les lignes d’une feuille et collez-les.',
  'Pond club; fry; 20000; 2027-03-31': 'Club des étangs; fry; 20000; 2027-03-31',
  'Add these orders': 'Ajouter ces commandes',
  'Add an order': 'Ajouter une commande',
  'Vats and brood fish': 'Bacs et géniteurs',
  'A line each: name; litres. Behind them eggs, fry or nursing when a vat holds only those. Rows copied from a sheet can be pasted.':
    'Une ligne chacun : nom ; litres. Derrière, eggs, fry ou nursing si un bac ne tient que cela. On peut coller des lignes d’une feuille.',
  'Vat 1; 1000': 'Bac 1; 1000',
  'A line each: tag; kilograms; family; last stripped on. Family and date may be missing.':
    'Une ligne chacune : marque ; kilogrammes ; famille ; dernier stripping le. Famille et date peuvent manquer.',
  'F1; 1.2; line A; 2027-01-15': 'F1; 1,2; lignée A; 2027-01-15',
  'A line each: tag; family; last used on. Family and date may be missing.':
    'Une ligne chacun : marque ; famille ; dernier emploi le. Famille et date peuvent manquer.',
  'M1; line B': 'M1; lignée B',
  'Water by month, °C': 'Eau par mois, °C',
  'What you expect in the vats at night. The waiting time after the injection hangs on it.':
    'Ce que vous attendez la nuit dans les bacs. L’attente après l’injection en dépend.',
  '{} lies in the season: without its water no run can be planned for it.':
    '{} est dans la saison : sans son eau aucune ponte ne peut y être planifiée.',
  Hands: 'Bras',
  'Hours people are there to strip.': 'Heures où il y a du monde pour stripper.',
  '24:00 is midnight.': '24:00 est minuit.',
  'Injections often fall at night.': 'Les injections tombent souvent la nuit.',
  'Females stripped in a day': 'Femelles strippées en un jour',
  'At most, with the hands you have.': 'Au plus, avec les bras que vous avez.',
  'Dates on which nobody strips, a line each.': 'Dates où personne ne strippe, une ligne chacune.',
  'None.': 'Aucun.',
  'Fish and vats: rest, cleaning, waiting': 'Poissons et bacs : repos, nettoyage, attente',
  'Before she is stripped again.': 'Avant un nouveau stripping.',
  'Males live on': 'Les mâles survivent',
  'Catfish males give milt once.': 'Un silure mâle ne donne sa laitance qu’une fois.',
  'Between two runs.': 'Entre deux pontes.',
  'Days fish may wait': 'Jours d’attente permis',
  'Ready, and not yet fetched.': 'Prêts, pas encore enlevés.',
  Spare: 'Réserve',
  '0.2 plans a fifth more than was ordered.': '0,2 planifie un cinquième de plus que commandé.',
  'Power, pump, disease: 0.03 is 3 of 100.': 'Courant, pompe, maladie : 0,03 est 3 sur 100.',
  'For orders of future brood fish.': 'Pour les commandes de futurs géniteurs.',
  'Days until goods arrive': 'Jours avant l’arrivée des fournitures',
  'a mL': 'par mL',
  'a run': 'par ponte',
  'Wages and other costs': 'Salaires et autres coûts',
  'a vat and day': 'par bac et jour',
  'Water and power': 'Eau et courant',
  'a month': 'par mois',
  'Water the vats are filled with': 'Eau qui remplit les bacs',
  'May stay empty.': 'Peut rester vide.',
  'Figures of your own': 'Vos propres chiffres',
  'Survival, growth and yields are published ones. Your own, learned in Check from your records, make the plan and its odds yours.':
    'Survie, croissance et rendements sont publiés. Les vôtres, appris de vos cahiers dans la vérification, font le plan et ses chances à vous.',
  '{} figure of the plan is your own; the others are published ones.':
    '{} chiffre du plan est le vôtre ; les autres sont publiés.',
  '{} figures of the plan are your own; the others are published ones.':
    '{} chiffres du plan sont les vôtres ; les autres sont publiés.',
  'Use our own rates': 'Prendre nos propres taux',
  'Use published ones again': 'Reprendre les publiés',
  'Work the plan out': 'Calculer le plan',
  'Work the plan out again': 'Recalculer le plan',
  'The plan shows here before anything is written.': 'Le plan s’affiche ici avant que rien ne soit écrit.',
  'The season planned': 'La saison planifiée',
  '{} vats, {} L': '{} bacs, {} L',
  '{} females, {} kg, {} families': '{} femelles, {} kg, {} familles',
  '{} males, {} families': '{} mâles, {} familles',
  'Working the plan out': 'Calcul du plan',
  'Working the plan out…': 'Calcul du plan…',
  '{} fish are ordered, the others are yours to sell; {} of {}.':
    '{} poissons sont commandés, les autres sont à vous ; {} de {}.',
  '{} fish are ordered; {} of {}.': '{} poissons sont commandés ; {} de {}.',
  '{n} batch': '{n} lot',
  '{n} batches': '{n} lots',
  'All orders:': 'Toutes les commandes :',
  '– the least sure is met in {} of seasons; {} was asked for.':
    '– la moins sûre est tenue dans {} des saisons ; {} étaient demandés.',
  'A poor season is one in ten, a good one too. Chance was drawn from a seed: the same form gives the same odds.':
    'Une mauvaise saison est une sur dix, une bonne aussi. Le hasard est tiré d’un germe : le même formulaire donne les mêmes chances.',
  '{} fingerlings by {}': '{} juvéniles pour le {}',
  '{} fry by {}': '{} alevins pour le {}',
  'Promise, hope for': 'Promesse, espoir',
  'The whole order comes in': 'Toute la commande vient dans',
  '{n} of seasons': '{n} des saisons',
  'Poor, middle and good season': 'Mauvaise, moyenne et bonne saison',
  'Handed over already': 'Déjà remis',
  '{}: the whole order in {} of {}.': '{} : toute la commande dans {} sur {}.',
  'Hatch begins': 'L’éclosion commence',
  'about {} larvae': 'environ {} larves',
  'about {} eggs into {}': 'environ {} œufs dans {}',
  'about {} fry': 'environ {} alevins',
  'First meal': 'Premier repas',
  Fetched: 'Enlevés',
  '{n} mL in all': '{n} mL en tout',
  'males {}': 'mâles {}',
  '{n} fish for {}': '{n} poissons pour {}',
  '{} more, until {}': '{} de plus, jusqu’au {}',
  'The workbook lists every task and the feed day by day.':
    'Le classeur donne chaque tâche et l’aliment jour par jour.',
  '{} batches in {} of {} vats. The list below says the same in words.':
    '{} lots dans {} bacs sur {}. La liste plus bas dit la même chose en mots.',
  'B1, B2 … are batches; a gap is an empty vat, a thin line a vat being cleaned.':
    'B1, B2 … sont des lots ; un vide est un bac vide, un trait fin un bac qu’on nettoie.',
  'Pale ones are under way already.': 'Les pâles sont déjà en cours.',
  'The same in words': 'La même chose en mots',
  '{} from {n} to {n}': '{} du {n} au {n}',
  'not used': 'pas utilisé',
  'No vat is used.': 'Aucun bac n’est utilisé.',
  'Vats, scrolls': 'Bacs, défile',
  '{n} feeding larvae': '{n} larves nourries',
  '{n} weaned fry': '{n} alevins sevrés',
  'cysts {n} kg': 'cystes {n} kg',
  'hormone {n} mL': 'hormone {n} mL',
  'dry feed {n} kg': 'aliment sec {n} kg',
  'Shopping, by the week to order in': 'Achats, par semaine de commande',
  'week of {}': 'semaine du {}',
  'A fish costs': 'Un poisson coûte',
  Costs: 'Coûts',
  Money: 'Argent',
  'A profit in': 'Un bénéfice dans',
  'Never out of money in': 'Jamais à court d’argent dans',
  'Least money at hand': 'Le moins d’argent en caisse',
  'Moves the profit most': 'Ce qui bouge le plus le bénéfice',
  '{} at its poor end, {} at its good end': '{} au mauvais bout, {} au bon bout',
  'Work the plan out again before it is written.': 'Recalculez le plan avant de l’écrire.',
  'What binds now:': 'Ce qui bloque :',
  'No single thing binds: several are short at once.':
    'Rien ne bloque seul : plusieurs choses manquent à la fois.',
  '{n} more fish': '{n} poissons de plus',
  'What would help': 'Ce qui aiderait',
  '✕ {n} short': '✕ il manque {n}',
  'Stopping…': 'Arrêt…',
  Stop: 'Arrêter',
  'Stopped. Nothing was made and nothing was changed.': 'Arrêté. Rien n’a été fait et rien n’a été changé.',
  'Calculating the workbook': 'Calcul du classeur',
  'Calculating the workbook…': 'Calcul du classeur…',
  'Writing formulas': 'Écriture des formules',
  'Writing formulas…': 'Écriture des formules…',
  'There are sheets called {} already. Nothing was changed. Write the season beside them?':
    'Il y a déjà des feuilles nommées {}. Rien n’a été changé. Écrire la saison à côté ?',
  'There are sheets called {} already. Nothing was changed. Write the plan beside them?':
    'Il y a déjà des feuilles nommées {}. Rien n’a été changé. Écrire le plan à côté ?',
  'There is a sheet called {} already. Nothing was changed. Write the plan beside it?':
    'Il y a déjà une feuille nommée {}. Rien n’a été changé. Écrire le plan à côté ?',
  'Put behind every sheet name': 'À mettre derrière chaque nom de feuille',
  'Write beside them': 'Écrire à côté',
  Cancel: 'Annuler',
  '“{}” cannot go behind a sheet name: use one to eight letters or digits.':
    '« {} » ne peut suivre un nom de feuille : une à huit lettres ou chiffres.',
  'The season is written on new sheets: {}. Yellow cells are yours to change; Checks says whether it still holds.':
    'La saison est écrite sur de nouvelles feuilles : {}. Les cellules jaunes sont à vous ; Contrôles dit si elle tient encore.',
  'The plan is written on new sheets: {}. Yellow cells are yours to change; everything else follows.':
    'Le plan est écrit sur de nouvelles feuilles : {}. Les cellules jaunes sont à vous ; tout le reste suit.',
  'Some fields of the form cannot be used yet. The first one is chosen.':
    'Des champs du formulaire ne sont pas encore utilisables. Le premier est choisi.',
  'The workbook is protected.': 'Le classeur est protégé.',
  'Making the file': 'Fabrication du fichier',
  'Making the file…': 'Fabrication du fichier…',
  '{} is saved.': '{} est enregistré.',
  'Reading the season': 'Lecture de la saison',
  'Reading the season…': 'Lecture de la saison…',
  'Planning again': 'Replanifier',
  'The season was read; the form below shows it as it stands now. Change what is different, then work the plan out: every change shows before anything is written.':
    'La saison est lue ; le formulaire la montre telle qu’elle est. Changez ce qui diffère, puis calculez le plan : chaque changement se voit avant que rien ne soit écrit.',
  'Plan without comparing': 'Planifier sans comparer',
  'Take the last planning back': 'Annuler le dernier plan',
  'The buyer wants it no more': 'L’acheteur n’en veut plus',
  'Nothing: the season in the workbook still holds.': 'Rien : la saison du classeur tient toujours.',
  'What changes in the season': 'Ce qui change dans la saison',
  Kept: 'Gardé',
  Moved: 'Déplacé',
  New: 'Nouveau',
  Dropped: 'Abandonné',
  'Write over the season': 'Réécrire la saison',
  'Write as a season of its own': 'Écrire comme saison à part',
  'The strip of {} moves to {} ({}).': 'Le stripping du {} passe au {} ({}).',
  'The season is back as it was before it was planned again; what was typed since is in it. Press once more to have the later plan.':
    'La saison est comme avant la replanification, avec ce qui fut tapé depuis. Appuyez encore pour ravoir le dernier plan.',
  'The first (“Today”, “Orders” …)': 'La première (« Aujourd’hui », « Commandes » …)',
  'Which season': 'Quelle saison',
  'Read this season': 'Lire cette saison',
  'No season was found in this workbook. One that was written from here has the sheets “Today”, “Orders” and “Batches”; open that workbook, or fill the form in.':
    'Aucune saison dans ce classeur. Une saison écrite d’ici a les feuilles « Aujourd’hui », « Commandes » et « Lots » ; ouvrez ce classeur, ou remplissez le formulaire.',
  'There is nothing to take back: no season of this workbook was written over since it was first written.':
    'Rien à annuler : aucune saison de ce classeur n’a été réécrite depuis.',
  'There is no sheet “{}” in this workbook. The book needs it to be planned again.':
    'Il n’y a pas de feuille « {} » dans ce classeur. Il la faut pour replanifier.',
  'The heading “{}” of “{}” is not where it was written. Bring it back, or what stands below it would be lost.':
    'Le titre « {} » de « {} » n’est plus où il était. Remettez-le, sinon ce qui est dessous serait perdu.',
  '“{}” has no “{}” any more. The usual value is taken for it.':
    '« {} » n’a plus « {} ». La valeur usuelle est prise.',
  'The headings of “{}” are not where they were written. Bring them back, or fill in the form by hand.':
    'Les titres de « {} » ne sont plus où ils étaient. Remettez-les, ou remplissez le formulaire à la main.',
  'Go back to the published figures': 'Revenir aux chiffres publiés',
  'Batches that stay as they are': 'Lots qui restent comme ils sont',
  'Counts, deaths and sales of them stand on Counts; a lost batch is said on Batches.':
    'Leurs comptes, morts et ventes sont sur Comptages ; un lot perdu se dit sur Lots.',
  '{n} of {n}': '{n} sur {n}',
  'and {} more.': 'et {} de plus.',
  'First look {n}': 'Premier regard {n}',
  'Strip {n}': 'Stripping {n}',
  'First hatch {n}': 'Première éclosion {n}',
  'First food {n}': 'Premier repas {n}',
  'you have {n}': 'vous en avez {n}',
  'larvae at first food {n}': 'larves au premier repas {n}',
  'one layer, all nets together': 'une couche, tous les filets ensemble',
  'not asked': 'non demandé',
  'type the pH under Everything else': 'tapez le pH sous Tout le reste',
  'without air: act within {} minutes': 'sans air : agir en {} minutes',
  'Females to inject': 'Femelles à injecter',
  'Eggs to strip': 'Œufs à stripper',
  'Net for the eggs': 'Filet pour les œufs',
  'Vats at once': 'Bacs à la fois',
  'To raise the pH': 'Pour relever le pH',
  'New water a day, at most': 'Eau neuve par jour, au plus',
  'Cysts for live food': 'Cystes pour proies vivantes',
  'air alone': 'l’air seul',
  'Vats in use; you have {}': 'Bacs employés ; vous en avez {}',
  'Larvae and fry: {}': 'Larves et alevins : {}',
  'Eggs: {}': 'Œufs : {}',
  'Nursing: {}': 'Prégrossissement : {}',
  'The buyer': 'L’acheteur',
  'From eggs to fry. {}': 'Des œufs aux alevins. {}',
  'Of {} eggs about {} fry are planned.': 'Sur {} œufs environ {} alevins sont prévus.',
  'Money at hand. {}': 'Argent en caisse. {}',
  'Least: {} in the week from {}.': 'Le moins : {} la semaine du {}.',
  'Ten seasons. {}': 'Dix saisons. {}',
  'season {n}': 'saison {n}',
  '{}: not used': '{} : pas utilisé',
  'cannot be used': 'n’est pas utilisable',
  // What to do
  Evening: 'Le soir',
  'pH, alkalinity, temperature': 'pH, alcalinité, température',
  'Choose {}': 'Choisir {}',
  'Make up the {}': 'Préparer : {}',
  'grind or dissolve it in boiled salt water of {} g in a litre, cooled':
    'broyer ou dissoudre dans de l’eau salée bouillie à {} g par litre, refroidie',
  '{} in mL': '{} en mL',
  'Not stripped yet? Nobody has tested later than this well':
    'Pas encore strippé ? Personne n’a bien essayé plus tard',
  'Bellies full? If not, live food for a day or two more':
    'Ventres pleins ? Sinon, du vivant un jour ou deux de plus',
  '{n} in all': '{n} en tout',
  '{n} of net': '{n} de filet',
  '{n} males': '{n} mâles',
  '{n} fish': '{n} poissons',
  // Records
  'Check records': 'Vérifier les cahiers',
  'Finds numbers in your records that cannot be right, and says why. It never corrects anything.':
    'Trouve dans vos cahiers les chiffres qui ne peuvent être justes, et dit pourquoi. Ne corrige jamais rien.',
  'Past runs, doses, feed or growth as you wrote them down. Headings stay in your words. Nothing is changed.':
    'Pontes, doses, aliment ou croissance passés comme vous les avez notés. Les titres restent dans vos mots. Rien n’est changé.',
  'File with records': 'Fichier avec des cahiers',
  'Where are they?': 'Où sont-ils ?',
  'Selected cells': 'Cellules choisies',
  'This sheet': 'Cette feuille',
  'All sheets': 'Toutes les feuilles',
  'A file (.xlsx, .csv)': 'Un fichier (.xlsx, .csv)',
  'Check again': 'Vérifier encore',
  'Not read: {}.': 'Non lu : {}.',
  '{} and {n} more': '{} et {n} de plus',
  'a column of {}': 'une colonne de {}',
  'Nothing was found in {} of {}': 'Rien trouvé dans {} de {}',
  'Nothing was found in {} of {}, as far as columns were read.':
    'Rien trouvé dans {} de {}, pour les colonnes lues.',
  '{} in {n} record of {}.': '{} dans {n} ligne de {}.',
  '{} in {n} records of {}.': '{} dans {n} lignes de {}.',
  '{n} record': '{n} ligne',
  '{n} records': '{n} lignes',
  '{n} table': '{n} tableau',
  '{n} tables': '{n} tableaux',
  '{n} finding': '{n} constat',
  '{n} findings': '{n} constats',
  '{n} column': '{n} colonne',
  '{n} columns': '{n} colonnes',
  '{n} run': '{n} ponte',
  '{n} runs': '{n} pontes',
  'Go to {}': 'Aller à {}',
  'In {}. {} Rests on: {}.': 'Dans {}. {} Repose sur : {}.',
  'Seen: {}.': 'Vu : {}.',
  'Expected: {}.': 'Attendu : {}.',
  '{n} more of these': '{n} autres pareils',
  'Cannot be right ({})': 'Ne peut être juste ({})',
  'Look again ({})': 'À revoir ({})',
  'To know ({})': 'À savoir ({})',
  'Cannot be right': 'Ne peut être juste',
  'Not checked ({} rules)': 'Non vérifié ({} règles)',
  '{}: not checked, because {}.': '{} : non vérifié, parce que {}.',
  'The colours from before are kept until the pane is closed: take the marks away first.':
    'Les couleurs d’avant sont gardées jusqu’à la fermeture du volet : enlevez d’abord les marques.',
  'Rates and trends are learned from records without a finding. New sheets only; no value is changed.':
    'Taux et tendances s’apprennent des lignes sans constat. De nouvelles feuilles seulement ; aucune valeur n’est changée.',
  'No records were recognised. A table needs a row of headings (Date, Eggs, Temperature …) above its rows, and at least two columns the check knows.':
    'Aucun cahier reconnu. Un tableau a besoin d’une ligne de titres (Date, Œufs, Température …) au-dessus de ses lignes, et d’au moins deux colonnes connues.',
  'the selected cells': 'les cellules choisies',
  'this sheet': 'cette feuille',
  'all sheets of this workbook': 'toutes les feuilles de ce classeur',
  'the sheet {}': 'la feuille {}',
  'Strip times are judged with your own rates on the sheet {}.':
    'Les heures de stripping sont jugées avec vos taux de la feuille {}.',
  'There is nothing in these cells. Select the block with the records and its headings, or choose the whole sheet.':
    'Il n’y a rien dans ces cellules. Choisissez le bloc avec les lignes et leurs titres, ou toute la feuille.',
  'Checking the records': 'Vérification des cahiers',
  'Checking the records…': 'Vérification des cahiers…',
  'Reading the records': 'Lecture des cahiers',
  'Reading the records…': 'Lecture des cahiers…',
  'Reading the file': 'Lecture du fichier',
  'Reading the file…': 'Lecture du fichier…',
  'Read as': 'Lu comme',
  'Forget what I said': 'Oublier ce que j’ai dit',
  'What is “{}”?': 'Qu’est-ce que « {} » ?',
  'none of these': 'rien de cela',
  'As you said.': 'Comme vous l’avez dit.',
  'Not read.': 'Non lu.',
  'Not recognised.': 'Non reconnu.',
  'One column is unsure': 'Une colonne est incertaine',
  '{} columns are unsure': '{} colonnes sont incertaines',
  '{}: read as {}.': '{} : lu comme {}.',
  Sure: 'Sûr',
  Perhaps: 'Peut-être',
  'A guess': 'Supposé',
  'Sure, in {}': 'Sûr, en {}',
  'Likely, in {}': 'Probable, en {}',
  'Perhaps, in {}': 'Peut-être, en {}',
  'A guess, in {}': 'Supposé, en {}',
  'Unit of {}': 'Unité de {}',
  'Column {}': 'Colonne {}',
  'How {} was read: {}, {} known': 'Comment {} fut lu : {}, {} connues',
  'How {} was read: {}, {} known, {} not': 'Comment {} fut lu : {}, {} connues, {} non',
  'What you said about one column is remembered with this workbook and used.':
    'Ce que vous avez dit d’une colonne est retenu avec ce classeur et employé.',
  'What you said about {} columns is remembered with this workbook and used.':
    'Ce que vous avez dit de {} colonnes est retenu avec ce classeur et employé.',
  'This workbook does not take notes of what you said (it may be read only): it holds until the pane is closed.':
    'Ce classeur ne retient pas ce que vous avez dit (peut-être en lecture seule) : cela vaut jusqu’à la fermeture du volet.',
  'What you said holds until the pane is closed; a file that is only read remembers nothing.':
    'Ce que vous avez dit vaut jusqu’à la fermeture du volet ; un fichier seulement lu ne retient rien.',
  'This workbook does not let go of what it remembered (it may be read only): it is left aside until the pane is closed.':
    'Ce classeur n’oublie pas ce qu’il a retenu (peut-être en lecture seule) : c’est laissé de côté jusqu’à la fermeture du volet.',
  'Literature → farm': 'Littérature → ferme',
  'What the records teach': 'Ce que les cahiers apprennent',
  'Show our rates and trends': 'Montrer nos taux et tendances',
  'Your own hatch, survival and timing beside the literature, and what moves the hatch. Nothing is written.':
    'Votre éclosion, survie et vos heures à côté de la littérature, et ce qui bouge l’éclosion. Rien n’est écrit.',
  'Your own hatch, survival and timing beside the literature. Nothing is written.':
    'Votre éclosion, survie et vos heures à côté de la littérature. Rien n’est écrit.',
  Trends: 'Tendances',
  Share: 'Part',
  'Share a copy': 'Partager une copie',
  '1. Look first': '1. Regarder d’abord',
  'formalin bath {n} mL': 'bain de formol {n} mL',
  'salt bath {n} g': 'bain de sel {n} g',
  'Donné : {} ({} g)': 'Donné : {} ({} g)',
  'Eggs fertilised': 'Œufs fécondés',
  'run by run, in order of time': 'ponte par ponte, dans l’ordre du temps',
  'by female': 'par femelle',
  'by male': 'par mâle',
  'by water temperature': 'par température d’eau',
  'by month': 'par mois',
  'None stands out from the farm.': 'Aucun ne sort du lot.',
  'The picture in words': 'L’image en mots',
  'Tap a point, or go to the picture with Tab and step with the arrow keys, to read it.':
    'Touchez un point, ou allez à l’image avec Tab et avancez avec les flèches, pour le lire.',
  'Write the findings as a sheet': 'Écrire les constats sur une feuille',
  'Write our own rates as a sheet': 'Écrire nos taux sur une feuille',
  'Write trends': 'Écrire les tendances',
  'Write beside it': 'Écrire à côté',
  'Mark the cells': 'Marquer les cellules',
  'Take the marks away': 'Enlever les marques',
  'The findings are written on new sheets: {}. No record was changed.':
    'Les constats sont écrits sur de nouvelles feuilles : {}. Aucune ligne n’a été changée.',
  'Your own rates are written on a new sheet: {}. Formulas can use its names, such as rate_hatch.':
    'Vos taux sont écrits sur une nouvelle feuille : {}. Les formules peuvent employer ses noms, comme rate_hatch.',
  'The trends are written on a new sheet: {}.': 'Les tendances sont écrites sur une nouvelle feuille : {}.',
  'No cell was marked.': 'Aucune cellule marquée.',
  '{n} cell': '{n} cellule',
  '{n} cells': '{n} cellules',
  '{} marked. Values and formulas are as they were.': '{} marquées. Valeurs et formules sont comme avant.',
  'The marks of {} are taken away.': 'Les marques de {} sont enlevées.',
  'Marking cells': 'Marquage des cellules',
  'Marking cells…': 'Marquage des cellules…',
  'Taking the marks away': 'Enlèvement des marques',
  'Taking the marks away…': 'Enlèvement des marques…',
  'Making the sheet': 'Fabrication de la feuille',
  'Making the sheet…': 'Fabrication de la feuille…',
  'Learning from the records': 'Apprentissage des cahiers',
  'Learning from the records…': 'Apprentissage des cahiers…',
  // Share
  'Look at this workbook': 'Regarder ce classeur',
  'Choose a saved file': 'Choisir un fichier enregistré',
  'Fetching the workbook': 'Lecture du classeur',
  'Fetching the workbook…': 'Lecture du classeur…',
  'Make the copy': 'Faire la copie',
  'Making the copy': 'Fabrication de la copie',
  'Making the copy…': 'Fabrication de la copie…',
  'Save the copy again': 'Enregistrer encore la copie',
  'In the copy': 'Dans la copie',
  'Add a one-page summary': 'Ajouter un résumé d’une page',
  'What the add-in leaves in a file, so that no reader is asked to install anything.':
    'Ce que le complément laisse dans un fichier, pour que le lecteur n’ait rien à installer.',
  'Authors, paths, printers and the like.': 'Auteurs, chemins, imprimantes et autres.',
  'Will be taken out:': 'Sera enlevé :',
  'Nothing would change: no formula of Spawnbook is in it, and nothing is left out.':
    'Rien ne changerait : aucune formule de Spawnbook n’y est, et rien n’est laissé de côté.',
  'First mend the cells above, or tick that the copy shall be made all the same.':
    'Réparez d’abord les cellules ci-dessus, ou cochez que la copie soit faite quand même.',
  'Write this down, or put it into the message that goes with the copy. Whoever has it can tell later whether a number was changed.':
    'Notez-le, ou mettez-le dans le message qui accompagne la copie. Qui l’a peut dire plus tard si un chiffre a été changé.',
  'The copy': 'La copie',
  'The copy is made. {}': 'La copie est faite. {}',
  '{} is made but not saved yet.': '{} est faite mais pas encore enregistrée.',
  'Formulas of Spawnbook that became values': 'Formules de Spawnbook devenues valeurs',
  'that became ordinary formulas': 'devenues formules ordinaires',
  'Other formulas that became values': 'Autres formules devenues valeurs',
  'Formulas that stay as they were': 'Formules restées comme avant',
  'The sheet “{}” says for each of them where the number comes from.':
    'La feuille « {} » dit pour chacune d’où vient le chiffre.',
  'To know': 'À savoir',
  'Taken out or changed': 'Enlevé ou changé',
  'Nothing but the formulas.': 'Rien que les formules.',
  'Still in it': 'Encore dedans',
  'Nothing that tells more than the cells do.': 'Rien qui en dise plus que les cellules.',
  'No formula of Spawnbook is in this workbook: it can be shared as it is. A copy can still leave out sheets, columns and personal data.':
    'Aucune formule de Spawnbook dans ce classeur : il peut être partagé tel quel. Une copie peut encore laisser de côté feuilles, colonnes et données personnelles.',
  'Verify a copy': 'Vérifier une copie',
  'Somebody hands you a copy, or one comes back: see whether its numbers are those it was made with.':
    'On vous remet une copie, ou une revient : voyez si ses chiffres sont ceux d’origine.',
  'Choose another copy': 'Choisir une autre copie',
  'Choose a copy': 'Choisir une copie',
  'Copy to verify': 'Copie à vérifier',
  'Digest you kept': 'Empreinte que vous avez gardée',
  'With it, even a page made anew on purpose is found out. Spaces do not matter.':
    'Avec elle, même une page refaite exprès se découvre. Les espaces ne comptent pas.',
  'Check this copy': 'Vérifier cette copie',
  'It matches its page.': 'Elle correspond à sa page.',
  'It does not match its page.': 'Elle ne correspond pas à sa page.',
  '{}: copy of {}, made on {}.': '{} : copie de {}, faite le {}.',
  'Digest of everything on its page:': 'Empreinte de tout ce qui est sur sa page :',
  'First choose the copy, a file that ends in .xlsx.': 'Choisissez d’abord la copie, un fichier en .xlsx.',
  // About
  'About Spawnbook': 'À propos de Spawnbook',
  'Formulas and plans for small fish hatcheries.': 'Formules et plans pour petites écloseries.',
  Privacy: 'Vie privée',
  'Nothing leaves this machine. Spawnbook has no account, sends no numbers anywhere, counts no visits and keeps no copy: what it works out goes into your workbook and nowhere else.':
    'Rien ne quitte cette machine. Spawnbook n’a pas de compte, n’envoie aucun chiffre, ne compte pas les visites et ne garde aucune copie : ce qu’il calcule va dans votre classeur et nulle part ailleurs.',
  'Inside Excel the page also loads Microsoft’s own Office library, which is under Microsoft’s privacy terms.':
    'Dans Excel la page charge aussi la bibliothèque Office de Microsoft, soumise aux conditions de Microsoft.',
  Trust: 'Confiance',
  'Every function names its source and says how far that source can be trusted. Published numbers come from other waters and other fish: measure yours, and let a small trial go first. With hormones, medicines and chemicals a vet, the label and local rules come before anything printed here.':
    'Chaque fonction nomme sa source et dit jusqu’où s’y fier. Les chiffres publiés viennent d’autres eaux et d’autres poissons : mesurez les vôtres, et faites d’abord un petit essai. Pour hormones, médicaments et produits, un vétérinaire, l’étiquette et les règles locales passent avant tout ce qui est écrit ici.',
  'This copy': 'Cette version',
  Version: 'Version',
  Functions: 'Fonctions',
  'waiting for the workbook': 'attend le classeur',
  'connected to a workbook': 'relié à un classeur',
  'the spreadsheet program is too old': 'le tableur est trop ancien',
  'no workbook': 'pas de classeur',
  'Report a mistake': 'Signaler une erreur',
  'Tell whoever gave you this add-in. Send the formula, what it gave, what you expected and from where; leave out what you do not want others to read.':
    'Dites-le à qui vous a donné ce complément. Envoyez la formule, ce qu’elle a donné, ce que vous attendiez et d’où ; laissez de côté ce que d’autres ne doivent pas lire.',
  'Licences of the parts': 'Licences des composants',
  'MIT – checks what is typed': 'MIT – contrôle ce qui est tapé',
  'MIT – packs .xlsx files': 'MIT – emballe les fichiers .xlsx',
  // Errors
  Messages: 'Messages',
  'Look again': 'Regarder encore',
  'Look through the workbook': 'Parcourir le classeur',
  'This needs a workbook. Open Spawnbook inside Excel or in the local sheet.':
    'Il faut un classeur. Ouvrez Spawnbook dans Excel ou dans la feuille locale.',
  'No SPAWN formulas on {}.': 'Aucune formule SPAWN sur {}.',
  '{} on {}, none of them shows an error.': '{} sur {}, aucune ne montre d’erreur.',
  '{} on {}, {} an error.': '{} sur {}, {} une erreur.',
  '{n} SPAWN formula': '{n} formule SPAWN',
  '{n} SPAWN formulas': '{n} formules SPAWN',
  '{n} shows': '{n} montre',
  '{n} show': '{n} montrent',
  'Cells in error': 'Cellules en erreur',
  'Formulas to re-enter': 'Formules à ressaisir',
  'Re-enter formulas': 'Ressaisir les formules',
  'Re-entering formulas': 'Ressaisie des formules',
  'Reading the workbook': 'Lecture du classeur',
  'Reading the workbook…': 'Lecture du classeur…',
  '{} re-entered.': '{} ressaisies.',
  'Left as they were': 'Laissées comme avant',
  // Functions
  'Choose…': 'Choisir…',
  'As usual ({})': 'Comme d’habitude ({})',
  'Use selection': 'Prendre la sélection',
  'Use selection: {}': 'Prendre la sélection : {}',
  'Open Spawnbook in a workbook to insert this formula.':
    'Ouvrez Spawnbook dans un classeur pour insérer cette formule.',
  'Take care.': 'Attention.',
  'What it gives': 'Ce qu’elle donne',
  'How it works': 'Comment elle marche',
  'Where it holds': 'Où elle vaut',
  Sources: 'Sources',
  Examples: 'Exemples',
  'Try these numbers': 'Essayer ces chiffres',
  Answer: 'Réponse',
  '{} is now in {}.': '{} est maintenant dans {}.',
  'This Excel hands a blank cell to functions as 0.':
    'Cet Excel donne une cellule vide aux fonctions comme un 0.',
  'Workbooks made here are safe from it.': 'Les classeurs faits ici n’en souffrent pas.',
  'In your own formulas write IF(B2="","",B2) in place of B2 where a cell may stay blank.':
    'Dans vos propres formules, écrivez IF(B2="","",B2) au lieu de B2 là où une cellule peut rester vide.',
  'Read in the publication or a copy of it.': 'Lu dans la publication ou une copie.',
  'From memory: the publication is named but its page was not seen. Check before relying on it.':
    'De mémoire : la publication est nommée mais sa page n’a pas été vue. Vérifiez avant de vous y fier.',
  'Common practice, no source. Watch your own fish and trust your own records more.':
    'Usage courant, sans source. Observez vos poissons et fiez-vous plus à vos cahiers.',
  'Worked out by us from published figures.': 'Calculé par nous de chiffres publiés.',
  'A definition or exact arithmetic.': 'Une définition ou un calcul exact.',
  '{} more arguments, may be left out': '{} autres arguments, facultatifs',
  'Something went wrong that Spawnbook did not expect. Nothing more was changed; please try again.':
    'Un problème inattendu est survenu. Rien d’autre n’a été changé ; essayez encore.',
  'A cell is being edited.': 'Une cellule est en cours de saisie.',
  // Dosing
  'no, water only': 'non, de l’eau seulement',
  'not sure': 'pas sûr',
  'well or borehole': 'puits ou forage',
  'aerated for an hour': 'aérée une heure',
  'brown as tea: peat, leaves': 'brune comme du thé : tourbe, feuilles',
  'meter, two decimals': 'pH-mètre, deux décimales',
  'meter, one decimal': 'pH-mètre, une décimale',
  'paper strips': 'bandelettes',
  'No answer': 'Pas de réponse',
  'Mix, then read': 'Mélangez, puis mesurez',
  'Air first': 'D’abord de l’air',
  'Give {} g': 'Donnez {} g',
  'Give {} level spoon of {} g': 'Donnez {} cuillère rase de {} g',
  'Give {} level spoons of {} g': 'Donnez {} cuillères rases de {} g',
  'Give {} mL of stock': 'Donnez {} mL de solution',
  'Wait, read again': 'Attendez, remesurez',
  'Read again': 'Remesurez',
  'Add nothing': 'N’ajoutez rien',
  'No product; read again tomorrow': 'Pas de produit ; relisez demain',
  'Stop: ammonia': 'Arrêt : ammoniac',
  '{n} level spoon of {n} g': '{n} cuillère rase de {n} g',
  '{n} level spoons of {n} g': '{n} cuillères rases de {n} g',
  '{n} mL of stock': '{n} mL de solution',
  'That is {} g.': 'Cela fait {} g.',
  'Stock: {} g of {} in {} of clean water, stirred; made fresh today.':
    'Solution : {} g de {} dans {} d’eau propre, remuée ; faite aujourd’hui.',
  '{n} litre': '{n} litre',
  '{n} litres': '{n} litres',
  'Next reading {} to {}; aired {} to {}.': 'Prochaine mesure {} à {} ; une fois aéré {} à {}.',
  'pH once aired {} to {}.': 'pH une fois aéré : {} à {}.',
  'First hold the meter in a buffer of pH 7 and write down what it shows: a meter that reads low makes the dose too big.':
    'Mettez d’abord le pH-mètre dans un tampon de pH 7 et notez ce qu’il montre : un appareil qui lit trop bas rend la dose trop forte.',
  'The meter was right in its buffer.': 'Le pH-mètre était juste dans son tampon.',
  'The meter shows {} too much in its buffer: that is taken off every reading.':
    'Le pH-mètre montre {} de trop dans son tampon : c’est corrigé à chaque mesure.',
  'The meter shows {} too little in its buffer: that is taken off every reading.':
    'Le pH-mètre montre {} de trop peu dans son tampon : c’est corrigé à chaque mesure.',
  'The reading fits the water of vat {}, so the dose starts from what was learnt there.':
    'La mesure va avec l’eau du bac {} : la dose part de ce qui y fut appris.',
  'This is not the water of vat {}: the reading does not fit. It is dosed by itself.':
    'Ce n’est pas l’eau du bac {} : la mesure ne va pas. Il est dosé à part.',
  'Fish are in the water: measure total ammonia before the pH is raised, and type it in the set-up.':
    'Il y a des poissons : mesurez l’ammoniac total avant de relever le pH, et tapez-le dans la préparation.',
  'Ammonia: with what was measured the pH must not pass {}. Exchange water first, feed nothing, measure again.':
    'Ammoniac : avec ce qui fut mesuré le pH ne doit pas dépasser {}. Changez d’abord de l’eau, ne nourrissez pas, remesurez.',
  'pH {} was read, then {} g went in. Keep the water moving, then read at both ends of the vat.':
    'pH {} mesuré, puis {} g donnés. Gardez l’eau en mouvement, puis mesurez aux deux bouts du bac.',
  'This should reach the target once aired.': 'Cela devrait atteindre le but une fois aéré.',
  'One step, no more.': 'Un pas, pas plus.',
  'My hatchery': 'Mon écloserie',
  'Held back so as not to pass the top of the window.': 'Retenu pour ne pas dépasser le haut de la fenêtre.',
  'Held to twice the part-dose before; the readings will earn more.':
    'Limité au double de la dose d’avant ; les mesures permettront plus.',
  'Held back: the water does not answer as carbon dioxide alone would.':
    'Retenu : l’eau ne répond pas comme le ferait le gaz carbonique seul.',
  'Air first, no product yet: air alone may bring this water into the window (chance {} %).':
    'D’abord de l’air, pas encore de produit : l’air seul peut amener cette eau dans la fenêtre (chance {} %).',
  'Air the vat strongly for an hour or more, read, and write that reading down with "aired" beside it.':
    'Aérez fort une heure ou plus, mesurez, et notez cette mesure comme « aéré ».',
  'Quicker: shake a half-full bottle of the water for some minutes, changing its air, and read that ("jar").':
    'Plus vite : secouez quelques minutes une bouteille à moitié pleine, en changeant l’air, et mesurez-la (« bocal »).',
  'No product yet: the pH is still on the move, because gas is leaving or the dose is mixing.':
    'Pas encore de produit : le pH bouge encore, car le gaz part ou la dose se mélange.',
  'Keep the air on and read again, until two readings agree.':
    'Gardez l’air et remesurez, jusqu’à ce que deux mesures concordent.',
  'Air on, no product yet: the dose has used up the carbon dioxide, and as it comes in again from the air the pH sinks to about {}.':
    'De l’air, pas encore de produit : la dose a consommé le gaz carbonique, et quand il revient de l’air le pH redescend vers {}.',
  'Read again after an hour of air.': 'Remesurez après une heure d’air.',
  'Read again before anything else: pH {} was read, between {} and {} was expected.':
    'Remesurez avant toute chose : pH {} mesuré, entre {} et {} attendu.',
  'Look at the figure typed, mix, rinse the meter, check it in a buffer.':
    'Vérifiez le chiffre tapé, mélangez, rincez l’appareil, contrôlez-le dans un tampon.',
  'Read again before more product: pH {} is lower than this dose should bring; perhaps it has not mixed yet.':
    'Remesurez avant d’ajouter : pH {} est plus bas que ce que cette dose devrait donner ; peut-être pas encore mélangé.',
  'Wait a quarter of an hour more, with the water moving.':
    'Attendez un quart d’heure de plus, l’eau en mouvement.',
  'Read again before anything else: pH {} was read, above 8.':
    'Remesurez avant toute chose : pH {} mesuré, au-dessus de 8.',
  'Look at the figure typed, rinse the meter, check it in a buffer.':
    'Vérifiez le chiffre tapé, rincez l’appareil, contrôlez-le dans un tampon.',
  'If a second reading agrees, add nothing and exchange part of the water.':
    'Si une seconde mesure concorde, n’ajoutez rien et changez une part de l’eau.',
  'Read again before anything else: pH {} is unusual for water.':
    'Remesurez avant toute chose : pH {} est inhabituel pour de l’eau.',
  'Check the meter in a buffer; write the second reading down too.':
    'Contrôlez l’appareil dans un tampon ; notez aussi la seconde mesure.',
  'Wait: the two readings, pH {} and {}, do not agree.':
    'Attendez : les deux mesures, pH {} et {}, ne concordent pas.',
  'Mix, wait as long again, and read once more.': 'Mélangez, attendez encore autant, et remesurez.',
  'Add nothing: pH {} was read, above the window, but not above 8.':
    'N’ajoutez rien : pH {} mesuré, au-dessus de la fenêtre, mais pas de 8.',
  'Add nothing: pH {} was read, above the window.': 'N’ajoutez rien : pH {} mesuré, au-dessus de la fenêtre.',
  'Gas that leaves the water lifts the pH for a day or more; that is no fault of the product.':
    'Le gaz qui quitte l’eau relève le pH un jour ou plus ; ce n’est pas la faute du produit.',
  'Leave the vat and measure again tomorrow; check ammonia if fish are in.':
    'Laissez le bac et remesurez demain ; contrôlez l’ammoniac s’il y a des poissons.',
  'Exchange part of the water, and measure again; check ammonia if fish are in.':
    'Changez une part de l’eau, et remesurez ; contrôlez l’ammoniac s’il y a des poissons.',
  'Stop: pH {} is in the window.': 'Arrêt : pH {} est dans la fenêtre.',
  'Stop: pH {} lies just below the window, which begins at {}, by less than a meter can tell.':
    'Arrêt : pH {} est juste sous la fenêtre, qui commence à {}, de moins que ce qu’un pH-mètre distingue.',
  'Once the gas has come to rest the pH may stand anywhere from {} to {}: keep the air on, read it tomorrow, write that reading down with "night" beside it, and do what is said then.':
    'Une fois le gaz au repos, le pH peut être n’importe où de {} à {} : gardez l’air, lisez-le demain, notez cette lecture avec « nuit », et faites ce qui est dit alors.',
  'No product; keep the air on, hold the meter in a buffer, and measure again tomorrow.':
    'Pas de produit ; laissez l’air, plongez le pH-mètre dans un tampon, et mesurez de nouveau demain.',
  'No more product; keep the air on and measure again tomorrow.':
    'Plus de produit ; gardez l’air et remesurez demain.',
  'pH {} is in the window. No more product; keep the air on and measure again tomorrow.':
    'pH {} est dans la fenêtre. Plus de produit ; gardez l’air et remesurez demain.',
  'Air on, no product yet: with what has gone in, the pH should rise to about {} as carbon dioxide leaves.':
    'De l’air, pas encore de produit : avec ce qui est donné, le pH devrait monter vers {} quand le gaz carbonique part.',
  'Read again after an hour of air and write "aired" beside it; if it has not risen, more is given.':
    'Remesurez après une heure d’air et notez « aéré » ; s’il n’est pas monté, on en donne plus.',
  'Stop: what is left to give moves the pH by less than a meter shows.':
    'Arrêt : ce qui reste à donner bouge le pH de moins qu’un appareil ne montre.',
  'Keep the air on and measure again tomorrow.': 'Gardez l’air et remesurez demain.',
  'Once the carbon dioxide has left, the pH stands near {} by itself: this water needs no product.':
    'Une fois le gaz carbonique parti, le pH est près de {} de lui-même : cette eau n’a pas besoin de produit.',
  'Once the carbon dioxide has left, the pH stands near {}.':
    'Une fois le gaz carbonique parti, le pH est près de {}.',
  'No product: as carbon dioxide leaves, the pH rises by itself to about {}.':
    'Pas de produit : quand le gaz carbonique part, le pH monte seul vers {}.',
  'In a still vat that takes two days and more, in a stirred or shallow one about a day (from memory).':
    'Dans un bac dormant cela prend deux jours et plus, dans un bac remué ou peu profond environ un jour (de mémoire).',
  'No dose of this product is of use here.': 'Aucune dose de ce produit n’est utile ici.',
  'Read again, check the meter and the product.': 'Remesurez, contrôlez l’appareil et le produit.',
  'One reading only: the answer rests on what such waters usually hold.':
    'Une seule mesure : la réponse repose sur ce que de telles eaux tiennent d’habitude.',
  'The next reading tells far more.': 'La prochaine mesure en dit bien plus.',
  'The readings do not go together: a hidden buffer (peat, ammonia, phosphate, limestone in the vat), a wrong volume, a wrong product, or a meter that drifts.':
    'Les mesures ne vont pas ensemble : un tampon caché (tourbe, ammoniac, phosphate, calcaire dans le bac), un faux volume, un faux produit, ou un appareil qui dérive.',
  'Half steps only.': 'Des demi-pas seulement.',
  'The last dose hardly moved the pH: the water is strongly buffered, or the product, the meter or the volume is not what it seems.':
    'La dernière dose a à peine bougé le pH : l’eau est très tamponnée, ou le produit, l’appareil ou le volume n’est pas ce qu’il semble.',
  'Dissolve this dose in a bucket, pour it in where the water moves, mix with the air on, wait a quarter of an hour, measure twice, write the pH down.':
    'Dissolvez cette dose dans un seau, versez-la où l’eau bouge, mélangez l’air en marche, attendez un quart d’heure, mesurez deux fois, notez le pH.',
  'Goggles and gloves; dissolve it in a bucket first; never onto fish or eggs.':
    'Lunettes et gants ; dissolvez d’abord dans un seau ; jamais sur poissons ou œufs.',
  'Burns and blinds: goggles, gloves, dust mask; stir it into water; never with fish.':
    'Brûle et aveugle : lunettes, gants, masque ; remuez-la dans l’eau ; jamais avec des poissons.',
  'Burns at once: goggles, long gloves; into plenty of cold water; never with fish.':
    'Brûle aussitôt : lunettes, gants longs ; dans beaucoup d’eau froide ; jamais avec des poissons.',
  'Fish are in: know the ammonia; no more than {} pH a step.':
    'Il y a des poissons : connaissez l’ammoniac ; pas plus de {} pH par pas.',
  '{}: a number is needed': '{} : il faut un nombre',
  '{}, row {}: {} {}, while the other samples are near {}. Was this one typed in another unit, or a count in the wrong row?':
    '{}, ligne {} : {} {}, alors que les autres prises sont près de {}. Celle-ci est-elle tapée dans une autre unité, ou un compte sur la mauvaise ligne ?',
  'good: {} to {} °C is the best range': 'bon : {} à {} °C est la meilleure plage',
  // Check: what was found
  'Checked:': 'Vérifié :',
  'What to check': 'Que vérifier',
  'What was found': 'Ce qui fut trouvé',
  'How it was read': 'Comment ce fut lu',
  'What to do with it': 'Qu’en faire',
  '1. What to check': '1. Que vérifier',
  '2. What was found': '2. Ce qui fut trouvé',
  '3. How it was read': '3. Comment ce fut lu',
  '4. What to do with it': '4. Qu’en faire',
  '{} rules had nothing to check; the list is at the end.':
    '{} règles n’avaient rien à vérifier ; la liste est à la fin.',
  'There is no order in these lines yet. Copy rows from a sheet and paste them here.':
    'Pas encore de commande dans ces lignes. Copiez des lignes d’une feuille et collez-les ici.',
  '{n} orders are added.': '{n} commandes sont ajoutées.',
  '{n} order is added.': '{n} commande est ajoutée.',
  'Orders before these': 'Commandes d’avant',
  'Orders after these': 'Commandes d’après',
  'the farm, {}': 'la ferme, {}',
  limits: 'limites',
  'stands out: ▲ above, ▼ below, ◆ nine in a row': 'sort du lot : ▲ au-dessus, ▼ en dessous, ◆ neuf de suite',
  'stands out: ▲ above, ▼ below': 'sort du lot : ▲ au-dessus, ▼ en dessous',
  'expected, with its interval': 'attendu, avec son intervalle',
  'As you said, for the column “{}”.': 'Comme vous l’avez dit, pour la colonne « {} ».',
  'Feed does not fit number and weight': 'L’aliment ne va pas avec nombre et poids',
  'Growth beyond belief': 'Croissance incroyable',
  'Feed conversion beyond belief': 'Indice de consommation incroyable',
  'Latency does not fit the temperature': 'L’attente ne va pas avec la température',
  'Hatch time does not fit the temperature': 'L’heure d’éclosion ne va pas avec la température',
  'Round numbers where counts belong': 'Nombres ronds au lieu de comptes',
  'A value beyond belief': 'Une valeur incroyable',
  'More than 100 %': 'Plus de 100 %',
  'Eggs per gram out of the ordinary': 'Œufs par gramme hors du commun',
  'More eggs than she can hold': 'Plus d’œufs qu’elle n’en peut porter',
  'Hormone per kg out of the ordinary': 'Hormone par kg hors du commun',
  'Hatched where eggs die': 'Éclos où les œufs meurent',
  'Eggs do not follow from weight and count': 'Les œufs ne découlent pas du poids et du compte',
  'Egg yield does not follow from the weights': 'Le rendement en œufs ne découle pas des poids',
  'A percentage does not follow from its counts': 'Un pourcentage ne découle pas de ses comptes',
  'Hormone volume does not follow from weight and dose':
    'Le volume d’hormone ne découle pas du poids et de la dose',
  'Latency does not follow from the times': 'L’attente ne découle pas des heures',
  'Incubation time does not follow from the times': 'L’incubation ne découle pas des heures',
  'Days do not follow from the dates': 'Les jours ne découlent pas des dates',
  'Feed does not follow from number, weight and ration':
    'L’aliment ne découle pas du nombre, du poids et de la ration',
  'Growth rate does not follow from the weights': 'La croissance ne découle pas des poids',
  'Feed conversion does not follow from feed and gain': 'L’indice ne découle pas de l’aliment et du gain',
  'Words where a number belongs': 'Des mots au lieu d’un nombre',
  'Numbers stored as text': 'Nombres gardés comme texte',
  'The header names another unit': 'Le titre nomme une autre unité',
  'Copied down, not measured': 'Recopié, non mesuré',
  'A row entered twice': 'Une ligne entrée deux fois',
  'A pH change the dose cannot have made': 'Un pH que la dose n’a pu faire',
  'A count grows along the stages': 'Un compte grandit le long des stades',
  'Negative, or a fraction of a fish': 'Négatif, ou une fraction de poisson',
  'Times out of order': 'Heures dans le désordre',
  'A date in a wrong century': 'Une date d’un autre siècle',
  'A date out of sequence': 'Une date hors suite',
  'Dates in two orders': 'Dates dans deux ordres',
  'A date in the future': 'Une date à venir',
  'A number typed over a formula': 'Un nombre tapé sur une formule',
  'A formula unlike its neighbours': 'Une formule autre que ses voisines',
  'An error in a cell': 'Une erreur dans une cellule',
  'A Spawnbook formula tied to another file': 'Une formule Spawnbook liée à un autre fichier',
  'A decimal point in the wrong place': 'Une virgule au mauvais endroit',
  'Grams and kilograms mixed': 'Grammes et kilogrammes mêlés',
  'Pounds in a column of kilograms': 'Livres dans une colonne de kilogrammes',
  'Two digits swapped': 'Deux chiffres échangés',
  '°F and °C mixed': '°F et °C mêlés',
  'One vat, two batches': 'Un bac, deux lots',
  'More vats in use than there are': 'Plus de bacs en usage qu’il n’y en a',
  'injection date': 'date d’injection',
  'hatch date': 'date d’éclosion',
  'strip date': 'date de stripping',
  'stocking date': 'date de mise en charge',
  'end date': 'date de fin',
  'hatch time': 'heure d’éclosion',
  'afternoon water temperature': 'température de l’eau l’après-midi',
  alkalinity: 'alcalinité',
  ammonia: 'ammoniac',
  biomass: 'biomasse',
  'deaths up to this day': 'morts jusqu’à ce jour',
  'degree-hours': 'degrés-heures',
  'delivery date': 'date de livraison',
  density: 'densité',
  deposit: 'acompte',
  'dissolved oxygen': 'oxygène dissous',
  'egg volume': 'volume des œufs',
  'egg weight': 'poids des œufs',
  'egg yield': 'rendement en œufs',
  'eggs looked at': 'œufs regardés',
  'eggs per gram': 'œufs par gramme',
  'eggs per millilitre': 'œufs par millilitre',
  'end time': 'heure de fin',
  'feed conversion': 'indice de consommation',
  'feed given': 'aliment donné',
  'female weight': 'poids de la femelle',
  'female weight after stripping': 'poids de la femelle après stripping',
  'fertilisation time': 'heure de fécondation',
  'fertilised in the sample': 'fécondés dans la prise',
  'first dose': 'première dose',
  'first dose per kg': 'première dose par kg',
  'fish in the sample': 'poissons dans la prise',
  'fish put out': 'poissons sortis',
  'food per larva': 'proies par larve',
  'growth rate': 'taux de croissance',
  hardness: 'dureté',
  'hormone dose per kg': 'dose d’hormone par kg',
  'hormone preparation': 'préparation hormonale',
  'hormone volume': 'volume d’hormone',
  'incubation temperature': 'température d’incubation',
  'incubation time': 'durée d’incubation',
  'injection time': 'heure d’injection',
  latency: 'temps d’attente',
  length: 'longueur',
  'line number': 'numéro de ligne',
  'male weight': 'poids du mâle',
  'meals a day': 'repas par jour',
  'mean weight': 'poids moyen',
  'money for the sale': 'argent de la vente',
  'money in': 'recette',
  'money in hand': 'argent en caisse',
  'money out': 'dépense',
  'money owed': 'argent dû',
  'money paid': 'argent payé',
  month: 'mois',
  'morning water temperature': 'température de l’eau le matin',
  nitrate: 'nitrate',
  nitrite: 'nitrite',
  'number alive': 'nombre de vivants',
  'number at the start': 'nombre au début',
  'number dead': 'nombre de morts',
  'number fertilised': 'nombre de fécondés',
  'number graded': 'nombre trié',
  'number hatched': 'nombre d’éclos',
  'number left': 'nombre restant',
  'number moved in': 'nombre entré',
  'number moved out': 'nombre sorti',
  'number sold': 'nombre vendu',
  'number stocked': 'nombre mis en charge',
  operator: 'opérateur',
  origin: 'origine',
  'pH after the dose': 'pH après la dose',
  'product given': 'produit donné',
  quantity: 'quantité',
  'receipt number': 'numéro de reçu',
  'salt in the water': 'sel dans l’eau',
  'second dose': 'seconde dose',
  'second dose per kg': 'seconde dose par kg',
  sex: 'sexe',
  'share fertilised': 'part fécondée',
  'share hatched': 'part éclose',
  species: 'espèce',
  'start time': 'heure de début',
  'strip time': 'heure de stripping',
  'time taken': 'durée',
  'vats in use': 'bacs en usage',
  'vats owned': 'bacs possédés',
  'water temperature': 'température de l’eau',
  'water volume': 'volume d’eau',
  'weight at the end': 'poids à la fin',
  'weight at the start': 'poids au début',
  'what it was': 'ce que c’était',
  'row of totals': 'ligne de totaux',
  'row of notes': 'ligne de notes',
  'repeated heading': 'titre répété',
  'row of units': 'ligne d’unités',
  'Feed does not fit number and weight ({})': 'L’aliment ne va pas avec nombre et poids ({})',
  'Growth beyond belief ({})': 'Croissance incroyable ({})',
  'Feed conversion beyond belief ({})': 'Indice de consommation incroyable ({})',
  'Latency does not fit the temperature ({})': 'L’attente ne va pas avec la température ({})',
  'Hatch time does not fit the temperature ({})': 'L’heure d’éclosion ne va pas avec la température ({})',
  'Round numbers where counts belong ({})': 'Nombres ronds au lieu de comptes ({})',
  'A value beyond belief ({})': 'Une valeur incroyable ({})',
  'More than 100 % ({})': 'Plus de 100 % ({})',
  'Eggs per gram out of the ordinary ({})': 'Œufs par gramme hors du commun ({})',
  'More eggs than she can hold ({})': 'Plus d’œufs qu’elle n’en peut porter ({})',
  'Hormone per kg out of the ordinary ({})': 'Hormone par kg hors du commun ({})',
  'Hatched where eggs die ({})': 'Éclos où les œufs meurent ({})',
  'Eggs do not follow from weight and count ({})': 'Les œufs ne découlent pas du poids et du compte ({})',
  'Egg yield does not follow from the weights ({})': 'Le rendement en œufs ne découle pas des poids ({})',
  'A percentage does not follow from its counts ({})': 'Un pourcentage ne découle pas de ses comptes ({})',
  'Hormone volume does not follow from weight and dose ({})':
    'Le volume d’hormone ne découle pas du poids et de la dose ({})',
  'Latency does not follow from the times ({})': 'L’attente ne découle pas des heures ({})',
  'Incubation time does not follow from the times ({})': 'L’incubation ne découle pas des heures ({})',
  'Days do not follow from the dates ({})': 'Les jours ne découlent pas des dates ({})',
  'Feed does not follow from number, weight and ration ({})':
    'L’aliment ne découle pas du nombre, du poids et de la ration ({})',
  'Growth rate does not follow from the weights ({})': 'La croissance ne découle pas des poids ({})',
  'Feed conversion does not follow from feed and gain ({})':
    'L’indice ne découle pas de l’aliment et du gain ({})',
  'Words where a number belongs ({})': 'Des mots au lieu d’un nombre ({})',
  'Numbers stored as text ({})': 'Nombres gardés comme texte ({})',
  'The header names another unit ({})': 'Le titre nomme une autre unité ({})',
  'Copied down, not measured ({})': 'Recopié, non mesuré ({})',
  'A row entered twice ({})': 'Une ligne entrée deux fois ({})',
  'A pH change the dose cannot have made ({})': 'Un pH que la dose n’a pu faire ({})',
  'A count grows along the stages ({})': 'Un compte grandit le long des stades ({})',
  'Negative, or a fraction of a fish ({})': 'Négatif, ou une fraction de poisson ({})',
  'Times out of order ({})': 'Heures dans le désordre ({})',
  'A date in a wrong century ({})': 'Une date d’un autre siècle ({})',
  'A date out of sequence ({})': 'Une date hors suite ({})',
  'Dates in two orders ({})': 'Dates dans deux ordres ({})',
  'A date in the future ({})': 'Une date à venir ({})',
  'A number typed over a formula ({})': 'Un nombre tapé sur une formule ({})',
  'A formula unlike its neighbours ({})': 'Une formule autre que ses voisines ({})',
  'An error in a cell ({})': 'Une erreur dans une cellule ({})',
  'A Spawnbook formula tied to another file ({})': 'Une formule Spawnbook liée à un autre fichier ({})',
  'A decimal point in the wrong place ({})': 'Une virgule au mauvais endroit ({})',
  'Grams and kilograms mixed ({})': 'Grammes et kilogrammes mêlés ({})',
  'Pounds in a column of kilograms ({})': 'Livres dans une colonne de kilogrammes ({})',
  'Two digits swapped ({})': 'Deux chiffres échangés ({})',
  '°F and °C mixed ({})': '°F et °C mêlés ({})',
  'One vat, two batches ({})': 'Un bac, deux lots ({})',
  'More vats in use than there are ({})': 'Plus de bacs en usage qu’il n’y en a ({})',
  'air first': 'd’abord l’air',
  'Eggs and yolk larvae: {}': 'Œufs et larves à vésicule : {}',
  'vats of the eggs, in two halves': 'bacs des œufs, en deux moitiés',
  'What the SPAWN formulas of this workbook complain about, cell by cell.':
    'Ce dont se plaignent les formules SPAWN de ce classeur, cellule par cellule.',
  'A copy that opens anywhere without Spawnbook, with the same numbers and a page that says where each comes from.':
    'Une copie qui s’ouvre partout sans Spawnbook, avec les mêmes chiffres et une page qui dit d’où vient chacun.',
  'Nothing is changed, now or later: the copy is a new file.':
    'Rien n’est changé, ni maintenant ni plus tard : la copie est un nouveau fichier.',
  'One page for an investor': 'Une page pour un investisseur',
  'The season of the plan in this workbook on one sheet: plain words, two charts, the poor and the good end, and what is taken for granted. It follows the plan, and lives on in a copy.':
    'La saison ou le plan de ce classeur sur une feuille : mots simples, deux graphiques, le mauvais et le bon bout, et ce qui est supposé. Elle suit le plan, et vit dans une copie.',
  '‹ All functions': '‹ Toutes les fonctions',
  'Fill in': 'Remplir',
  'Still needed:': 'Il manque :',
  'Unit: {}': 'Unité : {}',
  'refuses:': 'refuse :',
  '1 more argument, may be left out': '1 autre argument, facultatif',
  'and {n} more rows': 'et {n} lignes de plus',
  'The answer shows once the cells are read from the workbook.':
    'La réponse s’affiche une fois les cellules lues dans le classeur.',
  'Caustic soda burns skin and eyes at once and heats water to spitting: goggles, long gloves, apron. Add it a little at a time to plenty of cold water, never water to it; keep it away from acids and aluminium. Never into water that holds fish. If it gets in an eye rinse for many minutes and see a doctor. Follow the product label and local rules.':
    'La soude caustique brûle aussitôt peau et yeux et chauffe l’eau jusqu’aux éclaboussures : lunettes, gants longs, tablier. Mettez-la peu à peu dans beaucoup d’eau froide, jamais l’eau sur elle ; loin des acides et de l’aluminium. Jamais dans une eau avec des poissons. Dans un œil, rincez de longues minutes et voyez un médecin. Suivez l’étiquette et les règles locales.',
  'Strong acids burn. Always pour acid into water, never water into acid; goggles, gloves, fresh air; keep away from chlorine bleach. Follow the product label and local rules.':
    'Les acides forts brûlent. Versez toujours l’acide dans l’eau, jamais l’eau dans l’acide ; lunettes, gants, air frais ; loin de l’eau de Javel. Suivez l’étiquette et les règles locales.',
  'Formalin is poisonous, a cause of cancer and a strong irritant: goggles, gloves, fresh air. It takes oxygen out of the water. Ask a vet and check that local rules allow it.':
    'Le formol est un poison, cause de cancer et fort irritant : lunettes, gants, air frais. Il prend l’oxygène de l’eau. Demandez à un vétérinaire et vérifiez que les règles locales le permettent.',
  'A bath that cures one batch can kill the next: try a few eggs or fry first, watch them, have clean water ready. Ask a vet and follow local rules; never copy a dose from another species.':
    'Un bain qui soigne un lot peut tuer le suivant : essayez d’abord sur quelques œufs ou alevins, observez-les, ayez de l’eau propre prête. Demandez à un vétérinaire et suivez les règles locales ; ne copiez jamais une dose d’une autre espèce.',
  'Of all eggs': 'De tous les œufs',
  'Of the fertilised eggs': 'Des œufs fécondés',
  'Hatch {}: of all eggs, or of the fertilised eggs?':
    'Éclosion {} : de tous les œufs, ou des œufs fécondés ?',
  'You changed how a column is read. Check again to use it.':
    'Vous avez changé la lecture d’une colonne. Vérifiez encore pour l’employer.',
  'Worth a look ({n})': 'À regarder ({n})',
  'Unlikely ({n})': 'Peu probable ({n})',
  'Impossible ({n})': 'Impossible ({n})',
  '{n} of {n} columns was not read.': '{n} colonne sur {n} n’a pas été lue.',
  '{n} of {n} columns were not read.': '{n} colonnes sur {n} n’ont pas été lues.',
  'Too little was read to call the book clean: say what its columns are.':
    'Trop peu fut lu pour dire le cahier propre : dites ce que sont ses colonnes.',
  'Read as {} with {} between the fields.': 'Lu comme {} avec {} entre les champs.',
  'Proposal, not written:': 'Proposition, non écrite :',
  'Rows of totals': 'Lignes de totaux',
  'Orders, vats and fish on a sheet': 'Commandes, bacs et poissons sur une feuille',
  'Type or paste them there, with lists to choose from; a wrong cell is marked.':
    'Tapez-les ou collez-les là, avec des listes à choisir ; une cellule fausse est marquée.',
  'As tables on a sheet': 'En tableaux sur une feuille',
  'Read the tables': 'Lire les tableaux',
  'The sheet “{}” is there already and stays as it is: type on it, then read the tables.':
    'La feuille « {} » est déjà là et reste comme elle est : tapez dessus, puis lisez les tableaux.',
  'The sheet “{}” is made: type or paste on it, then read the tables.':
    'La feuille « {} » est faite : tapez ou collez dessus, puis lisez les tableaux.',
  'There is no sheet “{}” in this workbook. One press makes it.':
    'Il n’y a pas de feuille « {} » dans ce classeur. Une pression la fait.',
  'The headings of “{}” are gone. Bring them back, or make the sheet anew.':
    'Les titres de « {} » ont disparu. Remettez-les, ou refaites la feuille.',
  'Read: {n} orders, {n} vats, {n} females, {n} males.':
    'Lu : {n} commandes, {n} bacs, {n} femelles, {n} mâles.',
  'One order says the same as another: look whether it was typed twice.':
    'Une commande dit la même chose qu’une autre : regardez si elle a été tapée deux fois.',
  '{n} orders say the same as another: look whether they were typed twice.':
    '{n} commandes disent la même chose qu’une autre : regardez si elles ont été tapées deux fois.',
  'Now work the plan out.': 'Calculez maintenant le plan.',
  'One cell cannot be used and is marked.': 'Une cellule n’est pas utilisable ; elle est marquée.',
  '{n} cells cannot be used and are marked.': '{n} cellules ne sont pas utilisables ; elles sont marquées.',
  Loss: 'Perte',
  'No prices yet: put them under Prices, and a price at each order, to see what a fish costs.':
    'Pas encore de prix : mettez-les sous Prix, et un prix à chaque commande, pour voir ce que coûte un poisson.',
  // Share, errors, check and what a season says of itself
  About: 'À propos',
  'How {} was read: {}, {} known, {n} not': 'Comment {} fut lu : {}, {} connues, {n} non',
  '{n} groups': '{n} groupes',
  '{n} group': '{n} groupe',
  '{n} formulas': '{n} formules',
  '{n} formula': '{n} formule',
  '{n} names': '{n} noms',
  '{n} name': '{n} nom',
  '{n} rules had nothing to check; the list is at the end.':
    '{n} règles n’avaient rien à vérifier ; la liste est à la fin.',
  '{n} rule had nothing to check; the list is at the end.':
    '{n} règle n’avait rien à vérifier ; la liste est à la fin.',
  'Nothing was found in {} of {}.': 'Rien ne fut trouvé dans {} de {}.',
  '{n} findings in {} of {}.': '{n} constats dans {} de {}.',
  '{n} finding in {} of {}.': '{n} constat dans {} de {}.',
  'Not read: {} and {n} more.': 'Non lu : {} et {n} de plus.',
  'and {n} more.': 'et {n} de plus.',
  'and {n} beyond those; the findings sheet lists more.':
    'et {n} au-delà ; la feuille des constats en donne plus.',
  'Not checked ({n} rules)': 'Non vérifié ({n} règles)',
  'No records recognised on: {}.': 'Aucune note reconnue sur : {}.',
  'What you said about {n} columns is remembered with this workbook and used.':
    'Ce que vous avez dit de {n} colonnes est gardé avec ce classeur et utilisé.',
  'Columns worth a word from you': 'Colonnes qui demandent un mot de vous',
  'There is nothing to learn rates from: {}, and none of those says two things that make a rate (eggs and hatched, injection and strip time …).':
    'Il n’y a rien d’où apprendre des taux : {}, et aucune ne dit deux choses qui font un taux (œufs et éclos, heures d’injection et de strippage…).',
  'There are too few runs for trends: at least 8 free of findings must say how many eggs were set and how many hatched or were fertilised. {}.':
    'Il y a trop peu de pontes pour des tendances : au moins 8 sans constat doivent dire combien d’œufs furent mis et combien ont éclos ou furent fécondés. {}.',
  '{n} of {} is free of findings and used.': '{n} de {} est sans constat et utilisée.',
  '{n} of {} are free of findings and used.': '{n} de {} sont sans constat et utilisées.',
  '{n} of {n} record is free of findings': '{n} note sur {n} est sans constat',
  '{n} of {n} records are free of findings': '{n} notes sur {n} sont sans constat',
  'the findings': 'les constats',
  'the rates': 'les taux',
  'the trends': 'les tendances',
  'the plan': 'le plan',
  'the summary': 'le résumé',
  'above the limits': 'au-dessus des limites',
  'below the limits': 'en dessous des limites',
  'nine in a row above': 'neuf de suite au-dessus',
  'nine in a row below': 'neuf de suite en dessous',
  'the ninth or later in a row above the centre': 'la neuvième de suite ou plus au-dessus du centre',
  'the ninth or later in a row below the centre': 'la neuvième de suite ou plus en dessous du centre',
  'within the limits': 'dans les limites',
  '{}: {n} %, {n} of {n} eggs; {}; limits {n} % to {n} %.':
    '{} : {n} %, {n} œufs sur {n} ; {} ; limites {n} % à {n} %.',
  '{}: {n} % expected, {n} % to {n} %; all of that above the {n} % of the farm. Counted {n} %, {n} of {n} eggs in {}.':
    '{} : {n} % attendus, {n} % à {n} % ; tout cela au-dessus des {n} % de la ferme. Comptés {n} %, {n} œufs sur {n} en {}.',
  '{}: {n} % expected, {n} % to {n} %; all of that below the {n} % of the farm. Counted {n} %, {n} of {n} eggs in {}.':
    '{} : {n} % attendus, {n} % à {n} % ; tout cela en dessous des {n} % de la ferme. Comptés {n} %, {n} œufs sur {n} en {}.',
  '{}: {n} % expected, {n} % to {n} %. Counted {n} %, {n} of {n} eggs in {}.':
    '{} : {n} % attendus, {n} % à {n} %. Comptés {n} %, {n} œufs sur {n} en {}.',
  'The latest {n} of {n} runs are shown.': 'Les {n} dernières pontes sur {n} sont montrées.',
  '{n} of {n} are shown.': '{n} sur {n} sont montrées.',
  '{n} more run does not say it.': '{n} ponte de plus ne le dit pas.',
  '{n} more runs do not say it.': '{n} pontes de plus ne le disent pas.',
  'Expected leans on the farm while there are few runs. A difference is not yet a cause: the best female may have had the best month.':
    'L’attendu s’appuie sur la ferme tant qu’il y a peu de pontes. Une différence n’est pas encore une cause : la meilleure femelle a pu avoir le meilleur mois.',
  'No run free of findings says how many eggs there were and how many of them hatched; trends need {n}, and 20 are better.':
    'Aucune ponte sans constat ne dit combien d’œufs il y avait et combien ont éclos ; il en faut {n} pour des tendances, mieux 20.',
  'One run free of findings says how many eggs there were and how many of them hatched; trends need {n}, and 20 are better.':
    'Une ponte sans constat dit combien d’œufs il y avait et combien ont éclos ; il en faut {n} pour des tendances, mieux 20.',
  'Only {n} runs free of findings say how many eggs there were and how many of them hatched; trends need {n}, and 20 are better.':
    'Seules {n} pontes sans constat disent combien d’œufs il y avait et combien ont éclos ; il en faut {n} pour des tendances, mieux 20.',
  'No run free of findings says how many eggs there were and how many of them were fertilised; trends need {n}, and 20 are better.':
    'Aucune ponte sans constat ne dit combien d’œufs il y avait et combien furent fécondés ; il en faut {n} pour des tendances, mieux 20.',
  'One run free of findings says how many eggs there were and how many of them were fertilised; trends need {n}, and 20 are better.':
    'Une ponte sans constat dit combien d’œufs il y avait et combien furent fécondés ; il en faut {n} pour des tendances, mieux 20.',
  'Only {n} runs free of findings say how many eggs there were and how many of them were fertilised; trends need {n}, and 20 are better.':
    'Seules {n} pontes sans constat disent combien d’œufs il y avait et combien furent fécondés ; il en faut {n} pour des tendances, mieux 20.',
  'No run says the water temperature.': 'Aucune ponte ne dit la température de l’eau.',
  'No run says the {}.': 'Aucune ponte ne dit : {}.',
  'None stands out.': 'Aucune ne sort du lot.',
  '{n} stands out, listed below.': '{n} sort du lot, voir plus bas.',
  '{n} stand out, listed below.': '{n} sortent du lot, voir plus bas.',
  "{}: {}, shares from {n} % to {n} %; the farm's middle is {n} %.":
    '{} : {}, parts de {n} % à {n} % ; le milieu de la ferme est {n} %.',
  '{n} of {n} stands out from the farm.': '{n} sur {n} s’écarte de la ferme.',
  '{n} of {n} stand out from the farm.': '{n} sur {n} s’écartent de la ferme.',
  'The book does not say it for the column “{}” on {} ({}). Until you do, its hatch is left out of the rates.':
    'Le cahier ne le dit pas pour la colonne « {} » sur {} ({}). Tant que vous ne le dites pas, son éclosion reste hors des taux.',
  'The book does not say it for the column “{}” ({}). Until you do, its hatch is left out of the rates.':
    'Le cahier ne le dit pas pour la colonne « {} » ({}). Tant que vous ne le dites pas, son éclosion reste hors des taux.',
  'Hatch left out in {}: {}.': 'Éclosion omise dans {} : {}.',
  'None of them says two things that make a rate, such as eggs and hatched, or injection and strip time.':
    'Aucune ne dit deux choses qui font un taux, comme œufs et éclos, ou heures d’injection et de strippage.',
  'In brackets: where the mean of many runs lies with 95 % certainty, and how many runs it rests on.':
    'Entre parenthèses : où se trouve la moyenne de beaucoup de pontes avec 95 % de certitude, et sur combien de pontes elle repose.',
  'No run speaks of: {}. There the literature stays.':
    'Aucune ponte ne parle de : {}. Là, la littérature reste.',
  '3. What the records teach': '3. Ce que les notes apprennent',
  '3. What to do with it': '3. Qu’en faire',
  '2. Choose what it holds': '2. Choisir ce qu’elle contient',
  '3. Make the copy': '3. Faire la copie',
  '{n} had another colour by now and kept it.': '{n} avaient déjà une autre couleur et l’ont gardée.',
  '{}: expected a number above 0 and up to 100 %, got {}.':
    '{} : il faut un nombre au-dessus de 0 et jusqu’à 100 %, reçu {}.',
  'The answer is {}.': 'La réponse est {}.',
  'Where it comes from': 'D’où cela vient',
  'a date and time as 2026-05-01 22:30, or a cell':
    'une date et une heure comme 2026-05-01 22:30, ou une cellule',
  'Left out: {}.': 'Omis : {}.',
  '{} re-entered, {} left as before; the reasons are below.':
    '{} retapées, {} laissées comme avant ; les raisons sont plus bas.',
  'The sheet did not know this function when the formula was entered. “Re-enter formulas” mends it.':
    'La feuille ne connaissait pas cette fonction quand la formule fut tapée. « Retaper les formules » le répare.',
  'The answer needs several cells and some of them are not empty. Clear the cells below and to the right.':
    'La réponse demande plusieurs cellules et certaines ne sont pas vides. Videz les cellules en dessous et à droite.',
  'The cell is still calculating. If it stays so, re-enter the formula.':
    'La cellule calcule encore. Si cela dure, retapez la formule.',
  'The formula points to cells that are not there any more.':
    'La formule vise des cellules qui n’existent plus.',
  'Something in the formula is divided by zero or by a blank cell.':
    'Quelque chose dans la formule est divisé par zéro ou par une cellule vide.',
  'Two ranges in the formula do not meet. Check for a space where a comma belongs.':
    'Deux plages de la formule ne se croisent pas. Cherchez une espace à la place d’une virgule.',
  'There is no answer for these numbers.': 'Il n’y a pas de réponse pour ces nombres.',
  'Excel could not work this formula out.': 'Excel n’a pas pu calculer cette formule.',
  'An argument cannot be used. Open the function’s page to see what it takes.':
    'Un argument n’est pas utilisable. Ouvrez la page de la fonction pour voir ce qu’elle prend.',
  'The numbers are outside what was published, or there are too few of them.':
    'Les nombres sont hors de ce qui fut publié, ou il y en a trop peu.',
  'In the answer that starts here: {}': 'Dans la réponse qui commence ici : {}',
  'The cell is formatted as text, so the formula is not calculated. “Re-enter formulas” mends it.':
    'La cellule est au format texte, donc la formule n’est pas calculée. « Retaper les formules » le répare.',
  '{n} SPAWN formulas on {}': '{n} formules SPAWN sur {}',
  '{n} SPAWN formula on {}': '{n} formule SPAWN sur {}',
  '{}, none of them shows an error.': '{}, aucune ne montre d’erreur.',
  '{n} cells were entered before the functions were there, or are tied to another file. Re-entering the same formula mends that; recalculating does not.':
    '{n} cellules furent tapées avant que les fonctions soient là, ou sont liées à un autre fichier. Retaper la même formule le répare ; recalculer, non.',
  '{n} cell was entered before the functions were there, or is tied to another file. Re-entering the same formula mends that; recalculating does not.':
    '{n} cellule fut tapée avant que les fonctions soient là, ou est liée à un autre fichier. Retaper la même formule le répare ; recalculer, non.',
  'and {n} more. Mend these first, then look again.':
    'et {n} de plus. Réparez d’abord celles-ci, puis regardez encore.',
  'Taken for granted: {}.': 'Tenu pour acquis : {}.',
  'Eggs and yolk larvae': 'Œufs et larves vitellines',
  'in {n} mL of salt water': 'dans {n} mL d’eau salée',
  'from about {n} donor fish': 'd’environ {n} poissons donneurs',
  'dry feed': 'aliment sec',
  Feed: 'Aliment',
  '– too many': '– trop',
  'Under way and kept as they are: {}.': 'En cours et gardés tels quels : {}.',
  'The form has changed since this plan was worked out. Work the plan out again first; then write it.':
    'Le formulaire a changé depuis ce plan. Calculez d’abord le plan à nouveau ; puis écrivez-le.',
  'There is no plan yet. Work the plan out first.': 'Il n’y a pas encore de plan. Calculez d’abord le plan.',
  'There is no sheet of rates in this workbook. Check learns them from your records and writes one: Check, then “Write our own rates as a sheet”.':
    'Il n’y a pas de feuille de taux dans ce classeur. La vérification les apprend de vos notes et en écrit une : Vérifier, puis « Écrire nos propres taux sur une feuille ».',
  'One order is added.': 'Une commande est ajoutée.',
  'One cell cannot be used and is marked. {}: {}': 'Une cellule n’est pas utilisable et est marquée. {} : {}',
  '{n} cells cannot be used and are marked. {}: {}':
    '{n} cellules ne sont pas utilisables et sont marquées. {} : {}',
  'One cell of your own found no place beside its line any more; what it said stands at the end of the log on Counts.':
    'Une de vos cellules n’a plus trouvé place à côté de sa ligne ; ce qu’elle disait est à la fin du journal de Comptages.',
  '{n} cells of your own found no place beside its line any more; what it said stands at the end of the log on Counts.':
    '{n} de vos cellules n’ont plus trouvé place à côté de leur ligne ; ce qu’elles disaient est à la fin du journal de Comptages.',
  'The season is planned anew on its own sheets; batches under way and all that was typed are in it.':
    'La saison est replanifiée sur ses propres feuilles ; les lots en cours et tout ce qui fut tapé y sont.',
  '“{}” brings back what stood there.': '« {} » ramène ce qu’il y avait.',
  'Nothing was changed: what was typed since cannot be read and would be lost. {}':
    'Rien n’a changé : ce qui fut tapé depuis ne peut être lu et serait perdu. {}',
  'Nothing was changed: an entry on the season’s sheets cannot be read, and it would be lost. Plan again from this workbook shows which.':
    'Rien n’a changé : une saisie sur les feuilles de la saison ne peut être lue et serait perdue. Replanifier depuis ce classeur montre laquelle.',
  'The season is back as it was before it was planned again; what was typed since is in it.':
    'La saison est comme avant la replanification ; ce qui fut tapé depuis y est.',
  'Press once more to have the later plan.': 'Pressez encore une fois pour ravoir le plan d’après.',
  '“{}” has no {}. Put a tab, a semicolon or a comma and a space between the columns.':
    '« {} » n’a pas de {}. Mettez une tabulation, un point-virgule ou une virgule et une espace entre les colonnes.',
  'has {n} columns; at most {n} are read.': 'a {n} colonnes ; au plus {n} sont lues.',
  'Nothing yet.': 'Rien encore.',
  ', under way,': ', en cours,',
  'goods ordered, not stripped yet': 'achats commandés, pas encore strippé',
  'in the vats': 'dans les bacs',
  'One figure of the plan is your own; the others are published ones.':
    'Un chiffre du plan est le vôtre ; les autres sont publiés.',
  '{n} figure of the plan is your own; the others are published ones.':
    '{n} chiffre du plan est le vôtre ; les autres sont publiés.',
  '{n} figures of the plan are your own; the others are published ones.':
    '{n} chiffres du plan sont les vôtres ; les autres sont publiés.',
  '{n} fish are ordered, the others are yours to sell; {} of {}.':
    '{n} poissons sont commandés, les autres sont à vous ; {} de {}.',
  'new batch': 'nouveau lot',
  'batch dropped': 'lot abandonné',
  'Parents that count': 'Parents qui comptent',
  '{n} more orders': '{n} commandes de plus',
  'The workbook lists {n} more orders.': 'Le classeur donne {n} commandes de plus.',
  'The workbook lists every task, {n} more of these, and the feed day by day.':
    'Le classeur donne chaque tâche, {n} de plus, et l’aliment jour par jour.',
  '{n} more, until {}': '{n} de plus, jusqu’au {}',
  'Written over, the season keeps its sheets, its batches under way and all that was typed; one press takes it back.':
    'Réécrite, la saison garde ses feuilles, ses lots en cours et tout ce qui fut tapé ; une pression la ramène.',
  'A digest has 64 characters, digits and the letters a to f; this one has {n}. Empty the field to check without it.':
    'Une empreinte a 64 caractères, chiffres et lettres a à f ; celle-ci en a {n}. Videz le champ pour vérifier sans elle.',
  'A digest has 64 characters, digits and the letters a to f; this one has {n} and others among them. Empty the field to check without it.':
    'Une empreinte a 64 caractères, chiffres et lettres a à f ; celle-ci en a {n}, et d’autres parmi eux. Videz le champ pour vérifier sans elle.',
  'Checking the copy': 'Vérification de la copie',
  'Type a column or a range, such as Buyers!C or Buyers!B2:D40.':
    'Tapez une colonne ou une plage, comme Buyers!C ou Buyers!B2:D40.',
  'Say on which sheet, for example {}!C.': 'Dites sur quelle feuille, par exemple {}!C.',
  'There is no sheet “{}”. The sheets are: {}.': 'Il n’y a pas de feuille « {} ». Les feuilles sont : {}.',
  'No window and no download could be opened.': 'Aucune fenêtre et aucun téléchargement n’a pu s’ouvrir.',
  'The copy is made but did not reach you: {} Try “Save the copy again”.':
    'La copie est faite mais ne vous est pas parvenue : {} Essayez « Enregistrer encore la copie ».',
  'No copy was made.': 'Aucune copie ne fut faite.',
  'Every sheet is left out. Keep at least one in the copy.':
    'Toutes les feuilles sont omises. Gardez-en au moins une dans la copie.',
  '{} is larger than {n} MB, more than the pane can hold. Split the workbook, or remove what the reader does not need.':
    '{} dépasse {n} Mo, plus que le volet ne peut tenir. Partagez le classeur, ou ôtez ce dont le lecteur n’a pas besoin.',
  'The summary is written on a new sheet: {}. It follows the plan, and it is part of the next copy.':
    'Le résumé est écrit sur une nouvelle feuille : {}. Il suit le plan, et fait partie de la prochaine copie.',
  'This Excel does not hand the open workbook to the pane, so the plan in it cannot be read.':
    'Cet Excel ne remet pas le classeur ouvert au volet, donc son plan ne peut être lu.',
  'Reading the plan': 'Lecture du plan',
  Workbook: 'Classeur',
  'Digest of everything': 'Empreinte de l’ensemble',
  'Sheets in the copy': 'Feuilles dans la copie',
  'Another column or range': 'Autre colonne ou plage',
  'Add these cells': 'Ajouter ces cellules',
  'Such as Buyers!C or Buyers!B2:D40.': 'Comme Buyers!C ou Buyers!B2:D40.',
  'Columns to empty': 'Colonnes à vider',
  'Names, telephone numbers, prices. What would give them away goes too: the same words elsewhere, results worked out from one of them, notes, what charts remember.':
    'Noms, numéros de téléphone, prix. Ce qui les trahirait part aussi : les mêmes mots ailleurs, les résultats calculés de l’un d’eux, les notes, ce que les graphiques retiennent.',
  'Keep results worked out from the sheets left out': 'Garder les résultats calculés des feuilles omises',
  'They stay as plain numbers and may tell what stood there: a sum of money and the fish beside it tell the price. Left out unless you tick this.':
    'Ils restent comme simples nombres et peuvent dire ce qu’il y avait : une somme d’argent et les poissons à côté disent le prix. Omis si vous ne cochez pas.',
  'Take out personal data': 'Ôter les données personnelles',
  'Authors, the folder the workbook lay in, printers, names of those who wrote notes.':
    'Auteurs, dossier du classeur, imprimantes, noms de ceux qui ont écrit des notes.',
  'Keep simple formulas alive': 'Garder vivantes les formules simples',
  'Formulas of ours that ordinary functions can stand in for go on calculating, so a reader can change a survival or a price. The others become values.':
    'Nos formules que des fonctions ordinaires peuvent remplacer calculent encore, si bien qu’un lecteur peut changer une survie ou un prix. Les autres deviennent des valeurs.',
  'Make the copy although cells hold no finished value':
    'Faire la copie bien que des cellules n’aient pas de valeur finie',
  'They stay as they are: an error, or nothing.': 'Elles restent telles quelles : une erreur, ou rien.',
  'Name of the workbook, for the reader': 'Nom du classeur, pour le lecteur',
  'The file is called {}.': 'Le fichier s’appelle {}.',
  '{}: {}. Formulas that read them become values.':
    '{} : {}. Les formules qui les lisent deviennent des valeurs.',
  '{n} column or range, and what would give them away.': '{n} colonne ou plage, et ce qui les trahirait.',
  '{n} columns or ranges, and what would give them away.': '{n} colonnes ou plages, et ce qui les trahirait.',
  '{n} name that stood for something left out: {}.': '{n} nom qui désignait une chose omise : {}.',
  '{n} names that stood for something left out: {}.': '{n} noms qui désignaient une chose omise : {}.',
  'Report of the copy': 'Rapport de la copie',
  '{n} formulas hold no finished value. Mend them first, or a reader finds an error or an empty cell there.':
    '{n} formules n’ont pas de valeur finie. Réparez-les d’abord, ou un lecteur y trouve une erreur ou une cellule vide.',
  '{n} formula holds no finished value. Mend them first, or a reader finds an error or an empty cell there.':
    '{n} formule n’a pas de valeur finie. Réparez-la d’abord, ou un lecteur y trouve une erreur ou une cellule vide.',
  '{n} formulas of Spawnbook on {} would hold their values in a copy. All other formulas go on working.':
    '{n} formules de Spawnbook sur {} tiendraient leurs valeurs dans une copie. Toutes les autres formules continuent.',
  '{n} formula of Spawnbook on {} would hold its value in a copy. All other formulas go on working.':
    '{n} formule de Spawnbook sur {} tiendrait sa valeur dans une copie. Toutes les autres formules continuent.',
  '{n} cell to look at': '{n} cellule à regarder',
  '{n} cells to look at': '{n} cellules à regarder',
  'mend first': 'réparer d’abord',
  'Open Errors to repair': 'Ouvrir Erreurs pour réparer',
  'What is in it, sheet by sheet ({n})': 'Ce qu’il y a, feuille par feuille ({n})',
  'none of ours': 'aucune des nôtres',
  'The open workbook:': 'Le classeur ouvert :',
  'The file:': 'Le fichier :',
  'Saved workbook': 'Classeur enregistré',
  'what to do': 'quoi faire',
  'how much': 'combien',
  '{} of the broken-off writing taken away.': '{} de l’écriture interrompue ôtées.',
  'The season is back as it stood before.': 'La saison est de nouveau comme avant.',
  'There is a sheet called {} already. Nothing was changed. Write {} beside it?':
    'Il y a déjà une feuille nommée {}. Rien n’a changé. Écrire {} à côté ?',
  'There are sheets called {} already. Nothing was changed. Write {} beside them?':
    'Il y a déjà des feuilles nommées {}. Rien n’a changé. Écrire {} à côté ?',
  'The names {} are in use already. Nothing was changed. Write {} beside it?':
    'Les noms {} sont déjà pris. Rien n’a changé. Écrire {} à côté ?',
  'The names {} are in use already. Nothing was changed. Write {} beside them?':
    'Les noms {} sont déjà pris. Rien n’a changé. Écrire {} à côté ?',
  'The sheet or cell is not there any more. It may have been renamed or deleted.':
    'La feuille ou la cellule n’existe plus. Elle a pu être renommée ou supprimée.',
  'Something of that name exists already in this workbook.':
    'Quelque chose de ce nom existe déjà dans ce classeur.',
  'Excel did not accept a part of this. Check the formula or the reference.':
    'Excel n’a pas accepté une partie de cela. Vérifiez la formule ou la référence.',
  'That reference points to nothing in this workbook.': 'Cette référence ne vise rien dans ce classeur.',
  'The selection cannot be used. Select one block of cells.':
    'La sélection n’est pas utilisable. Choisissez un seul bloc de cellules.',
  'The formula is longer than Excel allows.': 'La formule est plus longue qu’Excel ne permet.',
  'This is more than Excel takes in one go. Try a smaller selection.':
    'C’est plus qu’Excel ne prend d’un coup. Essayez une sélection plus petite.',
  'This is more than Excel hands out in one go. Try a smaller selection.':
    'C’est plus qu’Excel ne donne d’un coup. Essayez une sélection plus petite.',
  'Another workbook is in front. Click into this one and try again.':
    'Un autre classeur est devant. Cliquez dans celui-ci et réessayez.',
  'This version of Excel is too old for that. Excel 2021 or Microsoft 365 is needed.':
    'Cette version d’Excel est trop ancienne pour cela. Il faut Excel 2021 ou Microsoft 365.',
  'This version of Excel cannot do that.': 'Cette version d’Excel ne sait pas faire cela.',
  'Excel is busy. Wait a moment and try again.': 'Excel est occupé. Attendez un instant et réessayez.',
  'Excel refused this without saying why. Close dialogs, leave cell editing and try again.':
    'Excel a refusé sans dire pourquoi. Fermez les dialogues, quittez la saisie de cellule et réessayez.',
  'It is open in a new window, which may lie behind this one. Save it there, for example as {}.':
    'Il est ouvert dans une nouvelle fenêtre, peut-être derrière celle-ci. Enregistrez-le là, par exemple sous {}.',
  '{} is in your downloads.': '{} est dans vos téléchargements.',
  'The file cannot be read. It may have been moved, or be open in a program that locks it.':
    'Le fichier ne peut être lu. Il a pu être déplacé, ou est ouvert dans un programme qui le bloque.',
  'Only a part may have been written. Look at {} of “{}”.':
    'Une partie seulement a pu être écrite. Regardez {} de « {} ».',
  'There is no sheet called “{}” any more.': 'Il n’y a plus de feuille nommée « {} ».',
  'There is no sheet called “{}”.': 'Il n’y a pas de feuille nommée « {} ».',
  'The sheet “{}” is not there any more.': 'La feuille « {} » n’existe plus.',
  'The cell was changed meanwhile. Look through the workbook again.':
    'La cellule a changé entre-temps. Parcourez encore le classeur.',
  'There is no workbook here. Open Spawnbook inside Excel, or in the local sheet.':
    'Il n’y a pas de classeur ici. Ouvrez Spawnbook dans Excel, ou dans la feuille locale.',
  'That is {n} cells; the pane reads up to {n}. Select only the rows that hold data.':
    'Cela fait {n} cellules ; le volet en lit jusqu’à {n}. Choisissez seulement les lignes remplies.',
  'Excel did not hand the open workbook to the pane. If a cell is being edited, press Enter and look again; otherwise save the workbook and choose the saved file.':
    'Excel n’a pas remis le classeur ouvert au volet. Si une cellule est en saisie, pressez Entrée et regardez encore ; sinon enregistrez le classeur et choisissez le fichier.',
  'The workbook did not arrive whole. Try again; if it stays so, save it and choose the saved file below.':
    'Le classeur n’est pas arrivé entier. Réessayez ; si cela dure, enregistrez-le et choisissez le fichier plus bas.',
  'The cells in use span {n} places; the check reads up to {n}. Select only the rows that hold records.':
    'Les cellules utilisées couvrent {n} places ; la vérification en lit jusqu’à {n}. Choisissez seulement les lignes de notes.',
  'Making room': 'On fait de la place',
  'Putting back what stood there': 'On remet ce qu’il y avait',
  'The writing was not finished, and the season as it was could not be put back yet. Keep this workbook: Spawnbook asks the next time it is opened and puts it back then. {}':
    'L’écriture n’est pas finie, et la saison d’avant n’a pas encore pu être remise. Gardez ce classeur : Spawnbook demande à la prochaine ouverture et la remet alors. {}',
  'The season stays as it was: it could not be written over. {}':
    'La saison reste comme elle était : elle n’a pu être réécrite. {}',
  'meter check': 'contrôle de l’appareil',
  'from tank': 'de la cuve',
  'Unpacking the workbook': 'On déballe le classeur',
  'Reading formulas and values': 'Lecture des formules et des valeurs',
  'Putting values in place': 'On met les valeurs en place',
  'Writing the page': 'Écriture de la page',
  'Packing the copy': 'On emballe la copie',
  'Searching the copy for what was left out': 'On cherche dans la copie ce qui fut omis',
  'Writing words and numbers': 'Écriture des mots et des nombres',
  'The workbook takes no new sheets, so nothing was changed. If its structure is protected, choose Review › Protect Workbook to open it.':
    'Le classeur ne prend pas de nouvelles feuilles, donc rien n’a changé. Si sa structure est protégée, choisissez Révision › Protéger le classeur pour l’ouvrir.',
  'Nothing was written: what had been begun was taken away again. {}':
    'Rien ne fut écrit : ce qui était commencé fut ôté. {}',
  'The writing was not finished, and the sheets begun could not be taken away: {}. Spawnbook asks about them when it is opened the next time; or delete them by hand. {}':
    'L’écriture n’est pas finie, et les feuilles commencées n’ont pu être ôtées : {}. Spawnbook demande à leur sujet à la prochaine ouverture ; ou supprimez-les à la main. {}',
  'Being written {}': 'En cours d’écriture {}',
};
