/** Animals that may stand in a paddock, or in a list, beside the pigs. Collected by judgement. */
const OTHER_ANIMALS =
  'cows?|cattle|bullocks|heifers|sheep|ewes|horses|kuhe|rinder|schafe|pferde|vaches|bovins|moutons|brebis|chevaux|' +
  'vacas|terneros|ovejas|caballos|mucche|vacche|bovini|pecore|cavalli|gado|ovelhas|cavalos|koeien|rundvee|schapen|paarden|' +
  'kor|notkreatur|far|hastar|koer|koene|kvaeg|heste|kyr|storfe|sau|hester';

/**
 * Words that may mean that no pigs are to stand in a paddock, or that somebody else uses it, in the languages of the
 * headings, without accents. What they mean is asked. Collected by judgement.
 */
export const OUT_OF_USE = new RegExp(
  `\\b(${[
    `no (pigs|hogs)|not this (year|season)|not in use|not used|unused|out of use|do not use|don'?t use|hay|silage|reseed\\w*|in crop|cropped|closed|shut`,
    'keine schweine|(dieses jahr|heuer) nicht|nicht (nutzen|genutzt|dieses jahr|heuer)|heu|silage|neuansaat|gesperrt',
    'pas de (porcs|cochons)|pas cette annee|hors service|foin|ensilage|fermee?s?(?! (du|le|la|de))',
    'sin cerdos|este ano no|no usar|fuera de uso|heno|cerrad[oa]',
    "(niente|senza|no) maiali|(quest'anno|quest anno) no|non (usare|quest'anno)|fieno|chius[oa]",
    'sem porcos|este ano nao|nao (usar|usado)|feno|fechad[oa]',
    'geen varkens|(niet dit jaar|dit jaar niet)|niet (gebruiken|in gebruik)|hooi|gesloten',
    'inga grisar|inte i ar|anvands (ej|inte)|stangd',
    'ingen gris(e|er)|ikke i ar|(bruges|brukes) ikke|lukket|stengt',
    '(leased|let|rented) (out|to)|verpachtet|vermietet|louee? a|en location|arrendad[oa]|alquilad[oa]|affittat[oa]|in affitto',
    `(${OTHER_ANIMALS})(?! (wire|fenc|net))`,
    'farrow\\w*|sick (pen|pigs)|abferkel\\w*|mise bas|infirmerie|parideras|partos|figliat\\w*|kraamhok|grisning|ne compte pas',
    'alugad[oa]|verpacht|verhuurd|utarrenderad|uthyrd|udlejet|bortforpagtet|utleid|bortleid|leid bort',
  ].join('|')})(?![\\p{L}])`,
  'u',
);
