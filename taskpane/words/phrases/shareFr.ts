// Long: one table, a sentence a line: what a shared copy says of itself, in French.
/* eslint max-len: off -- a sentence a line */
import type { Phrases } from '../../pane/phrases';

const A_FILE =
  'Ouvrez-le dans Excel, choisissez Enregistrer sous et Classeur Excel (.xlsx), et prenez ce fichier.';

/** The page "Where numbers come from". */
const PAGE: Phrases = {
  'A digest is a fingerprint of the values: change one number and it changes. Spawnbook can work it out again and say whether this copy still holds the numbers it was made with.':
    'Une empreinte se calcule des valeurs : changez un nombre et elle change. Spawnbook peut la recalculer et dire si cette copie tient encore les nombres avec lesquels elle fut faite.',
  'A match shows that nothing was changed by accident. It does not show who made the copy, that the typed numbers were measured correctly, or that the methods suit this farm.':
    'Si elle s’accorde, rien n’a été changé par accident. Cela ne montre ni qui a fait la copie, ni que les nombres tapés furent bien mesurés, ni que les méthodes vont à cette ferme.',
  'Somebody who changes a number on purpose can make a new page with a new digest. To rule that out, keep the digest of everything somewhere else (a letter, an e-mail) and compare.':
    'Qui change un nombre exprès peut faire une nouvelle page avec une nouvelle empreinte. Pour l’exclure, gardez l’empreinte de tout ailleurs (une lettre, un courriel) et comparez.',
  'Formulas that remain may give other results when the workbook is calculated again, for example on another day.':
    'Les formules qui restent peuvent donner d’autres résultats quand le classeur est recalculé, par exemple un autre jour.',
  'read in the publication': 'lu dans la publication',
  'from memory, the page was not seen': 'de mémoire, la page n’a pas été vue',
  'common practice, no source': 'pratique courante, sans source',
  'worked out from cited figures': 'calculé de chiffres cités',
  'textbook definition or exact arithmetic': 'définition de manuel ou calcul exact',
  Count: 'Combien',
  'Formula, as typed in the first cell': 'Formule, comme tapée dans la première cellule',
  'In this copy': 'Dans cette copie',
  Function: 'Fonction',
  Unit: 'Unité',
  Reads: 'Lit',
  'First value': 'Première valeur',
  Lowest: 'Plus bas',
  Highest: 'Plus haut',
  Digest: 'Empreinte',
  Sources: 'Sources',
  Number: 'Numéro',
  'How far it can be trusted': 'Jusqu’où s’y fier',
  'Where the method comes from': 'D’où vient la méthode',
  'Digest of results of remaining formulas': 'Empreinte des résultats des formules qui restent',
  number: 'nombre',
  'native formula': 'formule ordinaire',
  gives: 'donne',
  '{}, version {n}': '{}, version {n}',
  '{}, not known to this version of Spawnbook': '{}, inconnu de cette version de Spawnbook',
  'through a name of the workbook': 'par un nom du classeur',
};

/** What was taken out or changed. */
const CHANGED: Phrases = {
  'The name {} was removed: it stood for something left out.':
    'Le nom {} a été ôté : il désignait quelque chose laissé de côté.',
  'The record of changes, which holds what cells were before.':
    'L’historique des changements, qui tient ce qu’étaient les cellules.',
  'Links, filters or scenarios that held values of emptied cells were removed.':
    'Des liens, filtres ou scénarios qui tenaient des valeurs de cellules vidées ont été ôtés.',
  'Notes on emptied cells of {} were emptied.': 'Les notes sur les cellules vidées de {} ont été vidées.',
  'Shapes, pictures or controls that showed emptied cells no longer do.':
    'Des formes, images ou contrôles qui montraient des cellules vidées ne les montrent plus.',
  'Number formats of emptied cells that spelled out a value were made plain.':
    'Des formats de nombre de cellules vidées qui écrivaient une valeur ont été rendus simples.',
  '{n} cells were emptied: those you named.': '{n} cellules ont été vidées : celles que vous avez nommées.',
  '{n} cells were emptied: those you named and these:':
    '{n} cellules ont été vidées : celles que vous avez nommées et celles-ci :',
  '{n} cells were emptied:': '{n} cellules ont été vidées :',
  '{}: worked out from what is left out.': '{} : calculé de ce qui est laissé de côté.',
  '{}: sums over so few of the cells left out that one of them could be told.':
    '{} : additionne si peu des cellules laissées de côté qu’on pourrait en deviner une.',
  '{}: reads cells that cannot be told (INDIRECT, OFFSET and the like).':
    '{} : lit des cellules qu’on ne peut nommer (INDIRECT, DECALER et semblables).',
  '{}: filled by a pivot table that read what is left out.':
    '{} : rempli par un tableau croisé qui lisait ce qui est laissé de côté.',
  '{} and {n} more ranges': '{} et {n} plages de plus',
  'One sheet is left out.': 'Une feuille est laissée de côté.',
  '{n} sheets are left out.': '{n} feuilles sont laissées de côté.',
  '{n} texts that only cells left out had used.':
    '{n} textes que seules des cellules laissées de côté utilisaient.',
  'The preview picture of the workbook.': 'L’image d’aperçu du classeur.',
  '{}: {n} remembered values of cells left out were taken out of the chart.':
    '{} : {n} valeurs gardées de cellules laissées de côté ont été ôtées du graphique.',
  '{}: series drawn from sheets left out keep their values inside the chart.':
    '{} : des séries tirées de feuilles laissées de côté gardent leurs valeurs dans le graphique.',
  '{}: a title or box said what stood in a cell left out, and was emptied.':
    '{} : un titre ou cadre disait ce qui était dans une cellule laissée de côté ; il a été vidé.',
  '{}: {n} titles or boxes said what stood in a cell left out, and were emptied.':
    '{} : {n} titres ou cadres disaient ce qui était dans une cellule laissée de côté ; ils ont été vidés.',
  'A pivot table read what is left out: it went with the copy of the source inside.':
    'Un tableau croisé lisait ce qui est laissé de côté : il est parti avec la copie de la source qu’il contenait.',
  '{n} pivot tables read what is left out: it went with the copy of the source inside.':
    '{n} tableaux croisés lisaient ce qui est laissé de côté : ils sont partis avec la copie de la source.',
  'The add-in that opened with the workbook, and the settings it kept in the file.':
    'Le complément qui s’ouvrait avec le classeur, et les réglages qu’il gardait dans le fichier.',
  'An add-in drawn on a sheet.': 'Un complément dessiné sur une feuille.',
  '{n} add-ins drawn on a sheet.': '{n} compléments dessinés sur une feuille.',
  'The digital signature: it vouched for the original, not for a changed copy.':
    'La signature numérique : elle valait pour l’original, pas pour une copie changée.',
  'Names of the people who wrote notes and comments, or were called in them.':
    'Les noms de ceux qui ont écrit des notes et commentaires, ou y étaient appelés.',
  'Author, last editor, title and remarks in the properties.':
    'Auteur, dernier éditeur, titre et remarques dans les propriétés.',
  'Manager, company and link base in the properties.':
    'Responsable, société et base de liens dans les propriétés.',
  '{n} properties somebody had added.': '{n} propriétés que quelqu’un avait ajoutées.',
  'The folder the workbook lay in.': 'Le dossier où était le classeur.',
  'The name of the person who reserved the workbook.': 'Le nom de la personne qui avait réservé le classeur.',
  'Names of people in the names of views.': 'Des noms de personnes dans les noms de vues.',
  'The record of changes with the names of those who made them.':
    'L’historique des changements avec les noms de ceux qui les ont faits.',
  'Links to people (mail, telephone) and to folders of a computer.':
    'Des liens vers des personnes (courriel, téléphone) et vers des dossiers d’un ordinateur.',
  'The names of those who refreshed pivot tables.':
    'Les noms de ceux qui ont actualisé des tableaux croisés.',
  'Descriptions of pictures.': 'Des descriptions d’images.',
  'Remarks written between the lines of the file.': 'Des remarques écrites entre les lignes du fichier.',
  'The settings of the printer, which name it.': 'Les réglages de l’imprimante, qui la nomment.',
  '{}: a conditional format was removed.': '{} : une mise en forme conditionnelle a été ôtée.',
  '{}: a validation was removed.': '{} : une validation a été ôtée.',
  '{}: a conditional format with {} was removed.':
    '{} : une mise en forme conditionnelle avec {} a été ôtée.',
  '{}: a validation with {} was removed.': '{} : une validation avec {} a été ôtée.',
  '{}: a conditional format was removed from each.':
    '{} : une mise en forme conditionnelle a été ôtée de chacune.',
  '{}: a validation was removed from each.': '{} : une validation a été ôtée de chacune.',
  '{}: a conditional format with {} was removed from each.':
    '{} : une mise en forme conditionnelle avec {} a été ôtée de chacune.',
  '{}: a validation with {} was removed from each.': '{} : une validation avec {} a été ôtée de chacune.',
  '{}: the formula that fills new rows was removed.':
    '{} : la formule qui remplit les nouvelles lignes a été ôtée.',
  'The name {} holds #N/A now; cells that used it hold their last values.':
    'Le nom {} tient maintenant #N/A ; les cellules qui s’en servaient tiennent leurs dernières valeurs.',
  '{}: this chart draws a name that is frozen; it shows what it last drew.':
    '{} : ce graphique trace un nom figé ; il montre ce qu’il traçait en dernier.',
  '{n} what-if table became values: with frozen numbers every row would say the same.':
    '{n} table de simulation est devenue des valeurs : avec des nombres figés chaque ligne dirait la même chose.',
  '{n} what-if tables became values: with frozen numbers every row would say the same.':
    '{n} tables de simulation sont devenues des valeurs : avec des nombres figés chaque ligne dirait la même chose.',
  '{n} other formula became values, because they read what is not in this copy or a spilled range that cannot be told.':
    '{n} autre formule est devenue une valeur, parce qu’elle lit ce qui n’est pas dans cette copie ou une plage étalée qu’on ne peut nommer.',
  '{n} other formulas became values, because they read what is not in this copy or a spilled range that cannot be told.':
    '{n} autres formules sont devenues des valeurs, parce qu’elles lisent ce qui n’est pas dans cette copie ou une plage étalée qu’on ne peut nommer.',
  '{n} parts that nothing in the workbook leads to were not copied.':
    '{n} parties où rien dans le classeur ne mène n’ont pas été copiées.',
  'A program without Spawnbook saved the workbook last and could not work out its functions. {n} cells were worked out again from the values they read: {}.':
    'Un programme sans Spawnbook a enregistré le classeur en dernier et n’a pu calculer ses fonctions. {n} cellules ont été recalculées des valeurs qu’elles lisent : {}.',
  'A program without Spawnbook saved the workbook last and could not work out its functions. {n} cell was worked out again from the values they read: {}.':
    'Un programme sans Spawnbook a enregistré le classeur en dernier et n’a pu calculer ses fonctions. {n} cellule a été recalculée des valeurs qu’elle lit : {}.',
};

/** What is still in it, and what was searched for. */
const LEFT: Phrases = {
  '{n} picture: look whether they show people, and remember that photographs may hold the place and time.':
    '{n} image : regardez si elle montre des personnes ; une photographie peut contenir le lieu et l’heure.',
  '{n} pictures: look whether they show people, and remember that photographs may hold the place and time.':
    '{n} images : regardez si elles montrent des personnes ; une photographie peut contenir le lieu et l’heure.',
  'A sensitivity label: it names the organisation that set it.':
    'Une étiquette de confidentialité : elle nomme l’organisation qui l’a mise.',
  'A sensitivity label in the properties: it names the organisation that set it.':
    'Une étiquette de confidentialité dans les propriétés : elle nomme l’organisation qui l’a mise.',
  '{n} link to other workbooks, with their names and last values.':
    '{n} lien vers d’autres classeurs, avec leurs noms et dernières valeurs.',
  '{n} links to other workbooks, with their names and last values.':
    '{n} liens vers d’autres classeurs, avec leurs noms et dernières valeurs.',
  'Connections to data outside the workbook, with their addresses and user names.':
    'Des connexions à des données hors du classeur, avec leurs adresses et noms d’utilisateurs.',
  'Queries to data outside the workbook.': 'Des requêtes à des données hors du classeur.',
  'Data that other programs keep in the file (custom XML).':
    'Des données que d’autres programmes gardent dans le fichier (XML personnalisé).',
  '{n} embedded document, which may hold anything.': '{n} document incorporé, qui peut tout contenir.',
  '{n} embedded documents, which may hold anything.': '{n} documents incorporés, qui peuvent tout contenir.',
  'A data model, which holds its own copy of its tables.':
    'Un modèle de données, qui tient sa propre copie de ses tableaux.',
  'Ink or form controls.': 'De l’encre ou des contrôles de formulaire.',
  'Hidden sheets: anybody can show them.': 'Des feuilles masquées : n’importe qui peut les afficher.',
  'The names of the author and the last editor, the title and remarks.':
    'Les noms de l’auteur et du dernier éditeur, le titre et des remarques.',
  'Notes or comments, with the names of those who wrote them.':
    'Des notes ou commentaires, avec les noms de ceux qui les ont écrits.',
  'The folder the workbook lay in, or who reserved it.':
    'Le dossier où était le classeur, ou qui l’avait réservé.',
  'Links to people or to folders of a computer.':
    'Des liens vers des personnes ou des dossiers d’un ordinateur.',
  'Words in headers and footers of printed pages.': 'Des mots en haut et en bas des pages imprimées.',
  'Outside its cells the copy says nothing of any person that Spawnbook knows to look for. What was typed into cells, sheet names, charts and notes was not judged.':
    'Hors de ses cellules la copie ne dit rien d’une personne que Spawnbook sache chercher. Ce qui fut tapé dans les cellules, noms de feuilles, graphiques et notes n’a pas été jugé.',
  'One text in cells looks like the address of a person or a folder: {}. What was typed stays; look whether it may go.':
    'Un texte de cellule ressemble à l’adresse d’une personne ou d’un dossier : {}. Ce qui fut tapé reste ; voyez si cela peut partir.',
  '{n} texts in cells look like the address of a person or a folder: {}. What was typed stays; look whether it may go.':
    '{n} textes de cellules ressemblent à l’adresse d’une personne ou d’un dossier : {}. Ce qui fut tapé reste ; voyez si cela peut partir.',
  'All {n} parts of the copy were searched for the {n} values left out: none is in it.':
    'Dans les {n} parties de la copie on a cherché les {n} valeurs laissées de côté : aucune n’y est.',
  '{n} more cells hold values of one or two signs, which stand in every workbook by chance and were not looked for.':
    '{n} autres cellules tiennent des valeurs d’un ou deux signes, qui se trouvent par hasard dans tout classeur et n’ont pas été cherchées.',
  'Values equal to some of the {n} values left out stand in: {}. They were not worked out from what is left out, so they were kept; leave them out too if they tell.':
    'Des valeurs égales à certaines des {n} laissées de côté se trouvent dans : {}. Elles ne se calculent pas de ce qui est laissé de côté, elles sont donc restées ; laissez-les aussi de côté si elles en disent trop.',
  'Values equal to some of the {n} left out stand in: {}. They were not worked out from what is left out, so they were kept; leave them out too if they tell.':
    'Des valeurs égales à certaines des {n} laissées de côté se trouvent dans : {}. Elles ne se calculent pas de ce qui est laissé de côté, elles sont donc restées ; laissez-les aussi de côté si elles en disent trop.',
};

/** Before a copy is made, and a copy that is checked. */
const LOOKED: Phrases = {
  'No formula of Spawnbook is in this workbook: it can be shared as it is.':
    'Aucune formule de Spawnbook n’est dans ce classeur : il se partage tel quel.',
  'This copy is frozen already: no formula of Spawnbook is left in it.':
    'Cette copie est déjà figée : il n’y reste aucune formule de Spawnbook.',
  'No copy was made, because cells hold no finished value. {}':
    'Aucune copie n’a été faite, parce que des cellules n’ont pas de valeur finie. {}',
  'Calculation is set to manual: values may be older than what was typed last. Press F9 in Excel and save before making a copy.':
    'Le calcul est manuel : des valeurs peuvent être plus vieilles que ce qui fut tapé en dernier. Pressez F9 dans Excel et enregistrez avant de faire une copie.',
  'The name {} has no value of its own: in a copy it holds #N/A, and cells that use it hold their last values.':
    'Le nom {} n’a pas de valeur à lui : dans une copie il tient #N/A, et les cellules qui s’en servent tiennent leurs dernières valeurs.',
  '{}: a conditional format with {} cannot be kept in a copy.':
    '{} : une mise en forme conditionnelle avec {} ne peut rester dans une copie.',
  '{}: a validation with {} cannot be kept in a copy.':
    '{} : une validation avec {} ne peut rester dans une copie.',
  '{}: {n} what-if table becomes values in a copy.':
    '{} : {n} table de simulation devient des valeurs dans une copie.',
  '{}: {n} what-if tables become values in a copy.':
    '{} : {n} tables de simulation deviennent des valeurs dans une copie.',
  'The workbook is signed. A copy cannot carry the signature.':
    'Le classeur est signé. Une copie ne peut porter la signature.',
  '{}: never calculated. Open the workbook in Excel with Spawnbook, let it calculate, save, and try again.':
    '{} : jamais calculé. Ouvrez le classeur dans Excel avec Spawnbook, laissez-le calculer, enregistrez, et recommencez.',
  '{}: its stored value "{}" is no number. Calculate, save, and try again.':
    '{} : sa valeur enregistrée « {} » n’est pas un nombre. Calculez, enregistrez, et recommencez.',
  'Excel did not know the function when it last calculated. Open the Spawnbook pane, use Repair, save, and try again.':
    'Excel ne connaissait pas la fonction à son dernier calcul. Ouvrez le volet Spawnbook, réparez, enregistrez, et recommencez.',
  'Excel was still calculating when the file was saved. Wait until it has finished, save, and try again.':
    'Excel calculait encore quand le fichier fut enregistré. Attendez qu’il ait fini, enregistrez, et recommencez.',
  'Excel could not reach the function. Open the Spawnbook pane, calculate, save, and try again.':
    'Excel n’a pu atteindre la fonction. Ouvrez le volet Spawnbook, calculez, enregistrez, et recommencez.',
  'Excel was not allowed to run the function. Open the Spawnbook pane, calculate, save, and try again.':
    'Excel n’avait pas le droit d’exécuter la fonction. Ouvrez le volet Spawnbook, calculez, enregistrez, et recommencez.',
  'Excel stored an answer this file format has no word for. Calculate in an up-to-date Excel, save, and try again.':
    'Excel a enregistré une réponse que ce format ne sait dire. Calculez dans un Excel à jour, enregistrez, et recommencez.',
  'The answer has no room. Clear the cells below and beside it, save, and try again.':
    'La réponse n’a pas de place. Videz les cellules dessous et à côté, enregistrez, et recommencez.',
  '{} is its last value and is kept: {}': '{} est sa dernière valeur et reste : {}',
  '{n} of the cells this formula fills hold no value; they stay blank in the copy.':
    '{n} des cellules que cette formule remplit n’ont pas de valeur ; elles restent vides dans la copie.',
  'This workbook has no page of Spawnbook that says where its numbers come from, so there is nothing to compare with.':
    'Ce classeur n’a pas de page de Spawnbook qui dit d’où viennent ses nombres, il n’y a donc rien à comparer.',
  'The digest you kept is not the one on the page: this is not the copy you noted it from, or its page was made anew.':
    'L’empreinte que vous avez gardée n’est pas celle de la page : ce n’est pas la copie où vous l’avez notée, ou sa page a été refaite.',
  'The page itself was changed: its digest of everything does not fit its text.':
    'La page elle-même a été changée : son empreinte de tout ne va pas avec son texte.',
  'Sheets of the copy are gone or have another name: {}.':
    'Des feuilles de la copie manquent ou ont un autre nom : {}.',
  'Numbers worked out by Spawnbook were changed in {}.':
    'Des nombres calculés par Spawnbook ont été changés dans {}.',
  'Typed cells were changed, added or emptied on {}.':
    'Des cellules tapées ont été changées, ajoutées ou vidées sur {}.',
  'Every typed number and every frozen number is the one this copy was made with.':
    'Chaque nombre tapé et chaque nombre figé est celui avec lequel cette copie fut faite.',
  'Remaining formulas give other results than when the copy was made: {}. That also happens when they are calculated on another day.':
    'Des formules qui restent donnent d’autres résultats que quand la copie fut faite : {}. Cela arrive aussi quand elles sont calculées un autre jour.',
  'Somebody who changes a number on purpose can make a new page. Compare the digest of everything with one kept elsewhere to rule that out.':
    'Qui change un nombre exprès peut faire une nouvelle page. Pour l’exclure, comparez l’empreinte de tout avec une gardée ailleurs.',
  'The digest was compared with the one you kept.':
    'L’empreinte a été comparée avec celle que vous avez gardée.',
  'There is no sheet "{}". The sheets are: {}.': 'Il n’y a pas de feuille « {} ». Les feuilles sont : {}.',
  'None of the chosen sheets is visible. Choose at least one that is.':
    'Aucune des feuilles choisies n’est visible. Choisissez-en au moins une qui le soit.',
  'The workbook has slicers on a pivot table that reads what shall be left out. Delete the slicers (or the pivot table) and try again.':
    'Le classeur a des segments sur un tableau croisé qui lit ce qui doit être laissé de côté. Supprimez les segments (ou le tableau) et recommencez.',
  'The file is empty.': 'Le fichier est vide.',
  'This is not an Excel workbook (.xlsx). Choose a workbook saved as .xlsx.':
    'Ce n’est pas un classeur Excel (.xlsx). Choisissez un classeur enregistré en .xlsx.',
  'This is a PDF, not a workbook. Ask for the .xlsx file it was made from.':
    'C’est un PDF, pas un classeur. Demandez le fichier .xlsx dont il vient.',
  'This is a web page or XML file, whatever its name says. Open it in Excel and save it as .xlsx.':
    'C’est une page web ou un fichier XML, quoi que dise son nom. Ouvrez-le dans Excel et enregistrez-le en .xlsx.',
  'This looks like a text (CSV) file, not an Excel workbook. Open it in the spreadsheet and save it as .xlsx.':
    'Cela ressemble à un fichier texte (CSV), pas à un classeur Excel. Ouvrez-le dans le tableur et enregistrez-le en .xlsx.',
  'This is an OpenDocument file. Open it in LibreOffice and save it as .xlsx (Excel 2007-365).':
    'C’est un fichier OpenDocument. Ouvrez-le dans LibreOffice et enregistrez-le en .xlsx (Excel 2007-365).',
  'This is a Word document, not a workbook.': 'C’est un document Word, pas un classeur.',
  'The workbook is protected with a password to open it. Remove the password (File, Info, Protect Workbook, Encrypt), save, and try again.':
    'Le classeur demande un mot de passe pour s’ouvrir. Ôtez le mot de passe (Fichier, Informations, Protéger le classeur, Chiffrer), enregistrez, et recommencez.',
  'This is a workbook in the old .xls format. Open it in Excel, choose Save As and Excel Workbook (.xlsx), and use that file.': `C’est un classeur dans l’ancien format .xls. ${A_FILE}`,
  'This is a binary workbook (.xlsb). Open it in Excel, choose Save As and Excel Workbook (.xlsx), and use that file.': `C’est un classeur binaire (.xlsb). ${A_FILE}`,
  'The workbook holds macros. Macros are not passed on, because every reader would be asked to trust them. Open it in Excel, choose Save As and Excel Workbook (.xlsx), and use that file.': `Le classeur contient des macros. Elles ne sont pas transmises, parce que chaque lecteur devrait leur faire confiance. ${A_FILE}`,
  'The file is damaged: it was cut short while copying, its end is missing. Copy or download it again.':
    'Le fichier est abîmé : il a été coupé pendant la copie, sa fin manque. Copiez-le ou téléchargez-le de nouveau.',
  'The file is damaged ({}). Copy or download it again, or open and save it in Excel, which may repair it.':
    'Le fichier est abîmé ({}). Copiez-le ou téléchargez-le de nouveau, ou ouvrez-le et enregistrez-le dans Excel, qui peut le réparer.',
  'This zip file holds no workbook: it is not an Excel workbook. Pick the .xlsx file itself.':
    'Ce fichier zip ne contient pas de classeur. Choisissez le fichier .xlsx lui-même.',
  'The file holds no sheet with cells.': 'Le fichier n’a pas de feuille avec des cellules.',
};

export const sharePhrases: Phrases = { ...PAGE, ...CHANGED, ...LEFT, ...LOOKED };
