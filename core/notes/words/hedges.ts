import { phrases, wordSet } from "./words.ts";

/** Why words make a note no fact. */
export type Hedge =
  | "pending"
  | "unpaid"
  | "deposit"
  | "own deposit"
  | "own money"
  | "net"
  | "part paid"
  | "extra"
  | "money in"
  | "less"
  | "after fee"
  /** All the time that a piece took by now. */
  | "so far"
  | "part"
  | "other"
  | "intention"
  | "offer"
  /** What somebody wants for work that is still to be done. */
  | "service"
  | "appointment"
  | "denial"
  | "doubt"
  | "vague";

/** Words after which nothing is recorded, by what they make of the note. */
export const HEDGES: Readonly<Partial<Record<Hedge, readonly string[]>>> = {
  intention: phrases(`
    might may_sell may_list may_buy may_keep thinking thinking_of thinking_about think thought_about
    want_to wants_to wanna want gonna going_to will shall ought_to ill ima imma would wouldnt should
    could need_to needs_to need needs have_to has_to gotta planning plan plans planning_to hoping
    hope_to hopefully hopin trying trying_to tryna about_to supposed_to considering consider debating
    wish wishing if unless whenever ready_to let_me lets remember_to dont_forget reminder_to remind todo
    to_do someday soon later next_time probably_sell tempted able_to can_sell can_list can_get can_i
    can_you can_we would_like id_like looking_to looking_for ready_for_sale willing expecting expect
    should_get wait_to waiting waiting_on waiting_for almost nearly close_to_selling saving_up in_case
    once as_soon_as agreed_to_buy promised agreed agrees agreed_on agreed_to agreed_at settled_on
    settled_at said_deal said_sure said_yes_to said_ok_to said_okay_to said_yes said_ok said_okay
    said_yes_at said_ok_at
  `),
  offer: phrases(`
    offer offers offered offering asking wanting ask asks asked wants wanted lowball lowballed haggling
    haggled negotiating counter countered counteroffer bid bidding quoted quote estimate estimated says
    said told tells thinks selling appraised valued interested_in interested inquired messaged texted
    emailed called
  `),
  appointment: phrases(`
    coming comes come_by coming_by stopping_by swinging_by look_at see_the meeting meet meets
    appointment viewing viewings appt scheduled schedule showing_at pickup_at pick_up_at picking_up_at
    picking_it_up picks_up stop_by drops_by be_here be_there there_in on_my_way omw running_late
    will_be_here on_the_way on_her_way on_his_way on_their_way heading due
  `),
  denial: phrases(`
    not didnt dont doesnt hasnt havent hadnt wont cant couldnt isnt arent wasnt werent no_longer never
    without instead_of minus except except_for excluding nobody no_one noone nothing refused jk kidding
    just_kidding joking just_joking psych heard saw_a saw_an saw_the saw_this saw_some saw_one declined
    passed_on missed_out forgot_to forgetting forgetting_to keep_forgetting keep_forgetting_to
    keep_meaning_to failed_to stolen lost
  `),
  doubt: phrases(`
    dreamed dreamt dreaming pretend pretended imagine imagined imagining
    the_wrong maybe mightve mightve_been might_have_been may_have_been couldve_been could_have_been
    pretty_sure fairly_sure believe perhaps possibly probably prob prolly i_guess guess not_sure
    cant_remember dont_remember forget_how_much idk dunno unsure iirc i_believe supposedly apparently
    or_so ish or_something somewhere either or
  `),
  vague: phrases(`
    about around roughly approximately approx ish like_about less_than more_than at_least at_most up_to
    close_to something_like under over a_little_over a_little_under a_bit_over a_bit_under just_over
    just_under a_hair_over a_hair_under north_of south_of shy_of just_shy_of a_little_more_than
    a_little_less_than between upwards_of half_of half_off all_but all_except couple_hundred few_hundred
    a_few_hundred hundreds ballpark some_odd give_or_take twice three_times plus_fees plus_tax net
    before_tax half_now half_then half_later half_up_front half_upfront after_fees before_fees
    net_of_fees a_few_bucks few_bucks few_dollars couple_bucks couple_of_bucks couple_dollars change
  `),
};

/** Spans of time too wide to be a day. */
export const VAGUE_TIMES: readonly string[] = phrases(`
  last_week last_month last_year this_week this_month this_year over_the_weekend this_weekend last_weekend
  the_weekend on_the_weekend weekend christmas xmas thanksgiving easter halloween new_years new_years_eve
  labor_day memorial_day july_fourth payday the_other_day the_other_evening the_other_night the_other_morning other_day day_ago week_ago
  month_ago year_ago years_ago a_while_ago while_ago awhile_ago awhile_back a_while_back few_days_ago
  a_few_days_ago some_time_ago recently ages_ago few_weeks_ago a_few_weeks_ago several_days_ago
  earlier_this_week earlier_this_month next_week next_month next_year next_weekend end_of_month
  end_of_the_month end_of_week end_of_the_week sometime days_ago weeks_ago months_ago
`);

/** Somebody has been here already. */
export const VISITED = wordSet(
  "came came_by came_over came_in came_out looked stopped_by showed_up turned_up swung_by",
);
