import { THESE } from "./pieces.ts";
import { wordSet, wordsAlike } from "./words.ts";

/**
 * The commonest words, in the order in which one that is written without its vowels is taken for them: "th" is "the" and
 * no "tho", "sld" is "sold" and no "sled".
 */
export const COMMONEST = wordSet(
  "the for from and of it he his her them they was were that got gave took back down there their over with still " +
    "after before about again already today tonight yesterday tomorrow morning both all another other others out off " +
    "this these those then than when where which while had has have did didnt dont doesnt cant isnt wasnt wouldnt couldnt " +
    "not never just some same such said sold bought brought listed paid sent made came coming put done finished need " +
    "needed needs should would could been but because new now white what good great big little first second next only more much many " +
    "table tables desk chair chairs couch bench dresser lamp lamps stand paint stain store stool stools left home hand here her please " +
    "thanks sorry lady guy week weeks month months year years people money cash free gray",
);

/** Words, and shorthand and slips too short or too far from them for the speller. */
export const SHORTHANDS = wordsAlike(`
  please=kindly sorry=sry different=dif=diff should=shud=shoud=shd=sould would=wud could=cud market=mkt
  snagged=snagd copped=copt stain=stayn the=tge=thw=teh=hte=tha sold=sild=soldd=sld=slod=selt=solf
  videos=vids video=vid carry=cary customer=cust sofa=sfa coffee=cffe=cofee check=chek=ckeck grabbed=grabd
  and=adn=nad=n for=fro=fr=fer with=wth=wit=wid=wi center=ctr=cntr are=r people=ppl=peeps new=nu
  bought=bt=bougt=boght=bot=bocht hutch=htch=hutc stand=stnd drawer=drwr dining=dinning week=wk weeks=wks
  year=yr years=yrs tomorrow=tomorow today=tdy=tday=todya=tody=toady month=mnth=mth=motnh=monht
  months=mnths=mths drawers=drwrs payment=pymt=pmt sanded=snded delivery=dlvry morning=mrng=mornin
  evening=evenin yesterday=yestrdy=yestday=yday bookcase=bkcase receipt=rcpt brown=brn black=blk
  cabinet=cabnt night=nite deposit=depo=dep balance=bal statement=stmt through=thru though=tho room=rm
  back=bk from=frum=fae=frae done=dun drove=drve finally=finnaly=finly because=becuase=becasue lot=alot
  really=realy pretty=prety before=befor which=wich tonight=tonite towards=twards finished=fini=fin
  glue=glu picked=picd listed=lst down=dn=doon neighbor=nghbr sat=sats fri=fris mon=mons
  nightstand=nitestnd weekend=wkend that=dat this=dis them=dem these=dese old=auld to=tae into=intae
  onto=ontae out=oot over=ower round=roond about=aboot=bout house=hoose home=hame away=awa give=gie
  gave=gied given=gien have=hae now=noo just=jist was=wis myself=masel isnt=isnae=isny=isn
  wasnt=wasnae=wisnae=wasn arent=arenae didnt=didnae=didny=didn doesnt=doesnae=doesn dont=dinnae
  cant=cannae=canny couldnt=couldnae=couldn wouldnt=wouldnae=wouldn wont=willnae=winnae hasnt=hasnae
  havent=havenae gonna=finna=boutta=bouta=gunna=gon afternoon=arvo=sarvo=savvo afternoons=arvos
  nothing=nowt=naught=nought=nuthin=nuttin=zilch=diddly anything=owt something=summat
  gas=petrol=benzine=gsa truck=ute=lorry curb=kerb curbside=kerbside himself=hisself
  themselves=theirself=theirselves ad=advert ads=adverts total=ttl=tot=totl=toal both=btoh=bohth goal=gol
  hold=hld fingered=fingerd desk=desl
`);

/** Words with a digit that sounds like a part of them. */
export const SOUNDS: Readonly<Record<string, string>> = {
  b4: "before",
  "2day": "today",
  "2nite": "tonight",
  "2night": "tonight",
  "2moro": "tomorrow",
  "2morrow": "tomorrow",
  l8r: "later",
  gr8: "great",
};

/** Before a "4" that counts. */
export const BEFORE_COUNTS = wordSet("all these those of number no num x piece only just another other last");

/** Before "4" and a price, behind one piece: "posted 4 130". */
export const BEFORE_FOR_PRICE = wordSet(
  "sold posted listed gone went up put relisted flipped bought got snagged grabbed scored paid",
);

/** Before "4" and who it is for: "on hold 4 dana". */
export const BEFORE_FOR_SOMEBODY = wordSet("hold held holding saved saving reserved");

/** Before "2" and a price: "down 2 140". */
export const BEFORE_TO_PRICE = wordSet("down dn dwn lowered reduced knocked marked dropping lowering back");

/** Before where a piece came from or went: "off the curb". */
export const BEFORE_PLACES = wordSet("off from at by");

/** Of several things as good as "other". */
export const REMAINING = wordSet("remaining leftover");

/** Behind "o" that is "of": "two o the chairs". */
export const ENTIRE = wordSet("them his her their", THESE);

/** Before "me" and money, as good as "gave". */
export const HANDS_OVER = wordSet(
  "threw tossed slipped slid floated chucked bunged flung slung lobbed peeled",
);
