import { phrases, wordSet } from "./words.ts";

/** Before a noun, and of no meaning. */
export const ARTICLES: ReadonlySet<string> = new Set(["the", "a", "an", "my", "our"]);

/** Words that mean nothing in a note. */
export const FILLER: readonly string[] = phrases(`
  the a an just today tdy just_now itself as_well_as tonight this_morning this_afternoon this_evening
  after_close after_closing forgot_to_say forgot_to_mention forgot_to_log forgot_to_add forgot_to_note
  forgot_to_tell_you forgot_to_tell_u forgot_to_tell_ya forgot_to_put forgot_to_put_in forgot_to_record
  forgot_to_enter forgot_to_text forgot_to_write almost_forgot i_forgot forgot i_forgot_to_say i_forgot_to_mention
  i_forgot_to_log i_forgot_to_add i_forgot_to_note i_forgot_to_tell_you i_forgot_to_put i_forgot_to_record
  i_forgot_to_enter i_forgot_to_text i_forgot_to_write never_wrote_down i_never_wrote_down
  dont_think_i_wrote_down dont_think_i_logged dont_think_i_recorded dont_think_i_texted dont_think_i_noted
  pretty_sure_i_didnt_log pretty_sure_i_never_logged also_missed late_note late_entry catching_up
  from_earlier for_the_record fyi so ok okay k kk um umm ummm uh uhh uhhh uhm ehm mm mmm ah ahh well oh
  hey hi yay woo woohoo yes yep yeah finally please please_record please_log please_note please_add
  please_enter please_put_down record_that pls plz thanks thx ty lol will_be_the_death_of_me
  is_gonna_be_the_death_of_me is_going_to_be_the_death_of_me is_the_death_of_me so_much hun hon honey
  sweetie babe good_day_today great_day_today slow_day_today busy_day_today big_day_today bless_him
  bless_her for_the_month for_the_week in_the_mail hey_guys hey_folks hi_guys hey_everyone hey_all
  turned_around turned_around_and straight right_away that_much a_whole_lot not_gonna_lie ngl cant_lie
  no_lie not_going_to_lie good_news great_news bad_news some_news big_news hot_tip pro_tip wish_me_luck
  cant_believe_it i_cant_believe_it couldnt_believe_it hard_to_believe believe_it_or_not its_me_again
  me_again its_me all_by_herself all_by_himself all_by_myself all_by_themselves dining_room living_room
  guest_room spare_room family_room play_room laundry_room haha whoops oopsie welp shoot darn rn atm guess_what
  had_to ps psa pps its_official drumroll_please managed i_swear needed for_nothing on_hold_with
  what_a_day what_a_week what_a_night what_a_mess what_a_deal what_a_steal what_a_find what_a_score
  long_day busy_day hm same_day the_same_day same_week hmm hmmm hold_on_a_sec hold_on_a_second
  hold_on_a_minute hold_on_a_moment hang_on one_sec bed_bugs before_bed in_bed out_of_bed after_bed
  time_for_bed ready_for_bed go_to_bed went_to_bed going_to_bed off_to_bed heading_to_bed headed_to_bed
  get_to_bed got_to_bed kids_to_bed kid_to_bed baby_to_bed girls_to_bed boys_to_bed kids_in_bed
  before_going_to_bed under_the_table under_the_counter at_my_desk at_her_desk at_his_desk at_our_desk
  not_bad for_once not_a_bad_day not_too_bad not_bad_at_all no_complaints cant_complain bench_time shop_time
  garage_time labor_time time_sheet timesheet time_log work_log time_card trash_day got_around_to
  got_round_to went_ahead_and stopped omg my our i ive im we weve me us this these those is are was were
  be been am has have had of and also then there here already still earlier in with w by on at from to for
  as up out did do does some total altogether together all all_in in_all all_told only even myself
  ourselves all_good all_square were_square we_are_square woot thank_god thank_goodness thank_heavens thankfully bruh lesgo lets_go lets_goo
  lets_gooo lets_goooo gooo smh sheesh yess yesss geez gosh amen hallelujah yolo whoop whoop_whoop booyah
  cha_ching chaching ka_ching kaching my_bad whew ugh dang man_oh_man btw by_the_way note log add update price cost
  costs costing worth amount sum value it its them that thats one ones too again right_now now obo firm
  or_best_offer each_way new another more home back off over through into onto because bc cuz since which
  theirs mine ours piece pieces item furniture trip round_trip roundtrip there_and_back way total_of
  for_sale sale delivered delivery_included pickup on_pickup local_pickup cash_only thing things stuff
  yall folks boom nice great sweet about_time at_last while when during after before until_now in_the_end
  in_twenties in_hundreds in_fives in_tens in_small_bills in_ones in_coins in_an_envelope in_the_envelope in_a_card in_a_bag in_a_plastic_bag in_a_ziploc in_a_jar an_arm_and_a_leg a_fortune a_small_fortune a_pretty_penny top_dollar a_bundle next_to_nothing through_the_nose for_pennies for_peanuts down get got pick_up grab go going_rate
  ol good_morning morning afternoon evening show how hows what whats where why any tell few several
  bunch_of sell buy see money_order cashiers_check move haul hauling load deliver bring fetch get_rid_of
  shop place spot actually basically literally like_new as_is asap super very really quick quickly job
  worth_of plus but quite both pair
`);

/** Pronouns that mean the pieces of the clause before. */
export const PRONOUNS: ReadonlySet<string> = wordSet(`
  it them that those these they theyre both_of_them its em this
`);

/** What is said while one thinks. */
export const HESITATES = wordSet("um umm ummm uh uhh uhhh uhm ehm hm hmm hmmm mmm ah ahh");

/** Around "you know" that is no hesitation: "do you know what", "as you know". */
export const BEFORE_KNOW = wordSet(
  "do did dont didnt wouldnt if as would could should let will how what that ill",
);
export const BEHIND_KNOW = wordSet(
  "what how who when where why which if that it the any anyone anything about of a",
);

/** Before "like" that is one: "so like i finished it". */
export const BEFORE_LIKE = wordSet("so okay ok and then yeah yep well but um uh");
