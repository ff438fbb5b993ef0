/** A map that cannot be read. The message is a sentence for the grower that says what to do. */
export class MapTrouble extends Error {}
