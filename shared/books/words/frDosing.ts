/* eslint max-len: off -- a sentence a line */
import type { DosingWords } from '../dosing/ownWords';

/** French of the answers of the dosing functions, for the dosing sheet. */
export const frDosing: DosingWords = {
  log: 'fr',
  options: [
    ['inconnu', 'unknown'],
    ['puits', 'well'],
    ['aérée', 'aerated'],
    ['tourbe', 'peat'],
    ['bon', 'good'],
    ['bon marché', 'cheap'],
    ['bandelettes', 'strips'],
  ],
  actions: [
    ['air first', 'AÉRER D’ABORD'],
    ['wait', 'ATTENDRE'],
    ['read again', 'RELIRE LE PH'],
    ['done', 'FINI'],
    ['watch', 'SURVEILLER, RELIRE DEMAIN'],
  ],
  sentences: [
    [
      'Air first, no product yet',
      'Aérez d’abord, pas encore de produit : l’air seul peut amener cette eau dans la fenêtre.',
    ],
    [
      'Air the vat strongly',
      'Aérez le bac fort une heure ou plus, mesurez, et notez cette mesure avec « aéré » à côté. Plus vite : secouez une bouteille à moitié pleine de l’eau quelques minutes en changeant son air, et mesurez-la (« bocal »).',
    ],
    [
      'still on the move',
      'Pas encore de produit : le pH bouge encore, parce que du gaz part ou que la dose se mélange. Gardez l’air et mesurez de nouveau, jusqu’à ce que deux mesures s’accordent.',
    ],
    [
      'has used up the carbon dioxide',
      'Air en marche, pas encore de produit : la dose a usé le gaz carbonique ; quand il revient de l’air le pH redescend. Mesurez de nouveau après une heure d’air.',
    ],
    [
      'was expected. Look',
      'Mesurez de nouveau avant tout : ce pH n’est pas celui qui était attendu. Regardez le chiffre tapé, mélangez, rincez le pH-mètre, contrôlez-le dans un tampon.',
    ],
    [
      'is lower than this dose',
      'Mesurez de nouveau avant plus de produit : ce pH est plus bas que cette dose ne devrait donner ; elle n’est peut-être pas encore mélangée. Attendez un quart d’heure de plus, l’eau en mouvement.',
    ],
    [
      'was read, above 8.',
      'Mesurez de nouveau avant tout : pH au-dessus de 8. Regardez le chiffre tapé, rincez le pH-mètre, contrôlez-le dans un tampon. Si une seconde mesure s’accorde, n’ajoutez rien et changez une partie de l’eau.',
    ],
    [
      'is unusual for water',
      'Mesurez de nouveau avant tout : ce pH est inhabituel pour une eau. Contrôlez le pH-mètre dans un tampon ; notez aussi la seconde mesure.',
    ],
    [
      'do not agree. Mix',
      'Attendez : les deux mesures ne s’accordent pas. Mélangez, attendez autant, et mesurez encore une fois.',
    ],
    ['Add nothing: pH', 'N’ajoutez rien : le pH est au-dessus de la fenêtre.'],
    [
      'Gas that leaves the water lifts',
      'Le gaz qui part de l’eau monte le pH un jour ou plus ; ce n’est pas la faute du produit.',
    ],
    [
      'Leave the vat and measure',
      'Laissez le bac et mesurez de nouveau demain ; contrôlez l’ammoniac s’il y a des poissons.',
    ],
    [
      'Exchange part of the water, and',
      'Changez une partie de l’eau et mesurez de nouveau ; contrôlez l’ammoniac s’il y a des poissons.',
    ],
    [
      'is in the window. No more',
      'Arrêtez : le pH est dans la fenêtre. Plus de produit ; gardez l’air et mesurez de nouveau demain.',
    ],
    [
      'with what has gone in',
      'Air en marche, pas encore de produit : avec ce qui est entré le pH devrait monter quand le gaz carbonique part. Mesurez de nouveau après une heure d’air et notez « aéré » à côté ; s’il n’a pas monté, on en donne plus.',
    ],
    [
      'what is left to give',
      'Arrêtez : ce qui reste à donner bouge le pH moins qu’un pH-mètre ne montre. Gardez l’air et mesurez de nouveau demain.',
    ],
    [
      'Once the gas has come to rest',
      'Quand le gaz sera posé, le pH peut être n’importe où entre les bornes « aéré » du plan : mesurez-le demain, et continuez de cette mesure s’il est sous la fenêtre.',
    ],
    [
      'lies just below the window',
      'Arrêtez : le pH est juste sous la fenêtre, de moins qu’un pH-mètre ne peut dire. Pas de produit ; gardez l’air, tenez le pH-mètre dans un tampon, et mesurez de nouveau demain.',
    ],
    [
      'has left, the pH stands near',
      'Quand le gaz carbonique est parti, le pH est près de « aéré probable » du plan.',
    ],
    ['this water needs no product', 'Cette eau n’a besoin d’aucun produit.'],
    [
      'the pH rises by itself',
      'Pas de produit : quand le gaz carbonique part, le pH monte de lui-même. Dans un bac calme cela prend deux jours et plus, dans un bac agité ou peu profond environ un jour (de mémoire).',
    ],
    [
      'No dose of this product',
      'Aucune dose de ce produit n’est utile ici. Mesurez de nouveau, contrôlez le pH-mètre et le produit.',
    ],
    [
      'One reading only',
      'Une seule mesure : la réponse repose sur ce que de telles eaux contiennent d’habitude. La prochaine mesure en dira bien plus.',
    ],
    [
      'do not go together',
      'Les mesures ne vont pas ensemble : un tampon caché (tourbe, ammoniac, phosphate, calcaire dans le bac), un volume faux, un produit faux, ou un pH-mètre qui dérive. Demi-pas seulement.',
    ],
    [
      'held a buffer beside',
      'L’eau répond comme si elle tenait un tampon à côté du gaz carbonique, sans doute des acides de tourbe ou de feuilles, ou comme si le produit était plus faible que dit : petits pas, le pH peut bondir quand le tampon est usé.',
    ],
    [
      'hardly moved the pH',
      'La dernière dose a à peine bougé le pH : l’eau est fortement tamponnée, ou le produit, le pH-mètre ou le volume n’est pas ce qu’il semble.',
    ],
    [
      'Dissolve this dose in a bucket',
      'Dissolvez cette dose dans un seau, versez-la où l’eau bouge, mélangez avec l’air, attendez un quart d’heure, mesurez deux fois, notez le pH.',
    ],
    ['This should reach the target', 'Ceci devrait atteindre le pH voulu une fois aéré.'],
    ['One step, no more', 'Un pas, pas plus.'],
    ['not to pass the top of the window', 'Retenue pour ne pas dépasser le haut de la fenêtre.'],
    ['Held to twice', 'Limitée à deux fois la part d’avant ; les mesures en gagneront plus.'],
    ['does not answer as carbon dioxide', 'Retenue : l’eau ne répond pas comme le gaz carbonique seul.'],
    ['The readings fit', 'Les mesures vont mieux avec un autre produit : regardez le sac.'],
    [
      'Over the limit already',
      'Déjà au-dessus de la limite : changez de l’eau, arrêtez de nourrir, ne montez pas le pH.',
    ],
    [
      'Do not raise: the toxic part',
      'Ne montez pas : la part toxique passerait la limite. Changez d’abord de l’eau, ou arrêtez au pH sûr le plus haut, ci-dessous.',
    ],
    ['Stays under the limit', 'Reste sous la limite. Montez par pas de 0,3 pH au plus.'],
  ],
  inEnglish: '(en anglais)',
  title: 'Les mots de la fonction',
  note: 'La fonction répond en anglais ; ce tableau mène ses phrases aux nôtres. Rien à taper ici.',
};
