/**
 * Headings as a third hand writes them, by what a column holds and in which language: a line a meaning, languages in
 * the order English of East Africa, French, Portuguese, Spanish, Indonesian, Swahili mixed with English. From memory
 * of how such books are kept; common practice, no source. None of them was put into the word table on that account.
 */
const LINES = `
run| Spawn ref; Breeding #| N° de reproduction; Réf. ponte| Reprodução n.º; Desova (ref.)| Reproducción N.º; Tanda| Pemijahan no.; No urut pijah| Zao namba; Namba ya kuzalisha
date| Date done; Written on| Date de l'opération; Jour de travail| Data do trabalho; Data da anotação| Fecha del trabajo; Día de anotación| Tgl kegiatan; Tanggal catat| Tarehe ya kazi; Siku ya kazi
female| Mother fish code; Brooder code| Code de la mère; Bague de la femelle| Código da matriz; Marca da fêmea| Código de la madre; Marca de la hembra| Kode induk; Tanda betina| Alama ya mama; Mama samaki (code)
kg| Mother fish mass; Mass of brooder| Masse de la femelle; Poids génitrice| Massa da fêmea; Fêmea, peso vivo| Masa de la hembra; Peso vivo hembra| Massa betina; Berat badan induk betina| Uzito mama samaki; Uzito wa jike
rate| Injected per kilo of fish; Hormone per kilo| Dose par kilo de femelle; Hormone par kilo| Dose por quilo de peixe; Hormônio por quilo| Dosis por kilo de pez; Hormona por kilo| Dosis tiap kilo induk; Hormon per kilo| Dozi kwa kilo; Homoni kwa kila kilo
dose| Amount injected; Hormone drawn up| Quantité injectée; Volume total d'hormone| Quantidade injetada; Volume de hormônio aplicado| Cantidad inyectada; Volumen inyectado| Jumlah suntikan; Volume hormon terpakai| Kiasi cha homoni; Dawa iliyochomwa
product| Inducer; What was injected| Inducteur; Produit injecté| Indutor; Produto injetado| Inductor; Producto inyectado| Bahan suntik; Jenis perangsang| Aina ya homoni; Homoni gani
in| Needle time; Clock at injection| Piquée à; Heure de la piqûre| Aplicação às; Hora em que injetou| Se inyectó a las; Hora del pinchazo| Disuntik pukul; Waktu penyuntikan| Saa ya kuchoma; Muda wa sindano
out| Squeezed at; Eggs taken at| Pressée à; Heure du massage| Extrusão às; Hora de retirada dos ovos| Se extrajo a las; Hora de extracción de huevos| Diurut pukul; Waktu pengurutan| Saa ya kukamua mayai; Alikamuliwa saa
hours| Waited; Hours in between| Attente; Délai d'attente| Espera; Tempo até extrusão| Espera; Tiempo hasta extracción| Lama tunggu; Selang waktu| Muda wa kusubiri; Masaa ya kungoja
temp| Water warmth; Vat temp| Chaleur de l'eau; Thermomètre| Temp. do viveiro; Termômetro| Termómetro; Temp. de la pila| Panas air; Termometer| Joto maji; Joto la tanki
grams| Roe taken; Egg mass stripped| Masse d'œufs récoltée; Œufs pesés| Massa de ovos obtida; Ovos pesados| Masa de huevos obtenida; Huevos pesados| Telur ditimbang; Massa telur keluar| Mayai (uzito); Uzito mayai yaliyokamuliwa
perGram| Count in 1 g; Eggs each gram| Compte par gramme; Nb d'œufs dans 1 g| Contagem por grama; Nº de ovos em 1 g| Conteo por gramo; N° de huevos en 1 g| Hitungan per gram; Isi telur 1 g| Hesabu kwa gramu; Mayai ndani ya 1 g
eggs| Eggs altogether; Estimated no. of eggs| Œufs en tout; Nombre total d'ovules| Ovos no total; Nº estimado de ovos| Huevos en total; N° estimado de huevos| Telur seluruhnya; Perkiraan jumlah telur| Mayai yote; Idadi ya mayai yote
looked| Eggs under lens; Eggs in the dish| Œufs sous la loupe; Œufs de l'échantillon| Ovos na lupa; Ovos da amostra| Huevos bajo la lupa; Huevos de la muestra| Telur diperiksa; Sampel telur dilihat| Mayai yaliyoangaliwa; Sampuli ya mayai
good| of these fertile; of which clear| dont bons; dont fertiles| dos quais férteis; dos quais bons| de los cuales fértiles; de ellos buenos| yang terbuahi; di antaranya bagus| yaliyorutubika; kati yake mazuri
fert| Fertile share; Part fertile| Part fécondée; Réussite fécondation| Parte fecundada; Sucesso da fecundação| Parte fecundada; Éxito de fecundación| Persen terbuahi; Daya buah telur| Asilimia iliyorutubika; Kiwango cha kurutubika
hatched| Wrigglers; Came out live| Nés vivants; Larves obtenues| Nasceram; Larvas obtidas| Nacieron; Larvas obtenidas| Yang menetas; Larva diperoleh| Waliototolewa; Vifaranga vilivyototolewa
hatchp| Share hatched out; Hatch-out rate| Part éclose; Réussite éclosion| Parte eclodida; Sucesso de eclosão| Parte eclosionada; Éxito de eclosión| Persen tetas; Daya tetas telur| Asilimia ya kutotolewa; Kiwango cha kutotoa
fry| Fry swimming on day 4; Free swimmers| Larves nageant; Alevins à la nage| Larvas nadando; Alevinos nadantes| Larvas nadando; Alevines nadadores| Larva berenang; Benih mulai berenang| Wanaoogelea; Vifaranga wanaoogelea
open| Fish in the morning; Count brought over| Poissons au matin; Reste de la veille| Peixes no começo; Sobra do dia anterior| Peces al comenzar; Quedaban ayer| Ikan awal hari; Sisa kemarin| Samaki asubuhi; Waliobaki jana
ins| Came in; Fish added| Arrivés; Poissons ajoutés| Chegaram; Peixes colocados| Llegaron; Peces agregados| Datang; Ikan ditambah| Walioongezwa; Walioletwa
outs| Went to other tank; Shifted out| Partis vers autre bac; Déplacés| Foram para outro tanque; Passados adiante| Pasaron a otra pila; Trasladados| Pindah ke bak lain; Dipindahkan keluar| Waliohamishwa; Walioenda tanki lingine
dead| Picked dead; Floating dead| Ramassés morts; Pertes du jour| Achados mortos; Perdas do dia| Hallados muertos; Bajas del día| Ikan mati diambil; Kematian hari ini| Samaki waliokufa leo; Vifo vya siku
sold| Went to buyers; Fish sold off| Partis chez clients; Poissons vendus| Saíram por venda; Peixes vendidos| Salieron por venta; Peces vendidos| Keluar dijual; Ikan laku| Waliouzwa leo; Mauzo (samaki)
close| Fish in the evening; Still there| Poissons au soir; Restent le soir| Peixes no fim; Ficaram| Peces al terminar; Quedan hoy| Ikan akhir hari; Tinggal di bak| Samaki jioni; Waliobaki leo
receipt| Slip; Paper no.| Bon; Reçu (n°)| Talão; N.º do recibo| Vale; N° de boleta| Nota; No. kuitansi| Risiti namba; Stakabadhi na.
buyer| Who bought; Taken by| Pris par; Acheté par| Quem comprou; Levado por| Quién compró; Llevado por| Siapa beli; Dibeli oleh| Nani alinunua; Mnunuzi jina
n| Pieces taken; How many fish| Combien de poissons; Pièces livrées| Quantos peixes; Peças entregues| Cuántos peces; Piezas entregadas| Berapa ekor; Ekor dikirim| Samaki wangapi; Vipande
price| Each at; Rate per fish| À la pièce; Prix du poisson| Cada um a; Preço por peixe| Cada uno a; Precio por pez| Harga tiap ekor; Per ekor| Bei ya mmoja; Kila mmoja
amount| Comes to; Value of sale| Fait en tout; Valeur de la vente| Dá no total; Valor da venda| Suma a pagar; Valor de la venta| Harga seluruhnya; Nilai penjualan| Thamani yote; Jumla ya pesa
paid| Cash received; Handed over| Versé; Argent reçu| Recebido; Dinheiro entregue| Recibido; Dinero entregado| Uang diterima; Sudah dibayar| Pesa iliyopokelewa; Amelipa
due| Still to come; Not yet paid| Encore dû; Manque à payer| Falta pagar; Ainda deve| Falta pagar; Todavía debe| Belum dibayar; Kurang bayar| Bado kulipa; Deni lililobaki
tank| In tank; Which vat| Dans le bac; Bac concerné| Qual tanque; No tanque| Cuál estanque; En la pila| Di kolam; Nama bak| Tangi gani; Kwenye tangi
fishN| Fish there; Heads in tank| Poissons présents; Têtes dans le bac| Peixes presentes; Cabeças no tanque| Peces presentes; Cabezas en pila| Ikan yang ada; Populasi| Samaki waliopo; Idadi tangini
mean| One fish weighs; Size each| Poids d'un poisson; Moyenne par tête| Peso de um peixe; Média por cabeça| Peso de un pez; Promedio por cabeza| Berat satu ikan; Bobot per ekor| Uzito wa mmoja; Wastani wa uzito
biomass| All fish weigh; Standing mass| Poids de tous; Masse en bac| Peso de todos; Massa no tanque| Peso de todos; Masa en la pila| Berat seluruh ikan; Bobot total ikan| Uzito wa wote; Uzito jumla wa samaki
ration| Feed as part of weight; Part to feed| Part de ration; Taux à donner| Parte de ração; Taxa a dar| Parte de ración; Tasa a dar| Persen pakan harian; Kadar pakan| Asilimia ya chakula; Kiwango cha kulisha
feed| Pellets put in; Feed thrown in| Granulés donnés; Aliment jeté| Ração jogada; Ração fornecida no dia| Comida echada; Pienso dado| Pelet diberikan; Makanan ditebar| Chakula walichopewa; Chakula kilichowekwa
kind| Crumble or pellet; Grade of feed| Calibre de l'aliment; Sorte de granulé| Calibre da ração; Qual ração| Calibre del pienso; Cuál comida| Macam pakan; Ukuran butiran| Chakula gani; Saizi ya chakula
time| O'clock; Clock| À quelle heure; Heure du contrôle| A que horas; Hora da medida| A qué hora; Hora de la medida| Jam ukur; Pukul berapa| Saa ya kupima; Saa ngapi
oxygen| Air in water; Oxygen reading| Oxygène mesuré; O2 dans l'eau| Oxigênio lido; O2 na água| Oxígeno leído; O2 en el agua| Kadar oksigen; Oksigen di air| Oksijeni ya maji; Hewa ya maji
ph1| pH found; pH at first| pH trouvé; pH au départ| pH achado; pH de partida| pH hallado; pH de partida| pH mula-mula; pH terukur awal| pH ya kwanza; pH kabla ya dawa
soda| Soda put; Bicarb added| Bicarbonate versé; Soude ajoutée| Bicarbonato posto; Cal colocada| Bicarbonato echado; Cal echada| Soda ditabur; Kapur ditebar| Magadi yaliyowekwa; Soda iliyowekwa
volume| Water in tank; Water standing| Eau dans le bac; Contenance| Água no tanque; Capacidade| Agua en la pila; Capacidad| Isi air; Banyaknya air| Maji tangini; Ujazo wa maji
ph2| pH next; pH once mixed| pH ensuite; pH obtenu| pH depois de misturar; pH obtido| pH luego; pH obtenido| pH sesudah; pH hasil| pH baada ya dawa; pH ya mwisho
ammonia| Ammonia test; TAN strip| Test ammoniac; Ammoniaque lue| Teste de amônia; Amônia lida| Prueba de amonio; Amoníaco leído| Uji amonia; Amonia terbaca| Kipimo cha ammonia; Ammonia (test)
sampN| Fish in the net; Weighed how many| Poissons pesés; Nb dans l'épuisette| Peixes pesados; Nº no puçá| Peces pesados; N° en la red| Ikan ditimbang; Banyak sampel| Samaki waliopimwa; Idadi ya sampuli
sampW| Netful weighed; Weight of the netful| Poids du lot pesé; Pesée totale| Peso do lote pesado; Pesagem total| Peso del grupo; Pesada total| Berat contoh; Timbangan contoh| Uzito wa sampuli yote; Uzito kwenye mizani
length| How long; Fish length average| Taille du poisson; Long. totale moy.| Tamanho do peixe; Compr. total médio| Tamaño del pez; Long. total media| Ukuran panjang; Panjang rerata| Urefu wa samaki; Urefu wastani
small| Little ones; Tail-enders| Les petits; Petite taille| Os pequenos; Miúdos| Los chicos; Pequeños| Yang kecil; Ukuran kecil| Wadogo; Saizi ndogo
mid| Middle lot; Middle size| Les moyens; Taille moyenne| Os médios; Médios| Los medianos; Talla media| Yang sedang; Ukuran sedang| Wa kati; Saizi ya kati
big| Jumpers; Large ones| Les gros; Grande taille| Os grandes; Saltadores| Los grandes; Cabezones| Yang besar; Ukuran besar| Wakubwa; Saizi kubwa
cull| Thrown away; Bent ones| Jetés; Malformés| Jogados fora; Tortos| Botados; Torcidos| Dibuang; Yang cacat| Waliotupwa; Wenye kasoro
sorted| All sorted; Sorted in all| Triés en tout; Total trié| Total separado; Classificados ao todo| Total separado; Clasificados en todo| Total disortir; Jumlah sortir| Wote waliochambuliwa; Jumla ya kuchambua
what| Money for what; Details of payment| Pour quoi; Motif du paiement| Para quê; Histórico do pagamento| Para qué; Detalle del pago| Untuk apa; Uraian transaksi| Kwa ajili ya nini; Maelezo ya malipo
inMoney| Money came; Got| Argent entré; Encaissé| Dinheiro que entrou; Recebemos| Dinero que entró; Cobrado| Uang masuk; Terima uang| Pesa iliyoingia; Mapato ya pesa
outMoney| Money went; Spent| Argent sorti; Décaissé| Dinheiro que saiu; Gastamos| Dinero que salió; Gastado| Uang keluar; Belanja| Pesa iliyotoka; Matumizi ya pesa
balance| In the box; Cash left| Reste en caisse; En caisse| Resta em caixa; Em caixa| Queda en caja; En caja| Sisa uang; Di kas| Pesa iliyobaki; Kwenye sanduku
remedy| Medicine put; Bath of| Remède; Bain de| Remédio; Banho de| Remedio; Baño de| Obat; Rendaman| Dawa; Kuogesha na
strength| How strong; Strength of bath| Force du bain; Concentration voulue| Força do banho; Concentração usada| Fuerza del baño; Concentración usada| Kekuatan larutan; Konsentrasi obat| Nguvu ya dawa; Kipimo cha dawa
remedyG| Weighed out; Medicine weighed| Produit pesé; Remède pesé| Remédio pesado; Produto pesado| Remedio pesado; Producto pesado| Obat ditimbang; Berat obat| Dawa iliyopimwa; Uzito wa dawa
from| Bath from; Fish in at| Bain de; Début du bain| Banho das; Começo do banho| Baño desde; Comienzo del baño| Rendam dari; Mulai rendam| Kuanzia saa; Kuanza kuogesha
till| Bath till; Fish out at| Bain jusqu'à; Fin du bain| Banho até; Fim do banho| Baño hasta; Fin del baño| Rendam sampai; Selesai rendam| Hadi saa; Mwisho wa kuogesha
mins| Bath lasted; How long in bath| Temps de bain; Bain, durée| Tempo de banho; Banho durou| Tiempo de baño; Baño duró| Lama rendam; Lamanya| Muda wa kuogesha; Dakika ngapi
total| Sum up; Adds to| Somme; Ensemble| Somatório; Tudo| Sumatoria; Todo| Jumlah semua; Total| Jumla kuu; Jumla
note| Anything seen; Remark by staff| Ce qu'on a vu; À noter| O que se viu; Anotações| Lo visto; Anotaciones| Keterangan lain; Catatan kejadian| Yaliyoonekana; Maoni
deaths| Dead fish by vat| Morts par bac| Mortos por viveiro| Muertos por pila| Ikan mati tiap bak| Waliokufa kila tangi
Female| Mother| Mère| Matriz| Madre| Induk betina| Mama
Eggs| Roe| Ovules| Ovos| Huevos| Telur| Mayai
Result| Outcome| Résultat| Resultado| Resultado| Hasil| Matokeo
Water| Water| Eau| Água| Agua| Air| Maji
Money| Money| Argent| Dinheiro| Dinero| Uang| Pesa
Fish| Fish| Poissons| Peixes| Peces| Ikan| Samaki
`;

export const LANGUAGES = ['en', 'fr', 'pt', 'es', 'id', 'sw'] as const;
export type Tongue = (typeof LANGUAGES)[number];

const said = new Map(
  LINES.trim()
    .split('\n')
    .map((line) => {
      const [key = '', ...tongues] = line.split('|').map((part) => part.trim());
      return [key, tongues.map((forms) => forms.split(';').map((form) => form.trim()))] as const;
    }),
);
export const formsOf = (key: string, tongue: Tongue): readonly string[] =>
  said.get(key)?.[LANGUAGES.indexOf(tongue)] ?? [key];
