import { sources } from '../../functions/source';

/** A figure read only in an abstract or a copy says so in its note. */
export const broodSources = sources({
  GRAAF95: {
    citation: 'de Graaf G.J., Galemoni F., Banzoussi B. 1995. Aquaculture Research 26(4):233-242',
    standing: 'seen',
    note: 'abstract only',
  },
  BRZUSKA03: { citation: 'Brzuska E. 2003. Czech Journal of Animal Science 48(5):181-190', standing: 'seen' },
  SUEZ: {
    citation:
      'Seasonal biology and artificial propagation of female Clarias gariepinus. Journal ' +
      'of Animal, Poultry and Fish Production, Suez Canal University (abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  SALEH: {
    citation:
      'Saleh H.H.E. et al. hCG at 500 to 6000 IU/kg in Clarias gariepinus. Journal of Zoological Research',
    standing: 'seen',
    note: 'abstract only',
  },
  SHOURBELA: {
    citation: 'Shourbela R.M. et al. Benha Veterinary Medical Journal (abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  SHARAF12: { citation: 'Sharaf S.M. 2012. Theriogenology 77:1709-1716', standing: 'seen' },
  READYMADE: {
    citation:
      'Extension page on the composition and dose of a ready-made salmon GnRHa and domperidone solution',
    standing: 'seen',
    note: '20 µg/mL salmon GnRHa and 10 mg/mL domperidone',
  },
  NEOTROP13: {
    citation: 'Five neotropical species, induced spawning. 2013. Natural Science 5(7A):1-6',
    standing: 'seen',
  },
  DADEBO00: {
    citation: 'Dadebo E. 2000. SINET: Ethiopian Journal of Science 23(2):231-246',
    standing: 'seen',
    note: 'preserved ovaries: 435 to 1176 eggs per gram, mean 669',
  },
  RURANGWA98: {
    citation: 'Rurangwa E. et al. 1998. Journal of Fish Biology 53(2):402-413',
    standing: 'seen',
    note: 'abstract only',
    doi: '10.1111/j.1095-8649.1998.tb00989.x',
  },
  IDAHOR18: {
    citation:
      'Idahor K.O. et al. 2018. International Journal of Innovative Studies in Aquatic ' +
      'Biology and Fisheries 4(1):7-12',
    standing: 'seen',
    note: '5.62e9 to 6.54e9 sperm per mL',
  },
  SOLOMON15: {
    citation: 'Solomon S.G. et al. 2015. International Journal of Aquaculture 5(29):1-5',
    standing: 'seen',
    note: '3.8e10 to 9.7e10 sperm per mL, ten times other counts',
  },
  SAIDU21: {
    citation: 'Saidu K.A. et al. 2021. International Journal of Aquaculture 11(1):1-11',
    standing: 'seen',
    note: '2.2 mL of milt from injected males of 1.2 kg',
  },
  MANSOUR04: {
    citation: 'Mansour N., Lahnsteiner F., Berger B. 2004. Aquaculture Research 35(3):232-244',
    standing: 'seen',
    note: 'newsletter summary only; milt kept 1:5 in a medium with 150 mM NaCl',
  },
  SALMONIDBOOK: {
    citation: 'United States Fish and Wildlife Service. Inland Salmonid Broodstock Handbook, p. 1-8',
    standing: 'seen',
  },
  NACAINBREED: {
    citation: 'Network of Aquaculture Centres in Asia-Pacific. Training of trainers, text on inbreeding',
    standing: 'seen',
    note: 'the relation to Ne was read there; dF = 1/(2 Ne) is the textbook formula',
  },
  FAORATE: {
    citation: 'Wageningen University breeding text quoting the advice of FAO on the rate of inbreeding',
    standing: 'seen',
  },
  FAO217: { citation: 'FAO/UNEP expert consultation. FAO Fisheries Technical Paper 217', standing: 'seen' },
  BENTSEN02: {
    citation:
      'Bentsen H.B., Olesen I. 2002. Designing aquaculture mass selection programs to ' +
      'avoid high inbreeding rates. Aquaculture 204(3)',
    standing: 'seen',
    note: 'abstract only',
  },
  BUSACK: {
    citation: 'Busack C. Impact of repeat spawning of males on effective number of breeders (abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  PEDIGREE: {
    citation:
      'Path coefficients of relationship (Wright 1922), textbook values: full sibs 0.5, half sibs 0.25',
    standing: 'standard',
  },
  KUHN55: {
    citation:
      'Kuhn H.W. 1955. The Hungarian method for the assignment problem. Naval Research ' +
      'Logistics Quarterly 2:83-97',
    standing: 'standard',
  },
  EGGFORMALIN10: {
    citation:
      'Formalin on eggs and larvae of African catfish. December 2010. Journal of Applied ' +
      'Sciences and Environmental Management 14(4):31-34',
    standing: 'seen',
    note: 'abstract only',
  },
  ANTIFUNGUS: {
    citation: 'Embryo-larval toxicity of anti-fungus chemicals used on Clarias gariepinus (journal abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  TROUTFORMALIN: {
    citation:
      'Formalin and hydrogen peroxide treatment regimes on rainbow trout eyed eggs (journal abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  FRYSALT11: {
    citation:
      'Sodium chloride as a prophylactic for Clarias gariepinus yolk-sac and swim-up fry. 2011. Aquaculture',
    standing: 'seen',
    note: 'abstract only',
  },
  GBULUBO98: {
    citation: 'Gbulubo A.J., Erondu E.S. 1998. Aquaculture International 6(5):369-377',
    standing: 'seen',
    note: 'newsletter summary only',
  },
  SRAC1803: {
    citation:
      'Steeby J., Avery J. 2005. Channel catfish broodfish and hatchery management. ' +
      'Southern Regional Aquaculture Center Publication 1803',
    standing: 'seen',
  },
  PIKEPLAN: { citation: 'Capacity calculation of a pike farm (Russian coursework)', standing: 'seen' },
  VIVEIROS02: {
    citation: 'Viveiros A.T.M. et al. 2002. Aquaculture 213:373-386',
    standing: 'seen',
    note: 'newsletter summary only; single injections raised no sperm of the testis',
  },
});
