import { sources } from '../../functions/source';

/** A figure read only in an abstract or a copy says so in its note. */
export const careSources = sources({
  ELGAMAL: {
    citation: 'El Gamal A.R. Notes on Egyptian incubators for African catfish, fishconsult.org',
    standing: 'seen',
    note: 'one spawn on a screened frame of 50 × 70 cm; first feed of 0.2 to 0.3 mm',
    url: 'https://fishconsult.org/?p=6352',
  },
  WALSH86: {
    citation:
      'Walsh S.J., Lindberg W.J. 1986. Catfish Farming in Florida, Circular 710, University of Florida',
    standing: 'seen',
    note: 'channel catfish: grain by length (Table 3), bleach between fry crops, thiosulfate, samples',
    url: 'https://ufdcimages.uflib.ufl.edu/UF/00/07/25/81/00001/00011.txt',
  },
  UFSANIT: {
    citation: 'Sanitation practices for aquaculture facilities, University of Florida',
    standing: 'seen',
    note: 'hydrated lime 1,000 to 2,000 kg a hectare on wet mud',
  },
  FAOBETTER38: {
    citation: 'FAO Better Farming Series 38',
    standing: 'seen',
    note: 'hand splashing and a tyre pump',
  },
  DUPREE84: {
    citation:
      'Dupree H.K., Huner J.V. (eds) 1984. Third Report to the Fish Farmers, US Fish and Wildlife Service',
    standing: 'seen',
    note: 'as adapted in an extension leaflet: pounds per US gallon in sealed bags at 65 °F, many species',
  },
  SWANN: {
    citation: 'Swann L. Transportation of fish in bags, University of Missouri extension MX392',
    standing: 'seen',
    note: 'opening part only: metabolism doubles for each 10 °C',
    url: 'https://extension2.missouri.edu/MX392',
  },
  WOYN80: {
    citation:
      'Woynarovich E., Horvath L. 1980. FAO Fisheries Technical Paper 201 (French edition, chapter 7)',
    standing: 'seen',
    note: '5,000 to 8,000 larvae in 5 to 7 L of water with 15 to 20 L of oxygen',
  },
  LIM03: {
    citation: 'Lim L.C. et al. 2003. Aquaculture Research 34: 923-935 (quoted on another page)',
    standing: 'seen',
    note: 'ornamental fish by air: the exporter pays for dead on arrival above 5 %',
  },
  RIS87: {
    citation: 'Ruptured intestine syndrome of unknown etiology in young African catfish. 1987 (abstract)',
    standing: 'seen',
    note: '3 to 5 g, 5 to 9 weeks, more at high feeding',
  },
  KISANGANI: {
    citation: 'Lyagabo Kakani. 2020. Artificial reproduction of Clarias gariepinus, Kisangani',
    standing: 'seen',
    note: 'abstract: 10.7 % alive on day 23 and 0.22 % on day 45, unsorted',
  },
  OKOYE: {
    citation:
      'Okoye C.N. et al. Age and semen of Clarias gariepinus. Animal Research International (abstract)',
    standing: 'seen',
  },
  DIYAWARE10: {
    citation: 'Diyaware M.Y. et al. 2010. Partial removal of the testis of Clarias anguillaris (abstract)',
    standing: 'seen',
    note: 'used again after 90 d, 120 d best',
  },
  THERIO12: {
    citation: 'Partial gonadectomy of African catfish. 2012. Theriogenology 77:1050-1055',
    standing: 'seen',
    note: 'abstract only: 25 to 75 % taken, all lived',
  },
  PHTWO: {
    citation: 'Acute pH limits of Clarias gariepinus larvae (abstract)',
    standing: 'seen',
    note: 'half-lethal at 4.25 and 10.1; its death figures contradict its text',
  },
  AGUIGWO03: {
    citation: 'Aguigwo J.N. 2003. Journal of Aquatic Sciences 18(1):71-74',
    standing: 'seen',
    note: 'fingerlings, 3.85 mg/L in 96 h, total or un-ionised not stated',
  },
  FORMALINDENS: {
    citation: 'Density of formalin solution of 37 %, about 1.09 g/mL, product sheets',
    standing: 'memory',
  },
});
