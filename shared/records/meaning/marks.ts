import { fold } from '../words/fold';

/** Little words that turn one thing into another: first and second dose, before and after, morning and afternoon. */
export type MeaningMark =
  | 'first'
  | 'second'
  | 'before'
  | 'after'
  | 'morning'
  | 'afternoon'
  | 'total'
  | 'running'
  | 'small'
  | 'middle'
  | 'big'
  | 'perKg'
  | 'thousand'
  | 'date'
  | 'time'
  | 'sample'
  | 'male'
  | 'female'
  | 'count'
  | 'share'
  | 'deliver'
  | 'mean'
  | 'weight'
  | 'week'
  | 'live'
  | 'in'
  | 'out'
  | 'dead'
  | 'sale'
  | 'fish'
  | 'one'
  | 'every'
  | 'money'
  | 'rest'
  | 'water'
  | 'vessel'
  | 'egg'
  | 'feed'
  | 'noon';

const W = (words: string): RegExp =>
  new RegExp(`(?:^|[^\\p{L}\\p{N}])(?:${words})(?=$|[^\\p{L}\\p{N}])`, 'u');
const WORDS: Readonly<Record<MeaningMark, RegExp>> = {
  first: W(
    '1st|first|1er|1ere|premiere?|primeir[oa]|primer[oa]?|1a|1o|pertama|lan 1|dau|1|i|prim|priming|' +
      'ke-?1|prothom|kwanza',
  ),
  second: W(
    '2nd|second|2e|2eme|deuxieme|segund[oa]|2a|2o|kedua|lan 2|2|ii|res|resolving|ke-?2|ditio|pili|final',
  ),
  before: W('before|initial|avant|antes|inicial|sebelum|sblm|truoc|age|agey|start|debut|awal|قبل|kabla|bef'),
  after: W(
    'after|apres|depois|despues|setelah|sesudah|selepas|slps|final|sau|por|pore|end|fin|akhir|بعد|baada|aft',
  ),
  morning: W('am|a m|morning|matin|manha|manana|pagi|sang|subuh|shokal|asubuhi|min|صباحا|صباح'),
  afternoon: W('pm|p m|afternoon|evening|soir|apres-midi|tarde|sore|petang|chieu|bikal|jioni|max|مساء'),
  total: W('total|totaux|totale|totais|totales|sum|tot|ttl|jumlah|jml|jum|tong|mot|المجموع|اجمالي|all|jumla'),
  running: W(
    'running|cumulative|cumul|cumule|cum|acumulad[oa]|kumulatif|so far|to date|tich luy|' +
      'luy ke|r/total|tichluy|تراكمي',
  ),
  small: W(
    'kecil|ndogo|wadogo|mdogo|chic[oa]s?|menor(?:es)?|miud[oa]s?|little|petites?|small|petit|' +
      'petits|pequen[oa]s?|kecil|nho|chhoto|choto|s|undersize|صغير',
  ),
  middle: W(
    'kati|wa kati|tengah|moyennes?|medium|middle|mid|moyens?|medi[oa]n?[oa]?s?|sedang|sederhana|vua|majhari|m|متوسط',
  ),
  big: W(
    'kubwa|wakubwa|mkubwa|maior(?:es)?|mayor(?:es)?|grosses?|big|large|grands?|gros|grandes?|' +
      'besar|bsr|to|lon|boro|l|jumpers?|shooters?|كبير|tetes?',
  ),
  perKg: W('per kg|/ ?kg|par kg|por kg|kg|per kilo'),
  thousand: W("1000|'000|thousand|mille|milheiro|mil|millar|ribu|per 1000|nghin|ngan|hajar|hazar|k|الف"),
  date: W('date|jour|data|dia|fecha|tanggal|tgl|tarikh|ngay|tarik|day|تاريخ|tarehe'),
  time: W('time|heure|h|hora|jam|pukul|gio|somoy|hour|at|masa|waktu|ساعه|وقت|saa'),
  sample: W('sample|echantillon|amostra|muestra|sampel|contoh|mau|cek|checked|looked|عينه|sampuli|counted'),
  male: W('males?|bulls?|machos?|jantan|duc|purush|ذكر|ذكور|dume|madume|pejantan|cocks?'),
  female: W('females?|femelles?|hembras?|femeas?|betina|cai|stri|انثي|اناث|jike|majike|induk|hens?'),
  count: W(
    'no|nos|n|number|nombre|nbre|nb|numero|qtd|cant|jumlah|jml|so|bilangan|bil|qty|idadi|عدد|#|how many|count',
  ),
  share: W(
    'reussite|exito|sucesso|keberhasilan|asilimia|kiwango|daya|part|parte|quota|' +
      '%|rate|taux|taxa|tasa|tingkat|ty le|persen|percent|porcentagem|porcentaje|pct|kadar|نسبه|har|success',
  ),
  deliver: W(
    'deliver[a-z]*|livraison|livre|entrega|kirim|pengiriman|hantar|giao|collection|pick ?up|retrait|تسليم',
  ),
  mean: W(
    'mean|average|avg|moyen|moyenne|medio|media|rata-rata|purata|trung binh|tb|gor|each|abw|pm|متوسط|individual',
  ),
  weight: W('weight|wt|poids|peso|berat|bobot|trong luong|ojon|وزن|uzito|kg|pds'),
  in: W(
    'came|come|entr[a-z]+|arriv[a-z]+|lleg[a-z]+|[a-z]*ingia|in|into|in from|entrees?|' +
      'entradas?|masuk|ingresos?|vao|nhap|dakhil|وارد|داخل|from|recus?|received',
  ),
  out: W(
    'went|gone|sorti[a-z]*|salio|salieron|saiu|sairam|[a-z]*toka|spent|out|out to|sorties?|' +
      'saidas?|salidas?|egresos?|keluar|xuat|ra|صادر|خارج|sent|to',
  ),
  dead: W(
    'dead|deaths?|died|morts?|mortes|mortos?|mortas?|muert[oa]s?|bajas|mortality|mortalite|mortalidad[e]?|' +
      'mati|kematian|chet|mrityu|mora|vifo|waliokufa|نافق|وفيات',
  ),
  week: W('week|weekly|wk|semaine|semana|semanal|sem|minggu|mgg|mingguan|hebdo'),
  live: W('artemia|moina|daphnia|live food|nauplii|rotifer|aliment vivant'),
  fish: W('fish|heads?|poissons?|tetes?|alevins?|peixes?|cabecas?|peces|pez|cabezas?|ikan|ekor|samaki|benih'),
  one: W('one|each|single|un|une|chaque|um|uma|cada|uno|una|satu|tiap|setiap|mmoja|kila|per|par|por'),
  every: W('all|whole|total|tous|tout|toute|toutes|todos?|todas?|semua|seluruh|wote|yote|zote|jumla'),
  money: W('money|cash|argent|caisse|dinheiro|caixa|dinero|caja|uang|kas|pesa|hela'),
  rest: W('left|rest|reste|resta|queda|sisa|[a-z]*baki|saldo|solde'),
  water: W('water|eau|agua|air|maji|nuoc'),
  vessel: W(
    'tanks?|vats?|bacs?|bassin|cuve|tanques?|pilas?|estanques?|bak|kolam|tangi[a-z]*|tanki[a-z]*|ponds?',
  ),
  feed: W('feeds?|aliment|repas|racao|trato|racion|alimento|pienso|pakan|chakula|meals?|makanan|makan'),
  noon: W('noon|midday|midi|meio-dia|mediodia|siang|mchana|tengah hari'),
  egg: W('eggs?|roe|ova|oeufs?|ovules?|ovos?|ovas?|huevos?|telur|mayai'),
  sale: W(
    'sale|sold|sales|vente|vendu|venda|vendid[oa]s?|venta|vendid[oa]s?|jual|terjual|penjualan|ban|bikri|mauzo|' +
      'مبيعات|بيع',
  ),
};

const remembered = new Map<string, ReadonlySet<MeaningMark>>();
export function marksIn(heading: string): ReadonlySet<MeaningMark> {
  let found = remembered.get(heading);
  if (!found) {
    const text = fold(heading);
    found = new Set((Object.keys(WORDS) as MeaningMark[]).filter((mark) => WORDS[mark].test(text)));
    if (remembered.size > 4000) remembered.clear();
    remembered.set(heading, found);
  }
  return found;
}
