/** A publication that formulas and check values rest on. */
export interface Source {
  /** Authors, year, title, where published: enough to find it. */
  readonly citation: string;
  /** Stable address (DOI or publisher), where one is known. */
  readonly url?: string;
}

/** Every publication once, by key. One row a publication, alphabetical by key. */
export const sources = {
  'alduchov-eskridge-1996': { citation: 'Alduchov, O. A., Eskridge, R. E. (1996). Improved Magnus form approximation of saturation vapor pressure. Journal of Applied Meteorology 35, 601-609.' },
  'ams-glossary': { citation: 'American Meteorological Society. Glossary of Meteorology: Psychrometric formula.', url: 'https://glossary.ametsoc.org/wiki/Psychrometric_formula' },
  'argo-2004': { citation: 'Argo (2004). Understanding pH management and plant nutrition, part 5.' },
  'ashrae-2017': { citation: 'ASHRAE (2017). ASHRAE Handbook Fundamentals, SI edition, chapter 1, Psychrometrics. ASHRAE, Atlanta.' },
  'ball-nordstrom-1991': { citation: 'Ball, J. W., Nordstrom, D. K. (1991). User\'s manual for WATEQ4F, with revised thermodynamic data base. US Geological Survey Open-File Report 91-183; values as in the file wateq4f.dat of PHREEQC 3.' },
  'bolton-1980': { citation: 'Bolton, D. (1980). The computation of equivalent potential temperature. Monthly Weather Review 108, 1046-1053.' },
  'buck-1981': { citation: 'Buck, A. L. (1981). New equations for computing vapor pressure and enhancement factor. Journal of Applied Meteorology 20, 1527-1532.' },
  'buck-1996': { citation: 'Buck Research (1996). Model CR-1A hygrometer with autofill, operating manual, appendix 1.' },
  'cooper-1979': { citation: 'Cooper, A. (1979). The ABC of NFT. Grower Books, London.' },
  'cornell-potassium': { citation: 'Cornell University, Certified Crop Adviser study resources: potassium fertilizer analyses.', url: 'https://nrcca.cals.cornell.edu/nutrient/CA4/CA0428.php' },
  'crc-handbook': { citation: 'Haynes, W. M. (ed.) (2017). CRC Handbook of Chemistry and Physics, 98th edition. CRC Press, Boca Raton.' },
  'crittenden-2012': { citation: 'Crittenden, J. C., Trussell, R. R., Hand, D. W., Howe, K. J., Tchobanoglous, G. (2012). MWH\'s Water Treatment: Principles and Design, 3rd ed. Wiley.' },
  'davies-1962': { citation: 'Davies, C. W. (1962). Ion Association. Butterworths, London.' },
  'fao56': { citation: 'Allen, R. G., Pereira, L. S., Raes, D., Smith, M. (1998). Crop evapotranspiration. FAO Irrigation and Drainage Paper 56. FAO, Rome.', url: 'https://www.fao.org/3/x0490e/x0490e00.htm' },
  'harrison-1963': { citation: 'Harrison, L. P. (1963). Fundamental concepts and definitions relating to humidity. In: Wexler, A. (ed.), Humidity and Moisture, vol. 3. Reinhold, New York.' },
  'herrmann-2009': { citation: 'Herrmann, S., Kretzschmar, H.-J., Gatley, D. P. (2009). Thermodynamic properties of real moist air, dry air, steam, water, and ice (RP-1485). HVAC&R Research 15, 961-986.' },
  'hewitt-1966': { citation: 'Hewitt, E. J. (1966). Sand and water culture methods used in the study of plant nutrition, 2nd edition. Commonwealth Bureau of Horticulture and Plantation Crops, Technical Communication 22.' },
  'hoagland-arnon-1950': { citation: 'Hoagland, D. R., Arnon, D. I. (1950). The water-culture method for growing plants without soil. California Agricultural Experiment Station, Circular 347.' },
  'hyland-wexler-1983': { citation: 'Hyland, R. W., Wexler, A. (1983). Formulations for the thermodynamic properties of the saturated phases of H2O from 173.15 K to 473.15 K. ASHRAE Transactions 89(2A), 500-519.' },
  'iapws-95': { citation: 'IAPWS R6-95(2018). Revised release on the IAPWS Formulation 1995 for the thermodynamic properties of ordinary water substance for general and scientific use.', url: 'https://iapws.org/relguide/IAPWS-95.html' },
  'iapws-g8-10': { citation: 'IAPWS G8-10. Guideline on an equation of state for humid air in contact with seawater and ice, consistent with the IAPWS Formulation 2008.', url: 'https://iapws.org/relguide/SeaAir.html' },
  'iapws-if97': { citation: 'IAPWS R7-97(2012). Revised release on the IAPWS Industrial Formulation 1997 for the thermodynamic properties of water and steam.', url: 'https://iapws.org/relguide/IF97-Rev.html' },
  'iapws-r14-08': { citation: 'IAPWS R14-08(2011). Revised release on the pressure along the melting and sublimation curves of ordinary water substance.', url: 'https://iapws.org/relguide/MeltSub.html' },
  'iapws-sr1-86': { citation: 'IAPWS SR1-86(1992). Revised supplementary release on saturation properties of ordinary water substance.' },
  'iapws-sr6-08': { citation: 'IAPWS SR6-08(2011). Revised supplementary release on properties of liquid water at 0.1 MPa.' },
  'iso-7888': { citation: 'ISO 7888:1985. Water quality: Determination of electrical conductivity (EN 27888:1993).' },
  'kell-1975': { citation: 'Kell, G. S. (1975). Density, thermal expansivity, and compressibility of liquid water from 0 to 150 °C. Journal of Chemical and Engineering Data 20, 97-105.' },
  'lawson-hanson-1974': { citation: 'Lawson, C. L., Hanson, R. J. (1974). Solving Least Squares Problems. Prentice-Hall, Englewood Cliffs.' },
  'mattson-2018': { citation: 'Mattson, N. (2018). Fertilizer calculation basics for hydroponics. e-GRO Edible Alert 3(5).' },
  'mccleskey-2011': { citation: 'McCleskey, R. B. (2011). Electrical conductivity of electrolytes found in natural waters from (5 to 90) °C. Journal of Chemical and Engineering Data 56, 317-327.', url: 'https://doi.org/10.1021/je101012n' },
  'mccleskey-2012': { citation: 'McCleskey, R. B., Nordstrom, D. K., Ryan, J. N., Ball, J. W. (2012). A new method of calculating electrical conductivity with applications to natural waters. Geochimica et Cosmochimica Acta 77, 369-382.', url: 'https://doi.org/10.1016/j.gca.2011.10.031' },
  'millero-2006': { citation: 'Millero, F. J., Graham, T. B., Huang, F., Bustos-Serrano, H., Pierrot, D. (2006). Dissociation constants of carbonic acid in seawater as a function of salinity and temperature. Marine Chemistry 100, 80-94.' },
  'murphy-koop-2005': { citation: 'Murphy, D. M., Koop, T. (2005). Review of the vapour pressures of ice and supercooled water for atmospheric applications. Quarterly Journal of the Royal Meteorological Society 131, 1539-1565.', url: 'https://doi.org/10.1256/qj.04.94' },
  'nederhoff-humidity': { citation: 'Nederhoff, E. Humidity in greenhouses. HortResearch, New Zealand.' },
  'parkhurst-appelo-2013': { citation: 'Parkhurst, D. L., Appelo, C. A. J. (2013). Description of input and examples for PHREEQC version 3. US Geological Survey Techniques and Methods 6-A43.', url: 'https://pubs.usgs.gov/tm/06/a43/' },
  'picard-2008': { citation: 'Picard, A., Davis, R. S., Gläser, M., Fujii, K. (2008). Revised formula for the density of moist air (CIPM-2007). Metrologia 45, 149-155.', url: 'https://doi.org/10.1088/0026-1394/45/2/004' },
  'plummer-busenberg-1982': { citation: 'Plummer, L. N., Busenberg, E. (1982). The solubilities of calcite, aragonite and vaterite in CO2-H2O solutions between 0 and 90 °C. Geochimica et Cosmochimica Acta 46, 1011-1040.' },
  'pratt-2001': { citation: 'Pratt, K. W., Koch, W. F., Wu, Y. C., Berezansky, P. A. (2001). Molality-based primary standards of electrolytic conductivity. Pure and Applied Chemistry 73, 1783-1793.', url: 'https://doi.org/10.1351/pac200173111783' },
  'prohaska-2022': { citation: 'Prohaska, T. et al. (2022). Standard atomic weights of the elements 2021 (IUPAC Technical Report). Pure and Applied Chemistry 94, 573-600.', url: 'https://doi.org/10.1515/pac-2019-0603' },
  'shedlovsky-brown-1934': { citation: 'Shedlovsky, T., Brown, A. S. (1934). The electrolytic conductivity of alkaline earth chlorides in water at 25 °C. Journal of the American Chemical Society 56, 1066-1071.' },
  'sonneveld-1999': { citation: 'Sonneveld, C., Voogt, W., Spaans, L. (1999). A universal algorithm for calculation of nutrient solutions. Acta Horticulturae 481, 331-339.' },
  'sonneveld-straver-1994': { citation: 'Sonneveld, C., Straver, N. (1994). Nutrient solutions for vegetables and flowers grown in water or substrates, 10th edition. Proefstation voor Tuinbouw onder Glas, Naaldwijk.' },
  'sonntag-1990': { citation: 'Sonntag, D. (1990). Important new values of the physical constants of 1986, vapour pressure formulations based on the ITS-90, and psychrometer formulae. Zeitschrift für Meteorologie 70, 340-344.' },
  'standard-methods-2510': { citation: 'American Public Health Association, American Water Works Association, Water Environment Federation. Standard Methods for the Examination of Water and Wastewater, method 2510, Conductivity.' },
  'steiner-1984': { citation: 'Steiner, A. A. (1984). The universal nutrient solution. Proceedings of the 6th International Congress on Soilless Culture, Lunteren, 633-649.' },
  'stull-2011': { citation: 'Stull, R. (2011). Wet-bulb temperature from relative humidity and air temperature. Journal of Applied Meteorology and Climatology 50, 2267-2269.', url: 'https://doi.org/10.1175/JAMC-D-11-0143.1' },
  'stuyfzand': { citation: 'Stuyfzand, P. J. Compilation of natural waters with full analysis and measured conductivity, as in the public-domain test files of PHREEQC 3 (US Geological Survey).' },
  'tamu-nutrition': { citation: 'Texas A&M University, horticulture guide to pest management: Nutrition and fertility, calculations.', url: 'http://hortipm.tamu.edu/ipmguide/nutrient/calcs.html' },
  'tomsic-2002': { citation: 'Tomsic, M., Bester-Rogac, M., Jamnik, A., Neueder, R., Barthel, J. (2002). Conductivity of magnesium sulfate in water from 5 to 35 °C and from infinite dilution to saturation. Journal of Solution Chemistry 31, 19-31.' },
  'trussell-1998': { citation: 'Trussell, R. R. (1998). Spreadsheet water conditioning. Journal of the American Water Works Association 90(6), 70-81.' },
  'umass-acids': { citation: 'University of Massachusetts Extension, fact sheet: Adjusting alkalinity with acids.', url: 'https://ag.umass.edu/greenhouse-floriculture/fact-sheets/adjusting-alkalinity-with-acids' },
  'umass-fertilizer': { citation: 'University of Massachusetts Extension, fact sheet: Fertilizer calculations for greenhouse crops.', url: 'https://ag.umass.edu/greenhouse-floriculture/fact-sheets/fertilizer-calculations-for-greenhouse-crops' },
  'us-standard-atmosphere-1976': { citation: 'NOAA, NASA, USAF (1976). U.S. Standard Atmosphere, 1976. NOAA-S/T 76-1562, Washington, D.C.' },
  'wagner-1994': { citation: 'Wagner, W., Saul, A., Pruss, A. (1994). International equations for the pressure along the melting and along the sublimation curve of ordinary water substance. Journal of Physical and Chemical Reference Data 23, 515-527.' },
  'wagner-pruss-1993': { citation: 'Wagner, W., Pruss, A. (1993). International equations for the saturation properties of ordinary water substance, revised according to the International Temperature Scale of 1990. Journal of Physical and Chemical Reference Data 22, 783-787.' },
  'wmo-8': { citation: 'World Meteorological Organization. Guide to instruments and methods of observation, WMO-No. 8, Annex 4.B: formulae for the computation of measures of humidity.' },
} as const satisfies Readonly<Record<string, Source>>;

/** Key of a publication in the table of sources. */
export type SourceKey = keyof typeof sources;
