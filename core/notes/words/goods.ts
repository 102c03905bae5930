import { wordSet } from "./words.ts";

/** What is eaten, drunk, worn or given: bought often, and seldom a piece to sell. */
export const GOODS = wordSet(
  "coke cokes soda sodas pop juice milk water waters beer beers wine tea ice " +
    "sandwich sandwiches burger burgers taco tacos pizza pizzas hot_dog hot_dogs hotdog hotdogs donut donuts doughnut bagel bagels fries chip chips cookie cookies candy gum ice_cream bread egg eggs cheese meat steak fruit apple apples banana bananas cake pie salad sub subs burrito burritos groceries " +
    "dress dresses clothes clothing prescription prescriptions video_game video_games boat " +
    "shirt shirts tshirt shoe shoes sock socks pants jeans jacket jackets hat hats sweater sweaters sneakers " +
    "flower flowers gift gifts birthday_gift ticket tickets lottery_ticket lottery_tickets smoke smokes cigarette cigarettes cigar cigars magazine medicine aspirin vitamins shampoo soap toothpaste diapers",
);
