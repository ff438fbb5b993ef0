/**
 * The words by which growers head their columns, in ten languages. Data only: lower case, no accents, no brackets, no
 * punctuation (see `plainWords`).
 *
 * A word may stand in several lists: what stands in its column and beside it decides. Collected by judgement.
 */
import type { ListQuantity } from '../units/unit-words';
import type { GroupField, PaddockField } from './model';

function words(text: string): readonly string[] {
  return text.trim().split(/,\s+/);
}

export const PADDOCK_WORDS: Readonly<Record<PaddockField, readonly string[]>> = {
  name: words(`
    paddock, paddocks, paddock name, paddock no, paddock number, paddock id, field, fields,
    field name, pasture, pasture name, plot, plot name, strip, enclosure, name, id, camp, cell,
    koppel, weide, schlag, parzelle, feld, parcelle, enclos, champ, pature, parc, potrero, parcela,
    cercado, campo, cuartel, appezzamento, parcella, pascolo, recinto, piquete, pasto, perceel,
    veld, wei, weiland, hage, beteshage, falla, skifte, fold, mark, indhegning, beite, jorde,
    innhegning,
    pdk, naam, nom, nombre, nome, namn, navn, bezeichnung, cerca, cercas, parque, manga, manguera, potreros, koppeln, weiden, percelen, hagar, folde, beiter, parcelles, recinti, block, lot, lots, hog lot, lot no, pen, pens, piquetes
  `),
  area: words(`
    area, size, acres, acre, acreage, hectares, hectare, hektar, hectareas, ettari, hectaren, ha, ac, paddock area, paddock size,
    surface, square metres, square meters, square feet, sq ft, m2, m², flache, grosse,
    superficie, taille, contenance, tamano, tamanho, oppervlakte, maat,
    oppervlak, grootte, areal, yta, storlek, storrelse,
    opp, opperv, flachengrosse, dekar, daa, areal m2, sup, superf, surf, fl
  `),
  width: words(`
    width, wide, breadth, broad, short side, side a, breite, largeur, ancho, anchura, larghezza, largura,
    breedte, bredd, bredde, largh, larg, breed
  `),
  length: words(`
    length, long, long side, side b, lange, longueur, largo, longitud, lunghezza, comprimento,
    lengte, langd, laengde, lengde, lungh, longit, compr
  `),
  openFrom: words(`
    open from, opens, opens on, open, available from, usable from, free from, use from, not before,
    closed until, closed till, closed to, shut until, shut till, shut to, fenced off until,
    fenced off till, not until, not till, hay until, hay till, from, start, first day, frei ab,
    offen ab, nutzbar ab, gesperrt bis, libre des, libre a partir du, ouvert des,
    ouvert a partir du, disponible a partir du, ferme jusqu au, libre desde, abierto desde,
    disponible desde, cerrado hasta, libero da, libero dal, disponibile dal, chiuso fino al,
    livre desde, aberto desde, disponivel desde, fechado ate, vrij vanaf, open vanaf, gesloten tot,
    ledig fran, oppen fran, stangd till, ledig fra, aben fra, lukket til, apen fra, stengt til,
    beschikbaar vanaf, verfugbar ab, tillganglig fran, abierta desde, aberta desde, libre a partir de,
    aperto dal, aperta dal, aperto da, apre, apre il, disponibile da, utilizzabile dal, pronto dal, pret le, prete le,
    pret a partir du, pret des, ouvre le, ouverture, disponible le, disponible des, utilisable des, habilitado desde,
    habilitado a partir de, se abre, apertura, listo desde, listo el, liberado, liberada, liberado em, liberado desde,
    liberado a partir de, livre a partir de, abre em, abre, pronto em, oppnas, oppnar, oppnas den, klar fran, abner,
    abnes, abnes den, klar fra, apnes, apner, gaat open, gaat open op, vrij op, offnet, offnet am, bereit ab, ready, ready on,
    ready from
  `),
  openUntil: words(`
    open until, open till, open to, closes, closes on, available until, available till,
    available to, usable until, use until, not after, until, till, to, end, last day, offen bis,
    frei bis, nutzbar bis, ouvert jusqu au, abierto hasta, aperto fino al, aberto ate, open tot,
    oppen till, aben til, apen til,
    aperto fino a, chiude, chiude il, utilizzabile fino al, ferme le, fermeture, disponible jusqu au, utilisable jusqu au,
    habilitado hasta, disponible hasta, se cierra, cierre, liberado ate, disponivel ate, livre ate, fecha em, stangs,
    stanger, stangs den, tillganglig till, lukkes, lukker, lukkes den, stenges, stenger, gaat dicht, gaat dicht op,
    beschikbaar tot, vrij tot, schliesst, schliesst am, verfugbar bis
  `),
  shutFrom: words(`
    closed from, shut from, fenced off from, gesperrt ab, gesperrt von, gesperrt seit, ferme du, ferme a partir du,
    cerrado desde, chiuso dal, chiuso da, fechado desde, gesloten van, gesloten vanaf, stangd fran, lukket fra, stengt fra
  `),
  // Only where a time begins in another column: "closed until" alone says when it opens (see choose-columns.ts).
  shutUntil: words(`
    closed until, closed till, closed to, shut until, shut till, shut to, fenced off until, fenced off till, fenced off to,
    gesperrt bis, ferme jusqu au, ferme au, cerrado hasta, chiuso fino al, chiuso al, fechado ate, gesloten tot, stangd till,
    lukket til, stengt til, until, till, to, bis, jusqu au, au, hasta, fino al, al, ate, tot, til
  `),
  lastUsed: words(`
    last used, last use, last used on, last grazed, last occupied, last pigs, last pigs left,
    pigs left, last left, left, left on, vacated, empty since, used until, resting since, rested since, last out,
    hogs off, hogs off on, pigs off, pigs off on, off on, pigs out, zuletzt belegt, zuletzt genutzt,
    zuletzt beweidet, zuletzt bestossen, zuletzt besetzt, letzte nutzung, letzte belegung, leer seit, dernier passage,
    derniere utilisation, derniere occupation, dernier paturage, vide depuis, libere le, ultimo uso,
    ultima ocupacion, ultimo pastoreo, vacio desde, ultima occupazione, ultimo pascolo, vuoto dal,
    libera dal, ultima utilizacao, ultima ocupacao, vazio desde, laatst gebruikt, laatst beweid,
    leeg sinds, senast anvand, senast betad, tom sedan, sidst brugt, sidst afgraesset, tom siden,
    sist brukt, sist beitet,
    libero dal, libre desde, livre desde, frei seit, saida, salida, uscita, ausgang, ausgetrieben, sortie,
    raus, ut, ud, uit, ultima entrada hasta, ultima entrada ate, hogs out, pigs last out, stock out,
    sairam, saiu, sairam em, saiu em, liberado, liberada, salieron, salieron el, salio, salio el, sortis, sortis le, sorti le,
    partis le, usciti, usciti il, raus am, ausgetrieben am, uit op, vertrokken, ut den, ud den, flyttade ut
  `),
  restDays: words(`
    rest, rest days, rest needed, rest due, rest override, own rest, rest period, minimum rest,
    min rest, days of rest, days rest, recovery, recovery days, ruhe, ruhezeit, ruhetage, repos,
    jours de repos, temps de repos, descanso, dias de descanso, riposo, giorni di riposo, rust,
    rusttijd, rustdagen, vila, vilotid, hvile, hviletid
  `),
  adjoining: words(`
    adjoining, adjoins, adjoining paddocks, adjacent, adjacent to, adjacent paddocks, neighbours,
    neighbors, next to, borders, touches, beside, shares a side with, grenzt an, nachbarn, voisins,
    a cote de, linda con, colinda con, vecinos, confina con, vicini, confinanti, confronta com,
    vizinhos, grenst aan, buren, gransar till, grannar, graenser til, naboer, grenser til, nabofolde, nachbarkoppeln, parcs voisins
  `),
  fenceLength: words(`
    fence length, fence, fencing, fence line, perimeter, wire length, length of fence, fence needed,
    zaun, zaunlange, cloture, longueur de cloture, vallado, recinzione, omheining, afrastering,
    stangsel, hegn, hegnslaengde, gjerde, gjerdelengde
  `),
};

export const GROUP_WORDS: Readonly<Record<GroupField, readonly string[]>> = {
  name: words(`
    group, groups, group name, herd, herd name, mob, batch, batch name, sounder, litter, bunch, lot,
    cohort, pig group, name, id, pen group, drove, gruppe, tiergruppe, partie, rotte, groupe, bande,
    grupo, lote, gruppo, lotto, groep, toom, grupp, flock, hold, flok, flokk,
    naam, nom, nombre, nome, namn, navn, bezeichnung, koppel, koppels, mobs, piara, vara, kull, bucht, gruppen, grupper, groepen, pen
  `),
  head: words(`
    head, heads, head count, headcount, count, number, no, number of pigs, no of pigs, pigs, hogs,
    animals, number of animals, how many, quantity, qty, hd, pig count, anzahl, stuck, stk, tiere,
    schweine, anzahl tiere, nombre, nb, effectif, tetes, porcs, nb de porcs, numero, cabezas,
    cerdos, cantidad, animales, n cerdos, capi, suini, maiali, n capi, cabecas, porcos, animais,
    n porcos, aantal, stuks, varkens, dieren, antal, grisar, djur, svin, grise, dyr, antall, griser,
    n animais, numero animais, n animales, no animales, antal grise, antal grisar, antall dyr, aantal varkens, nb porcs, nombre de porcs, tierzahl, stuckzahl, n o animais, qtde, qtd, quantidade, quantita, cant, cab, cabs, tete, capo, cabeza, anz, aant
  `),
  weight: words(`
    weight, wt, av, avg weight, average weight, mean weight, live weight, liveweight, start weight,
    starting weight, current weight, weight each, weight per pig, weight per head, pig weight,
    mass, avg mass, mean mass, live mass, lbs each, lb each, pounds each, kg each, kilos each, gewicht, lebendgewicht, kg je tier, poids,
    poids vif, poids moyen, peso, peso vivo, peso medio, peso promedio, vikt, levande vikt,
    medelvikt, vaegt, levende vaegt, vekt, levendevekt, snittvekt,
    lw, avg lw, live wt, avg live wt, avg wt, avg kg, avg lb, avg lbs, mean wt, mean kg, gem gewicht, gemiddeld gewicht, durchschnittsgewicht, o gewicht, gewicht o, poids moy, snittvikt, gennemsnitsvaegt, gns vaegt, peso prom, peso med, snitt, snitt kg
  `),
  weighedOn: words(`
    weighed on, date, datum, fecha, data, dato, weighed, weigh date, date weighed, weight date, date of weight, weighing date,
    weighing, last weighed, weighed at, gewogen am, gewogen, wiegedatum, wiegetag, pese le, pesee,
    date pesee, date de pesee, pesado el, pesaje, fecha pesaje, fecha de pesaje, fecha peso,
    pesato il, pesata, data pesata, data peso, pesado em, pesagem, data pesagem, data de pesagem,
    gewogen op, weegdatum, vagd, vagda, vagning, vejet, vejet den, vejedato, veid, veid dato,
    veiedato, when, week, vecka, woche, kw, semaine, uge, uke
  `),
  dailyGain: words(`
    daily gain, gain, adg, average daily gain, avg daily gain, gain per day, gain a day, gain day,
    growth, growth per day, daily growth, dlwg, zunahme, tageszunahme, tagliche zunahme, gmq,
    croissance, gain quotidien, ganancia, ganancia diaria, gmd, accrescimento, incremento, ganho,
    ganho diario, groei, dagelijkse groei, tillvaxt, daglig tillvaxt, tilvaekst, daglig tilvaekst,
    tilvekst, daglig tilvekst, adpv, adp, gdp, gpd, gpmd, aumento, aumento diario, aumento diario de peso, ganho medio diario,
    incremento giornaliero, accrescimento giornaliero, gain moyen quotidien, gain journalier, aanwas, groei per dag, zuwachs
  `),
  from: words(`
    from, in from, in the rotation from, rotation from, on pasture from, pasture from, start,
    start date, enters, enters on, joins, joins on, arrives, out of training, out of training pen,
    training done, first day, out from, out on, turn out, turned out, turnout, on grass from, in,
    ab, ankunft, arrivee, entree, llegada, desde, arrivo, dal, entrata, chegada, entrada, vanaf,
    aankomst, fran, ankomst, fra,
    arrives le, entres le, depuis, seit, sinds, sedan, siden, since, date in, datum in, fecha entrada, fecha de entrada, data entrada, data de entrada, data arrivo, indsat, insatt, innsatt, eingestallt, aufgestallt, opgezet, aankomstdatum
  `),
  until: words(`
    until, till, to, until date, until date or weight, leaves, leaves on, leave, leaving, out, end,
    end date, ship date, ships on, slaughter date, butcher date, processing date, last day,
    off pasture, bis, abgang, schlachtung, schlachttermin, jusqu au, abattage, depart, hasta,
    salida, sacrificio, matanza, fino al, uscita, macellazione, ate, saida, abate, tot, slacht,
    slachtdatum, vertrek, slakt, slaktdatum, til, slagtning,
    off to works, to works, works date, truck, truck booked, truck date, kill date, abattoir, abattoir le, depart abattoir, macello, data macello, salida prevista, fecha salida, fecha de salida, data de abate, data abate, matadero, naar slacht, naar slager, leveres, levering, til slagt, til slakteri, til slakt, till slakt, slaktas, verkauf, schlachten am, schlachten ab, schlachtdatum
  `),
  untilWeight: words(`
    until weight, target weight, market weight, finish weight, finishing weight, final weight,
    slaughter weight, butcher weight, sale weight, leaves at, leaves at weight, end weight,
    endgewicht, zielgewicht, poids final, poids cible, peso final, peso objetivo, peso finale,
    peso meta, eindgewicht, streefgewicht, slutvikt, slutvaegt, sluttvekt
  `),
  paddock: words(`
    field, paddock, pasture, where, where now, where they are, now in, stands in, standing in,
    in field, in paddock, current paddock, current field, paddock now, field now, location, koppel,
    weide, steht auf, steht in, stehen auf, standort, wo, parcelle, parc, emplacement, ou, potrero,
    parcela, donde, ubicacion, recinto, dove, dove sono, piquete, onde, perceel, weiland, waar,
    hage, var, star i, fold, hvor, star pa, skifte,
    pdk, lot, lots, hog lot, cerca, parque, beite, pasto, pature, enclos, champ, schlag, parzelle, feld, wei, beteshage, strip, plot, staat in, staat op, standplaats, in pdk, dove, potrero actual, i fold, i hage, indhegning, innhegning, koppel, wiese, pen, in pen, place, platz, lieu, lugar, luogo, posto, plek, plaats, plats, plads, plass
  `),
  since: words(`
    since, in since, there since, here since, in field since, moved in, moved in on, moved on,
    put in, seit, dort seit, steht seit, seit wann, depuis, depuis le, esta desde, desde cuando,
    in recinto dal, sinds, daar sinds, sedan, siden, sedan nar,
    dal, desde, ab, fran, fra, vanaf, flyttet inn, flyttet ind, flyttad, inflyttad, moved, in on, put there, ingreso, entrato, umgetrieben, eingetrieben, entrou, entraram, entrou em, entro, entro el, entraron, entrati, entrati il, entre le, entres le, mis le, drauf seit, aufgetrieben
  `),
};

/**
 * Headings of several words that come in many forms, as beginnings of words which must all stand in them: "last pig" is in
 * "Last had pigs".
 */
export const PADDOCK_STEMS: Readonly<Partial<Record<PaddockField, readonly string[]>>> = {
  lastUsed: words(`
    last pig, last hog, last graz, last occup, last use, last left, last stock, rest since, spell since, resting since,
    letzt beleg, letzt nutz, letzt bestoss, letzt besetz, zuletzt bestoss, zuletzt schwein, letzt weid, letzt bewei, letzt schwein, ruht seit, dern passage, dern occup, dern patur,
    dern util, repos depuis, ultim us, ultim ocup, ultim pasto, ultim entrad, ultim occup, ultim pascol, ultim utiliz,
    descans desde, reposo desde, ripos dal, laatst gebr, laatst bewei, laatst varken, rust sinds, senast anvan,
    senast bet, vil sedan, sidst brug, sidst afgr, sidst gris, hvil siden, sist bruk, sist beit, eruit
  `),
};
export const GROUP_STEMS: Readonly<Partial<Record<GroupField, readonly string[]>>> = {
  until: words(`
    works, truck, slaughter, butcher, process, abattoir, abatt, schlacht, slakt, slagt, slacht, macell, sacrific, matadero
  `),
  from: words('arriv, indsat, insatt, innsatt, eingestall, aufgestall, came in, brought in'),
};

/** Words for now, in, and that they stand or go there, which change nothing of what a heading means. */
export const OF_NOW: ReadonlySet<string> = new Set(
  words(
    `now, current, in, i, en, dans, op, nu, na, jetzt, aktuell, aktuelle, actual, actuel, actuelle, attuale, atual, huidig,
    huidige, gar, star, pa, auf, steht, stehen, laufen, laeuft, lauft, staat, staan, loopt, lopen, esta, estan, estao, sta,
    stanno`,
  ),
);

/** Fields whose cells carry a unit. */
export const FIELD_QUANTITIES: Readonly<Partial<Record<PaddockField | GroupField, ListQuantity>>> = {
  area: 'area',
  width: 'length',
  length: 'length',
  fenceLength: 'length',
  restDays: 'time',
  weight: 'mass',
  untilWeight: 'mass',
  until: 'mass',
  dailyGain: 'massPerDay',
};

/** First words of a row that adds up the rows above it, and what may follow them. */
export const TOTAL_WORDS: readonly string[] = words(`
  total, totals, grand total, subtotal, sub total, sum, average, avg, mean, count, all told,
  altogether, together, in all, summe, gesamt, insgesamt, total general, totaux, somme, moyenne,
  ensemble, suma, promedio, totale, somma, media, soma, totaal, som, samen, summa, totalt,
  tillsammans, sum total, i alt, ialt, sammen, til sammen, gemiddelde, durchschnitt, snitt
`);
export const TOTAL_OF_WORDS: readonly string[] = words(
  'area, acres, hectares, ha, ac, head, pigs, paddocks, groups, weight, all',
);
