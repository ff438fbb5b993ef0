/** Two sides in one text: "30 m x 40 m", "150 x 200 ft". */
export const SIDES = /^(.*\d.*?)\s*[x×*]\s*(\d.*)$/i;
