import { wordsAlike } from "../lexicon.ts";

/** Words as they are thumbed, each with what it stands for; those of notes stand in the words of notes. */
export const TEXTED: Readonly<Record<string, string>> = Object.fromEntries(
  wordsAlike(`
    r=are profitwise=profit_wise moneywise=money_wise saleswise=sales_wise costwise=cost_wise
    timewise=time_wise pricewise=price_wise dollarwise=dollar_wise spendingwise=spending_wise ovr=over
    undr=under btwn=between abv=above moar=more mor=more tot=total u=you ur=your n=and nd=and thru=through
    b4=before rn=right_now outta=out_of kinda=kind_of sorta=sort_of gotta=have_to gimme=give_me biz=business
    atm=at_the_moment abt=about ppl=people lemme=let_me wanna=want_to chq=cheque chqs=cheques em=them
    shift=sell shifts=sells shifted=sold shifting=selling flog=sell flogged=sold flogging=selling offload=sell
    offloaded=sold offloading=selling moneys=money_is doin=doing makin=making sellin=selling buyin=buying
    spendin=spending lookin=looking goin=going comin=coming gettin=getting sittin=sitting payin=paying
    workin=working earnin=earning bringin=bringing holdin=holding waitin=waiting movin=moving takin=taking
    runnin=running costin=costing hrly=hourly mthly=monthly mnthly=monthly wkly=weekly qtr=quarter amt=amount
    ttl=total bght=bought sld=sold spnt=spent prft=profit howmuch=how_much howmany=how_many alot=a_lot
    oughta=should hafta=have_to wot=what da=the dat=that dis=this mum=mom mums=moms whatd=what_did
    whered=where_did whend=when_did whod=who_did howd=how_did whatve=what_have howve=how_have howre=how_are
    whatre=what_are smth=something mnth=month mnths=months mos=months wks=weeks hr=hour yrs=years
    tmrw=tomorrow tmw=tomorrow yday=yesterday ystrday=yesterday tdy=today evry=every evrything=everything
    wen=when hav=have frm=from sumone=someone anythin=anything pmt=payment pmts=payments wat=what wats=whats
    wich=which hw=how shld=should cld=could wld=would
  `),
);
