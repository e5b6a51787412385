package akin.model.rig;

import akin.model.gear.Media;

/**
 * What a unit writes to.
 *
 * @param media the card or drive
 * @param count how many of them the unit has for a day, 1 or more
 */
public record MediaPlan(Media media, int count) {}
