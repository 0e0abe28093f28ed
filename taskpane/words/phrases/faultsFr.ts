// Long: one table, a sentence a line: what cannot be used, wherever it is typed.
/* eslint max-len: off -- a sentence a line */
import type { Phrases } from '../../pane/phrases';

/** What a field, an argument or a line takes and why something cannot be used, in French; values are put in last. */

/** What any argument can get. */
const CHECKS: Phrases = {
  '{}, row {n}': '{}, ligne {n}',
  'row {n}': 'ligne {n}',
  'expected {}, got {}.': 'attendu {}, reçu {}.',
  'expected {} or a blank cell, got {}.': 'attendu {} ou une cellule vide, reçu {}.',
  'the cell holds {}.': 'la cellule contient {}.',
  'the cell holds the error {}.': 'la cellule contient l’erreur {}.',
  'Mend that cell first.': 'Réparez d’abord cette cellule.',
  '{} is missing.': '{} manque.',
  'Give {}.': 'Donnez {}.',
  'one of {}': 'l’un de {}',
  'a range; each {}': 'une plage, dont chacun {}',
  'a date': 'une date',
  'a date and time': 'une date et heure',
  'a date from {n} to {n}': 'une date de {n} à {n}',
  'a date and time from {n} to {n}': 'une date et heure de {n} à {n}',
  'a range of texts': 'une plage de textes',
  'L or m²': 'L ou m²',
  'TRUE or FALSE': 'TRUE ou FALSE',
  'the text "{}"': 'le texte « {} »',
  'the error {}': 'l’erreur {}',
  'a blank cell': 'une cellule vide',
  'A blank cell can read as 0.': 'Une cellule vide peut se lire 0.',
  'It is a number with a decimal comma stored as text: retype it.':
    'C’est un nombre à virgule gardé comme texte : retapez-le.',
  'It is a number stored as text: retype it, or use VALUE().':
    'C’est un nombre gardé comme texte : retapez-le, ou prenez VALUE() (CNUM en français).',
  'It is a date stored as text: retype it as a date, or use DATEVALUE().':
    'C’est une date gardée comme texte : retapez-la en date, ou prenez DATEVALUE() (DATEVAL en français).',
  'Leave the unit out of the cell, or write one of this kind.':
    'Laissez l’unité hors de la cellule, ou écrivez-en une de ce genre.',
  '{} is outside what was published ({}).': '{} est hors de ce qui fut publié ({}).',
  'from {n} to {n}': 'de {n} à {n}',
  'from {n} to {n} {}': 'de {n} à {n} {}',
  'above {n}': 'au-dessus de {n}',
  'above {n} {}': 'au-dessus de {n} {}',
  'above {n} and up to {n}': 'au-dessus de {n} et jusqu’à {n}',
  'above {n} and up to {n} {}': 'au-dessus de {n} et jusqu’à {n} {}',
  'of {n} or more': '{n} ou plus',
  'of {n} {} or more': '{n} {} ou plus',
  'up to {n}': 'jusqu’à {n}',
  'up to {n} {}': 'jusqu’à {n} {}',
  'expected a single cell, got a range of {n} × {n}.':
    'attendu une seule cellule, reçu une plage de {n} × {n}.',
  'This function reads its lists from the other arguments.':
    'Cette fonction lit ses listes dans les autres arguments.',
  'expected a single cell or one column, because each row of the answer is several cells wide.':
    'attendu une seule cellule ou une colonne, car chaque ligne de la réponse a plusieurs cellules.',
  '{} has {} but {} has {}.': '{} a {} mais {} a {}.',
  '{} has {} but another argument has {}.': '{} a {} mais un autre argument a {}.',
  '{n} rows': '{n} lignes',
  '{n} × {n} cells': '{n} × {n} cellules',
  'Give ranges of the same size, or single cells.':
    'Donnez des plages de même taille, ou des cellules seules.',
  'needs at least {n} value, got only blank cells.':
    'il faut au moins {n} valeur, reçu seulement des cellules vides.',
  'needs at least {n} values, got only blank cells.':
    'il faut au moins {n} valeurs, reçu seulement des cellules vides.',
  'needs at least {n} value, got {n}.': 'il faut au moins {n} valeur, reçu {n}.',
  'needs at least {n} values, got {n}.': 'il faut au moins {n} valeurs, reçu {n}.',
  '{} has {n} cells but {} has {n}.': '{} a {n} cellules mais {} en a {n}.',
  'Each row needs both.': 'Chaque ligne demande les deux.',
  'the cell is blank while {} has a value.': 'la cellule est vide alors que {} a une valeur.',
  'Fill it or clear the row.': 'Remplissez-la ou videz la ligne.',
  'takes {n} argument, got {n}.': 'prend {n} argument, reçu {n}.',
  'takes {n} arguments, got {n}.': 'prend {n} arguments, reçu {n}.',
  'There is no answer for these numbers.': 'Il n’y a pas de réponse pour ces nombres.',
  'The answer is {}.': 'La réponse est {}.',
};

/** What a number that cannot be most likely was meant as. */
const SLIPS: Phrases = {
  'That looks like °F: {n} °F is {n} °C.': 'Cela ressemble à des °F : {n} °F font {n} °C.',
  'Excel stores {n} % as {n}: type {n} or {n}.': 'Excel garde {n} % comme {n} : tapez {n} ou {n}.',
  'That looks like a clock time without its date: add the date, for example =DATE(2026,3,14)+TIME(8,30,0).':
    'Cela ressemble à une heure sans sa date : ajoutez la date, par exemple =DATE(2026,3,14)+TIME(8,30,0).',
  'That looks like millilitres.': 'Cela ressemble à des millilitres.',
  'That looks like milligrams.': 'Cela ressemble à des milligrammes.',
  'That looks like metres: {n} m is {n} cm.': 'Cela ressemble à des mètres : {n} m font {n} cm.',
  'That looks like grams: {n} g is {n} kg.': 'Cela ressemble à des grammes : {n} g font {n} kg.',
  'That looks like kilograms: {n} kg is {n} g.': 'Cela ressemble à des kilogrammes : {n} kg font {n} g.',
  'That looks like mg/L CaCO3: {n} mg/L is {n} meq/L.':
    'Cela ressemble à des mg/L CaCO3 : {n} mg/L font {n} meq/L.',
  'That looks like thousands of millions: {n} thousand million per mL is {}.':
    'Cela ressemble à des milliards : {n} milliards par mL font {}.',
  'That looks like kilograms: multiply it by 1000.':
    'Cela ressemble à des kilogrammes : multipliez par 1000.',
  'That looks like kilograms: multiply it by 1000; or were the two typed the wrong way round, or a sample weighed with its dish?':
    'Cela ressemble à des kilogrammes : multipliez par 1000 ; ou les deux furent-ils tapés à l’envers, ou un échantillon pesé avec son plat ?',
  'That looks like litres: multiply it by 1000.': 'Cela ressemble à des litres : multipliez par 1000.',
  'That looks like litres: multiply it by 1000; or were the two typed the wrong way round, or a sample weighed with its dish?':
    'Cela ressemble à des litres : multipliez par 1000 ; ou les deux furent-ils tapés à l’envers, ou un échantillon pesé avec son plat ?',
  'That looks like cubic metres: multiply it by 1000.':
    'Cela ressemble à des mètres cubes : multipliez par 1000.',
  'That looks like cubic metres: multiply it by 1000; or were the two typed the wrong way round, or a sample weighed with its dish?':
    'Cela ressemble à des mètres cubes : multipliez par 1000 ; ou les deux furent-ils tapés à l’envers, ou un échantillon pesé avec son plat ?',
  'Were the two typed the wrong way round?': 'Les deux furent-ils tapés à l’envers ?',
  '{} is more than {}, {n}.': '{} est plus que {}, {n}.',
  '{n} {} is less than the samples together, {n} {}.':
    '{n} {} est moins que les échantillons ensemble, {n} {}.',
  '{n} per {}, while the other samples are near {n}.':
    '{n} par {}, alors que les autres échantillons sont près de {n}.',
  'Was this one typed in another unit, or a count in the wrong row?':
    'Celui-ci fut-il tapé dans une autre unité, ou un compte mis à la mauvaise ligne ?',
  'nothing was counted in any sample.': 'rien ne fut compté dans aucun échantillon.',
  'Take larger samples.': 'Prenez de plus grands échantillons.',
};

/** What an argument takes. */
const TAKES: Phrases = {
  'Takes {}.': 'Prend {}.',
  'Left out: {}.': 'Laissé vide : {}.',
  'a date and time as 2026-05-01 22:30, or a cell':
    'une date et heure comme 2026-05-01 22:30, ou une cellule',
  'a number': 'un nombre',
  'a whole number': 'un nombre entier',
  'a number above {n}': 'un nombre au-dessus de {n}',
  'a number above {n} {}': 'un nombre au-dessus de {n} {}',
  'a number above {n} and up to {n}': 'un nombre au-dessus de {n} et jusqu’à {n}',
  'a number above {n} and up to {n} {}': 'un nombre au-dessus de {n} et jusqu’à {n} {}',
  'a number from {n} to {n}': 'un nombre de {n} à {n}',
  'a number from {n} to {n} {}': 'un nombre de {n} à {n} {}',
  'a number of {n} or more': 'un nombre de {n} ou plus',
  'a number of {n} {} or more': 'un nombre de {n} {} ou plus',
  'a number up to {n}': 'un nombre jusqu’à {n}',
  'a number up to {n} {}': 'un nombre jusqu’à {n} {}',
  'a number in {}': 'un nombre en {}',
  'a whole number above {n}': 'un nombre entier au-dessus de {n}',
  'a whole number above {n} and up to {n}': 'un nombre entier au-dessus de {n} et jusqu’à {n}',
  'a whole number from {n} to {n}': 'un nombre entier de {n} à {n}',
  'a whole number from {n} to {n} {}': 'un nombre entier de {n} à {n} {}',
  'a whole number of {n} or more': 'un nombre entier de {n} ou plus',
  'a whole number up to {n}': 'un nombre entier jusqu’à {n}',
};

/** What is wrong with an answer to a form of a plan. */
const FORMS: Phrases = {
  'expected {}, got {}. That looks like °F.': 'attendu {}, reçu {}. Cela ressemble à des °F.',
  'That looks like °F.': 'Cela ressemble à des °F.',
  'at most {n} characters.': 'au plus {n} caractères.',
  'at most {n}.': 'au plus {n}.',
  nothing: 'rien',
  '“{}” can be {n} or {n}.': '« {} » : {n} ou {n} ?',
  'Type it as {n} or {n}.': 'Tapez {n} ou {n}.',
  'Type {n} or {n}.': 'Tapez {n} ou {n}.',
  'a number from {n} to {n} share ({n} % is {n})': 'un nombre de {n} à {n} ({n} % est {n})',
  'a clock time from {n} to {n}': 'une heure de {n} à {n}',
  'a clock time from {n} to {n} or an hour from {n} to {n}':
    'une heure de {n} à {n} ou un nombre d’heures de {n} à {n}',
  'a number from {n} to {n} a kg': 'un nombre de {n} à {n} par kg',
  'a number from {n} to {n} a mL': 'un nombre de {n} à {n} par mL',
  'a whole number from {n} to {n} d': 'un nombre entier de {n} à {n} jours',
  'a whole number from {n} to {n} fish': 'un nombre entier de {n} à {n} poissons',
  'a whole number from {n} to {n} females': 'un nombre entier de {n} à {n} femelles',
  'a whole number from {n} to {n} males': 'un nombre entier de {n} à {n} mâles',
  'a whole number from {n} to {n} vats': 'un nombre entier de {n} à {n} bacs',
  'a name': 'un nom',
  'a list': 'une liste',
  'must be later than stripping from.': 'doit être plus tard que le début du stripping.',
  'must be later than injecting from.': 'doit être plus tard que le début de l’injection.',
  'A night shift is two books.': 'Une équipe de nuit fait deux cahiers.',
  '{}: the list is empty; at least {n} is needed.': '{} : la liste est vide ; il en faut au moins {n}.',
  '{}: there is none yet; add one.': '{} : il n’y en a pas encore ; ajoutez-en.',
  '“{}” has no litres.': '« {} » n’a pas de litres.',
  '“{}” has no weight.': '« {} » n’a pas de poids.',
  'Put a tab, a semicolon or a comma and a space between the columns.':
    'Mettez une tabulation, un point-virgule ou une virgule et un espace entre les colonnes.',
  '{} stands on line {n} already.': '{} est déjà à la ligne {n}.',
  'Give each its own name.': 'Donnez à chacun son nom.',
  'type a name.': 'tapez un nom.',
  '{}: type a name; it is printed on every page.': '{} : tapez un nom ; il figure sur chaque page.',
  '{}: type a name; the book calls the order by it.':
    '{} : tapez un nom ; le cahier appelle ainsi la commande.',
  'Choose at least one day of the week.': 'Choisissez au moins un jour de la semaine.',
  'That is no fry or fingerling.': 'Ce n’est ni un alevin ni un juvénile.',
  'No vat of water stands there: the meter is off, dry or not calibrated, or a digit slipped.':
    'Aucun bac d’eau n’est là : le pH-mètre est à côté, sec ou non étalonné, ou un chiffre a glissé.',
  'Check it in a buffer and read again.': 'Contrôlez-le dans un tampon et relisez.',
  'What the bag says.': 'Ce que dit le sac.',
  'Baking soda is weaker and gentler.': 'Le bicarbonate est plus faible et plus doux.',
  'choose one.': 'choisissez.',
  'choose one of the list.': 'choisissez dans la liste.',
  'a number is needed.': 'il faut un nombre.',
  'Line {n}': 'Ligne {n}',
  'Day {n}': 'Jour {n}',
  'Day off': 'Jour libre',
  'Water of the month': 'Eau du mois',
  'Price of cysts': 'Prix des cystes',
  'Price of dry feed': 'Prix de l’aliment sec',
  'Price of hormone': 'Prix de l’hormone',
  'pH of the water': 'pH de l’eau',
  'Alkalinity of the water': 'Alcalinité de l’eau',
  'What the vat holds': 'Ce que tient le bac',
  'Name of the vat': 'Nom du bac',
  'Weight of a female': 'Poids d’une femelle',
  'Last used on': 'Dernier emploi le',
  Tag: 'Étiquette',
  'Name of the order': 'Nom de la commande',
  'What is ordered': 'Ce qui est commandé',
  'Fish ordered': 'Poissons commandés',
};

export const faultPhrases: Phrases = { ...CHECKS, ...SLIPS, ...TAKES, ...FORMS };
