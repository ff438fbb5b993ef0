/**
 * Functions younger than the file format: in an .xlsx file they carry the prefix "_xlfn.", without which Excel shows
 * #NAME?. The names are those of the engine's own export, which names Microsoft's [MS-XLSX] as their source.
 */
import type { Engine } from '../engine/engine';

const NEWER_FUNCTIONS = new Set(
  `
  ACOT ACOTH AGGREGATE ARABIC BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND
  BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT
  CHISQ.INV CHISQ.INV.RT CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT
  COTH COVARIANCE.P COVARIANCE.S CSC CSCH DAYS DECIMAL DROP ERF.PRECISE ERFC.PRECISE EXPAND EXPON.DIST
  F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FIELDVALUE FILTERXML FLOOR.MATH FLOOR.PRECISE FORECAST.ETS
  FORECAST.ETS.CONFINT FORECAST.ETS.SEASONALITY FORECAST.ETS.STAT FORECAST.LINEAR FORMULATEXT GAMMA
  GAMMA.DIST GAMMA.INV GAMMALN.PRECISE GAUSS HSTACK HYPGEOM.DIST IFNA IFS IMCOSH IMCOT IMCSC IMCSCH IMSEC
  IMSECH IMSINH IMTAN ISFORMULA ISOMITTED ISOWEEKNUM LAMBDA LET LOGNORM.DIST LOGNORM.INV MAKEARRAY MAP
  MAXIFS MINIFS MODE.MULT MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV
  NUMBERVALUE PDURATION PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI
  POISSON.DIST PQSOURCE PYTHON_STR PYTHON_TYPE PYTHON_TYPENAME QUARTILE.EXC QUARTILE.INC QUERYSTRING
  RANDARRAY RANK.AVG RANK.EQ REDUCE RRI SCAN SEC SECH SEQUENCE SHEET SHEETS SKEW.P SORTBY STDEV.P STDEV.S
  SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT
  TOCOL TOROW UNICHAR UNICODE UNIQUE VAR.P VAR.S VSTACK WEBSERVICE WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP
  XOR Z.TEST
`
    .trim()
    .split(/\s+/),
);
/** These carry a second prefix as well (from memory). */
const WORKSHEET_FUNCTIONS = new Set(['FILTER', 'SORT']);

/**
 * Formula of a file for a formula as Sheets writes it. Texts and names of tabs stay as they are, and so do functions
 * that the engine lacks: LET wants prefixes inside as well, and a formula that came with them still has them.
 */
export function filePrefixed(engine: Engine, formula: string): string {
  return formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|[A-Za-z_][A-Za-z0-9._]*(?=\()/g, (piece) => {
    const name = piece.toUpperCase();
    if (!engine.registries.functionRegistry.contains(name)) return piece;
    if (WORKSHEET_FUNCTIONS.has(name)) return `_xlfn._xlws.${piece}`;
    return NEWER_FUNCTIONS.has(name) ? `_xlfn.${piece}` : piece;
  });
}
