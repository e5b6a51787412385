package akin.model.rig;

/**
 * The hero and one unit that is matched to it.
 *
 * @param hero name of the hero
 * @param other name of the other unit
 */
public record Pairing(String hero, String other) {}
