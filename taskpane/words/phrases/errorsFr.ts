// Long: one table, a sentence a line: what is said in place of an answer.
/* eslint max-len: off -- a sentence a line */
import type { Phrases } from '../../pane/phrases';

/**
 * Sentences of errors in French, as the pane draws them: the argument stands before them by its label, and what was
 * typed is put in last. `tests/taskpane/french/frenchErrors.test.ts` collects every sentence of an error in the engine.
 */

/** Water, salt and vats. */
const WATER: Phrases = {
  '{n} L is too little for one fish of {n} g over {n} h.':
    '{n} L est trop peu pour un poisson de {n} g sur {n} h.',
  'Take a larger bag.': 'Prenez un plus grand sac.',
  'There is no curve, because the water is already at pH {n} or above, or the product cannot take it there.':
    'Il n’y a pas de courbe, car l’eau est déjà à pH {n} ou plus, ou le produit ne peut l’y mener.',
  'so much product is outside what the method holds for.':
    'tant de produit est hors de ce pour quoi la méthode tient.',
  'Check volume and dose.': 'Contrôlez volume et dose.',
  '{n} pH makes more than {n} part-doses.': '{n} pH font plus de {n} parts de dose.',
  'Take a larger step.': 'Prenez un plus grand pas.',
  'more salt than the method holds for (ionic strength {n}, about 29 g/L of salt).':
    'plus de sel que ce pour quoi la méthode tient (force ionique {n}, environ 29 g/L de sel).',
  '{n} meq/L cannot be at pH {n}: it would need more carbon dioxide than water holds.':
    '{n} meq/L ne peut être à pH {n} : il y faudrait plus de gaz carbonique que l’eau n’en tient.',
  'Check the unit (50 mg/L CaCO3 is 1 meq/L) and the pH meter.':
    'Contrôlez l’unité (50 mg/L CaCO3 font 1 meq/L) et le pH-mètre.',
  '{n} meq/L cannot be at pH {n}: the water would hold less than no carbon.':
    '{n} meq/L ne peut être à pH {n} : l’eau aurait moins que pas de carbone.',
  'Check both readings, or leave the alkalinity out.':
    'Contrôlez les deux mesures, ou laissez l’alcalinité vide.',
  'below pH {n} the carbon dioxide cannot be worked out from pH and alkalinity.':
    'sous pH {n} le gaz carbonique ne se calcule pas du pH et de l’alcalinité.',
  'Give carbonDioxide, leave the alkalinity out for aerated water, or dose a little and give both readings to BUFFER.NEXT.':
    'Donnez carbonDioxide, laissez l’alcalinité vide pour une eau aérée, ou dosez un peu et donnez les deux mesures à BUFFER.NEXT.',
  'pH {n} is below the present pH {n}, and {} only raises pH.':
    'pH {n} est sous le pH présent de {n}, et {} ne fait que monter le pH.',
  'Use an acid or carbon dioxide, or exchange water.':
    'Prenez un acide ou du gaz carbonique, ou changez de l’eau.',
  'pH {n} is above the present pH {n}, and {} only lowers pH.':
    'pH {n} est au-dessus du pH présent de {n}, et {} ne fait que baisser le pH.',
  'Use soda ash, baking soda or lime.': 'Prenez carbonate de soude, bicarbonate de soude ou chaux.',
  'Cannot be reached, because in balance with the air this water comes to pH {n} by itself, past the target {n}.':
    'Ne peut être atteint, car en équilibre avec l’air cette eau vient d’elle-même à pH {n}, au-delà de {n} voulu.',
  'It needs no {}: aerate it and measure again.':
    'Elle ne demande pas de {} : aérez-la et mesurez de nouveau.',
  'Cannot be reached, because carbon dioxide leaves again when the water is aired.':
    'Ne peut être atteint, car le gaz carbonique repart quand l’eau est aérée.',
  'Use an acid for a lasting fall.': 'Prenez un acide pour une baisse durable.',
  'Cannot be reached, because {} stops dissolving in this water at pH {n} (calcite saturation).':
    'Ne peut être atteint, car {} cesse de se dissoudre dans cette eau à pH {n} (saturation en calcite).',
  'Use soda ash or baking soda.': 'Prenez carbonate de soude ou bicarbonate de soude.',
  'Cannot be reached, because baking soda draws water towards about pH 8.3 and not to {n} here, however much is used.':
    'Ne peut être atteint, car le bicarbonate de soude tire l’eau vers environ pH 8,3 et non vers {n} ici, quelle que soit la quantité.',
  'Use soda ash.': 'Prenez du carbonate de soude.',
  'Cannot be reached with {}: no sensible dose gives pH {n} in this water.':
    'Ne peut être atteint avec {} : aucune dose sensée ne donne pH {n} dans cette eau.',
  'Cannot be reached, because the wanted level is not between the present one and that of the new water.':
    'Ne peut être atteint, car le niveau voulu n’est pas entre le présent et celui de la nouvelle eau.',
  'more than the vat holds cannot be drained at once.':
    'on ne peut vider d’un coup plus que ce que tient le bac.',
  'Use "flow", or drain twice.': 'Prenez « flow », ou videz deux fois.',
  'No base is needed, because the water is already at pH {n}, the target being {n}.':
    'Aucune base n’est nécessaire, car l’eau est déjà à pH {n}, et {n} est voulu.',
  'never put {} into water that holds fish or eggs.':
    'ne mettez jamais {} dans une eau où sont des poissons ou des œufs.',
  'Use baking soda or soda ash, in steps of 0.3 pH.':
    'Prenez bicarbonate de soude ou carbonate de soude, par pas de 0,3 pH.',
  '{n} g of {} is more than dissolves in {n} L of water (about {n} g).':
    '{n} g de {} sont plus qu’il ne s’en dissout dans {n} L d’eau (environ {n} g).',
  'Check grams, litres and product.': 'Contrôlez grammes, litres et produit.',
  'the water already holds {n} g/L, more than {n}.': 'l’eau contient déjà {n} g/L, plus que {n}.',
  'Exchange water (EXCHANGE.VOLUME).': 'Changez de l’eau (EXCHANGE.VOLUME).',
  'expected 0 g with the pH before any product, got {n}.':
    'attendu 0 g avec le pH d’avant tout produit, reçu {n}.',
  'Put that reading first.': 'Mettez cette mesure en premier.',
  '{n} g is less than {n} g in the row above.': '{n} g est moins que {n} g à la ligne du dessus.',
  'Give running totals since the start, in the order they were given, or say in dosesAre that each part stands by itself.':
    'Donnez les totaux depuis le début, dans l’ordre où ils furent donnés, ou dites dans dosesAre que chaque part est seule.',
  'the time is before that of the row above.': 'l’heure est avant celle de la ligne du dessus.',
  'Give the rows in order.': 'Donnez les lignes dans l’ordre.',
  '{} lowers pH; this method follows doses that raise it.':
    '{} baisse le pH ; cette méthode suit des doses qui le montent.',
  'Use BUFFER.DOSE downwards, in small parts.': 'Prenez BUFFER.DOSE vers le bas, en petites parts.',
  'one dosing has up to {n} readings, got {n}.': 'un dosage a jusqu’à {n} mesures, reçu {n}.',
  "Give the rows of this vat's dosing only.": 'Donnez seulement les lignes du dosage de ce bac.',
  'the meter shows {n} in a buffer of pH {n}, more than {n} off.':
    'le pH-mètre montre {n} dans un tampon de pH {n}, à plus de {n} de là.',
  'Clean and calibrate it, or take another, before anything is dosed by it.':
    'Nettoyez-le et étalonnez-le, ou prenez-en un autre, avant de doser d’après lui.',
  'expected a pH between the edges of the window ({n} to {n}), got {n}.':
    'attendu un pH entre les bords de la fenêtre ({n} à {n}), reçu {n}.',
  'expected a pH above the present {n}, got {n}.': 'attendu un pH au-dessus du présent {n}, reçu {n}.',
  'The rule only lifts pH.': 'La règle ne fait que monter le pH.',
  '{n} rows are too many, 1000 are the most.': '{n} lignes sont trop, 1000 au plus.',
  'Take a longer time between rows.': 'Prenez plus de temps entre les lignes.',
  'the water cannot stand higher than {}.': 'l’eau ne peut monter plus haut que {}.',
  'the rim': 'le bord',
  'the top of the drum': 'le haut du fût',
  'Measure the depth again.': 'Mesurez de nouveau la profondeur.',
  'is shorter than the width.': 'est plus courte que la largeur.',
  'Give the longer side as length.': 'Donnez le plus long côté comme longueur.',
  'is as wide as the vat.': 'est aussi large que le bac.',
  'Use VAT.ROUND.': 'Prenez VAT.ROUND.',
};

/** Temperatures, hours and readings of a log. */
const TIMING: Phrases = {
  'at {n} °C, at or below the base of {n} °C, it never ends.':
    'à {n} °C, à la base de {n} °C ou dessous, cela ne finit jamais.',
  'the same hours at two temperatures give no base.':
    'les mêmes heures à deux températures ne donnent pas de base.',
  'two different temperatures are needed.': 'il faut deux températures différentes.',
  'longer in warmer water; were the two swapped?':
    'plus long dans l’eau plus chaude ; les deux furent-ils échangés ?',
  'at least two different temperatures are needed.': 'il faut au moins deux températures différentes.',
  'they do not get shorter in warmer water; were the columns swapped?':
    'elles ne raccourcissent pas dans l’eau plus chaude ; les colonnes furent-elles échangées ?',
  'no spread from first to last hatch was found for "{}".':
    'aucune étendue de la première à la dernière éclosion n’a été trouvée pour « {} ».',
  'SPAWN.HATCH.TIME gives its one time.': 'SPAWN.HATCH.TIME donne sa seule heure.',
  'a window was published for latency and incubation only, and not for every species.':
    'une fenêtre fut publiée pour latence et incubation seulement, et pas pour toutes les espèces.',
  'SPAWN.LOG.FINISH gives one time.': 'SPAWN.LOG.FINISH donne une seule heure.',
  'SPAWN.LOG.CHECK lists every fault.': 'SPAWN.LOG.CHECK donne tous les défauts.',
  'no reading from {n} to {n}, {n} h; up to {n} h is bridged.':
    'aucune mesure de {n} à {n}, {n} h ; jusqu’à {n} h sont franchies.',
  'Fill in what is known, or give a longer longestGap.':
    'Mettez ce qui est connu, ou donnez un longestGap plus long.',
  '{n} is more than {n} h before the first reading ({n}).':
    '{n} est plus de {n} h avant la première mesure ({n}).',
  'Add the reading at the start, or look for a wrong date.':
    'Ajoutez la mesure du début, ou cherchez une date fausse.',
  '{n} is after the whole log, which ends at {n}.': '{n} est après tout le relevé, qui finit à {n}.',
  'Look for a wrong date, or use the readings of this run.':
    'Cherchez une date fausse, ou prenez les mesures de cette ponte.',
  'the log ends at {n} with {n} % done, and the last reading is held for at most {n} h.':
    'le relevé finit à {n} avec {n} % de fait, et la dernière mesure est tenue au plus {n} h.',
  'Give the temperature you expect from there on.': 'Donnez la température que vous attendez à partir de là.',
  '{n} is before the start, {n}.': '{n} est avant le début, {n}.',
  '{n} °C kills {} of {}: the published limits are {n} and {n} °C ({} et al.':
    '{n} °C tue les {} de {} : les limites publiées sont {n} et {n} °C ({} et al.',
  '{n} °C kills {} of {}: the published limits are {n} and {n} °C ({}).':
    '{n} °C tue les {} de {} : les limites publiées sont {n} et {n} °C ({}).',
  'Mend the water first, and ask a vet.': 'Réparez d’abord l’eau, et demandez à un vétérinaire.',
  '{n} °C is outside "{}" ({n} to {n} °C).': '{n} °C est hors de « {} » ({n} à {n} °C).',
  'Hours are never stretched beyond a table: give your own in ownTemperatures and ownHours, or choose another.':
    'Les heures ne sont jamais étirées au-delà d’un tableau : donnez les vôtres dans ownTemperatures et ownHours, ou choisissez-en un autre.',
  'Too warm: shade the vats, change water, strip at night.':
    'Trop chaud : ombrez les bacs, changez de l’eau, strippez la nuit.',
  'Too cool: warm the water, or wait for a warmer week.':
    'Trop frais : chauffez l’eau, ou attendez une semaine plus chaude.',
  'ownTemperatures and ownHours belong together: give both ranges, or neither.':
    'ownTemperatures et ownHours vont ensemble : donnez les deux plages, ou aucune.',
  'a table of your own needs at least two different temperatures, because hours are only read between its rows.':
    'un tableau à vous demande au moins deux températures différentes, car les heures ne se lisent qu’entre ses lignes.',
  '{n} °C stands there twice.': '{n} °C y est deux fois.',
  'Keep one row for each temperature.': 'Gardez une ligne par température.',
  '{n} h at {n} °C is longer than {n} h at {n} °C.': '{n} h à {n} °C est plus long que {n} h à {n} °C.',
  'Warmer water shortens development: look for swapped columns or a typing slip.':
    'Une eau plus chaude raccourcit le développement : cherchez des colonnes échangées ou une faute de frappe.',
  'there is no "{}" for {}.': 'il n’y a pas de « {} » pour {}.',
  'It has {}.': 'Il y a {}.',
  '{n} h takes away all of the {n} h there are.': '{n} h enlève toutes les {n} h qu’il y a.',
  'An offset is a small correction in hours.': 'Un décalage est une petite correction en heures.',
  'at {n} °C no eggs of Heterobranchus longifilis hatched; none did at 20 or 32 °C (Nwosu & Holzlohner 2000).':
    'à {n} °C aucun œuf de Heterobranchus longifilis n’a éclos ; aucun à 20 ni à 32 °C (Nwosu & Holzlohner 2000).',
  'for Heterobranchus longifilis temperatures were published for eggs only.':
    'pour Heterobranchus longifilis des températures furent publiées pour les œufs seulement.',
  'it is not after {}.': 'ce n’est pas après {}.',
  'Was the date left on the day before?': 'La date est-elle restée au jour d’avant ?',
  'earlier than the reading before it ({n}).': 'plus tôt que la mesure d’avant ({n}).',
  'Sort the log by time.': 'Triez le relevé par heure.',
  'It looks as if the date was not moved on after midnight; if not, sort the log by time.':
    'On dirait que la date n’a pas avancé après minuit ; sinon, triez le relevé par heure.',
  'the same time stands twice.': 'la même heure y est deux fois.',
  'Keep one of the two rows.': 'Gardez l’une des deux lignes.',
  '{n} h without a reading before it.': '{n} h sans mesure avant elle.',
  'Nobody knows the water in between: fill in what is known, or allow the gap in longestGap.':
    'Personne ne connaît l’eau entre les deux : mettez ce qui est connu, ou permettez le trou dans longestGap.',
  '{n} °C in {n} minutes.': '{n} °C en {n} minutes.',
  'Was the probe out of the water, or in another tank?':
    'La sonde était-elle hors de l’eau, ou dans un autre bac ?',
  'a clock time without its date.': 'une heure sans sa date.',
  'Add the date to it.': 'Ajoutez-y la date.',
  'no date and time.': 'pas de date et heure.',
  'Type it as a date and time; text does not count.':
    'Tapez-la comme date et heure ; du texte ne compte pas.',
  'the reading is not a number.': 'la mesure n’est pas un nombre.',
  'Retype it with digits only, without the unit.': 'Retapez-la en chiffres seuls, sans l’unité.',
  'no reading.': 'pas de mesure.',
  'The row is left out; the line runs between its neighbours.':
    'La ligne est laissée dehors ; la droite va entre ses voisines.',
  'a reading of 0 °C.': 'une mesure de 0 °C.',
  'A probe that is unplugged often reads 0.': 'Une sonde débranchée lit souvent 0.',
  'too hot for water with fish.': 'trop chaud pour une eau avec des poissons.',
  'That looks like °F: it would be {n} °C.': 'Cela ressemble à des °F : ce serait {n} °C.',
  'no temperature of water with fish.': 'pas une température d’eau avec des poissons.',
  'Look at the probe, then take the row out.': 'Regardez la sonde, puis enlevez la ligne.',
};

/** Brood fish, hormone and treatments. */
const BROOD: Phrases = {
  'with these shares no fry are left.': 'avec ces parts il ne reste aucun alevin.',
  '{n} {}/kg of {} is far from what was published ({}/kg).':
    '{n} {}/kg de {} est loin de ce qui fut publié ({}/kg).',
  'Look at the unit: a dose is per kg of fish, in {}.':
    'Regardez l’unité : une dose est par kg de poisson, en {}.',
  'Ask a vet before using another.': 'Demandez à un vétérinaire avant d’en prendre une autre.',
  'Ask a vet.': 'Demandez à un vétérinaire.',
  '{n} are too few for this rate whatever the males; more than {n} are needed.':
    '{n} sont trop peu pour ce taux quels que soient les mâles ; il en faut plus de {n}.',
  '{n} fish, but all lots together have {n}.': '{n} poissons, mais tous les lots ensemble en ont {n}.',
  'Ask for that many or fewer.': 'Demandez-en autant ou moins.',
  'up to {n} females and {n} males are paired at once.':
    'on apparie jusqu’à {n} femelles et {n} mâles à la fois.',
  'Plan line by line.': 'Planifiez lignée par lignée.',
  '{n} females need a male each, but {n} males at {n} each serve {n}.':
    '{n} femelles demandent chacune un mâle, mais {n} mâles à {n} chacun en servent {n}.',
  'Raise femalesPerMale or bring males.': 'Montez femalesPerMale ou amenez des mâles.',
  '{n} min; the trials used {n} minutes and nothing longer is known to be safe.':
    '{n} min ; les essais ont pris {n} minutes et rien de plus long n’est connu comme sûr.',
  'no formalin strength was found published as safe for fry of African catfish.':
    'aucune force de formol n’a été trouvée publiée comme sûre pour les alevins du silure africain.',
  '{n} mg/L kills Clarias eggs: 500, 750 and 1000 mg/L for 15 minutes left none alive (J. Appl. Sci. Environ. Manage. 14(4), 2010). Doses for trout eggs are that strong; do not copy them. Ask a vet.':
    '{n} mg/L tuent les œufs de Clarias : 500, 750 et 1000 mg/L pendant 15 minutes n’en ont laissé aucun en vie (J. Appl. Sci. Environ. Manage. 14(4), 2010). Les doses pour œufs de truite sont aussi fortes ; ne les copiez pas. Demandez à un vétérinaire.',
  '{n} mg/L was never tried on Clarias eggs; 50 to 250 mg/L was, and 500 mg/L killed all (J. Appl. Sci. Environ. Manage. 14(4), 2010). Ask a vet.':
    '{n} mg/L ne furent jamais essayés sur des œufs de Clarias ; 50 à 250 mg/L le furent, et 500 mg/L les ont tous tués (J. Appl. Sci. Environ. Manage. 14(4), 2010). Demandez à un vétérinaire.',
  '{n} g/L is too strong for young catfish: 2 to {n} g/L was borne for days by all trials but one, 6 g/L killed hybrids, 10 g/L all (SPAWN.SALT.CHECK lists them).':
    '{n} g/L sont trop forts pour de jeunes silures : 2 à {n} g/L furent supportés des jours dans tous les essais sauf un, 6 g/L ont tué des hybrides, 10 g/L tous (SPAWN.SALT.CHECK les donne).',
  'Below 3,000 sperm per egg fertilisation fell (Rurangwa et al.':
    'Sous 3 000 spermatozoïdes par œuf la fécondation a baissé (Rurangwa et al.',
};

/** Counts, losses, growth, feed. */
const REARING: Phrases = {
  '{n} fish of {n} g in a litre are more than any table holds for {n} h at {n} °C: at most {n}.':
    '{n} poissons de {n} g dans un litre sont plus que tout tableau n’en tient pour {n} h à {n} °C : {n} au plus.',
  'Take more bags.': 'Prenez plus de sacs.',
  'Give what was seen: a share fertilised or hatched, or a TRUE.':
    'Donnez ce qui fut vu : une part fécondée ou éclose, ou un TRUE.',
  '{n} is more than the {n} fish there were.': '{n} est plus que les {n} poissons qu’il y avait.',
  '"{}" can be {n} or {n}.': '« {} » peut être {n} ou {n}.',
  'Write it without marks of thousands.': 'Écrivez-le sans signe des milliers.',
  '"{}" is no unit of {}.': '« {} » n’est pas une unité de {}.',
  'Write a number and its unit, 81 F or 20 gal.': 'Écrivez un nombre et son unité, 81 F ou 20 gal.',
  'there is no number in "{}".': 'il n’y a pas de nombre dans « {} ».',
  'give the number of eggs or their weight in grams.': 'donnez le nombre d’œufs ou leur poids en grammes.',
  'without fish the oxygen lasts.': 'sans poissons l’oxygène dure.',
  'The samples differ too much: no practical number of them gives that precision.':
    'Les échantillons diffèrent trop : aucun nombre pratique n’en donne cette précision.',
  'Stir better or take larger samples.': 'Remuez mieux ou prenez de plus grands échantillons.',
  'Were the two typed the wrong way round, or were dead eggs left out of the total?':
    'Les deux furent-ils tapés à l’envers, ou les œufs morts laissés hors du total ?',
  'There cannot be more hatched than fertilised: likely the fertilised eggs were counted in a sample and the larvae in the whole vat, or the two were typed the wrong way round.':
    'Il ne peut y avoir plus d’éclos que de fécondés : les œufs fécondés furent sans doute comptés dans un échantillon et les larves dans tout le bac, ou les deux tapés à l’envers.',
  'Were fish from another vat added, was the stocking number too low, or were the two typed the wrong way round?':
    'Des poissons d’un autre bac furent-ils ajoutés, le nombre mis en bac trop bas, ou les deux tapés à l’envers ?',
  '{n} is more than the sample of {n}.': '{n} est plus que l’échantillon de {n}.',
  '{n} came through a stage that had {n}.': '{n} ont passé une étape qui en avait {n}.',
  'More hatched than fertilised?': 'Plus d’éclos que de fécondés ?',
  'Check which count is which.': 'Contrôlez quel compte est lequel.',
  'startLow and startHigh must enclose start: got {n} to {n} around {n}.':
    'startLow et startHigh doivent entourer start : reçu {n} à {n} autour de {n}.',
  'tableWeights and tableRations belong together: give both, row by row.':
    'tableWeights et tableRations vont ensemble : donnez les deux, ligne par ligne.',
  'temperature and tableTemperatures belong together: give both or neither.':
    'temperature et tableTemperatures vont ensemble : donnez les deux ou aucun.',
  'ration and a table are both given: leave one of them blank.':
    'ration et un tableau sont donnés tous deux : laissez l’un vide.',
  '{} is missing: give one share of body weight per day, or your own table of weights and rations.':
    '{} manque : donnez une part du poids du corps par jour, ou votre propre tableau de poids et de rations.',
  'No published table was found, so none is assumed.':
    'Aucun tableau publié n’a été trouvé, aucun n’est donc supposé.',
  'on day {n} the fish weigh {n} g, which your table does not cover.':
    'au jour {n} les poissons pèsent {n} g, que votre tableau ne couvre pas.',
  'on day {n} the fish weigh {n} g at {n} °C, which your table does not cover.':
    'au jour {n} les poissons pèsent {n} g à {n} °C, que votre tableau ne couvre pas.',
  'Add a row, or list fewer days.': 'Ajoutez une ligne, ou prenez moins de jours.',
  '{n} L is less than the samples together, {n} × {n} mL.':
    '{n} L est moins que les échantillons ensemble, {n} × {n} mL.',
  'Were the samples typed in microlitres, or the vessel in cubic metres?':
    'Les échantillons furent-ils tapés en microlitres, ou le vase en mètres cubes ?',
  'this makes {n} nauplii per gram, more than there are cysts in a gram.':
    'cela fait {n} nauplii par gramme, plus qu’il n’y a de cystes dans un gramme.',
  'Check the sample volume and the grams of cysts.':
    'Contrôlez le volume de l’échantillon et les grammes de cystes.',
  'nothing was counted.': 'rien ne fut compté.',
  'Take a larger sample.': 'Prenez un plus grand échantillon.',
  'the hours must rise from row to row.': 'les heures doivent monter de ligne en ligne.',
  'Sort the rows by time.': 'Triez les lignes par heure.',
  'fewer than in the row before.': 'moins qu’à la ligne d’avant.',
  'Enter the total hatched so far, not the new ones.':
    'Mettez le total éclos jusque-là, pas seulement les nouveaux.',
  'More than 10 % had hatched at the first reading: begin reading earlier.':
    'Plus de 10 % avaient éclos à la première mesure : commencez plus tôt.',
  'Bleach of {n} g/L is too weak: it must hold at least 36 g/L of active chlorine.':
    'Une eau de Javel à {n} g/L est trop faible : il y faut au moins 36 g/L de chlore actif.',
  'your table covers {} g; {} g is outside it or between temperatures that lack it.':
    'votre tableau couvre {} g ; {} g est dehors ou entre des températures où il manque.',
  'your table covers {} g and {} °C; {} g at {} °C is outside it or between temperatures that lack it.':
    'votre tableau couvre {} g et {} °C ; {} g à {} °C est dehors ou entre des températures où il manque.',
  'your table covers {} g; {} g at {} °C is outside it or between temperatures that lack it.':
    'votre tableau couvre {} g ; {} g à {} °C est dehors ou entre des températures où il manque.',
  'your table covers {} g and {} °C; {} g is outside it or between temperatures that lack it.':
    'votre tableau couvre {} g et {} °C ; {} g est dehors ou entre des températures où il manque.',
  '{n} to {n}': '{n} à {n}',
  '{n} to {n} {}': '{n} à {n} {}',
  'Add a row.': 'Ajoutez une ligne.',
  '{n} g after {n} g at the start.': '{n} g après {n} g au début.',
  'The fish weigh {n} g, already more than {n} g.': 'Les poissons pèsent {n} g, déjà plus que {n} g.',
  'Was one of them typed in kilograms?': 'L’un d’eux fut-il tapé en kilogrammes ?',
  'on day {n} the two paths are still one; weigh on day {n} or later.':
    'au jour {n} les deux voies n’en font encore qu’une ; pesez au jour {n} ou plus tard.',
  '{n} g, while most weigh about {n} g.': '{n} g, alors que la plupart pèsent environ {n} g.',
  'Was it typed in kilograms or milligrams?': 'Fut-il tapé en kilogrammes ou en milligrammes ?',
  'the limits must rise.': 'les limites doivent monter.',
  '{n} g at {n} cm makes a condition factor of {n}, no fish has that; {}':
    '{n} g à {n} cm font un indice de condition de {n}, aucun poisson n’a cela ; {}',
  'check both units.': 'contrôlez les deux unités.',
  'the length looks like millimetres ({n} mm is {n} cm)':
    'la longueur ressemble à des millimètres ({n} mm font {n} cm)',
  'the weight looks like kilograms ({n} kg is {n} g)':
    'le poids ressemble à des kilogrammes ({n} kg font {n} g)',
  'the length looks like millimetres ({n} mm is {n} cm), or the weight looks like kilograms ({n} kg is {n} g)':
    'la longueur ressemble à des millimètres ({n} mm font {n} cm), ou le poids à des kilogrammes ({n} kg font {n} g)',
  '{n} is more than the {n} stocked.': '{n} est plus que les {n} mis en bac.',
  'Were fish added, or the two typed the wrong way round?':
    'Des poissons furent-ils ajoutés, ou les deux tapés à l’envers ?',
  '{n} kg of {n} g fish are more than the {n} stocked.':
    '{n} kg de poissons de {n} g sont plus que les {n} mis en bac.',
  'Was the mean weight typed in kilograms, or the harvest in grams?':
    'Le poids moyen fut-il tapé en kilogrammes, ou la récolte en grammes ?',
  'There was no gain: the fish weigh no more than at the start.':
    'Il n’y eut pas de gain : les poissons ne pèsent pas plus qu’au début.',
  'Were the weights typed the wrong way round?': 'Les poids furent-ils tapés à l’envers ?',
  '{n} kg for a gain of {n} kg is {n} to 1.': '{n} kg pour un gain de {n} kg font {n} pour 1.',
  'Was the feed typed in grams?': 'L’aliment fut-il tapé en grammes ?',
  '{n} kg for a gain of {n} kg cannot be.': '{n} kg pour un gain de {n} kg, cela ne se peut.',
  'Were the fish typed in grams?': 'Les poissons furent-ils tapés en grammes ?',
  'Less weight is left to sell than was stocked.':
    'Il reste à vendre moins de poids qu’il n’en fut mis en bac.',
  '{n} °C is more than 2.8 °C (5 °F) from {n} °C, farther than was published.':
    '{n} °C est à plus de 2,8 °C (5 °F) de {n} °C, plus loin que ce qui fut publié.',
  'Start from a trip nearer in temperature.': 'Partez d’un trajet plus proche en température.',
  '{n} g at {n} % dry matter is outside what was published (0.07 mg to 38 g of dry weight, Conceicao et al.':
    '{n} g à {n} % de matière sèche est hors de ce qui fut publié (0,07 mg à 38 g de poids sec, Conceicao et al.',
  'Measure your own fish.': 'Mesurez vos propres poissons.',
  'The water coming in holds {n} mg/L, no more than the {n} mg/L allowed going out: no flow is enough.':
    'L’eau qui entre a {n} mg/L, pas plus que les {n} mg/L permis à la sortie : aucun débit ne suffit.',
  'Aerate it first.': 'Aérez-la d’abord.',
  'The water coming in holds {n} mg/L, already at the {n} mg/L of total ammonia allowed at this pH and temperature.':
    'L’eau qui entre a {n} mg/L, déjà les {n} mg/L d’ammoniac total permis à ce pH et cette température.',
  'Lower the pH or use other water.': 'Baissez le pH ou prenez une autre eau.',
  'A fish of {n} g is lighter than a new larva.': 'Un poisson de {n} g est plus léger qu’une larve neuve.',
  'Artemia cysts hatch at 5 to 35 g/L and fail above 85 to 90.':
    'Les cystes d’Artemia éclosent à 5 à 35 g/L et non au-dessus de 85 à 90.',
  'Above 33 °C the cysts are stopped for good.': 'Au-dessus de 33 °C les cystes sont arrêtés pour de bon.',
  'The factor holds for weak salt, up to 0.5 g/L; weigh the salt in above that.':
    'Le facteur tient pour peu de sel, jusqu’à 0,5 g/L ; au-dessus comptez le sel pesé.',
  'The coefficient assumes that warmth always speeds growth; for African catfish that ends at about 30.3 °C.':
    'Le coefficient suppose que la chaleur accélère toujours la croissance ; pour le silure africain cela finit vers 30,3 °C.',
  'The oxygen equation was fitted from 0 to 40 °C.': 'L’équation de l’oxygène fut ajustée de 0 à 40 °C.',
};

/** Learning, odds and money. */
const MONEY: Phrases = {
  'a factor needs numbers above 0, got {n}.': 'un facteur demande des nombres au-dessus de 0, reçu {n}.',
  'Use "difference" for what can be on either side of 0.':
    'Prenez « difference » pour ce qui peut être des deux côtés de 0.',
  'a factor needs a number above 0, got {n}.': 'un facteur demande un nombre au-dessus de 0, reçu {n}.',
  'their middle is {n} times the prior of {n}.': 'leur milieu est {n} fois l’avis de départ de {n}.',
  'Are both in one unit?': 'Les deux sont-ils dans la même unité ?',
  '{} is missing: for "difference" say how far runs usually lie apart, in the unit of the values.':
    '{} manque : pour « difference » dites de combien les pontes s’écartent d’habitude, dans l’unité des valeurs.',
  'expected payments within {n} weeks, got {n} weeks.':
    'attendu des paiements en {n} semaines, reçu {n} semaines.',
  'Look for a mistyped year.': 'Cherchez une année mal tapée.',
  'it must be more than variablePerFish, or every fish sold loses money.':
    'il doit dépasser variablePerFish, ou chaque poisson vendu perd de l’argent.',
  'expected less than {n}, the most a share of {n} can vary, got {n}.':
    'attendu moins que {n}, le plus qu’une part de {n} puisse varier, reçu {n}.',
  'even {n} females would not give that certainty.': 'même {n} femelles ne donneraient pas cette certitude.',
  'Take more runs, or better shares.': 'Prenez plus de pontes, ou de meilleures parts.',
};

export const errorPhrases: Phrases = {
  ...WATER,
  ...TIMING,
  ...BROOD,
  ...REARING,
  ...MONEY,
};
