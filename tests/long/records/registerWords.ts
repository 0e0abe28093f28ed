/**
 * Headings of registers, by what a column holds and in which language: a line a meaning, languages in the order English
 * of West Africa with Pidgin, English of East Africa with Swahili, French, Portuguese, Spanish, Indonesian with Malay.
 * Forms seen in public pages or from memory of how such registers are kept; common practice, no source.
 */
const LINES = `
run| Batch number; Set no; Hatching no| Batch code; Kundi; Awamu| Ponte n°; N° de ponte; Bande| Nº da desova; Indução nº; Leva| Desove N°; Corrida; Inducción N°| Pemijahan ke; Siklus; Kode
date| Dates; Date; Day/date| Tarehe; Siku; Date| Date; Date de relevé; Le| Data; Data do registo; Dia| Fecha; Fecha de registro; Día| Tanggal; Hari/tgl; Tarikh
female| Mother; Female brood; Mama fish| Namba ya jike; Mama; Jike| N° femelle; Code femelle; Génitrice| Fêmea nº; Matriz nº; Marcação| Hembra N°; Código hembra; Marca| Kode induk betina; Betina no; Induk betina
kg| Mother fish kg; Brood stock wt; Female kilo| Uzito wa jike; Uzito wa mama; Weight of jike| Poids de la femelle; Poids ♀; Pds femelle| Peso da matriz; Peso da fêmea; PF| Peso de la hembra; Peso reproductora; Peso ♀| Bobot induk betina; Berat betina; BB induk
after| Weight after pressing; Kilo after strip| Uzito baada ya kukamua; Weight after| Poids après ponte; Pds après| Peso após desova; Peso depois da desova| Peso después del desove; Peso postdesove| Bobot setelah stripping; Berat sesudah
rate| How many ml for one kilo; Dose per kg| Dozi kwa kilo; Kipimo kwa kilo| Dose/kg; Posologie; Dose par kg| Dose/kg; Dosagem; Dose por kg| Dosis/kg; Dosificación; Dosis por kg| Dosis/kg; Takaran; Sukatan
dose| How many ml; Injection ml| Kiasi cha homoni; Ujazo wa sindano| Qté injectée; Volume injecté; V inj| Volume aplicado; Qtd hormônio; Volume injetado| Volumen inyectado; Cantidad inyectada| Volume suntik; Jumlah hormon; Isipadu suntikan
product| Injection used; Which injection| Aina ya homoni; Homoni| Type d'hormone; Inducteur| Tipo de hormônio; Indutor| Tipo de hormona; Inductor| Jenis hormon; Zat perangsang
in| Time of inducement; When injected; Inject time| Saa ya sindano; Muda wa sindano; Saa ya kudunga| Heure d'injection; H inj; Injectée à| Hora da aplicação; H. aplicação; Aplicado às| Hora iny.; Inyectado a las; Hora de inducción| Jam suntik; Pukul suntik; Masa suntikan
out| Time of pressing; Milked at; When you press egg| Saa ya kukamua; Muda wa kukamua| Heure stripping; Strippée à; H ponte| Hora da extrusão; Desovou às; H. desova| Hora desove; Desovado a las; Hora de ordeño| Jam stripping; Waktu pengurutan; Masa perahan
hours| Hours waited; Hours before stripping| Muda wa kusubiri; Masaa hadi kukamua| Temps de latence; Délai ponte; TL| Tempo de latência; Horas até a desova| Periodo de latencia; Horas al desove| Waktu laten; Lama laten; Masa pendam
temp| Water temp; Tempreture; How hot water be| Joto la maji; Joto; Nyuzijoto| T° eau; Température; T°C| Temp. água; T.; Temperatura da água| T° agua; Temperatura del agua| Suhu air; Suhu; Temperatur
grams| Weight of egg; How many gram egg; Egg gram| Uzito wa mayai; Gramu za mayai| Masse d'œufs; PO; Poids de la ponte| Massa de ovos; Peso dos óvulos; PD| Gramos de ovas; Peso del desove| Bobot telur; Berat telur; Gram telur
perGram| Eggs in one gram; Egg per g| Mayai kwa gramu; Mayai/g| Nb œufs/g; Ovocytes/g; Œufs dans 1 g| Nº ovos/g; Óvulos/g| Ovas/g; N° huevos/g| Butir/gram; Telur/gr; Biji/gram
eggs| Total egg; Egg qty; How many egg| Jumla ya mayai; Idadi ya mayai| Total œufs; Nbre œufs; Fécondité| Total de ovos; Fecundidade; Qtd ovos| Total huevos; Fecundidad; Ovas totales| Jumlah telur; Fekunditas; Butir telur
white| White eggs; Bad egg| Mayai meupe; Mayai mabovu| Œufs blancs; Œufs morts| Ovos brancos; Ovos mortos| Huevos blancos; Huevos muertos| Telur putih; Telur mati
fert| Fertility rate; How many percent egg take| Kiwango cha urutubishaji; Asilimia ya urutubishaji| Tx fécondation; TF; Taux de fertilité| Tx. fertilização; TF| Fertilidad; TF; Tasa de fertilización| Derajat pembuahan; FR; Daya buah
hatched| Number of hatch; Fries hatched; How many hatch| Walioanguliwa; Vifaranga walioanguliwa| Nb éclos; Larves vésiculées; Éclos| Eclodidos; Larvas nascidas| N° eclosionados; Larvas nacidas; Nacidos| Yang menetas; Jml tetas; Larva menetas
hatchp| Hatchability; Hatch percent| Asilimia ya kuanguliwa; Kiwango cha kuanguliwa| TE; Tx éclosion| TE; Tx. eclosão; Eclodibilidade| TE; Eclosionabilidad| Daya tetas; HR; Derajat tetas
fry| Number of fries; Pikin fish; Fry's| Vifaranga; Idadi ya vifaranga; Seed| Alevins nageants; Nb alevins; Alevins récoltés| Qtd alevinos; Alevino I; Pós-larvas| Alevines cosechados; Crías; N° alevines| Burayak; Jml benih; Benih
open| Stock on ground; Old stock; Balance brought forward| Idadi ya mwanzo; Salio la mwanzo| Existant; Report; Stock début| Saldo anterior; Estoque inicial| Existencia inicial; Saldo anterior| Stok awal; Sisa awal; Baki awal
ins| Brought in; Supply| Walioingia; Mapokezi| Entrées; Ajout| Entrada; Adicionado| Ingreso; Entradas| Masuk; Tambahan
outs| Given out; Moved out| Walioondolewa; Moved| Sorties; Transférés| Saída; Transferidos| Salidas; Trasladados| Keluar; Dipindahkan
dead| No of death; Dead fishes; Mortality recorded| Vifo; Waliokufa; Vifo vya siku| Pertes; Morts; Mort/jour| Baixas; Mortos; Mort.| Bajas; Decesos; N° muertos| Kematian harian; Jml mati; Mati
sold| Sold; Fries sold| Waliouzwa; Mauzo| Vendus; Ventes; Nb vendus| Vendidos; Vendas| Ventas; Vendidos| Terjual; Laku; Dijual
close| Balance on ground; Stock left; How many remain| Waliobaki; Salio la mwisho| À reporter; Stock restant; SF| A transportar; Saldo final| Existencia final; Saldo final| Sisa; Stok akhir; Baki akhir
receipt| Receipt no; Rcpt| Risiti; Risiti Na.| Reçu n°; Facture| Recibo nº; Fatura| Recibo N°; Factura| No. nota; Kwitansi
buyer| Off-taker; Who buy am; Buyer's name| Mteja; Jina la mnunuzi| Acquéreur; Vendu à; Client| Vendido a; Comprador| Vendido a; Comprador| Pengepul; Bakul; Nama pembeli
n| Pieces; Qty bought; Quantity supplied| Idadi iliyouzwa; Walionunuliwa| Qté vendue; Quantité vendue| Qtd vendida; Quantidade vendida| Cant. vendida; Und.| Ekor terjual; Jumlah terjual
price| How much one; Amount per piece; Per one| Bei moja; Bei ya kila mmoja; @| PU; Prix/alevin; P.U.| P. unit.; Valor unitário| P.U.; Precio unitario| Harga satuan; Harga/ekor; Hrg
amount| Total money; How much all| Kiasi cha pesa; Thamani; Fedha| Montant; Prix total; PT| Valor total; Montante| Importe; Monto| Total harga; Nilai
paid| Deposit paid; Part payment; Paid| Malipo; Amelipa; M-Pesa| Versé; Encaissé; Acompte| Valor pago; Sinal| Cancelado; Abono| Sudah bayar; Uang muka
due| Remain balance; Debt; Wetin remain to pay| Deni; Anadaiwa| RAP; Reste à payer; Dû| Em falta; Dívida| Por cobrar; Deuda| Kurang; Piutang; Sisa bayar
tank| Bowl; Tarpaulin; Vats| Tenki; Bwawa Na.; Chombo| N° bac; Bâche; Structure| Tanque nº; Caixa; TQ| Pileta; Estanque N°| Bak no; Wadah; Kolam terpal
fishN| No. of fishes; Total fish| Idadi ya samaki; Samaki waliopo| Effectif; Effectif présent| Nº de peixes; População| Población; N° de peces| Populasi; Jumlah ikan
mean| Av. size; Average wt; One fish weight| Wastani wa uzito; Uzito wa wastani| PM; Pds moy.; Poids moyen individuel| PM; P. médio| PP; Peso prom.| ABW; Bobot rerata
biomass| Total kilo; Tonnage| Uzito jumla; Biomasi| Charge; Biomasse| Biomassa; Bm| Biomasa; Bp| Biomassa; Berat keseluruhan
ration| Feeding percent; Percent body weight| Asilimia ya uzito; Kiwango cha kulisha| Taux de ration; TN| TA; % PV| TA; % PV| FR; Dosis pakan
feed| Quantity of feed given; Feed wey dem chop| Kiasi cha chakula; Chakula kilichotolewa| Aliment servi; RJ; Qté aliment| Trato; Ração fornecida| Alimento suministrado; Ración| Pakan diberikan; Jml pakan
meal1| Morning feed; 1st feed| Chakula asubuhi; Asubuhi| Repas matin; Aliment matin| Trato manhã; Ração manhã| Ración mañana; Alimento mañana| Pakan pagi; Pagi
meal2| Noon feed; 2nd feed| Chakula mchana; Mchana| Repas midi; Aliment midi| Trato meio-dia; Ração meio-dia| Ración mediodía; Alimento mediodía| Pakan siang; Siang
meal3| Evening feed; 3rd feed| Chakula jioni; Jioni| Repas soir; Aliment soir| Trato tarde; Ração tarde| Ración tarde; Alimento tarde| Pakan sore; Sore
feedAll| Feed for the day; Total feed| Jumla ya chakula; Chakula kwa siku| Total aliment; Total/j| Total do dia; Ração total| Total día; Alimento total| Total pakan; Pakan/hari
tlow| Temp AM; Morning temp| Joto asubuhi; Temp am| T° matin; T° mat.| Temp. manhã; T manhã| T° mañana; Temp. a.m.| Suhu pagi; Suhu pg
thigh| Temp PM; Evening temp| Joto jioni; Temp pm| T° soir; T° ap.-midi| Temp. tarde; T tarde| T° tarde; Temp. p.m.| Suhu sore; Suhu petang
oxygen| D.O; Oxygen level| Hewa kwenye maji; DO| O2 dissous; O.D.| OD; Oxigénio dissolvido| O.D.; Oxígeno disuelto| DO; Oksigen terlarut
ph1| pH before; Ph level; pH first| pH kabla; pH ya mwanzo| pH avant dose; pH mesuré| pH antes da dose; pH inicial| pH previo; pH antes| pH sebelum; Derajat keasaman
soda| Baking soda; How many gram soda| Magadi soda; Bicarbonate| Bicarbonate; Bicarbonate de soude| Bicarbonato; Bicarbonato de sódio| Bicarbonato; Bicarbonato de sodio| Soda kue; Bikarbonat
volume| Tank size; How many litre| Kiasi cha maji; Ujazo| Contenance; Volume utile| Capacidade; Volume de água| Capacidad; Volumen de agua| Volume air; Isi padu
ph2| pH after; pH now; After pH| pH baada; pH ya mwisho| pH atteint; pH après dose| pH atingido; pH após a dose| pH alcanzado; pH posterior| pH setelah; pH hasil
ammonia| Ammonia; NH3| Amonia kwenye maji; Amonia| Azote ammoniacal; NH4+| NAT; Amónia| Amonio total; NAT| Amoniak; TAN
sampN| Sample counted; Number of sample| Waliopimwa; Idadi ya sampuli| Nb pesés; Effectif échantillon| Nº amostrado; Nº de peixes pesados| Peces pesados; N° muestreados| Jml sampel; Bil. sampel
sampW| Sample weight; Weight of sample| Uzito wa sampuli; Sample wt| Pds éch.; Poids échantillon| Peso da amostra; Peso amostra| Peso muestra; Peso de la muestra| Bobot sampel; Berat contoh
length| Length of fish; Av. length| Urefu; Urefu wa wastani| Long. moy.; LT| CT; Comprimento médio| LT; Talla| Panjang rata-rata; Pjg
small| Small ones; Runts| Wadogo; Small| Petits; Queues de lot| Rabeira; Pequenos| Colas; Pequeños| Kecil; Pencongek
mid| Medium; Middle ones| Wa kati; Medium| Moyens; Calibre moyen| Médios; Padrão| Medianos; Mediano| Sedang; Sederhana
big| Shooters; Jumbo| Wakubwa; Shooters| Têtes de lot; Gros| Cabeceira; Grandes| Cabezas; Grandes| Bongsor; Besar
sorted| All sorted; Total sorted| Jumla waliochambuliwa; Total sorted| Total trié; Nb trié| Total triado; Total classificado| Total clasificado; Total seleccionado| Total sortir; Jumlah disortir
what| Purpose; Description| Maelezo; Details| Libellé; Désignation| Descrição; Histórico| Concepto; Detalle| Uraian; Perihal
inMoney| Money in; Cash in| Mapato; Money in| Recettes; Entrée caisse| Receitas; Crédito| Ingresos; Haber| Pemasukan; Debet
outMoney| Money out; Expenses| Matumizi; Money out| Dépenses; Sortie caisse| Despesas; Débito| Egresos; Gastos| Pengeluaran; Kredit
balance| Cash balance; Cash at hand| Salio; Balance| Solde; Solde caisse| Saldo; Saldo caixa| Saldo; Saldo caja| Saldo; Saldo kas
note| N/B; Any talk| Maoni; Mengineyo| Constat; Obs.| Ocorrências; Obs.| Novedades; Obs.| Ket.; Kondisi ikan
total| G. Total; Everything; Total| Jumla kuu; Jumla| Tot.; Total général; Cumul| Somatório; Total geral| Sumatoria; Total mes| JML; Total
carried| Balance b/f; B/F| B/F; Salio| Report; À nouveau| Transporte; Saldo anterior| Viene; Saldo anterior| Saldo lalu; Pindahan
unit| Unit; Measure| Kipimo; Unit| Unité; Unités| Unidade; Un.| Unidad; Und.| Satuan; Sat.
sheet| Register of pressing; Fish book 3| Daftari la samaki; Kitabu 2| Cahier d'écloserie; Registre n° 3| Caderno de registo; Livro 2| Cuaderno; Hoja de registro| Buku catatan; Lembar 4
Brood| Mama fish; Brooder| Mzazi; Samaki mzazi| Géniteur; Femelle| Matriz; Reprodutora| Reproductora; Hembra| Induk; Betina
Injection| Injection| Sindano| Injection| Indução| Inducción| Penyuntikan
Eggs| Egg| Mayai| Œufs| Ovos| Ovas| Telur
Result| Result| Matokeo| Résultat| Resultado| Resultado| Hasil
Water| Water| Maji| Eau| Água| Agua| Air
Money| Money| Pesa| Caisse| Dinheiro| Dinero| Uang
Fish| Fish| Samaki| Poissons| Peixes| Peces| Ikan
Feed| Feed| Chakula| Aliment| Ração| Alimento| Pakan
Sizes| Sorting| Kuchambua| Tri| Triagem| Clasificación| Sortir
deaths| No of death per bowl| Vifo kwa tenki| Pertes par bac| Baixas por tanque| Bajas por pileta| Kematian tiap bak
`;

export const TONGUES = ['ng', 'ea', 'fr', 'pt', 'es', 'id'] as const;
export type RegisterTongue = (typeof TONGUES)[number];

const said = new Map(
  LINES.trim()
    .split('\n')
    .map((line) => {
      const [key = '', ...tongues] = line.split('|').map((part) => part.trim());
      return [key, tongues.map((forms) => forms.split(';').map((form) => form.trim()))] as const;
    }),
);
export const registerForms = (key: string, tongue: RegisterTongue): readonly string[] =>
  said.get(key)?.[TONGUES.indexOf(tongue)] ?? [key];
