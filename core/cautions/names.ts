/** Names of pieces that hazards go by, in plain words; a piece's traits stand before its name. */

/** A corn crib and a camp cot are no beds for babies. */
export const CRIBS = /\b(?<!corn )cribs?\b|\b(?<!(?:camp|camping|army|folding|field) )cots?\b|\bbaby beds?\b/;

const NURSERY =
  /\b(?:bassinets?|basinets?|cradles?|toddler beds?|bunk ?beds?|bunks|loft beds?|changing tables?|changers?|high ?chairs?|play ?tables?|play ?pens?|booster(?: seat)?s?|baby gates?|car seats?|strollers?|rocking horses?|toy ?(?:box|boxes|chests?|benches|bench)|doll ?houses?|doll beds?)\b/;

const CHILD = "(?:kids?|childs|childrens?|children|toddlers?|baby(?! (?:blue|pink|grand))|nursery|infants?)";
const FOR_A_CHILD =
  "(?:dressers?|desks?|tables?|chairs?|beds?|benches|bench|bookcases?|bookshel(?:f|ves)|shel(?:f|ves)|stools?|rockers?|rocking chairs?|vanit(?:y|ies)|chests?|drawers|sets?|wardrobes?|armoires?|nightstands?|furniture|pieces?|cabinets?|storage|swings?|wagons?|sofas?|recliners?)";

/** "kids dresser", "a small child's rocking chair", "desk for a nursery". */
const CHILDS_OWN = new RegExp(
  `\\b${CHILD} (?:\\w+ ){0,2}${FOR_A_CHILD}\\b|\\b${FOR_A_CHILD} for (?:a |the |my |our |little )*${CHILD}\\b`,
);

export const CHILDRENS = either(NURSERY, CHILDS_OWN);

export const LIDDED =
  /\b(?:cedar chests?|hope chests?|blanket (?:chests?|box(?:es)?)|toy ?(?:box(?:es)?|chests?)|(?:steamer |army |flat top |dome top |camelback )?trunks?|foot ?lockers?|sea chests?|storage chests?)\b/;

export const DRAWERED =
  /\b(?:dressers?|(?<!\b(?:cedar|hope|blanket|toy|steamer|storage|ice|sea|map|tool) )chests?(?! freezer)|bureaus?|armoires?|wardrobes?|high ?boys?|tall ?boys?|chiff(?:e|o)robes?|chiffoniers?|semainiers?)\b/;

export const TALL = either(
  DRAWERED,
  /\b(?:book ?cases?|book ?shel(?:f|ves)|shelving units?|shelf units?|ladder shel(?:f|ves)|etageres?|(?:tv|television|media) (?:stands?|consoles?|cabinets?|centers?|units?)|entertainment (?:centers?|centres?|armoires?|units?)|hutch(?:es)?|china (?:cabinets?|closets?)|curios?|curio cabinets?|(?:filing|file) cabinets?)\b/,
);

export const SOFT =
  /\b(?:sofas?|couch(?:es)?|love ?seats?|sectionals?|futons?|recliners?|arm ?chairs?|wing ?backs?(?: chairs?)?|wing chairs?|chaises?|ottomans?|settees?|club chairs?|upholstered \w+|davenports?|sleepers?|slipper chairs?|head ?board upholstered|easy chairs?)\b/;

/** Old by what it is called or by its paint: what is on such wood may be from before 1978. */
export const OLD =
  /\b(?:old(?! (?:finish|varnish|lacquer|shellac|wax|stain|poly))|older|vintage|antiques?|victorian|edwardian|primitive|mid ?century|mcm|art deco|deco|depression era|grandmas|grandpas|heirloom|chippy|chipped|chipping|peeling|flaking|painted|repainted|lead paint|layers of paint|original paint|milk paint|(?:18\d\d|19[0-6]\d|197[0-7])s?|[2-7]0s|steamer trunks?|wash ?stands?|pie safes?|ice ?boxe?s?|dry sinks?|jelly cupboards?)\b/;

export function either(...patterns: readonly RegExp[]): RegExp {
  return new RegExp(patterns.map(({ source }) => source).join("|"));
}
