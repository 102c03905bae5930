import { wordsAlike } from "./words.ts";

/** Other money that comes in, and the stream it is kept under where that is called otherwise. */
export const STREAMS = wordsAlike(`
  tips tip=tips tip_jar=tips ads ad_revenue=ads ad_money=ads ad_income=ads advertising=ads advertising_income=ads advertising_revenue=ads ads_revenue=ads ad_check=ads
  ads_check=ads ad_payout=ads ads_payout=ads ad_payment=ads ad_deposit=ads video_money=videos workshop
  workshops=workshop class classes lesson lessons course courses teaching tutoring consulting
  consult=consulting sponsor sponsorship sponsors affiliate affiliates affiliate_money=affiliate
  affiliate_income=affiliate royalties royalty=royalties merch ebook blog channel videos video_ads
  side_job side_jobs side_gig side_gigs side_work odd_job gig repair_job paint_job custom_work custom_job staging referral
  referral_bonus=referral referral_money=referral referral_fee=referral referral_check=referral
  sign_up_bonus=bonus signup_bonus=bonus bonus_money=bonus video_channel=channel blog_ads=ads
  video_ad=video_ads rebate cashback newsletter babysitting house_sitting pet_sitting dog_sitting
  dog_walking lawn_mowing handyman_job handyman_work repair_work repair_jobs odd_jobs fix_it_job
  rental_income=rental rental_money=rental delivery_gig moving_gig hauling_gig refinishing_job
  restoration_job refinishing_class painting_class sanding_class upholstery_class
`);
