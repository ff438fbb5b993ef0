import { fold } from './text-day';

/** Sows and boars, in the languages of the headings. Collected by judgement. */
const BREEDING =
  /\b(sows?|boars?|breeders?|breeding|(zucht|mutter)?(sau|sauen|eber)|(zucht|mutter)(schweine?|tiere)|truies?|verrats?|reproduct\w+|cerdas?|marranas?|madres|verracos?|berracos?|padrillos?|scrof[ae]|verr[io]|riprodutt\w+|porcas?|matriz(es)?|varrascos?|varroes|varrao|cachacos?|reprodut\w+|(fok)?(zeug|zeugen|beer|beren)|fokdieren|(avels|avls)?(suggor|suggorna|sugga|suggan|galtar|galtarna|galten|galt|soer|soerne|orner|ornen|orne|purker|purkene|purke|raner|ranen|rane)|avelsdjur|avlsdyr)\b/;

/** Whether a name is one of breeding stock. */
export function isBreedingName(name: string): boolean {
  return name.length <= LONGEST_KIND && BREEDING.test(fold(name));
}

/** Longer texts are remarks. Judgement. */
const LONGEST_KIND = 24;
