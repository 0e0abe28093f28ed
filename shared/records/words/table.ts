// Long: the words of record books, one line a concept and language
/**
 * Words people write over columns, beside lines of forms and in cells, by concept and language. To teach the
 * check a word, add it to the line of its concept and language: small letters, no accents, forms parted by
 * semicolons. A ~ in front marks a short form that counts only as the whole heading. Collected from public
 * pages, locale data and knowledge of the languages.
 */
export const WORD_TABLE = `
date en: date; ~dt; day; day/date; date recorded; date of entry; record date; sampling date; d.o.e; dd/mm/yy; date (dd/mm/yyyy); dates; todays date; date/time; dated; ~dt.; date & day
date pcm: which day; di day
date fr: ~dte; jour; ~j; date du jour; date d'enregistrement; le; date de releve; date de saisie
date pt: data; dia; data do registo; data do registro; data da coleta; data de entrada
date es: fecha; ~fec.; ~f.; fecha de registro; fecha muestreo; fecha del dato
date id: tanggal; ~tgl; ~tgl.; hari; hari/tanggal; hari/tgl; tanggal pengamatan; waktu
date ms: tarikh; ~tkh; hari/tarikh
date sw: tarehe; ~tar.; siku; tarehe ya kumbukumbu; siku ya leo
date ha: kwanan wata; rana; rana da kwanan wata; ranar
date yo: ojo; deeti; ojo osu
date ig: ubochi; ubochi onwa
date bn: tarik; din; taarikh; dinkhan
date hi: dinank; dinaank; tareekh
date vi: ngay; ngay thang; ngay ghi; ~ng.; ~n/t
date th: wan thi; wanthi; wan; w/d/p
date ar: التاريخ; تاريخ; اليوم; تاريخ التسجيل
time en: time; ~hr; ~hrs; hour; clock time; time of day; time (24h); hour of reading; ~tm; am/pm
time pcm: wetin be time; which time
time fr: heure; ~h; ~hre; heure de releve; heure (h); moment
time pt: hora; horario; hora da leitura
time es: ~hr.; hora de lectura
time id: jam; pukul; ~pkl; waktu; jam pengamatan; ~wib
time ms: masa
time sw: saa; muda; wakati; saa za kusoma
time ha: lokaci; awa; karfe; sa'a
time yo: akoko; aago
time ig: oge; elekere
time bn: somoy; shomoy; ghonta; kota baje
time hi: samay; samaya; baje; ghanta
time vi: gio; thoi gian; luc; thoi diem
time th: wela; mong
time ar: الوقت; الساعه; وقت
day_number en: day; day no; ~doc; ~dah; ~dph; ~daf; ~dpf; age (days); age; day of culture; days; nursing day; culture day; days of rearing; age in days
day_number fr: jour; ~j; age (j); jours d'elevage; ~jpe; nb de jours; n° jour; age des larves
day_number pt: dia; dias de cultivo; ~ddc; idade (dias); ~dae; ~dpe; dia do ciclo
day_number es: numero de dias del cultivo; edad (dias); dias de siembra
day_number id: hari ke; umur; umur (hari); hari pemeliharaan; lama pemeliharaan; ~h+
day_number sw: umri; umri (siku); siku ya; siku
day_number ha: shekaru; kwanaki
day_number bn: boyosh; din; koto din
day_number hi: umar; aayu
day_number vi: ngay nuoi; ngay tuoi; ngay thu; tuoi ca; so ngay nuoi
day_number th: ayu; ayu (wan)
day_number ar: العمر; العمر باليوم; يوم التربيه
week en: week; ~wk; week no; wk no; week ending; ~w/e
week fr: semaine; ~sem.; ~s; n° semaine; sem
week pt: semana; semana nº
week es: n° semana
week id: minggu; minggu ke; pekan
week sw: wiki; juma; wiki ya
week ha: mako; sati
week vi: tuan; tuan thu
week ar: الاسبوع; اسبوع
person en: operator; staff; name; recorded by; done by; by; sign; signature; initials; attendant; technician; worker; officer in charge; ~oic; hatchery manager; checked by; fed by; injected by; stripped by; name of staff; oga; hatchery man; hatchery boy; person in charge; apprentice; supervisor; incharge; in-charge; operator name; sign.
person pcm: who do am; who feed; pesin name; who write am
person fr: qui; operateur; responsable; nom; technicien; visa; agent; fait par; realise par; ouvrier; pisciculteur; prepose; resp.
person pt: operador; responsavel; nome; tecnico; funcionario; assinatura; feito por; visto; tratador; piscicultor
person es: operario; nombre; encargado; firma; realizado por; trabajador
person id: petugas; nama; pelaksana; paraf; ~ttd; teknisi; penanggung jawab; ~pj; karyawan
person ms: pekerja; tandatangan; disediakan oleh; penyelia
person sw: jina; mfanyakazi; mtaalamu; saini; mhusika; aliyelisha; msimamizi
person ha: suna; ma'aikaci; mai kula; sa hannu
person yo: oruko; osise; eni to se e
person ig: aha; onye oru; onye mere ya
person bn: naam; nam; kormi; dayitto; shakkhor
person hi: karmchari; hastakshar; karigar
person vi: nguoi ghi; nguoi thuc hien; ten; ky ten; nhan vien; ky thuat; ~ktv
person th: chue; phu banthuek; phu du lae
person ar: الاسم; المسوول; الفني; التوقيع; القايم بالعمل; العامل
run en: run; run no; run number; run id; batch; batch no; batch number; spawn no; spawning no; spawn id; cycle; cycle no; lot; lot no; set; code; trial; ~s/n; ~sn; ~no.; ~ref; ref no; cross no; hatch no; production no; hatching no; round; set no; stock no; ~s/no; batch code; cohort; cohort no; breeding no; trip; operation no; sl no; sl. no.; sr no; spawn; spawn number; group; egg mass no
run pcm: which batch
run fr: n° lot; n° de lot; lot n°; ponte n°; n° ponte; n° de ponte; serie; bande; ~n°; ~ref.; operation n°; campagne; essai; numero de reproduction
run pt: lote; lote nº; nº do lote; desova nº; nº da desova; ciclo; codigo; ~cod.; ~nº; reproducao nº; rodada; leva; inducao nº
run es: n° lote; lote n°; desove n°; corrida; induccion n°; postura n°; siembra n°
run id: ~no; siklus; pemijahan ke; periode; kode; nomor pemijahan; angkatan; ulangan; pijah ke
run ms: ~bil; kelompok; kitaran; pusingan; kod
run sw: namba; ~na.; awamu; kundi; mzunguko; kodi; mkupuo
run ha: lamba; zagaye; kashi
run yo: nomba; ipele
run ig: ogbe; usoro
run bn: krom; kromik no; number; khep
run hi: kram; kramank; kr. s.
run vi: dot; dot de; lo; me; so lo; ~stt; ma so; dot san xuat; vu
run th: rung; chut; krang thi; lamdap
run ar: رقم الدفعه; الدفعه; رقم التفريخه; الدوره; ~م; رقم; اللوط
species en: species; ~sp.; ~spp; fish type; type of fish; strain; variety; breed; stock; kind of fish; clarias; hetero; heteroclarias; catfish; african catfish; tilapia; dutch clarias; hybrid; highbreed; mudfish; specie
species fr: espece; souche; poisson; type de poisson; silure; poisson-chat; variete
species pt: especie; linhagem; peixe; bagre; peixe-gato; variedade; cacusso
species es: linea; pez; pez gato; variedad
species id: jenis ikan; spesies; ikan; lele; lele dumbo; sangkuriang
species ms: ikan keli; keli; keli afrika
species sw: aina; aina ya samaki; kambale; kambare; perege; sato
species ha: nau'in kifi; tarwada; kifi
species yo: iru eja; eja; aro
species ig: udi azu; azu; arira
species bn: projati; mach; magur; shing; jat
species hi: prajati; machli; mangur; nasl; kism
species vi: loai; loai ca; giong ca; ca tre; doi tuong nuoi
species th: chanit pla; phan pla; pla duk
species ar: النوع; الصنف; نوع السمك; قرموط; السلاله
tank en: tank; tank no; tank id; vat; vat no; trough; hapa; pond; pond no; pond id; unit; basin; bowl; incubator; incubator no; jar; raceway; cage; hatching tank; nursery tank; holding; facility; ~tk; tk no; location; container; tarpaulin; tarp pond; concrete pond; plastic tank; collapsible; vats; earthen pond; hatch pond; kakaban; cacabam; gp tank; liner pond; happa; circular tank; cistern; hatching pool; spawning pool; bottle; nursery pond; rearing pond; cement tank; pit; tub; aquaria; basket
tank pcm: which tank; which pond; pond number
tank fr: bac; n° bac; bac n°; etang; n° etang; bassin; cuve; aquarium; auge; incubateur; carafe; enceinte; structure; infrastructure; bac hors sol; bache
tank pt: tanque; viveiro; tanque nº; caixa; caixa d'agua; incubadora; calha; aquario; ~tq; acude; bandeja; gaiola; tina; tanque-rede; piscina
tank es: estanque; estanque n°; pila; pileta; jaula; acuario; canaleta; artesa; poza; geomembrana; ~est.
tank id: kolam; bak; kolam no; bak no; akuarium; wadah; petak; tambak; kolam terpal; kolam tanah; waring; keramba; fiber; bak penetasan
tank ms: tangki; no kolam; no tangki; sangkar; kolam simen; kanvas
tank sw: bwawa; tanki; tenki; namba ya bwawa; kizimba; kontena; chombo; bwawa na.
tank ha: tafki; kandami; ramin kifi; kwano
tank yo: adagun; odo eja; ikun omi
tank ig: odo azu; ebe azu
tank bn: pukur; house; hauz; chowbachcha; gher
tank hi: talab; talaab; pokhar; kund
tank vi: ao; be; so ao; so be; giai; long; veo; be ap; binh weis; thung; be composite
tank th: bo; bo din; bo siment; krachang; thang; tu pla
tank ar: الحوض; حوض; رقم الحوض; هابه; هابات; خزان; تانك; بركه; حضانه; احواض
substrate en: kakaban; egg mat; spawning mat; substrate; net; egg net; hatching mat; mosquito net; mop; egg collector; kakabam; cacabam; kakaba; sack
substrate fr: support de ponte; frayere; toile moustiquaire; collecteur d'oeufs; claie
substrate pt: substrato; tela; coletor de ovos
substrate es: sustrato; malla; nido
substrate id: ijuk; substrat; saringan
substrate vi: gia the; gia de; to de
substrate ar: ركيزه; مرقد البيض
female_id en: female; female no; female tag; female id; ~f; f no; ~♀; tag; tag no; ~pit; pit no; dam; mother; mother fish; brood female; hen; female code; ~fem.; female brood; female broodstock; woman; brood no; f. no
female_id pcm: mama fish; female fish; woman fish
female_id fr: femelle; n° femelle; femelle n°; marque; code femelle; geniteur femelle; genitrice; puce
female_id pt: femea; femea nº; matriz; matriz nº; chip; marcacao; reprodutora; microchip
female_id es: hembra; hembra n°; ~h; marca; reproductora; codigo hembra; madre
female_id id: induk betina; betina; kode induk betina; betina no; indukan betina
female_id ms: no induk betina; ibu
female_id sw: jike; samaki jike; majike; mzazi jike; mama; namba ya jike
female_id ha: mace; macen kifi; uwar kifi; mace ta kifi
female_id yo: abo; abo eja; iya eja
female_id ig: nwanyi azu; nne azu
female_id bn: ma mach; stri mach; mayi mach; mohila; brood stri
female_id hi: mada; maada; mada machli; maa machli
female_id vi: ca cai; ca me; ma ca cai; con cai; ca bo me cai
female_id th: mae pla; mae phan; tua mia; pla tua mia
female_id ar: انثي; الانثي; رقم الانثي; اناث; ام
male_id en: male; male no; male tag; male id; ~m; m no; ~♂; sire; father; brood male; male code; milt from; male brood; male broodstock; m. no
male_id pcm: papa fish; man fish; male fish
male_id fr: n° male; male n°; code male; geniteur male
male_id pt: macho; macho nº; reprodutor; reprodutor nº
male_id es: macho n°; reproductor; codigo macho; padre
male_id id: induk jantan; jantan; kode induk jantan; pejantan; indukan jantan
male_id ms: no induk jantan
male_id sw: dume; samaki dume; madume; mzazi dume
male_id ha: namiji; namijin kifi; uban kifi
male_id yo: ako; ako eja; baba eja
male_id ig: nwoke azu; oke azu
male_id bn: purush mach; baba mach; moddo; brood purush
male_id hi: nar; nar machli
male_id vi: ca duc; ca bo; ma ca duc; con duc
male_id th: pho pla; pho phan; tua phu
male_id ar: ذكر; الذكر; رقم الذكر; ذكور
n_females en: no of females; no. females; number of females; # females; females used; females injected; females stripped; females; fem. inj.; f used; qty female; no. f; broodstock females; females ovulated; females spawned; non-responders; female nos; no. of female brood; female pcs
n_females pcm: how many mama fish
n_females fr: nb femelles; nombre de femelles; nbre femelles; ~nb f; femelles injectees; femelles pondeuses; femelles utilisees; effectif femelles
n_females pt: nº de femeas; numero de femeas; qtd femeas; femeas induzidas; femeas injetadas; femeas desovadas; ~nº f
n_females es: n° hembras; numero de hembras; nro. hembras; cant. hembras; hembras inyectadas; hembras desovadas; hembras inducidas
n_females id: jumlah betina; jumlah induk betina; jml betina; ekor betina; betina (ekor)
n_females ms: bilangan betina; bil. betina; bilangan induk betina
n_females sw: idadi ya majike; majike; idadi ya jike
n_females ha: adadin mata; yawan mata
n_females bn: stri macher songkha; koto ta ma mach; ma mach songkha
n_females hi: mada ki sankhya; mada sankhya; kitni mada
n_females vi: so ca cai; so luong ca cai; sl ca cai; so con cai; so ca de
n_females ar: عدد الاناث; عدد الامهات
n_males en: no of males; no. males; number of males; # males; males used; males killed; males sacrificed; males; m used; qty male; no. m; male nos; no. of male brood; male pcs
n_males fr: nb males; nombre de males; nbre males; ~nb m; males sacrifies; males utilises
n_males pt: nº de machos; numero de machos; qtd machos; machos usados; ~nº m
n_males es: n° machos; nro. machos; cant. machos; machos sacrificados
n_males id: jumlah jantan; jumlah induk jantan; jml jantan; ekor jantan; jantan (ekor)
n_males ms: bilangan jantan; bil. jantan
n_males sw: idadi ya madume; madume
n_males ha: adadin maza; yawan maza
n_males bn: purush macher songkha
n_males hi: nar ki sankhya; nar sankhya
n_males vi: so ca duc; so luong ca duc; sl ca duc; so con duc
n_males ar: عدد الذكور
sex_ratio en: sex ratio; ratio; ~m:f; ~f:m; ratio (f:m); male to female
sex_ratio fr: sex-ratio; sexe ratio; rapport m/f; ratio f/m
sex_ratio pt: proporcao macho:femea; razao sexual; relacao f:m
sex_ratio es: proporcion sexual; relacion hembra:macho; proporcion m:h
sex_ratio id: rasio kelamin; perbandingan jantan betina; nisbah kelamin
sex_ratio vi: ty le duc cai; ty le duc : cai
sex_ratio ar: نسبه الذكور الي الاناث; النسبه الجنسيه
body_weight en: weight; ~wt; ~wt.; body weight; ~bw; body wt; live weight; weight (g); weight (kg); ~w; ~wgt; ~wght; mass; total weight; weigth; kilo; size; wieght; weight (lb); lbs; pounds
body_weight pcm: how e heavy
body_weight fr: poids; poids vif; ~pds; ~pd; p (g); poids (kg); masse; poids corporel; poids total; poids individuel
body_weight pt: peso; peso vivo; peso (kg); massa; peso corporal; peso total
body_weight es: masa; peso humedo
body_weight id: bobot; berat; berat badan; bobot tubuh; bobot (g); berat (gr); ~bb
body_weight ms: berat (g); ~brt
body_weight sw: uzito; uzito (kg); uzani; uzito wa samaki
body_weight ha: nauyi; nauyin kifi
body_weight yo: iwon; iwuwo
body_weight ig: ibu; aro
body_weight bn: ojon; ozon; wojon; deher ojon
body_weight hi: vajan; wajan; wazan; bhar; tol
body_weight vi: trong luong; khoi luong; ~kl; ~tl; can nang; nang
body_weight th: nam nak; namnak; nam nak pla
body_weight ar: الوزن; وزن; الوزن الحي; وزن الجسم
female_weight en: female weight; weight of female; wt of female; female wt; ~f wt; ~fw; female bw; broodstock weight; brood weight; brood wt; bw (kg); dam weight; body weight of female; mother weight; weight before stripping; wt before; weight of brood; broodfish weight; ~♀ wt; kg female; weight of mother; mother fish kg; female kilo; brood stock wt; brood wt (kg); female brood weight; body wt of female
female_weight pcm: mama fish kilo; how heavy mama fish be
female_weight fr: poids femelle; poids de la femelle; poids f; pds femelle; ~pf; poids geniteur; poids des geniteurs; poids ♀; poids avant ponte; poids de la genitrice
female_weight pt: peso da femea; peso femea; peso f; peso da matriz; peso ♀; peso dos reprodutores; peso antes da desova
female_weight es: peso hembra; peso de la hembra; peso h; peso reproductora; peso de reproductores; peso de la madre
female_weight id: bobot induk betina; berat induk betina; bobot induk; berat induk; jumlah berat induk; berat betina; bobot betina (kg); bb induk
female_weight sw: uzito wa jike; uzito wa mzazi; uzito wa samaki jike; uzito wa mama
female_weight ha: nauyin mace; nauyin uwa; kilon mace
female_weight yo: iwon abo; iwon iya eja
female_weight ig: ibu nne azu
female_weight bn: ma macher ojon; brood er ojon; stri macher ojon
female_weight hi: mada ka vajan; brood ka vajan; maada vajan
female_weight vi: trong luong ca cai; khoi luong ca cai; kl ca cai; tl ca me; can nang ca me; trong luong ca bo me
female_weight th: nam nak mae pla; namnak mae phan
female_weight ar: وزن الانثي; وزن الام; وزن الامهات
male_weight en: male weight; weight of male; male wt; ~m wt; male bw; ~♂ wt; sire weight
male_weight fr: poids male; poids du male; pds male; poids m; poids ♂
male_weight pt: peso do macho; peso macho; peso m; peso ♂
male_weight es: peso del macho
male_weight id: bobot induk jantan; berat induk jantan; berat jantan
male_weight sw: uzito wa dume
male_weight ha: nauyin namiji
male_weight bn: purush macher ojon
male_weight hi: nar ka vajan
male_weight vi: trong luong ca duc; khoi luong ca duc; kl ca duc
male_weight ar: وزن الذكر
length en: length; ~len; ~l; l (cm); total length; ~tl; standard length; ~sl; fork length; ~fl; size (cm); size (inch); size; inches; size in inches; length of fish; length in mm; inch size
length pcm: how e long
length fr: longueur; long.; taille; ~lt; ~ls; longueur totale; longueur standard; lt (cm); long. moy.
length pt: comprimento; comp.; ~ct; ~cp; comprimento total; comprimento medio; tamanho
length es: longitud; talla; longitud total; tamano
length id: panjang; panjang total; panjang rata-rata; ~pjg; ~pt; ukuran
length ms: saiz; panjang (cm)
length sw: urefu; ukubwa; urefu (sm)
length ha: tsawo; tsayi; girma
length yo: gigun; titobi
length ig: ogologo; nha
length bn: doirgho; lomba
length hi: lambai; aakar
length vi: chieu dai; dai; kich co; co; chieu dai tong
length th: khwam yao; khanat
length ar: الطول; طول; الطول الكلي; الحجم
hormone_name en: hormone; hormone used; hormone type; inducing agent; agent; injection; drug; type of hormone; pituitary; ~pg; pg extract; ~cpe; ~hcg; gnrha; lhrha; lhrh-a; ~dom; analogue; inducing hormone; synthetic hormone; pituary; injection used; fish hormone; head extract; hormone (pg/hcg); inducer; injection name
hormone_name pcm: which injection; wetin you inject
hormone_name fr: type d'hormone; produit; inducteur; injection hormonale; hypophyse; extrait hypophysaire; extrait de glande pituitaire; ~ehc; induction hormonale; homoplastique
hormone_name pt: hormonio; hormona; indutor; hipofise; extrato de hipofise; ~epc; ~ebhc; produto; tipo de hormonio
hormone_name es: inductor; hipofisis; pituitaria; producto hormonal; extracto de hipofisis; tipo de hormona
hormone_name id: hormon; jenis hormon; hipofisa; kelenjar hipofisa; zat perangsang; hormon perangsang; suntikan
hormone_name ms: kelenjar pituitari; bahan aruhan
hormone_name sw: homoni; aina ya homoni; sindano; tezi; pituitari
hormone_name ha: allura; maganin allura
hormone_name yo: abere; oogun abere
hormone_name ig: ogwu ogwugwu
hormone_name hi: peeyush granthi; sui
hormone_name vi: kich duc to; ~kdt; kich thich to; loai thuoc; loai kich duc to; nao thuy
hormone_name th: homon; ya chit; tom tai samong
hormone_name ar: الهرمون; نوع الهرمون; الغده النخاميه; هرمون; الحقنه
hormone_dose_per_kg en: dose; dose/kg; dose per kg; dosage; dosage (ml/kg); ml/kg; rate; rate per kg; mg/kg; iu/kg; hormone dose; dose rate; dose (ml/kg); dose (mg/kg); pg dose; dose/kg body wt
hormone_dose_per_kg pcm: how many ml for one kilo
hormone_dose_per_kg fr: dose par kg; posologie; ui/kg
hormone_dose_per_kg pt: dosagem; dose por kg
hormone_dose_per_kg es: dosis; dosis/kg; dosis por kg; dosificacion; dosis (ml/kg)
hormone_dose_per_kg id: takaran; dosis hormon; cc/kg
hormone_dose_per_kg ms: dos; dos/kg; sukatan
hormone_dose_per_kg sw: dozi; dozi kwa kilo; kipimo; kipimo kwa kilo
hormone_dose_per_kg ha: kashi; adadin magani; yawan magani a kilo
hormone_dose_per_kg bn: matra; proti kg te
hormone_dose_per_kg hi: khurak; prati kilo
hormone_dose_per_kg vi: lieu; lieu luong; lieu/kg; lieu dung
hormone_dose_per_kg th: attra; pariman to kilo
hormone_dose_per_kg ar: الجرعه; جرعه; الجرعه لكل كجم; معدل الجرعه
hormone_volume en: volume injected; vol injected; hormone (ml); hormone vol; hormone ml; ml given; ml injected; volume (ml); ~vol.; cc; injected (ml); total ml; injection ml; amount injected; hormone given; qty of hormone; ml; how many ml; injection (ml); mil; mils
hormone_volume fr: volume injecte; vol. injecte; quantite injectee; qte injectee; ml injectes; qte hormone (ml); dose injectee; dose totale (ml); v inj
hormone_volume pt: volume aplicado; volume injetado; ml aplicados; quantidade aplicada; qtd hormonio; dose aplicada
hormone_volume es: volumen inyectado; vol. inyectado; cantidad inyectada; dosis total; volumen (ml); dosis aplicada
hormone_volume id: volume suntik; jumlah hormon; hormon (ml); ml hormon; volume hormon; dosis (ml)
hormone_volume ms: isipadu suntikan
hormone_volume sw: kiasi cha homoni; ujazo wa sindano; homoni (ml); mililita
hormone_volume ha: yawan allura; ml na allura
hormone_volume bn: koto ml; injection poriman
hormone_volume hi: kitna ml; injection ki matra
hormone_volume vi: luong tiem; the tich tiem; so ml; ml tiem
hormone_volume th: pariman chit; si-si
hormone_volume ar: حجم الحقنه; كميه الهرمون; مل; سم
hormone_concentration en: concentration; conc.; strength; mg/ml; iu/ml; µg/ml; iu per vial; dilution; solvent; diluted in; saline used; mg per ml; bottle strength
hormone_concentration fr: titre; solvant; ui/ml; serum physiologique
hormone_concentration pt: concentracao; diluicao; diluente; soro fisiologico
hormone_concentration es: concentracion; dilucion; diluyente; solucion salina; suero fisiologico
hormone_concentration id: konsentrasi; pengenceran; pelarut; nacl fisiologis; larutan fisiologis
hormone_concentration ms: kepekatan; pencairan; air garam
hormone_concentration sw: nguvu ya dawa; mchanganyiko; kimiminika
hormone_concentration vi: nong do; pha loang; nuoc muoi sinh ly; dung moi
hormone_concentration ar: التركيز; تركيز; التخفيف; محلول ملحي
injection_time en: injection time; time of injection; inj time; inj. time; injected at; time injected; date injected; injection date; time inj.; induced at; injection; inducement time; inducing time; date/time of injection; ~inj.; hormone time; dose time; hypophysation time; time of inducement; injection hour; inject time; induce time; when injected; time of inj.; time of dose; injection date & time; pushing time
injection_time pcm: time wey we inject; when you inject am
injection_time fr: heure d'injection; h inj; heure inj.; date d'injection; injection a; heure de l'injection; injectee a; hre injection; date et heure d'injection; moment de l'injection
injection_time pt: hora da injecao; hora da aplicacao; horario de aplicacao; h. aplicacao; data da injecao; hora da inducao; aplicado as; hora da injeccao
injection_time es: hora de inyeccion; h. iny.; hora iny.; hora de aplicacion; hora de induccion; fecha de inyeccion; inyeccion; inyectado a las; hora de la inyeccion
injection_time id: jam suntik; waktu suntik; waktu penyuntikan; jam penyuntikan; penyuntikan; pukul suntik; jam injeksi; tanggal suntik
injection_time ms: masa suntikan; waktu suntikan; masa suntik; tarikh suntikan; masa aruhan
injection_time sw: muda wa sindano; saa ya sindano; saa ya kudunga; muda wa kuchoma sindano
injection_time ha: lokacin allura; lokacin yin allura
injection_time yo: akoko abere
injection_time ig: oge ogwugwu
injection_time bn: injection er somoy; injection deyar somoy; koyta injection
injection_time hi: injection ka samay; sui lagane ka samay; injection samay
injection_time vi: gio tiem; thoi gian tiem; thoi diem tiem; ngay tiem; tiem luc; g. tiem
injection_time th: wela chit; chit wela; wela chit hormon
injection_time ar: وقت الحقن; ساعه الحقن; تاريخ الحقن; موعد الحقن
injection_time_1 en: first dose; 1st dose; 1st inj; first injection; first injection time; time of 1st dose; priming dose; prep dose; initial dose; preparatory dose; dose 1; inj 1; 1st injection time; priming; 1st dose time; first dose time; 1st pg
injection_time_1 fr: 1ere injection; 1re injection; 1ere dose; premiere injection; dose preparatoire; dose d'appel; heure 1ere injection; inj. 1; ~i1
injection_time_1 pt: 1ª dose; 1ª aplicacao; primeira dose; dose preparatoria; dose previa; hora 1ª dose
injection_time_1 es: 1ª dosis; 1a dosis; primera dosis; primera inyeccion; dosis preparatoria; hora 1ª dosis; dosis 1; dosis inicial
injection_time_1 id: suntikan 1; suntikan pertama; penyuntikan i; penyuntikan pertama; suntik ke-1
injection_time_1 ms: dos pertama
injection_time_1 sw: dozi ya kwanza; sindano ya kwanza
injection_time_1 ha: allura ta farko
injection_time_1 bn: prothom dose; prothom injection; 1st injection
injection_time_1 hi: pehli dose; pahla injection; pehla injection; pratham khurak
injection_time_1 vi: lieu so bo; lieu dan; tiem lan 1; lieu 1; mui 1; so bo
injection_time_1 th: khem raek; chit khrang thi nueng; khem 1
injection_time_1 ar: الحقنه الاولي; الجرعه الاولي; الجرعه التمهيديه
injection_time_2 en: second dose; 2nd dose; 2nd inj; second injection; second injection time; time of 2nd dose; resolving dose; decisive dose; final dose; dose 2; inj 2; 2nd injection time; resolving; 2nd dose time; second dose time; final injection; 2nd pg
injection_time_2 fr: 2eme injection; 2e injection; 2eme dose; deuxieme injection; dose decisive; dose declenchante; heure 2eme injection; inj. 2; ~i2
injection_time_2 pt: 2ª dose; 2ª aplicacao; segunda dose; dose decisiva; dose definitiva; ultima aplicacao; hora 2ª dose
injection_time_2 es: 2ª dosis; 2a dosis; segunda dosis; segunda inyeccion; dosis decisiva; dosis definitiva; dosis desencadenante; hora 2ª dosis; dosis 2
injection_time_2 id: suntikan 2; suntikan kedua; penyuntikan ii; penyuntikan kedua; suntik ke-2
injection_time_2 ms: dos kedua
injection_time_2 sw: dozi ya pili; sindano ya pili
injection_time_2 ha: allura ta biyu
injection_time_2 bn: ditiyo dose; ditio injection; 2nd injection
injection_time_2 hi: doosri dose; dusra injection; doosra injection; dwitiya khurak
injection_time_2 vi: lieu quyet dinh; tiem lan 2; lieu 2; mui 2; quyet dinh
injection_time_2 th: khem song; chit khrang thi song; khem 2
injection_time_2 ar: الحقنه الثانيه; الجرعه الثانيه; الجرعه الحاسمه
strip_time en: stripping time; time of stripping; strip time; stripped at; time stripped; strip.; stripping; ovulation time; ovulation; ovulated at; spawning time; spawn time; spawned at; time of spawning; egg collection time; time of egg release; date stripped; stripping date; strip hr; milking time; milked at; pressing time; time of pressing; breeding time; egg release time; time of ovulation; spawning observed; ovulation period; spawn collected; time collected; date collected
strip_time pcm: time wey we press am; when you press egg; press time
strip_time fr: heure extraction; heure d'extraction; extraction; heure de l'extraction; heure extrusion; heure de ponte; ponte; heure stripping; strippage; heure d'extrusion; extrusion; heure d'expression; pression abdominale; heure d'ovulation; h ponte; massage abdominal; date de ponte; recolte des ovules; recolte des œufs; strippee a
strip_time pt: hora da desova; desova; hora da extrusao; extrusao; h. desova; ovulacao; hora da ovulacao; coleta dos ovulos; desovou as; hora da ordenha; data da desova
strip_time es: hora de desove; desove; hora desove; h. desove; ovulacion; hora de ovulacion; hora de extrusion; estrujado; hora de ordeno; desovado a las; fecha de desove; expulsion
strip_time id: jam stripping; waktu stripping; pengurutan; waktu pengurutan; ovulasi; waktu ovulasi; waktu memijah; jam memijah; pemijahan; jam keluar telur; pengeluaran telur
strip_time ms: masa perahan; perahan telur; masa bertelur; masa mengurut; masa memerah telur
strip_time sw: muda wa kukamua; kukamua mayai; saa ya kukamua; muda wa kutaga; saa ya kutaga
strip_time ha: lokacin matsa; lokacin matse kwai; lokacin fitar da kwai
strip_time yo: akoko tite eyin
strip_time bn: dim ber korar somoy; stripping somoy; dim deyar somoy; chap prodan; dim chharar somoy
strip_time hi: stripping ka samay; anda nikalne ka samay; anda dene ka samay
strip_time vi: gio vuot; thoi diem vuot trung; gio de; thoi gian de; vuot trung; gio rung trung; rung trung; ca de luc; de luc; gio ca de
strip_time th: wela rit khai; rit khai; wela wang khai
strip_time ar: وقت التبويض; وقت السريان; استخراج البيض; عصر البيض; وقت وضع البيض; وقت التجريد
latency en: latency; latency period; latency time; response time; hours to strip; hours to ovulation; interval; time interval; hrs after injection; hours after injection; ~hpi; h.p.i.; ripening time; lat. (h); effective time; time to ovulation; ovulation period; waiting time; hours before stripping; how many hours; latent period; hours waited; interval (hrs); latency period (h)
latency pcm: how many hours before e ready; hours wey we wait
latency fr: temps de latence; latence; duree de latence; delai; tps de latence; ~tl; delai ponte; intervalle; temps de reponse; duree de maturation; delai injection-ponte
latency pt: latencia; tempo de latencia; periodo de latencia; horas ate a desova; intervalo; tempo de resposta
latency es: tiempo de latencia; horas al desove; tiempo de respuesta
latency id: waktu laten; waktu laten (jam); masa laten; lama laten; lama ovulasi; waktu tunggu
latency ms: masa pendam; masa menunggu; tempoh laten; tempoh ovulasi
latency sw: muda wa kusubiri; masaa hadi kukamua; muda wa kungoja
latency ha: lokacin jira; awanni kafin matsa
latency bn: koto ghonta por; opekkha somoy
latency hi: kitne ghante baad; pratiksha samay; antaral
latency vi: thoi gian hieu ung; ~tghu; hieu ung; thoi gian hieu ung thuoc; thoi gian cho
latency th: raya wela; raya wela tok khai
latency ar: فتره الكمون; زمن الاستجابه; عدد الساعات بعد الحقن
egg_weight en: egg weight; weight of eggs; wt of eggs; egg wt; eggs (g); weight of eggs stripped; stripped egg weight; stripped weight; egg mass; egg mass weight; stripped (g); roe; roe weight; ova weight; eggs stripped (g); total egg weight; ~ew; egg yield (g); egg output; gram of eggs; wt. of stripped eggs; eggs in grams; grams of egg; weight of egg; egg gram; egg kilo; egg wt (g); egg weight (kg); egg quantity; egg yield; spawn weight; egg mass wt; spawn wt (lb)
egg_weight pcm: how many gram egg
egg_weight fr: poids des œufs; poids des oeufs; poids œufs; poids d'œufs; ~po; pds œufs; poids des ovules; poids ovocytes; poids de la ponte; masse d'œufs; œufs (g); ponte (g); poids d'ovules recoltes; masse des ovocytes; qte œufs (g)
egg_weight pt: peso dos ovos; peso de ovos; peso dos ovulos; peso da desova; peso de desova; massa de ovos; ovos (g); peso dos ovocitos; ~pd; peso ovos; massa de ovulos
egg_weight es: peso de huevos; peso huevos; peso de ovulos; peso de ovocitos; peso de ovas; peso del desove; gramos de ovas; huevos (g); masa de huevos; ovas (g); g-ovocitos/hembra; peso de la postura
egg_weight id: berat telur; bobot telur; telur (g); berat telur total; jumlah telur (gr); bobot telur keluar; gram telur
egg_weight ms: jumlah berat telur
egg_weight sw: uzito wa mayai; mayai (g); gramu za mayai
egg_weight ha: nauyin kwai; kwai (g); gram na kwai
egg_weight yo: iwon eyin
egg_weight ig: ibu akwa; aro akwa
egg_weight bn: dimer ojon; dim (g); dimer wojon; dimer poriman
egg_weight hi: ande ka vajan; anda vajan; ande (g); ando ka vajan
egg_weight vi: khoi luong trung; trong luong trung; luong trung; kl trung; trung (g); so gam trung
egg_weight th: nam nak khai; namnak khai; khai (kram)
egg_weight ar: وزن البيض; كميه البيض; البيض بالجرام
eggs_per_gram en: eggs in one gram; eggs in 1 g; eggs in 1 gram; eggs in 1g; one gram has; eggs per gram; eggs/g; eggs/gram; no./g; egg count per gram; eggs per g; egg no per g; ~epg; count/g; number per gram; eggs in 1 g; sample count; 1 g count; eggs/0.1 g; eggs/gm; nos/gm; no. of eggs per gm; eggs per ounce
eggs_per_gram fr: oeufs dans un gramme; oeufs dans 1 g; nombre dans 1 g; œufs par gramme; œufs/g; nb œufs/g; nombre d'œufs par gramme; ovocytes/g; ovules/g; ~nb/g; œufs dans 1 g
eggs_per_gram pt: ovos em um grama; ovos em 1 g; ovos por grama; ovos/g; nº ovos/g; ovulos/g; numero de ovos por grama; ovocitos/g
eggs_per_gram es: huevos en un gramo; huevos en 1 g; huevos por gramo; huevos/g; n° huevos/g; ovas/g; huevos/gr
eggs_per_gram id: telur dalam 1 gram; telur dalam satu gram; telur per gram; butir/gram; butir/g; jumlah telur per gram; telur/gr
eggs_per_gram ms: biji/gram; telur/g; biji/g
eggs_per_gram sw: mayai kwa gramu; mayai/g; idadi ya mayai kwa gramu
eggs_per_gram ha: kwai a gram; yawan kwai a gram daya
eggs_per_gram bn: proti gram e dim; dim/gram
eggs_per_gram hi: ande prati gram; ande/gram
eggs_per_gram vi: so trung/g; trung/g; so trung tren gam; trung/gam; so trung/gr
eggs_per_gram th: khai to kram; fong to kram
eggs_per_gram ar: عدد البيض في الجرام; بيضه/جرام; بيض/جم
egg_number en: number of eggs; no of eggs; eggs; egg number; total eggs; fecundity; egg count; eggs stripped; eggs produced; total no. of eggs; eggs laid; est. eggs; eggs (no.); estimated eggs; absolute fecundity; no. eggs incubated; eggs set; eggs stocked; eggs incubated; # eggs; total egg; number of egg; egg qty; eggs (pcs); egg nos; no. of eggs (lakh); eggs released; egg production; eggs per spawn; eggs/spawn
egg_number pcm: how many egg
egg_number fr: nombre d'œufs; nombre d'oeufs; nb œufs; nbre œufs; œufs; total œufs; fecondite; nb ovules; nombre d'ovules; œufs pondus; œufs incubes; nombre d'ovocytes; œufs mis en incubation
egg_number pt: numero de ovos; nº de ovos; ovos; total de ovos; fecundidade; quantidade de ovos; qtd ovos; ovos incubados; nº de ovulos; fecundidade absoluta
egg_number es: numero de huevos; n° de huevos; nro. huevos; huevos; total huevos; fecundidad; cant. huevos; ovas; ovas totales; huevos incubados; huevos por hembra; ovulos
egg_number id: jumlah telur; jml telur; telur; total telur; fekunditas; butir telur; telur (butir); telur ditetaskan; jumlah telur (butir)
egg_number ms: bilangan telur; bil. telur; telur (biji)
egg_number sw: idadi ya mayai; mayai; jumla ya mayai; namba ya mayai
egg_number ha: yawan kwai; adadin kwai; kwai
egg_number yo: iye eyin; eyin; apapo eyin
egg_number ig: onuogu akwa; akwa
egg_number bn: dimer songkha; dim; mot dim; koto dim
egg_number hi: ando ki sankhya; ande; anda; kul ande; andon ki sankhya
egg_number vi: so luong trung; so trung; tong so trung; sl trung; suc sinh san; suc sinh san tuyet doi; luong trung de; trung thu duoc
egg_number th: chamnuan khai; khai; fong khai
egg_number ar: عدد البيض; البيض; اجمالي البيض; الخصوبه المطلقه; عدد البويضات
relative_fecundity en: relative fecundity; eggs per kg; eggs/kg female; eggs/kg; ~gsi; egg yield %; egg % of body weight; pseudo-gsi; egg recovery; ovulation index; eggs per pound of female
relative_fecundity fr: fecondite relative; œufs/kg; ~rgs; ~igs; rendement de ponte; % ponte; nombre d'œufs par kg
relative_fecundity pt: fecundidade relativa; ovos/kg; indice de desova
relative_fecundity es: fecundidad relativa; huevos/kg; numero de huevos/kg de peso; indice de ovulacion
relative_fecundity id: fekunditas relatif; telur/kg induk
relative_fecundity vi: suc sinh san tuong doi; trung/kg ca cai; he so thanh thuc
relative_fecundity ar: الخصوبه النسبيه; بيضه/كجم
milt_volume en: milt; milt volume; sperm; sperm volume; milt (ml); semen; testis weight; testes wt; milt quantity; sperm motility; motility; milt used; milt sac; sperm sac; testis; male sac
milt_volume fr: laitance; volume de laitance; sperme; volume de sperme; testicules; poids testicules; motilite; laitance (ml)
milt_volume pt: volume de semen; esperma; motilidade; testiculos
milt_volume es: volumen de semen; motilidad; leche
milt_volume id: sperma; volume sperma; kantung sperma; motilitas
milt_volume ms: mani; air mani
milt_volume sw: shahawa; manii; mbegu za kiume
milt_volume ha: maniyyi
milt_volume vi: tinh dich; se; luong tinh; tinh trung; buong se; tinh sao
milt_volume th: nam chuea
milt_volume ar: السايل المنوي; كميه السايل المنوي; الخصيه
fertilisation_time en: fertilisation time; fertilization time; fert. time; fertilised at; time of fertilisation; mixed at; time mixed; incubation start; start of incubation; eggs spread at; eggs laid at; date fertilised; time of incubation; time eggs spread; spreading time; time of mixing
fertilisation_time fr: heure de fecondation; h fecondation; fecondation; fecondation et incubation; insemination; mise en incubation; debut incubation; heure d'incubation
fertilisation_time pt: hora da fertilizacao; fertilizacao; hora da fecundacao; inicio da incubacao; inseminacao
fertilisation_time es: hora de fertilizacion; fertilizacion; hora de fecundacion; inicio de incubacion; siembra de huevos
fertilisation_time id: waktu pembuahan; jam pembuahan; pembuahan; fertilisasi; mulai inkubasi; tebar telur; jam tebar telur
fertilisation_time ms: masa persenyawaan; persenyawaan; mula pengeraman
fertilisation_time sw: muda wa kurutubisha; saa ya kurutubisha; urutubishaji
fertilisation_time ha: lokacin hada kwai
fertilisation_time bn: nishikto korar somoy
fertilisation_time hi: nishechan samay; nishechan ka samay
fertilisation_time vi: gio thu tinh; thoi diem thu tinh; thu tinh; gieo tinh; bat dau ap
fertilisation_time ar: وقت الاخصاب; وقت التلقيح; الاخصاب; بدايه التحضين
fertilised_count en: fertilised; fertilized; fertilised eggs; fertilized eggs; no fertilised; number of fertilised eggs; viable eggs; live eggs; good eggs; eyed eggs; fert. eggs; fertile eggs; transparent eggs; clear eggs; good egg; eggs fertilized; green eggs; brown eggs
fertilised_count pcm: egg wey take
fertilised_count fr: œufs fecondes; nb fecondes; nombre d'œufs fecondes; œufs viables; œufs embryonnes; œufs vivants; bons œufs
fertilised_count pt: ovos fertilizados; ovos fecundados; nº ovos fertilizados; ovos viaveis; ovos vivos
fertilised_count es: huevos fertilizados; huevos fecundados; n° fertilizados; huevos viables; ovas fecundadas; huevos vivos
fertilised_count id: telur dibuahi; telur terbuahi; telur yang terbuahi; jumlah telur terbuahi; telur fertil; telur hidup
fertilised_count ms: telur disenyawakan; telur tersenyawa; bil. telur tersenyawa
fertilised_count sw: mayai yaliyorutubishwa; mayai yaliyorutubika; mayai mazuri
fertilised_count ha: kwai mai kyau; kwan da suka hadu
fertilised_count bn: nishikto dim; bhalo dim; fertile dim
fertilised_count hi: nishechit ande; achhe ande
fertilised_count vi: trung thu tinh; so trung thu tinh; sl trung thu tinh; trung tot
fertilised_count th: khai pasom tit; khai di
fertilised_count ar: البيض المخصب; عدد البيض المخصب; البويضات المخصبه
fertilised_share en: fertilisation rate; fertilization rate; fert %; % fert; fertilisation (%); ~fr; fert rate; % fertilised; fertility; fertility %; fertilisation percentage; ~f%; fert.; fertility rate; fertilized %; fertilization (%); fert. rate (%); fr (%)
fertilised_share pcm: how many percent egg take
fertilised_share fr: taux de fecondation; tx fecondation; ~tf; % fecondation; % fecondes; fecondation (%); taux de fertilite; taux de fertilisation
fertilised_share pt: taxa de fertilizacao; % fertilizacao; tx. fertilizacao; fertilizacao (%); taxa de fecundacao; % fecundacao
fertilised_share es: tasa de fertilizacion; porcentaje de fertilizacion; % fertilizacion; % fecundacion; fertilidad; % fert.; fertilizacion (%)
fertilised_share id: derajat pembuahan; ~dp; tingkat pembuahan; persentase pembuahan; daya buah; % pembuahan; derajat pembuahan telur; ~dpt
fertilised_share ms: kadar persenyawaan; % persenyawaan; peratus persenyawaan
fertilised_share sw: asilimia ya urutubishaji; kiwango cha urutubishaji; % urutubishaji
fertilised_share ha: kason kwai masu kyau
fertilised_share bn: nishikto har; nishikter har; fertilization har; nishekon har
fertilised_share hi: nishechan dar; nishechan pratishat; fertilization dar
fertilised_share vi: ty le thu tinh; ti le thu tinh; ~tltt; tl thu tinh; ty le trung thu tinh; % thu tinh
fertilised_share th: attra pasom tit; attra kan patisonthi; % pasom
fertilised_share ar: نسبه الاخصاب; معدل الاخصاب; نسبه الخصوبه; % الاخصاب
hatch_time en: hatch time; hatching time; time of hatching; hatched at; hatch date; date hatched; date of hatch; first hatch; start of hatching; last hatch; end of hatching; hatch start; 50% hatch; hatch.; hatching; hatching hour; time of hatch; date of hatching; hatching starts; hatching completed
hatch_time pcm: when e hatch
hatch_time fr: heure d'eclosion; eclosion; h eclosion; date d'eclosion; debut eclosion; fin eclosion; 1ere eclosion; eclos le; eclosion a
hatch_time pt: hora da eclosao; eclosao; data da eclosao; inicio da eclosao; fim da eclosao; eclodiu as; h. eclosao
hatch_time es: hora de eclosion; fecha de eclosion; inicio de eclosion; fin de eclosion; nacimiento; hora de nacimiento; avivamiento
hatch_time id: waktu menetas; jam menetas; waktu penetasan; penetasan; menetas; tanggal menetas; tgl tetas; awal menetas; akhir menetas; lama penetasan
hatch_time ms: masa menetas; tarikh menetas; masa penetasan
hatch_time sw: muda wa kutotoa; kuanguliwa; saa ya kuanguliwa; tarehe ya kuanguliwa; kutotolewa; muda wa kuanguliwa
hatch_time ha: lokacin kyankyasa; kyankyasa; kyankyashe; ranar kyankyasa
hatch_time yo: akoko pipa; ojo ti o pa
hatch_time ig: oge iwaputa; ubochi o wara
hatch_time bn: dim fotar somoy; fotar somoy; dim fota
hatch_time hi: ande phootne ka samay; hatching ka samay; anda footne ka samay; sfutan samay
hatch_time vi: gio no; thoi gian no; ngay no; no luc; bat dau no; ca no; no het luc
hatch_time th: wela fak; wan fak; fak pen tua
hatch_time ar: وقت الفقس; الفقس; تاريخ الفقس; بدايه الفقس; نهايه الفقس
incubation_hours en: incubation time; incubation period; hatching period; incubation (h); hours to hatch; incubation hours; incub.; duration of incubation; time to hatch; inc. time
incubation_hours fr: duree d'incubation; incubation; temps d'incubation; delai d'eclosion; duree incub.
incubation_hours pt: tempo de incubacao; incubacao; periodo de incubacao; duracao da incubacao
incubation_hours es: tiempo de incubacion; incubacion; horas de incubacion; duracion de incubacion; periodo de incubacion
incubation_hours id: lama inkubasi; waktu inkubasi; lama penetasan; inkubasi; masa inkubasi
incubation_hours ms: tempoh pengeraman; masa pengeraman; tempoh penetasan
incubation_hours sw: muda wa kuatamia; masaa ya kuanguliwa
incubation_hours bn: dim fotar ghonta; incubation somoy
incubation_hours hi: incubation samay; ushmayan kaal
incubation_hours vi: thoi gian ap; thoi gian no; ap (gio)
incubation_hours ar: مده التحضين; فتره التحضين; فتره الحضانه
degree_hours en: degree-hours; degree hours; ~dh; °c·h; hour-degrees; degree days; ~atu; ~ctu; thermal units; ~dd
degree_hours fr: degres-heures; degres-jours; ~°h; ~°j; ~d°h
degree_hours pt: horas-grau; horas-graus; hora-grau; ~h.g.; ~uta; graus-dia; ~hg
degree_hours es: horas-grado; grados-hora; grados-dia; grados hora; unidades termicas
degree_hours id: derajat jam; jam derajat
degree_hours vi: do-gio; do ngay; tong nhiet
degree_hours ar: درجه ساعه; درجات اليوم
hatched_count en: hatched; number hatched; no hatched; hatchlings; hatched larvae; no. of hatchlings; eggs hatched; total hatched; total hatch; larvae hatched; hatch count; hatch; hatched fry; fries hatched; number of hatch; hatches; spawn; spawn produced; hatchling nos; spawn yield; spawn (lakh); hatchlings produced; renu produced; sac fry; fry hatched; fry from spawn
hatched_count pcm: how many hatch; how many pikin fish come out
hatched_count fr: larves ecloses; nb eclos; nombre de larves ecloses; œufs eclos; eclos; nb larves ecloses; nombre d'eclos; larves vesiculees
hatched_count pt: larvas eclodidas; nº eclodidos; ovos eclodidos; numero de larvas eclodidas; eclodidos; larvas nascidas
hatched_count es: larvas eclosionadas; n° eclosionados; huevos eclosionados; larvas nacidas; nacidos; eclosionadas; numero de larvas eclosionadas
hatched_count id: jumlah menetas; telur menetas; jumlah telur menetas; larva menetas; jml tetas; yang menetas
hatched_count ms: bilangan menetas; bil. menetas; rega menetas
hatched_count sw: idadi ya walioanguliwa; walioanguliwa; mayai yaliyoanguliwa; vifaranga walioanguliwa; yaliyototolewa
hatched_count ha: yawan wadanda suka kyankyashe; kyankyasassu
hatched_count bn: koto futlo; foto dim; renu songkha; dim fotche; futano renu
hatched_count hi: kitne phoote; spawn ki sankhya; phoote ande; nikle spawn
hatched_count vi: so ca no; so trung no; trung no; sl no; so au trung no; ca bot no
hatched_count th: chamnuan fak; khai thi fak; luk pla fak
hatched_count ar: عدد الفاقس; البيض الفاقس; عدد اليرقات الفاقسه; الفاقس
hatched_share en: hatch rate; hatching rate; hatch %; % hatch; hatchability; hatching success; ~hr; hatching (%); hatch percentage; ~h%; percentage hatch; % hatched; hatching percentage; hatch success; hatchability %; hatching percent; hatching rate (%); hr (%); hatching %
hatched_share pcm: hatch percent; how many percent hatch
hatched_share fr: taux d'eclosion; tx eclosion; ~te; % eclosion; % eclos; eclosion (%)
hatched_share pt: taxa de eclosao; % eclosao; tx. eclosao; eclosao (%); percentual de eclosao; eclodibilidade
hatched_share es: tasa de eclosion; porcentaje de eclosion; % eclos.; eclosionabilidad; % nacimiento
hatched_share id: derajat penetasan; ~dt; daya tetas; derajat tetas; tingkat penetasan; persentase penetasan; % penetasan; derajat penetasan telur
hatched_share ms: kadar penetasan; peratus penetasan; kadar menetas
hatched_share sw: asilimia ya kuanguliwa; kiwango cha kuanguliwa; % kuanguliwa; kiwango cha kutotolewa
hatched_share ha: kason kyankyasa; kashi na kyankyasa
hatched_share bn: dim fotar har; fotar har; hatching har; shotokora fota
hatched_share hi: hatching dar; sfutan dar; ande phootne ki dar; hatching pratishat
hatched_share vi: ty le no; ti le no; ~tln; tl no; % no; ty le no (%)
hatched_share th: attra fak; attra kan fak; % fak
hatched_share ar: نسبه الفقس; معدل الفقس; % الفقس; كفاءه الفقس
white_eggs en: white eggs; dead eggs; bad eggs; opaque eggs; unfertilised eggs; unfertilized eggs; infertile eggs; spoilt eggs; fungus eggs; fungused eggs; eggs removed; unhatched eggs; unhatched; dead egg count; blanks; cloudy eggs; white egg; spoilt egg; bad egg; rotten eggs; eggs turned white; dead egg
white_eggs pcm: spoil egg; egg wey die
white_eggs fr: œufs blancs; œufs morts; œufs non fecondes; œufs opaques; œufs non eclos; œufs mycoses; œufs champignonnes; mauvais œufs; œufs gates; œufs avaries
white_eggs pt: ovos brancos; ovos mortos; ovos gorados; ovos nao fertilizados; ovos opacos; ovos fungados; ovos inviaveis; ovos estragados
white_eggs es: huevos blancos; huevos muertos; huevos infertiles; huevos opacos; huevos no fertilizados; ovas muertas; huevos con hongos; huevos malos; huevos inviables
white_eggs id: telur putih; telur mati; telur tidak terbuahi; telur busuk; telur berjamur; telur tidak menetas; telur rusak
white_eggs ms: telur tidak disenyawakan; telur rosak; telur berkulat
white_eggs sw: mayai meupe; mayai yaliyokufa; mayai mabovu; mayai yaliyoharibika; mayai viza
white_eggs ha: farin kwai; mataccen kwai; kwai da ya lalace; bararren kwai
white_eggs yo: eyin funfun; eyin to baje
white_eggs ig: akwa ocha; akwa rere ure
white_eggs bn: sada dim; mora dim; nosto dim; pocha dim
white_eggs hi: safed ande; mare ande; kharab ande; sade ande
white_eggs vi: trung trang; trung hu; trung ung; trung chet; trung hong; trung khong thu tinh; trung nam
white_eggs th: khai khao; khai sia; khai tai
white_eggs ar: البيض الابيض; البيض الميت; البيض الفاسد; البيض غير المخصب
deformed en: deformed; deformed larvae; deformity; malformed; abnormal larvae; abnormal; crooked; weak larvae; deformed %
deformed fr: larves deformees; malformations; malformees; difformes; larves anormales; anomalies
deformed pt: larvas deformadas; deformadas; deformidades; malformadas; larvas anormais
deformed es: larvas deformes; deformes; malformaciones; larvas anormales
deformed id: larva cacat; cacat; abnormalitas; larva abnormal; cacat (%)
deformed ms: tidak normal
deformed sw: wenye ulemavu; wenye kasoro
deformed vi: di hinh; ca di hinh; ty le di hinh; ~tldh
deformed ar: يرقات مشوهه; تشوهات
larvae_count en: larvae; number of larvae; no of larvae; larvae count; yolk-sac larvae; larval count; larvae stocked; hatchlings; wrigglers; larvae/l; larva; larvaes; new fries; baby fish; spawn; spawn nos; renu; spawn count; sac-fry; yolk-sac fry; sac fry
larvae_count pcm: small small fish; pikin fish
larvae_count fr: larves; nombre de larves; nb larves; nbre larves; larves vesiculees; effectif larvaire; larves vivantes; suivi larvaire; vesicules
larvae_count pt: larvas; nº de larvas; numero de larvas; quantidade de larvas; larvas vivas; qtd larvas; pos-larvas
larvae_count es: n° de larvas; cantidad de larvas; postlarvas; cant. larvas
larvae_count id: jumlah larva; jml larva; larva (ekor); padat tebar larva; burayak
larvae_count ms: bilangan larva; bil. larva; rega; anak ikan
larvae_count sw: lava; idadi ya lava; vifaranga wachanga; viluwiluwi
larvae_count ha: jariran kifi; 'yan jarirai
larvae_count yo: omo eja tuntun
larvae_count bn: renu songkha; dim pona
larvae_count hi: spawn sankhya; shishu machli
larvae_count vi: ca bot; so ca bot; sl ca bot; au trung; so luong ca bot
larvae_count th: luk pla wai on; tua on; luk pla fak mai
larvae_count ar: اليرقات; عدد اليرقات; يرقات
yolk_absorbed en: yolk absorbed; yolk-sac absorbed; yolk gone; end of yolk; swim-up; swim up; free swimming; yolk sac absorption; swim-up time; swim-up date; swim-up fry; swim-up stage
yolk_absorbed fr: resorption vitelline; vesicule resorbee; fin de resorption; resorption; nage libre; emergence
yolk_absorbed pt: absorcao do vitelo; saco vitelinico absorvido; natacao livre; nado livre; absorcao do saco vitelino
yolk_absorbed es: absorcion del saco vitelino; reabsorcion del vitelo; nado libre; saco vitelino; absorcion de vitelo
yolk_absorbed id: kuning telur habis; penyerapan kuning telur; berenang bebas; habis kuning telur
yolk_absorbed ms: serapan kuning telur
yolk_absorbed sw: kiini kimeisha; wanaogelea
yolk_absorbed vi: het noan hoang; tieu bien noan hoang; boi loi; tieu noan hoang
yolk_absorbed ar: امتصاص كيس المح; السباحه الحره
first_feeding en: first feeding; first feed; start of feeding; feeding start; first feeding date; first fed; start feeding; exogenous feeding; onset of feeding; feeding commenced; initial feeding; first food; when feeding start; feeding commence
first_feeding pcm: when we start to feed; first chop
first_feeding fr: premier nourrissage; 1er nourrissage; premiere alimentation; debut nourrissage; debut alimentation; premier aliment; demarrage; 1er repas; nourriture precoce
first_feeding pt: primeira alimentacao; inicio da alimentacao; 1ª alimentacao; inicio alimentacao; primeira refeicao
first_feeding es: primera alimentacion; inicio de alimentacion; 1ª alimentacion; primer alimento; comienzo de alimentacion
first_feeding id: pakan pertama; awal pakan; mulai pakan; pakan awal; pemberian pakan pertama
first_feeding ms: makanan pertama; mula beri makan; pemberian makanan awal
first_feeding sw: chakula cha kwanza; kuanza kulisha; mwanzo wa kulisha
first_feeding ha: fara ciyarwa; abincin farko
first_feeding bn: prothom khabar; prothom khabar deya
first_feeding hi: pehla aahar; pehla dana; pahla khana
first_feeding vi: cho an lan dau; bat dau cho an; ngay cho an dau; thuc an ban dau
first_feeding th: ahan mue raek; roem hai ahan
first_feeding ar: اول تغذيه; بدايه التغذيه; التغذيه الاولي
fry_count en: fry; fries; number of fry; no of fry; fry count; fry no; fry stocked; swim-up fry; fry produced; advanced fry; post-larvae; ~pl; fry harvested; fry (pcs); fry's; number of fries; fries count; fry (pieces); fishes; fish seed; seed; fry nos; dhani; early fry; fry (lakh)
fry_count pcm: small fish; pikin fish; how many fry
fry_count fr: alevins; nombre d'alevins; nb alevins; nbre alevins; alevins produits; alevins nageants; post-larves; alevins recoltes; jeunes alevins
fry_count pt: alevinos; pos-larvas; nº de alevinos; numero de alevinos; quantidade de alevinos; qtd alevinos; alevino i; alevinos produzidos
fry_count es: alevines; n° alevines; numero de alevines; cant. alevines; postlarvas; semilla; alevin; crias; alevines cosechados
fry_count id: benih; jumlah benih; jml benih; burayak; benih (ekor); larva; kebul; populasi benih
fry_count ms: bilangan benih; anak benih; anak ikan; rega; bil. benih
fry_count sw: vifaranga; idadi ya vifaranga; mbegu; mbegu za samaki; vifaranga wadogo; samaki wadogo
fry_count ha: 'ya'yan kifi; yawan 'ya'yan kifi; kananan kifi; 'ya'ya
fry_count yo: omo eja; iye omo eja
fry_count ig: umu azu; onuogu umu azu
fry_count bn: dhani pona; pona; ponar songkha; pona songkha; macher pona; chara
fry_count hi: jeera; zeera; beej; machli beej; beej sankhya; pauna
fry_count vi: ca huong; so ca huong; sl ca huong; ca bot len huong; ca con; so luong ca con
fry_count th: luk pla; chamnuan luk pla; luk pla tum
fry_count ar: الزريعه; زريعه; عدد الزريعه; زريعه اسماك
fingerling_count en: fingerlings; fingerling; fing.; number of fingerlings; no. of fingerlings; ~fl; ~fgl; fingerlings produced; fingerling no; post fingerlings; post-fingerling; fingerlings (pcs); fingerlins; post fingerling; fingerling (pcs); fingaling; jumbo fingerlings; chara pona; anguli; fingerlings (nos); yearling
fingerling_count pcm: how many fingerlings
fingerling_count fr: alevins pregrossis; alevins calibres; juveniles; alevins de 5 g; nb fingerlings
fingerling_count pt: alevinos grandes; alevinao; juvenis; alevino ii; dedinhos; nº alevinos ii
fingerling_count es: dedinos; alevines grandes; alevinos; jaramugos; dedino
fingerling_count id: benih ukuran 5-7 cm; gelondongan; sangkal; benih tebar; pendederan; putihan
fingerling_count ms: benih 2-3 inci; benih besar; anak benih
fingerling_count sw: vifaranga wakubwa; vifaranga; samaki vidole
fingerling_count ha: 'yan yatsu; kananan kifaye
fingerling_count bn: angulipona; anguli pona; chapa pona; boro pona
fingerling_count hi: angulika; anguleeka; finger; angulikaayein
fingerling_count vi: ca giong; so ca giong; sl ca giong; con giong
fingerling_count th: pla niu; pla ngoen; luk pla niu
fingerling_count ar: اصبعيات; عدد الاصبعيات
juvenile_count en: juveniles; juvenile; post juvenile; post-juveniles; ~juv.; number of juveniles; jumbo juveniles; melange; table size; grow-out; post juvi; juvi; jumbo; table size fish; juveniles (pcs); juvinile; stocker; stockers; food fish; yearlings
juvenile_count fr: nombre de juveniles; nb juveniles; poissons marchands; sub-adultes; grossissement
juvenile_count pt: juvenis; nº de juvenis; numero de juvenis; recria; engorda
juvenile_count es: n° juveniles; numero de juveniles; preengorde; engorde
juvenile_count id: ikan konsumsi; juvenil; pembesaran; ukuran konsumsi
juvenile_count ms: ikan saiz pasaran
juvenile_count sw: samaki wachanga; samaki wakubwa kidogo
juvenile_count vi: ca thit; ca lua; ca thuong pham
juvenile_count ar: احداث; يافعات; اسماك التسويق
stocked_number en: stocked; number stocked; no stocked; stocking number; stocking no; initial number; initial stock; start number; qty stocked; stock; no. of fish; number of fish; fish; fish no; population; ~pop.; stocking qty; total stocked; stocking; no of fish stocked; quantity stocked; fish stocked; no. of fishes; total fish; fishes stocked; nos stocked; stocking nos; seed stocked; release nos; stocking (lakh)
stocked_number pcm: how many you stock; how many fish enter
stocked_number fr: effectif; effectif initial; nombre mis en charge; nb mis en charge; nombre empoissonne; empoissonnement; nb poissons; nombre de poissons; ensemencement; mise en charge; effectif depart; nbre stocke; stock initial; peuplement
stocked_number pt: numero estocado; quantidade estocada; nº inicial; povoamento; nº de peixes; quantidade de peixes; estocados; peixes estocados; populacao; peixamento; quantidade inicial
stocked_number es: n° sembrados; total de peces sembrados; peces sembrados; sembrados; siembra; n° inicial; numero de peces; cantidad sembrada; poblacion; n° de peces; poblacion inicial
stocked_number id: jumlah tebar; tebar; padat tebar; jumlah awal; populasi; jumlah ikan; penebaran; ikan ditebar; tebar (ekor); populasi awal
stocked_number ms: bilangan dilepas; jumlah lepasan; bilangan ikan; stok awal; penstokan; jumlah benih dilepaskan; bil. ikan
stocked_number sw: idadi ya samaki; idadi iliyopandikizwa; waliopandikizwa; idadi ya mwanzo; idadi; samaki waliowekwa
stocked_number ha: yawan kifi; adadin kifi; kifin da aka zuba
stocked_number yo: iye eja; iye ti a ko si i
stocked_number ig: onuogu azu
stocked_number bn: mojud songkha; mojut; chara songkha; koto chara; mojud ghonotto; macher songkha
stocked_number hi: sanchay sankhya; daale gaye; kitni machli; beej sanchay; machli ki sankhya
stocked_number vi: so luong tha; sl tha; so ca tha; so con; so luong; ~sl; tha giong; so con tha; tong dan
stocked_number th: chamnuan ploi; chamnuan pla; ploi (tua)
stocked_number ar: العدد المستزرع; عدد الاسماك; العدد الابتدايي; الاعداد المخزنه; عدد السمك
stocking_date en: stocking date; date stocked; date of stocking; date in; start date; day of stocking; put in on; date of transfer
stocking_date fr: date de mise en charge; date d'empoissonnement; date de stockage; date debut
stocking_date pt: data de povoamento; data de estocagem; data de entrada; data de inicio; data do peixamento
stocking_date es: fecha de siembra; fecha siembra; fecha de inicio; f. siembra
stocking_date id: tanggal tebar; tgl tebar; tanggal penebaran; tanggal awal
stocking_date ms: tarikh lepas; tarikh penstokan; tarikh mula
stocking_date sw: tarehe ya kupandikiza; tarehe ya kuanza; tarehe ya kuweka
stocking_date bn: mojuder tarikh; pona charar tarikh
stocking_date hi: sanchay ki tarikh; beej dalne ki tarikh
stocking_date vi: ngay tha; ngay tha giong; ngay bat dau
stocking_date ar: تاريخ التخزين; تاريخ الانزال; تاريخ الاستزراع
end_date en: end date; harvest date; date harvested; date out; date of harvest; finish date; date emptied; sorting date; grading date; date graded
end_date fr: date de fin; date de recolte; date de peche; date de vidange; date de tri; date de sortie
end_date pt: data final; data da despesca; data de saida; data da colheita; data da classificacao
end_date es: fecha final; fecha de cosecha; fecha de pesca; fecha de salida; f. cosecha
end_date id: tanggal panen; tgl panen; tanggal akhir; tanggal sortir; tanggal grading
end_date ms: tarikh tuai; tarikh akhir; tarikh gred
end_date sw: tarehe ya kuvuna; tarehe ya mwisho
end_date bn: ahoroner tarikh; shesh tarikh
end_date vi: ngay thu hoach; ngay ket thuc; ngay xuat
end_date ar: تاريخ الحصاد; تاريخ الصيد; تاريخ النهايه
density en: density; stocking density; fish/m2; fish/m3; per m2; per litre; ~no/l; no./m²; stocking rate; pcs/m3; per decimal; nos/decimal; per shotangsho; per acre; per bigha
density fr: densite; densite d'elevage; ~dte; ind./m2; poissons/m²; larves/l; densite de mise en charge
density pt: densidade; densidade de estocagem; peixes/m2; densidade de povoamento; peixes/m³
density es: densidad; densidad de siembra; peces/m2; densidad de carga; peces/m³
density id: padat tebar; kepadatan; ekor/m2; ekor/m3; ekor/l; padat penebaran
density ms: kadar penstokan
density sw: msongamano; samaki kwa mita; idadi kwa mita mraba
density ha: cunkoso
density bn: ghonotto; mojud ghonotto; shotangshe; proti shotok
density hi: ghanatva; sanchay dar; prati acre
density vi: mat do; mat do tha; con/m2; mat do (con/l); ~md
density th: attra ploi; tua/tarang met; khwam nana naen
density ar: الكثافه; كثافه التخزين; معدل التخزين; سمكه/م3
alive_count en: alive; number alive; no alive; live; balance; remaining; fish left; number remaining; live count; survivors; current number; current stock; stock on hand; final number; number harvested; remaining stock; count; fish counted; total alive; remain; balance fish; total left; what is left; remaining fish; balance nos; live nos; present stock
alive_count pcm: how many remain; wetin remain
alive_count fr: vivants; nombre de vivants; survivants; effectif final; effectif restant; reste; nb vivants; restant; nb final; effectif present; solde
alive_count pt: vivos; nº vivos; sobreviventes; nº final; quantidade final; restantes; saldo de peixes; peixes vivos; estoque atual
alive_count es: n° vivos; sobrevivientes; n° final; peces vivos; saldo de peces; poblacion final; poblacion actual; existencia
alive_count id: hidup; jumlah hidup; ikan hidup; sisa; jumlah akhir; populasi akhir; sisa ikan; jumlah ikan hidup; sisa (ekor)
alive_count ms: bilangan hidup; baki ikan; baki; bil. hidup
alive_count sw: walio hai; idadi ya walio hai; waliobaki; idadi ya mwisho; wazima
alive_count ha: masu rai; wadanda suka rage; saura; sauran kifi
alive_count yo: eyi to wa laaye; iye to ku
alive_count ig: ndi di ndu; foduru
alive_count bn: jibito; becheche; obosishto; koto ache; jibito songkha
alive_count hi: zinda; jeevit; bache; shesh; bachi machli; kul jeevit
alive_count vi: so ca song; con lai; so con lai; ca song; so ca hien co; sl con; ton
alive_count th: rot; khong luea; luea; chamnuan rot
alive_count ar: الاحياء; عدد الاحياء; المتبقي; العدد النهايي; الباقي
survival en: survival; survival rate; ~sr; surv.; % survival; survival (%); ~s%; surv %; survivability; survivality; % alive; livability; survival %; survive rate; survival rate (%); ~sr %
survival pcm: how many survive; survive percent
survival fr: survie; taux de survie; ~ts; % survie; tx survie; survie (%); taux de survie larvaire
survival pt: sobrevivencia; taxa de sobrevivencia; % sobrevivencia; sobrev.; sobrevivencia (%); ~sob
survival es: supervivencia; tasa de sobrevivencia; ~sob.; s (%); supervivencia (%)
survival id: sintasan; kelangsungan hidup; tingkat kelangsungan hidup; ~kh; derajat kelangsungan hidup; sr (%); ~tkh; kehidupan
survival ms: kadar kemandirian; kadar hidup; kemandirian; % hidup; kadar kelangsungan hidup
survival sw: asilimia ya kuishi; kiwango cha kuishi; uhai; % ya walio hai
survival ha: kason masu rai; kashi na tsira
survival bn: bachar har; beche thakar har; bachar shotokora
survival hi: uttarjeevita; jeevita dar; bachne ki dar; survival dar
survival vi: ty le song; ti le song; ~tls; tl song; % song; ty le song (%)
survival th: attra rot; attra rot tai; % rot
survival ar: نسبه البقاء; معدل البقاء; نسبه الاعاشه; معدل الاعاشه; نسبه الحياه
mortality_daily en: mortality; mort.; morts; dead; deaths; no dead; number dead; dead fish; daily mortality; died; mortality today; # dead; dead today; losses; loss; casualty; ~m; dead (no.); removed dead; death; dead fishes; mortality recorded; motality; mortallity; no of death; mortality (nos); dead nos; expired; death nos
mortality_daily pcm: how many die; wey die
mortality_daily fr: mortalite; nb morts; nombre de morts; mortalites; poissons morts; mort/jour; pertes; cadavres; mortalite journaliere; mortalite/j
mortality_daily pt: mortalidade; mortos; nº mortos; numero de mortos; peixes mortos; baixas; mortalidade diaria; perdas
mortality_daily es: mortalidad; muertos; n° muertos; peces muertos; bajas; mortalidad diaria; perdidas; decesos
mortality_daily id: mati; mortalitas; kematian; jumlah mati; ikan mati; mati (ekor); jml mati; kematian harian
mortality_daily ms: bilangan mati; kadar kematian; bil. mati; mortaliti
mortality_daily sw: vifo; waliokufa; idadi ya waliokufa; vifo kwa siku; samaki waliokufa; vifo vya siku
mortality_daily ha: mutuwa; matattu; kifi da suka mutu; yawan mutuwa
mortality_daily yo: iku; eja to ku; iye to ku
mortality_daily ig: onwu; azu nwuru anwu; onuogu nwuru
mortality_daily bn: mora; mrittu; mara geche; mora mach; koto mara geche; mrito
mortality_daily hi: mare; mrit; mrityu; mari machli; maut; mrityu sankhya
mortality_daily vi: ca chet; so ca chet; chet; sl chet; hao hut; so con chet; ca hao
mortality_daily th: tai; chamnuan tai; pla tai
mortality_daily ar: النفوق; نافق; عدد النافق; الوفيات; النافق اليومي; الميت
mortality_cumulative en: cumulative mortality; cum. mort.; total mortality; total dead; cum mort; accumulated mortality; mortality to date; total deaths; running total dead; cumm. mort; total death; mortality so far
mortality_cumulative fr: mortalite cumulee; mort. cum.; cumul mortalite; total morts; morts cumules; mortalite totale; cumul
mortality_cumulative pt: mortalidade acumulada; mort. acum.; total de mortos; mortos acumulados; mortalidade total; acum.
mortality_cumulative es: mortalidad acumulada; total muertos; muertos acumulados; mortalidad total
mortality_cumulative id: mortalitas kumulatif; total mati; kumulatif mati; kematian kumulatif; ~kum.; akumulasi mati
mortality_cumulative ms: kematian terkumpul; jumlah kematian; jumlah mati; kumulatif
mortality_cumulative sw: jumla ya vifo; jumla ya waliokufa; vifo jumla
mortality_cumulative ha: jimillar mutuwa
mortality_cumulative bn: mot mrittu; mot mora; shorbomot mora
mortality_cumulative hi: kul mrityu; kul mare; kul maut
mortality_cumulative vi: tong so chet; chet cong don; hao hut cong don; luy ke chet; cong don
mortality_cumulative ar: النفوق التراكمي; اجمالي النافق; النفوق الكلي
mortality_rate en: mortality rate; mortality %; % mortality; mort %; death rate; % dead; ~mr; mortality (%)
mortality_rate fr: taux de mortalite; % mortalite; ~tm; mortalite (%); tx mortalite
mortality_rate pt: taxa de mortalidade; % mortalidade; mortalidade (%)
mortality_rate es: tasa de mortalidad; % mortalidad; mortalidad (%)
mortality_rate id: tingkat mortalitas; % mortalitas; mortalitas (%); tingkat kematian
mortality_rate ms: kadar kematian; % kematian; peratus kematian
mortality_rate sw: kiwango cha vifo; asilimia ya vifo
mortality_rate bn: mrittu har; morar har
mortality_rate hi: mrityu dar; mrityu pratishat
mortality_rate vi: ty le chet; ty le hao hut; % hao hut
mortality_rate ar: معدل النفوق; نسبه النفوق
mean_weight en: mean weight; average weight; avg wt; av. wt; ~abw; ~mbw; avg weight; mean wt; ~aw; av weight; weight per fish; average body weight; mean body weight; ~mw; avg. body wt; g/fish; individual weight; size (g); unit weight; ~avg; average size; av. size; average kg; average wt; averge weight; av. body wt; abw (g); avg. wt (gm); pcs/kg; count; line; pounds per thousand; lb/1000; fish per pound; no./lb
mean_weight pcm: one fish weight
mean_weight fr: poids moyen; ~pm; poids moy.; pds moy.; ~pmi; ~pmf; poids moyen individuel; ~pmoy; poids moyen (g)
mean_weight pt: peso medio; p. medio; peso medio (g); peso medio individual; media de peso
mean_weight es: peso promedio; ~pp; peso prom.; p. prom; peso promedio (g); gr/und
mean_weight id: bobot rata-rata; berat rata-rata; bobot rerata; rata-rata bobot; size; berat rata2
mean_weight ms: purata berat; berat purata; purata; berat purata (g)
mean_weight sw: uzito wa wastani; wastani wa uzito; uzito wastani; wastani
mean_weight ha: matsakaicin nauyi
mean_weight yo: iwon ipindogba
mean_weight ig: ibu nkezi
mean_weight bn: gor ojon; gore ojon; gorh ojon; average ojon
mean_weight hi: ausat vajan; ausat wajan; average vajan
mean_weight vi: trong luong binh quan; ~tlbq; khoi luong trung binh; ~kltb; trong luong tb; con/kg; co ca (con/kg); trong luong trung binh; g/con
mean_weight th: nam nak chalia; namnak chalia; tua/kilo
mean_weight ar: متوسط الوزن; الوزن المتوسط; متوسط وزن السمكه; وزن السمكه
initial_weight en: initial weight; start weight; starting weight; stocking weight; ~wi; ~w0; ~ibw; initial wt; weight at stocking; ~iw; initial mean weight; first weight
initial_weight fr: poids initial; ~pi; poids moyen initial; ~pmi; poids de depart; poids a la mise en charge; ~p0
initial_weight pt: peso inicial; peso medio inicial
initial_weight es: peso de siembra; peso promedio de siembra; peso promedio inicial
initial_weight id: bobot awal; berat awal; ~wo; bobot tebar; berat tebar
initial_weight ms: berat permulaan
initial_weight sw: uzito wa mwanzo; uzito wa kuanza
initial_weight bn: prarombhik ojon; shurur ojon
initial_weight hi: prarambhik vajan; shuruaati vajan
initial_weight vi: khoi luong ban dau; trong luong dau; ~w1; ~wd; co tha; trong luong tha
initial_weight ar: الوزن الابتدايي; الوزن الاولي; وزن البدايه
final_weight en: final weight; end weight; ~wf; ~wt; ~fbw; final wt; ~fw; harvest weight; weight at harvest; closing weight; last weight
final_weight fr: poids final; ~pf; poids moyen final; ~pmf; poids a la recolte
final_weight pt: peso final; peso medio final; peso na despesca
final_weight es: peso de cosecha; peso promedio final
final_weight id: bobot akhir; berat akhir; bobot panen; berat panen
final_weight ms: berat tuaian
final_weight sw: uzito wa mwisho; uzito wa kuvuna
final_weight bn: shesh ojon; antim ojon
final_weight hi: antim vajan; aakhri vajan
final_weight vi: khoi luong cuoi; trong luong cuoi; ~w2; trong luong thu hoach
final_weight ar: الوزن النهايي; وزن الحصاد
sample_count en: sample count; no in sample; sample no; ~n; number sampled; sample size; sampled; number weighed; no. counted; fish sampled; count in sample; sample number; eggs counted; eggs in sample; no. checked; eggs looked at; counted; sample counted; number of sample; sample nos; sample count (nos)
sample_count fr: nb echantillon; effectif echantillon; nombre echantillonne; taille echantillon; nb peses; nbre comptes; echantillon; ~ech.; peche de controle; nb controles
sample_count pt: nº amostrado; numero de peixes amostrados; amostra; nº da amostra; contagem; nº de peixes pesados; amostragem
sample_count es: n° muestra; numero de peces muestra; muestra; n° muestreados; conteo; muestreo; peces pesados
sample_count id: jumlah sampel; sampel; sampling; jumlah ikan sampel; jml sampel; cuplikan; contoh
sample_count ms: bilangan sampel; bil. sampel
sample_count sw: idadi ya sampuli; sampuli; sampuli (idadi); waliopimwa
sample_count ha: samfuri; yawan samfuri
sample_count bn: nomuna songkha; nomuna; sample songkha
sample_count hi: namuna sankhya; namuna; sample sankhya
sample_count vi: so mau; mau; so ca mau; so con can; so trung mau
sample_count ar: عدد العينه; العينه; حجم العينه
sample_weight en: sample weight; sample wt; weight of sample; weight sampled; total sample weight; sample (g); wt of sample; bulk weight; batch weight; bucket weight; gross weight; tare; net weight
sample_weight fr: poids echantillon; poids de l'echantillon; pds ech.; poids total echantillon; poids brut; poids net
sample_weight pt: peso da amostra; peso amostra; peso total da amostra; peso bruto; tara; peso liquido
sample_weight es: peso muestra; peso de la muestra; peso total de la muestra; peso neto
sample_weight id: berat sampel; bobot sampel; berat contoh; berat kotor; berat bersih
sample_weight ms: jumlah berat sampel; berat kasar
sample_weight sw: uzito wa sampuli; uzito jumla wa sampuli
sample_weight bn: nomunar ojon; sample ojon
sample_weight hi: namune ka vajan; sample vajan
sample_weight vi: khoi luong mau; trong luong mau; kl mau; bi
sample_weight ar: وزن العينه; الوزن القايم; الوزن الصافي
biomass en: biomass; total weight; total biomass; total wt; standing crop; standing stock; kg fish; total kg; biomass (kg); ~bm; total weight (kg); total kilo; tonnage
biomass fr: biomasse; poids total; pds total; biomasse totale; charge; biomasse (kg)
biomass pt: biomassa; peso total; biomassa total; biomassa (kg)
biomass es: biomasa; ~bp; biomasa total; biomasa inicial; biomasa (kg)
biomass id: berat total; total berat; bobot total
biomass ms: biojisim; jumlah berat; berat keseluruhan
biomass sw: uzito jumla; jumla ya uzito; biomasi
biomass ha: jimillar nauyi
biomass bn: mot ojon; mot wojon
biomass hi: kul vajan; kul bhar; jaiv bhar
biomass vi: sinh khoi; tong khoi luong; tong trong luong; tong kl; san luong
biomass ar: الكتله الحيه; الوزن الكلي; الكتله الحيويه
size_grade en: size; grade; size class; class; grading; sorting; sorted; small; medium; large; shooters; jumpers; runts; cull; culls; big ones; ~cv; cannibals; graded out; shooter; sort; jumbo; graded; grader bar; stockers
size_grade pcm: big big ones
size_grade fr: taille; calibre; tri; calibrage; calibrage des alevins; classe; petit; moyen; gros; cannibales; tetes de lot; queues de lot
size_grade pt: classificacao; tamanho; triagem; pequeno; medio; grande; cabeceira; rabeira; canibais; padrao
size_grade es: talla; clasificacion; seleccion; mediano; cabezas; colas; canibales; desdoble
size_grade id: ukuran; sortir; kecil; sedang; besar; bongsor; kanibal; ukuran (cm); pencongek
size_grade ms: saiz; gred; sederhana; penggredan; menggred
size_grade sw: ukubwa; daraja; wadogo; wa kati; wakubwa; kuchambua; walaji wenzao
size_grade ha: girma; kanana; matsakaita; manya
size_grade bn: chhoto; majhari; boro; bachai
size_grade hi: chhota; madhyam; bada; chhantai
size_grade vi: co; kich co; phan co; loc ca; nho; vua; lon; ca vuot dan; ca troi
size_grade th: khanat; khat khanat; lek; klang; yai
size_grade ar: الحجم; الفرز; التدريج; صغير; متوسط; كبير
feed_type en: feed; feed type; type of feed; feed name; kind of feed; diet; feed brand; feed used; starter; crumble; pellet; pellets; powder; mash; floating; sinking; protein %; ~cp; food; feeds; local feed; foreign feed; floating feed; which feed; imported feed; compounded feed; mustard oil cake; ~moc; rice bran; oil cake; egg yolk; nursery powder; ~gnoc
feed_type pcm: which chop; wetin dem chop
feed_type fr: aliment; type d'aliment; nature de l'aliment; provende; granule; poudre; farine; aliment compose; marque; extrude; aliment flottant; nourriture
feed_type pt: racao; tipo de racao; alimento; farelada; pelete; extrusada; marca; ~pb; farelo; po
feed_type es: tipo de alimento; balanceado; concentrado; pienso; polvo; % proteina; extruido
feed_type id: pakan; jenis pakan; pelet; pakan tepung; merk; merek; pakan apung; pakan buatan; pakan alami; pakan komersial
feed_type ms: makanan; jenis makanan; dedak; makanan ikan; serbuk; pelet terapung
feed_type sw: chakula; aina ya chakula; lishe; pumba; chakula cha samaki; unga; dagaa
feed_type ha: abinci; abincin kifi; nau'in abinci
feed_type yo: ounje; ounje eja; iru ounje
feed_type ig: nri; nri azu; udi nri
feed_type bn: khabar; khaddo; khabarer nam; khadyo; khoil; kura; bhushi
feed_type hi: aahar; dana; chara; khurak; bhojan; khali; khal
feed_type vi: thuc an; loai thuc an; ~ta; ten thuc an; cam; thuc an vien; thuc an cong nghiep; ~tacn; do dam
feed_type th: ahan; chanit ahan; ahan met; hua ahan
feed_type ar: العلف; نوع العلف; علف; الغذاء; العليقه
feed_size en: feed size; pellet size; size (mm); mm; particle size; pellet; crumble size; mesh; microns; granule size; feed mm; mm of feed; 2mm; which mm; feed number
feed_size fr: taille aliment; granulometrie; calibre; diametre; ~ø; taille des granules; taille de l'aliment
feed_size pt: granulometria; tamanho do pelete; diametro; tamanho da racao
feed_size es: tamano de pellet; tamano de alimento
feed_size id: ukuran pakan; ukuran pelet; nomor pakan; diameter
feed_size ms: saiz makanan; saiz pelet
feed_size sw: ukubwa wa chakula; saizi ya chakula
feed_size ha: girman abinci
feed_size bn: khabarer size; danar size
feed_size hi: dane ka size; dana size
feed_size vi: co thuc an; kich co vien; co vien; so hieu thuc an
feed_size ar: حجم العلف; مقاس العلف; حجم الحبيبه; مم
feed_amount en: feed given; feed (g); feed (kg); qty fed; amount fed; quantity of feed; feed fed; feed qty; feed/day; daily feed; feed consumed; feed intake; feed used; kg/day; total feed; feed weight; fed; feed today; ration; morning feed; evening feed; am feed; pm feed; feeding; kg fed; kg of feed; bags of feed; feed bag; quantity of feed given; feed cup; bag used; feed (kg/day)
feed_amount pcm: how many feed you give; feed wey dem chop
feed_amount fr: quantite d'aliment; qte aliment; ~qte; aliment distribue; ration journaliere; aliment (g); aliment (kg); kg/j; quantite distribuee; aliment consomme; ~rj; q aliment; aliment servi; quantite servie
feed_amount pt: quantidade de racao; qtd racao; ~qtde; racao fornecida; quantidade fornecida (kg); racao (kg); kg/dia; consumo; arracoamento; consumo de racao; racao consumida; trato
feed_amount es: cantidad de alimento; alimento suministrado; alimento (kg); racion; racion diaria de alimento; cant. alimento; alimento diario; alimento consumido
feed_amount id: jumlah pakan; pakan (g); pakan (kg); jml pakan; pakan harian; pakan diberikan; kg/hari; total pakan; pagi; siang; sore; pakan/hari
feed_amount ms: kuantiti makanan; jumlah makanan; makanan (g); makanan diberi; petang
feed_amount sw: kiasi cha chakula; chakula (kg); chakula kwa siku; chakula kilichotolewa; kilo za chakula; chakula walichopewa
feed_amount ha: yawan abinci; adadin abinci; kilon abinci
feed_amount yo: iye ounje; iwon ounje
feed_amount ig: nri enyere; kilo nri
feed_amount bn: khabarer poriman; koto khabar; khabar (kg); doinik khabar; khaddo proyog
feed_amount hi: aahar ki matra; kitna dana; dana (kg); khurak; roz ka dana; aahar (kg)
feed_amount vi: luong thuc an; thuc an (kg); ta (kg); so kg thuc an; luong ta; tong thuc an; sang; chieu; kg/ngay; luong cho an
feed_amount th: pariman ahan; ahan (kilo); ahan/wan
feed_amount ar: كميه العلف; العلف المقدم; علف يومي; كجم علف; كميه الغذاء; العلف المستهلك
meals en: meals; times fed; feedings; feeding times; feeding frequency; no. of feedings; times/day; frequency; freq.; meals per day
meals fr: repas; nb repas; frequence; nombre de repas; frequence de nourrissage; nb distributions
meals pt: refeicoes; nº de tratos; frequencia; tratos/dia; nº refeicoes; frequencia alimentar
meals es: raciones; comidas; frecuencia; n° raciones; veces al dia; frecuencia alimenticia
meals id: frekuensi; kali/hari; frekuensi pakan; frekuensi pemberian pakan
meals ms: kekerapan; kali sehari; kekerapan makan
meals sw: mara kwa siku; idadi ya milo; milo
meals bn: koybar; dine koybar
meals hi: kitni baar; din me kitni baar
meals vi: so lan cho an; lan/ngay; so bua; cu an
meals ar: عدد الوجبات; مرات التغذيه; وجبات
feeding_rate en: feeding rate; ~fr; feed rate; ~% bw; %bw/day; % body weight; ration (%); feeding level; ~sfr; feed %; % of biomass; rate (%); feeding %; ration size; ~bw%; percent body weight; feeding percent
feeding_rate fr: taux de nourrissage; taux de rationnement; ~tr; tx ration; % biomasse; % du poids; ~tn; taux d'alimentation; taux de ration
feeding_rate pt: taxa alimentar; taxa de alimentacao; ~ta; ~% pv; % do peso vivo; % biomassa; taxa de arracoamento; % pv/dia
feeding_rate es: tasa de alimentacion; % biomasa; % peso vivo; tasa alimenticia; tasa especifica de alimentacion; % de alimentacion
feeding_rate id: tingkat pemberian pakan; persentase pakan; dosis pakan; % bobot
feeding_rate ms: kadar makanan; kadar pemberian makanan; % berat badan; % biojisim
feeding_rate sw: kiwango cha kulisha; asilimia ya uzito; % ya uzito
feeding_rate bn: deher ojoner %; khabarer har; ojoner shotokora
feeding_rate hi: aahar dar; vajan ka pratishat; khurak dar
feeding_rate vi: khau phan; ty le cho an; % trong luong than; khau phan an; % tlt; % trong luong quan dan
feeding_rate ar: معدل التغذيه; نسبه التغذيه; % من وزن الجسم; معدل العليقه
fcr en: ~fcr; feed conversion; feed conversion ratio; f.c.r.; food conversion ratio; feed conversion rate; ~fce; feed efficiency; conversion; ~efcr; ~bfcr; ~afcr
fcr fr: ~ic; indice de consommation; ~tca; taux de conversion alimentaire; indice de conversion; indice de conversion alimentaire; quotient nutritif; ~qn; ~ica; ~tc
fcr pt: ~ca; conversao alimentar; conversao; indice de conversao; ~c.a.; ~caa; taxa de conversao alimentar; ~fca
fcr es: factor de conversion alimenticia; conversion alimenticia; factor de conversion; tasa de conversion alimenticia; ~fc
fcr id: rasio konversi pakan; konversi pakan; ~kp; ~rkp; nisbah konversi pakan; ~ep; efisiensi pakan
fcr ms: kadar pertukaran makanan; nisbah penukaran makanan; ~kpm; kadar penukaran makanan
fcr sw: uwiano wa chakula; uwiano wa ubadilishaji chakula
fcr bn: khaddo rupantor har; khaddo porinoto har
fcr hi: aahar roopantar; aahar parivartan anupat
fcr vi: he so thuc an; ~hsta; he so chuyen hoa thuc an; hschta; he so tieu ton thuc an
fcr th: attra laek nuea; attra kan plian ahan
fcr ar: معدل التحويل الغذايي; معامل التحويل; معامل التحويل الغذايي
growth_rate en: growth rate; ~sgr; specific growth rate; sgr (%/day); % per day; growth; ~adg; ~dwg; ~dgr; daily growth; daily weight gain; ~adwg; growth per day; ~tgc
growth_rate fr: ~tcs; taux de croissance specifique; croissance; taux de croissance; ~gmq; ~cji; croit journalier; ~gpj; croissance journaliere; %/j; ~tcj
growth_rate pt: ~tce; taxa de crescimento especifico; crescimento; ~gpd; taxa de crescimento; ganho diario; ~gmd; ~tcd
growth_rate es: tasa de crecimiento especifica; tasa especifica de crecimiento; crecimiento; ganancia diaria; tasa de crecimiento; ~gdp; ~icd
growth_rate id: ~lps; laju pertumbuhan spesifik; laju pertumbuhan; ~lph; laju pertumbuhan harian; ~gr; pertumbuhan; ~lpbh; pertumbuhan harian
growth_rate ms: kadar pertumbuhan; kadar tumbesaran; tumbesaran; kadar pertumbuhan spesifik
growth_rate sw: kiwango cha ukuaji; ukuaji; kukua kwa siku; kasi ya ukuaji
growth_rate ha: girma; saurin girma
growth_rate bn: briddhi har; briddhir har; bardhon; doinik briddhi
growth_rate hi: vriddhi dar; badhat; badhvar; vikas dar
growth_rate vi: toc do tang truong; tang truong; toc do tang truong dac biet; ~tdtt; toc do sinh truong
growth_rate ar: معدل النمو; معدل النمو النوعي; النمو اليومي; النمو
weight_gain en: weight gain; ~wg; gain; wt gain; growth (g); increase; weight increase; net gain; total gain
weight_gain fr: gain de poids; ~gp; accroissement; prise de poids; croit; gain ponderal
weight_gain pt: ganho de peso; ganho; incremento; ganho de biomassa
weight_gain es: ganancia de peso; ganancia; incremento de peso; peso ganado
weight_gain id: pertambahan bobot; pertambahan berat; penambahan berat; kenaikan berat; pertumbuhan mutlak; ~pbm
weight_gain sw: ongezeko la uzito; kuongezeka uzito
weight_gain bn: ojon briddhi; ojon barche
weight_gain hi: vajan vriddhi; badha vajan
weight_gain vi: tang trong; muc tang; tang trong (g)
weight_gain ar: الزياده في الوزن; زياده الوزن; الزياده الوزنيه
live_food en: live food; live feed; artemia; moina; daphnia; rotifers; zooplankton; cladocera; brine shrimp; ~bbs; nauplii; plankton; tubifex; bloodworm; cysts; altemia; artamia; decapsulated artemia; egg yolk; natural food; boiled egg
live_food pcm: water insect; live chop
live_food fr: aliment vivant; proies vivantes; daphnies; rotiferes; zooplancton; nauplies; plancton; nourriture vivante
live_food pt: alimento vivo; dafnia; rotiferos; nauplios; pulga d'agua; zooplancto
live_food es: pulga de agua; copepodos
live_food id: pakan alami; kutu air; cacing sutera; cacing sutra; rotifera; naupli; infusoria
live_food ms: makanan hidup; udang air garam
live_food sw: chakula hai; planktoni; vijidudu vya maji
live_food ha: abinci mai rai; kwarin ruwa
live_food bn: jibonto khabar; prani plankton
live_food hi: jeevit aahar
live_food vi: thuc an song; thuc an tuoi song; trung chi; trung nuoc; luan trung; trun chi; bo bo; au trung artemia
live_food th: ahan mi chiwit; rai daeng; rai nam khem; non daeng
live_food ar: الغذاء الحي; ارتيميا; الارتيميا; موينا; دافنيا; روتيفر; العوالق
artemia_cysts en: cysts; cysts (g); artemia cysts; cysts used; grams of cysts; cyst wt; tin; hatching efficiency; nauplii/g; ~he; tins used
artemia_cysts fr: cystes; cystes (g); cystes d'artemia; boite; boites
artemia_cysts pt: cistos; cistos (g); cistos de artemia; lata; latas
artemia_cysts es: quistes; quistes (g); quistes de artemia
artemia_cysts id: kista; siste; kista artemia; kaleng
artemia_cysts ms: sista
artemia_cysts vi: trung artemia; trung bao xac; bao xac; lon
artemia_cysts ar: حويصلات; بيض الارتيميا; علبه
harvest en: harvest; harvested; cropping; cropped; yield; production; output; harvest (kg); total harvest; partial harvest
harvest fr: recolte; peche; rendement; vidange; production totale
harvest pt: despesca; colheita; producao; rendimento
harvest es: cosecha; pesca; produccion; rendimiento; cosechado
harvest id: panen; hasil panen; produksi; panen (kg)
harvest ms: hasil; tuaian; pengeluaran; tuai
harvest sw: mavuno; kuvuna; uzalishaji; waliovunwa
harvest ha: girbi; girbin kifi
harvest bn: ahoron; utpadon; mach dhora
harvest hi: utpadan; nikaasi; fasal; machli nikasi
harvest vi: thu hoach; san luong; nang suat; thu duoc
harvest ar: الحصاد; الانتاج; المحصول; الصيد
water_temperature en: ~temp; temperature; water temp; temp (°c); ~t°; t (°c); water temperature; °c; temp am; temp pm; ~wt; ~t; incubation temp; morning temp; max/min temp; thermometer; deg c; ~tw; temp.; temperature of water; temprature; tempreture; °f; temp (f); water temp (°f)
water_temperature pcm: how hot water be
water_temperature fr: ~t°c; t° eau; temperature de l'eau; t°eau (°c); temp. eau; t° matin; t° soir
water_temperature pt: temperatura; temperatura da agua; temp. agua; ~t.; ºc
water_temperature es: temperatura del agua; t° agua
water_temperature id: suhu; suhu air; suhu (°c); temperatur; suhu pagi; suhu sore
water_temperature sw: joto; jotoridi; joto la maji; nyuzi joto; joto (°c); nyuzijoto
water_temperature ha: zafi; zafin ruwa; yanayin zafi; dumin ruwa
water_temperature yo: igbona omi; iwon igbona; ooru omi
water_temperature ig: okpomoku mmiri; okpomoku
water_temperature bn: tapmatra; panir tapmatra; tap
water_temperature hi: tapman; taapmaan; pani ka tapman
water_temperature vi: nhiet do; nhiet do nuoc; ~to; ~nd; nhiet do (0c); t nuoc
water_temperature th: unhaphum; unhaphumi; unhaphum nam
water_temperature ar: درجه الحراره; حراره الماء; درجه حراره الماء; الحراره; درجه حراره المياه
air_temperature en: air temp; air temperature; room temp; ambient; ambient temp; hatchery temp; room temperature
air_temperature fr: temperature de l'air; t° air; temp. air; t° ambiante; temperature ambiante; t° salle
air_temperature pt: temperatura do ar; temp. ar; temperatura ambiente; t ambiente
air_temperature es: temperatura del aire; t° aire; temp. ambiente; t° ambiente
air_temperature id: suhu udara; suhu ruang; suhu ruangan
air_temperature ms: suhu bilik
air_temperature sw: joto la hewa; joto la chumba
air_temperature vi: nhiet do khong khi; nhiet do phong
air_temperature ar: حراره الجو; درجه حراره الهواء
ph_before en: ph; ph before; initial ph; ph (before); start ph; ph start; ph before treatment; ph morning; ph reading; ph am; ph 1; water ph; ph in; ph at start; ~p.h; ph level; acid level
ph_before pcm: ph first; wetin be the ph
ph_before fr: ph avant; ph initial; ph de depart; ph eau; ph mesure; ph avant dose; ph matin; ph debut
ph_before pt: ph antes; ph inicial; ph da agua; ph manha; ph antes da dose
ph_before es: ph del agua; ph manana; valor de ph; ph previo
ph_before id: ph awal; ph sebelum; ph air; ph pagi; derajat keasaman; keasaman
ph_before sw: ph kabla; ph ya mwanzo; tindikali; ph ya maji
ph_before ha: ph kafin; ph na ruwa; tsamin ruwa
ph_before bn: ph age; suru ph; panir ph; piech
ph_before hi: ph pehle; shuru ph; pani ka ph
ph_before vi: ph truoc; ph ban dau; ph dau; ph sang; do ph; do chua
ph_before th: kha ph; ph kon; khwam pen krot
ph_before ar: الرقم الهيدروجيني; درجه الحموضه; ph قبل; الاس الهيدروجيني; الحموضه
ph_after en: ph after; final ph; ph (after); end ph; ph reached; ph after treatment; ph 2; ph evening; ph pm; new ph; ph result; ph after dose; resulting ph; ph out; after ph; ph later
ph_after pcm: ph now
ph_after fr: ph apres; ph final; ph obtenu; ph atteint; ph apres dose; ph soir; ph apres traitement; ph fin
ph_after pt: ph depois; ph apos; ph obtido; ph tarde; ph apos a dose; ph atingido
ph_after es: ph despues; ph obtenido; ph logrado; ph alcanzado; ph posterior
ph_after id: ph akhir; ph sesudah; ph setelah; ph sore; ph hasil
ph_after ms: ph selepas; ph petang
ph_after sw: ph baada; ph ya mwisho; ph baadaye
ph_after ha: ph bayan; ph daga baya
ph_after bn: ph pore; shesh ph; ph por
ph_after hi: ph baad; baad ka ph; antim ph
ph_after vi: ph sau; ph cuoi; ph chieu; ph dat
ph_after th: ph lang
ph_after ar: ph بعد; الحموضه بعد; الرقم الهيدروجيني النهايي
ph_target en: target ph; ph wanted; desired ph; ph goal; required ph; ph needed
ph_target fr: ph vise; ph souhaite; ph cible; ph voulu
ph_target pt: ph desejado; ph alvo; ph pretendido
ph_target es: ph deseado; ph objetivo; ph meta
ph_target id: ph target; ph yang diinginkan
ph_target vi: ph mong muon; ph can dat
ph_target ar: الحموضه المطلوبه; ph المطلوب
buffer_material en: buffer; product; chemical; material; chemical used; treatment; additive; buffering agent; type of lime; lime; liming; ph up; lime type; liming material; soda; washing soda; kaun
buffer_material fr: produit; tampon; produit utilise; chaux; amendement; nature du produit; produit tampon; chaulage
buffer_material pt: produto; tampao; corretivo; cal; calagem; insumo
buffer_material es: producto; encalado
buffer_material id: bahan; kapur; jenis kapur; bahan kimia; pengapuran; penyangga
buffer_material ms: penimbal
buffer_material sw: kemikali; chokaa; dawa; aina ya chokaa
buffer_material ha: sinadari; magani; farar kasa; alli
buffer_material bn: chun; rasayonik; oushod; osudh
buffer_material hi: chuna; rasayan; dava; chuna ka prakar
buffer_material vi: hoa chat; voi; loai voi; chat dem; loai hoa chat
buffer_material th: pun khao; san khemi; pun
buffer_material ar: الماده; الكيماويات; الجير; نوع الجير; المنظم
soda_ash en: soda ash; sodium carbonate; na2co3; washing soda; light soda ash; dense soda ash; soda crystals; sal soda; sodaash; sodium carb.
soda_ash fr: carbonate de soude; carbonate de sodium; soude solvay; cristaux de soude
soda_ash pt: carbonato de sodio; barrilha; barrilha leve; soda calcinada
soda_ash es: ceniza de soda; sosa; carbonato sodico; sosa calcinada
soda_ash id: soda abu; natrium karbonat; soda cuci; abu soda
soda_ash ms: soda basuh
soda_ash sw: soda ya kufulia; sodiamu kaboneti; magadi
soda_ash bn: kapor kacha soda; soda
soda_ash hi: dhobi soda; dhone ka soda; kapde dhone ka soda
soda_ash vi: so da; natri cacbonat; so da khan; xoda
soda_ash th: soda aet
soda_ash ar: كربونات الصوديوم; صودا اش; رماد الصودا; صودا الغسيل
baking_soda en: baking soda; sodium bicarbonate; bicarb; bicarbonate of soda; nahco3; bicarbonate; bread soda; sodium bicarb; bi-carb; bicarbonate soda
baking_soda fr: bicarbonate de soude; bicarbonate de sodium; bicar; bicarbonate alimentaire
baking_soda pt: bicarbonato de sodio; bicarbonato; bicarb.
baking_soda es: bicarbonato sodico
baking_soda id: soda kue; natrium bikarbonat; bikarbonat; soda roti
baking_soda ms: soda bikarbonat; serbuk penaik soda; soda penaik
baking_soda sw: soda ya kupikia; bikaboneti; sodiamu bikaboneti; magadi soda
baking_soda ha: sodar gasa
baking_soda bn: khabar soda; khawar soda; khaibar soda
baking_soda hi: meetha soda; khane ka soda; khaane wala soda; mitha soda
baking_soda vi: natri bicacbonat; muoi no; thuoc muoi; soda lanh
baking_soda th: phong fu soda
baking_soda ar: بيكربونات الصوديوم; بيكنج صودا; بيكربونات; كربونات
agricultural_lime en: agricultural lime; ag lime; aglime; limestone; calcium carbonate; caco3; calcitic lime; ground limestone; crushed limestone; dolomite; dolomitic lime; chalk; crushed oyster shell; oyster shells; garden lime; agric lime; lime stone
agricultural_lime fr: calcaire broye; calcaire agricole; carbonate de calcium; chaux agricole; dolomie; craie; marne; coquilles d'huitres; calcaire
agricultural_lime pt: calcario; calcario agricola; calcario dolomitico; carbonato de calcio; calcario calcitico; conchas; calcareo
agricultural_lime es: cal agricola; caliza; caliza agricola; cal dolomita; cal dolomitica; conchilla; dolomita; piedra caliza
agricultural_lime id: kapur pertanian; kaptan; dolomit; kapur karbonat; kalsit; batu kapur; kalsium karbonat
agricultural_lime ms: ~gml; kapur dolomit
agricultural_lime sw: chokaa ya kilimo; mawe ya chokaa; chokaa ya shambani; kalsiamu kaboneti
agricultural_lime bn: pathure chun; krishi chun; dolochun; dolo chun
agricultural_lime hi: krishi chuna; chuna patthar; kheti ka chuna
agricultural_lime vi: voi nong nghiep; voi da; bot da; voi den; canxi cacbonat; da voi nghien
agricultural_lime th: pun maan; hin pun bot; pun khao kaset
agricultural_lime ar: جير زراعي; كربونات الكالسيوم; حجر جيري; دولوميت
hydrated_lime en: hydrated lime; slaked lime; calcium hydroxide; ca(oh)2; builders lime; building lime; mason's lime; lime putty; slack lime
hydrated_lime fr: chaux eteinte; chaux hydratee; hydroxyde de calcium; chaux aerienne; chaux du batiment; ~cae; chaux blanche; fleur de chaux
hydrated_lime pt: cal hidratada; cal extinta; cal apagada; hidroxido de calcio; cal de construcao; cal de pintura
hydrated_lime es: calhidra; cal de construccion; cal muerta
hydrated_lime id: kapur padam; kapur hidrat; kalsium hidroksida; kapur mati; kapur bangunan; kapur sirih
hydrated_lime ms: kapur makan
hydrated_lime sw: chokaa; chokaa iliyozimwa; chokaa ya kupaka nyumba; chokaa ya ujenzi
hydrated_lime ha: farar kasa; alli
hydrated_lime bn: kola chun; kalichun; kali chun; gola chun; foshka chun
hydrated_lime hi: bujha chuna; bujha hua chuna; buja chuna; paan wala chuna
hydrated_lime vi: voi toi; voi bot; voi ngam nuoc; canxi hydroxit
hydrated_lime th: pun khao; pun kin mak
hydrated_lime ar: جير مطفا; جير مطفي; هيدروكسيد الكالسيوم; الجير المطفا
quicklime en: quicklime; quick lime; burnt lime; unslaked lime; calcium oxide; ~cao; caustic lime; lump lime; hot lime
quicklime fr: chaux vive; oxyde de calcium; chaux caustique
quicklime pt: cal virgem; cal viva; oxido de calcio; cal queimada
quicklime es: cal quemada; cal rapida
quicklime id: kapur tohor; kapur api; kapur gamping; kapur hidup; gamping
quicklime ms: kalsium oksida
quicklime sw: chokaa hai; chokaa moto; chokaa kali
quicklime bn: pora chun; pura chun; jibonto chun; pathure chun; chun (pathore)
quicklime hi: bina bujha chuna; kali chuna; anbujha chuna; dali chuna
quicklime vi: voi song; voi nung; voi nong; voi cuc; canxi oxit
quicklime th: pun ron; pun suk
quicklime ar: جير حي; الجير الحي; اكسيد الكالسيوم; جير محروق
grams_given en: grams; g; gm; gms; amount (g); dose (g); qty (g); quantity given; amount added; added (g); grams given; dose; amount; quantity; ~qty; used (g); weight of chemical; kg applied; spoon; spoons; milk tin; derica; mudu; congo; bottle top; kasuku; gorogoro; tablespoon; qty in gm; handful; tola; chhatak; seer; maund
grams_given pcm: how many spoon; how many gram
grams_given fr: grammes; quantite (g); qte (g); qte ajoutee; quantite ajoutee; grs; cuilleres
grams_given pt: gramas; quantidade (g); qtd (g); quantidade aplicada; colheres; gr
grams_given es: gramos; cantidad (g); cant. (g); dosis (g); cantidad aplicada; cucharadas
grams_given id: gram; jumlah (g); dosis (gr); takaran; sendok; ons; genggam
grams_given ms: kuantiti (g); sudu; kati
grams_given sw: gramu; kiasi (g); kijiko; kiasi kilichowekwa; vijiko
grams_given ha: giram; cokali
grams_given yo: giramu; sibi; kongo
grams_given ig: ngaji
grams_given bn: poriman; chamoch; kaccha
grams_given hi: matra; chammach; mutthi
grams_given vi: gam; luong (g); so gam; muong; lang; chi
grams_given th: kram; kor; chon; khit
grams_given ar: جرام; جم; غرام; غ; الكميه; ملعقه
volume_litres en: litres; liters; l; ltr; ltrs; lit; volume; water volume; volume (l); vol (l); m3; m³; tank volume; water (l); gallons; gal; capacity; tank size; ~vol.; cbm; cubic metres; litre; keg; jerrycan; drum; tank capacity; bucket; gallon; cft; cum; gpm; acre-feet
volume_litres pcm: how many litre
volume_litres fr: volume d'eau; contenance; capacite; volume utile; bidon; fut; seau
volume_litres pt: litros; volume de agua; capacidade; tambor; balde
volume_litres es: lts; volumen; volumen de agua; volumen (l); capacidad; lt
volume_litres id: liter; volume air; kapasitas; kubik; jerigen; ember
volume_litres ms: isipadu; isipadu air; isi padu; tong; gelen; baldi
volume_litres sw: lita; ujazo; kiasi cha maji; ujazo (lita); ndoo; pipa; debe; dumu
volume_litres ha: yawan ruwa; jarka; ganga
volume_litres yo: iye omi; galoonu
volume_litres ig: ole mmiri
volume_litres bn: panir poriman; ayoton; balti
volume_litres hi: litar; ayatan; pani ki matra; dram
volume_litres vi: the tich; the tich nuoc; v (l); khoi; can; phuy
volume_litres th: pariman nam; lo
volume_litres ar: لتر; الحجم; حجم الماء; حجم المياه; م3; السعه; برميل
water_level en: depth; water depth; water level; level; depth (cm); height; water height; depth (ft)
water_level fr: profondeur; prof.; hauteur d'eau; niveau d'eau; h (cm); niveau; hauteur
water_level pt: profundidade; nivel da agua; nivel; coluna d'agua
water_level es: profundidad; nivel de agua; altura de agua
water_level id: kedalaman; ketinggian air; tinggi air; kedalaman air; dalam
water_level ms: paras air; aras air
water_level sw: kina; kina cha maji; kimo cha maji
water_level ha: zurfi; zurfin ruwa
water_level bn: gobhirota; panir gobhirota; panir uchchota
water_level hi: gehrai; pani ki gehrai
water_level vi: do sau; muc nuoc; sau
water_level th: khwam luek; radap nam
water_level ar: العمق; عمق الماء; منسوب الماء
oxygen en: ~do; ~d.o.; dissolved oxygen; oxygen; ~o2; do (mg/l); oxygen level; do (ppm); do am; dis. oxygen; oxygen (ppm); ~d.o; oxigen
oxygen fr: oxygene; oxygene dissous; o2 dissous; ~o.d.; ~od; taux d'oxygene; o2 (mg/l); oxygene (mg/l)
oxygen pt: oxigenio; oxigenio dissolvido; od (mg/l)
oxygen es: oxigeno; oxigeno disuelto
oxygen id: oksigen; oksigen terlarut
oxygen sw: oksijeni; oksijeni kwenye maji; hewa kwenye maji; hewa ya oksijeni
oxygen ha: iskar oxygen; oksijin; iska a ruwa
oxygen bn: drobibhuto oxygen; oksijen
oxygen hi: ghulit oxygen; ghuli hui oxygen
oxygen vi: oxy; oxy hoa tan; oxy hoa tan (mg/l); duong khi
oxygen th: oksichen; oksichen lalai nam
oxygen ar: الاكسجين; الاكسجين الذايب; الاوكسجين الذايب; اكسجين ذايب
oxygen_saturation en: % saturation; ~o2 %; ~do %; saturation; % sat; do sat
oxygen_saturation fr: sat (%); taux de saturation
oxygen_saturation pt: % saturacao; saturacao; sat. (%); ~od %
oxygen_saturation es: % saturacion; saturacion
oxygen_saturation id: % kejenuhan; saturasi
oxygen_saturation vi: % bao hoa; do bao hoa
oxygen_saturation ar: نسبه التشبع; التشبع
ammonia en: ammonia; ~nh3; ~nh4; ~tan; nh3-n; ammonia (mg/l); nh3/nh4; total ammonia; ~uia; ammonium; ~nh4+; amonia; un-ionised ammonia; tan (ppm)
ammonia fr: ammoniac; ammoniaque; azote ammoniacal; n-nh4; amonium; nh3 (mg/l)
ammonia pt: amonia total; ~nat; amonia toxica; n-nh3; amoniaco; amonio
ammonia es: amonio total; nitrogeno amoniacal
ammonia id: amoniak
ammonia sw: amonia kwenye maji
ammonia ha: amoniya
ammonia bn: emonia
ammonia vi: amoniac; khi doc nh3; khi doc
ammonia th: aemmonia
ammonia ar: الامونيا; امونيا; نشادر; امونيا كليه; الامونيوم
nitrite en: nitrite; ~no2; no2-n; ~no2-; nitrite (mg/l); nitrite-n
nitrite fr: nitrites; n-no2
nitrite pt: nitrito
nitrite es: nitritos
nitrite id: nitrit; nitrit (mg/l)
nitrite sw: naitraiti; nitriti
nitrite bn: naitrait
nitrite vi: khi doc no2
nitrite th: naitrai; nitrai
nitrite ar: نيتريت; النيتريت; نتريت
nitrate en: nitrate; ~no3; no3-n; ~no3-; nitrate (mg/l)
nitrate fr: nitrates; n-no3
nitrate pt: nitrato
nitrate es: nitratos
nitrate id: nitrat
nitrate sw: naitreti; nitrati
nitrate ar: نيترات; النيترات; نترات
alkalinity en: alkalinity; ~alk; ~ta; t. alk; total alkalinity; ~kh; dkh; mg/l caco3; meq/l; carbonate hardness; temporary hardness; ~talk; buffer capacity
alkalinity fr: alcalinite; ~tac; °f; titre alcalimetrique complet; reserve alcaline; durete carbonatee; durete temporaire
alkalinity pt: alcalinidade; ~alc.; alcalinidade total
alkalinity es: alcalinidad; alcalinidad total; dureza de carbonatos
alkalinity id: alkalinitas; alkalinitas total
alkalinity ms: kealkalian; alkaliniti; jumlah kealkalian
alkalinity sw: alkalini; ukali wa alkali; nguvu ya alkali
alkalinity bn: kharotto; khar; kharokota
alkalinity hi: ksharata; ksharita; kshaar
alkalinity vi: do kiem; kiem; kiem (mg/l); do kiem (mg/l)
alkalinity th: khwam pen dang; kha alkaline
alkalinity ar: القلويه; القلويه الكليه; قلويه
hardness en: hardness; total hardness; ~th; ~gh; dgh; ca hardness; hard.; calcium hardness; general hardness
hardness fr: durete; durete totale; °f; titre hydrotimetrique; °th; durete calcique
hardness pt: dureza; dureza total; dureza calcica
hardness id: kesadahan; kekerasan; kesadahan total
hardness ms: keliatan; keliatan air; kekerasan air
hardness sw: ugumu wa maji; ugumu
hardness bn: khorota; kharota; kathinno
hardness hi: kathorta; kathorata
hardness vi: do cung; do cung tong; cung
hardness th: khwam kradang; kha khwam kradang
hardness ar: العسر; عسر الماء; العسر الكلي; عسوره; صلابه
conductivity en: conductivity; ~ec; cond.; µs/cm; us/cm; ms/cm; ~tds; tds (ppm); elec. conductivity
conductivity fr: conductivite; ~ce; conductivite electrique
conductivity pt: condutividade; ~std; condutividade eletrica
conductivity es: conductividad; conductividad electrica
conductivity id: konduktivitas; ~dhl; daya hantar listrik
conductivity ms: kekonduksian; konduktiviti
conductivity vi: do dan dien; do dan
conductivity ar: التوصيليه; التوصيل الكهربايي; الموصليه; الاملاح الذايبه
salinity en: salinity; ~sal.; salt; ppt; ‰; g/l; psu; salt (g/l); salinity (ppt)
salinity fr: salinite; sel
salinity pt: salinidade; sal
salinity es: salinidad; ppm; ups
salinity id: salinitas; kadar garam
salinity ms: kemasinan; saliniti; kadar kemasinan
salinity sw: chumvi; kiwango cha chumvi; uchumvi; chumvi kwenye maji
salinity ha: gishiri; yawan gishiri
salinity yo: iyo; iwon iyo
salinity ig: nnu
salinity bn: lobonakto; lobonaktota; lobon
salinity hi: lavanta; namak; kharapan
salinity vi: do man; do man (‰); man; ~s‰; muoi
salinity th: khwam khem; kha khwam khem; khwam khem (ppt)
salinity ar: الملوحه; ملوحه; درجه الملوحه
carbon_dioxide en: ~co2; carbon dioxide; free co2; co2 (mg/l)
carbon_dioxide fr: dioxyde de carbone; gaz carbonique; co2 libre
carbon_dioxide pt: gas carbonico; dioxido de carbono
carbon_dioxide es: anhidrido carbonico
carbon_dioxide id: karbondioksida; co2 bebas
carbon_dioxide vi: khi co2; cacbonic
carbon_dioxide ar: ثاني اكسيد الكربون
transparency en: transparency; secchi; secchi depth; turbidity; clarity; visibility; ntu; water colour; water color; colour; turbid
transparency fr: transparence; turbidite; couleur de l'eau; disque de secchi
transparency pt: transparencia; turbidez; cor da agua; disco de secchi
transparency es: turbiedad; color del agua; disco secchi
transparency id: kecerahan; kekeruhan; warna air; transparansi
transparency ms: kejernihan
transparency sw: uwazi wa maji; rangi ya maji; uchafu wa maji
transparency bn: panir rong; swochchota; ghola pani
transparency hi: pani ka rang; pardarshita; gandlapan
transparency vi: do trong; mau nuoc; do duc; do trong (cm)
transparency ar: الشفافيه; العكاره; لون الماء; عمق الشفافيه
water_exchange en: water exchange; water change; % exchange; water changed; exchange (l); ~wx; water added; topped up; flushed; drained; siphoned; flow-through; change of water; flushing; water changing; drain
water_exchange pcm: change water; we change water
water_exchange fr: renouvellement; renouvellement d'eau; % renouvele; vidange partielle; siphonage; eau changee; changement d'eau
water_exchange pt: troca de agua; renovacao; renovacao de agua; % troca; sifonagem; reposicao
water_exchange es: recambio; recambio de agua; % recambio; renovacion; sifoneo; cambio de agua
water_exchange id: ganti air; pergantian air; penggantian air; % ganti air; sipon; penyiponan; kuras
water_exchange ms: tukar air; penukaran air; % tukar air; sifon
water_exchange sw: kubadilisha maji; kubadili maji; maji yaliyobadilishwa
water_exchange ha: canjin ruwa; sauya ruwa
water_exchange bn: pani poriborton; pani bodol; pani paltano
water_exchange hi: pani badla; pani badalna; jal parivartan
water_exchange vi: thay nuoc; % thay nuoc; luong nuoc thay; siphon; cap nuoc; xi phong
water_exchange ar: تغيير المياه; تجديد المياه; نسبه التغيير; تغيير الماء
flow en: flow; flow rate; l/min; lpm; l/h; flow (l/min); inflow; m3/h; water flow; gpm; flow (gpm)
flow fr: debit; debit (l/min); l/mn; l/s; ~q
flow pt: vazao; caudal; fluxo; vazao (l/min)
flow es: flujo; lps
flow id: debit air; l/menit; l/detik; aliran air
flow ms: aliran; kadar aliran
flow sw: mtiririko; mtiririko wa maji; lita kwa dakika
flow vi: luu luong; luu toc; l/phut; toc do dong chay
flow ar: معدل التدفق; التدفق; لتر/دقيقه; التصرف
weather en: weather; rain; rainfall; sunny; cloudy; rainy; harmattan; nepa; light out; power cut
weather fr: meteo; temps; pluie; ensoleille; nuageux; coupure; delestage
weather pt: tempo; clima; chuva; sol; nublado; apagao
weather es: tiempo; lluvia; soleado; corte de luz
weather id: cuaca; hujan; cerah; mendung; mati lampu
weather sw: hali ya hewa; mvua; jua; mawingu
weather vi: thoi tiet; mua; nang; may; cup dien
weather ar: الطقس; حاله الجو; مطر
treatment en: treatment; medication; drug; drugs; disease; chemical; chemical treatment; disinfection; medicine; bath; dip; prophylaxis; antibiotic; disinfectant; symptoms; fungicide; antibiotics; treatment given; vitamin; multivitamin; dip treatment; medicine given
treatment pcm: which medicine
treatment fr: traitement; medicament; produit de traitement; desinfection; bain; maladie; prophylaxie; desinfectant; soins
treatment pt: tratamento; medicamento; banho; profilaxia; doenca; desinfeccao; remedio
treatment es: tratamiento; bano; profilaxis; enfermedad; desinfeccion; medicina
treatment id: pengobatan; obat; perlakuan; perendaman; penyakit; disinfeksi
treatment ms: rawatan; ubat; rendaman; nyahkuman
treatment sw: tiba; dawa; matibabu; ugonjwa; bafu ya dawa; kinga
treatment ha: magani; jinya; cuta; magani da aka ba
treatment yo: itoju; oogun; arun
treatment ig: ogwu; ogwugwo; oria
treatment bn: chikitsa; oshudh; osudh; rog; oushodh
treatment hi: ilaaj; dava; upchar
treatment vi: xu ly; thuoc; tri benh; hoa chat; bien phap xu ly; tam; benh; phong benh
treatment th: kan raksa; ya; rok
treatment ar: العلاج; المعامله; الدواء; المطهر; المرض; التطهير
salt_bath en: salt bath; salt; salt (g); salt dip; ~nacl; saline; salt treatment; salt dose; salt dip time; brine; salt water; saline water; common salt; salt spoon
salt_bath fr: sel; bain de sel; sel (g); bain sale; eau salee; sel de cuisine
salt_bath pt: sal; banho de sal; sal (g); salmoura; solucao salina; sal grosso
salt_bath es: bano de sal; salmuera; sal en grano
salt_bath id: garam; perendaman garam; garam (g); garam krosok; garam ikan
salt_bath ms: rendaman garam; air garam; garam kasar
salt_bath sw: chumvi; bafu ya chumvi; maji ya chumvi
salt_bath ha: gishiri; ruwan gishiri; wankan gishiri
salt_bath yo: iyo; omi iyo
salt_bath ig: nnu; mmiri nnu
salt_bath bn: lobon; lobon pani; lobon jole gosol; lobon (g)
salt_bath hi: namak; namak snan; namak ka ghol
salt_bath vi: muoi; tam muoi; muoi (g); muoi hot; ngam muoi
salt_bath th: kluea; chae kluea; nam kluea
salt_bath ar: ملح; حمام ملحي; محلول ملحي; ملح خشن
formalin en: formalin; formaldehyde; formalin (ml); 37% formalin; formaline; formol
formalin fr: formol (ml)
formalin pt: formaldeido; formalina
formalin es: formaldehido
formalin ms: formaldehid
formalin sw: fomalini
formalin vi: phooc-mon
formalin th: fomalin
formalin ar: فورمالين; الفورمالين
permanganate en: kmno4; potassium permanganate; permanganate; ~pp; pot. perm.; condy's crystals; potperm; k permanganate; potassium; potash permanganate
permanganate fr: permanganate de potassium; permanganate de potasse
permanganate pt: permanganato; permanganato de potassio
permanganate es: permanganato de potasio
permanganate id: ~pk; kalium permanganat; permanganat
permanganate sw: potasiamu pamanganeti; permanganeti
permanganate bn: potash; potas
permanganate hi: lal dawa; laal dava; lal potash
permanganate vi: thuoc tim
permanganate th: dang thap thim
permanganate ar: برمنجنات البوتاسيوم; برمنجانات; برمنجنات
other_treatments en: methylene blue; malachite green; copper sulphate; cuso4; chlorine; bleach; ~hth; oxytetracycline; ~otc; antibiotic; iodine; hydrogen peroxide; ~h2o2; tea seed; rotenone; probiotic; trash fish killer; meth blue; bleaching powder; tetracycline; antibiotics
other_treatments fr: bleu de methylene; vert de malachite; sulfate de cuivre; eau de javel; chlore; antibiotique; iode; eau oxygenee
other_treatments pt: azul de metileno; verde malaquita; sulfato de cobre; cloro; agua sanitaria; hipoclorito; oxitetraciclina; antibiotico; iodo; agua oxigenada
other_treatments es: verde de malaquita; lejia; yodo
other_treatments id: ~mb; kaporit; klorin; terusi; antibiotik; hidrogen peroksida; rotenon; saponin; oksitetrasiklin
other_treatments ms: metilena biru; kuprum sulfat; teh benih
other_treatments sw: bluu ya methilini; klorini; antibiotiki; dawa ya kuua vijidudu
other_treatments bn: tute; tut
other_treatments hi: neela thotha; mahua khali
other_treatments vi: xanh methylen; xanh methylene; phen xanh; khang sinh; men vi sinh; oxy gia
other_treatments ar: ازرق الميثيلين; كبريتات النحاس; كلور; مضاد حيوي; يود; مطهر
exposure_minutes en: minutes; min; mins; duration; exposure; contact time; dip time; time (min); bath time; exposure time
exposure_minutes fr: duree; duree (min); mn; temps de contact; temps d'exposition
exposure_minutes pt: duracao; minutos; tempo de exposicao; tempo de banho
exposure_minutes es: duracion; tiempo de exposicion; tiempo de bano
exposure_minutes id: durasi; menit; lama; lama perendaman; lama (menit)
exposure_minutes ms: minit; tempoh; masa rendaman; tempoh rendaman
exposure_minutes sw: dakika; muda; muda wa bafu
exposure_minutes ha: mintuna
exposure_minutes bn: minute; koto minute; somoykal
exposure_minutes hi: kitne minute; avadhi
exposure_minutes vi: phut; thoi gian ngam; thoi gian tam
exposure_minutes ar: دقيقه; المده; دقايق
opening_stock en: opening stock; opening balance; opening; ~b/f; brought forward; ~o/b; stock at start; initial stock; balance b/f; start stock; opening count; bal b/f; stock b/f; old stock; stock on ground; balance brought forward; op. bal.; ~o.b.
opening_stock fr: stock initial; stock de depart; report; stock debut; solde initial; ~si; stock d'ouverture; a nouveau; stock ancien; existant
opening_stock pt: estoque inicial; stock inicial; saldo inicial; saldo anterior; transporte; existencia inicial
opening_stock es: inventario inicial; existencias iniciales
opening_stock id: stok awal; saldo awal; persediaan awal; sisa awal; stok lalu
opening_stock ms: baki awal; baki dibawa ke hadapan; stok pembukaan; baki b/h
opening_stock sw: stoki ya mwanzo; salio la mwanzo; idadi ya mwanzo; salio anzia
opening_stock ha: kayan farko; ragowar baya
opening_stock bn: prarombhik jer; purber jer; age chilo; suru mojud
opening_stock hi: prarambhik shesh; shuru ka stock; pichla baki
opening_stock vi: ton dau; ton dau ky; so du dau; dau ky
opening_stock th: yot yok ma; khong luea yok ma
opening_stock ar: رصيد اول المده; الرصيد الافتتاحي; المخزون الاول; رصيد سابق
closing_stock en: closing stock; closing balance; closing; ~c/f; carried forward; ~c/b; stock at end; final stock; balance c/f; ~bal.; balance; stock balance; ~c/d; stock left; balance on ground; stock remaining; cl. bal.; ~c.b.
closing_stock fr: stock final; stock restant; solde; stock fin; stock actuel; ~sf; a reporter; stock de cloture; reste en stock
closing_stock pt: estoque final; saldo final; saldo; estoque atual; existencia final; a transportar
closing_stock es: inventario final; existencias finales
closing_stock id: stok akhir; saldo akhir; sisa stok; persediaan akhir; sisa
closing_stock ms: baki akhir; baki stok; baki; baki dihantar ke hadapan
closing_stock sw: stoki ya mwisho; salio; iliyobaki; salio la mwisho; salio ishia
closing_stock ha: saura; abin da ya rage
closing_stock bn: shesh jer; obosishto; bortoman mojud
closing_stock hi: antim shesh; shesh; bacha stock
closing_stock vi: ton cuoi; ton cuoi ky; con lai; ton kho; cuoi ky
closing_stock th: khong luea; yot khong luea; yot yok pai
closing_stock ar: رصيد اخر المده; الرصيد الختامي; الرصيد; المخزون الحالي
stock_in en: in; trans in; trans. in; transfer in; transferred in; moved in; ~tr in; received; purchased; added; stock in; qty in; bought; input; addition; additions; receipts; supply; qty received; debit; came in; brought in; collected
stock_in fr: entree; entrees; recu; achats; achete; approvisionnement; ajout; qte recue; reception
stock_in pt: entrada; entradas; recebido; compra; compras; adicionado; aquisicao
stock_in es: ingreso; recibido; ingresos
stock_in id: masuk; pemasukan; diterima; pembelian; tambahan; barang masuk; beli
stock_in ms: terima
stock_in sw: iliyoingia; zilizoingia; kupokea; iliyonunuliwa; walioingia; mapokezi
stock_in ha: shigowa; abin da ya shigo; saye
stock_in bn: grohon; kroy; joma; prapti; aagomon
stock_in hi: aamad; prapt; kharid; jama; aavak
stock_in vi: nhap; so nhap; mua vao; nhap kho; nhap them
stock_in th: rap; rap khao; sue
stock_in ar: وارد; الوارد; الداخل; المشتريات; المستلم; اضافات
stock_out en: out; trans out; trans. out; transfer out; transferred out; moved out; ~tr out; issued; removed; stock out; qty out; used; usage; consumed; withdrawn; issues; given out; dispatched; discarded; culled; harvested; supplied out
stock_out fr: sortie; sorties; sorti; utilise; consomme; retire; qte sortie; prelevement
stock_out pt: saida; saidas; retirado; usado; utilizado; consumido; baixa
stock_out es: salida; salidas; egreso
stock_out id: keluar; pengeluaran; terpakai; pemakaian; barang keluar; dipakai
stock_out ms: diguna; penggunaan; dikeluarkan
stock_out sw: iliyotoka; zilizotoka; iliyotumika; walioondolewa; matumizi
stock_out ha: fita; abin da ya fita; amfani
stock_out bn: khoroch; bahir; pradan
stock_out hi: jaavak; kharch; nikas; upyog; nikala
stock_out vi: xuat; so xuat; xuat kho; su dung; dung
stock_out th: chai; chai pai; ok; choi
stock_out ar: صادر; الصادر; المنصرف; الخارج; المستهلك
transferred en: transferred; transfer; moved; transfer to; transfer from; transfer in; transfer out; moved to; ~trf; transferred to; restocked; to tank; from tank; ~t/f; shifted; relocated
transferred fr: transfert; transfere; transferes; vers bac; transfert vers; provenance; transvases; de / vers; dedoublement
transferred pt: transferencia; transferido; transf.; para o tanque; transferidos; repicagem; remanejado
transferred es: traslado; traslados; trasladados; hacia; desdoble
transferred id: pindah; dipindahkan; mutasi; pindah ke; dipindah
transferred ms: pindahan
transferred sw: waliohamishwa; kuhamisha; hamishwa; kutoka / kwenda
transferred ha: canja wuri; mayar
transferred bn: sthanantor; shoriye neya; sthananto
transferred hi: sthanantaran; badla gaya
transferred vi: chuyen; san ao; chuyen ao; sang ao; chuyen be; san thua
transferred th: yai; yai bo
transferred ar: نقل; منقول; تحويل; محول الي
sold_number en: sold; number sold; qty sold; no sold; sales; sale; pieces sold; pcs sold; fish sold; quantity sold; sold (pcs); fingerlings sold; sold out; quantity; ~qty; pcs; qty bought; pieces; quantity supplied; fries sold; nos sold; sold (lakh); sale qty; kg sold; nos
sold_number pcm: how many you sell; sell
sold_number fr: vendus; vendu; nombre vendu; qte vendue; ventes; nb vendus; vente; quantite vendue; alevins vendus
sold_number pt: vendidos; vendido; quantidade vendida; qtd vendida; vendas; venda; unidades; milheiro; nº vendidos
sold_number es: n° vendidos; cantidad vendida; ventas; cant. vendida; venta; und.; millar
sold_number id: terjual; jumlah terjual; penjualan; laku; dijual; ekor terjual; jual
sold_number ms: jualan; bilangan dijual; kuantiti dijual; jumlah jualan
sold_number sw: waliouzwa; idadi iliyouzwa; mauzo; zilizouzwa; walionunuliwa
sold_number ha: an sayar; yawan da aka sayar; sayarwa; siyarwa
sold_number yo: tita; iye ti a ta; eyi ti a ta
sold_number ig: ahia erere; onuogu erere
sold_number bn: bikri; bikroy; koto bikri; bikri songkha; becha
sold_number hi: kitna becha; vikray; bika
sold_number vi: ban; so luong ban; sl ban; da ban; so con ban; xuat ban
sold_number th: khai; chamnuan khai; khai dai
sold_number ar: المباع; عدد المباع; الكميه المباعه; المبيعات; بيع
sold_weight en: weight sold; kg sold; kilos sold; sold (kg)
sold_weight fr: poids vendu; kg vendus; vendu (kg)
sold_weight pt: peso vendido; kg vendidos; vendido (kg)
sold_weight es: libras vendidas
sold_weight id: berat terjual; kg terjual
sold_weight ms: berat dijual; kg dijual
sold_weight sw: uzito uliouzwa; kilo zilizouzwa
sold_weight bn: bikrir ojon; koto kg bikri
sold_weight hi: bika vajan; kitne kilo becha
sold_weight vi: khoi luong ban; so kg ban
sold_weight ar: الوزن المباع
buyer en: buyer; customer; client; sold to; farm name; customer name; purchaser; name of buyer; buyer name; dealer; customer phone; off-taker; farmer; cust.; buyer's name; aboki; party; party name; aratdar; paikar; patilwala
buyer pcm: who buy am; who buy
buyer fr: acheteur; nom du client; acquereur; vendu a; beneficiaire
buyer pt: cliente; comprador; nome do cliente; vendido a
buyer es: nombre del cliente
buyer id: pembeli; pelanggan; nama pembeli; bakul; pengepul; konsumen
buyer ms: peraih
buyer sw: mnunuzi; mteja; jina la mnunuzi; jina la mteja
buyer ha: mai saye; mai siya; kwastoma; abokin ciniki
buyer yo: onibaara; olura
buyer ig: onye zuru; onye ahia
buyer bn: kreta; kustomar; khoddar; grahok
buyer hi: kharidar; grahak; vyapari; kharidaar
buyer vi: nguoi mua; khach hang; khach; thuong lai; ten khach
buyer th: luk kha; phu sue; phoka
buyer ar: المشتري; العميل; اسم العميل; الزبون; التاجر
supplier en: supplier; source; bought from; vendor; origin; supplied by
supplier fr: fournisseur; provenance; origine; achete chez
supplier pt: fornecedor; procedencia; origem
supplier es: proveedor; origen
supplier id: pemasok; asal; sumber; asal benih
supplier ms: pembekal
supplier sw: msambazaji; muuzaji; chanzo
supplier bn: sorborahokari; utsho; bikreta
supplier hi: vikreta; srot
supplier vi: nha cung cap; nguon; nguon giong; noi mua
supplier ar: المورد; المصدر; البايع
price en: price; unit price; rate; price per piece; price each; per fish; cost each; ~@; price/pc; price (n); selling price; unit cost; price per kg; price/kg; per 1000; price (₦); per one; last price; amount per piece; how much one; price (kes); ksh; ugx; tsh; rate/1000; rate per kg; tk; taka; rs; price/lakh; ₹; ~/-
price pcm: how much
price fr: prix; prix unitaire; ~pu; ~p.u.; prix/alevin; tarif; prix de vente; ~pv; fcfa; f cfa; ~f; xaf; xof
price pt: preco; preco unitario; p. unit.; valor unitario; preco/milheiro; r$; mt; kz; preco de venda
price es: precio; precio unitario; precio/millar; $; precio de venta; s/; bs
price id: harga; harga satuan; harga/ekor; rp; harga per ekor; ~hrg; rp/ekor; harga jual
price ms: harga seunit; rm
price sw: bei; bei kwa kimoja; bei ya kila mmoja; bei moja; tzs; sh.; ~/=
price ha: farashi; kudi; naira; farashin daya; kudin daya
price yo: iye owo; owo; iye owo eyo kan
price ig: ego; onu ahia; onu ego
price bn: dam; dor; mullo; dar; proti hajar
price hi: daam; kimat; bhav; rupaye; keemat
price vi: gia; don gia; gia ban; d/con; dong; vnd; gia/con
price th: rakha; baht; rakha to tua
price ar: السعر; سعر الوحده; سعر; ثمن; ج.م; جنيه
amount en: amount; value; total amount; sales value; revenue; ~amt; sales (n); total price; total cost; cost; sum; amount (₦); turnover; total sales; amount (n); total money; amount paid; money; amount (tk); amount (rs); ~amt.; value (tk)
amount pcm: how much all
amount fr: montant; valeur; ~mt; recette; chiffre d'affaires; ~ca; montant total; prix total; ~pt; somme
amount pt: valor; valor total; montante; receita; faturamento; total (r$); importancia; quantia
amount es: monto; importe; ingreso; monto total; venta total; total ($)
amount id: jumlah; nilai; total harga; jumlah (rp); omset; pendapatan; nominal
amount ms: amaun; jumlah (rm); hasil jualan
amount sw: kiasi; jumla; thamani; kiasi cha pesa; pesa; fedha
amount ha: adadi; kudi; jimilla
amount yo: apapo owo; owo
amount ig: ego ole; mkpokota ego
amount bn: mot taka; poriman; taka; mullo; mot mullo
amount hi: rashi; rakam; kul rashi; raashi
amount vi: thanh tien; so tien; tong tien; gia tri; ~tt
amount th: chamnuan ngoen; ruam ngoen; pen ngoen
amount ar: المبلغ; القيمه; الاجمالي; قيمه المبيعات; مبلغ
deposit en: deposit; advance; down payment; part payment; prepaid; ~adv.; ~dep.; paid in advance; booking; booking fee; deposit paid; first payment; commitment fee; bayna; token; booking money; dadan
deposit pcm: small money first
deposit fr: acompte; avance; arrhes; versement; avance versee; avance percue
deposit pt: sinal; adiantamento; deposito; entrada; adiantado
deposit es: anticipo; abono; sena; adelanto; a cuenta
deposit id: ~dp; uang muka; panjar; persekot; tanda jadi
deposit ms: wang pendahuluan; cengkeram; bayaran muka; wang muka
deposit sw: malipo ya awali; arubuni; dhamana; kianzio; advansi
deposit ha: ajiya; kudin gaba; wani bangare
deposit bn: ogrim; bayana; joma; agrim; dadon
deposit hi: peshgi; jama
deposit vi: dat coc; tien coc; tam ung; coc; ung truoc
deposit th: mat cham; ngoen mat cham
deposit ar: عربون; دفعه مقدمه; مقدم; العربون
paid en: paid; amount paid; payment; cash; transfer; mode of payment; paid?; receipt no; invoice no; cash paid; part paid; ~pos; mobile money; m-pesa; ~momo
paid fr: paye; verse; encaisse; reglement; especes; recu n°; facture; mode de paiement; encaissement
paid pt: pago; valor pago; pagamento; recebido; dinheiro; fatura; recibo; pix
paid es: pagado; cancelado; efectivo; factura; abonado
paid id: dibayar; lunas; bayar; tunai; nota; kwitansi; sudah bayar
paid ms: bayaran; resit; invois; selesai
paid sw: amelipa; malipo; kulipwa; taslimu; risiti; imelipwa
paid ha: an biya; biya; rasiti
paid bn: porishodh; prodan; nogod; joma; diyeche
paid hi: bhugtan; chukta; nakad; diya; raseed
paid vi: da tra; thanh toan; tra; tien mat; hoa don; da thanh toan
paid ar: المدفوع; دفع; نقدا; الفاتوره; ايصال; المسدد
balance en: balance; balance due; outstanding; owing; debt; ~bal.; due; amount due; to pay; arrears; receivable; credit; balance to pay; remain balance; owe; outstanding bal; dues; baki; baki taka
balance pcm: wetin remain to pay; who dey owe
balance fr: solde; reste a payer; reste; du; dette; ~rap; creance; impaye
balance pt: saldo; saldo devedor; em falta; a receber; divida; restante; em aberto; fiado
balance es: saldo pendiente; por cobrar; debe; deuda; pendiente; credito
balance id: sisa; sisa bayar; kurang; hutang; piutang; belum bayar; utang; bon
balance ms: baki perlu dibayar; tunggakan
balance sw: salio; deni; anadaiwa; inayodaiwa
balance ha: bashi; saura; sauran kudi
balance yo: gbese; eyi to ku
balance ig: ugwo; ego foduru
balance bn: bokeya; pawna; dena
balance hi: baaki; udhar; bakaya; udhaar
balance vi: con no; no; con lai; cong no; thieu
balance th: khang; khang chamra; yot khang
balance ar: الباقي; المتبقي; المستحق; دين; اجل
cost en: cost; expenses; expense; expenditure; spending; item; description; cost of feed; feed cost; labour; labour cost; wages; salary; fuel; diesel; petrol; electricity; power; transport; transportation; hormone cost; artemia cost; chemicals; rent; repairs; maintenance; miscellaneous; misc.; other costs; total cost; overheads; drugs; packaging; oxygen (cylinder); brood fish cost; depreciation; loan; interest; logistics; fuel (gen); gen fuel; phcn; nepa bill; light bill; recharge card; logistic; water treatment and drugs; workmanship; feeding; casual labour; airtime; fare; stima; labour charge; carrying cost; electric bill; lease value; oil; conveyance; carrying
cost pcm: money wey we spend; feed money; light money; fuel money; transport money
cost fr: cout; charges; depenses; depense; libelle; designation; frais; main d'œuvre; ~mo; salaire; salaires; carburant; gasoil; essence; electricite; cout aliment; loyer; entretien; reparations; divers; cout total; amortissement; intrants; produits veterinaires; eau
cost pt: custo; custos; despesa; despesas; descricao; mao de obra; mao-de-obra; salario; combustivel; gasoleo; gasolina; energia; luz; transporte; frete; custo da racao; aluguel; renda; manutencao; diversos; outros; insumos; depreciacao; custo total
cost es: costo; costos; coste; gasto; gastos; egresos; detalle; concepto; descripcion; mano de obra; jornales; combustible; electricidad; flete; costo del alimento; alquiler; arriendo; mantenimiento; varios; otros; depreciacion; costo total
cost id: biaya; pengeluaran; uraian; keterangan; biaya pakan; tenaga kerja; gaji; upah; ~bbm; bensin; solar; listrik; ongkos; ongkir; sewa; perawatan; lain-lain; ~dll; total biaya; penyusutan; bahan
cost ms: kos; perbelanjaan; belanja; butiran; perkara; kos makanan; minyak; elektrik; pengangkutan; penyelenggaraan; jumlah kos; susut nilai
cost sw: gharama; matumizi; maelezo; gharama ya chakula; mishahara; kibarua; mafuta; umeme; usafiri; kodi; matengenezo; mengineyo; jumla ya gharama; nauli
cost ha: kudin kashewa; kashe kudi; kudin abinci; albashi; mai; wuta; sufuri; haya; gyara; sauransu
cost yo: inawo; owo ounje; owo ise; epo; owo ina; owo oko
cost ig: mmefu; ego nri; ugwo oru; mmanu; ego oku; ugbo ala
cost bn: khoroch; khorcha; byay; biboron; khabar khoroch; mojuri; beton; tel; biddut bill; poribohon; bhara; onnanno; mot khoroch; lease
cost hi: kharcha; kharch; lagat; vivaran; dana kharch; mazdoori; vetan; bijli; bhada; kiraya; anya; kul kharcha; marammat
cost vi: chi phi; chi; khoan chi; dien giai; noi dung; chi phi thuc an; nhan cong; luong; tien cong; xang; dau; dien; tien dien; van chuyen; thue; sua chua; khac; tong chi; khau hao; tien thuoc
cost th: kha chai chai; tonthun; kha ahan; kha raeng; kha fai; nam man; kha khon song; uen uen
cost ar: التكلفه; التكاليف; المصروفات; المصاريف; البيان; تكلفه العلف; العماله; اجور; وقود; كهرباء; نقل; ايجار; صيانه; اخري; اجمالي التكاليف
profit en: profit; net profit; gross profit; income; margin; loss; gain; net income; ~p/l; balance (profit); interest; wetin remain
profit fr: benefice; marge; resultat; perte; marge brute; marge nette; revenu
profit pt: lucro; margem; resultado; prejuizo; receita liquida; lucro liquido
profit es: utilidad; ganancia; beneficio; margen; perdida; utilidad neta; rentabilidad
profit id: laba; untung; keuntungan; rugi; laba bersih; laba rugi
profit ms: untung bersih; untung kasar
profit sw: faida; hasara; kipato; mapato; faida halisi
profit ha: riba; asara; ribar kudi
profit yo: ere; adanu
profit ig: uru; mfu
profit bn: labh; lav; munafa; loksan; lokshan; laav
profit hi: laabh; fayda; nuksan; ghata
profit vi: loi nhuan; lai; lo; loi; doanh thu
profit th: kamrai; khat thun
profit ar: الربح; صافي الربح; الخساره; الارباح; الايراد
remarks en: remarks; remark; notes; note; comments; comment; observation; observations; ~obs.; ~rem.; ~rmks; other; details; ~n.b.; action taken; reason; ~n/b
remarks pcm: wetin happen; any talk
remarks fr: remarques; remarque; commentaires; divers; ~nb; constat; autres
remarks pt: observacoes; observacao; notas; comentarios; anotacoes; ocorrencias
remarks es: observaciones; observacion; novedades; anotaciones
remarks id: keterangan; ~ket.; ~ket; catatan; kondisi; kondisi ikan
remarks ms: nota; ulasan; komen; pemerhatian
remarks sw: maoni; maelezo; kumbukumbu; mengineyo; maelezo mengine
remarks ha: bayani; lura; sharhi
remarks yo: akiyesi; oro
remarks ig: nkowa; ihe mere
remarks bn: montobbo; mantabya; montobyo; mantabbo
remarks hi: tippani; vivaran; vishesh; tippni
remarks vi: ghi chu; ghi chep; nhan xet; luu y; ~gc
remarks th: mai het; maihet; banthuek
remarks ar: ملاحظات; ملاحظه; تعليق; بيان
total_row en: total; totals; grand total; sum; total:; cumulative; ~cum.; overall; g/total; ~ttl; ~tot.; tatal; month total; weekly total; g. total; altogether; sum total
total_row pcm: everything; all join
total_row fr: totaux; total general; cumul; somme; total mois; ensemble; ~tg
total_row pt: totais; total geral; soma; acumulado; somatorio; total do mes
total_row es: totales; suma; gran total; sumatoria; total mes
total_row id: jumlah; ~jml; kumulatif; total keseluruhan
total_row ms: jumlah besar; jumlah keseluruhan; ~jum
total_row sw: jumla; jumla kuu; jumla yote
total_row ha: jimilla; jimla; jimillar duka; gaba daya
total_row yo: apapo; lapapo; gbogbo re
total_row ig: mkpokota; ngukota; ha niile
total_row bn: mot; shorbomot; sorbomot; jog
total_row hi: kul; kul yog; yog; jod
total_row vi: tong; tong cong; cong; ~tc; tong so
total_row th: ruam; ruam thang mot; yot ruam
total_row ar: المجموع; الاجمالي; المجموع الكلي; اجمالي
subtotal_row en: subtotal; sub-total; sub total; s/total; page total; week total
subtotal_row fr: sous-total; sous total; total page; a reporter
subtotal_row pt: parcial; total parcial; a transportar
subtotal_row es: van
subtotal_row id: jumlah sementara; sub jumlah
subtotal_row ms: jumlah kecil; subjumlah
subtotal_row sw: jumla ndogo
subtotal_row bn: upomot; upo-mot
subtotal_row hi: up-yog; upyog
subtotal_row vi: tong phu; cong trang; tam tinh
subtotal_row ar: المجموع الفرعي; المجموع الجزيي
average_row en: average; ~avg; mean; ~av.; min; max; minimum; maximum; ~sd; std dev; range; ~std; median
average_row fr: moyenne; ~moy.; moyennes; ecart-type; ~et; ecart type
average_row pt: media; ~med.; medias; ~min.; ~max.; desvio padrao; ~dp
average_row es: promedio; prom.; desv. est.; desviacion estandar; ~de
average_row id: rata-rata; rerata; rataan; maks; rata2
average_row ms: purata; sisihan piawai
average_row sw: wastani; kiwango cha chini; kiwango cha juu
average_row ha: matsakaici
average_row yo: ipindogba
average_row ig: nkezi
average_row bn: gor; gorh; gar
average_row hi: ausat; aasat
average_row vi: trung binh; ~tb; binh quan; ~bq; nho nhat; lon nhat
average_row th: chalia; kha chalia
average_row ar: المتوسط; متوسط; المعدل; الوسط الحسابي
carried_forward_row en: brought forward; carried forward; ~b/f; ~c/f; ~b/d; ~c/d; balance b/f
carried_forward_row fr: report; a reporter; reporte; report a nouveau
carried_forward_row pt: transporte; a transportar; saldo transportado; transportado
carried_forward_row es: vienen; van; saldo anterior; pasan
carried_forward_row id: pindahan; saldo pindahan; dipindahkan
carried_forward_row ms: baki bawa ke hadapan; ~b/h; ~h/b
carried_forward_row sw: salio lililoletwa; salio linaloendelea
carried_forward_row vi: mang sang; chuyen sang; cong mang sang
carried_forward_row ar: ما قبله; ما بعده; منقول
target_plan_row en: target; plan; planned; expected; budget; standard; norm; actual; required; projected; estimate; ~est.
target_plan_row fr: objectif; prevu; prevision; norme; realise; attendu; reel
target_plan_row pt: meta; previsto; planejado; padrao; realizado; real; esperado
target_plan_row es: planificado; estandar; presupuesto; proyectado
target_plan_row id: rencana; standar; realisasi; perkiraan; estimasi
target_plan_row ms: sasaran; rancangan; anggaran; sebenar; jangkaan
target_plan_row sw: lengo; mpango; makadirio; halisi
target_plan_row vi: ke hoach; muc tieu; du kien; thuc te; dinh muc
target_plan_row ar: المستهدف; المخطط; المتوقع; الفعلي
value_nil en: nil; fasting; fasted; fast; no feed; not fed; -; –; —; 0; none; no; zero; o; ~n/l; no mortality; no death; nill; no mort
value_nil pcm: nothing; no dey; e no dey
value_nil fr: neant; jeun; a jeun; jeune; pas nourri; rien; aucun; aucune; r.a.s.; ~ras; pas de mortalite; nul
value_nil pt: nenhum; jejum; em jejum; sem racao; nenhuma; nada; nulo; sem; sem mortalidade
value_nil es: ninguno; ayuno; en ayuno; sin alimento; ninguna; cero; sin novedad; ~s/n; sin mortalidad
value_nil id: nihil; puasa; dipuasakan; tidak ada; nol; tdk ada; kosong; tidak ada kematian
value_nil ms: tiada; tiada kematian; sifar
value_nil sw: hakuna; kufunga; hawajalishwa; sifuri; hamna; bila
value_nil ha: babu; ba komai; ba ko daya; sifili
value_nil yo: ko si; rara; odo
value_nil ig: enweghi; o dighi; efu
value_nil bn: nai; nei; shunno; kono na
value_nil hi: nahi; nahin; shunya; koi nahi
value_nil vi: khong; khong co; ~ko; ~k; kg co
value_nil th: mai mi; sun
value_nil ar: لا يوجد; لاشيء; صفر; لا شيء
value_missing en: ~n/a; ~na; ~n.a.; ~nr; ~n.r.; not recorded; not taken; not measured; not done; ~nd; ?; missing; forgot; no reading; meter bad; battery dead; ill; -; x; ~nm; pending; to be counted; not available; meter spoil; no light; not counted; yet to count
value_missing pcm: we no check; we no count; meter don spoil; we forget
value_missing fr: ~n.d.; ~np; non releve; pas fait; non mesure; manquant; non compte; illisible; en panne; sans objet; ~s.o.
value_missing pt: nao medido; nao registrado; nao registado; sem leitura; ~s/l; s/ leitura; sem dados; ~s/d; nao contado
value_missing es: no medido; no registrado; sin dato; sin lectura; no se midio; ~n/r
value_missing id: tidak diukur; tdk diukur; belum; tidak dicatat; tidak tercatat; rusak; kosong; belum dihitung
value_missing ms: tidak direkod; tiada rekod; tiada bacaan; belum dikira
value_missing sw: haikupimwa; haikurekodiwa; bado; hakijapimwa; haijulikani; haijahesabiwa
value_missing ha: ba a auna ba; ba a rubuta ba; tukuna
value_missing bn: mapa hoyni; lekha nai; jana nai; gona hoyni
value_missing hi: nahi napa; darj nahi; pata nahi; gina nahi
value_missing vi: khong do; chua do; chua ghi; ~k do; quen; chua dem; ko do
value_missing th: mai dai wat; mai dai banthuek
value_missing ar: غير مسجل; لم يقاس; ~غ.م; غير متوفر; لم يسجل
value_same en: ~do; ditto; "; ''; same; ~-do-; as above; idem; ″; same as above; ,,
value_same fr: ~id.; meme; dito; meme chose; ibid.
value_same pt: mesmo; igual; o mesmo
value_same es: lo mismo; mismo
value_same id: ~sda; sama; s.d.a
value_same ms: seperti di atas
value_same sw: kama hapo juu; vilevile; ile ile
value_same bn: oi; ekoi
value_same hi: vahi; upar jaisa; wahi
value_same vi: nhu tren; ~nt; ~n.t.
value_same ar: مثله; كما سبق
value_approx en: approx; approx.; about; ~abt; ~; ~ca.; ~c.; ±; around; ~est.; estimated; roughly; over; more than; less than; >; <; +; almost; plus; up to; min.; max.; nearly; or so; like; something; close to
value_approx pcm: reach; pass; e never reach
value_approx fr: ~env.; environ; a peu pres; plus de; moins de; autour de; presque; pres de; estime; de l'ordre de
value_approx pt: aprox.; cerca de; mais ou menos; +/-; mais de; menos de; quase; estimado; em torno de; por volta de
value_approx es: mas o menos; mas de; casi; alrededor de; unos
value_approx id: kira-kira; sekitar; kurang lebih; krg lbh; ~k.l.; lebih dari; kurang dari; hampir; perkiraan; kira2
value_approx ms: lebih kurang; anggaran; lebih; kurang; ~dlm; ~lk
value_approx sw: kama; takriban; karibu; zaidi ya; chini ya; makadirio; hivi
value_approx ha: kamar; kusan; fiye da; kasa da; wajen
value_approx yo: bi i; nnkan bi; ju; o le
value_approx ig: di ka; ihe di ka; kariri
value_approx bn: pray; proay; moto; beshi; kom; anumanik; er moto
value_approx hi: lagbhag; kareeb; karib; se zyada; se kam; andaazan
value_approx vi: khoang; gan; hon; tren; duoi; uoc; do; chung; tam; xap xi
value_approx th: pramaan; rao; rao rao; kwa
value_approx ar: حوالي; تقريبا; اكثر من; اقل من; نحو
value_multiplier en: k; thousand; '000; x1000; mil; m; million; doz; hundred; pairs; 000s; thou; ×10³; bn; lakh; lac; lakhs; l; t; crore; cr; hazar; pon; kuri
value_multiplier pcm: one k; five k
value_multiplier fr: mille; millier; milliers; cent; centaine
value_multiplier pt: milheiro; milhao; cento; mi; duzia; dz
value_multiplier es: millar; millon; docena; ciento; quintal; mm
value_multiplier id: ribu; rb; ribuan; juta; jt; ratus; lusin; kodi; rean; rp rb
value_multiplier ms: dozen
value_multiplier sw: elfu; elf; laki; mia; milioni; dazani; alfu
value_multiplier ha: dubu; dari; miliyan; jika; zambar; d
value_multiplier yo: egberun; ogorun-un; milionu
value_multiplier ig: puku; nari; nde
value_multiplier bn: hajar; lokkho; koti; sho; hali; dojon
value_multiplier hi: hazaar; karod; sau; darjan; sainkda
value_multiplier vi: nghin; ngan; ng; trieu; tr; van; tram; chuc; thien; n
value_multiplier th: phan; muen; saen; lan; roi
value_multiplier ar: الف; الاف; مليون; مايه; ميه; دسته
value_daypart en: ~am; ~pm; ~a.m.; ~p.m.; noon; midnight; 12 noon; morning; evening; night; afternoon; ~hrs; o'clock; hours; mid-night; dawn; mid night; early mo-mo; 12 midnight
value_daypart fr: matin; midi; soir; nuit; minuit; apres-midi; 22h30; 22h; 6h; 8h; 17h; 22:30; du matin; du soir; aube
value_daypart pt: manha; tarde; noite; meio-dia; meia-noite; 22h30min; 22:30h; madrugada; da manha; da tarde; da noite
value_daypart es: manana; noche; mediodia; medianoche; 22:30 h; 10:30 p.m.; a. m.; p. m.; 6 h 30; de la manana; de la noche; ~m.
value_daypart id: pagi; siang; sore; malam; tengah malam; 22.30; pukul 22.30; jam 10 malam; subuh; dini hari; petang
value_daypart ms: tengah hari; ~pg; ~ptg; 10.30 mlm; 10.30 malam; tgh hari
value_daypart sw: asubuhi; mchana; jioni; usiku; alfajiri; adhuhuri; saa 4 usiku; saa sita mchana; usiku wa manane
value_daypart ha: safe; safiya; rana; yamma; dare; karfe 10 na dare; goma na safe; asuba; magariba
value_daypart yo: aaro; osan; irole; ale; oru
value_daypart ig: ututu; ehihie; mgbede; abali
value_daypart bn: shokal; sokal; dupur; bikal; shondha; raat; rat 10 ta; bhor; ta
value_daypart hi: subah; dopahar; shaam; raat 10 baje; sham; savere
value_daypart vi: sang; trua; chieu; toi; dem; 22g30; 10 gio toi; 9 gio 30; khuya; ~sa; ~ch
value_daypart th: chao; thiang; bai; yen; klang khuen; thum; ti; thiang khuen; ~n.
value_daypart ar: صباحا; مساء; ظهرا; ~ص; ~م; ليلا; فجرا; منتصف الليل
month_01 en: january; ~jan; ~janu; ~jany
month_01 pcm: jenuari; ~jen
month_01 fr: janvier; janv.; ~janv
month_01 pt: janeiro; ~jan.
month_01 es: enero; ~ene
month_01 id: januari
month_01 sw: mwezi wa kwanza
month_01 ha: janairu
month_01 yo: osu sere
month_01 ig: jenuwari
month_01 bn: জানুযারি; ~জানু
month_01 hi: जनवरी; ~जन॰; janvari; janwari
month_01 vi: thang 1; ~t1; ~th1; ~thg1
month_01 th: มกราคม; ~ม.ค.; makarakhom; mokkarakhom
month_01 ar: يناير; كانون الثاني; جانفي
month_02 en: february; ~feb; ~febr; ~feby
month_02 pcm: febuari
month_02 fr: fevrier; fevr.; ~fev
month_02 pt: fevereiro; ~fev.
month_02 es: febrero
month_02 id: februari; pebruari; ~peb
month_02 sw: mwezi wa pili
month_02 ha: faburairu; ~fab
month_02 yo: osu erele
month_02 ig: februwari
month_02 bn: ফেবরুযারি; ~ফেব
month_02 hi: फरवरी; ~फर॰; farvari; farwari
month_02 vi: thang 2; ~t2; ~th2; ~thg2
month_02 th: กมภาพันธ์; ~ก.พ.; kumphaphan
month_02 ar: فبراير; شباط; فيفري
month_03 en: march; ~mar; ~mrch
month_03 pcm: mach
month_03 fr: mars
month_03 pt: marco; ~mar.
month_03 es: marzo
month_03 id: maret; ~mrt
month_03 ms: mac
month_03 sw: machi; mwezi wa tatu
month_03 ha: maris
month_03 yo: osu erena
month_03 ig: maachi; ~maa
month_03 bn: মারচ
month_03 hi: मारच; maarch
month_03 vi: thang 3; ~t3; ~th3; ~thg3
month_03 th: มีนาคม; มี.ค.; minakhom
month_03 ar: مارس; اذار
month_04 en: april; ~apr; ~apl
month_04 pcm: eprel; ~epr
month_04 fr: avril; ~avr.; ~avr
month_04 pt: abril; ~abr.; ~abr
month_04 sw: aprili; mwezi wa nne
month_04 ha: afirilu; ~afi
month_04 yo: osu igbe
month_04 ig: epreel
month_04 bn: এপরিল; epril
month_04 hi: अपरैल; aprail
month_04 vi: thang 4; ~t4; ~th4; ~thg4
month_04 th: เมษายน; เม.ย.; mesayon
month_04 ar: ابريل; نيسان; افريل
month_05 en: may
month_05 pcm: mee
month_05 fr: mai
month_05 pt: maio; ~mai.
month_05 es: mayo
month_05 id: mei
month_05 sw: mwezi wa tano
month_05 ha: mayu
month_05 yo: osu ebibi
month_05 bn: মে; ~mey; ~me
month_05 hi: मई
month_05 vi: thang 5; ~t5; ~th5; ~thg5
month_05 th: พฤษภาคม; ~พ.ค.; phruetsaphakhom
month_05 ar: مايو; ماي; ايار
month_06 en: june; ~jun; ~jn
month_06 fr: juin
month_06 pt: junho; ~jun.
month_06 es: junio
month_06 id: juni
month_06 sw: mwezi wa sita
month_06 ha: yuni; ~yun
month_06 yo: osu okudu
month_06 ig: ~juu
month_06 bn: জুন
month_06 hi: जून; ~joon
month_06 vi: thang 6; ~t6; ~th6; ~thg6
month_06 th: มิถนายน; มิ.ย.; mithunayon
month_06 ar: يونيو; حزيران; جوان
month_07 en: july; ~jul; ~jly
month_07 pcm: julai
month_07 fr: juillet; juil.; ~juil; juill
month_07 pt: julho; ~jul.
month_07 es: julio
month_07 id: juli
month_07 sw: mwezi wa saba
month_07 ha: yuli; ~yul
month_07 yo: osu agemo
month_07 bn: জুলাই
month_07 hi: जुलाई; ~जुल॰
month_07 vi: thang 7; ~t7; ~th7; ~thg7
month_07 th: กรกฎาคม; ~ก.ค.; karakadakhom
month_07 ar: يوليو; يوليوز; تموز; جويليه
month_08 en: august; ~aug; ~agst; augst
month_08 pcm: ogost; ~ogo
month_08 fr: aout; ~aou
month_08 pt: agosto; ~ago.; ~ago
month_08 id: agustus; ~agu; ~agt; ~ags; agust
month_08 ms: ogos
month_08 sw: agosti; mwezi wa nane
month_08 ha: agusta
month_08 yo: osu ogun
month_08 ig: ogoost
month_08 bn: আগসট; agost
month_08 hi: अगसत; ~अग॰; agast
month_08 vi: thang 8; ~t8; ~th8; ~thg8
month_08 th: สิงหาคม; ~ส.ค.; singhakhom
month_08 ar: اغسطس; غشت; اب; اوت
month_09 en: september; ~sep; ~sept; septr
month_09 pcm: septemba
month_09 fr: septembre; sept.
month_09 pt: setembro; ~set.; ~set
month_09 es: septiembre; setiembre
month_09 sw: mwezi wa tisa
month_09 ha: satumba; ~sat
month_09 yo: osu owewe
month_09 bn: সেপটেমবর; ~সেপট; septembor
month_09 hi: सितंबर; ~सित॰; sitambar
month_09 vi: thang 9; ~t9; ~th9; ~thg9
month_09 th: กันยายน; ~ก.ย.; kanyayon
month_09 ar: سبتمبر; شتنبر; ايلول
month_10 en: october; ~oct; ~octr
month_10 pcm: oktoba; ~okt
month_10 fr: octobre; ~oct.
month_10 pt: outubro; ~out.; ~out
month_10 es: octubre
month_10 id: oktober
month_10 sw: mwezi wa kumi
month_10 yo: osu owara
month_10 bn: অকটোবর; অকটো; oktobor
month_10 hi: अकटूबर; अकटू॰; aktubar; aktoobar
month_10 vi: thang 10; ~t10; ~th10; thg10
month_10 th: ตลาคม; ~ต.ค.; tulakhom
month_10 ar: اكتوبر; تشرين الاول
month_11 en: november; ~nov; ~novr
month_11 pcm: novemba
month_11 fr: novembre; ~nov.
month_11 pt: novembro
month_11 es: noviembre
month_11 id: ~nop; nopember
month_11 sw: mwezi wa kumi na moja
month_11 ha: nuwamba; ~nuw
month_11 yo: osu belu
month_11 bn: নভেমবর; nobhembor
month_11 hi: नवंबर; ~नव॰; navambar
month_11 vi: thang 11; ~t11; ~th11; thg11
month_11 th: พฤศจิกายน; ~พ.ย.; phruetsachikayon
month_11 ar: نوفمبر; نونبر; تشرين الثاني
month_12 en: december; ~dec; ~decr
month_12 pcm: disemba; ~dis
month_12 fr: decembre; ~dec.
month_12 pt: dezembro; ~dez.; ~dez
month_12 es: diciembre; ~dic
month_12 id: desember; ~des
month_12 ms: disember
month_12 sw: desemba; mwezi wa kumi na mbili
month_12 ha: disamba
month_12 yo: osu ope
month_12 bn: ডিসেমবর; ~ডিসে; disembor
month_12 hi: दिसंबर; ~दिस॰; disambar
month_12 vi: thang 12; ~t12; ~th12; thg12
month_12 th: ธันวาคม; ~ธ.ค.; thanwakhom
month_12 ar: ديسمبر; دجنبر; كانون الاول
weekday_mon en: monday; ~mon; ~mond
weekday_mon pcm: monde
weekday_mon fr: lundi; ~lun.; ~lun; ~l
weekday_mon pt: segunda-feira; ~seg.; ~2ª; ~2a; 2ª-feira; segunda
weekday_mon es: lunes; ~lu
weekday_mon id: senin; ~sen; ~snn
weekday_mon ms: isnin; ~isn
weekday_mon sw: jumatatu; ~j3; jtatu
weekday_mon ha: litinin; ~lit; litini
weekday_mon yo: aje
weekday_mon bn: সোমবার; ~সোম; shombar; sombar
weekday_mon hi: सोमवार; ~सोम; somvar; somwar
weekday_mon vi: thu hai; thu 2; ~t2
weekday_mon th: วันจันทร์; จันทร์; wan chan
weekday_mon ar: الاثنين; اثنين
weekday_tue en: tuesday; ~tue; ~tues
weekday_tue pcm: tiuzde; ~tiu
weekday_tue fr: mardi; ~mar.; ~mar; ~ma
weekday_tue pt: terca-feira; ~ter.; ~3ª; ~3a; 3ª-feira; terca
weekday_tue es: martes; ~m
weekday_tue id: selasa; ~sel; ~sls
weekday_tue sw: jumanne; ~j4; ~jnne
weekday_tue ha: talata; ~tal
weekday_tue yo: isegun; tuside
weekday_tue ig: tiuzdee; tuzde
weekday_tue bn: মঙগলবার; ~মঙগল; mongolbar; mangalbar
weekday_tue hi: मंगलवार; ~मंगल; mangalvar; mangal
weekday_tue vi: thu ba; thu 3; ~t3
weekday_tue th: วันอังคาร; อังคาร; wan angkhan
weekday_tue ar: الثلاثاء; ثلاثاء
weekday_wed en: wednesday; ~wed; ~weds; wednes
weekday_wed pcm: wenezde; ~wen
weekday_wed fr: mercredi; ~mer.; ~mer; ~me
weekday_wed pt: quarta-feira; ~qua.; ~4ª; ~4a; 4ª-feira; quarta
weekday_wed es: miercoles; ~mie; ~mi; ~x
weekday_wed id: rabu; ~rab; ~rb
weekday_wed sw: jumatano; ~j5; jtano
weekday_wed ha: laraba; ~lar
weekday_wed yo: ojoru; weside
weekday_wed ig: wenezdee
weekday_wed bn: বুধবার; ~বুধ; budhbar
weekday_wed hi: बुधवार; ~बुध; budhvar; ~budh
weekday_wed vi: thu tu; thu 4; ~t4
weekday_wed th: วันพธ; ~พธ; wan phut
weekday_wed ar: الاربعاء; اربعاء
weekday_thu en: thursday; ~thu; ~thur; thurs
weekday_thu pcm: tozde; ~toz
weekday_thu fr: jeudi; ~jeu.; ~jeu; ~j
weekday_thu pt: quinta-feira; ~qui.; ~5ª; ~5a; 5ª-feira; quinta
weekday_thu es: jueves; ~jue; ~ju
weekday_thu id: kamis; ~kam; ~kms
weekday_thu ms: khamis; ~kha
weekday_thu sw: alhamisi; ~alh
weekday_thu ha: alhamis
weekday_thu yo: ojobo; toside
weekday_thu ig: toozdee; ~too
weekday_thu bn: বৃহসপতিবার; বৃহসপতি; brihoshpotibar; brihaspatibar
weekday_thu hi: गुरुवार; ~गुरु; guruvar; brihaspativar; veervar
weekday_thu vi: thu nam; thu 5; ~t5
weekday_thu th: วันพฤหัสบดี; พฤหัส; wan pharuehat
weekday_thu ar: الخميس; ~خميس
weekday_fri en: friday; ~fri
weekday_fri pcm: fraide; ~frai
weekday_fri fr: vendredi; ~ven.; ~ven; ~v
weekday_fri pt: sexta-feira; ~sex.; ~6ª; ~6a; 6ª-feira; sexta
weekday_fri es: viernes; ~vie; ~vi
weekday_fri id: jumat; ~jum; ~jmt
weekday_fri ms: jumaat
weekday_fri sw: ijumaa; ~ij
weekday_fri ha: jummaʼa; jumma'a; juma'a
weekday_fri yo: eti; furaide
weekday_fri ig: fraidee
weekday_fri bn: শুকরবার; ~শুকর; shukrobar; shukrabar; jummabar
weekday_fri hi: शुकरवार; ~शुकर; shukravar; shukrawar; jumma
weekday_fri vi: thu sau; thu 6; ~t6
weekday_fri th: วันศกร์; ~ศกร์; wan suk
weekday_fri ar: الجمعه; ~جمعه
weekday_sat en: saturday; ~sat; satur
weekday_sat pcm: satode
weekday_sat fr: samedi; ~sam.; ~sam; ~s
weekday_sat pt: sabado; ~sab.; ~sab
weekday_sat es: ~sa
weekday_sat id: sabtu; ~sbt
weekday_sat sw: jumamosi; ~j1; jmosi
weekday_sat ha: asabar; ~asa; asabat; assabar
weekday_sat yo: abameta; satide
weekday_sat ig: satodee
weekday_sat bn: শনিবার; ~শনি; shonibar; shanibar
weekday_sat hi: शनिवार; ~शनि; shanivar; shaniwar
weekday_sat vi: thu bay; thu 7; ~t7
weekday_sat th: วันเสาร์; เสาร์; wan sao
weekday_sat ar: السبت; ~سبت
weekday_sun en: sunday; ~sun; ~sund
weekday_sun pcm: sonde; ~son
weekday_sun fr: dimanche; ~dim.; ~dim; ~d
weekday_sun pt: domingo; ~dom.; ~dom
weekday_sun es: ~do
weekday_sun id: minggu; ~min; ~mgg; ~ahad
weekday_sun ms: ~ahd
weekday_sun sw: jumapili; ~j2; jpili
weekday_sun ha: lahadi; ~lah
weekday_sun yo: aiku
weekday_sun ig: sondee
weekday_sun bn: রবিবার; ~রবি; robibar; rabibar
weekday_sun hi: रविवार; ~रवि; ravivar; itvar; itwar
weekday_sun vi: chu nhat; ~cn
weekday_sun th: วันอาทิตย์; อาทิตย์; wan athit
weekday_sun ar: الاحد; ~احد
month en: month; month of
month fr: mois
month pt: mes
month es: mes
month id: bulan; bln
month ms: bulan
month sw: mwezi
month vi: thang
month bn: mash; mas
month hi: mahina
month ar: شهر; الشهر
month ha: wata
serial en: s/n; ~sn; ~sl; sl no; sl. no; serial; serial no; line; line no; item no; no.; ~#; row
serial fr: ~no; ~n°; numero d'ordre; ligne
serial pt: ~no; ~n.; item; ordem; linha
serial es: ~no; ~n.; item; orden
serial id: ~no; nomor; nomor urut
serial ms: bil; bil.
serial sw: ~na; namba
serial vi: stt; so thu tu
serial bn: kromik; kro no
serial ar: ~م; مسلسل; رقم
receipt en: receipt; receipt no; invoice; invoice no; bill no; voucher; voucher no; ticket; memo no
receipt fr: recu; no recu; facture; no facture; bon; no bon
receipt pt: recibo; no recibo; fatura; nota; nota fiscal
receipt es: recibo; no recibo; factura; boleta; no factura
receipt id: kwitansi; no kwitansi; nota; no nota; faktur
receipt ms: resit; no resit; invois
receipt sw: risiti; stakabadhi
receipt vi: so phieu; hoa don; bien lai
receipt bn: rosid; memo
receipt ar: ايصال; فاتوره; رقم الفاتوره
category en: category; type of expense; kind; head; account
category fr: categorie; rubrique; poste; nature
category pt: categoria; tipo; rubrica; conta
category es: categoria; rubro; tipo; cuenta
category id: kategori; jenis; pos
category ms: kategori; jenis
category sw: aina
category vi: loai; hang muc
category ar: فيه; نوع
description en: description; details; particulars; item; narration; what
description fr: libelle; designation; description; detail; objet; article
description pt: descricao; historico; discriminacao; artigo; produto
description es: descripcion; concepto; detalle; articulo
description id: keterangan; uraian; rincian; barang
description ms: perkara; butiran; keterangan
description sw: maelezo
description vi: dien giai; noi dung
description ar: بيان; البيان; الوصف
income en: income; receipts; money in; cash in; revenue; credit
income fr: recette; recettes; entree; entrees; encaissement; produits
income pt: receita; receitas; entrada; entradas; recebido
income es: ingreso; ingresos; entrada; entradas
income id: pemasukan; masuk; penerimaan; debet
income ms: pendapatan; masuk; terimaan
income sw: mapato
income vi: thu; thu nhap
income ar: ايراد; وارد; دخل
expense en: expense; expenses; expenditure; payments; money out; cash out; debit; spent
expense fr: depense; depenses; sortie; sorties; decaissement; charges
expense pt: despesa; despesas; saida; saidas; gasto; pagamento
expense es: gasto; gastos; egreso; egresos; salida; salidas
expense id: pengeluaran; keluar; kredit; biaya
expense ms: perbelanjaan; keluar; bayaran
expense sw: matumizi
expense vi: chi; chi phi
expense ar: مصروف; صادر; مصاريف
quantity en: quantity; qty; units; how many; number bought
quantity fr: quantite; qte; nombre
quantity pt: quantidade; qtd; qtde; quant
quantity es: cantidad; cant
quantity id: jumlah; banyaknya; kuantitas
quantity ms: kuantiti; bilangan; jumlah
quantity sw: kiasi; idadi
quantity vi: so luong; ~sl
quantity bn: poriman; shongkha
quantity ar: كميه; الكميه; عدد
unit_price en: unit price; unit cost; price per unit; rate; cost each; price per thousand
unit_price fr: prix unitaire; ~pu; p.u.; prix unit
unit_price pt: preco unitario; preco unit; valor unitario
unit_price es: precio unitario; precio unit; p. unitario
unit_price id: harga satuan; harga per unit
unit_price ms: harga seunit
unit_price sw: bei kwa kila
unit_price vi: don gia
unit_price bn: dor; dar
unit_price ar: سعر الوحده
sex en: sex; gender; m/f
sex fr: sexe
sex pt: sexo
sex es: sexo
sex id: jenis kelamin; ~jk; kelamin
sex ms: jantina
sex sw: jinsia
sex vi: gioi tinh
sex bn: lingo
sex ar: الجنس
origin en: origin; source; from where; obtained from
origin fr: origine; provenance; source
origin pt: origem; procedencia
origin es: origen; procedencia
origin id: asal; sumber
origin ms: asal; sumber
origin sw: asili
origin vi: nguon goc
origin ar: مصدر; المصدر
status en: status; state; condition; fate
status fr: etat; statut
status pt: estado; situacao; status
status es: estado; situacion
status id: status; kondisi
status ms: status; keadaan
status sw: hali
status vi: tinh trang
status ar: حاله; الحاله
end_time en: end; time out; end time; stop; finish; until
end_time fr: fin; heure fin; jusqu'a
end_time pt: fim; hora fim; termino
end_time es: fin; hora fin; termino
end_time id: selesai; jam selesai
end_time ms: tamat; masa tamat
end_time vi: ket thuc
end_time ar: نهايه
start_time en: start; time in; start time; begin; from
start_time fr: debut; heure debut; ~de
start_time pt: inicio; hora inicio
start_time es: inicio; hora inicio
start_time id: mulai; jam mulai
start_time ms: mula; masa mula
start_time vi: bat dau
start_time ar: بدايه
due_running en: running due; total due; due so far; outstanding total; balance b/f
due_running fr: cumul du; solde cumule
due_running pt: divida acumulada
due_running es: deuda acumulada
due_running id: total hutang
due_running bn: mot baki; jer; jer baki
due en: due; owing; owed; debt; credit balance; unpaid; balance due; outstanding
due fr: reste a payer; reste; ~du; dette; impaye; solde du
due pt: divida; em falta; a receber; falta pagar
due es: debe; deuda; por cobrar; pendiente
due id: hutang; piutang; sisa bayar; kurang
due ms: hutang; baki hutang
due sw: deni
due vi: con no; ~no
due bn: baki; paona
due ar: متبقي; دين
food_per_fish en: per larva; nauplii per larva; per fish per day
food_per_fish fr: par larve; nauplies par larve
food_per_fish pt: por larva
food_per_fish es: por larva
food_per_fish id: per larva
reason en: reason; why; cause; reason why; cause of death; purpose; because; why done; sign seen; signs; symptom; symptoms
reason fr: motif; raison; cause; pourquoi; cause de mortalite; symptome; symptomes
reason pt: motivo; razao; causa; porque; causa da morte; sintoma; sintomas
reason es: motivo; razon; causa; por que; causa de muerte; sintoma; sintomas
reason id: sebab; penyebab; alasan; gejala; keperluan; tujuan
reason ms: sebab; punca; tujuan
reason sw: sababu; dalili
pack_weight en: kg/bag; kg per bag; weight per bag; bag weight; bag size; kg in bag; wt/bag; pack size; kg/sack; kg/pack
pack_weight fr: kg/sac; kg par sac; poids du sac; poids par sac
pack_weight pt: kg/saco; kg/sc; kg por saco; peso do saco; peso saco
pack_weight es: kg/saco; kg/bolsa; kg por saco; peso del saco; kg/bulto
pack_weight id: kg/karung; kg/sak; isi karung; berat karung; kg/zak
graded_number en: graded; number graded; no graded; fish graded; total graded; total sorted; sorted; grading total
graded_number fr: tries; nombre trie; total trie; poissons tries
graded_number pt: classificados; total classificado; triados
graded_number es: clasificados; total clasificado; seleccionados
graded_number id: disortir; jumlah sortir; total sortir; hasil sortir
big_fish en: shooters; jumpers; shooter; jumper; cannibals; oversize; big ones
big_fish fr: tetes de lot; cannibales
big_fish pt: canibais; cabeceiras; cabeca de lote
big_fish es: canibales; cabezas de lote; punteros
big_fish id: kanibal; pemangsa
sample_count fr: oeufs observes; oeufs comptes; oeufs examines; ovules observes; nb observes; nb compte
sample_count pt: ovos observados; ovos contados; ovos examinados; contados; observados
sample_count es: huevos observados; huevos contados; huevos examinados; observados; contados
sample_count id: telur diamati; telur dihitung; telur dicek; jumlah diamati
sample_count en: eggs observed; eggs checked; eggs examined; eggs looked at; eggs counted; no. checked; n checked
fertilised_share fr: ~% fec; ~% fec.; ~% fecond.; taux fecond; t. fecond; fecond %; % fecondes; fec %
fertilised_share es: ~% fec; ~% fec.; % fecund.; fec %; tasa fec.; % fecundados
fertilised_share pt: ~% fec; ~% fec.; % fecund.; fec %; taxa fec.; % fecundados; tx fecundacao
fertilised_share en: fert %; % fert; fert. rate; %fert
feed_type pt: grao; granulometria; calibre; tamanho do grao; pellet
feed_type es: granulometria; calibre; tamano de pellet; grano
feed_type fr: granulometrie; calibre; taille granule; granule
feed_type id: ukuran pakan; ukuran pelet; diameter pelet
quantity en: bags; sacks; no. of bags; bag; cartons; packets; tins
quantity fr: sacs; nb de sacs; cartons
quantity pt: sacos; sacas; n sacos; caixas
quantity es: sacos; bultos; bolsas; cajas
quantity id: karung; sak; zak; dus
status en: condn; condition; cond.; body condition; maturity; stage
body_weight en: weighing; weighings; weights; weight check
body_weight fr: pesee; pesees
body_weight pt: pesagem; pesagens; biometria
body_weight es: pesaje; pesajes; biometria
body_weight id: penimbangan; timbang
feed_total en: feed/week; feed/wk; feed per week; weekly feed; total feed; feed total; feed this week
feed_total fr: aliment/semaine; aliment/sem; aliment par semaine; total aliment; aliment total
feed_total pt: racao/semana; racao/sem; racao semana; racao semanal; racao total
feed_total es: alimento/semana; alim. semana; alimento semana; alim/sem; alimento semanal; alimento total
feed_total id: pakan/minggu; pakan per minggu; total pakan; jumlah pakan
delivery_date en: delivery date; delivered on; delivered; date delivered; collection date; collected on; pick up date; date of delivery
delivery_date fr: livre le; date livraison; date de livraison; livraison le; a livrer le; enleve le
delivery_date pt: entrega; data entrega; data da entrega; entregue em
delivery_date es: entrega; fecha entrega; fecha de entrega; entregado el
delivery_date id: tgl kirim; tanggal kirim; tgl ambil; tgl antar; dikirim
`;
