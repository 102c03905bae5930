import { BODY, LIKED } from "../words/chatter.ts";
import type { ChatterEffect } from "./doings.ts";
import { rowsOf } from "./row.ts";

/** What would have pleased somebody, what one could do for joy, how one feels, and what is said of the message itself. */
export const FEELINGS = rowsOf<ChatterEffect>({
  "chat: grandma would have loved this one, sold the crib 40": `[<art>? <kin>|<person> would|wouldve|wouldnt have|of? so|just|really|absolutely? ${LIKED} <art>? this|that|it|these|those|me|over|for? one|piece|thing|find|color|it?]`,
  "chat: cant feel my arms, sold the crib 40":
    "[cant|couldnt|cannot be_happier|be_prouder|be_more_pleased|be_any_happier|be_prouder_of_this_one|be_happier_with_it|be_prouder_of_it|be_prouder_of_myself|complain|sleep|resist|stop_smiling|stop_laughing|stop_sneezing|stop_looking|stop_staring|keep_up|keep_my_eyes_open|feel_my_arms|feel_my_legs|feel_my_hands|feel_my_feet|feel_my_fingers|feel_my_back|breathe|care_less|agree_more|think_straight|see_straight|get_warm|get_enough|win_them_all|beat_that|help_myself|move|stand_up|hear_myself_think|wait_for_bed|wait_for_spring|wait_for_summer|wait_for_dinner|stop_coughing|stop_yawning|stop_crying|stop_grinning|stop_humming|stop_shivering from|from_all_the|with|all_the|because_of? <art>? <new>|<plain>|<opinion>*] ;",
  "chat: cant believe i got 40 for the crib":
    "[still? cant|couldnt|cannot|can_you even|still? believe|get_over] i|we|it|the|this|that|my|our|how|someone|somebody",
  "chat: yall wont believe this, sold the crib 40":
    "^ [you|yall|youll|nobody|no_one|would_you|wouldnt|who never? wont|will|would|wouldnt|gonna|never|you? believe|guess|know it|this|that|what|how? heat|weather|luck|day|traffic|mess?] ;",
  "chat: call me crazy, bought a dresser 45":
    "^ [call|color|consider me crazy|lucky|nuts|happy|impressed|tired|old|silly|old_fashioned]",
  "chat: guess whos back at it, bought a dresser 40":
    "^ [guess who|whos|what? is|has|s? back|at_it|up|here|in_town|tired|happy at_it|again|early|late*] ;",
  "chat: wish you could see it, finished the vanity":
    "^ [wish|wished|wishing i|we|you|yall could_see|were_here|was_there|had_been_there|could_have_seen|was_younger|were_younger|had_a_nap|was_in_bed|was_on_vacation it|this|that|them?] ;",
  "chat: if i had a nickel for every scratch, 45 min on the table":
    "^ [if i had a|another nickel|dime|dollar|penny for every|each >] ;",
  "chat: i should be cleaning the kitchen, instead i sanded the crib 45 min":
    "^ [i_should|should be|have|really|probably* cleaning|cooking|napping|sleeping|resting|in_bed|working|mowing|packing|studying|grading|folding|doing|cleaned|slept the|my|some? laundry|dishes|kitchen|house|garage|lawn|papers|taxes|homework|floors|bathroom?] ,|;|but|instead",
  "chat: it never fails, sold the crib 40": "^ [it|this|that|something never fails|gets_old|gets_easier] ;",
  "chat: knock on wood the weather holds, listed the crib 40": "^ [knock|knocking|touch on? wood >] ;",
  "chat: 3 hours on the crib and boy my feet hurt": `[omg|ugh|oof|ow|ouch|whew|phew|boy|man|god|lord|dang|and|but* my|our|the? poor|aching|tired|old? ${BODY} are|is|really|so|just* hurt|hurts|ache|aches|aching|burn|burns|burning|sore|tired|shot|raw|numb|toast|fried|jelly|noodles|killing_me|screaming|done_for|on_fire now|today|tonight|tho|lol?] ;`,
  "chat: doc says my back is fine, 30 min on the crib":
    "^ [<art>? doc|doctor|dentist|vet|teacher|coach|pastor|preacher|boss says|said|swears|thinks|told_me|told_us|went_on >] ;",
  "chat: gotta say, sold the crib 40":
    "^ [gotta|have_to|got_to|must|i|gotta_just|let_me say|admit|confess|tell_you|brag|mention] ;",
  "chat: quick note from the couch, sold the rug 25":
    "^ [note|quick_note|texting|typing|writing|checking_in|reporting|live|sitting|sat|lying|relaxing|resting|greetings|hello|chilling|lounging from|on|in|at|by the|my|our|a? <piece> with|and? tea|coffee|wine|beer|lemonade|a_beer|a_book|the_cat|the_dog|my_feet_up?] ;",
  "chat: the twins are down for a nap, sold the crib 40":
    "[<art>? <kin>|baby|babies|grandbabies|grandkids|twins|toddler|toddlers|kiddos|little_ones is|are finally|already|both|all? down for_a_nap|for_naps|for_their_nap|for_their_naps|for_her_nap|for_his_nap|for_the_night|asleep]",
  "chat: the cat keeps knocking over my brushes, sold the crib 40":
    "[keeps|kept|keep knocking|barking|crying|ringing|buzzing|raining|snowing|jumping|climbing|begging|chewing|bugging|interrupting|talking|coughing|sneezing|whining|yelling|singing|laughing|tripping|bumping|stubbing|running|falling|smiling|staring|sleeping|napping|licking|teasing|nagging|complaining|walking|scratching|sitting|peeing over|on|into|about|at|in|for|against|with|it|me|us|my|our|the|things|stuff|everything* <supply>|<part>?] ;",
  "chat: ran out of coffee, sold the crib 40":
    "[ran|running|run|all? out of coffee|milk|time|steam|energy|daylight|patience|bread|eggs|sugar|ideas|breath|tea|snacks]",
  "chat: lunch break note: bought screws 4.50":
    "^ [lunch|coffee|smoke|tea|potty break note|update|report|thoughts?] ;",
  "chat: hope everybody is staying warm, sold the crib 40":
    "^ [hope|hoping everyone|everybody|yall|you|all|folks|the_family|your_family are|is staying|keeping|doing warm|cool|dry|safe|well|healthy|okay|ok|good] ;",
  "chat: hope the weekend was good to you, sold the crib 40":
    "^ [hope the|your weekend|week|day|trip|holiday|vacation was|is|went|treated|treating good|fun|well|great|you to? you?] ;",
  "chat: my daughter made the honor roll, sold the crib 40":
    "[<art>? <kin> made|got|won|passed the|a|her|his|their honor_roll|team|cut|finals|playoffs|driving_test|test|spelling_bee|game|trophy|medal|award|first_tooth|deans_list] ;",
  "chat: sorry for the late text, sold the crib 40":
    "^ [sorry|apologies|pardon for|about|my? the|my|any|this? late|delayed|long|short|double|bad|messy|typos|sloppy* text|texts|note|notes|message|delay|update|spelling|typos|silence|rambling|handwriting] ;",
});
